import type { Kind } from '../../units/index.js'
import { type QuickLeg, quickFor } from '../assess/quick.js'
import { fieldsReader, keyOfResult } from '../assess/recorded.js'
import type { CaseId } from '../cases/events.js'
import type { CheckResult } from '../check-result.js'
import type { LegNumbers } from '../leg-numbers.js'
import { legNumbers } from '../numbers.js'
import { takesQuantity } from '../plans/with-fields.js'
import type { Assessment } from '../result.js'
import { amount, documentAmount, roundedIn } from './amounts.js'
import { type FieldRow, fieldRows, isChosen } from './fields-list.js'
import { reached, tried } from './reach.js'
import { sideEffectsOf } from './side-effects.js'
import { enoughOf, hardestCases, leastNamed, type SufficientChange, type Target } from './targets.js'

/** A field may become up to so many times as large, or fall to such a part. */
const FACTORS = [1.02, 1.08, 1.2, 1.5, 2, 3] as const
const BISECTIONS = 5
/** By so much a field is changed to see what it moves. */
const NUDGE = 1.02
/** Fields that are solved for each check: those that move it most. */
const MAX_FIELDS = 5

/** The least reserve of a check with one field changed, over all load cases or some; not a number where it cannot be found. */
type ReserveOf = (key: string, among?: ReadonlySet<CaseId>) => number

/** A leg with one field changed. */
interface Changed {
  readonly leg: LegNumbers
  readonly reserve: ReserveOf
  /** At least the least reserve of a check that is short of what it needs; infinite where it is not short. */
  readonly shortOf: (want: Target, min?: number) => number
}

/**
 * Seeks single changes of one leg. Checks that need the same field share the legs that are evaluated on the way, and of each leg only what the
 * field reaches and a check reads is calculated.
 */
export class ChangeSearch {
  readonly #assessment: Assessment
  readonly #quick: QuickLeg
  readonly #x: LegNumbers
  readonly #fields: ReadonlyMap<string, FieldRow>
  readonly #checks: ReadonlyMap<string, CheckResult>
  readonly #allowed = new Map<string, boolean>()

  constructor(assessment: Assessment) {
    this.#assessment = assessment
    this.#quick = quickFor(assessment.cases.map(({ id }) => id))
    this.#x = legNumbers(assessment.leg)
    this.#fields = new Map(fieldRows(assessment.leg).flatMap((row) => (isChosen(row) ? [[row.path, row] as const] : [])))
    this.#checks = new Map(assessment.checks.map((check) => [keyOfResult(check), check]))
  }

  /** The fields that move each of some checks most, those that move it most first. */
  wants(checks: readonly CheckResult[]): Target[] {
    const read = fieldsReader(this.#assessment)
    const nudged = new Map<FieldRow, ReserveOf | undefined>()
    const nudge = (field: FieldRow): ReserveOf | undefined => {
      if (!nudged.has(field)) nudged.set(field, this.#nudged(field))
      return nudged.get(field)
    }
    const asked = checks.map((check) => {
      const key = keyOfResult(check)
      const fields = [...read(key)].flatMap((path) => this.#fields.get(path) ?? [])
      return { check, key, fields, hardest: hardestCases(check), slopes: new Map<FieldRow, number>() }
    })
    // Field by field, so that each changed leg is loaded once.
    for (const field of new Set(asked.flatMap(({ fields }) => fields)))
      for (const { check, key, hardest, fields, slopes } of asked) {
        const moved = fields.includes(field) ? nudge(field)?.(key, hardest) : undefined
        if (moved !== undefined && !Number.isNaN(moved)) slopes.set(field, (moved / Math.max(check.reserve, 1e-6) - 1) / (NUDGE - 1))
      }
    return asked.flatMap(({ check, key, fields, slopes }) =>
      fields
        .map((field) => ({ field, slope: slopes.get(field) ?? 0 }))
        .filter(({ slope }) => Math.abs(slope) > 1e-3)
        .sort((a, b) => Math.abs(b.slope) - Math.abs(a.slope))
        .slice(0, MAX_FIELDS)
        .map(({ field, slope }): Target => ({ check, key, field, up: slope > 0, short: new Map() })),
    )
  }

  /** The leg with a field a little larger; absent for a field that is not there or has no size. */
  #nudged(field: FieldRow): ReserveOf | undefined {
    const x = this.#now(field)
    return x === undefined || x === 0 ? undefined : this.#with(field, NUDGE * x).reserve
  }

  #now(field: FieldRow): number | undefined {
    return reached(this.#x, field.path)
  }

  #with(field: FieldRow, x: number): Changed {
    const leg = reached(this.#x, field.path, x)
    const quick = this.#quick
    return {
      leg,
      reserve: (key, among) => tried(() => quick.reserveOf(leg, key, among) ?? Number.NaN, Number.NaN),
      shortOf: ({ key, check }, min = check.requiredReserve) => tried(() => quick.shortOf(leg, key, min) || 0, 0),
    }
  }

  /** Finds the nearest value of each field that suffices. */
  solve(wants: readonly Target[]): void {
    for (const field of new Set(wants.map((want) => want.field)))
      for (const up of [true, false]) {
        const asking = wants.filter((want) => want.field === field && want.up === up)
        if (asking.length > 0) this.#scan(field, up, asking)
      }
  }

  /** Changes a field step by step until each check that calls for the change has its reserve. */
  #scan(field: FieldRow, up: boolean, asking: readonly Target[]): void {
    const at = this.#changed(field, up)
    let [open, low] = [asking, 1]
    for (const factor of FACTORS) {
      if (open.length === 0) return
      const { shortOf } = this.#with(field, at(factor))
      const [enough, short]: [Target[], Target[]] = [[], []]
      for (const want of open) {
        const reserve = shortOf(want)
        if (enoughOf(reserve)) enough.push(want)
        else {
          want.short.set(factor, reserve)
          short.push(want)
        }
      }
      this.#narrow(field, at, enough, [low, factor], BISECTIONS)
      open = short
      low = factor
    }
  }

  #changed(field: FieldRow, up: boolean): (factor: number) => number {
    const x = this.#now(field) as number
    return (factor) => (up ? x * factor : x / factor)
  }

  /** Finds how far fields get their checks at the steps that do not suffice. */
  reach(wants: readonly Target[]): void {
    for (const field of new Set(wants.map((want) => want.field)))
      for (const up of [true, false]) {
        const asking = wants.filter((want) => want.field === field && want.up === up)
        const at = this.#changed(field, up)
        // The largest factor first: it nearly always reaches furthest, and what was found of the others then says that they do not.
        for (const factor of FACTORS.toReversed()) {
          const short = asking.filter((want) => (want.short.get(factor) ?? 0) >= leastNamed(want))
          if (short.length === 0) continue
          const { reserve, shortOf } = this.#with(field, at(factor))
          for (const want of short) {
            const found = enoughOf(shortOf(want, leastNamed(want))) ? reserve(want.key) : 0
            if (found > 0) want.nearest = { ...this.#written(field, at(factor)), reserve: found }
          }
        }
      }
  }

  /** Halves the range of factors in which some checks gain their reserve, and takes the end that suffices, rounded to a size that can be made. */
  #narrow(field: FieldRow, at: (factor: number) => number, wants: readonly Target[], [low, high]: [number, number], rounds: number): void {
    if (wants.length === 0) return
    const size = (factor: number) => roundedIn(field.kind as Kind, this.#now(field) as number, at(factor))
    if (rounds === 0 || (low > 1 && size(low) === size(high))) {
      this.#take(field, size(high), wants)
      return
    }
    const middle = (low + high) / 2
    const { shortOf } = this.#with(field, at(middle))
    const enough = wants.filter((want) => enoughOf(shortOf(want)))
    const short = wants.filter((want) => !enough.includes(want))
    this.#narrow(field, at, enough, [low, middle], rounds - 1)
    this.#narrow(field, at, short, [middle, high], rounds - 1)
  }

  /** A change that suffices and that the document allows, with what it does to the other checks. */
  #take(field: FieldRow, x: number, wants: readonly Target[]): void {
    const { leg, shortOf } = this.#with(field, x)
    const enough = wants.filter((want) => enoughOf(shortOf(want)))
    if (enough.length === 0 || !this.allows(field, { to: documentAmount(field.kind as Kind, x) })) return
    const harms = sideEffectsOf(this.#quick, leg, this.#checks)
    const suffices = { to: documentAmount(field.kind as Kind, x), ratio: x / (this.#now(field) as number), harms }
    for (const want of enough) want.suffices = suffices
  }

  /** A size as it is shown, and as the document takes it. */
  #written({ kind }: FieldRow, x: number): { readonly to: string; readonly given: string } {
    return { to: amount(kind as Kind, x), given: documentAmount(kind as Kind, x) }
  }

  /** Whether the document allows a change. */
  allows({ path }: FieldRow, { to }: Pick<SufficientChange, 'to'>): boolean {
    const key = `${path} ${to}`
    let allowed = this.#allowed.get(key)
    if (allowed === undefined) {
      allowed = takesQuantity(this.#assessment.leg, path, to)
      this.#allowed.set(key, allowed)
    }
    return allowed
  }
}
