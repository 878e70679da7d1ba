import { significant } from '../../units/index.js'
import { unitSigns } from '../assess/sentence.js'
import type { Block, Page, Picture, Piece, TableOf, Words } from '../report/blocks.js'

/** Thousandths of a unit as the unit. */
const thousandth = (unit: string) => (_: string, number: string) => `${significant(Number(number) / 1000, 4)} ${unit}`

/** Words as a workshop reads them: units with their signs, every torque in N m, and a length from a tenth of a millimetre on in millimetres. @internal */
export const sheetWords = (text: string): string =>
  unitSigns(text)
    .replaceAll(/(?<![\d.])(-?\d+(?:\.\d+)?) N mm\b(?!²)/g, thousandth('N m'))
    .replaceAll(/(?<![\d.])(-?\d{3,}(?:\.\d+)?) µm\b(?!\/)/g, thousandth('mm'))

const pieceOf = (piece: Piece): Piece =>
  typeof piece === 'string' ? sheetWords(piece) : piece.code ? piece : { ...piece, text: sheetWords(piece.text) }
const wordsOf = (words: Words): Words => (typeof words === 'string' ? sheetWords(words) : words.map(pieceOf))

const tableOf = <T extends Pick<TableOf, 'head' | 'rows'>>(table: T): T => ({
  ...table,
  head: table.head.map(sheetWords),
  rows: table.rows.map((cells) => cells.map(wordsOf)),
})

const pictureOf = <T extends Picture>(one: T): T => ({
  ...one,
  title: sheetWords(one.title),
  description: sheetWords(one.description),
  ...(one.answer === undefined ? {} : { answer: sheetWords(one.answer) }),
  ...(one.table === undefined ? {} : { table: tableOf(one.table) }),
})

function blockOf(block: Block): Block {
  switch (block.kind) {
    case 'code':
    case 'heading':
      return block
    case 'text':
      return { ...block, text: wordsOf(block.text), ...(block.lead === undefined ? {} : { lead: sheetWords(block.lead) }) }
    case 'points':
    case 'steps':
      return { ...block, lines: block.lines.map(wordsOf) }
    case 'table':
      return tableOf(block)
    case 'facts':
      return { ...block, rows: block.rows.map(([name, value]) => [sheetWords(name), wordsOf(value)] as const) }
    case 'section':
    case 'fold':
      return { ...block, blocks: block.blocks.map(blockOf) }
    case 'picture':
      return pictureOf(block)
    case 'pictures':
      return { ...block, pictures: block.pictures.map(pictureOf) }
  }
}

/** A sheet in the words of a workshop. What is to be typed stays as it is. @internal */
export const sheetPage = ({ title, blocks }: Page): Page => ({ title, blocks: blocks.map(blockOf) })
