import type { LoadCase } from './cases/catalogue.js'
import type { Heat } from './cases/heat.js'
import type { JointMotion, Motion } from './cases/motion.js'
import type { Joint, Prepared } from './numbers.js'

/** Cord and pin of one joint in one load case, SI. */
export interface DriveState {
  /** Tension of both spans at rest, at this temperature and age. */
  readonly pretension: number
  /** Whether nothing of the pretension is left, so that the cord hangs. */
  readonly hangs: boolean
  /** Change of the pretension since assembly that temperature alone makes. */
  readonly thermalTension: number
  /** Tension of the taut and of the slack span at the largest torque. */
  readonly taut: number
  readonly slack: number
  /** Largest tension after the joint has travelled under load. */
  readonly peak: number
  /** Torque at which the slack span goes slack, and at which the cord slips on the pinion (infinite where it is clamped). */
  readonly slackTorque: number
  readonly slipTorque: number
  /** Force of the cord on the shafts of pinion and drum. */
  readonly shaftForce: number
  /** Force on the joint's pin: cord and foot together. */
  readonly pinForce: number
  /** Angle that the joint gives at that torque, motor held. */
  readonly windup: number
  /** Slope of joint torque over joint angle at that torque, motor held. */
  readonly stiffness: number
  readonly pinionWrap: number
  /** Arc of cord on the drum, both branches together. */
  readonly drumWrapAngle: number
  readonly span: number
}

/** One joint in one load case, SI. */
export interface JointState {
  readonly joint: Joint
  readonly motion: JointMotion
  readonly drive: DriveState
  readonly heat: Heat
}

/** One load case, worked out, SI. */
export interface CaseState {
  readonly case: LoadCase
  readonly motion: Motion | undefined
  readonly joints: { readonly [J in Joint]: JointState }
  readonly air: number
  readonly duration: number
  readonly cycles: number
}

/** Everything a check sees. */
export interface Scene {
  readonly leg: Prepared
  readonly state: CaseState
  readonly joint: Joint
  /** Joint torque of walking, without sign: what a leg taken from the shelf must give; 0 where walking was not run. */
  readonly walkTorque: (joint: Joint) => number
}
