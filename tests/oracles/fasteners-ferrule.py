"""Shear along a potted round joint by a boundary-value solver (scipy solve_bvp), apart from the closed form; `grown` is the strain by which the cord would outgrow the socket, `third` the shear at 0.3 of the length.

Writes fasteners-ferrule.json. Run: python3 tests/oracles/fasteners-ferrule.py
"""
import json
from math import log, pi
from pathlib import Path

import numpy as np
from scipy.integrate import solve_bvp


def solve(force, cord, bore, length, ea, es, shear, held, grown):
    k = 2 * pi * shear / log(bore / cord)

    # Lengths in joint lengths, forces in the pull, shear per length in the mean: all of order one.
    def slope(x, y):
        n, q = y
        socket = (1 - n) if held == "farEnd" else -n
        return np.vstack([-q, k * length**2 * (-n / ea + socket / es - grown / force)])

    x = np.linspace(0, 1, 2001)
    guess = np.vstack([1 - x, np.ones_like(x)])
    result = solve_bvp(slope, lambda a, b: np.array([a[0] - 1, b[0]]), x, guess, tol=1e-9, max_nodes=100000)
    assert result.success, result.message
    q = result.sol([0, 1, 0.3])[1] * force / (pi * cord * length)
    given = dict(force=force, cord=cord, bore=bore, length=length, ea=ea, es=es, shear=shear, held=held, grown=grown)
    return dict(**given, mouth=float(q[0]), end=float(q[1]), third=float(q[2]))


rows = [
    solve(150, 0.001, 0.0016, 0.015, 20e3, es, g, held, grown)
    for es in (1e12, 60e3, 8e3)
    for g in (50e6, 1e9)
    for held in ("mouth", "farEnd")
    for grown in (0.0, -1.2e-3, 2e-3)
]
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
print(rows[0], rows[4])
