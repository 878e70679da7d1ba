import type { Drawing, Group, TitleBlock, TitleCell } from './drawing.js'
import { wrapped } from './font.js'
import type { Point } from './geometry.js'
import { type Item, LINE, SMALL, textAt } from './items.js'
import { scaleText, UNITS } from './numbers.js'
import { MARGIN, PAGE_WIDTH } from './view-layout.js'

const WIDTH = PAGE_WIDTH - 2 * MARGIN
const INSIDE = 4
/** Height of a row to write on: 7 mm on paper. */
const BLANK = 28

/** Scales of the views of a drawing, as they are written; the largest first. */
export const scalesOf = (groups: readonly Group[]): readonly string[] =>
  [...new Set(groups.flatMap(({ place }) => (place === undefined ? [] : [place.scale / UNITS])))].sort((a, b) => b - a).map(scaleText)

/** Name of the cell that holds the scales of the page. */
export const SCALE = 'Scale'

/** The title block of a file in which every view has its full size. */
export const atFullSize = ({ rows }: TitleBlock): TitleBlock => ({
  rows: rows.map((cells) => cells.map(([name, value]): TitleCell => [name, name === SCALE ? scaleText(1) : value])),
})

/** A title block below a height of the page, as wide as its views. */
export function titleBlockItems({ rows }: TitleBlock, top: number): { readonly items: readonly Item[]; readonly height: number } {
  const texts: Item[] = []
  const lines: (readonly [Point, Point])[] = []
  let y = top
  rows.forEach((cells, row) => {
    const width = WIDTH / cells.length
    const written = cells.map(([name, value]) => wrapped(`${name}: ${value}`.trimEnd(), width - 2 * INSIDE, SMALL))
    const blank = cells.some(([, value]) => value === '')
    const height = Math.max(blank ? BLANK : 0, Math.max(...written.map(({ length }) => length)) * LINE + INSIDE)
    written.forEach((cell, i) => {
      const x = MARGIN + i * width
      if (i > 0)
        lines.push([
          [x, y],
          [x, y + height],
        ])
      texts.push(...cell.map((text, k) => textAt([x + INSIDE, y + 12 + k * LINE], text)))
    })
    if (row > 0)
      lines.push([
        [MARGIN, y],
        [MARGIN + WIDTH, y],
      ])
    y += height
  })
  const frame: Item = {
    kind: 'path',
    line: 'thin',
    closed: true,
    points: [
      [MARGIN, top],
      [MARGIN + WIDTH, top],
      [MARGIN + WIDTH, y],
      [MARGIN, y],
    ],
  }
  return { items: [frame, { kind: 'lines', line: 'fine', pieces: lines }, ...texts], height: y - top }
}

/** Height of the letters of a title block at full size, mm, and millimetres in a unit of it. */
export const TITLE_TEXT = 3.5
export const TITLE_UNIT = TITLE_TEXT / SMALL
/** Width of a title block at full size, mm. */
export const TITLE_WIDTH = WIDTH * TITLE_UNIT

/** A drawing with its title block on the page, below everything else. */
export function withTitleBlock<D extends Drawing>(drawing: D): D {
  if (drawing.titleBlock === undefined) return drawing
  const top = drawing.height + 6
  const { items, height } = titleBlockItems(drawing.titleBlock, top)
  return { ...drawing, groups: [...drawing.groups, { name: 'title block', items }], height: Math.ceil(top + height + 6) }
}
