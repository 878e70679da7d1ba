import type { Drawing, Group } from './drawing.js'
import type { Point } from './geometry.js'
import { DOT, type Item, type TextItem } from './items.js'
import { pathData } from './path.js'
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
  const shapes = runsOf(items.filter((item) => item.kind !== 'text')).map(runSvg)
  const texts = items.filter((item) => item.kind === 'text').map(textSvg)
  return `<!-- ${xml(name).replaceAll('--', '–')} -->\n<g>${[...shapes, ...texts].join('')}</g>`
}

const classes = (line: string, fill?: string): string => {
  const names = [...(line === 'none' ? [] : [line]), ...(fill === undefined ? [] : [`fill-${fill}`])]
  return names.length === 0 ? '' : ` class="${names.join(' ')}"`
}

type Shape = Exclude<Item, TextItem>

/** Appearance of an item; consecutive items of one appearance are one path. */
const lookOf = (item: Shape): string => (isDot(item) ? dotsOf(item) : classes(item.line, item.kind === 'lines' ? undefined : item.fill))
/** Ends of leaders and marks of plots: lines of no length with round ends. */
const isDot = (item: Shape): item is Extract<Shape, { kind: 'circle' }> =>
  item.kind === 'circle' && item.line === 'none' && item.fill !== undefined && item.radius === DOT
const dotsOf = ({ fill }: Extract<Shape, { kind: 'circle' }>): string => classes('dots', fill === 'solid' ? undefined : fill)

const INKS = ['ink', 'force', 'bad', 'move'] as const
/**
 * What is drawn with one ink and covers nothing: lines without a filling, heads of arrows, dots. Their order does not show, so each look of a run is one
 * path.
 */
function inkOf(item: Shape): string | undefined {
  const { line } = item
  const fill = item.kind === 'lines' ? undefined : item.fill
  if (fill !== undefined && (line !== 'none' || fill === 'tone' || fill === 'paper')) return undefined
  if (fill !== undefined) return fill === 'solid' ? 'ink' : fill
  return INKS.find((ink) => line.startsWith(ink)) ?? 'ink'
}

/** Items that are drawn together: those of one ink that cover nothing, or of one look. */
function runsOf(items: readonly Shape[]): readonly (readonly Shape[])[] {
  const runs: Shape[][] = []
  let kind = ''
  for (const item of items) {
    const ink = inkOf(item)
    const own = ink ?? `look${lookOf(item)}`
    const closes = ink === undefined && item.kind === 'path' && item.closed === true
    if (own === kind && !closes) runs.at(-1)?.push(item)
    else runs.push([item])
    kind = closes ? '' : own
  }
  return runs
}

const openLines = (item: Shape): readonly (readonly Point[])[] => {
  if (item.kind === 'lines') return item.pieces
  if (isDot(item)) return [[item.centre]]
  return item.kind === 'path' && item.closed !== true ? [item.points] : []
}

const FILLED = /fill-/
/** A run of items: lines, then what is filled, so that heads lie on their leaders. */
function runSvg(run: readonly Shape[]): string {
  const looks = new Set(run.map(lookOf))
  return [...looks]
    .sort((a, b) => Number(FILLED.test(a)) - Number(FILLED.test(b)))
    .map((look) => {
      const own = run.filter((item) => lookOf(item) === look)
      const open = own.flatMap(openLines)
      const closed = own.flatMap((item) => (item.kind === 'path' && item.closed === true ? [item.points] : []))
      // What is closed comes first: a line that goes on behind it would end it.
      const d = pathData([...closed.map((points) => ({ points, closed: true })), ...open.map((points) => ({ points, closed: false }))])
      return `${d === '' ? '' : `<path${look} d="${d}"/>`}${own.map((item) => (item.kind === 'circle' && !isDot(item) ? circleSvg(item, look) : '')).join('')}`
    })
    .join('')
}

const circleSvg = ({ centre: [x, y], radius }: Extract<Item, { kind: 'circle' }>, look: string): string =>
  `<circle${look} cx="${number(x)}" cy="${number(y)}" r="${number(radius)}"/>`

/** Text for XML. */
export const xml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** A number with two decimals, where lengths are measured; a place of a text with one. */
const number = (x: number): string => String(Number(x.toFixed(2)))
const short = (x: number): string => String(Number(x.toFixed(1)))

function textSvg({ at: [x, y], text, anchor, size, bold, ink, turned }: TextItem): string {
  const style = [...(bold ? ['strong'] : []), ...(ink === 'ink' ? [] : [`ink-${ink}`]), ...(anchor === 'start' ? [] : [anchor])]
  const attributes = [
    ...(style.length === 0 ? [] : [`class="${style.join(' ')}"`]),
    ...(size === 11 ? [] : [`font-size="${size}"`]),
    turned ? `transform="translate(${short(x)},${short(y)})rotate(-90)"` : `x="${short(x)}" y="${short(y)}"`,
  ]
  return `<text ${attributes.join(' ')}>${xml(text)}</text>`
}
