import { integrate, normalCdf, normalQuantile, triangularQuantile } from '../numeric/index.js'
import { type Kind, Quantity } from '../units/index.js'

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

const text = (x: number, kind: Kind) => String(new Quantity(x, kind))

/** A normal distribution on SI numbers. */
export const normalScatter = (mean: number, deviation: number, kind: Kind): Scatter => ({
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

/** A lognormal distribution on SI numbers. */
export function lognormalScatter(median: number, factor: number, kind: Kind): Scatter {
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

/** A uniform distribution on SI numbers. */
export const uniformScatter = (low: number, high: number, kind: Kind): Scatter => ({
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

/** The part of a distribution between two ends. */
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
  // No finer than the rounding of the values themselves, for a narrow distribution far from zero.
  const rounding = 4 * Number.EPSILON * Math.max(Math.abs(first), Math.abs(last))
  const options = { relativeTolerance: 1e-9, absoluteTolerance: Math.max(1e-11 * width, rounding) }
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
