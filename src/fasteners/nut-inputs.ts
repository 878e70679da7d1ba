// Inputs that formulas of held nuts share.

export const ACROSS_FLATS = {
  /** Width of the nut across flats. */
  acrossFlats: { kind: 'length', above: 0 },
} as const

export const NUT_TORQUE = {
  /** Torque on the nut. */
  torque: { kind: 'torque', min: 0 },
} as const

export const NUT_HEIGHT = {
  /** Height of nut held by the walls. */
  height: { kind: 'length', above: 0 },
} as const

/** A nut held from turning by walls. */
export const HELD_NUT = {
  ...NUT_TORQUE,
  ...ACROSS_FLATS,
  ...NUT_HEIGHT,
  /** Flats that touch: 6 in a pocket, 2 in an open slot. */
  flats: { kind: 'count', min: 2, max: 6, whole: true },
  /** Pocket across flats minus nut across flats. */
  clearance: { kind: 'length', min: 0 },
  /** Compressive strength of the wall at its temperature. */
  compressiveStrength: { kind: 'stress', above: 0 },
} as const

/** Five flats do not centre a nut. */
export const FLATS_IN_PAIRS = {
  accepts: 'must be 2, 3, 4 or 6, since five do not centre a nut',
  holds: ({ flats }: { readonly flats: number }) => flats !== 5,
}
