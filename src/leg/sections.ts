import { formula } from '../formula/index.js'

/** Bending stress of a hollow rectangular link: the wall farthest from the middle, from the moment it carries and its outer sizes. */
export const boxBendingStress = /* @__PURE__ */ formula('leg.boxBendingStress', {
  inputs: {
    /** Bending moment. */
    moment: { kind: 'torque', min: 0 },
    /** Outer width, along the bending axis. */
    width: { kind: 'length', above: 0 },
    /** Outer depth, across the bending axis. */
    depth: { kind: 'length', above: 0 },
    /** Wall thickness, the same all round; half the depth or more is solid. */
    wall: { kind: 'length', above: 0 },
    /** Force along the link, tension or compression, added as mean stress. */
    axialForce: { kind: 'force', min: 0, default: '0 N' },
  },
  output: {
    /** Largest stress at the outer fibre. */
    stress: 'stress',
    /** Second moment of area. */
    secondMoment: 'secondMomentOfArea',
    /** Area of the section. */
    area: 'area',
  },
  assumes: ['straight beam, plane sections stay plane', 'infill carries nothing', 'no buckling of the wall'],
  source: [{ level: 'published', where: 'any strength of materials text: hollow rectangle, (B H³ − b h³)/12; bending stress M c / I' }],
  si: ({ moment, width, depth, wall, axialForce }) => {
    const innerWidth = Math.max(0, width - 2 * wall)
    const innerDepth = Math.max(0, depth - 2 * wall)
    const secondMoment = (width * depth ** 3 - innerWidth * innerDepth ** 3) / 12
    const area = width * depth - innerWidth * innerDepth
    return { stress: (moment * depth) / (2 * secondMoment) + axialForce / area, secondMoment, area }
  },
})

/** Bending stress of a round solid or hollow shaft. */
export const roundBendingStress = /* @__PURE__ */ formula('leg.roundBendingStress', {
  inputs: {
    /** Bending moment. */
    moment: { kind: 'torque', min: 0 },
    /** Diameter that carries: the root of a thread. */
    diameter: { kind: 'length', above: 0 },
    /** Diameter of a hole along the axis. */
    holeDiameter: { kind: 'length', min: 0, default: '0 mm' },
  },
  /** Stress at the outer fibre. */
  output: 'stress',
  assumes: ['straight shaft, no notch'],
  source: [{ level: 'published', where: 'any strength of materials text: 32 M / (π d³), hollow with 1 − (hole / d)⁴' }],
  valid: { 'hole smaller than the shaft': ({ diameter, holeDiameter }) => holeDiameter < diameter },
  si: ({ moment, diameter, holeDiameter }) => (32 * moment) / (Math.PI * diameter ** 3 * (1 - (holeDiameter / diameter) ** 4)),
})

/** Torsional rigidity of a thin-walled closed box: what a link gives under a twist. */
export const boxTorsionRigidity = /* @__PURE__ */ formula('leg.boxTorsionRigidity', {
  inputs: {
    /** Outer width. */
    width: { kind: 'length', above: 0 },
    /** Outer depth. */
    depth: { kind: 'length', above: 0 },
    /** Wall thickness, the same all round. */
    wall: { kind: 'length', above: 0 },
    /** Modulus of elasticity. */
    modulus: { kind: 'modulus', above: 0 },
    /** Poisson's ratio. */
    poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
  },
  /** Torque per twist per length. */
  output: 'bendingRigidity',
  assumes: ['closed thin wall, one thickness', 'isotropic, shear modulus E / 2(1 + ν)'],
  source: [{ level: 'published', where: 'Bredt 1896; any strength of materials text, "torsion of thin-walled tubes": 4 A² t / perimeter' }],
  valid: { 'wall at most a quarter of the smaller side': ({ width, depth, wall }) => wall <= 0.25 * Math.min(width, depth) },
  si: ({ width, depth, wall, modulus, poissonRatio }) => {
    const b = width - wall
    const h = depth - wall
    return ((modulus / (2 * (1 + poissonRatio))) * 4 * b * b * h * h * wall) / (2 * (b + h))
  },
})
