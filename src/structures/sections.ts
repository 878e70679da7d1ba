import { formula } from '../formula/index.js'
import { BOX, HOLE_FITS, ROUND, WALLS_FIT } from './section-inputs.js'

/** Area, second moments and section moduli of a rectangular box, or of a solid rectangle where the walls meet. */
export const boxSection = /* @__PURE__ */ formula('structures.boxSection', {
  inputs: { ...BOX },
  output: {
    /** Area of the section. */
    area: 'area',
    /** Second moment of area about the axis along the width. */
    secondMoment: 'secondMomentOfArea',
    /** Second moment of area about the axis along the depth. */
    sidewaysSecondMoment: 'secondMomentOfArea',
    /** Section modulus for bending across the depth. */
    sectionModulus: 'sectionModulus',
    /** Section modulus for bending across the width. */
    sidewaysSectionModulus: 'sectionModulus',
  },
  equation: [
    'innerWidth = max(0 m, width - 2 * wall)',
    'innerDepth = max(0 m, depth - 2 * wall)',
    'area = width * depth - innerWidth * innerDepth',
    'secondMoment = (width * depth^3 - innerWidth * innerDepth^3) / 12',
    'sidewaysSecondMoment = (depth * width^3 - innerDepth * innerWidth^3) / 12',
    'sectionModulus = 2 * secondMoment / depth',
    'sidewaysSectionModulus = 2 * sidewaysSecondMoment / width',
  ],
  assumes: ['sharp corners', 'infill carries nothing'],
  source: [{ level: 'published', where: 'any strength-of-materials text: hollow rectangle, (B H³ − b h³)/12' }],
  requires: { wall: WALLS_FIT },
  si: ({ width, depth, wall }) => {
    const innerWidth = Math.max(0, width - 2 * wall)
    const innerDepth = Math.max(0, depth - 2 * wall)
    const secondMoment = (width * depth ** 3 - innerWidth * innerDepth ** 3) / 12
    const sidewaysSecondMoment = (depth * width ** 3 - innerDepth * innerWidth ** 3) / 12
    return {
      area: width * depth - innerWidth * innerDepth,
      secondMoment,
      sidewaysSecondMoment,
      sectionModulus: (2 * secondMoment) / depth,
      sidewaysSectionModulus: (2 * sidewaysSecondMoment) / width,
    }
  },
})

/** Area, second moments and section moduli of a round bar or tube. */
export const roundSection = /* @__PURE__ */ formula('structures.roundSection', {
  inputs: { ...ROUND },
  output: {
    /** Area of the section. */
    area: 'area',
    /** Second moment of area about a diameter. */
    secondMoment: 'secondMomentOfArea',
    /** Section modulus for bending. */
    sectionModulus: 'sectionModulus',
    /** Polar second moment of area, the torsion constant. */
    polarSecondMoment: 'secondMomentOfArea',
    /** Section modulus for torsion. */
    torsionalSectionModulus: 'sectionModulus',
  },
  equation: [
    'area = pi / 4 * (diameter^2 - holeDiameter^2)',
    'secondMoment = pi / 64 * (diameter^4 - holeDiameter^4)',
    'sectionModulus = 2 * secondMoment / diameter',
    'polarSecondMoment = 2 * secondMoment',
    'torsionalSectionModulus = 2 * sectionModulus',
  ],
  source: [{ level: 'published', where: 'any strength-of-materials text: π (D⁴ − d⁴)/64 and /32' }],
  requires: { holeDiameter: HOLE_FITS },
  si: ({ diameter, holeDiameter }) => {
    const secondMoment = (Math.PI / 64) * (diameter ** 4 - holeDiameter ** 4)
    return {
      area: (Math.PI / 4) * (diameter * diameter - holeDiameter * holeDiameter),
      secondMoment,
      sectionModulus: (2 * secondMoment) / diameter,
      polarSecondMoment: 2 * secondMoment,
      torsionalSectionModulus: (4 * secondMoment) / diameter,
    }
  },
})
