"""The heath carrier with its rod beside the links, dropped: loads of bearings, pins, link and stack by hand, in space.

Nothing of the library is used. Rod and pin forces come from the equilibrium of the four bodies (leg-rod.py), balls and seats from sums over balls and cells
(fasteners-balls.py). Each row is [demand, capacity] in SI, capacity null where it is a strength of a material, which other oracles hold.
Writes leg-rod-bearings.json beside this file. Run: python3 tests/oracles/leg-rod-bearings.py
"""
import json
import runpy
from pathlib import Path

import numpy as np
from scipy.integrate import quad

here = Path(__file__).parent
rod = runpy.run_path(str(here / "leg-rod.py"))
balls = runpy.run_path(str(here / "fasteners-balls.py"))
drop = rod["out"]["drop"]
mm, pi, g = 1e-3, np.pi, 9.80665
S, P = drop["rod"], drop["pinOfGroundAndRod"]
rows = {}

# ---- directions in space: x forward, y along the pins, z up ------------------------------------------------------------------------
q2, q3 = (float(q) for q in rod["standing"](165 * mm, 180 * mm, 310 * mm, 1))
along = np.array([-np.sin(q2), 0, -np.cos(q2)])  # crank and rocker are equal: the rod runs along the upper link
lift = pi / 2 * 7 * g * (1 + 40 / 80) / 2
ground = np.array([0, 0, lift])
# The rod is pulled: it pulls the lower link up, and the knee pin holds it against the ground's force as well.
pull = -S * along
pin = -(ground + pull)
assert abs(np.linalg.norm(pin) / P - 1) < 1e-9

# Two bearings side by side on the knee pin, 13 mm apart, with the rod 17 mm beside: forces on both, as vectors.
apart, beside = 13 * mm, np.array([0, -17 * mm, 0])
couple = np.cross(beside, pull)
# (s/2) y x (F1 - F2) + couple = 0, in the two directions across the pin.
A = np.zeros((4, 4))
for axis in range(2):
    A[axis, axis] = A[axis, axis + 2] = 1
# y x F = (Fz, 0, -Fx)
A[2, 1], A[2, 3] = apart / 2, -apart / 2
A[3, 0], A[3, 2] = -apart / 2, apart / 2
x = np.linalg.solve(A, [pin[0], pin[2], -couple[0], -couple[2]])
of_knee = {"couple": float(np.linalg.norm(couple)), "harder": float(max(np.hypot(x[0], x[1]), np.hypot(x[2], x[3])))}

# ---- crank: one bearing 4 x 13 x 5 in the arm, rod 2.5 mm beside, under a cap ---------------------------------------------------------
C0, C, Z, angle, pitch = 412.0, 1168.0, 8, np.radians(12.5), 8.5 * mm
moment = float(np.linalg.norm(np.cross([0, 2.5 * mm, 0], pull)))
lean = np.arcsin(1.5 / 165)
axial = S * np.sin(lean)
parts = [balls["radial"](S, Z, angle), balls["axial"](axial, Z, angle), balls["tilted"](moment, Z, pitch, angle)]
rows["crankBearing.static"] = [max(S, 0.6 * S + 0.5 * axial), C0 / 1.5]
rows["crankBearing.cocking"] = [S * sum(parts) / parts[0], C0 / 1.5]
rows["crankBearing.seatPressure"] = [S / (13 * mm * 5 * mm), None]
# Rims of 3.5 and 3.25 mm press by the cosine over half a turn; the cap pivots on its edge of 4 mm.
lever = quad(lambda t: np.cos(t) ** 2, -pi / 2, pi / 2)[0] / quad(np.cos, -pi / 2, pi / 2)[0]
on_cap = moment / (lever * (3.5 + 3.25) * mm)
screw = on_cap * (4 + 3.25) / 4 + axial


def preload(torque, pitch, d2, head, hole, friction=0.14):
    """A nut on an inclined plane with flanks of 60 degrees, and head friction at its mean diameter (Shigley, power screws with angled flanks)."""
    rise, flank = np.arctan(pitch / (pi * d2)), np.arctan(friction / np.cos(pi / 6))
    return torque / (d2 / 2 * np.tan(rise + flank) + friction * (head + hole) / 4)


def stress_area(d, pitch):
    """ISO 898-1: mean of pitch and minor diameter."""
    height = np.sqrt(3) / 2 * pitch
    return pi / 4 * ((d - 0.75 * height + d - 17 / 12 * height) / 2) ** 2


d2 = lambda d, pitch: d - 0.75 * np.sqrt(3) / 2 * pitch
clamp = 0.7 * preload(1.1, 0.5 * mm, d2(3 * mm, 0.5 * mm), 5.07 * mm, 3.4 * mm)
rows["crankBearing.capLift"] = [screw, clamp]
rows["crankBearing.capScrew"] = [screw, 580e6 * stress_area(3 * mm, 0.5 * mm)]
section = lambda d: pi * d**3 / 32
rows["crankPin.bending"] = [moment / section(4 * mm), 0.85 * 1500e6]

# ---- rocker: bearing in the eye of the rod, pin in one cheek of 6 mm, rod 11 mm beside ------------------------------------------------
of_pin = float(np.linalg.norm(np.cross([0, 11 * mm, 0], pull)))
rows["rockerBearing.static"] = [max(S, 0.6 * S + 0.5 * axial), C0 / 1.5]
rows["rockerPin.seat"] = [balls["seat"](S, of_pin, 4 * mm, 6 * mm)["peak"], None]
rows["rockerPin.bending"] = [of_pin / section(4 * mm), 0.85 * 1500e6]
rows["rockerPin.shear"] = [4 / 3 * S / (pi / 4 * (4 * mm) ** 2), 0.577 * 1500e6]

# ---- rod of 8 mm with a step of 0.6 mm; bosses of the knee ------------------------------------------------------------------------------
rows["rod.stepped"] = [S / (pi / 4 * (8 * mm) ** 2) + S * 0.6 * mm / section(8 * mm), None]
of_link = float(np.linalg.norm(couple))
# Bosses 18 mm long on a pin of 5 mm, 20 + 0.6 + 18 mm apart; the couple adds to half of the pin's force.
rows["boss.bearing knee"] = [(P / 2 + of_link / (38.6 * mm)) / (5 * mm * 18 * mm), None]

# ---- stack on the shaft of 12 mm: ring of 26 by 12.5 mm, 9 N m on the nut, 0.55 of it left ----------------------------------------------
left = 0.55 * preload(9, 1.75 * mm, d2(12 * mm, 1.75 * mm), 17.23 * mm, 13.5 * mm)
ring = np.linspace(12.5 / 2, 13, 200_001) * mm
mid, dr = (ring[1:] + ring[:-1]) / 2, np.diff(ring)
of_ring = np.sum(2 * pi * mid * dr)
second_of_ring = np.sum(pi * mid**3 * dr)
stack = {"gape": left / of_ring * second_of_ring / (13 * mm), "tip": left * 13 * mm}
# A cold landing a year later. Polycarbonate creeps by 1 + 0.091 (t / 1 h)^0.154 (Findley), and what a stiff shaft keeps falls as that grows. By 25 K the ring, of
# 2.3 GPa and 0.97 of it in moist air, shrinks by 66 ppm/K and the steel shaft of 12 mm by 11.9: two springs in series, one metre long.
crept = lambda hours: 1 + 0.091 * hours**0.154
springs = 1 / (205e9 * pi / 4 * (12 * mm) ** 2) + 1 / (0.97 * 2.3e9 * of_ring)
cold = left * crept(70 * 24) / crept(31557600 / 3600) - (66 - 11.9) * 1e-6 * 25 / springs
stack["tipColdYear"] = cold * 13 * mm

# ---- tightening: nut of the stack on a shaft that is bored for an M4 screw, and the screw of the crank's cap -------------------------------
def in_thread(force, pitch, d2, friction=0.14):
    """Torque in the thread alone, of a nut on its inclined plane."""
    return force * d2 / 2 * np.tan(np.arctan(pitch / (pi * d2)) + np.arctan(friction / np.cos(pi / 6)))


clamp12 = left / 0.55
root12, hole = 12 * mm - 17 / 12 * np.sqrt(3) / 2 * 1.75 * mm, 4 * mm
tube = np.linspace(hole / 2, root12 / 2, 200_001)
at, step = (tube[1:] + tube[:-1]) / 2, np.diff(tube)
tension = clamp12 / np.sum(2 * pi * at * step)
twist = in_thread(clamp12, 1.75 * mm, d2(12 * mm, 1.75 * mm)) * (root12 / 2) / np.sum(2 * pi * at**3 * step)
stack["tightening"] = float(np.sqrt(tension**2 + 3 * twist**2))
stack["crush"] = float(clamp12 / of_ring)
# The whole shaft under that preload, bending and twist: stress for each N m from slices of its section.
solid = np.linspace(0, root12 / 2, 200_001)
at, step = (solid[1:] + solid[:-1]) / 2, np.diff(solid)
polar = np.sum(2 * pi * at**3 * step)
stack["shaft"] = {
    "preload": float(clamp12 / np.sum(2 * pi * at * step)),
    "perBending": float(root12 / 2 / (polar / 2)),
    "perTorque": float(root12 / 2 / polar),
    "nutTorque": float(in_thread(clamp12, 1.75 * mm, d2(12 * mm, 1.75 * mm))),
}
# Nine tenths of the yield of a class 8.8 screw M3 (640 MPa). VDI 2230-1: rise and friction of the thread added, twist plastic all over (12 T / pi d^3).
area3 = stress_area(3 * mm, 0.5 * mm)
torque3 = (0.5 * mm / pi + d2(3 * mm, 0.5 * mm) * 0.14 / np.cos(pi / 6)) / 2
per_force = 12 * torque3 / (pi * np.sqrt(4 * area3 / pi) ** 3)
rows["crankBearing.capTightening"] = [clamp / 0.7, 0.9 * 640e6 / np.sqrt(1 / area3**2 + 3 * per_force**2)]

out = {"rod": S, "pin": P, "knee": of_knee, "stack": stack, "rows": {k: [float(d), None if c is None else float(c)] for k, (d, c) in rows.items()}}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
