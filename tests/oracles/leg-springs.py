"""Springs beside the knee of the revised mudflat leg by hand: the pose from two circles, the knee from the balance of the lower link, the torque of the spring from the
slope of its energy, stresses and pins from their own equations. Reads nothing of the library.
Writes leg-springs.json. Run: python3 tests/oracles/leg-springs.py
"""
import json
from pathlib import Path

import numpy as np

G = 9.80665
UPPER, LOWER, HEIGHT = 0.165, 0.18, 0.323
MASS, LEGS, SHANK, CENTRE = 10.5, 4, 0.16, 0.09

# Pose: foot straight under the hip axis, knee in front.
knee = np.pi - np.arccos((UPPER**2 + LOWER**2 - HEIGHT**2) / (2 * UPPER * LOWER))
hip = -np.arccos((UPPER**2 + HEIGHT**2 - LOWER**2) / (2 * UPPER * HEIGHT))
place = lambda a, r: np.array([-r * np.sin(a), -r * np.cos(a)])
at_knee = place(hip, UPPER)
at_foot = at_knee + place(hip + knee, LOWER)
at_centre = at_knee + place(hip + knee, CENTRE)


def knee_torque(push):
    """Torque of the drive that balances the lower link: about +y a force (fx, fz) at (x, z) turns by z fx - x fz."""
    about = lambda p, f: (p[1] - at_knee[1]) * f[0] - (p[0] - at_knee[0]) * f[1]
    return -(about(at_foot, (0, push)) + about(at_centre, (0, -SHANK * G)))


def slope(energy, q, h=1e-4):
    return (8 * (energy(q + h) - energy(q - h)) - (energy(q + 2 * h) - energy(q - 2 * h))) / (12 * h)


STAND = MASS * G / LEGS
out = {"pose": {"hip": hip, "knee": knee}, "joint": knee_torque(STAND)}

# Torsion spring: music wire of 3 mm, coil of 26 mm, 9.5 coils, legs of 60 mm, free at 10 deg.
d, D, n, legs, free = 3e-3, 26e-3, 9.5, (0.06, 0.06), np.radians(10)
I = np.pi * d**4 / 64
rate = 206e9 * I / (np.pi * D * n + sum(legs) / 3)
strength = 2060e6 * 3**-0.163


def torsion(lowest, highest):
    energy = lambda q: rate * max(0.0, q - free) ** 2 / 2
    held = lambda push: knee_torque(push) + slope(energy, knee)
    c = D / d
    factor = (4 * c * c - c - 1) / (4 * c * (c - 1))
    most = rate * max(0.0, highest - free)
    coils = n + (highest - free) / (2 * np.pi)
    stress = lambda m: factor * m * (d / 2) / I
    return {
        "rate": rate,
        "loaded": held(STAND),
        "lifted": held(0),
        "stress": stress(most),
        "allowed": 0.7 * strength,
        "room": D * n / coils - d,
        "seat": most / 0.06 / (d * 0.04),
        "force": 2 * most / 0.06,
    }


# Extension spring: music wire of 2 mm, coil of 16 mm, 24 coils, 74 mm free, 10 N initial tension.
w, W, N, L0, F0, bend = 2e-3, 16e-3, 24, 0.074, 10.0, 4e-3
k = 81.5e9 * (np.pi * w**4 / 32) / (np.pi * W * N * (W / 2) ** 2)
tensile = 2060e6 * 2**-0.163
FIXED, MOVING = np.array([0.01, 0.09]), np.array([0.025, 0.015])  # forward and up of the knee, joint straight


def length(q):
    turn = np.array([[np.cos(q), np.sin(q)], [-np.sin(q), np.cos(q)]])
    return np.linalg.norm(turn @ MOVING - FIXED)


def extension(lowest, highest):
    energy = lambda q: F0 * (length(q) - L0) + k * (length(q) - L0) ** 2 / 2 if length(q) > L0 else 0.0
    lengths = [length(q) for q in np.linspace(lowest, highest, 400001)]
    pull = F0 + k * (max(lengths) - L0)
    c, hook, turn = W / w, W / w, 2 * bend / w
    wahl = (4 * c - 1) / (4 * c - 4) + 0.615 / c
    section, polar = np.pi * w**3 / 32, np.pi * w**3 / 16
    top = (4 * hook**2 - hook - 1) / (4 * hook * (hook - 1))
    pin, depth, arm = 8e-3, 22e-3, 5e-3
    # A rigid pin on a bed that pushes as it is displaced: unknown shift and tilt from balance of force and moment about the mouth.
    z = (np.arange(20000) + 0.5) / 20000 * depth
    A = np.array([[np.sum(np.ones_like(z)), np.sum(z)], [np.sum(z), np.sum(z * z)]]) * depth / len(z)
    shift, tilt = np.linalg.solve(A, np.array([pull, -pull * arm]))
    line = shift + tilt * z
    moment = max(abs(pull * (arm + x) - np.sum(np.where(z < x, line * (x - z), 0)) * depth / len(z)) for x in np.linspace(0, depth, 400))
    return {
        "rate": k,
        "loaded": knee_torque(STAND) + slope(energy, knee),
        "lifted": knee_torque(0) + slope(energy, knee),
        "longest": max(lengths),
        "shortest": min(lengths),
        "pull": pull,
        "body": wahl * pull * W / 2 / polar,
        "hook": top * pull * W / 2 / section + pull / (np.pi * w**2 / 4),
        "hookBend": (4 * turn - 1) / (4 * turn - 4) * pull * W / 2 / polar,
        "bodyAllowed": 0.45 * tensile,
        "pressure": 4 / np.pi * shift / pin,
        "bending": moment / (np.pi * pin**3 / 32),
        "surge": 0.5 * np.sqrt(k / (7850 * np.pi * w**2 / 4 * np.pi * W * N)) / 15,
    }


def cycled(low, high, share, ultimate):
    """Amplitude about no mean stress that does the same harm (Goodman), on the limit of a stress that rises from zero."""
    half = share / 2
    limit = half / (1 - half / ultimate)
    return (high - low) / 2 + (high + low) / 2 * limit / ultimate, limit


LOW, HIGH = np.radians(20), np.radians(135)
out["range"] = [LOW, HIGH]
out["torsion"] = torsion(LOW, HIGH)
out["extension"] = extension(LOW, HIGH)
demand, capacity = cycled(100e6, 400e6, 0.45 * strength, strength)
out["goodman"] = {"low": 100e6, "high": 400e6, "demand": demand, "capacity": capacity}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
