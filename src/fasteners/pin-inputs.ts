// Inputs that formulas of pins and press fits share.

import { BOSS_DIAMETER, INTERFACE_DIAMETER, POISSON_RATIO } from './fit-inputs.js'

const DIAMETER = { kind: 'length', above: 0 } as const

export const PIN_FORCE = {
  /** Force across the pin. */
  force: { kind: 'force', min: 0 },
} as const

export const PIN_DIAMETER = {
  /** Diameter of the pin. */
  diameter: DIAMETER,
} as const

export const LUG_HOLE = {
  /** Hole diameter. */
  diameter: { kind: 'length', above: 0 },
} as const

export const CHEEK_THICKNESS = {
  /** Thickness of each cheek of the clevis. */
  cheekThickness: { kind: 'length', above: 0 },
} as const

/** An isotropic elastic material. */
export const ELASTIC = {
  fields: {
    /** Modulus of elasticity at the temperature and for the duration of the load. */
    modulus: { kind: 'modulus', above: 0 },
    ...POISSON_RATIO,
  },
} as const

/** A pin in a boss. */
export const PRESSED_PIN = {
  ...INTERFACE_DIAMETER,
  ...BOSS_DIAMETER,
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
  ...INTERFACE_DIAMETER,
  /** Engaged length. */
  length: DIAMETER,
  /** Coefficient of friction. */
  friction: { kind: 'ratio', min: 0 },
} as const

/** A force across a pin that sticks out of a bore. */
export const EMBEDDED_PIN = {
  ...PIN_FORCE,
  /** Distance of the force from the mouth of the bore, on the outside. */
  arm: { kind: 'length', min: 0 },
  /** Embedded length. */
  depth: DIAMETER,
  ...PIN_DIAMETER,
} as const
