"""Reference values for disc spreading and for walls in time, by scipy, written apart from the library.

Rerun: python3 tests/oracles/thermal-spreading.py > tests/oracles/thermal-spreading.json
"""
import json
import numpy as np
from scipy.optimize import brentq
from scipy.special import j0, j1, jn_zeros

zeros = jn_zeros(1, 60000)


def disc(e, tau, biot):
    """Mean and centre of an isoflux disc; the slow tail of the centre is summed by averaging partial sums."""
    t = np.tanh(zeros * tau)
    phi = (t + zeros / biot) / (1 + zeros / biot * t)
    mean = 4 / (np.sqrt(np.pi) * e) * np.sum(j1(zeros * e) ** 2 * phi / (zeros**3 * j0(zeros) ** 2))
    partial = np.cumsum(2 / np.sqrt(np.pi) * j1(zeros * e) * phi / (zeros**2 * j0(zeros) ** 2))
    period = max(1, round(2 / e))
    return float(mean), float(np.mean(partial[-50 * period :]))


def wall(biot, fourier):
    """Exact series of a plane wall, 200 terms: middle and surface."""
    z = [brentq(lambda x: x * np.sin(x) - biot * np.cos(x), n * np.pi + 1e-12, n * np.pi + np.pi / 2, xtol=1e-15) for n in range(200)]
    c = [4 * np.sin(x) / (2 * x + np.sin(2 * x)) * np.exp(-x * x * fourier) for x in z]
    return float(np.sum(c)), float(np.sum(np.array(c) * np.cos(z)))


discs = []
for e in (0.01, 0.1, 0.3, 0.5, 0.7):
    for tau in (0.05, 0.2, 1.0):
        for biot in (0.01, 1.0, 100.0):
            mean, centre = disc(e, tau, biot)
            discs.append(dict(sourceRatio=e, thicknessRatio=tau, biot=biot, mean=mean, centre=centre))
walls = []
for biot in (0.1, 1.0, 10.0):
    for fourier in (0.05, 0.2, 0.5, 1.0, 2.0):
        middle, surface = wall(biot, fourier)
        walls.append(dict(biot=biot, fourier=fourier, middle=middle, surface=surface))
print(json.dumps(dict(discs=discs, walls=walls), indent=1))
