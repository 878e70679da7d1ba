import type { Chart } from './chart.js'
import { type Axis, type ChartText, domainOf, encode, framed, NEUTRAL, type Rule, rulesOf, type Series, SHAPES } from './specification.js'

/** Marks without lines, each series with its own shape. */
export function pointChart(
  chart: ChartText & {
    readonly x: Axis
    readonly y: Axis
    readonly series: readonly Series[]
    readonly lines?: readonly Series[]
    readonly rules?: readonly Rule[]
  },
): Chart {
  const { x, y, series, lines = [], rules = [] } = chart
  const names = series.map(({ name }) => name)
  const values = series.flatMap(({ name, points }) => points.map(([px, py]) => ({ series: name, x: px, y: py })))
  const marks = {
    data: { values },
    mark: { type: 'point', filled: true, size: 40, opacity: 0.8 },
    encoding: {
      x: encode('x', x),
      y: encode('y', y),
      ...domainOf(names),
      shape: {
        field: 'series',
        type: 'nominal',
        title: null,
        sort: null,
        scale: { domain: names, range: names.map((_, i) => SHAPES[i % SHAPES.length]) },
      },
    },
  }
  const guides = lines.map(({ name, points }) => ({
    data: { values: points.map(([px, py], i) => ({ x: px, y: py, i, name })) },
    mark: { type: 'line', color: NEUTRAL, strokeWidth: 1.5, strokeDash: [6, 3] },
    encoding: { x: encode('x', x), y: encode('y', y), order: { field: 'i' }, tooltip: { field: 'name' } },
  }))
  return framed(chart, { layer: [...guides, marks, ...rulesOf(rules, x, y)] })
}
