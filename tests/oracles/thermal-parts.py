"""Heat and motors by models that share nothing with the library: boundary layers as similarity solutions (scipy), terminals of a motor in time,
drag from a rotor that coasts, discs by their series, fins placed one by one. Writes thermal-parts.json. Run: python3 tests/oracles/thermal-parts.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import cumulative_trapezoid, solve_bvp, solve_ivp
from scipy.optimize import brentq
from scipy.special import j0, j1, jn_zeros


def digits(x, n=5):
    return f"{float(x):#.{n}g}"


out = {}


# Flat plate in a stream: Blasius' boundary layer by shooting, then the energy equation across it.
def flat_plate(prandtl, far=12.0):
    def blasius(_, y):
        return [y[1], y[2], -0.5 * y[0] * y[2]]

    shoot = lambda s: solve_ivp(blasius, (0, far), [0, 0, s], rtol=1e-11, atol=1e-12).y[1, -1] - 1
    s = brentq(shoot, 0.1, 1.0)
    eta = np.linspace(0, far, 20001)
    f = solve_ivp(blasius, (0, far), [0, 0, s], t_eval=eta, rtol=1e-11, atol=1e-12).y[0]
    inner = np.exp(-0.5 * prandtl * cumulative_trapezoid(f, eta, initial=0))
    return 1 / np.trapezoid(inner, eta)  # local Nusselt number over the root of Reynolds' number


local = flat_plate(0.7)
out["flatLocal"] = digits(local * np.sqrt(4e4), 3)
out["flatMean"] = digits(2 * local * np.sqrt(4e4), 3)


# Vertical plate in still air: the similarity equations of free convection.
def vertical_plate(prandtl, grashof):
    def layer(_, y):
        f, f1, f2, t, t1 = y
        return np.vstack([f1, f2, -3 * f * f2 + 2 * f1**2 - t, t1, -3 * prandtl * f * t1])

    ends = lambda a, b: np.array([a[0], a[1], a[3] - 1, b[1], b[3]])
    x = np.linspace(0, 12, 400)
    guess = np.vstack([0.4 * (1 - np.exp(-x)), 0.3 * x * np.exp(-x), 0.6 * np.exp(-x), np.exp(-0.5 * x), -0.5 * np.exp(-0.5 * x)])
    found = solve_bvp(layer, ends, x, guess, tol=1e-8, max_nodes=200000)
    assert found.success
    return 4 / 3 * -found.y[4, 0] * (grashof / 4) ** 0.25


out["vertical"] = digits(vertical_plate(0.72, 5e8), 3)


# A plate in a stream of warm air: properties by Sutherland's laws and the gas law, then the layer above.
def air(T, p=101325.0):
    mu = 1.458e-6 * T**1.5 / (T + 110.4)
    k = 2.64638e-3 * T**1.5 / (T + 245.4 * 10 ** (-12 / T))
    rho = p / (287.05 * T)
    return mu / rho, k, mu * 1006.5 / k


nu, k, prandtl = air(313.15)
reynolds = 3.0 * 0.08 / nu
out["forced"] = digits(2 * flat_plate(prandtl) * np.sqrt(reynolds) * k / 0.08, 3)

# Motor in time: current through resistance and inductance until it settles; volts times amperes at the terminals against torque times speed.
kt, R, L = 0.08, 0.2, 1e-4


def terminals(torque, speed):
    volts = brentq(lambda v: kt * (v - kt * speed) / R - torque, -200, 200)
    current = solve_ivp(lambda _, i: [(volts - R * i[0] - kt * speed) / L], (0, 0.05), [0.0], rtol=1e-10, atol=1e-12).y[0, -1]
    return volts, current


for name, torque, speed in (("motoring", 0.8, 120.0), ("braking", -0.8, 10.0), ("regenerating", -0.8, 120.0)):
    volts, amperes = terminals(torque, speed)
    out[name] = {"copper": digits(amperes**2 * R, 9), "mechanical": digits(kt * amperes * speed), "electrical": digits(volts * amperes)}
out["point"] = {"current": digits(terminals(0.8, 120.0)[1]), "voltage": digits(terminals(0.8, 120.0)[0])}

# No load: the drag is what the back electromotive force gives to the rotor: speed times torque of the current.
volts, amperes, resistance, speed = 22.0, 0.5, 0.18, 246.0
emf = brentq(lambda e: (volts - e) / resistance - amperes, 0, volts)
out["noLoad"] = {"loss": digits(emf * amperes), "drag": digits(emf / speed * amperes * 1e3)}

# Drag of a rotor that coasts: loss of its kinetic energy.
inertia, constant, viscous = 2e-5, 6e-3, 4e-5
course = solve_ivp(lambda _, w: [-(constant + viscous * w[0]) / inertia], (0, 1e-3), [150.0], rtol=1e-12, atol=1e-12, dense_output=True)
energy = lambda t: 0.5 * inertia * course.sol(t)[0] ** 2
out["drag"] = digits((3 * energy(0) - 4 * energy(1e-4) + energy(2e-4)) / 2e-4)


# Torque through a reduction: power in, friction as a share of the power that enters, power out; at a speed of the joint of one.
def motor_torque(joint, ratio, share, lowering):
    ledger = lambda t: t * ratio * share - joint if not lowering else joint * share - t * ratio
    return brentq(ledger, 0, 100)


out["reduction"] = [digits(motor_torque(5.0, 6.2, 0.92, False)), digits(motor_torque(5.0, 6.2, 1.0, False)), digits(motor_torque(5.0, 6.2, 0.85, True))]


# Fins one by one, each with the spacing after it.
def fins(width, spacing, thickness):
    count, at = 0, 0
    while at + thickness <= width:
        count, at = count + 1, at + thickness + spacing
    return count


out["fins"] = fins(42_000, 3_100, 1_000)


# Disc on a round plate with a film on the other face: mean and centre temperature over the plate's own, by the series of Bessel functions.
def disc(e, t, bi, terms=4000):
    z = jn_zeros(1, terms)
    phi = (np.tanh(z * t) + z / bi) / (1 + z / bi * np.tanh(z * t))
    root = np.sqrt(np.pi)
    return 4 / (root * e) * np.sum((j1(z * e) / (z * j0(z))) ** 2 / z * phi), 2 / root * np.sum(j1(z * e) / (z * j0(z)) ** 2 * phi)


mean, peak = disc(0.3, 0.2, 0.5)
out["disc"] = {"mean": digits(mean, 4), "peak": digits(peak, 4)}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
