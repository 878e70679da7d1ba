"""Finite-volume solution of a round plate under a ring heat source, both faces cooled (independent of the series). Writes thermal-ring-plate.json.

Axisymmetric cells, uniform in r and z, harmonic faces, Robin conditions on both faces, adiabatic rim; two meshes and Richardson extrapolation.
"""
import json
import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve


def ring_resistance(a1, a2, b, t, k, kz, h1, h2, covered, nr, nz):
    # radial faces aligned with the ring's edges
    parts = [(0, a1), (a1, a2), (a2, b)]
    edges = [0.0]
    for lo, hi in parts:
        if hi > lo:
            n = max(4, int(round(nr * (hi - lo) / b)))
            edges += list(lo + (hi - lo) * np.arange(1, n + 1) / n)
    r = np.array(edges)
    rc = 0.5 * (r[1:] + r[:-1])
    dz = t / nz
    n = len(rc)
    idx = lambda i, j: i * nz + j
    rows, cols, vals = [], [], []
    rhs = np.zeros(n * nz)
    ring = (rc > a1) & (rc < a2)
    area_face = np.pi * (r[1:] ** 2 - r[:-1] ** 2)
    q = 1.0 / (np.pi * (a2 ** 2 - a1 ** 2))

    def add(p, s, g):
        rows.extend([p, p]); cols.extend([p, s]); vals.extend([g, -g])

    for i in range(n):
        for j in range(nz):
            p = idx(i, j)
            if i + 1 < n:
                g = k * 2 * np.pi * r[i + 1] * dz / (rc[i + 1] - rc[i])
                add(p, idx(i + 1, j), g); add(idx(i + 1, j), p, g)
            if j + 1 < nz:
                g = kz * area_face[i] / dz
                add(p, idx(i, j + 1), g); add(idx(i, j + 1), p, g)
            if j == 0:
                # half cell to the face; the face carries source and film
                half = kz * area_face[i] / (dz / 2)
                film = 0.0 if covered and rc[i] < a2 else h1 * area_face[i]
                g = half * film / (half + film) if film > 0 else 0.0
                rows.append(p); cols.append(p); vals.append(g)
                if ring[i]:
                    rhs[p] += q * area_face[i] * half / (half + film)
            if j == nz - 1:
                half = kz * area_face[i] / (dz / 2)
                film = h2 * area_face[i]
                rows.append(p); cols.append(p); vals.append(half * film / (half + film))
    T = spsolve(coo_matrix((vals, (rows, cols)), shape=(n * nz, n * nz)).tocsc(), rhs)
    top = np.array([T[idx(i, 0)] for i in range(n)])
    half = kz / (dz / 2)
    surface = (half * top + np.where(ring, q, 0.0)) / (half + np.where((rc < a2) & covered, 0.0, h1))
    return float(np.sum(surface[ring] * area_face[ring]) / np.sum(area_face[ring]))


cases = [
    dict(a1=0.006, a2=0.0175, b=0.04514, t=0.006, k=0.2, h1=12.47, h2=12.47),
    dict(a1=0.006, a2=0.0175, b=0.04514, t=0.003, k=167.0, h1=12.47, h2=12.47),
    dict(a1=0.006, a2=0.0175, b=0.04514, t=0.002, k=167.0, h1=0.0, h2=10.0),
    dict(a1=0.010, a2=0.0220, b=0.05, t=0.007, k=0.18, h1=9.0, h2=7.0),
    dict(a1=0.0, a2=0.015, b=0.05, t=0.007, k=0.18, h1=9.0, h2=7.0),
]
cases = [{**c, 'kz': c['k'], 'covered': covered} for covered in (False, True) for c in cases]
# Prints that conduct less across their layers, and a small disc on a thick plate in a strong draught, where the most modes couple.
cases += [
    dict(a1=0.006, a2=0.0175, b=0.05066, t=0.007, k=0.2, kz=0.16, h1=12.0, h2=12.0, covered=True),
    dict(a1=0.006, a2=0.0175, b=0.05066, t=0.007, k=0.53, kz=0.25, h1=12.0, h2=12.0, covered=True),
    dict(a1=0.006, a2=0.0175, b=0.05066, t=0.007, k=0.4, kz=0.25, h1=12.0, h2=5.0, covered=False),
    dict(a1=0.0, a2=0.010, b=0.08, t=0.010, k=0.12, kz=0.12, h1=120.0, h2=120.0, covered=True),
    dict(a1=0.004, a2=0.010, b=0.06, t=0.008, k=0.15, kz=0.11, h1=80.0, h2=60.0, covered=True),
]
out = []
for c in cases:
    # A small ring takes as many cells across itself.
    more = 4 if c['a2'] < 0.2 * c['b'] else 1
    coarse = ring_resistance(**c, nr=160 * more, nz=24 * more)
    fine = ring_resistance(**c, nr=320 * more, nz=48 * more)
    out.append({**c, "coarse": coarse, "fine": fine, "ring": fine + (fine - coarse) / 3})
    print(out[-1])
json.dump(out, open(__file__.replace(".py", ".json"), "w"), indent=1)
