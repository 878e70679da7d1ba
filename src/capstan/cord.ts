import { formula } from '../formula/index.js'
import { ROPE_GRADE } from './cord-inputs.js'

/** A cord by its filaments. */
const FILAMENTS = {
  /** Density of the filament. */
  filamentDensity: { kind: 'density', above: 0 },
  /** Mass per length of the cord. */
  massPerLength: { kind: 'massPerLength', above: 0 },
} as const

const ROPE_DIAMETER = {
  /** Nominal diameter of the rope. */
  diameter: { kind: 'length', above: 0 },
} as const

/** Axial rigidity of a braid from its filament's modulus and the cord's mass per length. */
export const braidAxialRigidity = /* @__PURE__ */ formula('capstan.braidAxialRigidity', {
  inputs: {
    /** Tensile modulus of the filament. */
    filamentModulus: { kind: 'modulus', above: 0 },
    ...FILAMENTS,
    /** Angle of the strands to the cord's axis. */
    braidAngle: { kind: 'angle', min: 0, below: '45 deg' },
    /** Apparent lateral contraction of the braid. */
    lateralRatio: { kind: 'ratio', min: 0, max: 1, default: 0.5 },
  },
  output: 'axialRigidity',
  equation: [
    'result = filamentModulus * massPerLength / filamentDensity * cos(braidAngle)^2 * (cos(braidAngle)^2 - lateralRatio * sin(braidAngle)^2)',
  ],
  assumes: ['affine helix', 'bedded in: a new braid has 0.3 to 0.7 of this until cycled'],
  source: [{ level: 'computed', where: 'strain and force of a helical strand resolved on the cord axis' }],
  si: ({ filamentModulus, filamentDensity, massPerLength, braidAngle, lateralRatio }) => {
    const cosine2 = Math.cos(braidAngle) ** 2
    return filamentModulus * (massPerLength / filamentDensity) * cosine2 * (cosine2 - lateralRatio * (1 - cosine2))
  },
})

/** Breaking strength of a braid from its filament's strength: crossing strands and unequal lengths keep it from using all of it. */
export const braidBreakingStrength = /* @__PURE__ */ formula('capstan.braidBreakingStrength', {
  inputs: {
    /** Tensile strength of the filament. */
    filamentStrength: { kind: 'stress', above: 0 },
    ...FILAMENTS,
    /** Share of the filament strength that the braid realises: 0.5 to 0.8. */
    realisation: { kind: 'ratio', above: 0, max: 1 },
  },
  /** Straight, new, without its ends. A pull test or the spool's own figure goes before it. */
  output: 'force',
  equation: ['result = realisation * filamentStrength * massPerLength / filamentDensity'],
  assumes: ['all mass of the cord bears load: no cover, no coating'],
  valid: { 'realisation of 0.5 to 0.8': ({ realisation }) => realisation >= 0.5 && realisation <= 0.8 },
  source: [
    { level: 'computed', where: 'filament area times strength' },
    { level: 'unverified', where: 'rope practice: braids realise half to four fifths of the filament strength' },
  ],
  si: ({ filamentStrength, filamentDensity, massPerLength, realisation }) =>
    (realisation * filamentStrength * massPerLength) / filamentDensity,
})

/** Breaking load of a steel wire rope by its construction factor. */
export const wireRopeBreakingLoad = /* @__PURE__ */ formula('capstan.wireRopeBreakingLoad', {
  inputs: {
    ...ROPE_DIAMETER,
    ...ROPE_GRADE,
    /** Construction: 7x7 or 7x19 with a wire strand core. */
    construction: { oneOf: ['7x7', '7x19'] },
  },
  output: 'force',
  source: [{ level: 'unverified', where: 'EN 12385-4: F = K d² R, K 0.359 (7x7), 0.332 (7x19)' }],
  si: ({ diameter, grade, construction }) => (construction === '7x7' ? 0.359 : 0.332) * diameter * diameter * grade,
})

/** Axial rigidity of a wire rope from the stretch constant makers print (elongation in per cent = constant × load in lbf / diameter² in in²). */
export const wireRopeRigidity = /* @__PURE__ */ formula('capstan.wireRopeRigidity', {
  inputs: {
    ...ROPE_DIAMETER,
    /** Stretch constant of the construction, such as 1.62e-5 for 7x19 stainless. */
    stretchConstant: { kind: 'ratio', above: 0 },
  },
  output: {
    /** Axial rigidity. */
    axialRigidity: 'axialRigidity',
    /** Modulus on the full circle of the diameter: a quarter of the wire's, never use that. */
    circleModulus: 'modulus',
  },
  equation: ['axialRigidity = 100 psi / stretchConstant * diameter^2', 'circleModulus = 4 / pi * 100 psi / stretchConstant'],
  assumes: ['constructional stretch pulled out'],
  source: [{ level: 'published', where: "a wire-rope seller's page of formulas: elongation % = W G / D², G = 1.62e-5 for 7x19 stainless" }],
  si: ({ diameter, stretchConstant }) => {
    // 100 % over the constant, in pounds-force per square inch, on a square of side D.
    const perSquare = (100 / stretchConstant) * 6894.757293168361
    return { axialRigidity: perSquare * diameter * diameter, circleModulus: (4 * perSquare) / Math.PI }
  },
})

/** Highest working tension of a cord after its ends, its bend over the smallest pulley and a design factor. */
export const workingTension = /* @__PURE__ */ formula('capstan.workingTension', {
  title: 'allowable working tension of a cord',
  inputs: {
    /** Breaking strength of the straight cord, new. */
    breakingStrength: { kind: 'force', above: 0 },
    /** Share of the strength the ends keep. */
    endEfficiency: { kind: 'ratio', above: 0, max: 1 },
    /** Share of the strength kept over the smallest pulley. */
    bendEfficiency: { kind: 'ratio', above: 0, max: 1 },
    /** Factor between that strength and the highest working tension. */
    designFactor: { kind: 'ratio', min: 1 },
  },
  output: 'force',
  equation: ['result = breakingStrength * endEfficiency * bendEfficiency / designFactor'],
  assumes: ['losses of end and bend multiply'],
  source: [{ level: 'published', where: 'Cordage Institute CI 1401: design factors of 5 to 12 on breaking strength' }],
  valid: { 'design factor at least 5': ({ designFactor }) => designFactor >= 5 },
  si: ({ breakingStrength, endEfficiency, bendEfficiency, designFactor }) =>
    (breakingStrength * endEfficiency * bendEfficiency) / designFactor,
})
