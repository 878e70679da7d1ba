import type { Source, Step } from '../formula/index.js'
import type { Quantity } from '../units/index.js'
import type { Consequence } from './cases/check.js'
import type { CaseId } from './cases/events.js'
import type { DrivenJoint } from './numbers.js'

/** One check of the verdict: a part, how it fails, and how much is in reserve in the load case that is hardest for it. */
export interface CheckResult {
  /** Part and mode, such as `pin.bending`. */
  readonly id: string
  /** The part, such as `pin`. */
  readonly part: string
  /** The way in which it fails, such as `bending`. */
  readonly mode: string
  /** Consequence of the failure for the robot. */
  readonly consequence: Consequence
  /** The joint it belongs to; absent for the leg as a whole. */
  readonly joint?: DrivenJoint
  /** The load case in which the reserve is smallest. */
  readonly case: CaseId
  /** Title of that load case, for readers. */
  readonly caseTitle: string
  /** Load that the part must carry there. */
  readonly demand: Quantity
  /** Load that the part can carry there, of the same kind. */
  readonly capacity: Quantity
  /** Capacity over demand: below 1 the part fails. */
  readonly reserve: number
  /** The reserve required of it. */
  readonly requiredReserve: number
  /**
   * The reserve with every uncertain value at the end that is unfavourable for this check, and at the favourable end. A check is monotone where each
   * value moves it one way; otherwise `worst` is the least that was found, and values between the ends may be a little worse.
   */
  readonly range: {
    /** Reserve at the unfavourable ends. */
    readonly worst: number
    /** Reserve at the favourable ends. */
    readonly best: number
    /** Whether each uncertain value moves the reserve one way only. */
    readonly monotone: boolean
  }
  /** Finding in plain words. */
  readonly sentence: string
  /** Demand and capacity in words. */
  readonly demandIs: string
  /** Capacity in plain words. */
  readonly capacityIs: string
  /** Changes that would help. */
  readonly remedy: string
  /** The calculation, formula by formula. */
  readonly steps: readonly Step[]
  /** Sources of the calculation, each once. */
  readonly sources: readonly Source[]
  /** Validity limits that the calculation breaks, and other remarks. */
  readonly notes: readonly string[]
  /** Reserves in the other load cases. */
  readonly otherCases: readonly {
    /** Name of the load case. */
    readonly case: CaseId
    /** Capacity over demand there. */
    readonly reserve: number
  }[]
  /** Uncertain values it relies on, and the test that would replace each. */
  readonly reliesOn: readonly Reliance[]
  /** Uncertain values behind demand and capacity; absent for a side that no uncertain value moves. */
  readonly restsOn: {
    /** Of the demand. */
    readonly demand?: RestsOn
    /** Of the capacity. */
    readonly capacity?: RestsOn
  }
}

/** What a side of a check rests on: shares of its uncertain values, each weighed by how far it moves the reserve. The shares add to 1. */
export interface RestsOn {
  /** Measured by the user on parts of this robot. */
  readonly measured: number
  /** Read in a publication, a standard or a library, or computed from one. */
  readonly published: number
  /** Cited, original not checked. */
  readonly unverified: number
  /** Common practice and assumptions. */
  readonly assumed: number
}

/** Ends of the range of a reserve. */
export interface ReserveEnds {
  /** Unfavourable end. */
  readonly worst: number
  /** Favourable end. */
  readonly best: number
}

/** The measurement that would narrow the governing reserve most; where no uncertain value moves that, the next reserve that one moves. */
export interface BestMeasurement {
  /** Check and joint whose reserve it narrows. */
  readonly check: string
  /** Measure to take. */
  readonly test: string
  /** The values that it would replace. */
  readonly values: readonly string[]
  /** Range of the reserve now. */
  readonly before: ReserveEnds
  /** Its range when the measurement confirms the typical values without scatter: the least width that it can leave. */
  readonly after: ReserveEnds
}

/** An uncertain value that a check relies on, its source, and the test that would replace it. */
export interface Reliance {
  /** The value, in plain words. */
  readonly what: string
  /** Where the value comes from. */
  readonly source: Source
  /** The test that would replace it. */
  readonly test: string
}
