"""Single lap joint of two equal parts: two rows of beam elements joined by shear and peel springs (finite elements, scipy sparse solver), loaded at
the ends of the lap with tension, moment and shear force. The moment at the end of the lap comes from the bent shape of free parts and lap as a
beam-column, found by numerical integration (solve_bvp). Force per width throughout.

Writes fasteners-peel.json. Run: python3 tests/oracles/fasteners-peel.py
"""
import json
from pathlib import Path

import numpy as np
from scipy.integrate import solve_bvp
from scipy.sparse import lil_matrix
from scipy.sparse.linalg import spsolve


def edge_moment(P, D, t, c, free):
    """Moment and shear force at the end of the lap, from the deflection y of the middle line off the line of load."""

    def slope(x, y):
        # Free part on [0, 1] (length free), half lap on [0, 1] (length c, from its end to its middle), both run together.
        return np.vstack([y[1] * free, P / D * y[0] * free, y[3] * c, P / (8 * D) * y[2] * c])

    def ends(a, b):
        # Hinge; in the middle of the lap no deflection; at the end of the lap the middle line steps by half a thickness, the slope does not.
        return np.array([a[0], b[2], b[0] - a[2] - t / 2, b[1] - a[3]])

    x = np.linspace(0, 1, 400)
    result = solve_bvp(slope, ends, x, np.zeros((4, x.size)), tol=1e-8, max_nodes=200000)
    assert result.success, result.message
    return P * result.sol(1.0)[0], P * result.sol(1.0)[1]


def lap(P, t, E, nu, overlap, eta, Ea, G, free, n=1500):
    c = overlap / 2
    Ep = E / (1 - nu**2)
    D = Ep * t**3 / 12
    M0, V0 = edge_moment(P, D, t, c, free)
    h = overlap / n
    dof = lambda part, node, k: (part * (n + 1) + node) * 3 + k
    K = lil_matrix((6 * (n + 1), 6 * (n + 1)))
    bend = D / h**3 * np.array([[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]])
    for part in (0, 1):
        for i in range(n):
            a, b = dof(part, i, 0), dof(part, i + 1, 0)
            k = Ep * t / h
            K[a, a] += k
            K[b, b] += k
            K[a, b] -= k
            K[b, a] -= k
            places = [dof(part, i, 1), dof(part, i, 2), dof(part, i + 1, 1), dof(part, i + 1, 2)]
            for r in range(4):
                for q in range(4):
                    K[places[r], places[q]] += bend[r, q]
    for i in range(n + 1):
        share = h if 0 < i < n else h / 2
        # Part 0 lies above: its lower face moves by u − (t/2) w', the upper face of part 1 by u + (t/2) w'.
        slip = [(dof(0, i, 0), 1), (dof(0, i, 2), t / 2), (dof(1, i, 0), -1), (dof(1, i, 2), t / 2)]
        open_ = [(dof(0, i, 1), 1), (dof(1, i, 1), -1)]
        for pairs, stiffness in ((slip, G * share / eta), (open_, Ea * share / eta)):
            for r, fr in pairs:
                for q, fq in pairs:
                    K[r, q] += stiffness * fr * fq
    F = np.zeros(6 * (n + 1))
    # Part 1 is pulled at the right, part 0 at the left; the moments bend the lap so that its ends open.
    F[dof(1, n, 0)] = P
    F[dof(0, 0, 0)] = -P
    F[dof(1, n, 2)] = -M0
    F[dof(0, 0, 2)] = -M0
    V = (P * t - 2 * M0) / overlap  # what balances the couple of the two pulls
    F[dof(1, n, 1)] = -V
    F[dof(0, 0, 1)] = V
    middle = n // 2
    for d in (dof(0, middle, 0), dof(0, middle, 1), dof(0, middle, 2)):
        K[d, d] += 1e3 * Ep * t
    u = spsolve(K.tocsc(), F)
    tau = lambda i: G / eta * (u[dof(0, i, 0)] + t / 2 * u[dof(0, i, 2)] - u[dof(1, i, 0)] + t / 2 * u[dof(1, i, 2)])
    peel = lambda i: Ea / eta * (u[dof(0, i, 1)] - u[dof(1, i, 1)])
    return dict(
        force=P, thickness=t, modulus=E, poisson=nu, overlap=overlap, bond=eta, adhesive=Ea, shear=G, free=free,
        momentFactor=float(2 * M0 / (P * t)), edgeShearForce=float(V0), balance=float(V),
        shearEnds=[float(abs(tau(0))), float(abs(tau(n)))], peelEnds=[float(peel(0)), float(peel(n))],
    )


rows = [
    lap(force, 0.003, E, 0.35, overlap, 0.2e-3, 2.5e9, 0.9e9, free)
    for force, E in ((20e3, 2.5e9), (60e3, 70e9))
    for overlap in (0.012, 0.025)
    for free in (0.02, 0.2)
]
for row in rows:
    print(row)
Path(__file__).with_suffix(".json").write_text(json.dumps(rows, indent=1) + "\n")
