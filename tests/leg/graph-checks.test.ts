import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../src/catalogue/index.js'
import type { AnyFormula } from '../../src/formula/index.js'
import { type Comparison, compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf } from '../../src/leg/calculation.js'
import { workOut } from '../../src/leg/cases/work-out.js'
import { CHECKS as OLD } from '../../src/leg/checks/index.js'
import { CASE_IDS, describeLeg, legNumbers } from '../../src/leg/index.js'
import { JOINTS, prepare } from '../../src/leg/numbers.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { bareSheet } from '../../src/leg/sheet.js'
import { workAgain } from './run/second-reader.js'

const legs = ['mudflat-leg-first', 'mudflat-leg-revised'].map(
  (name) => [name, legNumbers(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))] as const,
)
const formulas = new Map<string, AnyFormula>([...catalogue, [strideLoads.id, strideLoads as unknown as AnyFormula]])

describe.each(legs)('%s', (_, x) => {
  const leg = prepare(x)
  const calculation = calculationOf(x, { recording: true })
  const states = new Map(CASE_IDS.map((id) => [id, workOut(leg, bareSheet, id)]))
  const comparisons = comparisonsOf(calculation, CHECKS, CASE_IDS)
  const walkTorque = (joint: 'hip' | 'knee') => Math.abs(states.get('walk')!.motion![joint].torque)
  const close = (own: number, old: number, what: string) =>
    expect(Object.is(own, old) || Math.abs(own - old) <= 1e-12 * Math.abs(old), `${what}: ${own}, before ${old}`).toBe(true)

  test.each(CHECKS.map((check) => [check.id, check] as const))('%s as before', (id, check) => {
    const old = OLD.find((one) => one.id === id)!
    expect(old.scope).toBe(check.scope)
    for (const caseId of old.cases) {
      const state = states.get(caseId)!
      for (const joint of old.scope === 'joint' ? (['hip', 'knee'] as const) : (['hip'] as const)) {
        const before = old.run(bareSheet.of, { leg, state, joint, walkTorque }, state.joints[joint])
        const one = comparisons.find((c) => c.check === check && c.joint === joint && c.id === caseId)
        expect(one, `${id} ${joint} ${caseId} is missing`).toBeDefined()
        const now = compare(calculation, one!)
        if (before === undefined) expect(typeof now, `${id} ${joint} ${caseId}`).toBe('string')
        else {
          if (typeof now === 'string') throw new Error(`${id} ${joint} ${caseId}: ${now}`)
          expect(now.failure).toBeUndefined()
          close(now.demand, before.demand, `${id} ${joint} ${caseId} demand`)
          close(now.capacity, before.capacity, `${id} ${joint} ${caseId} capacity`)
        }
      }
    }
  })

  /** Whether a number is one of the heat balance. */
  const ofHeat = (one: Comparison, number: number) =>
    JOINTS.some((joint) => Object.values(states.get(one.id)!.joints[joint].heat).includes(number))

  test.each(CHECKS.map((check) => [check.id, check] as const))('the second reader works %s again', (_, check) => {
    for (const one of comparisons.filter((c) => c.check === check)) {
      const found = compare(calculation, one)
      if (typeof found === 'string') continue
      const sheet = new SheetMaker(calculation as unknown as Calculation<never>).sheet([one.demand, one.capacity])
      const { results, problems } = workAgain(sheet, formulas)
      // The heat balance is one piece until it is made of values.
      const gaps = sheet.gaps.filter(({ number, where }) => !where.startsWith('motor.heat') && !ofHeat(one, number))
      expect({ gaps, doubtful: sheet.doubtful, problems }, `${one.id} ${one.joint}`).toEqual({ gaps: [], doubtful: [], problems: [] })
      if (sheet.gaps.length === 0) expect(results).toEqual([found.demand, found.capacity])
    }
  })

  test('load cases that checks gained', () => {
    const gained = CHECKS.map((check) => {
      const now = new Set(comparisons.filter((c) => c.check === check).map((c) => c.id))
      const before = OLD.find((one) => one.id === check.id)!.cases
      return [check.id, [...now].filter((id) => !before.includes(id))] as const
    }).filter(([, more]) => more.length > 0)
    console.log(JSON.stringify(gained))
  })
})
