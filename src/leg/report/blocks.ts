/** A piece of text: plain, strong, code, a place of the page, or a link to one. */
export type Piece =
  | string
  | {
      /** The words. */
      readonly text: string
      /** Place of the page that the words link to. */
      readonly to?: string
      /** Place of the page that the words are. */
      readonly id?: string
      /** Strong text. */
      readonly strong?: true
      /** Text in the type of code. */
      readonly code?: true
      /** How the words stand out. */
      readonly tone?: Tone
    }
/** Text with or without links and emphasis. */
export type Words = string | readonly Piece[]

/** How a text stands out: by its words first, and by colour where there is some. */
export type Tone = 'fails' | 'short' | 'holds'

/** Rows of words under a head. The caption says what they hold to those who cannot see the place of the table. */
export interface TableOf {
  readonly caption: string
  /** Words of the head, column by column. */
  readonly head: readonly string[]
  /** Words of each row, column by column. */
  readonly rows: readonly (readonly Words[])[]
  /** The place of each row that links lead to. */
  readonly ids?: readonly (string | undefined)[]
}

/** A drawing or chart. Where there is no picture, the words and the table stand for it. */
export interface Picture {
  /** Starts each id inside the picture. */
  readonly id: string
  /** Title of the picture. */
  readonly title: string
  /** The result in one sentence. */
  readonly answer?: string
  /** Description of the picture for screen readers. */
  readonly description: string
  /** An `<svg>` element; absent where it was not drawn. */
  readonly svg?: string | undefined
  /** Its numbers. */
  readonly table?: Omit<TableOf, 'caption'>
  /** Takes the whole width of a page. Default: two pictures stand side by side where there is room. */
  readonly wide?: boolean
}

/** A part of a page that is written once and printed as HTML, as Markdown or as plain text. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly text: string }
  /** A part with a title and a place; parts of parts have titles one level lower. */
  | { readonly kind: 'section'; readonly title: string; readonly blocks: readonly Block[]; readonly id: string }
  /** A paragraph; its lead, where there is one, stands out before it. */
  | { readonly kind: 'text'; readonly text: Words; readonly lead?: string; readonly tone?: Tone; readonly small?: true }
  | { readonly kind: 'points' | 'steps'; readonly lines: readonly Words[] }
  | ({ readonly kind: 'table' } & TableOf)
  /** Names and values. An empty value is a line to write on. */
  | { readonly kind: 'facts'; readonly caption: string; readonly rows: readonly (readonly [name: string, value: Words])[] }
  | { readonly kind: 'code'; readonly text: string }
  /** Blocks that a reader can fold away on a screen; on paper they are always open. */
  | { readonly kind: 'fold'; readonly summary: string; readonly blocks: readonly Block[] }
  | ({ readonly kind: 'picture' } & Picture)
  /** Pictures beside each other where there is room. */
  | { readonly kind: 'pictures'; readonly pictures: readonly Picture[] }

/** A page: its title and what stands on it. */
export interface Page {
  readonly title: string
  readonly blocks: readonly Block[]
}

/** A heading of the second level. */
export const heading = (text: string): Block => ({ kind: 'heading', level: 2, text })
/** A heading of the third level. */
export const subheading = (text: string): Block => ({ kind: 'heading', level: 3, text })
/** A part with a title and a place. */
export const section = (id: string, title: string, blocks: readonly Block[]): Block => ({ kind: 'section', title, blocks, id })
/** A paragraph. */
export const text = (words: Words): Block => ({ kind: 'text', text: words })
/** A remark in smaller letters. */
export const small = (words: Words): Block => ({ kind: 'text', text: words, small: true })
/** A paragraph whose first words stand out. */
export const led = (lead: string, words: Words): Block => ({ kind: 'text', text: words, lead })
/** A list of points. */
export const points = (lines: readonly Words[]): Block => ({ kind: 'points', lines })
/** A numbered list. */
export const steps = (lines: readonly Words[]): Block => ({ kind: 'steps', lines })
/** Lines as they are to be typed. */
export const code = (words: string): Block => ({ kind: 'code', text: words })
/** Blocks that a reader can fold away on a screen. */
export const fold = (summary: string, blocks: readonly Block[]): Block => ({ kind: 'fold', summary, blocks })
/** Names and values. */
export const facts = (caption: string, rows: readonly (readonly [string, Words])[]): Block => ({ kind: 'facts', caption, rows })
/** A drawing or chart. */
export const picture = (one: Picture): Block => ({ kind: 'picture', ...one })
/** A table; cells are printed as they read. The caption says what it holds to those who cannot see its place. */
export const table = (
  caption: string,
  head: readonly string[],
  rows: readonly (readonly unknown[])[],
  ids?: readonly (string | undefined)[],
): Block => ({
  kind: 'table',
  caption,
  head,
  rows: rows.map((cells) => cells.map((cell) => (Array.isArray(cell) ? (cell as readonly Piece[]) : String(cell)))),
  ...(ids === undefined ? {} : { ids }),
})

/** Text without links and emphasis. */
export const plainWords = (words: Words): string =>
  typeof words === 'string' ? words : words.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('')

/** The table of a picture, with its caption. */
export const pictureTable = ({ title, table: numbers }: Picture): TableOf | undefined =>
  numbers === undefined ? undefined : { caption: `Numbers of the picture: ${title}`, ...numbers }

/** The description of a picture behind its answer: a description says the answer first, for who hears nothing else. */
export const captionOf = ({ answer, description }: Picture): string =>
  answer !== undefined && description.startsWith(answer) ? description.slice(answer.length).replace(/^[.!?]? /, '') : description
