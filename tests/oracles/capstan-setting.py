"""Setting of belts and gears by models that share nothing with the library. Writes capstan-setting.json.

Pitch: the lowest eigenvalue of a chain of 20,000 masses on a tensioned thread. Side force: the energy of both halves of a span, differenced. Width over
teeth: sampled involutes of the outer teeth, and the farthest of them across the jaws. Backlash: two gears of sampled flanks, the wheel turned both ways
until a point of it is inside a tooth of the pinion.
"""
import json
import math
from pathlib import Path

import numpy as np
from scipy.linalg import eigh_tridiagonal

A = math.radians(20)


def pitch(span, tension, per_length, n=20_000):
    step = span / n
    k, m = tension / step, per_length * step
    value = eigh_tridiagonal(np.full(n - 1, 2 * k / m), np.full(n - 2, -k / m), select="i", select_range=(0, 0), eigvals_only=True)[0]
    return math.sqrt(value) / (2 * math.pi)


def side_force(span, tension, deflection, rigidity):
    def energy(d):
        longer = math.hypot(span / 2, d) - span / 2
        return 2 * (tension * longer + rigidity * longer**2 / span)

    h = 1e-6
    return (energy(deflection + h) - energy(deflection - h)) / (2 * h)


def involute(t):
    return math.tan(t) - t


def half_angle(r, z, m, thinning=0.0):
    """Half of a tooth at a radius, as an angle about the axis."""
    pitch_radius = z * m / 2
    base = pitch_radius * math.cos(A)
    return (math.pi * m / 2 - thinning) / (2 * pitch_radius) + involute(A) - involute(math.acos(base / r))


def over_teeth(z, k, m, thinning, n=400_000):
    base, tip = z * m / 2 * math.cos(A), (z + 2) * m / 2
    # The last of k teeth, which stand symmetric about the y axis.
    turn = (k - 1) * math.pi / z
    best = 0.0
    for r in np.linspace(base * (1 + 1e-12), tip, n):
        best = max(best, r * math.sin(turn + half_angle(float(r), z, m, thinning)))
    return 2 * best


def backlash(z1, z2, m, distance, n=20_000):
    tip1, tip2 = (z1 + 2) * m / 2, (z2 + 2) * m / 2
    base1, base2 = z1 * m / 2 * math.cos(A), z2 * m / 2 * math.cos(A)
    radii = np.linspace(base2 * (1 + 1e-12), tip2, n)
    halves = np.array([half_angle(float(r), z2, m) for r in radii])
    pitch1 = 2 * math.pi / z1

    def overlaps(turn):
        for tooth in (-1, 0, 1):
            for side in (1, -1):
                # A tooth of the wheel points at the pinion, whose gap points back at turn 0.
                at = math.pi + turn + tooth * 2 * math.pi / z2 + side * halves
                x, y = distance + radii * np.cos(at), radii * np.sin(at)
                r, angle = np.hypot(x, y), np.arctan2(y, x)
                inside = (r > base1) & (r < tip1)
                if not inside.any():
                    continue
                own = r[inside]
                t = np.arccos(base1 / own)
                half = math.pi / (2 * z1) + involute(A) - (np.tan(t) - t)
                near = angle[inside] % pitch1 - pitch1 / 2
                if (np.abs(near) < half).any():
                    return True
        return False

    def limit(sign):
        low, high = 0.0, math.pi / z2
        for _ in range(50):
            mid = (low + high) / 2
            if overlaps(sign * mid):
                high = mid
            else:
                low = mid
        return low

    return (limit(1) + limit(-1)) * z2 * m / 2


Path(__file__).with_suffix(".json").write_text(
    json.dumps(
        {
            "pitch": f"{pitch(0.11, 120, 0.009):.6g}",
            "sideForces": [f"{side_force(0.12, 300, 0.0024, 60e3):.6g}", f"{side_force(0.09, 80, 0.003, 15e3):.6g}"],
            "widths": [f"{1000 * over_teeth(20, 3, 1e-3, 0):.6g}", f"{1000 * over_teeth(64, 8, 0.8e-3, 0.05e-3):.6g}"],
            "backlashes": [f"{1000 * backlash(15, 64, 0.8e-3, 0.0318):.4g}", f"{1000 * backlash(20, 40, 1e-3, 0.0302):.4g}"],
        },
        indent=1,
    )
    + "\n"
)
