import type { Cell } from './cell.js'
import { type LeafSet, mark, marked, noLeaves, withMark } from './leaf-set.js'
import type { Range } from './value.js'

/** A leaf with a range. */
export interface Uncertain {
  readonly cell: Cell
  readonly range: Range
}

/** An end of the range of a leaf. */
export type End = 'low' | 'high'

/** Uncertain leaves, each at one end of its range; the others are at their typical values. */
export type Ends = LeafSet & { readonly [ENDS]: true }
declare const ENDS: unique symbol

const BITS = { low: 1, high: 2 } as const

/** Puts some uncertain leaves to ends of their ranges. */
export class LeafEnds {
  readonly #leaves: readonly Uncertain[]
  readonly #numbers: ReadonlyMap<Cell, number>

  constructor(leaves: readonly Uncertain[]) {
    this.#leaves = leaves
    this.#numbers = new Map(leaves.map(({ cell }, i) => [cell, i]))
  }

  /** Some of the leaves, each at an end; where one stands twice, the later end. */
  of(chosen: Iterable<readonly [Cell, End]>): Ends {
    const ends = noLeaves(this.#leaves.length)
    for (const [cell, end] of new Map(chosen)) mark(ends, this.#number(cell), BITS[end])
    return ends as Ends
  }

  /** The same with one of the leaves at an end. */
  moved(ends: Ends, cell: Cell, end: End): Ends {
    return withMark(ends, this.#number(cell), BITS[end]) as Ends
  }

  /** The end that a leaf is at; absent where it is at its typical value. */
  endOf(ends: Ends, cell: Cell): End | undefined {
    const bits = marked(ends, this.#number(cell))
    return bits === 0 ? undefined : bits === BITS.low ? 'low' : 'high'
  }

  /** The value at its end of the leaf with a number. */
  valueOf(ends: Ends, leaf: number): number {
    const { range } = this.#leaves[leaf] as Uncertain
    return marked(ends, leaf) === BITS.low ? range.low : range.high
  }

  #number(cell: Cell): number {
    const number = this.#numbers.get(cell)
    if (number === undefined) throw new Error(`${cell.of.id} is none of the uncertain values of these scenarios`)
    return number
  }
}
