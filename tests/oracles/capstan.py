"""Reference values for cord drives, by quadrature, root finding and integration (scipy). Writes capstan.json beside this file."""
import json
from math import exp, log, pi, sinh
from pathlib import Path

from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq

EA, T0, R1, R2, MU, L = 20000.0, 60.0, 0.008, 0.048, 0.15, 0.02


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


def fibre(Ts, a, n, radius, angle):
    return solve_ivp(lambda _, T: a * radius ** (1 - n) * T**n, (0, angle), [Ts], rtol=1e-12, atol=1e-12).y[0, -1]


k, V, U = 1.380649e-23, 4.5e-29, 1.5 * 1.602176634e-19
area, rigidity = 0.5128205128205128e-6, 37340.0
warm, ref = 313.15, 293.15
prefactor = 1e-9 * exp(-U / k * (1 / warm - 1 / ref)) / sinh(V * 0.5e9 / (k * ref))
relaxed = solve_ivp(
    lambda _, T: [-rigidity * prefactor * sinh(V * T[0] / area / (k * warm))], (0, 30 * 86400), [100.0], method="LSODA", rtol=1e-11, atol=1e-10
).y[0, -1]

values = {
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
