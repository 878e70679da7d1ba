import type { Formula, Inputs, Output } from '../formula/index.js'
import { normalCdf, normalQuantile, randomStream } from '../numeric/index.js'
import { InputError, type Issue, Quantity, show } from '../units/index.js'
import { outputNamed } from './constraints.js'
import { correlationFactor } from './correlation.js'
import { type Chance, FailureChances } from './failure-chances-result.js'
import { type LimitStates, limitStates, type Side } from './limit-states.js'
import { type NearPoint, nearPoints } from './near-points.js'
import { planRecord, untyped } from './path.js'
import { type Uncertain, uncertainModel } from './uncertain-model.js'
import type { Correlation } from './uncertainty.js'

/** What counts as failure, and how many runs may be spent. */
export interface FailureChancesPlan {
  /** Outputs that must not fall below, or not rise above, a number in SI units. Default: every output of the formula below 1. */
  readonly limits?: {
    readonly [output: string]:
      | {
          /** Failure is an output below this, SI. */
          readonly below: number
        }
      | {
          /** Failure is an output above this, SI. */
          readonly above: number
        }
  }
  /** Inputs that scatter together. Default: none. */
  readonly correlations?: readonly Correlation<string>[]
  /** Runs of the formula at most. Default 5000. */
  readonly evaluations?: number
  /** Default 1. */
  readonly seed?: number
  /** Confidence of the intervals. Default 0.95. */
  readonly confidence?: number
}

/** Share of the draws that are taken round the middle, so that failures near no design point are met as well. */
const ROUND_THE_MIDDLE = 0.1
/** A design point has at least this weight against the likeliest one. */
const LEAST_WEIGHT = 0.03

/**
 * The chances of several rare failures at once, and of any of them: for the many checks of one leg, where each run of the formula gives all of them.
 *
 * The first-order method finds the likeliest point of failure of those that are nearest. Draws round all of these points, weighted back, give the chances with their intervals
 * (importance sampling from a mixture). `any.reduce` ranks the scatter to reduce first. A point without an answer counts as failed. A failure that is far from all points found may be
 * missed: `remarks` tells where few draws failed.
 *
 * Throws one `InputError` that lists every bad input. As good as the tails of the distributions given, and no better.
 */
export function failureChances<I extends Inputs, O extends Output>(
  formula: Formula<I, O>,
  given: NoInfer<Uncertain<I>>,
  plan: FailureChancesPlan = {},
): FailureChances {
  const any = untyped(formula)
  const {
    correlations = [],
    evaluations = 5000,
    seed = 1,
    confidence = 0.95,
    limits,
  } = planRecord(any.id, plan, ['limits', 'correlations', 'evaluations', 'seed', 'confidence'])
  const issues: Issue[] = []
  if (!(Number.isSafeInteger(evaluations) && evaluations >= 200))
    issues.push({ path: 'evaluations', given: show(evaluations), accepts: 'must be a whole number of at least 200' })
  if (!Number.isSafeInteger(seed)) issues.push({ path: 'seed', given: show(seed), accepts: 'must be a whole number' })
  if (!(confidence > 0 && confidence < 1))
    issues.push({ path: 'confidence', given: show(confidence), accepts: 'must be a number between 0 and 1' })
  const sides = sidesOf(any, limits, issues)
  if (issues.length > 0) throw new InputError(any.id, issues)
  const uncertain = uncertainModel(any, given, sides[0]?.name === 'result' ? undefined : sides[0]?.name)
  const paths = uncertain.varied.map(({ path }) => path)
  const { lower } = correlationFactor(paths, correlations, any.id)
  const states = limitStates(any, uncertain, lower, sides)
  const points = nearPoints(states, Math.floor(evaluations / 2))
  return sampled(any.id, states, points, { sides, evaluations, seed, confidence })
}

function sidesOf(formula: ReturnType<typeof untyped>, limits: FailureChancesPlan['limits'], issues: Issue[]): Side[] {
  const names = limits === undefined ? outputsOf(formula) : Object.keys(limits)
  if (names.length === 0) issues.push({ path: 'limits', given: show(limits), accepts: 'must hold at least one output' })
  return names.flatMap((name): Side[] => {
    const output = outputNamed(formula, name, `limits.${name}`, issues)
    const limit: unknown = limits === undefined ? { below: 1 } : limits[name]
    const [[word, at] = [], ...others] = typeof limit === 'object' && limit !== null ? Object.entries(limit) : []
    const good = others.length === 0 && (word === 'below' || word === 'above') && Number.isFinite(at)
    const side = word === 'below' ? 1 : -1
    if (!good)
      issues.push({ path: `limits.${name}`, given: show(limit), accepts: 'must be { below } or { above } with a number in SI units' })
    return output === undefined || !good
      ? []
      : [{ name, side, limit: at, words: `${side === 1 ? 'below' : 'above'} ${new Quantity(at, output.kind)}` }]
  })
}

const outputsOf = ({ def }: ReturnType<typeof untyped>): string[] =>
  typeof def.output === 'string' || 'infinite' in (def.output as object) ? ['result'] : Object.keys(def.output as object)

interface Terms {
  readonly sides: readonly Side[]
  readonly evaluations: number
  readonly seed: number
  readonly confidence: number
}

function sampled(
  id: string,
  states: LimitStates,
  points: readonly NearPoint[],
  { sides, evaluations, seed, confidence }: Terms,
): FailureChances {
  const { n } = states
  const centres = [new Float64Array(n), ...points.map(({ u }) => u)]
  const likeliest = Math.max(...points.map(({ index }) => normalCdf(-index)), Number.MIN_VALUE)
  const raw = points.map(({ index }) => Math.max(LEAST_WEIGHT, normalCdf(-index) / likeliest))
  const sum = raw.reduce((a, b) => a + b, 0)
  const shares = points.length === 0 ? [1] : [ROUND_THE_MIDDLE, ...raw.map((w) => ((1 - ROUND_THE_MIDDLE) * w) / sum)]
  const draws = Math.max(100, evaluations - states.count.evaluations)
  const tallies = Array.from({ length: sides.length + 1 }, () => ({ weight: 0, square: 0, count: 0 }))
  const shift = new Float64Array(n)
  const u = new Float64Array(n)
  const random = randomStream(seed)
  for (let d = 0; d < draws; d++) {
    const centre = centres[chosen(shares, random.uniform())] as Float64Array
    for (let i = 0; i < n; i++) u[i] = (centre[i] as number) + random.normal(0, 1)
    const g = states.at(u)
    const weight = weightOf(u, centres, shares)
    let fails = false
    for (let k = 0; k < sides.length; k++)
      if (!((g[k] as number) > 0)) {
        fails = true
        add(tallies[k] as Tally, weight)
      }
    if (!fails) continue
    add(tallies[sides.length] as Tally, weight)
    for (let i = 0; i < n; i++) (shift[i] as number) += weight * (u[i] as number)
  }
  const chance = (tally: Tally): Chance => chanceOf(tally, draws, confidence)
  const far = shift.reduce((a, x) => a + x * x, 0)
  return new FailureChances({
    formula: id,
    each: sides
      .map(({ name, words }, k) => ({
        output: name,
        failure: words,
        index: points.find((point) => point.state === k)?.index,
        ...chance(tallies[k] as Tally),
      }))
      .sort((a, b) => b.probability - a.probability),
    any: {
      ...chance(tallies[sides.length] as Tally),
      reduce: states.paths
        .map(([path, ...also], i) => ({ path: path as string, also, share: far === 0 ? 0 : (shift[i] as number) ** 2 / far }))
        .sort((a, b) => b.share - a.share),
    },
    evaluations: states.count.evaluations,
    remarks: remarksOn(states, points, tallies[sides.length] as Tally),
  })
}

interface Tally {
  weight: number
  square: number
  count: number
}

const add = (tally: Tally, weight: number): void => {
  tally.weight += weight
  tally.square += weight * weight
  tally.count++
}

/** Density of the free draws over that of the mixture; taken from exponents, which neither under- nor overflow together. */
function weightOf(u: Float64Array, centres: readonly Float64Array[], shares: readonly number[]): number {
  let mixture = 0
  for (let j = 0; j < centres.length; j++) {
    const c = centres[j] as Float64Array
    let exponent = 0
    for (let i = 0; i < u.length; i++) exponent += (c[i] as number) * ((u[i] as number) - (c[i] as number) / 2)
    mixture += (shares[j] as number) * Math.exp(exponent)
  }
  return 1 / mixture
}

function chosen(shares: readonly number[], x: number): number {
  let left = x
  for (let j = 0; j < shares.length - 1; j++) {
    left -= shares[j] as number
    if (left < 0) return j
  }
  return shares.length - 1
}

function chanceOf({ weight, square, count }: Tally, draws: number, confidence: number): Chance {
  const probability = weight / draws
  const error = Math.sqrt(Math.max(0, square / draws - probability * probability) / draws)
  const reach = normalQuantile(0.5 + confidence / 2) * error
  return { probability, error, interval: [Math.max(0, probability - reach), Math.min(1, probability + reach)], failures: count }
}

const FEW = 50

function remarksOn({ count }: LimitStates, points: readonly NearPoint[], { count: failures }: Tally): string[] {
  return [
    ...(points.length === 0
      ? ['no likeliest point of failure was found: the draws lie round the middle and meet common failures only']
      : []),
    ...(failures < FEW ? [`only ${failures} draws failed: the interval is rough, and more evaluations are needed`] : []),
    ...(count.gaps > 0 ? [`${count.gaps} of ${count.evaluations} runs of the formula had no answer and count as failed`] : []),
  ]
}
