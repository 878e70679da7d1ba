import type { AnyFormula, Source } from '../../formula/index.js'
import type { Link } from './links.js'
import type { Names, Range } from './value.js'

/** One step of a sheet: a formula or a line, its numbers at full precision, and where each input comes from. */
export interface SheetStep {
  readonly formula: string
  /** The printed equation of a line. */
  readonly equation?: string
  readonly x: unknown
  readonly y: unknown
  /** Origin of each input number, by its path. */
  readonly from: Readonly<Record<string, Link>>
  /** Names of the instances of the value that ran it. */
  readonly names: Names
}

/** A leaf that a sheet rests on. */
export interface SheetLeaf {
  readonly id: string
  readonly names: Names
  readonly kind: string
  readonly value: unknown
  readonly range?: Range
  readonly source?: Source
  /** Name for readers. */
  readonly title?: string
  /** Table that it is read from. */
  readonly table?: { readonly source: readonly Source[] }
}

/** The last round of a loop: it started at `x` and led to `next`. */
export interface SheetLoop {
  readonly title: string
  readonly x: number
  readonly next: number
  readonly within: number
  readonly settled: boolean
}

/** A number on a sheet without an origin. */
export interface SheetGap {
  readonly where: string
  readonly number: number
}

/** A calculation sheet in machine form: what is read stands before what reads it, and each step stands once. */
export interface Sheet {
  readonly leaves: readonly SheetLeaf[]
  readonly steps: readonly SheetStep[]
  /** The records of its steps by id. */
  readonly formulas: ReadonlyMap<string, AnyFormula>
  readonly loops: readonly SheetLoop[]
  /** Numbers of the values the sheet was made for, with their origins. */
  readonly results: readonly { readonly id: string; readonly path: string; readonly number: number; readonly from: Link | undefined }[]
  /** Numbers without an origin: calculated in between. */
  readonly gaps: readonly SheetGap[]
}
