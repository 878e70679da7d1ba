import { NumericError } from './error.js'
import { Simplex } from './simplex.js'

/** Limits, scale and effort of a search in several variables. */
export interface MinimiseOptions {
  /** Lower limit of each variable. Default −∞. */
  readonly lower?: ArrayLike<number> | undefined
  /** Upper limit of each variable. Default +∞. */
  readonly upper?: ArrayLike<number> | undefined
  /** First step in each variable: the size over which it matters. Default: a tenth of the range, else a tenth of |start|, else 0.1. */
  readonly step?: ArrayLike<number> | undefined
  /** The search ends when the simplex is this small relative to `step`. Default 1e-8. */
  readonly xTolerance?: number | undefined
  /** … and its values differ by no more than this relative to their size. Default 1e-14. */
  readonly fTolerance?: number | undefined
  /** Fresh simplexes started from the best point, against premature collapse. Default 2. */
  readonly restarts?: number | undefined
  /** Largest number of function values. Default 2000 per variable. */
  readonly maxEvaluations?: number | undefined
}

/** The lowest point found in several variables. */
export interface Minimum {
  /** Where the function is lowest. */
  readonly x: Float64Array
  /** The function there. */
  readonly value: number
  /** Function values used. */
  readonly evaluations: number
  /** False when the evaluations ran out first: `x` is then the best point so far. */
  readonly converged: boolean
}

/**
 * A local minimum of a function of a few variables (up to about ten) within box limits, from function values alone.
 *
 * Ours: the libraries that have it know no limits and no restarts, and are hardly kept.
 *
 * Nelder-Mead simplex with coefficients that depend on the number of variables, points beyond a limit moved onto it, and
 * restarts from the best point. The function may return +∞ for "not allowed here"; it need not be smooth. No promise of
 * a global minimum: start from several points where there may be several valleys.
 *
 * @throws NumericError `badArgument` for lengths that differ or a start outside the limits, `notFinite` when the function is NaN or the start is not finite.
 *
 * Source: J. A. Nelder, R. Mead, *Computer Journal* 7 (1965) 308; F. Gao, L. Han, *Comput. Optim. Appl.* 51 (2012) 259 (coefficients).
 */
export function minimise(f: (x: Float64Array) => number, start: ArrayLike<number>, options: MinimiseOptions = {}): Minimum {
  const n = start.length
  const { xTolerance = 1e-8, fTolerance = 1e-14, restarts = 2, maxEvaluations = 2000 * n } = options
  const lower = bound(n, options.lower, -Infinity, 'lower')
  const upper = bound(n, options.upper, Infinity, 'upper')
  if (n === 0) throw new NumericError('minimise', 'badArgument', 'there is nothing to vary', { start })
  const best = Float64Array.from(start)
  for (let i = 0; i < n; i++) {
    if (!(best[i]! >= lower[i]! && best[i]! <= upper[i]!)) {
      throw new NumericError('minimise', 'badArgument', 'the start lies outside the limits', {
        variable: i,
        start: best[i],
        lower: lower[i],
        upper: upper[i],
      })
    }
  }
  const step = steps(best, lower, upper, options.step)
  let evaluations = 0
  const valueAt = (x: Float64Array): number => {
    evaluations++
    return evaluated(f, x)
  }
  const search = { n, lower, upper, step, value: valueAt, mayGoOn: () => evaluations < maxEvaluations }
  let value = valueAt(best)
  if (!Number.isFinite(value))
    throw new NumericError('minimise', 'notFinite', 'the function is not finite at the start', { start: best, value })
  let converged = false
  for (let round = 0; round <= restarts; round++) {
    const before = value
    const simplex = new Simplex(search, best, value, round % 2 === 0 ? 1 : -0.5)
    converged = simplex.contract(xTolerance, fTolerance)
    best.set(simplex.best)
    value = simplex.value
    if (!converged) break
    if (round > 0 && before - value <= fTolerance * Math.max(Math.abs(value), Number.MIN_VALUE)) break
  }
  return { x: best, value, evaluations, converged }
}

function bound(n: number, given: ArrayLike<number> | undefined, otherwise: number, name: string): Float64Array {
  if (given === undefined) return new Float64Array(n).fill(otherwise)
  if (given.length !== n)
    throw new NumericError('minimise', 'badArgument', `${name} must have one entry per variable`, { [name]: given, variables: n })
  return Float64Array.from(given)
}

function steps(start: Float64Array, lower: Float64Array, upper: Float64Array, given: ArrayLike<number> | undefined): Float64Array {
  if (given !== undefined && given.length !== start.length) {
    throw new NumericError('minimise', 'badArgument', 'step must have one entry per variable', { step: given, variables: start.length })
  }
  return start.map((x, i) => {
    const range = upper[i]! - lower[i]!
    const size = given?.[i] ?? (Number.isFinite(range) ? 0.1 * range : x !== 0 ? 0.1 * Math.abs(x) : 0.1)
    if (!(size >= 0 && Number.isFinite(size)))
      throw new NumericError('minimise', 'badArgument', 'a step must be a positive number', { variable: i, step: size })
    return size
  })
}

function evaluated(f: (x: Float64Array) => number, x: Float64Array): number {
  const value = f(x)
  if (Number.isNaN(value)) throw new NumericError('minimise', 'notFinite', 'the function is not a number', { x: Float64Array.from(x) })
  return value
}
