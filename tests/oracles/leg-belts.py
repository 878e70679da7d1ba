"""Forces and inertia of a leg whose hip and knee are driven by tooth belts, from the equilibrium of bodies, pulleys and spans.

Nothing of the library is used. Joint torques come from the two bodies of leg-direct.py. Both spans are springs between fixed axes, of which none pushes:
their tensions are solved from the turn of the large pulley. Writes leg-belts.json next to this file.
"""
import json
import math
import runpy
from pathlib import Path

from mpmath import mp, mpf, pi, sqrt

here = Path(__file__)
base = runpy.run_path(str(here.with_name('leg-direct.py')))
g, mm = base['g'], base['mm']
mp.dps = 30

# The orchard carrier, revised.
l1, l2, mass = 240 * mm, 250 * mm, mpf(24)
base['solve'].__globals__.update(l1=l1, l2=l2)
p, z1, z2, c, ea, width = 5 * mm, 18, 108, 130 * mm, mpf('420e3'), 25 * mm
r1, r2 = z1 * p / (2 * pi), z2 * p / (2 * pi)
small, large = 7850 * pi * r1**2 * width, 2700 * pi * r2**2 * width
lean = mp.asin((r2 - r1) / c)
span = c * mp.cos(lean)
path = 2 * span + r1 * (pi - 2 * lean) + r2 * (pi + 2 * lean)
plate = 140 * mm * 160 * mm * 6 * mm * 2700
upper = [(mpf('0.5'), l1 / 2), (plate + mpf('0.7') + small + large + mpf('0.11') * path, 110 * mm)]
lower = [(mpf('0.4'), l2 / 2)]


def spans(t0, torque):
    """Tensions of taut and slack span, force on the axes, and turn of the large pulley, by bisection on that turn."""
    low, high = mpf(0), mpf(1)
    tension = lambda x: max(mpf(0), t0 + ea * x / span)
    for _ in range(200):
        mid = (low + high) / 2
        if (tension(r2 * mid) - tension(-r2 * mid)) * r2 < torque:
            low = mid
        else:
            high = mid
    taut, slack = tension(r2 * low), tension(-r2 * low)
    # The spans lean to either side of the line of the axes.
    along, across = (taut + slack) * mp.cos(lean), (taut - slack) * mp.sin(lean)
    return taut, slack, sqrt(along**2 + across**2), low


out = {}
for name, height, load in [('stand', 450 * mm, mass * g / 4), ('dropEnd', 360 * mm, pi / 2 * mass * g * (1 + mpf(35) / 90) / 2)]:
    torques = base['solve'](height, load, upper, lower)
    taut, slack, axis, turn = spans(mpf(700), abs(mpf(torques['knee'])))
    out[name] = {
        'hip': abs(torques['hip']),
        'knee': abs(torques['knee']),
        'taut': float(taut),
        'slack': float(slack),
        'axis': float(axis),
        'windup': float(turn),
        'kneeMotor': float(abs(mpf(torques['knee'])) * z1 / z2 / mpf('0.96')),
    }
out['overloaded'] = dict(zip(('taut', 'slack', 'axis', 'windup'), map(float, spans(mpf(100), mpf(40)))))
out['cold'] = float(700 + ea * (mpf('23.6e-6') - mpf('5e-6')) * (-25))
N = mpf(z2) / z1
J, I = mpf('240e-6') + small * r1**2 / 2, large * r2**2 / 2
energy = lambda a, b: (J * (a + N * b) ** 2 + I * (a + b) ** 2) / 2
out['rotor'] = {'hip': float(2 * energy(1, 0)), 'knee': float(2 * energy(0, 1)), 'coupling': float(energy(1, 1) - energy(1, 0) - energy(0, 1))}
out['stiffness'] = float(2 * ea * r2**2 / span)
# Shift of the axes until the stretched belt fits, by bisection on their distance.
around = lambda d: 2 * sqrt(d**2 - (r2 - r1) ** 2) + r1 * (pi - 2 * mp.asin((r2 - r1) / d)) + r2 * (pi + 2 * mp.asin((r2 - r1) / d))
low, high = c - 5 * mm, c + 5 * mm
for _ in range(200):
    mid = (low + high) / 2
    if around(mid) < 123 * p * (1 + mpf(700) / ea):
        low = mid
    else:
        high = mid
out['shift'] = float(abs(low - c))
here.with_suffix('.json').write_text(json.dumps(out, indent=1) + '\n')
