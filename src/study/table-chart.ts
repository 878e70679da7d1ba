import { type Chart, lineChart } from '../chart/index.js'
import { significant } from '../units/index.js'
import { planRecord } from './path.js'
import type { Column } from './table-column.js'

/** How a table is drawn. */
export interface TableChartOptions {
  /** The column whose values make one line each. Default: one line. */
  readonly lines?: string
  /** Units of the axes by column, such as `{ load: 'kN' }`. Default: SI units. */
  readonly units?: Readonly<Record<string, string>>
  /** Title of the chart. Default: the formula and its columns. */
  readonly title?: string
}

/** Data of a table that a chart reads. */
interface Drawn {
  readonly id: string
  readonly rows: number
  column(name: string): Column
  in(name: string, unit: string): Float64Array
}

/** A line chart of one column over another. */
export function tableChart(table: Drawn, x: string, y: string, options: TableChartOptions): Chart {
  const { lines, units = {}, title } = planRecord('chart', options, ['lines', 'units', 'title'])
  const axis = (name: string) => {
    const column = table.column(name)
    if ('words' in column) throw new RangeError(`column '${name}' holds words; an axis needs numbers`)
    return { title: name, unit: units[name] ?? column.unit }
  }
  const [across, up] = [axis(x), axis(y)]
  const [xs, ys] = [table.in(x, across.unit), table.in(y, up.unit)]
  const nameOf = lines === undefined ? () => y : lineNames(table, lines, units[lines])
  const groups = new Map<string, [number, number][]>()
  for (let i = 0; i < table.rows; i++) {
    const name = nameOf(i)
    const points = groups.get(name) ?? []
    if (points.length === 0) groups.set(name, points)
    // A row without an answer has no point.
    if (Number.isFinite(xs[i]) && Number.isFinite(ys[i])) points.push([xs[i] as number, ys[i] as number])
  }
  const series = [...groups].map(([name, points]) => ({ name, points: points.sort(([a], [b]) => a - b) }))
  const text = title ?? `${table.id}: ${y} over ${x}`
  return lineChart({ title: text, description: `${y} over ${x}, ${table.rows} rows of ${table.id}.`, x: across, y: up, series })
}

/** Names of the lines by row. */
function lineNames(table: Drawn, column: string, unit: string | undefined): (row: number) => string {
  const found = table.column(column)
  if ('words' in found) return (row) => found.words[row] as string
  const shown = unit ?? found.unit
  const values = table.in(column, shown)
  return (row) => `${column} ${significant(values[row] as number)}${shown === '1' ? '' : ` ${shown}`}`
}
