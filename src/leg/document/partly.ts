import type { Quantity } from '../../units/index.js'
import type { LegData } from './fields.js'

/** Data of which any field may be missing: what could be read of a document that has mistakes. */
export type Partly<T> = T extends Quantity | string | number | boolean | undefined
  ? T | undefined
  : T extends readonly (infer E)[]
    ? readonly Partly<E>[] | undefined
    : { readonly [K in keyof T]?: Partly<T[K]> } | undefined

/** A leg's document of which any field may be missing. */
export type PartlyLeg = NonNullable<Partly<LegData>>

/** Adds an issue: path, what was given, what is accepted. */
export type Report = (path: string, given: unknown, accepts: string) => void

/** Whether both are known and the first is below the second. */
export const below = (a: Quantity | undefined, b: Quantity | undefined): boolean => a !== undefined && b !== undefined && a.si < b.si
/** Whether both are known and the first is not above the second. */
export const notAbove = (a: Quantity | undefined, b: Quantity | undefined): boolean => a !== undefined && b !== undefined && a.si <= b.si

/** A length as messages print it. */
export const millimetres = (x: number): string => `${Number((x * 1000).toPrecision(4))} mm`

/** Entries of a dictionary that could be read. */
export const entriesOf = <T>(dictionary: { readonly [name: string]: T | undefined } | undefined): [string, T][] =>
  Object.entries(dictionary ?? {}).filter((entry): entry is [string, T] => entry[1] !== undefined)
