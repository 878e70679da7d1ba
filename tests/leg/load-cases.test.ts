import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf } from '../../src/leg/calculation.js'
import {
  ALL_CASE_IDS,
  assess,
  CASE_IDS,
  type CaseId,
  describeLeg,
  governingReserve,
  htmlReport,
  type LegNumbers,
  legFormula,
  legNumbers,
  markdownReport,
} from '../../src/leg/index.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'

const text = readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8')
const revised = legNumbers(describeLeg(text))
const ALL = ALL_CASE_IDS
const G = 9.80665

/** A leg without weight, standing or walking. */
const light = {
  hipOffset: 0,
  upperLink: 0.15,
  lowerLink: 0.16,
  upperMass: 0,
  lowerMass: 0,
  hipRotorInertia: 0,
  kneeRotorInertia: 0,
  knee: 'forward',
  height: 0.26,
  mass: 40 / G,
  gravity: G,
  legShare: 1,
  dutyFactor: 1,
  shape: 'rectangular',
  tractionLowest: 0,
  tractionHighest: 0,
  speed: 0,
  stepLength: 0,
  clearance: 0,
  blocked: false,
} as const

test.each([0.335, 0.5, Number.NaN])('a landing over %s m, out of reach of the links, has no reserve', (travel) => {
  const numbers = structuredClone(revised)
  for (const event of [numbers.loadCases.events.hop, numbers.loadCases.events.drop]) (event as { travel: number }).travel = travel
  expect(governingReserve(revised, ALL).reserve).toBeGreaterThan(0)
  expect(governingReserve(numbers, ALL).reserve).toBe(0)
})

describe('torques of a pose and a stance against statics by hand', () => {
  test('knee torque of an upright force rises as the leg folds', () => {
    // |torque| = F l1 l2 sin(knee) / D: 80 N at 240 mm is 7.841751 N m (computed from statics).
    const folded = strideLoads.si({ ...light, mass: 80 / G, height: 0.24 })
    expect(Math.abs(folded.kneeTorque)).toBeCloseTo(7.841751, 6)
    fc.assert(
      fc.property(fc.double({ min: 0.06, max: 0.29, noNaN: true }), (height) => {
        const at = (h: number) => Math.abs(strideLoads.si({ ...light, height: h }).kneeTorque)
        expect(at(height)).toBeGreaterThan(at(height + 0.01) - 1e-12)
      }),
    )
  })

  test('force along the ground: moment about the hip is the force times the height', () => {
    const { hipTorque } = strideLoads.si({ ...light, tractionLowest: -0.25, tractionHighest: 0.25 })
    expect(Math.abs(hipTorque)).toBeCloseTo(40 * 0.25 * 0.26, 9)
  })

  test('a mirrored leg that walks backward has the same torques, and a wider traction none that is smaller', () => {
    const stance = { ...light, dutyFactor: 0.75, legShare: 0.75, stepLength: 0.1, speed: 0.1, blocked: true } as const
    const forward = strideLoads.si({ ...stance, tractionLowest: -0.1, tractionHighest: 0.25 })
    const mirrored = strideLoads.si({ ...stance, knee: 'backward', tractionLowest: -0.25, tractionHighest: 0.1 })
    const wider = strideLoads.si({ ...stance, tractionLowest: -0.25, tractionHighest: 0.25 })
    for (const name of ['hipTorque', 'kneeTorque', 'hipShaftRms', 'kneeShaftRms'] as const) {
      expect(Math.abs(mirrored[name])).toBeCloseTo(Math.abs(forward[name]), 12)
      expect(Math.abs(wider[name])).toBeGreaterThanOrEqual(Math.abs(forward[name]) - 1e-12)
    }
    expect(Math.abs(wider.kneeTorque)).toBeGreaterThan(Math.abs(forward.kneeTorque))
  })
})

/** Reserves of every check of every joint, the least over all load cases. */
function reserves(x: LegNumbers): Map<string, number> {
  const calculation = calculationOf(x)
  const least = new Map<string, number>()
  for (const one of comparisonsOf(calculation, CHECKS, ALL)) {
    const found = compare(calculation, one)
    if (typeof found === 'string') continue
    const key = `${one.check.id} ${one.check.scope === 'joint' ? one.joint : ''}`
    least.set(key, Math.min(least.get(key) ?? Number.POSITIVE_INFINITY, found.reserve))
  }
  return least
}

type Writable<T> = { -readonly [N in keyof T]: Writable<T[N]> }
type Draft = Writable<LegNumbers>
const eventIn = (x: Draft, name: string) => x.loadCases.events[name] as unknown as { angle: number; travel: number; height: number }
const changed = (change: (x: Draft) => void): LegNumbers => {
  const copy = structuredClone(revised)
  change(copy as Draft)
  return copy
}

describe('nothing bad raises a reserve', () => {
  const before = reserves(revised)
  test.each<[string, (x: Draft) => void, RegExp]>([
    [
      'more traction',
      (x) => {
        for (const gait of Object.values(x.gaits)) gait.traction = { lowest: -0.3, highest: 0.3 }
      },
      /./,
    ],
    [
      'a steeper slope',
      (x) => {
        for (const name of ['slopeUp', 'slopeDown']) eventIn(x, name).angle *= 1.2
      },
      /./,
    ],
    [
      'a deeper landing at the same force',
      (x) => {
        eventIn(x, 'drop').travel *= 1.02
        eventIn(x, 'drop').height *= 1.02
      },
      /^(cord.slack|motor.current) knee/,
    ],
    [
      'a higher drop',
      (x) => {
        eventIn(x, 'drop').height *= 1.3
      },
      /./,
    ],
    [
      'colder air',
      (x) => {
        x.loadCases.airs.cold!.temperature -= 10
      },
      /^cord.sl/,
    ],
    [
      'hotter air',
      (x) => {
        x.loadCases.airs.hot!.temperature += 5
      },
      /^(motor|cord.heat|boss.grip|cord.peak)/,
    ],
    [
      'an older cord',
      (x) => {
        for (const cord of Object.values(x.cords))
          cord.pretensionLeft = { ...cord.pretensionLeft, typical: 0.9 * cord.pretensionLeft.typical }
      },
      /^cord.sl/,
    ],
  ])('%s', (_, change, checks) => {
    const after = reserves(changed(change))
    for (const [key, reserve] of before) if (checks.test(key)) expect(after.get(key), key).toBeLessThanOrEqual(reserve * (1 + 1e-9))
  })

  test('cold air and an aged cord together take more from the slack limit than either alone', () => {
    const calculation = calculationOf(revised)
    const slack = CHECKS.filter(({ id }) => id === 'cord.slack')
    const at = (id: CaseId) => {
      const [one] = comparisonsOf(calculation, slack, [id]).filter(({ joint }) => joint === 'knee')
      const found = compare(calculation, one!)
      if (typeof found === 'string') throw new Error(found)
      return found.reserve
    }
    expect(at('coldDrop')).toBeLessThan(at('drop'))
  })
})

describe('an assessment', () => {
  const workbench = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))

  test('runs every load case unless some are named, and so do the fast and the swept form', () => {
    expect(assess(workbench).cases.map(({ id }) => id)).toEqual(ALL_CASE_IDS)
    const worst = assess(workbench).governing
    expect(governingReserve(legNumbers(workbench)).case).toBe(worst.case)
    expect(legFormula(workbench)({}).si).toBe(worst.reserve / worst.requiredReserve)
  })

  test('finds what one load case of each sort leaves out: a leg that fails at the end of a landing in the cold', () => {
    const some = assess(workbench, { cases: CASE_IDS })
    const all = assess(workbench)
    expect(some.checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')?.reserve).toBeGreaterThan(1)
    const slack = all.checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')
    expect(slack?.case).toBe('coldDrop')
    expect(slack?.reserve).toBeLessThan(1)
    for (const check of some.checks) {
      const same = all.checks.find(({ id, joint }) => id === check.id && joint === check.joint)
      expect(same?.reserve, check.id).toBeLessThanOrEqual(check.reserve)
    }
  })

  test('both reports hold a governing load case, with its picture', () => {
    for (const page of [markdownReport(assess(workbench)), htmlReport(assess(workbench))]) {
      expect(page).toContain('End of a landing in the cold, aged cord')
      expect(page).not.toMatch(/undefined|NaN/)
    }
  })
})

describe('torques at the ends of a stance', () => {
  test('are those of the leg held there, and the middle of half a sine is its peak', () => {
    const stance = { ...light, dutyFactor: 0.75, legShare: 0.75, stepLength: 0.1, speed: 0.1, blocked: true } as const
    const whole = strideLoads.si({ ...stance, tractionLowest: -0.25, tractionHighest: 0.25 })
    // Upright force times distance, and force along the ground times height: 40 N, 50 mm, a quarter of 40 N, 260 mm.
    expect(Math.abs(whole.hipTorque)).toBeCloseTo(40 * 0.05 + 10 * 0.26, 9)
    // Knee of 0.15/0.16 m with its foot 50 mm behind, braking: 5.414183 N m (computed from statics).
    expect(Math.abs(whole.kneeTorque)).toBeCloseTo(5.414183, 6)
    const trot = strideLoads.si({ ...stance, shape: 'halfSine' })
    expect(trot.vertical).toBeCloseTo(((Math.PI / 2) * 40 * 0.75) / 0.75, 9)
  })
})
