import { type Kind, significant } from '../../units/index.js'
import { QuickLeg } from '../assess/quick.js'
import { fieldsRead, keyOfResult } from '../assess/recorded.js'
import { type LegNumbers, legNumbers } from '../numbers.js'
import { withFields } from '../plans/with-fields.js'
import type { Assessment, CheckResult } from '../result.js'
import { amount, exactAmount } from './amounts.js'
import { type FieldRow, fieldName, fieldRows } from './fields-list.js'
import { reached } from './reach.js'

/** One field changed so far that a check has its required reserve. */
export interface Change {
  readonly path: string
  /** The field in words. */
  readonly name: string
  readonly from: string
  readonly to: string
  /** Other checks that lose their required reserve by it. */
  readonly shortened: readonly CheckResult[]
}

/** What to change for one check. */
export interface Changes {
  readonly check: CheckResult
  /** Changes that suffice alone, those that leave every other check as it is first, the smaller first. */
  readonly changes: readonly Change[]
  /** Where none suffices: the change that raises the reserve most. */
  readonly nearest?: { readonly name: string; readonly from: string; readonly to: string; readonly reserve: number }
}

/** Sizes and settings that a builder chooses; materials, the weather and catalogue values of motors are not among them. */
const KINDS: readonly Kind[] = ['length', 'force', 'torque', 'time', 'mass', 'velocity', 'angle', 'peakPhaseCurrent']
const NOT_CHOSEN =
  /^(schemaVersion|environment|materials|supply|motors|prints|loadCases\.airs|robot\.(legs|hip|centre|gravity))|\.(mass|gap|runout|slackAtAssembly|range)\b/
/** A field may become up to so many times as large, or fall to such a part. */
const FACTORS = [1.02, 1.08, 1.2, 1.5, 2, 3] as const
const BISECTIONS = 5
/** Changes that are solved, and those that are listed, for each check. */
const MOST_SOLVED = 5
const MOST_LISTED = 3
/** Legs evaluated for one report: a leg on which much fails gets the first checks solved, and the report states it. */
const MOST_LEGS = 2500

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
  const short = assessment.checks.filter((check) => check.reserve < check.requiredReserve)
  if (short.length === 0) return []
  const solver = new Solver(assessment)
  return short.flatMap((check) => (solver.legs > MOST_LEGS ? [] : [solver.solve(check)]))
}

interface Found {
  readonly field: FieldRow
  readonly x: number
  readonly size: number
}

class Solver {
  legs = 0
  readonly #assessment: Assessment
  readonly #quick: QuickLeg
  readonly #x: LegNumbers
  readonly #fields: ReadonlyMap<string, FieldRow>
  readonly #required: ReadonlyMap<string, CheckResult>
  #nearest: Changes['nearest']

  constructor(assessment: Assessment) {
    this.#assessment = assessment
    this.#quick = new QuickLeg(assessment.cases.map(({ id }) => id))
    this.#x = legNumbers(assessment.leg)
    this.#fields = new Map(
      fieldRows(assessment.leg).flatMap((row) =>
        row.kind !== undefined && KINDS.includes(row.kind) && !NOT_CHOSEN.test(row.path) ? [[row.path, row] as const] : [],
      ),
    )
    this.#required = new Map(assessment.checks.map((check) => [keyOfResult(check), check]))
  }

  solve(check: CheckResult): Changes {
    const key = keyOfResult(check)
    this.#nearest = undefined
    const moved = this.#fieldsOf(key)
      .map((field) => ({ field, slope: this.#slope(field, key, check.reserve) }))
      .filter(({ slope }) => Math.abs(slope) > 1e-3)
      .sort((a, b) => Math.abs(b.slope) - Math.abs(a.slope))
      .slice(0, MOST_SOLVED)
    const found = moved.flatMap(({ field, slope }) => this.#enough(field, key, check.requiredReserve, slope > 0) ?? [])
    const changes = found.flatMap((one) => {
      const change = this.#compared(one, key)
      return change === undefined ? [] : [{ ...change, size: one.size }]
    })
    const listed = changes
      .sort((a, b) => a.shortened.length - b.shortened.length || a.size - b.size)
      .slice(0, MOST_LISTED)
      .map(({ size: _, ...change }) => change)
    const nearest = this.#nearest as Changes['nearest']
    return listed.length === 0 && nearest !== undefined && nearest.reserve > 1.01 * check.reserve
      ? { check, changes: listed, nearest }
      : { check, changes: listed }
  }

  /** Fields that demand and capacity of a check are made of. */
  #fieldsOf(key: string): FieldRow[] {
    return [...fieldsRead(this.#assessment, key)].flatMap((path) => this.#fields.get(path) ?? [])
  }

  #reserve(field: FieldRow, x: number, key: string): number {
    this.legs++
    try {
      return this.#quick.reserves(reached(this.#x, field.path, x), key).get(key) ?? Number.NaN
    } catch {
      return Number.NaN
    }
  }

  /** Relative change of the reserve by a relative change of a field; 0 where there is none. */
  #slope(field: FieldRow, key: string, reserve: number): number {
    const x = reached(this.#x, field.path)
    if (x === undefined || x === 0) return 0
    const moved = this.#reserve(field, 1.02 * x, key)
    return Number.isNaN(moved) ? 0 : (moved / Math.max(reserve, 1e-6) - 1) / 0.02
  }

  /** The nearest value that suffices, rounded to a size that can be made. */
  #enough(field: FieldRow, key: string, required: number, up: boolean): Found | undefined {
    const x = reached(this.#x, field.path) as number
    const at = (factor: number) => (up ? x * factor : x / factor)
    let [low, high] = [1, Number.NaN]
    for (const factor of FACTORS) {
      const reserve = this.#reserve(field, at(factor), key)
      if (reserve >= required) {
        high = factor
        break
      }
      low = factor
      if (reserve > (this.#nearest?.reserve ?? 0))
        this.#nearest = { name: fieldName(field.path), from: field.value, to: amount(field.kind as Kind, at(factor)), reserve }
    }
    if (Number.isNaN(high)) return undefined
    for (let i = 0; i < BISECTIONS; i++) {
      const middle = (low + high) / 2
      if (this.#reserve(field, at(middle), key) >= required) high = middle
      else low = middle
    }
    const to = roundedBeyond(x, at(high))
    return this.#reserve(field, to, key) >= required ? { field, x: to, size: Math.abs(Math.log(to / x)) } : undefined
  }

  /** A change with what it does to the other checks; nothing where the document does not allow it. */
  #compared({ field, x }: Found, key: string): Change | undefined {
    const to = exactAmount(field.kind as Kind, x)
    try {
      withFields(this.#assessment.leg, { [field.path]: to })
    } catch {
      return undefined
    }
    this.legs += 20
    const reserves = this.#quick.reserves(reached(this.#x, field.path, x))
    const shortened = [...reserves].flatMap(([other, reserve]) => {
      const check = this.#required.get(other)
      const lost = check !== undefined && other !== key && check.reserve >= check.requiredReserve && !(reserve >= check.requiredReserve)
      return lost ? [check] : []
    })
    return { path: field.path, name: fieldName(field.path), from: field.value, to, shortened }
  }
}

/** A value rounded away from where it came from, to about a tenth of the change: 7.46 from 7 is 7.5. */
export function roundedBeyond(from: number, to: number): number {
  const rough = Math.abs(to - from) / 5
  if (rough === 0) return to
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [5, 2, 1].map((one) => one * power).find((one) => one <= rough * (1 + 1e-9)) ?? power
  const steps = to / step
  return Number(significant((to > from ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9)) * step, 12))
}
