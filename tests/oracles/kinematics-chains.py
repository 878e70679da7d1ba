# Writes kinematics-chains.json: positions, Jacobians and dynamics of the three-joint leg and of random serial chains, by orocos-KDL 1.5.1
# (Debian: apt-get install python3-pykdl; run with /usr/bin/python3). Chains are given by standard Denavit-Hartenberg rows.
import json, math, random
import PyKDL as K

random.seed(20240611)
u = lambda a, b: random.uniform(a, b)
vec = lambda v: [v[0], v[1], v[2]]
mat = lambda R: [[R[i, j] for j in range(3)] for i in range(3)]
arr = lambda a, n: [a[i] for i in range(n)]

def jnt(values):
    a = K.JntArray(len(values))
    for i, x in enumerate(values):
        a[i] = x
    return a

def rigid(link):
    # RigidBodyInertia takes inertia about the centre of mass, tensor off-diagonals as -integral(r_i r_j dm).
    xx, yy, zz, xy, xz, yz = link['inertia']
    return K.RigidBodyInertia(link['mass'], K.Vector(*link['c']), K.RotationalInertia(xx, yy, zz, xy, xz, yz))

def random_link(scale):
    a, b, c = u(.2, 1), u(.2, 1), u(.2, 1)
    m = u(.1, 3)
    s = m * scale * scale * .1
    return {'mass': m, 'c': [u(-scale, scale) for _ in range(3)],
            'inertia': [s * (b + c), s * (a + c), s * (a + b), s * u(-.1, .1), s * u(-.1, .1), s * u(-.1, .1)]}

def solve(chain, n, q, w, a, gravity, wrench_tip):
    qa, wa, aa = jnt(q), jnt(w), jnt(a)
    frame = K.Frame()
    K.ChainFkSolverPos_recursive(chain).JntToCart(qa, frame)
    jac = K.Jacobian(n)
    K.ChainJntToJacSolver(chain).JntToJac(qa, jac)
    dyn = K.ChainDynParam(chain, K.Vector(*gravity))
    M = K.JntSpaceInertiaMatrix(n)
    dyn.JntToMass(qa, M)
    C = K.JntArray(n)
    dyn.JntToCoriolis(qa, wa, C)
    G = K.JntArray(n)
    dyn.JntToGravity(qa, G)
    tau = [sum(M[i, j] * a[j] for j in range(n)) + C[i] + G[i] for i in range(n)]
    # Moment and force the tool pushes with, at the tool's origin in base axes.
    J = [[jac[r, c] for c in range(n)] for r in range(6)]
    f, m = wrench_tip['force'], wrench_tip['moment']
    for c in range(n):
        tau[c] += sum(J[r][c] * f[r] for r in range(3)) + sum(J[3 + r][c] * m[r] for r in range(3))
    return {'q': q, 'w': w, 'a': a, 'position': vec(frame.p), 'rotation': mat(frame.M),
            'jacobian': J[3:] + J[:3], 'mass': [[M[i, j] for j in range(n)] for i in range(n)],
            'coriolis': arr(C, n), 'gravity': arr(G, n), 'push': wrench_tip, 'torque': tau}

def pose(chain, n, gravity, rates):
    q = [u(-2.5, 2.5) for _ in range(n)]
    w = [u(-rates, rates) for _ in range(n)]
    a = [u(-5 * rates, 5 * rates) for _ in range(n)]
    tip = {'force': [u(-50, 50) for _ in range(3)], 'moment': [u(-5, 5) for _ in range(3)]}
    return solve(chain, n, q, w, a, gravity, tip)

out = {'by': 'orocos-KDL 1.5.1', 'leg': [], 'chains': []}

for _ in range(8):
    d, l1, l2 = u(-.08, .08), u(.1, .25), u(.1, .25)
    links = [random_link(.05), random_link(.1), random_link(.1)]
    g = [u(-3, 3), u(-3, 3), -9.81]
    # KDL takes a segment's inertia in the frame of the segment's end: shift each centre by the segment's length.
    chain = K.Chain()
    tips = [(0, d, 0), (0, 0, -l1), (0, 0, -l2)]
    axes = [K.Joint.RotX, K.Joint.RotY, K.Joint.RotY]
    for i in range(3):
        shifted = dict(links[i], c=[links[i]['c'][k] - tips[i][k] for k in range(3)])
        chain.addSegment(K.Segment(str(i), K.Joint(axes[i]), K.Frame(K.Vector(*tips[i])), rigid(shifted)))
    for _ in range(3):
        tip = pose(chain, 3, g, 8)
        tip['push']['moment'] = [0, 0, 0]
        tip = solve(chain, 3, tip['q'], tip['w'], tip['a'], g, tip['push'])
        out['leg'].append(dict(tip, d=d, l1=l1, l2=l2, links=links, g=g))

for n in range(1, 9):
    rows, links = [], []
    chain = K.Chain()
    g = [u(-3, 3), u(-3, 3), -9.81]
    for i in range(n):
        sliding = i > 0 and random.random() < .3
        row = {'type': 'sliding' if sliding else 'turning', 'theta': u(-1, 1), 'd': u(-.3, .3), 'a': u(-.3, .3), 'alpha': random.choice([0, math.pi / 2, -math.pi / 2, u(-1.5, 1.5)])}
        link = random_link(.2)
        rows.append(row)
        links.append(link)
        joint = K.Joint(K.Joint.TransZ if sliding else K.Joint.RotZ)
        end = K.Frame(K.Rotation.RotZ(row['theta'])) * K.Frame(K.Vector(0, 0, row['d'])) * K.Frame(K.Vector(row['a'], 0, 0)) * K.Frame(K.Rotation.RotX(row['alpha']))
        chain.addSegment(K.Segment(str(i), joint, end, rigid(link)))
    out['chains'].append({'n': n, 'rows': rows, 'links': links, 'g': g, 'poses': [pose(chain, n, g, 3) for _ in range(3)]})

with open(__file__.replace('.py', '.json'), 'w') as file:
    json.dump(out, file, indent=None, separators=(',', ':'))
    file.write('\n')
