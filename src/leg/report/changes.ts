import type { CheckResult } from '../check-result.js'
import type { Assessment } from '../result.js'
import { ChangeSearch } from './change-search.js'
import { fieldName } from './fields-list.js'
import type { SideEffect } from './side-effects.js'
import type { SufficientChange, Target } from './targets.js'

/** One field changed so far that a check has its required reserve. */
export interface Change {
  readonly path: string
  /** The field in words. */
  readonly name: string
  readonly from: string
  readonly to: string
  /** Other checks that do worse by it. */
  readonly harms: readonly SideEffect[]
}

/** Changes that mend one check. */
export interface Changes {
  readonly check: CheckResult
  /** Changes that suffice alone, those that leave every other check as it is first, the smaller first. */
  readonly changes: readonly Change[]
  /** Where none suffices: the change that raises the reserve most. */
  readonly nearest?: { readonly name: string; readonly from: string; readonly to: string; readonly reserve: number }
}

/** Changes that are listed for each check. */
const MAX_LISTED = 3
/** Checks that are solved for one report: a leg on which more fails gets those that fail first solved, and the report states it. */
const MAX_CHECKS = 40

/** For each check that is short of its required reserve: single changes that would suffice, solved and compared with every other check. */
export function changesOf(assessment: Assessment): readonly Changes[] {
  let changes = KEPT.get(assessment)
  if (changes === undefined) {
    changes = solved(assessment)
    KEPT.set(assessment, changes)
  }
  return changes
}

/** Several forms of a report share what was solved. */
const KEPT = new WeakMap<Assessment, readonly Changes[]>()

function solved(assessment: Assessment): readonly Changes[] {
  const short = assessment.checks.filter((check) => check.reserve < check.requiredReserve).slice(0, MAX_CHECKS)
  if (short.length === 0) return []
  const search = new ChangeSearch(assessment)
  const fields = search.wants(short)
  search.solve(fields)
  const found = short.map((check) => {
    const wants = fields.filter((want) => want.check === check)
    return { check, wants, changes: listed(wants) }
  })
  search.reach(found.flatMap(({ wants, changes }) => (changes.length === 0 ? wants : [])))
  return found.map(({ check, wants, changes }) => {
    const nearest = changes.length === 0 ? nearestOf(search, wants) : undefined
    return nearest !== undefined && nearest.reserve > 1.01 * check.reserve ? { check, changes, nearest } : { check, changes }
  })
}

/** The changes that suffice and that the document allows, in their order. */
function listed(wants: readonly Target[]): Change[] {
  const found = wants
    .flatMap(({ field, suffices }) => (suffices === undefined ? [] : [{ field, suffices }]))
    .sort((a, b) => lost(a.suffices) - lost(b.suffices) || all(a.suffices) - all(b.suffices) || sizeOf(a.suffices) - sizeOf(b.suffices))
  return found.slice(0, MAX_LISTED).map(({ field: { path, value }, suffices: { to, harms } }) => ({
    path,
    name: fieldName(path),
    from: value,
    to,
    harms,
  }))
}

/** Checks that held and then do not, and all that do worse. */
const lost = ({ harms }: SufficientChange): number => harms.filter(({ further }) => !further).length
const all = ({ harms }: SufficientChange): number => harms.length
const sizeOf = ({ ratio }: SufficientChange): number => Math.abs(Math.log(ratio))

/** The change that raises the reserve most and that the document allows. */
function nearestOf(search: ChangeSearch, wants: readonly Target[]): Changes['nearest'] {
  let best: Changes['nearest']
  for (const { field, nearest } of wants)
    if (nearest !== undefined && nearest.reserve > (best?.reserve ?? 0) && search.allows(field, { to: nearest.given }))
      best = { name: fieldName(field.path), from: field.value, to: nearest.to, reserve: nearest.reserve }
  return best
}
