import type { Quantity } from '../units/index.js'
import type { CaseId } from './cases/events.js'
import type { BestMeasurement, CheckResult } from './check-result.js'
import type { Leg } from './document/describe.js'
import type { FootResult } from './foot-result.js'
import type { DrivenJoint, OfDrivenJoints } from './numbers.js'
import type { UnusualValue } from './plausibility/index.js'

/** A driven joint in one load case, for tables and charts. */
export interface JointResult {
  /** Torque of the joint of largest magnitude, with its sign. */
  readonly torque: Quantity<'torque'>
  /** Highest speed of the joint. */
  readonly speed: Quantity<'angularVelocity'>
  /** Torque of the motor, losses of its drive in it. */
  readonly motorTorque: Quantity<'torque'>
  /** Peak of the phase current for that torque. */
  readonly peakPhaseCurrent: Quantity<'peakPhaseCurrent'>
  /** Tension of both spans at rest; absent, as the tensions under load are, where neither cord nor belt drives the joint. */
  readonly pretension: Quantity<'force'> | undefined
  /** Tension of the taut span under load. */
  readonly tautTension: Quantity<'force'> | undefined
  /** Tension of the slack span under load. */
  readonly slackTension: Quantity<'force'> | undefined
  /** Largest tension, travel under load in it. */
  readonly peakTension: Quantity<'force'> | undefined
  /** Copper loss of the motor. */
  readonly motorLoss: Quantity<'power'>
  /** Steady temperature of the winding; absent where there is no thermal steady state. */
  readonly windingTemperature: Quantity<'temperature'> | undefined
  /** Steady temperature of the mounting face of the motor; absent where there is none. */
  readonly mountTemperature: Quantity<'temperature'> | undefined
}

/** One load case of the verdict. */
export interface CaseResult {
  /** Name of the load case. */
  readonly id: CaseId
  /** Title for readers. */
  readonly title: string
  /** The load case in one sentence. */
  readonly story: string
  /** Force of the ground on the foot. */
  readonly footForce: Quantity<'force'>
  /** Temperature of the air. */
  readonly air: Quantity<'temperature'>
  /** State of each driven joint. */
  readonly joints: OfDrivenJoints<JointResult>
}

/** A loop of effects that does not converge. */
export interface Unsettled {
  /** The load case in which the loop does not converge. */
  readonly case: CaseId
  /** The joint of the loop. */
  readonly joint: DrivenJoint
  /** The loop, such as copper loss and winding temperature. */
  readonly loop: string
  /** Why it does not converge. */
  readonly why: string
}

/** The verdict on a leg. */
export interface Assessment {
  /** The leg that was assessed. */
  readonly leg: Leg
  /** Whether every reserve is at least 1. */
  readonly passes: boolean
  /** Whether every check has its required reserve. */
  readonly meetsTarget: boolean
  /** The general required reserve; some checks require less. */
  readonly requiredReserve: number
  /** The check with the smallest reserve. */
  readonly governing: CheckResult
  /** Every check, smallest reserve first. */
  readonly checks: readonly CheckResult[]
  /** The load cases, each with the state of its joints. */
  readonly cases: readonly CaseResult[]
  /** How well the foot keeps its place. */
  readonly foot: FootResult
  /** Whether heat, resistance and the values that depend on them converged in every load case. */
  readonly coupling: 'settled' | 'unsettled'
  /** Loops of effects that do not converge. */
  readonly unsettled: readonly Unsettled[]
  /** Checks that do not apply to this leg or could not be made, and why. */
  readonly notEvaluated: readonly {
    /** Part and mode of the check, and its joint where it has one. */
    readonly id: string
    /** Why it does not apply or could not be made. */
    readonly why: string
  }[]
  /** Values that no usual leg has: check their units and digits before you rely on the verdict. */
  readonly unusual: readonly UnusualValue[]
  /** The measurement that would narrow the governing reserve most; absent where no uncertain value moves any. */
  readonly bestMeasurement?: BestMeasurement
  /** How much of the verdict rests on values that nobody measured or published. */
  readonly priors: {
    /** Share of the checks whose reserve changes sides (1) within the range of its uncertain values. */
    readonly undecided: number
    /** Share of the sources used that are priors. */
    readonly share: number
    /** The uncertain values that decide most checks, with the test that would replace each. */
    readonly tests: readonly {
      /** The value, in plain words. */
      readonly what: string
      /** The test that would replace it. */
      readonly test: string
      /** The checks that it decides. */
      readonly checks: readonly string[]
    }[]
  }
}
