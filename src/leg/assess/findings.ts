import { calculationOf, type LegCalculation } from '../calculation.js'
import type { CaseId } from '../cases/events.js'
import type { LegNumbers } from '../leg-numbers.js'
import { CHECKS } from '../parts/index.js'
import { type Comparison, compare, comparisonsOf, type DemandCapacity, missingParts } from './compare.js'

/** A comparison with what was found. */
export interface Finding extends DemandCapacity {
  readonly comparison: Comparison
}

/** One check of one joint (or of the leg) in the load cases it applies to, the hardest first. */
export interface CheckFindings {
  readonly key: string
  readonly comparisons: readonly Comparison[]
  readonly findings: readonly Finding[]
  readonly reserve: number
  readonly required: number
}

/** Findings of a leg. */
export interface LegFindings {
  readonly calculation: LegCalculation
  readonly checks: readonly CheckFindings[]
  /** Checks that do not apply, with the reason. */
  readonly without: ReadonlyMap<string, string>
}

/** Name of a check with its joint, as `pin.bending knee`. */
export const keyOf = ({ check, joint }: Comparison): string => (check.scope === 'leg' ? check.id : `${check.id} ${joint}`)

/** The reserve required of a check: the general one, or that of the check where it is lower. */
export const requiredOf = ({ check }: Comparison, general: number): number => Math.min(check.requiredReserve ?? general, general)

/** Evaluates every check of a leg in some load cases. */
export function findingsOf(x: LegNumbers, cases: readonly CaseId[], recording: boolean): LegFindings {
  const calculation = calculationOf(x, { recording })
  const groups = new Map<string, { comparisons: Comparison[]; findings: Finding[] }>()
  const without = missingParts(calculation, CHECKS)
  for (const comparison of comparisonsOf(calculation, CHECKS, cases)) {
    const found = compare(calculation, comparison)
    if (typeof found === 'string') {
      without.set(comparison.check.id, found)
      continue
    }
    const key = keyOf(comparison)
    const group = groups.get(key) ?? { comparisons: [], findings: [] }
    groups.set(key, group)
    group.comparisons.push(comparison)
    group.findings.push({ ...found, comparison })
  }
  const checks = [...groups].map(([key, { comparisons, findings }]): CheckFindings => {
    const ordered = findings.sort((a, b) => a.reserve - b.reserve)
    const [worst] = ordered as [Finding, ...Finding[]]
    return { key, comparisons, findings: ordered, reserve: worst.reserve, required: requiredOf(worst.comparison, x.usage.requiredReserve) }
  })
  return { calculation, checks, without }
}
