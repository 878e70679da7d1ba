"""Temperature of a plate by radius, by two ways that share nothing with the library's series. Writes thermal-plate-profile.json.

fins: annular fin of uniform thickness with an adiabatic tip (Incropera & DeWitt, eq. 3.91), Bessel functions of scipy: rise at a radius over that at the root.
plates: finite volumes in radius and depth of a plate under a ring of uniform flux, faces' rises per watt at some radii; two meshes and their extrapolation.
"""
import json
import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve
from scipy.special import iv, kv


def fin(r1, r2, t, k, h, r):
    m = np.sqrt(2 * h / (k * t))
    down = iv(0, m * r1) * kv(1, m * r2) + kv(0, m * r1) * iv(1, m * r2)
    return (iv(0, m * r) * kv(1, m * r2) + kv(0, m * r) * iv(1, m * r2)) / down


def faces(a1, a2, b, t, k, kz, h1, h2, covered, radii, step, nz):
    """Rises of both faces at radii (faces of cells: mean of the neighbours), the ring's mean and the heat of the films."""
    marks = sorted({0.0, a1, a2, b, *radii})
    edges = [0.0]
    for lo, hi in zip(marks, marks[1:]):
        n = max(6, int(round((hi - lo) / step)))
        edges += list(lo + (hi - lo) * np.arange(1, n + 1) / n)
    r = np.array(edges)
    rc = 0.5 * (r[1:] + r[:-1])
    dz, n = t / nz, len(rc)
    area = np.pi * (r[1:] ** 2 - r[:-1] ** 2)
    q = np.where((rc > a1) & (rc < a2), 1 / (np.pi * (a2**2 - a1**2)), 0.0)
    film = np.where((rc < a2) & covered, 0.0, h1)
    half = 2 * kz / dz
    rows, cols, vals = [], [], []
    rhs = np.zeros((n, nz))
    at = lambda i, j: i * nz + j

    def join(p, s, g):
        rows.extend([p, p, s, s]); cols.extend([p, s, s, p]); vals.extend([g, -g, g, -g])

    for i in range(n):
        for j in range(nz):
            if i + 1 < n:
                join(at(i, j), at(i + 1, j), 2 * np.pi * k * dz / (np.log(rc[i + 1] / rc[i])))
            if j + 1 < nz:
                join(at(i, j), at(i, j + 1), kz * area[i] / dz)
        rows.append(at(i, 0)); cols.append(at(i, 0)); vals.append(area[i] * half * film[i] / (half + film[i]))
        rhs[i, 0] += q[i] * area[i] * half / (half + film[i])
        rows.append(at(i, nz - 1)); cols.append(at(i, nz - 1)); vals.append(area[i] * half * h2 / (half + h2))
    T = spsolve(coo_matrix((vals, (rows, cols)), shape=(n * nz, n * nz)).tocsc(), rhs.ravel()).reshape(n, nz)
    near = (half * T[:, 0] + q) / (half + film)
    far = half * T[:, -1] / (half + h2)
    take = lambda face: np.array([np.interp(x, rc, face) for x in radii])
    return np.concatenate([take(near), take(far), [float(np.sum(area * q * near))]])


fins = []
for r1, r2, t, k, h in [(0.0175, 0.04514, 0.0001, 167.0, 12.47), (0.02, 0.06, 0.0001, 15.0, 10.0), (0.010, 0.05, 0.0001, 15.0, 5.0)]:
    for part in (0.25, 0.5, 1.0):
        r = r1 + part * (r2 - r1)
        fins.append(dict(r1=r1, r2=r2, t=t, k=k, h=h, r=r, share=f"{fin(r1, r2, t, k, h, r):.5g}"))

plates = []
for c in [
    dict(a1=0.006, a2=0.0175, b=0.04514, t=0.006, k=0.2, kz=0.2, h1=12.47, h2=12.47, covered=True),
    dict(a1=0.006, a2=0.0175, b=0.05066, t=0.007, k=0.53, kz=0.25, h1=12.0, h2=5.0, covered=True),
    dict(a1=0.006, a2=0.0175, b=0.04514, t=0.003, k=167.0, kz=167.0, h1=12.47, h2=12.47, covered=True),
    dict(a1=0.01, a2=0.022, b=0.05, t=0.007, k=0.18, kz=0.18, h1=9.0, h2=7.0, covered=False),
]:
    radii = [float(np.round(x, 6)) for x in (0.5 * (c["a1"] + c["a2"]), c["a2"] + 0.002, c["a2"] + 0.3 * (c["b"] - c["a2"]), c["a2"] + 0.7 * (c["b"] - c["a2"]))]
    coarse = faces(**c, radii=radii, step=0.0002, nz=24)
    fine = faces(**c, radii=radii, step=0.0001, nz=48)
    n = len(radii)
    plates.append({**c, "radii": radii, "motorFace": list(fine[:n]), "freeFace": list(fine[n : 2 * n]), "ring": fine[-1], "change": float(np.max(np.abs(fine / coarse - 1)))})
    print(plates[-1])
json.dump(dict(fins=fins, plates=plates), open(__file__.replace(".py", ".json"), "w"), indent=1)
