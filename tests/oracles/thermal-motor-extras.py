"""Losses and temperatures of motors by other means than the library's: switching of a bridge followed in time, a winding by finite differences, motors on one
plate by marching in time, one no-load point by a scan of its splits. Writes thermal-motor-extras.json. Run: python3 tests/oracles/thermal-motor-extras.py
"""
import json
from pathlib import Path

import numpy as np


def digits(x, n=7):
    return f"{x:#.{n}g}"


out = {}


# 1. Ripple of a two-level bridge: three legs against one triangle, phase voltages against the star point, mean square less square of the mean.
def ripple(supply, peak, angle, n=20000):
    carrier = np.abs((np.arange(n) + 0.5) / n * 2 - 1)
    want = peak * np.cos(angle - np.array([0, 2, 4]) * np.pi / 3)
    want = want - (want.max() + want.min()) / 2  # centred pulses
    legs = (0.5 + want[:, None] / supply > carrier[None, :]) * supply
    phases = legs - legs.mean(axis=0)
    mean = phases.mean(axis=1)
    return np.mean(phases**2, axis=1).sum() - (mean**2).sum()


angles = np.linspace(0, np.pi / 3, 241)[:-1]
for name, supply, peak in (("low", 24.0, 1.2), ("high", 24.0, 11.0)):
    each = np.array([ripple(supply, peak, a) for a in angles])
    still = max(ripple(supply, peak, a) for a in np.linspace(0, np.pi / 3, 25))
    # Eddy currents as a resistor across each phase: what it takes at a speed of 100 rad/s by rotation fixes it.
    ke, drag, speed = 0.08, 2e-5, 100.0
    phase_rms = ke * speed / np.sqrt(6)
    resistor = 3 * phase_rms**2 / (drag * speed**2)
    out[name] = {
        "turning": [digits(np.sqrt(each.mean() / 3), 4), digits(each.mean() / resistor, 4)],
        "still": [digits(np.sqrt(still / 3), 4), digits(still / resistor, 4)],
    }


# 2. Winding with uniform loss: finite differences in a layer cooled on one face, and in a round bundle.
def profile(power, n=4000):
    h = 1.0 / n
    r = (np.arange(n) + 0.5) * h
    # Flux through the outer face of each cell of what is released inside it; cooled at the outside, unit conductivity.
    area = np.arange(1, n + 1) * h if power == 1 else np.ones(n)
    inside = np.cumsum((r if power == 1 else np.ones(n)) * h)
    drop = inside / area * h
    drop[-1] /= 2
    T = np.append(np.cumsum(drop[::-1])[::-1], 0)[:n]
    weight = r if power == 1 else np.ones(n)
    return T[0] / ((T * weight).sum() / weight.sum())


out["spot"] = {"layer": digits(profile(0), 5), "roundBundle": digits(profile(1), 5)}


# 3. Two and three motors on one plate: each mounting face a store, marched in time until nothing moves.
def march(motors, R, air):
    n = len(motors)
    G = np.linalg.inv(np.array(R))
    T = np.full(n, air)
    for _ in range(400000):
        heat = []
        for (torque, ke, coefficient, r20, other, to_mount, can), t in zip(motors, T):
            k = ke * (1 + coefficient * (t - 20))
            lost20 = r20 * (torque / k) ** 2
            # Winding by iteration on its own resistance.
            w = t
            for _ in range(60):
                w = t + to_mount * lost20 * (234.5 + w) / 254.5
            lost = lost20 * (234.5 + w) / 254.5
            heat.append((lost + other - can * (t - air), w, lost))
        rate = np.array([q for q, _, _ in heat]) - G @ (T - air)
        T = T + rate * 0.5
        if np.abs(rate).max() < 1e-12:
            break
    return {
        "mounts": [digits(t) for t in T],
        "windings": [digits(w) for _, w, _ in heat],
        "losses": [digits(p) for _, _, p in heat],
    }


one = (0.3, 0.0955, -0.0011, 0.2, 0.3, 1.5, 0.03)
two = (0.22, 0.0955, -0.0011, 0.2, 0.0, 1.5, 0.03)
out["pair"] = march([one, two], [[6.0, 2.5], [2.5, 6.5]], 40.0)
out["alone"] = march([one], [[6.0]], 40.0)
out["three"] = march([one, two, (0.1, 0.12, -0.0012, 0.35, 0.1, 2.0, 0.0)], [[6, 2.5, 1.0], [2.5, 6.5, 1.5], [1.0, 1.5, 7.0]], 25.0)

# 4. One no-load point of 11.95 W at 2400 rpm: every split, at half and at twice the speed.
speed = 2400 * 2 * np.pi / 60
for name, factor in (("half", 0.5), ("twice", 2.0)):
    w = speed * factor
    all_splits = [share * 11.95 / speed * w + (1 - share) * 11.95 / speed**2 * w * w for share in np.linspace(0, 1, 1001)]
    out[name] = {"low": digits(min(all_splits)), "high": digits(max(all_splits)), "constant": digits(all_splits[-1])}

Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
