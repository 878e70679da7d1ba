"""Checks of the demo's first design by hand, step by step: cord, drum, pins, bosses, bolts, shaft, bearings, links, foot, ground.

Independent of the library: each step is a formula of a textbook or standard, named beside it, put down here anew. Torques come from leg-hand.py.
Each entry is `case check joint: [demand, capacity]` in SI. Writes leg-hand-checks.json beside this file.
"""
import json, os, runpy
from mpmath import mp, mpf, sqrt, asin, atan, sin, cos, tan, tanh, pi, log, exp, sinh, findroot, diff, gamma, erfc, hypot, quad

mp.dps = 30
here = os.path.dirname(os.path.abspath(__file__))
statics = runpy.run_path(os.path.join(here, 'leg-hand.py'))['out']
mm, MPa = mpf('0.001'), mpf(10) ** 6
rows = {}
def row(case, check, joint, demand, capacity): rows[' '.join((case, check, *([joint] if joint else [])))] = [float(demand), float(capacity)]

# ---- load cases: force on the foot, time under load, cycles, air -----------------------------------------------------------------
force = {'stand': mpf(statics['stand']['force']), 'walk': mpf(statics['walk']['force']), 'drop': mpf(statics['drop']['force'])}
force['season'] = force['coldMorning'] = force['hotAfternoon'] = force['walk']
forward = mpf('0.15') * force['walk']
strides = 9000 * 70
hour = 3600
day = 24 * hour
# Walking loads the foot for the duty factor of an hour a day; a season for 0.6 s a stride; a drop is a moment.
time = {'stand': 8 * hour, 'walk': mpf('0.75') * hour, 'hotAfternoon': mpf('0.75') * hour, 'drop': 1, 'coldMorning': 1, 'season': strides * mpf('0.6'),
        'shelf': mpf(31557600)}
air = {'stand': 20, 'walk': 20, 'drop': 20, 'season': 20, 'coldMorning': -2, 'hotAfternoon': 40, 'shelf': 25}
def torque(case, joint): return abs(mpf(statics[{'season': 'walk', 'coldMorning': 'walk', 'hotAfternoon': 'walk'}.get(case, case)][joint]))

# ---- printed polymers: soaked by damp air --------------------------------------------------------------------------------------------
# Tensile strength, share across layers, shear between layers over that, glass transition, fatigue ratio: ranges of printed bars (tables of data).
ASA = {'strength': 38 * MPa, 'across': mpf('0.6'), 'shear': mpf('0.577'), 'glass': 103, 'limit': mpf('0.0075'), 'creep': (mpf('0.155'), mpf('0.27')), 'fatigue': mpf('0.22'), 'E': mpf('2.1e9'), 'nu': mpf('0.36'), 'alpha': mpf('95e-6')}
PC = {'strength': 62 * MPa, 'across': mpf('0.65'), 'shear': mpf('0.577'), 'glass': 145, 'limit': mpf('0.0075'), 'E': mpf('2.3e9'), 'creep': (mpf('0.091'), mpf('0.154')), 'fatigue': mpf('0.15')}
WET = mpf('0.94')                                           # strength and stiffness of an amorphous polymer soaked over dry
SWELLING = mpf('0.013') * mpf('0.27')                       # 1.3 % of water, 0.27 per cent of length for each per cent of mass
STEEL = {'E': mpf('207e9'), 'nu': mpf('0.29'), 'alpha': mpf('11.9e-6')}
def rupture(p, celsius, seconds, cycles=1):
    """Strength along the layers: partial factors multiplied, as in plastics design codes."""
    warm = min(1, (p['glass'] - 15 - mpf(celsius)) / (p['glass'] - 15 - 23))           # straight to nothing 15 K below the glass transition
    # Strength for rupture falls with the logarithm of time (BS 4618): 1 at a minute, 0.55 at 1000 h, 0.32 at a year, then a power of time.
    thousand, year = mpf(1000 * hour), mpf(31557600)
    def kept(t):
        if t <= 60: return mpf(1)
        if t <= thousand: return 1 - mpf('0.45') * log(t / 60) / log(thousand / 60)
        if t <= year: return mpf('0.55') - mpf('0.23') * log(t / thousand) / log(year / thousand)
        return mpf('0.32') * (t / year) ** (log(mpf('0.32')) / log(year / 60))
    # Time runs faster when warm (Arrhenius, 150 kJ/mol); a test of a minute at the temperature is the strength there.
    faster = exp(mpf(150000) / mpf('8.31446261815324') * (1 / mpf('296.15') - 1 / (mpf(celsius) + mpf('273.15')))) if celsius > 23 and seconds > 60 else 1
    long = kept(mpf(seconds) * faster) / kept(60 * faster)
    worn = mpf(cycles) ** (log(p['fatigue'], 10) / 6)       # Basquin's line from 1 at one cycle to the fatigue ratio at a million
    return p['strength'] * WET * warm * long * worn
def creep_modulus(p, celsius, seconds):
    """Modulus left of a held strain: Findley's creep 1 + c (t/1 h)^n turned about exactly (Mittag-Leffler), hotter is longer (Arrhenius)."""
    shift = exp(150000 / mpf('8.31446261815324') * (1 / (mpf('273.15') + celsius) - 1 / mpf('296.15')))
    n, c = p['creep'][1], p['creep'][0]
    z = -c * gamma(1 + n) * (seconds / shift / hour) ** n
    if z > -1: return p['E'] * WET * sum(z**k / gamma(1 + n * k) for k in range(400))
    # The series cancels itself away where much is relaxed: the same function as a spectrum of decays (Gorenflo & Mainardi 1997), r = exp(u).
    late = (-z) ** (1 / n)
    spectrum = lambda u: exp(n * u - late * exp(u)) / (exp(2 * n * u) + 2 * exp(n * u) * cos(n * pi) + 1)
    return p['E'] * WET * sin(n * pi) / pi * quad(spectrum, [-400, -200, -100, -50, -20, -10, -5, 0, 5])
def slower(celsius): return exp(150000 / mpf('8.31446261815324') * (1 / (mpf('273.15') + celsius) - 1 / mpf('296.15')))
def since_assembly(celsius, seconds):
    """Time at 23 degrees that a fit has relaxed: a season in a room or a year on the shelf at 25 degrees, whichever is more, then the time of a case in its air."""
    return max(70 * day, time['shelf'] / slower(air['shelf'])) + seconds / slower(celsius)
def lesser(p, celsius, seconds, cycles, modulus, share):
    """Lower of rupture and design strain; the limit of strain comes in with the logarithm of time, from a minute to 1000 hours (Crawford)."""
    if cycles > 1 or seconds <= 60: return share * rupture(p, celsius, seconds, cycles)
    long = min(1, log(mpf(seconds) / 60) / log(mpf(1000 * hour) / 60))
    return min(share * rupture(p, celsius, seconds), share * rupture(p, celsius, 60) * (1 - long) + modulus * p['limit'] * long)
def along(p, celsius, seconds, cycles=1, share=1):
    return lesser(p, celsius, seconds, cycles, creep_modulus(p, celsius, seconds), share)
def held(p, celsius, seconds, share):
    """A strain that is held relaxes and does not grow: its own modulus counts."""
    return lesser(p, celsius, seconds, 1, p['E'] * WET, share)
across = lambda p, celsius, seconds, cycles=1: along(p, celsius, seconds, cycles, p['across'])
between = lambda p, *at: p['shear'] * p['across'] * rupture(p, *at)       # in shear only rupture counts
MISES = mpf('0.577')                                        # shear over tensile yield, von Mises

# ---- cord drive --------------------------------------------------------------------------------------------------------------------------
d_cord, EA, MBS, T_built, mu = mpf('1.6') * mm, mpf(26000), mpf(2400), mpf(90), mpf('0.14')
r1 = (12 * mm + d_cord) / 2
R = {'hip': (mpf('82.72') * mm + d_cord) / 2, 'knee': (mpf('74.56') * mm + d_cord) / 2}
C = {'hip': 64 * mm, 'knee': 118 * mm}
travel_deg = {'hip': 130, 'knee': 115}
# Crossed belt (any machine-design text): tilt of the spans, their length, arcs; three more turns on the pinion.
tilt = {j: asin((r1 + R[j]) / C[j]) for j in R}
span = {j: sqrt(C[j]**2 - (r1 + R[j]) ** 2) for j in R}
drum_arc = {j: pi + 2 * tilt[j] for j in R}
pinion_arc = {j: 6 * pi + pi + 2 * tilt[j] for j in R}

def pretension(case):
    """Pretension at the temperature of a case, as set: strain of frame (ASA) less that of the cord, times EA."""
    return T_built + EA * (air[case] - 20) * (ASA['alpha'] + mpf('12e-6'))

def feed(T, T0, radius, wrap):
    """Cord that an arc gives out (taut) or takes up (slack): Euler-Eytelwein slip until the tension is T0, or until the anchor."""
    arc, sign = abs(log(T / T0)) / mu, 1 if T >= T0 else -1
    if arc <= wrap: return radius / (mu * EA) * (T - T0 - T0 * log(T / T0))
    return abs(radius / EA * (T * (1 - exp(-sign * mu * wrap)) / (sign * mu) - T0 * wrap))

def gap(taut, slack, T0, j, turned=0, pinion=None):
    """What the taut branch gives less what the slack branch takes: nothing, at fixed centres; the joint `turned` from mid travel."""
    both = lambda T, q: abs(T - T0) * span[j] / EA + feed(T, T0, R[j], drum_arc[j] / 2 + q) + feed(T, T0, r1, pinion or pinion_arc[j])
    return both(taut, turned) - both(slack, -turned)

def tensions(case, j):
    T0, pull = pretension(case), torque(case, j) / R[j]
    taut = findroot(lambda T: gap(T, T - pull, T0, j), (T0 + pull * mpf('0.5'), T0 + pull * mpf('0.6')), solver='anderson')
    return taut, taut - pull

# Both limits are lowest at an end of travel, the taut span's arc on the drum the longer one (shown by the cord node by node, capstan-limits.py).
end_of_travel = {j: mpf(t) / 2 * pi / 180 for j, t in travel_deg.items()}
def slip_torque(T0, j):
    """The whole arc on the pinion slips: Euler-Eytelwein ratio over all of it."""
    ratio = exp(mu * pinion_arc[j])
    # Above the square root of the ratio the taut side cannot lie: its arc would be longer than the whole.
    taut = findroot(lambda T: gap(T, T / ratio, T0, j, end_of_travel[j]), (T0 * mpf('1.2'), T0 * mpf('2.2')), solver='anderson')
    return R[j] * taut * (1 - 1 / ratio)
def slack_torque(T0, j):
    """The slack span keeps a hundredth of the pretension; the pinion held in the middle of its wraps, as if it could not slip."""
    slack = T0 / 100
    taut = findroot(lambda T: gap(T, slack, T0, j, end_of_travel[j], pinion_arc[j] / 2), (T0 * mpf('1.2'), T0 * mpf('2.5')), solver='anderson')
    return R[j] * (taut - slack)

def on_shafts(case, j):
    """Both spans together on the shaft of the drum: along the line of centres and across it (statics)."""
    taut, slack = tensions(case, j)
    if case in ('hop', 'drop', 'stall'):
        # The joint has travelled under the load: the whole difference of the spans came from the taut one (the cord is no longer than it was).
        shift = max(mpf(0), pretension(case) + torque(case, j) / R[j] - taut)
        taut, slack = taut + shift, slack + shift
    return sqrt(((taut + slack) * cos(tilt[j])) ** 2 + ((taut - slack) * sin(tilt[j])) ** 2)
def in_plane(case):
    """Ground on the foot in the plane of the leg: across the ground, and along it 0.15 of that in every stride. A landing of this leg is upright."""
    return force[case] * (1 if case in ('stand', 'drop', 'coldDrop', 'dropEnd') else sqrt(1 + mpf('0.15') ** 2))
def on_pin(case, j): return on_shafts(case, j) + in_plane(case)

# Working load (rope practice, CI 1401): strength, a bowline in UHMWPE keeps a third, bend 8.5 times the cord takes nothing off, over a factor.
ended = MBS * mpf('0.33') * min(1, 2 * r1 / d_cord / 8)
for j in R:
    for case in ('stand', 'walk', 'coldMorning', 'drop'):
        row(case, 'cord.slack', j, torque(case, j), slack_torque(pretension(case), j))
    for case in ('walk', 'season', 'coldMorning'):
        row(case, 'cord.slip', j, torque(case, j), slip_torque(pretension(case), j))
    row('walk', 'cord.working', j, tensions('walk', j)[0], ended / 5)
    # Travel under load winds slack cord on until the slack span carries the pretension again.
    row('drop', 'cord.peak', j, pretension('drop') + torque('drop', j) / R[j], ended / 2)
    row('walk', 'cord.bend', j, 8, 2 * r1 / d_cord)
    # Anchors opposite the pinion at mid travel: each branch has half of the arc on the drum, and ten degrees of it are to be left.
    row('walk', 'cord.wrap', j, end_of_travel[j] + 10 * pi / 180, drum_arc[j] / 2)
    row('shelf', 'cord.sustained', j, pretension('shelf'), mpf('0.15') * MBS)
    # A year at 25 degC ages as some at 20 degC: Eyring rate, 1.5 eV and 45 cubic angstrom (J. Chem. Phys. 153 (2020) 144904), fibre of 2.8 GPa.
    k, eV = mpf('1.380649e-23'), mpf('1.602176634e-19')
    rate = lambda T: exp(-mpf('1.5') * eV / (k * T)) * sinh(T_built / MBS * mpf('2.8e9') * mpf('45e-30') / (k * T))
    years = rate(mpf('298.15')) / rate(mpf('293.15'))
    # It must walk in every direction.
    row('shelf', 'cord.shelf', j, max(torque(way, j) for way in ('walk', 'walkBack', 'slope', 'slopeDown', 'slopeAcross')) / slip_torque(mpf(1), j), T_built * mpf('0.75') ** years)

# ---- drum: thick cylinder, hub of twice the bore -------------------------------------------------------------------------------------------
bore, wide, pitch = {'hip': 22 * mm, 'knee': 16 * mm}, 14 * mm, 2 * mm
for j in R:
    T0 = pretension('season')
    pressure, outer, inner = T0 / (R[j] * pitch), R[j] - d_cord / 2, bore[j] / 2
    row('season', 'drum.hoop', j, 2 * pressure * outer**2 / (outer**2 - inner**2), along(PC, 20, time['season']))      # Lame, outer pressure
    row('walk', 'drum.groove', j, 2 * tensions('walk', j)[0] / (2 * R[j] * d_cord), along(PC, 20, time['walk']))       # rope pressure 2 T / (D d)
    D, d = min(2 * outer, 2 * bore[j]), bore[j]
    polar = pi * (D**4 - d**4) / 32
    for case, cycles in (('walk', 1), ('season', strides)):
        row(case, 'drum.layers', j, torque(case, j) * D / 2 / polar, between(PC, 20, 1, cycles))                             # torsion of a ring
        row(case, 'drum.split', j, on_shafts(case, j) * wide / 2 * D / 2 / (polar / 2), across(PC, 20, 1, cycles))         # bending of a ring
    # The arc that an end of travel leaves before the anchor takes the tension down by exp(mu arc), but not below what is stored (Euler-Eytelwein). In a landing
    # the joint has travelled under load, as for the cord.
    for case in ('walk', 'season', 'drop'):
        taut = pretension(case) + torque(case, j) / R[j] if case == 'drop' else tensions(case, j)[0]
        pull = max(pretension(case), taut * exp(-mu * (drum_arc[j] / 2 - end_of_travel[j])))
        row(case, 'anchor.bearing', j, pull / (3 * mm * 6 * mm), along(PC, 20, time[case]))
        row(case, 'anchor.tearOut', j, pull / (2 * (5 - mpf(3) / 2) * mm * 6 * mm), MISES * along(PC, 20, time[case]))
    # Cord between the anchors: two spans, the arc on the drum, the helix on the pinion (Pythagoras).
    length = 2 * span[j] + R[j] * drum_arc[j] + pinion_arc[j] / (2 * pi) * hypot(2 * pi * r1, pitch)
    stretch = T_built / EA + mpf('0.01') + T_built * mpf('0.25') / EA         # elastic, bedding of a new braid, creep of a year
    row('season', 'tensioner.travel', j, length * stretch + 2 * mm, 12 * mm)

# ---- pins and bosses -----------------------------------------------------------------------------------------------------------------------
d = 4 * mm
fork, tongue, side = {'hip': 6 * mm, 'knee': 5 * mm}, 14 * mm, mpf('0.3') * mm
boss_d, edge, L = {'hip': 11 * mm, 'knee': 10 * mm}, {'hip': 6 * mm, 'knee': 5 * mm}, 6 * mm
Rm = 1500 * MPa
def bending(F, j):
    """Pin between fork and tongue, loads in the middle of what bears (Bruhn, D1)."""
    return 32 * (F / 2) * (fork[j] / 2 + side + tongue / 4) / (pi * d**3)
# Endurance limit (Shigley, Marin factors): ground, below the size of the test bar, 99 %.
Se = mpf('1.58') * mpf(1500) ** mpf('-0.085') * mpf('0.814') * min(700 * MPa, Rm / 2)
hole, hole_scatter = mpf('3.95') * mm, mpf('0.02') * mm
upper, lower = 12 * mpf('1e-6'), 4 * mpf('1e-6')                                 # m6 above 3 to 6 mm (ISO 286-2)
def lame(delta, E, j):
    """Pressure and hoop stress at the bore of a boss on a solid pin (Lame; Shigley eq. 3-56)."""
    k = (boss_d[j] ** 2 + d**2) / (boss_d[j] ** 2 - d**2)
    p = delta / (d * ((k + ASA['nu']) / E + (1 - STEEL['nu']) / STEEL['E']))
    return p, p * k
hoop_across = {'hip': False, 'knee': True}                       # bore in the layers: hoop stress pulls them apart
for j in R:
    for case in ('walk', 'drop') if j == 'hip' else ('walk',):          # dropped, the knee's cord slips
        F = on_pin(case, j)
        row(case, 'pin.shear', j, mpf(4) / 3 * F / 2 / (pi / 4 * d**2), MISES * Rm)             # round bar, peak 4/3 of the mean, two planes
        row(case, 'pin.bending', j, bending(F, j), mpf('0.85') * Rm)
    most, least = bending(on_pin('season', j), j), bending(on_shafts('season', j), j)
    row('season', 'pin.fatigue', j, most, most / ((most - least) / 2 / Se + (most + least) / 2 / Rm))  # Goodman (Shigley 6-12)
    for case in ('stand', 'walk', 'season'):
        F, at = on_pin(case, j), (air[case], time[case])
        row(case, 'pin.bearingTongue', j, F / (d * tongue), along(ASA, *at) / 2)
        row(case, 'boss.bearing', j, F / 2 / (d * L), along(ASA, *at))
        # Rigid pin in a linear bed, force outside the mouth (Hetenyi): q0 = F (4 L + 6 a) / L^2.
        row(case, 'boss.mouth', j, F / 2 * (4 * L + 6 * (side + tongue / 4)) / L**2 / d, 2 * along(ASA, *at))
        row(case, 'boss.tearOut', j, F / 2 / (2 * (edge[j] - d / 2) * L), between(ASA, *at) if hoop_across[j] else MISES * along(ASA, *at))
        row(case, 'boss.netSection', j, F / 2 / ((boss_d[j] - d) * L), (across if hoop_across[j] else along)(ASA, *at))
    row('season', 'boss.fatigue', j, mpf('2.5') * on_pin('season', j) / 2 / ((boss_d[j] - d) * L), (across if hoop_across[j] else along)(ASA, 20, 1, strides))
    # Largest pin in a hole two deviations small, and steel shrinks less than the print at -2 degC.
    tight = d + upper - (hole - 2 * hole_scatter) + d * (STEEL['alpha'] - ASA['alpha']) * (-22)
    row('coldMorning', 'boss.split', j, lame(tight, ASA['E'] * WET, j)[1], held(ASA, -2, hour, ASA['across'] if hoop_across[j] else 1))
    # Grip: the mean fit, less by swelling, has relaxed since assembly and for the time of the case in its air; what the heat of
    # the case takes away is as stiff as after an hour (Boltzmann). Against the eye's drag (friction 0.4) and a twentieth of the load along the pin.
    for case, seconds in (('season', time['season']), ('hotAfternoon', mpf(day))):
        kept, fresh = creep_modulus(ASA, 23, since_assembly(air[case], seconds)), creep_modulus(ASA, air[case], hour)
        mean = d + (upper + lower) / 2 - hole - d * SWELLING
        p = lame(mean * kept / fresh + d * (STEEL['alpha'] - ASA['alpha']) * (air[case] - 20), fresh, j)[0]
        F = on_pin(case, j)
        row(case, 'boss.grip', j, hypot(F / 20, mpf('0.4') * F), mpf('0.4') * p * pi * d * 2 * L)
    # Difference of two normal sizes (Shigley 1-10): pin's zone is six deviations wide.
    mean, scatter = d + (upper + lower) / 2 - hole, hypot((upper - lower) / 6, hole_scatter)
    row('coldMorning', 'boss.fitScatter', j, erfc((mean - mpf('0.002') * d) / scatter / sqrt(mpf(2))) / 2, mpf('0.02'))
    row('stand', 'boss.zone', j, min(2 * hole, boss_d[j]), hole + 2 * 5 * mpf('0.45') * mm)

# ---- bolts -----------------------------------------------------------------------------------------------------------------------------------
def thread(nominal, P):
    """ISO 68-1 and ISO 724: triangle of height H; ISO 898-1: stress area on the mean of pitch and root diameter."""
    H = sqrt(mpf(3)) / 2 * P
    d2, d3 = nominal - 3 * H / 4, nominal - 17 * H / 12
    return {'d': nominal, 'P': P, 'd1': nominal - 5 * H / 4, 'd2': d2, 'd3': d3, 'As': pi / 4 * ((d2 + d3) / 2) ** 2, 'A3': pi / 4 * d3**2}
M3, M4, M10 = thread(3 * mm, mpf('0.5') * mm), thread(4 * mm, mpf('0.7') * mm), thread(10 * mm, mpf('1.5') * mm)
# Socket head (ISO 4762: head, bearing face), clearance hole (ISO 273 medium), washer (ISO 7089: outside, thickness).
M3.update(head=mpf('5.5') * mm, face=mpf('5.07') * mm, hole=mpf('3.4') * mm, washer=7 * mm, sheet=mpf('0.5') * mm)
M4.update(head=7 * mm, face=mpf('6.53') * mm, hole=mpf('4.5') * mm, washer=9 * mm, sheet=mpf('0.8') * mm)
friction, E_bolt = mpf('0.14'), mpf('205e9')
proof, yields, breaks = 580 * MPa, 640 * MPa, 800 * MPa                               # class 8.8 (ISO 898-1)
helix = lambda t: t['d2'] / 2 * tan(atan(t['P'] / (pi * t['d2'])) + atan(friction / cos(pi / 6)))    # thread torque per force, 60 degree thread
preload_of = lambda t, torque: torque / (helix(t) + friction * (t['face'] + t['hole']) / 4)   # Shigley 8-26, exact form
def most_preload(t):
    """Preload at nine tenths of yield, twist counted fully plastic (VDI 2230)."""
    ds = (t['d2'] + t['d3']) / 2
    return mpf('0.9') * yields * t['As'] / sqrt(1 + 3 * (mpf('1.5') * t['d2'] / ds * (t['P'] / (pi * t['d2']) + friction / cos(pi / 6))) ** 2)
def cone(E, t, D, hole):
    """Stiffness of a cone of pressure of 30 degrees (Shigley 8-19)."""
    s = tan(pi / 6)
    return pi * E * hole * s / log((2 * t * s + D - hole) * (D + hole) / ((2 * t * s + D + hole) * (D - hole)))
def bolt_give(t, grip, washers, tapped):
    """VDI 2230 substitute lengths: socket head 0.4 d, thread in the grip, engaged thread 0.5 d, nut 0.4 d or tapped light metal 0.33 d."""
    A = pi / 4 * t['d'] ** 2
    end = mpf('0.33') * t['d'] / (E_bolt / 3 * A) if tapped else mpf('0.4') * t['d'] / (E_bolt * A)
    return mpf('0.4') * t['d'] / (E_bolt * A) + (grip + washers * t['sheet'] + t['d'] / 2) / (E_bolt * t['A3']) + end
E_print = ASA['E'] * WET
F4, F3 = preload_of(M4, mpf('0.8')), preload_of(M3, mpf('0.3'))
# Stack: washers under head and nut, cones meet half way in 15 mm. Motor: one washer, one cone through 7 mm to the tapped motor.
stack = {'t': M4, 'F': F4, 'bolt': bolt_give(M4, 15 * mm, 2, False), 'parts': 2 / cone(E_print, mpf('7.5') * mm, M4['washer'], M4['hole']), 'faces': 4}
motor = {'t': M3, 'F': F3, 'bolt': bolt_give(M3, 7 * mm, 1, True), 'parts': 1 / cone(E_print, 7 * mm, M3['washer'], M3['hole']), 'faces': 2}
def clamp_left(b, celsius=20):
    """Clamp load after a season: 10 um for each printed face, then quasi-elastic creep (Crawford), walking hours at a temperature up to the glass transition."""
    total = b['bolt'] + b['parts']
    settled = b['F'] - b['faces'] * mpf('10e-6') / total
    shift = exp(150000 / mpf('8.31446261815324') * (1 / (mpf('273.15') + min(celsius, ASA['glass'])) - 1 / mpf('296.15')))
    grown = 1 + mpf('0.155') * ((70 * day + 70 * hour / shift) / hour) ** mpf('0.27')
    return settled * total / (b['bolt'] + b['parts'] * grown)
def warming(b, grip, celsius):
    """Clamp load that printed layers add as they grow more than their bolt from 20 degrees on: an interference of two springs in series."""
    return grip * (ASA['alpha'] - STEEL['alpha']) * (celsius - 20) / (b['bolt'] + b['parts'])
ring = lambda t: pi / 4 * (t['washer'] ** 2 - t['hole'] ** 2)
row('stand', 'stackBolt.tightening', '', F4, most_preload(M4))
rows_y = [8 * mm, 8 * mm, 48 * mm, 48 * mm]
pull = lambda case: force[case] * 58 * mm * max(rows_y) / sum(y**2 for y in rows_y)        # bracket that turns about its edge
share = stack['parts'] / (stack['bolt'] + stack['parts'])                                # Shigley 8-24
# Nut of 7 mm, 2.9 mm high (ISO 4032), in a slot 0.15 mm wider. Turned by an angle its corner stands in the wall; even pressure on what
# overlaps does the work p dA: a line through a turning body sweeps (far^2 - near^2) / 2 per angle. Hardest hold over the angle.
half, wall = mpf(7) / 2 * mm, (7 + mpf('0.15')) / 2 * mm
def swept(angle):
    # Two sides meet in the corner; one whose normal leans by a from the wall's own cuts the wall where y cos a - x sin a = half, y = wall.
    near, far = sorted((wall * cos(a) - half) / sin(a) for a in (angle, angle - pi / 3))
    return (far**2 - near**2) / 2
hold = swept(findroot(lambda a: diff(swept, a) * 10**6, (mpf('0.05'), mpf('0.5')), solver='ridder'))
assert all(swept(pi / 6 * mpf(i) / 200) <= hold for i in range(20, 200))
row('stand', 'stackBolt.nut', '', F4 * helix(M4), 2 * mpf('2.9') * mm * hold * along(ASA, 20, 60))
row('stand', 'stackBolt.zone', '', M4['washer'], M4['hole'] + 2 * 5 * mpf('0.45') * mm)
# Torque of a turning motor: joint torque with the rotor's own over ratio and efficiency, and drag of the no-load test.
Kv = mpf(110) * 2 * pi / 60
drag = (10 * mpf('0.6') - mpf('0.6') ** 2 * mpf('0.1')) / (10 * Kv)
for j in R:
    row('stand', 'motorBolt.zone', j, M3['washer'], M3['hole'] + 2 * 5 * mpf('0.45') * mm)
    row('stand', 'motorBolt.tightening', j, F3, most_preload(M3))

# ---- shaft, end cap, bearings ------------------------------------------------------------------------------------------------------------------
overhang, spacing = 28 * mm, 30 * mm
thrust = lambda case: force[case] * sin(pi / 6)                     # foot force leaning by the farthest sideways turn, 30 degrees
for case in ('walk', 'drop'):
    side_load = on_shafts(case, 'hip') + in_plane(case)
    row(case, 'shaft.bending', '', 32 * side_load * overhang / (pi * M10['d3'] ** 3), yields)
    # Overhung beam on two supports: the nearer carries F (1 + overhang / spacing). Static load (ISO 76), safety 2 at rest and 1.5 for shocks.
    radial = side_load * (1 + overhang / spacing)
    row(case, 'bearing.static', '', max(radial, mpf('0.6') * radial + thrust(case) / 2), 1270 / (mpf('1.5') if case == 'drop' else 2))
    row(case, 'shaft.capScrew', '', thrust(case), proof * M4['As'])
F_inner = preload_of(M4, mpf('1.5'))
sigma = F_inner / (M10['A3'] - pi / 4 * M4['d'] ** 2)
tau = F_inner * helix(M4) * M10['d3'] / 2 / (pi / 32 * (M10['d3'] ** 4 - M4['d'] ** 4))
row('stand', 'shaft.drilledEnd', '', sqrt(sigma**2 + 3 * tau**2), yields)
# Strip areas of the loosest pair (FED-STD-H28/2B) with 6g and 6H (ISO 965-1): es, Td, Td2, TD2, TD1 in um for pitches of 0.7 and 0.5 mm.
um = mpf('1e-6')
LIMITS = {M4['d']: (22, 140, 90, 118, 180), M3['d']: (20, 106, 75, 100, 140)}
def strip_areas(t, length):
    es, Td, Td2, TD2, TD1 = LIMITS[t['d']]
    d_least, d2_least, D2_most, D1_most = t['d'] - (es + Td) * um, t['d2'] - (es + Td2) * um, t['d2'] + TD2 * um, t['d1'] + TD1 * um
    nut = pi * length / t['P'] * d_least * (t['P'] / 2 + (d_least - D2_most) / sqrt(mpf(3)))
    return nut, pi * length / t['P'] * D1_most * (t['P'] / 2 + (d2_least - D1_most) / sqrt(mpf(3)))
nut_area, screw_area = strip_areas(M4, 8 * mm)
# Motor: M3 over one and a half diameters in aluminium of 120 MPa in shear; holes 5 mm deep.
part, screw = strip_areas(M3, mpf('4.5') * mm)
for j in R:
    row('stand', 'motorBolt.strip', j, F3, min(120 * MPa * part, mpf('0.6') * breaks * screw))
    row('stand', 'motorBolt.length', j, (7 + mpf('0.5') + mpf('4.5')) * mm, (7 + mpf('0.5') + 5) * mm)
row('stand', 'shaft.strip', '', F_inner, mpf('0.6') * breaks * min(nut_area, screw_area))
for case in ('stand', 'drop'):
    # Overhang of the cap as a strip clamped under the head of the M4 screw (ISO 4762, least bearing diameter), thrust in the middle of the ring that bears.
    arm = (18 + 10) * mm / 4 - M4['face'] / 2
    row(case, 'shaft.endCap', '', 6 * thrust(case) * arm / (pi * M4['face'] * (2 * mm) ** 2), along(ASA, 20, time[case]))
radial = (on_shafts('season', 'hip') + in_plane('season')) * (1 + overhang / spacing)
assert thrust('season') < mpf('0.19') * radial                      # ISO 281 table 3: below the least threshold the thrust does not count
turns = 2 * (mpf(statics['walk']['hipHighest']) - mpf(statics['walk']['hipLowest'])) / (2 * pi)        # there and back
row('season', 'bearing.life', '', strides * turns, mpf('0.64e6') * (2700 / radial) ** 3)              # 95 % of bearings
# Seat of the ring as two thick cylinders (Lame): dry, on a cold morning, in a housing half as wide again; raceway at 0.3 of the section.
d_seat, d_house = 22 * mm, mpf('1.5') * 22 * mm
d_race = (10 + 22) / mpf(2) * mm + mpf('0.3') * 12 * mm
tight = mpf('0.03') * mm + 22 * mm * 22 * (ASA['alpha'] - STEEL['alpha'])
thick = lambda outer, inner: (outer**2 + inner**2) / (outer**2 - inner**2)
seat_pressure = tight / d_seat / ((thick(d_house, d_seat) + ASA['nu']) / E_print + (thick(d_seat, d_race) - STEEL['nu']) / STEEL['E'])
row('coldMorning', 'bearing.seatSplit', '', seat_pressure * thick(d_house, d_seat), held(ASA, -2, hour, ASA['across']))
# What pressed since assembly has relaxed, swelling included; what the afternoon's heat takes has not.
relaxed = creep_modulus(ASA, 23, since_assembly(40, day)) / creep_modulus(ASA, 40, hour)
for case in ('hotAfternoon', 'stall'):
    row(case, 'bearing.seat', '', 22 * mm * ((ASA['alpha'] - STEEL['alpha']) * 20 + SWELLING * relaxed), mpf('0.03') * mm * relaxed)

# ---- links, ranges, foot, ground -----------------------------------------------------------------------------------------------------------------
def box(moment, b, h, t, axial):
    inside = (b - 2 * t, h - 2 * t)
    return moment * h / 2 / ((b * h**3 - inside[0] * inside[1] ** 3) / 12) + axial / (b * h - inside[0] * inside[1])
for case in ('walk', 'drop', 'season'):
    axial = force[case] if case == 'drop' else hypot(force[case], forward)
    check, limit = ('fatigue', along(ASA, 20, 1, strides)) if case == 'season' else ('bending', along(ASA, 20, time[case]))
    worst = max(torque(case, 'hip'), torque(case, 'knee'))
    row(case, f'upperLink.{check}', '', box(worst, 26 * mm, 34 * mm, mpf('2.4') * mm, axial), limit)
    row(case, f'lowerLink.{check}', '', box(torque(case, 'knee'), 20 * mm, 24 * mm, 2 * mm, axial), limit)
# Across the slope the foot is held sideways: bending both ways meets in a corner, twist by Bredt's closed wall, shear forces by V Q / (I t). A flat print
# shears between its layers: Tsai-Hill without a second normal stress.
def sheared(moment, aside, twist, F, side, b, h, t):
    inside = (b - 2 * t, h - 2 * t)
    I, I_side = (b * h**3 - inside[0] * inside[1] ** 3) / 12, (h * b**3 - inside[1] * inside[0] ** 3) / 12
    closed, round_it = (b - t) * (h - t), 2 * (b + h - 2 * t)
    Q, Q_side = (b * h**2 - inside[0] * inside[1] ** 2) / 8, (h * b**2 - inside[1] * inside[0] ** 2) / 8
    sigma = box(moment, b, h, t, F) + aside * b / 2 / I_side
    tau = twist / (2 * closed * t) + twist * t / (4 * closed**2 * t / round_it) + max(F * Q / I, side * Q_side / I_side) / (2 * t)
    return sigma, tau
def pushed(case, check, leg, F, worst, knee, X, S, limit):
    for link, moment, bent, twist, size in (('upper', worst, leg['upper'], leg['twist'], (26 * mm, 34 * mm, mpf('2.4') * mm)),
                                            ('lower', knee, leg['kneeCouple'], 0, (20 * mm, 24 * mm, 2 * mm))):
        sigma, tau = sheared(moment, mpf(bent), mpf(twist), F, mpf(leg['side']), *size)
        row(case, f'{link}Link.{check}', '', sqrt(sigma**2 + (X / S * tau) ** 2), limit)
def steep(ratio): return mpf(statics['slopeAcross']['force']) * sqrt(1 + mpf('0.15')**2 + ratio**2)
time['slopeAcross'], air['slopeAcross'] = time['walk'], 20
X, S = along(ASA, 20, time['walk']), between(ASA, 20, time['walk'])
pushed('slopeAcross', 'sideways', statics['slopeAcross'], steep(tan(14 * pi / 180)),
       max(torque('slopeAcross', j) for j in R), torque('slopeAcross', 'knee'), X, S, X)
# A push to the side prises the knee's pin: forces in the middle of the cheeks, the eye presses in proportion to the place. The moment of the pin is largest
# where the shear has gone: there the eye has pushed as hard as the cheek.
def prise(M, j):
    span = fork[j] + 2 * side + tongue
    at = sqrt(tongue**2 / 4 - tongue**3 / (6 * span))
    most = M / span * (span / 2 - at) - quad(lambda y: 12 * M / tongue**3 * y * (y - at), [at, tongue / 2])
    return M / span, 6 * M / (tongue**2 * d), 32 * most / (pi * d**3)
def prised_pin(case, j, M, F, checks, at):
    aside, edge_pressure, bent = prise(M, j)
    one = F / 2 + aside
    hoop = (across if hoop_across[j] else along)(ASA, *at)
    mouth = one * (4 * L + 6 * (side + tongue / 4)) / L**2 / d
    mean = d + (upper + lower) / 2 - hole + d * ((STEEL['alpha'] - ASA['alpha']) * (at[0] - 20) - SWELLING)
    grip = lame(max(mean, 0), creep_modulus(ASA, at[0], max(at[1], day)), j)[0]
    every = {'pin.shear': (mpf(4) / 3 * one / (pi / 4 * d**2), MISES * Rm), 'pin.bending': (bending(F, j) + bent, mpf('0.85') * Rm),
             'pin.eyeEdge': (F / (d * tongue) + edge_pressure, 2 * along(ASA, *at) / 2), 'boss.bearing': (one / (d * L), along(ASA, *at)),
             'boss.mouth': (mouth, 2 * along(ASA, *at)), 'boss.netSection': (one / ((boss_d[j] - d) * L), hoop),
             'boss.tearOut': (one / (2 * (edge[j] - d / 2) * L), between(ASA, *at) if hoop_across[j] else MISES * along(ASA, *at)),
             'boss.prised': ((mouth + grip) * d / (boss_d[j] - d), hoop)}
    for check in checks: row(case, check, j, *every[check])
M_hip = mpf(statics['slopeAcross']['hipCouple'])
force['slopeAcross'] = mpf(statics['slopeAcross']['force'])
# The hip shaft takes the couple of the hip: it bends the shaft and loads its bearings the way an upright load beside them does.
side_load = on_shafts('slopeAcross', 'hip') + in_plane('slopeAcross')
row('slopeAcross', 'shaft.bending', '', 32 * (side_load * overhang + M_hip) / (pi * M10['d3'] ** 3), yields)
radial = side_load * (1 + overhang / spacing) + M_hip / spacing
leaning = force['slopeAcross'] * (sin(pi / 6) + tan(14 * pi / 180))
row('slopeAcross', 'bearing.static', '', max(radial, mpf('0.6') * radial + leaning / 2), mpf(1270) / 2)
row('stand', 'leg.reach', '', mpf('0.295'), mpf('0.345'))
row('walk', 'leg.reach', '', statics['walk']['farthest'], mpf('0.345'))
for j, (least, most) in {'hip': (-85, 45), 'knee': (20, 135)}.items():
    for case in ('walk', 'trot'):
        row(case, 'leg.range', j, pi / 180, min(most * pi / 180 - statics[case][j + 'Highest'], statics[case][j + 'Lowest'] - least * pi / 180))
for case in ('stand', 'walk', 'drop'):
    row(case, 'sidewaysHip.hold', '', abs(mpf(statics[case]['sideways'])), 14)
# Toe as a cantilever of 34 x 16 x 9 mm (Roark), soaked TPU, until it lies flat on the ground. Standing for hours it relaxes: creep
# 1 + 0.25 (t/1 h)^0.15 turned about exactly (Mittag-Leffler); an elastomer has no shift by heat. Between strides it recovers.
l, b, t, lift = 34 * mm, 16 * mm, 9 * mm, 25 * pi / 180
def toe_modulus(seconds):
    if seconds is None: return 26 * MPa * mpf('0.85')
    n, c = mpf('0.15'), mpf('0.25')
    z = -c * gamma(1 + n) * (seconds / mpf(hour)) ** n
    return 26 * MPa * mpf('0.85') * sum(z**k / gamma(1 + n * k) for k in range(400))
I = b * t**3 / 12
for case in ('walk', 'season', 'drop', 'stand'):
    E_toe = toe_modulus(time[case] if case == 'stand' else None)
    tip = min(force[case] / 2 * cos(lift), 3 * E_toe * I / l**3 * l * sin(lift))
    row(case, 'toe.strain', '', tip * l * t / 2 / (E_toe * I), mpf('0.1') if case == 'season' else mpf('0.3'))
# A shock finds less strength in the cold: 0.6 of it at -20 degC, all of it at 23 degC, evenly between.
for case, celsius in (('drop', 20), ('coldDrop', -2)):
    by = {j: abs(mpf(statics['dropEnd' if case == 'coldDrop' else 'drop'][j])) for j in R}
    shock = along(ASA, celsius, 1) * (1 - mpf('0.4') * (23 - celsius) / 43)
    row(case, 'upperLink.brittle', '', box(max(by.values()), 26 * mm, 34 * mm, mpf('2.4') * mm, force['drop']), shock)
    row(case, 'lowerLink.brittle', '', box(by['knee'], 20 * mm, 24 * mm, 2 * mm, force['drop']), shock)
slope = 14 * pi / 180
row('slope', 'robot.tipOver', '', slope, min(atan(mpf('0.210') / mpf('0.290')), atan((mpf('0.095') + mpf('0.058')) / mpf('0.290'))))
row('slope', 'ground.slip', '', tan(slope), mpf('0.6'))
row('walk', 'ground.slip', '', mpf('0.15'), mpf('0.6'))
# Resonance of leg and rotor on the cord (two inertias on a spring), leg of even rods in the air, motor and plate of the knee as points on the upper one, knee as it stands; a loop of 1 kHz answers after 1.5 ms.
upper_mass, lower_mass, thigh, shank, hip_height, rotor = mpf('0.46'), mpf('0.16'), mpf('0.165'), mpf('0.180'), mpf('0.295'), mpf('42e-6')
cos_knee = (hip_height**2 - thigh**2 - shank**2) / (2 * thigh * shank)
on_link = mpf('0.26') + mpf('0.084') * mpf('0.096') * mpf('0.007') * 1070
about = {'hip': (upper_mass - on_link) * thigh**2 / 3 + on_link * (thigh - mpf('0.118'))**2 + lower_mass * (thigh**2 + shank**2 / 3 + thigh * shank * cos_knee), 'knee': lower_mass * shank**2 / 3}
# Without load no cord slips in its arcs: both spans are springs, anchored at drum and pinion.
stiffness = {j: 2 * R[j] ** 2 * EA / span[j] for j in R}
for j in R:
    felt = rotor * (R[j] / r1) ** 2
    row('walk', 'controller.delay', j, sqrt(stiffness[j] * (1 / about[j] + 1 / felt)) / (2 * pi), 1 / (4 * mpf('0.0015')))

# The same leg with a landing that is pushed sideways by a fifth of its force, and a walk by a tenth.
straight, rows = rows, {}
for case in ('drop', 'coldDrop'):
    event, celsius = ('dropEnd', -2) if case == 'coldDrop' else ('drop', 20)
    X, S = along(ASA, celsius, 1), between(ASA, celsius, 1)
    of = statics['pushed'][event]
    worst, knee = max(abs(mpf(statics[event][j])) for j in R), abs(mpf(statics[event]['knee']))
    F = force['drop'] * sqrt(1 + mpf('0.2') ** 2)
    pushed(case, 'sideways', of, F, worst, knee, X, S, X)
    pushed(case, 'sidewaysBrittle', of, F, worst, knee, X, S, X * (1 - mpf('0.4') * (23 - celsius) / 43))
X, S = along(ASA, 20, 1, strides), between(ASA, 20, 1, strides)
pushed('season', 'sidewaysFatigue', statics['pushed']['walk'], force['walk'] * sqrt(1 + mpf('0.15') ** 2 + mpf('0.1') ** 2),
       max(torque('season', j) for j in R), torque('season', 'knee'), X, S, X)
# Across the slope the knee's cord of this leg slips: the walk that is pushed sideways shows pin, eye and bosses.
for j in R:
    # The hip's couple goes into its shaft.
    M = mpf(statics['pushed']['walk']['kneeCouple']) if j == 'knee' else mpf(0)
    shared = ('pin.shear', 'pin.bending', 'boss.bearing', 'boss.mouth', 'boss.netSection', 'boss.tearOut')
    prised_pin('walk', j, M, on_pin('walk', j), shared + (('pin.eyeEdge', 'boss.prised') if j == 'knee' else ()), (20, time['walk']))
# Every stride of the season pushes the foot to either side: the knee's pin bends to and fro, and the boss beside it.
M_knee = mpf(statics['pushed']['walk']['kneeCouple'])
aside, _, bent = prise(M_knee, 'knee')
most, least = bending(on_pin('season', 'knee'), 'knee') + bent, bending(on_shafts('season', 'knee'), 'knee') - bent
row('season', 'pin.fatigue', 'knee', most, most / ((most - least) / 2 / Se + (most + least) / 2 / Rm))
row('season', 'boss.fatigue', 'knee', mpf('2.5') * (on_pin('season', 'knee') / 2 + aside) / ((boss_d['knee'] - d) * L), across(ASA, 20, 1, strides))
sideways, rows = rows, straight

out = {'rows': rows, 'sideways': sideways, 'stand knee': dict(zip(('taut', 'slack'), map(float, tensions('stand', 'knee'))))}
json.dump(out, open(os.path.join(here, 'leg-hand-checks.json'), 'w'), indent=1)
print(len(rows), 'rows,', len({key.split()[1] for key in rows}), 'checks')
