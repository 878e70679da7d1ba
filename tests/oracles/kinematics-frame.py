# Writes kinematics-frame.json: movement of the foot per force by bending and torsion of the leg's two links, as a space frame of two beam elements clamped
# at the hip, by the direct stiffness method (numpy). Elements stretch too, 1e-7 of the rest. Run with python3.
import json
import numpy as np

EA = 1e11
rng = np.random.default_rng(20250301)

def element(length, about_y, about_z, torsion):
    # Local x along the beam; bending about z moves y, bending about y moves z.
    k = np.zeros((12, 12))
    def put(entries):
        for i, j, v in entries:
            k[i, j] = k[j, i] = v
    L = length
    put([(0, 0, EA / L), (6, 6, EA / L), (0, 6, -EA / L), (3, 3, torsion / L), (9, 9, torsion / L), (3, 9, -torsion / L)])
    for a, u, r, s in [(about_z, 1, 5, 1), (about_y, 2, 4, -1)]:
        put([(u, u, 12 * a / L**3), (u, r, s * 6 * a / L**2), (u, u + 6, -12 * a / L**3), (u, r + 6, s * 6 * a / L**2), (r, r, 4 * a / L),
             (r, u + 6, -s * 6 * a / L**2), (r, r + 6, 2 * a / L), (u + 6, u + 6, 12 * a / L**3), (u + 6, r + 6, -s * 6 * a / L**2), (r + 6, r + 6, 4 * a / L)])
    return k

cases = []
for _ in range(4):
    d, l1, l2 = rng.uniform(-.1, .1), rng.uniform(.1, .25), rng.uniform(.1, .25)
    q = [rng.uniform(-.6, .6), rng.uniform(-1, .5), rng.uniform(.2, 2)]
    beams = [{'inPlane': rng.uniform(50, 200), 'acrossPlane': rng.uniform(50, 200), 'torsion': rng.uniform(20, 80)} for _ in range(2)]
    s, c = np.sin(q[0]), np.cos(q[0])
    point = lambda X, Z: np.array([X, d * c - Z * s, d * s + Z * c])
    hip, knee = point(0, 0), point(-l1 * np.sin(q[1]), -l1 * np.cos(q[1]))
    foot = knee + point(-l2 * np.sin(q[1] + q[2]), -l2 * np.cos(q[1] + q[2])) - hip
    normal = np.array([0, c, s])
    K = np.zeros((18, 18))
    for i, (a, b, beam) in enumerate([(hip, knee, beams[0]), (knee, foot, beams[1])]):
        length = np.linalg.norm(b - a)
        x = (b - a) / length
        # Local z square to the leg plane: bending about it stays in the plane.
        T = np.kron(np.eye(4), np.array([x, np.cross(normal, x), normal]))
        at = np.arange(6 * i, 6 * i + 12)
        K[np.ix_(at, at)] += T.T @ element(length, beam['acrossPlane'], beam['inPlane'], beam['torsion']) @ T
    compliance = np.linalg.inv(K[6:, 6:])[6:9, 6:9]
    cases.append({'d': d, 'l1': l1, 'l2': l2, 'q': q, 'upperLink': beams[0], 'lowerLink': beams[1], 'compliance': compliance.tolist()})

with open(__file__.replace('.py', '.json'), 'w') as file:
    json.dump({'by': 'numpy ' + np.__version__, 'cases': cases}, file, indent=1)
    file.write('\n')
