import { bracketRoot } from '../../numeric/index.js'
import { Quantity } from '../../units/index.js'
import { type Comparison, compare } from '../assess/compare.js'
import { worstEnds } from '../assess/survey.js'
import type { LegCalculation } from '../calculation.js'
import { torqueOfCurrent } from '../workshop-lines.js'
import { torque } from './bench.js'

/** One current limit to set, the condition that set it, and what it keeps from harm. */
export interface CurrentLimit {
  /** How long; absent for continuous and for a limit that no moment may pass. */
  readonly duration: Quantity<'time'> | undefined
  /** Purpose of the limit. */
  readonly what: string
  /** Current at typical values, as a peak phase current. */
  readonly peakPhase: Quantity<'peakPhaseCurrent'>
  /** The same as an rms phase current. */
  readonly rmsPhase: Quantity<'rmsPhaseCurrent'>
  /** Joint torque that the current gives in the condition that set it. */
  readonly jointTorque: Quantity<'torque'>
  /** The check whose reserve is 1 there, or the setting that caps it. */
  readonly protects: string
  /** Air, age and setting of the cord in which the limit is lowest. */
  readonly condition: string
  /** The same with every uncertain value at its unfavourable end. Set this one until the test stand has narrowed the ranges. */
  readonly cautious: Quantity<'peakPhaseCurrent'>
  /** Check that sets the cautious limit, with its condition. */
  readonly cautiousBy: string
}

/** A torque that passes, with every value typical and with the uncertain ones at their unfavourable ends. */
export interface Limit {
  readonly torque: number
  readonly cautious: number
  readonly cautiousBy: string | undefined
  /** The check that fails just above it; absent where none does. */
  readonly by: string | undefined
  readonly condition: string
  /** Checks that fail at any current, some of them only with uncertain values at their unfavourable ends; their names then have that added. */
  readonly regardless: readonly string[]
}

/** Natural logarithm of a reserve of plenty. */
const LARGE = 7
/** The failing check is read this far above the limit, as a share of it. */
const ABOVE = 1e-6

/** Smallest reserve among some comparisons, and the comparison that has it. */
interface Least {
  readonly least: number
  readonly by: string
}

/** The largest of `max` and less that passes, and what fails just above it. Reserves must fall as `x` grows, and nothing fails at 0. */
function largest(max: number, reserves: (x: number) => Least): { x: number; failing: Least | undefined } {
  if (reserves(max).least >= 1) return { x: max, failing: undefined }
  const logReserve = (x: number) => (x === 0 ? LARGE : Math.max(-LARGE, Math.min(LARGE, Math.log(reserves(x).least))))
  const x = bracketRoot(logReserve, 0, max)
  return { x, failing: reserves(x * (1 + ABOVE)) }
}

/** Smallest reserve among some comparisons. */
export function leastOf(calculation: LegCalculation, comparisons: readonly Comparison[]): Least {
  let weakest: Least = { least: Number.POSITIVE_INFINITY, by: '' }
  for (const comparison of comparisons) {
    const found = compare(calculation, comparison)
    if (typeof found === 'string' || found.reserve >= weakest.least) continue
    weakest = { least: found.reserve, by: nameOf(comparison) }
  }
  return weakest
}

/**
 * The largest torque at which all comparisons pass: with typical values, and with each uncertain value at the end that is unfavourable, for every
 * comparison by itself. A check that fails without any torque is no matter of the current: it is left out and named, at typical values and at the
 * unfavourable ends. `load` imposes a torque, and returns the reason where the state does not converge. The calculation is left at its typical values.
 */
export function limitOf(
  calculation: LegCalculation,
  comparisons: readonly Comparison[],
  max: number,
  load: (torque: number) => string | undefined,
  condition: string,
): Limit {
  const least = (torque: number, of: readonly Comparison[]): Least => {
    const failure = load(torque)
    return failure === undefined ? leastOf(calculation, of) : { least: 0, by: failure }
  }
  // Not quite zero: a capacity of nothing fails at any torque, and a torque of nothing passes everything.
  load(ABOVE * max)
  const passing = comparisons.filter((comparison) => reserveIn(calculation, comparison) >= 1)
  const { x, failing } = largest(max, (torque) => least(torque, passing))
  const by = failing?.by
  load(x)
  const groups = passing.map((comparison) => ({ comparisons: [comparison], reserve: reserveIn(calculation, comparison) }))
  const bands = worstEnds(calculation, groups)
  let cautious: { x: number; by: string | undefined } = { x, by }
  const lost: string[] = []
  for (const [group, { moves, worst }] of bands) {
    // It passes at the limit with everything unfavourable, and then below it as well.
    if (worst >= 1) continue
    const comparison = group.comparisons[0] as Comparison
    for (const { cell, range, low, high } of moves) calculation.put(cell, low < high ? range.low : range.high)
    load(ABOVE * max)
    // A check that is lost only here no longer limits the cautious current: it is listed, not dropped.
    if (reserveIn(calculation, comparison) < 1) lost.push(`${nameOf(comparison)}, ${UNFAVOURABLE}`)
    else if (least(cautious.x, [comparison]).least < 1) {
      const found = largest(cautious.x, (torque) => least(torque, [comparison]))
      if (found.x < cautious.x) cautious = { x: found.x, by: found.failing?.by }
    }
    for (const { cell } of moves) calculation.restore(cell)
  }
  const regardless = comparisons.filter((comparison) => !passing.includes(comparison)).map(nameOf)
  return { torque: x, cautious: cautious.x, cautiousBy: cautious.by, by, condition, regardless: [...regardless, ...lost] }
}

const UNFAVOURABLE = 'with uncertain values at their unfavourable ends'

/** Reserve of a comparison; infinite where it does not apply. */
function reserveIn(calculation: LegCalculation, comparison: Comparison): number {
  const found = compare(calculation, comparison)
  return typeof found === 'string' ? Number.POSITIVE_INFINITY : found.reserve
}

const nameOf = ({ check }: Comparison) => `${check.part}: ${check.mode}`

/** A limit as the sheet lists it: peak currents in ampere. @internal */
export const currentLimit = (
  what: string,
  duration: number | undefined,
  { peak, cautious, cautiousBy, torquePerAmpere, protects, condition }: CurrentOf,
): CurrentLimit => ({
  duration: duration === undefined ? undefined : new Quantity(duration, 'time'),
  what,
  peakPhase: new Quantity(peak, 'peakPhaseCurrent'),
  rmsPhase: new Quantity(peak / Math.SQRT2, 'rmsPhaseCurrent'),
  jointTorque: torque(torqueOfCurrent.si({ current: peak, perAmpere: torquePerAmpere })),
  protects,
  condition,
  cautious: new Quantity(cautious, 'peakPhaseCurrent'),
  cautiousBy,
})

/** A current limit in plain numbers. */
export interface CurrentOf {
  readonly peak: number
  readonly cautious: number
  readonly cautiousBy: string
  readonly torquePerAmpere: number
  readonly protects: string
  readonly condition: string
}
