import type { Chart } from './chart.js'
import { type Axis, type ChartText, domainOf, encode, framed, PALETTE, type Rule, rulesOf } from './specification.js'

/** One horizontal bar. */
export interface Bar {
  readonly name: string
  /** Where the bar ends. */
  readonly to: number
  /** Where it starts. Default 0. */
  readonly from?: number
  /** The group it belongs to, shown by colour and named in the legend and label. */
  readonly group?: string
  /** Text at the end of the bar; default the number. */
  readonly label?: string
}

/** Horizontal bars in the order given, each with its value as text: reserves, remedies, a tornado of sensitivities. */
export function barChart(
  chart: ChartText & { readonly value: Axis; readonly bars: readonly Bar[]; readonly rules?: readonly Rule[] },
): Chart {
  const { value, bars, rules = [] } = chart
  const groups = [...new Set(bars.map(({ group }) => group ?? ''))]
  const values = bars.map(({ name, from = 0, to, group = '', label }) => ({
    name,
    from,
    to,
    series: group,
    label: label ?? String(Number(to.toPrecision(3))),
  }))
  const category = { field: 'name', type: 'nominal', title: null, sort: null, axis: { labelLimit: 260 } }
  const base = { data: { values } }
  const color = groups.length > 1 ? domainOf(groups) : { color: { value: PALETTE[0] } }
  const none: Axis = { title: '', unit: '1' }
  return framed(chart, {
    height: { step: 20 },
    layer: [
      { ...base, mark: { type: 'bar' }, encoding: { y: category, x: encode('from', value), x2: { field: 'to' }, ...color } },
      {
        ...base,
        mark: { type: 'text', align: 'left', dx: 4 },
        encoding: { y: category, x: encode('to', value), text: { field: 'label' } },
      },
      ...rulesOf(
        rules.map((rule) => ({ ...rule, axis: 'x' as const })),
        value,
        none,
      ),
    ],
  })
}
