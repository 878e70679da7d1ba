import type { QuickLeg } from '../assess/quick.js'
import type { CheckResult } from '../check-result.js'
import type { LegNumbers } from '../leg-numbers.js'
import { tried } from './reach.js'

/** A check that a change harms. */
export interface SideEffect {
  readonly key: string
  readonly part: string
  readonly joint?: CheckResult['joint']
  /** The check as it was; absent for one that applies only once the change is made. */
  readonly check?: CheckResult
  /** Whether it was short before, and falls further. */
  readonly further: boolean
}

/** A check that was short may lose this share of its reserve before it is named: less is lost by rounding a size. */
const NOTICED = 0.01

/**
 * Checks that a changed leg does worse on: ones that lose their required reserve, ones that apply only now and lack it, and ones that were short
 * already and lose more than a hundredth of their reserve.
 */
export function sideEffectsOf(quick: QuickLeg, leg: LegNumbers, checks: ReadonlyMap<string, CheckResult>): SideEffect[] {
  return quick.keys(leg).flatMap((key): SideEffect[] => {
    const check = checks.get(key)
    const { part, joint, required } = quick.about(leg, key)
    const named = { key, part, ...(joint === undefined ? {} : { joint }), ...(check === undefined ? {} : { check }) }
    const further = check !== undefined && check.reserve < check.requiredReserve
    const min = further ? (1 - NOTICED) * check.reserve : (check?.requiredReserve ?? required)
    return tried(() => quick.has(leg, key, min), false) === false ? [{ ...named, further }] : []
  })
}
