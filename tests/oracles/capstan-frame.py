"""Reference windup of cord drives on a frame that gives, by the Coulomb chain of capstan-limits.py (scipy). Writes capstan-frame.json.

The frame is put in as springs alone: the axes approach by the pull of both spans along the line of centres over a stiffness, and shift sideways by
the pull across it over another; each span shortens by the shifts' part along it. A sprung idler lengthens one span. Nothing else is known of it.
"""
import json
import runpy
from math import acos, asin, atan2, cos, hypot, pi, sin, sqrt
from pathlib import Path

from scipy.optimize import brentq

here = Path(__file__)
limits = runpy.run_path(str(here.with_name("capstan-limits.py")))
Chain, base, hip = limits["Chain"], limits["base"], limits["hip"]


def loaded(drive, taut, slack, centre, along, across, idler, rim, per_arc):
    """Angle and tensions where branch A has been wound by `rim`: the rim of branch B follows from the frame."""
    tilt = asin((drive["R1"] + drive["R2"]) / centre)

    def tensions(rim_b):
        chain = Chain(drive, taut, slack, per_arc)
        for i in range(1, 7):
            out = chain.move(rim * i / 6, rim_b=rim_b * i / 6)
        return out

    def parts(Ta, Tb):
        approach = (Ta + Tb - 2 * drive["T0"]) * cos(tilt) / along
        shift = (Ta - Tb) * sin(tilt) / across
        longer = (Tb - drive["T0"]) / idler if idler else 0.0
        return approach * cos(tilt) + shift * sin(tilt), approach * cos(tilt) - shift * sin(tilt) + longer

    def gap(rim_b):
        a, b = parts(*tensions(rim_b))
        # The drum turns by what branch A has wound and gained, and branch B by what it has let go and gained less.
        return (rim + a) - (rim_b - b)

    rim_b = brentq(gap, 0.2 * rim, 3 * rim, xtol=1e-15)
    Ta, Tb = tensions(rim_b)
    return (rim + parts(Ta, Tb)[0]) / drive["R2"], Ta, Tb


def refined(of):
    a, b = of(400), of(800)
    return [y + (y - x) / 3 for x, y in zip(a, b)]


cases = []
for name, drive, taut, slack, centre, along, across, idler, rim in (
    ("soft bracket", base, pi, pi, 0.06, 4e5, 3e5, 0, 60e-6),
    ("soft across only, far from mid travel", base, 5.0, 1.28, 0.06, 1e9, 2e5, 0, 60e-6),
    ("soft along only, clamped", {**base, "clamped": True}, pi, pi, 0.06, 1e5, 1e9, 0, 80e-6),
    ("sprung idler in the slack span", hip, 3.49, 3.49, 0.062, 1e6, 5e5, 2e5, 150e-6),
):
    windup, Ta, Tb = refined(lambda n: loaded(drive, taut, slack, centre, along, across, idler, rim, n))
    cases.append(dict(name=name, drive=drive, taut=taut, slack=slack, centre=centre, along=along, across=across, idler=idler, windup=windup, Ta=Ta, Tb=Tb))
    print(name, windup, Ta, Tb, flush=True)


def branch_length(r, R, x, y, crossed):
    """Cord of the branch on the left of the line of centres, from a mark on the fixed drum at the origin to a mark on the pinion at (x, y)."""
    C, bearing = hypot(x, y), atan2(y, x)
    reach = R + r if crossed else R - r
    lean = acos(reach / C)
    # Tangent points as angles from fixed marks: where the span leaves the drum, and where it meets a pinion that does not turn.
    on_drum = pi - (bearing + lean)
    on_pinion = bearing + lean if not crossed else -(bearing + lean)
    return sqrt(C * C - reach * reach) + R * on_drum + r * on_pinion


geometry = []
for crossed in (True, False):
    r, R, C, h = 0.0075, 0.0465, 0.062, 1e-6
    along = -(branch_length(r, R, C + h, 0, crossed) - branch_length(r, R, C - h, 0, crossed)) / (2 * h)
    across = (branch_length(r, R, C, h, crossed) - branch_length(r, R, C, -h, crossed)) / (2 * h)
    # A pull T on a branch draws the axes together by T along, and sideways by T across: cord gained is shift times the same.
    geometry.append(dict(crossed=crossed, along=along, across=across, sum=along**2 / 2e6, difference=across**2 / 1e6))
    print(geometry[-1])
here.with_suffix(".json").write_text(json.dumps({"cases": cases, "geometry": geometry}, indent=1) + "\n")
