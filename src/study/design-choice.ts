import type { In, Kind } from '../units/index.js'

/** A range of one input: its ends and, on a grid, how many values. */
export interface Range<K extends Kind> {
  readonly from: In<K>
  readonly to: In<K>
  /** Number of values on a grid, ends included. Not used by sampled designs. */
  readonly count?: number
  /** Values a constant step or a constant ratio apart. Default `linear`. */
  readonly spacing?: 'linear' | 'log'
}

/** How the varied inputs are combined. */
export type Design =
  /** Every combination; the last input varies fastest. */
  | 'grid'
  /** Row by row; every input gives a list of the same length. */
  | 'list'
  | {
      /** Number of points: each input's range is cut into as many equal parts, and each part is used once. */
      readonly latinHypercube: number
      /** Seed of the draws. */
      readonly seed: number
    }
  | {
      /** Number of points, the first ones of Sobol's sequence. */
      readonly sobol: number
      /** Seed of the scrambling. Default: not scrambled. */
      readonly seed?: number
    }
