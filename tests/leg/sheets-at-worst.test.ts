import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../src/catalogue/index.js'
import type { AnyFormula } from '../../src/formula/index.js'
import { type Comparison, compare, reserveIn } from '../../src/leg/assess/compare.js'
import { findingsOf } from '../../src/leg/assess/findings.js'
import { survey } from '../../src/leg/assess/survey.js'
import { ALL_CASE_IDS, describeLeg, legNumbers } from '../../src/leg/index.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { workAgain } from './run/second-reader.js'

const formulas = new Map<string, AnyFormula>([...catalogue, [strideLoads.id, strideLoads as unknown as AnyFormula]])

describe.each(['mudflat-leg-first', 'mudflat-leg-revised'])('every load case of %s', (name) => {
  const x = legNumbers(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))
  const { calculation, checks } = findingsOf(x, ALL_CASE_IDS, true)
  const bands = survey(calculation, checks)

  /** Works the sheet of some comparisons again, as the calculation stands. */
  const again = (comparisons: readonly Comparison[], what: string) => {
    const made = comparisons.flatMap((one) => {
      const found = compare(calculation, one)
      return typeof found === 'string' || found.failure !== undefined ? [] : [{ one, found }]
    })
    const sheet = new SheetMaker(calculation as unknown as Calculation<never>).sheet(made.flatMap(({ one }) => [one.demand, one.capacity]))
    const { results, problems } = workAgain(sheet, formulas)
    expect({ gaps: sheet.gaps, problems }, what).toEqual({ gaps: [], problems: [] })
    expect(results, what).toEqual(made.flatMap(({ found }) => [found.demand, found.capacity]))
    return made.length
  }

  test('the second reader works every check again at typical values', () => {
    expect(
      again(
        checks.flatMap(({ comparisons }) => comparisons),
        'all',
      ),
    ).toBeGreaterThan(1000)
  })

  test('and the hardest case of each with every uncertain value at the end that is unfavourable for it', () => {
    let worked = 0
    for (const check of checks) {
      const { key, comparisons } = check
      const moves = bands.get(check)?.moves ?? []
      for (const { cell, range, low, high } of moves) calculation.put(cell, low < high ? range.low : range.high)
      const reserves = comparisons.map((one) => reserveIn(calculation, one) ?? Number.POSITIVE_INFINITY)
      const hardest = comparisons[reserves.indexOf(Math.min(...reserves))]
      if (hardest !== undefined) worked += again([hardest], key)
      for (const { cell } of moves) calculation.restore(cell)
    }
    expect(worked).toBeGreaterThan(100)
  })
})
