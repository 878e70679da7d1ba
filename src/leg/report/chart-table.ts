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
        [...bySeries(layer)].flatMap(([name, points]) => thinned(points).map((p) => [name, text(p.x), text(p.y)])),
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

function thinned<T>(points: readonly T[]): readonly T[] {
  const every = Math.max(1, Math.ceil((points.length - 1) / (MAX_POINTS - 1)))
  return points.filter((_, i) => i % every === 0 || i === points.length - 1)
}
