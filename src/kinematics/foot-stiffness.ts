import { type Given, type Inputs, readInputs } from '../formula/index.js'
import type { Quantity } from '../units/index.js'
import { DriveCoupling, driveCoupling } from './coupling.js'
import { ThreeJointLeg } from './leg.js'
import { BEAM, linkCompliance } from './link-compliance.js'
import { apply3, determinant3, invert3, invertPositive3, multiply3, quadratic3, transpose3 } from './matrix3.js'
import { perJoint, requireInstance, requireRecord, rowsOf, type Vector3, vectorOf, xyz } from './vectors.js'

const STIFFNESS = { kind: 'torsionalStiffness', above: 0 } as const
const COMPLIANCE = { kind: 'linearCompliance', min: 0, default: '0 m/N' } as const
const SPECIFICATION = {
  /** Angles of the joints at which the leg stands. */
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  /** Stiffness of each drive at its drum, before the coupling. */
  driveStiffness: {
    fields: {
      /** Torsional stiffness of the sideways hip's drive. */
      sidewaysHip: STIFFNESS,
      /** Torsional stiffness of the hip's drive. */
      hip: STIFFNESS,
      /** Torsional stiffness of the knee's drive. */
      knee: STIFFNESS,
    },
  },
  /** Force of the ground on the foot. Default: no load. */
  groundReaction: { fields: /* @__PURE__ */ xyz('force'), optional: true },
  /** Rigidities of the upper link. Default: rigid. */
  upperLink: { fields: BEAM, optional: true },
  /** Rigidities of the lower link. Default: rigid. */
  lowerLink: { fields: BEAM, optional: true },
  /** Compliance of a soft foot pad along the leg's axes. Default: rigid. */
  footPad: {
    fields: {
      /** Compliance along x. Default 0. */
      x: COMPLIANCE,
      /** Compliance along y. Default 0. */
      y: COMPLIANCE,
      /** Compliance along z. Default 0. */
      z: COMPLIANCE,
    },
    optional: true,
  },
} as const satisfies Inputs

/**
 * Sources of compliance at the foot: torsional stiffness of each drive at its drum (before the coupling), bending and torsion of the links where given
 * (rigidities E I across the leg plane's normal and in it, and G J), and a soft foot pad along the leg's axes.
 */
export interface FootStiffnessSpecification extends Given<typeof SPECIFICATION> {
  /** How the knee is driven. Default: its motor is at the knee. */
  readonly coupling?: DriveCoupling
}

/** Stiffness at the foot. */
export interface FootStiffness {
  readonly stable: true
  /** Movement of the foot per force, rows and columns x, y, z. */
  readonly compliance: Quantity<'linearCompliance'>[][]
  /** Stiffness along each axis with the foot **free** to move across it: what a single pushing finger feels. */
  readonly free: Vector3<'linearStiffness'>
  /** Stiffness along each axis with the foot **guided** along it: never smaller than free, often more than twice. */
  readonly guided: Vector3<'linearStiffness'>
  /** Compliance of each part along each axis, free: drives, links, pad. */
  readonly shares: { readonly [part in 'drives' | 'links' | 'footPad']: Vector3<'linearCompliance'> }
  /** How far the ground reaction has moved the foot from where the drums' commanded angles would put it without a load. */
  readonly deflection: Vector3<'length'>
  /** Deflection from each part: drives, links, pad. */
  readonly deflectionOf: { readonly [part in 'drives' | 'links' | 'footPad']: Vector3<'length'> }
}

/** The leg collapses under its load: the drives are too soft to hold this pose. */
export interface UnstableFoot {
  readonly stable: false
}

/**
 * Stiffness of the foot against the ground, in the leg's frame, at the angles at which the leg stands with its load.
 *
 * With a ground reaction the load's own part is in it: pushing on a leg already loaded moves the load's line, which softens (or stiffens) it.
 * Joint stiffness then is K − ∂(Jᵀ R)/∂q; the ground reaction keeps its direction and size. A leg whose drives cannot hold the load gets a typed answer,
 * not a negative stiffness. Stiffness is that of a small further push. The deflection is of the whole load, and what the drives give of it (K⁻¹ Jᵀ R at
 * the joints) is followed through the leg's geometry: load times compliance would overrate it.
 */
export function footStiffness(leg: ThreeJointLeg, given: FootStiffnessSpecification): FootStiffness | UnstableFoot {
  const where = 'kinematics.footStiffness'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  requireRecord(where, given)
  const { coupling = driveCoupling({ knee: 'motorAtKnee' }), ...rest } = given
  requireInstance(where, 'coupling', coupling, DriveCoupling, 'driveCoupling')
  const spec = readInputs(where, SPECIFICATION, rest)
  const q = [spec.angles.sidewaysHip, spec.angles.hip, spec.angles.knee] as const
  const K = new Float64Array(9)
  coupling.si.jointMatrixInto(K, 0, q, [spec.driveStiffness.sidewaysHip, spec.driveStiffness.hip, spec.driveStiffness.knee])
  const R = spec.groundReaction
  const load = R === undefined ? ([0, 0, 0] as const) : ([R.x, R.y, R.z] as const)
  const windup = drivesGive(leg, q, K, load)
  if (R !== undefined) {
    const H = new Float64Array(9)
    leg.si.loadStiffnessInto(H, 0, q, load)
    for (let i = 0; i < 9; i++) K[i]! -= H[i]!
  }
  if (!positiveDefinite(K)) return { stable: false }
  const J = new Float64Array(9)
  const transposed = new Float64Array(9)
  const inverseK = new Float64Array(9)
  const half = new Float64Array(9)
  const drives = new Float64Array(9)
  leg.si.jacobianInto(J, 0, ...q)
  transpose3(transposed, J)
  if (!invertPositive3(inverseK, K)) return { stable: false }
  multiply3(half, inverseK, transposed)
  multiply3(drives, J, half)
  const links = linkCompliance(leg, q, spec.upperLink, spec.lowerLink)
  const pad = Float64Array.from([spec.footPad?.x ?? 0, 0, 0, 0, spec.footPad?.y ?? 0, 0, 0, 0, spec.footPad?.z ?? 0])
  const total = drives.map((x, i) => x + links[i]! + pad[i]!)
  const diagonal = (a: ArrayLike<number>) => [a[0]!, a[4]!, a[8]!]
  return {
    stable: true,
    compliance: rowsOf('linearCompliance', total, 3),
    free: vectorOf(
      'linearStiffness',
      diagonal(total).map((c) => 1 / c),
    ),
    guided: vectorOf('linearStiffness', guidedStiffness(total)),
    shares: {
      drives: vectorOf('linearCompliance', diagonal(drives)),
      links: vectorOf('linearCompliance', diagonal(links)),
      footPad: vectorOf('linearCompliance', diagonal(pad)),
    },
    deflection: vectorOf(
      'length',
      apply3(links, load).map((x, i) => x + windup[i]! + pad[4 * i]! * load[i]!),
    ),
    deflectionOf: {
      drives: vectorOf('length', windup),
      links: vectorOf('length', apply3(links, load)),
      footPad: vectorOf('length', apply3(pad, load)),
    },
  }
}

/** How far the drives' giving way has moved the foot to where it is: the foot here, less the foot with the joints turned back by K⁻¹ Jᵀ R. */
function drivesGive(
  leg: ThreeJointLeg,
  q: readonly [number, number, number],
  K: Float64Array,
  [fx, fy, fz]: readonly [number, number, number],
): number[] {
  const inverse = new Float64Array(9)
  const torque = new Float64Array(3)
  const here = new Float64Array(3)
  const unloaded = new Float64Array(3)
  invertPositive3(inverse, K)
  leg.si.torqueFromFootPushInto(torque, 0, ...q, fx, fy, fz)
  const turned = apply3(inverse, torque)
  leg.si.footInto(here, 0, ...q)
  leg.si.footInto(unloaded, 0, q[0] - turned[0], q[1] - turned[1], q[2] - turned[2])
  return [0, 1, 2].map((i) => here[i]! - unloaded[i]!)
}

/** Diagonal of the inverse of a compliance; infinite where the foot cannot move across (a singular pose with nothing else soft). */
function guidedStiffness(compliance: Float64Array): number[] {
  const inverse = new Float64Array(9)
  return invert3(inverse, compliance) ? [inverse[0]!, inverse[4]!, inverse[8]!] : [Infinity, Infinity, Infinity]
}

const positiveDefinite = (a: ArrayLike<number>) => a[0]! > 0 && a[0]! * a[4]! - a[1]! * a[3]! > 0 && determinant3(a) > 0

/** Stiffness along a direction, free and guided, from a compliance (SI). */
export const stiffnessAlong = (complianceSi: ArrayLike<number>, direction: ArrayLike<number>): { free: number; guided: number } => {
  const inverse = new Float64Array(9)
  return {
    free: 1 / quadratic3(complianceSi, direction),
    guided: invert3(inverse, complianceSi) ? quadratic3(inverse, direction) : Infinity,
  }
}
