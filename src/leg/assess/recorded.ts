import type { LegCalculation } from '../calculation.js'
import { legNumbers } from '../numbers.js'
import type { Assessment, CheckResult } from '../result.js'
import { closure } from '../run/index.js'
import { type CheckFindings, findingsOf } from './findings.js'

/** The recorded calculation of an assessment, with what was found for each check. */
export interface Recorded {
  readonly calculation: LegCalculation
  readonly checks: readonly CheckFindings[]
}

const KEPT = new WeakMap<Assessment, Recorded>()

/** Keeps the recorded calculation beside an assessment, which is plain data. */
export const keepRecorded = (assessment: Assessment, recorded: Recorded): void => {
  KEPT.set(assessment, recorded)
}

/** The recorded calculation of an assessment; a copy of an assessment is calculated again. */
export const recordedOf = (assessment: Assessment): Recorded =>
  KEPT.get(assessment) ??
  findingsOf(
    legNumbers(assessment.leg),
    assessment.cases.map(({ id }) => id),
    true,
  )

/** Name of a check with its joint, as findings have it. */
export const keyOfResult = ({ id, joint }: CheckResult): string => (joint === undefined ? id : `${id} ${joint}`)

/** Paths of the fields that demand and capacity of a check are made of, in its hardest load case. */
export function fieldsRead(assessment: Assessment, key: string): ReadonlySet<string> {
  const { calculation, checks } = recordedOf(assessment)
  const hardest = checks.find((each) => each.key === key)?.findings[0]?.comparison
  if (hardest === undefined) return new Set()
  const leaves = closure([hardest.demand, hardest.capacity]).filter(({ of }) => of.leaf !== undefined)
  return new Set(leaves.flatMap((cell) => calculation.fieldsOf(cell).map(({ path }) => path)))
}
