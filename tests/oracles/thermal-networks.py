"""Reference values for networks, fins and transients, by scipy, written apart from the library.

Rerun: python3 tests/oracles/thermal-networks.py > tests/oracles/thermal-networks.json
"""
import json
import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import expm
from scipy.optimize import brentq, fsolve
from scipy.special import ive, kve

SIGMA, G = 5.670374419e-8, 9.80665
KELVIN = 273.15


def air(T):
    t = T - KELVIN
    return (
        2.36353e-2 + 7.5599e-5 * t - 2.4536e-8 * t * t,
        1.33822e-5 + 8.71667e-8 * t + 9.5569e-11 * t * t,
        0.736042 - 2.80448e-4 * t + 3.43023e-7 * t * t,
    )


def natural(Ts, Ta, L, cylinder=False):
    film = (Ts + Ta) / 2
    k, nu, pr = air(film)
    ra = G / film * max(abs(Ts - Ta), 1e-3) * L**3 * pr / nu**2
    a, c = (0.6, 0.559) if cylinder else (0.825, 0.492)
    return k / L * (a + 0.387 * ra ** (1 / 6) / (1 + (c / pr) ** (9 / 16)) ** (8 / 27)) ** 2


def rad(e, a, b):
    return e * SIGMA * (a + b) * (a * a + b * b)


def annular(r1, r2, k, t, h):
    m = np.sqrt(2 * h / (k * t))
    x, y = m * r1, m * r2
    f = np.exp(2 * (x - y))
    return 2 * np.pi * k * r1 * t * m * (kve(1, x) * ive(1, y) - f * ive(1, x) * kve(1, y)) / (kve(0, x) * ive(1, y) + f * ive(0, x) * kve(1, y))


fins = []
for r1, r2, k, t, h in [(0.0175, 0.0451, 0.2, 0.006, 12.5), (0.025, 0.048, 186, 0.006, 50), (0.01, 0.5, 0.15, 0.002, 300), (0.02, 0.021, 0.2, 0.001, 5), (0.0175, 0.0451, 167, 0.003, 12.5), (0.001, 2.0, 0.1, 0.0005, 1000)]:
    fins.append(dict(r1=r1, r2=r2, k=k, t=t, h=h, conductance=annular(r1, r2, k, t, h)))

# Five nodes with films, radiation and hot copper; Kv 100 rpm/V, 0.2 ohm.
Ta = 298.15
C = np.array([23.1, 68.3, 36.8, 25.0, 13.5])
ke = 60 / (2 * np.pi * 100)


def flows(T, torque):
    W, S, R, M, B = T
    current = torque / (np.sqrt(3) / 2 * ke)
    loss = 0.75 * current**2 * 0.2 * (234.5 + W - KELVIN) / 254.5
    gsm = 1500 * np.pi * (0.0175**2 - 0.006**2)
    area = np.pi * 0.05 * 0.02 + np.pi * 0.025**2
    can = area * (natural(R, Ta, 0.05, True) + rad(0.85, R, Ta)) * (R - Ta)
    board = 0.0032 * (natural(B, Ta, 0.04) + rad(0.9, B, Ta)) * (B - Ta)
    h = natural(M, Ta, 0.08) + rad(0.9, M, Ta)
    plate = (annular(0.0175, 0.08 / np.sqrt(np.pi), 0.2, 0.006, h) + np.pi * 0.0175**2 / (0.006 / 0.2 + 1 / h)) * (M - Ta)
    return np.array([
        loss - 1.2 * (W - S),
        1.2 * (W - S) - 0.15 * (S - R) - gsm * (S - M),
        0.15 * (S - R) - can,
        gsm * (S - M) - plate - 0.02 * (M - B),
        0.9 + 0.02 * (M - B) - board,
    ])


def steady(torque):
    x, info, ok, _ = fsolve(flows, np.full(5, Ta + 30), args=(torque,), xtol=1e-13, full_output=True)
    assert ok == 1 or np.abs(info["fvec"]).max() < 1e-9
    return (x - KELVIN).tolist()


five = dict(steady={str(t): steady(t) for t in (0.0, 0.2, 0.35, 0.45)})
sol = solve_ivp(lambda t, T: flows(T, 0.35) / C, (0, 3600), np.full(5, Ta), method="Radau", rtol=1e-10, atol=1e-9, dense_output=True)
five["course"] = {str(t): (sol.sol(t) - KELVIN).tolist() for t in (10.0, 60.0, 300.0, 1800.0, 3600.0)}
target = 55 + KELVIN
five["mountAt55"] = float(brentq(lambda t: sol.sol(t)[3] - target, 1, 3600)) if sol.sol(3600)[3] > target else None

# Four linear nodes: settled cycle of 20 W for 180 s and nothing for 420 s on W, by matrix exponentials.
names = ["W", "S", "M", "B"]
c4 = np.array([23.1, 105, 78, 13.5])
K = np.array([[1.2, -1.2, 0, 0], [-1.2, 1.2 + 0.25 + 0.12, -0.25, 0], [0, -0.25, 0.25 + 0.02 + 0.05, -0.02], [0, 0, -0.02, 0.02 + 0.04]])
A = -K / c4[:, None]
base = np.array([0, 0.5, 0, 0.9])


def settle(P):
    return np.linalg.solve(K, P)


on, off = settle(base + [20, 0, 0, 0]), settle(base)
E1, E2 = expm(A * 180), expm(A * 420)
x0 = np.linalg.solve(np.eye(4) - E2 @ E1, E2 @ (np.eye(4) - E1) @ on + (np.eye(4) - E2) @ off)
x1 = on + E1 @ (x0 - on)
peaks, when = [], []
ts1, ts2 = np.linspace(0, 180, 3601), np.linspace(0, 420, 8401)
run = np.array([on + expm(A * 0.05 * 0) @ (x0 - on)])
step = expm(A * 0.05)
rows, clock, x = [x0], [0.0], x0
for goal, count in ((on, 3600), (off, 8400)):
    for _ in range(count):
        x = goal + step @ (x - goal)
        rows.append(x)
        clock.append(clock[-1] + 0.05)
rows = np.array(rows)
cycle = dict(
    start=(x0 + 25).tolist(), peaks=(rows.max(axis=0) + 25).tolist(), peakAt=[clock[i] for i in rows.argmax(axis=0)],
    end=(rows[-1] + 25).tolist(), means=((180 * 20 / 600 * np.linalg.inv(K)[:, 0]) + off + 25).tolist(),
    timeConstants=sorted((-1 / np.linalg.eigvals(A).real).tolist(), reverse=True),
)

# Plane wall by its full series (one term is what is tested) and eigenvalues.
walls = []
for bi in (0.1, 1.0, 10.0):
    z = brentq(lambda z: z * np.sin(z) - bi * np.cos(z), 1e-9, np.pi / 2)
    walls.append(dict(biot=bi, eigenvalue=z, coefficient=4 * np.sin(z) / (2 * z + np.sin(2 * z))))

print(json.dumps(dict(fins=fins, five=five, cycle=cycle, walls=walls), indent=1))
