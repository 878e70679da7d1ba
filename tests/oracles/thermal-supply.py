"""One bus for all motors by other means than the library's: power at the terminals of each motor, the bus voltage by a fixed point, heat by integration over
time. Writes thermal-supply.json. Run: python3 tests/oracles/thermal-supply.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq


def digits(x, n=7):
    return f"{x:#.{n}g}"


def terminal(torque, speed, k, r, drag):
    """Power at the terminals and heat of a motor: volts times amperes, and what of it is not mechanical."""
    current = (torque + drag * np.sign(speed)) / k
    volts = current * r + k * speed
    return volts * current, volts * current - torque * speed


def bus_voltage(v0, r, power):
    v = v0
    for _ in range(10000):
        v = v0 - r * power / v
    return v


out = {}

motors = [(4, 0.4, 30, 0.08, 0.2, 0.01), (4, 0.6, -20, 0.08, 0.2, 0.01), (4, -0.2, 50, 0.08, 0.2, 0.01)]
power = 10 + sum(n * terminal(*m)[0] for n, *m in motors)
heat = sum(n * terminal(*m)[1] for n, *m in motors)
v = bus_voltage(24, 0.1, power)
out["bus"] = {
    "power": digits(power),
    "motorHeat": digits(heat),
    "voltage": digits(v),
    "current": digits(power / v),
    "batteryHeat": digits(0.1 * (power / v) ** 2),
    # The most power: largest product of voltage and current over a scan of currents.
    "most": digits(max((24 - 0.1 * i) * i for i in np.linspace(0, 240, 240001))),
}
# Motors that are driven back: a robot that is lowered.
down = [(4, 0.5, -60, 0.08, 0.2, 0.01)]
power = 10 + sum(n * terminal(*m)[0] for n, *m in down)
out["down"] = {"power": digits(power), "motorHeat": digits(sum(n * terminal(*m)[1] for n, *m in down)), "back": digits(-power)}

# Two drives of one bus, 5 + 20 sin x and 5 + 20 sin(x + 2): summed first, and each alone.
x = (np.arange(1_000_000) + 0.5) * 2 * np.pi / 1_000_000
one, two = 5 + 20 * np.sin(x), 5 + 20 * np.sin(x + 2)
out["summed"] = {
    "drawn": digits(np.mean(np.maximum(0, one + two))),
    "returned": digits(np.mean(np.maximum(0, -one - two))),
    "drawnAlone": digits(np.mean(np.maximum(0, one)) + np.mean(np.maximum(0, two))),
    "returnedAlone": digits(np.mean(np.maximum(0, -one)) + np.mean(np.maximum(0, -two))),
}


# Speed under sag: fixed point of the bus voltage, then the speed at which the terminal voltage reaches it, by bisection.
def fastest(v0, rb, n, torque, k, r, p0):
    i = torque / k
    v = v0
    for _ in range(10000):
        v = v0 - rb * (n * i + p0 / v)
    low, high = 0.0, 1e4
    for _ in range(200):
        mid = (low + high) / 2
        low, high = (mid, high) if i * r + k * mid <= v else (low, mid)
    return v, low


v, w = fastest(24, 0.1, 4, 1, 0.08, 0.12, 10)
out["sag"] = {"voltage": digits(v), "speed": digits(w), "joint": digits(w / 6), "jointWithout": digits((24 - 12.5 * 0.12) / 0.08 / 6)}

# Heat in the cells: half-sine pulses, integrated; and a mixed duty.
t = (np.arange(2_000_000) + 0.5) / 2_000_000
pulse = np.where(t < 0.5, 20 * np.sin(2 * np.pi * t), 0.0)
mixed = np.where(t < 0.3, 20 * np.sin(np.pi * t / 0.3), np.where(t < 0.5, 6.0, np.where(t < 0.9, -2.0, 0.0)))
for name, i in (("pulse", pulse), ("mixed", mixed)):
    out[name] = {
        "heat": digits(0.1 * np.mean(i**2)),
        "mean": digits(np.mean(i)),
        "rms": digits(np.sqrt(np.mean(i**2))),
        "overMean": digits(np.mean(i**2) / np.mean(i) ** 2),
    }


# Running time: open-circuit voltage times current leaves the cells.
def run(energy, v0, r, parts):
    cells = sum(share * v0 * p / bus_voltage(v0, r, p) for p, share, _ in parts)
    time = energy / cells
    return {"cells": digits(cells), "time": digits(time), "range": digits(time * sum(share * v for _, share, v in parts))}


energy = 80 * 3600 * 0.8
out["walking"] = run(energy, 24, 0.1, [(100, 1, 0.4)])
out["mission"] = run(energy, 24, 0.1, [(100, 0.5, 0.4), (40, 0.5, 0)])
# Transport: a battery run down second by second while the robot walks; the cost is the slope on which the same energy would lift its weight on the way.
way = used = 0.0
while used < energy:
    used, way = used + 100 * 1.0, way + 0.4 * 1.0
slope = brentq(lambda s: used - 6 * 9.80665 * s * way, 0, 100)
out["transport"] = {"perMetre": digits(used / way), "cost": digits(slope)}

# Copper loss over a stride, integrated over a million instants.
total = 0.0
for name, peak, swing in (("knee", 4, 0.5), ("hip", 3, 0.8), ("sideways", 3, 0.3)):
    torque = np.where(t < 0.6, peak * np.sin(np.pi * t / 0.6), swing)
    loss = np.mean(0.2 * (torque / 6 / 0.08) ** 2)
    out[name] = {"loss": digits(loss), "rms": digits(np.sqrt(np.mean((torque / 6) ** 2)))}
    total += 4 * loss
out["stride"] = {"copper": digits(total), "drag": digits(12 * 0.01 * 25)}

Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
