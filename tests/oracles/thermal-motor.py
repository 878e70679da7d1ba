"""A motor on an upright plate, written apart from the library: films, radiation, hot copper, warm magnets, and the plate in cells. Writes thermal-motor.json.

The plate is the round one of equal area in axisymmetric finite volumes, heated evenly over the ring, cooled on both faces except under the motor; its film
belongs to the mean of its faces. Steady states by bracketing; stalls with the whole plate in time (implicit steps of second order). Laws of films: Churchill &
Chu for plate and cylinder, exact radiation; air from Sutherland-free quadratics through Cengel's table A-15 (as in the handbook of the library).

Run: python3 thermal-motor.py   (numpy, scipy; about a minute)
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import brentq, minimize_scalar
from scipy.sparse import coo_matrix, diags, identity
from scipy.sparse.linalg import splu

SIGMA, G, P = 5.670374419e-8, 9.80665, 101325.0


def air_at(T):
    t = T - 273.15
    return 2.36353e-2 + t * (7.5599e-5 - 2.4536e-8 * t), 1.33822e-5 + t * (8.71667e-8 + 9.5569e-11 * t), 0.736042 + t * (-2.80448e-4 + 3.43023e-7 * t)


def natural(kind, length, surface, air):
    film = (surface + air) / 2
    k, nu, pr = air_at(film)
    ra = G / film * abs(surface - air) * length**3 / nu**2 * pr
    a, c = (0.825, 0.492) if kind == 'plate' else (0.60, 0.559)
    root = a + 0.387 * ra ** (1 / 6) / (1 + (c / pr) ** (9 / 16)) ** (8 / 27)
    return root * root * k / length


def stream(length, surface, air, speed, kind):
    k, nu, pr = air_at((surface + air) / 2)
    re = speed * length / nu
    if kind == 'plate':
        return 0.664 * np.sqrt(re) * np.cbrt(pr) * k / length
    return (0.3 + 0.62 * np.sqrt(re) * np.cbrt(pr) / (1 + (0.4 / pr) ** (2 / 3)) ** 0.25 * (1 + (re / 282000) ** 0.625) ** 0.8) * k / length


def film(kind, length, surface, w, eps):
    c = natural(kind, length, surface, w['air'])
    if w['speed'] > 0:
        c = max(c, stream(length, surface, w['air'], w['speed'], kind))
    r = eps * SIGMA * (surface + w['radiant']) * (surface**2 + w['radiant'] ** 2)
    return c, r


class Plate:
    """Axisymmetric cells; heat evenly over the ring."""

    def __init__(self, a1, a2, b, t, k, kz, rho, c, nr=240, nz=30):
        parts = [(0, a1), (a1, a2), (a2, b)]
        edges = [0.0]
        for lo, hi in parts:
            n = max(4, int(round(nr * (hi - lo) / b)))
            edges += list(lo + (hi - lo) * np.arange(1, n + 1) / n)
        r = np.array(edges)
        rc = (r[1:] + r[:-1]) / 2
        z = t * np.linspace(0, 1, nz + 1) ** 1.4
        dz = np.diff(z)
        face = np.pi * (r[1:] ** 2 - r[:-1] ** 2)
        n = len(rc)
        idx = np.arange(n * nz).reshape(n, nz)
        rows, cols, vals = [], [], []

        def link(p, q, g):
            g = np.broadcast_to(g, p.shape).ravel()
            p, q = p.ravel(), q.ravel()
            rows.extend([p, q, p, q]); cols.extend([q, p, p, q]); vals.extend([-g, -g, g, g])

        link(idx[:-1], idx[1:], (k * 2 * np.pi * r[1:-1] / np.diff(rc))[:, None] * dz)
        link(idx[:, :-1], idx[:, 1:], kz * face[:, None] / ((dz[:-1] + dz[1:]) / 2))
        self.base = coo_matrix((np.concatenate(vals), (np.concatenate(rows), np.concatenate(cols))), shape=(n * nz, n * nz)).tocsc()
        self.top, self.bottom, self.face = idx[:, 0], idx[:, -1], face
        self.half, self.last = dz[0] / 2 / kz, dz[-1] / 2 / kz
        ring = (rc > a1) & (rc < a2)
        self.weight = np.where(ring, face, 0) / face[ring].sum()
        self.open = rc > a2
        self.capacity = (rho * c * face[:, None] * dz).ravel()
        self.entry = np.zeros(n * nz)
        self.entry[self.top] = self.weight

    def matrix(self, h):
        extra = np.zeros(self.base.shape[0])
        extra[self.top] += np.where(self.open, self.face / (1 / h + self.half), 0)
        extra[self.bottom] += self.face / (1 / h + self.last)
        return (self.base + diags(extra)).tocsc()

    def ring_mean(self, rises, watts):
        return self.weight @ (rises[self.top]) + watts * self.half * (self.weight**2 / np.where(self.weight > 0, self.face, 1)).sum() * 1.0

    def mean(self, rises, h):
        top = rises[self.top] / (1 + h * self.half)
        bottom = rises[self.bottom] / (1 + h * self.last)
        a = self.face
        return ((top * a)[self.open].sum() + (bottom * a).sum()) / (a[self.open].sum() + a.sum())

    def steady(self, h):
        u = splu(self.matrix(h)).solve(self.entry)
        return self.ring_mean(u, 1.0), self.mean(u, h)


PLATES = {
    'printed': dict(a1=0.006, a2=0.0175, side=0.09, t=0.007, k=0.2, kz=0.16, rho=1070.0, c=1300.0, eps=0.9),
    'metal': dict(a1=0.006, a2=0.0175, side=0.09, t=0.003, k=167.0, kz=167.0, rho=2700.0, c=896.0, eps=0.8),
}
MOTOR = dict(ke=0.0868, beta=-0.0011, r20=0.18, wm=0.9, mc=6.0, d=0.052, l=0.022, eps=0.6, contact=0.8, capacity=100.0)
WHERE = dict(still=dict(air=311.15, radiant=311.15, speed=0.0), sun=dict(air=300.15, radiant=330.15, speed=2.0))


class Case:
    def __init__(self, plate, where):
        p = PLATES[plate]
        self.p, self.w = p, WHERE[where]
        self.plate = Plate(p['a1'], p['a2'], p['side'] / np.sqrt(np.pi), p['t'], p['k'], p['kz'], p['rho'], p['c'])
        hs = np.geomspace(2, 80, 9)
        pairs = np.array([self.plate.steady(h) for h in hs])
        self.fit_ring = np.polynomial.Chebyshev.fit(np.log(hs), np.log(pairs[:, 0]), 8)
        self.fit_mean = np.polynomial.Chebyshev.fit(np.log(hs), np.log(pairs[:, 1]), 8)

    def to_plate(self, mount):
        """Heat from the mounting face into the plate, and its conductance over the rise."""
        p, w = self.p, self.w

        def mismatch(h):
            c, r = film('plate', p['side'], self.mean_at(mount, h), w, p['eps'])
            return c + r - h

        h = brentq(mismatch, 2.0, 80.0, xtol=1e-12)
        return (mount - self.far) / (MOTOR['contact'] + np.exp(self.fit_ring(np.log(h))))

    def mean_at(self, mount, h):
        p, w = self.p, self.w
        self.far = w['air']
        mean = mount
        for _ in range(200):
            c, r = film('plate', p['side'], mean, w, p['eps'])
            self.far = w['air'] + r / (c + r) * (w['radiant'] - w['air'])
            new = self.far + (mount - self.far) / (MOTOR['contact'] + np.exp(self.fit_ring(np.log(h)))) * np.exp(self.fit_mean(np.log(h)))
            if abs(new - mean) < 1e-11:
                break
            mean = new
        return mean

    def to_can(self, mount):
        m, w = MOTOR, self.w
        area = np.pi * m['d'] * (m['l'] + m['d'] / 4)

        def out(can):
            c, r = film('cylinder', m['d'], can, w, m['eps'])
            return area * (c * (can - w['air']) + r * (can - w['radiant']))

        can = brentq(lambda T: (mount - T) / m['mc'] - out(T), 250, 800, xtol=1e-11)
        return (mount - can) / m['mc'], can

    def losses(self, torque, mount, can):
        m = MOTOR
        ke = m['ke'] * (1 + m['beta'] * (can - 293.15))
        p20 = torque**2 * m['r20'] / ke**2
        gain = m['wm'] * p20 / 254.5
        if gain >= 1:
            return np.inf, np.inf
        winding = (mount - 293.15 + 254.5 * gain) / (1 - gain) + 293.15
        return p20 * (winding - 293.15 + 254.5) / 254.5, winding

    def balance(self, torque):
        def surplus(mount):
            q, can = self.to_can(mount)
            return self.losses(torque, mount, can)[0] - q - self.to_plate(mount)

        rises = np.linspace(self.w['air'] + 0.5, self.w['air'] + 200, 60)
        previous = rises[0]
        for T in rises[1:]:
            if surplus(T) < 0:
                mount = brentq(surplus, previous, T, xtol=1e-10)
                _, can = self.to_can(mount)
                loss, winding = self.losses(torque, mount, can)
                return dict(winding=winding, mount=mount, can=can, loss=loss)
            previous = T
        return None

    def most(self):
        """The largest torque with a balance: at each rise the torque whose loss is what leaves, largest over a grid and then between its neighbours."""
        def torque(mount):
            q, can = self.to_can(mount)
            leaving = q + self.to_plate(mount)
            # Surroundings warmer than the air heat a mount that is hardly warmer than the air.
            if leaving <= 0:
                return 0
            return brentq(lambda t: min(self.losses(t, mount, can)[0], 1e9) - leaving, 1e-6, 5, xtol=1e-13)

        rises = np.linspace(5, 450, 60)
        k = int(np.argmax([torque(self.w['air'] + r) for r in rises]))
        found = minimize_scalar(lambda r: -torque(self.w['air'] + r), bounds=(rises[max(k - 1, 0)], rises[min(k + 1, 59)]), method='bounded', options=dict(xatol=1e-4))
        return dict(torque=-found.fun, mount=self.w['air'] + found.x)

    def stall(self, torque, time, steps, constant=None):
        """The whole plate in cells: two-stage implicit steps (gamma = 1 - 1/sqrt 2); films of the moment."""
        pl, p, m = self.plate, self.p, MOTOR
        dt = time / steps
        u = np.zeros(pl.base.shape[0])
        T = self.w['air']
        gamma = 1 - np.sqrt(0.5)
        own = (pl.weight**2 / np.where(pl.weight > 0, pl.face, 1)).sum() * pl.half + m['contact']

        def step(u, T, h, loss_minus_can, dt):
            n = len(u)
            M = pl.matrix(h)
            # ring heat q = (T - air - w.u) / own; unknown u and T together
            w = np.zeros(n); w[pl.top] = pl.weight
            A = diags(pl.capacity / (gamma * dt)) + M
            lu = splu(A.tocsc())
            return lu, w

        for k in range(steps):
            h = None
            state_u, state_T = u.copy(), T
            ku, kT = [], []
            for stage in range(2):
                bu = u + (dt * (1 - gamma) * ku[0] if stage else 0)
                bT = T + (dt * (1 - gamma) * kT[0] if stage else 0)
                if h is None:
                    mean = self.w['air'] + pl.mean(u, 10.0)
                    c, r = film('plate', p['side'], mean, self.w, p['eps'])
                    h = c + r
                    lu, w = step(u, T, h, 0, dt)
                    green = lu.solve(pl.entry)
                guess = bT
                for _ in range(30):
                    q_can, can = self.to_can(guess)
                    loss = constant if constant is not None else self.losses(torque, guess, can)[0]
                    free = lu.solve(pl.capacity / (gamma * dt) * bu)
                    # q = (guess - air - w.(free + q green)) / own
                    q = (guess - self.w['air'] - w @ free) / (own + w @ green)
                    rate = (loss - q_can - q) / m['capacity']
                    new = bT + gamma * dt * rate
                    if abs(new - guess) < 1e-9:
                        break
                    guess = guess + 0.7 * (new - guess)
                su = free + q * green
                ku.append((su - bu) / (gamma * dt)); kT.append((guess - bT) / (gamma * dt))
            u = u + dt * ((1 - gamma) * ku[0] + gamma * ku[1])
            T = T + dt * ((1 - gamma) * kT[0] + gamma * kT[1])
        _, can = self.to_can(T)
        return dict(mount=T, can=can)


out = dict(plates=PLATES, motor=MOTOR, where=WHERE, laws=[], balances=[], edges=[], stalls=[], runs=[])
for plate in PLATES:
    for where in WHERE:
        case = Case(plate, where)
        for rise in (1.0, 10.0, 40.0, 120.0):
            mount = case.w['air'] + rise
            heat = case.to_plate(mount)
            through, can = case.to_can(mount)
            out['laws'].append(dict(plate=plate, where=where, rise=rise, heat=round(heat, 6), canHeat=round(through, 6), can=round(can, 5)))
        for torque in (0.05, 0.3, 0.45):
            found = case.balance(torque)
            if found:
                out['balances'].append(dict(plate=plate, where=where, torque=torque, **{k: round(v, 5) for k, v in found.items()}))
                print(out['balances'][-1], flush=True)
        out['edges'].append(dict(plate=plate, where=where, **{k: round(v, 6) for k, v in case.most().items()}))
        print(out['edges'][-1], flush=True)
        if where == 'still':
            for torque, time in ((0.9, 20.0), (0.9, 60.0), (0.6, 300.0)):
                a, b = case.stall(torque, time, 60), case.stall(torque, time, 120)
                row = dict(plate=plate, torque=torque, time=time, mount=round(b['mount'], 3), can=round(b['can'], 3), stepChange=round(abs(b['mount'] - a['mount']), 4))
                out['stalls'].append(row)
                print(row, flush=True)
            b = case.stall(0, 240.0, 120, constant=12.0)
            out['runs'].append(dict(plate=plate, loss=12.0, time=240.0, mount=round(b['mount'], 3)))
            print(out['runs'][-1], flush=True)
Path(__file__).with_suffix('.json').write_text(json.dumps(out, indent=1) + '\n')
