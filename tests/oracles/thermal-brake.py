"""A bus that braking motors feed, by integration of its voltage over time instead of the library's closed forms. Writes thermal-brake.json.
Run: python3 tests/oracles/thermal-brake.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq


def digits(x, n=7):
    return f"{x:#.{n}g}"


def charged(v0, c, power, time):
    """C dV/dt = P / V: a constant power into a capacitor."""
    run = solve_ivp(lambda _, v: power / v / c, (0, time), [v0], method="DOP853", rtol=1e-12, atol=1e-12)
    return run.y[0, -1]


def with_resistor(v0, c, power, r):
    """The same with a resistor across the bus: the voltage at which it settles."""
    run = solve_ivp(lambda _, v: (power / v - v / r) / c, (0, 60 * r * c), [v0], method="LSODA", rtol=1e-12, atol=1e-12)
    return run.y[0, -1]


out = {}
# 8 J of a landing within a tenth of a second into 2 mF at 22 V, and a small energy.
out["landing"] = {"voltage": digits(charged(22, 2e-3, 80, 0.1))}
out["little"] = {"voltage": digits(charged(24, 4.7e-3, 10, 0.02))}
# The capacitance with which 8 J end at 30 V.
out["capacitance"] = {"farad": digits(brentq(lambda c: charged(22, c, 80, 0.1) - 30, 1e-3, 1.0, xtol=1e-14, rtol=1e-13))}
# The resistance at which 200 W settle at 28 V; and at which a switch of 20 A carries all that it bears.
out["resistor"] = {
    "highest": digits(brentq(lambda r: with_resistor(28, 2e-3, 200, r) - 28, 1, 10, xtol=1e-13, rtol=1e-12)),
    "lowest": digits(brentq(lambda r: 28 / r - 20, 0.1, 10, xtol=1e-14)),
}
# Pulses of 80 W for 0.1 s every 4 s, averaged over a hundred of them.
t = (np.arange(4_000_000) + 0.5) * 1e-4
out["mean"] = digits(np.mean(np.where(t % 4 < 0.1, 80.0, 0.0)))
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
