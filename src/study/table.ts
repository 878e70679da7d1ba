import type { Chart } from '../chart/index.js'
import { type Kind, Quantity, significant, siUnit } from '../units/index.js'
import { markdownTable } from './show.js'
import { type TableChartOptions, tableChart } from './table-chart.js'
import type { Column } from './table-column.js'
import { columnsToJSON, partsFromJSON, type TableJSON } from './table-json.js'

export type { Column } from './table-column.js'

/** What `toArrow` uses of the package `apache-arrow`. */
export interface ArrowPackage {
  /** Makes a table from columns by name. */
  readonly tableFromArrays: (columns: never) => unknown
}

/** Results as columns with units. */
export class Table {
  constructor(
    /** The formula or model that was run. */
    readonly id: string,
    /** Columns in order: the inputs that vary, then the outputs. */
    readonly columns: readonly Column[],
    /** How many rows there are. */
    readonly rows: number,
  ) {}

  /** Rows in which some number is not finite: the formula has no answer for those inputs. */
  get gaps(): number {
    let gaps = 0
    for (let i = 0; i < this.rows; i++) if (this.columns.some((column) => 'values' in column && !Number.isFinite(column.values[i]))) gaps++
    return gaps
  }

  /** A column by name. Throws a `RangeError` that lists the names. */
  column(name: string): Column {
    const found = this.columns.find((column) => column.name === name)
    if (found === undefined)
      throw new RangeError(`no column '${name}'; columns are ${this.columns.map((column) => column.name).join(', ')}`)
    return found
  }

  /** A numeric column in a unit of its kind. Throws a `RangeError` for a column of words, an `InputError` for a unit of another kind. */
  in(name: string, unit: string): Float64Array {
    const column = this.column(name)
    if ('words' in column) throw new RangeError(`column '${name}' holds words`)
    return column.values.map((si) =>
      (new Quantity(si, column.kind).in as (unit: string) => number).call(new Quantity(si, column.kind), unit),
    )
  }

  /** A row as quantities and words, by column name. */
  row(index: number): Record<string, Quantity<Kind> | string> {
    return Object.fromEntries(
      this.columns.map((column) => [
        column.name,
        'words' in column ? (column.words[index] as string) : new Quantity(column.values[index] as number, column.kind),
      ]),
    )
  }

  /** Comma-separated text; the header carries the unit: `load [N]`. Numbers keep every digit. */
  toCSV(): string {
    const header = headsOf(this.columns).map(quoted).join(',')
    const lines = Array.from({ length: this.rows }, (_, i) =>
      this.columns.map((column) => ('words' in column ? quoted(column.words[i] as string) : String(column.values[i]))).join(','),
    )
    return `${[header, ...lines].join('\n')}\n`
  }

  /** The table as plain data, every digit kept. `Table.fromJSON` reads it back. */
  toJSON(): TableJSON {
    return { id: this.id, rows: this.rows, columns: columnsToJSON(this.columns) }
  }

  /** A table from what its `toJSON` returned. Throws an `InputError` that names the first entry which is not as it was written. */
  static fromJSON(
    /** What `JSON.parse` returns for the text of a table. */
    given: unknown,
  ): Table {
    const { id, columns, rows } = partsFromJSON(given)
    return new Table(id, columns, rows)
  }

  /** A Markdown table of the first rows, in SI units with four digits. */
  toMarkdown(max = 20): string {
    const shown = cellsOf(this.columns, Math.min(max, this.rows))
    const { gaps } = this
    const more = [
      this.rows > shown.length && rowsText(this.rows - shown.length, 'more'),
      gaps > 0 && `${rowsText(gaps)} without a finite answer`,
    ]
      .filter(Boolean)
      .map((text) => `\n${text}`)
    return [markdownTable(headsOf(this.columns), shown), ...more].join('\n')
  }

  /**
   * A line chart of one column of numbers over another: `table.chart('friction', 'result', { units: { result: 'N' } })`. A third column makes one line for
   * each of its values. Axes are in SI units where `units` names no other. Throws a `RangeError` for an unknown column or one of words on an axis.
   */
  chart(x: string, y: string, options: TableChartOptions = {}): Chart {
    return tableChart(this, x, y, options)
  }

  /**
   * The table in the columnar format of Apache Arrow, for data frames of other languages. Give the package `apache-arrow`, which you install yourself:
   * `table.toArrow(await import('apache-arrow'))`. Columns are named with their units, as in `toCSV`.
   */
  toArrow<M extends ArrowPackage>(arrow: M): ReturnType<M['tableFromArrays']> {
    const columns = this.columns.map((column) =>
      'words' in column ? [column.name, [...column.words]] : [`${column.name} [${column.unit}]`, column.values],
    )
    return arrow.tableFromArrays(Object.fromEntries(columns) as never) as ReturnType<M['tableFromArrays']>
  }

  /** The text that notebooks show. */
  [Symbol.for('Jupyter.display')](): Record<string, string> {
    return { 'text/html': this.toHtml(), 'text/markdown': this.toMarkdown(), 'text/plain': this.toMarkdown() }
  }

  /** An HTML table of the first rows, in SI units with four digits. */
  toHtml(max = 20): string {
    const line = (tag: string, cells: readonly string[]) =>
      `<tr>${cells.map((cell) => `<${tag}>${escapedHtml(cell)}</${tag}>`).join('')}</tr>`
    const shown = cellsOf(this.columns, Math.min(max, this.rows))
    const more = this.rows > shown.length ? `<caption>${rowsText(this.rows - shown.length, 'more')}</caption>` : ''
    return `<table>${more}<thead>${line('th', headsOf(this.columns))}</thead><tbody>${shown.map((cells) => line('td', cells)).join('')}</tbody></table>`
  }
}

/** Names of columns with their units. */
const headsOf = (columns: readonly Column[]): string[] =>
  columns.map((column) => ('words' in column ? column.name : `${column.name} [${column.unit}]`))

/** The first rows as text. */
const cellsOf = (columns: readonly Column[], rows: number): string[][] =>
  Array.from({ length: rows }, (_, i) =>
    columns.map((column) => ('words' in column ? (column.words[i] as string) : significant(column.values[i] as number))),
  )

const rowsText = (count: number, which = '') => `${count} ${which === '' ? '' : `${which} `}${count === 1 ? 'row' : 'rows'}`

/** An empty numeric column. */
// Declared, so that compilers older than TypeScript 5.7, whose Float64Array takes no argument, read the declaration.
export const numbers = (name: string, kind: Kind, rows: number): { name: string; kind: Kind; unit: string; values: Float64Array } => ({
  name,
  kind,
  unit: siUnit(kind),
  values: new Float64Array(rows),
})

const quoted = (text: string) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

const escapedHtml = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
