import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../src/catalogue/index.js'
import type { AnyFormula } from '../../src/formula/index.js'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf } from '../../src/leg/calculation.js'
import { CASE_IDS } from '../../src/leg/cases/catalogue.js'
import { workOut } from '../../src/leg/cases/work-out.js'
import { CHECKS as OLD } from '../../src/leg/checks/index.js'
import { describeLeg, legNumbers } from '../../src/leg/index.js'
import { prepare } from '../../src/leg/numbers.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { bareSheet } from '../../src/leg/sheet.js'
import { workAgain } from './run/second-reader.js'

const legs = ['mudflat-leg-first', 'mudflat-leg-revised'].map(
  (name) => [name, legNumbers(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))] as const,
)
const formulas = new Map<string, AnyFormula>([...catalogue, [strideLoads.id, strideLoads as unknown as AnyFormula]])

/** Constants that the materials' own functions write. */
const OF_MATERIALS = ['material.transitionMargin', 'material.creepReference']

/** Numbers that a call may write itself; equal ones say nothing of their origin. */
const WRITTEN = [0, 1, 2, -1, Number.POSITIVE_INFINITY]

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

  test.each(CHECKS.map((check) => [check.id, check] as const))('the second reader works %s again', (_, check) => {
    for (const one of comparisons.filter((c) => c.check === check)) {
      const found = compare(calculation, one)
      if (typeof found === 'string') continue
      const sheet = new SheetMaker(calculation as unknown as Calculation<never>).sheet([one.demand, one.capacity])
      const { results, problems } = workAgain(sheet, formulas)
      expect({ gaps: sheet.gaps, problems }, `${one.id} ${one.joint}`).toEqual({ gaps: [], problems: [] })
      expect(results).toEqual([found.demand, found.capacity])
    }
  })

  test('links are right: with every leaf moved a little, so that no two numbers are equal by chance, they are the same', () => {
    const twin = calculationOf(x, { recording: true })
    const others = comparisonsOf(twin, CHECKS, CASE_IDS)
    for (const one of others) compare(twin, one)
    for (const [i, cell] of [...twin.instances.leaves].entries())
      if (typeof cell.value === 'number' && cell.of.leaf?.kind !== 'word' && !OF_MATERIALS.includes(cell.of.id))
        twin.put(cell, cell.value * (1 + 1e-8 * (i + 1)) || 0)
    for (const [i, other] of others.entries()) {
      const one = comparisons[i]!
      if (typeof compare(calculation, one) === 'string' || typeof compare(twin, other) === 'string') continue
      const [own, moved] = [
        new SheetMaker(calculation as unknown as Calculation<never>).sheet([one.demand, one.capacity]),
        new SheetMaker(twin as unknown as Calculation<never>).sheet([other.demand, other.capacity]),
      ]
      const at = (x: unknown, path: string) => path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], x)
      const links = (sheet: typeof own) =>
        sheet.steps.flatMap(({ formula, from }, k) =>
          Object.entries(from)
            .filter(([path]) => !WRITTEN.includes(at(own.steps[k]?.x, path) as number))
            .map(([path, link]) => `${formula} ${path} <- ${link.of === 'leaf' ? sheet.leaves[link.number]?.id : link.number} ${link.path}`)
            .sort(),
        )
      expect(links(own), `${one.check.id} ${one.id} ${one.joint}`).toEqual(links(moved))
    }
  })

  test('load cases that checks gained', () => {
    const gained = CHECKS.map((check) => {
      const now = new Set(comparisons.filter((c) => c.check === check).map((c) => c.id))
      const before = OLD.find((one) => one.id === check.id)!.cases
      return [check.id, [...now].filter((id) => !(before as readonly string[]).includes(id))] as const
    }).filter(([, more]) => more.length > 0)
    console.log(JSON.stringify(gained))
  })
})
