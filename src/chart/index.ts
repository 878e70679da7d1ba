/**
 * Charts as Vega-Lite specifications: plain JSON that notebooks show natively and that the report renders to SVG.
 *
 * Colours are the eight of Okabe and Ito, "Color Universal Design" (2008), chosen so that colour-blind readers can distinguish them; line
 * dashes, marker shapes and direct text repeat what colour says.
 *
 * @module
 */

/** Colours of Okabe and Ito 2008 in the order charts use them (yellow is left out: too pale on white for lines). */
export const PALETTE = ['#0072B2', '#D55E00', '#009E73', '#CC79A7', '#E69F00', '#56B4E9', '#000000'] as const

const DASHES = [
  [1, 0],
  [8, 3],
  [2, 2],
  [8, 3, 2, 3],
  [5, 2],
  [12, 4],
  [1, 3],
] as const
const SHAPES = ['circle', 'square', 'triangle-up', 'diamond', 'cross', 'triangle-down', 'triangle-right'] as const
const NEUTRAL = '#595959'

/** A Vega-Lite specification; notebooks display it, `JSON.stringify` gives the plain specification. */
export interface Chart {
  readonly $schema: string
  readonly title: string
  readonly description: string
  readonly [field: string]: unknown
}

/** One axis. */
export interface Axis {
  readonly title: string
  /** The unit of the numbers, such as `mm`; `1` for none. */
  readonly unit: string
  readonly scale?: 'linear' | 'log'
  /** Whether the axis must show zero. Default false. */
  readonly zero?: boolean
}

/** Points drawn as one line or one set of marks, in the axes' units. */
export interface Series {
  readonly name: string
  readonly points: readonly (readonly [x: number, y: number])[]
}

/** A shaded range around a series. */
export interface Band {
  readonly name: string
  readonly points: readonly (readonly [x: number, low: number, high: number])[]
}

/** A labelled straight line across the chart, such as a limit. */
export interface Rule {
  readonly name: string
  /** Position on the y axis (or on the x axis if `axis` is `x`). */
  readonly at: number
  readonly axis?: 'x' | 'y'
}

/** What every chart carries. */
export interface ChartText {
  readonly title: string
  /** One sentence that says what the picture shows, for readers who cannot see it. */
  readonly description: string
}

const axisTitle = ({ title, unit }: Axis) => (unit === '1' ? title : `${title} [${unit}]`)
const encode = (field: string, axis: Axis) => ({
  field,
  type: 'quantitative',
  title: axisTitle(axis),
  scale: { type: axis.scale ?? 'linear', zero: axis.zero ?? false, nice: false },
})

function framed({ title, description }: ChartText, rest: Record<string, unknown>): Chart {
  const spec = { $schema: 'https://vega.github.io/schema/vega-lite/v6.json', title, description, width: 520, height: 300, ...rest }
  return Object.defineProperty(spec, Symbol.for('Jupyter.display'), {
    value: () => ({
      'application/vnd.vegalite.v6+json': spec,
      'application/vnd.vegalite.v5+json': spec,
      'text/plain': `${title}: ${description}`,
    }),
    enumerable: false,
  })
}

const rulesOf = (rules: readonly Rule[], x: Axis, y: Axis) =>
  rules.flatMap((rule) => {
    const channel = rule.axis ?? 'y'
    const encoding = { [channel]: { ...encode('at', channel === 'x' ? x : y) } }
    const data = { values: [{ at: rule.at, name: rule.name }] }
    const label = channel === 'y' ? { align: 'left', x: 4, dy: -6 } : { align: 'left', y: 8, dx: 4 }
    return [
      { data, mark: { type: 'rule', color: NEUTRAL, strokeDash: [4, 4] }, encoding },
      { data, mark: { type: 'text', color: NEUTRAL, ...label }, encoding: { ...encoding, text: { field: 'name' } } },
    ]
  })

const domainOf = (names: readonly string[]) => ({
  color: {
    field: 'series',
    type: 'nominal',
    title: null,
    sort: null,
    scale: { domain: names, range: names.map((_, i) => PALETTE[i % PALETTE.length]) },
  },
})

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
