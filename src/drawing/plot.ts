import type { Block } from './figure.js'
import { textWidth } from './font.js'
import { distance, type Point } from './geometry.js'
import { DOT, type Ink, type Item, type LineClass, SMALL, textAt } from './items.js'
import { columnHeight, columnWidth, type Label, placeLabels } from './labels.js'
import { plain, ticksOf } from './numbers.js'
import { MARGIN, PAGE_WIDTH } from './view-layout.js'

/** A curve or a set of marks of a plot, labelled at its side. */
export interface Curve {
  readonly points: readonly Point[]
  readonly line?: LineClass
  readonly mark?: 'dot' | 'cross'
  /** Label beside the plot; its leader ends at `labelAt`, or at the last point. */
  readonly label?: string | readonly string[]
  readonly labelAt?: Point
  readonly ink?: Ink
}

/** A plot of curves over two axes. */
export interface Plot {
  readonly x: { readonly title: string; readonly from?: number; readonly to?: number }
  readonly y: { readonly title: string; readonly from?: number; readonly to?: number }
  readonly curves: readonly Curve[]
  readonly height?: number
}

const MARGIN_ABOVE = 18
const MARGIN_BELOW = 34
const GAP = 14
const DEFAULT_HEIGHT = 150
/** Of an axis from 0 with room for two ticks, the 0 may be the only one. */
const MIN_TICKS = 3

const range = (values: readonly number[], from?: number, to?: number) => {
  const [low, high] = [from ?? Math.min(...values), to ?? Math.max(...values)]
  return high > low ? { low, high } : { low: low - 0.5, high: low + 0.5 }
}

/** A plot below a height of the page, its labels in a column at the right. */
export function plotBlock({ x, y, curves, height = DEFAULT_HEIGHT }: Plot, top: number): Block {
  const points = curves.flatMap((curve) => curve.points)
  const xs = range(
    points.map(([at]) => at),
    x.from,
    x.to,
  )
  const ys = range(
    points.map(([, at]) => at),
    y.from,
    y.to,
  )
  const yTicks = ticksOf(ys.low, ys.high, Math.max(MIN_TICKS, Math.floor(height / 26)))
  const left = MARGIN + 6 + Math.max(...yTicks.map((tick) => textWidth(plain(tick), SMALL)))
  const named = curves.filter(({ label }) => label !== undefined)
  const bare = named.map(labelOf)
  const right = PAGE_WIDTH - MARGIN - (named.length === 0 ? 12 : columnWidth(bare) + GAP)
  const tall = Math.max(height, columnHeight(bare))
  const [base, upper] = [top + MARGIN_ABOVE + tall, top + MARGIN_ABOVE]
  const to = ([px, py]: Point): Point => [
    left + ((px - xs.low) / (xs.high - xs.low)) * (right - left),
    base - ((py - ys.low) / (ys.high - ys.low)) * tall,
  ]
  const labels = named.map((curve): Label => ({ ...labelOf(curve), anchor: to(curve.labelAt ?? curve.points.at(-1)!) }))
  const widest = Math.max(...ticksOf(xs.low, xs.high, 6).map((tick) => textWidth(plain(tick), SMALL)))
  const xTicks = ticksOf(xs.low, xs.high, Math.max(2, Math.min(6, Math.floor((right - left) / (widest + 10)))))
  const items: Item[] = [
    ...axes(
      { left, right, base, upper },
      xTicks.map((tick) => ({ tick, at: to([tick, ys.low])[0] })),
      yTicks.map((tick) => ({ tick, at: to([xs.low, tick])[1] })),
    ),
    textAt([MARGIN, top + 10], y.title),
    textAt([right, base + 30], x.title, { anchor: 'end' }),
    ...curves.flatMap((curve) => curveItems(curve, to)),
    ...placeLabels(labels, 'right', { x: right + GAP, top: upper, bottom: base, legend: [] }),
  ]
  return { items, height: MARGIN_ABOVE + tall + MARGIN_BELOW }
}

interface Tick {
  readonly tick: number
  readonly at: number
}

/** Both axes with their ticks and the numbers beside them. */
function axes(
  { left, right, base, upper }: { readonly left: number; readonly right: number; readonly base: number; readonly upper: number },
  xTicks: readonly Tick[],
  yTicks: readonly Tick[],
): Item[] {
  const corners: Point[] = [
    [left, upper],
    [left, base],
    [right, base],
  ]
  const across = yTicks.map(({ at }): [Point, Point] => [
    [left - 4, at],
    [left, at],
  ])
  const upright = xTicks.map(({ at }): [Point, Point] => [
    [at, base],
    [at, base + 4],
  ])
  return [
    { kind: 'path', line: 'thin', points: corners },
    { kind: 'lines', line: 'fine', pieces: across },
    { kind: 'lines', line: 'fine', pieces: upright },
    ...yTicks.map(({ tick, at }) => textAt([left - 6, at + 4], plain(tick), { anchor: 'end' })),
    ...xTicks.map(({ tick, at }) => textAt([at, base + 15], plain(tick), { anchor: 'middle' })),
  ]
}

const labelOf = ({ label = [], ink = 'ink' }: Curve): Label => ({
  anchor: [0, 0],
  lines: typeof label === 'string' ? [label] : label,
  ink,
  bold: false,
  end: 'dot',
})

function curveItems({ points, line = 'thick', mark }: Curve, to: (point: Point) => Point): readonly Item[] {
  if (mark === undefined) return [{ kind: 'path', line, points: points.map(to) }]
  const at = apart(points.map(to))
  if (mark === 'cross')
    return [
      {
        kind: 'lines',
        line,
        pieces: at.flatMap(([x, y]) => [
          [
            [x - 2.5, y - 2.5],
            [x + 2.5, y + 2.5],
          ] as const,
          [
            [x - 2.5, y + 2.5],
            [x + 2.5, y - 2.5],
          ] as const,
        ]),
      },
    ]
  const fill = line === 'force' || line === 'bad' || line === 'move' ? line : 'solid'
  return at.map((centre) => ({ kind: 'circle', line: 'none', centre, radius: DOT, fill }))
}

/** Marks nearer to one before them than this would lie on it. */
const MIN_MARK_DISTANCE = 3

/** Points without those that lie on another one. */
function apart(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = []
  for (const point of points) if (kept.every((other) => distance(other, point) >= MIN_MARK_DISTANCE)) kept.push(point)
  return kept
}
