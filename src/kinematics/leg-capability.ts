import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { singularValues } from '../numeric/index.js'
import { Quantity } from '../units/index.js'
import { ThreeJointLeg } from './leg.js'
import { LEG_JOINTS, type LegJoint } from './leg-specification.js'
import { apply3, cross3, dot3, invert3, transpose3, unit3 } from './matrix3.js'
import { noDirection, perJoint, requireInstance, xyz } from './vectors.js'

const RATE = { kind: 'angularVelocity', min: 0 } as const
const TORQUE = { kind: 'torque', min: 0 } as const
const SPEED = {
  /** Angles of the joints at which the leg stands. */
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  /** Highest rate of each joint. */
  rateLimits: {
    fields: {
      /** Highest rate of the sideways hip. */
      sidewaysHip: RATE,
      /** Highest rate of the hip. */
      hip: RATE,
      /** Highest rate of the knee. */
      knee: RATE,
    },
  },
  /** Direction in which the foot moves, of any length. */
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs
const PUSH = {
  /** Angles of the joints at which the leg stands. */
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  /** Highest torque of each joint. */
  torqueLimits: {
    fields: {
      /** Highest torque of the sideways hip. */
      sidewaysHip: TORQUE,
      /** Highest torque of the hip. */
      hip: TORQUE,
      /** Highest torque of the knee. */
      knee: TORQUE,
    },
  },
  /** Direction in which the foot pushes, of any length. */
  direction: { fields: /* @__PURE__ */ xyz('ratio') },
} as const satisfies Inputs

/** How fast the foot can go along a direction. */
export interface SpeedLimit {
  /** Fastest exactly along the direction, nothing across it; zero where a singular pose cannot move that way. */
  readonly pureDirection: Quantity<'velocity'>
  /** Largest component along the direction when the foot may move across it too: never smaller. */
  readonly bestDirection: Quantity<'velocity'>
  /** The joint that stops the pure motion; `undefined` at a singular pose, where several joints share one motion. */
  readonly limitedBy: LegJoint | undefined
}

/** How hard the foot can push along a direction. */
export interface PushLimit {
  /** Hardest push exactly along the direction; infinite where the structure carries it without the drives. */
  readonly pureDirection: Quantity<'force'>
  /** Largest component along the direction when the foot may push across it too; infinite where the structure carries a part of it. */
  readonly bestDirection: Quantity<'force'>
  /** The joint that stops the pure push; `undefined` where the structure carries it. */
  readonly limitedBy: LegJoint | undefined
}

type Triple = [number, number, number]

const jacobianOf = (leg: ThreeJointLeg, q: { sidewaysHip: number; hip: number; knee: number }) => {
  const J = new Float64Array(9)
  leg.si.jacobianInto(J, 0, q.sidewaysHip, q.hip, q.knee)
  return J
}
const columnsOf = (J: Float64Array): Triple[] => [0, 1, 2].map((j) => [J[j]!, J[3 + j]!, J[6 + j]!])

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
const three = (x: { sidewaysHip: number; hip: number; knee: number }): Triple => [x.sidewaysHip, x.hip, x.knee]

/** Relative size below which a singular pose's lost directions count as lost. */
const LOST_DIRECTION = 1e-9

/** Directions in which a singular pose cannot move the foot, square to each other. */
function lostDirections(J: Float64Array): Triple[] {
  const transposed = new Float64Array(9)
  transpose3(transposed, J)
  const { values, vectors } = singularValues(transposed, 3)
  const largest = Math.max(...values)
  return [0, 1, 2].filter((k) => values[k]! <= LOST_DIRECTION * largest).map((k) => [vectors[k]!, vectors[3 + k]!, vectors[6 + k]!])
}

/**
 * Fastest motion along u at a singular pose. What the joints can do together is a flat polygon or a line, the sum of their own motions ±ω J;
 * along u it ends at the side whose normal is square to one of them.
 */
function singularSpeed(J: Float64Array, limits: readonly number[], u: Triple): number {
  const lost = lostDirections(J)
  if (lost.some((n) => Math.abs(dot3(n, u)) > LOST_DIRECTION)) return 0
  const columns = columnsOf(J)
  const size = Math.max(...J.map(Math.abs))
  const normals = lost.length === 1 ? columns.map((column) => cross3(lost[0]!, column)) : [u]
  let fastest = Infinity
  for (const normal of normals) {
    const along = Math.abs(dot3(normal, u))
    if (along <= LOST_DIRECTION * Math.hypot(...normal) || Math.hypot(...normal) <= LOST_DIRECTION * size) continue
    fastest = Math.min(
      fastest,
      total(
        limits,
        columns.map((column) => dot3(normal, column)),
      ) / along,
    )
  }
  return fastest
}

/**
 * Largest component of a push along u at a singular pose: by the duality of linear programmes the least Σ T |λ| that makes J λ = u, found with no more
 * joints than are independent. Infinite where no λ does: the structure carries a part of u.
 */
function singularPush(J: Float64Array, limits: readonly number[], u: Triple): number {
  const columns = columnsOf(J)
  const size = Math.max(...J.map(Math.abs))
  let min = Infinity
  for (let a = 0; a < 3; a++)
    for (let b = a; b < 3; b++) {
      const [p, q] = [columns[a]!, columns[b]!]
      const [pp, pq, qq, pu, qu] = [dot3(p, p), dot3(p, q), dot3(q, q), dot3(p, u), dot3(q, u)]
      const determinant = pp * qq - pq * pq
      const independent = determinant > LOST_DIRECTION * size ** 4
      if (a === b ? pp <= LOST_DIRECTION * size ** 2 : !independent) continue
      const [x, y] = a === b ? [pu / pp, 0] : [(pu * qq - qu * pq) / determinant, (qu * pp - pu * pq) / determinant]
      const rest = [0, 1, 2].map((i) => p[i]! * x + q[i]! * y - u[i]!) as Triple
      if (Math.hypot(...rest) <= LOST_DIRECTION) min = Math.min(min, limits[a]! * Math.abs(x) + limits[b]! * Math.abs(y))
    }
  return min
}

/** How fast the foot of a leg can go along a direction with limited joint rates. */
export function footSpeedLimit(leg: ThreeJointLeg, given: Given<typeof SPEED>): SpeedLimit {
  const where = 'kinematics.footSpeedLimit'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  const { angles, rateLimits, direction: d } = readInputs(where, SPEED, given)
  const u = unit3([d.x, d.y, d.z])
  if (u === undefined) throw noDirection(where)
  const J = jacobianOf(leg, angles)
  const transposed = new Float64Array(9)
  transpose3(transposed, J)
  const limits = three(rateLimits)
  const inverse = new Float64Array(9)
  const { share, joint } = invert3(inverse, J)
    ? smallestShare(limits, apply3(inverse, u))
    : { share: singularSpeed(J, limits, u), joint: undefined }
  return {
    pureDirection: new Quantity(share, 'velocity'),
    bestDirection: new Quantity(total(limits, apply3(transposed, u)), 'velocity'),
    limitedBy: joint,
  }
}

/** How hard the foot of a leg can push along a direction with limited joint torques, at rest. */
export function footPushLimit(leg: ThreeJointLeg, given: Given<typeof PUSH>): PushLimit {
  const where = 'kinematics.footPushLimit'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  const { angles, torqueLimits, direction: d } = readInputs(where, PUSH, given)
  const u = unit3([d.x, d.y, d.z])
  if (u === undefined) throw noDirection(where)
  const J = jacobianOf(leg, angles)
  const transposed = new Float64Array(9)
  transpose3(transposed, J)
  const limits = three(torqueLimits)
  const loads = apply3(transposed, u)
  const carried = Math.max(...loads.map(Math.abs)) <= 1e-12 * Math.max(...J.map(Math.abs))
  const { share, joint } = carried ? { share: Infinity, joint: undefined } : smallestShare(limits, loads)
  const inverse = new Float64Array(9)
  return {
    pureDirection: new Quantity(share, 'force'),
    bestDirection: new Quantity(invert3(inverse, J) ? total(limits, apply3(inverse, u)) : singularPush(J, limits, u), 'force'),
    limitedBy: joint,
  }
}
