import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { elasticArc } from '../../src/capstan/contact.js'
import {
  arcRecovery,
  arcWindup,
  type CordDriveState,
  driveWindup,
  frictionlessWrapStiffness,
  loadPath,
  slackTorque,
  slipTorque,
  spanStiffness,
  travelPath,
} from '../../src/capstan/index.js'
import { CoulombChain } from './coulomb-chain.js'
import { DRIVE } from './demo-drive.js'

const R1 = {
  ...DRIVE,
  friction: 0.15,
  drumFriction: 0.15,
  hold: 'frictionOnly',
  contactStiffness: undefined,
} as const satisfies CordDriveState
const saturating = { ...R1, pinionWrap: 3 * Math.PI, friction: 0.12, drumFriction: 0.12 }
const um = 1e-6

describe('against a discretised Coulomb chain', () => {
  const follow = (d: CordDriveState, rims: readonly number[]) => {
    const chain = new CoulombChain(d, 400)
    let at = 0
    return rims.map((rim) => {
      const steps = Math.ceil(Math.abs(rim - at) / 8)
      let torque = 0
      for (let k = 1; k <= steps; k++) torque = chain.moveRim((at + ((rim - at) * k) / steps) * um).torque
      at = rim
      return torque
    })
  }
  test.each([
    ['load, unload, reverse, within the wraps', R1, [20, 60, 120, 60, -60, -120, 100]],
    ['saturation at the drum anchors, gross slip and back', saturating, [60, 200, 300, 400, 300, 100, -200]],
  ] as const)('%s', (_, d, rims) => {
    const torques = follow(d, rims)
    const path = loadPath(
      d,
      'angle',
      rims.map((rim) => (rim * um) / d.drumRadius),
    )
    rims.forEach((rim, i) => {
      expect(Math.abs((path[i]?.torque ?? 0) / (torques[i] ?? 0) - 1), `at ${rim} µm`).toBeLessThan(1e-4)
    })
  })
  test('the last of the second case slips at a plateau', () => {
    expect(loadPath(saturating, 'angle', [(400 * um) / 0.048, (500 * um) / 0.048]).map((p) => p.state)).toEqual(['slips', 'slips'])
  })
})

const drives = fc.record({
  axialRigidity: fc.double({ min: 5e3, max: 2e5, noNaN: true }),
  pretension: fc.double({ min: 10, max: 400, noNaN: true }),
  pinionRadius: fc.double({ min: 0.004, max: 0.012, noNaN: true }),
  drumRadius: fc.double({ min: 0.02, max: 0.07, noNaN: true }),
  span: fc.double({ min: 0.005, max: 0.1, noNaN: true }),
  pinionWrap: fc.double({ min: 2, max: 30, noNaN: true }),
  drumWrapTaut: fc.double({ min: 0.3, max: 6, noNaN: true }),
  friction: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
  share: fc.double({ min: 0.02, max: 0.95, noNaN: true }),
})
const built = ({ share, ...x }: { share: number } & Omit<CordDriveState, 'hold' | 'drumWrapSlack'>) => {
  const d = { ...x, drumWrapSlack: x.drumWrapTaut, drumFriction: x.friction, contactStiffness: undefined, hold: 'frictionOnly' as const }
  const slip = slipTorque.si(d).torque
  return { d, slip, torque: share * slip }
}

describe('properties', () => {
  test('a path of one step is the closed form', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque } = built(x)
        const point = loadPath(d, 'torque', [torque])[0]
        expect(point?.windup).toBeCloseTo(driveWindup.si({ ...d, torque }).windup, 9)
        expect((point?.windup ?? 0) / driveWindup.si({ ...d, torque }).windup).toBeCloseTo(1, 8)
      }),
    )
  })
  test('slip begins at the slip torque, not before and not after, in the closed form and on a path', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, slip } = built(x)
        const [below, above] = [0.9995, 1.0005].map((share) => ({
          closed: driveWindup.si({ ...d, torque: share * slip }),
          path: loadPath(d, 'torque', [share * slip])[0],
        }))
        // Some of these wraps grip so well that the slack span has lost its tension before.
        const before = d.pretension * 0.01 > (below?.closed.slackTension ?? 0) ? 'slackSpan' : 'tight'
        expect([below?.closed.state, below?.path?.state]).toEqual([before, before])
        expect([above?.closed.state, above?.path?.state]).toEqual(['slips', 'slips'])
        expect((above?.path?.torque ?? 0) / slip).toBeCloseTo(1, 7)
        expect((above?.closed.torqueCarried ?? 0) / slip).toBeCloseTo(1, 9)
      }),
    )
  })
  test('tangent stiffness is the slope of torque over windup, and falls as torque rises', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque } = built(x)
        const h = 1e-5 * torque
        const [low, at, high] = [torque - h, torque, torque + h].map((t) => driveWindup.si({ ...d, torque: t }))
        if (low === undefined || at === undefined || high === undefined || high.state !== 'tight') return
        const slope = (2 * h) / (high.windup - low.windup)
        // Where slip just reaches an anchor the slope has a corner: compare with one side's neighbours.
        expect(Math.abs(at.tangentStiffness / slope - 1)).toBeLessThan(2e-3)
        expect(driveWindup.si({ ...d, torque: 0.5 * torque }).secantStiffness).toBeGreaterThan(at.secantStiffness)
      }),
    )
  })
  test('the spans alone at zero torque; secant stiffness between its bounds', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque } = built(x)
        const most = spanStiffness.si({ ...d, microSlipLength: 0 })
        expect(driveWindup.si({ ...d, torque: 0 }).tangentStiffness / most).toBeCloseTo(1, 12)
        const { secantStiffness } = driveWindup.si({ ...d, torque, hold: 'clampedMidPinion' })
        expect(secantStiffness).toBeLessThanOrEqual(most * (1 + 1e-9))
        expect(secantStiffness).toBeGreaterThanOrEqual(frictionlessWrapStiffness.si(d) * (1 - 1e-9))
      }),
    )
  })
  test('without friction a clamped drive is its free length', () => {
    const d = { ...R1, friction: 0, drumFriction: 0, hold: 'clampedMidPinion' as const }
    const k = driveWindup.si({ ...d, torque: 1 }).secantStiffness
    expect(k / frictionlessWrapStiffness.si(d)).toBeCloseTo(1, 10)
    const nearly = driveWindup.si({ ...d, friction: 1e-7, drumFriction: 1e-7, torque: 1 }).secantStiffness
    expect(nearly / k).toBeCloseTo(1, 5)
  })
  test('windup is odd in torque: a path to the other side mirrors', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque } = built(x)
        const [a, b] = [torque, -torque].map((t) => loadPath(d, 'torque', [t])[0]?.windup ?? 0)
        expect((a ?? 0) / -(b ?? 1)).toBeCloseTo(1, 8)
      }),
    )
  })
  test('a settled cycle closes and takes energy; the same peaks give the same loop however finely they are reached', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque } = built({ ...x, share: 0.9 * x.share })
        const cycle = [torque, -torque]
        const rough = loadPath(d, 'torque', [...cycle, ...cycle, ...cycle, torque])
        const fine = loadPath(
          d,
          'torque',
          [0, ...cycle, ...cycle, ...cycle].flatMap((from, i, all) => {
            const to = all[i + 1] ?? torque
            return Array.from({ length: 37 }, (_, k) => from + ((to - from) * (k + 1)) / 37)
          }),
        )
        const [end, before] = [rough.at(-1), rough.at(-3)]
        if (rough.some((p) => p.state !== 'tight')) return
        // Wraps keep the memory of the largest load: from the second cycle on the loop repeats to within the ratchet of the mean tension.
        expect(Math.abs((end?.windup ?? 0) - (before?.windup ?? 0))).toBeLessThan(2e-3 * Math.abs(end?.windup ?? 0))
        expect((fine.at(-1)?.windup ?? 0) / (end?.windup ?? 1)).toBeCloseTo(1, 8)
        let loss = 0
        const last = fine.slice(-75)
        for (let i = 1; i < last.length; i++) {
          const [p, q] = [last[i - 1], last[i]]
          if (p === undefined || q === undefined) continue
          loss += 0.5 * (p.torque + q.torque) * (q.windup - p.windup)
        }
        expect(loss).toBeGreaterThan(0)
      }),
    )
  })
  test('below slip more friction is stiffer, and slips later', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque, slip } = built(x)
        const more = { ...d, friction: d.friction * 1.2, drumFriction: d.friction * 1.2 }
        expect(slipTorque.si(more).torque).toBeGreaterThan(slip)
        expect(driveWindup.si({ ...more, torque }).windup).toBeLessThanOrEqual(driveWindup.si({ ...d, torque }).windup * (1 + 1e-9))
      }),
    )
  })
  test('torque is what the spans carry, and the taut side changes more than the slack side', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const { d, torque } = built(x)
        const y = driveWindup.si({ ...d, torque })
        expect((d.drumRadius * (y.tautTension - y.slackTension)) / torque).toBeCloseTo(1, 9)
        expect(y.tautTension - d.pretension).toBeGreaterThanOrEqual((d.pretension - y.slackTension) * (1 - 1e-9))
      }),
    )
  })
})

describe('a clamped cord beyond the slack limit', () => {
  const clamped = (x: Parameters<typeof built>[0]) => ({ ...built(x).d, hold: 'clampedMidPinion' as const })
  test('one step is the closed form, tight or loose; the angle reached brings the torque back', () => {
    fc.assert(
      fc.property(drives, fc.double({ min: 0.1, max: 4, noNaN: true }), (x, times) => {
        const d = clamped(x)
        const torque = times * slackTorque.si({ ...d, slackShare: 0.01 }).torque
        const point = loadPath(d, 'torque', [torque])[0]
        const closed = driveWindup.si({ ...d, torque })
        expect((point?.windup ?? 0) / closed.windup).toBeCloseTo(1, 6)
        expect(point?.state).toBe(closed.state)
        expect(point?.state).toBe(times > 1 ? 'slackSpan' : 'tight')
        expect((loadPath(d, 'angle', [closed.windup])[0]?.torque ?? 0) / torque).toBeCloseTo(1, 6)
        expect(loadPath(d, 'torque', [-torque])[0]?.windup).toBeCloseTo(-(point?.windup ?? 0), 9)
      }),
    )
  })
  test('with hardly any friction it is two springs, then one, and comes back the same way', () => {
    const d = { ...R1, friction: 1e-7, drumFriction: 1e-7, hold: 'clampedMidPinion' as const }
    const length = 0.02 + 0.008 * 3 * Math.PI + 0.048 * Math.PI
    const spring = (20000 * 0.048 ** 2) / length
    const limit = 2 * 60 * 0.048
    expect(slackTorque.si({ ...d, slackShare: 0 }).torque / limit).toBeCloseTo(1, 5)
    const torques = [3, 9, -9, 9, 3, 0]
    loadPath(d, 'torque', torques).forEach((point, i) => {
      const torque = torques[i] ?? 0
      const size = Math.abs(torque)
      const wanted = size < limit ? size / (2 * spring) : limit / (2 * spring) + (size - limit) / spring
      expect(point.windup).toBeCloseTo(Math.sign(torque) * wanted, 7)
      expect(point.looseLength).toBeCloseTo(size < limit ? 0 : 0.048 * wanted - (60 * length) / 20000, 8)
    })
  })
  test('torque and angle histories are one path; a loop through both slack sides takes energy', () => {
    fc.assert(
      fc.property(drives, fc.double({ min: 1.05, max: 3, noNaN: true }), (x, times) => {
        const d = clamped(x)
        const peak = times * slackTorque.si({ ...d, slackShare: 0.01 }).torque
        const torques = [1, -1, 1, 0.5, 0, -0.5, -1, -0.5, 0, 0.5, 1].flatMap((to, i, all) =>
          Array.from({ length: 10 }, (_, k) => peak * ((all[i - 1] ?? 0) + ((to - (all[i - 1] ?? 0)) * (k + 1)) / 10)),
        )
        const path = loadPath(d, 'torque', torques)
        const again = loadPath(
          d,
          'angle',
          path.map((p) => p.windup),
        )
        let loss = 0
        path.forEach((p, i) => {
          expect(Math.abs((again[i]?.torque ?? 0) - p.torque)).toBeLessThan(1e-5 * peak)
          expect(Math.min(p.tautTension, p.slackTension)).toBeGreaterThan(0)
          const last = path[i - 1]
          if (i >= 30 && last !== undefined) loss += 0.5 * (p.torque + last.torque) * (p.windup - last.windup)
        })
        expect(loss).toBeGreaterThan(0)
      }),
      { numRuns: 40 },
    )
  })
})

test('a memory of a thousand turns: each reversal is passed again on the way out, and the largest wipes all of them', () => {
  const largest = 0.8 * slipTorque.si(R1).torque
  const turns = Array.from({ length: 1000 }, (_, k) => (k % 2 === 0 ? 1 : -1) * largest * (1 - k / 1001))
  const spiral = [largest, -largest, ...turns]
  const windups = loadPath(R1, 'torque', [...spiral, ...turns.toReversed(), -largest, largest]).map(({ windup }) => windup)
  const [into, out] = [windups.slice(0, spiral.length), windups.slice(-spiral.length).toReversed()]
  into.forEach((windup, i) => {
    if (i > 0 && i < spiral.length - 1) expect(Math.abs(out[i]! - windup), `turn ${i}`).toBeLessThan(1e-9 * into[0]!)
  })
})

test('above slip: answered, not thrown', () => {
  const y = driveWindup({ ...unit, torque: '20 N m' })
  expect(y.state).toBe('slips')
  expect(y.torqueCarried.in('N m')).toBeCloseTo(slipTorque.si(R1).torque, 9)
  expect(y.windup.notes?.[0]?.text).toContain('no slip')
})
const unit = {
  axialRigidity: '20 kN',
  pretension: '60 N',
  pinionRadius: '8 mm',
  drumRadius: '48 mm',
  span: '20 mm',
  pinionWrap: '1080 deg',
  drumWrapTaut: '180 deg',
  drumWrapSlack: '180 deg',
  friction: 0.15,
} as const

test('angles in turns, degrees and radians give one answer', () => {
  const [a, b, c] = (['3 turn', '1080 deg', `${6 * Math.PI} rad`] as const).map((pinionWrap) =>
    driveWindup({ ...unit, torque: '1 N m', pinionWrap }),
  )
  expect(b?.windup.si).toBeCloseTo(a?.windup.si ?? 0, 14)
  expect(c?.windup.si).toBeCloseTo(a?.windup.si ?? 0, 14)
})

test('the reverse slip of one arc is what the recovery law says', () => {
  const arc = { centreLineRadius: 0.008, axialRigidity: 20000, friction: 0.15 }
  const out = arcWindup.si({ ...arc, tension: 90, storedTension: 60, wrapAngle: 20 }).feed
  const back = arcRecovery.si({ ...arc, peakTension: 90, tension: 60, storedTension: 60 })
  expect(back.recovered + back.lostMotion).toBeCloseTo(out, 15)
})

describe('elastic contact', () => {
  const k = 5e6
  test('agrees with the boundary-value problem integrated from the anchor', () => {
    // EA u″ = min(k u, μ T/R) from u(0) = 0 outwards, by classical Runge-Kutta; the end gives tension and feed.
    const [EA, T0, mu, R, wrap] = [20000, 60, 0.15, 0.008, 6 * Math.PI]
    const shoot = (strain: number) => {
      const n = 20000
      const h = (R * wrap) / n
      let [u, e] = [0, strain]
      const f = (u: number, e: number) => Math.min(k * u, (mu * (T0 + EA * e)) / R) / EA
      for (let i = 0; i < n; i++) {
        const [a1, b1] = [e, f(u, e)]
        const [a2, b2] = [e + (h * b1) / 2, f(u + (h * a1) / 2, e + (h * b1) / 2)]
        const [a3, b3] = [e + (h * b2) / 2, f(u + (h * a2) / 2, e + (h * b2) / 2)]
        const [a4, b4] = [e + h * b3, f(u + h * a3, e + h * b3)]
        u += (h * (a1 + 2 * a2 + 2 * a3 + a4)) / 6
        e += (h * (b1 + 2 * b2 + 2 * b3 + b4)) / 6
      }
      return { tension: T0 + EA * e, feed: u }
    }
    for (const strain of [1e-5, 2e-4, 4e-4, 6e-4]) {
      const { tension, feed } = shoot(strain)
      const ours = elasticArc(tension, T0, mu, R, wrap, EA, k)
      expect(ours.feed / feed, `tension ${tension}`).toBeCloseTo(1, 5)
      const step = 1e-4 * tension
      const slope =
        (elasticArc(tension + step, T0, mu, R, wrap, EA, k).feed - elasticArc(tension - step, T0, mu, R, wrap, EA, k).feed) / (2 * step)
      expect(ours.compliance / slope).toBeCloseTo(1, 5)
    }
  })
  test('a history refuses it by name, and a history without friction', () => {
    expect(() => loadPath({ ...R1, contactStiffness: k }, 'torque', [1])).toThrow('capstan.loadPath: contactStiffness is 5000000 N/m²')
    expect(() => loadPath({ ...R1, friction: 0 }, 'torque', [1])).toThrow('friction is 0; must be above 0')
    expect(() => travelPath({ ...R1, contactStiffness: k }, [1], [0], 0.01)).toThrow('capstan.travelPath: contactStiffness')
  })
  test('a very stiff contact is the rigid one', () => {
    const soft = driveWindup.si({ ...R1, torque: 1, contactStiffness: 1e14 })
    expect(soft.windup / driveWindup.si({ ...R1, torque: 1 }).windup).toBeCloseTo(1, 5)
  })
})
