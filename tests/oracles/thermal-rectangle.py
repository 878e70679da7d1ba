"""Rectangular plates under ring sources in three dimensions, by finite volumes: independent of any series. Writes thermal-rectangle.json.

Uniform Cartesian cells along the faces, cells crowded towards the motor's face in depth; rings by the share of each cell that they cover; films on both
faces except under the discs, adiabatic edges. Conjugate gradients; two meshes, extrapolated. One watt in the first ring; mean surface temperature of each.

Run: python3 thermal-rectangle.py   (numpy, scipy; some ten minutes)
"""
import json
from pathlib import Path

import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as sl


def share(edges_x, edges_y, cx, cy, r, sub=10):
    u = (np.arange(sub) + 0.5) / sub
    xs = (edges_x[:-1, None] + np.diff(edges_x)[:, None] * u).ravel()
    ys = (edges_y[:-1, None] + np.diff(edges_y)[:, None] * u).ravel()
    inside = (xs[:, None] - cx) ** 2 + (ys[None, :] - cy) ** 2 <= r * r
    return inside.reshape(len(edges_x) - 1, sub, len(edges_y) - 1, sub).mean(axis=(1, 3))


def solve(case, cell, layers):
    W, H, t, k, kz, hm, hf = (case[n] for n in ('width', 'height', 't', 'k', 'kz', 'hm', 'hf'))
    x = np.linspace(-W / 2, W / 2, int(np.ceil(W / cell)) + 1)
    y = np.linspace(-H / 2, H / 2, int(np.ceil(H / cell)) + 1)
    z = t * np.linspace(0, 1, layers + 1) ** 1.5
    dx, dy, dz = np.diff(x), np.diff(y), np.diff(z)
    nx, ny, nz = len(dx), len(dy), len(dz)
    index = np.arange(nx * ny * nz).reshape(nx, ny, nz)
    area = np.outer(dx, dy)
    rows, cols, vals, diagonal = [], [], [], np.zeros(nx * ny * nz)

    def link(p, q, g):
        g = np.broadcast_to(g, p.shape).ravel()
        p, q = p.ravel(), q.ravel()
        rows.extend([p, q]); cols.extend([q, p]); vals.extend([-g, -g])
        np.add.at(diagonal, p, g); np.add.at(diagonal, q, g)

    link(index[:-1], index[1:], k * dy[None, :, None] * dz / dx[0])
    link(index[:, :-1], index[:, 1:], k * dx[:, None, None] * dz / dy[0])
    link(index[:, :, :-1], index[:, :, 1:], kz * area[:, :, None] / ((dz[:-1] + dz[1:]) / 2))
    half = dz[0] / 2 / kz
    discs = [share(x, y, s['x'], s['y'], s['a2']) for s in case['sources']]
    rings = [d - (share(x, y, s['x'], s['y'], s['a1']) if s['a1'] > 0 else 0) for d, s in zip(discs, case['sources'])]
    open_share = 1 - np.minimum(1, sum(discs))
    diagonal[index[:, :, 0].ravel()] += (open_share * area / (1 / hm + half)).ravel()
    diagonal[index[:, :, -1].ravel()] += (area / (1 / hf + dz[-1] / 2 / kz)).ravel()
    right = np.zeros(nx * ny * nz)
    density = rings[0] * area / (rings[0] * area).sum()
    right[index[:, :, 0].ravel()] = density.ravel()
    r, c, v = np.concatenate(rows), np.concatenate(cols), np.concatenate(vals)
    n = len(right)
    matrix = sp.csr_matrix((np.concatenate([v, diagonal]), (np.concatenate([r, np.arange(n)]), np.concatenate([c, np.arange(n)]))), shape=(n, n))
    T, info = sl.cg(matrix, right, rtol=1e-9, maxiter=20000, M=sp.diags(1 / diagonal))
    assert info == 0
    top = T[index[:, :, 0]]
    out = []
    for i, ring in enumerate(rings):
        surface = top + (half / (rings[0] * area).sum() if i == 0 else 0)
        out.append(float((ring * area * surface).sum() / (ring * area).sum()))
    return out


ring = dict(x=0.0, y=0.0, a1=0.006, a2=0.0175)
asa, filled, metal = dict(t=0.007, k=0.2, kz=0.16), dict(t=0.007, k=0.53, kz=0.25), dict(t=0.003, k=167.0, kz=167.0)
cases = [
    dict(width=0.084, height=0.096, **asa, hm=12.0, hf=12.0, sources=[ring]),
    dict(width=0.060, height=0.134, **filled, hm=12.0, hf=12.0, sources=[ring]),
    dict(width=0.180, height=0.045, **asa, hm=12.0, hf=8.0, sources=[ring]),
    dict(width=0.040, height=0.200, **asa, hm=12.0, hf=12.0, sources=[ring]),
    dict(width=0.040, height=0.200, **filled, hm=12.0, hf=12.0, sources=[ring]),
    dict(width=0.040, height=0.200, **metal, hm=12.0, hf=12.0, sources=[ring]),
    dict(width=0.040, height=0.200, **asa, hm=40.0, hf=40.0, sources=[ring]),
    dict(width=0.084, height=0.096, **filled, hm=12.0, hf=12.0, sources=[{**ring, 'x': 0.02, 'y': -0.025}]),
    dict(width=0.110, height=0.060, **asa, hm=12.0, hf=12.0, sources=[{**ring, 'x': -0.025}, {**ring, 'x': 0.03, 'y': 0.005}]),
    dict(width=0.110, height=0.060, **filled, hm=12.0, hf=12.0, sources=[{**ring, 'x': -0.025}, {**ring, 'x': 0.03, 'y': 0.005}]),
    dict(width=0.110, height=0.060, **metal, hm=12.0, hf=12.0, sources=[{**ring, 'x': -0.025}, {**ring, 'x': 0.03, 'y': 0.005, 'a1': 0.0, 'a2': 0.012}]),
]
rows = []
for case in cases:
    coarse, fine = solve(case, 1.2e-3, 12), solve(case, 0.8e-3, 18)
    # The error of the shares falls about with the first power of the cell.
    means = [f + 2 * (f - c) for f, c in zip(fine, coarse)]
    rows.append({**case, 'means': [round(m, 5) for m in means], 'fine': [round(m, 5) for m in fine], 'meshChange': [round(abs(f - c), 5) for f, c in zip(fine, coarse)]})
    print(rows[-1], flush=True)
Path(__file__).with_suffix('.json').write_text(json.dumps(rows, indent=1) + '\n')
