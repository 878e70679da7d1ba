"""Layer stresses, warm bushings and water uptake by another road; writes materials-parts.json. numpy 2, scipy 1.17, mpmath 1.3.

Layer stress by rotating the whole tensor and numpy's eigenvalues; the held bushing by solving its equilibrium equation as a boundary value
problem (scipy solve_bvp); uptake by the error-function series of the diffusion equation (mpmath), not the cosine series of the library.
"""
import json, os
import numpy as np
from mpmath import mp, mpf, sqrt, pi, erfc, exp, findroot
from scipy.integrate import solve_bvp

mp.dps = 30
out = {}

rng = np.random.default_rng(7)
rows = []
for n in ([0, 0, 1], [1, 0, 0], [1, 1, 0], [0.3, -0.7, 0.5], [-0.2, 0.1, 2.0]):
    a = np.round(rng.uniform(-40, 40, (3, 3)), 3)
    s = np.round((a + a.T) / 2, 3)
    n = np.array(n, float)
    u = n / np.linalg.norm(n)
    q, _ = np.linalg.qr(np.column_stack([u, rng.normal(size=(3, 2))]))
    r = q.T @ s @ q
    eig = np.linalg.eigvalsh(r[1:, 1:])
    rows.append(dict(stress=dict(xx=s[0, 0], yy=s[1, 1], zz=s[2, 2], xy=s[0, 1], yz=s[1, 2], zx=s[0, 2]), build=list(n),
                     normal=r[0, 0], shear=float(np.hypot(r[0, 1], r[0, 2])), largest=eig[1], smallest=eig[0]))
out["layers"] = rows

def ring(ri, ro, nu, free, housing):
    """u'' + u'/r - u/r^2 = 0 for the elastic displacement plus free strain; plane stress; sigma_r(ri) = 0, u(ro) = housing ro."""
    fun = lambda r, y: np.vstack([y[1], -y[1] / r + y[0] / r ** 2])
    bc = lambda a, b: np.array([(a[1] - free) + nu * (a[0] / ri - free), b[0] - housing * ro])
    r = np.linspace(ri, ro, 400)
    sol = solve_bvp(fun, bc, r, np.vstack([free * r, np.full_like(r, free)]), tol=1e-10, max_nodes=200000)
    assert sol.success
    return 2 * float(sol.y[0, 0])

out["bushing"] = [dict(bore=b, outer=o, nu=nu, free=f, housing=h, change=ring(b / 2, o / 2, nu, f, h))
                  for b, o, nu, f, h in ((10.1, 14, 0.4, 0.005, 0.0), (6.05, 12, 0.38, 0.012, 0.001), (20.2, 23, 0.4, 0.003, 0.0005))]

ierfc = lambda x: exp(-x * x) / sqrt(pi) - x * erfc(x)
def uptake(F):
    F = mpf(F)
    s = 1 / sqrt(pi) + 2 * sum((-1) ** n * ierfc(n / (2 * sqrt(F))) for n in range(1, 60))
    return 4 * sqrt(F) * s
out["uptake"] = [dict(fourier=f, share=float(uptake(f))) for f in (0.0001, 0.005, 0.0079, 0.0081, 0.03, 0.049, 0.2, 0.5)]
out["halfTime"] = float(findroot(lambda F: uptake(F) - 0.5, 0.049))
out["ninetyTime"] = float(findroot(lambda F: uptake(F) - mpf("0.9"), 0.2))

with open(os.path.join(os.path.dirname(__file__), "materials-parts.json"), "w") as f:
    json.dump(out, f, indent=1)
    f.write("\n")
