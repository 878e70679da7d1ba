"""Fits of creep and relaxation logs with scipy 1.17 (curve_fit, nnls) and numpy; writes materials-fit.json with the noisy logs and what scipy finds."""
import json, os
import numpy as np
from scipy.optimize import curve_fit, nnls
from scipy.stats import t as student

rng = np.random.default_rng(20251125)
out = {}
times = np.array([60, 180, 600, 1800, 3600, 7200, 18000, 43200, 86400, 259200, 604800], float)

def report(f, x, strain, start):
    log = lambda x, *p: np.log(f(x, *p))
    p, cov = curve_fit(log, x, np.log(strain), p0=start, xtol=1e-14, ftol=1e-14, gtol=1e-14, maxfev=100000)
    return p, np.sqrt(np.diag(cov)), student.ppf(0.975, len(strain) - len(p))

findley = lambda x, lnE, lnc, n: x[1] / np.exp(lnE) * (1 + np.exp(lnc) * (x[0] / 3600) ** n)
x = np.array([times, np.full_like(times, 8e6)])
strain = findley(x, np.log(2.1e9), np.log(0.12), 0.22) * np.exp(rng.normal(0, 0.004, len(times)))
strain = np.round(strain, 9)
p, se, q = report(findley, x, strain, (np.log(2e9), np.log(0.1), 0.2))
out["findley"] = dict(time=list(times), stress=8e6, strain=list(strain), modulus=float(np.exp(p[0])), coefficient=float(np.exp(p[1])), exponent=float(p[2]),
                      low=[float(np.exp(p[0] - q * se[0])), float(np.exp(p[1] - q * se[1])), float(p[2] - q * se[2])],
                      high=[float(np.exp(p[0] + q * se[0])), float(np.exp(p[1] + q * se[1])), float(p[2] + q * se[2])])

norton = lambda x, lne, m, k: np.exp(lne) * (x[1] / 15e6) ** m * (x[0] / 3600) ** k
t3 = np.tile(times, 3)
s3 = np.repeat([5e6, 10e6, 15e6], len(times))
x = np.array([t3, s3])
strain = np.round(norton(x, np.log(0.0012), 1.6, 0.28) * np.exp(rng.normal(0, 0.02, len(t3))), 10)
p, se, q = report(norton, x, strain, (np.log(0.001), 1.5, 0.3))
out["norton"] = dict(time=list(t3), stress=list(s3), strain=list(strain), referenceStrain=float(np.exp(p[0])), stressExponent=float(p[1]), timeExponent=float(p[2]))

sinh = lambda x, a, b, c, d, n: np.exp(a) * np.sinh(x[1] / np.exp(b)) + np.exp(c) * (x[0] / 3600) ** n * np.sinh(x[1] / np.exp(d))
s4 = np.repeat([5e6, 10e6, 16e6, 24e6], len(times))
x = np.array([np.tile(times, 4), s4])
true = (np.log(0.01), np.log(20e6), np.log(0.001), np.log(15e6), 0.2)
out["sinh"] = dict(time=list(x[0]), stress=list(s4), strain=list(sinh(x, *true)), elasticStrain=0.01, elasticStress=20e6, creepStrain=0.001, creepStress=15e6, exponent=0.2)

tr = np.logspace(0, 6, 31)
modulus = 0.6e9 + 0.5e9 * np.exp(-tr / 20) + 0.4e9 * np.exp(-tr / 3e3) + 0.3e9 * np.exp(-tr / 2e5)
modulus = np.round(modulus * np.exp(rng.normal(0, 0.003, len(tr))), 0)
tau = 10 ** (6 * (np.arange(6) + 0.5) / 6)
A = np.column_stack([np.exp(-tr[:, None] / tau), np.ones(len(tr))]) / modulus[:, None]
m, rest = nnls(A, np.ones(len(tr)), maxiter=10000)
out["relaxation"] = dict(time=list(tr), modulus=list(modulus), tau=list(tau), moduli=list(m[:-1]), longTerm=float(m[-1]), scatter=float(rest / np.sqrt(len(tr))))

T = np.array([303.15, 313.15, 318.15])
lna = np.round(140e3 / 8.31446261815324 * (1 / T - 1 / 296.15) + rng.normal(0, 0.05, 3), 6)
X = (1 / T - 1 / 296.15) / 8.31446261815324
E, res, *_ = np.linalg.lstsq(X[:, None], lna, rcond=None)
half = student.ppf(0.975, 2) * np.sqrt(res[0] / 2 / (X @ X))
out["activation"] = dict(temperature=list(T), shift=list(np.exp(lna)), energy=float(E[0]), half=float(half))

with open(os.path.join(os.path.dirname(__file__), "materials-fit.json"), "w") as f:
    json.dump(out, f, indent=1)
    f.write("\n")
