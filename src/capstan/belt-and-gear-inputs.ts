// Inputs that formulas of belts and gears share.

/** Teeth of both pulleys of a belt, and its pitch. */
export const BELT_TEETH = {
  /** Teeth of the small pulley. */
  smallTeeth: { kind: 'count', min: 6, whole: true },
  /** Teeth of the large pulley. */
  largeTeeth: { kind: 'count', min: 6, whole: true },
  /** Pitch of the belt. */
  pitch: { kind: 'length', above: 0 },
} as const

export const TANGENTIAL_FORCE = {
  /** Tangential force at the pitch circle. */
  tangentialForce: { kind: 'force', min: 0 },
} as const

export const MODULE = {
  /** Module. */
  module: { kind: 'length', above: 0 },
} as const
