import { formula } from '../formula/index.js'
import { BOX, HOLE_FITS, ROUND, WALLS_FIT } from './section-inputs.js'
import { boxSection, roundSection } from './sections.js'
import { thinWalledTorsion } from './torsion.js'

/** Shear stress where the shear force of a box is highest: in the middle of the two walls along it. */
const wallShear = (force: number, along: number, across: number, wall: number, secondMoment: number): number => {
  const [hollowAlong, hollowAcross] = [Math.max(0, along - 2 * wall), Math.max(0, across - 2 * wall)]
  const firstMoment = (across * along ** 2 - hollowAcross * hollowAlong ** 2) / 8
  return (force * firstMoment) / (2 * wall * secondMoment)
}

/**
 * Largest normal and shear stress of a box beam that is bent about both axes, twisted, pulled or pushed, and sheared.
 *
 * The two bending stresses meet in a corner, and the shear of torque and shear force in the middle of a wall. Who combines both results as if they met in one
 * point is on the safe side.
 */
export const boxCombinedStress = /* @__PURE__ */ formula('structures.boxCombinedStress', {
  inputs: {
    /** Bending moment in the plane of the depth. */
    moment: { kind: 'torque', min: 0 },
    /** Bending moment in the plane of the width. */
    sidewaysMoment: { kind: 'torque', min: 0 },
    /** Torque about the beam. */
    torque: { kind: 'torque', min: 0 },
    /** Force along the beam, tension or compression. */
    axialForce: { kind: 'force', min: 0, default: '0 N' },
    /** Shear force along the depth. */
    shearForce: { kind: 'force', min: 0, default: '0 N' },
    /** Shear force along the width. */
    sidewaysShearForce: { kind: 'force', min: 0, default: '0 N' },
    ...BOX,
  },
  output: {
    /** Largest stress along the beam, in a corner. */
    normalStress: 'stress',
    /** Largest shear stress, at the outside in the middle of a wall. */
    shearStress: 'stress',
    /** The share of the torque in it. */
    torsionStress: 'stress',
  },
  equation: [
    'innerWidth = max(0 m, width - 2 * wall)',
    'innerDepth = max(0 m, depth - 2 * wall)',
    'area = width * depth - innerWidth * innerDepth',
    'secondMoment = (width * depth^3 - innerWidth * innerDepth^3) / 12',
    'sidewaysSecondMoment = (depth * width^3 - innerDepth * innerWidth^3) / 12',
    'normalStress = moment * depth / (2 * secondMoment) + sidewaysMoment * width / (2 * sidewaysSecondMoment) + axialForce / area',
    'enclosed = (width - wall) * (depth - wall)',
    'torsionStress = torque / (2 * enclosed * wall) + torque * (width + depth - 2 * wall) / (2 * enclosed^2)',
    'wallShear = shearForce * (width * depth^2 - innerWidth * innerDepth^2) / (16 * wall * secondMoment)',
    'sidewaysWallShear = sidewaysShearForce * (depth * width^2 - innerDepth * innerWidth^2) / (16 * wall * sidewaysSecondMoment)',
    'shearStress = torsionStress + max(wallShear, sidewaysWallShear)',
  ],
  assumes: [
    'straight beam, plane sections stay plane; infill carries nothing',
    'shear of the torque as in thinWalledTorsion, with no hindered warping; rounded inner corners',
    'shear force shared by the two walls along it: high for a solid section that is not square',
  ],
  source: [
    { level: 'published', where: 'any strength-of-materials text: M c/I of both axes added, V Q/(I t), Bredt T/(2 A t)' },
    { level: 'computed', where: 'stress of bending, shear and twist summed over the cells of the section' },
  ],
  requires: { wall: WALLS_FIT },
  valid: { 'wall at most a quarter of the smaller side': ({ width, depth, wall }) => wall <= 0.25 * Math.min(width, depth) * (1 + 1e-9) },
  si: ({ moment, sidewaysMoment, torque, axialForce, shearForce, sidewaysShearForce, width, depth, wall }) => {
    const { area, secondMoment, sidewaysSecondMoment, sectionModulus, sidewaysSectionModulus } = boxSection.si({ width, depth, wall })
    const [b, h] = [width - wall, depth - wall]
    const torsionStress = thinWalledTorsion.si({ torque, enclosedArea: b * h, perimeter: 2 * (b + h), wall, shearModulus: 1 }).shearStress
    const upright = wallShear(shearForce, depth, width, wall, secondMoment)
    const sideways = wallShear(sidewaysShearForce, width, depth, wall, sidewaysSecondMoment)
    return {
      normalStress: moment / sectionModulus + sidewaysMoment / sidewaysSectionModulus + axialForce / area,
      shearStress: torsionStress + Math.max(upright, sideways),
      torsionStress,
    }
  },
})

/** Largest normal and shear stress of a round bar or tube that is bent about both axes, twisted, and pulled or pushed. Both are at the outside. */
export const roundCombinedStress = /* @__PURE__ */ formula('structures.roundCombinedStress', {
  inputs: {
    /** Bending moment in one plane. */
    moment: { kind: 'torque', min: 0 },
    /** Bending moment in the plane square to it. */
    sidewaysMoment: { kind: 'torque', min: 0 },
    /** Torque about the bar. */
    torque: { kind: 'torque', min: 0 },
    /** Force along the bar, tension or compression. */
    axialForce: { kind: 'force', min: 0, default: '0 N' },
    ...ROUND,
  },
  output: {
    /** Largest stress along the bar. */
    normalStress: 'stress',
    /** Shear stress of the torque. */
    shearStress: 'stress',
  },
  equation: [
    'area = pi / 4 * (diameter^2 - holeDiameter^2)',
    'secondMoment = pi / 64 * (diameter^4 - holeDiameter^4)',
    'normalStress = sqrt(moment^2 + sidewaysMoment^2) * diameter / (2 * secondMoment) + axialForce / area',
    'shearStress = torque * diameter / (4 * secondMoment)',
  ],
  assumes: [
    'straight bar, plane sections stay plane',
    'no notch',
    'shear of a shear force left out: it is nothing where bending is largest',
  ],
  source: [{ level: 'published', where: 'any strength-of-materials text: moments of a round section add as vectors; T r/J' }],
  requires: { holeDiameter: HOLE_FITS },
  si: ({ moment, sidewaysMoment, torque, axialForce, diameter, holeDiameter }) => {
    const { area, sectionModulus, torsionalSectionModulus } = roundSection.si({ diameter, holeDiameter })
    return {
      normalStress: Math.hypot(moment, sidewaysMoment) / sectionModulus + axialForce / area,
      shearStress: torque / torsionalSectionModulus,
    }
  },
})
