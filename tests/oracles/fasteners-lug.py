"""Stress concentration of a lug with a round end, concentric with the hole, or with a long square end, by plane-stress finite elements (four-node quadrilaterals, scipy sparse solver). A close pin presses on half of
the hole with a cosine pressure; the shank is held far below. Half of the lug is modelled. The stress along the hole follows from the displacements there.

`factor` is the largest hoop stress at the hole over force/((width - diameter) thickness). Writes fasteners-lug.json. Run: python3 tests/oracles/fasteners-lug.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

NU = 0.35


def lug(ratio, nr, nt, round_end):
    """Hole diameter over width; radius of the hole is 1. A square end lies one width beyond the hole's middle."""
    R = 1 / ratio
    thetas = np.linspace(-np.pi / 2, np.pi / 2, 2 * nt + 1)
    radial = np.linspace(0, 1, nr + 1) ** 1.7
    nodes, index = [], {}

    def node(key, x, y):
        if key not in index:
            index[key] = len(nodes)
            nodes.append((x, y))
        return index[key]

    def outer(theta):
        c, s = np.cos(theta), np.sin(theta)
        if theta >= 0 and round_end:
            return R * c, R * s
        if theta > np.pi / 4:
            return R * c / s, R
        if theta >= -np.pi / 4:
            return R, R * s / c
        return -R * c / s, -R

    grid = np.zeros((2 * nt + 1, nr + 1), dtype=int)
    for i, theta in enumerate(thetas):
        ox, oy = outer(theta)
        for j, share in enumerate(radial):
            x = np.cos(theta) * (1 - share) + ox * share
            y = np.sin(theta) * (1 - share) + oy * share
            grid[i, j] = node(("p", i, j), x, y)
    quads = [(grid[i, j], grid[i, j + 1], grid[i + 1, j + 1], grid[i + 1, j]) for i in range(2 * nt) for j in range(nr)]
    # Shank below the square: its top row are the outer nodes of the lowest eighth of the circle.
    top = [grid[i, nr] for i in range(nt // 2 + 1)]
    rows = 60
    below = [top]
    for k in range(1, rows + 1):
        y = -R - 4 * R * k / rows
        below.append([node(("s", i, k), nodes[n][0], y) for i, n in enumerate(top)])
    for k in range(rows):
        for i in range(len(top) - 1):
            quads.append((below[k + 1][i], below[k + 1][i + 1], below[k][i + 1], below[k][i]))
    if not round_end:
        above = [[grid[i, nr] for i in range(2 * nt - nt // 2, 2 * nt + 1)]]
        for k in range(1, 31):
            above.append([node(("t", i, k), nodes[n][0], R + R * k / 30) for i, n in enumerate(above[0])])
        for k in range(30):
            for i in range(len(above[0]) - 1):
                quads.append((above[k][i], above[k][i + 1], above[k + 1][i + 1], above[k + 1][i]))
    xy = np.array(nodes)
    D = 1 / (1 - NU**2) * np.array([[1, NU, 0], [NU, 1, 0], [0, 0, (1 - NU) / 2]])
    quads = np.array(quads)
    g = 1 / np.sqrt(3)
    data, ri, ci = [], [], []
    dofs = np.stack([2 * quads, 2 * quads + 1], axis=2).reshape(len(quads), 8)
    K = np.zeros((len(quads), 8, 8))
    for a, b in ((-g, -g), (g, -g), (g, g), (-g, g)):
        dN = np.array([[-(1 - b), 1 - b, 1 + b, -(1 + b)], [-(1 - a), -(1 + a), 1 + a, 1 - a]]) / 4
        J = np.einsum("ik,ekj->eij", dN, xy[quads])
        det = np.linalg.det(J)
        grad = np.einsum("eij,jk->eik", np.linalg.inv(J), dN)
        B = np.zeros((len(quads), 3, 8))
        B[:, 0, 0::2] = grad[:, 0]
        B[:, 1, 1::2] = grad[:, 1]
        B[:, 2, 0::2] = grad[:, 1]
        B[:, 2, 1::2] = grad[:, 0]
        K += np.einsum("eki,kl,elj,e->eij", B, D, B, np.abs(det))
    n = 2 * len(xy)
    ri = np.repeat(dofs, 8, axis=1).ravel()
    ci = np.tile(dofs, (1, 8)).ravel()
    A = coo_matrix((K.ravel(), (ri, ci)), shape=(n, n)).tolil()
    F = np.zeros(n)
    # Pressure p cos(angle from the load) over the upper half of the hole: a force of 1 on the whole lug, half of it here.
    p0 = 2 / np.pi
    for i in range(2 * nt):
        for q in np.polynomial.legendre.leggauss(3)[0]:
            w = dict(zip(*np.polynomial.legendre.leggauss(3)))[q]
            theta = thetas[i] + (q + 1) / 2 * (thetas[i + 1] - thetas[i])
            p = p0 * max(0.0, np.sin(theta)) * w / 2 * (thetas[i + 1] - thetas[i])
            for node_, share in ((grid[i, 0], (1 - q) / 2), (grid[i + 1, 0], (1 + q) / 2)):
                F[2 * node_] += p * np.cos(theta) * share
                F[2 * node_ + 1] += p * np.sin(theta) * share
    fixed = [2 * k for k in range(len(xy)) if abs(xy[k, 0]) < 1e-12] + [2 * k + 1 for k in below[-1]]
    keep = np.setdiff1d(np.arange(n), fixed)
    u = np.zeros(n)
    A = A.tocsc()
    u[keep] = spsolve(A[keep][:, keep], F[keep])
    hole = grid[:, 0]
    ur = u[2 * hole] * np.cos(thetas) + u[2 * hole + 1] * np.sin(thetas)
    ut = -u[2 * hole] * np.sin(thetas) + u[2 * hole + 1] * np.cos(thetas)
    strain = np.gradient(ut, thetas, edge_order=2) + ur
    stress = strain + NU * -p0 * np.maximum(0, np.sin(thetas))
    assert abs(F[1::2].sum() - 0.5) < 1e-3
    # Nominal: 1/((2R − 2) thickness).
    best = int(np.argmax(stress))
    return float(stress[best] * (2 * R - 2)), float(np.degrees(thetas[best]))


rows = []
for round_end in (True, False):
    for ratio in (0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.75):
        coarse, fine = lug(ratio, 40, 60, round_end), lug(ratio, 80, 120, round_end)
        rows.append(dict(end="round" if round_end else "square", ratio=ratio, factor=fine[0], angle=fine[1], coarse=coarse[0]))
        print(rows[-1])
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
