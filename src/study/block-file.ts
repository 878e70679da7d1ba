import type { Column } from './table.js'

/** Columns of some rows as text and back. Numbers keep every bit, NaN and infinities included. */
export interface EncodedBlock {
  /** The block's number, from 0. */
  readonly block: number
  readonly rows: number
  /** One entry a column: base64 of the doubles as the machine keeps them (little-endian on all that Node runs on today), or a list of words. */
  readonly columns: readonly (string | readonly string[])[]
}

/** The first line of a file of results. */
export interface FileHeader {
  readonly format: 'limbwright-sweep'
  readonly version: 1
  /** What was run: a file of another plan is refused. */
  readonly plan: string
  readonly formula: string
  readonly rows: number
  readonly blockRows: number
  /** Which part of how many, from 1. */
  readonly shard: readonly [number, number]
}

/** Some rows as they come from a run: numbers as doubles, words as lists. */
export interface Block {
  readonly block: number
  readonly rows: number
  readonly columns: readonly (Float64Array | readonly string[])[]
}

/** A block as a line of a file holds it (Node only). */
export const encoded = ({ block, rows, columns }: Block): EncodedBlock => ({
  block,
  rows,
  columns: columns.map((column) =>
    column instanceof Float64Array ? Buffer.from(column.buffer, column.byteOffset, column.byteLength).toString('base64') : column,
  ),
})

/** The block a line holds (Node only). */
export const decoded = ({ block, rows, columns }: EncodedBlock): Block => ({
  block,
  rows,
  columns: columns.map((column) => {
    if (typeof column !== 'string') return column
    const bytes = Buffer.from(column, 'base64')
    // A copy of its own: the bytes of a small buffer need not begin at a multiple of eight.
    return new Float64Array(Uint8Array.from(bytes).buffer)
  }),
})

/** Puts a block's rows into whole columns, from a row on. */
export function putInto({ columns: packed }: Block, columns: readonly Column[], from: number): void {
  columns.forEach((column, c) => {
    const entry = packed[c]
    if (entry instanceof Float64Array && 'values' in column) column.values.set(entry, from)
    else if ('words' in column) {
      const words = column.words as string[]
      ;(entry as readonly string[]).forEach((word, i) => {
        words[from + i] = word
      })
    }
  })
}

/** Whether a block has the shape its columns ask for. */
export const fits = ({ rows, columns: packed }: EncodedBlock, columns: readonly Column[], wanted: number): boolean =>
  rows === wanted &&
  packed.length === columns.length &&
  columns.every((column, c) => {
    const entry = packed[c]
    return 'words' in column
      ? Array.isArray(entry) && entry.length === rows
      : typeof entry === 'string' && entry.length === 4 * Math.ceil((8 * rows) / 3)
  })

/** SHA-256 of text in hexadecimal; the same in Node and in browsers. */
export async function digest(text: string): Promise<string> {
  const hash = await globalThis.crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, '0')).join('')
}

/** One line of a file: the data and a check over it, so that a line half written is told from a whole one. */
export async function lineOf(data: FileHeader | EncodedBlock): Promise<string> {
  const text = JSON.stringify(data)
  return `${(await digest(text)).slice(0, 16)} ${text}\n`
}

/** Reads a line back; nothing where its check does not hold. */
export async function readLine(line: string): Promise<unknown> {
  const text = line.slice(17)
  if (line.charAt(16) !== ' ' || (await digest(text)).slice(0, 16) !== line.slice(0, 16)) return undefined
  return JSON.parse(text)
}

/** What a file of results holds. */
export interface FileContent {
  readonly header: FileHeader | undefined
  readonly blocks: ReadonlyMap<number, EncodedBlock>
  /** Bytes up to the end of the last good line; what follows was cut off by a kill. */
  readonly goodBytes: number
  /** Lines in the middle whose check does not hold: the file was damaged, not merely cut off. */
  readonly damaged: number
}

/** Reads a file's text. Damaged lines are counted and their blocks taken as missing. */
export async function readContent(text: string): Promise<FileContent> {
  const lines = text.split('\n')
  // What stands after the last line break was never finished.
  lines.pop()
  let header: FileHeader | undefined
  const blocks = new Map<number, EncodedBlock>()
  let goodBytes = 0
  let bytes = 0
  let damaged = 0
  const encoder = new TextEncoder()
  for (const [i, line] of lines.entries()) {
    bytes += encoder.encode(line).length + 1
    const data = await readLine(line)
    if (data === undefined) damaged++
    else {
      if (i === 0) header = data as FileHeader
      else if (!blocks.has((data as EncodedBlock).block)) blocks.set((data as EncodedBlock).block, data as EncodedBlock)
    }
    // A damaged line is stepped over, its block run again; only an unfinished tail is cut.
    goodBytes = bytes
  }
  return { header: isHeader(header) ? header : undefined, blocks, goodBytes, damaged }
}

const isHeader = (data: FileHeader | undefined): data is FileHeader => data?.format === 'limbwright-sweep' && data.version === 1
