# Writes kinematics-six-axis.json: an invented six-axis arm (a probe arm for the mudflat walker) by Lagrange's equations, symbolically with sympy and
# evaluated to 40 digits with mpmath: an independent route from Newton-Euler. Standard Denavit-Hartenberg rows theta, d, a, alpha; links in the frame
# their row ends with.
import json
import mpmath as mp
import sympy as sp

mp.mp.dps = 40
R = sp.Rational
mm = lambda x: R(x, 1000)
HALF = sp.pi / 2
# d, a, alpha
ROWS = [(mm(95), mm(12), HALF), (mm(18), mm(210), 0), (mm(-14), mm(9), HALF), (mm(190), 0, -HALF), (mm(6), 0, HALF), (mm(70), 0, 0)]
# mass, centre, inertia about it (xx, yy, zz, xy, xz, yz), kg and kg mm^2
LINKS = [
    (R(9, 10), (-4, -30, 6), (1400, 900, 1350, 40, -25, 60)),
    (R(13, 10), (-95, 8, 22), (1100, 6900, 6600, -130, 70, 35)),
    (R(7, 10), (-5, 12, 31), (820, 760, 410, 15, 22, -18)),
    (R(45, 100), (2, -48, 5), (520, 130, 540, -9, 4, 16)),
    (R(28, 100), (1, 7, 14), (110, 100, 62, 3, -2, 5)),
    (R(15, 100), (4, -3, -21), (48, 51, 20, 1, 2, -1)),
]
ROTORS = [(R(60), 50), (R(60), 60), (R(42), 50), (R(18), 40), (R(18), 40), (R(9), 30)]  # kg mm^2, ratio
G = R(980665, 100000)

q = sp.symbols('q1:7')
T = sp.eye(4)
axes, centres, rotations = [], [], []
for i, (d, a, alpha) in enumerate(ROWS):
    axes.append(T[:3, 2])
    c, s, ca, sa = sp.cos(q[i]), sp.sin(q[i]), sp.cos(alpha), sp.sin(alpha)
    T = T * sp.Matrix([[c, -s * ca, s * sa, a * c], [s, c * ca, -c * sa, a * s], [0, sa, ca, d], [0, 0, 0, 1]])
    m, centre, inertia = LINKS[i]
    centres.append((T * sp.Matrix([*[mm(x) for x in centre], 1]))[:3])
    rotations.append(T[:3, :3])
tool = T[:3, 3]
V = sum(LINKS[i][0] * G * centres[i][2] for i in range(6))
f = lambda x: sp.lambdify(q, x, 'mpmath')
gravity = f([sp.diff(V, x) for x in q])
velocity = [f(sp.Matrix(centres[i]).jacobian(q)) for i in range(6)]
turning = [f(sp.Matrix.hstack(*[axes[j] if j <= i else sp.zeros(3, 1) for j in range(6)])) for i in range(6)]
rotation = [f(rotations[i]) for i in range(6)]
place = f(tool)


def mass(at, rotors=True):
    M = mp.zeros(6)
    for i in range(6):
        m, _, (xx, yy, zz, xy, xz, yz) = LINKS[i]
        I = mp.matrix([[xx, xy, xz], [xy, yy, yz], [xz, yz, zz]]) / mp.mpf(10) ** 6
        Jv, Jw, Rm = velocity[i](*at), turning[i](*at), rotation[i](*at)
        M += mp.mpf(m.p) / m.q * Jv.T * Jv + Jw.T * (Rm * I * Rm.T) * Jw
    if rotors:
        for i, (J, n) in enumerate(ROTORS):
            M[i, i] += mp.mpf(J.p) / J.q / 10 ** 6 * n * n
    return M


def coriolis(at, w):
    # C_i = sum_jk (dM_ij/dq_k - 1/2 dM_jk/dq_i) w_j w_k, derivatives by central differences at 40 digits.
    h = mp.mpf(10) ** -12
    D = []
    for k in range(6):
        up, down = list(at), list(at)
        up[k] += h
        down[k] -= h
        D.append((mass(up) - mass(down)) / (2 * h))
    return [mp.fsum((D[k][i, j] - D[i][j, k] / 2) * w[j] * w[k] for j in range(6) for k in range(6)) for i in range(6)]


out = {'poses': []}
for at, w in [((0.3, -0.7, 0.9, 0.4, -1.1, 0.6), (0.5, -1.2, 0.8, 1.5, -0.9, 2)), ((-1.4, 0.5, 2.1, -0.8, 0.7, 1.9), (-1.1, 0.6, 1.4, -2, 1.3, 0.4))]:
    at, w = [mp.mpf(str(x)) for x in at], [mp.mpf(str(x)) for x in w]
    M = mass(at)
    out['poses'].append({
        'q': [float(x) for x in at], 'w': [float(x) for x in w],
        'tool': [float(x) for x in place(*at)],
        'gravity': [float(x) for x in gravity(*at)],
        'mass': [[float(M[i, j]) for j in range(6)] for i in range(6)],
        'coriolis': [float(x) for x in coriolis(at, w)],
    })
json.dump(out, open('tests/oracles/kinematics-six-axis.json', 'w'))
