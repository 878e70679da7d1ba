import { describe, expect, test } from 'vitest'
import {
  type CordDriveState,
  creepDrift,
  cycleTension,
  slackTorque,
  slipTorque,
  strokeTension,
  travelPath,
} from '../../src/capstan/index.js'
import { DRIVE } from './demo-drive.js'

const base = {
  ...DRIVE,
  friction: 0.15,
  hold: 'frictionOnly',
} as const satisfies CordDriveState
const short = { ...base, pinionWrap: 0.01, friction: 3000, drumFriction: 3000 }
const torque = 30 * 0.048

const cycled = (d: CordDriveState, stroke: number, cycles: number, resolution = 0.01) => {
  const q: number[] = []
  const t: number[] = []
  for (let i = 0; i < cycles; i++) {
    q.push(0, stroke, stroke, 0)
    t.push(torque, torque, 0, 0)
  }
  const path = travelPath(d, q, t, resolution)
  const last = path.points.slice(-4)
  const point = (i: number) =>
    last[i] ?? { tautTension: Number.NaN, slackTension: Number.NaN, pinionAngle: Number.NaN, peakTension: Number.NaN }
  return {
    path,
    peak: Math.max(...last.map((p) => p.peakTension)),
    loadedSlack: point(1).slackTension,
    returned: point(3).tautTension,
    drift: point(3).pinionAngle - (path.points.at(-5)?.pinionAngle ?? 0),
  }
}

/** Bookkeeping of unstretched length with rigid sticking and a pinion that holds nothing: stacks of stored tension, spans, no slip arcs. */
function bookkeeping(stroke: number, cycles: number) {
  const { axialRigidity: EA, pretension: T0, pinionRadius: r1, drumRadius: r2, span: L } = base
  const n = 2000
  const dq = Math.abs(stroke) / n
  const sign = Math.sign(stroke)
  // The track that pays out on the way out, last on first off; the other one fills.
  const out: number[] = new Array(n).fill(T0)
  const back: number[] = []
  let Ta: number = T0
  let Tb: number = T0
  let phi = 0
  const spansTake = (wound: number, paid: number) => (-r2 * dq * (wound - paid)) / L
  const result = { peak: 0, loadedSlack: 0, returned: 0, drift: 0 }
  for (let c = 0; c < cycles; c++) {
    const start = phi
    let peak = 0
    const set = (a: number, b: number) => {
      phi -= (L * (a - Ta)) / EA / r1
      Ta = a
      Tb = b
    }
    const move = (towardsA: boolean, stack: number[], fill: number[]) => {
      for (let i = 0; i < n; i++) {
        const stored = stack.pop() ?? T0
        const wound = towardsA ? Ta : Tb
        fill.push(wound)
        const half = spansTake(wound, stored) / 2
        const drumA = towardsA ? r2 * dq * (1 - Ta / EA) : -r2 * dq * (1 - stored / EA)
        const through = towardsA ? Tb : Ta
        phi += ((-L * half) / EA + drumA) / (r1 * (1 - through / EA))
        Ta += half
        Tb += half
        peak = Math.max(peak, Ta)
      }
    }
    set((Ta + Tb) / 2 + 15, (Ta + Tb) / 2 - 15)
    peak = Ta
    move(sign > 0, out, back)
    result.loadedSlack = Tb
    set((Ta + Tb) / 2, (Ta + Tb) / 2)
    move(sign < 0, back, out)
    result.peak = peak
    result.returned = Ta
    result.drift = phi - start
  }
  return result
}

describe('short pinion wrap', () => {
  test.each([
    [-0.3, 79.7, 49.7, 59.28, 1.347e-3],
    [-1, 88.12, 58.12, 55.08, 4.481e-3],
  ])('stroke %d: unstretched-length bookkeeping, done twice', (stroke, peak, slack, returned, drift) => {
    const books = bookkeeping(stroke, 25)
    expect(books.peak).toBeCloseTo(peak, 1)
    expect(books.loadedSlack).toBeCloseTo(slack, 1)
    expect(books.returned).toBeCloseTo(returned, 1)
    // The other bookkeeping keeps the square of strain, of some 0.4 % of it.
    expect(Math.abs(Math.abs(books.drift) / drift - 1)).toBeLessThan(0.01)
    const ours = cycled(short, stroke, 25, 0.002)
    expect(ours.path.end).toBe('followed')
    expect(ours.peak / books.peak).toBeCloseTo(1, 2.7)
    expect(ours.loadedSlack / books.loadedSlack).toBeCloseTo(1, 2.7)
    expect(ours.returned / books.returned).toBeCloseTo(1, 3)
    expect(Math.abs(ours.drift / books.drift - 1)).toBeLessThan(0.01)
    expect(
      Math.abs(ours.drift) / creepDrift.si({ ratio: 6, stroke: Math.abs(stroke), tensionDifference: 30, axialRigidity: 20000 }),
    ).toBeCloseTo(1, 1.9)
  })
  test('the first loaded stroke follows the exponential', () => {
    const d = { ...short, drumWrapTaut: 4, drumWrapSlack: 4 }
    const { points } = travelPath(d, [0, -1], [torque, torque], 0.001)
    const law = strokeTension.si({ pretension: 60, torque, drumRadius: 0.048, span: 0.02, stroke: 1 })
    expect((points[1]?.slackTension ?? 0) / law.slackTension).toBeCloseTo(1, 2.7)
    expect((points[1]?.tautTension ?? 0) / law.tautTension).toBeCloseTo(1, 2.7)
  })
  test.each([
    ['raising', 0.3],
    ['raising', 1],
    ['raising', 2],
    ['lowering', 0.3],
    ['lowering', 1],
    ['lowering', 1.5],
  ] as const)('settled cycles, %s over %d rad, are the closed form', (loadedStroke, stroke) => {
    const d = { ...short, drumWrapTaut: 4, drumWrapSlack: 4 }
    const { path, peak, returned } = cycled(d, loadedStroke === 'raising' ? -stroke : stroke, 12, 0.002)
    const law = cycleTension.si({ pretension: 60, torque, drumRadius: 0.048, span: 0.02, stroke, loadedStroke })
    expect(path.end).toBe('followed')
    expect(peak / law.peak).toBeCloseTo(1, 2.7)
    expect(Math.min(...path.points.slice(-4).map((p) => p.leastTension)) / law.least).toBeCloseTo(1, 2.7)
    expect(returned / law.restingAtStart).toBeCloseTo(1, 2.7)
    expect((path.points.at(-2)?.tautTension ?? 0) / law.restingAtEnd).toBeCloseTo(1, 2.7)
  })
  test('no wrap pulls more than none, and the whole pull covers strokes up to 2.8 spans over the radius', () => {
    for (const stroke of [0.2, 0.7, 1.1]) {
      const law = cycleTension.si({ pretension: 60, torque, drumRadius: 0.048, span: 0.02, stroke, loadedStroke: 'raising' })
      expect(law.peak).toBeLessThan(90)
      for (const pinionWrap of [Math.PI, 4 * Math.PI, 10 * Math.PI]) {
        const d = { ...base, friction: 0.3, drumFriction: 0.3, pinionWrap }
        expect(cycled(d, -stroke, 12).peak).toBeLessThan(law.peak)
      }
    }
    expect(
      cycleTension.si({ pretension: 60, torque, drumRadius: 0.048, span: 0.02, stroke: 1.2, loadedStroke: 'raising' }).peak,
    ).toBeGreaterThan(90)
  })
  test('passes every element', () => {
    expect(cycled(short, -0.3, 2).path.elementStays).toBe(false)
  })
})

describe('long pinion wrap', () => {
  test.each([-1, -0.3, 0.3, 1])('stroke %d: no drift, and the tension settles near the pretension plus half the difference', (stroke) => {
    const { path, drift, peak } = cycled({ ...base, pinionWrap: 10 * Math.PI }, stroke, 25)
    expect(path.end).toBe('followed')
    expect(path.elementStays).toBe(true)
    expect(Math.abs(drift)).toBeLessThan(1e-10)
    expect(peak).toBeGreaterThan(60 + 15)
    expect(peak).toBeLessThan(60 + 0.6 * 30)
  })
  test('more wrap than needed changes nothing', () => {
    const [a, b] = [10, 14].map((turns) => cycled({ ...base, pinionWrap: turns * Math.PI }, -1, 5))
    expect(a?.peak).toBeCloseTo(b?.peak ?? 0, 8)
    expect(a?.returned).toBeCloseTo(b?.returned ?? 0, 8)
  })
  test('a clamp behaves like a wrap that is long enough', () => {
    const clamped = cycled({ ...base, pinionWrap: 10 * Math.PI, hold: 'clampedMidPinion' }, -1, 5)
    const held = cycled({ ...base, pinionWrap: 10 * Math.PI }, -1, 5)
    expect(clamped.peak).toBeCloseTo(held.peak, 6)
    expect(clamped.returned).toBeCloseTo(held.returned, 6)
  })
})

test('in between the drift lies between nothing and the short-wrap limit', () => {
  const { drift, path } = cycled({ ...base, pinionWrap: Math.PI, friction: 0.3, drumFriction: 0.3 }, -1, 25)
  expect(path.elementStays).toBe(false)
  expect(Math.abs(drift)).toBeGreaterThan(1e-4)
  expect(Math.abs(drift)).toBeLessThan(4.5e-3)
})

test('unstretched cord is conserved', () => {
  // Out and back under no load from a uniform state: nothing is left behind.
  const { points } = travelPath(base, [1, -1, 0], [0, 0, 0], 0.01)
  for (const p of points) {
    expect(p.tautTension).toBeCloseTo(60, 9)
    expect(p.pinionAngle).toBeCloseTo(6 * p.jointAngle, 9)
  }
})

test('finer steps converge', () => {
  const at = (resolution: number) => cycled({ ...base, pinionWrap: Math.PI, friction: 0.3, drumFriction: 0.3 }, -1, 3, resolution).peak
  const [coarse, medium, fine] = [0.02, 0.01, 0.0025].map(at)
  expect(Math.abs((medium ?? 0) - (fine ?? 0))).toBeLessThan(Math.abs((coarse ?? 0) - (fine ?? 0)) + 1e-9)
  expect((medium ?? 0) / (fine ?? 1)).toBeCloseTo(1, 3)
})

test.each([
  ['short wrap', short],
  ['long wrap', { ...base, pinionWrap: 10 * Math.PI }],
  ['between', { ...base, pinionWrap: Math.PI, friction: 0.3, drumFriction: 0.3 }],
  ['clamped', { ...base, pinionWrap: 10 * Math.PI, hold: 'clampedMidPinion' }],
] as const)('driven by the motor through the angles the joint gave it is the same travel: %s', (_, d) => {
  const n = 60
  const q = Array.from({ length: 4 * n }, (_, i) => -0.3 * Math.sin((2 * Math.PI * i) / n))
  const t = q.map((_, i) => (i % n < n / 2 ? torque : 0))
  const byJoint = travelPath(d, q, t, 0.01)
  expect(byJoint.end).toBe('followed')
  const byMotor = travelPath(
    d,
    byJoint.points.map((p) => p.pinionAngle),
    t,
    0.01,
    'motor',
  )
  expect(byMotor.end).toBe('followed')
  expect(byMotor.elementStays).toBe(byJoint.elementStays)
  byMotor.points.forEach((p, i) => {
    expect(Math.abs(p.jointAngle - (q[i] ?? 0))).toBeLessThan(2e-5)
    expect(Math.abs(p.tautTension / (byJoint.points[i]?.tautTension ?? 0) - 1)).toBeLessThan(2e-3)
  })
})

test('a travel that ends says where: angle and torque of the last point', () => {
  const clamped = { ...base, hold: 'clampedMidPinion' } as const
  const { end, points } = travelPath(clamped, [0], [20], 0.01)
  expect(end).toBe('slackSpan')
  const limit = slackTorque.si({ ...clamped, drumFriction: undefined, slackShare: 0.01 }).torque
  expect(points[0]?.torque).toBeLessThan(limit)
  // Here the pinion turns to take the load up, and winds cord on at its tension: the limits differ by some of the strain.
  expect((points[0]?.torque ?? 0) / limit).toBeGreaterThan(0.998)
  const slips = travelPath(base, [0], [20], 0.01).points[0]?.torque ?? 0
  const slip = slipTorque.si({ ...base, drumFriction: undefined }).torque
  expect(slips).toBeLessThan(slip)
  expect(slips / slip).toBeCloseTo(1, 3)
  expect(travelPath(base, [4], [0], 0.01).points[0]?.jointAngle).toBeCloseTo(Math.PI, 4)
  expect(travelPath(clamped, [2], [0], 0.01).points[0]?.pinionAngle).toBeCloseTo(3 * Math.PI, 3)
})

test('the least wrap is that of either track, wherever on the way', () => {
  const least = (q: number[]) =>
    travelPath(
      base,
      q,
      q.map(() => 0),
      0.01,
    ).leastDrumWrap
  expect(least([1, 0])).toBeCloseTo(Math.PI - 1, 9)
  expect(least([-1.5, 0])).toBeCloseTo(Math.PI - 1.5, 9)
  expect(least([0.5, -0.7, 0.2])).toBeCloseTo(Math.PI - 0.7, 9)
})

test.each([0, -0.01, Number.NaN, Number.POSITIVE_INFINITY])('a resolution of %d is refused', (resolution) => {
  expect(() => travelPath(base, [1], [0], resolution)).toThrow('capstan.travelPath: resolution')
})

test('how a travel can end', () => {
  expect(travelPath(base, [0], [20], 0.01).end).toBe('slips')
  expect(travelPath(base, [4], [0], 0.01).end).toBe('anchorLeavesDrum')
  expect(travelPath({ ...base, hold: 'clampedMidPinion' }, [2], [0], 0.01).end).toBe('clampLeavesPinion')
  expect(travelPath({ ...base, hold: 'clampedMidPinion' }, [0], [20], 0.01).end).toBe('slackSpan')
})
