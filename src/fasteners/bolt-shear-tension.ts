import { formula } from '../formula/index.js'
import { boltStrength } from './property-class.js'
import { BOLT_CLASS } from './thread-inputs.js'

/**
 * A bolt under shear and tension together: how much of it is used.
 *
 * The straight line of the building code is the lower bound; tests follow the ellipse. A preloaded joint that does not slip carries no shear in its bolts.
 */
export const boltShearTension = /* @__PURE__ */ formula('fasteners.boltShearTension', {
  inputs: {
    /** Shear force in one plane. */
    shear: { kind: 'force', min: 0 },
    /** Tension of the bolt, external load and remaining preload. */
    tension: { kind: 'force', min: 0 },
    ...BOLT_CLASS,
    /** Where the plane of shear crosses the bolt. */
    plane: { oneOf: ['thread', 'shank'], default: 'thread' },
    /** Shear strength as a share of the tensile strength: 0.6, in the thread 0.5 for classes 4.8, 5.8, 6.8 and 10.9. */
    shearRatio: { kind: 'ratio', above: 0, max: 1, default: 0.6 },
  },
  output: {
    /** Shear at which the bolt breaks without tension. */
    shearLoad: 'force',
    /** Tension at which the bolt breaks without shear. */
    breakingLoad: 'force',
    /** Used share by the straight line: shear over its load, plus tension over 1.4 times 0.9 of the breaking load. */
    straightLineUse: 'ratio',
    /** Used share by the ellipse: root of the sum of both squares. */
    ellipticUse: 'ratio',
    /** Factor on both loads at which the straight line or pure tension breaks the bolt; infinite without a load. */
    reserve: { kind: 'ratio', infinite: true },
  },
  equation: [
    'breakingLoad = thread.stressArea * bolt.tensileStrength',
    'straightLineUse == shear / shearLoad + tension / (1.4 * 0.9 * breakingLoad)',
    'ellipticUse == sqrt((shear / shearLoad)^2 + (tension / breakingLoad)^2)',
  ],
  assumes: ['one plane of shear', 'no bending (`eccentricJoint`)', 'no partial safety factors'],
  source: [
    { level: 'standard', where: 'EN 1993-1-8:2005, table 3.4 (read in reproductions): Fv/FvR + Ft/(1.4 FtR), FtR = 0.9 fub As' },
    { level: 'unverified', where: 'Kulak, Fisher, Struik, Guide to Design Criteria for Bolted and Riveted Joints: elliptic interaction' },
  ],
  si: ({ shear, tension, thread, bolt, plane, shearRatio }) => {
    const strength = boltStrength.si({ thread, bolt, shearRatio })
    const { breakingLoad } = strength
    // The code counts the stress area in the thread; the root area would be a tenth lower.
    const shearLoad = plane === 'shank' ? strength.shankShearLoad : shearRatio * breakingLoad
    const inShear = shear / shearLoad
    const inTension = tension / (0.9 * breakingLoad)
    const straightLineUse = inShear + inTension / 1.4
    const use = Math.max(straightLineUse, inTension)
    return {
      shearLoad,
      breakingLoad,
      straightLineUse,
      ellipticUse: Math.hypot(inShear, tension / breakingLoad),
      reserve: use === 0 ? Number.POSITIVE_INFINITY : 1 / use,
    }
  },
})
