"""Two bearings on an axis under a force at a point beside them: six equations of balance, solved at once.

Unknown: forces of both bearings across the axis, one along it, and the torque of the drive. Writes fasteners-pair.json.
Run: python3 tests/oracles/fasteners-pair.py
"""
import json
from pathlib import Path

import numpy as np

CASES = {
    "beside": dict(force=(0, 0, 120), at=(30, 0, 0), spacing=60),
    "foot": dict(force=(24, 36, 120), at=(70, 58, -290), spacing=42),
    "between": dict(force=(-15, 8, 90), at=(-20, 40, -250), spacing=55),
}


def solve(force, at, spacing):
    # x along the axis, away from the farther bearing; y sideways; z upright. Nearer bearing at 0, farther at -spacing (mm, N).
    unknown = [((0, 0, 0), (0, 1, 0)), ((0, 0, 0), (0, 0, 1)), ((-spacing, 0, 0), (0, 1, 0)), ((-spacing, 0, 0), (0, 0, 1)), ((0, 0, 0), (1, 0, 0))]
    columns = [np.concatenate([d, np.cross(r, d)]) for r, d in unknown] + [np.array([0, 0, 0, 1, 0, 0])]
    load = np.concatenate([force, np.cross(at, force)])
    ny, nz, fy, fz, ax, _ = np.linalg.solve(np.array(columns, float).T, -load)
    return {k: f"{v:.9g}" for k, v in (("nearer", np.hypot(ny, nz)), ("farther", np.hypot(fy, fz)), ("axial", abs(ax)))}


Path(__file__).with_suffix(".json").write_text(json.dumps({k: solve(**v) for k, v in CASES.items()}, indent=1) + "\n")
