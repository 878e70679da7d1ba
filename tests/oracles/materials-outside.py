"""Independent values for formulas that are closed forms or approximations: each by another road than the formula's own.

Exact two-sided tolerance factor of a normal sample (numerical integration; the library has Howe's approximation).
Relaxation of a Maxwell ladder by integrating its differential equations.
Writes materials-outside.json beside this file.
"""
import json, os
import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq
from scipy.stats import chi2, norm

here = os.path.dirname(os.path.abspath(__file__))

def half_width(z, coverage):
    """R with Phi(z + R) - Phi(z - R) = coverage: half width that holds the share of a normal round a mean that is off by z."""
    return brentq(lambda r: norm.cdf(z + r) - norm.cdf(z - r) - coverage, 0, 20)

def exact_factor(n, coverage, confidence):
    """Factor k with P(share within mean +- k s >= coverage) = confidence; mean off by z sigma, z normal with 1/sqrt(n)."""
    def chance(k):
        f = lambda z: chi2.sf((n - 1) * half_width(z, coverage) ** 2 / k**2, n - 1) * np.sqrt(n / (2 * np.pi)) * np.exp(-n * z * z / 2)
        return 2 * quad(f, 0, 8 / np.sqrt(n), epsabs=1e-10)[0]
    return brentq(lambda k: chance(k) - confidence, 0.5, 60)

tolerance = [[n, p, g, exact_factor(n, p, g)] for n, p, g in ((5, .9, .95), (10, .9, .95), (20, .9, .95), (50, .9, .95), (10, .99, .95), (10, .9, .9))]

# Three Maxwell elements beside a spring, strain held at 1: each element's stress obeys s' = -s / tau.
springs, taus, last = [0.5, 0.3, 0.2], [2.0, 40.0, 900.0], 1.0
ladder = []
for t in (1.0, 30.0, 1000.0):
    sol = solve_ivp(lambda _, s: -s / np.array(taus), (0, t), springs, method='Radau', rtol=1e-11, atol=1e-14)
    ladder.append([t, last + float(sol.y[:, -1].sum())])
json.dump({'tolerance': tolerance, 'ladder': ladder}, open(os.path.join(here, 'materials-outside.json'), 'w'), indent=1)
print(tolerance, ladder)
