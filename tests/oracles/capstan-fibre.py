"""Reference windup and slip of cord drives whose friction falls with pressure, by integration (scipy). Writes capstan-fibre.json beside this file.

dT/dθ = ∓ μ T0 (T/T0)^n is integrated inwards from the tangent point to the stored tension or the anchor, with the stretch along it; equal lengths
are found by brentq. No closed form of the law is put in.
"""
import json
from math import pi
from pathlib import Path

from scipy.integrate import solve_ivp
from scipy.optimize import brentq

EA, T0, R1, R2, L = 20000.0, 60.0, 0.008, 0.048, 0.02


def arc(T, mu, n, radius, wrap):
    """Cord given out and the tension where the arc ends."""
    sign = -1 if T > T0 else 1
    law = lambda _, y: [sign * mu * T0 * (max(y[0], 0) / T0) ** n, (y[0] - T0) * radius / EA]
    met = lambda _, y: y[0] - T0
    met.terminal = True
    if abs(T - T0) < 1e-12:
        return 0.0
    run = solve_ivp(law, (0, wrap), [T, 0.0], events=met, rtol=1e-11, atol=1e-14)
    return run.y[1, -1]


def grip(taut, mu, n, wrap):
    run = solve_ivp(lambda _, y: [-mu * T0 * (max(y[0], 0) / T0) ** n], (0, wrap), [taut], rtol=1e-11, atol=1e-12)
    return run.y[0, -1]


def branch(T, mu, n, drum_mu, pinion, drum):
    return (T - T0) * L / EA + arc(T, mu, n, R1, pinion) + arc(T, drum_mu, n, R2, drum)


cases = []
for mu, n, pinion, taut, slack, torque in ((0.15, 0.8, 6 * pi, pi, pi, 3.0), (0.12, 0.67, 5 * pi, 5.0, 1.28, 2.0), (0.2, 0.9, 4 * pi, pi, pi, 5.0)):
    drum_mu = mu * (R2 / R1) ** (1 - n)
    give = lambda a, b: branch(a, mu, n, drum_mu, pinion, taut) + branch(b, mu, n, drum_mu, pinion, slack)
    pull = torque / R2
    a = brentq(lambda T: give(T, T - pull), max(T0, pull) + 1e-6, T0 + pull, xtol=1e-11)
    verge = brentq(lambda T: give(T, grip(T, mu, n, pinion)), T0 + 1, 4 * T0, xtol=1e-10)
    cases.append(
        dict(mu=mu, n=n, pinion=pinion, taut=taut, slack=slack, torque=torque, tension=a, windup=branch(a, mu, n, drum_mu, pinion, taut) / R2,
             slip=R2 * (verge - grip(verge, mu, n, pinion)))
    )
    print(cases[-1])
Path(__file__).with_suffix(".json").write_text(json.dumps(cases, indent=1) + "\n")
