// Inputs that formulas of creep share.

/** Creep strain by powers of stress and time. */
export const POWER_LAW = {
  /** Creep strain at the reference stress and time. */
  referenceStrain: { kind: 'strain', above: 0 },
  /** Reference stress. */
  referenceStress: { kind: 'stress', above: 0 },
  /** Reference time. */
  referenceTime: { kind: 'time', above: 0, default: '1 h' },
  /** Exponent of stress. */
  stressExponent: { kind: 'ratio', above: 0 },
  /** Exponent of time. */
  timeExponent: { kind: 'ratio', above: 0, max: 1 },
} as const

export const MODULUS = {
  /** Modulus at once (short-term). */
  modulus: { kind: 'modulus', above: 0 },
} as const

export const CREEP_COEFFICIENT = {
  /** Creep strain at the reference time over the elastic strain. */
  creepCoefficient: { kind: 'ratio', min: 0 },
} as const

export const TIME_UNDER_LOAD = {
  /** Time under load. */
  time: { kind: 'time', min: 0 },
} as const

export const REFERENCE_TIME = {
  /** Time the coefficient is for. */
  referenceTime: { kind: 'time', above: 0, default: '1 h' },
} as const

export const CREEP_EXPONENT = {
  /** Exponent of time. */
  creepExponent: { kind: 'ratio', above: 0, below: 1 },
} as const

export const TIME_HELD = {
  /** Time since the strain was imposed. */
  time: { kind: 'time', min: 0 },
} as const
