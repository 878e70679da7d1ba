import { type Block, type Marks, type Page, type Picture, type Piece, pictureTable, type TableOf, type Words } from './blocks.js'

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** Text as it may stand between tags and in attributes. */
export const escaped = (text: string): string => text.replaceAll(/[&<>"']/g, (c) => ENTITIES[c] as string)

/** Blocks as HTML, with headings one level lower as an option. */
export const htmlBlocks = (blocks: readonly Block[], lower: 0 | 1 = 0): string =>
  blocks.map((block) => html(block, lower, 2 + lower)).join('\n')

/** A page as a part of another: its title is a heading there. */
export const htmlSection = (id: string, { title, blocks }: Page): string =>
  `<section aria-labelledby="${id}">\n<h2 id="${id}">${escaped(title)}</h2>\n${htmlBlocks(blocks, 1)}\n</section>`

/** A block; `level` is that of the headings of sections here. */
function html(block: Block, lower: 0 | 1, level: number): string {
  const inside = (blocks: readonly Block[], at = level) => blocks.map((one) => html(one, lower, at)).join('\n')
  switch (block.kind) {
    case 'heading': {
      const own = block.level + lower
      return `<h${own}>${escaped(block.text)}</h${own}>`
    }
    case 'section': {
      const id = block.marks?.id ?? ''
      if (level > 2 + lower)
        return `<div id="${id}"${dataOf(block.marks)}>\n<h${level}>${escaped(block.title)}</h${level}>\n${inside(block.blocks, level + 1)}\n</div>`
      return `<section id="${id}" aria-labelledby="${id}-title"${dataOf(block.marks)}>\n<h${level} id="${id}-title">${escaped(block.title)}</h${level}>\n${inside(block.blocks, level + 1)}\n</section>`
    }
    case 'text': {
      const classes = [block.tone && `verdict ${block.tone}`, block.small && 'small'].filter(Boolean).join(' ')
      const lead = block.lead === undefined ? '' : `<strong>${escaped(block.lead)}</strong> `
      return `<p${classes === '' ? '' : ` class="${classes}"`}>${lead}${inline(block.text)}</p>`
    }
    case 'points':
      return `<ul>${block.lines.map((line) => `<li>${inline(line)}</li>`).join('')}</ul>`
    case 'steps':
      return `<ol>${block.lines.map((line) => `<li>${inline(line)}</li>`).join('')}</ol>`
    case 'table':
      return htmlTable(block)
    case 'facts':
      return `<table class="facts"><caption>${escaped(block.caption)}</caption><tbody>${block.rows
        .map(
          ([name, value]) =>
            `<tr><th scope="row">${escaped(name)}</th><td${value === '' ? ' class="blank"' : ''}>${inline(value)}</td></tr>`,
        )
        .join('')}</tbody></table>`
    case 'code':
      return `<div class="wide" tabindex="0" role="group" aria-label="Lines to type"><pre><code>${escaped(block.text)}</code></pre></div>`
    case 'fold':
      return `<details open><summary>${escaped(block.summary)}</summary>${inside(block.blocks)}</details>`
    case 'picture':
      return htmlPicture(block, level)
    case 'pictures':
      return `<div class="charts">${block.pictures.map((one) => htmlPicture(one, level)).join('\n')}</div>`
  }
}

/** A picture with its words and its numbers. */
function htmlPicture(one: Picture, level: number): string {
  const { title, answer, description, svg, wide } = one
  const numbers = pictureTable(one)
  // A drawing names itself; a chart takes its names from the figure.
  const named = svg !== undefined && /<svg[^>]* role=/.test(svg)
  const id = named ? `figure-${one.id}` : one.id
  const drawn = named ? svg : svg?.replace('<svg', `<svg role="img" aria-labelledby="${id}-title ${id}-text"`)
  return `<figure id="${id}" aria-labelledby="${id}-title"${wide ? ' class="wholeWidth"' : ''}>
<h${level} id="${id}-title">${escaped(title)}</h${level}>
${answer === undefined ? '' : `<p class="answer">${escaped(answer)}</p>\n`}${drawn === undefined ? '' : `<div class="picture">${drawn}</div>\n`}<figcaption id="${id}-text">${escaped(description)}</figcaption>
${numbers === undefined ? '' : `<details open><summary>Numbers of this picture</summary>${htmlTable(numbers)}</details>\n`}</figure>`
}

/** A table with a caption; cells and rows end where the next begins. It scrolls in a box of its own where it is wider than the page, and the box can be reached by keyboard. */
function htmlTable({ caption, head, rows, marks }: TableOf): string {
  const body = rows.map((cells, i) => {
    const mark = marks?.[i]
    const id = mark?.id === undefined ? '' : ` id="${mark.id}"`
    return `<tr${id}${dataOf(mark)}>${cells.map((one) => `<td>${inline(one)}`).join('')}`
  })
  return `<div class="wide" tabindex="0" role="group" aria-label="${escaped(caption)}"><table>
<caption>${escaped(caption)}</caption>
<thead><tr>${head.map((one) => (one === '' ? '<td></td>' : `<th scope="col">${escaped(one)}</th>`)).join('')}</tr></thead>
<tbody>${body.join('\n')}</tbody></table></div>`
}

/** What a filter finds. */
function dataOf(marks: Marks | undefined): string {
  if (marks === undefined) return ''
  const { joint, part, cases, state } = marks
  const all = { joint, part, state, cases: cases === undefined ? undefined : `|${cases.join('|')}|` }
  return Object.entries(all)
    .map(([name, value]) => (value === undefined ? '' : ` data-${name}="${escaped(value)}"`))
    .join('')
}

const inline = (words: Words): string => (typeof words === 'string' ? escaped(words) : words.map(piece).join(''))

function piece(one: Piece): string {
  if (typeof one === 'string') return escaped(one)
  const { text, to, id, strong, code, tone } = one
  const own = code ? `<code>${escaped(text)}</code>` : strong ? `<strong>${escaped(text)}</strong>` : escaped(text)
  const toned =
    tone === undefined && id === undefined
      ? own
      : `<span${id === undefined ? '' : ` id="${id}"`}${tone === undefined ? '' : ` class="${tone}"`}>${own}</span>`
  return to === undefined ? toned : `<a href="#${to}">${toned}</a>`
}
