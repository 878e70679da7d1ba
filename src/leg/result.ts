import type { Source, Step } from '../formula/index.js'
import type { Quantity } from '../units/index.js'
import type { Consequence } from './cases/check.js'
import type { CaseId } from './cases/events.js'
import type { Leg } from './document/describe.js'
import type { FootResult } from './foot-result.js'
import type { Joint } from './numbers.js'

/** One check of the verdict: a part, how it fails, and how much is in reserve in the load case that is hardest for it. */
export interface CheckResult {
  /** Part and mode, such as `pin.bending`. */
  readonly id: string
  readonly part: string
  readonly mode: string
  readonly consequence: Consequence
  /** The joint it belongs to; absent for the leg as a whole. */
  readonly joint?: Joint
  readonly case: CaseId
  readonly caseTitle: string
  readonly demand: Quantity
  readonly capacity: Quantity
  /** Capacity over demand: below 1 the part fails. */
  readonly reserve: number
  /** The reserve required of it. */
  readonly requiredReserve: number
  /**
   * The reserve with every uncertain value at the end that is unfavourable for this check, and at the favourable end. A check is monotone where each
   * value moves it one way; otherwise `worst` is the least that was found, and values between the ends may be a little worse.
   */
  readonly range: { readonly worst: number; readonly best: number; readonly monotone: boolean }
  /** What was found, in plain words. */
  readonly sentence: string
  /** What demand and capacity are. */
  readonly demandIs: string
  readonly capacityIs: string
  /** What would help. */
  readonly remedy: string
  /** The calculation, formula by formula. */
  readonly steps: readonly Step[]
  /** Sources of the calculation, each once. */
  readonly sources: readonly Source[]
  /** Validity limits that the calculation breaks, and other remarks. */
  readonly notes: readonly string[]
  /** Reserves in the other load cases. */
  readonly otherCases: readonly { readonly case: CaseId; readonly reserve: number }[]
  /** Uncertain values it relies on, and the test that would replace each. */
  readonly reliesOn: readonly Reliance[]
}

/** An uncertain value that a check relies on, its source, and the test that would replace it. */
export interface Reliance {
  readonly what: string
  readonly source: Source
  readonly test: string
}

/** A driven joint in one load case, for tables and charts. */
export interface JointResult {
  readonly torque: Quantity<'torque'>
  readonly speed: Quantity<'angularVelocity'>
  readonly motorTorque: Quantity<'torque'>
  readonly peakPhaseCurrent: Quantity<'peakPhaseCurrent'>
  readonly pretension: Quantity<'force'>
  readonly tautTension: Quantity<'force'>
  readonly slackTension: Quantity<'force'>
  readonly peakTension: Quantity<'force'>
  readonly motorLoss: Quantity<'power'>
  /** Steady temperatures; absent where there is no thermal steady state. */
  readonly windingTemperature: Quantity<'temperature'> | undefined
  readonly mountTemperature: Quantity<'temperature'> | undefined
}

/** One load case of the verdict. */
export interface CaseResult {
  readonly id: CaseId
  readonly title: string
  readonly story: string
  readonly footForce: Quantity<'force'>
  readonly air: Quantity<'temperature'>
  readonly joints: { readonly [J in Joint]: JointResult }
}

/** A loop of effects that does not converge. */
export interface Unsettled {
  readonly case: CaseId
  readonly joint: Joint
  /** The loop, such as copper loss and winding temperature. */
  readonly loop: string
  readonly why: string
}

/** The verdict on a leg. */
export interface Assessment {
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
  readonly cases: readonly CaseResult[]
  /** How well the foot keeps its place. */
  readonly foot: FootResult
  /** Whether heat, resistance and the values that depend on them converged in every load case. */
  readonly coupling: 'settled' | 'unsettled'
  readonly unsettled: readonly Unsettled[]
  /** Checks that do not apply to this leg or could not be made, and why. */
  readonly notEvaluated: readonly { readonly id: string; readonly why: string }[]
  /** How much of the verdict rests on values that nobody measured or published. */
  readonly priors: {
    /** Share of the checks whose reserve changes sides (1) within the range of its uncertain values. */
    readonly undecided: number
    /** Share of the sources used that are priors. */
    readonly share: number
    /** The uncertain values that decide most checks, with the test that would replace each. */
    readonly tests: readonly { readonly what: string; readonly test: string; readonly checks: readonly string[] }[]
  }
}
