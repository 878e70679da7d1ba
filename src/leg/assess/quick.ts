import { InputError, show } from '../../units/index.js'
import { calculationOf, type LegCalculation } from '../calculation.js'
import { ALL_CASE_IDS, type CaseId } from '../cases/events.js'
import type { Joint, LegNumbers } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { structureKey } from '../parts/structure.js'
import { type Comparison, compare, comparisonsOf } from './compare.js'
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

/** Evaluates legs of one structure one after another: what a change does not reach stays. The answer does not depend on the legs before. */
export class QuickLeg {
  readonly #cases: readonly CaseId[]
  #key: string | undefined
  #calculation: LegCalculation | undefined
  #comparisons: readonly Comparison[] = []
  #x: LegNumbers | undefined

  constructor(cases: readonly CaseId[] = ALL_CASE_IDS) {
    this.#cases = cases
  }

  /** The calculation with a leg's numbers in it. */
  load(x: LegNumbers): LegCalculation {
    const key = structureKey(x)
    if (this.#calculation === undefined || key !== this.#key) {
      this.#calculation = calculationOf(x)
      this.#comparisons = comparisonsOf(this.#calculation, CHECKS, this.#cases)
      this.#key = key
    } else if (x !== this.#x) this.#calculation.load(x)
    this.#x = x
    return this.#calculation
  }

  /** The check with the least reserve over its required one. */
  governing(x: LegNumbers): QuickVerdict {
    const calculation = this.load(x)
    let least: Comparison | undefined
    let [margin, reserve] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
    for (const one of this.#comparisons) {
      const found = compare(calculation, one)
      if (typeof found === 'string') continue
      const over = found.reserve / requiredOf(one, x.usage.requiredReserve)
      if (over >= margin) continue
      margin = over
      reserve = found.reserve
      least = one
    }
    if (least === undefined)
      throw new InputError('governingReserve', [
        { path: 'cases', given: show(this.#cases), accepts: 'must include a load case that a check applies to' },
      ])
    return { reserve, margin, id: least.check.id, joint: least.joint, case: least.id }
  }

  /** The least reserve of each check over the load cases, by `id joint`. */
  reserves(x: LegNumbers, only?: string): Map<string, number> {
    const calculation = this.load(x)
    const least = new Map<string, number>()
    for (const one of this.#comparisons) {
      const key = keyOf(one)
      if (only !== undefined && key !== only) continue
      const found = compare(calculation, one)
      if (typeof found === 'string') continue
      const known = least.get(key)
      if (known === undefined || found.reserve < known) least.set(key, found.reserve)
    }
    return least
  }
}

/**
 * The governing check alone, the one with the least reserve over the required reserve, from a leg's numbers (`legNumbers`): for sweeps and
 * optimisers. Same calculation as `assess`, nothing recorded.
 */
export const governingReserve = (x: LegNumbers, cases: readonly CaseId[] = ALL_CASE_IDS): QuickVerdict => new QuickLeg(cases).governing(x)

/** The least reserve of every check over the load cases, by `id joint`, from a leg's numbers. */
export const checkReserves = (x: LegNumbers, cases: readonly CaseId[] = ALL_CASE_IDS): Map<string, number> =>
  new QuickLeg(cases).reserves(x)
