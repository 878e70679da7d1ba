import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus'
import { lognormalQuantile, normalQuantile, triangularQuantile, truncatedNormalQuantile } from './distributions.js'
import { NumericError } from './error.js'

/**
 * A reproducible stream of random numbers.
 *
 * Every draw uses exactly one uniform number (the distributions are drawn by inversion), so the k-th draw depends only on the
 * seed, the stream's index and k.
 */
export interface RandomStream {
  /** Uniform between 0 and 1, neither end included. */
  uniform(): number
  /** Uniform between two limits. */
  uniformBetween(low: number, high: number): number
  /** A whole number from 0 to count − 1. */
  integer(count: number): number
  /** Normal. */
  normal(mean: number, sd: number): number
  /** Lognormal, by the mean and standard deviation of the logarithm. */
  lognormal(logMean: number, logSd: number): number
  /** Triangular from `low` over its peak at `mode` to `high`. */
  triangular(low: number, mode: number, high: number): number
  /** Normal cut off outside `low` to `high`. */
  truncatedNormal(mean: number, sd: number, low: number, high: number): number
}

/**
 * A stream of random numbers that depends only on `seed` and `index`.
 *
 * Streams of different index are independent for all practical purposes: give sample i of a study the stream (seed, i), and the
 * answer is the same on one worker or many, in any order and however the samples are divided. Generator: xoroshiro128+ (pure-rand), its 128-bit state
 * hashed from seed and index by SplitMix64.
 *
 * @param seed any whole number that is exact (|seed| ≤ 2⁵³).
 * @param index which stream; default 0.
 * @throws NumericError `badArgument` for a seed or index that is not an exact whole number, or a negative index.
 *
 * Source: D. Blackman, S. Vigna, *ACM TOMS* 47 (2021) 36; G. L. Steele et al., *OOPSLA* 2014 (SplitMix64).
 */
export function randomStream(seed: number, index = 0): RandomStream {
  if (!Number.isSafeInteger(seed)) throw new NumericError('randomStream', 'badArgument', 'the seed must be an exact whole number', { seed })
  if (!(Number.isSafeInteger(index) && index >= 0)) {
    throw new NumericError('randomStream', 'badArgument', 'the index must be a whole number from 0', { index })
  }
  const generator = xoroshiro128plusFromState(hashedState(seed, index))
  const uniform = (): number => {
    // Multiples of 2⁻⁵³ moved to the middle of their cells, so that 0 never occurs; the highest cell would round up to 1.
    const u = uniformFloat64(generator) + 2 ** -54
    return u < 1 ? u : 1 - 2 ** -53
  }
  return {
    uniform,
    uniformBetween: (low, high) => {
      const u = uniform()
      return (1 - u) * low + u * high
    },
    integer: (count) => {
      if (!(Number.isSafeInteger(count) && count >= 1))
        throw new NumericError('randomStream', 'badArgument', 'count must be a positive whole number', { count })
      return Math.floor(uniform() * count)
    },
    normal: (mean, sd) => mean + sd * normalQuantile(uniform()),
    lognormal: (logMean, logSd) => lognormalQuantile(uniform(), logMean, logSd),
    triangular: (low, mode, high) => triangularQuantile(uniform(), low, mode, high),
    truncatedNormal: (mean, sd, low, high) => truncatedNormalQuantile(uniform(), mean, sd, low, high),
  }
}

const MASK = (1n << 64n) - 1n

const splitMix = (z: bigint): bigint => {
  let x = z
  x = ((x ^ (x >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK
  x = ((x ^ (x >> 27n)) * 0x94d049bb133111ebn) & MASK
  return x ^ (x >> 31n)
}

/** Four 32-bit words of state from seed and index. */
function hashedState(seed: number, index: number): number[] {
  // The index is hashed by itself first, so that neighbouring seeds and indices cannot coincide.
  const start = (splitMix(BigInt(seed) & MASK) ^ splitMix((BigInt(index) + 0x9e3779b97f4a7c15n) & MASK)) & MASK
  const a = splitMix((start + 0x9e3779b97f4a7c15n) & MASK)
  const b = splitMix((start + 2n * 0x9e3779b97f4a7c15n) & MASK)
  const low = (x: bigint): number => Number(x & 0xffffffffn) | 0
  return [low(a >> 32n), low(a), low(b >> 32n), low(b) === 0 && a === 0n ? 1 : low(b)]
}
