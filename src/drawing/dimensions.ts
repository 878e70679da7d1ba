import { dimensionHead } from './arrows.js'
import { textWidth } from './font.js'
import type { Point } from './geometry.js'
import { type Item, SMALL, textAt } from './items.js'

/** A dimension in units of the page, along one axis of it. */
export interface Dimension {
  readonly from: Point
  readonly to: Point
  readonly side: 'above' | 'below' | 'left' | 'right'
  readonly text: string
}

/** Distance of one dimension line from the next. */
export const BAND = 17
const HEAD = 7
/** Arrows are outside where they would meet. */
const OUTSIDE_ARROWS_BELOW = 22
const EXTENSION_GAP = 2
const EXTENSION_OVERSHOOT = 4
/** Letters are this far from their dimension line. */
const TEXT_GAP = 3

const acrossPage = ({ side }: Dimension) => side === 'above' || side === 'below'

/** Extent of a dimension along its axis: its ends, arrows and text. Downward is backward for turned text. */
interface Span {
  readonly low: number
  readonly high: number
  readonly outside: boolean
  readonly narrow: boolean
}

/** What a dimension takes along its axis. */
export function spanOf(dimension: Dimension): Span {
  const { from, to, text } = dimension
  const axis = acrossPage(dimension) ? 0 : 1
  const [low, high] = [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])]
  const width = textWidth(text, SMALL)
  const narrow = high - low < OUTSIDE_ARROWS_BELOW
  const outside = narrow || width + 4 > high - low
  const arrows = narrow ? 2 * HEAD : 0
  const more = outside ? TEXT_GAP + width + 2 : 0
  return axis === 0
    ? { low: low - arrows, high: high + arrows + more, outside, narrow }
    : { low: low - arrows - more, high: high + arrows, outside, narrow }
}

/** Bands of the dimensions of one side: the smallest nearest the part, none on another in the same band. */
export function bandsOf(dimensions: readonly Dimension[]): readonly number[] {
  const size = ({ from, to }: Dimension) => Math.abs(from[0] - to[0]) + Math.abs(from[1] - to[1])
  const order = dimensions.map((_, i) => i).sort((a, b) => size(dimensions[a]!) - size(dimensions[b]!) || a - b)
  const bands: { low: number; high: number }[][] = []
  const found: number[] = []
  // A dimension outside another must not have its extension lines through the text of that one: it starts no nearer than what it spans.
  for (const i of order) {
    const { low, high } = spanOf(dimensions[i]!)
    let band = bands.findIndex((taken) => taken.every((other) => high + 2 <= other.low || low >= other.high + 2))
    const within = bands.findLastIndex((taken) => taken.some((other) => high > other.low && low < other.high))
    if (band < 0 || band < within) band = within + 1
    bands[band] ??= []
    bands[band]!.push({ low, high })
    found[i] = band
  }
  return found
}

/** A dimension drawn in its band. `edge` is the border of the part on its side. */
export function dimensionItems(dimension: Dimension, band: number, edge: number): readonly Item[] {
  const { side, from, to, text } = dimension
  const outward = side === 'below' || side === 'right' ? 1 : -1
  const at = edge + outward * BAND * (band + 1)
  const axis = acrossPage(dimension) ? 0 : 1
  const { outside, narrow } = spanOf(dimension)
  const [a, b] = from[axis] <= to[axis] ? [from, to] : [to, from]
  const [low, high] = [a[axis], b[axis]]
  const point = (along: number, off: number): Point => (axis === 0 ? [along, off] : [off, along])
  const extension = (end: Point): readonly [Point, Point] => {
    const start = end[1 - axis]!
    const away = at >= start ? 1 : -1
    return [point(end[axis], start + away * EXTENSION_GAP), point(end[axis], at + away * EXTENSION_OVERSHOOT)]
  }
  const width = textWidth(text, SMALL)
  const arrows = narrow ? 2 * HEAD : 0
  const tail = outside ? TEXT_GAP + width : 0
  const [first, last] = axis === 0 ? [low - arrows, high + arrows + tail] : [low - arrows - tail, high + arrows]
  const inward = narrow ? -1 : 1
  const middle = outside ? (axis === 0 ? high + arrows + TEXT_GAP + width / 2 : low - arrows - TEXT_GAP - width / 2) : (low + high) / 2
  return [
    { kind: 'lines', line: 'fine', pieces: [extension(a), extension(b), [point(first, at), point(last, at)]] },
    dimensionHead(point(low, at), point(low + inward * HEAD, at)),
    dimensionHead(point(high, at), point(high - inward * HEAD, at)),
    textAt(axis === 0 ? [middle, at - TEXT_GAP] : [at - TEXT_GAP, middle], text, { anchor: 'middle', turned: axis === 1 }),
  ]
}
