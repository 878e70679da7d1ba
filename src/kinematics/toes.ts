import { formula } from '../formula/index.js'

const WIDTH = {
  /** Width. */
  width: { kind: 'length', above: 0 },
} as const

const ALLOWABLE_STRAIN = {
  /** Strain the material bears in bending, for the number of steps in question. */
  allowableStrain: { kind: 'strain', above: 0 },
} as const

/** A printed toe as a cantilever: how stiff it is, how far and how hard it may be bent. */
export const cantileverToe = /* @__PURE__ */ formula('kinematics.cantileverToe', {
  title: 'toe as a cantilever',
  inputs: {
    /** Modulus of elasticity, along the toe, for the duration and temperature in question. */
    modulus: { kind: 'modulus', above: 0 },
    /** Free length, root to point of contact. */
    length: { kind: 'length', above: 0 },
    ...WIDTH,
    /** Thickness in the direction of bending. */
    thickness: { kind: 'length', above: 0 },
    /** Force on the tip, square to the toe. */
    tipForce: { kind: 'force', min: 0 },
    ...ALLOWABLE_STRAIN,
  },
  output: {
    /** Force per tip deflection. */
    stiffness: 'linearStiffness',
    /** Tip deflection. */
    deflection: 'length',
    /** Slope of the tip. */
    tipAngle: 'angle',
    /** Strain at the root’s surface. */
    rootStrain: 'strain',
    /** Force at which the root reaches the allowable strain. */
    forceLimit: 'force',
    /** Tip deflection at which the root reaches the allowable strain. */
    deflectionLimit: 'length',
    /** Root strain over the allowable strain. */
    use: 'ratio',
  },
  equation: ['stiffness = modulus * width * thickness^3 / (4 * length^3)', 'deflection = tipForce / stiffness'],
  assumes: [
    'slender toe of one section, clamped rigidly at the root',
    'small deflection',
    'no stress raiser at the root: give it a fillet',
  ],
  valid: {
    'deflection below a tenth of the length (beyond it the toe is stiffer and the contact point wanders)': ({ length }, { deflection }) =>
      deflection <= 0.1 * length,
    'length above eight thicknesses (below, shear adds to the deflection)': ({ length, thickness }) => length >= 8 * thickness,
  },
  source: [
    { level: 'unverified', where: 'W. C. Young, R. G. Budynas, Roark’s Formulas for Stress and Strain, beams, cantilever with end load' },
  ],
  si: ({ modulus, length, width, thickness, tipForce, allowableStrain }) => {
    const rigidity = (modulus * width * thickness ** 3) / 12
    const stiffness = (3 * rigidity) / length ** 3
    const deflection = tipForce / stiffness
    const rootStrain = (tipForce * length * thickness) / (2 * rigidity)
    const forceLimit = (2 * rigidity * allowableStrain) / (length * thickness)
    return {
      stiffness,
      deflection,
      tipAngle: (tipForce * length * length) / (2 * rigidity),
      rootStrain,
      forceLimit,
      deflectionLimit: forceLimit / stiffness,
      use: rootStrain / allowableStrain,
    }
  },
})

/** A toe hinged at a notch between two round cut-outs: stiffness, and the angle its thinnest place bears. */
export const notchHinge = /* @__PURE__ */ formula('kinematics.notchHinge', {
  inputs: {
    /** Modulus of elasticity for the duration and temperature in question. */
    modulus: { kind: 'modulus', above: 0 },
    ...WIDTH,
    /** Thickness at the thinnest place. */
    thickness: { kind: 'length', above: 0 },
    /** Radius of the round cut-outs. */
    notchRadius: { kind: 'length', above: 0 },
    /** Angle the hinge is bent by. */
    angle: { kind: 'angle', min: 0 },
    ...ALLOWABLE_STRAIN,
  },
  output: {
    /** Moment per angle. */
    stiffness: 'torsionalStiffness',
    /** Moment at the angle. */
    moment: 'torque',
    /** Nominal strain at the surface of the thinnest place. */
    strain: 'strain',
    /** Angle at which the thinnest place reaches the allowable strain. */
    angleLimit: 'angle',
    /** Strain over the allowable strain. */
    use: 'ratio',
  },
  equation: [
    'stiffness = 2 * modulus * width * thickness^2.5 / (9 * pi * sqrt(notchRadius))',
    'moment = stiffness * angle',
    'strain = 6 * moment / (modulus * width * thickness^2)',
    'use = strain / allowableStrain',
    'angleLimit = angle / use',
  ],
  assumes: [
    'semicircular cut-outs on both sides',
    'thin hinge: the leading term of the exact integral',
    'nominal strain, without the small concentration of a round notch',
  ],
  valid: {
    'thickness below a tenth of the notch radius (stiffness then within about 5 %)': ({ thickness, notchRadius }) =>
      thickness <= 0.1 * notchRadius,
  },
  source: [
    {
      level: 'unverified',
      where: 'J. M. Paros, L. Weisbord, "How to design flexure hinges", Machine Design 37, 1965: k = 2 E b t^(5/2) / 9 π r^(1/2)',
    },
  ],
  si: ({ modulus, width, thickness, notchRadius, angle, allowableStrain }) => {
    const stiffness = (2 * modulus * width * thickness ** 2.5) / (9 * Math.PI * Math.sqrt(notchRadius))
    const strainPerAngle = (6 * stiffness) / (modulus * width * thickness * thickness)
    return {
      stiffness,
      moment: stiffness * angle,
      strain: strainPerAngle * angle,
      angleLimit: allowableStrain / strainPerAngle,
      use: (strainPerAngle * angle) / allowableStrain,
    }
  },
})
