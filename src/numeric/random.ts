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
 * hashed from seed and index.
 *
 * @param seed any whole number that is exact (|seed| ≤ 2⁵³).
 * @param index which stream; default 0.
 * @throws NumericError `badArgument` for a seed or index that is not an exact whole number, or a negative index.
 *
 * Source: D. Blackman, S. Vigna, *ACM TOMS* 47 (2021) 36.
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

/** Scatters the bits of a 32-bit word, one to one (the finaliser of A. Appleby's MurmurHash3). */
const scatter = (word: number): number => {
  let x = word
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b)
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35)
  return x ^ (x >>> 16)
}

/** One word of state: a chain over all bits of seed and index, one to one in every link. */
const chain = (start: number, seedLow: number, seedHigh: number, indexLow: number, indexHigh: number): number => {
  let x = scatter(Math.imul(start ^ seedLow, 0x9e3779b1) + start)
  x = scatter(Math.imul(x ^ seedHigh, 0x9e3779b1) + start)
  x = scatter(Math.imul(x ^ indexLow, 0x9e3779b1) + start)
  return scatter(Math.imul(x ^ indexHigh, 0x9e3779b1) + start)
}

/** Four 32-bit words of state from seed and index; neighbours differ in all four. */
function hashedState(seed: number, index: number): number[] {
  const a = seed | 0
  const b = Math.floor(seed / 2 ** 32) | 0
  const c = index | 0
  const d = Math.floor(index / 2 ** 32) | 0
  // First digits of the fractions of √2, √3, √5 and √7: four unlike starting points.
  const state = [chain(0x6a09e667, a, b, c, d), chain(0xbb67ae85, a, b, c, d), chain(0x3c6ef372, a, b, c, d), chain(0xa54ff53a, a, b, c, d)]
  // The generator's one forbidden state.
  if ((state[0]! | state[1]! | state[2]! | state[3]!) === 0) state[0] = 1
  return state
}
