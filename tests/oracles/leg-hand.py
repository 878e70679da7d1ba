"""A leg calculated by hand, step by step, with mpmath: the statics of the stance from triangles and moment balances, not from a Jacobian.

Independent of the library: angles by the law of cosines, torques as force times lever arm about each axis.
Writes leg-hand.json beside this file.
"""
import json, os
from mpmath import mp, mpf, sqrt, acos, asin, atan2, cos, sin, pi, tan, log, exp, findroot

mp.dps = 30
g = mpf('9.80665')
mass, legs = mpf('10.5'), 4
upper, lower, offset, height = mpf('0.165'), mpf('0.180'), mpf('0.058'), mpf('0.270')

def pose(x):
    """Knee position (forward, down) in the leg plane for a foot at x forward of the hip, height below; knee pointing forward."""
    reach = sqrt(x * x + height * height)
    at_hip = acos((upper**2 + reach**2 - lower**2) / (2 * upper * reach))
    line = atan2(x, height)          # forward lean of the line hip to foot
    lean = line + at_hip             # forward lean of the upper link: knee forward
    return upper * sin(lean), upper * cos(lean)

def torques(x, down, backward):
    """Joint torques that make the foot push the ground down and backward: moments of the push about the axes."""
    knee_x, knee_down = pose(x)
    # Right-handed about +y (left): a downward push ahead of the axis turns positive; a backward push below it turns positive.
    hip = down * x + backward * height
    knee = down * (x - knee_x) + backward * (height - knee_down)
    # About +x: the foot is offset to the left, a downward push there turns negative.
    sideways = -down * offset
    return sideways, hip, knee

out = {}
stand = mass * g / legs
out['stand'] = dict(zip(('sideways', 'hip', 'knee'), map(float, torques(mpf(0), stand, mpf(0)))))
out['stand']['force'] = float(stand)
duty, step, speed, traction = mpf('0.75'), mpf('0.12'), mpf('0.3'), mpf('0.15')
force = mass * g / legs / duty
samples = [(mpf(i) + mpf('0.5')) / 8 for i in range(8)]
walk = [torques(step / 2 - step * s, force, traction * force) for s in samples]
out['walk'] = {
    'force': float(force),
    'hip': float(max((t[1] for t in walk), key=abs)),
    'knee': float(max((t[2] for t in walk), key=abs)),
    'hipRms': float(sqrt(duty * sum(t[1] ** 2 for t in walk) / 8)),
    'kneeRms': float(sqrt(duty * sum(t[2] ** 2 for t in walk) / 8)),
}
duty_trot = mpf('0.55')
trot = []
for s in samples:
    f = pi / 2 * mass * g / legs / duty_trot * sin(pi * s)
    trot.append(torques(mpf('0.13') / 2 - mpf('0.13') * s, f, traction * f))
out['trot'] = {'hip': float(max((t[1] for t in trot), key=abs)), 'knee': float(max((t[2] for t in trot), key=abs))}
# Drop of 60 mm on two feet that give way over 90 mm, half sine: peak is pi/2 of the mean m g (1 + h/s) / 2.
drop = pi / 2 * mass * g * (1 + mpf('0.060') / mpf('0.090')) / 2
out['drop'] = {'force': float(drop), 'knee': float(torques(mpf(0), drop, mpf(0))[2])}
# Hop of 30 mm on four feet that push over 90 mm: the work of the feet lifts the weight by travel and height together.
out['hop'] = {'force': float(pi / 2 * (mass * g * (mpf('0.090') + mpf('0.030')) / mpf('0.090')) / 4)}
slope = mpf('14') * pi / 180
rear = mpf('0.5') + mpf('0.290') / mpf('0.420') * tan(slope)
f = mass * g * cos(slope) * 2 * rear / legs / duty
out['slope'] = {'force': float(f), 'forward': float(f * tan(slope))}

# ---- reserves of the first design, each from its own textbook step -------------------------------------------------------------
mm = mpf('0.001')
d_cord, EA, MBS, T0, mu = mpf('1.6') * mm, mpf(26000), mpf(2400), mpf(90), mpf('0.14')
r1 = (12 * mm + d_cord) / 2
r2 = (mpf('74.56') * mm + d_cord) / 2
C = 118 * mm
tilt = asin((r1 + r2) / C)
span, drum_wrap, pinion_wrap = sqrt(C**2 - (r1 + r2) ** 2), (pi + 2 * tilt) / 2, pi + 2 * tilt + 6 * pi

def feed(T, R, wrap):
    """Cord that an arc gives out when its span goes from T0 to T: slip until the tension is T0, or until the anchor."""
    arc = abs(log(T / T0)) / mu
    sign = 1 if T >= T0 else -1
    if arc <= wrap:
        return R / (mu * EA) * (T - T0 - T0 * log(T / T0)) * sign
    total = T * (1 - exp(-sign * mu * wrap)) / (sign * mu)      # integral of T exp(-sign mu theta)
    return R / EA * (total - T0 * wrap) * 1

def spans(tau):
    """Taut and slack tension at a joint torque: what the taut branch gives out, the slack branch takes up."""
    pull = tau / r2
    def gap(taut):
        slack = taut - pull
        give = (taut - T0) * span / EA + feed(taut, r2, drum_wrap) + feed(taut, r1, pinion_wrap / 1)
        take = (T0 - slack) * span / EA + abs(feed(slack, r2, drum_wrap)) + abs(feed(slack, r1, pinion_wrap))
        return give - take
    taut = findroot(gap, T0 + pull * mpf('0.55'))
    return taut, taut - pull

knee_stand = abs(torques(mpf(0), stand, mpf(0))[2])
taut, slack = spans(knee_stand)
along = (taut + slack) * cos(tilt)
across = (taut - slack) * sin(tilt)
pin_force = sqrt(along**2 + across**2) + stand
reserves = {}
reserves['cord.slack knee'] = 2 * r2 * T0 / knee_stand
reserves['cord.bend knee'] = 2 * r1 / d_cord / 8
reserves['cord.working knee'] = MBS * mpf('0.33') * 1 / 5 / taut           # a bowline in UHMWPE keeps a third
# Strength of printed ASA, soaked, after eight hours under load: 38 MPa, 0.94 wet, logarithmic loss to 0.55 at 1000 h from one minute.
hours8 = 1 - mpf('0.45') * log(mpf(8 * 3600) / 60) / log(mpf(3600 * 1000) / 60)
asa = mpf(38) * mpf('0.94') * hours8
area = 4 * mm * 6 * mm
reserves['boss.bearing knee'] = asa / (pin_force / 2 / area / 1000000)
across_layers = mpf('0.6')
reserves['boss.netSection knee'] = asa * across_layers / (pin_force / 2 / ((10 - 4) * mm * 6 * mm) / 1000000)
arm = mpf(5) / 2 * mm + mpf('0.3') * mm + mpf(14) / 4 * mm
reserves['pin.bending knee'] = mpf('0.85') * 1500 / (32 * pin_force / 2 * arm / (pi * (4 * mm) ** 3) / 1000000)
reserves['pin.shear knee'] = mpf('0.577') * 1500 / (mpf(4) / 3 * pin_force / (2 * pi / 4 * (4 * mm) ** 2) / 1000000)
# Link: 20 x 24 mm outside, 2 mm walls; moment of the knee torque, foot force along it.
inertia = (20 * mm * (24 * mm) ** 3 - 16 * mm * (20 * mm) ** 3) / 12
section = 20 * 24 - 16 * 20
sigma = knee_stand * 12 * mm / inertia / 1000000 + stand / section
reserves['lowerLink.bending'] = asa / sigma
reserves['leg.reach'] = (upper + lower) / height
# Peak phase current: torque over sqrt(3)/2 of the line EMF constant 60 / (2 pi Kv); efficiency 0.95.
motor_torque = knee_stand / (r2 / r1) / mpf('0.95')
Ke = 60 / (2 * pi * 110)
out['motorTorque'] = float(motor_torque)
out['currentOfUnweakenedMagnets'] = float(motor_torque / (sqrt(mpf(3)) / 2 * Ke))
reserves['robot.tipOver'] = atan2(mpf('0.095') + offset, mpf('0.290')) / slope
reserves['ground.slip'] = mpf('0.6') / tan(slope)
out['taut'], out['slack'] = float(taut), float(slack)
out['reserves'] = {k: float(v) for k, v in reserves.items()}
json.dump(out, open(os.path.join(os.path.dirname(__file__), 'leg-hand.json'), 'w'), indent=1)
