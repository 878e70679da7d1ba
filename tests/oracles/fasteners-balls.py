"""Force on the worst ball of a deep-groove bearing, and pressure of a ring tilted in its seat, by sums over balls and cells.

Nothing of the library is used: rings are moved until the contact forces (approach to the power 3/2) balance the load, averaged over the positions of the
balls; the seat is a row of springs. Writes fasteners-balls.json beside this file. Run: python3 tests/oracles/fasteners-balls.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq

N = 400_000
psi = (np.arange(N) + 0.5) * 2 * np.pi / N


def digits(x, n=7):
    return f"{x:#.{n}g}"


def radial(load, balls, angle):
    """Balls pressed by a radial shift of the ring, along a contact line at the angle; only those on the loaded side."""
    forces = lambda shift: np.maximum(0, shift * np.cos(psi) * np.cos(angle)) ** 1.5
    shift = brentq(lambda d: balls * np.mean(forces(d) * np.cos(psi)) * np.cos(angle) - load, 0, 1e3)
    return forces(shift).max()


def axial(load, balls, angle):
    return brentq(lambda q: balls * q * np.sin(angle) - load, 0, 1e6)


def tilted(moment, balls, pitch, angle):
    """Balls pressed by a tilt of the ring, half of them on one flank of the groove and half on the other."""
    forces = lambda tilt: (tilt * np.abs(np.cos(psi)) * np.sin(angle)) ** 1.5
    about = lambda tilt: balls * np.mean(forces(tilt) * np.sin(angle) * np.abs(np.cos(psi))) * pitch / 2
    return forces(brentq(lambda t: about(t) - moment, 0, 1e6)).max()


def seat(force, moment, diameter, length, cells=200_000):
    """Rigid ring on springs along its seat: shift and tilt from force and moment."""
    x = (np.arange(cells) + 0.5) / cells * length - length / 2
    d = length / cells
    shift, tilt = np.linalg.solve([[d * cells, np.sum(x) * d], [np.sum(x) * d, np.sum(x * x) * d]], [force / diameter, moment / diameter])
    return {"average": force / diameter / length, "peak": shift + tilt * length / 2, "end": shift - tilt * length / 2}


load = {"load": 150, "thrust": 2, "moment": 0.9, "balls": 8, "pitch": 9.5e-3, "angle": 0.2}
parts = [radial(150, 8, 0.2), axial(2, 8, 0.2), tilted(0.9, 8, 9.5e-3, 0.2)]
# The radial load alone that loads a ball as much: forces of a radial load are in proportion to it.
out = {
    "ball": {
        "radial": digits(parts[0], 3),
        "axial": digits(parts[1]),
        "moment": digits(parts[2]),
        "sum": digits(sum(parts), 5),
        "equivalent": digits(150 * sum(parts) / parts[0], 4),
    },
    "seat": {k: digits(v) for k, v in seat(150, 0.9, 13e-3, 5e-3).items()},
}
Path(__file__).with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
print(json.dumps(out, indent=1))
