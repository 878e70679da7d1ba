import type { Source } from '../formula/index.js'
import { type Kind, nearNames, Quantity, read, refuse, type UnitOf } from '../units/index.js'

/** A column of a table: its kind of quantity and the unit its numbers are printed in. */
export type Column = { [K in Kind]: readonly [kind: K, unit: UnitOf<K>] }[Kind]
/** Columns by name. */
export interface Columns {
  readonly [name: string]: Column
}

/** One row as quantities. */
export type SizeRow<C extends Columns> = { readonly [N in keyof C]: Quantity<C[N][0]> }
/** One row as SI numbers. */
export type SiRow<C extends Columns> = { readonly [N in keyof C]: number }

/** A table of standard sizes: called with a designation it returns that row, made once and kept. */
export interface SizeTable<C extends Columns, D extends string> {
  /** The row of a designation as quantities. Throws an `InputError` that lists near designations. */
  (designation: D | (string & {})): SizeRow<C>
  /** The same row as SI numbers. Throws as the checked call does. */
  readonly si: (designation: D | (string & {})) => SiRow<C>
  /** Every designation in the table. */
  readonly designations: readonly D[]
  /** Where the numbers come from. */
  readonly source: readonly Source[]
}

/** The record of a table: its subject, columns, sources, and a row of numbers (in the columns' order and units) for each designation. */
export interface SizeTableRecord<C extends Columns, D extends string> {
  readonly what: string
  readonly columns: C
  readonly source: readonly Source[]
  readonly rows: { readonly [designation in D]: readonly number[] }
}

/** Makes a table of standard sizes. Rows are turned into quantities at their first look-up, so that later ones allocate nothing. */
export function sizeTable<const C extends Columns, const D extends string>(id: string, table: SizeTableRecord<C, D>): SizeTable<C, D> {
  const names = Object.keys(table.columns)
  const siRows = new Map<string, SiRow<C>>()
  const rows = new Map<string, SizeRow<C>>()
  const si = (designation: string): SiRow<C> => {
    const known = siRows.get(designation)
    if (known !== undefined) return known
    const printed = printedRow(id, table, designation)
    const made: Record<string, number> = {}
    names.forEach((name, i) => {
      const [kind, unit] = table.columns[name] as Column
      made[name] = read(kind, [printed[i], unit])
    })
    siRows.set(designation, made as SiRow<C>)
    return made as SiRow<C>
  }
  const row = (designation: string): SizeRow<C> => {
    const known = rows.get(designation)
    if (known !== undefined) return known
    const numbers = si(designation)
    const made: Record<string, Quantity> = {}
    for (const name of names) made[name] = new Quantity(numbers[name] as number, (table.columns[name] as Column)[0] as Kind)
    rows.set(designation, made as SizeRow<C>)
    return made as SizeRow<C>
  }
  return Object.assign(row, { si, designations: inOrder(Object.keys(table.rows) as D[]), source: table.source }) as SizeTable<C, D>
}

function printedRow(id: string, table: SizeTableRecord<Columns, string>, designation: string): readonly number[] {
  if (typeof designation === 'string' && Object.hasOwn(table.rows, designation)) return table.rows[designation]!
  return unknownDesignation(id, table.what, designation, inOrder(Object.keys(table.rows)))
}

/** Throws the error for a designation that a table does not list. */
export function unknownDesignation(id: string, what: string, given: unknown, names: readonly string[]): never {
  const near = typeof given === 'string' || typeof given === 'number' ? nearNames(String(given), names) : []
  const accepts = `must be ${what}: ${near.length > 0 ? `near it are ${near.join(', ')}; ` : ''}the table lists ${names.join(', ')}`
  refuse(id, 'designation', given, accepts)
}

/** Object keys put whole numbers first; sizes that are plain numbers come in order of size. */
const inOrder = <D extends string>(names: D[]): D[] =>
  names.every((name) => Number.isFinite(Number(name))) ? names.sort((a, b) => Number(a) - Number(b)) : names
