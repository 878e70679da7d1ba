import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { singularValues } from '../numeric/index.js'
import { Quantity } from '../units/index.js'
import { type GivenAngles, LEG_JOINTS, type LegJoint, type ThreeJointLeg } from './leg.js'
import { apply3, invert3, transpose3, unit3 } from './matrix3.js'
import { noDirection, perJoint, type Vector3, vectorOf, xyz } from './vectors.js'

const SPEED = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  rateLimits: { fields: /* @__PURE__ */ perJoint('angularVelocity') },
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs
const PUSH = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  torqueLimits: { fields: /* @__PURE__ */ perJoint('torque') },
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs

/** How fast the foot can go along a direction. */
export interface SpeedLimit {
  /** Fastest exactly along the direction, nothing across it; zero where a singular pose cannot move that way. */
  readonly pureDirection: Quantity<'velocity'>
  /** Largest component along the direction when the foot may move across it too: never smaller. */
  readonly bestDirection: Quantity<'velocity'>
  /** The joint that stops the pure motion; `undefined` at a singular pose. */
  readonly limitedBy: LegJoint | undefined
}

/** How hard the foot can push along a direction. */
export interface PushLimit {
  /** Hardest push exactly along the direction; infinite where the structure carries it without the drives. */
  readonly pureDirection: Quantity<'force'>
  /** Largest component along the direction when the foot may push across it too; infinite at a singular pose that carries a load by structure. */
  readonly bestDirection: Quantity<'force'>
  /** The joint that stops the pure push; `undefined` where the structure carries it. */
  readonly limitedBy: LegJoint | undefined
}

const jacobianOf = (leg: ThreeJointLeg, q: { abduction: number; hip: number; knee: number }) => {
  const J = new Float64Array(9)
  leg.si.jacobianInto(J, 0, q.abduction, q.hip, q.knee)
  return J
}
/** The inverse, unless the pose is singular to rounding. */
const inverseOf = (J: Float64Array) => {
  const inverse = new Float64Array(9)
  return invert3(inverse, J) ? inverse : undefined
}

/** Smallest limit over load, and which; a load that is rounding of the largest counts as none. */
function smallestShare(limits: readonly number[], loads: readonly number[]): { share: number; joint: LegJoint | undefined } {
  const largest = Math.max(...loads.map(Math.abs))
  let share = Infinity
  let joint: LegJoint | undefined
  loads.forEach((load, i) => {
    if (Math.abs(load) <= 1e-14 * largest || load === 0) return
    if (limits[i]! / Math.abs(load) < share) {
      share = limits[i]! / Math.abs(load)
      joint = LEG_JOINTS[i]!
    }
  })
  return { share, joint }
}

const total = (limits: readonly number[], loads: readonly number[]) => loads.reduce((sum, load, i) => sum + Math.abs(load) * limits[i]!, 0)
const three = (x: { abduction: number; hip: number; knee: number }) => [x.abduction, x.hip, x.knee]

/** How fast the foot of a leg can go along a direction with limited joint rates (their sizes are taken). */
export function footSpeedLimit(leg: ThreeJointLeg, given: Given<typeof SPEED>): SpeedLimit {
  const where = 'kinematics.footSpeedLimit'
  const { angles, rateLimits, direction: d } = readInputs(where, SPEED, given)
  const u = unit3([d.x, d.y, d.z])
  if (u === undefined) throw noDirection(where)
  const J = jacobianOf(leg, angles)
  const transposed = new Float64Array(9)
  transpose3(transposed, J)
  const limits = three(rateLimits).map(Math.abs)
  const inverse = inverseOf(J)
  const { share, joint } = inverse === undefined ? { share: 0, joint: undefined } : smallestShare(limits, apply3(inverse, u))
  return {
    pureDirection: new Quantity(share, 'velocity'),
    bestDirection: new Quantity(total(limits, apply3(transposed, u)), 'velocity'),
    limitedBy: joint,
  }
}

/** How hard the foot of a leg can push along a direction with limited joint torques (their sizes are taken), at rest. */
export function footPushLimit(leg: ThreeJointLeg, given: Given<typeof PUSH>): PushLimit {
  const where = 'kinematics.footPushLimit'
  const { angles, torqueLimits, direction: d } = readInputs(where, PUSH, given)
  const u = unit3([d.x, d.y, d.z])
  if (u === undefined) throw noDirection(where)
  const J = jacobianOf(leg, angles)
  const transposed = new Float64Array(9)
  transpose3(transposed, J)
  const limits = three(torqueLimits).map(Math.abs)
  const loads = apply3(transposed, u)
  const carried = Math.max(...loads.map(Math.abs)) <= 1e-12 * Math.max(...J.map(Math.abs))
  const { share, joint } = carried ? { share: Infinity, joint: undefined } : smallestShare(limits, loads)
  const inverse = inverseOf(J)
  return {
    pureDirection: new Quantity(share, 'force'),
    bestDirection: new Quantity(inverse === undefined ? Infinity : total(limits, apply3(inverse, u)), 'force'),
    limitedBy: joint,
  }
}

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
  /** What separates the pose from each singularity. */
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
 * The smallest singular value comes from the determinant in closed form over the two larger ones, and so keeps its relative accuracy right up to the
 * singular pose.
 *
 * Source: T. Yoshikawa, "Manipulability of robotic mechanisms", *Int. J. Robotics Research* 4(2), 1985.
 */
export function manipulability(leg: ThreeJointLeg, angles: GivenAngles): Manipulability {
  const q = readInputs('kinematics.manipulability', perJoint('angle'), angles)
  const { upperLink: l1, lowerLink: l2 } = leg.si
  const J = jacobianOf(leg, q)
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
    if (rank === 2 && left[0] !== undefined && left[1] !== undefined) left.push(cross(left[0], left[1]))
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

const cross = (a: readonly number[], b: readonly number[]): [number, number, number] => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
]
const perpendicular = (a: readonly [number, number, number]): [number, number, number] =>
  unit3(cross(a, Math.abs(a[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0])) ?? [0, 0, 1]
