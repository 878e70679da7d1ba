"""Steady temperatures of a motor on a printed plate, by scipy, written apart from the library: plate by finite volumes of its own, films at each
face's mean temperature, radiation, hot copper and weakened magnets.

Rerun: python3 tests/oracles/thermal-mount.py > tests/oracles/thermal-mount.json
"""
import json
import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as sl
from scipy.optimize import fsolve

SIGMA, G, KELVIN = 5.670374419e-8, 9.80665, 273.15
AIR = 38 + KELVIN
B, T, K, A1, A2 = 0.045, 0.007, 0.2, 0.006, 0.0175
NR, NZ = 360, 56


def film(Ts, L, cylinder=False):
    m = (Ts + AIR) / 2
    t = m - KELVIN
    k = 2.36353e-2 + 7.5599e-5 * t - 2.4536e-8 * t * t
    nu = 1.33822e-5 + 8.71667e-8 * t + 9.5569e-11 * t * t
    pr = 0.736042 - 2.80448e-4 * t + 3.43023e-7 * t * t
    ra = G / m * max(abs(Ts - AIR), 1e-3) * L**3 * pr / nu**2
    a, c = (0.6, 0.559) if cylinder else (0.825, 0.492)
    return k / L * (a + 0.387 * ra ** (1 / 6) / (1 + (c / pr) ** (9 / 16)) ** (8 / 27)) ** 2


def rad(e, Ts):
    return e * SIGMA * (Ts + AIR) * (Ts**2 + AIR**2)


def plate_on(nr, nz):
    """Returns a solver: films of both faces to conductance and mean rises of the faces, ring at 1."""
    re = np.linspace(0, B, nr + 1)
    area = np.pi * np.diff(re**2)
    dr, dz = B / nr, T / nz
    gr = 2 * np.pi * re[1:-1] * dz * K / dr
    radial = sp.diags([np.r_[gr, 0] + np.r_[0, gr], -gr, -gr], [0, 1, -1])
    vertical = sp.diags([np.r_[1, 2 * np.ones(nz - 2), 1], -np.ones(nz - 1), -np.ones(nz - 1)], [0, 1, -1])
    # Unknown at (column i, layer j) stands at i * nz + j.
    base = (sp.kron(radial, sp.eye(nz)) + sp.kron(sp.diags(area * K / dz), vertical)).tocsc()
    overlap = lambda lo, hi: np.pi * np.clip(np.minimum(re[1:], hi) ** 2 - np.maximum(re[:-1], lo) ** 2, 0, None)
    ring, free = overlap(A1, A2), overlap(A2, B)
    top, bottom, rim = np.arange(nr) * nz, np.arange(nr) * nz + nz - 1, (nr - 1) * nz + np.arange(nz)

    def solve(ht, hb):
        d, rhs = np.zeros(nr * nz), np.zeros(nr * nz)
        contact = ring * 2 * K / dz
        d[top] += contact
        rhs[top] = contact
        out_top, out_bottom = free / (dz / 2 / K + 1 / ht), area / (dz / 2 / K + 1 / hb)
        out_rim = 2 * np.pi * B * dz / (dr / 2 / K + 2 / (ht + hb))
        np.add.at(d, top, out_top)
        np.add.at(d, bottom, out_bottom)
        np.add.at(d, rim, out_rim)
        x = sl.spsolve(base + sp.diags(d).tocsc(), rhs)
        heat = np.sum(out_top * x[top]) + np.sum(out_bottom * x[bottom]) + np.sum(out_rim * x[rim])
        return np.array([heat, np.sum(out_top * x[top]) / ht / free.sum(), np.sum(out_bottom * x[bottom]) / hb / area.sum()])

    return solve


coarse, fine = plate_on(NR // 2, NZ // 2), plate_on(NR, NZ)


def plate(mount):
    rise = mount - AIR
    faces = np.array([0.2, 0.2])
    height = B * np.sqrt(np.pi)
    for _ in range(6):
        ht, hb = (film(AIR + f * rise, height) + rad(0.9, AIR + f * rise) for f in faces)
        answer = 2 * fine(ht, hb) - coarse(ht, hb)
        faces = answer[1:]
    return answer[0]


def balance(x, torque):
    w, s, r, m = x
    ke = 60 / (2 * np.pi * 110) * (1 - 0.0011 * (r - KELVIN - 20))
    current = torque / (np.sqrt(3) / 2 * ke)
    loss = 0.75 * current**2 * 0.18 * (234.5 + w - KELVIN) / 254.5
    base = 0.3 + 1 / (1500 * np.pi * (A2**2 - A1**2))
    can = np.pi * 0.052 * (0.022 + 0.013) * (film(r, 0.052, True) + rad(0.6, r)) * (r - AIR)
    return [
        loss - (w - s) / 0.8,
        (w - s) / 0.8 - (s - r) / 6 - (s - m) / base,
        (s - r) / 6 - can,
        (s - m) / base - plate(m) * (m - AIR),
    ]


def course(torque, dt, end, limit, nr=120, nz=20):
    """Warming from the air's temperature, the whole plate in cells, implicit Euler: temperatures at some times and when the mount passes a limit."""
    re = np.linspace(0, B, nr + 1)
    area = np.pi * np.diff(re**2)
    dr, dz = B / nr, T / nz
    gr = 2 * np.pi * re[1:-1] * dz * K / dr
    radial = sp.diags([np.r_[gr, 0] + np.r_[0, gr], -gr, -gr], [0, 1, -1])
    vertical = sp.diags([np.r_[1, 2 * np.ones(nz - 2), 1], -np.ones(nz - 1), -np.ones(nz - 1)], [0, 1, -1])
    overlap = lambda lo, hi: np.pi * np.clip(np.minimum(re[1:], hi) ** 2 - np.maximum(re[:-1], lo) ** 2, 0, None)
    ring, free = overlap(A1, A2), overlap(A2, B)
    top, bottom, rim = np.arange(nr) * nz, np.arange(nr) * nz + nz - 1, (nr - 1) * nz + np.arange(nz)
    n = nr * nz
    w, s, r, m = n, n + 1, n + 2, n + 3
    capacity = np.r_[np.repeat(area * dz * 1070 * 1300, nz), 0.055 * 385, 0.070 * 450, 0.065 * 450, 0.020 * 896]
    plate_part = sp.kron(radial, sp.eye(nz)) + sp.kron(sp.diags(area * K / dz), vertical)
    links = sp.block_diag([plate_part, sp.csc_matrix((4, 4))]).tolil()

    def link(p, q, g):
        links[p, p] += g
        links[q, q] += g
        links[p, q] -= g
        links[q, p] -= g

    link(w, s, 1 / 0.8)
    link(s, r, 1 / 6)
    link(s, m, 1 / (0.3 + 1 / (1500 * np.pi * (A2**2 - A1**2))))
    for i in range(nr):
        if ring[i] > 0:
            link(top[i], m, ring[i] * 2 * K / dz)
    links = links.tocsc()
    rise, faces, height, passed, seen = np.zeros(n + 4), [0.0, 0.0], B * np.sqrt(np.pi), None, {}
    for step in range(1, int(round(end / dt)) + 1):
        ht, hb = (film(AIR + f, height) + rad(0.9, AIR + f) for f in faces)
        out = np.zeros(n + 4)
        out_top, out_bottom = free / (dz / 2 / K + 1 / ht), area / (dz / 2 / K + 1 / hb)
        np.add.at(out, top, out_top)
        np.add.at(out, bottom, out_bottom)
        np.add.at(out, rim, 2 * np.pi * B * dz / (dr / 2 / K + 2 / (ht + hb)))
        can, winding = AIR + rise[r], AIR + rise[w]
        out[r] = np.pi * 0.052 * 0.035 * (film(can, 0.052, True) + rad(0.6, can))
        current = torque / (np.sqrt(3) / 2 * 60 / (2 * np.pi * 110) * (1 - 0.0011 * (can - KELVIN - 20)))
        heat = capacity / dt * rise
        heat[w] += 0.75 * current**2 * 0.18 * (234.5 + winding - KELVIN) / 254.5
        after = sl.spsolve((links + sp.diags(capacity / dt + out)).tocsc(), heat)
        if passed is None and after[m] + 38 >= limit:
            passed = (step - 1 + (limit - 38 - rise[m]) / (after[m] - rise[m])) * dt
        rise = after
        faces = [np.sum(out_top * rise[top]) / ht / free.sum(), np.sum(out_bottom * rise[bottom]) / hb / area.sum()]
        if round(step * dt, 6) in (60, 300, 900, 1800):
            seen[str(round(step * dt))] = dict(zip(["winding", "stator", "can", "mount"], (float(v) + 38 for v in rise[[w, s, r, m]])))
    return dict(torque=torque, limit=limit, passed=None if passed is None else float(passed), at=seen)


rows = []
for torque in (0.1, 0.2, 0.3):
    x = fsolve(balance, AIR + 200 * torque**2 * np.array([4.5, 4, 2.5, 4]), args=(torque,), xtol=1e-9)
    rows.append(dict(torque=torque, celsius=dict(zip(["winding", "stator", "can", "mount"], (float(v) - KELVIN for v in x)))))
print(json.dumps(dict(steady=rows, courses=[course(0.7, 0.5, 360, 85), course(0.3, 3, 1800, 60)]), indent=1))
