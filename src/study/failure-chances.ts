import type { Formula, Inputs, Output } from '../formula/index.js'
import { randomStream } from '../numeric/index.js'
import { InputError, type Issue, Quantity, show } from '../units/index.js'
import { outputNamed } from './constraints.js'
import { correlationFactor } from './correlation.js'
import { type Chance, FailureChances, MIN_FAILURES } from './failure-chances-result.js'
import { ScatterTally, Tally } from './failure-tally.js'
import { type FailureZones, failureZones } from './failure-zones.js'
import { type LimitStates, limitStates, type Side } from './limit-states.js'
import { Mixture } from './mixture.js'
import { checkSeed, checkShare, checkWhole } from './options.js'
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
  /** Confidence of the intervals. Default 0.95. It counts the scatter of the draws, and not a failure that the search missed. */
  readonly confidence?: number
}

const MIN_RUNS = 200
/** Runs for each input that scatters: the slopes at the middle take one, and the draws are most. */
const RUNS_PER_INPUT = 4

/**
 * The chances of several rare failures at once, and of any of them: for the many checks of one leg, where each run of the formula gives all of them.
 *
 * The first-order method finds likeliest points of failure, from the slopes at the middle and from failed draws of a short subset simulation on the smallest margin. Draws round all of
 * these points, weighted back, give the chances with their intervals (importance sampling from a mixture). A rare failure has its own share of them, beside likelier ones. `any.reduce` ranks the scatter to reduce first. A point without an answer counts as failed.
 * A failure that neither the slopes nor the simulation lead to may be missed. `remarks` tells where the two disagree, where draws are few, and which failures were met too seldom to be counted.
 *
 * Source: S.-K. Au, J. L. Beck, *Probab. Eng. Mech.* 16 (2001) 263 (simulation); R. E. Melchers, *Struct. Saf.* 6 (1989) 3 (draws round likeliest points).
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
  checkWhole('evaluations', evaluations, MIN_RUNS, Number.POSITIVE_INFINITY, issues)
  checkSeed(seed, issues)
  checkShare('confidence', confidence, issues)
  const sides = sidesOf(any, limits, issues)
  if (issues.length > 0) throw new InputError(any.id, issues)
  const uncertain = uncertainModel(any, given, (sides[0] as Side).name === 'result' ? undefined : (sides[0] as Side).name)
  const paths = uncertain.varied.map(({ path }) => path)
  const { lower } = correlationFactor(paths, correlations, any.id)
  const states = limitStates(any, uncertain, lower, sides)
  const fewest = RUNS_PER_INPUT * (states.n + 1)
  if (evaluations < fewest)
    throw new InputError(any.id, [
      { path: 'evaluations', given: show(evaluations), accepts: `must be at least ${fewest}, as ${states.n} inputs scatter` },
    ])
  const zones = failureZones(states, evaluations, seed)
  return sampled(any.id, states, zones, { sides, evaluations, seed, confidence })
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

function sampled(id: string, states: LimitStates, zones: FailureZones, { sides, evaluations, seed, confidence }: Terms): FailureChances {
  const draws = evaluations - states.count.evaluations
  const tallies = sides.map(() => new Tally())
  const all = new Tally()
  const scatter = new ScatterTally(states.n)
  const mixture = new Mixture(states.n, zones.points)
  const u = new Float64Array(states.n)
  const random = randomStream(seed)
  for (let d = 0; d < draws; d++) {
    mixture.draw(random, u)
    const g = states.at(u)
    const weight = mixture.weight(u)
    let fails = false
    for (let k = 0; k < sides.length; k++)
      if (!((g[k] as number) > 0)) {
        fails = true
        ;(tallies[k] as Tally).add(weight)
      }
    if (!fails) continue
    all.add(weight)
    scatter.add(weight, u)
  }
  const any = all.chance(draws, confidence, mixture.mostWeight)
  const each = sides.map(({ name, words }, k) => {
    const one = (tallies[k] as Tally).chance(draws, confidence, mixture.mostWeight)
    const index = zones.points.find((point) => point.state === k && point.followed)?.index
    return {
      ...{ output: name, failure: words, index, ...one },
      // One failure that no draw met is no likelier than any.
      ...(one.failures === 0 && { interval: [0, Math.min(one.interval[1], any.interval[1])] as const }),
    }
  })
  return new FailureChances({
    formula: id,
    each: each.sort((a, b) => b.probability - a.probability),
    any: { ...any, reduce: ranked(states, scatter) },
    evaluations: states.count.evaluations,
    remarks: remarksOn(states, zones, any, all.largest, each),
  })
}

/** Standard errors above zero at which an effect of scatter counts. */
const CLEAR = 2

function ranked({ paths }: LimitStates, scatter: ScatterTally) {
  const effects = scatter.effects()
  const clear = ({ fall, error }: (typeof effects)[number]) => (fall > CLEAR * error ? fall : 0)
  const sum = effects.reduce((a, effect) => a + clear(effect), 0)
  return paths
    .map(([path, ...also], i) => {
      const one = effects[i] as (typeof effects)[number]
      return { path: path as string, also, share: sum === 0 ? 0 : clear(one) / sum, fall: one.fall }
    })
    .sort((a, b) => b.share - a.share || b.fall - a.fall)
}

const FEW = 50
/** The interval cannot be trusted where one draw carries this share of the chance. */
const MAX_WEIGHT_SHARE = 0.1
/** Where the simulation that explored is this many times above the interval, the points do not hold all failures. Its own spread is about a half. */
const DISAGREEMENT = 3

function remarksOn({ count }: LimitStates, zones: FailureZones, any: Chance, largest: number, each: FailureChances['each']): string[] {
  const { points, explored } = zones
  const seldom = each.filter(({ failures }) => failures > 0 && failures < MIN_FAILURES)
  const missed = explored !== undefined && explored > DISAGREEMENT * (any.failures === 0 ? 0 : any.interval[1])
  return [
    ...(points.length === 0
      ? ['no likeliest point of failure was found: the draws lie round the middle and meet common failures only']
      : []),
    ...(missed
      ? [
          `subset simulation gives ${explored.toPrecision(2)}, far above the interval: failures were met of which no likeliest point was found`,
        ]
      : []),
    ...(any.failures < FEW ? [`only ${any.failures} draws failed: the interval is rough, and more evaluations are needed`] : []),
    ...(largest > MAX_WEIGHT_SHARE
      ? [`one draw carries ${Math.round(100 * largest)} % of the chance: the interval is too narrow, and more evaluations are needed`]
      : []),
    ...(seldom.length > 0
      ? [`met too seldom to be counted alone, in fewer than ${MIN_FAILURES} draws: ${seldom.map(({ output }) => output).join(', ')}`]
      : []),
    ...(count.gaps > 0 ? [`${count.gaps} of ${count.evaluations} runs of the formula had no answer and count as failed`] : []),
  ]
}
