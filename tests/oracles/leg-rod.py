"""Drum torques, rod force and knee pin of a leg whose knee is driven from the hip axis through a rod, from the equilibrium of its four bodies.

Nothing of the library is used. The pose is the intersection of two circles, the linkage is closed by Newton's method, and the twelve equations of
crank, rod, upper link and lower link are solved at once. Writes leg-rod.json next to this file.
"""
import json
from pathlib import Path

from mpmath import acos, asin, atan2, cos, findroot, lu_solve, matrix, mp, mpf, pi, sin, sqrt

mp.dps = 30
g = mpf('9.80665')


def closed(l1, a, b, c, theta40, q3, guess):
    """Directions of crank and rod from the direction hip to knee, for a knee angle."""
    t4 = theta40 + q3
    f = lambda t2, t3: (a * cos(t2) + b * cos(t3) - l1 - c * cos(t4), a * sin(t2) + b * sin(t3) - c * sin(t4))
    t2, t3 = findroot(f, (t4 + guess, mpf('0.01')))
    return t2, t3, t4


def solve(l1, l2, a, b, c, theta40, q2, q3, push, lift, m1=mpf(0), m2=mpf(0), guess=mpf('0.02')):
    """Forces of the leg at joint angles q2, q3, under the force (push, lift) of the ground on the foot; links are even rods of m1, m2."""
    t2, t3, _ = closed(l1, a, b, c, theta40, q3, guess)
    # A positive angle turns z towards x about +y: the direction at angle p from straight down is (-sin p, -cos p).
    u = lambda p: (-sin(p), -cos(p))
    at = lambda o, p, r: (o[0] + r * u(p)[0], o[1] + r * u(p)[1])
    hip = (mpf(0), mpf(0))
    knee, foot = at(hip, q2, l1), at(at(hip, q2, l1), q2 + q3, l2)
    crank_pin, rocker_pin = at(hip, q2 + t2, a), at(knee, q2 + theta40 + q3, c)
    moment = lambda r, fx, fz: r[1] * fx - r[0] * fz  # about +y
    # Unknowns: hip on crank, crank pin on rod, rod on shank, knee on shank, hip on upper link, drum torque of the knee, torque of the hip's drum.
    A, rhs = matrix(12, 12), matrix(12, 1)
    names = ['hc', 'cp', 'rp', 'kn', 'hu']
    col = {n: 2 * i for i, n in enumerate(names)}

    def body(row, forces, torques, known):
        for n, sign, r in forces:
            A[row, col[n]] += sign
            A[row + 1, col[n] + 1] += sign
            A[row + 2, col[n]] += sign * r[1]
            A[row + 2, col[n] + 1] += -sign * r[0]
        for k, sign in torques:
            A[row + 2, 10 + k] += sign
        for r, fx, fz in known:
            rhs[row] -= fx
            rhs[row + 1] -= fz
            rhs[row + 2] -= moment(r, fx, fz)

    body(0, [('hc', 1, hip), ('cp', -1, crank_pin)], [(0, 1)], [])
    body(3, [('cp', 1, crank_pin), ('rp', -1, rocker_pin)], [], [])
    body(6, [('hu', 1, hip), ('kn', -1, knee)], [(1, 1)], [(at(hip, q2, l1 / 2), 0, -m1 * g)])
    body(9, [('rp', 1, rocker_pin), ('kn', 1, knee)], [], [(at(knee, q2 + q3, l2 / 2), 0, -m2 * g), (foot, push, lift)])
    x = lu_solve(A, rhs)
    rod = (rocker_pin[0] - crank_pin[0], rocker_pin[1] - crank_pin[1])
    # The rod pulls the shank towards the crank where it is in tension.
    pull = -(x[col['rp']] * rod[0] + x[col['rp'] + 1] * rod[1]) / sqrt(rod[0] ** 2 + rod[1] ** 2)
    pin = sqrt(x[col['kn']] ** 2 + x[col['kn'] + 1] ** 2)
    # What the knee pin bears of the ground and the rod, the links' own weight left out of the balance of the shank.
    length = sqrt(rod[0] ** 2 + rod[1] ** 2)
    of_rod = sqrt((-push + pull * rod[0] / length) ** 2 + (-lift + pull * rod[1] / length) ** 2)
    return {'hipDrum': x[11], 'kneeDrum': x[10], 'rod': pull, 'pin': pin, 'pinOfGroundAndRod': of_rod}


def standing(l1, l2, height, side):
    """Joint angles with the foot under the hip; side is the sign of the knee."""
    q3 = side * acos((height**2 - l1**2 - l2**2) / (2 * l1 * l2))
    # Foot at x = 0: l1 sin q2 + l2 sin(q2 + q3) = 0.
    return atan2(-l2 * sin(q3), l1 + l2 * cos(q3)), q3


mm = mpf(1) / 1000
poses = {
    'four-bar': dict(l1=150 * mm, l2=160 * mm, a=30 * mm, b=148 * mm, c=26 * mm, theta40=mpf('-1.5'), q2=mpf('-0.5'), q3=mpf('0.9'), push=mpf(-5), lift=mpf(40)),
    'parallelogram': dict(l1=150 * mm, l2=160 * mm, a=30 * mm, b=150 * mm, c=30 * mm, theta40=mpf('-1.5'), q2=mpf('-0.5'), q3=mpf('0.9'), push=mpf(-5), lift=mpf(40)),
    'other side': dict(l1=150 * mm, l2=160 * mm, a=30 * mm, b=150 * mm, c=30 * mm, theta40=mpf('1.5'), q2=mpf('-0.5'), q3=mpf('0.9'), push=mpf(-5), lift=mpf(40)),
}
out = {name: {k: float(v) for k, v in solve(**pose).items()} for name, pose in poses.items()}

# The heath carrier: shell of the upper link with its rod, 7 kg on four legs; standing, and dropped on two feet from 40 mm with 80 mm of travel, the force
# rising and falling as half a sine whose mean stops the fall.
heath = dict(l1=165 * mm, l2=180 * mm, a=34 * mm, b=165 * mm, c=34 * mm, m1=mpf('0.17'), m2=mpf('0.16'))
deg = pi / 180
for name, height, load in [
    ('stand', 310 * mm, 7 * g / 4),
    ('drop', 310 * mm, pi / 2 * 7 * g * (1 + mpf(40) / 80) / 2),
    ('dropEnd', 230 * mm, pi / 2 * 7 * g * (1 + mpf(40) / 80) / 2),
]:
    q2, q3 = standing(heath['l1'], heath['l2'], height, 1)
    found = solve(theta40=-165 * deg, q2=q2, q3=q3, push=mpf(0), lift=load, **heath)
    out[name] = {k: float(v) for k, v in found.items()}

Path(__file__).with_suffix('.json').write_text(json.dumps(out, indent=1) + '\n')
