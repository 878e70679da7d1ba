"""Energy that a settled cycle of stroke and return takes from a cord drive, by the cord as a string of moving nodes (capstan-travel.py).

Writes capstan-losses.json beside this file. The loss is what the motor puts in less what the joint gives out, added up step by step; no law of
creep or micro-slip is put in. The stroke lies about mid travel and goes against the torque. Two sizes of nodes are extrapolated.
"""
import json
import runpy
from math import pi
from pathlib import Path

here = Path(__file__)
travel = runpy.run_path(str(here.with_name("capstan-travel.py")))
Cord, R1, R2 = travel["Cord"], travel["R1"], travel["R2"]
RATIO = R2 / R1


def loss(piece, pinion, mu, mu_drum, stroke, force, back, cycles):
    cord = Cord(piece, pinion, mu, mu_drum)
    lag = lambda: cord.q - cord.phi / RATIO
    for i in range(1, 41):
        cord.step(stroke / 2 * i / 40, back * R2 * i / 40)
    taken = 0.0
    for _ in range(cycles):
        taken = 0.0
        for q, pull in ((stroke / 2, force), (-stroke / 2, force), (-stroke / 2, back), (stroke / 2, back)):
            steps = max(48, round(abs(q - cord.q) * R2 / piece * 1.5))
            q0, t0 = cord.q, cord.torque
            for i in range(1, steps + 1):
                before = cord.torque, lag()
                cord.step(q0 + (q - q0) * i / steps, t0 + (pull * R2 - t0) * i / steps)
                taken += 0.5 * (before[0] + cord.torque) * (lag() - before[1])
    return taken


def refined(case, coarse=0.4e-3):
    a, b = loss(coarse, **case), loss(coarse / 2, **case)
    return {**case, "loss": 2 * b - a, "change": b - a}


cases = {
    "long wrap, both ways": dict(pinion=6 * pi, mu=0.15, mu_drum=0.15, stroke=0.7, force=30.0, back=-6.0, cycles=3),
    "long wrap, unloaded return": dict(pinion=6 * pi, mu=0.15, mu_drum=0.15, stroke=0.7, force=30.0, back=0.0, cycles=3),
    "short wrap": dict(pinion=pi, mu=0.4, mu_drum=0.4, stroke=1.0, force=30.0, back=0.0, cycles=5),
    "slippery drum": dict(pinion=1.5 * pi, mu=0.3, mu_drum=0.12, stroke=0.6, force=24.0, back=0.0, cycles=4),
}
out = {}
for name, case in cases.items():
    out[name] = refined(case)
    print(name, out[name]["loss"], out[name]["change"], flush=True)
here.with_suffix(".json").write_text(json.dumps(out, indent=1) + "\n")
