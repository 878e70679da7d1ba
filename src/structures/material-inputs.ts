// Inputs that formulas of this folder share.

/** Stiffness in shear. */
export const SHEAR_MODULUS = {
  /** Shear modulus. */
  shearModulus: { kind: 'modulus', above: 0 },
} as const

/** Sideways contraction of the material. */
export const POISSON_RATIO = {
  /** Poisson's ratio. */
  poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
} as const
