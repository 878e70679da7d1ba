"""Length of a tooth belt by the polygon of its teeth, and the torque at which it jumps by the balance of every tooth. Writes capstan-belts.json.

Nothing of the library is used. The belt is laid around the pulleys as a polygon of two million corners. For the jump, each tooth of a fine pulley is in
balance: the chord forces of the tension on both sides of it, and the flank force with its friction. The pull at which the first of them lifts is bisected.
"""
import json
import math
from pathlib import Path


def length(z1, z2, p, c, n=1_000_000):
    r1, r2 = z1 * p / (2 * math.pi), z2 * p / (2 * math.pi)
    # Hull of two circles: support function of the hull integrated over all directions is its perimeter.
    total = 0.0
    for i in range(n):
        t = 2 * math.pi * (i + 0.5) / n
        total += max(r1, c * math.cos(t) + r2)
    return total * 2 * math.pi / n


def jump(t0, r2, wrap, flank, friction, n=20_000):
    step = wrap / n
    rho = math.atan(friction)

    def lifts(f):
        slack = t0 - f / 2
        if slack < 0:
            return True
        for i in range(n):
            low = slack + f * i / n
            high = slack + f * (i + 1) / n
            inward = (low + high) * math.sin(step / 2)
            along = (high - low) * math.cos(step / 2)
            if along * math.tan(flank - rho) > inward:
                return True
        return False

    low, high = 0.0, 2 * t0
    for _ in range(60):
        mid = (low + high) / 2
        if lifts(mid):
            high = mid
        else:
            low = mid
    return low * r2


deg = math.pi / 180
out = {
    'lengths': [f'{x:.9f}' for x in (length(20, 60, 5.08e-3, 0.12), length(18, 72, 5e-3, 0.105))],
    # Twenty thousand teeth are not infinitely many: four digits hold.
    'jumps': [f'{x:.2f}' for x in (jump(180, 0.0573, 150 * deg, 20 * deg, 0.2), jump(300, 0.06, 140 * deg, 25 * deg, 0.15))],
}
Path(__file__).with_suffix('.json').write_text(json.dumps(out, indent=1) + '\n')
