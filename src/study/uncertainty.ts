import type { Formula, Inputs, Output } from '../formula/index.js'
import { type Issue, issue } from '../units/index.js'
import { correlationFactor } from './correlation.js'
import { draws } from './draws.js'
import { linearUncertainty } from './linear-uncertainty.js'
import type { Named, OptionsFor } from './model.js'
import { checkSeed, checkShare, checkWhole } from './options.js'
import { planRecord, type ScalarPath, untyped } from './path.js'
import { type Uncertain, uncertainModel } from './uncertain-model.js'
import { type LinearUncertainty, type MonteCarloUncertainty, Uncertainty } from './uncertainty-result.js'

/** Two inputs that scatter together. */
export interface Correlation<P extends string = string> {
  /** Paths of the two inputs. */
  readonly between: readonly [P, P]
  /** Coefficient from −1 to 1. In Monte Carlo it is that of the normal scores (a Gaussian copula): exact for normal distributions, slightly weaker for others. */
  readonly coefficient: number
}

/** How uncertainty is worked out. */
export interface UncertaintyOptions<P extends string = string> {
  readonly correlations?: readonly Correlation<P>[]
  /** Monte Carlo draws, at first where more may follow. Default 10 000. */
  readonly samples?: number
  /**
   * Draws more until mean, deviation and both ends are settled, but at most as many as given here; `true` means at most 5 000 000. Default: `false`, no more
   * than `samples`. Two digits often take some millions of draws, one digit a hundredth of them.
   */
  readonly untilSettled?: boolean | number
  /** Digits of the deviation to which the figures must be certain to count as settled: 1, 2 or 3. Default 2. */
  readonly digits?: number
  /** Default 1. The same seed gives the same result to the last bit. */
  readonly seed?: number
  /** Part of the results that the interval holds. Default 0.95. */
  readonly coverage?: number
}

/** The most draws: their results are kept, 8 bytes each and some copies of them. */
const MAX_DRAWS = 5e7
const MIN_DRAWS = 200
const SETTLING_DRAWS = 5e6

const KNOWN = ['correlations', 'samples', 'untilSettled', 'digits', 'seed', 'coverage', 'output'] as const

/**
 * How far a result may be off: to first order and by seeded Monte Carlo, for any formula.
 *
 * `uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0.04), wrapAngle: '3 turn' })`. Whatever is a property with a range scatters by
 * default (triangular from its low end over the typical value to its high end), an input left out whose default is one included; anything else
 * scatters where it is given as a distribution.
 * Draw number i depends only on the seed and i. Figures come with the standard error of their estimate.
 *
 * Throws one `InputError` that lists every bad input; a distribution more than 1 % outside its input's limits is one of them.
 *
 * Source: JCGM 100:2008, 5.1 and 5.2 (first order); JCGM 101:2008, 7 (Monte Carlo, shortest interval), 7.9 (draws until the
 * figures are stable; here by the spread of twenty batches of all draws).
 */
export function uncertainty<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  ...[options]: OptionsFor<O, UncertaintyOptions<ScalarPath<I>>>
): Uncertainty {
  const {
    correlations = [],
    samples = 10_000,
    untilSettled = false,
    digits = 2,
    seed = 1,
    coverage = 0.95,
    output,
  } = planRecord(untyped(formula).id, (options ?? {}) as Named<UncertaintyOptions>, KNOWN)
  const issues: Issue[] = []
  checkWhole('samples', samples, MIN_DRAWS, MAX_DRAWS, issues)
  if (typeof untilSettled !== 'boolean') checkWhole('untilSettled', untilSettled, MIN_DRAWS, MAX_DRAWS, issues, 'true, false, or ')
  if (![1, 2, 3].includes(digits)) issues.push(issue('digits', digits, 'must be 1, 2 or 3'))
  checkSeed(seed, issues)
  checkShare('coverage', coverage, issues)
  const uncertain = uncertainModel(untyped(formula), given, output, issues)
  const factor = correlationFactor(
    uncertain.varied.map(({ path }) => path),
    correlations,
    formula.id,
  )
  const linear = linearUncertainty(untyped(formula), uncertain, factor.matrix)
  const max = untilSettled === true ? SETTLING_DRAWS : untilSettled === false ? undefined : untilSettled
  const monteCarlo = draws(uncertain, factor.lower, { samples, seed, coverage, digits, most: max })
  const { kind } = uncertain.model.output
  return new Uncertainty(formula.id, kind, coverage, linear, monteCarlo, [...uncertain.remarks, ...remarksOn(linear, monteCarlo)])
}

function remarksOn(linear: LinearUncertainty, mc: MonteCarloUncertainty): string[] {
  const remarks: string[] = []
  const { deviation } = mc
  const off = Math.abs(linear.deviation.si - deviation.value.si)
  if (off > 0.1 * deviation.value.si + 3 * deviation.error.si)
    remarks.push(
      `the first-order deviation is ${linear.deviation}, the draws give ${deviation.value}: the formula bends over these ranges; trust the draws`,
    )
  if (mc.gaps > 0) remarks.push(`${mc.gaps} of ${mc.samples} draws have no finite answer and are left out`)
  return remarks
}
