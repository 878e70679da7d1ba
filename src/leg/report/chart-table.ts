import type { Chart } from '../../chart/index.js'
import { significant } from '../../units/index.js'

/** The numbers of a chart as a table, for readers who cannot see it. */
export interface ChartTable {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

interface Layer {
  readonly data?: { readonly values: readonly Readonly<Record<string, unknown>>[] }
  readonly mark: { readonly type: string }
  readonly encoding: Readonly<Record<string, { readonly field?: string; readonly title?: string | null }>>
}

/** Lines are thinned to about so many points each: a table is for reading. */
const MAX_POINTS = 7
const text = (x: unknown) => (typeof x === 'number' ? significant(x, 4) : String(x))

/** The numbers of a chart: bars with their ends, points and lines by series, labelled rules. */
export function chartTable({ layer }: Chart): ChartTable {
  const layers = layer as readonly Layer[]
  const bars = layers.find(({ mark }) => mark.type === 'bar')
  if (bars !== undefined)
    return {
      head: ['what', bars.encoding.x?.title ?? 'value', 'label', 'group'],
      rows: valuesOf(bars).map(({ name, to, label, series }) => [name, to, label, series].map(text)),
    }
  const drawn = layers.filter(({ mark }) => mark.type === 'line' || mark.type === 'point')
  const { x, y } = drawn[0]!.encoding
  const rules = layers.filter(({ mark }) => mark.type === 'rule')
  return {
    head: ['series', x?.title ?? 'x', y?.title ?? 'y'],
    rows: [
      ...drawn.flatMap((layer) =>
        [...bySeries(layer)].flatMap(([name, points]) =>
          thinned(layer.mark.type === 'point' ? outermost(points) : points).map((p) => [name, text(p.x), text(p.y)]),
        ),
      ),
      ...rules.flatMap((rule) =>
        valuesOf(rule).map(({ name, at }) => (rule.encoding.x === undefined ? [text(name), '', text(at)] : [text(name), text(at), ''])),
      ),
    ],
  }
}

const valuesOf = ({ data }: Layer) => data?.values ?? []

function bySeries(layer: Layer): Map<string, Readonly<Record<string, unknown>>[]> {
  const series = new Map<string, Readonly<Record<string, unknown>>[]>()
  for (const value of valuesOf(layer)) {
    const name = String(value.series ?? value.name)
    const known = series.get(name)
    if (known === undefined) series.set(name, [value])
    else known.push(value)
  }
  return series
}

type Point = Readonly<Record<string, unknown>>

/** Points of a cloud beyond which no other point of it is in both directions, from left to right. */
function outermost(points: readonly Point[]): readonly Point[] {
  const at = (point: Point, axis: 'x' | 'y') => point[axis] as number
  const right = [...points].sort((a, b) => at(b, 'x') - at(a, 'x') || at(b, 'y') - at(a, 'y'))
  let highest = Number.NEGATIVE_INFINITY
  const found: Point[] = []
  for (const point of right)
    if (at(point, 'y') > highest) {
      highest = at(point, 'y')
      found.unshift(point)
    }
  return found
}

function thinned<T>(points: readonly T[]): readonly T[] {
  const every = Math.max(1, Math.ceil((points.length - 1) / (MAX_POINTS - 1)))
  return points.filter((_, i) => i % every === 0 || i === points.length - 1)
}

/** The same numbers with a column for each group of bars, or for each of several lines over the same points. */
export function withColumns(table: ChartTable): ChartTable {
  const [first, ...titles] = table.head
  return (first === 'what' ? barColumns(table, titles[0] as string) : lineColumns(table, titles as [string, string])) ?? table
}

/** Bars by name and group; each has its label behind its number. */
function barColumns({ rows }: ChartTable, value: string): ChartTable | undefined {
  const groups = [...new Set(rows.map(([, , , group]) => group as string))]
  const names = [...new Set(rows.map(([name]) => name as string))]
  if (groups.length < 2 || names.some((name) => rows.filter((row) => row[0] === name).length !== groups.length)) return undefined
  const cell = (name: string, group: string) => {
    const [, to, label] = rows.find((row) => row[0] === name && row[3] === group) ?? []
    return to === undefined ? undefined : `${to}${label === '' ? '' : ` (${label})`}`
  }
  const cells = names.map((name) => [name, ...groups.map((group) => cell(name, group))])
  if (cells.some((row) => row.includes(undefined))) return undefined
  return { head: ['what', ...groups.map((group, i) => (i === 0 ? `${value}, ${group}` : group))], rows: cells as string[][] }
}

/** Lines over the points of the longest one; a level is the same at each. */
function lineColumns({ rows }: ChartTable, [x, y]: readonly [string, string]): ChartTable | undefined {
  const lines = new Map<string, Map<string, string>>()
  for (const [name, at, value] of rows as readonly [string, string, string][]) {
    const line = lines.get(name) ?? new Map<string, string>()
    if (value === '' || line.has(at)) return undefined
    lines.set(name, line.set(at, value))
  }
  const longest = [...lines.values()].reduce((best, line) => (line.size > best.size ? line : best), new Map<string, string>())
  const level = (line: ReadonlyMap<string, string>) => line.get('')
  const isCovered = (line: ReadonlyMap<string, string>) => level(line) !== undefined || [...line.keys()].every((at) => longest.has(at))
  if (lines.size < 2 || longest.size < 2 || ![...lines.values()].every(isCovered)) return undefined
  const unit = / \[.*\]$/.exec(y)?.[0] ?? ''
  return {
    head: [x, ...[...lines.keys()].map((name) => `${name}${unit}`)],
    rows: [...longest.keys()].map((at) => [at, ...[...lines.values()].map((line) => level(line) ?? line.get(at) ?? '')]),
  }
}
