import type { LegCalculation } from '../calculation.js'
import type { CheckResult } from '../check-result.js'
import { legNumbers } from '../numbers.js'
import type { Assessment } from '../result.js'
import { type Cell, closure } from '../run/index.js'
import { type CheckFindings, findingsOf } from './findings.js'

/** The recorded calculation of an assessment, with what was found for each check. */
export interface Recorded {
  readonly calculation: LegCalculation
  readonly checks: readonly CheckFindings[]
}

const RECORDED = new WeakMap<Assessment, Recorded>()

/** Keeps the recorded calculation beside an assessment, which is plain data. */
export const keepRecorded = (assessment: Assessment, recorded: Recorded): void => {
  RECORDED.set(assessment, recorded)
}

/** The recorded calculation of an assessment; a copy of an assessment is calculated again. */
export const recordedOf = (assessment: Assessment): Recorded =>
  RECORDED.get(assessment) ??
  findingsOf(
    legNumbers(assessment.leg),
    assessment.cases.map(({ id }) => id),
    true,
  )

/** Name of a check with its joint, as findings have it. */
export const keyOfResult = ({ id, joint }: CheckResult): string => (joint === undefined ? id : `${id} ${joint}`)

/** Paths of the fields that demand and capacity of a check are made of, in its hardest load case. */
export const fieldsRead = (assessment: Assessment, key: string): ReadonlySet<string> => fieldsReader(assessment)(key)

/** The same for one check after another: each leaf is read once. */
export function fieldsReader(assessment: Assessment): (key: string) => ReadonlySet<string> {
  const { calculation, checks } = recordedOf(assessment)
  const hardest = new Map(checks.map(({ key, findings }) => [key, findings[0]?.comparison]))
  const known = new Map<Cell, readonly string[]>()
  const pathsOf = (cell: Cell): readonly string[] => {
    const paths = known.get(cell) ?? calculation.fieldsOf(cell).map(({ path }) => path)
    known.set(cell, paths)
    return paths
  }
  return (key) => {
    const one = hardest.get(key)
    const leaves = one === undefined ? [] : closure([one.demand, one.capacity]).filter(({ of }) => of.leaf !== undefined)
    return new Set(leaves.flatMap(pathsOf))
  }
}
