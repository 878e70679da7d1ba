import { refuse } from '../../units/index.js'
import type { LegCalculation } from '../calculation.js'
import { appliesTo } from '../cases/check.js'
import type { CaseId } from '../cases/events.js'
import { LOAD_CASES } from '../cases/events.js'
import type { CheckResult } from '../check-result.js'
import type { Leg } from '../document/describe.js'
import { footResult } from '../foot-result.js'
import { legModel } from '../leg-model.js'
import { legNumbers } from '../numbers.js'
import { caseList, knownOptions } from '../options.js'
import { CHECKS } from '../parts/index.js'
import { unusualValues } from '../plausibility/index.js'
import type { Assessment } from '../result.js'
import { type Calculation, SheetMaker } from '../run/index.js'
import { keepCalculation } from '../what-if.js'
import { displayed } from './display.js'
import { bestMeasurement } from './evidence.js'
import { type CheckFindings, findingsOf } from './findings.js'
import { keepRecorded } from './recorded.js'
import { caseResult, checkResult, priorsOf, unsettledOf } from './results.js'
import { type Band, rangesOver, survey } from './survey.js'

/** Options of `assess`. */
export interface AssessOptions {
  /** Load cases to evaluate. Default: all. */
  readonly cases?: readonly CaseId[]
}

const where = 'assess'

/**
 * Assesses a leg in its load cases: every way each part can fail, with demand, capacity, reserve and the whole calculation, the smallest
 * reserve first. Reserve is capacity over demand; temperatures are compared as rises above the air.
 *
 * Uncertain values (friction, strength of prints, relaxation) are at their typical value. Each check has its range as well: every uncertain value
 * at the end that is unfavourable for this check, and at the favourable end. A check that cannot be calculated fails, and says why.
 * Results are estimates for trained judgement.
 *
 * Throws an `InputError` for an unknown load case.
 */
export function assess(
  /** The leg, from `describeLeg`. */
  leg: Leg,
  /** The load cases; all of them where none is named. */
  options: AssessOptions = {},
): Assessment {
  knownOptions(where, options, ['cases'])
  const cases = caseList(where, options.cases)
  const x = legNumbers(leg)
  const { calculation, checks: found, without } = findingsOf(x, cases, true)
  const bands = survey(calculation, found)
  const sheets = new SheetMaker(calculation as unknown as Calculation<never>)
  const checks = found
    .map((check) => checkResult(check, bands.get(check) as Band, calculation, sheets))
    .sort((a, b) => a.reserve / a.requiredReserve - b.reserve / b.requiredReserve || (a.id < b.id ? -1 : 1))
  const governing = checks[0]
  if (governing === undefined) refuse(where, 'cases', cases, 'must include a load case that a check applies to')
  const measurement = measurementFor(checks, calculation, bands)
  const unsettled = unsettledOf(calculation, cases)
  const prepared = legModel(x)
  keepCalculation(prepared, calculation)
  const assessment = displayed({
    leg,
    passes: checks.every(({ reserve }) => reserve >= 1),
    meetsTarget: checks.every((check) => check.reserve >= check.requiredReserve),
    requiredReserve: x.usage.requiredReserve,
    governing,
    checks,
    cases: cases.map((id) => caseResult(calculation, id)),
    foot: footResult(prepared),
    coupling: unsettled.length === 0 ? 'settled' : 'unsettled',
    unsettled,
    notEvaluated: notEvaluated(checks, cases, without),
    unusual: unusualValues(leg),
    ...(measurement === undefined ? {} : { bestMeasurement: measurement }),
    priors: priorsOf(checks),
  })
  keepRecorded(assessment, { calculation, checks: found })
  return assessment
}

/** The measurement for the first check, smallest reserve first, that one can narrow. */
function measurementFor(checks: readonly CheckResult[], calculation: LegCalculation, bands: ReadonlyMap<CheckFindings, Band>) {
  const groups = new Map([...bands].map(([group, band]) => [group.key, { group, band }]))
  for (const { id, joint } of checks) {
    const key = joint === undefined ? id : `${id} ${joint}`
    const group = groups.get(key)
    const found = group && bestMeasurement(key, group.band, rangesOver(calculation, group.group, group.band.moves))
    if (found !== undefined) return found
  }
  return undefined
}

function notEvaluated(
  checks: readonly CheckResult[],
  cases: readonly CaseId[],
  without: ReadonlyMap<string, string>,
): Assessment['notEvaluated'] {
  const made = new Set(checks.map(({ id }) => id))
  return CHECKS.filter(({ id }) => !made.has(id)).map((check) => ({
    id: check.id,
    why:
      without.get(check.id) ??
      (cases.some((id) => appliesTo(check, LOAD_CASES[id].event)) ? 'does not apply to this leg' : 'none of its load cases was evaluated'),
  }))
}
