"""Shares of the weight on the feet of a walk by models that share nothing with the library: at a thousand moments of each twelfth of a stance, least
squares over non-negative forces in equilibrium (every set of feet tried), and where there are none the two feet whose line is
nearest to the weight, found by a minimiser. Writes kinematics-walking.json. Run: python3 tests/oracles/kinematics-walking.py
"""
import itertools
import json
from pathlib import Path

import numpy as np
from scipy.optimize import minimize_scalar

PARTS = 12
LATERAL = {(0, "left"): 0.25, (0, "right"): 0.75, (1, "left"): 0.0, (1, "right"): 0.5}


def equilibrium(feet, at):
    """Least squares over forces that push: every set of feet is tried, the feasible one with the least sum of squares is the answer."""
    best = None
    for size in range(3, len(feet) + 1):
        for some in itertools.combinations(range(len(feet)), size):
            A = np.array([[1.0, feet[i][0], feet[i][1]] for i in some]).T
            if np.linalg.matrix_rank(A, tol=1e-9) < 3:
                continue
            f = np.linalg.pinv(A) @ np.array([1.0, *at])
            if f.min() < -1e-9:
                continue
            if best is None or f @ f < best[0]:
                full = np.zeros(len(feet))
                full[list(some)] = np.maximum(0, f)
                best = (f @ f, full)
    return None if best is None else best[1]


def beside(feet, at):
    found = None
    for i, j in itertools.combinations(range(len(feet)), 2):
        a, b = np.array(feet[i]), np.array(feet[j])
        r = minimize_scalar(lambda t: np.hypot(*(a + t * (b - a) - at)), bounds=(0, 1), method="bounded", options={"xatol": 1e-12})
        t = min((0.0, 1.0, r.x), key=lambda t: np.hypot(*(a + t * (b - a) - at)))
        off = np.hypot(*(a + t * (b - a) - at))
        if found is None or off < found[0] - 1e-12:
            full = np.zeros(len(feet))
            full[i], full[j] = 1 - t, t
            found = (off, full)
    return found[1]


def walk(rows, duty, spacing, width, step, forward, left, phases, moments):
    legs = [(row, side, spacing * (0.5 - (row / (rows - 1) if rows > 1 else 0.5)), (width if side == "left" else -width) / 2)
            for side in ("left", "right") for row in range(rows)]
    largest = np.zeros((rows, PARTS))
    for own_row, own_side, _, _ in legs:
        for part in range(PARTS):
            for u in (np.arange(moments) + 0.5) / moments:
                moment = phases[(own_row, own_side)] + duty * (part + u) / PARTS
                standing, feet = [], []
                for row, side, x, y in legs:
                    since = (moment - phases[(row, side)]) % 1
                    if since < duty:
                        standing.append((row, side))
                        feet.append((x + step * (0.5 - since / duty), y))
                at = (forward, left)
                shares = np.array([1.0]) if len(feet) == 1 else None
                if len(feet) > 2:
                    shares = equilibrium(feet, at)
                if shares is None:
                    shares = beside(feet, at)
                mine = shares[standing.index((own_row, own_side))]
                largest[own_row, part] = max(largest[own_row, part], mine)
    return [f"{x:.4f}" for x in largest.flatten()]


def wave(rows, duty):
    lag = min(0.5, 1 - duty)
    return {(row, side): ((rows - 1 - row) * lag + (0 if side == "left" else 0.5)) % 1 for row in range(rows) for side in ("left", "right")}


CASES = {
    "level": (2, 0.75, 0.42, 0.306, 0.12, 0, 0),
    "slow": (2, 0.85, 0.36, 0.24, 0.1, 0.01, 0.006),
    "two feet": (2, 0.65, 0.42, 0.306, 0.12, 0, 0),
    "uphill": (2, 0.75, 0.42, 0.306, 0.12, -0.0723, 0),
    "across": (2, 0.75, 0.42, 0.306, 0.12, 0, 0.0723),
    "six feet": (3, 0.6, 0.5, 0.3, 0.12, 0, 0),
    "two legs": (1, 0.6, 0.2, 0.2, 0.1, 0, 0),
}
out = {name: walk(*case, LATERAL if case[0] == 2 else wave(case[0], case[1]), 400 if case[0] < 3 else 100) for name, case in CASES.items()}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1))
