"""Eccentrically clamped and loaded bolted joint as a frame of two rigid plates: the clamped parts between them are a grid of springs over the face
(each cell of the face one spring), the bolt is one spring at its place. Solved by numpy; the gap load from the springs at both edges.

Writes fasteners-eccentric.json. Run: python3 tests/oracles/fasteners-eccentric.py
"""
import json
from pathlib import Path

import numpy as np

CELLS = 4000


def joint(width, depth, grip, member, bolt_compliance, a, s, clamp, load, bolt_modulus, bolt_diameter):
    x = (np.arange(CELLS) + 0.5) / CELLS * depth - depth / 2
    cell = width * depth / CELLS
    k = member * cell / grip * np.ones(CELLS)
    kb = 1 / bolt_compliance
    places = np.append(x, s)
    springs = np.append(k, kb)
    frame = np.array([[springs.sum(), (springs * places).sum()], [(springs * places).sum(), (springs * places**2).sum()]])
    w, turn = np.linalg.solve(frame, np.array([load, load * a]))
    added = kb * (w + turn * s)
    # Tightening: the bolt pulls the plates together, and the springs carry it alone.
    alone = np.array([[k.sum(), (k * x).sum()], [(k * x).sum(), (k * x**2).sum()]])
    w0, turn0 = np.linalg.solve(alone, np.array([clamp, clamp * s]))
    gap = float("inf")
    for edge in (depth / 2, -depth / 2):
        pressed = (w0 + turn0 * edge) * member / grip
        opened = (w + turn * edge) * member / grip
        gap = min(gap, 0.0 if pressed < 0 else pressed / opened * load if opened > 0 else float("inf"))
    bend = bolt_modulus * bolt_diameter / 2 / grip
    return dict(
        width=width, depth=depth, grip=grip, member=member, bolt=bolt_compliance, loadAt=a, boltAt=s, clamp=clamp, load=load,
        boltModulus=bolt_modulus, boltDiameter=bolt_diameter, loadFactor=added / load, endRotation=float(turn), gapLoad=float(max(gap, 0)),
        bending=float(bend * abs(turn)), clampBending=float(bend * abs(turn0)),
    )


rows = [
    joint(0.014, depth, 0.008, member, 7e-9, a, s, 900.0, 150.0, 207e9, 0.00334)
    for depth in (0.016, 0.03)
    for member in (2e9, 70e9)
    for a, s in ((0.0, 0.0), (0.01, 0.0), (0.012, 0.003), (0.012, -0.003), (0.0005, 0.0025))
]
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
print(rows[2])
