import { refuse } from '../../units/index.js'
import { calculationOf, type LegCalculation } from '../calculation.js'
import { ALL_CASE_IDS, type CaseId } from '../cases/events.js'
import type { LegNumbers } from '../leg-numbers.js'
import type { DrivenJoint, Joint } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { sameStructure } from '../parts/structure.js'
import { CachedReserve, cachedReserve, differing, leastOf } from './cached-reserve.js'
import { type Comparison, comparisonsOf } from './compare.js'
import { keyOf, requiredOf } from './findings.js'

/** The governing check of a leg: the fast form of `assess` that explains nothing. */
export interface QuickVerdict {
  readonly reserve: number
  /** The reserve over the required one of that check: the smallest of all; at least 1 where every check has its required reserve. */
  readonly margin: number
  readonly id: string
  readonly joint: Joint
  readonly case: CaseId
}

/** What is short in no load case. */
const ENOUGH = Number.POSITIVE_INFINITY

/** Evaluates legs of one structure one after another: what a change does not reach stays. The answer does not depend on the legs before. */
export class QuickLeg {
  readonly #cases: readonly CaseId[]
  #calculation: LegCalculation | undefined
  #reserves: readonly CachedReserve[] = []
  readonly #byKey = new Map<string, CachedReserve[]>()
  #x: LegNumbers | undefined

  constructor(cases: readonly CaseId[] = ALL_CASE_IDS) {
    this.#cases = cases
  }

  /** The calculation with a leg's numbers in it. */
  load(x: LegNumbers): LegCalculation {
    if (this.#calculation === undefined || this.#x === undefined || !sameStructure(x, this.#x)) this.#anew(x)
    else if (x !== this.#x) this.#calculation.load(x)
    this.#x = x
    const calculation = this.#calculation as LegCalculation
    calculation.refresh()
    return calculation
  }

  #anew(x: LegNumbers): void {
    this.#calculation = calculationOf(x)
    this.#reserves = differing(comparisonsOf(this.#calculation, CHECKS, this.#cases)).map((comparison) => new CachedReserve(comparison))
    this.#byKey.clear()
    for (const cached of this.#reserves) {
      const key = keyOf(cached.comparison)
      const group = this.#byKey.get(key)
      if (group === undefined) this.#byKey.set(key, [cached])
      else group.push(cached)
    }
  }

  /** The check with the least reserve over its required one. */
  governing(x: LegNumbers): QuickVerdict {
    const calculation = this.load(x)
    const general = x.usage.requiredReserve
    let weakest: Comparison | undefined
    let margin = Number.POSITIVE_INFINITY
    let reserve = Number.POSITIVE_INFINITY
    for (const cached of this.#reserves) {
      const found = cachedReserve(calculation, cached)
      if (found === undefined) continue
      const over = found / requiredOf(cached.comparison, general)
      if (over >= margin) continue
      margin = over
      reserve = found
      weakest = cached.comparison
    }
    if (weakest === undefined) refuse('governingReserve', 'cases', this.#cases, 'must include a load case that a check applies to')
    return { reserve, margin, id: weakest.check.id, joint: weakest.joint, case: weakest.id }
  }

  /** Checks of a leg that are compared in some load case, as `id joint`. */
  keys(x: LegNumbers): readonly string[] {
    this.load(x)
    return [...this.#byKey.keys()]
  }

  /** Part, joint and required reserve of a check of a leg, by `id joint`. */
  about(x: LegNumbers, key: string): { readonly part: string; readonly joint?: DrivenJoint; readonly required: number } {
    this.load(x)
    const { comparison } = this.#byKey.get(key)![0] as CachedReserve
    const { check, joint } = comparison
    const required = requiredOf(comparison, x.usage.requiredReserve)
    return { part: check.part, ...(check.scope === 'joint' ? { joint: joint as DrivenJoint } : {}), required }
  }

  /** The least reserve of each check over the load cases, by `id joint`. */
  reserves(x: LegNumbers): Map<string, number> {
    const calculation = this.load(x)
    const found = new Map<string, number>()
    for (const [key, group] of this.#byKey) {
      const reserve = leastOf(calculation, group)
      if (reserve !== undefined) found.set(key, reserve)
    }
    return found
  }

  /** The least reserve of one check over the load cases, or over some of them; absent where it does not apply. */
  reserveOf(x: LegNumbers, key: string, among?: ReadonlySet<CaseId>): number | undefined {
    const calculation = this.load(x)
    const group = this.#byKey.get(key) ?? []
    return leastOf(calculation, among === undefined ? group : group.filter(({ comparison }) => among.has(comparison.id)))
  }

  /** Whether a check has a reserve in every load case it applies to; absent where it applies to none. */
  has(x: LegNumbers, key: string, required: number): boolean | undefined {
    const short = this.shortOf(x, key, required)
    return short === undefined ? undefined : short === ENOUGH
  }

  /**
   * The reserve in the first load case found where a check is short of what it needs, so at least the least one; infinite where it is short in none,
   * absent where it applies to none. The case that was short last is tried first.
   */
  shortOf(x: LegNumbers, key: string, required: number): number | undefined {
    const calculation = this.load(x)
    const group = this.#byKey.get(key) ?? []
    let found: typeof ENOUGH | undefined
    for (const [i, cached] of group.entries()) {
      const reserve = cachedReserve(calculation, cached)
      if (reserve === undefined) continue
      found = ENOUGH
      if (reserve >= required) continue
      group.splice(i, 1)
      group.unshift(cached)
      return reserve
    }
    return found
  }
}

/** The legs of the last call: the next one is nearly always of the same structure, and then only what differs is calculated. */
const last: { quick?: QuickLeg; cases?: string } = {}

/** What evaluates legs in some load cases: that of the last call where it was for the same. @internal */
export function quickFor(cases: readonly CaseId[]): QuickLeg {
  const key = cases.join()
  if (last.quick !== undefined && last.cases === key) return last.quick
  const quick = new QuickLeg(cases)
  last.quick = quick
  last.cases = key
  return quick
}

/** A copy of a leg's numbers, which stays as it is when the caller changes them in place. What is not a plain record or list is never changed. */
function copied<T>(x: T): T {
  if (Array.isArray(x)) return x.map(copied) as T
  if (typeof x !== 'object' || x === null || Object.getPrototypeOf(x) !== Object.prototype) return x
  const copy: Record<string, unknown> = {}
  for (const name of Object.keys(x)) copy[name] = copied((x as Record<string, unknown>)[name])
  return copy as T
}

/**
 * The governing check alone, the one with the least reserve over the required reserve, from a leg's numbers (`legNumbers`): for sweeps and
 * optimisers. Same calculation as `assess`, nothing recorded.
 */
export const governingReserve = (x: LegNumbers, cases: readonly CaseId[] = ALL_CASE_IDS): QuickVerdict =>
  quickFor(cases).governing(copied(x))

/** The least reserve of every check over the load cases, by `id joint`, from a leg's numbers. */
export const checkReserves = (x: LegNumbers, cases: readonly CaseId[] = ALL_CASE_IDS): Map<string, number> =>
  quickFor(cases).reserves(copied(x))
