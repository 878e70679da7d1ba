import { formula } from '../formula/index.js'
import { COIL, COIL_FITS } from './helical-springs.js'

/**
 * Pull of an extension spring at a length between its hooks. Coils wound with initial tension stay closed until the pull exceeds it. Below its free length
 * the spring hangs loose and pulls nothing.
 */
export const extensionSpringForce = /* @__PURE__ */ formula('structures.extensionSpringForce', {
  inputs: {
    /** Length between the insides of the hooks. */
    length: { kind: 'length', min: 0 },
    /** Length between the insides of the hooks with closed coils and no pull. */
    freeLength: { kind: 'length', above: 0 },
    /** Pull that opens the coils. */
    initialTension: { kind: 'force', min: 0, default: '0 N' },
    /** Force that each length of deflection takes. */
    rate: { kind: 'linearStiffness', above: 0 },
  },
  output: {
    /** Pull of the spring. */
    force: 'force',
    /** Work that it gives back when it goes to its free length: what it throws a broken part with. */
    energy: 'energy',
    /** Whether it is stretched, or hangs loose. */
    state: { oneOf: ['stretched', 'loose'] },
  },
  equation: [
    'force = length > freeLength ? initialTension + rate * (length - freeLength) : 0 N',
    'energy = length > freeLength ? (initialTension + rate * (length - freeLength) / 2) * (length - freeLength) : 0 J',
  ],
  assumes: ['linear above the initial tension', 'a spring only pulls'],
  source: [
    { level: 'unverified', where: "Shigley's Mechanical Engineering Design, extension springs, F = F_i + k y" },
    { level: 'computed', where: 'work: the integral of the pull' },
  ],
  si: ({ length, freeLength, initialTension, rate }) => {
    const stretch = length - freeLength
    if (!(stretch > 0)) return { force: 0, energy: 0, state: 'loose' as const }
    return {
      force: initialTension + rate * stretch,
      energy: (initialTension + (rate * stretch) / 2) * stretch,
      state: 'stretched' as const,
    }
  },
})

/** Stresses in the hook of an extension spring: bending where the wire leaves the plane of its coils, and shear where it turns up from the body. */
export const extensionSpringHook = /* @__PURE__ */ formula('structures.extensionSpringHook', {
  inputs: {
    /** Pull of the spring. */
    force: { kind: 'force', min: 0 },
    ...COIL,
    /** Mean radius of the hook. Half the coil diameter in a full loop. */
    hookRadius: { kind: 'length', above: 0 },
    /** Mean radius with which the wire turns from the body into the hook. The smaller it is, the sooner the hook breaks. */
    bendRadius: { kind: 'length', above: 0 },
  },
  output: {
    /** Factor on the bending stress from the curvature of the hook. */
    bendingFactor: 'ratio',
    /** Bending and pull at the top of the hook. */
    bendingStress: 'stress',
    /** Factor on the shear stress from the curvature of the bend. */
    shearFactor: 'ratio',
    /** Shear stress in the bend. */
    shearStress: 'stress',
  },
  equation: [
    'bendingFactor = (4 * (2 * hookRadius / wireDiameter)^2 - 2 * hookRadius / wireDiameter - 1) / (4 * 2 * hookRadius / wireDiameter * (2 * hookRadius / wireDiameter - 1))',
    'bendingStress = force * (bendingFactor * 16 * coilDiameter / (pi * wireDiameter^3) + 4 / (pi * wireDiameter^2))',
    'shearFactor = (4 * 2 * bendRadius / wireDiameter - 1) / (4 * 2 * bendRadius / wireDiameter - 4)',
    'shearStress = shearFactor * 8 * force * coilDiameter / (pi * wireDiameter^3)',
  ],
  assumes: ['the pull on the axis of the coils: half the coil diameter is its arm', 'elastic'],
  source: [
    { level: 'unverified', where: "Shigley's Mechanical Engineering Design, extension springs, bending at A and torsion at B of the hook" },
  ],
  requires: {
    coilDiameter: COIL_FITS,
    hookRadius: {
      accepts: 'must be more than half the wire diameter',
      holds: ({ hookRadius, wireDiameter }) => hookRadius > wireDiameter / 2,
    },
    bendRadius: {
      accepts: 'must be more than half the wire diameter',
      holds: ({ bendRadius, wireDiameter }) => bendRadius > wireDiameter / 2,
    },
  },
  valid: {
    'a bend of at least the wire diameter': ({ bendRadius, wireDiameter }) => bendRadius >= wireDiameter * (1 - 1e-9),
  },
  si: ({ force, wireDiameter, coilDiameter, hookRadius, bendRadius }) => {
    const hook = (2 * hookRadius) / wireDiameter
    const bend = (2 * bendRadius) / wireDiameter
    const bendingFactor = (4 * hook ** 2 - hook - 1) / (4 * hook * (hook - 1))
    const shearFactor = (4 * bend - 1) / (4 * bend - 4)
    const cube = Math.PI * wireDiameter ** 3
    return {
      bendingFactor,
      bendingStress: force * ((bendingFactor * 16 * coilDiameter) / cube + 4 / (Math.PI * wireDiameter ** 2)),
      shearFactor,
      shearStress: (shearFactor * 8 * force * coilDiameter) / cube,
    }
  },
})
