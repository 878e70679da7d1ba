# Writes kinematics-limits.json: how fast and how hard the leg's foot can go along a direction within limits of its joints, as linear programmes solved by
# scipy (HiGHS), at regular and at singular poses (knee straight, knee folded, foot level with the hip axis). Run with python3.
import json
import numpy as np
import scipy
from scipy.optimize import linprog

rng = np.random.default_rng(11)
l1, l2 = .165, .18
rates, torques = np.array([10, 12, 15.]), np.array([9, 10, 8.])
strict = {'primal_feasibility_tolerance': 1e-10, 'dual_feasibility_tolerance': 1e-10}

def jacobian(d, q1, q2, q3):
    s, c = np.sin(q1), np.cos(q1)
    xs, zs = -l2 * np.sin(q2 + q3), -l2 * np.cos(q2 + q3)
    X, Z = xs - l1 * np.sin(q2), zs - l1 * np.cos(q2)
    J = np.array([[0, Z, zs], [-d * s - Z * c, X * s, xs * s], [d * c - Z * s, -X * c, -xs * c]])
    J[abs(J) < 1e-15] = 0
    return J

cases = []
for n in range(32):
    d = [0, .058][n % 2]
    kind = ['kneeStraight', 'kneeFolded', 'footLevelWithHip', 'none'][n // 2 % 4]
    q1, q2, q3 = rng.uniform(-1, 1), rng.uniform(-1.2, 1.2), rng.uniform(.3, 2)
    if kind == 'kneeStraight': q3 = 0
    if kind == 'kneeFolded': q3 = np.pi
    if kind == 'footLevelWithHip': q2 = np.arctan2(l1 + l2 * np.cos(q3), l2 * np.sin(q3))
    J = jacobian(d, q1, q2, q3)
    u = rng.uniform(-1, 1, 3) if n % 3 == 0 else J @ rng.uniform(-1, 1, 3)
    u /= np.linalg.norm(u)
    speed = linprog([0, 0, 0, -1], A_eq=np.c_[J, -u], b_eq=np.zeros(3), bounds=[(-w, w) for w in rates] + [(0, None)], options=strict)
    best = linprog(-u, A_ub=np.r_[J.T, -J.T], b_ub=np.r_[torques, torques], bounds=[(None, None)] * 3, options=strict)
    pure = linprog([-1], A_ub=np.r_[J.T @ u, -J.T @ u].reshape(-1, 1), b_ub=np.r_[torques, torques], bounds=[(0, None)], options=strict)
    cases.append({'singularity': kind, 'd': d, 'q': [q1, q2, q3], 'u': u.tolist(),
                  'pureSpeed': -speed.fun, 'bestSpeed': float(np.abs(J.T @ u) @ rates),
                  'purePush': -pure.fun if pure.status == 0 else None, 'bestPush': -best.fun if best.status == 0 else None})

with open(__file__.replace('.py', '.json'), 'w') as file:
    json.dump({'by': 'scipy ' + scipy.__version__, 'l1': l1, 'l2': l2, 'rates': rates.tolist(), 'torques': torques.tolist(), 'cases': cases}, file, indent=1)
    file.write('\n')
