// Inputs that formulas of pins and press fits share.

const DIAMETER = { kind: 'length', above: 0 } as const

/** An isotropic elastic material. */
export const ELASTIC = {
  fields: {
    /** Modulus of elasticity at the temperature and for the duration of the load. */
    modulus: { kind: 'modulus', above: 0 },
    /** Poisson's ratio. */
    poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
  },
} as const

/** A pin in a boss. */
export const PRESSED_PIN = {
  /** Diameter of the interface. */
  diameter: DIAMETER,
  /** Outer diameter of the boss. */
  bossDiameter: DIAMETER,
  /** Bore of a hollow pin; zero if solid. */
  pinBore: { kind: 'length', min: 0, default: '0 mm' },
  /** Material of the boss. */
  boss: ELASTIC,
  /** Material of the pin. */
  pin: ELASTIC,
} as const

/** A boss needs a wall. */
export const BOSS_HAS_WALL = {
  accepts: 'must be larger than the bore',
  holds: ({ bossDiameter, diameter }: { readonly bossDiameter: number; readonly diameter: number }) => bossDiameter > diameter,
}

/** A hollow pin needs a wall. */
export const PIN_HAS_WALL = {
  accepts: 'must be smaller than the pin',
  holds: ({ pinBore, diameter }: { readonly pinBore: number; readonly diameter: number }) => pinBore < diameter,
}

/** Friction surface of a press fit. */
export const GRIPPING_FIT = {
  /** Pressure of the fit, at its temperature and time. */
  pressure: { kind: 'stress', min: 0 },
  /** Diameter of the interface. */
  diameter: DIAMETER,
  /** Engaged length. */
  length: DIAMETER,
  /** Coefficient of friction. */
  friction: { kind: 'ratio', min: 0 },
} as const

/** A force across a pin that sticks out of a bore. */
export const EMBEDDED_PIN = {
  /** Force across the pin. */
  force: { kind: 'force', min: 0 },
  /** Distance of the force from the mouth of the bore, on the outside. */
  arm: { kind: 'length', min: 0 },
  /** Embedded length. */
  depth: DIAMETER,
  /** Diameter of the pin. */
  diameter: DIAMETER,
} as const
