import { BAND, bandsOf, type Dimension, dimensionItems, spanOf } from './dimensions.js'
import { textWidth } from './font.js'
import type { Point } from './geometry.js'
import { type Item, SMALL, textAt } from './items.js'
import { columnHeight, columnWidth, type Label, placeLabels } from './labels.js'
import { plain, roundBelow, SCALES, UNITS } from './numbers.js'
import type { Place, View } from './view.js'

/** Border of the page, and its width. */
export const MARGIN = 8
export const PAGE_WIDTH = 360
const INNER = PAGE_WIDTH - 2 * MARGIN
/** Between view and label column. */
const GAP = 16
const DEFAULT_HEIGHT = 320
/** Room for the text of the last dimension at the left, beyond its line. */
const TEXT = 13

/** A view on the page. */
export interface PlacedView {
  readonly items: readonly Item[]
  readonly height: number
  readonly place: Place
  /** Legend of a numbered view. */
  readonly legend: readonly string[]
}

const SIDES = ['above', 'below', 'left', 'right'] as const

/** Extent of a view at a scale, with the origin of the view at 0. */
function measured(view: View, scale: number) {
  const to = ([x, y]: Point): Point => [x * scale, -y * scale]
  const dimensions = view.dimensions.map((dimension): Dimension => ({ ...dimension, from: to(dimension.from), to: to(dimension.to) }))
  const on = (side: (typeof SIDES)[number]) => dimensions.filter((dimension) => dimension.side === side)
  const box = view.boxAt(scale)
  const upright = [...on('left'), ...on('right')].map(spanOf)
  const flat = [...on('above'), ...on('below')].map(spanOf)
  const top = Math.min(box.top, ...upright.map(({ low }) => low))
  const bottom = Math.max(box.bottom, ...upright.map(({ high }) => high))
  const count = (side: (typeof SIDES)[number]) => Math.max(0, ...bandsOf(on(side)).map((band) => band + 1))
  const labels = view.labels.map((label): Label & { side: 'left' | 'right' } => ({ ...label, anchor: to(label.anchor) }))
  const columns = { left: labels.filter(({ side }) => side === 'left'), right: labels.filter(({ side }) => side === 'right') }
  const content = {
    left: Math.min(box.left - (count('left') > 0 ? count('left') * BAND + TEXT : 0), ...flat.map(({ low }) => low)),
    right: Math.max(box.right + count('right') * BAND, ...flat.map(({ high }) => high)),
    top: top - count('above') * BAND - (count('above') > 0 ? 4 : 0),
    bottom: bottom + count('below') * BAND + (count('below') > 0 ? 5 : 0),
  }
  const widths = { left: columnWidth(columns.left), right: columnWidth(columns.right) }
  const room = (side: 'left' | 'right') => (columns[side].length === 0 ? 0 : widths[side] + GAP)
  return { on, box, top, bottom, columns, content, room, width: room('left') + content.right - content.left + room('right') }
}

/** The largest scale at which a view fits. */
export function scaleFor(view: View): number {
  if (view.options.scale !== undefined) return view.options.scale
  const height = view.options.height ?? DEFAULT_HEIGHT
  return (
    SCALES.find((scale) => {
      const { width, box } = measured(view, scale * UNITS)
      return width <= INNER && box.bottom - box.top <= height
    }) ?? SCALES[SCALES.length - 1]!
  )
}

/** Lays out a view at a scale, with its dimensions and labels, below a height of the page. */
export function placeView(view: View, y: number, scale: number): PlacedView {
  const units = scale * UNITS
  const { on, box, top, bottom, columns, content, room, width } = measured(view, units)
  const x = MARGIN + Math.max(0, (INNER - width) / 2) + room('left') - content.left
  const tallest = Math.max(columnHeight(columns.left), columnHeight(columns.right))
  const tall = Math.max(content.bottom - content.top, tallest)
  const down = y - content.top + Math.max(0, (tallest - (content.bottom - content.top)) / 2)
  const shift = (point: Point): Point => [point[0] + x, point[1] + down]
  const place: Place = { scale: units, to: ([mx, my]) => shift([mx * units, -my * units]) }
  const edges = { above: top + down, below: bottom + down, left: box.left + x, right: box.right + x }
  const dimensions = SIDES.flatMap((side) => {
    const own = on(side).map((dimension): Dimension => ({ ...dimension, from: shift(dimension.from), to: shift(dimension.to) }))
    const bands = bandsOf(own)
    return own.flatMap((dimension, i) => dimensionItems(dimension, bands[i]!, edges[side]))
  })
  const legend: string[] = []
  const labelled = (['left', 'right'] as const).flatMap((side) => {
    const own = columns[side].map((label) => ({ ...label, anchor: shift(label.anchor) }))
    const edge = side === 'left' ? content.left + x - GAP : content.right + x + GAP
    return placeLabels(own, side, { x: edge, top: y, bottom: y + tall, legend })
  })
  return { items: [...view.items(place), ...dimensions, ...labelled], height: tall, place, legend }
}

/** The bar that shows the scale of a view, that of its forces, and the unit of its numbers. */
export function scaleBar(y: number, unitsPerMillimetre: number, newtonPerUnit?: number): readonly Item[] {
  const length = roundBelow(90 / unitsPerMillimetre)
  const width = length * unitsPerMillimetre
  const half = MARGIN + width / 2
  const box = (from: number, to: number): Point[] => [
    [from, y - 2],
    [to, y - 2],
    [to, y + 2],
    [from, y + 2],
  ]
  const text = `${plain(length)} mm`
  const after = MARGIN + width + 5
  const items: Item[] = [
    { kind: 'path', line: 'thin', points: box(MARGIN, half), closed: true, fill: 'solid' },
    { kind: 'path', line: 'thin', points: box(half, MARGIN + width), closed: true, fill: 'paper' },
    textAt([after, y + 4], text),
    textAt([PAGE_WIDTH - MARGIN, y + 4], 'mm', { anchor: 'end' }),
  ]
  if (newtonPerUnit === undefined) return items
  const force = roundBelow(70 * newtonPerUnit)
  const start = after + textWidth(text, SMALL) + 14
  const end = start + force / newtonPerUnit
  return [
    ...items,
    {
      kind: 'path',
      line: 'force',
      points: [
        [start, y],
        [end, y],
      ],
    },
    textAt([end + 5, y + 4], `${plain(force)} N`, { ink: 'force' }),
  ]
}
