"""Two legs by plain models: one with cords and a pushed rod on a hot day, one with a gearbox and gears in the cold. Statics by virtual work, cords by dry friction.

Nothing of the library is used. The pose is the intersection of two circles, joint torques are slopes of the potential energy, windup solves for the tension at which
the taut branch gives what the slack one takes up. Writes leg-plain-models.json beside this file. Run: python3 tests/oracles/leg-plain-models.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq

pi, g = np.pi, 9.80665
rows, foot = {"warm": {}, "cold": {}}, {"warm": {}, "cold": {}}


def pose(l1, l2, h):
    q3 = np.arccos((h * h - l1 * l1 - l2 * l2) / (2 * l1 * l2))
    return np.arctan2(-l2 * np.sin(q3), l1 + l2 * np.cos(q3)), q3


def torques(l1, l2, h, ground, m1, c1, m2, c2):
    """Joint torques that hold the links and the ground's force, by central differences of the energy."""
    q2, q3 = pose(l1, l2, h)
    energy = lambda a, b: -m1 * g * c1 * np.cos(a) - m2 * g * (l1 * np.cos(a) + c2 * np.cos(a + b)) + ground * (l1 * np.cos(a) + l2 * np.cos(a + b))
    e = 1e-5
    return (energy(q2 + e, q3) - energy(q2 - e, q3)) / (2 * e), (energy(q2, q3 + e) - energy(q2, q3 - e)) / (2 * e)


def box(width, depth, wall, moment, force):
    inner = (width - 2 * wall, depth - 2 * wall)
    second = (width * depth**3 - inner[0] * inner[1] ** 3) / 12
    return moment * depth / 2 / second + force / (width * depth - inner[0] * inner[1])


resonance = lambda k, one, other: np.sqrt(k * (1 / one + 1 / other)) / (2 * pi)
landing = lambda mass, height, travel: pi / 2 * mass * g * (1 + height / travel) / 2

# ---- warm: 8.3 kg, dropped on two feet from 33 mm with 70 mm of travel, at 41 degrees, end of the landing ---------------------------------------
l1, l2, r1, r2, C, EA, T0 = 0.157, 0.171, 0.008, 0.0508, 0.074, 24e3, 230.0
N = r2 / r1
m1, m2 = 0.153 + 0.026, 0.137
R = landing(8.3, 33, 70)
t2, t3 = torques(l1, l2, 0.222, R, m1, l1 / 2, m2, l2 / 2)
q2, q3 = pose(l1, l2, 0.222)
S = t3 / (0.031 * np.sin(np.radians(20) + q3))
knee_pin = np.hypot(S * np.sin(q2), R + S * np.cos(q2))
lean, span = np.arcsin((r1 + r2) / C), np.sqrt(C**2 - (r1 + r2) ** 2)


def tension(torque, at, mu=0.14):
    """Taut tension and windup: stretch of span and arcs of the taut branch, which the slack one gives back."""
    up = lambda T, r: r / (EA * mu) * (T - at - at * np.log(T / at))
    down = lambda T, r: r / (EA * mu) * (at * np.log(at / T) - (at - T))
    taut = lambda T: (T - at) * span / EA + up(T, r1) + up(T, r2)
    slack = lambda T: (at - T) * span / EA + down(T, r1) + down(T, r2)
    d = torque / r2
    T = brentq(lambda T: taut(T) - slack(T - d), at, at + d, xtol=1e-13, rtol=1e-14)
    return T, taut(T) / r2


hot = T0 + EA * (66e-6 + 5e-6) * (41 - 20)
warm, pull = rows["warm"], {}
for joint, torque in (("hip", abs(t2 - t3)), ("knee", abs(t3))):
    peak, d = hot + torque / r2, torque / r2
    # The joint has travelled under the load: the taut span has risen by the whole difference.
    pull[joint] = np.hypot((2 * peak - d) * np.cos(lean), d * np.sin(lean))
    warm[f"hotDrop cord.peak {joint}"] = peak
    warm[f"hotDrop motorBolt.slip {joint}"] = (torque / N / 0.95 / 0.015 + pull[joint]) / 4
load = R + pull["hip"] + pull["knee"]
root = 12e-3 - 17 / 12 * np.sqrt(3) / 2 * 1.75e-3
warm["hotDrop shaft.bending"] = load * 0.022 / (pi * root**3 / 32)
warm["hotDrop bearing.static"] = load * (1 + 22 / 42)
warm["hotDrop pin.bearingTongue hip"] = (pull["hip"] + knee_pin) / (5e-3 * 20e-3)
warm["hotDrop pin.shear knee"] = 4 / 3 * knee_pin / 2 / (pi / 4 * 5e-3**2)
warm["hotDrop rod.buckling"] = abs(S)
warm["hotDrop rod.strength"] = abs(S) / (pi / 4 * 7e-3**2)
warm["hotDrop rodPin.bearing"] = abs(S) / (4e-3 * 10e-3)
warm["hotDrop rodPin.shear"] = 4 / 3 * abs(S) / 2 / (pi / 4 * 4e-3**2)
warm["hotDrop rodPin.bending"] = abs(S) / 2 * (6e-3 / 2 + 0.3e-3 + 10e-3 / 4) / (pi * 4e-3**3 / 32)
warm["hotDrop lowerLink.bending"] = box(20e-3, 24e-3, 2e-3, abs(t3), knee_pin)
warm["hotDrop upperLink.bending"] = box(26e-3, 34e-3, 2.4e-3, abs(t2 - t3), knee_pin)
q2, q3 = pose(l1, l2, 0.292)
k = 2 * EA * r2**2 / span
about_knee = m2 * (l2**2 / 12 + (l2 / 2) ** 2)
about_hip = 0.153 * l1**2 / 3 + 0.026 * l1**2 / 4 + m2 * (l2**2 / 12 + l1**2 + l2**2 / 4 + l1 * l2 * np.cos(q3))
for joint, inertia in (("hip", about_hip), ("knee", about_knee)):
    warm[f"walk controller.delay {joint}"] = resonance(k, inertia, 96e-6 * N**2)
# The crank turns with the shank: errors of both drums move the foot by the links' own directions.
levers = [(l1 * np.cos(q2), l1 * abs(np.sin(q2))), (l2 * np.cos(q2 + q3), l2 * abs(np.sin(q2 + q3)))]
for name, angle in (("encoder rounding", 2 * pi / 16384 / 2 / N), ("encoder accuracy over a turn", np.radians(0.5) / N), ("drum out of true", 0.1e-3 / r2)):
    foot["warm"][name] = [angle * sum(each[i] for each in levers) for i in (0, 1)]

# ---- cold: 1.9 kg, dropped on two feet from 15 mm with 40 mm of travel, end of the landing -------------------------------------------------------
l1, l2, wheel = 0.085, 0.090, 0.8e-3 * 64 / 2
gears = 11e-3 * pi * (2700 * (0.8e-3 * 15 / 2) ** 2 + 1200 * wheel**2)
at_knee = 70e-3 * 70e-3 * (4e-3 * 1200 + 3e-3 * 2700) + 0.1 + gears  # plate, sink, motor and gears
m1, m2 = 0.061 + at_knee, 0.043
c1 = (0.061 * l1 / 2 + at_knee * l1) / m1
R = landing(1.9, 15, 40)
t2, t3 = torques(l1, l2, 0.122, R, m1, c1, m2, l2 / 2)
cold, force = rows["cold"], abs(t3) / wheel
# Shigley, table 14-2: 0.290 for 15 teeth, 0.422 for 60 and 0.435 for 75.
for part, Y in (("pinion", 0.290), ("wheel", 0.422 + 0.013 * (1 / 60 - 1 / 64) / (1 / 60 - 1 / 75))):
    cold[f"coldDrop gear.{part}Bending knee"] = force / (11e-3 * 0.8e-3 * Y)
cold["coldDrop pin.bearingTongue knee"] = (force / np.cos(np.radians(20)) + R) / (4e-3 * 12e-3)
cold["coldDrop lowerLink.bending"] = box(14e-3, 18e-3, 1.6e-3, abs(t3), R)
cold["coldDrop upperLink.bending"] = box(20e-3, 26e-3, 1.8e-3, max(abs(t2), abs(t3)), R)
cold["coldDrop gearbox.peak hip"] = abs(t2)
q2, q3 = pose(l1, l2, 0.162)
about_hip = 0.061 * l1**2 / 3 + at_knee * l1**2 + m2 * (l2**2 / 12 + l1**2 + l2**2 / 4 + l1 * l2 * np.cos(q3))
cold["walk controller.delay hip"] = resonance(300, about_hip, (12e-6 + 1.5e-6) * 6**2)
for name, hip, knee in (
    ("free play of the drives", np.radians(0.3), 0.1e-3 / wheel),
    ("encoder rounding", 2 * pi / 65536 / 2 / 6, 2 * pi / 65536 / 2 / (64 / 15)),
    ("encoder accuracy over a turn", np.radians(0.05) / 6, np.radians(0.05) / (64 / 15)),
):
    foot["cold"][name] = [0.162 * hip + l2 * abs(np.cos(q2 + q3)) * knee, l2 * abs(np.sin(q2 + q3)) * knee]

out = {"rows": {leg: {k: float(v) for k, v in own.items()} for leg, own in rows.items()}, "foot": {leg: {k: [float(v) for v in vs] for k, vs in own.items()} for leg, own in foot.items()}}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
