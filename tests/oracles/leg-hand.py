"""A leg calculated by hand, step by step, with mpmath: the statics of the stance from triangles and moment balances, not from a Jacobian.

Independent of the library: angles by the law of cosines, torques as force times lever arm about each axis.
Writes leg-hand.json beside this file.
"""
import json, os
from mpmath import mp, mpf, sqrt, acos, atan2, cos, sin, pi, tan, diff

mp.dps = 30
g = mpf('9.80665')
mass, legs = mpf('10.5'), 4
upper, lower, offset, height = mpf('0.165'), mpf('0.180'), mpf('0.058'), mpf('0.295')

def pose(x, height=height):
    """Knee position (forward, down) in the leg plane for a foot at x forward of the hip, height below; knee pointing forward."""
    reach = sqrt(x * x + height * height)
    at_hip = acos((upper**2 + reach**2 - lower**2) / (2 * upper * reach))
    line = atan2(x, height)          # forward lean of the line hip to foot
    lean = line + at_hip             # forward lean of the upper link: knee forward
    return upper * sin(lean), upper * cos(lean)

# The upper link: 0.46 kg in all, of which the knee's motor (0.26 kg) and its ASA plate (84 x 96 x 7 mm, 1070 kg/m3) sit 47 mm below the hip, the
# knee's centre distance above the knee. Its shell and the lower link are even rods.
mounted = mpf('0.26') + mpf('0.084') * mpf('0.096') * mpf('0.007') * 1070
shell, at_mount = mpf('0.46') - mounted, mpf('0.165') - mpf('0.118')
upper_mass, lower_mass = shell + mounted, mpf('0.16')
upper_share = (shell / 2 + mounted * at_mount / upper) / upper_mass     # place of the centre of mass along the link
centre = upper_share * upper
upper_inertia = shell * (upper**2 / 12 + (upper / 2 - centre)**2) + mounted * (at_mount - centre)**2
lower_inertia = lower_mass * lower**2 / 12

def lever_arms(x, hip_height=height):
    """Knee and foot relative to the hip: forward, down."""
    return pose(x, hip_height), (x, hip_height)

def torques(x, down, backward, hip_height=height, motion=None, gravity=g):
    """Joint torques that make the foot push the ground down and backward, and carry and speed up the links: moments about the axes.

    `motion` gives, for both links, accelerations of the middle (forward, down) and of the turning (right-handed about left).
    """
    (knee_x, knee_down), _ = lever_arms(x, hip_height)
    middles = [(knee_x * upper_share, knee_down * upper_share), ((knee_x + x) / 2, (knee_down + hip_height) / 2)]
    links = []
    for (mx, md), m, inertia, (ax, ad, turn) in zip(middles, (upper_mass, lower_mass), (upper_inertia, lower_inertia), motion or ((0, 0, 0),) * 2):
        # What must act on the link beside its weight, at its middle: forward, down; and the moment that turns it.
        links.append((mx, md, m * ax, m * (ad - gravity), inertia * turn))
    # Right-handed about +y (left): a downward push ahead of the axis turns positive; a backward push below it turns positive.
    about = lambda at_x, at_d, fx, fd: fd * at_x - fx * at_d
    needed = lambda own, from_x, from_d: sum(about(mx - from_x, md - from_d, fx, fd) + turn for mx, md, fx, fd, turn in own)
    push = lambda from_x, from_d: about(x - from_x, hip_height - from_d, -backward, down)
    hip = push(0, 0) + needed(links, 0, 0)
    knee = push(knee_x, knee_down) + needed(links[1:], knee_x, knee_down)
    # About +x: foot and links are offset to the left, a downward force there turns negative.
    sideways = -(down + sum(fd for _, _, _, fd, _ in links)) * offset
    return sideways, hip, knee

PARTS = 12
EXTREMES = [mpf(i) / PARTS for i in range(PARTS + 1)]

# A slow walk at a duty factor of 3/4, steps in lateral sequence: left hind, left front, right hind, right front, a quarter of a stride apart. Three feet
# stand at every moment: areas of the triangle share the weight, and where it is outside the two feet of the nearest edge carry it.
LEGS = {(row, side): (y * mpf('0.420') / 2, x * (mpf('0.190') / 2 + offset), phase) for row, side, y, x, phase in
        (('hind', 'left', -1, 1, mpf(0)), ('front', 'left', 1, 1, mpf('0.25')), ('hind', 'right', -1, -1, mpf('0.5')), ('front', 'right', 1, -1, mpf('0.75')))}
def areas(three, at):
    cross = lambda a, b, c: (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    whole = cross(*three)
    inside = [cross(*[at if i == j else foot for j, foot in enumerate(three)]) / whole for i in range(3)]
    if min(inside) > -mpf(10)**-20:
        return inside
    edges = []
    for i in range(3):
        a, b = three[i], three[(i + 1) % 3]
        along = min(mpf(1), max(mpf(0), ((at[0] - a[0]) * (b[0] - a[0]) + (at[1] - a[1]) * (b[1] - a[1])) / ((b[0] - a[0])**2 + (b[1] - a[1])**2)))
        away = sqrt((at[0] - a[0] - along * (b[0] - a[0]))**2 + (at[1] - a[1] - along * (b[1] - a[1]))**2)
        edges.append((away, {i: 1 - along, (i + 1) % 3: along}))
    nearest = min(edges, key=lambda edge: edge[0])[1]
    return [nearest.get(i, mpf(0)) for i in range(3)]
def shares(step, forward=mpf(0), left=mpf(0), duty=mpf('0.75')):
    """Largest part of the weight in each twelfth of the stance, of the front legs and of the hind ones: a share runs evenly between touch-downs."""
    parts = {row: [mpf(0)] * PARTS for row in ('front', 'hind')}
    for (row, side), (_, _, phase) in LEGS.items():
        for part in range(PARTS):
            for s in (part + mpf(10)**-25, part + mpf('0.5'), part + 1 - mpf(10)**-25):
                moment = phase + duty * s / PARTS
                standing = [(key, (x + step * (mpf('0.5') - ((moment - p) % 1) / duty), y)) for key, (x, y, p) in LEGS.items() if (moment - p) % 1 < duty]
                assert len(standing) == 3
                mine = areas([foot for _, foot in standing], (forward, left))[[key for key, _ in standing].index((row, side))]
                parts[row][part] = max(parts[row][part], mine)
    return parts
def part_of(parts):
    """The force of a phase: at the ends of the parts of the stance that of the larger neighbour."""
    return lambda s: parts[int(s * PARTS)] if (s * PARTS) % 1 else max(parts[max(0, int(s * PARTS) - 1)], parts[min(PARTS - 1, int(s * PARTS))])
def of_rows(run, rows):
    """The worse of the rows, value by value."""
    ways = [run(part_of(parts)) for parts in rows.values()]
    return {key: min(way[key] for way in ways) if key.endswith('Lowest') else max((way[key] for way in ways), key=abs) for key in ways[0]}
def stride(duty, step, speed, clearance, force_at, traction, gravity=g):
    """Torques with and without the rotors at twelve moments of stance and the ends of its parts, and over the swing, for even speed in stance and a quintic swing."""
    stance_time = step / speed
    period = stance_time / duty
    swing_time = period - stance_time
    def foot(t, stands):
        if stands:
            return step / 2 - speed * t, mpf(0)
        u = (t - stance_time) / swing_time
        along = -step / 2 - speed * u * swing_time + (step + speed * swing_time) * u**3 * (10 - 15 * u + 6 * u * u)
        v = u if u <= mpf('0.5') else 1 - u
        return along, clearance * 2 * (v - sin(4 * pi * v) / (4 * pi))
    def links(t, stands):
        x, up = foot(t, stands)
        (kx, kd), (fx, fd) = lever_arms(x, height - up)
        # Turning of a link, right-handed about left: zero hanging straight down, positive when its end goes backward.
        return [kx * upper_share, kd * upper_share, -atan2(kx, kd), (kx + fx) / 2, (kd + fd) / 2, -atan2(fx - kx, fd - kd)]
    def at(s, stands):
        t = s * stance_time if stands else stance_time + s * swing_time
        second = [diff(lambda u, k=k: links(u, stands)[k], t, 2) for k in range(6)]
        x, up = foot(t, stands)
        f = force_at(s) if stands else mpf(0)
        sideways, hip, knee = torques(x, f, traction * f, height - up, (second[:3], second[3:]), gravity)
        # The rotors turn with hip and knee angle, 6.2 and 5.6 times faster.
        at_hip, at_knee = second[2], second[5] - second[2]
        now, turning = links(t, stands), [diff(lambda u, k=k: links(u, stands)[k], t) for k in (2, 5)]
        # The knee's rotor rides on the upper link and turns against its crossed drum: it spins with the hip, less its turns for the knee.
        spin = at_hip - knee_ratio * at_knee
        return {'stands': stands, 'hip': now[2], 'knee': now[5] - now[2], 'hipRate': abs(turning[0]), 'kneeRate': abs(turning[1] - turning[0]),
                'away': sqrt(x * x + (height - up)**2), 'sideways': abs(sideways),
                'torques': (hip, knee, hip + rotor * hip_ratio**2 * at_hip + rotor * spin, knee - rotor * knee_ratio * spin)}
    rows, poses = [], []
    for stands in (True, False):
        count = PARTS if stands else 12
        # Ends of the parts of the stance count for the largest values alone: they last no time.
        for s, share in [((mpf(i) + mpf('0.5')) / count, mpf(1) / count) for i in range(count)] + [(e, mpf(0)) for e in EXTREMES if stands]:
            pose = at(s, stands)
            poses.append(pose)
            rows.append((*pose['torques'], (stance_time if stands else swing_time) * share))
    # The swing where each value is largest: golden section round the largest of 48 moments.
    course = [at(mpf(i) / 48, False) for i in range(49)]
    quantities = [lambda p, key=key, sign=sign: sign * p[key] for key in ('hip', 'knee', 'hipRate', 'kneeRate', 'away', 'sideways') for sign in (1, -1)]
    quantities += [lambda p, k=k: abs(p['torques'][k]) for k in range(4)]
    for of in quantities:
        top = max(range(49), key=lambda i: of(course[i]))
        lo, hi, part = mpf(max(0, top - 1)) / 48, mpf(min(48, top + 1)) / 48, (sqrt(mpf(5)) - 1) / 2
        inner = [hi - part * (hi - lo), lo + part * (hi - lo)]
        found = [at(s, False) for s in inner]
        for _ in range(24):
            if of(found[0]) > of(found[1]):
                hi, inner[1], found[1] = inner[1], inner[0], found[0]
                inner[0] = hi - part * (hi - lo)
                found[0] = at(inner[0], False)
            else:
                lo, inner[0], found[0] = inner[0], inner[1], found[1]
                inner[1] = lo + part * (hi - lo)
                found[1] = at(inner[1], False)
        for pose in (max(found, key=of), course[top]):
            poses.append(pose)
            rows.append((*pose['torques'], mpf(0)))
    rms = lambda column: sqrt(sum(r[column] ** 2 * r[4] for r in rows) / period)
    most = lambda column: max((r[column] for r in rows), key=abs)
    return {'hip': float(most(0)), 'knee': float(most(1)), 'hipShaft': float(most(2)), 'kneeShaft': float(most(3)),
            'hipShaftRms': float(rms(2)), 'kneeShaftRms': float(rms(3)), **{
                f'{joint}{name}': float(of(p[joint + key] for p in poses if p['stands'] or not loaded))
                for joint in ('hip', 'knee') for name, of, key, loaded in
                (('Lowest', min, '', False), ('Highest', max, '', False), ('Speed', max, 'Rate', False), ('LoadedSpeed', max, 'Rate', True))},
            'farthest': float(max(p['away'] for p in poses)), 'sideways': float(max(p['sideways'] for p in poses))}

rotor = mpf('42e-6')
hip_ratio = (mpf('82.72') + mpf('1.6')) / (12 + mpf('1.6'))
knee_ratio = (mpf('74.56') + mpf('1.6')) / (12 + mpf('1.6'))

out = {}
stand = mass * g / legs
out['stand'] = dict(zip(('sideways', 'hip', 'knee'), map(float, torques(mpf(0), stand, mpf(0)))))
out['stand']['force'] = float(stand)
duty, step, speed, traction = mpf('0.75'), mpf('0.12'), mpf('0.2'), mpf('0.15')
level = shares(step)
largest = lambda rows: max(max(parts) for parts in rows.values())
force = mass * g * largest(level)
out['walk'] = {'force': float(force), **of_rows(lambda of: stride(duty, step, speed, mpf('0.04'), lambda s: mass * g * of(s), traction), level)}
phases = [(mpf(i) + mpf('0.5')) / PARTS for i in range(PARTS)] + list(EXTREMES)
blocked = [torques(step / 2 - step * s, mass * g * of(s), traction * mass * g * of(s)) for of in map(part_of, level.values()) for s in phases]
out['stall'] = {'hip': float(max((t[1] for t in blocked), key=abs)), 'knee': float(max((t[2] for t in blocked), key=abs))}
# Of a leg without weight only the push is left: force times lever arm about the knee.
def bare_knee(x, push):
    knee_x, knee_down = pose(x)
    return push * (x - knee_x) + traction * push * (height - knee_down)
out['walk']['kneeWithoutLinks'] = float(max((bare_knee(step / 2 - step * s, mass * g * of(s)) for of in map(part_of, level.values()) for s in phases), key=abs))
duty_trot = mpf('0.55')
# A trot brakes and pushes: each value from the worse of the two.
pushing, braking = (stride(duty_trot, mpf('0.13'), mpf('0.8'), mpf('0.045'), lambda s: pi / 2 * mass * g / legs / duty_trot * sin(pi * s), way)
                    for way in (traction, -traction))
out['trot'] = {key: min(pushing[key], braking[key]) if key.endswith('Lowest') else max(pushing[key], braking[key], key=abs) for key in pushing}
# Drop of 60 mm on two feet that give way over 90 mm, half sine: peak is pi/2 of the mean m g (1 + h/s) / 2.
drop = pi / 2 * mass * g * (1 + mpf('0.060') / mpf('0.090')) / 2
out['drop'] = {'force': float(drop), **dict(zip(('sideways', 'hip', 'knee'), map(float, torques(mpf(0), drop, mpf(0)))))}
# The same at the end of the landing, the leg 90 mm lower.
out['dropEnd'] = dict(zip(('sideways', 'hip', 'knee'), map(float, torques(mpf(0), drop, mpf(0), height - mpf('0.090')))))
# Hop of 30 mm on four feet that push over 90 mm: the work of the feet lifts the weight by travel and height together.
out['hop'] = {'force': float(pi / 2 * (mass * g * (mpf('0.090') + mpf('0.030')) / mpf('0.090')) / 4)}
slope = mpf('14') * pi / 180
# The weight passes through the ground down the slope of the middle.
off = mpf('0.290') * tan(slope)
weight = mass * g * cos(slope)
on_slope = lambda sign, rows: of_rows(lambda of: stride(duty, step, speed, mpf('0.04'), lambda s: weight * of(s), sign * tan(slope), g * cos(slope)), rows)
uphill = shares(step, forward=-off)
f = weight * largest(uphill)
out['slope'] = {'force': float(f), 'forward': float(f * tan(slope)), **on_slope(1, uphill)}
out['slopeDown'] = on_slope(-1, shares(step, forward=off))
# Across the slope the lower side carries more. The walk pushes and brakes.
aside = shares(step, left=off)
ways = [of_rows(lambda of, way=way: stride(duty, step, speed, mpf('0.04'), lambda s: weight * of(s), way, g * cos(slope)), aside) for way in (traction, -traction)]
out['slopeAcross'] = {key: max((way[key] for way in ways), key=abs) for key in ('hip', 'knee')}
# What holds the foot uphill, square to the leg's plane, as vectors in space: its moment about hip and knee, split along and across each link.
def cross(a, b): return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
def norm(a): return sqrt(sum(k * k for k in a))
def across_leg(x, side, hip_height=height):
    knee_x, knee_down = pose(x, hip_height)
    hip, knee, foot, push = (mpf(0),) * 3, (knee_x, mpf(0), -knee_down), (x, mpf(0), -hip_height), (mpf(0), side, mpf(0))
    about = lambda joint: cross([f - k for f, k in zip(foot, joint)], push)
    axis = [k / norm(knee) for k in knee]
    along = lambda moment: sum(m * k for m, k in zip(moment, axis))
    square = lambda moment: norm([m - along(moment) * k for m, k in zip(moment, axis)])
    return {'side': side, 'upper': max(square(about(hip)), square(about(knee))), 'twist': abs(along(about(hip))),
            'kneeCouple': norm(about(knee)), 'hipCouple': norm(about(hip))}
across = [across_leg(step / 2 - step * s, weight * of(s) * tan(slope)) for of in map(part_of, aside.values()) for s in phases]
out['slopeAcross'] |= {'force': float(weight * largest(aside)), **{key: float(max(one[key] for one in across)) for key in across[0]}}
# The landing of the drop pushed sideways by a fifth of its force, at touch-down and at its end; the walk by a tenth.
out['pushed'] = {name: {key: float(of) for key, of in across_leg(mpf(0), drop / 5, at).items()} for name, at in (('drop', height), ('dropEnd', height - mpf('0.090')))}
walked = [across_leg(step / 2 - step * s, mass * g * of(s) / 10) for of in map(part_of, level.values()) for s in phases]
out['pushed']['walk'] = {key: float(max(one[key] for one in walked)) for key in walked[0]}
out['walkBack'] = of_rows(lambda of: stride(duty, step, speed, mpf('0.04'), lambda s: mass * g * of(s), -traction), level)

json.dump(out, open(os.path.join(os.path.dirname(os.path.abspath(__file__)), 'leg-hand.json'), 'w'), indent=1)
