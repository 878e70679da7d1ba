// Parts of the leg by themselves: what a whole leg uses in few of its load cases.
import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lateralFootForce } from '../../src/kinematics/index.js'
import { compare, comparisonAt } from '../../src/leg/assess/compare.js'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import type { CaseId } from '../../src/leg/cases/events.js'
import { assess, describeLeg, type Leg, legNumbers, withFields } from '../../src/leg/index.js'
import type { Joint } from '../../src/leg/numbers.js'
import { bearing, pairSpacing } from '../../src/leg/parts/ball-bearings/fields.js'
import { still } from '../../src/leg/parts/ball-bearings/life.js'
import { axialLoad, moment, ownLoad } from '../../src/leg/parts/ball-bearings/loads.js'
import { interferenceNow, playTilt, seatPressure } from '../../src/leg/parts/ball-bearings/seat.js'
import { sleeved } from '../../src/leg/parts/bolts/tightening.js'
import { thrust } from '../../src/leg/parts/hip-shaft/loads.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { notBrittle } from '../../src/leg/parts/links/strength.js'
import { strength } from '../../src/leg/parts/materials/strength-fields.js'
import { SidewaysLoad } from '../../src/leg/parts/motion/sideways-load.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'
import { strideLoadsOf } from '../../src/leg/parts/motion/stride-results.js'
import { store } from '../../src/leg/parts/plates/values.js'
import { sameStructure } from '../../src/leg/parts/structure.js'
import { bending } from '../../src/leg/parts/transmission/belt/lines.js'
import { bond } from '../../src/leg/parts/transmission/cord/anchor.js'
import { motorForce } from '../../src/leg/parts/transmission/questions.js'
import { geared } from './gear-legs.js'
import { besideLinks, singleBearings } from './rod-bearing-legs.js'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('of all forces across the leg the largest of each effect counts, whenever it comes', () => {
  const x = { hipOffset: 0.058, upperLink: 0.165, lowerLink: 0.18, lateral: 0.2 }
  fc.assert(
    fc.property(fc.array(fc.tuple(between(0, 80), between(-2.2, -0.2)), { minLength: 2, maxLength: 6 }), (moments) => {
      const load = new SidewaysLoad()
      for (const [upright, kneeAngle] of moments) load.take(x as never, upright, kneeAngle)
      const each = moments.map(([upright, kneeAngle]) => lateralFootForce.si({ ...x, force: 0.2 * upright, kneeAngle } as never))
      const most = (of: (one: (typeof each)[number]) => number) => Math.max(0, ...each.map(of))
      expect(load.force).toBeCloseTo(Math.max(...moments.map(([upright]) => 0.2 * upright)), 12)
      expect(load.bending).toBeCloseTo(
        most(({ upperAtHip, upperAtKnee }) => Math.max(upperAtHip, upperAtKnee)),
        12,
      )
      expect(load.twist).toBeCloseTo(
        most(({ upperTwist }) => upperTwist),
        12,
      )
      expect(load.knee).toBeCloseTo(
        most(({ kneeCouple }) => kneeCouple),
        12,
      )
      expect(load.hip).toBeCloseTo(
        most(({ hipCouple }) => hipCouple),
        12,
      )
    }),
  )
})

test('two legs have one structure where their words are the same, whatever their numbers', () => {
  const leg = (retainedBy: string, diameter: number, more: object = {}) =>
    ({ pins: { hipPin: { retainedBy, diameter, ...more } }, bolts: undefined }) as never
  expect(sameStructure(leg('cap', 5), leg('cap', 5))).toBe(true)
  expect(sameStructure(leg('cap', 5), leg('cap', 6))).toBe(true)
  expect(sameStructure(leg('cap', 5), leg('bond', 5))).toBe(false)
  expect(sameStructure(leg('cap', 5), leg('cap', 5, { bearing: { size: 'a' } }))).toBe(false)
  expect(sameStructure(leg('cap', 5, { bearing: {} }), leg('cap', 5, { bearing: undefined }))).toBe(false)
  expect(sameStructure(leg('cap', 5, { bush: {} }), leg('cap', 5, { bearing: {} }))).toBe(false)
})

describe('a stride', () => {
  const leg = {
    ...{ hipOffset: 0.058, upperLink: 0.165, lowerLink: 0.18, upperMass: 0.2, lowerMass: 0.1, upperCentre: 0.08, lowerCentre: 0.09 },
    ...{ upperInertia: 1.5e-3, lowerInertia: 8e-4, hipRotorInertia: 0, kneeRotorInertia: 0, kneeRotorAtHip: 0, rotorCoupling: 0 },
    ...{ knee: 'forward', height: 0.29, mass: 0, gravity: 0, legShare: 0.5, dutyFactor: 0.6, shape: 'rectangular' },
    ...{ tractionLowest: 0, tractionHighest: 0, lateral: 0, speed: 0.5, stepLength: 0.12, clearance: 0.03, blocked: false },
  } as Parameters<typeof strideLoadsOf>[0]

  test('a rotor that turns with a link adds to the torque that swings it', () => {
    // Without weight the links alone are swung: a little more inertia at a joint asks for more of the same torque.
    const bare = strideLoadsOf(leg)
    const rotor = 1e-4
    expect(strideLoadsOf({ ...leg, hipRotorInertia: rotor }).hipShaftRms).toBeGreaterThan(bare.hipShaftRms)
    expect(strideLoadsOf({ ...leg, kneeRotorAtHip: rotor }).hipShaftRms).toBeGreaterThan(bare.hipShaftRms)
    expect(strideLoadsOf({ ...leg, kneeRotorInertia: rotor }).kneeShaftRms).toBeGreaterThan(bare.kneeShaftRms)
    expect(strideLoadsOf({ ...leg, hipRotorInertia: rotor }).hipTorque / bare.hipTorque).toBeCloseTo(1, 5)
  })

  test('a knee that points backward bends the other way and swings as wide', () => {
    const [forward, backward] = (['forward', 'backward'] as const).map((knee) => strideLoadsOf({ ...leg, knee }))
    expect(backward!.kneeLowest).toBeCloseTo(-forward!.kneeHighest, 9)
    expect(backward!.kneeHighest).toBeCloseTo(-forward!.kneeLowest, 9)
  })
})

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const first = read('mudflat-leg-first')
/** The calculation of a leg, its places by name in a hard landing in still air, and its checks. */
function calculated(leg: Leg) {
  const calculation = calculationOf(legNumbers(leg))
  const at = (names: Record<string, string>) =>
    placeOf(calculation, { leg: 'leg', event: 'drop', air: 'normalStill', age: 'new', ...names } as never) as never
  const found = (id: string, joint: Joint, load: CaseId) => {
    const check = CHECKS.find((one) => one.id === id)
    if (check === undefined) throw new Error(`no check ${id}`)
    return compare(calculation, comparisonAt(calculation, check, joint, load))
  }
  return { calculation, at, found }
}

describe('ball bearings on pins and rod', () => {
  // Pushed sideways where it lands, so that the bearings bear thrust and couples.
  const pushed = { 'loadCases.events.drop.lateral': 0.2 } as never
  const pairs = calculated(withFields(besideLinks, pushed))
  const single = calculated(withFields(singleBearings, pushed))

  test('those of a pin bear the thrust of the leg, the drum none', () => {
    const { calculation, at } = pairs
    const [hip, knee, drum] = ['hip', 'knee', 'drum'].map((pivot) => calculation.get(axialLoad, at({ pivot })))
    expect(calculation.get(thrust, at({}))).toBeGreaterThan(1)
    expect(hip).toBe(calculation.get(thrust, at({})))
    expect(knee).toBe(hip)
    expect(drum).toBe(0)
  })

  test('the moment tilts the seat of one bearing that is pressed in, and not those of a pair', () => {
    const { calculation, at } = single
    const place = at({ pivot: 'crank' })
    const [force, tilting] = [calculation.get(ownLoad, place), calculation.get(moment, place)]
    expect(tilting).toBeGreaterThan(0)
    // The bearing is 13 mm by 5 mm: F/(d l) and 6 M/(d l²).
    expect(calculation.get(seatPressure, place) / (force / (0.013 * 0.005) + (6 * tilting) / (0.013 * 0.005 ** 2))).toBeCloseTo(1, 9)
    const pair = pairs.at({ pivot: 'drum' })
    expect(pairs.calculation.get(seatPressure, pair) / (pairs.calculation.get(ownLoad, pair) / (0.028 * 0.008))).toBeCloseTo(1, 9)
  })

  test('the play of a pair tilts by what it is over the distance, that of one bearing by more', () => {
    const { calculation, at } = pairs
    const place = at({ pivot: 'drum' })
    expect(calculation.get(pairSpacing, place)).toBe(0.015)
    // The seat holds the rings: only the clearance of the bearings is left.
    expect(calculation.get(interferenceNow, place)).toBeGreaterThan(0)
    const tilt = calculation.get(playTilt, place)
    expect(tilt).toBeGreaterThan(1e-6 / 0.015)
    expect(tilt).toBeLessThan(30e-6 / 0.015)
    expect(single.calculation.get(playTilt, single.at({ pivot: 'drum' }))).toBeGreaterThan(tilt)
  })

  test('a bearing that turns with the stride does not stand still, and one that does says so', () => {
    const { calculation, at } = pairs
    expect(calculation.get(still, at({ pivot: 'knee', event: 'walk' }))).toBeUndefined()
    expect(calculation.get(still, at({ pivot: 'knee', event: 'stand' }))).toBe('it does not turn')
  })
})

test('a joint without a ball bearing says so where one is asked for', () => {
  const { calculation, at } = calculated(first)
  for (const pivot of ['hip', 'knee']) expect(() => calculation.get(bearing.bore, at({ pivot }))).toThrow('has no ball bearing')
})

test('a plate stores heat while its motor is held, and is not asked otherwise', () => {
  const { calculation, at } = calculated(first)
  const [motor] = Object.keys(first.motors)
  const [plate] = Object.keys(first.plates)
  const storeOf = (event: string) => calculation.get(store, at({ motor: motor!, plate: plate!, event }))
  expect(storeOf('walk')).toEqual({ capacity: 0, conductance: 0 })
  const stalled = storeOf('stall')
  expect(stalled.capacity).toBeGreaterThan(0)
  expect(stalled.conductance).toBeGreaterThan(0)
})

test('the strength of a print names the rules that it rests on: the temperature of its creep data and its glass transition', () => {
  const { checks } = assess(first, { cases: ['drop'] })
  const named = (id: string, where: string) => checks.find((one) => one.id === id)!.sources.some((source) => source.where.includes(where))
  for (const id of ['boss.tearOut', 'drum.split', 'upperLink.bending']) {
    expect(named(id, 'ISO 291'), id).toBe(true)
    expect(named(id, 'below the glass transition'), id).toBe(true)
  }
  // Steel creeps and softens nowhere near.
  for (const where of ['ISO 291', 'below the glass transition']) expect(named('pin.shear', where)).toBe(false)
})

test('the strength of a polymer has the range of its source', () => {
  const x = legNumbers(first)
  const { low, high } = strength.leaf!.range!(x as never, { material: 'ASA' } as never)!
  const typical = strength.leaf!.read(x as never, { material: 'ASA' } as never) as number
  expect(low).toBeLessThan(typical)
  expect(high).toBeGreaterThan(typical)
  expect(low).toBeGreaterThan(0.5 * typical)
})

describe('why a check is not made', () => {
  test('nothing prises the eye of a leg that nothing pushes sideways', () => {
    expect(calculated(first).found('pin.eyeEdge', 'knee', 'drop')).toBe('nothing tilts the joint on its pin')
    const pushed = withFields(first, { 'loadCases.events.drop.lateral': 0.2 } as never)
    expect(calculated(pushed).found('pin.eyeEdge', 'knee', 'drop')).toMatchObject({ demand: expect.any(Number) })
  })

  test('long wraps and a clamp keep their step, each for its own reason', () => {
    expect(calculated(first).found('cord.registry', 'knee', 'walk')).toBe('the middle of the wraps never leaves the pinion')
    expect(calculated(read('mudflat-leg-revised')).found('cord.registry', 'knee', 'walk')).toContain('clamp')
  })

  test('bolts press on print where they have no sleeves and a layer is printed', () => {
    const reason = (changes: object) => {
      const { calculation, at } = calculated(withFields(first, changes as never))
      return calculation.get(sleeved, at({ boltGroup: 'motor' }))
    }
    expect(reason({ 'bolts.motor.sleeves': true })).toContain('sleeves carry')
    expect(reason({ 'bolts.motor.sleeves': false })).toBeUndefined()
    const metal = first.bolts.motor!.stack.map((layer) => ({ ...layer, material: 'aluminium 6061-T6' }))
    expect(reason({ 'bolts.motor.sleeves': false, 'bolts.motor.stack': metal })).toBe('the clamped parts are not printed')
  })

  test('a metal link is never brittle, a printed one in the cold alone', () => {
    const { calculation, at } = calculated(withFields(first, { 'links.lower.material': 'aluminium 6061-T6' } as never))
    const reason = (link: string, air: string) => calculation.get(notBrittle, at({ link, air }))
    expect(reason('lower', 'cold')).toContain('metal')
    expect(reason('upper', 'cold')).toBeUndefined()
    expect(reason('upper', 'hot')).toContain('warm air')
  })
})

test('half of the wraps lie to each side of a clamp', () => {
  // Three turns, a crossed drive: half of them, whatever the arc beside.
  const { capacity } = calculated(read('mudflat-leg-revised')).found('cord.clamp', 'knee', 'walk') as { capacity: number }
  expect(capacity).toBeGreaterThan(1.5 * 2 * Math.PI - Math.PI)
  expect(capacity).toBeLessThan(1.5 * 2 * Math.PI + Math.PI)
})

test('a cone or knot that locks the cord in its resin is read, and none is assumed', () => {
  const lockOf = (more: object) => {
    const tube = { length: '14 mm', socketDiameter: '2.2 mm', adhesive: 'flexible epoxy', ...more }
    const leg = withFields(first, { 'ends.tube': tube, 'joints.hip.drive.ends': 'bondedFerrule', 'joints.hip.drive.end': 'tube' } as never)
    const { calculation, at } = calculated(leg)
    return calculation.get(bond.mechanicalLock, at({ joint: 'hip' }))
  }
  expect([lockOf({ mechanicalLock: true }), lockOf({ mechanicalLock: false }), lockOf({})]).toEqual([true, false, false])
})

test('the bolts of a gearbox bear the pin load where it alone carries the joint, else nothing', () => {
  const forceOf = (leg: Leg) => {
    const { calculation, at } = calculated(leg)
    return calculation.get(motorForce, at({ joint: 'hip' }))
  }
  expect(forceOf(geared)).toBeGreaterThan(10)
  expect(forceOf(withFields(geared, { 'joints.hip.pin': Object.keys(geared.pins ?? {})[0] } as never))).toBe(0)
})

test('pulleys of the knee have a ratio, a leg without them needs none', () => {
  const { holds } = strideLoads.def.requires!.kneePulleys!
  expect([{}, { kneePulleys: { ratio: -1.5 } }, { kneePulleys: { ratio: 0 } }].map((x) => holds(x as never))).toEqual([true, true, false])
})

test('a tooth of a pulley bends as a cantilever loaded at half its height', () => {
  // 100 N at 1 mm on a root of 2 mm by 9 mm, whose section modulus is 6 mm³.
  expect(bending.si({ force: 600, teeth: 6, height: 2e-3, width: 9e-3, root: 2e-3 })).toBeCloseTo((100 * 1e-3) / 6e-9, 3)
})
