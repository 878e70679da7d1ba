import type { Chart } from './chart.js'
import {
  type Axis,
  type Band,
  type ChartText,
  DASHES,
  domainOf,
  encode,
  framed,
  PALETTE,
  type Rule,
  rulesOf,
  type Series,
} from './specification.js'

/** Lines over a common axis. Points are joined in the order given, so loops and paths stay what they are. */
export function lineChart(
  chart: ChartText & {
    readonly x: Axis
    readonly y: Axis
    readonly series: readonly Series[]
    readonly bands?: readonly Band[]
    readonly rules?: readonly Rule[]
  },
): Chart {
  const { x, y, series, bands = [], rules = [] } = chart
  const names = series.map(({ name }) => name)
  const values = series.flatMap(({ name, points }) => points.map(([px, py], i) => ({ series: name, i, x: px, y: py })))
  const shaded = bands.map(({ name, points }) => ({
    data: { values: points.map(([px, low, high]) => ({ x: px, low, high, name })) },
    mark: { type: 'area', opacity: 0.18, color: PALETTE[Math.max(0, names.indexOf(name)) % PALETTE.length] },
    encoding: { x: encode('x', x), y: encode('low', y), y2: { field: 'high' } },
  }))
  const lines = {
    data: { values },
    mark: { type: 'line', strokeWidth: 2 },
    encoding: {
      x: encode('x', x),
      y: encode('y', y),
      order: { field: 'i' },
      ...domainOf(names),
      strokeDash: {
        field: 'series',
        type: 'nominal',
        title: null,
        sort: null,
        scale: { domain: names, range: names.map((_, i) => DASHES[i % DASHES.length]) },
      },
    },
  }
  return framed(chart, { layer: [...shaded, lines, ...rulesOf(rules, x, y)] })
}
