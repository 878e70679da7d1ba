"""Reference values for cord drives, by quadrature, root finding, integration and a discretised Coulomb chain (scipy). Writes capstan.json beside this file."""
import json
from math import exp, log, pi, sinh
from pathlib import Path

import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.linalg import solve_banded
from scipy.optimize import brentq

EA, T0, R1, R2, MU, L = 20000.0, 60.0, 0.008, 0.048, 0.15, 0.02


class Chain:
    """The whole loop as springs and Coulomb contacts with history, anchors moved with the drum's rim.

    A second method for the closed forms: no slip law is put in, only |force on the pulley| <= friction x tension x angle at each node.
    """

    def __init__(self, per_arc, mu=MU, pinion=6 * pi, drum=pi):
        drum_piece, pinion_piece = R2 * drum / per_arc, R1 * pinion / per_arc
        self.h = np.concatenate([[drum_piece] * per_arc, [L], [pinion_piece] * per_arc, [L], [drum_piece] * per_arc])
        grip = np.repeat([mu * drum / per_arc, 0, mu * pinion / per_arc, 0, mu * drum / per_arc], [per_arc, 1, per_arc, 1, per_arc])
        self.m = (grip[:-1] + grip[1:]) / 2
        n = len(self.m)
        self.on_drum = np.concatenate([np.ones(per_arc), np.zeros(n - 2 * per_arc), np.ones(per_arc)])
        self.u, self.rim, self.per_arc = np.zeros(n), 0.0, per_arc

    def tensions(self, u):
        return T0 + EA * np.diff(np.concatenate([[-self.rim], u, [-self.rim]])) / self.h

    def move(self, rim):
        """Moves the rim. For a guess of which nodes rest and which slip the equations are linear; the guess is mended until it holds."""
        shift, self.rim = rim - self.rim, rim
        k, n = EA / self.h, len(self.m)
        resting = self.u - self.on_drum * shift
        slips = np.zeros(n)
        for _ in range(20 * n):
            stick = (slips == 0) & (self.m > 0)
            half = slips * self.m / 2
            left, right = k[:-1] * (1 + half), k[1:] * (1 - half)
            load = T0 * 2 * half
            load[0] += left[0] * rim
            load[-1] += right[-1] * rim
            band = np.zeros((3, n))
            band[0, 1:] = np.where(stick, 0, right)[:-1]
            band[1] = np.where(stick, 1, -left - right)
            band[2, :-1] = np.where(stick, 0, left)[1:]
            u = solve_banded((1, 1), band, np.where(stick, resting, load))
            T = self.tensions(u)
            pull = T[1:] - T[:-1]
            starts = stick & (np.abs(pull) > self.m * (T[:-1] + T[1:]) / 2 * (1 + 1e-8))
            stops = (slips != 0) & ((u - resting) * slips < -1e-14)
            if not (starts.any() or stops.any()):
                break
            slips = np.where(starts, np.sign(pull), np.where(stops, 0, slips))
        else:
            raise RuntimeError("no rest found")
        self.u = u
        T = self.tensions(u)
        return R2 * (T[self.per_arc] - T[2 * self.per_arc + 1]), T[self.per_arc], T[2 * self.per_arc + 1]


def loaded(rim, per_arc, steps=6):
    chain = Chain(per_arc)
    for i in range(1, steps + 1):
        out = chain.move(rim * i / steps)
    return out


def refined(of, coarse=800):
    """Chain results are off by the square of the piece: two sizes give the limit."""
    a, b = np.array(of(coarse)), np.array(of(2 * coarse))
    return b + (b - a) / 3


def at_torque(wanted):
    """Windup, tensions and slopes at a torque reached from rest."""
    torque = lambda rim: refined(lambda n: loaded(rim, n))[0]
    rim = brentq(lambda rim: torque(rim) - wanted, 2e-6, 150e-6, xtol=1e-13)
    _, taut, slack = refined(lambda n: loaded(rim, n))
    slope = lambda d: (torque(rim + d) - torque(rim - d)) / (2 * d) * R2
    tangent = (4 * slope(0.5e-6) - slope(1e-6)) / 3
    return {"windup": rim / R2, "tangent": tangent, "secant": wanted / (rim / R2), "taut": taut, "slack": slack}


def cycle(peak_rim, per_arc=400, steps=40):
    """Work of the third cycle between two rim displacements, which friction takes, and the torque at the turning points."""
    chain, work, last, torques = Chain(per_arc), 0.0, (0.0, 0.0), []
    corners = [0, 1, -1, 1, -1, 1]
    for leg in range(5):
        for i in range(1, steps + 1):
            rim = peak_rim * (corners[leg] + (corners[leg + 1] - corners[leg]) * i / steps)
            torque = chain.move(rim)[0]
            if leg >= 3:
                work += 0.5 * (torque + last[1]) * (rim - last[0]) / R2
            last = (rim, torque)
        torques.append(torque)
    return {"loss": work, "turning": torques}


def arc(T, radius, wrap):
    """Length given by an arc whose tension decays from T to T0 (or rises to it) by friction."""
    profile = (lambda a: max(T * exp(-MU * a), T0)) if T > T0 else (lambda a: min(T * exp(MU * a), T0))
    corner = abs(log(T / T0)) / MU
    points = [corner] if 0 < corner < wrap else None
    return quad(lambda a: (profile(a) - T0) * radius / EA, 0, wrap, limit=500, points=points, epsabs=1e-16)[0]


def unloaded(peak, T, wrap):
    profile = lambda a: min(T * exp(MU * a), max(peak * exp(-MU * a), T0))
    points = [log(peak / T) / 2 / MU, log(peak / T0) / MU]
    return quad(lambda a: (profile(a) - T0) * R1 / EA, 0, wrap, limit=500, points=points, epsabs=1e-16)[0]


wrap, grip = 6 * pi, exp(MU * 6 * pi)


def branch(T):
    return (T - T0) * L / EA + arc(T, R1, wrap) + arc(T, R2, pi)


taut = brentq(lambda T: branch(T) + branch(T / grip), 61, 1000, xtol=1e-11)


# A cord clamped in the middle of the pinion: each branch is on its own, and the slack one can hang loose.
half, bare = 3 * pi, L + R1 * 3 * pi + R2 * pi


def clamped(T):
    return (T - T0) * L / EA + arc(T, R1, half) + arc(T, R2, pi)


loose_at = brentq(lambda T: clamped(T) - T0 * bare / EA, T0, 1000, xtol=1e-11)
far = 20.0 / R2


def back_to_zero(T):
    """Integral of tension over both branches when the torque is back at zero: one unloaded from its peak, one taken up from nothing."""

    def unloading(radius, wrap):
        profile = lambda a: min(T * exp(MU * a), max(far * exp(-MU * a), T0))
        points = [p for p in (log(far / T) / 2 / MU, log(far / T0) / MU) if 0 < p < wrap]
        return radius * quad(profile, 0, wrap, limit=500, points=points or None, epsabs=1e-13)[0]

    taken_up = T * (L + R1 * (1 - exp(-MU * half)) / MU + R2 * (1 - exp(-MU * pi)) / MU)
    return T * L + unloading(R1, half) + unloading(R2, pi), taken_up


left = brentq(lambda T: sum(back_to_zero(T)) - 2 * T0 * bare, 1, 500, xtol=1e-11)


def fibre(Ts, a, n, radius, angle):
    return solve_ivp(lambda _, T: a * radius ** (1 - n) * T**n, (0, angle), [Ts], rtol=1e-12, atol=1e-12).y[0, -1]


k, V, U = 1.380649e-23, 4.5e-29, 1.5 * 1.602176634e-19
area, rigidity = 0.5128205128205128e-6, 37340.0
warm, ref = 313.15, 293.15
prefactor = 1e-9 * exp(-U / k * (1 / warm - 1 / ref)) / sinh(V * 0.5e9 / (k * ref))
relaxed = solve_ivp(
    lambda _, T: [-rigidity * prefactor * sinh(V * T[0] / area / (k * warm))], (0, 30 * 86400), [100.0], method="LSODA", rtol=1e-11, atol=1e-10
).y[0, -1]

light, full, small, large = at_torque(0.5), at_torque(1.0), refined(lambda n: loaded(60e-6, n)), refined(lambda n: loaded(120e-6, n))
values = {
    "chainHalf": light,
    "chainOne": full,
    "chainRim60um": small[0],
    "chainRim120um": large[0],
    "chainCycle60um": cycle(60e-6),
    "clampedSlackTorque": R2 * loose_at,
    "clampedWindup20": clamped(far) / R2,
    "clampedReturnTension": left,
    "clampedReturnWindup": (back_to_zero(left)[0] - T0 * bare) / EA / R2,
    "arcTaut": arc(90, R1, wrap),
    "arcSlack": arc(30, R1, wrap),
    "arcTautAtAnchor": arc(90, R1, 1),
    "arcSlackAtAnchor": arc(30, R1, 1),
    "arcUnloadedTo70": unloaded(90, 70, wrap),
    "arcLostMotion": unloaded(90, 60, wrap),
    "slipTorque": R2 * (taut - taut / grip),
    "slipTaut": taut,
    "fibre60": fibre(60, 0.25, 0.9, 0.008, 4 * pi),
    "fibre1": fibre(1, 0.25, 0.9, 0.008, 4 * pi),
    "relaxed30Days40C": relaxed,
}
Path(__file__).with_suffix(".json").write_text(json.dumps(values, indent=2) + "\n")
