import { formula } from '../formula/index.js'
import { POISSON_RATIO } from './material-inputs.js'
import { TUBE } from './section-inputs.js'

/** Shear coefficient of a round bar or tube: mean shear strain over that at the neutral axis, for the deflection of short beams. */
export const shearCoefficient = /* @__PURE__ */ formula('structures.shearCoefficient', {
  inputs: {
    ...TUBE,
    ...POISSON_RATIO,
  },
  /** Shear force over shear modulus, area and mean shear strain. */
  output: 'ratio',
  equation: [
    'm = innerDiameter / outerDiameter',
    'result = 6 * (1 + poissonRatio) * (1 + m^2)^2 / ((7 + 6 * poissonRatio) * (1 + m^2)^2 + (20 + 12 * poissonRatio) * m^2)',
  ],
  assumes: ['load without a distributed part over the section'],
  source: [{ level: 'unverified', where: 'G. R. Cowper, J. Appl. Mech. 33 (1966) 335: hollow circle' }],
  requires: {
    innerDiameter: {
      accepts: 'must be smaller than the outer diameter',
      holds: ({ innerDiameter, outerDiameter }) => innerDiameter < outerDiameter,
    },
  },
  si: ({ outerDiameter, innerDiameter, poissonRatio: v }) => {
    const square = (innerDiameter / outerDiameter) ** 2
    const sum = (1 + square) ** 2
    return (6 * (1 + v) * sum) / ((7 + 6 * v) * sum + (20 + 12 * v) * square)
  },
})
