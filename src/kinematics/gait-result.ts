import type { Quantity } from '../units/index.js'

/** One leg's part in a gait: what its foot path is made from. */
export interface GaitLeg {
  /** Part of the stride after which it touches down. */
  readonly phase: number
  /** Sweep of the foot under the body: the chord of its arc when the body turns. */
  readonly stanceSweep: Quantity<'length'>
  /** Direction in which the foot steps, from x towards y. */
  readonly heading: Quantity<'angle'>
  /** Largest part of the weight on this leg. */
  readonly largestShare: Quantity<'ratio'>
  /** Mean part of the weight over the stride. */
  readonly meanShare: Quantity<'ratio'>
}

/** A gait moment by moment, plain SI numbers: columns of one number a sample, or of one a leg and sample (`leg + legs × sample`). */
export interface GaitSamples {
  /** Samples of the stride. */
  readonly count: number
  /** Legs of the robot. */
  readonly legs: number
  /** Time after the stride's start, s. */
  readonly time: Float64Array
  /** 1 where a leg stands. */
  readonly stands: Uint8Array
  /** Place of each standing foot in the body's frame, m; NaN in swing. */
  readonly footX: Float64Array
  /** The same to the left. */
  readonly footY: Float64Array
  /**
   * Least distance inside the support polygon of the point where the weight passes through the ground, m; negative outside and, with two feet, minus the
   * distance from the line between them. −∞ with fewer.
   */
  readonly margin: Float64Array
  /** The same along the direction of travel only, m; −∞ where the line of travel misses the polygon. */
  readonly longitudinalMargin: Float64Array
  /** Part of the weight on each leg at rest. */
  readonly share: Float64Array
  /** Largest part of friction used by a foot at rest; NaN where the feet cannot hold the weight. */
  readonly frictionUse: Float64Array
  /** Plain data: lists instead of typed arrays. */
  toJSON(): Record<string, unknown>
}

/** A gait: how it stands along the stride. */
export interface Gait {
  /** The legs, in the order of the feet. */
  readonly legs: readonly GaitLeg[]
  /** Smallest static margin along the stride; negative where the robot would tip if it stopped. */
  readonly leastMargin: Quantity<'length'>
  /** The same along the direction of travel only. */
  readonly leastLongitudinalMargin: Quantity<'length'>
  /** Time of the smallest margin. */
  readonly atTime: Quantity<'time'>
  /** Fewest and most standing legs. */
  readonly standing: {
    /** Fewest at any moment. */
    readonly fewest: number
    /** Most at any moment. */
    readonly most: number
  }
  /** Whether three or more legs stand around the weight at all times: the robot may stop at any moment. */
  readonly staticallyStable: boolean
  /** Largest part of friction used by a foot, where the feet hold the weight at all. */
  readonly worstFrictionUse: Quantity<'ratio'>
  /** The gait moment by moment. */
  readonly samples: GaitSamples
}
