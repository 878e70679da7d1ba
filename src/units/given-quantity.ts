import { refuse } from './errors.js'
import { type Kind, kindRow, siUnit } from './kinds.js'
import type { Note } from './notes.js'
import { type In, Quantity, type QuantityJSON } from './quantity.js'
import { accepted, kindAccepted, readAny } from './reading.js'

/**
 * Makes a quantity from anything `In<K>` accepts.
 * Throws an `InputError` that names the given value and the units accepted, also for a number that is not finite.
 */
export function quantity<K extends Kind>(kind: K, given: In<NoInfer<K>>): Quantity<K> {
  const row = kindRow(kind)
  if (row === undefined) refuse('quantity', 'kind', kind, kindAccepted(kind))
  const x = readAny(row, given)
  if (!Number.isFinite(x)) refuse('quantity', 'given', given, accepted(kind, given))
  return new Quantity(x, kind, row.dim, (given as { notes?: readonly Note[] }).notes)
}

/** The SI number of anything `In<K>` accepts, with the refusals of `quantity`. */
export const read = (kind: Kind, given: unknown): number => quantity(kind, given as never).si

/** Reads what `toJSON` wrote. Throws an `InputError` when the data is not a quantity of the table. */
export function quantityFromJSON(data: unknown): Quantity<Kind> {
  const { kind, value, unit } = (data ?? {}) as Partial<QuantityJSON>
  if (kindRow(kind as string) === undefined || typeof value !== 'number' || !Number.isFinite(value) || unit !== siUnit(kind as Kind)) {
    refuse('quantityFromJSON', 'data', data, "must be { kind, value, unit } with a finite value in the kind's SI unit, as toJSON writes it")
  }
  return new Quantity(value, kind as Kind)
}
