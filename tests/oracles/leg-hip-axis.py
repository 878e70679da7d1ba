"""The hip shaft of the heath carrier, its knee driven through a rod beside the links: forces of both bearings from the equilibrium of four bodies in space.

Nothing of the library is used. Lower link, upper link, crank with its drum, and shaft are rigid; six equations each, 24 unknowns, solved at once. The pulls of both cords
are turned all round, the rod is tried on both sides of the links, the foot pushes forward and backward: the worst of all these is kept.
Writes leg-hip-axis.json beside this file. Run: python3 tests/oracles/leg-hip-axis.py
"""
import json
from pathlib import Path

import numpy as np

mm, pi, g = 1e-3, np.pi, 9.80665
l1, l2, crank = 165 * mm, 180 * mm, 34 * mm
rocker_angle = np.radians(-165)
overhang, spacing = 22 * mm, 42 * mm
Y = np.array([0.0, 1.0, 0.0])


def down(angle):
    """Unit vector at an angle from straight down, turned about +y, z towards x."""
    return np.array([-np.sin(angle), 0.0, -np.cos(angle)])


def shaft(height, ahead, ground, beside, drum, hip_cord, knee_cord, masses=(0.0, 0.0)):
    """Force of the nearer bearing (y = 0) on the shaft, largest bending of the shaft there and between crank and link, and the pull of the rod. The leg is at
    y = overhang, the rod at `beside` from it, the drum of the knee at `drum`."""
    # The knee where two circles meet, on the side of the positive knee angle.
    foot = np.array([ahead, overhang, -height])
    d = np.hypot(ahead, height)
    bend = np.arccos((d**2 - l1**2 - l2**2) / (2 * l1 * l2))
    tilt = np.arctan2(-ahead, height)
    q2 = tilt - np.arctan2(l2 * np.sin(bend), l1 + l2 * np.cos(bend))
    plane = overhang * Y
    knee = plane + l1 * down(q2)
    assert np.allclose(knee + l2 * down(q2 + bend), foot)
    out = beside * Y
    crank_pin = plane + out + crank * down(q2 + rocker_angle + bend)
    rocker_pin = knee + out + crank * down(q2 + rocker_angle + bend)
    along = (rocker_pin - crank_pin) / np.linalg.norm(rocker_pin - crank_pin)
    hub = plane + out
    wound = plane + drum * Y
    A, b = np.zeros((24, 24)), np.zeros(24)
    E = np.eye(3)
    LOWER, UPPER, CRANK, SHAFT = 0, 6, 12, 18

    def force(body, column, at, direction):
        A[body : body + 3, column] += direction
        A[body + 3 : body + 6, column] += np.cross(at, direction)

    def moment(body, column, direction):
        A[body + 3 : body + 6, column] += direction

    def known(body, at, what):
        b[body : body + 3] -= what
        b[body + 3 : body + 6] -= np.cross(at, what)

    # 0-2 knee on lower link, 3-4 its moments; 5 pull of the rod; 6-8 shaft on upper link, 9-11 its moments; 12-14 shaft on crank, 15-16 its moments;
    # 17 torque of the knee's drive on the crank; 18 torque of the hip's drive on the upper link; 19-20 nearer, 21-22 farther bearing; 23 thrust.
    for i in range(3):
        force(LOWER, i, knee, E[i])
        force(UPPER, i, knee, -E[i])
        force(UPPER, 6 + i, plane, E[i])
        force(SHAFT, 6 + i, plane, -E[i])
        moment(UPPER, 9 + i, E[i])
        moment(SHAFT, 9 + i, -E[i])
        force(CRANK, 12 + i, hub, E[i])
        force(SHAFT, 12 + i, hub, -E[i])
    for k, i in enumerate((0, 2)):
        moment(LOWER, 3 + k, E[i])
        moment(UPPER, 3 + k, -E[i])
        moment(CRANK, 15 + k, E[i])
        moment(SHAFT, 15 + k, -E[i])
        force(SHAFT, 19 + k, np.zeros(3), E[i])
        force(SHAFT, 21 + k, -spacing * Y, E[i])
    force(LOWER, 5, rocker_pin, -along)
    force(CRANK, 5, crank_pin, along)
    moment(CRANK, 17, Y)
    moment(UPPER, 18, Y)
    force(SHAFT, 23, np.zeros(3), E[1])
    known(LOWER, foot, ground)
    known(LOWER, knee + l2 / 2 * down(q2 + bend), np.array([0, 0, -masses[1] * g]))
    known(UPPER, plane + l1 / 2 * down(q2), np.array([0, 0, -masses[0] * g]))
    # The pulls of the cords in the plane of the leg.
    known(UPPER, plane, hip_cord)
    known(CRANK, wound, knee_cord)
    x = np.linalg.solve(A, b)
    # Bending of a section: all that acts on the shaft farther out, but for its twist.
    loads = [(plane, -x[6:9], -x[9:12]), (hub, -x[12:15], -np.array([x[15], 0, x[16]])), (np.zeros(3), np.array([x[19], 0, x[20]]), np.zeros(3))]

    def bending(y):
        total = sum((m + np.cross(at - y * Y, f) for at, f, m in loads if at[1] > y), np.zeros(3))
        return np.hypot(total[0], total[2])

    sections = {"atBearing": [0.0], "between": [plane[1], hub[1]]}
    most = {k: max(bending(y + d) for y in ys for d in (-1e-12, 1e-12)) for k, ys in sections.items()}
    return np.array([x[19], 0, x[20]]), most, x[5]


turned = lambda size, angle: size * np.array([np.cos(angle), 0, np.sin(angle)])
HIP, KNEE = 300.0, 350.0
lift = pi / 2 * 7 * g * (1 + 40 / 80) / 2
AROUND = np.radians(np.arange(0, 360, 5))


def worst(height, traction, beside, drum, masses):
    found = {"nearer": 0.0, "atBearing": 0.0, "between": 0.0, "rod": 0.0}
    for push in (-traction, traction):
        args = (height, 0.0, np.array([push * lift, 0, lift]), beside * mm, drum * mm)
        # All is linear in the loads: a bearing is worst off where both cords pull as the leg does; between crank and link all round is tried.
        alone, _, pull = shaft(*args, np.zeros(3), np.zeros(3), masses)
        for angle in [np.arctan2(-alone[2], -alone[0]), *AROUND]:
            near, most, _ = shaft(*args, turned(HIP, angle), turned(KNEE, angle), masses)
            found["nearer"] = max(found["nearer"], float(np.linalg.norm(near)))
            for key in ("atBearing", "between"):
                found[key] = max(found[key], float(most[key]))
        found["rod"] = max(found["rod"], float(abs(pull)))
    return found


out = {"cords": {"hip": HIP, "knee": KNEE}, "rows": {}}
for beside, drum in ((0, 0), (-17, -3), (17, 31), (17, 17)):
    for traction in (0.0, 0.3):
        for name, height in (("drop", 310 * mm), ("dropEnd", 230 * mm)):
            row = worst(height, traction, beside, drum, (0.17, 0.16))
            row["nearerWithoutWeight"] = worst(height, traction, beside, drum, (0.0, 0.0))["nearer"]
            out["rows"][f"{name} {beside} {drum} {traction:g}"] = row
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
