import { type Given, readInputs, type Si } from '../formula/index.js'
import { type In, type Kind, Quantity } from '../units/index.js'
import { legBranches } from './leg-branches.js'
import { INSIDE_OFFSET, REACHED, TOO_FAR, TOO_NEAR } from './leg-geometry-kernel.js'
import {
  ANGLES,
  FOOT_PUSH,
  FOOT_VELOCITY,
  type GivenAngles,
  type GivenPoint,
  GROUND_REACTION,
  POINT,
  RATES,
  TOLERANCE,
  TORQUE,
} from './leg-inputs.js'
import { LegKernel, SINGULAR } from './leg-kernel.js'
import { atLimit, type LimitsSi } from './leg-limits.js'
import type { ActiveLimit, Reachable, Unreachable } from './leg-reach.js'
import { type AtSingularity, list, SINGULARITIES, type Singularity, singularityNotes } from './leg-singularity.js'
import { checkLimits, LEG_JOINTS, SPECIFICATION, type ThreeJointLegSpecification } from './leg-specification.js'
import { type PerJoint, type perJoint, perJointOf, rowsOf, type Vector3, vectorOf, type xyz } from './vectors.js'

const REASONS = { [TOO_FAR]: 'tooFar', [TOO_NEAR]: 'tooNear', [INSIDE_OFFSET]: 'insideOffsetCylinder' } as const

/**
 * A leg of three joints: a sideways hip (abduction), a hip and a knee, with a signed sideways offset of the leg plane.
 *
 * The frame is on the sideways hip's axis: x forward, y left, z up. Angles are right-handed about +x (sideways hip) and +y (hip, knee) and zero with the
 * leg straight down. A positive hip angle swings the foot backward; a positive knee angle swings the shank backward, so that the knee
 * points forward. Immutable. Its `si` kernel works on plain numbers for control loops.
 */
export class ThreeJointLeg {
  /** The arithmetic on plain SI numbers: nothing checked, nothing allocated. */
  readonly si: LegKernel
  /** Joint limits as lowest and highest of sideways hip, hip, knee; ±∞ where there is none. */
  readonly limitsSi: LimitsSi

  /** @internal Use `threeJointLeg`. */
  constructor(given: Si<typeof SPECIFICATION>) {
    this.si = new LegKernel(given.hipOffset, given.upperLink, given.lowerLink)
    this.limitsSi = new Float64Array(6)
    LEG_JOINTS.forEach((joint, i) => {
      const range = given.limits?.[joint]
      this.limitsSi[2 * i] = range?.lowest ?? -Infinity
      this.limitsSi[2 * i + 1] = range?.highest ?? Infinity
    })
  }

  /** Where the foot is. */
  footPosition(angles: GivenAngles): Vector3<'length'> {
    const [q1, q2, q3] = this.read('footPosition', ANGLES, angles)
    const out = new Float64Array(3)
    this.si.footInto(out, 0, q1, q2, q3)
    return vectorOf('length', out)
  }

  /** Where the hip point (on the hip axis, in the leg plane), the knee and the foot are. The axis of the sideways hip passes through the origin. */
  jointPositions(angles: GivenAngles): { readonly [P in 'hip' | 'knee' | 'foot']: Vector3<'length'> } {
    const [q1, q2, q3] = this.read('jointPositions', ANGLES, angles)
    const out = new Float64Array(9)
    this.si.jointsInto(out, 0, q1, q2, q3)
    return { hip: vectorOf('length', out), knee: vectorOf('length', out, 3), foot: vectorOf('length', out, 6) }
  }

  /**
   * Joint angles that put the foot at a point: every branch, or a typed answer with the reason, the nearest reachable point and the miss.
   * Throws an `InputError` only for a point that is not three finite lengths.
   */
  jointAngles(foot: GivenPoint): Reachable | Unreachable {
    const { x, y, z } = readInputs('kinematics.threeJointLeg.jointAngles', POINT, foot)
    const { status, branches } = legBranches(this.si, this.limitsSi, x, y, z)
    const within = branches.filter((branch) => branch.beyondLimits.length === 0)
    if (within.length > 0) return { reachable: true, branches: within, excluded: branches.filter((branch) => !within.includes(branch)) }
    const near = new Float64Array(6)
    const miss = this.si.nearestInto(near, 0, this.limitsSi, x, y, z)
    const ends = atLimit(this.limitsSi, near)
    return {
      reachable: false,
      reason: status === REACHED ? 'jointLimits' : REASONS[status as keyof typeof REASONS],
      nearest: vectorOf('length', near, 3),
      miss: new Quantity(miss, 'length'),
      angles: perJointOf('angle', near),
      activeLimits: LEG_JOINTS.flatMap((joint, i): ActiveLimit[] =>
        ends[i] === 0 ? [] : [{ joint, end: ends[i] === -1 ? 'lowest' : 'highest' }],
      ),
      directionArbitrary: y === 0 && z === 0,
    }
  }

  /** Jacobian of the foot point: rows x, y, z; columns sideways hip, hip, knee; length per radian. */
  jacobian(angles: GivenAngles): Quantity<'length'>[][] {
    const [q1, q2, q3] = this.read('jacobian', ANGLES, angles)
    const out = new Float64Array(9)
    this.si.jacobianInto(out, 0, q1, q2, q3)
    return rowsOf('length', out, 3)
  }

  /** Joint torques at rest for a force with which the **foot pushes** its surroundings (standing: downward, negative z). */
  torqueFromFootPush(given: {
    readonly angles: GivenAngles
    readonly footPush: Given<ReturnType<typeof xyz<'force'>>>
  }): PerJoint<Quantity<'torque'>> {
    const { angles: q, footPush: f } = readInputs('kinematics.threeJointLeg.torqueFromFootPush', FOOT_PUSH, given)
    return this.torque(q, f.x, f.y, f.z)
  }

  /** Joint torques at rest for a force with which the **ground pushes** the foot (standing: upward, positive z). */
  torqueFromGroundReaction(given: {
    readonly angles: GivenAngles
    readonly groundReaction: Given<ReturnType<typeof xyz<'force'>>>
  }): PerJoint<Quantity<'torque'>> {
    const { angles: q, groundReaction: f } = readInputs('kinematics.threeJointLeg.torqueFromGroundReaction', GROUND_REACTION, given)
    return this.torque(q, -f.x, -f.y, -f.z)
  }

  /** Force the foot pushes with under given joint torques at rest, or which singularity leaves it undetermined; `tolerance` as in `jointRates`. */
  footPushFromTorque(given: {
    readonly angles: GivenAngles
    readonly torque: Given<ReturnType<typeof perJoint<'torque'>>>
    readonly tolerance?: In<'ratio'>
  }): { readonly regular: true; readonly footPush: Vector3<'force'>; readonly groundReaction: Vector3<'force'> } | AtSingularity {
    const { angles: q, torque, tolerance } = readInputs('kinematics.threeJointLeg.footPushFromTorque', TORQUE, given)
    const at = this.singular(q, tolerance)
    if (at !== undefined) return at
    const notes = singularityNotes('footPushFromTorque', this.si, q)
    const out = new Float64Array(3)
    this.si.footPushFromTorqueInto(out, 0, list(q), list(torque))
    return {
      regular: true,
      footPush: vectorOf('force', out, 0, notes),
      groundReaction: vectorOf('force', [-out[0]!, -out[1]!, -out[2]!], 0, notes),
    }
  }

  /** Velocity of the foot from joint rates. */
  footVelocity(given: {
    readonly angles: GivenAngles
    readonly rates: Given<ReturnType<typeof perJoint<'angularVelocity'>>>
  }): Vector3<'velocity'> {
    const { angles: q, rates } = readInputs('kinematics.threeJointLeg.footVelocity', RATES, given)
    const out = new Float64Array(3)
    this.si.footVelocityInto(out, 0, list(q), list(rates))
    return vectorOf('velocity', out)
  }

  /**
   * Joint rates for a velocity of the foot, or which singularity forbids it. `tolerance` is how near counts as singular: it compares |sin knee|, and the
   * foot's distance below the hip axis over the leg's length. Rates grow as one over that distance; below 0.02 they carry a note. Default: 1e-8.
   */
  jointRates(given: {
    readonly angles: GivenAngles
    readonly footVelocity: Given<ReturnType<typeof xyz<'velocity'>>>
    readonly tolerance?: In<'ratio'>
  }): { readonly regular: true; readonly rates: PerJoint<Quantity<'angularVelocity'>> } | AtSingularity {
    const { angles: q, footVelocity: v, tolerance } = readInputs('kinematics.threeJointLeg.jointRates', FOOT_VELOCITY, given)
    const at = this.singular(q, tolerance)
    if (at !== undefined) return at
    const out = new Float64Array(3)
    this.si.jointRatesInto(out, 0, list(q), [v.x, v.y, v.z])
    return { regular: true, rates: perJointOf('angularVelocity', out, 0, singularityNotes('jointRates', this.si, q)) }
  }

  /** Which singularity a pose is at, if any; `tolerance` as in `jointRates`. */
  singularity(angles: GivenAngles, tolerance: In<'ratio'> = SINGULAR): Singularity {
    const given = readInputs('kinematics.threeJointLeg.singularity', { tolerance: TOLERANCE }, { tolerance })
    return SINGULARITIES[this.si.singularityAt(this.read('singularity', ANGLES, angles), given.tolerance)]!
  }

  private singular(q: PerJoint<number>, tolerance: number): AtSingularity | undefined {
    const found = SINGULARITIES[this.si.singularityAt(list(q), tolerance)]!
    return found === 'none' ? undefined : { regular: false, singularity: found }
  }

  private torque(q: PerJoint<number>, fx: number, fy: number, fz: number): PerJoint<Quantity<'torque'>> {
    const out = new Float64Array(3)
    this.si.torqueFromFootPushInto(out, 0, q.sidewaysHip, q.hip, q.knee, fx, fy, fz)
    return perJointOf('torque', out)
  }

  private read<K extends Kind>(
    method: string,
    inputs: ReturnType<typeof perJoint<K>>,
    given: Given<ReturnType<typeof perJoint<K>>>,
  ): [number, number, number] {
    return list(readInputs(`kinematics.threeJointLeg.${method}`, inputs, given) as unknown as PerJoint<number>)
  }
}

/**
 * Makes a three-joint leg.
 * Throws an `InputError` for a link that is not positive and for limits that are upside down.
 */
export function threeJointLeg(given: ThreeJointLegSpecification): ThreeJointLeg {
  const where = 'kinematics.threeJointLeg'
  const spec = readInputs(where, SPECIFICATION, given)
  checkLimits(where, spec)
  return new ThreeJointLeg(spec)
}
