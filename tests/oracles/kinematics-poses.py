"""Legs, chains, strides and reductions by models that share nothing with the library: places by products of rotations (scipy), Jacobians by
differences, the nearest pose by bounded least squares, work of a motor by an energy ledger. Writes kinematics-poses.json. Run: python3 tests/oracles/kinematics-poses.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import least_squares
from scipy.spatial.transform import Rotation


def digits(x, n=7):
    return f"{float(x):#.{n}g}"


out = {}


def foot(q, d=58.0, l1=165.0, l2=180.0):
    """Foot of a leg: sideways hip about x, hip and knee about y, links down."""
    hip, thigh, knee = (Rotation.from_euler(axis, angle) for axis, angle in zip("xyy", q))
    shank = np.array([0, 0, -l2])
    return hip.apply(np.array([0, d, 0]) + thigh.apply(np.array([0, 0, -l1]) + knee.apply(shank)))


def jacobian(f, q, h=1e-6):
    return np.column_stack([(f(q + h * e) - f(q - h * e)) / (2 * h) for e in np.eye(len(q))])


pose = np.radians([12.0, -35.0, 70.0])
out["foot"] = [digits(x) for x in foot(pose)]
J = jacobian(foot, pose) / 1000
out["manipulability"] = {
    "measure": digits(np.sqrt(np.linalg.det(J @ J.T)) * 1e9, 5),
    "axes": [digits(s * 1000, 6) for s in np.linalg.svd(J, compute_uv=False)],
}

# Chain with limits: the nearest pose to a target out of reach, by bounded least squares from many starts.
low, high = np.radians([-35.0, -75.0, 12.0]), np.radians([40.0, 60.0, 140.0])
target = np.array([261.2, -343.0, 34.5])
starts = np.random.default_rng(1).uniform(low, high, (40, 3))
found = [least_squares(lambda q: foot(q) - target, s, bounds=(low, high), xtol=1e-14, ftol=1e-14, gtol=1e-14) for s in starts]
best = min(found, key=lambda r: r.cost)
out["inverse"] = {"miss": digits(np.sqrt(2 * best.cost), 6), "values": [digits(np.degrees(x), 5) for x in best.x]}


# A stride by its instants: the body goes on, a foot stands while its phase is below the duty factor and stays where it is.
def stride(period, duty, speed, n=1_000_000):
    t = (np.arange(n) + 0.5) * period / n
    stands = (t / period) < duty
    body = speed * t
    standing = stands.sum() * period / n
    swept = body[stands].max() - body[stands].min()
    return standing, period - standing, swept, speed * period - 0.0


standing, swinging, swept, _ = stride(0.55, 0.62, 0.35)
# Length of a stride: from one place of the foot to the next, by adding what the body goes in stance and swing.
out["stride"] = {"stance": digits(standing, 4), "swing": digits(swinging, 4), "sweep": digits(swept * 1000, 4), "length": digits((swept + 0.35 * swinging) * 1000, 4)}


# Motor at a reduction: power at the output, friction as a share of what goes in, and the kinetic energy of the rotor, differenced in time.
def motor_torque(torque, speed, acceleration, ratio, inertia, forward, backward, carrier=0.0):
    h = 1e-5
    spin = lambda t: ratio * (speed + acceleration * t) + carrier * t
    kinetic = lambda t: 0.5 * inertia * spin(t) ** 2
    output = torque * speed
    passed = output / forward if output >= 0 else output * backward
    return (passed + (kinetic(h) - kinetic(-h)) / (2 * h)) / spin(0)


out["reduction"] = {
    "driving": digits(motor_torque(5.0, 3.0, 40.0, 6.2, 7e-5, 0.92, 0.85), 5),
    "driven": digits(motor_torque(-5.0, 3.0, -40.0, 6.2, 7e-5, 0.92, 0.85), 5),
    "carried": digits(motor_torque(5.0, 3.0, 40.0, 6.2, 7e-5, 1.0, 1.0, 25.0), 5),
}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
