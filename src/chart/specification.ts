import type { Chart } from './chart.js'
import { notebookSvg } from './svg.js'

/** Colours of Okabe and Ito 2008 in the order charts use them (yellow is left out: too pale on white for lines). */
export const PALETTE = ['#0072B2', '#D55E00', '#009E73', '#CC79A7', '#E69F00', '#56B4E9', '#000000'] as const

/** Line dashes in the order of the colours. */
export const DASHES = [
  [1, 0],
  [8, 3],
  [2, 2],
  [8, 3, 2, 3],
  [5, 2],
  [12, 4],
  [1, 3],
] as const
/** Marker shapes in the order of the colours. */
export const SHAPES = ['circle', 'square', 'triangle-up', 'diamond', 'cross', 'triangle-down', 'triangle-right'] as const
/** The colour of guides and limits. */
export const NEUTRAL = '#595959'

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

/** The title of an axis with its unit. */
export const axisTitle = ({ title, unit }: Axis) => (unit === '1' ? title : `${title} [${unit}]`)
/** One channel of numbers. */
export const encode = (field: string, axis: Axis) => ({
  field,
  type: 'quantitative',
  title: axisTitle(axis),
  scale: { type: axis.scale ?? 'linear', zero: axis.zero ?? false, nice: false },
})

/** A chart with what every chart has. */
export function framed({ title, description }: ChartText, rest: Record<string, unknown>): Chart {
  const spec = { $schema: 'https://vega.github.io/schema/vega-lite/v6.json', title, description, width: 520, height: 300, ...rest }
  return Object.defineProperty(spec, Symbol.for('Jupyter.display'), {
    value: async () => {
      const svg = await notebookSvg(spec)
      return {
        // The newest type that every notebook knows; those that know a newer one take it too.
        'application/vnd.vegalite.v5+json': spec,
        // Static viewers clean drawings until nothing is left of them; a picture they show.
        ...(svg === undefined ? {} : { 'image/svg+xml': svg, 'text/markdown': picture(svg, description) }),
        'text/plain': `${title}: ${description}`,
      }
    },
    enumerable: false,
  })
}

/** A drawing as a picture within Markdown. */
function picture(svg: string, description: string): string {
  const bytes = Array.from(new TextEncoder().encode(svg), (byte) => String.fromCharCode(byte)).join('')
  return `![${description.replaceAll(/[[\]]/g, '')}](data:image/svg+xml;base64,${btoa(bytes)})`
}

/** Layers of labelled straight lines. */
export const rulesOf = (rules: readonly Rule[], x: Axis, y: Axis) =>
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

/** The colours of named series. */
export const domainOf = (names: readonly string[]) => ({
  color: {
    field: 'series',
    type: 'nominal',
    title: null,
    sort: null,
    scale: { domain: names, range: names.map((_, i) => PALETTE[i % PALETTE.length]) },
  },
})
