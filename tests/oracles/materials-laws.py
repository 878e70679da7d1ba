"""Creep, shift and ageing laws by another road than the library's, with mpmath 1.3 (40 digits) and scipy 1.17; writes materials-laws.json.

Hardening rules by integrating the strain rate; ageing and reduced time by quadrature of their rates; the power-law relaxation factor from the
convolution identity integral J(t-s) E(s) ds = t; Findley relaxation at n = 1/2 by exp(z^2) erfc(z) (Podlubny 1999, eq. 1.67).
"""
import json, os
import numpy as np
from mpmath import mp, mpf, quad, exp, log, sinh, erfc, gamma, log10
from scipy.integrate import solve_ivp

mp.dps = 40
R = mpf("8.31446261815324")
out = {}

# Strain hardening: de/dt = q A^(1/q) e^((q-1)/q); the substitution u = e^(1/q) makes it du/dt = A^(1/q), integrated in e from a small start.
def strain_hardening(A, q, t, start):
    f = lambda _, e: [q * A ** (1 / q) * e[0] ** ((q - 1) / q)]
    t0, e0 = 0.0, start
    if e0 == 0.0:
        t0 = 1e-12 * t
        e0 = A * t0 ** q
    s = solve_ivp(f, (t0, t), [e0], rtol=1e-12, atol=1e-18, method="DOP853")
    return float(s.y[0, -1])

def steps(rule, loads, A1, s1, p, q):
    e, elapsed, after = 0.0, 0.0, []
    for stress, hours in loads:
        A = A1 * (stress / s1) ** p
        if rule == "strainHardening":
            e = strain_hardening(A, q, hours, e)
        else:
            e += float(quad(lambda t: A * q * t ** (q - 1), [elapsed, elapsed + hours]))
        elapsed += hours
        after.append(e)
    return after

loads = [(5.0, 100.0), (10.0, 50.0), (7.0, 200.0)]
out["steps"] = [dict(rule=r, afterEach=steps(r, loads, 1e-3, 10.0, 1.5, 0.3)) for r in ("strainHardening", "timeHardening")]

def shift(T, Tr, E):
    return exp(mpf(E) / R * (1 / mpf(T) - 1 / mpf(Tr)))
out["arrhenius"] = float(shift("318.15", "296.15", 150000))
spells = [("3600", "296.15"), ("7200", "313.15"), ("1800", "318.15")]
parts = [quad(lambda _: 1 / shift(T, "296.15", 120000), [0, mpf(t)]) for t, T in spells]
out["history"] = dict(time=float(sum(parts)), hottestShare=float(parts[2] / sum(parts)))

wlf = lambda d: mpf("-17.44") * d / (mpf("51.6") + d)
out["wlfLogAt10"] = float(wlf(mpf(10)))
# 25 degC to 70 degC across a glass transition of 60 degC: down by Arrhenius to the transition, on by Williams-Landel-Ferry.
out["across"] = float(10 ** wlf(mpf(10)) * shift("333.15", "298.15", 150000))

effective = lambda t, age, mu: quad(lambda s: (age / (age + s)) ** mu, [0, age, t])
out["ageing"] = [dict(time=t, age=a, rate=m, effective=float(effective(mpf(t), mpf(a), mpf(m)))) for t, a, m in ((1e6, 1e4, 0.85), (1e6, 1e4, 1.0), (1e5, 1e5, 0.7))]
out["ageingShift"] = float(exp(mpf("0.85") * log(mpf(1000) / 24)))

convolution = lambda n: quad(lambda s: (1 - s) ** n * s ** (-n), [0, mpf("0.5"), 1])
out["powerLaw"] = [dict(n=n, factor=float(1 / convolution(mpf(n)))) for n in (0.05, 0.2, 0.5)]

z = lambda c, t: mpf(c) * gamma(mpf("1.5")) * mpf(t) ** mpf("0.5")
out["findleyHalf"] = [dict(c=c, t=t, kept=float(exp(z(c, t) ** 2) * erfc(z(c, t)))) for c, t in ((0.1, 1), (0.1, 100), (0.4, 1000))]

out["findleyStrain"] = float(mpf(10) / 2400 * (1 + mpf("0.09") * exp(mpf("0.27") * log(1000))))
out["findleySinh"] = float(mpf("0.01") * sinh(mpf(12) / 20) + mpf("0.001") * exp(mpf("0.2") * log(100)) * sinh(mpf(12) / 15))
out["nortonBailey"] = float(mpf("0.001") * exp(mpf("1.5") * log(mpf("0.7")) + mpf("0.3") * log(500)))
out["timeToStrainHours"] = float(exp(log((mpf("0.01") * 2400 / 10 - 1) / mpf("0.3")) / mpf("0.25")))

with open(os.path.join(os.path.dirname(__file__), "materials-laws.json"), "w") as f:
    json.dump(out, f, indent=1)
    f.write("\n")
