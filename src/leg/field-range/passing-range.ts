import { didYouMean, InputError, type Issue, issue, type Kind, Quantity, readAt } from '../../units/index.js'
import { quickFor } from '../assess/quick.js'
import { type CaseId, LOAD_CASES } from '../cases/events.js'
import type { Leg } from '../document/describe.js'
import type { LegPath } from '../document/names.js'
import type { LegNumbers } from '../leg-numbers.js'
import { legNumbers } from '../numbers.js'
import { caseList, knownOptions } from '../options.js'
import { CHECKS } from '../parts/index.js'
import { fieldAt, withFields } from '../plans/with-fields.js'
import { placeOf } from '../report/content.js'
import { fieldName, fieldRows } from '../report/fields-list.js'

/** Where to look, and how closely. */
export interface PassingRangeOptions {
  /** Lower end, such as `'100 N'`. Default: half the value of the leg; a temperature or a value of 0 has no default. */
  readonly from?: unknown
  /** Upper end. Default: one and a half times the value of the leg. */
  readonly to?: unknown
  /** How many values are tried, ends included: 3 to 1001. Default 41. A range that lies between two of them is not found. */
  readonly values?: number
  /** Load cases to run. Default: those of `assess`. */
  readonly cases?: readonly CaseId[]
}

/** The check that decides at one value of a field. */
export interface Decider {
  /** Id of the check. */
  readonly id: string
  /** Its part and joint, in words. */
  readonly place: string
  /** How it fails, in words. */
  readonly mode: string
  /** Title of the load case. */
  readonly caseTitle: string
}

/** A leg with one value of the field. */
export interface TriedValue {
  /** The value of the field. */
  readonly value: Quantity<Kind>
  /** The least ratio of reserve to required reserve, at least 1 where every check has its required reserve; absent where the document does not allow the value. */
  readonly margin?: number
  /** The check with that ratio. */
  readonly decides?: Decider
  /** Why the document does not allow the value. */
  readonly refused?: string
}

/** Values of the field with which every check has its required reserve. */
export interface PassingPart {
  /** Smallest value found. */
  readonly from: Quantity<Kind>
  /** Largest value found. */
  readonly to: Quantity<Kind>
  /** What decides just below; absent where the part begins where the search did. */
  readonly below?: TriedValue
  /** What decides just above; absent where the part ends where the search did. */
  readonly above?: TriedValue
}

/** How the verdict of a leg follows one of its fields. */
export interface PassingRange {
  /** Path of the field. */
  readonly path: string
  /** The field in words. */
  readonly name: string
  /** Its value in the leg. */
  readonly now: Quantity<Kind>
  /** The values that were tried, in rising order. */
  readonly tried: readonly TriedValue[]
  /** Where every check has its required reserve, in rising order; none where no tried value has it. */
  readonly passes: readonly PassingPart[]
}

/** Halvings of the gap between a value that passes and its neighbour that does not: the end is then known to a 16 000th of the gap. */
const HALVINGS = 14
const DEFAULT_VALUES = 41
const MAX_VALUES = 1001

/**
 * In which range of one field every check has its required reserve, all else as it is: how far a cord may be tightened, how thick a plate must be. Each end
 * comes with the check that decides beyond it. At typical values of everything uncertain, as the reserves of `assess` are.
 *
 * Throws an `InputError` for a path that leads to no quantity of the leg, for ends that are missing, of another kind or not in rising order, for a number of values
 * out of its limits, and for unknown load cases.
 */
export function passingRange(
  /** The leg, from `describeLeg`. */
  leg: Leg,
  /** The field to move, such as `joints.knee.drive.pretension`. */
  path: LegPath | (string & {}),
  /** Ends and number of the values to try, and the load cases. */
  options: PassingRangeOptions = {},
): PassingRange {
  knownOptions('passingRange', options, ['from', 'to', 'values', 'cases'])
  const cases = caseList('passingRange', options.cases)
  const now = fieldAt(leg, path)
  if (!(now instanceof Quantity)) throw new InputError('passingRange', [noQuantity(leg, path)])
  const at = trial(leg, path, now.kind as Kind, cases)
  const tried = valuesOf(now as Quantity<Kind>, options).map(at)
  return { path, name: fieldName(path), now: now as Quantity<Kind>, tried, passes: partsOf(tried, at) }
}

function noQuantity(leg: Leg, path: unknown): Issue {
  const paths = fieldRows(leg).flatMap((row) => (fieldAt(leg, row.path) instanceof Quantity ? [row.path] : []))
  const near = typeof path === 'string' ? didYouMean(path, paths) : ''
  return issue('path', path, `must lead to a quantity of the leg, as joints.knee.drive.pretension does${near}`)
}

/** The values to try, SI, in rising order. */
function valuesOf(now: Quantity<Kind>, { from, to, values = DEFAULT_VALUES }: PassingRangeOptions): number[] {
  const issues: Issue[] = []
  const [low, high] = [endOf(now, 'from', from, 0.5, issues), endOf(now, 'to', to, 1.5, issues)]
  if (low >= high)
    issues.push({
      path: 'to',
      given: String(new Quantity(high, now.kind)),
      accepts: `must be more than from, ${new Quantity(low, now.kind)}`,
    })
  if (!(Number.isSafeInteger(values) && values >= 3 && values <= MAX_VALUES))
    issues.push(issue('values', values, `must be a whole number from 3 to ${MAX_VALUES}`))
  if (issues.length > 0) throw new InputError('passingRange', issues)
  return Array.from({ length: values }, (_, i) => low + ((high - low) * i) / (values - 1))
}

/** One end: as given, or a multiple of the present value. For a negative value the lower end is the larger multiple. */
function endOf(now: Quantity<Kind>, name: 'from' | 'to', given: unknown, factor: number, issues: Issue[]): number {
  if (given !== undefined) return readAt(name, now.kind, given, issues)
  const why =
    now.si === 0 ? 'the field is 0 in the leg' : now.kind === 'temperature' ? 'a share of a temperature has no meaning' : undefined
  if (why === undefined) return now.si * (now.si > 0 ? factor : 2 - factor)
  issues.push({ path: name, given: 'undefined', accepts: `must be given, because ${why}` })
  return Number.NaN
}

/** Evaluates the leg with another value in the field. */
function trial(leg: Leg, path: string, kind: Kind, cases: readonly CaseId[]): (si: number) => TriedValue {
  const quick = quickFor(cases)
  return (si) => {
    const value = new Quantity(si, kind)
    let x: LegNumbers
    try {
      x = legNumbers(withFields(leg, { [path]: value }))
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      return { value, refused: error.issues.map(({ path: at, given, accepts }) => `${at} is ${given}; ${accepts}`).join('; ') }
    }
    const { margin, id, joint, case: of } = quick.governing(x)
    const check = CHECKS.find((check) => check.id === id) as (typeof CHECKS)[number]
    const place = placeOf({ part: check.part, ...(check.scope === 'joint' ? { joint } : {}) })
    return { value, margin, decides: { id, place, mode: check.mode, caseTitle: LOAD_CASES[of].title } }
  }
}

const passes = ({ margin }: TriedValue): boolean => margin !== undefined && margin >= 1

/** Neighbouring values that pass, each end narrowed down. */
function partsOf(tried: readonly TriedValue[], at: (si: number) => TriedValue): PassingPart[] {
  const parts: PassingPart[] = []
  for (let first = 0; first < tried.length; first++) {
    if (!passes(tried[first] as TriedValue)) continue
    let last = first
    while (last + 1 < tried.length && passes(tried[last + 1] as TriedValue)) last++
    const low = narrowed(tried[first] as TriedValue, tried[first - 1], at)
    const high = narrowed(tried[last] as TriedValue, tried[last + 1], at)
    parts.push({
      from: low.inside.value,
      to: high.inside.value,
      ...(low.outside === undefined ? {} : { below: low.outside }),
      ...(high.outside === undefined ? {} : { above: high.outside }),
    })
    first = last
  }
  return parts
}

/** The last value that passes before one that does not, and the first that does not. */
function narrowed(
  inside: TriedValue,
  outside: TriedValue | undefined,
  at: (si: number) => TriedValue,
): { inside: TriedValue; outside?: TriedValue } {
  if (outside === undefined) return { inside }
  for (let i = 0; i < HALVINGS; i++) {
    const middle = at((inside.value.si + outside.value.si) / 2)
    if (passes(middle)) inside = middle
    else outside = middle
  }
  return { inside, outside }
}
