"""Three checks of two printed calculation sheets, worked again by hand from what stands on the paper.

Every number below was read off the printed sheets of the example legs `mudflat-leg-revised` and `orchard-leg-first`: fields, tables and constants, in the
words and digits of the print. Nothing of the library is used. Demand and capacity are worked from them by the equations of a textbook and rounded to the
four digits of the print. Writes printed-sheet.json next to this file.
"""
import json
from math import acos, asin, atan, cos, floor, log, pi, radians, sin, sqrt, tan
from pathlib import Path

g = 9.80665


def digits(x, n=4):
    """A number as the sheet prints it: four significant digits, no trailing zeros."""
    return f'{float(f"{x:.{n}g}"):.12g}'


def landing_torque(mass, height, travel, feet, upper, lower, down, lower_mass):
    """Torque at the knee at the end of a landing, N m: force of one foot, the foot below the hip, less the weight of the lower link. Lengths in metres."""
    # The drop's energy over the travel, on so many feet; the force rises and falls as half a sine, whose peak is pi/2 times its mean.
    force = mass * g * (1 + height / travel) / feet * pi / 2
    knee = upper * sin(acos((upper**2 + down**2 - lower**2) / (2 * upper * down)))
    return force, force * knee - lower_mass * g * knee / 2


# --- the cord-driven leg -----------------------------------------------------------------------------------------------------------------------
cord = {
    'robot: mass': '10.5 kg', 'links, lower: mass': '160 g', 'links, upper: length': '165 mm', 'links, lower: length': '180 mm',
    'load cases, events, drop: height': '60 mm', 'load cases, events, drop: feet': '2', 'load cases, events, drop: travel': '90 mm', 'load cases, events, drop: touch down height': '335 mm',
    'links, lower, section, box: width': '20 mm', 'links, lower, section, box: depth': '24 mm', 'links, lower, section: wall': '2 mm', 'load cases, airs, hot: temperature': '40 °C',
    'strength of ASA': '38 (32 to 48) MPa', 'strength of ASA when wet, as a share': '0.94 (0.88 to 1)',
    'glass transition of ASA for strength': '103 (96 to 108) °C', 'margin below the glass transition': '15 K',
}
force, torque = landing_torque(10.5, 0.06, 0.09, 2, 0.165, 0.18, 0.335 - 0.09, 0.16)
area = 20 * 24 - 16 * 20
second = (20 * 24**3 - 16 * 20**3) / 12
bending = torque * 1000 * 24 / (2 * second) + force / area
warm = (103 - 15 - 40) / (103 - 15 - 23)
link = {
    'check': 'Lower link: breaks in bending', 'demand': digits(bending) + ' MPa', 'capacity': digits(38 * 0.94 * warm) + ' MPa', 'inputs': cord,
}

tension = {
    'joints, knee, drive, drum: groove diameter': '100 mm', 'joints, knee, drive, pinion: groove diameter': '14.4 mm', 'joints, knee, drive, pinion: turns': '3', 'cords, braid: diameter': '1.6 mm',
    'joints, knee, drive: centre distance': '118 mm', 'joints, knee, drive, drum: groove pitch': '2 mm', 'joints, knee, drive: pretension': '280 N', 'cords, braid: axial rigidity': '24 kN', 'cords, braid: pretension left': '0.9 (0.8 to 0.96)',
    'joints, knee, drive, tensioner: slack at assembly': '2 mm', 'joints, knee, drive, tensioner: travel': '22 mm', 'permanent stretch of a new cord': '1 (0.5 to 2) %', 'cords, braid: thermal expansion': '-5 ppm/K',
    'thermal expansion of ASA': '95 (80 to 110) ppm/K', 'load cases, airs, cold: temperature': '-2 °C', 'environment: assembly temperature': '20 °C',
}
drum, pinion = (100 + 1.6) / 2, (14.4 + 1.6) / 2
tilt = asin((drum + pinion) / 118)
working = 2 * 118 * cos(tilt) + drum * (pi + 2 * tilt) + (3 * 2 * pi + pi + 2 * tilt) * sqrt(pinion**2 + (2 / (2 * pi)) ** 2)
# In the cold the frame shrinks and the cord grows: that is taken up as well.
cold = (20 - -2) * (95e-6 - -5e-6)
take_up = working * (280 / 24000 + 0.01 + 280 * (1 - 0.9) / 24000 + cold) + 2
tensioner = {
    'check': 'Tensioner: runs out of travel', 'joint': 'knee', 'demand': digits(take_up) + ' mm', 'capacity': '22 mm', 'inputs': tension,
}

fit = {
    'bosses, hip boss: hole': '3.976 mm', 'bosses, hip boss: hole scatter': '8 µm', 'bosses, hip boss: outer diameter': '15 mm', 'pins, hip pin: size': 'ISO 8734 4 mm m6',
    'load cases, airs, cold: temperature': '-2 °C', 'environment: assembly temperature': '20 °C',
    'standard deviations from the mean hole to the smallest hole': '2', 'duration of the full press of a boss': '1 h', 'thermal expansion of PC': '66 (62 to 72) ppm/K',
    'thermal expansion of steel 12.9': '11.9 (11.3 to 12.4) ppm/K', 'modulus of elasticity of PC': '2.3 (1.8 to 2.6) GPa',
    'modulus of PC when wet, as a share': '0.94 (0.88 to 1)', 'modulus of elasticity of steel 12.9': '207 (203 to 212) GPa', 'strain limit of PC': '0.75 (0.5 to 1) %',
    'share of its strength that PC keeps for 1000 hours': '0.55 (0.5 to 0.6)',
    'Poisson’s ratio of PC': '0.38 (0.37 to 0.4)', 'Poisson’s ratio of steel 12.9': '0.29 (0.28 to 0.3)',
}
# m6 of ISO 286 for 4 mm: +4 to +12 µm.
tight = 4.012 - (3.976 - 2 * 0.008) + 4 * (11.9e-6 - 66e-6) * (-2 - 20)
soft = 2300 * 0.94
boss_factor = (15**2 + 4**2) / (15**2 - 4**2)
pressure = tight / (4 * ((boss_factor + 0.38) / soft + (1 - 0.29) / 207000))
hoop = pressure * boss_factor
rupture = 62 * 0.94 * (1 - (1 - 0.55) * log(3600 / 60) / log(60000))
share = log(3600 / 60) / log(60000)
strain = 62 * 0.94 * (1 - share) + soft * 0.0075 * share
boss = {
    'check': 'Boss: splits from the pressed-in pin', 'joint': 'hip', 'demand': digits(hoop) + ' MPa', 'capacity': digits(min(rupture, strain)) + ' MPa',
    'inputs': fit,
}

# --- the belt-driven leg -----------------------------------------------------------------------------------------------------------------------
belt = {
    'robot: mass': '24 kg', 'links, upper: length': '240 mm', 'links, lower: length': '250 mm', 'links, lower: mass': '400 g',
    'belts, narrow: pitch': '5 mm', 'joints, knee, drive: small teeth': '18', 'joints, knee, drive: large teeth': '108', 'joints, knee, drive: centre distance': '130 mm', 'joints, knee, drive: pretension': '320 N',
    'belts, narrow: pretension left': '0.8 (0.6 to 0.95)', 'belts, narrow: axial rigidity': '250 kN', 'belts, narrow: thermal expansion': '5 ppm/K', 'belts, narrow: flank angle': '20°',
    'belts, narrow: friction': '0.2 (0.1 to 0.4)', 'belts, narrow: tooth force': '108 N', 'load cases, airs, cold: temperature': '-5 °C', 'environment: assembly temperature': '20 °C',
    'thermal expansion of aluminium 6061-T6': '23.6 (23 to 24.3) ppm/K',
}
HEIGHT, TRAVEL, FEET, DOWN = (0.035, 0.09, 2, 0.45)
belt |= {'load cases, events, drop: height': '35 mm', 'load cases, events, drop: travel': '90 mm', 'load cases, events, drop: feet': '2', 'robot: stand height': '450 mm'}
_, knee = landing_torque(24, HEIGHT, TRAVEL, FEET, 0.24, 0.25, DOWN - TRAVEL, 0.4)
radius = 0.005 * 108 / (2 * pi)
left = 320 * 0.8 + 250e3 * (-5 - 20) * (23.6e-6 - 5e-6)
wrap = pi - 2 * asin(5 * (108 - 18) / (2 * pi * 130))
climbs = radius * left / (1 / 2 + tan(radians(20) - atan(0.2)) / wrap)
jump = {
    'check': 'Tooth belt: climbs out of the small pulley and jumps a tooth', 'joint': 'knee', 'demand': digits(knee) + ' N m',
    'capacity': digits(climbs) + ' N m', 'inputs': belt,
}
mesh = floor(18 / 2 - 5 * 18 * (108 - 18) / (2 * pi**2 * 130))
teeth = {
    'check': 'Tooth belt: loses its teeth', 'joint': 'knee', 'demand': digits(knee / radius) + ' N', 'capacity': digits(108 * min(mesh, 6)) + ' N',
    'inputs': {'belts, narrow: most teeth': '6'} | {name: belt[name] for name in ('belts, narrow: tooth force', 'belts, narrow: pitch', 'joints, knee, drive: large teeth')},
}

bolt = {
    'bolts, plate bolts: thread': 'M5', 'bolts, plate bolts: property class': '8.8', 'bolts, plate bolts: tightening torque': '4.5 N m', 'bolts, plate bolts: friction': '0.14', 'share of the yield strength for tightening': '0.9',
    'thread of the plate bolts: pitch': '800 µm', 'thread of the plate bolts: pitch diameter': '4.48038476 mm',
    'thread of the plate bolts: stress area': '14.1825471 mm²', 'steel of the plate bolts: yield strength': '640 MPa',
    'screw head of the plate bolts: bearing diameter': '8.03 mm', 'clearance hole of the plate bolts': '5.5 mm',
}
d2, slope, mu = 4.48038476e-3, 0.8e-3 / (pi * 4.48038476e-3), 0.14 / cos(pi / 6)
preload = 4.5 / (d2 / 2 * (slope + mu) / (1 - slope * mu) + 0.14 * (8.03e-3 + 5.5e-3) / 4)
stress_diameter = sqrt(4 * 14.1825471e-6 / pi)
twist = 1.5 * d2 * (slope + mu) / stress_diameter
yields = 0.9 * 640e6 * 14.1825471e-6 / sqrt(1 + 3 * twist**2)
stack = {
    'check': 'Stack bolt joint: yields when it is tightened', 'demand': digits(preload / 1000) + ' kN', 'capacity': digits(yields / 1000) + ' kN',
    'inputs': bolt,
}

legs = {'mudflat-leg-revised': [link, tensioner, boss], 'orchard-leg-first': [jump, teeth, stack]}
Path(__file__).with_suffix('.json').write_text(json.dumps(legs, indent=2, ensure_ascii=False) + '\n', encoding='utf-8')
