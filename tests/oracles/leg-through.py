"""Drum torques, tensions, forces and stiffness of a leg whose knee is driven from the hip axis by belt or cord, from the equilibrium of its bodies.

Nothing of the library is used. Tangents of the pulleys are solved numerically, branches are forces at their tangent points, and every body is balanced for
itself. Ratios follow from the speeds of the tangent points along a branch, inertia from kinetic energy. Writes leg-through.json next to this file.
"""
import json
from pathlib import Path

from mpmath import acos, asin, atan2, cos, findroot, mp, mpf, pi, sin, sqrt

mp.dps = 30
g = mpf('9.80665')
mm = mpf(1) / 1000
u = lambda p: (-sin(p), -cos(p))
add = lambda a, b, k=1: (a[0] + k * b[0], a[1] + k * b[1])
dot = lambda a, b: a[0] * b[0] + a[1] * b[1]
# A positive angle turns z towards x about +y.
moment = lambda r, f: r[1] * f[0] - r[0] * f[1]
velocity = lambda r, rate: (r[1] * rate, -r[0] * rate)


def branches(hip, knee, rh, rk, crossed):
    """Tangent points on both pulleys of both branches, found by Newton's method on the direction of their radii."""
    found = []
    for side in (1, -1):
        # Seen along hip to knee, the radius of the tangent point on the hip stands square to it, to one side or the other.
        along = atan2(knee[1] - hip[1], knee[0] - hip[0])
        def points(angle):
            n = (cos(angle), sin(angle))
            return add(hip, n, rh), add(knee, n, -rk if crossed else rk)
        def touches(angle):
            p, q = points(angle)
            return dot(add(q, p, -1), (cos(angle), sin(angle)))
        found.append(points(findroot(touches, along + side * pi / 2)))
    return found


def statics(l1, l2, q2, q3, rh, rk, crossed, rest, push, lift, upper=(), lower=(), spring=0):
    """Torques of both drums, tensions and forces; upper and lower are masses with their distances from the upper joint of the link, spring turns the lower link against the upper."""
    hip = (mpf(0), mpf(0))
    knee = add(hip, u(q2), l1)
    foot = add(knee, u(q2 + q3), l2)
    pairs = branches(hip, knee, rh, rk, crossed)
    unit = lambda v: (v[0] / sqrt(dot(v, v)), v[1] / sqrt(dot(v, v)))
    # Pull of a unit tension in each branch on the knee's pulley, towards the hip.
    pulls = [unit(add(p, q, -1)) for p, q in pairs]
    loads = [(add(foot, knee, -1), (push, lift))] + [(add((0, 0), u(q2 + q3), r), (0, -m * g)) for m, r in lower]
    outside = sum(moment(r, f) for r, f in loads) + spring
    arms = [moment(add(q, knee, -1), d) for (_, q), d in zip(pairs, pulls)]
    # Moments about the knee, both branches at the rest tension but for an equal and opposite change.
    change = -(outside + rest * (arms[0] + arms[1])) / (arms[0] - arms[1])
    tensions = [rest + change, rest - change]
    if min(tensions) < 0:
        slack = tensions.index(min(tensions))
        tensions[slack] = mpf(0)
        tensions[1 - slack] = -outside / arms[1 - slack]
    on_knee = add((pulls[0][0] * tensions[0], pulls[0][1] * tensions[0]), pulls[1], tensions[1])
    # Knee pin on the shank holds what ground, weight and branches leave; it presses the upper link the other way.
    pin = add(add((0, 0), (-sum(f[0] for _, f in loads), -sum(f[1] for _, f in loads))), on_knee, -1)
    on_upper = [(add((0, 0), u(q2), l1), (-pin[0], -pin[1]))] + [(add((0, 0), u(q2), r), (0, -m * g)) for m, r in upper]
    hip_drum = spring - sum(moment(r, f) for r, f in on_upper)
    knee_drum = -sum(moment(p, (-d[0] * t, -d[1] * t)) for (p, _), d, t in zip(pairs, pulls, tensions))
    joint = {'knee': -outside, 'hip': hip_drum + knee_drum}
    return {
        'hipDrum': hip_drum,
        'kneeDrum': knee_drum,
        'hip': joint['hip'],
        'knee': joint['knee'],
        'taut': max(tensions),
        'slack': min(tensions),
        'pulley': sqrt(dot(on_knee, on_knee)),
        'compression': -dot(on_knee, u(q2)),
    }


def ratio(l1, q2, q3, rh, rk, crossed, hip_rate, knee_rate):
    """Rate of the pulley on the hip axis, from equal speeds of both tangent points along a branch."""
    hip = (mpf(0), mpf(0))
    knee = add(hip, u(q2), l1)
    p, q = branches(hip, knee, rh, rk, crossed)[0]
    d = add(p, q, -1)
    moving = add(velocity(knee, hip_rate), velocity(add(q, knee, -1), hip_rate + knee_rate))
    return dot(moving, d) / dot(velocity(p, mpf(1)), d)


def foot_under(l1, l2, x, z, side):
    """Joint angles with the foot at (x, −z); side is the sign of the knee."""
    q3 = side * acos((x * x + z * z - l1**2 - l2**2) / (2 * l1 * l2))
    # Foot: x = −l1 sin q2 − l2 sin(q2 + q3).
    return atan2(-x, z) - atan2(l2 * sin(q3), l1 + l2 * cos(q3)), q3


out = {}
# Published arithmetic worked again: links of 150 and 160 mm, foot 30 mm ahead and 260 mm below, 40 N up and 4 N back.
q2, q3 = foot_under(150 * mm, 160 * mm, 30 * mm, 260 * mm, 1)
for name, crossed in (('open', False), ('crossed', True)):
    found = statics(150 * mm, 160 * mm, q2, q3, 16 * mm, 20 * mm, crossed, mpf(120), mpf(-4), mpf(40))
    found['perHip'] = ratio(150 * mm, q2, q3, 16 * mm, 20 * mm, crossed, mpf(1), mpf(0))
    found['perKnee'] = ratio(150 * mm, q2, q3, 16 * mm, 20 * mm, crossed, mpf(0), mpf(1))
    out[name] = found

# The shingle carrier: 12 kg on four legs; standing, and at the end of a landing on two feet from 30 mm over 80 mm.
l1, l2, m = 200 * mm, 210 * mm, mpf(12)
p, width, ea = 5 * mm, 25 * mm, mpf('420e3')
rh, rk = 40 * p / (2 * pi), 48 * p / (2 * pi)
lean = asin((rk - rh) / l1)
span = l1 * cos(lean)
belt = mpf('0.11') * (2 * span + rh * (pi - 2 * lean) + rk * (pi + 2 * lean))
disc = lambda r: 2700 * pi * r**2 * width
upper = [(mpf('0.35') + belt, l1 / 2)]
lower = [(mpf('0.28'), l2 / 2), (disc(rk), mpf(0))]
for name, height, load in (('stand', 370 * mm, m * g / 4), ('dropEnd', 290 * mm, pi / 2 * m * g * (1 + mpf(30) / 80) / 2)):
    q2, q3 = foot_under(l1, l2, mpf(0), height, 1)
    out[name] = statics(l1, l2, q2, q3, rh, rk, False, mpf(780), mpf(0), load, upper, lower)

# The same with a torsion spring of 2.5 N m/rad at the knee, loose at 10 degrees: the harder of the loaded and the lifted foot.
out['sprung'] = {}
for name, height, load in (('stand', 370 * mm, m * g / 4), ('dropEnd', 290 * mm, pi / 2 * m * g * (1 + mpf(30) / 80) / 2)):
    q2, q3 = foot_under(l1, l2, mpf(0), height, 1)
    back = -mpf('2.5') * (q3 - 10 * pi / 180)
    both = [statics(l1, l2, q2, q3, rh, rk, False, mpf(780), mpf(0), f, upper, lower, back) for f in (load, 0)]
    harder = lambda key: max((one[key] for one in both), key=abs)
    out['sprung'][name] = {key: harder(key) for key in ('hipDrum', 'kneeDrum', 'knee', 'taut')}

# Both stages: turn of the knee's drum that the motor must make up for, each span a spring, first stage of 20 and 120 teeth on axes of 130 mm.
r1, r2 = 20 * p / (2 * pi), 120 * p / (2 * pi)
first_span = sqrt((130 * mm) ** 2 - (r2 - r1) ** 2)


def deflection(torque):
    """Turn of the knee under a torque, motor held: the turns of drum and knee at which both are balanced."""
    def balance(drum, knee):
        one = 2 * ea / first_span * r2 * drum * r2
        stretch = rk * knee - rh * drum
        other = 2 * ea / span * stretch
        return other * rh - one, torque - other * rk
    return findroot(balance, (mpf(0), mpf(0)))


drum, knee = deflection(mpf(1))
n = rk / rh
out['series'] = {'atDrum': 1 / (n * n * knee), 'knee': 1 / knee}
# Inertia of rotor, pulleys on motor and hip axis, as drum and joints feel it, from kinetic energy.
N = mpf(120) / 20
J = mpf('150e-6') + 7850 * pi * r1**2 * width * r1**2 / 2
I = disc(r2) * r2**2 / 2 + disc(rh) * rh**2 / 2
energy = lambda hip, knee: (J * (N * (hip + n * knee)) ** 2 + I * (hip + n * knee) ** 2) / 2
out['inertia'] = {
    'drum': J * N**2 + I,
    'hip': 2 * energy(1, 0),
    'knee': 2 * energy(0, 1),
    'coupling': energy(1, 1) - energy(1, 0) - energy(0, 1),
}
# Distance of hip and knee at which the stretched belt of 124 teeth fits, by bisection.
around = lambda d: 2 * sqrt(d**2 - (rk - rh) ** 2) + rh * (pi - 2 * asin((rk - rh) / d)) + rk * (pi + 2 * asin((rk - rh) / d))
low, high = l1 - 5 * mm, l1 + 5 * mm
for _ in range(200):
    mid = (low + high) / 2
    if around(mid) < 124 * p * (1 + mpf(780) / ea):
        low = mid
    else:
        high = mid
out['axes'] = {'set': low}
out['shank'] = {'mass': lower[0][0] + lower[1][0], 'knee': lower[0][0] * l2**2 / 3 + disc(rk) * rk**2 / 2}
# The upper link of aluminium (276 MPa yield, 68.9 GPa) between its axes: squeezed on the shelf at 25 degrees, pressed while it stands at 20.
a, b, w = 44 * mm, 36 * mm, 2 * mm
area = a * b - (a - 2 * w) * (b - 2 * w)
weak = (a * b**3 - (a - 2 * w) * (b - 2 * w) ** 3) / 12
warm = 780 + ea * (mpf('23.6e-6') - mpf('5e-6')) * 5
slender = l1 / sqrt(weak / area)
limit = pi * sqrt(2 * mpf('68.9e9') / mpf('276e6'))
out['upper'] = {
    'squeeze': 2 * warm * cos(lean) / area,
    'pressed': 2 * 780 * cos(lean) + m * g / 4,
    'johnson': area * mpf('276e6') * (1 - (slender / limit) ** 2 / 2),
    'slender': slender,
    'limit': limit,
}
numbers = lambda x: {k: numbers(v) for k, v in x.items()} if isinstance(x, dict) else float(x)
Path(__file__).with_suffix('.json').write_text(json.dumps(numbers(out), indent=1) + '\n')
