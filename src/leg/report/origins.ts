import type { Source } from '../../formula/index.js'
import { bandText, type Kind } from '../../units/index.js'
import { leafName } from '../assess/names.js'
import { unitSigns } from '../assess/sentence.js'
import type { Leg } from '../document/describe.js'
import { propertiesOf } from '../parts/materials/fields.js'
import type { Link, Sheet, SheetLeaf, SheetMaker } from '../run/index.js'
import type { OwnMaterial } from '../schema/field.js'
import { materialOf } from '../schema/tables.js'
import { exactAmount, listed } from './amounts.js'
import { type FieldRow, fieldRows } from './fields-list.js'

/** A value of a table, of a material, or a constant of the model, as it stands on the sheet. */
export interface ValueRow {
  readonly ref: string
  readonly name: string
  readonly value: string
  /** Its source, or how it follows from fields. */
  readonly source: Source | string
}

/** The leaves of a sheet: where each number that goes into a step was given. */
export class Origins {
  readonly fields: readonly FieldRow[]
  readonly tables: ValueRow[] = []
  readonly constants: ValueRow[] = []
  readonly #leg: Leg
  readonly #sheet: Sheet
  readonly #maker: SheetMaker
  readonly #byPath: ReadonlyMap<string, FieldRow>
  readonly #refs = new Map<string, string>()

  constructor(leg: Leg, sheet: Sheet, maker: SheetMaker) {
    this.#leg = leg
    this.#sheet = sheet
    this.#maker = maker
    this.fields = fieldRows(leg)
    this.#byPath = new Map(this.fields.map((row) => [row.path, row]))
  }

  /** The reference of a leaf's number, as a step of a kind takes it. */
  refOf({ number, path }: Link, kind: Kind): string {
    const key = `${number} ${path}`
    let ref = this.#refs.get(key)
    if (ref === undefined) {
      ref = this.#place(number, path, kind)
      this.#refs.set(key, ref)
    }
    return ref
  }

  #place(number: number, path: string, kind: Kind): string {
    const leaf = this.#sheet.leaves[number] as SheetLeaf
    const value =
      path === '' ? leaf.value : path.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], leaf.value)
    const reads = this.#maker.fieldsOf(number)
    const read = reads.findLast((one) => Object.is(one.value, value) && this.#rowOf(one.path) !== undefined)
    if (read !== undefined) return (this.#rowOf(read.path) as FieldRow).ref
    const constant = reads.length === 0 && (leaf.names as { readonly material?: string }).material === undefined
    const list = constant ? this.constants : this.tables
    const ref = `${constant ? 'C' : 'T'}${list.length + 1}`
    list.push({
      ref,
      name: leafName(leaf.id, leaf.names as Readonly<Record<string, string>>, path),
      value: textOf(leaf, value as number, kind),
      source: this.#sourceOf(leaf, reads),
    })
    return ref
  }

  #rowOf(path: string): FieldRow | undefined {
    return this.#byPath.get(path) ?? this.#byPath.get(path.replace(/\.(typical|si|value)$/, ''))
  }

  #sourceOf(leaf: SheetLeaf, reads: readonly { readonly path: string }[]): Source | string {
    const { material } = leaf.names as { readonly material?: string }
    if (leaf.range !== undefined) return leaf.range.source
    if (leaf.source !== undefined) return leaf.source
    if (material !== undefined) {
      const record = materialOf(material, this.#leg.materials as Readonly<Record<string, OwnMaterial>> | undefined)
      const property = propertiesOf(leaf.id).find((each) => record[each] !== undefined)
      return (property === undefined ? undefined : record[property]?.source) ?? 'by the kind of the material'
    }
    const rows = [...new Set(reads.flatMap(({ path }) => this.#rowOf(path)?.ref ?? []))]
    return rows.length === 0 ? 'by definition' : `table, by ${listed(rows)}`
  }
}

function textOf(leaf: SheetLeaf, value: number, kind: Kind): string {
  const { range } = leaf
  const exact = exactAmount(kind, value)
  if (range === undefined || leaf.value !== value) return exact
  // The steps print the typical value to all its digits: the table does too.
  const [number = exact] = exact.split(/ |°/)
  return unitSigns(bandText(kind, value, range.low, range.high).replace(/^\S+/, number))
}
