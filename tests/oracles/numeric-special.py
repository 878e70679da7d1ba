"""Reference values of special functions, computed with mpmath at 50 digits; writes numeric-special.json.

Every argument is an exact double, so that the only error compared is that of the function.
Run: python3 tests/oracles/numeric-special.py
"""
import json
import os
import random
import mpmath
import scipy.stats
from mpmath import mp, mpf

mp.dps = 50
random.seed(20)


def spread(lo, hi, n):
    """Doubles between lo and hi, even in the logarithm."""
    return [float(mpf(lo) * (mpf(hi) / mpf(lo)) ** (mpf(i) / (n - 1))) for i in range(n)]


def line(lo, hi, n):
    return [lo + (hi - lo) * i / (n - 1) for i in range(n)]


def rows(f, arguments):
    out = []
    for a in arguments:
        a = a if isinstance(a, (list, tuple)) else [a]
        v = f(*[mpf(x) for x in a])
        out.append([*a, float(mpmath.re(v))])
    return out


def wright_bessel_zero(n):
    return mpmath.besseljzero(1, int(n))


def ml(alpha, beta, z):
    """Series at high precision; it cancels for negative z, so the digits follow the largest term."""
    z = mpf(z)
    if z == 0:
        return mpmath.rgamma(beta)
    peak = abs(z) ** (1 / alpha)
    if peak < 300:
        with mpmath.workdps(60 + int(peak / 2.3)):
            total, k = mpf(0), 0
            while True:
                term = z ** k * mpmath.rgamma(alpha * k + beta)
                total += term
                k += 1
                if alpha * k + beta > 2 * peak + 10 and abs(term) < abs(total) * mpf(10) ** -40:
                    return +total
    if beta > alpha + mpf("0.7"):
        return (ml(alpha, beta - alpha, z) - mpmath.rgamma(beta - alpha)) / z
    # Inverse Laplace integral along the cut (Gorenflo, Mainardi), valid for alpha < 1 and beta < 1 + alpha; the trapezoidal rule in ln r
    # converges geometrically.
    assert alpha < mpf("0.81") and z < 0
    x, h, total = -z, mpf("0.05"), mpf(0)
    with mpmath.workdps(35):
        sb, sba, ca = mpmath.sin(mpmath.pi * beta), mpmath.sin(mpmath.pi * (beta - alpha)), mpmath.cos(mpmath.pi * alpha)
        for i in range(-5600, 100):
            v = i * h
            ra = mpmath.exp(alpha * v)
            total += mpmath.exp(-mpmath.exp(v) + (alpha - beta + 1) * v) * (ra * sb + x * sba) / (ra * ra + 2 * x * ra * ca + x * x)
    return total * h / mpmath.pi


P = spread("1e-300", "1e-5", 8) + spread("1e-4", "0.5", 10) + [0.5, 0.6, 0.75, 0.9, 0.975, 0.999, 1 - 2.0 ** -30]


def beta_series(a, b, x):
    """I_x(a, b) = x^a (1-x)^b / (a B(a,b)) 2F1(a+b, 1; a+1; x): every term is positive."""
    term, total, k = mpf(1), mpf(1), 0
    while term > total * mpf(10) ** -45:
        term *= x * (a + b + k) / (a + 1 + k)
        total += term
        k += 1
    return total * mpmath.exp(a * mpmath.log(x) + b * mpmath.log(1 - x) - mpmath.loggamma(a) - mpmath.loggamma(b) + mpmath.loggamma(a + b)) / a


def ibeta(a, b, x):
    a, b, x = mpf(a), mpf(b), mpf(x)
    return beta_series(a, b, x) if x <= (a + 1) / (a + b + 2) else 1 - beta_series(b, a, 1 - x)


def igamma_p(a, x):
    """P(a, x) = x^a e^-x / Gamma(a+1) sum x^k / ((a+1)...(a+k)): every term is positive."""
    a, x = mpf(a), mpf(x)
    term, total, k = mpf(1), mpf(1), 0
    while term > total * mpf(10) ** -mp.dps:
        k += 1
        term *= x / (a + k)
        total += term
    return total * mpmath.exp(a * mpmath.log(x) - x - mpmath.loggamma(a + 1))


def igamma_q(a, x):
    """The complement: enough digits for any value that a double can hold."""
    with mpmath.workdps(380):
        return 1 - igamma_p(a, x)


def normal_quantile(p):
    """Newton's iteration on the logarithm, from scipy's value."""
    x = mpf(float(scipy.stats.norm.ppf(float(p))))
    for _ in range(6):
        x -= (mpmath.log(mpmath.ncdf(x)) - mpmath.log(p)) * mpmath.ncdf(x) / mpmath.npdf(x)
    return x


def t_cdf(t, n):
    tail = ibeta(n / 2, mpf(1) / 2, n / (n + t * t)) / 2
    return tail if t < 0 else 1 - tail


def t_quantile(p, n):
    """Newton's iteration from scipy's value; three steps square its 12 digits beyond 50."""
    t = mpf(float(scipy.stats.t.ppf(float(p), float(n))))
    density = lambda t: (1 + t * t / n) ** (-(n + 1) / 2) * mpmath.exp(mpmath.loggamma((n + 1) / 2) - mpmath.loggamma(n / 2)) / mpmath.sqrt(n * mpmath.pi)
    for _ in range(3):
        t -= (t_cdf(t, n) - p) / density(t)
    return t


def chi_quantile(p, n):
    x = mpf(float(scipy.stats.chi2.ppf(float(p), float(n))))
    for _ in range(3):
        density = mpmath.exp((n / 2 - 1) * mpmath.log(x / 2) - x / 2 - mpmath.loggamma(n / 2)) / 2
        x -= (igamma_p(n / 2, x / 2) - p) / density
    return x


def ml_cases():
    r = random.Random(7)
    return [(round(r.uniform(0.05, 0.8), 3), round(r.choice([r.uniform(0, 1), r.uniform(1, 5)]), 3), -round(10 ** r.uniform(-1, 3), 3)) for _ in range(40)] + [
        (round(r.uniform(0.8, 1), 3), round(r.uniform(0.8, 3), 3), -round(10 ** r.uniform(-1, 1.3), 3)) for _ in range(30)]


x_any = [0.0] + spread("1e-8", "5", 24) + [1.0, 3.0, 2.999, 5.9]
gammas = [(a, x) for a in (0.1, 0.5, 1, 2.5, 10, 40.5, 500, 20000.5) for x in (0.01 * a, 0.5 * a, 0.9 * a, a, 1.1 * a, 2 * a + 1)]
betas = [(x, a, b) for a, b in ((0.5, 0.5), (2, 0.5), (5, 3), (50, 0.5), (40.5, 60.25), (2000, 3000), (1e5, 0.5), (0.01, 3))
         for x in (0.0001, 0.1, 0.4, 0.41, 0.5, 0.9, 0.999)]
betas = [r for r in betas if ibeta(r[1], r[2], r[0]) > mpf(10) ** -250]

data = {
    "erf": rows(mpmath.erf, x_any + [-v for v in x_any]),
    "erfc": rows(mpmath.erfc, x_any + [-2.0, -0.3] + line(6.0, 26.0, 9)),
    "erfcScaled": rows(lambda x: mpmath.exp(x * x) * mpmath.erfc(x), x_any + [-2.0, -0.3, 30.0, 1e4, 1e8]),
    "gamma": rows(mpmath.gamma, [0.001, 0.1, 0.5, 1.0, 1.5, 2.0, 3.3, 5.0, 10.5, 19.9, 20.1, 50.25, 100.5, 170.0, 171.5, -0.5, -1.5, -3.7, -10.1, -20.3]),
    "lnGamma": rows(mpmath.loggamma, [1e-8, 0.01, 0.3, 0.5, 0.9, 0.999, 0.9999999, 1.0000001, 1.01, 1.3, 1.5, 1.9, 1.999999, 2.000001, 2.2, 2.6, 4.5, 10.9, 11.1, 30.0, 1e3, 1e6, 1e12]),
    "regularisedGammaP": rows(igamma_p, gammas),
    "regularisedGammaQ": rows(igamma_q, gammas),
    "lnBeta": rows(lambda a, b: mpmath.loggamma(a) + mpmath.loggamma(b) - mpmath.loggamma(a + b),
                   [(0.1, 0.2), (1.5, 3.0), (5.0, 8.0), (0.5, 1e6), (3.0, 25.0), (12.0, 30.0), (1e4, 1e5)]),
    "regularisedBeta": rows(lambda x, a, b: ibeta(a, b, x), betas),
    "besselJ0": rows(lambda x: mpmath.besselj(0, x), line(0.0, 8.0, 17) + spread("8.001", "1000", 20) + [-3.0]),
    "besselJ1": rows(lambda x: mpmath.besselj(1, x), line(0.0, 8.0, 17) + spread("8.001", "1000", 20) + [-3.0, -12.0]),
    "besselJ1Zero": rows(wright_bessel_zero, [1, 2, 3, 5, 10, 30, 59, 60, 61, 62, 100, 1000, 5000]),
    "besselI0Scaled": rows(lambda x: mpmath.exp(-abs(x)) * mpmath.besseli(0, x), line(0.0, 8.0, 12) + spread("8.001", "1e6", 12) + [-2.0]),
    "besselI1Scaled": rows(lambda x: mpmath.exp(-abs(x)) * mpmath.besseli(1, x), line(0.0, 8.0, 12) + spread("8.001", "1e6", 12) + [-2.0, 1e-9]),
    "besselK0Scaled": rows(lambda x: mpmath.exp(x) * mpmath.besselk(0, x), spread("1e-12", "2", 15) + spread("2.001", "1e6", 12)),
    "besselK1Scaled": rows(lambda x: mpmath.exp(x) * mpmath.besselk(1, x), spread("1e-12", "2", 15) + spread("2.001", "1e6", 12)),
    "mittagLeffler": rows(ml, [(a, b, z) for a in (0.1, 0.25, 0.5, 0.75, 0.9, 1.0) for b in (a, 1.0, 1.5, 2.0) for z in (-3.0, -1.2, -0.99, -0.3, 0.2, 0.9, 1.1)]
                          + [(0.3, 1.0, -20.0), (0.3, 1.0, -1e4), (0.5, 1.0, -50.0), (0.5, 0.5, -100.0), (0.5, 1.0, -1e6), (0.8, 1.0, -10.0), (0.8, 1.0, -1e3), (0.8, 0.8, -50.0),
                             (0.5, 1.0, 5.0), (0.75, 1.25, 10.0), (0.2, 1.0, 1.9), (0.9, 1.0, 20.0), (0.9, 1.0, -10.0), (0.95, 1.0, -5.0), (0.95, 0.95, -5.0), (0.99, 1.0, -5.0), (1.0, 1.5, -8.0),
                             (0.5, 1.0, -1.0), (0.5, 0.0, -2.0), (0.5, 1.0, 2.0), (0.05, 1.0, -1.1), (0.5, 0.500001, -30.0), (0.5, 1.0005, -30.0)] + ml_cases()),
    "normalCdf": rows(mpmath.ncdf, line(-37.0, -8.0, 6) + line(-6.0, 6.0, 13)),
    "normalQuantile": rows(normal_quantile, P),
    "studentTCdf": rows(t_cdf, [(t, n) for t in (-40.0, -3.0, -0.5, 0.25, 2.0) for n in (1, 2, 5.5, 30, 1000)]),
    "studentTQuantile": rows(t_quantile, [(p, n) for p in (1e-9, 0.005, 0.025, 0.3, 0.499, 0.4999999, 0.6, 0.95, 0.975, 0.9995) for n in (0.3, 0.8, 1, 2, 2.5, 4.5, 7, 10, 120, 1e4)]),
    "chiSquareCdf": rows(lambda x, n: igamma_p(n / 2, x / 2), [(0.5, 1), (3.84, 1), (12.0, 5), (90.0, 100), (1e-3, 2)]),
    "chiSquareQuantile": rows(chi_quantile, [(p, n) for p in (1e-12, 1e-6, 0.025, 0.3, 0.5, 0.95, 0.999, 0.9999999) for n in (0.3, 1, 2, 3, 7, 10.5, 200, 1e4)]),
}
path = os.path.join(os.path.dirname(os.path.abspath(__file__)), "numeric-special.json")
text = ",\n".join(f'  "{k}": [\n' + ",\n".join("    " + json.dumps(r) for r in v) + "\n  ]" for k, v in data.items())
open(path, "w").write("{\n" + f'  "mpmath": "{mpmath.__version__}",\n' + text + "\n}\n")
print(sum(len(v) for v in data.values()), "values")
