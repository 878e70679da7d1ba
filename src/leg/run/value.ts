import type { Evaluator, Source } from '../../formula/index.js'
import type { Kind } from '../../units/index.js'

/** Indices of values, in the order of their instances in a key. */
export const INDICES = [
  'leg',
  'joint',
  'motor',
  'cord',
  'plate',
  'controller',
  'link',
  'boltGroup',
  'pivot',
  'material',
  'print',
  'stance',
  'event',
  'air',
  'age',
] as const
/** Index of a value: a joint, a load event, a material. */
export type Index = (typeof INDICES)[number]

/** Indices that imply others: a joint has one motor, an event one stance. */
export interface Implied {
  joint: 'leg' | 'motor' | 'cord' | 'plate' | 'controller'
  motor: 'leg'
  plate: 'leg'
  link: 'leg'
  boltGroup: 'leg'
  pivot: 'leg'
  event: 'stance'
}

/** The same for the engine. */
export const IMPLIES: { readonly [X in Index]?: readonly Index[] } = {
  joint: ['leg', 'motor', 'cord', 'plate', 'controller'],
  motor: ['leg'],
  plate: ['leg'],
  link: ['leg'],
  boltGroup: ['leg'],
  pivot: ['leg'],
  event: ['stance'],
} satisfies { readonly [X in keyof Implied]: readonly Implied[X][] }

/** The indices themselves and those that they imply. */
export type Sees<A extends Index> = A | { [X in A]: X extends keyof Implied ? Implied[X] : never }[A]

declare const OF: unique symbol
/** One instance of an index. A plate is not a joint, though both are numbers. */
export type Of<X extends Index> = number & { readonly [OF]: X }
/** The instances that a value is calculated for. */
export type At<A extends Index> = { readonly [X in A]: Of<X> }

/** A range of an uncertain leaf, with its source and the test that would replace it. */
export interface Range {
  readonly low: number
  readonly high: number
  readonly source: Source
  readonly measuredBy: string
}

/** A leaf: read from the document (or constant), never calculated. */
export interface Leaf<D, T> {
  /** Kind of the number; 'word' for names and choices, 'record' for lists and tables. */
  readonly kind: Kind | 'word' | 'record'
  /** The value in a document, for instances given by name. */
  readonly read: (document: D, names: Names) => T
  /** Range of an uncertain value. */
  readonly range?: ((document: D, names: Names) => Range | undefined) | undefined
  /** The index that its word names an instance of; the value is then a handle. */
  readonly refersTo?: Index | undefined
  /** Source of a constant. */
  readonly source?: Source | undefined
  /** What a reader calls it: a noun phrase without an article. A dash stands for the name of its instance. Default: the words of its id. */
  readonly title?: string | undefined
  /** Table that it is read from: its sources are those of the value. */
  readonly table?: { readonly source: readonly Source[] } | undefined
}

/** Names of instances by index. */
export type Names = { readonly [X in Index]: string }

/** A value of the calculation: calculated by its work, or a leaf. */
export class Value<T, A extends Index> {
  declare readonly holds: T
  constructor(
    readonly id: string,
    readonly by: readonly A[],
    readonly work: ((use: never, at: never) => T) | undefined,
    readonly leaf: Leaf<never, unknown> | undefined,
  ) {
    for (const other of by) {
      const twice = by.find((index) => IMPLIES[other]?.includes(index))
      if (twice !== undefined) throw new Error(`${id}: ${twice} is implied by another of its indices`)
    }
  }
}

/** A value of any type and indices. */
export type AnyValue = Value<unknown, Index>

/** What one round of a loop returns: where the loop variable goes next, and the numbers to hand on. */
export interface Round {
  readonly next: number
}

/** How a loop runs: fixed start, tolerance on the loop variable, most rounds, and the highest value allowed. */
export interface Loop {
  readonly start: number
  readonly within: number
  readonly most: number
  readonly highest?: number
}

/** What a work function reads and runs with. Never keep it beyond the function. */
export interface Use<A extends Index> {
  /** A value for the instances that the reader has or implies. */
  <T, B extends Sees<A>>(of: Value<T, B>): T
  /** Keeps a reader of fewer indices from helpers that need more. */
  readonly sees?: (index: Sees<A>) => void
  /** A value for instances named here; those the reader has may stay unnamed. */
  at<T, B extends Index>(
    of: Value<T, B>,
    where: { readonly [X in Exclude<B, Sees<A>>]: Of<X> } & { readonly [X in Extract<B, Sees<A>>]?: Of<X> },
  ): T
  /** Instances of an index, in the order of the document; those with given other instances where named. */
  all<X extends Index>(index: X, where?: { readonly [Y in Index]?: Of<Y> }): readonly Of<X>[]
  /** The name of an instance. */
  nameOf<X extends Index>(index: X, of: Of<X>): string
  /** Runs a formula or a line on SI numbers. */
  readonly run: Evaluator
  /** The same for a formula that takes long: instances with the same numbers share one run. */
  readonly shared: Evaluator
  /** Iterates a number until it moves less than the tolerance. Read all values before it. */
  settle<R extends Round>(title: string, loop: Loop, round: (x: number) => R): R & { readonly x: number; readonly settled: boolean }
  /** The answer of one kind of part to a question. */
  answer(family: string, kind: string, question: string): ((use: never, at: never) => unknown) | undefined
}

/** Makes a value. `by` lists what it is calculated for; the work reads other values through `use`. */
export const value = <T, const A extends Index = never>(id: string, by: readonly A[], work: (use: Use<A>, at: At<A>) => T): Value<T, A> =>
  new Value<T, A>(id, by, work as never, undefined)

/** Makes a leaf that is read from documents. */
export const leaf = <D, T, const A extends Index = never>(id: string, by: readonly A[], from: Leaf<D, T>): Value<T, A> =>
  new Value<T, A>(id, by, undefined, from as Leaf<never, unknown>)

/** Questions that each kind of a part answers. */
export interface Family<A extends Index> {
  readonly id: string
  /** The leaf that names the kind. */
  readonly kind: Value<string, A>
}

/** Makes a question: a value without work, answered by the kind of part that the instance is. */
export function question<T, const A extends Index>(family: Family<NoInfer<A>>, name: string, by: readonly A[]): Value<T, A> {
  return value(`${family.id}.${name}`, by, (use, at): T => {
    const kind = use(family.kind as unknown as Value<string, never>)
    const answer = use.answer(family.id, kind, name)
    if (answer === undefined) throw new Error(`${family.id}: the kind '${kind}' has no answer to '${name}'`)
    return answer(use as never, at as never) as T
  })
}
