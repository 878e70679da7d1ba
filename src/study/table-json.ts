import { type Kind, kindNames, refuse, siUnit } from '../units/index.js'
import type { Column } from './table-column.js'

/** A table as plain data. Numbers that are not finite are words, since JSON has none. */
export interface TableJSON {
  /** The formula or model that was run. */
  readonly id: string
  /** How many rows there are. */
  readonly rows: number
  /** Columns in order: numbers in the SI unit of their kind, or words. */
  readonly columns: readonly (
    | {
        /** Name of the column. */
        readonly name: string
        /** Kind of its numbers. */
        readonly kind: Kind
        /** SI unit of its numbers. */
        readonly unit: string
        /** Its numbers, row by row. */
        readonly values: readonly (number | 'NaN' | 'Infinity' | '-Infinity')[]
      }
    | {
        /** Name of the column. */
        readonly name: string
        /** Its words, row by row. */
        readonly words: readonly string[]
      }
  )[]
}

const WORDS = ['NaN', 'Infinity', '-Infinity'] as const
type Word = (typeof WORDS)[number]

/** Columns as plain data. @internal */
export const columnsToJSON = (columns: readonly Column[]): TableJSON['columns'] =>
  columns.map((column) =>
    'words' in column
      ? { name: column.name, words: [...column.words] }
      : { ...column, values: Array.from(column.values, (x) => (Number.isFinite(x) ? x : (String(x) as Word))) },
  )

const WHERE = 'Table.fromJSON'
const isObject = (given: unknown): given is Readonly<Record<string, unknown>> =>
  typeof given === 'object' && given !== null && !Array.isArray(given)

/** The parts of a table from plain data, checked. @internal */
export function partsFromJSON(given: unknown): { readonly id: string; readonly columns: readonly Column[]; readonly rows: number } {
  if (!isObject(given)) return refuse(WHERE, 'given', given, 'must be what toJSON of a table returns')
  const { id, rows, columns } = given
  if (typeof id !== 'string') return refuse(WHERE, 'id', id, 'must be the name of the formula or model')
  if (!Number.isInteger(rows) || (rows as number) < 0) return refuse(WHERE, 'rows', rows, 'must be the number of rows')
  if (!Array.isArray(columns)) return refuse(WHERE, 'columns', columns, 'must be a list of columns')
  return { id, rows: rows as number, columns: columns.map((column, i) => columnFrom(`columns[${i}]`, column, rows as number)) }
}

function columnFrom(path: string, given: unknown, rows: number): Column {
  if (!isObject(given)) return refuse(WHERE, path, given, 'must be a column')
  const { name, kind, unit, values, words } = given
  if (typeof name !== 'string') return refuse(WHERE, `${path}.name`, name, 'must be the name of the column')
  const [list, of] = words === undefined ? [values, 'values'] : [words, 'words']
  if (!Array.isArray(list) || list.length !== rows) return refuse(WHERE, `${path}.${of}`, list, `must be a list of ${rows} entries`)
  if (words !== undefined) {
    const wrong = list.findIndex((word) => typeof word !== 'string')
    return wrong < 0 ? { name, words: list as string[] } : refuse(WHERE, `${path}.words[${wrong}]`, list[wrong], 'must be a word')
  }
  if (!kindNames().includes(kind as Kind)) return refuse(WHERE, `${path}.kind`, kind, 'must be a kind of quantity')
  const si = siUnit(kind as Kind)
  if (unit !== si) return refuse(WHERE, `${path}.unit`, unit, `must be the SI unit of its kind, ${si}`)
  const wrong = list.findIndex((x) => !Number.isFinite(x) && !WORDS.includes(x as Word))
  if (wrong >= 0) return refuse(WHERE, `${path}.values[${wrong}]`, list[wrong], `must be a number, or one of ${WORDS.join(', ')}`)
  return { name, kind: kind as Kind, unit: si, values: Float64Array.from(list as (number | Word)[], Number) }
}
