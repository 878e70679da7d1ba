import { type Formula, formula, type Inputs } from '../../formula/index.js'
import { type FailureChances, failureChances } from '../../study/index.js'
import { legReader } from '../as-formula.js'
import { QuickLeg } from '../assess/quick.js'
import type { CaseId } from '../cases/events.js'
import { legCorrelations } from '../correlations.js'
import type { Leg } from '../document/describe.js'
import { legInputs } from '../formula-inputs.js'
import { legNumbers } from '../numbers.js'
import { caseList, knownOptions } from '../options.js'

/** How the chances of a leg are worked out. */
export interface LegChancesOptions {
  /** Load cases. Default: those of `assess`. */
  readonly cases?: readonly CaseId[]
  /** Legs judged at most. Default 5000. */
  readonly evaluations?: number
  /** Seed of the draws. The same seed gives the same chances. */
  readonly seed?: number
  /** Confidence of the intervals, above 0 and below 1. */
  readonly confidence?: number
}

/** Reserves above this are alike to a chance of failure. */
const MAX_RESERVE = 1000

/**
 * The chance that a check of a leg fails (reserve below 1), for every check and for the leg, over the season that its load cases describe: with an interval, and with
 * the scatter to reduce first. Frictions, shares that are left, films and materials scatter over their ranges, each of them constant for one leg, and what is one
 * draw is drawn once (`legCorrelations`). Chances below one in ten
 * thousand compare legs; they prove nothing about yours.
 */
export function legChances(leg: Leg, options: LegChancesOptions = {}): FailureChances {
  knownOptions('legChances', options, ['cases', 'evaluations', 'seed', 'confidence'])
  const { cases: given, ...plan } = options
  const quick = new QuickLeg(caseList('legChances', given))
  const keys = [...quick.reserves(legNumbers(leg)).keys()]
  const numbers = legReader(leg)
  const si = (x: unknown) => {
    const reserves = quick.reserves(numbers(x))
    return Object.fromEntries(keys.map((key) => [key, Math.min(MAX_RESERVE, reserves.get(key) ?? MAX_RESERVE)]))
  }
  const reserves = formula('leg.reserves', {
    inputs: legInputs(leg, undefined),
    output: Object.fromEntries(keys.map((key) => [key, 'ratio'])) as never,
    source: [{ level: 'computed', where: 'every check of the leg in its load cases; see the calculation sheet of assess' }],
    si: si as never,
  }) as unknown as Formula<Inputs, never>
  return failureChances(reserves, {} as never, { ...plan, correlations: legCorrelations(leg) })
}
