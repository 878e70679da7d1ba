// Inputs that several formulas of this folder share.

export const DURATION = {
  /** Time under load. */
  duration: { kind: 'time', min: 0 },
} as const

export const TENSILE_STRENGTH = {
  /** Ultimate tensile strength. */
  tensileStrength: { kind: 'stress', above: 0 },
} as const
