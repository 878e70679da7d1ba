"""Winding of a cord drive by points: grooves as points in space that turn with their pulley, cord as pieces in series. Writes capstan-winding.json. Run: python3 tests/oracles/capstan-winding.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq


def digits(x, n=5):
    return f"{float(x):#.{n}g}"


out = {}


class Groove:
    """Points of a helical groove, in the axes of its pulley; the pulley turns, and the cord leaves where a point passes the tangent direction."""

    def __init__(self, radius, pitch, turns, n=20000):
        a = np.linspace(-turns * np.pi, turns * np.pi, int(n * turns) + 1)
        self.points = np.stack([radius * np.cos(a), radius * np.sin(a), pitch * a / (2 * np.pi)], axis=1)

    def leaves(self, turn, near):
        """Place along the axis of the point that is in the direction of the first axis, nearest to a place before."""
        c, s = np.cos(turn), np.sin(turn)
        x, y = c * self.points[:, 0] + s * self.points[:, 1], c * self.points[:, 1] - s * self.points[:, 0]
        crossing = np.flatnonzero((y[:-1] <= 0) & (y[1:] > 0) & (x[:-1] > 0))
        part = -y[crossing] / (y[crossing + 1] - y[crossing])
        z = self.points[crossing, 2] + part * (self.points[crossing + 1, 2] - self.points[crossing, 2])
        return z[np.argmin(np.abs(z - near))]


def walk(groove, turns):
    """Places at which the cord leaves while the pulley turns, step by step from zero."""
    place, places = 0.0, []
    for turn in turns:
        place = groove.leaves(turn, place)
        places.append(place)
    return np.array(places)


travel = np.radians(120)
half = np.linspace(0, travel / 2, 61)
pinion = Groove(8.0, 1.2, 6)
both = np.concatenate([walk(pinion, 6 * half), walk(pinion, -6 * half)])
out["walk"] = digits(both.max() - both.min())
# Length with grooves: every point in contact with three turns of cord over the travel, and a turn to spare.
out["pinion"] = digits(both.max() - both.min() + 3 * 1.2 + 1.2)
drum = lambda lead: Groove(48.0, lead, 1.5)
offset = lambda lead, turns=half: walk(drum(lead), turns)[-1] - walk(pinion, 6 * turns)[-1]
out["matched"] = digits(brentq(lambda lead: offset(lead), 1.0, 15.0, xtol=1e-9), 4)
out["mismatch"] = digits(abs(offset(2.0)), 4)
wrapped = walk(drum(7.2), np.linspace(0, np.radians(200), 201))
out["drum"] = digits(2 * (wrapped.max() - wrapped.min() + 1.2), 4)
# Reduction: angle of the pinion whose rim is as long as that of a radian of the drum, as polygons.
rim = lambda radius, angle: np.linalg.norm(np.diff(radius * np.stack([np.cos(np.linspace(0, angle, 4000)), np.sin(np.linspace(0, angle, 4000))]), axis=1), axis=0).sum()
out["ratio"] = digits(brentq(lambda a: rim(8.0, a) - rim(48.0, 1.0), 0.1, 20))

# Pretension per turn of a screw: pieces of cord in series that must be longer by the lead, in the limit of small changes.
pieces = np.random.default_rng(1).dirichlet(np.ones(50)) * 450
lead = 1e-6
out["screw"] = digits(brentq(lambda t: (pieces * (1 + t / 20e3)).sum() - 450 - lead, 0, 1, xtol=1e-18) / lead * 0.7)
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
