"""A leg calculated by hand, step by step, with mpmath: the statics of the stance from triangles and moment balances, not from a Jacobian.

Independent of the library: angles by the law of cosines, torques as force times lever arm about each axis.
Writes leg-hand.json beside this file.
"""
import json, os
from mpmath import mp, mpf, sqrt, acos, atan2, cos, sin, pi, tan

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
# Drop of 60 mm on two feet that give way over 60 mm, half sine: peak is pi/2 of the mean m g (1 + h/s) / 2.
drop = pi / 2 * mass * g * (1 + mpf('0.060') / mpf('0.060')) / 2
out['drop'] = {'force': float(drop), 'knee': float(torques(mpf(0), drop, mpf(0))[2])}
slope = mpf('14') * pi / 180
rear = mpf('0.5') + mpf('0.290') / mpf('0.420') * tan(slope)
f = mass * g * cos(slope) * 2 * rear / legs / duty
out['slope'] = {'force': float(f), 'forward': float(f * tan(slope))}
json.dump(out, open(os.path.join(os.path.dirname(__file__), 'leg-hand.json'), 'w'), indent=1)
