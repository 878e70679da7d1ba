"""Bonds, pockets, lugs and bearings by models that share nothing with the library: faces and outlines as small pieces, friction as vectors, a rolling ball step by step.
Writes fasteners-parts.json. Run: python3 tests/oracles/fasteners-parts.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq


def digits(x, n=5):
    return f"{float(x):#.{n}g}"


out = {}


def outline(corners, n=2000):
    """Middles, lengths and directions of small pieces of a closed polygon."""
    a = np.array(corners)
    b = np.roll(a, -1, axis=0)
    s = (np.arange(n) + 0.5) / n
    middles = (a[:, None, :] + s[None, :, None] * (b - a)[:, None, :]).reshape(-1, 2)
    length = np.repeat(np.linalg.norm(b - a, axis=1) / n, n)
    along = np.repeat((b - a) / np.linalg.norm(b - a, axis=1)[:, None], n, axis=0)
    return middles, length, along


# Bonded nut of 7 mm across flats, 3.2 mm high: shear on its outline, the plug of the same outline in tension and shear.
hexagon = [(7 / np.sqrt(3) * np.cos(a), 7 / np.sqrt(3) * np.sin(a)) for a in np.arange(6) * np.pi / 3]
middles, length, along = outline(hexagon)
arm = middles[:, 0] * along[:, 1] - middles[:, 1] * along[:, 0]
tau, layers, substrate = 6.0, 12.0, 5.0
area = 0.5 * abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(hexagon, hexagon[1:] + hexagon[:1])))
out["nut"] = {
    "bond": digits(tau * 3.2 * length.sum()),
    "substrate": digits(substrate * 3.2 * length.sum()),
    "plug": digits(layers * area + substrate * 3.2 * length.sum()),
    "torque": digits(substrate * 3.2 * (length * arm).sum() / 1000),
}

# Bonded pin of 3 mm, 4 mm deep: shear on the pieces of a cylinder.
a = (np.arange(100_000) + 0.5) * 2 * np.pi / 100_000
piece = 1.5 * 2 * np.pi / 100_000 * 4.0
out["pin"] = {"force": digits(piece * len(a) * tau), "torque": digits(piece * len(a) * tau * 1.5 / 1000)}

# Nut in a pocket: each flat presses on the half ahead of its middle in proportion to the distance from it; peak by balance of moments.
flat, height = 7 / np.sqrt(3), 3.2
x = (np.arange(100_000) + 0.5) / 100_000 * flat / 2
unit = 6 * (x * x).sum() * flat / 2 / 100_000 * height
slope = 2500.0 / unit  # pressure per distance for 2.5 N m
mean = (slope * x).sum() * flat / 2 / 100_000 / flat
# The cut through the pocket: pressure as that of a fluid on half the pocket, held by both walls of 2 mm.
n = 100_000
t = (np.arange(n) + 0.5) / n * np.pi
pull = (mean * np.sin(t) * 3.5 * np.pi / n).sum() / (2 * 2.0)
out["pocket"] = {"mean": digits(mean), "tension": digits(pull)}

# Lug: length of the shear planes, from where a line along the load at 40 degrees of the hole meets it to the edge, by root finding.
radius, edge = 2.5, 9.0
for name, degrees in (("front", 0.0), ("forty", 40.0)):
    y = radius * np.sin(np.radians(degrees))
    leaves = brentq(lambda x: x * x + y * y - radius * radius, 0.1, 2 * radius)
    out[name] = {"length": digits(edge - leaves), "shear": digits(900.0 / (2 * (edge - leaves) * 4.0))}

# Joint under a head: area of the ring by small cells.
cells = (np.arange(4000) + 0.5) / 4000 * 7.1 - 3.55
r2 = cells[:, None] ** 2 + cells[None, :] ** 2
ring = ((r2 < 3.5**2) & (r2 > 2.25**2)).sum() * (7.1 / 4000) ** 2
out["head"] = {"area": digits(ring, 4), "pressure": digits(800.0 / ring, 4), "force": digits(10.0 * ring, 4)}


# Press fit under thrust and torque: a sleeve of pieces, each with Coulomb friction against its slip; the load grows until none holds.
def slips(thrust, torque, pressure=4.0, d=6.0, length=10.0, mu=0.15, n=500):
    piece = np.pi * d * length / n
    # Slip along a helix, its direction such that both loads grow together.
    def share(lead):
        along = mu * pressure * piece * np.sin(lead) * n
        around = mu * pressure * piece * np.cos(lead) * n * d / 2
        return along * torque - around * thrust

    lead = brentq(share, 1e-9, np.pi / 2 - 1e-9)
    return mu * pressure * piece * n * np.sin(lead) / thrust


out["press"] = {"reserve": digits(slips(40.0, 90.0))}

# Swinging bearing: turns in a cycle by adding small steps; a ball between races of nearly one radius rolls half as far as the ring.
swing = 0.3 * np.sin(np.linspace(0, 2 * np.pi, 200_001))
out["swing"] = {"turns": digits(np.abs(np.diff(swing)).sum() / (2 * np.pi))}
inner, outer = 10.0, 10.0 + 2e-6
ball = brentq(lambda w: inner * 1.0 - (inner + outer) / 2 * w - (outer * 0 + (inner + outer) / 2 * w), 0, 1)
out["swing"]["pitch"] = digits(np.degrees(2 * np.pi / 8 / ball), 5)

Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
