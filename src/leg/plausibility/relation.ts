import type { Kind, Quantity } from '../../units/index.js'
import type { PartlyLeg } from '../document/partly.js'

/** A range of SI numbers, both ends in it. */
export type Range = readonly [low: number, high: number]

/** A number that follows from several fields of a leg and lies in a known range where each of them is right. */
export interface Relation {
  /** The field that the message names first. */
  readonly path: string
  /** Its value; absent where it could not be read. */
  readonly value: unknown
  /** The other fields in it. */
  readonly others: readonly string[]
  /** What the number is, as the subject of a sentence. */
  readonly what: string
  /** The number, SI; NaN where a field is missing. */
  readonly is: number
  readonly kind: Kind
  /** Where it lies in usual legs. */
  readonly usual: Range
  /** Where it lies in any leg that can be built: outside, the document contradicts itself. */
  readonly possible?: Range
  /** It holds for the other fields left open as well. */
  readonly ofDefaults?: true
}

/** The fields of one part: the relations between them are added by `add`. */
export type Relations = (leg: PartlyLeg, add: (relation: Relation) => void) => void

/** The SI number of a quantity; NaN where it is missing, and in all that follows from it. */
export const si = (x: Quantity | undefined): number => x?.si ?? Number.NaN

/** A field by its path, with its value. */
export type Named = readonly [path: string, value: Quantity | undefined]

/** One quantity over another of the same kind. */
export const ratio = (
  [path, value]: Named,
  [other, by]: Named | readonly [path: string, value: number],
  what: string,
  usual: Range,
  possible?: Range,
): Relation => ({
  path,
  value,
  others: [other],
  what,
  is: si(value) / (typeof by === 'number' ? by : si(by)),
  kind: 'ratio',
  usual,
  ...(possible === undefined ? {} : { possible }),
})

/** Whether a number is outside a range; a missing one is not. */
export const isOutside = (x: number, [low, high]: Range): boolean => x < low || x > high
