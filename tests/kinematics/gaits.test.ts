import { describe, expect, test } from 'vitest'
import { footPath, GAITS, gait, supportPolygon } from '../../src/kinematics/index.js'
import oracle from '../oracles/kinematics-feet.json' with { type: 'json' }

const feet = [
  { x: '200 mm', y: '120 mm' },
  { x: '200 mm', y: '-120 mm' },
  { x: '-200 mm', y: '120 mm' },
  { x: '-200 mm', y: '-120 mm' },
] as const
const base = {
  feet,
  dutyFactor: 0.8,
  stridePeriod: '1 s',
  mass: '10.5 kg',
  centreOfMass: { x: '0 mm', y: '0 mm', z: '280 mm' },
} as const

describe('gaits of four legs', () => {
  test('a walk in the lateral sequence has the longitudinal margin (β − ¾) λ', () => {
    // R. B. McGhee, A. A. Frank, Math. Biosciences 3 (1968): the best creeping gait, wave gait with hind legs at phase β before the front ones. From memory.
    for (const dutyFactor of [0.76, 0.8, 0.85, 0.9]) {
      const phases = [0, 0.5, dutyFactor, (dutyFactor + 0.5) % 1]
      const { leastLongitudinalMargin, staticallyStable } = gait({ ...base, phases, dutyFactor, forward: '0.2 m/s', samples: 4000 })
      expect(leastLongitudinalMargin.si).toBeCloseTo((dutyFactor - 0.75) * 0.2, 4)
      expect(staticallyStable).toBe(true)
    }
    const trot = gait({ ...base, gait: 'trot', dutyFactor: 0.5, forward: '0.2 m/s' })
    expect(trot.standing).toEqual({ fewest: 2, most: 2 })
    expect(trot.staticallyStable).toBe(false)
    // At mid stance the diagonal passes below the centre of mass.
    expect(Math.max(...trot.samples.margin)).toBeGreaterThan(-1e-3)
    expect(gait({ ...base, gait: 'walk', dutyFactor: 0.6, forward: '0.2 m/s' }).staticallyStable).toBe(false)
  })

  test.each(['0.70', '0.75', '0.90'] as const)('a walk at a duty factor of %s: time on two feet, and time outside the polygon', (text) => {
    const dutyFactor = Number(text)
    const samples = 2000
    const { samples: s } = gait({
      feet: [
        { x: '180 mm', y: '120 mm' },
        { x: '180 mm', y: '-120 mm' },
        { x: '-180 mm', y: '120 mm' },
        { x: '-180 mm', y: '-120 mm' },
      ],
      // In the order left hind, left front, right hind, right front.
      phases: [0.25, 0.75, 0, 0.5],
      dutyFactor,
      stridePeriod: '1 s',
      mass: '6 kg',
      centreOfMass: dutyFactor === 0.7 ? { x: '0 mm', y: '0 mm', z: '250 mm' } : { x: '10 mm', y: '6 mm', z: '250 mm' },
      forward: [0.1 / dutyFactor, 'm/s'],
      samples,
    })
    const standing = (i: number) => [0, 1, 2, 3].filter((leg) => s.stands[4 * i + leg] === 1).length
    const share = (holds: (i: number) => boolean) => Array.from({ length: s.count }, (_, i) => i).filter(holds).length / s.count
    expect(share((i) => standing(i) === 2)).toBeCloseTo(Number(oracle.walk[text].two), 2)
    if (dutyFactor > 0.7) expect(share((i) => s.margin[i]! < 0)).toBeCloseTo(Number(oracle.walk[text].outside), 2)
  })

  test('the margin is that of the support polygon of the standing feet, and the shares carry the weight once', () => {
    const { samples: s, legs, worstFrictionUse } = gait({ ...base, gait: 'walk', forward: '0.15 m/s', samples: 200 })
    for (let i = 0; i < s.count; i += 3) {
      const standing = [0, 1, 2, 3].filter((leg) => s.stands[4 * i + leg] === 1)
      const polygon = supportPolygon({
        feet: standing.map((leg) => ({ x: [s.footX[4 * i + leg]!, 'm'], y: [s.footY[4 * i + leg]!, 'm'] }) as const),
        centreOfMass: base.centreOfMass,
      })
      expect(s.margin[i]).toBeCloseTo(polygon.margin!.si, 12)
      const shares = [0, 1, 2, 3].map((leg) => s.share[4 * i + leg]!)
      expect(shares.reduce((sum, x) => sum + x, 0)).toBeCloseTo(1, 7)
      // Moments about both axes: the loads' centre is below the centre of mass.
      for (const column of [s.footX, s.footY])
        expect(standing.reduce((sum, leg) => sum + shares[leg]! * column[4 * i + leg]!, 0)).toBeCloseTo(0, 7)
    }
    for (const leg of legs) {
      expect(leg.meanShare.si).toBeCloseTo(0.25, 2)
      expect(leg.largestShare.si).toBeGreaterThan(0.3)
    }
    expect(worstFrictionUse.si).toBeLessThan(1e-6)
  })

  test('a foot fixed to the ground stays there while the body moves, turns and steps sideways', () => {
    const motion = { forward: '0.2 m/s', sideways: '-0.05 m/s', turnRate: '0.6 rad/s' } as const
    const { samples: s, legs } = gait({ ...base, gait: 'walk', ...motion, samples: 2000 })
    // Seen from the body: velocity −v − ω × p.
    for (let leg = 0; leg < 4; leg++)
      for (let i = 1; i < s.count - 1; i += 7) {
        const k = (d: number) => 4 * (i + d) + leg
        if (![-1, 0, 1].every((d) => s.stands[k(d)] === 1)) continue
        const step = s.time[i + 1]! - s.time[i - 1]!
        if (Math.abs(s.footX[k(1)]! - s.footX[k(-1)]!) > 0.05) continue
        expect((s.footX[k(1)]! - s.footX[k(-1)]!) / step).toBeCloseTo(-0.2 + 0.6 * s.footY[k(0)]!, 5)
        expect((s.footY[k(1)]! - s.footY[k(-1)]!) / step).toBeCloseTo(0.05 - 0.6 * s.footX[k(0)]!, 5)
      }
    // The inner feet step less than the outer ones; each leg's numbers make a foot path.
    expect(legs[1]!.stanceSweep.si).toBeGreaterThan(legs[0]!.stanceSweep.si)
    const path = footPath({
      midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
      stanceSweep: legs[1]!.stanceSweep,
      heading: legs[1]!.heading,
      stridePeriod: '1 s',
      dutyFactor: 0.8,
    })
    expect(path.si.bodySpeed).toBeCloseTo(Math.hypot(0.2 + 0.6 * 0.12, -0.05 + 0.6 * 0.2), 2)
    // Turning on the spot, and straight on: the sweep is speed times stance time.
    const straight = gait({ ...base, gait: 'walk', forward: '0.2 m/s' }).legs
    for (const leg of straight) {
      expect(leg.stanceSweep.si).toBeCloseTo(0.16, 12)
      expect(leg.heading.si).toBe(0)
    }
  })

  test('a slope moves the weight downhill, uses friction and tips the robot', () => {
    const level = gait({ ...base, gait: 'walk', forward: '0.1 m/s' })
    const uphill = gait({ ...base, gait: 'walk', forward: '0.1 m/s', slope: '10 deg' })
    expect(uphill.leastMargin.si).toBeLessThan(level.leastMargin.si)
    expect(uphill.legs[2]!.meanShare.si).toBeGreaterThan(uphill.legs[0]!.meanShare.si)
    expect(uphill.worstFrictionUse.si).toBeGreaterThan(Math.tan((10 * Math.PI) / 180) / 0.6 - 1e-6)
    const mean = [0, 1, 2, 3].reduce((sum, leg) => sum + uphill.legs[leg]!.meanShare.si, 0)
    expect(mean).toBeCloseTo(1, 6)
    expect(gait({ ...base, gait: 'walk', forward: '0.1 m/s', slope: '45 deg', friction: 1.2 }).staticallyStable).toBe(false)
    // Across the slope: the weight moves to the side.
    const across = gait({ ...base, gait: 'walk', slope: '10 deg', uphill: '90 deg' })
    expect(across.legs[1]!.meanShare.si).toBeGreaterThan(across.legs[0]!.meanShare.si)
  })

  test('flight, one leg and other numbers of legs', () => {
    const bound = gait({ ...base, gait: 'bound', dutyFactor: 0.3, forward: '0.5 m/s' })
    expect(bound.standing.fewest).toBe(0)
    expect(bound.leastMargin.si).toBe(-Infinity)
    const six = gait({
      ...base,
      feet: [...feet, { x: '0 mm', y: '150 mm' }, { x: '0 mm', y: '-150 mm' }],
      phases: [0, 0.5, 0, 0.5, 0.5, 0],
      dutyFactor: 0.55,
      forward: '0.2 m/s',
    })
    expect(six.staticallyStable).toBe(true)
    expect(Object.values(GAITS).every((phases) => phases.length === 4)).toBe(true)
    expect(() => gait({ ...base })).toThrow(/gait is missing; give either a named gait or the phases/)
    expect(() => gait({ ...base, gait: 'trot', phases: [0, 0, 0, 0] })).toThrow(/give either/)
    expect(() => gait({ ...base, phases: [0, 0.5, 0.5] })).toThrow(/phases is '3 phases'; must be one for each of the 4 feet/)
    expect(() => gait({ ...base, gait: 'trot', feet: feet.slice(0, 3) })).toThrow(/must be four for the gait 'trot'/)
    expect(JSON.parse(JSON.stringify(six.samples)).time.length).toBe(240)
  })
})
