import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fourBarKneePose, kneePinForce, rodForce } from '../../src/kinematics/index.js'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { EVENTS } from '../../src/leg/cases/events.js'
import { type Leg, legNumbers, withFields } from '../../src/leg/index.js'
import { momentByRod, nearerLoad, shaftLoad, shaftMoment } from '../../src/leg/parts/hip-shaft/loads.js'
import { groundForce, pinLoad, stride } from '../../src/leg/parts/motion/values.js'
import { pinForce } from '../../src/leg/parts/pins-and-bosses/loads.js'
import { shaftForce } from '../../src/leg/parts/transmission/questions.js'
import { SECOND_STAGE } from '../../src/leg/second-stage.js'
import { shaftBearings } from '../../src/structures/index.js'
import hand from '../oracles/leg-hip-axis.json' with { type: 'json' }
import { besideLinks } from './rod-bearing-legs.js'
import { beltOnGearbox, beltRevised, rodOnGearbox } from './through-legs.js'

const off = (one: number, other: number) => Math.abs(one / other - 1)
const reader = (leg: Leg, event: string) => {
  const calculation = calculationOf(legNumbers(leg))
  const at = (names: object = {}) =>
    calculation.instances.implied(placeOf(calculation, { leg: 'leg', event, air: 'normalStill', age: 'new', ...names } as never)) as never
  return { calculation, at }
}

describe('crank and upper link press on the hip axis against each other', () => {
  const size = fc.double({ min: -100, max: 100, noNaN: true })
  const angle = fc.double({ min: -1.5, max: 1.5, noNaN: true })
  const linkages = {
    parallelogram: { ground: 0.165, crank: 0.034, coupler: 0.165, rocker: 0.034, rockerAngleAtStraightKnee: -2.88, crankSide: 'negative' },
    'four-bar': { ground: 0.165, crank: 0.034, coupler: 0.157, rocker: 0.03, rockerAngleAtStraightKnee: 0.26, crankSide: 'positive' },
  } as const
  const bend = fc.double({ min: 0.6, max: 1.6, noNaN: true })
  const loaded = (linkage: (typeof linkages)[keyof typeof linkages], [kneeAngle, hipAngle, kneeTorque, forward, upward]: Pose) => {
    const pose = fourBarKneePose.si({ ...linkage, kneeAngle })
    const { force } = rodForce.si({ ...linkage, ...pose, kneeTorque })
    const way = hipAngle + pose.couplerAngle
    const pull = [-force * Math.sin(way), -force * Math.cos(way)] as const
    const pin = kneePinForce.si({ ...pose, groundForward: forward, groundUpward: upward, rodForce: force, hipAngle })
    return { force, pull, pin }
  }
  type Pose = readonly [number, number, number, number, number]

  test.each(Object.entries(linkages))('together by the force of the ground alone, whatever the rod bears: %s', (_, linkage) => {
    fc.assert(
      fc.property(bend, angle, size, size, size, (...pose) => {
        const { force, pull, pin } = loaded(linkage, pose)
        // Each part presses on the hip axis with what acts on it elsewhere: the link with the reverse of the knee pin's force, the crank with the rod's pull.
        const sum = [-pin.forward + pull[0], -pin.upward + pull[1]]
        const scale = 1e-12 * (1 + Math.abs(force) + Math.hypot(pose[3], pose[4]))
        expect(Math.abs(sum[0]! - pose[3])).toBeLessThan(scale)
        expect(Math.abs(sum[1]! - pose[4])).toBeLessThan(scale)
        expect(Math.hypot(...(sum as [number, number]))).toBeLessThanOrEqual(pin.force + Math.abs(force) + scale)
      }),
      { numRuns: 300, seed: 7 },
    )
  })

  test('the knee pin bears the sum of both sizes where ground and rod pull along one line, and less in every other direction', () => {
    fc.assert(
      fc.property(angle, size, fc.double({ min: 0.1, max: 100, noNaN: true }), angle, (hipAngle, pull, ground, turned) => {
        const along = kneePinForce.si({
          groundForward: ground * Math.sign(pull) * Math.sin(hipAngle),
          groundUpward: ground * Math.sign(pull) * Math.cos(hipAngle),
          rodForce: pull,
          hipAngle,
          couplerAngle: 0,
        })
        if (pull !== 0) expect(along.force).toBeCloseTo(ground + Math.abs(pull), 9)
        // The same loads on a robot that is turned as a whole.
        const at = (by: number) =>
          kneePinForce.si({
            groundForward: ground * Math.sin(turned + by),
            groundUpward: ground * Math.cos(turned + by),
            rodForce: pull,
            hipAngle: hipAngle + by,
            couplerAngle: 0,
          })
        expect(at(0).force).toBeLessThanOrEqual(ground + Math.abs(pull) + 1e-9)
        expect(at(0.7).force).toBeCloseTo(at(0).force, 9)
        expect(at(0.7).compression).toBeCloseTo(at(0).compression, 9)
      }),
      { numRuns: 200, seed: 8 },
    )
  })
})

describe('the hip shaft of the heath carrier, dropped, against the equilibrium of four bodies in space (oracles/leg-hip-axis.py)', () => {
  const { hip, knee } = hand.cords
  test.each(Object.entries(hand.rows))('%s', (name, row) => {
    const [event, beside, drum, traction] = name.split(' ') as [string, string, string, string]
    const { calculation, at } = reader(
      withFields(besideLinks, {
        'joints.knee.through.planeOffset': `${beside} mm`,
        'joints.knee.through.pivots.drum.offset': `${Number(drum) - Number(beside)} mm`,
        'loadCases.events.drop.traction': Number(traction),
      } as never),
      event,
    )
    calculation.pin(shaftForce, at({ joint: 'hip' }), hip)
    calculation.pin(shaftForce, at({ joint: 'knee' }), knee)
    const { rodPull, rodPush } = calculation.get(stride, at())
    expect(off(Math.max(rodPull, rodPush), row.rod)).toBeLessThan(1e-9)
    // Not below what the worst direction of both cords does, and little above it: the links' weight is left out, and a drum nearer to the bearing.
    const bounds = [
      [calculation.get(nearerLoad, at()), row.nearer, 1.03],
      [calculation.get(shaftMoment, at()), row.atBearing, 1.08],
      [Math.max(calculation.get(shaftMoment, at()), calculation.get(momentByRod, at())), Math.max(row.atBearing, row.between), 1.08],
    ] as const
    for (const [own, exact, most] of bounds) {
      expect(own).toBeGreaterThanOrEqual(exact * (1 - 1e-12))
      expect(own).toBeLessThan(most * exact)
    }
    if (Number(drum) >= 0) expect(off(calculation.get(nearerLoad, at()), row.nearerWithoutWeight)).toBeLessThan(1e-9)
    expect(calculation.get(momentByRod, at())).toBeGreaterThanOrEqual(row.between - 1e-8)
  })
})

describe('no direction of the cords loads the bearings more', () => {
  const way = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true })
  test.each(['walk', 'trot', 'stall', 'dropEnd'] as const)('%s', (event) => {
    const { calculation, at } = reader(besideLinks, event)
    const x = calculation.document
    const { spacing, overhang } = x.bearings.hipBearings!
    const [hip, knee, ground] = [
      calculation.get(shaftForce, at({ joint: 'hip' })),
      calculation.get(shaftForce, at({ joint: 'knee' })),
      calculation.get(groundForce, at()),
    ]
    const across = (force: number, direction: number) => ({ first: force * Math.cos(direction), second: force * Math.sin(direction) })
    const nearest = (ways: readonly number[]) => {
      const [a, b, c] = ways as [number, number, number]
      const { firstForce } = shaftBearings.si({
        firstBearing: 0,
        secondBearing: -spacing,
        loads: [
          { ...across(hip, a), plane: overhang },
          { ...across(knee, b), plane: overhang },
          { ...across(ground, c), plane: overhang },
        ],
      })
      return firstForce
    }
    const own = calculation.get(nearerLoad, at()) - calculation.get(stride, at()).hipCouple / spacing
    fc.assert(
      fc.property(way, way, way, (...ways) => nearest(ways) <= own * (1 + 1e-12)),
      { numRuns: 200, seed: 9 },
    )
    expect(off(nearest([1, 1, 1]), own)).toBeLessThan(1e-12)
  })
})

describe('what the hip shaft bears of the leg', () => {
  test.each(['rod', 'belt'] as const)('%s to the knee: cords and ground, and nothing of what runs along the upper link', (kind) => {
    for (const event of Object.keys(EVENTS).filter((each) => each !== 'shelf')) {
      const { calculation, at } = reader(kind === 'rod' ? besideLinks : beltRevised, event)
      const cords = calculation.get(shaftForce, at({ joint: 'hip' })) + calculation.get(shaftForce, at({ joint: 'knee' }))
      const { ground, vertical } = calculation.get(stride, at())
      expect(off(calculation.get(shaftLoad, at()), cords + ground)).toBeLessThan(1e-12)
      expect(ground).toBeGreaterThanOrEqual(vertical)
    }
  })
  test('a crank or pulley on the output of a gearbox of its own leaves it the whole force of the link', () => {
    const rod = reader(rodOnGearbox, 'dropEnd')
    const hip = rod.calculation.get(shaftForce, rod.at({ joint: 'hip' }))
    expect(off(rod.calculation.get(shaftLoad, rod.at()), hip + rod.calculation.get(pinLoad, rod.at()))).toBeLessThan(1e-12)
    expect(rod.calculation.get(pinLoad, rod.at())).toBeGreaterThan(2 * rod.calculation.get(groundForce, rod.at()))
    const belt = reader(beltOnGearbox, 'dropEnd')
    const along = belt.calculation.get(shaftForce, belt.at({ joint: SECOND_STAGE }))
    const cord = belt.calculation.get(shaftForce, belt.at({ joint: 'hip' }))
    expect(off(belt.calculation.get(shaftLoad, belt.at()), cord + along + belt.calculation.get(groundForce, belt.at()))).toBeLessThan(1e-12)
  })
  test('a hip pin without a shaft bears the drum of the knee too', () => {
    const bare = withFields(besideLinks, {
      'joints.hip.shaft': undefined,
      'shafts.hipShaft': undefined,
      'bearings.hipBearings': undefined,
    } as never)
    for (const event of ['walk', 'dropEnd']) {
      const { calculation, at } = reader(bare, event)
      const [hip, knee] = [calculation.get(shaftForce, at({ joint: 'hip' })), calculation.get(shaftForce, at({ joint: 'knee' }))]
      const [ground, link] = [calculation.get(groundForce, at()), calculation.get(pinLoad, at())]
      expect(off(calculation.get(pinForce, at({ joint: 'hip' })), hip + Math.max(link, knee + ground))).toBeLessThan(1e-12)
    }
  })
})
