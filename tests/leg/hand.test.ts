import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { appliesTo, type Check } from '../../src/leg/cases/check.js'
import { type CaseId, LOAD_CASES } from '../../src/leg/cases/events.js'
import { ALL_CASE_IDS, describeLeg, legNumbers, withFields } from '../../src/leg/index.js'
import { type LegModel, legModel } from '../../src/leg/leg-model.js'
import { JOINTS, type Joint } from '../../src/leg/numbers.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { calculationFor, caseState } from '../../src/leg/what-if.js'
import checks from '../oracles/leg-hand-checks.json' with { type: 'json' }
import heat from '../oracles/leg-hand-heat.json' with { type: 'json' }

const first = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8'))
const leg = legModel(legNumbers(first))
const stateOf = (id: CaseId) => caseState(leg, id)
/** The same leg pushed sideways as it lands, and in every stride. */
const pushed = legModel(
  legNumbers(withFields(first, { 'loadCases.events.drop.lateral': 0.2, 'gaits.walk.lateral': 0.1, 'gaits.trot.lateral': 0.1 })),
)
const comparisonsIn = new Map([leg, pushed].map((of) => [of, comparisonsOf(calculationFor(of), CHECKS, ALL_CASE_IDS)]))

/** Demand and capacity of a row such as `walk pin.bending knee`. */
function found(key: string, of: LegModel): readonly [number, number] {
  const [id, name, joint = 'hip'] = key.split(' ') as [CaseId, string, Joint?]
  const one = comparisonsIn.get(of)?.find((each) => each.check.id === name && each.id === id && each.joint === joint)
  if (one === undefined) throw new Error(`no check ${key}`)
  const result = compare(calculationFor(of), one)
  if (typeof result === 'string') throw new Error(`${key}: ${result}`)
  return [result.demand, result.capacity]
}

/** Holds a row against the library. */
function near(key: string, [demand, capacity]: readonly [number, number], demandWithin: number, capacityWithin: number, of = leg): void {
  const [ownDemand, ownCapacity] = found(key, of)
  expect(off(ownDemand, demand), `demand ${ownDemand}, by hand ${demand}`).toBeLessThan(demandWithin)
  expect(off(ownCapacity, capacity), `capacity ${ownCapacity}, by hand ${capacity}`).toBeLessThan(capacityWithin)
}

const off = (one: number, other: number) => Math.abs(one / other - 1)

describe('the hand', () => {
  const keys = [checks.rows, heat.rows, checks.sideways].flatMap(Object.keys).map((key) => key.split(' ') as [CaseId, string, Joint?])
  test('looks at nearly every check that this leg is asked', () => {
    const done = new Set(keys.map(([, name]) => name))
    // What this leg is not asked: its cord has long wraps and knots and no clamp, its motor bolts sit in tapped metal, and under their heads its plates soften in every walk.
    const has = (check: Check) => JOINTS.some((joint) => typeof (check.of?.(leg.x, joint) ?? {}) !== 'string')
    const missing = CHECKS.filter((check) => has(check) && !done.has(check.id)).map(({ id }) => id)
    expect(missing).toEqual(['cord.clamp', 'cord.registry', 'ferrule.bond', 'motorBolt.headPressure', 'motorBolt.nut'])
  })
  test('asks nothing that the library does not ask in that load case', () => {
    for (const [id, name, joint] of keys) {
      const check = CHECKS.find((one) => one.id === name)
      expect(check !== undefined && appliesTo(check, LOAD_CASES[id].event), `${id} ${name}`).toBe(true)
      expect(check?.scope === 'joint', `${id} ${name}`).toBe(joint !== undefined)
    }
  })
})

describe('checks against a calculation by hand (oracles/leg-hand-checks.py), each step from a textbook', () => {
  // Speeds and angles of the swing: their largest is looked for until a step would raise it by less than a millionth.
  const SWING = new Set(['bearing.life', 'leg.reach', 'leg.range'])
  test.each(Object.entries(checks.rows))('%s', (key, [demand, capacity]) => {
    const within = SWING.has(key.split(' ')[1]!) ? 1e-5 : 1e-9
    near(key, [demand!, capacity!], within, within)
  })
  test.each(Object.entries(checks.sideways))('pushed sideways: %s', (key, [demand, capacity]) =>
    near(key, [demand!, capacity!], 1e-9, 1e-9, pushed),
  )

  test('cord tensions of the standing knee', () => {
    const { drive } = stateOf('stand').joints.knee
    expect(off(drive.taut, checks['stand knee'].taut)).toBeLessThan(1e-10)
    expect(off(drive.slack, checks['stand knee'].slack)).toBeLessThan(1e-10)
  })
})

describe('motors against heat balances by hand (oracles/leg-hand-heat.py): walking and standing until they settle, then a quarter of an hour of stall', () => {
  const motors = (['walk', 'hotAfternoon', 'stand', 'stall'] as const).flatMap((id) =>
    (['hip', 'knee'] as const).map((joint) => [id, joint] as const),
  )
  test.each(motors)('%s %s: torques, speeds and drag', (id, joint) => {
    const { heat: own } = stateOf(id).joints[joint]
    const by = (heat.motors[id] as Partial<typeof heat.motors.walk>)[joint]
    // Walking backward on a hot day the knee has no steady temperature, so that nothing is left for a stall to start from.
    if (by === undefined) return expect(own.unsettled).toMatch(/the walk before the stall has no steady temperature/)
    expect(own.unsettled).toBeUndefined()
    const pairs = [
      [own.heatingTorque, by.heating, 1e-9],
      [own.motorTorque, by.most, 1e-9],
      // The highest speed of the swing is looked for until a step would raise it by less than a millionth.
      [own.ironLoss, by.iron, 1e-6],
      [own.motorSpeed, by.speed, 1e-6],
      [own.loadedMotorSpeed, by.loadedSpeed, 1e-9],
    ] as const
    for (const [one, other, within] of pairs) expect(Math.abs(one - other)).toBeLessThanOrEqual(within * other)
  })

  // Temperatures carry what tabulated series and finite volumes of the plate differ by, currents a tenth of that through magnets and copper.
  const WARM = [4e-4, 1e-9] as const
  const WITHIN: Readonly<Record<string, readonly [number, number]>> = {
    'motor.plate': WARM,
    'cord.heat': WARM,
    'motor.winding': WARM,
    'motor.magnet': WARM,
    'motor.touch': WARM,
    'motor.runaway': [1e-4, 2e-4],
    'motor.current': [5e-5, 1e-9],
    'motor.speed': [1e-9, 5e-5],
    'motor.swing': [1e-5, 5e-5],
    'controller.heat': [5e-5, 1e-9],
    'supply.current': [1e-4, 1e-9],
    'motorBolt.slip': [1e-9, 1e-9],
    // Creep and rupture of a hot plate: a hundredth of a kelvin of the stack is 1e-3 and 5e-4 of them, and 2e-4 of the clamp load that warm layers add.
    'stackBolt.headPressure': [2e-5, 1e-4],
    'stackBolt.slip': [1e-9, 5e-5],
    'stackBolt.separation': [1e-9, 5e-5],
    'stackBolt.overload': [1e-9, 5e-5],
  }
  /** In a stall a store of one temperature stands for the plate, which is in cells here: 0.5 K of 357 K. */
  const STALL = 2e-3
  test.each(Object.entries(heat.rows))('%s', (key, [demand, capacity]) => {
    const [id, name] = key.split(' ') as [string, string]
    const [demandWithin, capacityWithin] = WITHIN[name]!
    near(key, [demand!, capacity!], id === 'stall' ? STALL : demandWithin, capacityWithin)
  })
})
