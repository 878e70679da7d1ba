import type { Item } from './items.js'
import type { Place } from './view.js'

/** A part of the page: a view at its scale, or texts and plots without one. */
export interface Group {
  /** Name of the part. */
  readonly name: string
  /** Content of the drawing. */
  readonly items: readonly Item[]
  /** Where millimetres of the part are on the page; absent for what has no scale. */
  readonly place?: Place
  /** Whether the view is the outline of something flat, to be printed at full size. */
  readonly template?: boolean
}

/** Dimensions and results of a drawing, for those who do not see it. */
export interface DrawingTable {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** A cell of a title block: its name and its value. An empty value is room to write. */
export type TitleCell = readonly [name: string, value: string]

/** Title block of a drawing: rows with one or two cells each (ISO 7200 lists what belongs there). */
export interface TitleBlock {
  /** Rows from the top, with one or two cells each. */
  readonly rows: readonly (readonly TitleCell[])[]
}

/** A finished drawing. */
export interface Drawing {
  /** A name for links and file names. */
  readonly id: string
  /** Content of the view, and the direction that it is seen from. */
  readonly title: string
  /** The result in a few words: the first line of the picture. */
  readonly answer: string
  /** The same and the numbers in sentences, for those who do not see it. */
  readonly description: string
  /** Parts of the page. */
  readonly groups: readonly Group[]
  readonly height: number
  readonly table: DrawingTable
  /** Title block of a drawing to scale, for its files. */
  readonly titleBlock?: TitleBlock
}
