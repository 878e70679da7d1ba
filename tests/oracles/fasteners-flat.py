"""A stiff D-shaped shaft under a torque in a hub of many small springs that only press, all round its outline: shift and turn by Newton's method.

Nothing of the library is used. Writes fasteners-flat.json beside this file. Run: python3 tests/oracles/fasteners-flat.py
"""
import json
from pathlib import Path

import numpy as np

mm = 1e-3


def pressed(torque, diameter, depth, length, cells=40001):
    r = diameter / 2
    half = np.sqrt(r * r - (r - depth) ** 2)
    # Flat above, at y = r - depth; the arc goes round the rest. Middle, outward normal and length of each cell.
    x = (np.arange(cells) + 0.5) / cells * 2 * half - half
    flat = np.stack([x, np.full(cells, r - depth), np.zeros(cells), np.ones(cells), np.full(cells, 2 * half / cells)])
    start, stop = np.arccos((r - depth) / r), 2 * np.pi - np.arccos((r - depth) / r)
    a = start + (np.arange(cells) + 0.5) / cells * (stop - start)
    arc = np.stack([r * np.sin(a), r * np.cos(a), np.sin(a), np.cos(a), np.full(cells, r * (stop - start) / cells)])
    px, py, nx, ny, ds = np.concatenate([flat, arc], axis=1)

    def pressures(shift, turn=1.0):
        # A point moves by the shift and by the turn about the axis (anticlockwise); the springs of unit stiffness push back along the normal.
        return np.maximum(0, (shift[0] * r - turn * py) * nx + (shift[1] * r + turn * px) * ny)

    def forces(shift):
        p = pressures(shift) * ds
        return [np.sum(p * nx) / r**2, np.sum(p * ny) / r**2]

    # Newton's method; its derivative by differences, since a spring that no longer presses counts for nothing.
    shift = np.array([0.01, -0.1])
    for _ in range(60):
        at = np.array(forces(shift))
        step = np.eye(2) * 1e-7
        slope = np.stack([(np.array(forces(shift + d)) - np.array(forces(shift - d))) / 2e-7 for d in step], axis=1)
        shift = shift - np.linalg.solve(slope, at)
    assert max(abs(np.array(forces(shift)))) < 1e-12, forces(shift)
    p = pressures(shift)
    # Everything grows with the turn alike: scale it to the torque.
    p *= torque / (np.sum(p * ds * (px * ny - py * nx)) * length)
    on_flat = p[:cells]
    return {
        "width": 2 * half,
        "edgePressure": float(np.interp(half, x[-2:], on_flat[-2:]) + (on_flat[-1] - on_flat[-2]) / 2),
        "borePressure": float(p[cells:].max()),
        "force": float(np.sum(on_flat * ds[:cells]) * length),
        "pressesFrom": float(x[on_flat > 0][0] - half / cells),
    }


cases = [dict(torque=2, diameter=6 * mm, depth=0.5 * mm, length=9 * mm), dict(torque=8, diameter=12 * mm, depth=2 * mm, length=14 * mm)]
out = [{**case, **pressed(**case)} for case in cases]
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")

