import type { Leg } from '../document/describe.js'
import type { OfDrivenJoints } from '../numbers.js'
import type { Assumed } from './bench.js'
import type { GravityTerms } from './control-gains.js'
import type { JointControl, MotorControl } from './control-joint.js'
import type { MagnetError } from './control-magnet.js'
import type { SupplyLimits } from './control-supply.js'
import type { ThroughHip } from './control-through.js'

/** Numbers to type into a motor controller, each in a named convention. Plain data; `controlPage` renders it. */
export interface ControlSheet {
  /** The leg that the sheet is for. */
  readonly leg: Leg
  /** Conventions of all numbers on the sheet. */
  readonly conventions: readonly string[]
  /** Constants and limits of each motor's controller. */
  readonly motors: OfDrivenJoints<MotorControl>
  /** Torques that hold the leg's weight. */
  readonly gravity: GravityTerms
  /** Limits and gains of each joint. */
  readonly joints: OfDrivenJoints<JointControl>
  /** How the motors follow the joints where rod, belt or cord drives the knee from the hip axis; absent otherwise. */
  readonly throughHip: ThroughHip | undefined
  /** First steps with the controllers, each with the reading to expect. */
  readonly commissioning: readonly string[]
  /** Error of the encoder by gap, offset and tilt of its magnet. */
  readonly encoder: readonly MagnetError[]
  /** Limits of the supply. */
  readonly supply: SupplyLimits
  /** Values that the sheet needs and the document does not hold. */
  readonly assumed: readonly Assumed[]
  /** Hazards of the powered leg. */
  readonly cautions: readonly string[]
}
