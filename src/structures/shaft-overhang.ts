import { formula } from '../formula/index.js'
import { SHEAR_MODULUS } from './material-inputs.js'
import { TUBE } from './section-inputs.js'
import { roundSection } from './sections.js'
import { shearCoefficient } from './shear-coefficient.js'

const SECTION = {
  ...TUBE,
  /** Modulus. */
  modulus: { kind: 'modulus', above: 0 },
  ...SHEAR_MODULUS,
} as const

interface Section {
  readonly outerDiameter: number
  readonly innerDiameter: number
  readonly modulus: number
  readonly shearModulus: number
}

/** Bending, shear and torsional rigidity of a section; Poisson’s ratio follows from the two moduli. */
function rigidities({ outerDiameter, innerDiameter, modulus, shearModulus }: Section) {
  const { area, secondMoment, polarSecondMoment } = roundSection.si({ diameter: outerDiameter, holeDiameter: innerDiameter })
  const coefficient = shearCoefficient.si({ outerDiameter, innerDiameter, poissonRatio: modulus / (2 * shearModulus) - 1 })
  return { bending: modulus * secondMoment, shear: coefficient * shearModulus * area, torsion: shearModulus * polarSecondMoment }
}

const isRealSolid = ({ outerDiameter, innerDiameter, modulus, shearModulus }: Section) => {
  const poisson = modulus / (2 * shearModulus) - 1
  return innerDiameter < outerDiameter && poisson >= 0 && poisson <= 0.5 + 1e-9
}
const ACCEPTS = 'must be wider than its bore, with a shear modulus between a third and a half of the modulus'

/**
 * Load on the overhang of a shaft in two bearings: forces of the bearings, deflection and slope at the load, twist.
 *
 * Sections shorter than their diameter shear more than they bend. Beam theory is rough there: take the sum of both as an estimate. Under a clamped
 * sleeve the rigidities of shaft and sleeve add up only as long as the clamp holds.
 */
export const shaftOverhang = /* @__PURE__ */ formula('structures.shaftOverhang', {
  inputs: {
    /** Load across the shaft, at the end of the last section. */
    load: { kind: 'force', min: 0 },
    /** Torque through the overhang. */
    torque: { kind: 'torque', min: 0, default: '0 N m' },
    /** Distance of the two bearings. */
    span: { kind: 'length', above: 0 },
    /** The shaft between the bearings. */
    between: { fields: SECTION },
    /** Sections of the overhang, from the near bearing to the load. */
    overhang: {
      list: {
        fields: {
          /** Length along the axis. */
          length: { kind: 'length', above: 0 },
          ...SECTION,
        },
      },
      least: 1,
    },
  },
  output: {
    /** Force of the near bearing, against the load. */
    nearBearing: 'force',
    /** Force of the far bearing, along the load. */
    farBearing: 'force',
    /** Deflection at the load by bending. */
    bendingDeflection: 'length',
    /** Deflection at the load by shear. */
    shearDeflection: 'length',
    /** Sum of both. */
    deflection: 'length',
    /** Slope at the load by bending. */
    slope: 'angle',
    /** Twist of the overhang. */
    twist: 'angle',
  },
  assumes: ['bearings as points that do not move', 'plane sections', 'elastic'],
  source: [
    { level: 'unverified', where: 'any strength-of-materials text: overhanging beam' },
    { level: 'unverified', where: 'G. R. Cowper, J. Appl. Mech. 33 (1966) 335: shear coefficient of a hollow circle' },
  ],
  requires: {
    between: { accepts: ACCEPTS, holds: ({ between }) => isRealSolid(between) },
    overhang: { accepts: `each ${ACCEPTS}`, holds: ({ overhang }) => overhang.every(isRealSolid) },
  },
  valid: {
    'every section longer than half of its diameter: shorter ones deflect by an estimate only': ({ overhang }) =>
      overhang.every(({ length, outerDiameter }) => length > outerDiameter / 2),
  },
  si: ({ load, torque, span, between, overhang }) => {
    const reach = overhang.reduce((sum, { length }) => sum + length, 0)
    const inner = rigidities(between)
    let bendingDeflection = (load * reach * reach * span) / (3 * inner.bending)
    let shearDeflection = (load * reach * reach) / (span * inner.shear)
    let slope = (load * reach * span) / (3 * inner.bending)
    let twist = 0
    let from = reach
    for (const section of overhang) {
      const to = Math.max(0, from - section.length)
      const { bending, shear, torsion } = rigidities(section)
      bendingDeflection += (load * (from ** 3 - to ** 3)) / (3 * bending)
      shearDeflection += (load * section.length) / shear
      slope += (load * (from * from - to * to)) / (2 * bending)
      twist += (torque * section.length) / torsion
      from = to
    }
    return {
      nearBearing: (load * (span + reach)) / span,
      farBearing: (load * reach) / span,
      bendingDeflection,
      shearDeflection,
      deflection: bendingDeflection + shearDeflection,
      slope,
      twist,
    }
  },
})
