"""Reference limits of cord drives at the ends of their travel, by a discretised Coulomb chain with unequal drum arcs (scipy).

Writes capstan-limits.json beside this file. No law of slip arcs is put in: the cord is a row of springs, and each node on a pulley carries at most
friction times tension times angle. The pinion slips when all its nodes do; a span is slack where its tension is 1 % of
the pretension. Loaded from a uniform pretension, motor locked; two sizes of pieces are extrapolated.
"""
import json
from math import pi
from pathlib import Path

import numpy as np
from scipy.linalg import solve_banded


class Chain:
    def __init__(self, drive, taut, slack, per_arc):
        self.d, self.n = drive, per_arc
        arcs = [(drive["R2"], taut, drive["mu_drum"]), (drive["R1"], drive["pinion"], drive["mu"]), (drive["R2"], slack, drive["mu_drum"])]
        pieces = [np.full(per_arc, r * a / per_arc) for r, a, _ in arcs]
        grips = [np.full(per_arc, mu * a / per_arc) for _, a, mu in arcs]
        gap, none = np.array([drive["L"]]), np.zeros(1)
        self.h = np.concatenate([pieces[0], gap, pieces[1], gap, pieces[2]])
        grip = np.concatenate([grips[0], none, grips[1], none, grips[2]])
        self.m = (grip[:-1] + grip[1:]) / 2
        count = len(self.m)
        # A node belongs to the pulley whose piece lies on either side of it.
        self.on_drum = np.concatenate([np.ones(per_arc), np.zeros(count - 2 * per_arc), np.ones(per_arc)])
        self.pinned = per_arc + per_arc // 2 if drive["clamped"] else None
        self.u, self.rims = np.zeros(count), np.zeros(2)

    def tensions(self, u):
        return self.d["T0"] + self.d["EA"] * np.diff(np.concatenate([[-self.rims[0]], u, [-self.rims[1]]])) / self.h

    def move(self, rim, sliding=None, rim_b=None):
        """Moves the rim of the drum; seen from a frame that gives, that of branch B by another length."""
        rims = np.array([rim, rim if rim_b is None else rim_b])
        shifts, self.rims = rims - self.rims, rims
        T0, k, n = self.d["T0"], self.d["EA"] / self.h, len(self.m)
        resting = self.u - self.on_drum * np.where(np.arange(n) < n / 2, *shifts)
        # Towards the taut span, whose tension is the higher: tension falls along the cord from A to B.
        slips = np.zeros(n) if sliding is None else np.where(sliding, -1.0, 0.0)
        for _ in range(60 * n):
            stick = (slips == 0) & (self.m > 0)
            if self.pinned is not None:
                stick[self.pinned] = True
            half = slips * self.m / 2
            left, right = k[:-1] * (1 + half), k[1:] * (1 - half)
            load = T0 * 2 * half
            load[0] += left[0] * rims[0]
            load[-1] += right[-1] * rims[1]
            band = np.zeros((3, n))
            band[0, 1:] = np.where(stick, 0, right)[:-1]
            band[1] = np.where(stick, 1, -left - right)
            band[2, :-1] = np.where(stick, 0, left)[1:]
            u = solve_banded((1, 1), band, np.where(stick, resting, load))
            T = self.tensions(u)
            pull = T[1:] - T[:-1]
            starts = stick & (np.abs(pull) > self.m * (T[:-1] + T[1:]) / 2 * (1 + 1e-8))
            if self.pinned is not None:
                starts[self.pinned] = False
            stops = (slips != 0) & ((u - resting) * slips < -1e-14)
            if sliding is not None:
                stops &= ~sliding
            if not (starts.any() or stops.any()):
                break
            slips = np.where(starts, np.sign(pull), np.where(stops, 0, slips))
        else:
            raise RuntimeError("no rest found")
        self.u = u
        return T[self.n], T[2 * self.n + 1]


def bare(drive, taut, slack):
    return drive["L"] + drive["R1"] * drive["pinion"] / 2 + drive["R2"] * max(taut, slack)


def slip(drive, taut, slack, per_arc):
    """Torque with every node of the pinion slipping: the rim is moved in one go so far that each has slid the right way, which is asserted."""
    chain = Chain(drive, taut, slack, per_arc)
    on_pinion = (chain.on_drum == 0) & (chain.m > 0)
    before = chain.u.copy()
    Ta, Tb = chain.move(6 * drive["T0"] / drive["EA"] * bare(drive, taut, slack), on_pinion)
    assert np.all((chain.u - before)[on_pinion] <= 0), "a node of the pinion did not slide"
    return drive["R2"] * (Ta - Tb)


def slack_limit(drive, taut, slack, per_arc):
    """Torque at which the slack span keeps 1 % of the pretension."""

    low, high = 0.0, drive["T0"] / drive["EA"] * bare(drive, taut, slack)
    for _ in range(60):
        rim = (low + high) / 2
        try:
            chain = Chain(drive, taut, slack, per_arc)
            for i in range(1, 7):
                Ta, Tb = chain.move(rim * i / 6)
            beyond = Tb < 0.01 * drive["T0"]
        except RuntimeError:  # the slack span would have to push
            beyond = True
        low, high = (low, rim) if beyond else (rim, high)
    return drive["R2"] * (Ta - Tb)


def refined(of, coarse):
    a, b = of(coarse), of(2 * coarse)
    return b + (b - a) / 3


base = dict(EA=20000.0, T0=60.0, R1=0.008, R2=0.048, L=0.02, pinion=6 * pi, mu=0.15, mu_drum=0.15, clamped=False)
hip = dict(EA=35000.0, T0=140.0, R1=0.0075, R2=0.0465, L=0.03046309, pinion=24.10, mu=0.1, mu_drum=0.1, clamped=False)
cases = []


def case(name, drive, drum, travel):
    taut, slack = drum + travel / 2, drum - travel / 2
    of = slack_limit if drive["clamped"] else slip
    torque = refined(lambda n: of(drive, taut, slack, n), 400)
    cases.append({"name": name, "drive": drive, "drumWrap": drum, "travel": travel, "torque": torque})
    print(name, torque, flush=True)


if __name__ == "__main__":
    deg = pi / 180
    for travel in (0, 180, 300, 330):
        case(f"short arcs, travel {travel} deg", base, pi, travel * deg)
    case("arcs of 6 and 0.28 rad", base, 3.14, 5.72)
    case("grippy drum", {**base, "mu_drum": 0.3}, pi, 300 * deg)
    case("slippery drum", {**base, "mu_drum": 0.05}, pi, 300 * deg)
    case("short wrap, high friction", {**base, "pinion": 4.0, "mu": 0.4, "mu_drum": 0.4}, 2.0, 3.6)
    for travel in (0, 110, 220, 360):
        case(f"hip, travel {travel} deg", hip, 200 * deg, travel * deg)
    case("clamped, mid travel", {**base, "clamped": True}, pi, 0.0)
    case("clamped, arcs of 6 and 0.28 rad", {**base, "clamped": True}, 3.14, 5.72)
    case("clamped hip, travel 360 deg", {**hip, "clamped": True}, 200 * deg, 360 * deg)
    # So much grip that the slack span is gone before the pinion slips.
    case("grippy long wrap", {**base, "mu": 0.6, "mu_drum": 0.6, "pinion": 16.0, "clamped": True}, pi, 0.0)
    Path(__file__).with_suffix(".json").write_text(json.dumps(cases, indent=2) + "\n")
