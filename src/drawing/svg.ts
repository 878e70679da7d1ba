import type { Drawing, Group } from './drawing.js'
import type { Point } from './geometry.js'
import type { Item, TextItem } from './items.js'
import { DRAWING_STYLE } from './style.js'
import { PAGE_WIDTH } from './view-layout.js'

/** Options of a drawing as SVG. */
export interface SvgOptions {
  /** Whether the style is part of it, as a file needs it, or of the page (`DRAWING_STYLE`). Default: file. */
  readonly style?: 'file' | 'page'
}

/** A drawing as SVG: one image with title and description, no script, nothing from outside. */
export function drawingSvg({ id, title, description, groups, height }: Drawing, { style = 'file' }: SvgOptions = {}): string {
  const own = style === 'file' ? ` xmlns="http://www.w3.org/2000/svg"` : ''
  return `<svg${own} class="drawing" viewBox="0 0 ${PAGE_WIDTH} ${height}" role="img" aria-labelledby="${id}-picture-title" aria-describedby="${id}-picture-desc">
<title id="${id}-picture-title">${xml(title)}</title>
<desc id="${id}-picture-desc">${xml(description)}</desc>
${style === 'file' ? `<style>${DRAWING_STYLE}</style>\n` : ''}${groups.map(groupSvg).join('\n')}
</svg>
`
}

const groupSvg = ({ name, items }: Group): string => {
  // Texts come last, so that their halo interrupts every line behind them.
  const order = [...items.filter(({ kind }) => kind !== 'text'), ...items.filter(({ kind }) => kind === 'text')]
  return `<!-- ${xml(name).replaceAll('--', '–')} -->\n<g>${order.map(itemSvg).join('')}</g>`
}

/** Text for XML. */
export const xml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** A number with two decimals, where lengths are measured; a point of a line with one, a fortieth of a millimetre on paper. */
const number = (x: number): string => String(Number(x.toFixed(2)))
const short = (x: number): string => String(Number(x.toFixed(1)))
const point = ([x, y]: Point): string => `${short(x)},${short(y)}`

const classes = (line: string, fill?: string): string => {
  const names = [...(line === 'none' ? [] : [line]), ...(fill === undefined ? [] : [`fill-${fill}`])]
  return names.length === 0 ? '' : ` class="${names.join(' ')}"`
}

function itemSvg(item: Item): string {
  switch (item.kind) {
    case 'circle':
      return `<circle${classes(item.line, item.fill)} cx="${number(item.centre[0])}" cy="${number(item.centre[1])}" r="${number(item.radius)}"/>`
    case 'lines':
      return item.pieces.length === 0
        ? ''
        : `<path${classes(item.line)} d="${item.pieces.map(([a, b]) => `M${point(a)}L${point(b)}`).join('')}"/>`
    case 'path':
      return `<path${classes(item.line, item.fill)} d="M${item.points.map(point).join('L')}${item.closed === true ? 'Z' : ''}"/>`
    case 'text':
      return textSvg(item)
  }
}

function textSvg({ at: [x, y], text, anchor, size, bold, ink, turned }: TextItem): string {
  const style = [...(bold ? ['strong'] : []), ...(ink === 'ink' ? [] : [`ink-${ink}`])]
  const attributes = [
    ...(style.length === 0 ? [] : [`class="${style.join(' ')}"`]),
    ...(anchor === 'start' ? [] : [`text-anchor="${anchor}"`]),
    ...(size === 11 ? [] : [`font-size="${size}"`]),
    turned ? `transform="translate(${number(x)},${number(y)})rotate(-90)"` : `x="${number(x)}" y="${number(y)}"`,
  ]
  return `<text ${attributes.join(' ')}>${xml(text)}</text>`
}
