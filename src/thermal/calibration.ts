import type { In, Quantity } from '../units/index.js'
import type { Factors, Network } from './network.js'

/** Temperatures read at a settled state. */
export type SteadyReading = Readonly<Record<string, In<'temperature'>>>

/** One corrected parameter. */
export interface Correction {
  /** The link's or node's name. */
  readonly name: string
  readonly of: 'conductance' | 'capacity'
  /** Factor on the model's value. */
  readonly factor: Quantity<'ratio'>
  /** 95 % interval of the factor after the measurement. */
  readonly low: Quantity<'ratio'>
  readonly high: Quantity<'ratio'>
  /** Half-width of the 95 % band it had before, relative. */
  readonly before: Quantity<'ratio'>
  /** Whether the measurement determines it: its band shrank by a tenth or more. */
  readonly informed: boolean
}

/** A network corrected by measurement. */
export interface Calibration {
  /** The corrected network; its bands are what is left of the scatter, with what the readings tie together kept together. */
  readonly network: Network
  /** Every parameter that could change, the largest change first. */
  readonly corrections: readonly Correction[]
  /** Root-mean-square of reading less model, before and after. */
  readonly misfitBefore: Quantity<'temperatureDifference'>
  readonly misfitAfter: Quantity<'temperatureDifference'>
  /** `consistent`; or `inconsistent` where readings lie further off than sensor and scatter explain: something is missing in the model. */
  readonly state: 'consistent' | 'inconsistent'
  /** The factors and what is left of their scatter, for `scaled`: to carry them to other loads. */
  readonly factors: Factors
}
