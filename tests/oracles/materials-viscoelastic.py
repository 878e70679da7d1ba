"""Relaxation and creep converted with mpmath 1.3 (50 digits); writes materials-viscoelastic.json beside it.

Findley compliance J = (1 + c t^n)/E inverted to the relaxation modulus by numerical Laplace inversion (Talbot), not by the Mittag-Leffler
function the library uses. Prony series converted by the roots of the rational transform (polyroots).
"""
import json, os, random
from mpmath import mp, mpf, gamma, invertlaplace, polyroots, exp

mp.dps = 50
random.seed(20251125)

findley = []
for c, n, t in [(0.12, 0.22, 1), (0.12, 0.22, 1000), (0.6, 0.2, 8766), (0.045, 0.22, 1e5), (2.0, 0.5, 3), (0.3, 0.05, 100), (0.25, 0.8, 10)]:
    C, N = mpf(c), mpf(n)
    transform = lambda s: 1 / (s * (1 + C * gamma(1 + N) * s ** -N))  # s^2 E(s) J(s) = 1, E = 1
    findley.append(dict(c=c, n=n, t=t, kept=float(invertlaplace(transform, mpf(t), method="talbot", degree=60))))

def poly_mul(a, b):
    out = [mpf(0)] * (len(a) + len(b) - 1)
    for i, x in enumerate(a):
        for j, y in enumerate(b):
            out[i + j] += x * y
    return out

def poly_add(a, b):
    n = max(len(a), len(b))
    a = [mpf(0)] * (n - len(a)) + a
    b = [mpf(0)] * (n - len(b)) + b
    return [x + y for x, y in zip(a, b)]

def convert(longterm, terms):
    """sE(s) = (longterm prod(1+s tau) + sum E s tau prod others)/prod(1+s tau): retardation times are minus one over its roots."""
    factors = [[tau, mpf(1)] for _, tau in terms]
    num = [mpf(longterm)]
    for f in factors:
        num = poly_mul(num, f)
    for i, (e, tau) in enumerate(terms):
        part = [e * tau, mpf(0)]
        for j, f in enumerate(factors):
            if j != i:
                part = poly_mul(part, f)
        num = poly_add(num, part)
    if longterm == 0:
        num = num[:-1]  # the root at zero is the flow
    roots = polyroots(num, maxsteps=500, extraprec=400) if len(num) > 1 else []
    slope = lambda s: sum(e * tau / (1 + s * tau) ** 2 for e, tau in terms)
    kelvin = sorted([(float(-1 / r.real), float(1 / (slope(r.real) * -r.real))) for r in roots])
    out = dict(instant=float(1 / (longterm + sum(e for e, _ in terms))), terms=[dict(time=a, compliance=b) for a, b in kelvin])
    if longterm == 0:
        out["viscosity"] = float(sum(e * tau for e, tau in terms))
    return out

prony = []
for count, longterm in [(1, 1.0), (2, 0.5), (3, 2.0), (5, 1.0), (3, 0.0), (1, 0.0), (8, 0.3)]:
    terms = [(mpf(repr(round(random.uniform(0.1, 3), 6))), mpf(repr(float(f"{10 ** random.uniform(-2, 7):.6g}")))) for _ in range(count)]
    prony.append(dict(longTerm=longterm, terms=[dict(modulus=float(e), time=float(t)) for e, t in terms], compliance=convert(mpf(longterm), terms)))

with open(os.path.join(os.path.dirname(__file__), "materials-viscoelastic.json"), "w") as f:
    json.dump(dict(findley=findley, prony=prony), f, indent=1)
    f.write("\n")
