"""Teeth, gearbox and motors of a leg with a gearbox at the hip and a pair of spur gears at the knee, from the equilibrium of pinion and wheel.

Nothing of the library is used. Joint torques come from the two bodies of leg-direct.py. The contact of the teeth is found on the line of action by bisection,
and the inertia at the joints from kinetic energies. Writes leg-gears.json next to this file.
"""
import json
import runpy
from pathlib import Path

from mpmath import cos, lu_solve, matrix, mp, mpf, pi, sin, sqrt

here = Path(__file__)
base = runpy.run_path(str(here.with_name('leg-direct.py')))
solve, g, mm = base['solve'], base['g'], base['mm']
mp.dps = 30

# The geared desk walker: plate and sink of the knee as in leg-direct.py, a smaller motor, and two gears as solid discs beside it.
m, b = mpf('0.8') * mm, 11 * mm
z1, z2 = 15, 64
r1, r2 = m * z1 / 2, m * z2 / 2
pinion, wheel = 2700 * pi * r1**2 * b, 1200 * pi * r2**2 * b
l1, l2 = base['l1'], base['l2']
upper = [(mpf('0.04'), l1 / 2), (base['plate'] + base['sink'] + mpf('0.1') + pinion + wheel, l1)]
lower = [(mpf('0.03'), l2 / 2)]
mass, legs = mpf('2.4'), 4
alpha = 20 * pi / 180

# Lewis factors at 15 and 64 teeth: the table prints 0.289 at 15, and 0.421 and 0.425 at 60 and 65.
y1 = mpf('0.289')


def mesh(torque):
    """Force along the line of action and reactions of both axes: six equations of pinion and wheel, wheel loaded by a torque, pinion held by one."""
    # Unknowns: mesh force along the line of action, axis of the pinion (x, y), axis of the wheel (x, y), torque of the pinion.
    n = (cos(alpha), sin(alpha))
    at = lambda o: (r1, mpf(0)) if o == 1 else (-r2, mpf(0))  # from the axis to the pitch point
    A, rhs = matrix(6, 6), matrix(6, 1)
    t = (sin(alpha), cos(alpha))  # direction of the force on the wheel: pushes the axes apart and turns the wheel
    A[0, 0], A[0, 1] = -t[0], 1
    A[1, 0], A[1, 2] = -t[1], 1
    A[2, 0], A[2, 5] = -(at(1)[0] * t[1]), 1
    A[3, 0], A[3, 3] = t[0], 1
    A[4, 0], A[4, 4] = t[1], 1
    A[5, 0] = at(2)[0] * t[1]
    rhs[5] = -torque
    x = lu_solve(A, rhs)
    return abs(x[0]), sqrt(x[3] ** 2 + x[4] ** 2), abs(x[5])


out = {}
for name, height, load in [('stand', 162 * mm, mass * g / legs), ('dropEnd', 122 * mm, pi / 2 * mass * g * (1 + mpf(15) / 40) / 2)]:
    torques = solve(height, load, upper, lower)
    knee = abs(mpf(torques['knee']))
    normal, axis, on_pinion = mesh(knee)
    out[name] = {
        'hip': abs(torques['hip']),
        'knee': float(knee),
        'normal': float(normal),
        'axis': float(axis),
        'kneeMotor': float(on_pinion / mpf('0.92')),
        'hipMotor': float(abs(mpf(torques['hip'])) / 6 / mpf('0.9')),
        'pinionRoot': float(normal * cos(alpha) / (b * m * y1)),
    }


def last(radius, tip, sign):
    """Distance along the line of action from the pitch point to where a gear's tip circle cuts it."""
    low, high = mpf(0), 5 * m
    distance = lambda s: sqrt((radius + sign * s * sin(alpha)) ** 2 + (s * cos(alpha)) ** 2)
    for _ in range(120):
        mid = (low + high) / 2
        if distance(mid) < tip:
            low = mid
        else:
            high = mid
    return low


path = last(r1, r1 + m, 1) + last(r2, r2 + m, 1)
out['contactRatio'] = float(path / (pi * m * cos(alpha)))

# Kinetic energy: rotor and pinion turn by q2 - N q3 (against the knee), the wheel with the lower link by q2 + q3.
N = mpf(z2) / z1
J, Iw = mpf('12e-6') + pinion * r1**2 / 2, wheel * r2**2 / 2
energy = lambda a, c: (J * (a - N * c) ** 2 + Iw * (a + c) ** 2) / 2
out['rotor'] = {'hip': float(2 * energy(1, 0)), 'knee': float(2 * energy(0, 1)), 'coupling': float(energy(1, 1) - energy(1, 0) - energy(0, 1))}
out['freePlay'] = float(mpf('0.1') * mm / r2)
out['hipInertia'] = float((mpf('12e-6') + mpf('1.5e-6')) * 36)
here.with_suffix('.json').write_text(json.dumps(out, indent=1) + '\n')
