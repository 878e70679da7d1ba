import type { AnyFormula } from '../../formula/index.js'
import type { Tried } from './scenarios.js'
import { type AnyValue, INDICES, type Index, type Names } from './value.js'

/** States of a cell. */
export const STALE = 0
export const KNOWN = 1
export const AT_WORK = 2
export const FAILED = 3

/** Instances by index; -1 where a value does not have the index. */
export type Where = { [X in Index]: number }
/** Some instances by index. */
export type Named = Partial<Readonly<Where>>

/** What a recorded evaluation did, in order. */
export type Entry =
  /** It read this cell. */
  | Cell
  | { readonly formula: AnyFormula; readonly x: unknown; readonly y: unknown }
  | {
      readonly loop: string
      readonly rounds: number
      readonly x: number
      readonly next: number
      readonly within: number
      readonly settled: boolean
    }

/** A loop that did not converge. */
export interface Unsettled {
  readonly value: string
  /** Names of its instances. */
  readonly names: Names
  readonly loop: string
  readonly why: string
}

/** A state, and the value or the error that goes with it. */
export interface Held {
  state: number
  value: unknown
}

/** One value for one set of instances. What every reading touches stands first, side by side in memory. */
export class Cell implements Held {
  readonly of: AnyValue
  state = STALE
  value: unknown = undefined
  /** What it read last, in order: for its own instances, and for instances that it named. Each is replaced when it grows, so that none has room to spare. */
  own: readonly Cell[] = NONE
  named: readonly Cell[] = NONE
  /** What it holds in a scenario. */
  tried: Tried | undefined = undefined
  readonly where: Where
  /** The same with what these instances imply. */
  readonly sees: Where
  log: Entry[] | undefined = undefined
  unsettled: Unsettled | undefined = undefined
  /** The last walk that met it. */
  walk = 0
  pinned = false
  /** At least what it depends on; for invalidation alone. */
  readonly reads: Cell[] = []
  readonly users: Cell[] = []
  readonly names: Names

  constructor(of: AnyValue, where: Where, sees: Where, names: Names) {
    this.of = of
    this.where = where
    this.sees = sees
    this.names = names
  }
}

const NONE: readonly never[] = []

/** Whether a cell is the one for the instances named; those not named are the reader's. */
export function agrees(cell: Cell, named: Named, sees: Named): boolean {
  for (const index of cell.of.by) if (cell.where[index] !== (named[index] ?? sees[index])) return false
  return true
}

/** A list with an item at a place, or after its end. */
export const withItem = (cells: readonly Cell[], place: number, cell: Cell): readonly Cell[] =>
  place < cells.length ? cells.with(place, cell) : [...cells, cell]

let walks = 0
/** The number of a new walk through cells, which marks those that it meets. */
export const newWalk = (): number => ++walks

/** A cell and one that it has not read before. */
export interface NewLink {
  readonly reader: Cell
  readonly cell: Cell
}

/** No instance of any index. */
export const nowhere = (): Where => ({ ...NOWHERE })
const NOWHERE = Object.fromEntries(INDICES.map((index) => [index, -1])) as Where
