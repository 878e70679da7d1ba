// Inputs that formulas of bearings share.

export const COCKING_MOMENT = {
  /** Cocking moment (`rodCocking`). */
  moment: { kind: 'torque', min: 0 },
} as const

export const BALLS = {
  /** Number of balls. */
  balls: { kind: 'count', min: 3, whole: true },
} as const

export const BALL_CIRCLE = {
  /** Pitch diameter of the balls. */
  pitchDiameter: { kind: 'length', above: 0 },
} as const

export const PAIR_SPACING = {
  /** Distance of the middles of the two bearings. */
  pairSpacing: { kind: 'length', above: 0 },
} as const

export const DYNAMIC_RATING = {
  /** Dynamic load rating. */
  dynamicRating: { kind: 'force', above: 0 },
} as const

export const RADIAL_LOAD = {
  /** Radial load. */
  radialLoad: { kind: 'force', min: 0 },
} as const
