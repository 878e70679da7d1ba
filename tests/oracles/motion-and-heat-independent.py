"""Motion and heat by models that share nothing with the library: three phases followed over a turn, equations of motion and of heat integrated, linkages and
workspaces by points, sections by cells. Writes motion-and-heat-independent.json. Run: python3 tests/oracles/motion-and-heat-independent.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import quad, solve_bvp, solve_ivp
from scipy.optimize import brentq


def digits(x, n=6):
    return f"{float(x):#.{n}g}"


out = {}

# 1. Three phases of a machine over one electrical turn: emf and current as waves, power, loss, torque.
a = (np.arange(3600) + 0.5) / 3600 * 2 * np.pi
phases = np.stack([np.cos(a - k * 2 * np.pi / 3) for k in range(3)])
ke, r, torque, speed = 0.0954929658551, 0.2, 0.6, 100.0
emf = ke / np.sqrt(3) * speed * phases
made = lambda peak: (emf * peak * phases).sum(axis=0).mean() / speed
peak = brentq(lambda i: made(i) - torque, 0, 100, xtol=1e-14)
loss = ((peak * phases) ** 2 * r / 2).sum(axis=0).mean()
# Power-invariant transform: the length of the vector of phase currents.
invariant = np.sqrt(((peak * phases) ** 2).sum(axis=0)).mean()
# Flat-topped emf of the same peak between lines, direct current through two phases.
direct = brentq(lambda i: ke * speed * i / speed - torque, 0, 100, xtol=1e-14)
out["machine"] = {
    "peak": digits(peak),
    "rms": digits(np.sqrt((peak * phases[0]) ** 2 @ np.ones(3600) / 3600)),
    "invariant": digits(invariant),
    "direct": digits(direct),
    "loss": digits(loss),
    "constant": digits(torque / np.sqrt(loss)),
    # Held still at the worst of many angles: the phase with the most.
    "stall": digits(((peak * np.cos(np.linspace(0, 2 * np.pi, 100001))) ** 2).max() * r / 2),
}
# Bridge: each phase current flows through one switch of its leg at all times, whatever the duty.
duty = 0.5 + 0.4 * phases
out["bridge"] = {
    "conduction": digits(((7.2552 * phases) ** 2 * 3e-3 * (duty + (1 - duty))).sum(axis=0).mean()),
    # Edges as straight lines of current times voltage: half of the product, by integration over each edge.
    "edges": digits(sum(quad(lambda t: 24 * t * i, 0, 1)[0] * 40e-9 * 24e3 for i in np.abs(7.2552 * phases).mean(axis=1)), 5),
}
# Delta of three legs: node voltages.
G = 1 / 0.3
Y = np.array([[2 * G, -G, -G], [-G, 2 * G, -G], [-G, -G, 2 * G]])
v = np.linalg.lstsq(Y, np.array([1.0, -1.0, 0.0]), rcond=None)[0]
out["delta"] = digits(v[0] - v[1])
# Weaker magnets: current for the same torque, loss by the waves.
weak = brentq(lambda i: (0.934 * emf * i * phases).sum(axis=0).mean() / speed - torque, 0, 100, xtol=1e-14)
out["magnets"] = digits((weak / peak) ** 2)
# Drag of two no-load points: linear system.
fit = np.linalg.solve([[100.0, 100.0**2], [200.0, 200.0**2]], [3.0, 8.0])
out["split"] = [digits(fit[0], 5), digits(fit[1], 5)]
out["rms"] = digits(np.sqrt(quad(lambda x: (1.0 if x < 2 else 0.5 if x < 5 else 0.0) ** 2, 0, 10, points=[2, 5])[0] / 10))

# 2. Windings: balance marched in time; the last loss that settles; a short pulse integrated.
def settles(p20, resistance, ambient):
    w = ambient
    for _ in range(200000):
        new = ambient + resistance * p20 * (234.5 + w) / 254.5
        if abs(new - w) < 1e-12 or new > 1e6:
            return new
        w = new
    return w


w = settles(8, 4, 25)
out["winding"] = [digits(w), digits(8 * (234.5 + w) / 254.5)]
low, high = 10.0, 200.0
for _ in range(60):
    mid = (low + high) / 2
    # A small rise grows or dies away: one round of loss, heat and loss again.
    grows = 4 * mid * ((234.5 + 20 + 1e-3) - (234.5 + 20)) / 254.5 > 1e-3
    low, high = (low, mid) if grows else (mid, high)
out["runaway"] = digits(low, 5)
out["continuous"] = digits(brentq(lambda p: settles(p, 4, 25) - 120, 1, 40, xtol=1e-12))
pulse = solve_ivp(lambda _, T: [100 * (234.5 + T[0]) / 254.5 / 10], (0, 60), [20.0], rtol=1e-12, atol=1e-12, events=lambda _, T: T[0] - 120)
out["pulse"] = digits(pulse.t_events[0][0], 5)

# 3. Heat: walls and shells as boundary-value problems, bodies in time, a disc on a half-space by its potential.
shell = solve_bvp(lambda x, y: [y[1], -y[1] / x], lambda p, q: [p[1] * -0.2 * 2 * np.pi * 25e-3 * 20e-3 - 1, q[0]], np.linspace(25e-3, 30e-3, 201), np.zeros((2, 201)), tol=1e-10)
out["shell"] = digits(shell.sol(25e-3)[0])
rings = 6e-3 + (np.arange(4000) + 0.5) * 11.5e-3 / 4000
area = (2 * np.pi * rings * 11.5e-3 / 4000).sum()
out["ringArea"] = digits(area * 1e6)
layer = solve_bvp(lambda x, y: [y[1], 0 * x], lambda p, q: [-0.2 * area * p[1] - 1, q[0]], np.linspace(0, 3e-3, 21), np.zeros((2, 21)), tol=1e-10)
out["layer"] = digits(layer.sol(0)[0])
bar = solve_bvp(lambda x, y: [y[1], 10 * 20e-3 / (0.2 * 10e-6) * y[0]], lambda p, q: [p[0] - 1, q[1]], np.linspace(0, 3.16227766e-3, 201), np.zeros((2, 201)), tol=1e-10)
out["fin"] = digits(-0.2 * 10e-6 * bar.sol(0)[1] / (10 * 20e-3 * 3.16227766e-3), 5)


# Uniform flux over a unit disc: each point warms another by 1/(2 pi k distance).
def at(rho):
    return quad(lambda angle: -rho * np.cos(angle) + np.sqrt(1 - (rho * np.sin(angle)) ** 2), 0, 2 * np.pi, epsabs=1e-12)[0] / (2 * np.pi) / np.pi


out["halfSpace"] = [digits(quad(lambda rho: at(rho) * 2 * rho, 0, 1, epsabs=1e-9)[0], 5), digits(at(0.0), 5)]


# Constant flux into a thick body: finite differences in depth, extrapolated.
def surface_rise(n, flux=1000.0, k=0.2, alpha=1.230769e-7, time=60.0):
    depth = 12 * np.sqrt(alpha * time)
    h = depth / n
    f = lambda _, T: alpha * (np.append(T[1:], 0) - 2 * T + np.append(T[1] + 2 * h * flux / k, T[:-1])) / h**2
    s = solve_ivp(f, (0, time), np.zeros(n), method="LSODA", rtol=1e-9, atol=1e-9, lband=1, uband=1)
    return s.y[0, -1]


coarse, fine = surface_rise(200), surface_rise(400)
out["thickBody"] = digits(fine + (fine - coarse) / 3, 4)
# One body of 4 J/K behind 0.5 K/W that tends from 25 to 200 degC, and overload of short and of repeated loads by marching.
out["lumped"] = digits(solve_ivp(lambda _, T: [(200 - T[0]) / 0.5 / 4], (0, 2.6), [25.0], rtol=1e-12, atol=1e-12).y[0, -1])
short = solve_ivp(lambda _, T: [1 - T[0]], (0, 1), [0.0], rtol=1e-12, atol=1e-12).y[0, -1]
out["short"] = digits(1 / short)


def settled_peak(load, period):
    T = 0.0
    for _ in range(30):
        hot = solve_ivp(lambda _, x: [1 - x[0]], (0, load), [T], rtol=1e-10, atol=1e-12).y[0, -1]
        T = solve_ivp(lambda _, x: [-x[0]], (0, period - load), [hot], rtol=1e-10, atol=1e-12).y[0, -1] if period > load else hot
    return hot


out["repeated"] = digits(1 / settled_peak(1.0, 2.0), 5)
# Air pressure with height: weight of the column, temperature falling by 6.5 K a kilometre.
column = lambda z: solve_ivp(lambda h, p: [-p[0] * 9.80665 / (287.05287 * (288.15 - 6.5e-3 * h))], (0, z), [101325.0], rtol=1e-12, atol=1e-6).y[0, -1]
out["pressure"] = [digits(column(1500.0), 5), digits(column(3000.0), 5)]
# Time to a rise of 30 K with the conductance at its middle and at either end of its band.
rise = lambda g: solve_ivp(lambda _, T: [(10 - g * T[0]) / 100], (0, 5000), [0.0], rtol=1e-12, atol=1e-12, events=lambda _, T: T[0] - 30).t_events[0][0]
out["time"] = [digits(rise(0.25)), digits(rise(0.25 * np.exp(-0.2))), digits(rise(0.25 * np.exp(0.2)))]

# 4. Motion: falls, pushes and blows integrated; the most force where the body turns.
def drop(mass, height, k, g):
    fall = solve_ivp(lambda _, y: [y[1], g], (0, 10), [0.0, 0.0], rtol=1e-12, atol=1e-14, events=lambda _, y: y[0] - height) if height > 0 else None
    v = fall.y_events[0][0][1] if height > 0 else 1e-9
    turn = lambda _, y: y[1]
    turn.terminal, turn.direction = True, -1
    land = solve_ivp(lambda _, y: [y[1], g - k / mass * y[0]], (0, 10), [0.0, v], rtol=1e-12, atol=1e-14, events=turn)
    return k * land.y[0, -1], land.y[0, -1]


out["drop"] = [digits(x, 5) for x in (*drop(10, 0.0, 1000, 10), *drop(10, 0.4, 1000, 10))]
turn = lambda _, y: y[1]
turn.terminal, turn.direction = True, -1
blow = solve_ivp(lambda _, y: [y[1], -4e4 / 0.25 * y[0]], (0, 1), [0.0, 2.0], rtol=1e-12, atol=1e-15, events=turn)
out["blow"] = [digits(4e4 * blow.y[0, -1], 5), digits(blow.t[-1] * 1e3, 5)]


def jump(force, mass=10.0, travel=0.1, g=10.0):
    end = lambda _, y: y[0] - travel
    end.terminal = True
    push = solve_ivp(lambda _, y: [y[1], force / mass - g], (0, 5), [0.0, 0.0], rtol=1e-12, atol=1e-14, events=end)
    v = push.y[1, -1]
    return v, push.t[-1], brentq(lambda t: v - g * t, 0, 5)


def height(f):
    v, _, up = jump(f)
    return quad(lambda t: v - 10 * t, 0, up)[0]


force = brentq(lambda f: height(f) - 0.2, 120, 1000, xtol=1e-10)
v, time, up = jump(force)
out["jump"] = [digits(force, 5), digits(v, 5), digits(time, 5), digits(2 * up, 5)]


# Stance: shapes scaled until their impulse is that of the weight over a stride.
def stance(shape, share, duty, phase, g, mass):
    impulse = quad(shape, 0, 1)[0] * duty
    return share * mass * g * shape(phase) / impulse


out["stance"] = [
    digits(stance(lambda x: np.sin(np.pi * x), 1, 0.4, 0.5, 1, 1)),
    digits(stance(lambda x: np.sin(np.pi * x) + np.sin(3 * np.pi * x), 0.25, 0.7, 0.25, 10, 10)),
]
s = np.linspace(0, 1, 2_000_001)
shapes = {"cycloid": s - np.sin(2 * np.pi * s) / (2 * np.pi), "cubic": 3 * s**2 - 2 * s**3, "quintic": 10 * s**3 - 15 * s**4 + 6 * s**5}
out["rest"] = {}
for name, x in shapes.items():
    fine = x[::200]
    d = s[200]
    v_ = (fine[2:] - fine[:-2]) / (2 * d)
    acc = (fine[2:] - 2 * fine[1:-1] + fine[:-2]) / d**2
    # Ends of the cubic by its own differences towards the end.
    edge = (2 * fine[0] - 5 * fine[1] + 4 * fine[2] - fine[3]) / d**2
    out["rest"][name] = [digits(v_.max(), 5), digits(max(np.abs(acc).max(), abs(edge)), 5)]
swing = -0.04 - 0.4 * 0.2 * s + (0.08 + 0.4 * 0.2) * shapes["quintic"]
fine, d = swing[::200], 0.2 * s[200]
out["swing"] = [digits(np.abs((fine[2:] - fine[:-2]) / (2 * d)).max(), 5), digits(np.abs((fine[2:] - 2 * fine[1:-1] + fine[:-2]) / d**2).max(), 5)]
# Standing block and foot: moments about the edge with forces as vectors.
out["tip"] = [
    digits(np.degrees(brentq(lambda g: 0.1 * np.cos(g) - 0.2 * np.sin(g), 0, 1.5)), 5),
    digits(brentq(lambda f: 10 * 10 * 0.1 - f * 0.25, 0, 1000), 4),
]
out["cone"] = [digits(np.degrees(brentq(lambda g: np.sin(g) - 0.6 * np.cos(g), 0, 1.5)), 5), digits(np.degrees(np.arccos(100 / np.linalg.norm([100, 30]))), 5)]

# 5. Linkages, arms and sensors by points.
def pins(crank, branch):
    A = 40 * np.array([np.cos(crank), np.sin(crank)])
    D = np.array([100.0, 0])
    d = np.linalg.norm(A - D)
    x = (120**2 - 80**2 + d * d) / (2 * d)
    y = branch * np.sqrt(120**2 - x * x)
    u = (D - A) / d
    B = A + x * u + y * np.array([-u[1], u[0]])
    return np.arctan2(*(B - A)[::-1]), np.arctan2(*(B - D)[::-1])


q = np.radians(40)
h = 1e-5
out["fourBar"] = {}
for name, branch in (("open", 1), ("crossed", -1)):
    c, k = pins(q, branch)
    rate = [(pins(q + h, branch)[i] - pins(q - h, branch)[i]) / (2 * h) for i in (0, 1)]
    out["fourBar"][name] = [digits(np.degrees(c), 8), digits(np.degrees(k), 8), digits(rate[1], 7), digits(rate[0], 7)]
grid = np.linspace(0, 2 * np.pi, 720001)
A = 40 * np.stack([np.cos(grid), np.sin(grid)])
d = np.hypot(A[0] - 100, A[1])
mu = np.degrees(np.arccos(np.abs(120**2 + 80**2 - d * d) / (2 * 120 * 80)))
out["transmission"] = [digits(mu[0]), digits(mu[360000])]


# Two-link arm: torques by positions of the masses, differenced in time; masses spread to have the inertias.
def arm(t_, l1, c1, c2, q0, w, acc, r1, r2):
    a1, a2 = (q0[i] + w[i] * t_ + acc[i] * t_ * t_ / 2 for i in (0, 1))
    u1, u2 = np.array([np.cos(a1), np.sin(a1)]), np.array([np.cos(a1 + a2), np.sin(a1 + a2)])
    return [(c1 + r1) * u1, (c1 - r1) * u1, l1 * u1 + (c2 + r2) * u2, l1 * u1 + (c2 - r2) * u2]


def arm_torque():
    m1, m2 = 1.2, 0.8
    r1, r2 = np.sqrt(0.01 / m1), np.sqrt(0.006 / m2)
    args = (0.3, 0.14, 0.11, (0.4, -0.9), (1.5, -2.0), (3.0, -4.0), r1, r2)
    h = 1e-3
    p = {k: arm(k * h, *args) for k in (-2, -1, 0, 1, 2)}
    masses = [m1 / 2, m1 / 2, m2 / 2, m2 / 2]
    joints = [np.zeros(2), 0.3 * np.array([np.cos(0.4), np.sin(0.4)])]
    torque_ = []
    for j, joint in enumerate(joints):
        total = 0.0
        for i in range(2 * j, 4):
            acc = (-p[2][i] + 16 * p[1][i] - 30 * p[0][i] + 16 * p[-1][i] - p[-2][i]) / (12 * h * h)
            f = masses[i] * (acc + np.array([0, 9.81]))
            arm_ = p[0][i] - joint
            total += arm_[0] * f[1] - arm_[1] * f[0]
        torque_.append(total)
    return torque_


out["arm"] = [digits(x, 7) for x in arm_torque()]
# Encoder: readings of a ramp rounded to counts; eccentric track by points.
ramp = np.linspace(0, 1, 2_000_003)
step = 360 / 16384 / 6
error = ramp * 50 * step - np.round(ramp * 50) * step
out["encoder"] = [digits(np.abs(error).max(), 4), digits(np.sqrt((error**2).mean()), 4)]
turn_ = np.arange(20000) / 20000 * 2 * np.pi
track = np.angle(1 / (1 - 0.005 * np.exp(1j * turn_)))
out["eccentric"] = [digits(np.abs(track).max() * 180 * 60 / np.pi, 5), digits(2 * abs(np.fft.fft(track)[1]) / 20000 * 180 * 60 / np.pi, 5), digits(2 * abs(np.fft.fft(track)[2]) / 20000 * 180 * 3600 / np.pi, 4)]
# Reach of two links by integration of the Jacobian over the knee.
out["reach"] = [
    digits(4 * np.pi * quad(lambda k: np.sqrt(1 + 0.25 + np.cos(k)) * np.sin(k) * 0.5, 0, np.pi)[0]),
    digits(2 * np.pi * quad(lambda k: 0.5 * np.sin(k), 0, np.pi)[0]),
]

# 6. Flexures: beam as a boundary-value problem, notch by integration of its section.
beam = solve_bvp(lambda x, y: [y[1], 1.0 * (0.04 - x) / (2e9 * 10e-3 * 2e-3**3 / 12)], lambda p, q: [p[0], p[1]], np.linspace(0, 0.04, 41), np.zeros((2, 41)), tol=1e-10)
out["toe"] = [digits(beam.sol(0.04)[0] * 1e3, 4), digits(beam.sol(0.04)[1], 4), digits(1.0 * 0.04 * 1e-3 / (2e9 * 10e-3 * 2e-3**3 / 12) * 100, 4)]
# Thin-notch law in the limit of a notch much thinner than its radius, scaled to the case by its own powers.
ratio = 1e-5
compliance = quad(lambda x: 12 / (2e9 * 10e-3 * (ratio * 5e-3 + x * x / 5e-3) ** 3), -5e-3, 5e-3, points=[0, 1e-5, -1e-5, 5e-5, -5e-5], limit=500)[0]
stiffness = 1 / compliance * (0.5e-3 / (ratio * 5e-3)) ** 2.5
out["notch"] = digits(stiffness, 4)
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
