"""What a force across the plane of a leg does, by vectors and sums: links of a leg turned anyhow in space, a box section in cells, a prised pin in pieces.

Independent of the library: moments are cross products about each joint, split along and across the links; section values are sums over Gauss points of the
walls, shear flow is summed round the middle line; the pin is cut into pieces and its moment summed up. Writes leg-sideways.json beside this file.
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq

rng = np.random.default_rng(7)


def turn():
    """A rotation in space, any."""
    q = rng.normal(size=4)
    w, x, y, z = q / np.linalg.norm(q)
    return np.array([[1 - 2 * (y * y + z * z), 2 * (x * y - z * w), 2 * (x * z + y * w)], [2 * (x * y + z * w), 1 - 2 * (x * x + z * z), 2 * (y * z - x * w)], [2 * (x * z - y * w), 2 * (y * z + x * w), 1 - 2 * (x * x + y * y)]])


def leg(force, upper, lower, knee):
    """A leg in its plane, knee bent by an angle, then turned in space; the force along the axis of the joints."""
    at = turn()
    hip, square = at @ np.zeros(3), at @ np.array([0.0, 1.0, 0.0])
    elbow = at @ np.array([0.0, 0.0, -upper])
    foot = elbow + at @ np.array([-lower * np.sin(knee), 0.0, -lower * np.cos(knee)])
    push = force * square
    about_hip, about_knee = np.cross(foot - hip, push), np.cross(foot - elbow, push)
    thigh, shank = (elbow - hip) / upper, (foot - elbow) / lower
    # No joint turns under it, and it does not twist the lower link, whose axis passes through the foot.
    assert max(abs(about_hip @ square), abs(about_knee @ square), abs(about_knee @ shank)) < 1e-12
    # The upper link passes on to the hip what it takes at the knee, and the moment of the force over its length: both give the same twist.
    assert abs(about_hip @ thigh - about_knee @ thigh) < 1e-12
    across = lambda moment, axis: float(np.linalg.norm(moment - (moment @ axis) * axis))
    return {'upperAtHip': across(about_hip, thigh), 'upperAtKnee': across(about_knee, thigh), 'upperTwist': abs(float(about_knee @ thigh)),
            'kneeCouple': float(np.linalg.norm(about_knee)), 'hipCouple': float(np.linalg.norm(about_hip))}


def box(load, width, depth, wall):
    """Walls as four strips, cut at the middle lines of the section; three Gauss points each way are exact for second moments."""
    points, weights = np.polynomial.legendre.leggauss(3)
    b, h = width / 2, depth / 2
    strips = []
    for y0, y1, z0, z1 in [(-b, b, h - wall, h), (-b, b, -h, wall - h), (b - wall, b, wall - h, h - wall), (-b, wall - b, wall - h, h - wall)]:
        for ya, yb in ((y0, min(y1, 0.0)), (max(y0, 0.0), y1)):
            for za, zb in ((z0, min(z1, 0.0)), (max(z0, 0.0), z1)):
                if yb > ya and zb > za:
                    strips += [((ya + yb) / 2 + (yb - ya) / 2 * p, (za + zb) / 2 + (zb - za) / 2 * r, u * v * (yb - ya) * (zb - za) / 4)
                               for p, u in zip(points, weights) for r, v in zip(points, weights)]
    y, z, area = map(np.array, zip(*strips))
    about_y, about_z, whole = float((z * z * area).sum()), float((y * y * area).sum()), float(area.sum())
    normal = load['moment'] * h / about_y + load['sidewaysMoment'] * b / about_z + load['axialForce'] / whole
    # Shear flow of the torque round the middle line: constant, its moment about any point is the torque.
    corners = np.array([(b - wall / 2, h - wall / 2), (wall / 2 - b, h - wall / 2), (wall / 2 - b, wall / 2 - h), (b - wall / 2, wall / 2 - h)])
    sweep = sum(float(np.cross(np.append(p, 0), np.append(q, 0))[2]) for p, q in zip(corners, np.roll(corners, -1, axis=0)))
    flow = load['torque'] / abs(sweep)
    # Rate of twist from the work of the flow; through the wall the stress rises by shear modulus times rate times thickness.
    length = sum(float(np.linalg.norm(p - q)) for p, q in zip(corners, np.roll(corners, -1, axis=0)))
    rate = flow * length / wall / abs(sweep)
    torsion = flow / wall + rate * wall
    shear = load['shearForce'] * float((z * area)[z > 0].sum()) / about_y / (2 * wall)
    sideways = load['sidewaysShearForce'] * float((y * area)[y > 0].sum()) / about_z / (2 * wall)
    return {'normalStress': normal, 'shearStress': torsion + max(shear, sideways), 'torsionStress': torsion}


def pin(couple, diameter, cheek, gap, lug, pieces=400000):
    """The pin from one cheek to the other, the eye pressing on it in proportion to the place."""
    span = lug + 2 * gap + cheek
    y = (np.arange(pieces) + 0.5) / pieces * span - span / 2
    step = span / pieces
    inside = np.abs(y) < lug / 2
    load = np.where(inside, y, 0.0)
    load *= couple / (load * y).sum() / step
    # Supports at the ends carry the couple; shear and moment by summing from one end.
    support = couple / span
    # The supports press against the eye's couple; nothing is left at the far end.
    shear = support + np.cumsum(load) * step
    moment = np.cumsum(shear) * step
    assert abs(moment[-1]) < 1e-4 * couple
    most = float(np.abs(moment).max())
    edge = float(couple * (lug / 2) / ((y[inside] ** 2).sum() * step)) / diameter
    return {'cheekForce': float(support), 'eyeEdgePressure': edge, 'moment': most, 'bendingStress': most / (np.pi * diameter**3 / 32)}


def play(gap, clearance, lug, face, distance, pin=0.004):
    """An eye that turns round a pin between cheeks: its corners touch the pin, or its faces the cheeks, exactly."""
    on_pin = brentq(lambda t: pin * np.cos(t) + lug * np.sin(t) - pin - clearance, 0, 0.5)
    on_cheeks = brentq(lambda t: lug * np.cos(t) + face * np.sin(t) - lug - 2 * gap, 0, 0.5)
    tilt = min(on_pin, on_cheeks)
    return {'tilt': tilt, 'play': gap + distance * np.sin(tilt)}


links = [(18.0, 0.165, 0.18, 1.2), (7.0, 0.15, 0.16, 0.0), (40.0, 0.24, 0.25, 2.4), (25.0, 0.085, 0.09, -0.9)]
boxes = [({'moment': 6.9, 'sidewaysMoment': 4.2, 'torque': 2.5, 'axialForce': 67.0, 'shearForce': 67.0, 'sidewaysShearForce': 16.0}, 0.026, 0.034, 0.0024),
         ({'moment': 0.0, 'sidewaysMoment': 3.0, 'torque': 0.5, 'axialForce': 0.0, 'shearForce': 0.0, 'sidewaysShearForce': 40.0}, 0.020, 0.024, 0.002),
         ({'moment': 12.0, 'sidewaysMoment': 9.0, 'torque': 8.0, 'axialForce': 200.0, 'shearForce': 150.0, 'sidewaysShearForce': 60.0}, 0.040, 0.050, 0.002)]
pins = [(2.9, 0.004, 0.005, 0.0003, 0.014), (4.8, 0.004, 0.018, 0.0003, 0.0225), (10.0, 0.008, 0.020, 0.0, 0.030)]
plays = [(0.0003, 0.0001, 0.0225, 0.015, 0.18), (0.00005, 0.0002, 0.014, 0.020, 0.16)]
out = {'links': [{'given': dict(zip(('force', 'upperLink', 'lowerLink', 'kneeAngle'), one)), 'gives': leg(*one)} for one in links],
       'boxes': [{'given': {**load, **dict(zip(('width', 'depth', 'wall'), size))}, 'gives': box(load, *size)} for load, *size in boxes],
       'pins': [{'given': dict(zip(('couple', 'diameter', 'cheekThickness', 'gap', 'lugThickness'), one)), 'gives': pin(*one)} for one in pins],
       'plays': [{'given': dict(zip(('gap', 'clearance', 'lugThickness', 'faceDiameter', 'distance'), one)), 'gives': play(*one)} for one in plays]}
Path(__file__).with_suffix('.json').write_text(json.dumps(out, indent=1))
