/** What the page asks of the calculation, which runs beside it so that typing never waits. */
export interface Question {
  readonly number: number
  readonly text: string
  readonly wanted: 'verdict' | 'report'
}

/** What the page asks of one slider: how the verdict follows its field. */
export interface RangeQuestion {
  readonly number: number
  readonly text: string
  readonly wanted: 'range'
  readonly path: string
  /** Ends of the slider, with units. */
  readonly from: string
  readonly to: string
}

/** One mistake of the document. */
export interface Mistake {
  readonly path: string
  readonly message: string
  readonly line: number | undefined
}

/** A field with a unit that a slider may move. */
export interface Movable {
  readonly path: string
  readonly value: number
  readonly unit: string
}

/** One row of the verdict. */
export interface Row {
  readonly standing: 'fails' | 'short' | 'holds'
  readonly cells: readonly string[]
}

/** What comes back. */
export type Answer =
  | { readonly number: number; readonly state: 'ready'; readonly schema: unknown }
  | { readonly number: number; readonly state: 'mistakes'; readonly mistakes: readonly Mistake[] }
  | {
      readonly number: number
      readonly state: 'verdict'
      readonly text: string
      readonly sentence: string
      readonly remedy: string
      readonly rows: readonly Row[]
      readonly checks: number
      readonly movable: readonly Movable[]
      readonly milliseconds: number
    }
  | {
      readonly number: number
      readonly state: 'range'
      readonly path: string
      /** Values in the order of the slider: whether every check has its required reserve there. */
      readonly passes: readonly boolean[]
      readonly text: string
    }
  | { readonly number: number; readonly state: 'report'; readonly html: string }
  | { readonly number: number; readonly state: 'fault'; readonly message: string }
