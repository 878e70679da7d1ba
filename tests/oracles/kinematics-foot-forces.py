# Writes kinematics-foot-forces.json: least-squares foot forces inside friction cones by scipy's general constrained minimiser (SLSQP), which knows
# nothing of projections on cones; and, for infeasible loads, a linear programme over many-sided circumscribed cones that has no solution (HiGHS).
import json
import numpy as np
from scipy.optimize import linprog, minimize

rng = np.random.default_rng(7)


def problem(n, slope, friction, push):
    feet = np.column_stack([rng.uniform(-.2, .2, n), rng.uniform(-.15, .15, n), rng.uniform(-.32, -.26, n)])
    normals = np.column_stack([rng.uniform(-slope, slope, n), rng.uniform(-slope, slope, n), np.ones(n)])
    com = np.r_[feet.mean(0)[:2] + rng.uniform(-.03, .03, 2), 0]
    acceleration = rng.uniform(-push, push, 3)
    moment = rng.uniform(-push, push, 3) * .3
    return dict(feet=feet, normals=normals, friction=friction, mass=10.5, com=com, acceleration=acceleration, moment=moment)


def matrices(p):
    G, axes = [], []
    for foot, normal in zip(p['feet'], p['normals']):
        arm = foot - p['com']
        G.append(np.vstack([np.eye(3), np.array([np.cross(arm, e) for e in np.eye(3)]).T]))
        axes.append(normal / np.linalg.norm(normal))
    w = np.r_[p['mass'] * (p['acceleration'] + [0, 0, 9.80665]), p['moment']]
    return np.hstack(G), axes, w


def solve(p):
    G, axes, w = matrices(p)
    n, mu = len(axes), p['friction']
    # Circumscribed cones of 64 sides: if even these hold no solution, none is.
    sides = []
    for i, u in enumerate(axes):
        e1 = np.cross([1, 0, 0], u); e1 /= np.linalg.norm(e1); e2 = np.cross(u, e1)
        for k in range(64):
            t = 2 * np.pi * k / 64
            row = np.zeros(3 * n)
            row[3 * i:3 * i + 3] = np.cos(t) * e1 + np.sin(t) * e2 - mu * u
            sides.append(row)
    outer = linprog(np.zeros(3 * n), A_ub=np.array(sides), b_ub=np.zeros(len(sides)), A_eq=G, b_eq=w, bounds=(None, None))
    if outer.status == 2:
        return None
    if outer.x is None:
        return 'unsure'
    cone = lambda f: np.array([mu * (f[3 * i:3 * i + 3] @ u) - np.sqrt(np.sum((f[3 * i:3 * i + 3] - (f[3 * i:3 * i + 3] @ u) * u) ** 2) + 1e-18) for i, u in enumerate(axes)])
    best = None
    for start in (outer.x, np.linalg.pinv(G) @ w):
        r = minimize(lambda f: f @ f / 1e3, start, jac=lambda f: 2 * f / 1e3, method='SLSQP', constraints=[
            {'type': 'eq', 'fun': lambda f: G @ f - w, 'jac': lambda f: G}, {'type': 'ineq', 'fun': cone}], options={'maxiter': 300, 'ftol': 1e-13})
        if r.success and np.abs(G @ r.x - w).max() < 1e-7 and cone(r.x).min() > -1e-6 and (best is None or r.fun < best.fun):
            best = r
    return 'unsure' if best is None else best.x.tolist()


out = []
for n in (3, 4, 4, 5):
    for slope, friction, push in ((0, .8, 0), (.2, .6, 1), (.3, .4, 3), (.1, .2, 2), (.2, .9, 12)):
        for _ in range(4 if n < 5 else 2):
            p = problem(n, slope, friction, push)
            f = solve(p)
            if f == 'unsure':
                continue
            out.append({k: (v.tolist() if hasattr(v, 'tolist') else v) for k, v in p.items()} | {'forces': f})
print(len(out), sum(c['forces'] is None for c in out))
json.dump(out, open('tests/oracles/kinematics-foot-forces.json', 'w'))
