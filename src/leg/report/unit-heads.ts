import type { Piece, Words } from './blocks.js'

/** Rows under a head. */
interface Rows {
  readonly head: readonly string[]
  readonly rows: readonly (readonly Words[])[]
}

const NUMBER = /^(-?[\d.]+(?:e-?\d+)?) ?([^\d,\s][^\d,]*)$/
/** The text of a cell that starts with a number. */
const leading = (cell: Words): string => (typeof cell === 'string' ? cell : typeof cell[0] === 'string' ? cell[0] : '')

/** A cell without a number, such as "infinite". */
const isWord = (cell: Words): boolean => /^\D+$/.test(leading(cell))

/** A table whose units stand in its head, where all numbers of a column, two at least, have the same one. */
export function unitsInHead({ head, rows }: Rows): Rows {
  const units = head.map((_, i) => {
    const numbers = rows.map((cells) => cells[i] as Words).filter((cell) => !isWord(cell))
    const found = new Set(numbers.map((cell) => NUMBER.exec(leading(cell))?.[2]))
    return numbers.length > 1 && found.size === 1 ? [...found][0] : undefined
  })
  const bare = (cell: Words): Words => {
    const number = NUMBER.exec(leading(cell))?.[1]
    if (number === undefined) return cell
    return typeof cell === 'string' ? number : ([number, ...cell.slice(1)] as readonly Piece[])
  }
  return {
    head: head.map((name, i) => (units[i] === undefined ? name : `${name}, ${units[i]}`)),
    rows: rows.map((cells) => cells.map((cell, i) => (units[i] === undefined ? cell : bare(cell)))),
  }
}
