"""Motors of the demo's first design by hand, walking and standing until they settle, and stalled for a quarter of an hour: torque, current, loss, films, plate, winding, controller, supply.

Independent of the library: heat balances and published correlations put down anew, all solved together (no loop of the library's kind); the
plate by finite volumes instead of a series. Torques and speeds come from leg-hand.py, bolts from leg-hand-checks.py. Writes leg-hand-heat.json beside this file.
"""
import json, os, runpy
import numpy as np
from scipy.sparse import coo_matrix, diags
from scipy.sparse.linalg import splu, spsolve
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq, fsolve, minimize_scalar

here = os.path.dirname(os.path.abspath(__file__))
parts = runpy.run_path(os.path.join(here, 'leg-hand-checks.py'))
statics = parts['statics']
zero = 273.15
r1 = (12e-3 + 1.6e-3) / 2
ratio = {'hip': (82.72e-3 + 1.6e-3) / 2 / r1, 'knee': (74.56e-3 + 1.6e-3) / 2 / r1}

# ---- plate under the motor: heat enters through a ring of 14 to 34 mm, printed ASA 7 mm thick, as wide as a disc of the same area -----
a1, a2, b, thick = 7e-3, 17e-3, np.sqrt(84e-3 * 96e-3 / np.pi), 7e-3
k_plate, k_across = 0.17, 0.128                              # along the layers and across them
def plate(h, n):
    """Mean rise of the ring for 1 W by finite volumes on rings (energy balance of each cell); both faces cooled but where the motor covers one."""
    # Cells are finest where the flux jumps: at the edges of the ring, and at the faces.
    part = lambda lo, hi, n: lo + (hi - lo) * (1 - np.cos(np.pi * np.arange(n + 1) / n)) / 2
    edges = np.concatenate([part(0, a1, 2 * n)[:-1], part(a1, a2, 3 * n)[:-1], part(a2, b, 5 * n)])
    levels = part(0, thick, 4 * n)
    layers, dz = 4 * n, np.diff(levels)
    middle, area = (edges[1:] + edges[:-1]) / 2, np.pi * (edges[1:] ** 2 - edges[:-1] ** 2)
    cells = len(middle)
    at = np.arange(cells * layers).reshape(cells, layers)
    out = lambda dz: 1 / (1 / h + dz / 2 / k_across)             # from the middle of a cell at a face to the air
    diagonal = np.zeros((cells, layers))
    diagonal[:, -1] += out(dz[-1]) * area
    diagonal[middle > a2, 0] += out(dz[0]) * area[middle > a2]
    across = np.outer(2 * np.pi * edges[1:-1] * k_plate / np.diff(middle), dz)
    down = np.outer(area * k_across, 2 / (dz[1:] + dz[:-1]))
    diagonal[:-1] += across; diagonal[1:] += across
    diagonal[:, :-1] += down; diagonal[:, 1:] += down
    i = np.concatenate([at.ravel(), at[:-1].ravel(), at[1:].ravel(), at[:, :-1].ravel(), at[:, 1:].ravel()])
    j = np.concatenate([at.ravel(), at[1:].ravel(), at[:-1].ravel(), at[:, 1:].ravel(), at[:, :-1].ravel()])
    spread, through = across.ravel(), down.ravel()
    v = np.concatenate([diagonal.ravel(), -spread, -spread, -through, -through])
    ring = (middle > a1) & (middle < a2)
    flux = 1 / (np.pi * (a2**2 - a1**2))
    q = np.zeros((cells, layers))
    q[ring, 0] = flux * area[ring]
    T = spsolve(coo_matrix((v, (i, j))).tocsc(), q.ravel()).reshape(cells, layers)
    return ((T[ring, 0] + flux * dz[0] / 2 / k_across) * area[ring]).sum() / area[ring].sum()
def fine(h):
    """Grids halved: what is left falls with the square of the cell (Richardson)."""
    coarse, half = plate(h, 6), plate(h, 12)
    return half + (half - coarse) / 3
films = np.exp(np.linspace(np.log(4), np.log(30), 13))
ring_resistance = CubicSpline(np.log(films), [np.log(fine(h)) for h in films])
cooled = 2 * np.pi * b**2 - np.pi * a2**2
contact = 1 / (1500 * np.pi * (a2**2 - a1**2))

# ---- films -----------------------------------------------------------------------------------------------------------------------------------
def film(surface, air, length, shape, emissivity):
    """Still air (Churchill & Chu 1975: vertical plate, horizontal cylinder) at film temperature, and grey radiation (Stefan-Boltzmann)."""
    t = (surface + air) / 2 - zero
    # Quadratics through the table of air at 1 atm (Cengel, table A-15).
    k, nu, Pr = 2.36353e-2 + 7.5599e-5 * t - 2.4536e-8 * t**2, 1.33822e-5 + 8.71667e-8 * t + 9.5569e-11 * t**2, 0.736042 - 2.80448e-4 * t + 3.43023e-7 * t**2
    Ra = 9.80665 / (t + zero) * (surface - air) * length**3 / nu**2 * Pr
    lead, bend = {'plate': (0.825, 0.492), 'cylinder': (0.60, 0.559)}[shape]
    Nu = (lead + 0.387 * Ra ** (1 / 6) / (1 + (bend / Pr) ** (9 / 16)) ** (8 / 27)) ** 2
    return Nu * k / length + emissivity * 5.670374419e-8 * (surface**4 - air**4) / (surface - air)

# ---- motor -----------------------------------------------------------------------------------------------------------------------------------
Kv = 110 * 2 * np.pi / 60
R20, to_mount, to_can = 0.1, 1.2, 4.0
can_area = np.pi * 54e-3 * 27e-3 + np.pi / 4 * 54e-3**2               # wall and one end
drag = (10 * 0.6 - 0.6**2 * R20) / (10 * Kv)                            # no-load test: input less copper loss, over speed

emf = lambda can: 1 / Kv * (1 - 0.0011 * (can - zero - 20))             # magnets weaken (tables of neodymium grades)
current = lambda torque, can: torque / (np.sqrt(3) / 2 * emf(can))      # peak phase current, sinusoidal
def can_of(mount, air):
    """The can where as much comes through the motor as leaves its outside."""
    gap = lambda can: (mount - can) / to_can - can_area * film(can, air, 54e-3, 'cylinder', 0.8) * (can - air)
    return brentq(gap, air + 1e-9, mount, xtol=1e-11)
def plate_of(mount, air):
    """Heat through the plate, its film at the mean of its cooled faces."""
    through = lambda h: (mount - air) / (contact + np.exp(ring_resistance(np.log(h))))
    film_at = lambda mean: film(mean, air, 96e-3, 'plate', 0.9)
    gap = lambda mean: through(film_at(mean)) - film_at(mean) * cooled * (mean - air)
    h = film_at(brentq(gap, air + 1e-6, mount, xtol=1e-11))
    assert films[0] < h < films[-1] or mount - air < 5
    return through(h)
def copper(torque, mount, can):
    """Loss with the winding 1.2 K/W above the mount, copper warm (K = 234.5): fixed point of loss and resistance."""
    cold = 0.75 * current(torque, can) ** 2 * R20
    return cold * (234.5 + mount - zero) / 254.5 / (1 - cold * to_mount / 254.5)

def stalled_on(n, torque, air, start, time=900, steps=360):
    """Motor of 0.26 kg and 450 J/(kg K) as one body on the plate in cells (1070 kg/m3, 1300 J/(kg K)), from a steady mount: two-stage implicit steps, films of the moment."""
    part = lambda lo, hi, n: lo + (hi - lo) * (1 - np.cos(np.pi * np.arange(n + 1) / n)) / 2
    edges = np.concatenate([part(0, a1, n)[:-1], part(a1, a2, 2 * n)[:-1], part(a2, b, 4 * n)])
    levels = part(0, thick, 3 * n)
    layers, dz = 3 * n, np.diff(levels)
    middle, area = (edges[1:] + edges[:-1]) / 2, np.pi * (edges[1:] ** 2 - edges[:-1] ** 2)
    at = np.arange(len(middle) * layers).reshape(len(middle), layers)
    across = np.outer(2 * np.pi * edges[1:-1] * k_plate / np.diff(middle), dz)
    down = np.outer(area * k_across, 2 / (dz[1:] + dz[:-1]))
    inner = np.zeros(at.shape)
    inner[:-1] += across; inner[1:] += across; inner[:, :-1] += down; inner[:, 1:] += down
    i = np.concatenate([at.ravel(), at[:-1].ravel(), at[1:].ravel(), at[:, :-1].ravel(), at[:, 1:].ravel()])
    j = np.concatenate([at.ravel(), at[1:].ravel(), at[:-1].ravel(), at[:, 1:].ravel(), at[:, :-1].ravel()])
    v = np.concatenate([inner.ravel(), -across.ravel(), -across.ravel(), -down.ravel(), -down.ravel()])
    base = coo_matrix((v, (i, j))).tocsc()
    ring, open_ = (middle > a1) & (middle < a2), middle > a2
    weight = np.zeros(at.shape); weight[ring, 0] = area[ring] / area[ring].sum()
    weight = weight.ravel()
    drop = dz[0] / 2 / k_across / area[ring].sum() + contact        # from the middle of the first cells to the mounting face, per watt
    capacity = (1070 * 1300 * np.outer(area, dz)).ravel()
    u, mount, h = np.zeros(len(weight)), air, 8.0
    step, g = time / steps, 1 - np.sqrt(0.5)
    def faces(h):
        out = np.zeros(at.shape)
        out[:, -1] += area / (1 / h + dz[-1] / 2 / k_across); out[open_, 0] += area[open_] / (1 / h + dz[0] / 2 / k_across)
        return out
    def mean_face(u, h):
        grid = u.reshape(at.shape)
        top, bottom = grid[:, 0] / (1 + h * dz[0] / 2 / k_across), grid[:, -1] / (1 + h * dz[-1] / 2 / k_across)
        return ((top * area)[open_].sum() + (bottom * area).sum()) / (area[open_].sum() + area.sum())
    # What a walk has left: a plate that carries off the heat of its mount steadily.
    for _ in range(40):
        green = splu((base + diags(faces(h).ravel())).tocsc()).solve(weight)
        u = (start - air) / (drop + weight @ green) * green
        h = film(air + max(mean_face(u, h), 1e-6), air, 96e-3, 'plate', 0.9)
    mount = start
    for _ in range(steps):
        for _ in range(3): h = film(air + max(mean_face(u, h), 1e-6), air, 96e-3, 'plate', 0.9)
        lu = splu((base + diags(faces(h).ravel() + capacity / (g * step))).tocsc())
        green = lu.solve(weight)
        rates = []
        for stage in range(2):
            bu = u + (step * (1 - g) * rates[0][0] if stage else 0)
            bm = mount + (step * (1 - g) * rates[0][1] if stage else 0)
            free = lu.solve(capacity / (g * step) * bu)
            def late(m):
                q = (m - air - weight @ free) / (drop + weight @ green)
                can = can_of(m, air) if m > air + 1e-6 else air
                return m - bm - g * step * (copper(torque, m, can) - (m - can) / to_can - q) / (0.26 * 450)
            m = brentq(late, bm - 50, bm + 50, xtol=1e-10)
            q = (m - air - weight @ free) / (drop + weight @ green)
            rates.append((((free + q * green) - bu) / (g * step), (m - bm) / (g * step)))
        u = u + step * ((1 - g) * rates[0][0] + g * rates[1][0])
        mount = mount + step * ((1 - g) * rates[0][1] + g * rates[1][1])
    return mount
def stalled(torque, air, start):
    """Grids halved, as in `fine`: cells of one grid alone are 0.9 K of 357 K off."""
    coarse, half = stalled_on(6, torque, air, start), stalled_on(12, torque, air, start)
    return half + (half - coarse) / 3

def motor(case, joint, air):
    if case in ('stand', 'stall'):                                     # held: nothing turns, one phase carries its peak and twice its share
        heating = most = abs(statics[case][joint]) / ratio[joint] / 0.95
        speed = loaded = iron = 0
        share = 2
    else:
        walk = statics['walkBack' if case == 'walkBack' else 'walk']
        heating, most = walk[joint + 'ShaftRms'] / ratio[joint] / 0.95 + drag, abs(walk[joint + 'Shaft']) / ratio[joint] / 0.95 + drag
        speed, loaded = walk[joint + 'Speed'] * ratio[joint], walk[joint + 'LoadedSpeed'] * ratio[joint]
        iron = drag * 2 / np.pi * speed                                # mean of a half sine over its peak
        share = 1
    def spare(mount):
        can = can_of(mount, air)
        return copper(heating, mount, can) + iron - (mount - can) / to_can - plate_of(mount, air)
    if case == 'stall':
        walks = [motor(walk, joint, air) for walk in ('walk', 'walkBack')]     # the warmer leaves it so
        if None in walks:
            return None                                                # nothing that a stall could start from
        mount = stalled(heating, air, max(walk['mount'] for walk in walks))
    elif min(spare(air + rise) for rise in np.linspace(1, 170, 170)) > 0:
        return None                                                    # more heat than leaves at any temperature: no steady one
    else:
        mount = brentq(spare, air + 0.01, air + 170, xtol=1e-11)
    def bearable(mount):
        """The torque whose heat is what leaves at a temperature of the mount, by a root."""
        can = can_of(mount, air)
        leaves = (mount - can) / to_can + plate_of(mount, air) - iron
        pole = np.sqrt(254.5 / to_mount / 0.75 / R20) * np.sqrt(3) / 2 * emf(can)     # of the winding on its own: no torque beyond has a balance
        return brentq(lambda q: copper(q, mount, can) - leaves, 0, pole * (1 - 1e-9), xtol=1e-12)
    most_steady = 0 if case == 'stall' else -minimize_scalar(lambda mount: -bearable(mount), bounds=(air + 5, air + 450), method='bounded', options={'xatol': 1e-3}).fun
    can = can_of(mount, air)
    loss = copper(heating, mount, can)
    mean = mount + to_mount * loss
    return {'heating': heating, 'most': most, 'iron': iron, 'mount': mount, 'can': can, 'loss': loss, 'winding': mount + share * to_mount * loss,
            'steady': most_steady, 'resistance': R20 * (234.5 + mean - zero) / 254.5, 'emf': emf(can), 'current': current(most, can),
            'heatingCurrent': current(heating, can), 'speed': speed, 'loadedSpeed': loaded}

rows = {}
motors = {}
for case, air in (('walk', zero + 20), ('hotAfternoon', zero + 40), ('stand', zero + 20), ('stall', zero + 40)):
    m = motors[case] = {joint: o for joint in ratio if (o := motor(case, joint, air)) is not None}
    for joint, o in m.items():
        rows.update({f'{case} {check} {joint}': values for check, values in {
            'motor.winding': [o['winding'] + 10 - air, 130 + zero - air],       # hottest spot 10 K above the mean; class B
            'motor.magnet': [o['can'] - air, 80 + zero - air],
            'motor.touch': [o['can'] - air, 68 + zero - air],
            'motor.plate': [o['mount'] - air, 103 - 15 + zero - air],           # 15 K below the glass transition
            'cord.heat': [o['mount'] - air, 60 + zero - air],
            'motor.current': [o['current'], 40],
            # 3 I_rms^2 R of one switch, half a per cent more for each kelvin above 25 degC.
            'controller.heat': [14 * (1.5 * o['heatingCurrent'] ** 2 * 0.004 * (1 + 0.005 * 75) + 0.6), 100 + zero - air]}.items()})
        if case != 'stall': rows[f'{case} motor.runaway {joint}'] = [o['heating'], o['steady']]
    if case in ('stand', 'stall'): continue
    # All four legs, each drive at its peak: copper and iron loss, 0.6 W of switching and the hot switches' conduction; voltage behind 70 mohm (quadratic).
    switches = 1.5 * 0.004 * (1 + 0.005 * 75)
    power = 4 * sum(o['most'] * o['loadedSpeed'] + 0.75 * o['current'] ** 2 * o['resistance'] + o['iron'] + 0.6 + switches * o['current'] ** 2 for o in m.values()) + 5      # and 5 W of electronics
    volts = (22 + np.sqrt(22**2 - 4 * 0.07 * power)) / 2
    rows[f'{case} supply.current'] = [power / volts, min(60, 22**2 / (4 * 0.07) / 11)]
    for joint, o in m.items():
        def at(emf, amps):
            """Voltage circle of a surface-magnet machine (Park): (R i + psi w)^2 + (w L i p)^2 = (V / sqrt 3)^2, largest root."""
            psi, reach, drop = emf / np.sqrt(3), 14 * 40e-6 * amps, o['resistance'] / 2 * amps
            return np.roots([psi**2 + reach**2, 2 * drop * psi, drop**2 - volts**2 / 3]).max()
        # Magnets warm, or still as cold as the air: the slower.
        speed = lambda share: min(at(emf(can), share * current(o['most'], can)) for can in (o['can'], air))
        rows[f'{case} motor.speed {joint}'] = [o['loadedSpeed'], speed(1)]
        rows[f'{case} motor.swing {joint}'] = [o['speed'], speed(0.2)]

# A landing in the middle of a walk either way, in still air: the magnets are as warm as the warmer walk leaves them; without a steady temperature at 700 K.
warm = {j: [motor(case, j, zero + 20) for case in ('walk', 'walkBack')] for j in ratio}
hot = {j: [motor(case, j, zero + 40) for case in ('walk', 'walkBack')] for j in ratio}
of = lambda states, what: max(700 if one is None else one[what] for one in states)
for j in ratio:
    rows[f'drop motor.current {j}'] = [current(abs(statics['drop'][j]) / ratio[j] / 0.95, of(warm[j], 'can')), 40]
# Bolts of landing and season: they creep on the hottest days, and what has crept does not come back. Beyond the glass transition creep runs no faster,
# and no print is reckoned hotter than 60 K above it. The stack is half as warm above the air as the hip's mount.
at_bolts = lambda states: min(of(states, 'mount') - zero, 103 + 60)
stack_in = lambda states, air: (at_bolts(states) + air) / 2
crept = parts['clamp_left'](parts['stack'], stack_in(hot['hip'], 40))
pressed = lambda celsius: parts['F4'] + parts['warming'](parts['stack'], parts['mm'] * 15, celsius)
for case in ('drop', 'season'):
    rows[f'{case} stackBolt.separation'] = [parts['pull'](case), crept / (1 - parts['share'])]
    rows[f'{case} stackBolt.slip'] = [float(parts['in_plane'](case)) / 4, 0.4 * crept]
rows['drop stackBolt.overload'] = [parts['pull']('drop'), (parts['proof'] * parts['M4']['As'] - pressed(stack_in(warm['hip'], 20))) / parts['share']]
rows['season stackBolt.headPressure'] = [pressed(stack_in(warm['hip'][:1], 20)) / parts['ring'](parts['M4']), parts['along'](parts['ASA'], stack_in(warm['hip'][:1], 20), 86400)]
for j in ratio:
    across = (warm[j][0]['most'] / 12.5e-3 + float(parts['on_shafts']('season', j))) / 4
    rows[f'season motorBolt.slip {j}'] = [across, 0.4 * parts['clamp_left'](parts['motor'], at_bolts(hot[j]))]
# No pressure under the heads of the motors: their plates are beyond 15 K below the glass transition in every walk, which is a failure of their own.
assert all(at_bolts(warm[j][:1]) > 103 - 15 for j in ratio)
# Bolts of the hot afternoon: the motor's own are beyond the glass transition, the stack's half as warm above the air as the hip's mount.
for joint, o in motors['hotAfternoon'].items():
    assert o['mount'] - zero > 103
    across = (o['most'] / 12.5e-3 + float(parts['on_shafts']('hotAfternoon', joint))) / 4
    rows[f'hotAfternoon motorBolt.slip {joint}'] = [across, 0.4 * parts['clamp_left'](parts['motor'], o['mount'] - zero)]
stack_at = (motors['hotAfternoon']['hip']['mount'] - zero + 40) / 2
rows['hotAfternoon stackBolt.headPressure'] = [(parts['F4'] + parts['warming'](parts['stack'], parts['mm'] * 15, stack_at)) / parts['ring'](parts['M4']), parts['along'](parts['ASA'], stack_at, 86400)]
rows['hotAfternoon stackBolt.slip'] = [float(parts['in_plane']('walk')) / 4, 0.4 * crept]
out = {'rows': {key: [float(v) for v in values] for key, values in rows.items()},
       'motors': {case: {joint: {k: float(v) for k, v in o.items()} for joint, o in m.items()} for case, m in motors.items()},
       'ringResistance': {str(h): float(fine(h)) for h in (6, 10, 16)}}
json.dump(out, open(os.path.join(here, 'leg-hand-heat.json'), 'w'), indent=1)
print(len(rows), 'rows,', len({key.split()[1] for key in rows}), 'checks', [plate(10, n) for n in (3, 6, 12)], fine(10))
