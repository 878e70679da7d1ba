"""Motors of the demo's first design by hand, walking until they settle: torque, current, loss, films, plate, winding, controller, supply.

Independent of the library: heat balances and published correlations put down anew, all solved together (no loop of the library's kind); the
plate by finite volumes instead of a series. Torques and speeds come from leg-hand.py. Writes leg-hand-heat.json beside this file.
"""
import json, os, runpy
import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve
from scipy.interpolate import CubicSpline
from scipy.optimize import fsolve

here = os.path.dirname(os.path.abspath(__file__))
statics = runpy.run_path(os.path.join(here, 'leg-hand.py'))['out']
walk = statics['walk']
zero = 273.15
r1 = (12e-3 + 1.6e-3) / 2
ratio = {'hip': (82.72e-3 + 1.6e-3) / 2 / r1, 'knee': (74.56e-3 + 1.6e-3) / 2 / r1}

# ---- plate under the motor: heat enters through a ring of 14 to 34 mm, printed ASA 7 mm thick, as wide as a disc of the same area -----
a1, a2, b, thick, k_plate = 7e-3, 17e-3, np.sqrt(84e-3 * 96e-3 / np.pi), 7e-3, 0.18
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
    out = lambda dz: 1 / (1 / h + dz / 2 / k_plate)             # from the middle of a cell at a face to the air
    diagonal = np.zeros((cells, layers))
    diagonal[:, -1] += out(dz[-1]) * area
    diagonal[middle > a2, 0] += out(dz[0]) * area[middle > a2]
    across = np.outer(2 * np.pi * edges[1:-1] * k_plate / np.diff(middle), dz)
    down = np.outer(area * k_plate, 2 / (dz[1:] + dz[:-1]))
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
    return ((T[ring, 0] + flux * dz[0] / 2 / k_plate) * area[ring]).sum() / area[ring].sum()
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
R20, to_mount, to_can = 0.13, 1.2, 4.0
can_area = np.pi * 54e-3 * 27e-3 + np.pi / 4 * 54e-3**2               # wall and one end
drag = (10 * 0.6 - 0.6**2 * R20) / (10 * Kv)                            # no-load test: input less copper loss, over speed

def motor(joint, air):
    heating = walk[joint + 'ShaftRms'] / ratio[joint] / 0.95 + drag
    most = abs(walk[joint + 'Shaft']) / ratio[joint] / 0.95 + drag
    iron = drag * 2 / np.pi * walk[joint + 'Speed'] * ratio[joint]      # mean of a half sine over its peak
    emf = lambda can: 1 / Kv * (1 - 0.0011 * (can - zero - 20))         # magnets weaken (tables of neodymium grades)
    current = lambda torque, can: torque / (np.sqrt(3) / 2 * emf(can))  # peak phase current, sinusoidal
    def balance(x):
        mount, can, plate_mean, loss = x
        by_can = (mount - can) / to_can
        h = film(plate_mean, air, 96e-3, 'plate', 0.9)
        by_plate = (mount - air) / (contact + np.exp(ring_resistance(np.log(h))))
        winding = mount + to_mount * loss
        return (by_can - can_area * film(can, air, 54e-3, 'cylinder', 0.8) * (can - air),
                by_plate - h * cooled * (plate_mean - air),             # the plate's film stands at the mean of its cooled faces
                loss + iron - by_can - by_plate,
                loss - 0.75 * current(heating, can) ** 2 * R20 * (234.5 + winding - zero) / 254.5)
    x, _, ok, text = fsolve(balance, (air + 40, air + 30, air + 20, 3), xtol=1e-13, full_output=True)
    assert ok == 1 or np.max(np.abs(balance(x))) < 1e-9, text
    mount, can, plate_mean, loss = x
    to_air = to_mount + (mount - air) / (loss + iron)
    hot = R20 * (234.5 + mount + to_mount * loss - zero) / 254.5
    return {'heating': heating, 'most': most, 'iron': iron, 'mount': mount, 'can': can, 'plateMean': plate_mean, 'loss': loss, 'winding': mount + to_mount * loss,
            'toAir': to_air, 'resistance': hot, 'emf': emf(can), 'current': current(most, can), 'heatingCurrent': current(heating, can),
            'lossAt20': 0.75 * current(heating, can) ** 2 * R20, 'speed': walk[joint + 'Speed'] * ratio[joint], 'loadedSpeed': walk[joint + 'LoadedSpeed'] * ratio[joint]}

rows = {}
motors = {}
for case, air in (('walk', zero + 20), ('hotAfternoon', zero + 40)):
    m = motors[case] = {joint: motor(joint, air) for joint in ratio}
    # Three of four legs stand: each drive at its peak, copper and iron loss and 0.6 W of switching; voltage behind 70 mohm (quadratic).
    power = 3 * sum(o['most'] * o['loadedSpeed'] + 0.75 * o['current'] ** 2 * o['resistance'] + o['iron'] + 0.6 for o in m.values())
    volts = (22 + np.sqrt(22**2 - 4 * 0.07 * power)) / 2
    rows[f'{case} supply.current'] = [power / volts, min(60, 22**2 / (4 * 0.07) / 11)]
    for joint, o in m.items():
        def speed(amps):
            """Voltage circle of a surface-magnet machine (Park): (R i + psi w)^2 + (w L i p)^2 = (V / sqrt 3)^2, largest root."""
            psi, reach, drop = o['emf'] / np.sqrt(3), 14 * 40e-6 * amps, o['resistance'] / 2 * amps
            return np.roots([psi**2 + reach**2, 2 * drop * psi, drop**2 - volts**2 / 3]).max()
        rows.update({f'{case} {check} {joint}': values for check, values in {
            'motor.runaway': [o['lossAt20'], 254.5 / o['toAir']],
            'motor.winding': [o['winding'] + 10 - air, 130 + zero - air],       # hottest spot 10 K above the mean; class B
            'motor.magnet': [o['can'] - air, 80 + zero - air],
            'motor.touch': [o['can'] - air, 68 + zero - air],
            'motor.plate': [o['mount'] - air, 103 - 15 + zero - air],           # 15 K below the glass transition
            'cord.heat': [o['mount'] - air, 60 + zero - air],
            'motor.current': [o['current'], 40],
            'motor.speed': [o['loadedSpeed'], speed(o['current'])],
            'motor.swing': [o['speed'], speed(0.2 * o['current'])],
            # Two of three bridge legs' worth: 3 I_rms^2 R, half a per cent more for each kelvin above 25 degC.
            'controller.heat': [14 * (1.5 * o['heatingCurrent'] ** 2 * 0.004 * (1 + 0.005 * 75) + 0.6), 100 + zero - air]}.items()})
out = {'rows': {key: [float(v) for v in values] for key, values in rows.items()},
       'motors': {case: {joint: {k: float(v) for k, v in o.items()} for joint, o in m.items()} for case, m in motors.items()},
       'ringResistance': {str(h): float(fine(h)) for h in (6, 10, 16)}}
json.dump(out, open(os.path.join(here, 'leg-hand-heat.json'), 'w'), indent=1)
print(len(rows), 'rows,', len({key.split()[1] for key in rows}), 'checks', [plate(10, n) for n in (3, 6, 12)], fine(10))
