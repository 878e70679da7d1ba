import { type Block, captionOf, type Page, type Picture, type Piece, pictureTable, type TableOf, type Words } from './blocks.js'
import { inPage } from './page-svg.js'

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** Escapes text for attributes and for content. */
export const escaped = (text: string): string => text.replaceAll(/[&<>"']/g, (c) => ENTITIES[c] as string)
/** Escapes text for content. */
const shown = (text: string): string => text.replaceAll(/[&<>]/g, (c) => ENTITIES[c] as string)

/** Context of a block: the level of its headings, how much lower than usual they are, the heading above it, and whether the script of a report is there. */
interface RenderContext {
  readonly level: number
  readonly lower: 0 | 1
  readonly heading?: string
  readonly scripted: boolean
}

/** Blocks as HTML, with headings one level lower as an option. With the script of a report, what it makes from the texts is left out. */
export const htmlBlocks = (blocks: readonly Block[], lower: 0 | 1 = 0, scripted = false): string =>
  inside(blocks, { lower, level: 2 + lower, scripted })

/** A page as a part of another: its title is a heading there. */
export const htmlSection = (id: string, { title, blocks }: Page): string =>
  `<section aria-labelledby="${id}">\n<h2 id="${id}">${shown(title)}</h2>\n${htmlBlocks(blocks, 1)}\n</section>`

type BlockOf<K, B = Block> = B extends Block ? (K extends B['kind'] ? B : never) : never
type Renderer<K extends Block['kind']> = (block: BlockOf<K>, at: RenderContext) => string

const list = ({ kind, lines }: BlockOf<'points'>, { scripted }: RenderContext): string => {
  const [only] = lines
  if (scripted && lines.length === 1 && only !== undefined) return `<p>${inline(only, scripted)}`
  const tag = kind === 'points' ? 'ul' : 'ol'
  return `<${tag}>${lines.map((line) => `<li>${inline(line, scripted)}`).join('')}</${tag}>`
}

const RENDERERS: { readonly [K in Block['kind']]: Renderer<K> } = {
  heading: (block, { lower }) => {
    const own = block.level + lower
    return `<h${own}>${shown(block.text)}</h${own}>`
  },
  section: ({ id, title, blocks }, at) => {
    const { level, lower } = at
    const content = inside(blocks, { ...at, level: level + 1, heading: title })
    if (level > 2 + lower) return `\n<h${level}${UNNAMED.test(id) ? '' : ` id="${id}"`}>${shown(title)}</h${level}>${content}`
    return `<section id="${id}" aria-labelledby="${id}-title">\n<h${level} id="${id}-title">${shown(title)}</h${level}>\n${content}\n</section>`
  },
  text: (block, { scripted }) => {
    const classes = [block.tone && `verdict ${block.tone}`, block.small && 'small'].filter(Boolean).join(' ')
    const lead = block.lead === undefined ? '' : `<strong>${shown(block.lead)}</strong> `
    return `<p${classes === '' ? '' : ` class=${/ /.test(classes) ? `"${classes}"` : classes}`}>${lead}${inline(block.text, scripted)}`
  },
  points: list,
  steps: list,
  table: (block, at) => htmlTable(block, at, block.caption === at.heading ? 'heading' : 'caption'),
  facts: ({ caption, rows }, { scripted }) =>
    `<table class="facts"><caption>${shown(caption)}</caption><tbody>${rows
      .map(
        ([name, value]) =>
          `<tr><th scope="row">${shown(name)}</th><td${value === '' ? ' class="blank"' : ''}>${inline(value, scripted)}</td></tr>`,
      )
      .join('')}</tbody></table>`,
  code: ({ text }) => `<div class="wide" tabindex="0" role="group" aria-label="Lines to type"><pre><code>${shown(text)}</code></pre></div>`,
  fold: ({ summary, blocks }, at) => `<details open><summary>${shown(summary)}</summary>${inside(blocks, at)}</details>`,
  picture: (block, at) => htmlPicture(block, at),
  pictures: ({ pictures }, at) => `<div class="charts">${pictures.map((picture) => htmlPicture(picture, at)).join('\n')}</div>`,
}

/** Renders a block. */
const html = (block: Block, at: RenderContext): string => (RENDERERS[block.kind] as (block: Block, at: RenderContext) => string)(block, at)
const inside = (blocks: readonly Block[], at: RenderContext) => blocks.map((block) => html(block, at)).join(at.scripted ? '' : '\n')

/** Sections without links to them. */
const UNNAMED = /^(f\d+|check-.*)$/

/** A picture with its words and its numbers. */
function htmlPicture(picture: Picture, at: RenderContext): string {
  const { id, title, answer, svg, wide } = picture
  const numbers = pictureTable(picture)
  return `<figure id=${id}${wide ? ' class=wholeWidth' : ''}>
<div class=picture><h${at.level} id=${id}-title>${shown(title)}</h${at.level}>
${answer === undefined ? '' : `<p class=answer>${shown(answer)}</p>\n`}${svg === undefined ? '' : `${inPage(svg, id)}\n`}</div>
<figcaption id=${id}-text>${shown(captionOf(picture))}</figcaption>
${numbers === undefined ? '' : `<details open><summary>Numbers of this picture</summary>${htmlTable(numbers, at, 'summary')}</details>\n`}</figure>`
}

/**
 * A table; cells and rows end where the next begins. It is named by its caption, or by the heading or the summary that stands above it. A table that is
 * wider than the page scrolls in a box of its own; the script of a report names that box and lets the keyboard reach it.
 */
function htmlTable({ caption, head, rows, ids }: TableOf, { scripted }: RenderContext, namedBy: 'caption' | 'heading' | 'summary'): string {
  const body = rows.map((cells, i) => {
    const id = scripted ? undefined : ids?.[i]
    return `<tr${id === undefined ? '' : ` id=${id}`}>${
      partName(cells) ??
      ended(cells)
        .map((words) => cell(words, scripted))
        .join('')
    }`
  })
  const own = namedBy === 'caption' ? `<caption>${shown(caption)}</caption>\n` : ''
  const box = scripted ? '<div class=wide>' : `<div class=wide tabindex=0 role=group aria-label="${escaped(caption)}">`
  return `${box}<table>
${own}<thead><tr>${head.map((name) => (name === '' ? '<td>' : `<th>${shown(name)}`)).join('')}<tbody>${body.join('')}</table></div>`
}

/** The row that names a part: its only words are strong. They take the width of the table. */
function partName(cells: readonly Words[]): string | undefined {
  const [words, ...others] = cells.filter((cell) => cell.length > 0)
  const [only] = words === undefined || typeof words === 'string' ? [] : words
  return others.length === 0 && typeof only === 'object' && only.strong ? `<th colspan=${cells.length}>${shown(only.text)}` : undefined
}

/** Cells without empty ones at the end of a row. */
const ended = (cells: readonly Words[]): readonly Words[] => cells.slice(0, cells.findLastIndex((cell) => cell.length > 0) + 1)

/** A cell; words of one tone colour it as a whole. */
function cell(words: Words, scripted: boolean): string {
  const [only] = typeof words === 'string' ? [] : words
  if (words.length === 1 && typeof only === 'object' && only.tone !== undefined && only.id === undefined && only.to === undefined)
    return `<td class=${only.tone}>${shown(only.text)}`
  return `<td>${inline(words, scripted)}`
}

const inline = (words: Words, scripted: boolean): string =>
  typeof words === 'string'
    ? shown(words)
    : words
        .map((word) => piece(word, scripted))
        .join('')
        .replaceAll('</code>; <code>', '; ')

/** Places of numbered rows and steps, and references to them: the script of a report makes them from their texts. */
const NUMBERED = /^(s\d+\.\d+|[FTCQK]\d+)$/

function piece(part: Piece, scripted: boolean): string {
  if (typeof part === 'string') return shown(part)
  if (scripted && NUMBERED.test(part.to ?? part.id ?? '')) return shown(part.text)
  const { text, to, id, strong, code, tone } = part
  const own = code ? `<code>${shown(text)}</code>` : strong ? `<strong>${shown(text)}</strong>` : shown(text)
  const toned =
    tone === undefined && id === undefined
      ? own
      : `<span${id === undefined ? '' : ` id=${id}`}${tone === undefined ? '' : ` class=${tone}`}>${own}</span>`
  return to === undefined ? toned : `<a href=#${to}>${toned}</a>`
}
