// Inputs that formulas of belts and gears share.

import { CENTRE_DISTANCE } from './inputs.js'

/** Teeth of both pulleys of a belt, its pitch, and the distance of the axes. */
export const BELT_PULLEYS = {
  /** Teeth of the small pulley. */
  smallTeeth: { kind: 'count', min: 6, whole: true },
  /** Teeth of the large pulley. */
  largeTeeth: { kind: 'count', min: 6, whole: true },
  /** Pitch of the belt. */
  pitch: { kind: 'length', above: 0 },
  ...CENTRE_DISTANCE,
} as const

interface BeltPulleys {
  readonly smallTeeth: number
  readonly largeTeeth: number
  readonly pitch: number
  readonly centreDistance: number
}

/** Pulleys that a belt can join. */
export const BELT_FITS = {
  largeTeeth: {
    accepts: 'must be at least the teeth of the small pulley',
    holds: ({ smallTeeth, largeTeeth }: BeltPulleys) => largeTeeth >= smallTeeth,
  },
  centreDistance: {
    accepts: 'must exceed the sum of the pitch radii, or the pulleys overlap',
    holds: ({ smallTeeth, largeTeeth, pitch, centreDistance }: BeltPulleys) =>
      centreDistance > (pitch * (smallTeeth + largeTeeth)) / (2 * Math.PI),
  },
}

export const TANGENTIAL_FORCE = {
  /** Tangential force at the pitch circle. */
  tangentialForce: { kind: 'force', min: 0 },
} as const

export const MODULE = {
  /** Module. */
  module: { kind: 'length', above: 0 },
} as const
