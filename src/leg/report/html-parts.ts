import { SMALL } from '../../drawing/index.js'
import { type Block, captionOf, type Marks, type Page, type Picture, type Piece, pictureTable, type TableOf, type Words } from './blocks.js'

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** Text as it may stand between tags and in attributes. */
export const escaped = (text: string): string => text.replaceAll(/[&<>"']/g, (c) => ENTITIES[c] as string)

/** What a filter finds its rows by: a letter for the choice, and a number for its value, such as `p3` for the fourth part. */
export type Codes = ReadonlyMap<string, string>

/** Where a block stands: the level of its headings, how much lower than usual they are, and the codes of the page's filter. */
interface At {
  readonly level: number
  readonly lower: 0 | 1
  readonly codes?: Codes | undefined
}

/** Blocks as HTML, with headings one level lower as an option. */
export const htmlBlocks = (blocks: readonly Block[], lower: 0 | 1 = 0, codes?: Codes): string =>
  blocks.map((block) => html(block, { lower, level: 2 + lower, codes })).join('\n')

/** A page as a part of another: its title is a heading there. */
export const htmlSection = (id: string, { title, blocks }: Page): string =>
  `<section aria-labelledby="${id}">\n<h2 id="${id}">${escaped(title)}</h2>\n${htmlBlocks(blocks, 1)}\n</section>`

/** A block; `level` is that of the headings of sections here. */
function html(block: Block, at: At): string {
  const { level, lower, codes } = at
  const inside = (blocks: readonly Block[], own = level) => blocks.map((one) => html(one, { ...at, level: own })).join('\n')
  switch (block.kind) {
    case 'heading': {
      const own = block.level + lower
      return `<h${own}>${escaped(block.text)}</h${own}>`
    }
    case 'section': {
      const id = block.marks?.id ?? ''
      if (level > 2 + lower) return innerSection(block, inside(block.blocks, level + 1), at)
      return `<section id="${id}" aria-labelledby="${id}-title"${dataOf(block.marks, codes)}>\n<h${level} id="${id}-title">${escaped(block.title)}</h${level}>\n${inside(block.blocks, level + 1)}\n</section>`
    }
    case 'text': {
      const classes = [block.tone && `verdict ${block.tone}`, block.small && 'small'].filter(Boolean).join(' ')
      const lead = block.lead === undefined ? '' : `<strong>${escaped(block.lead)}</strong> `
      return `<p${classes === '' ? '' : ` class=${/ /.test(classes) ? `"${classes}"` : classes}`}>${lead}${inline(block.text, codes)}`
    }
    case 'points':
      return `<ul>${block.lines.map((line) => `<li>${inline(line, codes)}`).join('')}</ul>`
    case 'steps':
      return `<ol>${block.lines.map((line) => `<li>${inline(line, codes)}`).join('')}</ol>`
    case 'table':
      return htmlTable(block, codes)
    case 'facts':
      return `<table class="facts"><caption>${escaped(block.caption)}</caption><tbody>${block.rows
        .map(
          ([name, value]) =>
            `<tr><th scope="row">${escaped(name)}</th><td${value === '' ? ' class="blank"' : ''}>${inline(value, codes)}</td></tr>`,
        )
        .join('')}</tbody></table>`
    case 'code':
      return `<div class="wide" tabindex="0" role="group" aria-label="Lines to type"><pre><code>${escaped(block.text)}</code></pre></div>`
    case 'fold':
      return `<details open><summary>${escaped(block.summary)}</summary>${inside(block.blocks)}</details>`
    case 'picture':
      return htmlPicture(block, at)
    case 'pictures':
      return `<div class="charts">${block.pictures.map((one) => htmlPicture(one, at)).join('\n')}</div>`
  }
}

/** A part of a part. It has a box where a filter hides it, or where it is a place of its own. */
function innerSection({ title, marks = {} }: Extract<Block, { kind: 'section' }>, inside: string, { level, codes }: At): string {
  const id = marks.id === undefined || UNNAMED.test(marks.id) ? '' : ` id="${marks.id}"`
  const attributes = `${id}${dataOf(marks, codes)}`
  const own = `<h${level}>${escaped(title)}</h${level}>\n${inside}`
  return attributes === '' ? own : `<div${attributes}>\n${own}\n</div>`
}

/** Parts that nothing leads to. */
const UNNAMED = /^(f\d+|check-.*)$/

/** A picture with its words and its numbers. */
function htmlPicture(one: Picture, { level, codes }: At): string {
  const { id: own, title, answer, svg, wide } = one
  const numbers = pictureTable(one)
  const id = svg?.includes(' role=') ? `figure-${own}` : own
  return `<figure id="${id}"${wide ? ' class="wholeWidth"' : ''}>
<div class="picture"><h${level} id="${id}-title">${escaped(title)}</h${level}>
${answer === undefined ? '' : `<p class="answer">${escaped(answer)}</p>\n`}${svg === undefined ? '' : `${inPage(svg, id)}\n`}</div>
<figcaption id="${id}-text">${escaped(captionOf(one))}</figcaption>
${numbers === undefined ? '' : `<details open><summary>Numbers of this picture</summary>${htmlTable(numbers, codes, false)}</details>\n`}</figure>`
}

/** A picture in a page: heading and caption of its figure name it, and what they say it does not say again. */
export function inPage(svg: string, id: string): string {
  const named = svg.replace(/<svg( role="img")?/, `<svg role="img" aria-labelledby="${id}-title" aria-describedby="${id}-text"`)
  return named === svg
    ? svg
    : withoutAnswer(named.replace(/ role="img" aria-labelledby="[^"]*-picture-title" aria-describedby="[^"]*"/, ''))
        .replace(/<title[\s\S]*?<\/title>\s*/, '')
        .replace(/<desc[\s\S]*?<\/desc>\s*/, '')
        .replaceAll(/<!--[\s\S]*?-->\s*/g, '')
        .replaceAll(/="([\w.#%,+-]+)"(?=[ >])/g, '=$1')
}

/** Height of a line of the answer in a drawing. */
const ANSWER_LINE = 17

/** A drawing without its first and its last lines: the answer stands above it in a page, and results are in the table below it. */
function withoutAnswer(svg: string): string {
  const [whole, lines] = /<!-- answer -->\n(<g>.*?<\/g>)\n/.exec(svg) ?? []
  if (whole === undefined) return svg
  const cut = ANSWER_LINE * (lines as string).split('<text ').slice(1).length
  const [results = '', first] = /<!-- results -->\n<g><text x="\d+" y="([\d.]+)".*?<\/g>\n(?=<\/svg>)/.exec(svg) ?? []
  return svg
    .replace(whole, '')
    .replace(results, '')
    .replace(/viewBox="0 0 (\d+) (\d+)"/, (_, width: string, height: string) => {
      const end = first === undefined ? Number(height) : Math.ceil(Number(first) - SMALL)
      return `viewBox="0 ${cut} ${width} ${end - cut}"`
    })
}

/** A table with a caption; cells and rows end where the next begins. It scrolls in a box of its own where it is wider than the page, and the box can be reached by keyboard. */
function htmlTable({ caption, head, rows, marks }: TableOf, codes?: Codes, captioned = true): string {
  const body = rows.map((cells, i) => {
    const mark = marks?.[i]
    const id = mark?.id === undefined || codes !== undefined ? '' : ` id=${mark.id}`
    return `<tr${id}${dataOf(mark, codes)}>${cells.map((one) => `<td>${inline(one, codes)}`).join('')}`
  })
  // What is folded has its summary for a caption.
  const said = captioned ? `<caption>${escaped(caption)}</caption>\n` : ''
  return `<div class=wide tabindex=0 role=group aria-label="${escaped(caption)}"><table>
${said}<thead><tr>${head.map((one) => (one === '' ? '<td>' : `<th>${escaped(one)}`)).join('')}</thead>
<tbody>${body.join('\n')}</table></div>`
}

/** The choices of a filter with their letters. */
export const CHOICES = ['joint', 'part', 'cases', 'state'] as const

/** Values of a choice that a mark has. */
export const valuesOf = (marks: Marks, choice: (typeof CHOICES)[number]): readonly string[] => [marks[choice] ?? []].flat()

/** What a filter finds. */
function dataOf(marks: Marks | undefined, codes: Codes | undefined): string {
  if (marks === undefined || codes === undefined) return ''
  const own = CHOICES.flatMap((choice) => valuesOf(marks, choice).flatMap((value) => codes.get(`${choice} ${value}`) ?? []))
  return own.length === 0 ? '' : ` data-f=${own.join()}`
}

const inline = (words: Words, codes?: Codes): string =>
  typeof words === 'string' ? escaped(words) : words.map((one) => piece(one, codes)).join('')

/** Places of numbered rows and steps, and references to them: the script of a report makes them from their texts. */
const NUMBERED = /^(s\d+\.\d+|[FTCQ]\d+)$/

function piece(one: Piece, codes?: Codes): string {
  if (typeof one === 'string') return escaped(one)
  if (codes !== undefined && NUMBERED.test(one.to ?? one.id ?? '')) return escaped(one.text)
  const { text, to, id, strong, code, tone } = one
  const own = code ? `<code>${escaped(text)}</code>` : strong ? `<strong>${escaped(text)}</strong>` : escaped(text)
  const toned =
    tone === undefined && id === undefined
      ? own
      : `<span${id === undefined ? '' : ` id=${id}`}${tone === undefined ? '' : ` class=${tone}`}>${own}</span>`
  return to === undefined ? toned : `<a href=#${to}>${toned}</a>`
}
