"""Reference travel of a cord drive: the cord as a string of nodes that move through the loop (numpy). Writes capstan-travel.json beside this file.

An independent second method for the travel simulation. Nothing about stored tension or slip zones is put in: elastic pieces between nodes, and on
every node that lies on a pulley a force of at most friction x tension x angle of contact, against its slip over the moving surface.
"""
import json
from math import pi
from pathlib import Path

import numpy as np
from scipy.linalg import solve_banded

EA, T0, R1, R2, L, DRUM = 20000.0, 60.0, 0.008, 0.048, 0.02, pi


class Cord:
    """Nodes by their place along the loop, measured from the middle of the pinion; A is the negative side."""

    def __init__(self, piece, pinion, mu, mu_drum):
        self.half, self.mu, self.mu_drum = R1 * pinion / 2, mu, mu_drum
        self.edge = self.half + L
        reach = self.edge + R2 * DRUM
        count = 2 * round(reach / piece)
        self.x = np.linspace(-reach, reach, count + 1)
        self.h = np.full(count, 2 * reach / count) / (1 + T0 / EA)
        self.q = self.phi = self.torque = 0.0
        self.slips = np.zeros(count - 1)

    def overlap(self, low, high):
        """Length of every inner node's cell within a stretch of the loop."""
        mid = (self.x[1:] + self.x[:-1]) / 2
        return np.clip(np.minimum(mid[1:], high) - np.maximum(mid[:-1], low), 0, None)

    def tensions(self, x):
        return EA * (np.diff(x) / self.h - 1)

    def step(self, q, torque):
        dq = q - self.q
        far = self.edge + R2 * DRUM * 3
        on_pinion, on_drum = self.overlap(-self.half, self.half), self.overlap(-far, -self.edge) + self.overlap(self.edge, far)
        grip = self.mu * on_pinion / R1 + self.mu_drum * on_drum / R2
        is_pinion = (on_pinion > 0).astype(float)
        touches = grip > 0
        # Both anchors and both drum surfaces move towards A as the joint turns the positive way; the pinion's surface by its own angle.
        ends = self.x[0] - R2 * dq, self.x[-1] - R2 * dq
        k, n = EA / self.h, len(grip)
        inner = self.x[1:-1]
        rest = inner - np.where(on_drum > 0, R2 * dq, 0.0)
        span_a = np.searchsorted(self.x, -(self.half + L / 2)) - 1
        span_b = np.searchsorted(self.x, self.half + L / 2) - 1
        slips = np.where(touches, self.slips, 0)
        for round_ in range(4000):
            stick = touches & (slips == 0)
            m = slips * grip / 2
            left, right = k[:-1] * (1 + m), k[1:] * (1 - m)
            band = np.zeros((3, n))
            band[0, 1:] = np.where(stick, 0, right)[:-1]
            band[1] = np.where(stick, 1, -left - right)
            band[2, :-1] = np.where(stick, 0, left)[1:]
            load = np.where(stick, rest, -2 * EA * m)
            load[0] -= 0 if stick[0] else left[0] * ends[0]
            load[-1] -= 0 if stick[-1] else right[-1] * ends[1]
            by_phi = np.where(stick, -R1 * is_pinion, 0.0)
            base, slope = solve_banded((1, 1), band, np.stack([load, by_phi], axis=1)).T
            full = np.concatenate([[ends[0]], base, [ends[1]]])
            lean = np.concatenate([[0], slope, [0]])
            # The pinion's angle is the one that gives the torque.
            carried = lambda x: R2 * (x[span_a + 1] - x[span_a] - x[span_b + 1] + x[span_b]) * EA / self.h[0]
            dphi = (torque - carried(full)) / carried(lean)
            x = full + lean * dphi
            T = self.tensions(x)
            pull = T[1:] - T[:-1]
            slid = x[1:-1] - rest + R1 * dphi * is_pinion
            starts = stick & (np.abs(pull) > grip * (T[:-1] + T[1:]) / 2 * (1 + 1e-7) + 1e-6)
            stops = (slips != 0) & (slid * slips < -1e-12)
            if not (starts.any() or stops.any()):
                break
            if round_ > 200:
                # Mended all at once the guess may go round in circles: then one node at a time.
                starts = starts & (np.cumsum(starts) == 1)
                stops = stops & (np.cumsum(stops) == 1) & ~starts.any()
            slips = np.where(starts, np.sign(pull), np.where(stops, 0, slips))
        else:
            raise RuntimeError("no rest found")
        self.x, self.slips, self.q, self.phi, self.torque = x, slips, q, self.phi + dphi, torque
        return T[span_a], T[span_b]

    def move(self, q, torque, steps):
        q0, t0 = self.q, self.torque
        peak = least = None
        for i in range(1, steps + 1):
            a, b = self.step(q0 + (q - q0) * i / steps, t0 + (torque - t0) * i / steps)
            peak, least = max(peak or a, a, b), min(least or b, a, b)
        return a, b, peak, least


def travel(piece, pinion, mu, mu_drum, stroke, force, back, cycles):
    """Pinion angle, tensions of the spans, highest and lowest tension on the way, at the four corners of every cycle."""
    cord = Cord(piece, pinion, mu, mu_drum)
    out = []
    for _ in range(cycles):
        for q, pull in ((0, force), (stroke, force), (stroke, back), (0, back)):
            steps = max(12, round(abs(q - cord.q) * R2 / piece * 1.5))
            a, b, peak, least = cord.move(q, pull * R2, steps)
            out.append([cord.phi, a, b, peak, least])
    return np.array(out)


def refined(case, coarse=0.4e-3):
    """Nodes come and go at the tangent points: results are off by the piece, so two sizes give the limit."""
    a, b = travel(coarse, **case), travel(coarse / 2, **case)
    return {**case, "corners": (2 * b - a).tolist(), "change": float(np.abs(b - a)[:, 1:].max())}


cases = {
    "raising, between": dict(pinion=pi, mu=0.3, mu_drum=0.3, stroke=-1.0, force=30.0, back=0.0, cycles=5),
    "lowering, between": dict(pinion=pi, mu=0.3, mu_drum=0.3, stroke=1.0, force=30.0, back=0.0, cycles=5),
    "an element stays, torque both ways": dict(pinion=6 * pi, mu=0.15, mu_drum=0.15, stroke=-1.0, force=30.0, back=-6.0, cycles=3),
    "slippery drum": dict(pinion=1.5 * pi, mu=0.3, mu_drum=0.12, stroke=-0.6, force=24.0, back=0.0, cycles=4),
}
if __name__ == "__main__":
    Path(__file__).with_suffix(".json").write_text(json.dumps({name: refined(case) for name, case in cases.items()}, indent=1) + "\n")
