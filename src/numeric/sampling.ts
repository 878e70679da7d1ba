import { NumericError } from './error.js'
import { randomStream } from './random.js'
import { SOBOL_NUMBERS } from './sobol-numbers.js'

/** The most dimensions a `sobolSequence` can have. */
export const SOBOL_DIMENSIONS = SOBOL_NUMBERS.length + 1

const BITS = 32

/** A sequence of points that fill the unit cube uniformly; any point is available by its index, so work can be divided freely. */
export interface PointSequence {
  /** Numbers per point. */
  readonly dimensions: number
  /** Writes point `index` (from 0) into `out` (or a new array); every coordinate lies strictly between 0 and 1 when scrambled. */
  point(index: number, out?: Float64Array): Float64Array
}

/**
 * Sobol's low-discrepancy sequence in the unit cube, plain or scrambled.
 *
 * Plain (`seed` left out): the classical sequence in Gray-code order, whose point 0 is the origin. With a `seed`: a random linear matrix
 * scramble and digital shift, which keeps the even filling, makes the mean over the points an unbiased estimate and removes the origin;
 * different seeds give independent estimates. Balanced when the number of points is a power of two.
 *
 * @throws NumericError `badArgument` for more dimensions than `SOBOL_DIMENSIONS`; `outOfRange` for an index of 2³² or more.
 *
 * Source: S. Joe, F. Y. Kuo, *SIAM J. Sci. Comput.* 30 (2008) 2635 (direction numbers, set D(6)); J. Matoušek, *J. Complexity* 14 (1998) 527 (scramble).
 */
export function sobolSequence(dimensions: number, seed?: number): PointSequence {
  if (!(Number.isInteger(dimensions) && dimensions >= 1 && dimensions <= SOBOL_DIMENSIONS)) {
    throw new NumericError('sobolSequence', 'badArgument', `dimensions must be a whole number from 1 to ${SOBOL_DIMENSIONS}`, {
      dimensions,
    })
  }
  const directions = new Uint32Array(dimensions * BITS)
  const shift = new Uint32Array(dimensions)
  for (let d = 0; d < dimensions; d++) directions.set(directionNumbers(d), d * BITS)
  if (seed !== undefined) scramble(directions, shift, dimensions, seed)
  const half = seed === undefined ? 0 : 0.5
  return {
    dimensions,
    point(index, out = new Float64Array(dimensions)) {
      if (!(Number.isInteger(index) && index >= 0 && index < 2 ** 32)) {
        throw new NumericError('sobolSequence', 'outOfRange', 'the index must be a whole number from 0 to 2³² − 1', { index })
      }
      const gray = (index ^ (index >>> 1)) >>> 0
      for (let d = 0; d < dimensions; d++) {
        let x = shift[d]!
        for (let bits = gray, j = d * BITS; bits !== 0; bits >>>= 1, j++) if (bits & 1) x ^= directions[j]!
        out[d] = ((x >>> 0) + half) * 2 ** -32
      }
      return out
    },
  }
}

/** The direction numbers of one dimension, as 32-bit fractions. */
function directionNumbers(dimension: number): Uint32Array {
  const v = new Uint32Array(BITS)
  if (dimension === 0) {
    for (let j = 0; j < BITS; j++) v[j] = 1 << (31 - j)
    return v
  }
  const [polynomial, ...initial] = SOBOL_NUMBERS[dimension - 1]!
  const degree = initial.length
  for (let j = 0; j < BITS; j++) {
    if (j < degree) v[j] = initial[j]! << (31 - j)
    else {
      let next = v[j - degree]! ^ (v[j - degree]! >>> degree)
      for (let k = 1; k < degree; k++) if ((polynomial! >>> (degree - 1 - k)) & 1) next ^= v[j - k]!
      v[j] = next
    }
  }
  return v
}

/** Multiplies each dimension's generator matrix by a random lower-triangular matrix over GF(2) and draws a shift. */
function scramble(directions: Uint32Array, shift: Uint32Array, dimensions: number, seed: number): void {
  for (let d = 0; d < dimensions; d++) {
    const random = randomStream(seed, d)
    // Row r decides bit r from the top: a one on the diagonal, random bits above it in significance.
    const rows = new Uint32Array(BITS)
    for (let r = 0; r < BITS; r++) {
      const diagonal = (1 << (31 - r)) >>> 0
      const above = r === 0 ? 0 : (0xffffffff << (32 - r)) >>> 0
      rows[r] = ((random.integer(2 ** 32) & above) | diagonal) >>> 0
    }
    shift[d] = random.integer(2 ** 32)
    for (let j = 0; j < BITS; j++) {
      const column = directions[d * BITS + j]!
      let mixed = 0
      for (let r = 0; r < BITS; r++) mixed |= parity(rows[r]! & column) << (31 - r)
      directions[d * BITS + j] = mixed
    }
  }
}

const parity = (x: number): number => {
  let y = x ^ (x >>> 16)
  y ^= y >>> 8
  y ^= y >>> 4
  y ^= y >>> 2
  y ^= y >>> 1
  return y & 1
}

/**
 * A Latin hypercube: `count` points in the unit cube such that each of `count` equal slices in every dimension holds exactly one.
 *
 * Returned row after row (`count` × `dimensions`). Deterministic in `seed`.
 *
 * @param centred puts each point in the middle of its cell instead of at random within it. Default false.
 * @throws NumericError `badArgument`.
 *
 * Source: M. D. McKay, R. J. Beckman, W. J. Conover, *Technometrics* 21 (1979) 239.
 */
export function latinHypercube(count: number, dimensions: number, seed: number, centred = false): Float64Array {
  if (!(Number.isInteger(count) && count >= 1 && Number.isInteger(dimensions) && dimensions >= 1)) {
    throw new NumericError('latinHypercube', 'badArgument', 'count and dimensions must be whole numbers of at least 1', {
      count,
      dimensions,
    })
  }
  const out = new Float64Array(count * dimensions)
  const order = new Uint32Array(count)
  for (let d = 0; d < dimensions; d++) {
    const random = randomStream(seed, d)
    for (let i = 0; i < count; i++) order[i] = i
    for (let i = count - 1; i > 0; i--) {
      const j = random.integer(i + 1)
      const held = order[i]!
      order[i] = order[j]!
      order[j] = held
    }
    for (let i = 0; i < count; i++) out[i * dimensions + d] = (order[i]! + (centred ? 0.5 : random.uniform())) / count
  }
  return out
}
