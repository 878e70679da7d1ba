"""Outer ring of a ball bearing in a housing: two thick rings by their displacement u = A r + B/r, four conditions solved at once.

Writes fasteners-seat.json. Run: python3 tests/oracles/fasteners-seat.py
"""
import json
from pathlib import Path

import numpy as np


def stress(E, nu, r):
    """Radial stress of A r + B/r in plane stress, as coefficients of A and B."""
    return E / (1 - nu), -E / (1 + nu) / r**2


def solve(outside, raceway, housing, E, nu, interference, Er=207e3, nur=0.3):
    rr, rs, rh = raceway / 2, outside / 2, housing / 2
    m, y = np.zeros((4, 4)), np.zeros(4)
    m[0, :2] = stress(Er, nur, rr)  # raceway free
    m[1, 2:] = stress(E, nu, rh)  # outside free
    m[2, :2], m[2, 2:] = stress(Er, nur, rs), [-v for v in stress(E, nu, rs)]  # equal pressure
    m[3] = [-rs, -1 / rs, rs, 1 / rs]  # housing minus ring makes up the interference
    y[3] = interference / 2
    a, b, c, d = np.linalg.solve(m, y)
    pressure = -(stress(Er, nur, rs)[0] * a + stress(Er, nur, rs)[1] * b)
    return pressure, -2 * (a * rr + b / rr)


rows = []
for outside, raceway, housing, E, nu in [(19, 17.2, 30, 2000, 0.38), (22, 19.6, 30, 8000, 0.35), (26, 22.8, 60, 207000, 0.3), (22, 19.6, 26, 900, 0.4)]:
    pressure, shrink = solve(outside, raceway, housing, E, nu, 0.04)
    rows.append(dict(outside=outside, raceway=raceway, housing=housing, modulus=E, poisson=nu, pressure=pressure, transfer=shrink / 0.04))
    print(rows[-1])
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
