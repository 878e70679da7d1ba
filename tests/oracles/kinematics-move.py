# Shortest time of a move from rest to rest with limits on rate, acceleration and jerk, by linear programmes that know nothing of phases: the furthest
# distance in a time, jerk constant in each of n steps (exact integration), for n = 120 and 240, and the time by bisection, extrapolated in 1/n^2.
# Prints the values of the published checks of kinematics.jerkLimitedMove.
import numpy as np
from scipy.optimize import linprog, brentq


def furthest(T, v, a, j, n):
    h = T / n
    A = np.tril(np.ones((n, n))) * h                                   # acceleration at the ends of the steps
    V = np.zeros((n, n))
    X = np.zeros(n)
    for k in range(n):
        for i in range(k, n):
            V[i, k] = h * h * (i - k) + h * h / 2                       # rate at the end of step i by a unit jerk in step k
        r = n - 1 - k
        X[k] = h ** 3 * (r * r / 2 + r / 2 + 1 / 6)
    ub = np.vstack([A, -A, V])
    b = np.r_[np.full(n, a), np.full(n, a), np.full(n, v)]
    sol = linprog(-X, A_ub=ub, b_ub=b, A_eq=np.vstack([A[-1], V[-1]]), b_eq=[0, 0], bounds=(-j, j))
    return -sol.fun


for D, v, a, ramp in [(1.2, 6, 80, .02), (.05, 6, 80, .04), (.5, 6, 80, .03)]:
    j = a / ramp
    times = []
    for n in (120, 240):
        times.append(brentq(lambda T: furthest(T, v, a, j, n) - D, .3 * (D / v + v / a + ramp), 3 * (D / v + v / a + ramp), xtol=1e-7))
    print(D, v, a, ramp, times, times[1] + (times[1] - times[0]) / 3)
