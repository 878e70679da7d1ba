"""Forces of feet by models that share nothing with the library: four springs that only push, by minimum of energy (Newton over the feet
that touch), three feet by a linear system
in the moments, tipping by integration of the fall of a body over its two feet. Writes kinematics-feet.json. Run: python3 tests/oracles/kinematics-feet.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp

g = 9.80665


def digits(x, n=7):
    return f"{x:#.{n}g}"


def four(weight, length, width, x, y, k, short):
    """Plate at height z, tilted a about the forward and b about the left axis: feet push with k times their depth. Newton on the energy, unilateral."""
    feet = np.array([(length / 2, width / 2), (length / 2, -width / 2), (-length / 2, width / 2), (-length / 2, -width / 2)])
    gaps = np.array([short, 0.0, 0.0, 0.0])
    A = np.column_stack([np.ones(4), feet[:, 1], feet[:, 0]])  # depth of each foot per unit of z, a, b

    def depth(u):
        return A @ u - gaps

    load = weight * np.array([1.0, y, x])
    u = np.array([weight / (4 * k), 0.0, 0.0])
    for _ in range(200):
        d = depth(u)
        on = d > 0
        grad = k * A[on].T @ d[on] - load
        H = k * A[on].T @ A[on] + 1e-9 * k * np.eye(3) * 1e-6
        step = np.linalg.solve(H, grad)
        u = u - step
        if np.linalg.norm(step) < 1e-18:
            break
    return [digits(f) for f in k * np.maximum(0, depth(u))]


def three(feet, centre):
    M = np.vstack([np.ones(3), np.array(feet).T])
    shares = np.linalg.solve(M, np.array([1.0, *centre]))
    # Distance to each edge by projection; inside where the share of the foot opposite is positive.
    margins = []
    for i in range(3):
        a, b = np.array(feet[i]), np.array(feet[(i + 1) % 3])
        t = (b - a) / np.linalg.norm(b - a)
        r = np.array(centre) - a
        margins.append(np.sign(shares[(i + 2) % 3]) * np.linalg.norm(r - t * (r @ t)))
    return {"shares": [digits(s) for s in shares], "margin": digits(min(margins))}


def fall(rear, front, centre, height, mass, inertia, time):
    """Inverted pendulum about the line of the feet: start of the fall, and the angle after the time, integrated."""
    t = (np.array(front) - rear) / np.linalg.norm(np.array(front) - rear)
    left = np.array([-t[1], t[0]])
    offset = (np.array(centre) - rear) @ left
    r = np.hypot(offset, height)
    whole = inertia + mass * r**2
    start = np.arctan2(offset, height)
    f = lambda _, s: [s[1], mass * g * r * np.sin(s[0]) / whole]
    course = solve_ivp(f, (0, time), [start, 0], rtol=1e-12, atol=1e-15, dense_output=True)
    h = 1e-3
    acceleration = 2 * (course.sol(h)[0] - start) / h**2
    return {
        "offset": digits(offset),
        "acceleration": digits(f(0, [start, 0])[1]),
        "accelerationByFall": digits(acceleration, 5),
        "fallen": digits(course.y[0, -1] - start, 5),
    }


out = {
    "level": four(6 * g, 0.36, 0.24, 0.01, 0.006, 4000, 0.0),
    "short": four(6 * g, 0.36, 0.24, 0.01, 0.006, 4000, 0.002),
    "hollow": four(6 * g, 0.36, 0.24, -0.02, 0.006, 4000, 0.03),
    "bump": four(6 * g, 0.36, 0.24, 0.03, 0.01, 4000, -0.03),
    "inside": three([(0.18, 0.12), (0.18, -0.12), (-0.18, 0.12)], (0.03, 0.02)),
    "outside": three([(0.18, 0.12), (0.18, -0.12), (-0.18, 0.12)], (-0.03, -0.02)),
    "leftFrontRightHind": fall((-0.18, -0.12), (0.18, 0.12), (0.01, -0.006), 0.25, 6, 0.08, 0.16),
    "rightFrontLeftHind": fall((-0.18, 0.12), (0.18, -0.12), (0.01, -0.006), 0.25, 6, 0.08, 0.16),
}


def walk(duty, step, order, centre, n=20000):
    """Share of a stride of a walk in which two feet stand, and in which the centre is outside the polygon; angles from the centre to the feet."""
    hips = {"LF": (0.18, 0.12), "RF": (0.18, -0.12), "LH": (-0.18, 0.12), "RH": (-0.18, -0.12)}
    phase = {leg: k / 4 for k, leg in enumerate(order)}
    two = outside = 0
    for i in range(n):
        t = (i + 0.5) / n
        standing = []
        for leg, (x, y) in hips.items():
            u = (t - phase[leg]) % 1
            if u < duty:
                standing.append((x + step * (0.5 - u / duty), y))
        two += len(standing) == 2
        # Inside where the feet, seen from the centre, leave no gap of half a turn.
        a = np.sort([np.arctan2(y - centre[1], x - centre[0]) for x, y in standing])
        gaps = np.diff(np.append(a, a[0] + 2 * np.pi))
        outside += gaps.max() > np.pi
    return {"two": digits(two / n, 3), "outside": digits(outside / n, 3)}


lateral = ("LH", "LF", "RH", "RF")
out["walk"] = {
    "0.70": walk(0.7, 0.1, lateral, (0.0, 0.0)),
    "0.75": walk(0.75, 0.1, lateral, (0.01, 0.006)),
    "0.90": walk(0.9, 0.1, lateral, (0.01, 0.006)),
}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
