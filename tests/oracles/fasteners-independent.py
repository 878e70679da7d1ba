"""Values of fastener formulas by other methods than their closed forms: boundary-value solutions, sums of springs, integrals over sections and
balance of forces in space (numpy, scipy). Writes fasteners-independent.json. Run: python3 tests/oracles/fasteners-independent.py
"""
import json
from math import atan, cos, pi, radians, sin, tan
from pathlib import Path

import numpy as np
from scipy.integrate import quad, solve_bvp, solve_ivp
from scipy.optimize import brentq

out = {}


def boss_wall():
    """Thick ring under inner pressure: displacement u of radius, u'' + u'/r − u/r² = 0, by solve_bvp."""
    E, nu, a, b, p = 2e9, 0.38, 0.002, 0.006, 10e6
    s = E / (1 - nu**2)
    radial = lambda u, du, r: s * (du + nu * u / r)
    hoop = lambda u, du, r: s * (u / r + nu * du)
    # Radius in units of a, displacement in units of p a/E, so that all is of order one.
    f = lambda r, y: np.vstack([y[1], y[0] / r**2 - y[1] / r])
    k = p / E
    bc = lambda ya, yb: np.array([radial(ya[0] * k, ya[1] * k, 1) / p + 1, radial(yb[0] * k, yb[1] * k, b / a) / p])
    x = np.linspace(1, b / a, 200)
    res = solve_bvp(f, bc, x, np.ones((2, x.size)), tol=1e-10, max_nodes=100000)
    u, du = res.sol(2.0) * k
    return dict(hoopMiddle=float(hoop(u, du, 2.0)), radialMiddle=float(radial(u, du, 2.0)))


def round_plate():
    """Clamped round plate under a uniform load over a middle circle: slope of the plate by solve_bvp of its moment balance."""
    F, R, c, t, nu = 300.0, 0.005, 0.0035, 0.002, 0.38

    def shear(r):
        return F / (2 * pi * r) * np.minimum(1, (r / c) ** 2)

    # (slope' + slope/r)' = shear/D; M_r = D (slope' + nu slope/r), D = 1; y = slope, slope'.
    f = lambda r, y: np.vstack([y[1], shear(r) - y[1] / r + y[0] / r**2])
    r0 = 1e-6
    x = np.sort(np.concatenate([np.linspace(r0, R, 800), [c]]))
    res = solve_bvp(f, lambda a, b: np.array([a[0] - a[1] * r0, b[0]]), x, np.zeros((2, x.size)), tol=1e-9, max_nodes=400000)
    edge = abs(res.sol(R)[1]) * 6 / t**2
    y = res.sol(2e-5)
    middle = abs(y[1] + nu * y[0] / 2e-5) * 6 / t**2
    return dict(edge=float(edge), middle=float(middle))


def annular_plate():
    """Annular plate clamped outside, free inside, under a ring load: the lip that holds a bearing, by the same balance."""
    F, a, b, r0, t, nu = 250.0, 0.011, 0.00925, 0.009975, 0.0025, 0.38
    f = lambda shear: lambda r, y: np.vstack([y[1], shear / r - y[1] / r + y[0] / r**2])
    # Inside of the load no shear: slope = A r + B/r with no radial moment at the bore; outside by solve_bvp, joined in slope and moment.
    inner = lambda r: (r + b * b * (1 + nu) / (1 - nu) / r, 1 - b * b * (1 + nu) / (1 - nu) / r**2)
    scale = inner(r0)
    x = np.linspace(r0, a, 400)
    res = solve_bvp(f(F / (2 * pi)), lambda ya, yb: np.array([ya[0] * scale[1] - ya[1] * scale[0], yb[0]]), x, np.zeros((2, x.size)), tol=1e-9, max_nodes=100000)
    return float(abs(res.sol(a)[1]) * 6 / t**2)


def end_cap():
    """Round cap clamped up to a, free outside, under the pressure of the link's face from c to its edge: slopes by shooting."""
    F, a, c, b, t, nu = 60.0, 0.0035, 0.0041, 0.0075, 0.002, 0.38
    beyond = lambda r: F if r < c else F * (b * b - r * r) / (b * b - c * c)
    plate = lambda r, y: [y[1], -beyond(r) / (2 * pi * r) - y[1] / r + y[0] / r**2]

    def rim(bend):
        y = [0.0, bend]
        for span in ((a, c), (c, b)):
            y = solve_ivp(plate, span, y, rtol=1e-11, atol=1e-14).y[:, -1]
        return y[1] + nu * y[0] / b

    at_zero, at_one = rim(0.0), rim(1.0)
    return float(abs(at_zero / (at_one - at_zero)) * 6 / t**2)


def lap(double, temperature):
    """Shear along a lap by solve_bvp of the two parts as bars joined by shear springs."""
    w, L, eta, G, P = 0.02, 0.012, 0.2e-3, 0.6e9, 1000.0
    ti, Ei, ai, to, Eo, ao = 0.003, 2.2e9, 70e-6, 0.002, 70e9, 23e-6
    sides = 2 if double else 1
    ki, ko = Ei * ti * w, Eo * to * w
    per = P / sides  # force of one bond
    # n: share of the pull that the outer part carries, q: shear per length over pull per length; x from −1/2 to 1/2.
    rise = G * w / eta * L**2 / per
    strain = lambda n: per * n / ko + ao * temperature - (P * (1 - n) / ki + ai * temperature)
    x = np.linspace(-0.5, 0.5, 400)
    # The inner part stops at −1/2, where the outer carries all; the outer stops at +1/2.
    res = solve_bvp(lambda x, y: np.vstack([-y[1], -rise * strain(y[0])]), lambda a, b: np.array([a[0] - 1, b[0]]), x, np.ones((2, x.size)), tol=1e-10, max_nodes=200000)
    assert res.success
    tau = res.sol(np.array([-0.5, 0.25, 0.5]))[1] * per / (w * L)
    return [float(v) for v in tau]


def bolt_group():
    """Springs under a rigid plate: shear and pull of each bolt from the balance in space."""
    bolts = np.array([[20, 10], [-15, 18], [-18, -12], [22, -16]]) * 1e-3
    area = np.array([8.78, 8.78, 14.2, 14.2]) * 1e-6
    F, at, M = np.array([150.0, -80, 60]), np.array([5, -3, 25]) * 1e-3, np.array([1.0, 0.5, -0.8])
    moment = np.cross(at, F) + M
    K = np.zeros((6, 6))
    arms = []
    for (x, y), a in zip(bolts, area):
        B = np.zeros((3, 6))
        B[:, :3] = np.eye(3)
        r = np.array([x, y, 0])
        for k in range(3):
            e = np.zeros(3)
            e[k] = 1
            B[:, 3 + k] = np.cross(e, r)
        K += a * B.T @ B
        arms.append(B)
    d = np.linalg.solve(K, np.concatenate([F, moment]))
    forces = [a * B @ d for B, a in zip(arms, area)]
    return dict(shears=[float(np.hypot(f[0], f[1])) for f in forces], tensions=[float(f[2]) for f in forces])


def tipping():
    """Bracket that turns about its edge: pull of each bolt in proportion to its lift, found by root finding on the turn."""
    d = np.array([10, 30, 30, 55]) * 1e-3
    moment, straight = 12.0, 80.0
    turn = brentq(lambda t: (d * (d * t)).sum() - moment, 0, 1e9)
    return [float(v) for v in d * turn + straight / len(d)]


def ring_joint():
    """Ring under clamp load and moment: the moment that takes the pressure at one edge to nothing, and the torque of friction, by integration."""
    outer, inner, F, mu = 0.010, 0.005, 2000.0, 0.15
    area = quad(lambda r: 2 * pi * r, inner, outer)[0]
    # Pressure p(1 + y/outer) has no pressure at y = −outer; its moment is the one that opens the joint.
    gap = quad(lambda r: F / area * r**3 / outer * quad(lambda t: sin(t) ** 2, 0, 2 * pi)[0], inner, outer)[0]
    # Worn faces: pressure times radius constant.
    c = F / quad(lambda r: 2 * pi * r * (1 / r), inner, outer)[0]
    worn = quad(lambda r: mu * (c / r) * 2 * pi * r * r, inner, outer)[0]
    even = quad(lambda r: mu * F / area * 2 * pi * r * r, inner, outer)[0]
    return dict(gap=gap, worn=worn, uniform=even)


def cone():
    """Cone of resin: pressure from the balance of forces along the axis, summed over rings of the surface."""
    F, d, L, half, mu = 500.0, 0.003, 0.015, radians(6), 0.2
    pull = lambda p: quad(lambda x: p * (sin(half) + mu * cos(half)) * 2 * pi * (d / 2 + x * tan(half)) / cos(half), 0, L)[0]
    return brentq(lambda p: pull(p) - F, 0, 1e9)


def clevis():
    """Largest moment of a pin under uniform loads of cheeks and lug, by integrating its shear force."""
    F, cheek, gap, lug = 400.0, 0.006, 0.0003, 0.012
    total = 2 * cheek + 2 * gap + lug

    def load(x):
        if x < cheek or x > total - cheek:
            return F / 2 / cheek
        if cheek + gap <= x <= total - cheek - gap:
            return -F / lug
        return 0.0

    n = 240000
    x = (np.arange(n) + 0.5) / n * total
    q = np.array([load(v) for v in x]) * total / n
    shear = np.cumsum(q) - q / 2
    return float(np.max(np.cumsum(shear) * total / n))


def drilled():
    """Ring section by integration: torsional stiffness share and shear at yield."""
    d3 = 8 - 17 / 12 * (3**0.5 / 2) * 1.25
    polar = lambda a, b: quad(lambda r: 2 * pi * r**3, a / 2, b / 2)[0]
    left = polar(4, d3) / polar(0, d3)
    return dict(torsionLeft=left, yieldTorque=640 / 3**0.5 * polar(4, d3) / (d3 / 2) / 1000)


def goodman():
    """Factor on a cycle of stress that takes it to the Goodman line."""
    top, bottom, Se, Su = 300.0, -80.0, 350.0, 900.0
    return brentq(lambda n: n * (top - bottom) / 2 / Se + n * (top + bottom) / 2 / Su - 1, 0, 100)


def joint():
    """Bolt and parts as two springs: stretched bolt, pressed parts, then an external load between them."""
    bolt, parts, clamp, load = 1 / 7.34e-9, 1 / 52.5e-9, 900.0, 60.0
    # How far the outside load moves the head: balance of both springs.
    x = brentq(lambda x: bolt * (clamp / bolt + x) - parts * (clamp / parts - x) - load, 0, 1e-3)
    opens = parts and clamp / parts
    return dict(factor=bolt * x / load, boltLoad=clamp + bolt * x, faceLoad=clamp - parts * x, separation=bolt * (clamp / bolt + opens))


def thread_torque(mu=0.14):
    """Force on the flank of a metric thread in space: normal and friction balance the axial load; torque is their moment about the axis."""
    d2, P, half = 3.5453, 0.7, radians(30)
    lam = atan(P / (pi * d2))
    # Tangent of the helix and of the flank (which falls outwards) span the surface; x is radial, y around, z along the axis.
    along = np.array([0, cos(lam), sin(lam)])
    flank = np.array([cos(half), 0, -sin(half)])
    normal = np.cross(flank, along)
    normal /= np.linalg.norm(normal)
    if normal[2] < 0:
        normal = -normal
    result = {}
    for name, sense in (("tighten", 1), ("loosen", -1)):
        # Friction on the screw points against its motion along the helix.
        force = normal - sense * mu * along
        axial, around = force[2], force[1]
        result[name] = abs(around / axial) * d2 / 2
    return result


def preloads():
    """M4: preload of one torque at the ends of a friction range, and the preload at which tension and twist use 0.9 of the yield strength."""
    head = lambda mu: quad(lambda r: mu * r, 2.25, 3.5)[0] / 1.25  # worn ring: every radius carries alike
    at = lambda torque, mu: torque / ((thread_torque(mu)["tighten"] + head(mu)) / 1000)
    d2, d3 = 3.5453, 3.1412
    area = pi / 4 * ((d2 + d3) / 2) ** 2
    wp = 2 * pi * quad(lambda r: r * r, 0, (d2 + d3) / 4)[0]  # plastic: the same shear at every radius
    stress = lambda F: ((F / area) ** 2 + 3 * (thread_torque(0.12)["tighten"] * F / wp) ** 2) ** 0.5
    return dict(lowest=at(0.95, 0.2), highest=at(1.05, 0.1), utilised=brentq(lambda F: stress(F) - 0.9 * 640, 1, 1e5))


def springs():
    """Two springs in series or side by side, by root finding: embedding, sleeve beside print, washer under a bolt."""
    bolt, parts, clamp = 1 / 7.34e-9, 1 / 52.5e-9, 900.0
    lost = brentq(lambda dF: dF / bolt + dF / parts - 8e-6, 0, 1e6)
    sleeve, print_, short = 1 / 4e-9, 1 / 52.5e-9, 10e-6
    # Press by x: the print from the start, the sleeve once the gap is closed.
    x = brentq(lambda x: print_ * x + sleeve * max(0, x - short) - clamp, 0, 1e-3)
    washer = 1 / brentq(lambda k: 1 / k - 7.34e-9 - 0.4e-6, 1e3, 1e9)
    return dict(embedding=lost, sleeve=sleeve * (x - short), print=print_ * x, washer=washer)


def stack():
    """Worst case of a chain by trying every corner."""
    import itertools

    parts = [(20, 0.1, 1), (-7.5, 0.05, 1), (4, 0.08, -2)]
    gaps = [sum(k * (n + t * sign) for (n, t, k), sign in zip(parts, signs)) for signs in itertools.product((-1, 1), repeat=3)]
    # Variance of a sum of independent normal sizes whose tolerance is three deviations.
    deviation = np.sqrt(np.array([k for _, _, k in parts]) @ np.diag([(t / 3) ** 2 for _, t, _ in parts]) @ np.array([k for _, _, k in parts]))
    return dict(nominal=(max(gaps) + min(gaps)) / 2, worst=(max(gaps) - min(gaps)) / 2, root=float(3 * deviation))


def hexagon():
    """Hexagon of 7 mm across flats from its corners: area less a hole, and outline."""
    corners = [(7 / 3**0.5 * cos(radians(60 * k)), 7 / 3**0.5 * sin(radians(60 * k))) for k in range(7)]
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, corners[1:]))) / 2
    outline = sum(((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2) ** 0.5 for a, b in zip(corners, corners[1:]))
    ring = quad(lambda r: 2 * pi * r, 2.25, 2.95)[0]
    return dict(area=area - quad(lambda r: 2 * pi * r, 0, 2.25)[0], ring=ring, outline=outline)


def cosine_peak():
    """Peak of a cosine pressure around half a pin that carries 400 N over 4 mm by 6 mm."""
    return brentq(lambda p: quad(lambda a: p * cos(a) ** 2 * 2 * 6, -pi / 2, pi / 2)[0] - 400, 0, 1e3)


def duty():
    """Load that uses up a bearing's life as fast as a cycle does: shares of life summed, each part with its own life."""
    C, parts = 2700.0, [(100.0, 3.0), (250.0, 1.0), (400.0, 0.5)]
    used = sum(turns / (1e6 * (C / load) ** 3) for load, turns in parts)
    return brentq(lambda P: sum(t for _, t in parts) / (1e6 * (C / P) ** 3) - used, 1, 1e4)


def lever():
    """Flange on its toe: forces of bolt and toe from balance of force and moment."""
    load, a, b = 300.0, 12.0, 9.0
    # Unknown bolt, toe: bolt − toe = load; moment about the load's line: bolt a − toe (a + b) = 0.
    return [float(v) for v in np.linalg.solve(np.array([[1, -1], [a, -(a + b)]]), np.array([load, 0]))]


def spun():
    """A pin pressed in while it spins: friction on many small patches against their sliding."""
    F, d, feed, spin, n = 800.0, 0.004, 0.005, 20.0, 720
    axial = around = 0.0
    for _ in range(n):
        v = np.array([feed, spin * d / 2])
        f = F / n * v / np.linalg.norm(v)
        axial += f[0]
        around += f[1] * d / 2
    return dict(axial=axial, torque=around)


def snap():
    """Cantilever hook of 9.5 mm by 3.28 mm by 19 mm tapered to half: tip deflection by 32.5 N, strain at the root, and pushing over a slope of 30 degrees."""
    b, h, L, E, P, mu = 9.5, 3.28, 19.0, 1815.0, 32.5, 0.6
    t = lambda x, taper: h * (1 - x / L / 2) if taper else h
    tip = lambda taper: quad(lambda x: P * (L - x) ** 2 / (E * b * t(x, taper) ** 3 / 12), 0, L)[0]
    slope = radians(30)
    # Normal force N and friction mu N on the slope: across they balance the bending force, along they are the push.
    N = brentq(lambda N: N * (cos(slope) - mu * sin(slope)) - P, 0, 1e5)
    return dict(tapered=tip(True), uniform=tip(False), strain=6 * P * L / (E * b * h * h), push=N * (sin(slope) + mu * cos(slope)))


out["snap"] = snap()
out["preloads"] = preloads()
out["springs"] = springs()
out["stack"] = stack()
out["hexagon"] = hexagon()
out["cosinePeak"] = cosine_peak()
out["duty"] = duty()
out["lever"] = lever()
out["spun"] = spun()
out["bossWall"] = boss_wall()
out["roundPlate"] = round_plate()
out["annularPlate"] = annular_plate()
out["endCap"] = end_cap()
out["lap"] = {f"{kind} {t}": lap(kind == "double", t) for kind in ("single", "double") for t in (0, 40)}
out["boltGroup"] = bolt_group()
out["tipping"] = tipping()
out["ring"] = ring_joint()
out["cone"] = cone()
out["clevis"] = clevis()
out["drilled"] = drilled()
out["goodman"] = goodman()
out["joint"] = joint()
out["thread"] = thread_torque()
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
print(json.dumps(out, indent=1))
