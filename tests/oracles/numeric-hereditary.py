"""Reference solutions of hereditary integrals and Volterra equations; writes numeric-hereditary.json (mpmath, 30 digits).

Run: python3 tests/oracles/numeric-hereditary.py
"""
import json
import os
import mpmath
from mpmath import mp, mpf

mp.dps = 30



def relaxation_of_power_creep(t, a, n):
    """Inverse of J(t) = 1 + a t^n by Laplace transform: R(s) = 1/(s (1 + a Gamma(n+1) s^-n)), so R(t) = E_n(-a Gamma(n+1) t^n)."""
    return mpmath.invertlaplace(lambda s: 1 / (s * (1 + a * mpmath.gamma(n + 1) * s ** -n)), t, method="talbot", degree=40)


times = [0.001, 0.1, 1, 10, 1000]
data = {
    "mpmath": mpmath.__version__,
    "powerCreep": {"a": 0.3, "n": 0.25, "relaxation": [[t, float(relaxation_of_power_creep(mpf(t), mpf("0.3"), mpf("0.25")))] for t in times]},
}
json.dump(data, open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "numeric-hereditary.json"), "w"), indent=1)
print(data)
