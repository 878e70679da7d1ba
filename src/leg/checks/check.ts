import type { Evaluator, Source } from '../../formula/index.js'
import type { Kind } from '../../units/index.js'
import type { CaseId } from '../cases/catalogue.js'
import type { JointState, Scene } from '../state.js'

/** What a check finds in one load case: demand and capacity in SI, of the check's kind. */
export interface Finding {
  readonly demand: number
  readonly capacity: number
  /** What to know beside the numbers. */
  readonly remark?: string
}

/** A part of the work that checks share: forces and poses, cord tensions, temperatures. */
export type Stage = 'motion' | 'drive' | 'heat'

/** What is at stake: the leg breaks, it does not do its work, or somebody is hurt or annoyed. */
export type Stake = 'breaks' | 'fails to work' | 'safety'

/** One way a part can fail, and how that is found out. */
export interface Check {
  /** Part and mode, such as `pin.bending`. */
  readonly id: string
  /** The part, in words. */
  readonly part: string
  /** How it fails, in words. */
  readonly mode: string
  readonly stake: Stake
  readonly kind: Kind
  /** Whether it is asked of each driven joint or of the leg as a whole. */
  readonly scope: 'joint' | 'leg'
  readonly cases: readonly CaseId[]
  /** What its chain starts from. */
  readonly after: readonly Stage[]
  /** The chain of formulas; nothing where the check does not apply to this leg. */
  readonly run: (of: Evaluator, scene: Scene, at: JointState) => Finding | undefined
  /** What demand and capacity are, in words that complete "demand is …", "capacity is …". */
  readonly demandIs: string
  readonly capacityIs: string
  /** What would help. */
  readonly remedy: string
  /** Reserve that is enough where the general one asks too much: geometry is exact, a rule of thumb has its margin in it. */
  readonly enough?: number
  /** Materials whose priors it rests on. */
  readonly rests?: (scene: Scene) => readonly Rest[]
  /** Where the rule itself comes from, beside the sources of its formulas. */
  readonly rule?: Source
}

/** One uncertain value that a check rests on, and the test that would replace it. */
export interface Rest {
  readonly what: string
  readonly source: Source
  readonly test: string
}

/** Load cases in which the foot carries the robot. */
export const LOADED: readonly CaseId[] = ['stand', 'walk', 'stall', 'trot', 'hop', 'drop', 'hotAfternoon', 'coldMorning', 'slope', 'season']
/** Load cases in which the motors warm up. */
export const WARM: readonly CaseId[] = ['stand', 'walk', 'stall', 'hotAfternoon', 'slope', 'trot']
/** Load cases of one moment's force. */
export const ONCE: readonly CaseId[] = ['walk', 'stall', 'trot', 'hop', 'drop', 'coldMorning', 'slope']

/** A reserve beyond this says no more than "plenty". */
const PLENTY = 1000

/** Capacity over demand. A demand or capacity that is not a number counts as failed, with reserve 0. */
export function reserveOf({ demand, capacity }: Finding): number {
  if (Number.isNaN(demand) || Number.isNaN(capacity)) return 0
  if (demand <= 0) return PLENTY
  const reserve = capacity / demand
  return Number.isNaN(reserve) ? 0 : Math.min(PLENTY, Math.max(0, reserve))
}
