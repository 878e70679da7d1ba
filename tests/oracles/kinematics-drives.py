"""Drives of hip and knee by models that share nothing with the library: positions of pins and of point masses, closed by Newton's method in Cartesian
coordinates, differentiated numerically to 40 digits (mpmath); forces of rod and pins from the twelve equations of equilibrium of four bodies (numpy).

Frame: x forward, z up; a link at an angle a has the direction (-sin a, -cos a); hip and knee turn right-handed about +y.
Writes kinematics-drives.json. Run: python3 tests/oracles/kinematics-drives.py
"""
import itertools
import json
from pathlib import Path

import numpy as np
from mpmath import mp, mpf, atan2, cos, diff, findroot, pi, sin, sqrt

mp.dps = 40


def along(a):
    return (-sin(a), -cos(a))


def plus(p, q, factor=1):
    return (p[0] + factor * q[0], p[1] + factor * q[1])


# Four-bar between hip and knee: crank angle absolute, closed by Newton from the assembly nearest to a start.
def crank_pin(bar, q2, q3, start):
    """Absolute angle of the crank, continued from `start`, its angle in the frame of the upper link."""
    knee = tuple(bar["g"] * x for x in along(q2))
    pin = plus(knee, along(q2 + bar["t40"] + q3), bar["c"])

    def gap(t):
        p = tuple(bar["a"] * x for x in along(q2 + t))
        return (p[0] - pin[0]) ** 2 + (p[1] - pin[1]) ** 2 - bar["b"] ** 2

    return findroot(gap, start)


def start_of(bar, q3, side):
    """A start on the given side of the line hip axis to rocker pin: scan, then Newton."""
    pin = (bar["g"] + bar["c"] * cos(bar["t40"] + q3), bar["c"] * sin(bar["t40"] + q3))
    line = atan2(pin[1], pin[0])

    def gap(t):
        return (bar["a"] * cos(t) - pin[0]) ** 2 + (bar["a"] * sin(t) - pin[1]) ** 2 - bar["b"] ** 2

    steps = 400
    for i in range(steps):
        a, b = line + side * pi * i / steps, line + side * pi * (i + 1) / steps
        if gap(a) * gap(b) <= 0:
            return findroot(gap, (a, b), solver="anderson")
    raise ValueError("does not close")


def coupler_angle(bar, q3, t2):
    pin = (bar["g"] + bar["c"] * cos(bar["t40"] + q3), bar["c"] * sin(bar["t40"] + q3))
    return atan2(pin[1] - bar["a"] * sin(t2), pin[0] - bar["a"] * cos(t2))


def digits(x, n=7):
    return mp.nstr(mpf(x), n, strip_zeros=False)


def link_wise(point_masses, q, rates, accelerations):
    """Torques of the joints that give point masses their accelerations: sum of m a . dx/dq."""
    q2, q3 = q

    def path(t):
        return [q[j] + rates[j] * t + accelerations[j] * t * t / 2 for j in (0, 1)]

    torque = [mpf(0), mpf(0)]
    for m, place in point_masses:
        for k in (0, 1):
            a = diff(lambda t: place(*path(t))[k], 0, 2)
            for j in (0, 1):
                slope = diff(lambda x: place(*(x if i == j else q[i] for i in (0, 1)))[k], q[j])
                torque[j] += m * a * slope
    return torque


def mass_matrix(point_masses, q):
    columns = [link_wise(point_masses, q, (0, 0), unit) for unit in ((1, 0), (0, 1))]
    return columns[0][0], columns[1][0], columns[1][1]


def ring(inertia, angle, centre=lambda q2, q3: (mpf(0), mpf(0))):
    """Four point masses of 5 mm radius with a moment of inertia, turned by an angle, whose sense is that of hip and knee."""
    r = mpf("0.005")
    m = inertia / (4 * r * r)
    return [
        (m, lambda q2, q3, k=k: plus(centre(q2, q3), along(angle(q2, q3) + k * pi / 2), r)) for k in range(4)
    ]


out = {}

# 1. Drum of the knee over time, through the four-bar.
bar = {k: mpf(v) for k, v in {"g": "0.15", "a": "0.03", "b": "0.148", "c": "0.026", "t40": "1.9"}.items()}
q, rates, accelerations = (mpf("0.3"), mpf("-0.8")), (mpf(2), mpf(-5)), (mpf(20), mpf(-50))
t2 = start_of(bar, q[1], 1)
zero = start_of(bar, mpf(0), 1)


def drum(time):
    q2, q3 = (q[j] + rates[j] * time + accelerations[j] * time * time / 2 for j in (0, 1))
    return q2 + crank_pin(bar, q2, q3, t2) - zero


out["fourBar"] = {
    "crankAngle": digits(t2),
    "couplerAngle": digits(coupler_angle(bar, q[1], t2)),
    "ratio": digits(diff(lambda x: crank_pin(bar, 0, x, t2), q[1])),
    "ratioSlope": digits(diff(lambda x: crank_pin(bar, 0, x, t2), q[1], 2)),
    "couplerRatio": digits(diff(lambda x: coupler_angle(bar, x, crank_pin(bar, 0, x, t2)), q[1])),
    "transmissionAngle": digits(abs(mp.asin(sin(bar["t40"] + q[1] - coupler_angle(bar, q[1], t2))))),
    "drumAngle": digits(drum(mpf(0))),
    "drumRate": digits(diff(drum, 0)),
    "drumAcceleration": digits(diff(drum, 0, 2)),
    "full": {
        "ratio": digits(diff(lambda x: crank_pin(bar, 0, x, t2), q[1]), 17),
        "ratioSlope": digits(diff(lambda x: crank_pin(bar, 0, x, t2), q[1], 2), 17),
        "crankAngle": digits(t2, 17),
        "couplerAngle": digits(coupler_angle(bar, q[1], t2), 17),
    },
}


# 2. Dead points: scan of the knee angle for the ends of the closure and for the zeros of the ratio, refined by bisection.
def ratio_or_none(bar, q3, side):
    a, b, c, g = (float(bar[k]) for k in "abcg")
    pin = np.array([g + c * np.cos(float(bar["t40"]) + q3), c * np.sin(float(bar["t40"]) + q3)])
    d = np.hypot(*pin)
    if d > a + b or d < abs(a - b):
        return None
    # Intersection of the circles of crank pin and coupler.
    x = (d * d + a * a - b * b) / (2 * d)
    y = side * np.sqrt(max(0.0, a * a - x * x))
    u = pin / d
    crank = x * u + y * np.array([-u[1], u[0]])
    rod, rock = pin - crank, pin - np.array([g, 0])
    cross = lambda p, q: p[0] * q[1] - p[1] * q[0]
    return cross(rod, rock) / cross(rod, crank)


def dead_points(bar, side, low, high, n=20001):
    grid = np.linspace(low, high, n)
    values = [ratio_or_none(bar, x, side) for x in grid]
    found = []
    for x0, x1, v0, v1 in zip(grid, grid[1:], values, values[1:]):
        if (v0 is None) == (v1 is None) and (v0 is None or v0 * v1 > 0 or abs(v0) > 50):
            continue
        a, b, ends = x0, x1, (v0 is None) != (v1 is None)
        for _ in range(60):
            m = (a + b) / 2
            v = ratio_or_none(bar, m, side)
            same = (v is None) == (v0 is None) if ends else v * v0 > 0
            a, b = (m, b) if same else (a, m)
        found.append({"kneeAngle": f"{(a + b) / 2:.6f}", "kind": "crankDeadPoint" if ends else "rockerDeadPoint"})
    return found


out["deadPoints"] = {
    "plus": dead_points(bar, 1, -np.pi, np.pi),
    "minus": dead_points(bar, -1, -np.pi, np.pi),
    "longRocker": dead_points({"g": 0.15, "a": 0.03, "b": 0.12, "c": 0.05, "t40": -1.2}, -1, -np.pi, np.pi),
    "shortRod": dead_points({"g": 0.05, "a": 0.03, "b": 0.045, "c": 0.06, "t40": -2.0}, 1, -np.pi, np.pi),
}

# 2b. Clearance: turn beyond the limits and least angle of the rod, by brute force over knee angles and errors of the lengths.
def rod_angle(bar, q3, side):
    a, b, c, g = (float(bar[k]) for k in "abcg")
    rock = c * np.exp(1j * (float(bar["t40"]) + q3))
    pin = g + rock
    d = abs(pin)
    x = (d * d + a * a - b * b) / (2 * d)
    if abs(x) > a:
        return 0.0
    crank = pin / d * complex(x, side * np.sqrt(a * a - x * x))
    rod = pin - crank
    between = lambda p, q: np.arcsin(min(1.0, abs((np.conj(p) * q).imag) / (abs(p) * abs(q))))
    return min(between(rod, rock), between(rod, crank))


def clearance(bar, side, low, high, error, n=4001):
    best = (np.inf, 0, 0, 0)
    for signs in itertools.product((-1, 1) if error else (0,), repeat=4):
        off = {**bar, **{k: float(bar[k]) + s * error for k, s in zip("gabc", signs)}}
        centre, width = (low + high) / 2, (high - low) / 2 + np.pi / 2
        for _ in range(6):
            grid = np.clip(np.linspace(centre - width, centre + width, n), low - np.pi / 2, high + np.pi / 2)
            sums = [max(0, low - q, q - high) + rod_angle(off, q, side) for q in grid]
            centre, width = grid[int(np.argmin(sums))], 4 * width / n
        turn, angle = max(0, low - centre, centre - high), rod_angle(off, centre, side)
        best = min(best, (turn + angle, turn, angle, centre))
    return {"clearance": f"{best[0]:.5f}", "turn": f"{best[1]:.5f}", "rodAngle": f"{best[2]:.5f}", "kneeAngle": f"{best[3]:.5f}"}


equal = {"g": 0.165, "a": 0.034, "b": 0.1651, "c": 0.034, "t40": -2.9}
out["clearances"] = {
    "pastTheLine": clearance(equal, -1, 1.5, 2.2, 0),
    "withErrors": clearance(equal, -1, 1.5, 2.2, 2e-4),
    "unequal": clearance(bar, 1, -1.2, 0.4, 5e-4),
}

# 3. Inertia of drum and rotor: point masses on rings.
J, Id = mpf("4e-5"), mpf("3e-4")
cases = {}
for name, on, N, n, drum_inertia in (
    ("thighOpen", "thigh", 6, 1, 0),
    ("thighCrossed", "thigh", -6, 1, 0),
    ("bodyOpen", "body", 6, 1, 0),
    ("thighBelt", "thigh", -5, mpf("1.25"), Id),
    ("bodyBelt", "body", -5, mpf("1.25"), Id),
):
    if on == "body":
        spins = [(J, lambda q2, q3: N * (q2 + n * q3)), (mpf(drum_inertia), lambda q2, q3: q2 + n * q3)]
    else:
        spins = [(J, lambda q2, q3: q2 + N * n * q3), (mpf(drum_inertia), lambda q2, q3: q2 + n * q3)]
    masses = [each for inertia, angle in spins if inertia > 0 for each in ring(inertia, angle)]
    hip, coupling, knee = mass_matrix(masses, (mpf("0.3"), mpf("-0.8")))
    torque = link_wise(masses, (mpf("0.3"), mpf("-0.8")), (mpf(0), mpf(0)), (mpf(100), mpf(-200)))
    cases[name] = {"hip": digits(hip), "coupling": digits(coupling), "knee": digits(knee), "torque": [digits(x) for x in torque]}
# Through the four-bar: drum and rotor on the body, drum inertia and ratio N.
N = 6
masses = [
    each
    for inertia, factor in ((J, N), (Id, 1))
    for each in ring(inertia, lambda q2, q3, f=factor: f * (q2 + crank_pin(bar, 0, q3, t2) - zero))
]
cases["fourBar"] = {"torque": [digits(x) for x in link_wise(masses, q, rates, accelerations)]}
out["driveInertia"] = cases

# 4. Motor on the upper link: point masses at its distance.
m, r = mpf("0.4"), mpf("0.04")
motor = ring(J, lambda q2, q3: q2 + -6 * q3, lambda q2, q3: plus((0, 0), along(q2), r))
body = [(m, lambda q2, q3: plus((0, 0), along(q2), r))]
spin_only = ring(J, lambda q2, q3: q2 - 6 * q3)
g = mpf("9.80665")
torque = [
    a + b
    for a, b in zip(
        link_wise(body, (mpf("0.5"), mpf(0)), (0, 0), (mpf(100), mpf(-200))),
        link_wise(spin_only, (mpf("0.5"), mpf(0)), (0, 0), (mpf(100), mpf(-200))),
    )
]
out["carriedMotor"] = {
    "holding": digits(m * g * diff(lambda x: plus((0, 0), along(x), r)[1], mpf("0.5"))),
    "inertia": digits(mass_matrix(body, (mpf("0.5"), mpf(0)))[0]),
    "hip": digits(torque[0]),
    "knee": digits(torque[1]),
}


# 5. Parallelogram: every body as two point masses about its centre; drums and rotors as rings.
def rod_body(m, inertia, place, angle):
    r = sqrt(inertia / m)
    return [(m / 2, lambda q2, q3, s=s: plus(place(q2, q3), along(angle(q2, q3)), s * r)) for s in (-1, 1)]


l1, a, t40 = mpf("0.15"), mpf("0.03"), mpf("1.5")
crank = lambda q2, q3: plus((0, 0), along(q2 + q3 + t40), a)
masses = (
    rod_body(mpf("0.2"), mpf("5e-4"), lambda q2, q3: plus((0, 0), along(q2), mpf("0.05")), lambda q2, q3: q2)
    + rod_body(mpf("0.12"), mpf("3e-4"), lambda q2, q3: plus(plus((0, 0), along(q2), l1), along(q2 + q3), mpf("0.07")), lambda q2, q3: q2 + q3)
    + rod_body(mpf("0.03"), mpf("6e-5"), lambda q2, q3: plus(crank(q2, q3), along(q2), mpf("0.075")), lambda q2, q3: q2)
    + ring(mpf("4e-5"), lambda q2, q3: q2 + q3)
    + ring(J, lambda q2, q3: 6 * q2)
    + ring(J, lambda q2, q3: 6 * (q2 + q3))
)
hip, coupling, knee = mass_matrix(masses, (mpf("0.4"), mpf(-1)))
out["parallelogram"] = {"hip": digits(hip), "coupling": digits(coupling), "knee": digits(knee)}


# 6. Rod and pins: equilibrium of upper link, shank, rod and crank, twelve unknowns.
def forces(l1, l2, bar, q2, q3, side, R):
    g_, a_, b_, c_, t40_ = (float(bar[k]) for k in ("g", "a", "b", "c", "t40"))
    t2 = float(start_of({k: mpf(v) for k, v in bar.items()}, mpf(q3), side))
    u = lambda x: np.array([-np.sin(x), -np.cos(x)])
    hip, knee = np.zeros(2), l1 * u(q2)
    foot = knee + l2 * u(q2 + q3)
    crank_, rocker = a_ * u(q2 + t2), knee + c_ * u(q2 + t40_ + q3)
    # Unknowns: hip pin on upper link, knee pin on shank, crank pin on rod, rocker pin on shank (from rod), bearing on crank, hip torque, crank torque.
    A, y = np.zeros((12, 12)), np.zeros(12)
    moment = lambda p: np.array([p[1], -p[0]])  # about +y: r_z F_x - r_x F_z

    def take(body, col, sign, at):
        A[3 * body, col] += sign
        A[3 * body + 1, col + 1] += sign
        A[3 * body + 2, col : col + 2] += sign * moment(at)

    take(0, 0, 1, hip), take(0, 2, -1, knee)
    A[2, 10] = 1
    take(1, 2, 1, knee), take(1, 6, 1, rocker)
    y[3:5] = -np.array(R)
    y[5] = -moment(foot) @ np.array(R)
    take(2, 4, 1, crank_), take(2, 6, -1, rocker)
    take(3, 8, 1, hip), take(3, 4, -1, crank_)
    A[11, 11] = 1
    x = np.linalg.solve(A, y)
    P, rod = x[2:4], x[6:8]
    t = (rocker - crank_) / b_
    k, n = u(q2), np.array([u(q2)[1], -u(q2)[0]])
    return {
        "hipDrum": digits(x[10]),
        "kneeDrum": digits(x[11]),
        # The rod pulls the shank towards the crank.
        "rod": digits(-rod @ t),
        "rodOnCrank": digits(np.hypot(*x[8:10])),
        "knee": digits(np.hypot(*P)),
        "forward": digits(P[0]),
        "upward": digits(P[1]),
        "compression": digits(P @ k),
        "shear": digits(P @ n),
        "crankAngle": digits(t2, 15),
        "couplerAngle": digits(coupler_angle({k: mpf(v) for k, v in bar.items()}, mpf(q3), mpf(t2)), 15),
        "jointHip": digits(-moment(foot) @ np.array(R), 15),
        "jointKnee": digits(-moment(foot - knee) @ np.array(R), 15),
        "rodFull": digits(-rod @ t, 15),
    }


mirrored = {"g": "0.15", "a": "0.03", "b": "0.148", "c": "0.026", "t40": "-1.5"}
equal = {"g": "0.15", "a": "0.03", "b": "0.15", "c": "0.03", "t40": "-1.5"}
other = {**equal, "t40": "1.5"}
out["rod"] = {
    "fourBar": forces(0.15, 0.16, mirrored, -0.5, 0.9, -1, (-5, 40)),
    "parallelogram": forces(0.15, 0.16, equal, -0.5, 0.9, -1, (-5, 40)),
    "otherSide": forces(0.15, 0.16, other, -0.5, 0.9, 1, (-5, 40)),
}

# 7. Sideways hip: rods as two point masses at the points of a quadrature that is exact for them; moment of momentum differenced in time.
d = mpf("0.045")


def sideways(q, rates, accelerations):
    def at(t):
        return [q[j] + rates[j] * t + accelerations[j] * t * t / 2 for j in range(3)]

    points = []
    for length, mass, joint in ((mpf("0.15"), mpf("0.2"), 0), (mpf("0.16"), mpf("0.12"), 1)):
        # Places and weights of Gauss quadrature of the rod: exact for a quadratic.
        for s in (-1, 1):
            x = (1 + s / sqrt(mpf(3))) / 2 * length
            points.append((mass / 2, lambda t, x=x, joint=joint: (d, -x * cos(at(t)[1]) if joint == 0 else -mpf("0.15") * cos(at(t)[1]) - x * cos(at(t)[1] + at(t)[2]))))
    r = sqrt(mpf("5e-4") / mpf("0.6"))
    points += [(mpf("0.3"), lambda t, s=s: (mpf("0.015") + s * r, mpf("0.01"))) for s in (-1, 1)]

    def place(t, p):
        y, z = p(t)
        c, s = cos(at(t)[0]), sin(at(t)[0])
        return y * c - z * s, y * s + z * c

    def momentum(t):
        total = mpf(0)
        for m, p in points:
            y, z = place(t, p)
            vy, vz = (diff(lambda x, k=k: place(x, p)[k], t) for k in (0, 1))
            total += m * (y * vz - z * vy)
        return total

    inertia = sum(m * (place(0, p)[0] ** 2 + place(0, p)[1] ** 2) for m, p in points)
    weight = sum(m * g * place(0, p)[0] for m, p in points)
    return momentum, inertia, weight


q3s, rates3, acc3 = [mpf(x) for x in ("0.2", "0.5", "-1")], [mpf(x) for x in (2, -4, 6)], [mpf(x) for x in (20, 50, -100)]
momentum, inertia, weight = sideways(q3s, rates3, acc3)
inertial = diff(momentum, 0)
out["sideways"] = {"inertia": digits(inertia), "inertial": digits(inertial), "weight": digits(weight), "torque": digits(inertial + weight)}
# The same leg: centres, their rates and accelerations, for the formula's inputs.
upper_z = lambda t: -mpf("0.075") * cos(q3s[1] + rates3[1] * t + acc3[1] * t * t / 2)
lower_z = lambda t: -mpf("0.15") * cos(q3s[1] + rates3[1] * t + acc3[1] * t * t / 2) - mpf("0.08") * cos(
    q3s[1] + q3s[2] + (rates3[1] + rates3[2]) * t + (acc3[1] + acc3[2]) * t * t / 2
)
out["sideways"]["bodies"] = [[digits(diff(z, 0, n), 17) for n in (0, 1, 2)] for z in (upper_z, lower_z)]
# Standing on one foot, at rest: forces and weights as vectors.
c, s = cos(mpf("0.2")), sin(mpf("0.2"))
turn = lambda y, z: (y * c - z * s, y * s + z * c)
yf, zf = turn(d, mpf("-0.25"))
ground = -(yf * 40 - zf * -5)
bodies = ((mpf("0.6"), mpf("0.015"), mpf("0.01")), (mpf("0.2"), d, mpf("-0.07")), (mpf("0.12"), d, mpf("-0.18")))
held = sum(m * g * turn(y, z)[0] for m, y, z in bodies)
out["stance"] = {"weight": digits(held), "ground": digits(ground), "torque": digits(held + ground)}


# 8. Rotor as twelve point masses in space: moment of momentum differenced; the part that changes sign with the spin.
def rotor_torque(spin, sideways_angle, sideways_rate, pitch, yaw):
    r, count = mpf("0.02"), 12
    m = J / (count * r * r)

    def turn_about(axis, angle, v):
        c, s = cos(angle), sin(angle)
        x, y, z = v
        return {"x": (x, y * c - z * s, y * s + z * c), "y": (x * c + z * s, y, z * c - x * s), "z": (x * c - y * s, x * s + y * c, z)}[axis]

    rate = sqrt(mpf(pitch) ** 2 + mpf(yaw) ** 2)

    def body(t, v):
        if rate == 0:
            return v
        # Turn about the constant axis of pitch and yaw (Rodrigues).
        k = (mpf(0), pitch / rate, yaw / rate)
        c, s = cos(rate * t), sin(rate * t)
        cross = (k[1] * v[2] - k[2] * v[1], k[2] * v[0] - k[0] * v[2], k[0] * v[1] - k[1] * v[0])
        dot = sum(a * b for a, b in zip(k, v))
        return tuple(v[i] * c + cross[i] * s + k[i] * dot * (1 - c) for i in range(3))

    def place(t, k):
        v = (r * cos(2 * pi * k / count), mpf(0), r * sin(2 * pi * k / count))
        v = turn_about("y", spin * t, v)
        v = turn_about("x", sideways_angle + sideways_rate * t, v)
        return body(t, v)

    total = [mpf(0)] * 3
    for k in range(count):
        x = place(0, k)
        a = [diff(lambda t, i=i: place(t, k)[i], 0, 2) for i in range(3)]
        total = [total[i] + m * (x[(i + 1) % 3] * a[(i + 2) % 3] - x[(i + 2) % 3] * a[(i + 1) % 3]) for i in range(3)]
    # In the leg's axes.
    return turn_about("x", -sideways_angle, tuple(total))


def odd_in_spin(*args):
    plus_, minus = rotor_torque(mpf(48), *args), rotor_torque(mpf(-48), *args)
    return [(p - q_) / 2 for p, q_ in zip(plus_, minus)]


turning = odd_in_spin(mpf("0.2"), mpf(0), mpf(1), mpf(2))
swinging = odd_in_spin(mpf("0.2"), mpf(3), mpf(0), mpf(0))
out["gyroscopic"] = {
    "drive": digits(turning[0]),
    "bearings": digits(swinging[2]),
    "driveWhileSwinging": digits(swinging[0], 3),
}

Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
