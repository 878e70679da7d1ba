"""Embedded pins: rigid reaction by numerical integration, elastic foundation by a linear solve of the beam equation.

Prints the values that tests/published/fasteners-pins.checks.ts holds. Run: python3 tests/oracles/fasteners-pins.py
"""
import json
from math import pi
from pathlib import Path

import numpy as np


def rigid(force, arm, depth, diameter):
    mouth = force * (4 * depth + 6 * arm) / depth**2
    end = force * (2 * depth + 6 * arm) / depth**2
    z = np.linspace(0, depth, 2_000_001)
    w = mouth - (mouth + end) * z / depth
    shear = force - np.concatenate([[0], np.cumsum((w[1:] + w[:-1]) / 2 * np.diff(z))])
    moment = force * arm + np.concatenate([[0], np.cumsum((shear[1:] + shear[:-1]) / 2 * np.diff(z))])
    assert abs(shear[-1]) < 1e-9 and abs(moment[-1]) < 1e-6
    i = int(moment.argmax())
    return dict(mouth=mouth / diameter, end=end / diameter, moment=float(moment[i]), momentDepth=float(z[i]))


def elastic(force, arm, depth, diameter, modulus, foundation):
    inertia = pi * diameter**4 / 64
    lam = (foundation / 4 / modulus / inertia) ** 0.25
    roots = [complex(-lam, lam), complex(lam, lam)]

    def basis(x, order):
        f = [np.exp(roots[0] * x) * roots[0] ** order, np.exp(roots[1] * x - lam * depth) * roots[1] ** order]
        return np.array([f[0].real, f[0].imag, f[1].real, f[1].imag])

    a = np.array([basis(0, 2) * modulus * inertia, basis(0, 3) * modulus * inertia, basis(depth, 2), basis(depth, 3)])
    c = np.linalg.solve(a, [force * arm, force, 0, 0])
    z = np.linspace(0, depth, 20001)
    moment = max(modulus * inertia * basis(x, 2) @ c for x in z)
    return dict(
        slenderness=lam * depth,
        mouth=float(foundation * (basis(0, 0) @ c) / diameter),
        end=float(-foundation * (basis(depth, 0) @ c) / diameter),
        moment=float(moment),
    )


rows = [
    dict(arm=a, depth=L, elastic=elastic(100, a, L, 4, 200000, k), foundation=k, rigid=rigid(100, a, L, 4))
    for a in (0.0, 5.0, 12.0)
    for L in (3.0, 5.0, 20.0, 60.0)
    for k in (500.0, 2000.0)
]
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
