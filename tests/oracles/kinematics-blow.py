"""Blow of a rotor at touch-down by integration: rotor on a torsion spring (the drive), the foot a spring in series that stops when it lies flat.

Independent of the library: equations of motion in time (scipy), no energy balance. Writes kinematics-blow.json beside this file.
"""
import json, os
import numpy as np
from scipy.integrate import solve_ivp

def blow(rate, k, J, v, foot=None, travel=np.inf):
    """Largest torque: the drum is driven at `rate` less what the foot gives; the rotor starts at rest."""
    arm = v / rate
    def drum_give(wind):
        # Angle that the body still demands is shared by the drive and the foot: torque is the same in both.
        if foot is None: return k * wind
        soft = wind / (1 / k + 1 / (foot * arm**2))
        flat = foot * travel * arm
        return soft if soft <= flat else flat + k * (wind - flat / k - travel / arm)
    def motion(t, y): return [rate - y[1], drum_give(y[0]) / J]
    end = 4 * np.sqrt(J * (1 / k + (1 / (foot * arm**2) if foot else 0)))
    # The drive is wound up the most when the rotor has the speed of the drum.
    def wound(t, y): return rate - y[1]
    wound.terminal = True
    run = solve_ivp(motion, (0, end), [0, 0], max_step=end / 4000, rtol=1e-12, atol=1e-15, events=wound)
    return drum_give(run.y_events[0][0][0])

out = {
    'stiff': blow(21.05952, 1000, 36 * 4e-5, 1.4),
    'soft': blow(21.05952, 1000, 36 * 4e-5, 1.4, 6000),
    'flat': blow(28.5, 1210, 3.87e-3, 1.085, 7694, 0.0144),
}
out = {name: f'{value:.5f}' for name, value in out.items()}
json.dump(out, open(os.path.join(os.path.dirname(__file__), 'kinematics-blow.json'), 'w'), indent=1)
print(out)
