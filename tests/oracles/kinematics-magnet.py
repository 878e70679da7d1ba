"""Angle sensor over the end of a shaft magnet by another model: the magnet as magnetic charges on its curved face, integrated by quadrature, turned and
leaned as a body; the sensor reads two parts of that field in its own leaned plane, and a Fourier transform of the reading over a turn gives the error.
Writes kinematics-magnet.json. Run: python3 tests/oracles/kinematics-magnet.py
"""
import json
from pathlib import Path

import numpy as np

MU = 1.0  # fields in units of the remanence over 4 pi


def digits(x, n=7):
    return f"{x:#.{n}g}"


def charges(radius, length, n_angle=96, n_length=24):
    """Places and weights of the charges of a magnet magnetised along x, its face at z = 0 and its body below: charge cos(angle) per area."""
    angle = (np.arange(n_angle) + 0.5) * 2 * np.pi / n_angle
    nodes, weights = np.polynomial.legendre.leggauss(n_length)
    z = -(nodes + 1) / 2 * length
    places = np.array([[(radius * np.cos(a), radius * np.sin(a), h) for h in z] for a in angle]).reshape(-1, 3)
    charge = np.array([[np.cos(a) * radius * 2 * np.pi / n_angle * w * length / 2 for w in weights] for a in angle]).ravel()
    return places, charge


def field(point, places, charge):
    d = point - places
    return (charge / np.linalg.norm(d, axis=1) ** 3) @ d / (4 * np.pi)


def lean_matrix(x, y):
    """Turn that carries the upward axis to a lean of (x, y)."""
    size = np.hypot(x, y)
    if size == 0:
        return np.eye(3)
    k = np.array([-y / size, x / size, 0])
    K = np.array([[0, -k[2], k[1]], [k[2], 0, -k[0]], [-k[1], k[0], 0]])
    return np.eye(3) + np.sin(size) * K + (1 - np.cos(size)) * K @ K


def error(radius, length, gap, s, ts, e, tm, dipole=None, count=64):
    """First and second harmonic of the reading's error, and the fourth."""
    places, charge = charges(radius, length) if dipole is None else (None, None)
    readings = []
    sensor = lean_matrix(*ts)
    for a in np.arange(count) * 2 * np.pi / count:
        c, sn = np.cos(a), np.sin(a)
        turn = np.array([[c, -sn, 0], [sn, c, 0], [0, 0, 1]])
        body = turn @ lean_matrix(*tm)  # the magnet leans in the turning frame
        # The axis of the magnet pierces the plane of the sensor at e: its face lies a gap below that point along the axis.
        pierce = turn @ np.array([*e, gap])
        point = np.array([*s, gap])
        r = body.T @ (point - pierce) + np.array([0, 0, gap if dipole is None else dipole])
        if dipole is None:
            B = body @ field(r, places, charge)
        else:
            d, m = np.linalg.norm(r), np.array([1.0, 0, 0])
            B = body @ (3 * (m @ r) * r / d**5 - m / d**3)
        B = sensor.T @ B
        readings.append(np.arctan2(-B[1], -B[0]) - a)
    err = np.unwrap(np.array(readings))
    h = np.fft.fft(err - err.mean()) / count
    return [2 * abs(h[k]) for k in (1, 2, 4)]


def axis(radius, length, gap):
    """Field on the axis and its two numbers by finite differences of the charges, in units of the remanence."""
    places, charge = charges(radius, length, 400, 80)
    B = lambda z: field(np.array([0, 0, z]), places, charge)[0]
    h = gap / 50
    b0, b1, b2, b3, b4 = (B(gap + i * h) for i in (0, 1, -1, 2, -2))
    first = (8 * (b1 - b2) - (b3 - b4)) / (12 * h)
    second = (-b3 + 16 * b1 - 30 * b0 + 16 * b2 - b4) / (12 * h * h)
    return abs(b0), second / (8 * b0), first / (2 * b0)


out = {}
b, c, slope = axis(3e-3, 2.5e-3, 1.5e-3)
out["axis"] = {"field": digits(1.2 * b * 1e3), "curvature": digits(c, 6), "slope": digits(slope, 6)}
b, c, slope = axis(2e-3, 4e-3, 1e-3)
out["axisLong"] = {"field": digits(0.8 * b * 1e3), "curvature": digits(c, 6), "slope": digits(slope, 6)}

shape = (3e-3, 2.5e-3, 1.5e-3)
none = (0.0, 0.0)
for name, s, ts, e, tm in (
    ("offsets", (1e-4, 0), none, (1e-4, 0), none),
    ("cancelling", (1e-4, 0), (0.03, 0), (1e-4, 0), (0, 0.02)),
    ("adding", (1e-4, 0), (-0.03, 0), (1e-4, 0), (0, -0.02)),
    ("askew", (6e-5, -8e-5), (0.01, 0.02), (-5e-5, 7e-5), (0.015, -0.01)),
    ("magnetAlone", (0, 0), none, (1e-4, 1e-4), (0.02, 0.02)),
):
    e1, e2, _ = error(*shape, s, ts, e, tm)
    # A hundredth of every offset and lean: the errors of second order fall to a ten-thousandth, and those of fourth order vanish beside them.
    small = [tuple(0.01 * x for x in v) for v in (s, ts, e, tm)]
    t1, t2, _ = error(*shape, *small)
    out[name] = {"first": digits(e1 * 1e3, 4), "second": digits(e2 * 1e3, 4), "limit": [digits(t1 * 1e7, 4), digits(t2 * 1e7, 4)]}

e1, e2, e4 = error(0, 0, 0, (2e-4, 0), none, none, none, dipole=3e-3)
out["dipole"] = {"second": digits(e2), "fourth": digits(e4)}
# Worst of the dipole's error over a fine turn.
a = np.linspace(0, 2 * np.pi, 200001)
r = np.array([2e-4, 0, 3e-3])
m = np.stack([np.cos(a), np.sin(a), 0 * a])
B = 3 * (r @ m) * r[:, None] / np.linalg.norm(r) ** 5 - m / np.linalg.norm(r) ** 3
gap = np.angle(np.exp(1j * (np.arctan2(-B[1], -B[0]) - a)))
out["dipole"]["worst"] = digits(np.max(np.abs(gap)))
e1, e2, _ = error(0, 0, 0, (0, 0), (0.01, 0), none, none, dipole=3e-3)
out["leaned"] = {"second": digits(e2, 4)}
# Two numbers of a dipole by differences.
B = lambda z: z**-3
h, z = 1e-4, 0.012
out["far"] = {
    "curvature": digits(float((-B(z + 2 * h) + 16 * B(z + h) - 30 * B(z) + 16 * B(z - h) - B(z - 2 * h)) / (12 * h * h) / (8 * B(z))), 6),
    "slope": digits(float((8 * (B(z + h) - B(z - h)) - (B(z + 2 * h) - B(z - 2 * h))) / (12 * h) / (2 * B(z))), 6),
}
# Stray field: the angle of a turning and a fixed vector.
reading = np.angle(np.exp(1j * (np.angle(50 * np.exp(1j * a) + 1) - a)))
out["stray"] = {"first": digits(2 * abs(np.mean(reading[:-1] * np.exp(-1j * a[:-1])))), "worst": digits(np.max(np.abs(reading)))}
# Commutation: mean power of three sinusoidal phases driven by an angle that is off.
x = np.linspace(0, 2 * np.pi, 100001)[:-1]
off = 14 * np.arcsin(0.02)
torque = sum(np.mean(np.cos(x + k) * np.cos(x + k + off)) for k in (0, 2 * np.pi / 3, -2 * np.pi / 3)) / 1.5
out["commutation"] = {"electrical": digits(off), "left": digits(torque)}
# Speed ripple: differences of a reading with both harmonics at their worst.
t = np.linspace(0, 2 * np.pi / 5, 2000001)
angle = 5 * t
reading = angle + 0.01 * np.sin(angle) + 0.004 * np.sin(2 * angle)
out["ripple"] = digits(np.max(np.abs(np.gradient(reading, t) - 5)))
# Knee: every corner of the errors through both drives.
corners = [
    abs(((k / 6) - carried * (h / 6)) / 1.0) for carried in (0, 1) for h in (-0.01, 0.01) for k in (-0.01, 0.01)
]
out["knee"] = {"thigh": digits(max(corners[:4])), "body": digits(max(corners[4:]))}


def foot(carried):
    """Worst movement of the foot for errors of 10 mrad at both motors, reduction 6, by differences of its place; forward and in height, mm."""
    place = lambda q2, q3: np.array([-0.15 * np.sin(q2) - 0.16 * np.sin(q2 + q3), -0.15 * np.cos(q2) - 0.16 * np.cos(q2 + q3)])
    e, h = 0.01 / 6, 1e-3
    moves = []
    for a in (-e, e):
        for b in (-e, e):
            ahead, back = (place(-0.4 + t * a, 0.8 + t * (b - carried * a)) for t in (h, -h))
            moves.append(np.abs(ahead - back) / (2 * h) * 1e3)
    return [digits(x) for x in np.max(moves, axis=0)]


out["foot"] = {"body": foot(1), "thigh": foot(0)}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
