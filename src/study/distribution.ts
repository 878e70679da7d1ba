import { integrate, normalCdf, normalQuantile, triangularQuantile } from '../numeric/index.js'
import { type In, type Issue, type Kind, Quantity, readAt, show } from '../units/index.js'

/** What a spread of a kind is given in: a temperature spreads by a temperature difference. */
export type SpreadOf<K extends Kind> = K extends 'temperature' ? 'temperatureDifference' : K

/**
 * How an input scatters. Made by `normal`, `lognormal`, `uniform`, `triangular` and `truncated`; given to a study tool in place of the
 * input's value, whose kind it takes.
 */
export interface Distribution<V = unknown, S = unknown> {
  readonly distribution: 'normal' | 'lognormal' | 'uniform' | 'triangular' | 'truncated'
  /** Places on the input's own scale, in the order of the helper's arguments. */
  readonly at: readonly V[]
  /** A spread, for a normal distribution. */
  readonly spread?: S
  /** The factor of a lognormal distribution. */
  readonly factor?: number
  /** What is cut off, for a truncated distribution. */
  readonly of?: Distribution<V, S>
}

/** A distribution of an input of a kind. */
export type DistributionOf<K extends Kind> = Distribution<In<K>, In<SpreadOf<K>>>

/** Normal: mean and standard deviation. A temperature's deviation is a difference: `normal('20 degC', '3 K')`. */
export const normal = <const V, const S>(mean: V, standardDeviation: S): Distribution<V, S> => ({
  distribution: 'normal',
  at: [mean],
  spread: standardDeviation,
})

/**
 * Lognormal, by its median and the factor of one standard deviation: about 68 % lie between median/factor and median × factor.
 * For what cannot be negative and is known to within a factor, such as friction or a creep rate.
 */
export const lognormal = <const V>(median: V, factor: number): Distribution<V, never> => ({
  distribution: 'lognormal',
  at: [median],
  factor,
})

/** Uniform: every value between two ends equally likely. */
export const uniform = <const V>(low: V, high: V): Distribution<V, never> => ({ distribution: 'uniform', at: [low, high] })

/** Triangular: rising from the low end to the likeliest value, falling to the high end. A range with a typical value is assumed to scatter like that. */
export const triangular = <const V>(low: V, mode: V, high: V): Distribution<V, never> => ({
  distribution: 'triangular',
  at: [low, mode, high],
})

/** A distribution cut off outside two ends and rescaled. */
export const truncated = <const V, const S>(of: Distribution<V, S>, low: V, high: V): Distribution<V, S> => ({
  distribution: 'truncated',
  at: [low, high],
  of,
})

const NAMES = ['normal', 'lognormal', 'uniform', 'triangular', 'truncated']

/** Whether a value is a distribution. */
export const isDistribution = (given: unknown): given is Distribution =>
  typeof given === 'object' &&
  given !== null &&
  NAMES.includes((given as Distribution).distribution) &&
  Array.isArray((given as Distribution).at)

/** A distribution on SI numbers. */
export interface Scatter {
  readonly mean: number
  readonly deviation: number
  /** The middle: half lie below. */
  readonly median: number
  /** Ends, infinite where there are none. */
  readonly low: number
  readonly high: number
  /** The value below which a fraction lies, 0 < fraction < 1. */
  quantile(fraction: number): number
  /** The value at a normal score, where it is a simple function: exact in both tails. */
  atScore?(score: number): number
  /** The fraction below a value. */
  below(x: number): number
  readonly words: string
}

/** Reads a distribution of a kind; adds issues and returns nothing where it cannot be. */
export function scatterOf(given: Distribution, kind: Kind, path: string, issues: Issue[]): Scatter | undefined {
  const before = issues.length
  const number = (x: unknown, of: Kind, where: string): number => readAt(where, of, x, issues)
  const refuse = (x: unknown, accepts: string) => void issues.push({ path, given: show(x), accepts })
  const at = given.at.map((x, i) => number(x, kind, `${path}.${given.distribution}[${i}]`))
  const spread =
    given.distribution === 'normal' ? number(given.spread, kind === 'temperature' ? 'temperatureDifference' : kind, `${path}.normal[1]`) : 0
  const inner = given.distribution === 'truncated' && given.of !== undefined ? scatterOf(given.of, kind, path, issues) : undefined
  if (issues.length > before) return undefined
  const [a = Number.NaN, b = Number.NaN, c = Number.NaN] = at
  switch (given.distribution) {
    case 'normal':
      if (spread > 0) return normalScatter(a, spread, kind)
      return refuse(given.spread, 'a standard deviation must be above zero')
    case 'lognormal': {
      const { factor } = given
      if (!(a > 0)) return refuse(given.at[0], 'the median of a lognormal distribution must be above zero')
      if (!(typeof factor === 'number' && factor > 1 && Number.isFinite(factor)))
        return refuse(factor, 'the factor of a lognormal distribution must be a number above 1')
      return lognormalScatter(a, factor, kind)
    }
    case 'uniform':
      if (a < b) return uniformScatter(a, b, kind)
      return refuse(given.at, 'must be a lower and a higher end')
    case 'triangular':
      if (a <= b && b <= c && a < c) return triangularScatter(a, b, c, kind)
      return refuse(given.at, 'must be a low end, the likeliest value between, and a high end')
    default:
      if (inner === undefined) return refuse(given.of, 'must be a distribution to cut')
      if (!(a < b)) return refuse(given.at, 'must be a lower and a higher end')
      if (!(inner.below(b) - inner.below(a) > 1e-9))
        return refuse(given.at, 'must be ends between which the distribution has something left')
      return truncatedScatter(inner, a, b, kind)
  }
}

const text = (x: number, kind: Kind) => String(new Quantity(x, kind))

const normalScatter = (mean: number, deviation: number, kind: Kind): Scatter => ({
  mean,
  deviation,
  median: mean,
  low: Number.NEGATIVE_INFINITY,
  high: Number.POSITIVE_INFINITY,
  quantile: (p) => mean + deviation * normalQuantile(p),
  atScore: (score) => mean + deviation * score,
  below: (x) => (x === Number.POSITIVE_INFINITY ? 1 : x === Number.NEGATIVE_INFINITY ? 0 : normalCdf((x - mean) / deviation)),
  words: `normal, ${text(mean, kind)} ± ${text(deviation, kind === 'temperature' ? 'temperatureDifference' : kind)}`,
})

function lognormalScatter(median: number, factor: number, kind: Kind): Scatter {
  const s = Math.log(factor)
  const mean = median * Math.exp((s * s) / 2)
  return {
    mean,
    deviation: mean * Math.sqrt(Math.expm1(s * s)),
    median,
    low: 0,
    high: Number.POSITIVE_INFINITY,
    quantile: (p) => median * Math.exp(s * normalQuantile(p)),
    atScore: (score) => median * Math.exp(s * score),
    below: (x) => (x <= 0 ? 0 : x === Number.POSITIVE_INFINITY ? 1 : normalCdf(Math.log(x / median) / s)),
    words: `lognormal, ${text(median, kind)} within a factor ${Number(factor.toPrecision(3))}`,
  }
}

const uniformScatter = (low: number, high: number, kind: Kind): Scatter => ({
  mean: (low + high) / 2,
  deviation: (high - low) / Math.sqrt(12),
  median: (low + high) / 2,
  low,
  high,
  quantile: (p) => (1 - p) * low + p * high,
  below: (x) => Math.min(Math.max((x - low) / (high - low), 0), 1),
  words: `uniform, ${text(low, kind)} to ${text(high, kind)}`,
})

/** A triangular distribution on SI numbers. */
export const triangularScatter = (low: number, mode: number, high: number, kind: Kind): Scatter => ({
  mean: (low + mode + high) / 3,
  deviation: Math.sqrt(((high - low) ** 2 - (mode - low) * (high - mode)) / 18),
  median: triangularQuantile(0.5, low, mode, high),
  low,
  high,
  quantile: (p) => triangularQuantile(p, low, mode, high),
  below: (x) => {
    if (x <= low) return 0
    if (x >= high) return 1
    return x < mode ? (x - low) ** 2 / ((high - low) * (mode - low)) : 1 - (high - x) ** 2 / ((high - low) * (high - mode))
  },
  words: `triangular, ${text(low, kind)} to ${text(high, kind)}, likeliest ${text(mode, kind)}`,
})

/** What is left of a distribution between two ends. */
export function truncatedScatter(inner: Scatter, low: number, high: number, kind: Kind): Scatter {
  const from = inner.below(low)
  const share = inner.below(high) - from
  const ends = { low: Math.max(low, inner.low), high: Math.min(high, inner.high) }
  const quantile = (p: number) => {
    const q = from + p * share
    return q <= 0 ? ends.low : q >= 1 ? ends.high : Math.min(Math.max(inner.quantile(q), ends.low), ends.high)
  }
  // Moments of what is left, from the distribution function: it is smooth where the quantile may run off to infinity.
  const [first, last] = [
    Math.max(ends.low, inner.quantile(Math.max(from, 1e-15))),
    Math.min(ends.high, inner.quantile(Math.min(from + share, 1 - 1e-15))),
  ]
  const above = (x: number) => 1 - (inner.below(x) - from) / share
  const width = last - first
  const options = { relativeTolerance: 1e-9, absoluteTolerance: 1e-11 * width }
  const mean = first + integrate(above, first, last, options)
  const square = 2 * width * integrate((x) => ((x - first) / width) * above(x), first, last, options)
  return {
    mean,
    deviation: Math.sqrt(Math.max(0, square - (mean - first) ** 2)),
    median: quantile(0.5),
    ...ends,
    quantile,
    below: (x) => Math.min(Math.max((inner.below(x) - from) / share, 0), 1),
    words: `${inner.words}, cut at ${[Number.isFinite(low) && text(low, kind), Number.isFinite(high) && text(high, kind)].filter(Boolean).join(' and ')}`,
  }
}
