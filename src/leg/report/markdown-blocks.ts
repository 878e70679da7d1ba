import { type Block, captionOf, type Page, type Picture, pictureTable, plainWords, type TableOf, type Words } from './blocks.js'

/** A page as Markdown. */
export const markdownPage = ({ title, blocks }: Page): string =>
  `${[`# ${literal(title)}`, ...blocks.map((block) => markdown(block, 2))].join('\n\n')}\n`

/** A block as Markdown; `level` is that of the headings of sections here. */
function markdown(block: Block, level: number): string {
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${literal(block.text)}`
    case 'section':
      return [`${'#'.repeat(level)} ${literal(block.title)}`, ...block.blocks.map((block) => markdown(block, level + 1))].join('\n\n')
    case 'text': {
      const body = inline(block.text)
      const led = block.lead === undefined ? body : `**${literal(block.lead)}** ${body}`.trimEnd()
      return block.tone === undefined ? led : `**${led}**`
    }
    case 'points':
      return block.lines.map((line) => `- ${inline(line)}`).join('\n')
    case 'steps':
      return block.lines.map((line, i) => `${i + 1}. ${inline(line)}`).join('\n')
    case 'table':
      return markdownTable(block)
    case 'facts':
      return markdownTable({ caption: block.caption, head: ['', ''], rows: block.rows })
    case 'code':
      return `\`\`\`\n${block.text.trimEnd()}\n\`\`\``
    case 'fold':
      return [`**${literal(block.summary)}**`, ...block.blocks.map((block) => markdown(block, level))].join('\n\n')
    case 'picture':
      return markdownPicture(block, level)
    case 'pictures':
      return block.pictures.map((picture) => markdownPicture(picture, level)).join('\n\n')
  }
}

function markdownPicture(picture: Picture, level: number): string {
  const numbers = pictureTable(picture)
  return [
    `${'#'.repeat(level)} ${literal(picture.title)}`,
    ...(picture.answer === undefined ? [] : [`**${literal(picture.answer)}**`]),
    literal(captionOf(picture)),
    ...(numbers === undefined ? [] : [markdownTable(numbers)]),
  ].join('\n\n')
}

/** A table as Markdown. */
function markdownTable({ head, rows }: TableOf): string {
  const line = (cells: readonly Words[]) => `|${cells.map(cell).join('|')}|`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}

const cell = (words: Words) => inline(words).replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')

/** Links lead to places of a page; Markdown keeps their words. */
const inline = (words: Words): string =>
  typeof words === 'string'
    ? literal(words)
    : words
        .map((piece) => {
          if (typeof piece === 'string') return literal(piece)
          if (piece.code) return `\`${piece.text}\``
          return piece.strong ? `**${literal(piece.text)}**` : literal(plainWords([piece]))
        })
        .join('')

/** Text for Markdown in which no name or remark of a document can become a tag, a link or a picture. */
export const literal = (text: string): string => text.replaceAll('<', '&lt;').replaceAll('](', ']\\(')
