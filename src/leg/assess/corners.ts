import type { Cell, End, Ends, Reader, Scenarios, Uncertain } from '../run/index.js'
import { type Comparison, reserveIn } from './compare.js'

/** The reserve of a comparison; more than any where the check does not apply. */
export const reserveAt = (reader: Reader, comparison: Comparison): number => reserveIn(reader, comparison) ?? Number.POSITIVE_INFINITY

/** A change this small is rounding. */
export const ROUNDING = 1e-9

/** The comparisons of one check and joint. */
export interface Group {
  readonly comparisons: readonly Comparison[]
  /** Least reserve at typical values. */
  readonly reserve: number
}

/** A leaf that may move comparisons of a group, and where the reserves of the group stand with it at its low and at its high end. */
export interface Effect extends Uncertain {
  readonly reserves: Float64Array
  readonly low: number
  readonly high: number
}

/** Each leaf at the end that is unfavourable for one comparison; those that do not move it stay typical. */
export function* cornerOf(effects: readonly Effect[], index: number): Generator<readonly [Cell, End]> {
  for (const { cell, reserves, low, high } of effects) {
    const [atLow, atHigh] = [reserves[low + index] as number, reserves[high + index] as number]
    if (atLow !== atHigh) yield [cell, atLow < atHigh ? 'low' : 'high']
  }
}

/** Evaluates comparisons with some leaves away from their typical values. */
export class Corners {
  readonly #scenarios: Scenarios

  constructor(scenarios: Scenarios) {
    this.#scenarios = scenarios
  }

  /** Every comparison of each group at the corner that is unfavourable for it. */
  ofEach(groups: readonly { readonly comparisons: readonly Comparison[] }[], effects: readonly (readonly Effect[])[]): number[][] {
    return groups.map(({ comparisons }, i) =>
      comparisons.map((comparison, index) => this.one(comparison, this.ends(cornerOf(effects[i] as readonly Effect[], index)))),
    )
  }

  /** Some leaves, each at an end. */
  ends(chosen: Iterable<readonly [Cell, End]>): Ends {
    return this.#scenarios.ends.of(chosen)
  }

  /** The same with each of some leaves in turn at each end that it is not at. */
  *moved(ends: () => Ends, leaves: readonly Uncertain[]): Generator<Ends> {
    for (const { cell } of leaves)
      for (const end of ['low', 'high'] as const)
        if (this.#scenarios.ends.endOf(ends(), cell) !== end) yield this.#scenarios.ends.moved(ends(), cell, end)
  }

  one(comparison: Comparison, ends: Ends): number {
    return reserveAt(this.#scenarios.at(ends), comparison)
  }

  reserves(comparisons: readonly Comparison[], ends: Ends): number[] {
    const reader = this.#scenarios.at(ends)
    return comparisons.map((comparison) => reserveAt(reader, comparison))
  }

  least(comparisons: readonly Comparison[], ends: Ends): number {
    return Math.min(...this.reserves(comparisons, ends))
  }

  /** From a corner, leaf by leaf to its other end while that lowers the reserve. */
  walk(comparison: Comparison, leaves: readonly Uncertain[], from: Ends, reserve: number): number {
    let [best, at, better] = [reserve, from, true]
    for (let round = 0; better && round < 3; round++) {
      better = false
      for (const tried of this.moved(() => at, leaves)) {
        const found = this.one(comparison, tried)
        if (found >= best - ROUNDING) continue
        best = found
        at = tried
        better = true
      }
    }
    return best
  }
}
