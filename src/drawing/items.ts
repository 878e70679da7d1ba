import type { Point } from './geometry.js'

/** Meaning of a line, which decides its width and pattern (ISO 128). */
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

/** Fill of an area: a tone of the ink, the paper, the ink, or the colour of its line. */
export type Fill = 'tone' | 'paper' | 'solid' | 'force' | 'bad' | 'move'

/** Colour of a text. */
export type Ink = 'ink' | 'force' | 'bad' | 'move'

/** Something on the page, in its units: y down. */
export type Item =
  | {
      /** A line through points. */
      readonly kind: 'path'
      /** Class of the line: its width and dashes. */
      readonly line: LineClass
      /** Corners of the line. */
      readonly points: readonly Point[]
      /** Whether the last point joins the first. */
      readonly closed?: boolean
      /** How the inside is filled. Default: not at all. */
      readonly fill?: Fill
    }
  | {
      /** Many straight pieces of one class. */
      readonly kind: 'lines'
      /** Class of the lines: their width and dashes. */
      readonly line: LineClass
      /** Ends of each piece. */
      readonly pieces: readonly (readonly [Point, Point])[]
    }
  | {
      /** A circle. */
      readonly kind: 'circle'
      /** Class of the line: its width and dashes. */
      readonly line: LineClass
      /** Centre of the circle. */
      readonly centre: Point
      /** Radius of the circle. */
      readonly radius: number
      /** How the inside is filled. Default: not at all. */
      readonly fill?: Fill
    }
  | TextItem

/** A text on the page. Turned text is read from the right. */
export interface TextItem {
  /** A text. */
  readonly kind: 'text'
  /** Place of the text on the page. */
  readonly at: Point
  /** The words. */
  readonly text: string
  /** Which part of the text is at that place. */
  readonly anchor: 'start' | 'middle' | 'end'
  /** Height of the type. */
  readonly size: number
  /** Whether the type is bold. */
  readonly bold: boolean
  /** Colour of the text. */
  readonly ink: Ink
  /** Whether the text is turned by a quarter turn, to be read from the right. */
  readonly turned: boolean
}

/** Height of small text, and of the answer. No text is smaller. */
export const SMALL = 11
export const LARGE = 13
/** Radius of a dot: the end of a leader, a mark of a plot. */
export const DOT = 1.8
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
