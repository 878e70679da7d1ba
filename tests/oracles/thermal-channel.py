"""Heat transfer and pressure drop of air entering the gap between two plates of one temperature.

The boundary-layer equations of a laminar entrance flow (uniform velocity and temperature at the inlet), marched along the channel by implicit
finite differences; pressure from mass conservation. Independent of any correlation. Writes thermal-channel.json: mean Nusselt number on the hydraulic
diameter (logarithmic mean difference), and the pressure drop over the dynamic pressure, at x* = x/(Dh Re Pr).

Run: python3 thermal-channel.py   (numpy, scipy)
"""
import json
from pathlib import Path

import numpy as np
from scipy.linalg import solve_banded

PR = 0.72


def march(ny, nx, stars):
    # Half gap from the wall (y = 0) to the middle (y = 1), cells crowded at the wall; x in units of half gap times Re on it.
    s = np.linspace(0, 1, ny + 1)
    y = s**1.6
    h = np.diff(y)
    u = np.ones(ny + 1)
    u[0] = 0
    theta = np.ones(ny + 1)
    theta[0] = 0
    w = np.zeros(ny + 1)
    w[:-1] += h / 2
    w[1:] += h / 2
    # The start carries one unit of volume.
    u[1:] /= w @ u
    p = 0.0
    # Dh = 4 half gaps, Re on Dh = 4 Re: x* = x / (4 a * 4 Re_a * Pr) = X / (16 Pr)
    xs = np.array(stars) * 16 * PR
    grid = np.concatenate([[0], np.geomspace(xs[0] * 1e-6, xs[-1], nx)])
    grid = np.unique(np.concatenate([grid, xs]))
    out = {}

    def operator(u, v, dx, a):
        lo, di, up = np.zeros(ny + 1), np.ones(ny + 1), np.zeros(ny + 1)
        for j in range(1, ny):
            hm, hp = h[j - 1], h[j]
            dl, dr = 2 * a / (hm * (hm + hp)), 2 * a / (hp * (hm + hp))
            cl, cr = -v[j] / (hm + hp), v[j] / (hm + hp)
            lo[j], up[j] = -dl + cl, -dr + cr
            di[j] = u[j] / dx + dl + dr
        # symmetry in the middle: a mirrored cell
        lo[ny] = -2 * a / h[-1] ** 2
        di[ny] = u[ny] / dx + 2 * a / h[-1] ** 2
        return lo, di, up

    def solve(bands, rhs):
        lo, di, up = bands
        ab = np.zeros((3, ny + 1))
        ab[0, 1:] = up[:-1]
        ab[1] = di
        ab[2, :-1] = lo[1:]
        return solve_banded((1, 1), ab, rhs)

    v = np.zeros(ny + 1)
    for x0, x1 in zip(grid[:-1], grid[1:]):
        dx = x1 - x0
        old = u.copy()
        for _ in range(4):
            bands = operator(np.maximum(u, 1e-9), v, dx, 1.0)
            rhs = old * np.maximum(u, 1e-9) / dx
            rhs[0] = 0
            ones = np.ones(ny + 1)
            ones[0] = 0
            base, press = solve(bands, rhs), solve(bands, ones)
            g = (1 - w @ base) / (w @ press)
            u = base + g * press
            dudx = (u - old) / dx
            v = -np.concatenate([[0], np.cumsum((dudx[1:] + dudx[:-1]) / 2 * h)])
        p += g * dx
        bands = operator(np.maximum(u, 1e-9), v, dx, 1 / PR)
        rhs = theta * np.maximum(u, 1e-9) / dx
        rhs[0] = 0
        theta = solve(bands, rhs)
        for star, x in zip(stars, xs):
            if x1 == x:
                bulk = w @ (u * theta)
                # heat taken up: 1 - bulk = 1 - exp(-4 Nu x*)
                out[star] = {'nusselt': -np.log(bulk) / (4 * star), 'pressure': 2 * p}
    return out


stars = [0.0005, 0.001, 0.003, 0.01, 0.03, 0.1, 0.3]
table = sorted(set(stars) | set(np.geomspace(3e-4, 20, 40)))
coarse, fine = march(100, 2000, table), march(200, 4000, table)
rows = []
for s in stars:
    f, c = fine[s]['nusselt'], coarse[s]['nusselt']
    rows.append({'xStar': s, 'nusselt': round(float(2 * f - c), 3), 'meshChange': round(float(abs(f - c)), 4), 'pressureOverDynamic': round(float(fine[s]['pressure']), 4)})
    print(rows[-1])

# Plate-fin sinks in a stream of 2 m/s with the marched flow itself: the gap speed that the dynamic pressure of the stream drives, then the heat taken up.
# Air of a film at 327 K.
K, NU, U = 0.02764, 1.835e-5, 2.0
x = np.log(np.array(table))
nusselt = np.array([2 * fine[s]['nusselt'] - coarse[s]['nusselt'] for s in table])
pressure = np.array([fine[s]['pressure'] for s in table])
sinks = []
for fins in (4, 8, 12, 20, 30):
    width = height = 0.042
    length, thickness, metal = 0.012, 0.001, 167.0
    gap = (width - fins * thickness) / (fins - 1)
    dh = 2 * gap
    star = lambda u: height / (dh * (u * dh / NU) * PR)
    at = lambda u, values: np.interp(np.log(star(u)), x, values)
    low, high = 1e-4, U
    for _ in range(80):
        u = (low + high) / 2
        if u * u * (1 + at(u, pressure)) > U * U:
            high = u
        else:
            low = u
    h = at(u, nusselt) * K / dh
    fin = length + thickness / 2
    m = np.sqrt(2 * h / (metal * thickness))
    flow = K * PR / NU * u * gap * length
    through = flow * (1 - np.exp(-h * height * (2 * fin * np.tanh(m * fin) / (m * fin) + gap) / flow))
    ho = 0.664 * np.sqrt(U * height / NU) * PR ** (1 / 3) * K / height
    mo = np.sqrt(ho / (metal * thickness))
    sinks.append({'fins': fins, 'conductance': round(float((fins - 1) * through + 2 * height * ho * np.tanh(mo * fin) / mo), 5)})
print(sinks)
Path(__file__).with_suffix('.json').write_text(json.dumps({'prandtl': PR, 'rows': rows, 'sinks': sinks}, indent=1) + '\n')
