import { readInputs } from '../formula/index.js'
import { singularValues } from '../numeric/index.js'
import { Quantity } from '../units/index.js'
import { ThreeJointLeg } from './leg.js'
import type { GivenAngles } from './leg-inputs.js'
import { apply3, cross3, unit3 } from './matrix3.js'
import { perJoint, requireInstance, type Vector3, vectorOf } from './vectors.js'

/** One axis of an ellipsoid. */
export interface EllipsoidAxis<K extends 'length' | 'curvature'> {
  readonly direction: Vector3<'ratio'>
  readonly halfLength: Quantity<K>
}

/** How well a pose moves and pushes. */
export interface Manipulability {
  /** |det J|: the volume of foot motion per volume of joint motion, in cubic metres. */
  readonly measure: Quantity<'volume'>
  /** Foot speed per unit of joint rates: axes of the velocity ellipsoid, the longest first. */
  readonly velocityAxes: readonly EllipsoidAxis<'length'>[]
  /** Push per unit of joint torques: axes of the force ellipsoid (1/m), same directions, the longest last; infinite at a singular pose. */
  readonly forceAxes: readonly EllipsoidAxis<'curvature'>[]
  /** The smallest singular value of the Jacobian: also how little the Jacobian must change to be singular. */
  readonly smallestSingularValue: Quantity<'length'>
  /** Smallest over largest singular value: 1 moves alike in all directions, 0 is singular. */
  readonly inverseCondition: Quantity<'ratio'>
  /** Distance of the pose from each singularity. */
  readonly toSingularity: {
    /** Knee angle from straight. */
    readonly kneeFromStraight: Quantity<'angle'>
    /** Knee angle from folded. */
    readonly kneeFromFolded: Quantity<'angle'>
    /** Height of the hip axis over the foot in the leg plane: at zero the leg has no sideways authority. */
    readonly footBelowHipAxis: Quantity<'length'>
  }
}

/**
 * How well a leg moves and pushes at a pose: measure, ellipsoids, nearness to a singularity.
 *
 * The smallest singular value comes from the determinant in closed form over the two larger ones. It keeps its relative accuracy up to the straight
 * knee; next to the folded knee and to the foot level with the hip axis its error is about 1e-16 of the leg's length.
 *
 * Source: T. Yoshikawa, "Manipulability of robotic mechanisms", *Int. J. Robotics Research* 4(2), 1985.
 */
export function manipulability(leg: ThreeJointLeg, angles: GivenAngles): Manipulability {
  const where = 'kinematics.manipulability'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  const q = readInputs(where, perJoint('angle'), angles)
  const { upperLink: l1, lowerLink: l2 } = leg.si
  const J = new Float64Array(9)
  leg.si.jacobianInto(J, 0, q.sidewaysHip, q.hip, q.knee)
  const { values, vectors } = singularValues(J, 3)
  const order = [0, 1, 2].sort((i, j) => values[j]! - values[i]!)
  const below = l1 * Math.cos(q.hip) + l2 * Math.cos(q.hip + q.knee)
  const measure = Math.abs(l1 * l2 * Math.sin(q.knee) * below)
  const [large, middle] = [values[order[0]!]!, values[order[1]!]!]
  const smallest = middle > 1e-7 * large ? measure / (large * middle) : values[order[2]!]!
  const sizes = [large, middle, smallest]
  const left: [number, number, number][] = []
  order.forEach((column, rank) => {
    const right = [vectors[column]!, vectors[3 + column]!, vectors[6 + column]!]
    // The last direction is square to the others: dividing by its size would lose it near a singularity.
    if (rank === 2 && left[0] !== undefined && left[1] !== undefined) left.push(cross3(left[0], left[1]))
    else left.push(unit3(apply3(J, right)) ?? (rank === 1 ? perpendicular(left[0]!) : [1, 0, 0]))
  })
  const wrapped = Math.abs(q.knee - 2 * Math.PI * Math.round(q.knee / (2 * Math.PI)))
  return {
    measure: new Quantity(measure, 'volume'),
    velocityAxes: left.map((direction, i) => ({ direction: vectorOf('ratio', direction), halfLength: new Quantity(sizes[i]!, 'length') })),
    forceAxes: left.map((direction, i) => ({
      direction: vectorOf('ratio', direction),
      halfLength: new Quantity(1 / sizes[i]!, 'curvature'),
    })),
    smallestSingularValue: new Quantity(smallest, 'length'),
    inverseCondition: new Quantity(smallest / large, 'ratio'),
    toSingularity: {
      kneeFromStraight: new Quantity(wrapped, 'angle'),
      kneeFromFolded: new Quantity(Math.PI - wrapped, 'angle'),
      footBelowHipAxis: new Quantity(below, 'length'),
    },
  }
}

const perpendicular = (a: readonly [number, number, number]): [number, number, number] =>
  unit3(cross3(a, Math.abs(a[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0])) ?? [0, 0, 1]
