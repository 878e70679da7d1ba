import type { Property, Source } from '../formula/index.js'
import type { Kind } from '../units/index.js'
import type { AgeId, AirId, EventId, StanceId } from './cases/events.js'
import type { LegNumbers } from './leg-numbers.js'
import type { Joint } from './numbers.js'
import type { Pivot } from './parts/ball-bearings/pivots.js'
import { type Index, leaf, type Names, type Of, type Range, type Value } from './run/index.js'
import type { Band } from './schema/field.js'

/** Names of the instances of a leg. */
export interface LegNames {
  joint: Joint
  link: 'upper' | 'lower'
  pivot: Pivot
  stance: StanceId
  event: EventId
  air: AirId
  age: AgeId
}
type NamesOf<A extends Index> = { readonly [X in A]: X extends keyof LegNames ? LegNames[X] : string }
type Read<A extends Index, T> = (x: LegNumbers, names: NamesOf<A>) => T

/** Names of instances are text to the engine; a leg knows which texts they are. */
const named = <A extends Index, T>(read: Read<A, T>) => read as unknown as (x: LegNumbers, names: Names) => T

const OF_LEG: Source = { level: 'assumption', where: 'the range that the specification of the leg gives' }

/** How a leaf that is no field of the document stands on a sheet: what it is called, and the table that it is read from. */
export interface Shown {
  readonly title: string
  readonly table?: { readonly source: readonly Source[] }
}

/** A number of the document, or of a table by a word of the document. */
export const field = <const A extends Index = never>(
  id: string,
  by: readonly A[],
  kind: Kind,
  read: Read<A, number>,
  shown?: Shown,
): Value<number, A> => leaf(id, by, { kind, read: named(read), ...shown })

/** A number of the document that may be absent. */
export const optional = <const A extends Index = never>(
  id: string,
  by: readonly A[],
  kind: Kind,
  read: Read<A, number | undefined>,
): Value<number | undefined, A> => leaf(id, by, { kind, read: named(read) })

/** A choice, a flag or a name of the document. */
export const word = <T, const A extends Index = never>(id: string, by: readonly A[], read: Read<A, T>): Value<T, A> =>
  leaf(id, by, { kind: 'word', read: named(read) })

/** A list or a row of a table. */
export const record = <T, const A extends Index = never>(id: string, by: readonly A[], read: Read<A, T>, shown?: Shown): Value<T, A> =>
  leaf(id, by, { kind: 'record', read: named(read), ...shown })

/** A name that stands for an instance of another index. */
export const reference = <X extends Index, const A extends Index = never>(
  id: string,
  by: readonly A[],
  refersTo: X,
  read: Read<A, string>,
): Value<Of<X>, A> => leaf(id, by, { kind: 'word', refersTo, read: named(read as unknown as Read<A, Of<X>>) })

/** Names that stand for instances of another index, in the order of the document. */
export const references = <X extends Index, const A extends Index = never>(
  id: string,
  by: readonly A[],
  refersTo: X,
  read: Read<A, readonly string[]>,
): Value<readonly Of<X>[], A> => leaf(id, by, { kind: 'word', refersTo, read: named(read as unknown as Read<A, readonly Of<X>[]>) })

/** An uncertain ratio of the document. */
export const band = <const A extends Index = never>(
  id: string,
  title: string,
  by: readonly A[],
  measuredBy: string,
  read: Read<A, Band>,
  source: Source = OF_LEG,
): Value<number, A> => {
  const bandIn = named(read)
  return leaf(id, by, {
    title,
    kind: 'ratio',
    read: (x: LegNumbers, names) => bandIn(x, names).typical,
    range: (x: LegNumbers, names) => {
      const { low, high } = bandIn(x, names)
      return low < high ? { low, high, source, measuredBy } : undefined
    },
  })
}

/** A property with its range and source. */
export const ranged = <const A extends Index = never>(
  id: string,
  title: string,
  by: readonly A[],
  kind: Kind,
  measuredBy: string,
  read: Read<A, Property>,
): Value<number, A> => {
  const property = named(read)
  return leaf(id, by, {
    title,
    kind,
    read: (x: LegNumbers, names) => property(x, names).si,
    range: (x: LegNumbers, names) => rangeOf(property(x, names), measuredBy),
  })
}

/** The range of a property; absent where it is one value. */
export const rangeOf = ({ low, high, source }: Property, measuredBy: string): Range | undefined =>
  low < high ? { low, high, source, measuredBy } : undefined
