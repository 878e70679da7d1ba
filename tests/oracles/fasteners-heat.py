"""Clamp load through spells with layers that soften and creep faster when warm, creep 1 + c t^n: product rule with exact moments on fine grids.

Unknown is G = softening × load on the creep clock. Writes fasteners-heat.json. Run: python3 tests/oracles/fasteners-heat.py
"""
import json
from pathlib import Path

import numpy as np

JOINT = dict(load=1000.0, elastic=0.12, creeping=1.0, mismatch=0.5)  # N, µm/N, µm/K


def run(c, n, spells, count):
    phi = lambda u: 1 + c * np.maximum(u, 0) ** n
    integral = lambda u: u + c * np.maximum(u, 0) ** (n + 1) / (n + 1)
    at, jumps, a, b, rise = [0.0], [JOINT["load"]], np.empty(0), np.empty(0), np.empty(0)
    g, begin, starts, ends = JOINT["load"], 0.0, [], []

    def missing(now, elastic, growth):
        given = sum(j * phi(now - t) for j, t in zip(jumps, at))
        if len(rise):
            given += rise @ ((integral(now - a) - integral(now - b)) / (b - a))
        return (JOINT["elastic"] + JOINT["creeping"]) * JOINT["load"] + growth - JOINT["creeping"] * given - elastic * g

    for hours, speed, soft, warmer in spells:
        elastic, growth, clock = JOINT["elastic"] / soft, JOINT["mismatch"] * warmer, hours * speed
        step = missing(begin, elastic, growth) / (elastic + JOINT["creeping"])
        at.append(begin), jumps.append(step)
        g += step
        starts.append(g / soft)
        grid = begin + np.concatenate([[0], np.geomspace(clock * 1e-9, clock, count)])
        for left, right in zip(grid[:-1], grid[1:]):
            mean = integral(right - left) / (right - left)
            change = missing(right, elastic, growth) / (elastic + JOINT["creeping"] * mean)
            a, b, rise = np.append(a, left), np.append(b, right), np.append(rise, change)
            g += change
        ends.append(g / soft)
        begin += clock
    return np.array(starts), np.array(ends)


rows = []
# Hours, speed-up, softening, warmer by K.
CYCLE = [(12, 1, 1, 0), (6, 12, 1.4, 30), (12, 1, 1, 0), (6, 12, 1.4, 30), (12, 1, 1, 0)]
for c, n, spells in [(0.12, 0.25, CYCLE), (0.3, 0.15, CYCLE), (0.05, 0.33, [(1, 1, 1, 0), (100, 300, 2.5, 45), (1000, 1, 1, 0), (10, 0.2, 0.9, -20)])]:
    coarse, fine = run(c, n, spells, 150), run(c, n, spells, 300)
    starts, ends = (fine[i] + (fine[i] - coarse[i]) / 3 for i in (0, 1))
    print(max(abs(fine[1] - ends)))
    rows.append(dict(c=c, n=n, spells=[dict(hours=h, speed=s, softening=m, warmer=w) for h, s, m, w in spells], starts=list(starts), ends=list(ends)))
    print(rows[-1])
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
