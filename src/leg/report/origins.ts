import { cordFibre, type FibreName } from '../../capstan/index.js'
import type { Source } from '../../formula/index.js'
import { bandText, type Kind } from '../../units/index.js'
import { leafName } from '../assess/names.js'
import { unitSigns } from '../assess/sentence.js'
import type { Leg } from '../document/describe.js'
import { propertiesOf } from '../parts/materials/fields.js'
import { strengthOfFibre } from '../parts/transmission/cord/fields.js'
import type { Link, Sheet, SheetLeaf, SheetMaker } from '../run/index.js'
import type { OwnMaterial } from '../schema/field.js'
import { materialOf } from '../schema/tables.js'
import { exactAmount, exactAmounts } from './amounts.js'
import { type FieldRow, fieldRows } from './fields-list.js'

/** A value of a table, of a material, or a constant of the model, as it stands on the sheet. */
export interface ValueRow {
  readonly ref: string
  readonly name: string
  readonly value: string
  /** Sources of its number. */
  readonly sources: readonly Source[]
  /** Fields that it follows from: which row of a table, or which numbers. */
  readonly by: readonly string[]
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
      ref = this.#fieldOf(number, path) ?? this.#place(number, path, kind)
      this.#refs.set(key, ref)
    }
    return ref
  }

  /** The field that a leaf's number was read from; of equal numbers of a list, each has the field of its place. */
  #fieldOf(number: number, path: string): string | undefined {
    const leaf = this.#sheet.leaves[number] as SheetLeaf
    const value = at(leaf.value, path)
    const reads = this.#maker.fieldsOf(number).filter((field) => Object.is(field.value, value) && this.#rowOf(field.path) !== undefined)
    const place = /(?:^|\.)(\d+)(?:\.|$)/.exec(path)?.[1]
    const read = reads.findLast((read) => place !== undefined && read.path.includes(`[${place}]`)) ?? reads.at(-1)
    return read === undefined ? undefined : (this.#rowOf(read.path) as FieldRow).ref
  }

  /** A row for a number of a table, for all numbers of a list, or for a constant. */
  #place(number: number, path: string, kind: Kind): string {
    const leaf = this.#sheet.leaves[number] as SheetLeaf
    const outer = path.replace(/\.?\d+$/, '')
    const list = outer === path ? undefined : at(leaf.value, outer)
    const whole = Array.isArray(list) && list.every((each) => typeof each === 'number') ? (list as number[]) : undefined
    const known = whole === undefined ? undefined : this.#refs.get(`${number} ${outer} list`)
    if (known !== undefined) return known
    const reads = this.#maker.fieldsOf(number)
    const constant = reads.length === 0 && (leaf.names as { readonly material?: string }).material === undefined
    const rows = constant ? this.constants : this.tables
    const ref = `${constant ? 'C' : 'T'}${rows.length + 1}`
    rows.push({
      ref,
      name: leafName(leaf.id, leaf.names as Readonly<Record<string, string>>, whole === undefined ? path : outer, leaf.title),
      value: whole === undefined ? textOf(leaf, at(leaf.value, path) as number, kind) : exactAmounts(kind, whole),
      sources: this.#sourcesOf(leaf),
      by: [...new Set(reads.flatMap(({ path }) => this.#rowOf(path)?.ref ?? []))],
    })
    if (whole !== undefined) this.#refs.set(`${number} ${outer} list`, ref)
    return ref
  }

  #rowOf(path: string): FieldRow | undefined {
    return this.#byPath.get(path) ?? this.#byPath.get(path.replace(/\.(typical|si|value)$/, ''))
  }

  #sourcesOf(leaf: SheetLeaf): readonly Source[] {
    const { material } = leaf.names as { readonly material?: string }
    if (leaf.range !== undefined) return [leaf.range.source]
    if (leaf.source !== undefined) return [leaf.source]
    if (leaf.id === strengthOfFibre.id) return [this.#fibreOf(leaf).strength.source]
    if (material === undefined) return leaf.table?.source ?? []
    const record = materialOf(material, this.#leg.materials as Readonly<Record<string, OwnMaterial>> | undefined)
    const property = propertiesOf(leaf.id).find((each) => record[each] !== undefined)
    return [(property === undefined ? undefined : record[property]?.source) ?? NOTHING_LOST]
  }

  #fibreOf(leaf: SheetLeaf) {
    const { cord } = leaf.names as { readonly cord: string }
    return cordFibre((this.#leg.cords as NonNullable<Leg['cords']>)[cord]?.fibre as FibreName)
  }
}

/** Where the record of a material has no value for what time, load or water takes from its strength. */
const NOTHING_LOST: Source = { level: 'assumption', where: 'a material of this kind loses nothing' }

/** The number or text at a path of a value. */
const at = (value: unknown, path: string): unknown =>
  path === '' ? value : path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], value)

function textOf(leaf: SheetLeaf, value: number, kind: Kind): string {
  const { range } = leaf
  const exact = exactAmount(kind, value)
  if (range === undefined || leaf.value !== value) return exact
  // The steps print the typical value to all its digits: the table does too.
  const [number = exact] = exact.split(/ |°/)
  return unitSigns(bandText(kind, value, range.low, range.high).replace(/^\S+/, number))
}
