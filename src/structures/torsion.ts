import { formula } from '../formula/index.js'
import { POISSON_RATIO, SHEAR_MODULUS } from './material-inputs.js'
import { BOX, HOLE_FITS, ROUND, WALLS_FIT } from './section-inputs.js'
import { roundSection } from './sections.js'

const TORQUE = {
  /** Torque. */
  torque: { kind: 'torque', min: 0 },
} as const

const LENGTH = {
  /** Length of the bar. */
  length: { kind: 'length', above: 0 },
} as const

/** Shear stress and stiffness of a round bar or tube under a torque. */
export const roundTorsion = /* @__PURE__ */ formula('structures.roundTorsion', {
  inputs: {
    ...TORQUE,
    ...ROUND,
    ...LENGTH,
    ...SHEAR_MODULUS,
  },
  output: {
    /** Largest shear stress, at the outside. */
    shearStress: 'stress',
    /** Torsional stiffness of the length. */
    stiffness: 'torsionalStiffness',
    /** Angle of twist over the length. */
    twist: 'angle',
  },
  equation: [
    'polarSecondMoment = pi / 32 * (diameter^4 - holeDiameter^4)',
    'shearStress = torque * diameter / (2 * polarSecondMoment)',
    'stiffness = shearModulus * polarSecondMoment / length',
    'twist = torque / stiffness',
  ],
  assumes: ['elastic', 'no notch'],
  source: [{ level: 'published', where: 'Gere, Mechanics of Materials, section 3.3' }],
  requires: { holeDiameter: HOLE_FITS },
  si: ({ torque, diameter, holeDiameter, length, shearModulus }) => {
    const { polarSecondMoment, torsionalSectionModulus } = roundSection.si({ diameter, holeDiameter })
    const stiffness = (shearModulus * polarSecondMoment) / length
    return { shearStress: torque / torsionalSectionModulus, stiffness, twist: torque / stiffness }
  },
})

/** Terms of the series that a rectangle needs: each further one changes less than a rounding error. */
const TERMS = 12

/**
 * Shear stress and stiffness of a solid rectangular bar under a torque, by the exact series.
 *
 * The largest shear stress is in the middle of the wide face, not at the corners.
 */
export const rectangleTorsion = /* @__PURE__ */ formula('structures.rectangleTorsion', {
  inputs: {
    ...TORQUE,
    /** One side of the section. */
    width: { kind: 'length', above: 0 },
    /** The other side. */
    depth: { kind: 'length', above: 0 },
    ...LENGTH,
    ...SHEAR_MODULUS,
  },
  output: {
    /** Torsion constant. */
    torsionConstant: 'secondMomentOfArea',
    /** Largest shear stress, in the middle of the wide face. */
    shearStress: 'stress',
    /** Torsional stiffness of the length. */
    stiffness: 'torsionalStiffness',
    /** Angle of twist over the length. */
    twist: 'angle',
  },
  equation: ['twist == torque / stiffness', 'stiffness == shearModulus * torsionConstant / length'],
  assumes: ['elastic', 'ends free to warp: an end that is held flat is stiffer'],
  source: [
    { level: 'unverified', where: 'Saint-Venant 1855; Timoshenko & Goodier, Theory of Elasticity, torsion of rectangular bars' },
    { level: 'referenceLibrary', where: 'Prandtl’s stress function by finite differences' },
  ],
  si: ({ torque, width, depth, length, shearModulus }) => {
    const a = Math.max(width, depth)
    const b = Math.min(width, depth)
    let constant = 0
    let edge = 0
    for (let k = 0; k < TERMS; k++) {
      const n = 2 * k + 1
      const x = (n * Math.PI * a) / (2 * b)
      constant += Math.tanh(x) / n ** 5
      edge += 1 / (n * n * Math.cosh(x))
    }
    const torsionConstant = a * b ** 3 * (1 / 3 - ((64 * b) / (Math.PI ** 5 * a)) * constant)
    const stiffness = (shearModulus * torsionConstant) / length
    return {
      torsionConstant,
      shearStress: ((torque * b) / torsionConstant) * (1 - (8 / Math.PI ** 2) * edge),
      stiffness,
      twist: torque / stiffness,
    }
  },
})

/** Shear stress and rigidity of a thin-walled closed section of any shape, whose wall has one thickness. */
export const thinWalledTorsion = /* @__PURE__ */ formula('structures.thinWalledTorsion', {
  inputs: {
    ...TORQUE,
    /** Area that the middle line of the wall encloses. */
    enclosedArea: { kind: 'area', above: 0 },
    /** Length of the middle line around the section. */
    perimeter: { kind: 'length', above: 0 },
    /** Wall thickness. */
    wall: { kind: 'length', above: 0 },
    ...SHEAR_MODULUS,
  },
  output: {
    /** Shear stress at the outer surface. */
    shearStress: 'stress',
    /** Mean shear stress through the wall. */
    meanShearStress: 'stress',
    /** Torsion constant. */
    torsionConstant: 'secondMomentOfArea',
    /** Torque per twist per length. */
    rigidity: 'bendingRigidity',
  },
  equation: [
    'torsionConstant = 4 * enclosedArea^2 * wall / perimeter',
    'meanShearStress = torque / (2 * enclosedArea * wall)',
    'shearStress = meanShearStress + torque * wall / torsionConstant',
    'rigidity = shearModulus * torsionConstant',
  ],
  assumes: [
    'closed section: a slot along it leaves next to nothing',
    'shear rises linearly through the wall; round the inner corners, which concentrate it',
    'rigidity of a box 2 % low with a wall of a twentieth of its side, 5 % with a tenth, 18 % with a quarter',
  ],
  source: [
    { level: 'published', where: 'Gere, Mechanics of Materials, section 3.10 (Bredt): T/(2 A t), 4 A² t/L' },
    { level: 'referenceLibrary', where: 'Prandtl’s stress function by finite differences' },
  ],
  requires: {
    perimeter: {
      accepts: 'must be at least that of the circle of the same area, √(4 π area)',
      holds: ({ perimeter, enclosedArea }) => perimeter >= Math.sqrt(4 * Math.PI * enclosedArea) * (1 - 1e-9),
    },
  },
  valid: {
    'wall at most a third of the mean width, four times area over perimeter': ({ wall, enclosedArea, perimeter }) =>
      wall <= ((4 / 3) * (1 + 1e-9) * enclosedArea) / perimeter,
  },
  si: ({ torque, enclosedArea, perimeter, wall, shearModulus }) => {
    const torsionConstant = (4 * enclosedArea * enclosedArea * wall) / perimeter
    const meanShearStress = torque / (2 * enclosedArea * wall)
    return {
      shearStress: meanShearStress + (torque * wall) / torsionConstant,
      meanShearStress,
      torsionConstant,
      rigidity: shearModulus * torsionConstant,
    }
  },
})

/** Torsional rigidity of a box with thin walls. */
export const boxTorsionalRigidity = /* @__PURE__ */ formula('structures.boxTorsionalRigidity', {
  inputs: {
    ...BOX,
    /** Modulus of elasticity. */
    modulus: { kind: 'modulus', above: 0 },
    ...POISSON_RATIO,
  },
  /** Torque per twist per length. */
  output: 'bendingRigidity',
  equation: [
    'shearModulus = modulus / (2 * (1 + poissonRatio))',
    'result = 2 * shearModulus * wall * ((width - wall) * (depth - wall))^2 / (width - wall + depth - wall)',
  ],
  assumes: ['as thinWalledTorsion', 'isotropic: shear modulus E/(2 (1 + ν))'],
  source: [{ level: 'published', where: 'as structures.thinWalledTorsion' }],
  requires: { wall: WALLS_FIT },
  valid: { 'wall at most a quarter of the smaller side': ({ width, depth, wall }) => wall <= 0.25 * Math.min(width, depth) * (1 + 1e-9) },
  si: ({ width, depth, wall, modulus, poissonRatio }) => {
    const b = width - wall
    const h = depth - wall
    return thinWalledTorsion.si({
      torque: 0,
      enclosedArea: b * h,
      perimeter: 2 * (b + h),
      wall,
      shearModulus: modulus / (2 * (1 + poissonRatio)),
    }).rigidity
  },
})
