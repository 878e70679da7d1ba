import type { Drawing, Group } from './drawing.js'
import { textWidth } from './font.js'
import { boxOf, type Point } from './geometry.js'
import type { Item } from './items.js'
import { xml } from './svg.js'
import { atFullSize, TITLE_UNIT, TITLE_WIDTH, titleBlockItems } from './title-block.js'
import { MARGIN } from './view-layout.js'

const BORDER = 8
const CHECK = 50
const HEAD = 20
const TEXT = 3.5
const ORDER = `must measure ${CHECK} mm: print without scaling`

const OUTLINES = ['thick', 'thin', 'hidden', 'axis', 'other']

/**
 * The flat views of a drawing as SVG at full size, in millimetres, to be printed without scaling and used as a template. A bar of 50 mm shows whether the
 * printer kept the size, and the title block follows where the drawing has one. Returns `undefined` for a drawing without a flat view.
 */
export function toTemplate({ id, title, groups, titleBlock }: Pick<Drawing, 'id' | 'title' | 'groups' | 'titleBlock'>): string | undefined {
  const views = groups.filter(({ template, place }) => template === true && place !== undefined)
  if (views.length === 0) return undefined
  let y = HEAD + BORDER
  let width = BORDER + Math.max(CHECK + 3 + textWidth(ORDER, TEXT), textWidth(title, TEXT)) + BORDER
  const parts = views.map((view) => {
    const { svg, wide, tall } = flat(view, y)
    y += tall + BORDER
    width = Math.max(width, wide + 2 * BORDER)
    return svg
  })
  if (titleBlock !== undefined) {
    const { items, height } = titleBlockItems(atFullSize(titleBlock), 0)
    parts.push(words(items, y))
    y += height * TITLE_UNIT + BORDER
    width = Math.max(width, TITLE_WIDTH + 2 * BORDER)
  }
  const number = (x: number) => String(Number(x.toFixed(3)))
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(y)}mm" viewBox="0 0 ${number(width)} ${number(y)}" role="img" aria-labelledby="${id}-template-title">
<title id="${id}-template-title">${xml(title)}: template at full size</title>
<g fill="none" stroke="#000" stroke-width="0.25" font-family="system-ui, sans-serif" font-size="${TEXT}">
<path class="check" d="M${BORDER},${HEAD - 6}h${CHECK}m0,-2v4m${-CHECK},-4v4"/>
<text fill="#000" stroke="none" x="${BORDER}" y="${HEAD - 10}">${xml(title)}</text>
<text fill="#000" stroke="none" x="${BORDER + CHECK + 3}" y="${HEAD - 5}">${ORDER}</text>
${parts.join('\n')}
</g>
</svg>
`
}

/** A title block as lines and texts, its upper edge at a height. */
function words(items: readonly Item[], top: number): string {
  const to = ([x, y]: Point): Point => [(x - MARGIN) * TITLE_UNIT + BORDER, y * TITLE_UNIT + top]
  return items
    .map((item) => {
      if (item.kind !== 'text') return outline(item, to, 1 / TITLE_UNIT)
      const [x, y] = to(item.at).map((size) => Number(size.toFixed(3)))
      return `<text fill="#000" stroke="none" x="${x}" y="${y}">${xml(item.text)}</text>`
    })
    .join('\n')
}

function flat({ items, place }: Group, top: number) {
  const { scale } = place as NonNullable<Group['place']>
  const lines = items.filter((item) => item.kind !== 'text' && OUTLINES.includes(item.line))
  const box = boxOf(lines.flatMap(reach))
  const to = ([x, y]: Point): Point => [(x - box.left) / scale + BORDER, (y - box.bottom) / scale + top]
  return {
    svg: lines.map((item) => outline(item, to, scale)).join(''),
    wide: (box.right - box.left) / scale,
    tall: (box.top - box.bottom) / scale,
  }
}

function reach(item: Item): readonly Point[] {
  if (item.kind === 'path') return item.points
  if (item.kind === 'lines') return item.pieces.flat()
  if (item.kind === 'text') return []
  const [[x, y], r] = [item.centre, item.radius]
  return [
    [x - r, y - r],
    [x + r, y + r],
  ]
}

function outline(item: Item, to: (point: Point) => Point, scale: number): string {
  const write = (point: Point) =>
    to(point)
      .map((x) => Number(x.toFixed(3)))
      .join(',')
  const dashes = item.kind !== 'text' && item.line === 'thick' ? '' : ' stroke-width="0.13"'
  if (item.kind === 'circle') {
    const [x, y] = to(item.centre)
    return `<circle cx="${Number(x.toFixed(3))}" cy="${Number(y.toFixed(3))}" r="${Number((item.radius / scale).toFixed(3))}"${dashes}/>`
  }
  if (item.kind === 'lines') return `<path d="${item.pieces.map(([a, b]) => `M${write(a)}L${write(b)}`).join('')}"${dashes}/>`
  if (item.kind === 'path') return `<path d="M${item.points.map(write).join('L')}${item.closed === true ? 'Z' : ''}"${dashes}/>`
  return ''
}
