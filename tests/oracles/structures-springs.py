"""Coiled springs by models that share nothing with the library: the wire of a helix by energy integrals and by the theory of curved bars, its surge as a chain of
masses, a spring across a joint by rotation matrices and differences.
Writes structures-springs.json. Run: python3 tests/oracles/structures-springs.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq


def digits(x, n=7):
    return f"{x:#.{n}g}"


def extension_rate(d, D, n, G, E, pitch):
    """Unit load dotted with itself over the helix: twist and bending of the wire, pitch and all. The load is on the axis."""
    slope = np.arctan(pitch / (np.pi * D))
    length = n * np.pi * D / np.cos(slope)
    I = np.pi * d**4 / 64
    twist, bend = D / 2 * np.cos(slope), D / 2 * np.sin(slope)
    return 1 / (length * (twist**2 / (G * 2 * I) + bend**2 / (E * I)))


def torsion_rate(d, D, n, E, legs):
    """A torque bends each bit of the body alike; each leg is a bar pressed at its end, its moment growing from there to the axis."""
    I = np.pi * d**4 / 64
    body = quad(lambda s: 1 / (E * I), 0, n * np.pi * D)[0]
    ends = sum(quad(lambda s, l=l: (s / l) ** 2 / (E * I), 0, l)[0] for l in legs)
    return 1 / (body + ends)


def curved_bar_factor(index):
    """Stress at the inside of a round bar bent in its plane over that of a straight one (Winkler and Bach), neutral radius found by integration."""
    c = index / 2  # mean radius in wire diameters, wire of diameter 1
    width = lambda y: 2 * np.sqrt(max(0.0, 0.25 - y * y))
    area = quad(width, -0.5, 0.5)[0]
    over = quad(lambda y: width(y) / (c + y), -0.5, 0.5)[0]
    neutral = area / over
    e = c - neutral
    inner = (neutral - (c - 0.5)) / (area * e * (c - 0.5))
    return inner / (32 / np.pi)


def surge(d, D, n, G, rho, parts=1200):
    """Lowest mode of a chain of equal masses on equal springs, both ends held, mass and rate of the whole spring; Richardson over two chains."""
    rate = G * d**4 / (8 * D**3 * n)
    mass = rho * np.pi**2 / 4 * d**2 * D * n

    def chain(N):
        k, m = rate * N, mass / N
        A = np.diag(np.full(N - 1, 2 * k)) - np.diag(np.full(N - 2, k), 1) - np.diag(np.full(N - 2, k), -1)
        return np.sqrt(np.linalg.eigvalsh(A / m)[0]) / (2 * np.pi)

    coarse, fine = chain(parts // 2), chain(parts)
    return fine + (fine - coarse) / 3


def across(up, forward, down, ahead, q):
    def length(a):
        turn = np.array([[np.cos(a), np.sin(a)], [-np.sin(a), np.cos(a)]])  # about +y, seen in x and z
        return np.linalg.norm(turn @ np.array([ahead, -down]) - np.array([forward, up]))

    h = 1e-5
    arm = (8 * (length(q + h) - length(q - h)) - (length(q + 2 * h) - length(q - 2 * h))) / (12 * h)
    return length(q), arm


out = {
    "rate": digits(extension_rate(1.6e-3, 11.1e-3, 21, 70e9, 180e9, 1e-9) / 1e3),
    "pitched": digits(extension_rate(1.6e-3, 11.1e-3, 21, 70e9, 180e9, 2e-3) / 1e3),
    "torsionRate": [digits(torsion_rate(1.5e-3, 12e-3, n, 206e9, l)) for n, l in ((4.25, (0.02, 0.03)), (6, (0.015, 0.015)))],
    "curvedBar": {str(c): digits(curved_bar_factor(c), 5) for c in (4, 6, 8, 12, 20)},
    "surge": digits(surge(1.6e-3, 11.1e-3, 21, 70e9, 7900)),
    "across": [],
    "wound": [],
}
for args in ((0.06, 0.02, 0.04, 0.025, 1.2), (0.06, 0.02, 0.04, 0.025, -0.4), (0.05, -0.03, 0.03, -0.02, 0.9), (0.02, 0.04, 0.09, 0.01, -1.1)):
    length, arm = across(*args)
    out["across"].append({"given": args, "length": digits(length * 1e3, 9), "arm": digits(arm * 1e3, 9)})
out["travel"] = []
for args in ((0.06, 0.02, 0.04, 0.025, -0.3, 2.0), (0.05, -0.03, 0.03, -0.02, -2.5, 2.2), (0.02, 0.04, 0.09, 0.01, 0.1, 0.4)):
    found = [across(*args[:4], q)[0] for q in np.linspace(args[4], args[5], 200001)]
    out["travel"].append({"given": args, "shortest": digits(min(found) * 1e3, 8), "longest": digits(max(found) * 1e3, 8)})
for d, D, n, turn in ((1.5e-3, 12e-3, 4.25, 1.2), (2e-3, 20e-3, 6, 2.5)):
    wire = n * np.pi * D
    narrow = brentq(lambda x: wire / (np.pi * x) - (n + turn / (2 * np.pi)), D / 3, D)
    out["wound"].append({"given": (d, D, n, turn), "inner": digits((narrow - d) * 1e3), "body": digits((wire / (np.pi * narrow) + 1) * d * 1e3)})

Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
