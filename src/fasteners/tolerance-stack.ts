import { formula } from '../formula/index.js'
import { normalCdf, randomStream } from '../numeric/index.js'

/**
 * A chain of dimensions: nominal gap, and its tolerance as the worst case, as root of squares, inflated, and with a bias that printed parts share.
 *
 * The root of squares is not a worst case: it assumes each tolerance to be three standard deviations, centred. Sensitivity is +1 where the dimension opens the gap.
 */
export const toleranceStack = /* @__PURE__ */ formula('fasteners.toleranceStack', {
  inputs: {
    /** Dimensions. */
    parts: {
      list: {
        fields: {
          /** Nominal size. */
          nominal: 'length',
          /** ± tolerance. */
          tolerance: { kind: 'length', min: 0 },
          /** Growth of the gap per growth of this size. */
          sensitivity: { kind: 'ratio', default: 1 },
          /** Bias that all such sizes share (flow, shrinkage), with its sign. */
          bias: { kind: 'length', default: '0 mm' },
        },
      },
    },
  },
  output: {
    /** Nominal gap. */
    nominal: 'length',
    /** Gap with the biases: they add, they do not average out. */
    mean: 'length',
    /** ± worst case. */
    worstCase: 'length',
    /** ± root of squares. */
    rootOfSquares: 'length',
    /** ± root of squares inflated by 1.5 for means that drift. */
    inflated: 'length',
  },
  assumes: ['root of squares: independent sizes'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 20 (statistical stacks); inflation of 1.5: Bender 1962, unverified' }],
  si: ({ parts }) => {
    let nominal = 0
    let bias = 0
    let worstCase = 0
    let squares = 0
    for (const part of parts) {
      nominal += part.sensitivity * part.nominal
      bias += part.sensitivity * part.bias
      worstCase += Math.abs(part.sensitivity) * part.tolerance
      squares += (part.sensitivity * part.tolerance) ** 2
    }
    const rootOfSquares = Math.sqrt(squares)
    return { nominal, mean: nominal + bias, worstCase, rootOfSquares, inflated: 1.5 * rootOfSquares }
  },
})

/** Beyond this many dimensions the exact sum has too many terms. */
const MAX_EXACT_PARTS = 12
/** Bits of the whole range. */
const RANGE_BITS = 52
/** Bits of the quotient. */
const QUOTIENT_BITS = 800

/** Chance that a sum of deviations, each uniform over ± its tolerance, is more than `limit` ≥ 0. In whole numbers: the terms nearly cancel, so doubles would lose the answer. */
function upperTail(tolerances: readonly number[], limit: number): number {
  let half = 0
  for (const tolerance of tolerances) half += tolerance
  const grain = 2 ** RANGE_BITS / half
  const widths: bigint[] = []
  let room = -BigInt(Math.round(Math.min(limit, 2 * half) * grain))
  let whole = 1n
  for (const tolerance of tolerances) {
    const width = BigInt(Math.round(tolerance * grain))
    // A tolerance that is negligible next to the others has no effect.
    if (width === 0n) continue
    widths.push(2n * width)
    room += width
    whole *= 2n * width * BigInt(widths.length)
  }
  const power = BigInt(widths.length)
  const cut = (left: bigint, from: number): bigint => {
    if (left <= 0n) return 0n
    let sum = left ** power
    for (let i = from; i < widths.length; i++) sum -= cut(left - widths[i]!, i + 1)
    return sum
  }
  return Number((cut(room, 0) << BigInt(QUOTIENT_BITS)) / whole) / 2 ** QUOTIENT_BITS
}

/**
 * The exact probability that a sum of uniformly distributed deviations exceeds a limit, by the geometry of a cut box, and the same by a normal distribution.
 *
 * Up to 12 dimensions; take `toleranceMonteCarlo` for more.
 */
export const uniformStackProbability = /* @__PURE__ */ formula('fasteners.uniformStackProbability', {
  inputs: {
    /** ± tolerance of each dimension, each uniformly distributed over its range. */
    tolerances: { list: { kind: 'length', above: 0 } },
    /** Deviation of the sum. */
    limit: 'length',
  },
  output: {
    /** Probability of more than the limit. */
    exceedance: 'ratio',
    /** The same by a normal curve of equal variance. */
    normalExceedance: 'ratio',
  },
  assumes: ['independent, uniform distributions'],
  source: [{ level: 'published', where: 'Irwin 1927, Hall 1927; unlike widths: Olds 1952' }],
  requires: {
    tolerances: {
      accepts: 'must be at most 12: take toleranceMonteCarlo for more',
      holds: ({ tolerances }) => tolerances.length <= MAX_EXACT_PARTS,
    },
  },
  si: ({ tolerances, limit }) => {
    let variance = 0
    for (const tolerance of tolerances) variance += (tolerance * tolerance) / 3
    // By symmetry only the smaller tail is summed: it has fewer terms.
    const tail = upperTail(tolerances, Math.abs(limit))
    return { exceedance: limit >= 0 ? tail : 1 - tail, normalExceedance: normalCdf(-limit / Math.sqrt(variance)) }
  },
})

/** Probability that a gap is outside its limits, by drawing many assemblies: any mix of uniform, normal and triangular sizes. The seed makes it repeatable. */
export const toleranceMonteCarlo = /* @__PURE__ */ formula('fasteners.toleranceMonteCarlo', {
  inputs: {
    /** Dimensions. */
    parts: {
      list: {
        fields: {
          /** Mean size. */
          nominal: 'length',
          /** ± tolerance (three standard deviations of a normal one). */
          tolerance: { kind: 'length', min: 0 },
          /** How it spreads. */
          spread: { oneOf: ['uniform', 'normal', 'triangular'] },
          /** Growth of the gap per growth of this size. */
          sensitivity: { kind: 'ratio', default: 1 },
        },
      },
    },
    /** Least gap that works. */
    least: 'length',
    /** Largest gap that works. */
    largest: 'length',
    /** Assemblies drawn. */
    draws: { kind: 'count', min: 100, max: 10_000_000, whole: true, default: 20_000 },
    /** Seed. */
    seed: { kind: 'count', whole: true, min: 0, default: 1 },
  },
  output: {
    /** Mean gap. */
    mean: 'length',
    /** Standard deviation of the gap. */
    scatter: 'length',
    /** Probability of less than the least. */
    tooSmall: 'ratio',
    /** Probability of more than the largest. */
    tooLarge: 'ratio',
    /** Standard error of the two probabilities together. */
    standardError: 'ratio',
  },
  assumes: ['independent sizes'],
  source: [{ level: 'published', where: 'Monte Carlo estimate of a probability, any statistics text' }],
  requires: { largest: { accepts: 'must be more than the least', holds: ({ least, largest }) => largest > least } },
  si: ({ parts, least, largest, draws, seed }) => {
    const stream = randomStream(seed)
    let [sum, squares, small, large] = [0, 0, 0, 0]
    let nominal = 0
    for (const part of parts) nominal += part.sensitivity * part.nominal
    for (let k = 0; k < draws; k++) {
      let deviation = 0
      for (const { tolerance, spread, sensitivity } of parts) {
        deviation +=
          sensitivity *
          (spread === 'uniform'
            ? stream.uniformBetween(-tolerance, tolerance)
            : spread === 'normal'
              ? stream.normal(0, tolerance / 3)
              : tolerance === 0
                ? 0
                : stream.triangular(-tolerance, 0, tolerance))
      }
      sum += deviation
      squares += deviation * deviation
      if (nominal + deviation < least) small++
      if (nominal + deviation > largest) large++
    }
    const mean = sum / draws
    const out = (small + large) / draws
    return {
      mean: nominal + mean,
      scatter: Math.sqrt(Math.max(0, squares / draws - mean * mean)),
      tooSmall: small / draws,
      tooLarge: large / draws,
      standardError: Math.sqrt((out * (1 - out)) / draws),
    }
  },
})
