"""Reference solutions of initial-value problems; writes numeric-ode.json.

Robertson's kinetics and van der Pol's oscillator (scipy, Radau and LSODA at 1e-12 must agree), a linear heat network (mpmath matrix exponential).
Run: python3 tests/oracles/numeric-ode.py
"""
import json
import os
import numpy as np
import mpmath
import scipy
from scipy.integrate import solve_ivp

mpmath.mp.dps = 40


def both(f, jac, t, y0, atol):
    a = solve_ivp(f, (0, t), y0, method="Radau", rtol=1e-12, atol=atol, jac=jac).y[:, -1]
    b = solve_ivp(f, (0, t), y0, method="LSODA", rtol=1e-12, atol=atol, jac=jac).y[:, -1]
    assert np.all(np.abs(a - b) < 1e-8 * np.abs(a)), (a, b)
    return a.tolist()


def robertson(t, y):
    a, b, c = 0.04 * y[0], 1e4 * y[1] * y[2], 3e7 * y[1] ** 2
    return [-a + b, a - b - c, c]


def robertson_jac(t, y):
    return [[-0.04, 1e4 * y[2], 1e4 * y[1]], [0.04, -1e4 * y[2] - 6e7 * y[1], -1e4 * y[1]], [0, 6e7 * y[1], 0]]


def vdp(t, y):
    return [y[1], ((1 - y[0] ** 2) * y[1] - y[0]) / 1e-6]


def vdp_jac(t, y):
    return [[0, 1], [(-2 * y[0] * y[1] - 1) / 1e-6, (1 - y[0] ** 2) / 1e-6]]


# Capacities in J/K, links between nodes in W/K (the last column: to ambient), powers in W.
capacity = [8.0, 25.0, 60.0, 40.0, 120.0]
links = [[0, 1, 1.6], [1, 2, 3.5], [2, 3, 0.12], [3, 4, 0.9], [2, 4, 0.05]]
ambient = [0.0, 0.02, 0.15, 0.05, 0.4]
power = [22.0, 3.0, 0.0, 0.0, 0.0]
n = 5
A = mpmath.zeros(n)
for i, j, g in links:
    for p, q in ((i, j), (j, i)):
        A[p, p] -= mpmath.mpf(g) / capacity[p]
        A[p, q] += mpmath.mpf(g) / capacity[p]
for i in range(n):
    A[i, i] -= mpmath.mpf(ambient[i]) / capacity[i]
b = mpmath.matrix([mpmath.mpf(power[i]) / capacity[i] for i in range(n)])
steady = -mpmath.lu_solve(A, b)


def rise(t):
    return [float(x) for x in steady - mpmath.expm(A * t) * steady]


json.dump({
    "scipy": scipy.__version__,
    "robertson": [{"t": t, "y": both(robertson, robertson_jac, t, [1, 0, 0], 1e-18)} for t in (0.4, 40, 4e5)],
    "vanDerPol": {"t": 2, "y": both(vdp, vdp_jac, 2, [2, 0], 1e-14)},
    "network": {"capacity": capacity, "links": links, "ambient": ambient, "power": power, "rise": [{"t": t, "y": rise(t)} for t in (5, 100, 1000, 3600)]},
}, open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "numeric-ode.json"), "w"), indent=1)
