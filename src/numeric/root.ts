import { NumericError } from './error.js'

/** A function of one number. */
export type ScalarFunction = (x: number) => number

/** How closely a root is wanted, and at what cost. */
export interface RootOptions {
  /** Half-width of the interval that must enclose the root. Default: a few units in the last place of the root. */
  readonly xTolerance?: number | undefined
  /** A value of `f` this close to zero ends the search at once. Default 0: only an exact zero does. */
  readonly fTolerance?: number | undefined
  /** Largest number of function values. Default 200. */
  readonly maxEvaluations?: number | undefined
}

const EPSILON = 2 ** -52

const finiteValue = (routine: string, f: ScalarFunction, x: number): number => {
  const value = f(x)
  if (Number.isFinite(value)) return value
  throw new NumericError(routine, 'notFinite', 'the function is not finite inside the interval', { x, value })
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
  const fLo = finiteValue('bracketRoot', f, lo)
  if (fLo === 0) return lo
  const fHi = finiteValue('bracketRoot', f, hi)
  if (fHi === 0) return hi
  if (fLo > 0 === fHi > 0) {
    throw new NumericError('bracketRoot', 'noBracket', 'the function has the same sign at both ends', { lo, hi, fLo, fHi })
  }
  return brent(f, lo, fLo, hi, fHi, options, 'bracketRoot')
}

/** Brent's iteration from a bracket whose end values are already known. */
function brent(f: ScalarFunction, lo: number, fLo: number, hi: number, fHi: number, options: RootOptions, routine: string): number {
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
      throw new NumericError(routine, 'noConvergence', 'the root was not found within the allowed evaluations', {
        lo: Math.min(b, c),
        hi: Math.max(b, c),
        maxEvaluations,
      })
    }
    if (Math.abs(stepBefore) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      step = middle
      stepBefore = middle
    } else {
      const s = fb / fa
      let p: number
      let q: number
      if (a === c) {
        p = 2 * middle * s
        q = 1 - s
      } else {
        const r = fa / fc
        const t = fb / fc
        p = s * (2 * middle * r * (r - t) - (b - a) * (t - 1))
        q = (r - 1) * (t - 1) * (s - 1)
      }
      if (p > 0) q = -q
      else p = -p
      if (2 * p < Math.min(3 * middle * q - Math.abs(tolerance * q), Math.abs(stepBefore * q))) {
        stepBefore = step
        step = p / q
      } else {
        step = middle
        stepBefore = middle
      }
    }
    a = b
    fa = fb
    b += Math.abs(step) > tolerance ? step : middle > 0 ? tolerance : -tolerance
    fb = finiteValue(routine, f, b)
    if (fb > 0 === fc > 0) {
      c = a
      fc = fa
      step = b - a
      stepBefore = step
    }
  }
}

/** How an interval is scanned for roots. */
export interface FindRootsOptions extends RootOptions {
  /** Number of equal parts the interval is cut into; two roots in one part are missed. Default 200. */
  readonly samples?: number | undefined
  /** `'log'` cuts into parts of equal ratio (both ends positive). Default `'linear'`. */
  readonly spacing?: 'linear' | 'log' | undefined
}

/** What a scan found. */
export interface Crossings {
  /** Points where the function passes through zero, ascending. */
  readonly roots: readonly number[]
  /** Points where the function changes sign through infinity or by a jump, ascending: not roots. */
  readonly poles: readonly number[]
}

/**
 * Every root at which a function changes sign in an interval, told apart from its poles and jumps.
 *
 * The interval is cut into `samples` parts; each part whose ends differ in sign is narrowed down. Where |f| falls towards
 * the crossing it is a root, where it grows or stays apart it is a pole or a jump. Parts with an end where `f` is
 * not finite are searched on the finite side only if that side's sample is finite: they are skipped otherwise, so a
 * function that is undefined on part of the interval may be scanned. Roots that only touch zero are not found.
 *
 * @throws NumericError `badArgument` for a malformed interval or number of samples.
 */
export function findRoots(f: ScalarFunction, lo: number, hi: number, options: FindRootsOptions = {}): Crossings {
  const { samples = 200, spacing = 'linear' } = options
  if (!(Number.isFinite(lo) && Number.isFinite(hi) && lo < hi)) {
    throw new NumericError('findRoots', 'badArgument', 'the interval must be finite and ascending', { lo, hi })
  }
  if (!(Number.isInteger(samples) && samples >= 1)) {
    throw new NumericError('findRoots', 'badArgument', 'samples must be a whole number of at least 1', { samples })
  }
  if (spacing === 'log' && lo <= 0) {
    throw new NumericError('findRoots', 'badArgument', 'logarithmic spacing needs a positive interval', { lo, hi })
  }
  const roots: number[] = []
  const poles: number[] = []
  const at = (i: number): number => {
    if (i === 0) return lo
    if (i === samples) return hi
    return spacing === 'log' ? lo * (hi / lo) ** (i / samples) : lo + (hi - lo) * (i / samples)
  }
  let x0 = at(0)
  let f0 = f(x0)
  if (f0 === 0) roots.push(x0)
  for (let i = 1; i <= samples; i++) {
    const x1 = at(i)
    const f1 = f(x1)
    if (f1 === 0) roots.push(x1)
    else if (f0 !== 0 && Number.isFinite(f0) && Number.isFinite(f1) && f0 > 0 !== f1 > 0) {
      const crossing = locateCrossing(f, x0, f0, x1, f1, options)
      if (crossing.isRoot) roots.push(crossing.x)
      else poles.push(crossing.x)
    }
    x0 = x1
    f0 = f1
  }
  return { roots, poles }
}

/** Narrows a sign change down and judges it by whether |f| shrinks with the bracket. */
function locateCrossing(f: ScalarFunction, x0: number, f0: number, x1: number, f1: number, options: RootOptions) {
  const { xTolerance = 0, maxEvaluations = 200 } = options
  let a = x0
  let fa = f0
  let b = x1
  let fb = f1
  // Bisection shrinks the bracket evenly from both sides, which the judgement needs; Brent's bracket may stay wide.
  const width = Math.abs(x1 - x0)
  const coarse = Math.max(width * 2 ** -20, xTolerance, 4 * EPSILON * Math.max(Math.abs(x0), Math.abs(x1)))
  while (Math.abs(b - a) > coarse) {
    const m = 0.5 * (a + b)
    if (m === a || m === b) break
    const fm = f(m)
    if (fm === 0) return { x: m, isRoot: true }
    if (!Number.isFinite(fm)) return { x: m, isRoot: false }
    if (fm > 0 === fa > 0) {
      a = m
      fa = fm
    } else {
      b = m
      fb = fm
    }
  }
  // Across a root |f(b) − f(a)| has shrunk with the bracket; across a pole or a jump it has not.
  const isRoot = Math.abs(fb - fa) < 0.05 * Math.abs(f1 - f0)
  if (!isRoot) return { x: 0.5 * (a + b), isRoot }
  return { x: brent(f, a, fa, b, fb, { ...options, maxEvaluations }, 'findRoots'), isRoot }
}

/** How a bracket is looked for. */
export interface ExpandOptions {
  /** First step away from the start. Default: a tenth of |start|, or 1 at the origin. */
  readonly step?: number | undefined
  /** Each step is this many times the one before. Default 1.6. */
  readonly factor?: number | undefined
  /** The search never goes below this. Default −∞. */
  readonly lower?: number | undefined
  /** The search never goes above this. Default +∞. */
  readonly upper?: number | undefined
  /** Largest number of steps on either side. Default 60. */
  readonly maxSteps?: number | undefined
}

/**
 * Two points around `start` between which a function changes sign: walks outwards on both sides in growing steps.
 *
 * The pair is the tightest one met: neighbouring points of the walk, ascending. A point at which the function is not finite
 * is taken for the edge of its domain, which the walk then nears by halves.
 *
 * @throws NumericError `noBracket` when no change of sign was met within the limits, `notFinite` when `f(start)` is not finite.
 */
export function expandBracket(f: ScalarFunction, start: number, options: ExpandOptions = {}): [number, number] {
  const { step = start === 0 ? 1 : 0.1 * Math.abs(start), factor = 1.6, lower = -Infinity, upper = Infinity, maxSteps = 60 } = options
  if (!(step > 0 && factor >= 1 && lower <= start && start <= upper)) {
    throw new NumericError('expandBracket', 'badArgument', 'step must be positive, factor at least 1 and the start within the limits', {
      start,
      step,
      factor,
      lower,
      upper,
    })
  }
  const fStart = finiteValue('expandBracket', f, start)
  if (fStart === 0) return [start, start]
  const positive = fStart > 0
  // Each side: the last finite point, how far it may go, and whether that end is itself allowed.
  const left = { at: start, limit: lower, open: false }
  const right = { at: start, limit: upper, open: false }
  let stride = step
  for (let i = 0; i < maxSteps; i++) {
    for (const side of [right, left]) {
      if (side.at === side.limit) continue
      const wanted = side === right ? side.at + stride : side.at - stride
      const beyond = side === right ? wanted >= side.limit : wanted <= side.limit
      // Towards an edge of the domain the walk goes by halves, as the sign may change just before it.
      const next = beyond ? (side.open ? 0.5 * (side.at + side.limit) : side.limit) : wanted
      const value = f(next)
      if (!Number.isFinite(value)) {
        side.limit = next
        side.open = true
        continue
      }
      if (value > 0 !== positive || value === 0) return side === right ? [side.at, next] : [next, side.at]
      side.at = next
    }
    stride *= factor
  }
  throw new NumericError('expandBracket', 'noBracket', 'no change of sign was met around the start', {
    start,
    fStart,
    from: left.at,
    to: right.at,
  })
}
