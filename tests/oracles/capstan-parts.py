"""Belts, anchors, creep and take-up by models that share nothing with the library: pitches laid round a pulley, anchors as points on a drum,
relaxation by integration over the history, cord lengths by root finding. Writes capstan-parts.json. Run: python3 tests/oracles/capstan-parts.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq


def digits(x, n=5):
    return f"{float(x):#.{n}g}"


out = {}


# Teeth in mesh: pitches laid round the small pulley between the points where the straight spans touch it.
def in_mesh(small, large, pitch, centre):
    r, R = pitch * small / (2 * np.pi), pitch * large / (2 * np.pi)
    # Touching line of both circles: its direction from the foot of the normal, by root finding.
    lean = brentq(lambda a: R - r - centre * np.sin(a), 0, np.pi / 2)
    start, end = np.pi / 2 - lean, -(np.pi / 2 - lean)
    return (start - end) * r / pitch


out["mesh"] = digits(in_mesh(20, 60, 3.0, 400.0), 3)
out["meshEqual"] = digits(in_mesh(18, 18, 5.0, 200.0), 5)


# Anchors as points of the drum: length of the rim between the tangent point and the anchor, in small steps, least over the travel and both tracks.
def least_wrap(wrap, travel, n=201):
    def rim(anchor):
        a = np.linspace(0, anchor, 4001)
        return np.linalg.norm(np.diff(np.stack([np.cos(a), np.sin(a)], axis=1), axis=0), axis=1).sum()

    return min(rim(sense * wrap + turn) for turn in np.linspace(-travel / 2, travel / 2, n) for sense in (1, -1))


out["residual"] = digits(np.degrees(least_wrap(np.radians(200), np.radians(110))), 4)


# One track: both anchors on an arc; the drum turns until one of them, less its residual wrap, comes to its tangent point.
def track_travel(wrapped, gap, residual):
    middle = wrapped / 2
    free = lambda turn: min(middle - gap / 2 + turn, middle - gap / 2 - turn) - residual
    reach = brentq(free, 0, wrapped)
    return 2 * reach


out["track"] = digits(np.degrees(track_travel(np.radians(300), np.radians(20), np.radians(15))), 4)


# Pretension that relaxes: the exact integral equation of a cord with logarithmic creep between rigid ends, trapezoidal in logarithmic time.
def relaxed(t0, ea, per_decade, start, end, n=3000):
    # Compliance at unit tension after a step, against the state at the start: 1/EA + c log10(t/start) / T0, creep proportional to tension.
    J = lambda t: 1 / ea + (per_decade / t0) * np.log10(1 + np.maximum(t, 0) / start)
    times = np.concatenate([[0], np.geomspace(start * 1e-4, end, n)])
    steps = [t0]
    for i in range(1, len(times)):
        known = sum(dT * J(times[i] - (times[k] + times[k - 1]) / 2 if k else times[i]) for k, dT in enumerate(steps))
        steps.append((t0 / ea - known) / J((times[i] - times[i - 1]) / 2))
    return sum(steps)


share = relaxed(100.0, 30e3, 2e-4, 1.0, 999.0, 1200) / 100
out["relaxed"] = digits(share, 3)


# Take-up: the length by which the anchor must move until a cord that has bedded, crept and cooled has its pretension again.
def moved(length, pretension, ea, bedding, creep, slack, rise, frame, cord):
    frame_length = length * (1 + rise * frame)
    free = length * (1 + rise * cord)
    stretched = lambda move: (frame_length + move - slack - length * (bedding + creep)) / free - 1 - pretension / ea
    return brentq(stretched, -length, length)


cold = dict(length=800.0, pretension=140.0, ea=35e3, bedding=2e-3, creep=5e-4, slack=0.3, rise=-20.0, frame=90e-6, cord=-5e-6)
out["takeUp"] = digits(moved(**cold), 3)
for part, rest in (("elastic", dict(bedding=0, creep=0, slack=0, rise=0)), ("bedding", dict(pretension=0, creep=0, slack=0, rise=0)), ("creep", dict(pretension=0, bedding=0, slack=0, rise=0))):
    out[part] = digits(moved(**{**cold, **rest}), 3)

# Drift of a short pinion wrap: lengths of unstretched cord that pass the pinion in many cycles, element by element.
def drift(ratio, stroke, taut, slack, ea, radius=8e-3, n=4000):
    """Stroke under load and back without it: the pinion rolls the cord in at the tension of the span that enters."""
    rest = (taut + slack) / 2
    gone = 0.0
    step = ratio * stroke / n
    for _ in range(n):
        gone += radius * step / (1 + taut / ea)
    for _ in range(n):
        gone -= radius * step / (1 + rest / ea)
    return abs(gone) / radius


out["drift"] = digits(drift(6.0, 1.2, 85.0, 35.0, 2e6) * 1e6, 3)
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
