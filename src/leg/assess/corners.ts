import type { Cell, Ends, Reader, Scenarios, Uncertain } from '../run/index.js'
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
export function cornerOf(effects: readonly Effect[], index: number): Ends {
  const ends = new Map<Cell, 'low' | 'high'>()
  for (const { cell, reserves, low, high } of effects) {
    const [atLow, atHigh] = [reserves[low + index] as number, reserves[high + index] as number]
    if (atLow !== atHigh) ends.set(cell, atLow < atHigh ? 'low' : 'high')
  }
  return ends
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
      comparisons.map((comparison, index) => this.least([comparison], cornerOf(effects[i] as readonly Effect[], index))),
    )
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
    let [best, at, better] = [reserve, new Map(from), true]
    for (let round = 0; better && round < 3; round++) {
      better = false
      for (const { cell } of leaves)
        for (const end of ['low', 'high'] as const) {
          if (at.get(cell) === end) continue
          const tried = new Map(at).set(cell, end)
          const found = this.least([comparison], tried)
          if (found >= best - ROUNDING) continue
          best = found
          at = tried
          better = true
        }
    }
    return best
  }
}
