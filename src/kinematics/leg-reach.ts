import type { Quantity } from '../units/index.js'
import type { LegBranch } from './leg-branches.js'
import type { LegJoint } from './leg-specification.js'
import type { PerJoint, Vector3 } from './vectors.js'

/** A joint at one of its limits. */
export interface ActiveLimit {
  readonly joint: LegJoint
  readonly end: 'lowest' | 'highest'
}

/** The foot can be put there: every way to do it. */
export interface Reachable {
  readonly reachable: true
  /** Ways within the joint limits, the usual one first: foot below the hip and knee forward, where that is among them. Never empty. */
  readonly branches: readonly LegBranch[]
  /** Ways that the joint limits rule out, each with the joints beyond their limits. */
  readonly excluded: readonly LegBranch[]
}

/** The foot cannot be put there: why, and how near it comes. */
export interface Unreachable {
  readonly reachable: false
  /** Too far for the straight leg, too near for the folded leg, nearer to the sideways hip's axis than the offset, or ruled out by joint limits alone. */
  readonly reason: 'tooFar' | 'tooNear' | 'insideOffsetCylinder' | 'jointLimits'
  /** The reachable point that is nearest. */
  readonly nearest: Vector3<'length'>
  /** Distance of the foot from the target. */
  readonly miss: Quantity<'length'>
  /** Joint angles that put the foot at the nearest point. */
  readonly angles: PerJoint<Quantity<'angle'>>
  /** Joints at a limit there. */
  readonly activeLimits: readonly ActiveLimit[]
  /** The target is on the sideways hip's axis: other directions around the axis are as near. */
  readonly directionArbitrary: boolean
}
