"""A hexagon nut turned in a wider hexagon pocket, by brute force: outline against wall at 200 001 points.

Moments by virtual work with numerical derivatives; best turn and balance by search.
Writes fasteners-nut.json. Run: python3 tests/oracles/fasteners-nut.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import trapezoid
from scipy.optimize import brentq, minimize_scalar

S, H, STRENGTH = 7.0, 3.0, 60.0  # mm, mm, MPa


def overlap(turn, clearance):
    """Depth of the nut beyond the wall x = (S + clearance)/2, along the wall."""
    a = S / np.sqrt(3)
    # A right turn seen from the wall: corners at 30° − turn and −30° − turn; the edge between them and its neighbours bound the nut.
    angles = np.deg2rad([90, 30, -30, -90]) - turn
    x, y = a * np.cos(angles), a * np.sin(angles)
    along = np.linspace(-a, a, 200_001)
    outline = np.interp(along, y[::-1], x[::-1])
    return along, np.maximum(0, outline - (S + clearance) / 2)


def work(turn, clearance, power):
    """Integral of the overlap to a power: area of wall pressed aside (1), twice the energy of a bed of unit springs (2)."""
    along, depth = overlap(turn, clearance)
    return trapezoid(depth**power, along)


def rate(turn, clearance, power, step=1e-4):
    """Moment by virtual work: change of that integral per angle, by a five-point difference."""
    at = [work(turn + k * step, clearance, power) for k in (-2, -1, 1, 2)]
    return (at[0] - 8 * at[1] + 8 * at[2] - at[3]) / (12 * step)


rows = []
for clearance in (0.05, 0.15, 0.3, 0.6):
    best = minimize_scalar(lambda turn: -rate(turn, clearance, 1), bounds=(1e-3, np.pi / 6 - 1e-3), method="bounded", options=dict(xatol=1e-9))
    grid = np.linspace(2e-3, 0.5, 200)
    for torque, bed in ((0.1, 500.0), (0.5, 500.0), (0.5, 5000.0)):
        held = np.array([6 * H * bed / 2 * rate(t, clearance, 2) / 1000 for t in grid])
        top = int(np.argmax(held))
        if held[top] < torque:
            continue
        first = max(i for i in range(top) if held[i] < torque)
        turn = brentq(lambda t: 6 * H * bed / 2 * rate(t, clearance, 2) / 1000 - torque, grid[first], grid[first + 1])
        peak = bed * overlap(turn, clearance)[1].max()
        rows.append(dict(clearance=clearance, rounding=6 * H * STRENGTH * -float(best.fun) / 1000, torque=torque, bed=bed, peak=float(peak), turn=float(np.rad2deg(turn))))
        print(rows[-1])
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
