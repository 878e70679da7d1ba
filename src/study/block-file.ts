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
  /** Digest of what was run. A file of another plan is rejected. */
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

/** Whether a block has the shape of the columns and that many rows. */
export const fits = ({ rows, columns: packed }: EncodedBlock, columns: readonly Column[], expected: number): boolean =>
  rows === expected &&
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

/** One line of a file: the data and a check over it, so that a half-written line is recognised. */
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

/** Content of a file of results. */
export interface FileContent {
  readonly header: FileHeader | undefined
  readonly blocks: ReadonlyMap<number, EncodedBlock>
  /** Bytes up to the end of the last whole line. A kill cut off what follows. */
  readonly goodBytes: number
  /** Whole lines whose check does not hold: the file was damaged, not merely cut off. */
  readonly damaged: number
}

const LINE_FEED = 10
const CHUNK = 1 << 20

/** An open file, as far as it is read here: declared, so that programs without the types of Node compile. */
export interface ReadableFile {
  read<B extends Uint8Array>(buffer: B, offset: number, length: number, position: number): Promise<{ bytesRead: number; buffer: B }>
}

/** The lines of a file that end in a line feed, read piece by piece: a file of results may be longer than the longest string. */
async function* linesOf(handle: ReadableFile): AsyncGenerator<Buffer> {
  let rest: Buffer = Buffer.alloc(0)
  for (let at = 0; ; ) {
    const { bytesRead, buffer } = await handle.read(Buffer.allocUnsafe(CHUNK), 0, CHUNK, at)
    if (bytesRead === 0) return
    at += bytesRead
    let piece = rest.length === 0 ? buffer.subarray(0, bytesRead) : Buffer.concat([rest, buffer.subarray(0, bytesRead)])
    for (let end = piece.indexOf(LINE_FEED); end >= 0; end = piece.indexOf(LINE_FEED)) {
      yield piece.subarray(0, end)
      piece = piece.subarray(end + 1)
    }
    rest = piece
  }
}

/** Reads a file (Node only). Damaged lines are counted and their blocks treated as missing. */
export async function readContent(handle: ReadableFile): Promise<FileContent> {
  let header: FileHeader | undefined
  const blocks = new Map<number, EncodedBlock>()
  let goodBytes = 0
  let damaged = 0
  let first = true
  for await (const line of linesOf(handle)) {
    // A damaged line is skipped and its block run again; only an unfinished tail is cut off.
    goodBytes += line.length + 1
    const data = await readLine(line.toString('utf8'))
    if (first && isHeader(data)) header = data
    else if (isBlock(data)) {
      if (!blocks.has(data.block)) blocks.set(data.block, data)
    } else damaged++
    first = false
  }
  return { header, blocks, goodBytes, damaged }
}

const isHeader = (data: unknown): data is FileHeader =>
  (data as FileHeader | null | undefined)?.format === 'limbwright-sweep' && (data as FileHeader).version === 1

const isBlock = (data: unknown): data is EncodedBlock =>
  typeof (data as EncodedBlock | null | undefined)?.block === 'number' && Array.isArray((data as EncodedBlock).columns)
