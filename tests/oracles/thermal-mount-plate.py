"""Independent finite volumes of a plate under an isothermal ring, both faces and the rim cooled: written apart from the library, on uniform cells.

Rerun: python3 tests/oracles/thermal-mount-plate.py > tests/oracles/thermal-mount-plate.json
The conductance on two meshes is extrapolated linearly (the error at the edge of an isothermal ring falls with the first power of the cell).
"""
import json
import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as sl


def conductance(b, t, k, a1, a2, ht, hb, nr, nz, insert=None, rho_c=None):
    re = np.linspace(0, b, nr + 1)
    rc = (re[1:] + re[:-1]) / 2
    dr, dz = b / nr, t / nz
    area = np.pi * (re[1:] ** 2 - re[:-1] ** 2)
    cond = np.full((nr, nz), float(k))
    joint = -1
    if insert:
        ni, li = int(round(insert["radius"] / dr)), int(round(insert["thickness"] / dz))
        cond[:ni, :li] = insert["conductivity"]
        joint = li - 1
    n = nr * nz
    idx = np.arange(n).reshape(nr, nz)
    rows, cols, vals, diag, rhs = [], [], [], np.zeros(n), np.zeros(n)

    def link(p, q, g):
        rows.append(p); cols.append(q); vals.append(-g)
        rows.append(q); cols.append(p); vals.append(-g)
        np.add.at(diag, p, g); np.add.at(diag, q, g)

    for i in range(nr - 1):
        g = 2 * np.pi * re[i + 1] * dz / (dr / 2 / cond[i] + dr / 2 / cond[i + 1])
        link(idx[i], idx[i + 1], g)
    for j in range(nz - 1):
        extra = np.zeros(nr)
        if j == joint:
            extra[: int(round(insert["radius"] / dr))] = 1 / insert["contact"]
        g = area / (dz / 2 / cond[:, j] + extra + dz / 2 / cond[:, j + 1])
        link(idx[:, j], idx[:, j + 1], g)
    ring = np.clip(np.minimum(re[1:], a2) ** 2 - np.maximum(re[:-1], a1) ** 2, 0, None) * np.pi
    g = ring * 2 * cond[:, 0] / dz
    diag[idx[:, 0]] += g
    rhs[idx[:, 0]] += g
    open_ = np.clip(re[1:] ** 2 - np.maximum(re[:-1], a2) ** 2, 0, None) * np.pi
    top = open_ / (dz / 2 / cond[:, 0] + 1 / ht)
    bottom = area / (dz / 2 / cond[:, -1] + 1 / hb)
    diag[idx[:, 0]] += top
    diag[idx[:, -1]] += bottom
    rim = 2 * np.pi * b * dz / (dr / 2 / cond[-1] + 2 / (ht + hb))
    diag[idx[-1]] += rim
    m = sp.csc_matrix((np.concatenate(vals + [diag]), (np.concatenate(rows + [np.arange(n)]), np.concatenate(cols + [np.arange(n)]))), shape=(n, n))
    x = sl.spsolve(m, rhs)
    if rho_c is not None:
        # Moments of the ring's admittance G + C1 s - C2 s^2: from the steady field and its own delayed response.
        cap = np.repeat(area * dz * rho_c, nz)
        z = sl.spsolve(m, cap * x)
        return float(np.sum(cap * x * x)), float(np.sum(cap * x * z))
    loss = np.sum(top * x[idx[:, 0]]) + np.sum(bottom * x[idx[:, -1]]) + np.sum(rim * x[idx[-1]])
    return loss


def case(insert=None, **c):
    # Ring edges on cell faces: radii are whole multiples of half a millimetre.
    base = int(round(c["b"] / 0.5e-3))
    coarse = conductance(nr=base * 8, nz=24 * 2, insert=insert, **c)
    mid = conductance(nr=base * 16, nz=24 * 4, insert=insert, **c)
    fine = 2 * mid - coarse
    return {**c, "insert": insert, "coarse": 1 / coarse, "mid": 1 / mid, "resistance": 1 / fine}


metal = {"radius": 0.03, "thickness": 0.002, "conductivity": 167.0, "contact": 1500.0}
rows = [
    case(b=0.045, t=0.006, k=0.2, a1=0.006, a2=0.0175, ht=12.5, hb=12.5),
    case(b=0.045, t=0.006, k=0.2, a1=0.006, a2=0.0175, ht=6.0, hb=25.0),
    case(b=0.045, t=0.008, k=0.2, a1=0.0, a2=0.0175, ht=60.0, hb=60.0),
    case(b=0.045, t=0.003, k=167.0, a1=0.006, a2=0.0175, ht=12.5, hb=12.5),
    case(b=0.03, t=0.012, k=0.4, a1=0.01, a2=0.02, ht=10.0, hb=8.0),
    case(b=0.045, t=0.008, k=0.2, a1=0.006, a2=0.0175, ht=12.5, hb=12.5, insert=metal),
]
plain = dict(b=0.045, t=0.006, k=0.2, a1=0.006, a2=0.0175, ht=12.0, hb=12.0)
c1, c2 = conductance(**plain, nr=720, nz=48, rho_c=1070.0 * 1300.0)
print(json.dumps({"plates": rows, "moments": {**plain, "density": 1070.0, "specificHeat": 1300.0, "capacity": c1, "storeConductance": c1 * c1 / c2}}, indent=1))
