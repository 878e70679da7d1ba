import { NumericError } from './error.js'

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
  const search: Search = { f, n, lower, upper, step, evaluations: 0, maxEvaluations }
  let value = evaluate(search, best)
  if (!Number.isFinite(value))
    throw new NumericError('minimise', 'notFinite', 'the function is not finite at the start', { start: best, value })
  let converged = false
  for (let round = 0; round <= restarts; round++) {
    const before = value
    const result = nelderMead(search, best, value, round % 2 === 0 ? 1 : -0.5, xTolerance, fTolerance)
    value = result.value
    converged = result.converged
    if (!converged) break
    if (round > 0 && before - value <= fTolerance * Math.max(Math.abs(value), Number.MIN_VALUE)) break
  }
  return { x: best, value, evaluations: search.evaluations, converged }
}

interface Search {
  readonly f: (x: Float64Array) => number
  readonly n: number
  readonly lower: Float64Array
  readonly upper: Float64Array
  readonly step: Float64Array
  readonly maxEvaluations: number
  evaluations: number
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

function evaluate(search: Search, x: Float64Array): number {
  search.evaluations++
  const value = search.f(x)
  if (Number.isNaN(value)) throw new NumericError('minimise', 'notFinite', 'the function is not a number', { x: Float64Array.from(x) })
  return value
}

function nelderMead(search: Search, best: Float64Array, bestValue: number, scale: number, xTolerance: number, fTolerance: number) {
  const { n, lower, upper, step } = search
  const expansion = n === 1 ? 2 : 1 + 2 / n
  const contraction = n === 1 ? 0.5 : 0.75 - 1 / (2 * n)
  const shrink = n === 1 ? 0.5 : 1 - 1 / n
  const points: Float64Array[] = [Float64Array.from(best)]
  const values = [bestValue]
  for (let i = 0; i < n; i++) {
    const x = Float64Array.from(best)
    const wanted = x[i]! + scale * step[i]!
    // A start on its limit steps inwards.
    x[i] = wanted <= upper[i]! && wanted >= lower[i]! ? wanted : Math.min(Math.max(x[i]! - scale * step[i]!, lower[i]!), upper[i]!)
    points.push(x)
    values.push(evaluate(search, x))
  }
  const centre = new Float64Array(n)
  let trial: Float64Array = new Float64Array(n)
  const move = (from: Float64Array, factor: number): number => {
    for (let i = 0; i < n; i++) trial[i] = Math.min(Math.max(centre[i]! + factor * (from[i]! - centre[i]!), lower[i]!), upper[i]!)
    return evaluate(search, trial)
  }
  let converged = false
  for (;;) {
    for (let i = 1; i <= n; i++) {
      const p = points[i]!
      const v = values[i]!
      let j = i - 1
      for (; j >= 0 && values[j]! > v; j--) {
        points[j + 1] = points[j]!
        values[j + 1] = values[j]!
      }
      points[j + 1] = p
      values[j + 1] = v
    }
    let size = 0
    for (let i = 1; i <= n; i++) {
      for (let k = 0; k < n; k++) {
        if (step[k]! > 0) size = Math.max(size, Math.abs(points[i]![k]! - points[0]![k]!) / step[k]!)
      }
    }
    const spread = values[n]! - values[0]!
    converged = size <= xTolerance && spread <= Math.max(fTolerance * Math.abs(values[0]!), fTolerance)
    if (size <= 1e-15 || converged) {
      converged = true
      break
    }
    if (search.evaluations >= search.maxEvaluations) break
    centre.fill(0)
    for (let i = 0; i < n; i++) for (let k = 0; k < n; k++) centre[k] = centre[k]! + points[i]![k]! / n
    const worst = points[n]!
    const accept = (value: number): void => {
      points[n] = trial
      values[n] = value
      trial = worst
    }
    const reflected = move(worst, -1)
    if (reflected < values[0]!) {
      const kept = Float64Array.from(trial)
      const expanded = move(worst, -expansion)
      if (expanded < reflected) accept(expanded)
      else {
        trial.set(kept)
        accept(reflected)
      }
    } else if (reflected < values[n - 1]!) accept(reflected)
    else {
      const outside = reflected < values[n]!
      const contracted = move(worst, outside ? -contraction : contraction)
      if (contracted < Math.min(reflected, values[n]!)) accept(contracted)
      else {
        for (let i = 1; i <= n; i++) {
          const p = points[i]!
          for (let k = 0; k < n; k++) p[k] = points[0]![k]! + shrink * (p[k]! - points[0]![k]!)
          values[i] = evaluate(search, p)
        }
      }
    }
  }
  best.set(points[0]!)
  return { value: values[0]!, converged }
}
