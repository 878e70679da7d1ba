// Friction of cords on pulleys, as inputs that formulas share.

const COEFFICIENT = { kind: 'ratio', min: 0 } as const

export const PINION_FRICTION = {
  /** Coefficient of friction, cord on pinion; the low end of its range decides holding. */
  friction: COEFFICIENT,
} as const

export const DRUM_FRICTION = {
  /** Coefficient of friction, cord on drum. Default: that of the pinion. */
  drumFriction: { kind: 'ratio', min: 0, optional: true },
} as const

/** Friction of a cord on its two pulleys. */
export const FRICTIONS = {
  ...PINION_FRICTION,
  ...DRUM_FRICTION,
} as const

/** A validity statement of every wrap: a friction far above all known ones is a per cent sign that is missing. */
export const LIKELY_FRICTION = {
  'coefficient of friction of at most 2 (20 % is 0.2)': ({ friction }: { readonly friction: number }) => friction <= 2,
} as const

/** Friction that falls with pressure. */
export const FIBRE_LAW = {
  /**
   * Exponent n of friction that falls with pressure: the coefficients are those at the pretension, times (T/T0)^(n − 1) at a tension T. Fibres have
   * 0.67 to 1. Without a friction of its own the drum has that of the pinion at its lower pressure. Default: 1, Coulomb friction.
   */
  frictionExponent: { kind: 'ratio', above: 0, max: 1, optional: true },
} as const

/**
 * Least exponent of friction that is known: elastic contact of round bodies, whose area grows with the load to the power 2/3 (Hertz). A lower one lets the
 * friction of the slack branch grow beyond all measurements, and with it the slip torque.
 */
export const MIN_EXPONENT = 0.66

/** A validity statement of every loop with friction that falls with pressure. */
export const LIKELY_EXPONENT = {
  'friction exponent of at least 0.66 (fibres have 0.67 to 1)': ({
    frictionExponent,
  }: {
    readonly frictionExponent?: number | undefined
  }) => (frictionExponent ?? 1) >= MIN_EXPONENT,
} as const
