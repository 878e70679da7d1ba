import { formula } from '../formula/index.js'

const WIRE_SHEAR_MODULUS = {
  /** Shear modulus of the wire. */
  shearModulus: { kind: 'modulus', above: 0 },
} as const

const DENSITY = {
  /** Density of the wire. */
  density: { kind: 'density', above: 0 },
} as const

/** Sizes of a spring coiled from round wire. */
export const COIL = {
  /** Diameter of the wire. */
  wireDiameter: { kind: 'length', above: 0 },
  /** Mean diameter of the coil: between the middles of the wire. */
  coilDiameter: { kind: 'length', above: 0 },
} as const

/** A coil that is wider than its wire; a curved wire of a lower index has no inside. */
export const COIL_FITS = {
  accepts: 'must be more than one and a half times the wire diameter',
  holds: ({ wireDiameter, coilDiameter }: { readonly wireDiameter: number; readonly coilDiameter: number }) =>
    coilDiameter > 1.5 * wireDiameter,
} as const

/** What springs are usually coiled with: outside it coils cannot be made, or tangle. */
export const USUAL_INDEX = {
  'a spring index, coil over wire diameter, of 4 to 20': ({
    wireDiameter,
    coilDiameter,
  }: {
    readonly wireDiameter: number
    readonly coilDiameter: number
  }) => coilDiameter >= 4 * wireDiameter * (1 - 1e-9) && coilDiameter <= 20 * wireDiameter * (1 + 1e-9),
} as const

/** Rate of a helical extension or compression spring: how much force each length of deflection takes. */
export const helicalSpringRate = /* @__PURE__ */ formula('structures.helicalSpringRate', {
  inputs: {
    ...COIL,
    /** Coils that deflect. Of an extension spring with hooks all of its body. */
    activeCoils: { kind: 'count', above: 0 },
    ...WIRE_SHEAR_MODULUS,
  },
  output: 'linearStiffness',
  equation: ['result = shearModulus * wireDiameter^4 / (8 * coilDiameter^3 * activeCoils)'],
  assumes: ['the wire twists only: no bending, no shear across it', 'coils that do not touch'],
  source: [
    { level: 'published', where: 'Bhandari, Design of Machine Elements, examples 10.2 and 10.5; the equation of EN 13906-1 and -2' },
  ],
  requires: { coilDiameter: COIL_FITS },
  valid: USUAL_INDEX,
  si: ({ wireDiameter, coilDiameter, activeCoils, shearModulus }) =>
    (shearModulus * wireDiameter ** 4) / (8 * coilDiameter ** 3 * activeCoils),
})

/**
 * Shear stress at the inside of the coil of an extension or compression spring, with the Wahl factor: the wire is curved, and its inner fibre is the
 * shorter one.
 */
export const helicalSpringShear = /* @__PURE__ */ formula('structures.helicalSpringShear', {
  inputs: {
    /** Force along the axis of the spring. */
    force: { kind: 'force', min: 0 },
    ...COIL,
  },
  output: {
    /** Coil diameter over wire diameter. */
    index: 'ratio',
    /** Wahl factor. */
    factor: 'ratio',
    /** Largest shear stress, factor included. */
    shearStress: 'stress',
  },
  equation: [
    'index = coilDiameter / wireDiameter',
    'factor = (4 * index - 1) / (4 * index - 4) + 0.615 / index',
    'shearStress = factor * 8 * force * coilDiameter / (pi * wireDiameter^3)',
  ],
  assumes: ['elastic', 'pull along the axis'],
  source: [{ level: 'published', where: 'Bhandari, Design of Machine Elements, example 10.3 (factors by index); A. M. Wahl' }],
  requires: { coilDiameter: COIL_FITS },
  valid: USUAL_INDEX,
  si: ({ force, wireDiameter, coilDiameter }) => {
    const index = coilDiameter / wireDiameter
    const factor = (4 * index - 1) / (4 * index - 4) + 0.615 / index
    return { index, factor, shearStress: (factor * 8 * force * coilDiameter) / (Math.PI * wireDiameter ** 3) }
  },
})

/** Mass of the wire of a coiled spring, without hooks and legs. */
export const springMass = /* @__PURE__ */ formula('structures.springMass', {
  inputs: {
    ...COIL,
    /** All coils. */
    coils: { kind: 'count', above: 0 },
    ...DENSITY,
  },
  output: 'mass',
  equation: ['result = density * pi^2 / 4 * wireDiameter^2 * coilDiameter * coils'],
  assumes: ['flat coils: the pitch makes the wire longer by less than a hundredth'],
  source: [{ level: 'computed', where: 'cross-section times length of the helix' }],
  si: ({ wireDiameter, coilDiameter, coils, density }) => ((density * Math.PI ** 2) / 4) * wireDiameter ** 2 * coilDiameter * coils,
})

/** Lowest frequency at which the coils of a spring swing between its two held ends (surge). A load that repeats faster than a tenth of it is not static. */
export const springSurge = /* @__PURE__ */ formula('structures.springSurge', {
  inputs: {
    ...COIL,
    /** Coils that deflect. */
    activeCoils: { kind: 'count', above: 0 },
    ...WIRE_SHEAR_MODULUS,
    ...DENSITY,
  },
  output: 'frequency',
  equation: ['result = wireDiameter / (2 * pi * activeCoils * coilDiameter^2) * sqrt(shearModulus / (2 * density))'],
  assumes: ['both ends held', 'no damping', 'coils that do not touch'],
  source: [
    { level: 'referenceLibrary', where: 'chain of masses and springs, eigenvalues by numpy' },
    { level: 'unverified', where: 'EN 13906-1, natural frequency of a spring with both ends guided' },
  ],
  requires: { coilDiameter: COIL_FITS },
  si: ({ wireDiameter, coilDiameter, activeCoils, shearModulus, density }) =>
    (wireDiameter / (2 * Math.PI * activeCoils * coilDiameter ** 2)) * Math.sqrt(shearModulus / (2 * density)),
})
