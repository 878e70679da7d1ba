"""Torques of a leg whose rotors are fixed to hip and knee, from the equilibrium of its two bodies, and the kinetic energy of its rotors.

Nothing of the library is used. The pose is the intersection of two circles; the six equations of upper and lower link are solved at once. The energy of
the knee's rotor is that of a disc that turns with the lower link. Writes leg-direct.json next to this file.
"""
import json
from pathlib import Path

from mpmath import acos, atan2, cos, lu_solve, matrix, mp, mpf, pi, sin

mp.dps = 30
g = mpf('9.80665')
mm = mpf(1) / 1000

# The desk walker, revised: shell of the upper link, and plate, sink and motor of the knee at its end.
l1, l2 = 85 * mm, 90 * mm
plate = 70 * mm * 70 * mm * 4 * mm * 1200
sink = 70 * mm * 70 * mm * 3 * mm * 2700
upper = [(mpf('0.04'), l1 / 2), (plate + sink + mpf('0.19'), l1)]
lower = [(mpf('0.03'), l2 / 2)]
mass, legs = mpf('2.4'), 4


def solve(height, lift, upper=upper, lower=lower):
    """Torques of hip and knee with the foot under the hip; masses of each link with their distances from its upper joint."""
    q3 = acos((height**2 - l1**2 - l2**2) / (2 * l1 * l2))
    q2 = atan2(-l2 * sin(q3), l1 + l2 * cos(q3))
    u = lambda p: (-sin(p), -cos(p))
    at = lambda o, p, r: (o[0] + r * u(p)[0], o[1] + r * u(p)[1])
    hip = (mpf(0), mpf(0))
    knee = at(hip, q2, l1)
    foot = at(knee, q2 + q3, l2)
    moment = lambda r, fx, fz: r[1] * fx - r[0] * fz  # about +y
    # Unknowns: force of the body on the upper link at the hip, of the upper on the lower link at the knee, torque of the hip motor, of the knee motor.
    A, rhs = matrix(6, 6), matrix(6, 1)

    def force(row, k, sign, r):
        A[row, k] += sign
        A[row + 1, k + 1] += sign
        A[row + 2, k] += sign * r[1]
        A[row + 2, k + 1] -= sign * r[0]

    def known(row, r, fx, fz):
        rhs[row] -= fx
        rhs[row + 1] -= fz
        rhs[row + 2] -= moment(r, fx, fz)

    force(0, 0, 1, hip)
    force(0, 2, -1, knee)
    A[2, 4] += 1
    A[2, 5] -= 1
    for m, c in upper:
        known(0, at(hip, q2, c), 0, -m * g)
    force(3, 2, 1, knee)
    A[5, 5] += 1
    for m, c in lower:
        known(3, at(knee, q2 + q3, c), 0, -m * g)
    known(3, foot, 0, lift)
    x = lu_solve(A, rhs)
    return {'hip': float(x[4]), 'knee': float(x[5]), 'height': float(height)}


out = {}
for name, height, load in [
    ('stand', 162 * mm, mass * g / legs),
    ('drop', 162 * mm, pi / 2 * mass * g * (1 + mpf(15) / 40) / 2),
    ('dropEnd', 122 * mm, pi / 2 * mass * g * (1 + mpf(15) / 40) / 2),
]:
    out[name] = solve(height, load)

# Kinetic energy of the knee's rotor, J (hip rate + knee rate)^2 / 2, and so its inertia at hip and knee and between them.
J = mpf('90e-6') / 1  # 90 kg mm^2
energy = lambda a, b: J * (a + b) ** 2 / 2
out['rotor'] = {
    'hip': float(2 * energy(1, 0)),
    'knee': float(2 * energy(0, 1)),
    'coupling': float(energy(1, 1) - energy(1, 0) - energy(0, 1)),
}
Path(__file__).with_suffix('.json').write_text(json.dumps(out, indent=1) + '\n')
