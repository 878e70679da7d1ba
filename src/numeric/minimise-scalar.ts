import { NumericError } from './error.js'
import type { ScalarFunction } from './root.js'

/** Required accuracy of a minimum, and the allowed cost. */
export interface ScalarMinimumOptions {
  /** Absolute accuracy of the place. Default: 1e-8 of the interval; finer is beyond what function values can tell. */
  readonly xTolerance?: number | undefined
  /** Largest number of function values. Default 500. */
  readonly maxEvaluations?: number | undefined
}

/** The lowest point found on an interval. */
export interface ScalarMinimum {
  /** Where the function is lowest. */
  readonly x: number
  /** The function there. */
  readonly value: number
  /** Function values used. */
  readonly evaluations: number
}

const GOLDEN = 0.5 * (3 - Math.sqrt(5))

/**
 * The minimum of a function of one variable on a closed interval (Brent: parabolic steps, golden section as the safeguard).
 *
 * Finds *a* local minimum; on a function with one valley it is the minimum. A minimum at an end of the interval is
 * returned exactly at the end. The place is only as good as about the square root of machine precision.
 *
 * Ours: no library that is kept has it.
 *
 * @throws NumericError `notFinite` for a value that is NaN (+∞ is allowed and means "not here"), `badArgument`, `noConvergence`.
 *
 * Source: R. P. Brent, *Algorithms for Minimization without Derivatives*, 1973, ch. 5.
 */
export function minimiseScalar(f: ScalarFunction, lo: number, hi: number, options: ScalarMinimumOptions = {}): ScalarMinimum {
  if (!(Number.isFinite(lo) && Number.isFinite(hi) && lo < hi)) {
    throw new NumericError('minimiseScalar', 'badArgument', 'the interval must be finite and ascending', { lo, hi })
  }
  const { xTolerance = 1e-8 * (hi - lo), maxEvaluations = 500 } = options
  let evaluations = 0
  const value = (x: number): number => {
    const y = f(x)
    evaluations++
    if (Number.isNaN(y)) throw new NumericError('minimiseScalar', 'notFinite', 'the function is not a number', { x })
    return y
  }
  let a = lo
  let b = hi
  // x is the best point, w the second best, v the previous w.
  let x = a + GOLDEN * (b - a)
  let w = x
  let v = x
  let fx = value(x)
  let fw = fx
  let fv = fx
  let step = 0
  let stepBefore = 0
  for (;;) {
    const middle = 0.5 * (a + b)
    const tolerance = 1e-10 * Math.abs(x) + xTolerance / 3 + Number.MIN_VALUE
    if (Math.abs(x - middle) <= 2 * tolerance - 0.5 * (b - a)) break
    if (evaluations >= maxEvaluations) {
      throw new NumericError('minimiseScalar', 'noConvergence', 'the minimum was not found within the allowed evaluations', {
        x,
        maxEvaluations,
      })
    }
    const last = stepBefore
    stepBefore = step
    step = Math.abs(last) > tolerance ? parabolicStep(x, w, v, fx, fw, fv, last, a, b) : Number.NaN
    if (Number.isNaN(step)) {
      stepBefore = x < middle ? b - x : a - x
      step = GOLDEN * stepBefore
    } else if (x + step - a < 2 * tolerance || b - x - step < 2 * tolerance) step = x < middle ? tolerance : -tolerance
    const u = x + (Math.abs(step) >= tolerance ? step : step > 0 ? tolerance : -tolerance)
    const fu = value(u)
    if (fu <= fx) {
      if (u < x) b = x
      else a = x
      v = w
      fv = fw
      w = x
      fw = fx
      x = u
      fx = fu
    } else {
      if (u < x) a = u
      else b = u
      if (fu <= fw || w === x) {
        v = w
        fv = fw
        w = u
        fw = fu
      } else if (fu <= fv || v === x || v === w) {
        v = u
        fv = fu
      }
    }
  }
  return orEnd(orEnd({ x, value: fx, evaluations }, lo, value, 3 * xTolerance), hi, value, 3 * xTolerance)
}

/** The step from x to the bottom of the parabola through three points; NaN where that is no good place. Plain numbers: objects here cost a quarter of the search. */
function parabolicStep(x: number, w: number, v: number, fx: number, fw: number, fv: number, last: number, a: number, b: number): number {
  const r = (x - w) * (fx - fv)
  let q = (x - v) * (fx - fw)
  let p = (x - v) * q - (x - w) * r
  q = 2 * (q - r)
  if (q > 0) p = -p
  else q = -q
  return Math.abs(p) < Math.abs(0.5 * q * last) && p > q * (a - x) && p < q * (b - x) ? p / q : Number.NaN
}

/** Brent never evaluates the ends; a monotone function has its minimum there. */
function orEnd(found: ScalarMinimum, end: number, value: ScalarFunction, near: number): ScalarMinimum {
  if (Math.abs(found.x - end) > near) return found
  const atEnd = value(end)
  return atEnd <= found.value
    ? { x: end, value: atEnd, evaluations: found.evaluations + 1 }
    : { ...found, evaluations: found.evaluations + 1 }
}
