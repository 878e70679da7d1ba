"""Torsion of solid rectangles and of boxes by Prandtl's stress function: finite differences on a square grid (scipy sparse solver), refined and
extrapolated. In a box the function is constant along the hole; that constant follows from the balance of membrane and pressure over the hole.

`constant` is the torsion constant over (larger side x smaller side cubed), `peak` the largest shear stress times that same product over the
smaller side and the torque. Writes structures-torsion.json. Run: python3 tests/oracles/structures-torsion.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve


def solve(nx, ny, nt, h):
    """Torsion constant and edge slope of a rectangle of nx by ny cells of size h with a hole nt cells inside (0: no hole)."""
    index = -np.ones((nx + 1, ny + 1), dtype=int)
    hole = np.zeros_like(index, dtype=bool)
    if nt > 0:
        hole[nt : nx - nt + 1, nt : ny - nt + 1] = True
    inside = np.zeros_like(hole)
    inside[1:nx, 1:ny] = True
    free = inside & ~hole
    index[free] = np.arange(free.sum())
    n = int(free.sum())
    size = n + (1 if nt > 0 else 0)
    index[hole] = n
    rows, cols, vals = [], [], []
    load = np.full(size, 2.0 * h * h)
    if nt > 0:
        # Flux over the edge of the hole carries twice the area of the hole, cells that reach half way into the wall included.
        load[n] = 2.0 * h * h * (nx - 2 * nt + 1) * (ny - 2 * nt + 1)
    for i, j in np.argwhere(free | hole):
        me = index[i, j]
        for a, b in ((i - 1, j), (i + 1, j), (i, j - 1), (i, j + 1)):
            if me == n and hole[a, b]:
                continue
            rows.append(me), cols.append(me), vals.append(1.0)
            if index[a, b] >= 0:
                rows.append(me), cols.append(index[a, b]), vals.append(-1.0)
    phi = np.zeros((nx + 1, ny + 1))
    answer = spsolve(coo_matrix((vals, (rows, cols)), shape=(size, size)).tocsc(), load)
    phi[free] = answer[index[free]]
    if nt > 0:
        phi[hole] = answer[n]
    # Outside of twice the volume; the hole counts with its constant.
    constant = 2 * phi.sum() * h * h
    middle = nx // 2
    slope = (-3 * phi[middle, 0] + 4 * phi[middle, 1] - phi[middle, 2]) / (2 * h)
    return constant, slope


def extrapolated(width, depth, wall, cells):
    values = []
    for n in cells:
        h = depth / n
        nx, ny, nt = round(width / h), n, round(wall / h)
        assert abs(nx * h - width) < 1e-12 and abs(nt * h - wall) < 1e-12
        constant, slope = solve(nx, ny, nt, h)
        product = width * depth**3
        values.append((constant / product, slope * product / constant / depth))
    (c1, p1), (c2, p2), (c3, p3) = values
    rate = np.log2((c2 - c1) / (c3 - c2))
    return dict(constant=c3 + (c3 - c2) / (2**rate - 1), peak=p3 + (p3 - p2) / 3, rate=float(rate), error=abs(c3 - c2) / (2**rate - 1) / c3)


rectangles = [dict(ratio=r, **extrapolated(float(r), 1.0, 0.0, (40, 80, 160))) for r in (1, 1.5, 2, 3, 5)]
boxes = [
    dict(width=w, depth=1.0, wall=t, **extrapolated(float(w), 1.0, t, (80, 160, 320)))
    for w in (1, 1.5, 2)
    for t in (0.05, 0.1, 0.2, 0.25)
]
for row in rectangles + boxes:
    print(row)
Path(__file__).with_suffix(".json").write_text(json.dumps(dict(rectangles=rectangles, boxes=boxes), indent=1) + "\n")
