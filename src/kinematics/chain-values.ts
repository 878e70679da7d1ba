import type { Given, Inputs } from '../formula/index.js'
import type { In, Quantity } from '../units/index.js'
import { type Vector3, xyz } from './vectors.js'

/** Joint values as a caller gives them, one a joint: an angle where it turns, a length where it slides. */
export type GivenJointValues = readonly (In<'angle'> | In<'length'>)[]

/** A joint value: an angle or a length. */
export type JointValue = Quantity<'angle'> | Quantity<'length'>

/** Kind of drive of a joint: torque or force. */
export type JointEffort = Quantity<'torque'> | Quantity<'force'>

/** Place and rotation of a frame in the base. */
export interface Pose {
  readonly position: Vector3<'length'>
  /** Rows of the rotation matrix. */
  readonly rotation: Quantity<'ratio'>[][]
}

export const INVERSE = {
  position: { fields: /* @__PURE__ */ xyz('length') },
  rotation: { list: { list: 'ratio', least: 3 }, least: 3, optional: true },
  lengthPerRadian: { kind: 'length', above: 0, default: '100 mm' },
  tolerance: { kind: 'length', above: 0, default: '1e-9 m' },
  maxIterations: { kind: 'count', min: 1, whole: true, default: 500 },
  restarts: { kind: 'count', min: 0, max: 10_000, whole: true, default: 0 },
  randomSeed: { kind: 'count', min: 0, whole: true, default: 1 },
} as const satisfies Inputs

/**
 * A pose to be reached. `restarts` is how many searches start from drawn joint values besides the one from `seed`. Default: 0, so that the answer is a
 * local one; eight and more searches separate the nearest pose from a local stop, and find the different solutions.
 */
export interface InverseTarget extends Given<typeof INVERSE> {
  /** Where the first search starts; brought within the limits. */
  readonly seed: GivenJointValues
  /** Joint values to come near to where the chain has joints to spare. Default: no preference. */
  readonly preferred?: GivenJointValues
  /** Lowest and highest value of each joint. Default: no limits. */
  readonly limits?: readonly { readonly lowest: In<'angle'> | In<'length'>; readonly highest: In<'angle'> | In<'length'> }[]
}

export const TOOL_PUSH = { moment: { fields: /* @__PURE__ */ xyz('torque') }, force: { fields: /* @__PURE__ */ xyz('force') } }

/** Moment and force, in the tool's axes, with which the tool pushes its surroundings. */
export interface ToolPush extends Given<typeof TOOL_PUSH> {}

/** Where an inverse ended. */
export interface InverseAnswer {
  /** `reached`, `nearestFound` (eight or more searches agree), `localStop` (no small motion comes nearer; a search from elsewhere may), `iterationLimit`. */
  readonly ended: 'reached' | 'nearestFound' | 'localStop' | 'iterationLimit'
  readonly values: readonly JointValue[]
  readonly positionError: Quantity<'length'>
  readonly rotationError: Quantity<'angle'>
  readonly iterations: number
  /** Searches made: one, and the restarts. */
  readonly searches: number
  /** Searches that ended where the best one did. */
  readonly agreeing: number
  /** The different joint values found that reach the target; whole turns apart count once. */
  readonly solutions: readonly (readonly JointValue[])[]
}
