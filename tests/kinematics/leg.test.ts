import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  chainFromScrews,
  dampedInverse,
  INSIDE_OFFSET,
  LegKernel,
  REACHED,
  TOO_FAR,
  TOO_NEAR,
  threeJointLeg,
} from '../../src/kinematics/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { InputError } from '../../src/units/index.js'

const demo = { hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' } as const
const limits = {
  sidewaysHip: { lowest: '-35 deg', highest: '50 deg' },
  hip: { lowest: '-80 deg', highest: '70 deg' },
  knee: { lowest: '15 deg', highest: '140 deg' },
} as const
const anyLeg = fc
  .tuple(
    fc.double({ min: -0.12, max: 0.12, noNaN: true }),
    fc.double({ min: 0.05, max: 0.4, noNaN: true }),
    fc.double({ min: 0.05, max: 0.4, noNaN: true }),
  )
  .map(([d, l1, l2]) => new LegKernel(d, l1, l2))
const anyAngles = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -3.1, max: 3.1, noNaN: true }))) as fc.Arbitrary<number[]>
const regularAngles = fc
  .tuple(
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.double({ min: -0.9, max: 0.5, noNaN: true }),
    fc.double({ min: 0.1, max: 2.3, noNaN: true }),
    fc.boolean(),
  )
  .map(([q1, q2, q3, mirror]) => (mirror ? [q1, -q2, -q3] : [q1, q2, q3]))
const apart = (a: number, b: number) => Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)))
const foot = (leg: LegKernel, q: ArrayLike<number>) => {
  const out = new Float64Array(3)
  leg.footInto(out, 0, q[0]!, q[1]!, q[2]!)
  return out
}

describe('inverse', () => {
  test('100 000 random poses come back on one of four branches, and every branch reaches the foot', () => {
    const random = randomStream(7)
    const leg = new LegKernel(0.058, 0.165, 0.18)
    const q = new Float64Array(3)
    let checked = 0
    let worst = 0
    for (let n = 0; n < 100_000; n++) {
      const pose = [0, 1, 2].map(() => (random.uniform() * 2 - 1) * Math.PI)
      const target = foot(leg, pose)
      // Near each singularity the angle's error grows as the inverse of the distance from it; both are 1 far away.
      const knee = Math.abs(Math.sin(pose[2]!))
      const sideways = Math.abs(0.165 * Math.cos(pose[1]!) + 0.18 * Math.cos(pose[1]! + pose[2]!)) / 0.345
      let best = Infinity
      for (let branch = 0; branch < 4; branch++) {
        if (leg.jointAnglesInto(q, 0, target[0]!, target[1]!, target[2]!, branch) !== REACHED)
          throw new Error(`pose ${pose}, branch ${branch}: not reached`)
        const again = foot(leg, q)
        const miss = Math.hypot(again[0]! - target[0]!, again[1]! - target[1]!, again[2]! - target[2]!)
        if (miss > 1e-9) throw new Error(`branch ${branch} misses by ${miss}`)
        worst = Math.max(worst, miss)
        best = Math.min(best, Math.max(apart(q[0]!, pose[0]!), apart(q[1]!, pose[1]!), apart(q[2]!, pose[2]!)))
      }
      if (best > 1e-12 / Math.min(knee, sideways)) throw new Error(`pose ${pose} comes back ${best} off`)
      checked++
    }
    expect(checked).toBe(100_000)
    expect(worst).toBeLessThan(1e-15)
  }, 60_000)

  test('a right leg mirrors a left leg', () => {
    fc.assert(
      fc.property(anyLeg, anyAngles, (leg, q) => {
        const mirrored = new LegKernel(-leg.hipOffset, leg.upperLink, leg.lowerLink)
        const [left, right] = [foot(leg, q), foot(mirrored, [-q[0]!, q[1]!, q[2]!])]
        expect(right[0]).toBeCloseTo(left[0]!, 14)
        expect(right[1]).toBeCloseTo(-left[1]!, 14)
        expect(right[2]).toBeCloseTo(left[2]!, 14)
        const [one, other] = [new Float64Array(3), new Float64Array(3)]
        if (leg.jointAnglesInto(one, 0, left[0]!, left[1]!, left[2]!, 0) !== REACHED) return
        mirrored.jointAnglesInto(other, 0, left[0]!, -left[1]!, left[2]!, 0)
        expect(apart(other[0]!, -one[0]!)).toBeLessThan(1e-12)
        expect(other[1]).toBe(one[1])
        expect(other[2]).toBe(one[2])
      }),
    )
  })

  test('says why a point cannot be reached', () => {
    const leg = new LegKernel(0.058, 0.165, 0.18)
    const q = new Float64Array(3)
    expect(leg.jointAnglesInto(q, 0, 0, 0.058, -0.4, 0)).toBe(TOO_FAR)
    expect(leg.jointAnglesInto(q, 0, 0, 0.058, -0.001, 0)).toBe(TOO_NEAR)
    expect(leg.jointAnglesInto(q, 0, 0.2, 0.02, -0.01, 0)).toBe(INSIDE_OFFSET)
    expect([...q]).toEqual([0, 0, 0])
    // Touching the limit to rounding is reaching it.
    expect(leg.jointAnglesInto(q, 0, 0, 0.058, -0.345 * (1 + 1e-16), 0)).toBe(REACHED)
    expect(q[2]).toBe(0)
  })

  test('gives the branches by name, meeting ones once, free joints flagged', () => {
    const leg = threeJointLeg(demo)
    const answer = leg.jointAngles({ x: '20 mm', y: '70 mm', z: '-280 mm' })
    if (!answer.reachable) throw new Error('reachable')
    expect(answer.branches.map(({ kneeBend, foot: place }) => `${kneeBend} ${place}`)).toEqual([
      'forward below',
      'backward below',
      'forward above',
      'backward above',
    ])
    expect(answer.branches[0]!.knee.si).toBeGreaterThan(0)

    const straight = leg.jointAngles({ x: '0 mm', y: '58 mm', z: '-345 mm' })
    if (!straight.reachable) throw new Error('reachable')
    expect(straight.branches.map(({ kneeBend }) => kneeBend)).toEqual(['straight', 'straight'])

    const level = leg.jointAngles({ x: '200 mm', y: '58 mm', z: '0 mm' })
    if (!level.reachable) throw new Error('reachable')
    expect(level.branches.map(({ foot: place }) => place)).toEqual(['level', 'level'])

    const onAxis = threeJointLeg({ ...demo, hipOffset: '0 mm' }).jointAngles({ x: '200 mm', y: '0 mm', z: '0 mm' })
    if (!onAxis.reachable) throw new Error('reachable')
    expect(onAxis.branches[0]!.freeJoints).toEqual(['sidewaysHip'])
    expect(onAxis.branches[0]!.sidewaysHip.si).toBe(0)

    const folded = threeJointLeg({ hipOffset: '58 mm', upperLink: '170 mm', lowerLink: '170 mm' }).jointAngles({
      x: '0 mm',
      y: '58 mm',
      z: '0 mm',
    })
    if (!folded.reachable) throw new Error('reachable')
    expect(folded.branches.every(({ freeJoints, kneeBend }) => freeJoints.includes('hip') && kneeBend === 'folded')).toBe(true)
  })
})

describe('unreachable points', () => {
  const bounds = (leg: ReturnType<typeof threeJointLeg>) => leg.limitsSi
  const beyondHalfTurn = {
    sidewaysHip: { lowest: '-60 deg', highest: '200 deg' },
    hip: { lowest: '115 deg', highest: '118 deg' },
    knee: { lowest: '-310 deg', highest: '60 deg' },
  } as const
  test.each([
    ['without limits', undefined],
    ['with limits', limits],
    ['with limits beyond half a turn', beyondHalfTurn],
  ] as const)(
    'nearest point agrees with brute force on 500 targets, %s',
    (_, chosen) => {
      const leg = threeJointLeg(chosen === undefined ? demo : { ...demo, limits: chosen })
      const random = randomStream(chosen === undefined ? 3 : chosen === limits ? 4 : 5)
      const box = chosen === undefined ? [-Math.PI, Math.PI, -Math.PI, Math.PI, -Math.PI, Math.PI] : [...bounds(leg)]
      // A cloud of reachable points, and for each target a local search from the best of them.
      const steps = 26
      // The same leg as a general chain, searched without knowing what a leg is.
      const chain = chainFromScrews({
        screws: [
          { axis: { x: 1, y: 0, z: 0 }, point: { x: '0 mm', y: '0 mm', z: '0 mm' } },
          { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '0 mm' } },
          { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '-165 mm' } },
        ],
        tool: { position: { x: '0 mm', y: '58 mm', z: '-345 mm' } },
      })
      const cloud: { q: number[]; p: Float64Array }[] = []
      for (let i = 0; i <= steps; i++)
        for (let j = 0; j <= steps; j++)
          for (let k = 0; k <= steps; k++) {
            const q = [i, j, k].map((s, a) => Math.min(box[2 * a + 1]!, box[2 * a]! + ((box[2 * a + 1]! - box[2 * a]!) * s) / steps))
            cloud.push({ q, p: foot(leg.si, q) })
          }
      let agreed = 0
      for (let n = 0; n < 500; n++) {
        const t = [0, 1, 2].map(() => (random.uniform() - 0.5) * 1.1)
        const distance = (q: readonly number[]) => {
          const p = foot(leg.si, q)
          return Math.hypot(p[0]! - t[0]!, p[1]! - t[1]!, p[2]! - t[2]!)
        }
        const pose = new Float64Array(6)
        const near = { miss: leg.si.nearestInto(pose, 0, leg.limitsSi, t[0]!, t[1]!, t[2]!), q: pose }
        expect(near.miss).toBeCloseTo(distance([...near.q]), 12)
        for (let a = 0; a < 3; a++) {
          expect(near.q[a]).toBeGreaterThanOrEqual(leg.limitsSi[2 * a]!)
          expect(near.q[a]).toBeLessThanOrEqual(leg.limitsSi[2 * a + 1]!)
        }
        const nearest = nearestOf(cloud, t)
        let least = nearest[0]!.miss
        for (const { q } of nearest) {
          const found = dampedInverse(chain.si, {
            position: t,
            lengthPerRadian: 0.1,
            seed: q,
            lowest: box.filter((_, i) => i % 2 === 0),
            highest: box.filter((_, i) => i % 2 === 1),
            tolerance: 1e-12,
            maxIterations: 400,
          })
          least = Math.min(least, found.positionError)
        }
        // Its pose is within limits and its distance was checked above, so it cannot be nearer than is possible; the search says it is not further.
        expect(near.miss).toBeLessThanOrEqual(least + 1e-9)
        expect(near.miss).toBeGreaterThanOrEqual(least - 1e-3)
        if (least - near.miss < 1e-7) agreed++
      }
      expect(agreed).toBeGreaterThan(480)
    },
    60_000,
  )

  test('are answered with reason, nearest point, miss and limits', () => {
    const far = threeJointLeg(demo).jointAngles({ x: '0 mm', y: '58 mm', z: '-500 mm' })
    expect(far).toMatchObject({ reachable: false, reason: 'tooFar', activeLimits: [], directionArbitrary: false })
    const stopped = threeJointLeg({ ...demo, limits }).jointAngles({ x: '0 mm', y: '58 mm', z: '-344 mm' })
    expect(stopped).toMatchObject({ reachable: false, reason: 'jointLimits', activeLimits: [{ joint: 'knee', end: 'lowest' }] })
    const inside = threeJointLeg(demo).jointAngles({ x: '200 mm', y: '0 mm', z: '0 mm' })
    if (inside.reachable) throw new Error('inside the cylinder')
    expect(inside).toMatchObject({ reason: 'insideOffsetCylinder', directionArbitrary: true })
    expect(inside.miss.in('mm')).toBeCloseTo(58, 9)
    const near = threeJointLeg(demo).jointAngles({ x: '0 mm', y: '58 mm', z: '-5 mm' })
    if (near.reachable) throw new Error('too near')
    expect(near.reason).toBe('tooNear')
  })

  test('beside the offset cylinder the nearest point is on its rim, by hand', () => {
    // In millimetres from the axis: the wanted point at 20, the rim at 58, along the axis at the sum or the difference of the links.
    for (const [x, rim] of [
      [450, 345],
      [-450, -345],
      [12, 15],
      [-12, -15],
      [200, 200],
    ] as const) {
      const answer = threeJointLeg(demo).jointAngles({ x: [x, 'mm'], y: '20 mm', z: '0 mm' })
      if (answer.reachable) throw new Error('inside the cylinder')
      expect(answer.nearest.x.in('mm')).toBeCloseTo(rim, 9)
      expect(answer.nearest.y.in('mm')).toBeCloseTo(58, 9)
      expect(answer.miss.in('mm')).toBeCloseTo(Math.hypot(x - rim, 38), 9)
    }
  })

  test('limits a turn further on are the same limits', () => {
    const leg = (turns: number) => {
      const at = (degrees: number) => [degrees + 360 * turns, 'deg'] as const
      return threeJointLeg({ ...demo, limits: { knee: { lowest: at(15), highest: at(140) }, hip: { lowest: at(-80), highest: at(70) } } })
    }
    const target = { x: '150 mm', y: '58 mm', z: '-330 mm' } as const
    const [one, other] = [leg(0).jointAngles(target), leg(3).jointAngles(target)]
    if (one.reachable || other.reachable) throw new Error('out of reach')
    expect(other.miss.si).toBeCloseTo(one.miss.si, 12)
    expect(other.angles.knee.in('deg')).toBeCloseTo(one.angles.knee.in('deg') + 1080, 9)
    expect(other.activeLimits).toEqual(one.activeLimits)
  })
})

describe('Jacobian, statics, rates', () => {
  test('Jacobian is the derivative of the position', () => {
    fc.assert(
      fc.property(anyLeg, anyAngles, (leg, q) => {
        const J = new Float64Array(9)
        leg.jacobianInto(J, 0, q[0]!, q[1]!, q[2]!)
        for (let j = 0; j < 3; j++) {
          const step = 1e-5
          const [up, down] = [1, -1].map((sign) =>
            foot(
              leg,
              q.map((x, i) => (i === j ? x + sign * step : x)),
            ),
          )
          for (let i = 0; i < 3; i++) expect(Math.abs((up![i]! - down![i]!) / (2 * step) - J[3 * i + j]!)).toBeLessThan(1e-9)
        }
      }),
    )
  })

  test('push and ground reaction are opposite vectors and give the same torque', () => {
    const leg = threeJointLeg(demo)
    const angles = { sidewaysHip: '5 deg', hip: '-30 deg', knee: '60 deg' } as const
    const push = leg.torqueFromFootPush({ angles, footPush: { x: '3 N', y: '-2 N', z: '-50 N' } })
    const reaction = leg.torqueFromGroundReaction({ angles, groundReaction: { x: '-3 N', y: '2 N', z: '50 N' } })
    expect(reaction).toEqual(push)
    // Standing on a bent knee that points forward, the knee must push the shank forward: negative about +y.
    expect(push.knee.si).toBeLessThan(0)
    const back = leg.footPushFromTorque({ angles, torque: push })
    if (!back.regular) throw new Error('regular')
    expect(back.footPush.z.si).toBeCloseTo(-50, 10)
    expect(back.groundReaction.z.si).toBeCloseTo(50, 10)
  })

  test('one call gives what the separate calls give', () => {
    fc.assert(
      fc.property(anyLeg, anyAngles, anyAngles, (leg, q, f) => {
        const [all, J, tau] = [new Float64Array(15), new Float64Array(9), new Float64Array(3)]
        leg.stateInto(all, 0, q[0]!, q[1]!, q[2]!, f[0]!, f[1]!, f[2]!)
        leg.jacobianInto(J, 0, q[0]!, q[1]!, q[2]!)
        leg.torqueFromFootPushInto(tau, 0, q[0]!, q[1]!, q[2]!, f[0]!, f[1]!, f[2]!)
        const p = foot(leg, q)
        for (let i = 0; i < 3; i++) {
          expect(all[i]).toBeCloseTo(p[i]!, 14)
          expect(all[12 + i]).toBeCloseTo(J[i]! * f[0]! + J[3 + i]! * f[1]! + J[6 + i]! * f[2]!, 13)
          expect(tau[i]).toBeCloseTo(all[12 + i]!, 13)
        }
        for (let i = 0; i < 9; i++) expect(all[3 + i]).toBeCloseTo(J[i]!, 14)
      }),
    )
  })

  test('rates, accelerations and pushes come back through their inverses', () => {
    fc.assert(
      fc.property(anyLeg, regularAngles, anyAngles, anyAngles, (leg, q, w, a) => {
        const knee = Math.abs(Math.sin(q[2]!))
        const below = Math.abs(leg.upperLink * Math.cos(q[1]!) + leg.lowerLink * Math.cos(q[1]! + q[2]!))
        fc.pre(knee > 0.05 && below > 0.02)
        const [v, back, bias, acceleration] = [0, 0, 0, 0].map(() => new Float64Array(3)) as [
          Float64Array,
          Float64Array,
          Float64Array,
          Float64Array,
        ]
        leg.footVelocityInto(v, 0, q, w)
        leg.jointRatesInto(back, 0, q, v)
        for (let i = 0; i < 3; i++) expect(back[i]).toBeCloseTo(w[i]!, 10)
        // In place it is the same.
        const place = Float64Array.from(v)
        leg.jointRatesInto(place, 0, q, place)
        expect([...place]).toEqual([...back])
        const J = new Float64Array(9)
        leg.jacobianInto(J, 0, q[0]!, q[1]!, q[2]!)
        leg.rateAccelerationInto(bias, 0, q, w)
        for (let i = 0; i < 3; i++) acceleration[i] = bias[i]! + J[3 * i]! * a[0]! + J[3 * i + 1]! * a[1]! + J[3 * i + 2]! * a[2]!
        leg.jointAccelerationsInto(back, 0, q, w, acceleration)
        for (let i = 0; i < 3; i++) expect(back[i]).toBeCloseTo(a[i]!, 9)
        const inPlace = Float64Array.from(acceleration)
        leg.jointAccelerationsInto(inPlace, 0, q, w, inPlace)
        expect([...inPlace]).toEqual([...back])
        const offset = new Float64Array(7)
        leg.jointAccelerationsInto(offset, 4, q, w, acceleration)
        expect([...offset.subarray(4)]).toEqual([...back])
        // J̇ q̇ against a difference of J q̇ along the motion.
        const step = 1e-5
        const [one, other] = [1, -1].map((sign) => {
          const out = new Float64Array(3)
          leg.footVelocityInto(
            out,
            0,
            q.map((x, i) => x + sign * step * w[i]!),
            w,
          )
          return out
        })
        for (let i = 0; i < 3; i++) expect(Math.abs((one![i]! - other![i]!) / (2 * step) - bias[i]!)).toBeLessThan(1e-7)
        const tau = new Float64Array(3)
        leg.torqueFromFootPushInto(tau, 0, q[0]!, q[1]!, q[2]!, a[0]!, a[1]!, a[2]!)
        leg.footPushFromTorqueInto(back, 0, q, tau)
        for (let i = 0; i < 3; i++) expect(back[i]).toBeCloseTo(a[i]!, 9)
        // Power in joint space and at the foot is one number.
        expect(tau[0]! * w[0]! + tau[1]! * w[1]! + tau[2]! * w[2]!).toBeCloseTo(a[0]! * v[0]! + a[1]! * v[1]! + a[2]! * v[2]!, 12)
      }),
    )
  })

  test('singular poses are named, not answered with NaN', () => {
    const leg = threeJointLeg(demo)
    const straight = { sidewaysHip: '0 deg', hip: '10 deg', knee: '0 deg' } as const
    expect(leg.jointRates({ angles: straight, footVelocity: { x: '0 m/s', y: '0 m/s', z: '1 m/s' } })).toEqual({
      regular: false,
      singularity: 'kneeStraight',
    })
    expect(leg.singularity({ sidewaysHip: '0 deg', hip: '0 deg', knee: '180 deg' })).toBe('kneeFolded')
    const level = leg.jointAngles({ x: '200 mm', y: '58 mm', z: '0 mm' })
    if (!level.reachable) throw new Error('reachable')
    const { sidewaysHip, hip, knee } = level.branches[0]!
    expect(leg.singularity({ sidewaysHip, hip, knee })).toBe('footLevelWithHip')
  })
})

describe('bad input', () => {
  test.each([
    [{ ...demo, upperLink: '0 mm' }, /upperLink is '0 mm'; must be above 0/],
    [{ ...demo, lowerLink: '-10 mm' }, /lowerLink/],
    [
      { ...demo, limits: { knee: { lowest: '90 deg', highest: '10 deg' } } },
      /limits\.knee\.lowest is 90 deg; must be below the highest, 10 deg/,
    ],
    [{ ...demo, upperLnk: '1 mm' }, /did you mean|is not an input/],
  ])('leg %#', (given, message) => {
    expect(() => threeJointLeg(given as never)).toThrow(message)
    expect(() => threeJointLeg(given as never)).toThrow(InputError)
  })

  test('a target that is not finite is refused by name', () => {
    expect(() => threeJointLeg(demo).jointAngles({ x: [Number.NaN, 'mm'], y: '0 mm', z: '0 mm' })).toThrow(/x is .*must be finite/)
    expect(() => threeJointLeg(demo).footPosition({ sidewaysHip: '0 deg', hip: '0 deg' } as never)).toThrow(/knee is missing/)
  })
})

const STARTS = 3

/** The points of a cloud that lie nearest to a target, the nearest first. Twenty thousand points for each target: no object is made for one that is too far. */
function nearestOf(cloud: readonly { q: number[]; p: Float64Array }[], t: readonly number[]): { q: number[]; miss: number }[] {
  const best: { q: number[]; miss: number }[] = []
  let limit = Number.POSITIVE_INFINITY
  for (const { q, p } of cloud) {
    const [x, y, z] = [p[0]! - t[0]!, p[1]! - t[1]!, p[2]! - t[2]!]
    const miss = x * x + y * y + z * z
    if (miss >= limit) continue
    best.push({ q, miss })
    best.sort((a, b) => a.miss - b.miss)
    best.length = Math.min(best.length, STARTS)
    if (best.length === STARTS) limit = best[STARTS - 1]!.miss
  }
  return best.map(({ q, miss }) => ({ q, miss: Math.sqrt(miss) }))
}
