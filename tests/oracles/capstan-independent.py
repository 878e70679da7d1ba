"""Cord drives by models that share nothing with the library: cords as nodes with vectors and dry friction, paths and grooves as points in space, sections
as cells, cylinders as boundary-value problems, energies differenced. Where a rule is a published closed form, it is evaluated to 40 digits (mpmath).
Writes capstan-independent.json. Run: python3 tests/oracles/capstan-independent.py
"""
import json
from pathlib import Path

import numpy as np
from mpmath import mp, mpf, exp as mexp, sinh as msinh
from scipy.integrate import solve_bvp, solve_ivp
from scipy.optimize import brentq, minimize

mp.dps = 40


def digits(x, n=6):
    return f"{float(x):#.{n}g}"


def refine(f, n):
    """Errors of second order in the size of a piece, extrapolated away."""
    coarse, fine = f(n), f(2 * n)
    return fine + (fine - coarse) / 3


out = {}


# 1. A cord over a drum as a polygon: at every corner two tensions, a normal force square to the drum and friction along it, balanced as vectors.
def node_ratio(turn, friction, lift=0.0, slack=1.0, grip=1.0):
    """Taut tension of one corner that turns by an angle; `lift` is what the speed of the cord takes off both tensions."""

    def gap(taut):
        a, b = (slack - lift) * np.array([-1, 0.0]), (taut - lift) * np.array([np.cos(turn), -np.sin(turn)])
        normal = np.array([np.sin(turn / 2), np.cos(turn / 2)])
        along = np.array([np.cos(turn / 2), -np.sin(turn / 2)])
        load = a + b
        return load @ along - friction * grip * -(load @ normal)

    return brentq(gap, slack, slack * (1 + 4 * friction * turn + turn) + 1e-12, xtol=1e-15, rtol=8.9e-16)


def polygon(friction, wrap, slack=1.0, lift=0.0, grip=1.0):
    def run(n):
        ratio = node_ratio(wrap / n, friction, grip=grip)
        return (slack - lift) * ratio**n + lift

    return refine(run, 2000)


def helix_ratio(radius, pitch, wrap, friction):
    """The same in space: nodes of a helix on a cylinder, normal along the radius."""

    def scaled(n):
        a = wrap / n
        p = np.array([[radius * np.cos(k * a), radius * np.sin(k * a), pitch * k * a / (2 * np.pi)] for k in (0, 1, 2)])
        d0, d1 = p[1] - p[0], p[2] - p[1]
        cosine = d0 @ d1 / np.linalg.norm(d0) / np.linalg.norm(d1)
        turn = 2 * np.arcsin(np.sqrt((1 - cosine) / 2))
        return node_ratio(turn, friction) ** n

    return refine(scaled, 2000)


ratio2 = polygon(0.3, 4 * np.pi)
out["ratio"] = digits(ratio2)
out["taut"] = digits(polygon(0.25, 2 * np.pi / 3, slack=600))
out["slack"] = digits(500 / polygon(0.25, 3 * np.pi / 4))
out["slipArc"] = digits(brentq(lambda w: polygon(0.15, w) - 1.5, 0.5, 6))
out["running"] = digits(polygon(0.3, 3.0, slack=50.0, lift=0.4 * 5.0**2), 6)
# Anchor: corner by corner from the span inward, friction used up until the tension stored in the wrap is met.
def anchor(span, stored, friction, wrap, n=40000):
    ratio = node_ratio(wrap / n, friction)
    tension = span
    for _ in range(n):
        if tension > stored:
            tension = max(stored, tension / ratio)
    return tension


out["anchor"] = [digits(anchor(90, 60, 0.15, 2.0), 5), digits(anchor(90, 60, 0.15, np.pi), 5)]
# Cord of some thickness: moments about the axle, friction at the groove, tensions at the centre line.
thick = refine(lambda n: np.log(brentq(lambda t: (t - 1) * 5.5 - 0.15 * (t + 1) * np.sin(1 / n / 2) * 5.0, 1, 2, xtol=1e-16) ** n), 2000)
out["thick"] = digits(thick)
lead = 1.4 / (2 * np.pi)
out["helix"] = {
    "friction": digits(np.log(helix_ratio(8.0, 1.4, 6.0, 0.15)) / (0.15 * 6.0)),
    "length": digits(refine(lambda n: n * np.linalg.norm([8 * (np.cos(2 * np.pi / n) - 1), 8 * np.sin(2 * np.pi / n), 1.4 / n]), 2000)),
}


def circle_radius(step):
    """Radius of the circle through three near points of the helix."""
    p = np.array([[8 * np.cos(a), 8 * np.sin(a), lead * a] for a in (-step, 0, step)])
    a, b, c = (np.linalg.norm(p[i] - p[j]) for i, j in ((0, 1), (1, 2), (0, 2)))
    area = np.linalg.norm(np.cross(p[1] - p[0], p[2] - p[0])) / 2
    return a * b * c / (4 * area)


out["helix"]["curvature"] = digits(circle_radius(0.01) + (circle_radius(0.01) - circle_radius(0.02)) / 3)
chord = np.array([8 * (np.cos(1e-4) - 1), 8 * np.sin(1e-4), lead * 1e-4])
out["helix"]["lead"] = digits(np.degrees(np.arcsin(chord[2] / np.linalg.norm(chord))), 5)


# 2. Grooves: flanks as planes, seats as cells of pressure.
def wedge(angle, friction, seating):
    """Friction along the groove over the pull into it; while seating, friction of the flanks also acts up the flanks, as far as sliding along it leaves."""
    half = angle / 2
    flank = np.array([np.cos(half), np.sin(half)])  # pushes the cord out (second axis) and away from the flank
    up = np.array([-np.sin(half), np.cos(half)])
    force = flank + (friction * up if seating else 0)
    pull = 2 * force[1]
    return 2 * friction / pull


out["vGroove"] = [digits(wedge(np.radians(36), 0.2, False), 5), digits(wedge(np.radians(36), 0.2, True), 5)]


def seat(undercut, flank, friction=1.0, n=400000):
    """Pressure that falls as the cosine from the bottom; both sides of the seat, cell by cell."""
    a = undercut / 2 + (np.arange(n) + 0.5) / n * (np.pi / 2 - flank / 2 - undercut / 2)
    pressure = np.cos(a)
    return friction * pressure.sum() / (pressure * np.cos(a)).sum()


out["seat"] = [digits(seat(0, 0)), digits(seat(np.pi / 2, np.pi / 6)), digits(seat(0, np.pi / 3))]
# Wedging: each element pulls in by tension times its turn; two flanks without friction push it out.
flanks = np.linalg.solve([[np.cos(np.radians(30)), -np.cos(np.radians(30))], [np.sin(np.radians(30)), np.sin(np.radians(30))]], [0, 60.0])
out["wedging"] = digits(2 * np.pi * flanks[0] * np.cos(np.radians(30)))


# 3. Paths as points: tangents of two circles by minimum of misfit, arcs by angles of the contact points, loops by their length.
def tangent(r1, r2, C, crossed, side):
    other = -side if crossed else side

    def gap(x):
        p = r2 * np.array([np.cos(x[0]), np.sin(x[0])])
        q = np.array([C, 0]) + r1 * np.array([np.cos(x[1]), np.sin(x[1])])
        d = (q - p) / np.linalg.norm(q - p)
        return (d @ p / r2) ** 2 + (d @ (q - np.array([C, 0])) / r1) ** 2

    x = minimize(gap, [side * 1.4, other * 1.4], method="Nelder-Mead", options={"xatol": 1e-14, "fatol": 1e-32, "maxiter": 40000}).x
    p, q = r2 * np.array([np.cos(x[0]), np.sin(x[0])]), np.array([C, 0]) + r1 * np.array([np.cos(x[1]), np.sin(x[1])])
    return p, q, x


def geometry(r1, r2, C, crossed):
    p, q, x = tangent(r1, r2, C, crossed, 1)
    # Contact on the pinion is on the side away from the drum for open spans and crossed ones alike; on the drum likewise.
    drum = 2 * np.pi - 2 * abs(x[0])
    pinion = 2 * np.pi - 2 * abs(np.pi - abs(x[1]))
    return np.linalg.norm(q - p), pinion, drum


def loop_length(r1, r2, C, crossed):
    s, pinion, drum = geometry(r1, r2, C, crossed)
    return 2 * s + r1 * pinion + r2 * drum


out["pulleys"] = {}
for name, crossed, C in (("crossed", True, 58.0), ("open", False, 80.0)):
    s, pinion, drum = geometry(8.0, 48.0, C, crossed)
    h = 1e-2
    rate = (loop_length(8.0, 48.0, C + h, crossed) - loop_length(8.0, 48.0, C - h, crossed)) / (2 * h)
    out["pulleys"][name] = [digits(np.degrees(pinion)), digits(np.degrees(drum)), digits(s), digits(rate, 5)]
(p1, q1, _), (p2, q2, _) = tangent(8.0, 48.0, 58.0, True, 1), tangent(8.0, 48.0, 58.0, True, -1)
d1, d2 = (q1 - p1) / np.linalg.norm(q1 - p1), (q2 - p2) / np.linalg.norm(q2 - p2)
pull = 75 * d1 + 45 * d2
out["shaft"] = [digits(abs(pull[0])), digits(abs(pull[1])), digits(np.linalg.norm(pull))]
out["idler"] = digits(np.linalg.norm(np.array([1, 0]) - np.array([np.cos(np.radians(85)), np.sin(np.radians(85))])) * 755, 5)


# Groove: circle of the seat cut by the surface of the drum.
seat_r, depth = 0.54 * 1.6, 0.33 * 1.6
edge = brentq(lambda x: seat_r - np.sqrt(seat_r**2 - x * x) - depth, 0, seat_r)
out["groove"] = digits(1.2 * 1.6 - 2 * edge)
d = np.array([20.0, 1.2])
out["fleet"] = digits(np.degrees(np.arccos(d @ [1, 0] / np.linalg.norm(d))), 5)


def polyline_length(radius, angle, n=2000):
    p = radius * np.stack([np.cos(np.linspace(0, angle, n)), np.sin(np.linspace(0, angle, n))], axis=1)
    return np.linalg.norm(np.diff(p, axis=0), axis=1).sum()


def polyline(radius, pitch, angle, n):
    a = np.linspace(0, angle, n + 1)
    p = np.stack([radius * np.cos(a), radius * np.sin(a), pitch * a / (2 * np.pi)], axis=1)
    return np.linalg.norm(np.diff(p, axis=0), axis=1).sum()


whole = 2 * 15.1 + refine(lambda n: polyline(48.0, 0.0, 2 * np.pi, n), 2000) + refine(lambda n: polyline(8.0, 1.2, 6 * np.pi, n), 4000)
# The cut cord is what has that length under its strain.
cut = brentq(lambda x: x * 1.003 - whole, 100, 1000) + 2 * (12 + 60)
out["cut"] = [digits(whole, 8), digits(cut, 8)]
# Idler pressed into the middle of a span: three points.
path = lambda x: 2 * np.linalg.norm([30.0, x])
out["idlerTakeUp"] = [digits(path(3) - path(0), 5), digits((path(3 + 1e-4) - path(3 - 1e-4)) / 2e-4, 5)]
gain = (path(3 + 1e-4) - path(3 - 1e-4)) / 2e-4
out["gain"] = digits(gain, 8)
# Sprung slide: least energy of the spring and of a newton of tension, over its travel; cord gained at that travel.
potential = lambda x: 0.5 * 400 * x * x - 1.0 * gain * x
least = brentq(lambda x: potential(x + 1e-3) - potential(x - 1e-3), -1, 1, xtol=1e-16)
out["tensioner"] = digits(gain * least, 5)
# Backlash: a flank on the pitch circle that turns until it has gone the clearance along the circle, by its points.
out["backlash"] = digits(brentq(lambda a: polyline_length(24.0, a) - 0.08, 1e-6, 0.1), 5)

# 4. Heat, creep and setting: lengths of a frame and of a cord that must agree; small changes, so that squares vanish.
rise = 1e-3
frame, free = 450 * (1 + 70e-6 * rise), 450 * (1 - 12e-6 * rise)
out["heat"] = digits((brentq(lambda t: free * (1 + t / 20e3) - frame, -1, 1, xtol=1e-18)) / rise * 30, 5)
small = 1e-6
crept = brentq(lambda t: 450 * (1 + small) * (1 + t / 20e6) - 450 * (1 + 60 / 20e6), 0, 100, xtol=1e-14)
out["left"] = digits((crept - 60) / (small * 20e6) * 20 + 60, 5)
decade = solve_ivp(lambda t, y: [0.02 / np.log(10)], (0, np.log(3.15576e7)), [0.0], rtol=1e-12, atol=1e-15)
out["decades"] = digits(decade.y[0, -1], 5)

# 5. Stiffness and torques of the loop: energy of two springs, differenced; limits by balance.
def energy(angle, r=48e-3, ea=20e3, length=20e-3, t0=60.0):
    stretch0 = t0 * length / ea
    return sum(0.5 * ea / length * max(0.0, stretch0 + s * r * angle) ** 2 for s in (1, -1))


h = 1e-6
out["spanStiffness"] = digits((energy(h) - 2 * energy(0) + energy(-h)) / h**2, 5)
reach = 20e-3 + 3 * np.pi * 8e-3 + np.pi * 48e-3
out["frictionless"] = digits((energy(h, length=reach) - 2 * energy(0, length=reach) + energy(-h, length=reach)) / h**2, 5)

# Slack: the drum turns until the slack span has no stretch left; torque as the slope of the energy there. Equal springs, or a taut side without stiffness.
def slack_torque(taut, slack, r=48e-3, ea=20e3, t0=60.0):
    # Energy beyond that at rest, of spans that are both stretched.
    stored = lambda a: sum(s * t0 * r * a + 0.5 * ea / l * (r * a) ** 2 for s, l in ((1, taut), (-1, slack)))
    angle = brentq(lambda a: t0 * slack / ea - r * a, 0, 10, xtol=1e-18)
    step = 1e-4 * angle
    # From the loaded side, where the slack span still pulls.
    return (3 * stored(angle) - 4 * stored(angle - step) + stored(angle - 2 * step)) / (2 * step)


out["slackEstimate"] = [digits(slack_torque(1e9, 0.2), 5), digits(slack_torque(0.2, 0.2), 5)]
hold = polygon(0.15, 6 * np.pi)
out["slipEstimate"] = [
    digits(48e-3 * (60 - brentq(lambda t: 60 - t * hold, 0, 60))),
    digits(48e-3 * 2 * brentq(lambda f: (60 + f) - (60 - f) * hold, 0, 60)),
]


# Stroke under torque: cord wound on at the slack tension, cord paid out that was stored at the pretension; unstretched length kept, in small steps.
def stroke(t0, torque, r, span, angle, n=400000, ea=2e4):
    f, ds = torque / r, r * angle / n
    # Unstretched cord in both spans together, which the two tensions f apart must stretch to twice the span.
    slack = t0 - f / 2
    for _ in range(n):
        # One drum takes cord at the slack tension, the other gives cord that it stored at the pretension.
        gained = ds * ((1 - t0 / ea) - (1 - slack / ea))
        slack -= gained * ea / (2 * span)
    return slack, slack + f


end = stroke(60.0, 1.44, 48e-3, 20e-3, 1.0)
out["stroke"] = [digits(end[0], 5), digits(end[1], 5)]
out["strokePeak"] = digits(stroke(60.0, 1.44, 48e-3, 20e-3, 12.0)[1], 5)


# Small load cycles: tensions of nodes on an arc, each held within friction of its neighbour; energy as the area of the loop.
def loop(amplitude, t0, friction, radius, ea, n):
    reach_ = 3 * 2 * amplitude / t0 / friction
    step = reach_ / n
    hold_ = friction * step
    T = np.full(n, t0)
    cycle = t0 + amplitude * np.concatenate([np.sin(np.linspace(0, np.pi / 2, 400)), np.sin(np.linspace(np.pi / 2, 4.5 * np.pi, 6400))])
    feed = []
    for tension in cycle:
        # From the tangent point inward: a node keeps its tension where friction allows it.
        index = np.arange(1, n + 1)
        low, high = tension - t0 * hold_ * (index - 0.5), tension + t0 * hold_ * (index - 0.5)
        T = np.clip(T, low, high)
        feed.append(((T - t0) * step * radius / ea).sum())
    tail = slice(-3201, None)
    return abs(np.trapezoid(cycle[tail], np.array(feed)[tail]))


out["cycleLoss"] = digits(refine(lambda n: loop(6.0, 60.0, 0.15, 8e-3, 20e3, n), 2000) * 1e6, 3)

# Shear lag of a bedded cord: boundary-value problem, decay between two places.
decay = solve_bvp(lambda x, y: [y[1], y[0] * 5e6 / 20e3], lambda a, b: [a[0] - 1, b[0]], np.linspace(0, 1.5, 4001), np.zeros((2, 4001)), tol=1e-10)
out["microSlip"] = digits(1e3 * 0.05 / np.log(decay.sol(0.05)[0] / decay.sol(0.10)[0]), 5)


# 6. Losses: an element of an endless belt round both pulleys, its strain falling and rising while it rubs; bearings and bending by their work.
n = 200000
T = np.linspace(75, 45, n + 1)
# Where it slides, friction takes the change of tension times the slip, which is the length the belt has lost since it gripped.
slip = (75 - T) / 20e3
rubbed = np.trapezoid(slip, -T)
length = 8e-3 * 6
# Journal: friction of its load along the path of a point of its surface.
journal = 0.002 * 150 * refine(lambda n: polyline(4.0, 0.0, 6.0, n), 500) * 1e-3
out["losses"] = [digits(2 * rubbed * length * 1e3, 4), digits(journal * 1e3, 3)]
work = (75 - 45) * length
out["shares"] = [digits(2 * rubbed * length / work, 4), digits(journal / work, 4)]

# 7. Sections and cylinders.
out["hoop"] = {}


def lame(a, b, outside):
    f = lambda r, y: [y[1], y[0] / r**2 - y[1] / r]
    nu = 0.3
    radial = lambda r, u, v: v + nu * u / r
    s = solve_bvp(f, lambda ya, yb: [radial(a, *ya), radial(b, *yb) + outside], np.linspace(a, b, 401), np.zeros((2, 401)), tol=1e-9)
    u, v = s.sol(a)
    return u / a + nu * v


mean = 60 / (8e-3 * 1.2e-3) / 1e6
out["hoop"] = [digits(mean, 5), digits(lame(4.0, 7.5, mean), 5)]
# Pressure of a half turn of cord over its own width: its sum along the pull is twice the tension.
a = (np.arange(200000) + 0.5) / 200000 * np.pi
out["groovePressure"] = digits(brentq(lambda p: p * (np.sin(a) * np.pi / 200000).sum() * 8e-3 * 1e-3 - 2 * 60, 1, 1e9) / 1e6, 5)


def section(outer, bore, cells=2000):
    r = bore / 2 + (np.arange(cells) + 0.5) * (outer - bore) / 2 / cells
    t = (np.arange(720) + 0.5) * 2 * np.pi / 720
    w = (outer - bore) / 2 / cells * 2 * np.pi / 720
    dA = np.outer(r, np.ones(720)) * w
    y = np.outer(r, np.sin(t))
    return dA.sum(), (dA * y * y).sum(), (dA * np.outer(r * r, np.ones(720))).sum()


A, I, J = section(30.0, 8.0)
torsion, bending = 3000 * 15 / J, 120 * 20 * 15 / I
# Von Mises by the principal stresses of the surface.
principal = np.linalg.eigvalsh([[bending, torsion, 0], [torsion, 0, 0], [0, 0, 0]])
mises = np.sqrt(((principal[0] - principal[1]) ** 2 + (principal[1] - principal[2]) ** 2 + (principal[2] - principal[0]) ** 2) / 2)
out["neck"] = [digits(torsion, 5), digits(bending, 5), digits(mises, 5)]
layer = lambda clamp: 2400 * 15 / I + (50 - clamp) / A
out["layers"] = [digits(layer(0), 5), digits(brentq(layer, 0, 1e5), 6), digits(10 / layer(0), 5), digits(layer(600), 5)]
# A wire laid on a pulley: length of its outer fibre against that of its centre.
outer_fibre = refine(lambda n: polyline(8.0 + 0.05, 0.0, 1.0, n), 500)
centre = refine(lambda n: polyline(8.0, 0.0, 1.0, n), 500)
out["wire"] = digits(200e3 * (outer_fibre / centre - 1), 5)
# A strand of a braid: ends moved by a strain along the axis and its contraction across; force along the axis.
beta, e = np.radians(20), 1e-7
strand = np.array([np.sin(beta), np.cos(beta)])
moved = strand * np.array([1 - 0.5 * e, 1 + e])
strain = np.linalg.norm(moved) - 1
area = 0.5e-3 * np.cos(beta) / 975  # mass along the axis, of strands that run askew
out["braid"] = digits(100e9 * strain * area * np.cos(beta) / e / 1e3, 4)

# 8. Two inertias on a spring: eigenvalues.
K, JL, JR = 4608.0, 0.012, 9e-4
M = np.diag([JL, JR])
w = np.sqrt(np.sort(np.abs(np.linalg.eigvals(np.linalg.solve(M, K * np.array([[1, -1], [-1, 1]]))))))
locked = np.sqrt(np.linalg.eigvals([[K / JL]])[0].real)
out["resonance"] = [digits(locked / (2 * np.pi), 5), digits(w[-1] / (2 * np.pi), 5)]
# Rotor and pinion seen at the joint: kinetic energy, and energy of the spring, with the motor's angle and with the joint's.
spin = lambda joint: 0.5 * 2.5e-5 * (6 * joint) ** 2
out["reflected"] = digits((spin(1) - 2 * spin(0) + spin(-1)), 5)
spring = lambda motor: 0.5 * 4608 * (motor / 6) ** 2
out["atMotor"] = digits(spring(1) - 2 * spring(0) + spring(-1), 5)

# 9. Published rate law of one thermally activated process, to 40 digits.
k, U, V = mpf("1.380649e-23"), mpf("1.5") * mpf("1.602176634e-19"), mpf("4.5e-29")


def rate(T, s):
    return mexp(-U / (k * T)) * msinh(s * V / (k * T))


t20, t40 = mpf("293.15"), mpf("313.15")
out["creep"] = [digits(rate(t40, mpf("5e8")) / rate(t20, mpf("5e8")), 7), digits(rate(t20, mpf("6e8")) / rate(t20, mpf("5e8")), 7)]
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
