import type { Piece, Words } from './blocks.js'

/** Rows under a head. */
interface Rows {
  readonly head: readonly string[]
  readonly rows: readonly (readonly Words[])[]
}

const NUMBER = /^(-?[\d.]+(?:e-?\d+)?) ?([^\d,\s][^\d,]*)$/
/** The text of a cell that starts with a number. */
const leading = (cell: Words): string => (typeof cell === 'string' ? cell : typeof cell[0] === 'string' ? cell[0] : '')

/** A table whose units stand in its head, where all numbers of a column have the same one. */
export function unitsInHead({ head, rows }: Rows): Rows {
  const units = head.map((_, i) => {
    const found = new Set(rows.map((cells) => NUMBER.exec(leading(cells[i] as Words))?.[2]))
    return rows.length > 1 && found.size === 1 ? [...found][0] : undefined
  })
  const bare = (cell: Words): Words => {
    const number = NUMBER.exec(leading(cell))?.[1] as string
    return typeof cell === 'string' ? number : ([number, ...cell.slice(1)] as readonly Piece[])
  }
  return {
    head: head.map((name, i) => (units[i] === undefined ? name : `${name}, ${units[i]}`)),
    rows: rows.map((cells) => cells.map((cell, i) => (units[i] === undefined ? cell : bare(cell)))),
  }
}
