import type { CaseId } from '../cases/events.js'
import type { CheckResult } from '../check-result.js'
import type { FieldRow } from './fields-list.js'
import type { SideEffect } from './side-effects.js'

/** A field that a check may be given its reserve with, and what came of it. */
export interface Target {
  readonly check: CheckResult
  readonly key: string
  readonly field: FieldRow
  readonly up: boolean
  /** The change that suffices, if the document allows it. */
  suffices?: SufficientChange
  /** Factors that were tried and do not suffice, each with a reserve that the check does not exceed there. */
  readonly short: Map<number, number>
  /** How far the check gets with one of them; only for a check without a change that suffices. */
  nearest?: { readonly to: string; readonly given: string; readonly reserve: number }
}

/** A field changed so far that some checks have their reserve. */
export interface SufficientChange {
  readonly to: string
  /** The new value over the old one. */
  readonly ratio: number
  /** Checks that it harms. */
  readonly harms: readonly SideEffect[]
}

/** A small change of a field makes a load case the hardest only if its reserve is at most so many times the least. */
const NEAR = 1.5

/** The load cases in which a check is hardest, or nearly so. */
export const hardestCases = ({ case: id, reserve, otherCases }: CheckResult): ReadonlySet<CaseId> =>
  new Set([id, ...otherCases.filter((other) => other.reserve <= NEAR * reserve).map((other) => other.case)])

/** Whether a check is short in no load case, as `QuickLeg.shortOf` says it. */
export const enoughOf = (short: number): boolean => short === Number.POSITIVE_INFINITY

/** What a change must reach to be named as the nearest: more than nothing, and as much as the one found so far. */
export const leastNamed = ({ nearest }: Target): number => nearest?.reserve ?? Number.MIN_VALUE
