import { type Block, captionOf, type Page, type Picture, pictureTable, plainWords, type TableOf, type Words } from './blocks.js'

/** A page as plain text, for a terminal or a log. */
export const textPage = ({ title, blocks }: Page): string => `${[underlined(title, '='), ...blocks.map(plain)].join('\n\n')}\n`

const underlined = (title: string, sign: string) => `${title}\n${sign.repeat(title.length)}`

function plain(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return underlined(block.text, '-')
    case 'section':
      return [underlined(block.title, '-'), ...block.blocks.map(plain)].join('\n\n')
    case 'text':
      return block.lead === undefined ? plainWords(block.text) : `${block.lead} ${plainWords(block.text)}`.trimEnd()
    case 'points':
      return block.lines.map((line) => `- ${plainWords(line)}`).join('\n')
    case 'steps':
      return block.lines.map((line, i) => `${i + 1}. ${plainWords(line)}`).join('\n')
    case 'table':
      return plainTable(block)
    case 'facts':
      return plainTable({ head: [], rows: block.rows })
    case 'code':
      return block.text.trimEnd()
    case 'fold':
      return [block.summary, ...block.blocks.map(plain)].join('\n\n')
    case 'picture':
      return plainPicture(block)
    case 'pictures':
      return block.pictures.map(plainPicture).join('\n\n')
  }
}

function plainPicture(picture: Picture): string {
  const numbers = pictureTable(picture)
  return [underlined(picture.title, '-'), picture.answer, captionOf(picture), numbers && plainTable(numbers)]
    .filter((part) => part !== undefined)
    .join('\n\n')
}

/** A table of plain text in columns. */
export function plainTable({ head, rows }: Pick<TableOf, 'head' | 'rows'>): string {
  const lines = rows.map((cells) => cells.map((cell: Words) => plainWords(cell).replaceAll(/\s+/g, ' ')))
  const columns = Math.max(head.length, ...lines.map((line) => line.length))
  const widths = Array.from({ length: columns }, (_, i) => Math.max(head[i]?.length ?? 0, ...lines.map((line) => line[i]?.length ?? 0)))
  const row = (cells: readonly string[]) =>
    cells
      .map((cell, i) => cell.padEnd(widths[i] as number))
      .join('  ')
      .trimEnd()
  return [...(head.length === 0 ? [] : [row(head), row(widths.map((width) => '-'.repeat(width)))]), ...lines.map(row)].join('\n')
}
