"""Clamp load of a joint whose layers creep by a power law: Mittag-Leffler function by mpmath's series and, apart from it, a Volterra solver.

Writes fasteners-clamp.json. Run: python3 tests/oracles/fasteners-clamp.py
"""
import json
from pathlib import Path

import mpmath as mp
import numpy as np

mp.mp.dps = 60


def ml(a, z):
    return mp.nsum(lambda k: mp.mpf(z) ** k / mp.gamma(a * k + 1), [0, mp.inf]) if abs(z) < 8 else None


def volterra(c, n, r, t_end, count=1500):
    """Trapezoidal on a graded grid: r F + phi F0 + int phi(t-s) dF = (1 + r) F0."""
    t = np.concatenate([[0], np.geomspace(t_end * 1e-10, t_end, count)])
    phi = lambda x: r + 1 + c * np.maximum(x, 0) ** n
    mean = lambda x: (r + 1) * x + c * np.maximum(x, 0) ** (n + 1) / (n + 1)
    f = np.empty_like(t)
    f[0] = 1
    for i in range(1, len(t)):
        h = np.diff(t[: i + 1])
        weight = (mean(t[i] - t[:i]) - mean(t[i] - t[1 : i + 1])) / h
        known = phi(t[i]) * f[0] + weight[:-1] @ np.diff(f[:i]) if i > 1 else phi(t[i]) * f[0]
        f[i] = f[i - 1] + (phi(0) - known) / weight[-1]
    return float(f[-1])


rows = []
for c, n, r in [(0.1, 0.25, 0.12), (0.3, 0.15, 0.12), (0.2, 0.3, 1.0), (0.15, 0.33, 0.0)]:
    for hours in (1, 24, 720, 8766):
        z = -c * float(mp.gamma(1 + n)) * hours**n / (1 + r)
        exact = ml(n, z)
        rows.append(dict(c=c, n=n, r=r, hours=hours, share=float(exact) if exact is not None else None, volterra=volterra(c, n, r, hours)))
        print(rows[-1])
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
