import { formula } from '../formula/index.js'
import { BOX, HOLE_FITS, ROUND, WALLS_FIT } from './section-inputs.js'
import { boxSection, roundSection } from './sections.js'

const MOMENT = {
  /** Bending moment. */
  moment: { kind: 'torque', min: 0 },
} as const

/** Largest stress of a box beam under a bending moment and a force along it. */
export const boxBendingStress = /* @__PURE__ */ formula('structures.boxBendingStress', {
  inputs: {
    ...MOMENT,
    ...BOX,
    /** Force along the beam, tension or compression, added as mean stress. */
    axialForce: { kind: 'force', min: 0, default: '0 N' },
  },
  output: {
    /** Largest stress, at the outer fibre. */
    stress: 'stress',
    /** Second moment of area. */
    secondMoment: 'secondMomentOfArea',
    /** Area of the section. */
    area: 'area',
  },
  equation: [
    'innerWidth = max(0 m, width - 2 * wall)',
    'innerDepth = max(0 m, depth - 2 * wall)',
    'area = width * depth - innerWidth * innerDepth',
    'secondMoment = (width * depth^3 - innerWidth * innerDepth^3) / 12',
    'stress = moment * depth / (2 * secondMoment) + axialForce / area',
  ],
  assumes: ['straight beam, plane sections stay plane', 'infill carries nothing', 'no buckling of the wall (`wallBuckling`)'],
  source: [{ level: 'published', where: 'any strength-of-materials text: M c/I + F/A' }],
  requires: { wall: WALLS_FIT },
  si: ({ moment, width, depth, wall, axialForce }) => {
    const { area, secondMoment } = boxSection.si({ width, depth, wall })
    return { stress: (moment * depth) / (2 * secondMoment) + axialForce / area, secondMoment, area }
  },
})

/** Bending stress of a round bar or tube. */
export const roundBendingStress = /* @__PURE__ */ formula('structures.roundBendingStress', {
  inputs: {
    ...MOMENT,
    ...ROUND,
  },
  /** Stress at the outer fibre. */
  output: 'stress',
  equation: ['result = 32 * moment * diameter / (pi * (diameter^4 - holeDiameter^4))'],
  assumes: ['straight bar, plane sections stay plane', 'no notch'],
  source: [{ level: 'published', where: 'any strength-of-materials text: M c/I, 32 M/(π d³) for a solid bar' }],
  requires: { holeDiameter: HOLE_FITS },
  si: ({ moment, diameter, holeDiameter }) => moment / roundSection.si({ diameter, holeDiameter }).sectionModulus,
})
