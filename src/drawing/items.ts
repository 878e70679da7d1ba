import type { Point } from './geometry.js'

/** What a line means: its width and pattern follow (ISO 128). */
export type LineClass =
  /** Visible outline of a given or standard size. */
  | 'thick'
  /** Thread root, assumed outline, axis of a plot. */
  | 'thin'
  /** Dimension, extension, leader, hatch. */
  | 'fine'
  | 'hidden'
  /** Centre line. */
  | 'axis'
  /** Other end of travel, reach, line of action. */
  | 'other'
  /** Cord and motion, and the second branch. */
  | 'move'
  | 'moveSecond'
  /** Force, torque, heat, temperature. */
  | 'force'
  /** Failing part or limit. */
  | 'bad'
  | 'badSecond'
  /** No line: an area alone. */
  | 'none'

/** What fills an area: a tone of the ink, the paper, the ink, or the colour of its line. */
export type Fill = 'tone' | 'paper' | 'solid' | 'force' | 'bad' | 'move'

/** Colour of a text. */
export type Ink = 'ink' | 'force' | 'bad' | 'move'

/** Something on the page, in its units: y down. */
export type Item =
  | { readonly kind: 'path'; readonly line: LineClass; readonly points: readonly Point[]; readonly closed?: boolean; readonly fill?: Fill }
  /** Many straight pieces of one class. */
  | { readonly kind: 'lines'; readonly line: LineClass; readonly pieces: readonly (readonly [Point, Point])[] }
  | { readonly kind: 'circle'; readonly line: LineClass; readonly centre: Point; readonly radius: number; readonly fill?: Fill }
  | TextItem

/** A text on the page. Turned text is read from the right. */
export interface TextItem {
  readonly kind: 'text'
  readonly at: Point
  readonly text: string
  readonly anchor: 'start' | 'middle' | 'end'
  readonly size: number
  readonly bold: boolean
  readonly ink: Ink
  readonly turned: boolean
}

/** Height of small text, and of the answer. No text is smaller. */
export const SMALL = 11
export const LARGE = 13
/** Distance between lines of small text. */
export const LINE = 14

/** Makes a text. */
export const textAt = (at: Point, text: string, more: Partial<Omit<TextItem, 'kind' | 'at' | 'text'>> = {}): TextItem => ({
  kind: 'text',
  at,
  text,
  anchor: 'start',
  size: SMALL,
  bold: false,
  ink: 'ink',
  turned: false,
  ...more,
})
