"""Shafts, joints and cords by models that share nothing with the library: shear coefficient from a flexure function solved by finite differences, overhangs by
Timoshenko beam elements, bearings by a linear system in space, joints by cells and springs that only push, cords by tangents found numerically.
Writes structures-shafts.json. Run: python3 tests/oracles/structures-shafts.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.linalg import solve_banded
from scipy.optimize import brentq, linprog, minimize

CELLS = 4000


def digits(x, n=7):
    return f"{x:#.{n}g}"


def harmonic(k, a, b, slope_a, slope_b, n=CELLS):
    """Radial part of a plane harmonic function of order k between radii a and b (a = 0: regular) with given slopes at both; finite differences."""
    r = np.linspace(a, b, n + 1)
    h = r[1] - r[0]
    low, mid, up, y = np.zeros(n + 1), np.zeros(n + 1), np.zeros(n + 1), np.zeros(n + 1)
    i = np.arange(1, n)
    low[i], up[i] = 1 - h / (2 * r[i]), 1 + h / (2 * r[i])
    mid[i] = -2 - k * k * h * h / r[i] ** 2
    # Ghost points give the slopes to second order.
    low[n], mid[n] = 2, -2 - k * k * h * h / b**2
    y[n] = -(1 + h / (2 * b)) * 2 * h * slope_b
    if a == 0:
        mid[0] = 1
    else:
        up[0], mid[0] = 2, -2 - k * k * h * h / a**2
        y[0] = (1 - h / (2 * a)) * 2 * h * slope_a
    bands = np.vstack([np.append(0, up[:-1]), mid, np.append(low[1:], 0)])
    return r, solve_banded((1, 1), bands, y)


def cowper(a, b, v, n=CELLS):
    """Shear coefficient after Cowper's definition: 2 (1 + v) I over v/2 (Ix - Iy) - A/Iy times the integral of x (chi + x y^2)."""
    area, inertia = np.pi * (b * b - a * a), np.pi / 4 * (b**4 - a**4)
    # Load on the boundary of the flexure function: -nx (v x^2/2 + (1 - v/2) y^2) - ny (2 + v) x y, in cosines of the angle and of three times it.
    theta = (np.arange(720) + 0.5) * 2 * np.pi / 720
    x, y = np.cos(theta), np.sin(theta)
    boundary = -x * (v * x * x / 2 + (1 - v / 2) * y * y) - y * (2 + v) * x * y
    one, three = (2 * np.mean(boundary * np.cos(k * theta)) for k in (1, 3))
    total = 0.0
    for k, part in ((1, one), (3, three)):
        r, f = harmonic(k, a, b, part * a * a, part * b * b, n)
        if k == 1:
            # Integral of x times f cos over the section.
            g = f * r * r
            total += np.pi * np.sum((g[1:] + g[:-1]) / 2 * np.diff(r))
    total += np.pi / 24 * (b**6 - a**6)  # integral of x^2 y^2
    return -2 * (1 + v) * inertia * inertia / (area * total)


def refined(a, b, v):
    """Second-order errors extrapolated away."""
    coarse, fine = cowper(a, b, v, CELLS // 2), cowper(a, b, v, CELLS)
    return fine + (fine - coarse) / 3


out = {"shear": {}}
for name, a, b, v in (("solid", 0.0, 5.0, 0.3), ("steel", 2.0, 5.0, 205 / 158 - 1), ("polymer", 5.0, 10.0, 0.375)):
    out["shear"][name] = digits(refined(a, b, v), 6)


def beam(nodes, sections, load, supports, shear):
    """Timoshenko beam elements; load at the last node. Returns deflection and rotation there, and reactions."""
    n = len(nodes)
    K = np.zeros((2 * n, 2 * n))
    for i, (E, G, d, bore, k) in enumerate(sections):
        L = nodes[i + 1] - nodes[i]
        I, A = np.pi / 64 * (d**4 - bore**4), np.pi / 4 * (d * d - bore * bore)
        phi = 12 * E * I / (k * G * A * L * L) if shear else 0.0
        c = E * I / (L**3 * (1 + phi))
        ke = c * np.array([
            [12, 6 * L, -12, 6 * L],
            [6 * L, (4 + phi) * L * L, -6 * L, (2 - phi) * L * L],
            [-12, -6 * L, 12, -6 * L],
            [6 * L, (2 - phi) * L * L, -6 * L, (4 + phi) * L * L],
        ])
        s = slice(2 * i, 2 * i + 4)
        K[s, s] += ke
    f = np.zeros(2 * n)
    f[-2] = load
    free = [j for j in range(2 * n) if j not in [2 * i for i in supports]]
    u = np.zeros(2 * n)
    u[free] = np.linalg.solve(K[np.ix_(free, free)], f[free])
    reactions = K @ u - f
    return u[-2], u[-1], [reactions[2 * i] for i in supports]


steel, polymer = (205e9, 79e9, 10e-3, 4e-3), (2.2e9, 0.8e9, 20e-3, 10e-3)
ks = [refined(2.0, 5.0, 205 / 158 - 1), refined(5.0, 10.0, 0.375)]
nodes = [0, 30e-3, 36e-3, 48e-3]
sections = [(*steel, ks[0]), (*steel, ks[0]), (*polymer, ks[1])]
bend, slope, reactions = beam(nodes, sections, 120, [0, 1], False)
whole, _, _ = beam(nodes, sections, 120, [0, 1], True)
I = [np.pi / 32 * (d**4 - b**4) for _, _, d, b in (steel, polymer)]
# Twist: torque through ten thousand slices.
twist = sum(3 * 6e-3 / 10000 / (79e9 * I[0]) for _ in range(10000)) + sum(3 * 12e-3 / 10000 / (0.8e9 * I[1]) for _ in range(10000))
out["overhang"] = {
    "bending": digits(bend * 1e6),
    "slope": digits(slope * 1e3),
    "shear": digits((whole - bend) * 1e6, 5),
    "far": digits(abs(reactions[0])),
    "near": digits(abs(reactions[1])),
    "twist": digits(twist * 1e3),
}


# Cord: tangents of two circles found by minimum, forces as vectors in space, bearings by six equations.
def tangent(r1, r2, C, crossed, side):
    """Direction from the drum (radius r2, at the origin) to the pinion (radius r1, at C along the first axis) of the branch on a side of the drum."""
    other = -side if crossed else side

    def gap(x):
        # Points of both circles; the branch is square to both radii.
        p = r2 * np.array([np.cos(x[0]), np.sin(x[0])])
        q = np.array([C, 0]) + r1 * np.array([np.cos(x[1]), np.sin(x[1])])
        d = (q - p) / np.linalg.norm(q - p)
        return (d @ p / r2) ** 2 + (d @ (q - np.array([C, 0])) / r1) ** 2

    x = minimize(gap, [side * 1.3, other * 1.3], method="Nelder-Mead", options={"xatol": 1e-13, "fatol": 1e-30, "maxiter": 20000}).x
    p = r2 * np.array([np.cos(x[0]), np.sin(x[0])])
    q = np.array([C, 0]) + r1 * np.array([np.cos(x[1]), np.sin(x[1])])
    return (q - p) / np.linalg.norm(q - p), p


def bearings(loads, ya, yb):
    """Forces of two bearings from the six equations of equilibrium of the shaft (y along it)."""
    A, rhs = np.zeros((4, 4)), np.zeros(4)
    for j, y in enumerate((ya, yb)):
        for k in (0, 1):
            A[k, 2 * j + k] = 1
            A[2 + k, 2 * j + k] = y
    for force, y in loads:
        rhs[:2] -= force
        rhs[2:] -= y * np.array(force)
    x = np.linalg.solve(A, rhs)
    return x[:2], x[2:]


turn = lambda a: np.array([np.cos(a), np.sin(a)])
out["stack"] = {}
for name, crossed in (("crossed", True), ("open", False)):
    for side_name, side in (("positive", 1), ("negative", -1)):
        (dt, _), (ds, _) = tangent(8e-3, 40e-3, 60e-3, crossed, side), tangent(8e-3, 40e-3, 60e-3, crossed, -side)
        taut, slack = 150 * dt, 60 * ds
        frame = np.array([turn(0.5), turn(0.5 + np.pi / 2)]).T
        loads = [(frame @ taut, 10e-3), (frame @ slack, 20e-3), (120 * turn(-1.2), 40e-3)]
        a, b = bearings(loads, 0.0, 30e-3)
        couple = [(taut[k] * (10e-3 - 15e-3) + slack[k] * (20e-3 - 15e-3)) for k in (0, 1)]
        out["stack"][f"{name} {side_name}"] = {
            "taut": [digits(x) for x in taut],
            "slack": [digits(x) for x in slack],
            "couples": [digits(x, 6) for x in couple],
            "loads": [[f"{x:.12g}" for x in force] for force, _ in loads],
            "first": digits(np.linalg.norm(a)),
            "second": digits(np.linalg.norm(b)),
            "parts": [[digits(x) for x in a], [digits(x) for x in b]],
        }

# Ring joint: pressure over cells, linear until its least value is zero; slip cell by cell.
r = 5e-3 + (np.arange(4000) + 0.5) * 5e-3 / 4000
cell = 2 * np.pi * r * 5e-3 / 4000
area, square = cell.sum(), (cell * r * r / 2).sum()
out["ring"] = {
    "gap": digits(1200 / area * square / 10e-3, 6),
    "slip": digits(0.15 * 1200 / area * (cell * r).sum(), 6),
    # Rigid parts: moment about the edge, least over pivots of the rim by linear programme of contact forces.
}
angle = np.arange(360) * np.pi / 180
tip = linprog(-np.concatenate([10e-3 * np.cos(angle)]), A_eq=np.ones((1, 360)), b_eq=[1200], bounds=[(0, None)] * 360)
out["ring"]["tips"] = digits(-tip.fun, 6)


# Pressure at the edge of that ring: cells on a grid that only push, their lift and tilt found by the balance of force and moment.
def edge_pressure(force, moment, outer, inner, n=4000):
    at = (np.arange(n) + 0.5) / n * 2 - 1
    x, y = np.meshgrid(at * outer, at * outer)
    inside = (x * x + y * y <= outer * outer) & (x * x + y * y >= inner * inner)
    # Cells in one row press alike: their number times their area.
    rows = inside.sum(axis=1) * (2 * outer / n) ** 2
    if moment == 0:
        return force / rows.sum()
    height = at * outer

    def tilt_for(lift):
        """Moment over force of a pressure max(0, height - lift)."""
        p = np.maximum(0, height - lift) * rows
        return float(np.sum(p * height) / np.sum(p))

    lift = brentq(lambda c: tilt_for(c) - moment / force, -1e3 * outer, 0.999 * outer, xtol=1e-15)
    p = np.maximum(0, height - lift) * rows
    return force / float(np.sum(p)) * (outer - lift)


out["edge"] = {str(m): digits(edge_pressure(1200, m, 10e-3, 5e-3) / 1e6, 4) for m in (0, 2, 7, 10)}

# Thin sleeve: a million springs round the ring that only push.
def sleeve(F, radius, wall, length, E, M, n=1_000_000):
    x = np.cos((np.arange(n) + 0.5) * 2 * np.pi / n) * radius
    k = E * wall * radius / length * 2 * np.pi / n

    def depth_for(tilt):
        return brentq(lambda d: k * np.maximum(0, d + tilt * x).sum() - F, -radius * abs(tilt) * 2 - 1, 1)

    def moment(tilt):
        d = depth_for(tilt)
        return k * (np.maximum(0, d + tilt * x) * x).sum() - M

    tilt = brentq(moment, 0, 1, xtol=1e-14)
    d = depth_for(tilt)
    touching = (d + tilt * x > 0).sum() / n * np.pi
    return tilt, touching, tilt * radius - d


tilt, half, gap = sleeve(1200, 8e-3, 3e-3, 20e-3, 2.2e9, 7.0, 200_000)
closed, whole_ring, none = sleeve(1200, 8e-3, 3e-3, 20e-3, 2.2e9, 3.0, 20_000)
out["sleeve"] = {"tilt": digits(tilt * 1e3, 6), "half": digits(half, 5), "gap": digits(gap * 1e3, 6), "closed": digits(closed * 1e3, 6)}

# Two bearings as springs under a rigid shaft: place and tilt of least energy under a moment, then the force of a spring.
def on_springs(moment, spacing, k=1e7):
    energy = lambda u: 0.5 * k * (u[0] ** 2 + (u[0] + spacing * u[1]) ** 2) - moment * u[1]
    # Newton on differences; the energy is a quadratic.
    h = np.array([1e-3, 1e-1])
    gradient = lambda u: np.array([(energy(u + e * h) - energy(u - e * h)) / (2 * e @ h) for e in np.eye(2)])
    slope = np.column_stack([(gradient(e * h) - gradient(-e * h)) / (2 * e @ h) for e in np.eye(2)])
    u = np.linalg.solve(slope, -gradient(np.zeros(2)))
    return abs(k * u[0])


# Cocking: balls spread over the ring in a thousand positions; rims by linear programme and as springs.
spread = (np.arange(1_000_000) + 0.5) * 2 * np.pi / 1_000_000
worst = lambda power: 0.9 / (8 * 7e-3 * np.mean(np.abs(np.cos(spread)) ** (power + 1)))
rim = np.arange(720) * np.pi / 360
# Pushing forces at the rims of cap and shoulder (radius 6 mm): axial balance, a moment of 0.9 N m, least force.
columns = np.concatenate([6e-3 * np.cos(rim), 6e-3 * np.cos(rim)])
sign = np.concatenate([np.ones(720), -np.ones(720)])
least = linprog(np.concatenate([np.ones(720), np.zeros(720)]), A_eq=np.vstack([sign, sign * columns]), b_eq=[0, 0.9], bounds=[(0, None)] * 1440)
# Elastic rims: springs that follow the tilt over the half that closes.
x = 6e-3 * np.cos(spread)
push = np.maximum(0, x)
elastic = 0.9 / ((push * x).sum() / push.sum() * 2)
out["cocking"] = {
    "linear": digits(worst(1)),
    "hertz": digits(worst(1.5)),
    "normal": digits(worst(1.5) / np.sin(0.2)),
    "rigid": digits(least.fun),
    "elastic": digits(elastic),
    # Cap of 6 mm under its screw, pivoting on an edge of 9 mm: moments about that edge.
    "screw": digits(np.linalg.solve([[1, -1], [0, 9e-3]], [elastic, elastic * 15e-3])[1]),
    "pair": digits(on_springs(0.9, 14e-3)),
}
# Rod with its pins in planes 2 mm apart: part of its force along the pins, from the angle of the rod.
lean = np.arctan2(2e-3, np.sqrt(150e-3**2 - 2e-3**2))
out["cocking"]["pull"] = digits(150 * np.sin(lean))

# Cord along a link: tangents numerically, tensions by moments of both branches, sum as vectors.
out["link"] = {}
for name, crossed in (("open", False), ("crossed", True)):
    (d1, p1), (d2, p2) = tangent(16e-3, 20e-3, 150e-3, crossed, 1), tangent(16e-3, 20e-3, 150e-3, crossed, -1)
    cross = lambda p, d: p[0] * d[1] - p[1] * d[0]
    # Both tensions from their sum at rest and the moment about the knee.
    T = np.linalg.solve([[1, 1], [cross(p1, d1), cross(p2, d2)]], [240, 3])
    total = T[0] * d1 + T[1] * d2
    out["link"][name] = {
        "taut": digits(max(T)),
        "slack": digits(min(T)),
        "force": digits(np.linalg.norm(total)),
        "compression": digits(total[0]),
        "least": digits((max(T) - min(T)) / 2),
    }

# Travel of the knee's drum: corners by brute force.
grid = [(h, k) for h in np.linspace(-1.0, 0.7, 35) for k in np.linspace(0.2, 2.0, 37)]
out["travel"] = {}
for name, carried, ratio in (("body", 1, -1.25), ("thigh", 0, 1.25)):
    drum = [carried * h + ratio * k for h, k in grid]
    out["travel"][name] = [digits(min(drum)), digits(max(drum)), digits(max(drum) - min(drum))]

# Branch planes: points of a helix of 1.2 mm pitch, wrap 3 turns, pinion turned by half a turn.
z = lambda a: 1.2 * a / (2 * np.pi)
out["planes"] = [digits(5 + z(np.pi - 3 * np.pi)), digits(5 + z(np.pi + 3 * np.pi)), digits(z(6 * np.pi))]
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
