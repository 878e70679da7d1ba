import { expect } from 'vitest'
import { type Comparison, compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf, type LegCalculation } from '../../src/leg/calculation.js'
import { ALL_CASE_IDS, type CaseId, type LegNumbers } from '../../src/leg/index.js'
import { CHECKS } from '../../src/leg/parts/index.js'

const SOFT = 'the print is softened, which is a failure of the plate itself'

/**
 * Reserves of every check of every joint, the least over some load cases. A print that has softened has no reserve of its own: its plate has failed in
 * that load case, which is looked at here.
 */
export function reservesOf(structure: LegNumbers, cases: readonly CaseId[] = ALL_CASE_IDS): (x: LegNumbers) => Map<string, number> {
  const calculation = calculationOf(structure)
  const comparisons = comparisonsOf(calculation, CHECKS, cases)
  return (x) => {
    calculation.load(x)
    return leastOf(calculation, comparisons)
  }
}

function leastOf(calculation: LegCalculation, comparisons: readonly Comparison[]): Map<string, number> {
  const least = new Map<string, number>()
  const soft: Comparison[] = []
  const plates = new Map<string, number>()
  const count = (one: Comparison, reserve: number) => {
    const key = `${one.check.id} ${one.check.scope === 'joint' ? one.joint : ''}`.trim()
    least.set(key, Math.min(least.get(key) ?? Number.POSITIVE_INFINITY, reserve))
  }
  for (const one of comparisons) {
    const found = compare(calculation, one)
    if (found === SOFT) soft.push(one)
    if (typeof found === 'string') continue
    if (one.check.id === 'motor.plate') plates.set(`${one.id} ${one.joint}`, found.reserve)
    count(one, found.reserve)
  }
  for (const one of soft) {
    const plate = plates.get(`${one.id} ${one.check.scope === 'joint' ? one.joint : 'hip'}`)
    if (plate !== undefined) expect(plate, `${one.check.id} ${one.id}`).toBeLessThan(1)
    count(one, 0)
  }
  return least
}
