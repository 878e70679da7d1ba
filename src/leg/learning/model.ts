/** A number that readings depend on: a field of the leg, or an error of an instrument. */
export interface Parameter {
  /** Path of the field, or log and name of the error. */
  readonly id: string
  /** What it is, in words. */
  readonly what: string
  readonly field: boolean
  readonly start: number
  readonly low: number
  readonly high: number
  /** Largest value that the document takes, where the fit may go beyond it. */
  readonly most?: number
  /** Coordinate of the fit: the logarithm of what is positive. */
  readonly scale: 'plain' | 'log'
  /** Standard deviation round its start in that coordinate, of what is known without the log; absent for what only the log determines. */
  readonly deviation: number | undefined
  /** Measurement that would narrow it. */
  readonly cure: string | undefined
}

/**
 * A field of the leg that a log may determine. `deviation` is that of its logarithm, of what is known without the log; absent where only the log
 * determines it.
 */
export const fieldParameter = (id: string, what: string, start: number, deviation: number | undefined, cure: string): Parameter => ({
  id,
  what,
  field: true,
  start,
  low: start / 100,
  high: 100 * start,
  scale: 'log',
  deviation,
  cure,
})

export type Rows = readonly (readonly number[])[]

/** How the readings of a log follow from parameters. */
export interface LogModel {
  readonly log: string
  readonly parameters: readonly Parameter[]
  /** Fields that the log determines. */
  readonly learns: readonly string[]
  /** Predicted readings: `channels` for each row, row by row. */
  readonly channels: number
  /** No model of it is closer than this share of the range of the readings. Default 0.2 %. */
  readonly closest?: number
  /** Step of the display in each channel: no reading is known closer. Default 0. */
  readonly steps?: readonly number[]
  /** Usual scatter of single readings in each channel: what a log of few readings does not tell. */
  readonly usual?: readonly number[]
  readonly predict: (at: (id: string) => number, rows: Rows) => ArrayLike<number>
  readonly measured: (row: readonly number[]) => readonly number[]
  /** The same readings under another law, to be compared: the wider interval of both is taken. */
  readonly rival?: LogModel
  /** What a field's band holds besides the interval: single readings, as low and high. */
  readonly single?: (row: readonly number[]) => number
  /** Relative half-width that a field's band keeps, whatever one log says. */
  readonly atLeast?: Readonly<Record<string, { readonly share: number; readonly why: string }>>
  /** More uncertainty of a field, as a standard deviation in its own unit: an extrapolation beyond the readings. */
  readonly beyond?: (path: string, value: number, rows: Rows) => number
}

/** A value of a field that fits its coordinate. */
export const toCoordinate = ({ scale }: Parameter, x: number): number => (scale === 'log' ? Math.log(x) : x)
export const fromCoordinate = ({ scale }: Parameter, u: number): number => (scale === 'log' ? Math.exp(u) : u)
