import { NumericError } from './error.js'

/** A function of one number. */
export type ScalarFunction = (x: number) => number

/** Required accuracy of a root, and the allowed cost. */
export interface RootOptions {
  /** Half-width of the interval that must enclose the root. Default: a few units in the last place of the root. */
  readonly xTolerance?: number | undefined
  /** A value of `f` this close to zero ends the search at once. Default 0: only an exact zero does. */
  readonly fTolerance?: number | undefined
  /** Largest number of function values. Default 200. */
  readonly maxEvaluations?: number | undefined
}

const EPSILON = 2 ** -52

const finiteValue = (f: ScalarFunction, x: number): number => {
  const value = f(x)
  if (Number.isFinite(value)) return value
  throw new NumericError('bracketRoot', 'notFinite', 'the function is not finite inside the interval', { x, value })
}

/**
 * The root of a continuous function between two points where it has opposite signs.
 *
 * Brent's method (inverse quadratic interpolation, secant, bisection as the safeguard): never leaves the
 * bracket, and converges for every continuous function. An end that is itself a root is returned as it is.
 * A sign change across a pole is not a root, and this routine cannot tell; `findRoots` can.
 *
 * @throws NumericError `noBracket` when both ends have one sign, `notFinite` when `f` gives NaN or infinity,
 * `noConvergence` when `maxEvaluations` is used up, `badArgument` for an interval that is not finite.
 *
 * Source: R. P. Brent, *Algorithms for Minimization without Derivatives*, 1973, ch. 4.
 */
export function bracketRoot(f: ScalarFunction, lo: number, hi: number, options: RootOptions = {}): number {
  if (!(Number.isFinite(lo) && Number.isFinite(hi))) {
    throw new NumericError('bracketRoot', 'badArgument', 'the interval must have finite ends', { lo, hi })
  }
  const fLo = finiteValue(f, lo)
  if (fLo === 0) return lo
  const fHi = finiteValue(f, hi)
  if (fHi === 0) return hi
  if (fLo > 0 === fHi > 0) {
    throw new NumericError('bracketRoot', 'noBracket', 'the function has the same sign at both ends', { lo, hi, fLo, fHi })
  }
  return brent(f, lo, fLo, hi, fHi, options)
}

/** The step from b to the root by secant or inverse quadratic interpolation; NaN where that is no good place. */
function interpolatedStep(a: number, fa: number, b: number, fb: number, c: number, fc: number, tolerance: number, last: number): number {
  const middle = 0.5 * (c - b)
  const s = fb / fa
  let p = 2 * middle * s
  let q = 1 - s
  if (a !== c) {
    const r = fa / fc
    const t = fb / fc
    p = s * (2 * middle * r * (r - t) - (b - a) * (t - 1))
    q = (r - 1) * (t - 1) * (s - 1)
  }
  if (p > 0) q = -q
  else p = -p
  return 2 * p < Math.min(3 * middle * q - Math.abs(tolerance * q), Math.abs(last * q)) ? p / q : Number.NaN
}

/** Brent's iteration from a bracket whose end values are already known. */
function brent(f: ScalarFunction, lo: number, fLo: number, hi: number, fHi: number, options: RootOptions): number {
  const { xTolerance = 0, fTolerance = 0, maxEvaluations = 200 } = options
  // b is the best estimate, a the previous one, c the point that encloses the root together with b.
  let a = lo
  let fa = fLo
  let b = hi
  let fb = fHi
  let c = a
  let fc = fa
  let step = b - a
  let stepBefore = step
  for (let evaluations = 2; ; evaluations++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b
      fa = fb
      b = c
      fb = fc
      c = a
      fc = fa
    }
    const tolerance = Math.max(2 * EPSILON * Math.abs(b), 0.5 * xTolerance, Number.MIN_VALUE)
    const middle = 0.5 * (c - b)
    if (Math.abs(fb) <= fTolerance || Math.abs(middle) <= tolerance) return b
    if (evaluations >= maxEvaluations) {
      throw new NumericError('bracketRoot', 'noConvergence', 'the root was not found within the allowed evaluations', {
        lo: Math.min(b, c),
        hi: Math.max(b, c),
        maxEvaluations,
      })
    }
    if (Math.abs(stepBefore) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      step = middle
      stepBefore = middle
    } else {
      const next = interpolatedStep(a, fa, b, fb, c, fc, tolerance, stepBefore)
      stepBefore = Number.isNaN(next) ? middle : step
      step = Number.isNaN(next) ? middle : next
    }
    a = b
    fa = fb
    b += Math.abs(step) > tolerance ? step : middle > 0 ? tolerance : -tolerance
    fb = finiteValue(f, b)
    if (fb > 0 === fc > 0) {
      c = a
      fc = fa
      step = b - a
      stepBefore = step
    }
  }
}
