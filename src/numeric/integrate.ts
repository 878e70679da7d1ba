import { NumericError } from './error.js'
import type { ScalarFunction } from './root.js'

/** Required accuracy of an integral, and the allowed cost. */
export interface IntegrateOptions {
  /** Accepted error relative to the integral. Default 1e-10. */
  readonly relativeTolerance?: number | undefined
  /** Accepted absolute error. Default 0. */
  readonly absoluteTolerance?: number | undefined
  /** Points inside the interval where the function has a kink, a jump or a singularity; the interval is cut there. */
  readonly breakpoints?: readonly number[] | undefined
  /** Largest number of function values. Default 15 000. */
  readonly maxEvaluations?: number | undefined
}

/** An integral with the estimate of its error. */
export interface Integral {
  /** The integral. */
  readonly value: number
  /** Estimated absolute error, usually far too pessimistic for smooth functions. */
  readonly error: number
  /** Function values used. */
  readonly evaluations: number
}

// Abscissae and weights of the 15-point Kronrod rule, largest abscissa first; every second one belongs to the 7-point Gauss rule.
const NODES = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911, 0.4058451513773972,
  0.20778495500789848, 0,
]
const KRONROD = [
  0.022935322010529224, 0.06309209262997856, 0.10479001032225019, 0.14065325971552592, 0.1690047266392679, 0.19035057806478542,
  0.20443294007529889, 0.20948214108472782,
]
const GAUSS = [0.1294849661688697, 0.27970539148927664, 0.3818300505051189, 0.4179591836734694]

interface Panel {
  lo: number
  hi: number
  value: number
  error: number
}

/**
 * The integral of a function over a finite or infinite interval.
 *
 * Adaptive Gauss-Kronrod 7-15: the interval with the largest estimated error is halved until the sum of the estimates is within tolerance. An infinite
 * end is mapped onto a finite interval (x = a + t/(1 − t)); the function must then fall off faster than 1/x. The ends themselves are
 * never evaluated, so an integrable singularity there is allowed, if slow. `lo > hi` gives the negative.
 *
 * @throws NumericError `notFinite` when the function is NaN or infinite inside, `noConvergence` when the tolerance was not
 * reached (a divergent integral, or a demand beyond rounding), `badArgument` for a NaN end.
 *
 * Source: R. Piessens et al., *QUADPACK*, 1983, routine QAG (rule and error estimate); A. S. Kronrod 1965.
 */
export function integrate(f: ScalarFunction, lo: number, hi: number, options: IntegrateOptions = {}): number {
  return integrateWithError(f, lo, hi, options).value
}

/** Like `integrate`, with the error estimate and the number of function values. */
export function integrateWithError(f: ScalarFunction, lo: number, hi: number, options: IntegrateOptions = {}): Integral {
  const { relativeTolerance = 1e-10, absoluteTolerance = 0, breakpoints = [], maxEvaluations = 15_000 } = options
  if (Number.isNaN(lo) || Number.isNaN(hi)) throw new NumericError('integrate', 'badArgument', 'the ends must be numbers', { lo, hi })
  if (!(relativeTolerance >= 0 && absoluteTolerance >= 0)) {
    throw new NumericError('integrate', 'badArgument', 'tolerances must not be negative', { relativeTolerance, absoluteTolerance })
  }
  if (lo === hi) return { value: 0, error: 0, evaluations: 0 }
  if (lo > hi) {
    const reversed = integrateWithError(f, hi, lo, options)
    return { ...reversed, value: -reversed.value }
  }
  const panels: Panel[] = []
  let evaluations = 0
  const mapped = mapInfinite(f, lo, hi)
  const cuts = [
    mapped.lo,
    ...breakpoints
      .filter((b) => b > lo && b < hi)
      .map(mapped.inverse)
      .sort((a, b) => a - b),
    mapped.hi,
  ]
  for (let i = 1; i < cuts.length; i++) {
    panels.push(kronrod(mapped, cuts[i - 1]!, cuts[i]!))
    evaluations += 15
  }
  for (;;) {
    let value = 0
    let error = 0
    let size = 0
    let worst = 0
    for (let i = 0; i < panels.length; i++) {
      const p = panels[i]!
      value += p.value
      error += p.error
      size += Math.abs(p.value)
      if (p.error > panels[worst]!.error) worst = i
    }
    // Below this, halving only shuffles rounding errors.
    const rounding = 50 * 2 ** -52 * size
    if (error <= Math.max(absoluteTolerance, relativeTolerance * Math.abs(value), rounding)) return { value, error, evaluations }
    const p = panels[worst]!
    const middle = 0.5 * (p.lo + p.hi)
    if (evaluations >= maxEvaluations || middle <= p.lo || middle >= p.hi) {
      throw new NumericError('integrate', 'noConvergence', 'the integral did not reach the tolerance', {
        lo,
        hi,
        value,
        error,
        evaluations,
      })
    }
    panels[worst] = kronrod(mapped, p.lo, middle)
    panels.push(kronrod(mapped, middle, p.hi))
    evaluations += 30
  }
}

/** The integrand over a finite variable t, with the way back and forth. */
interface Mapped {
  readonly g: ScalarFunction
  readonly x: ScalarFunction
  readonly inverse: ScalarFunction
  readonly lo: number
  readonly hi: number
}

function mapInfinite(f: ScalarFunction, lo: number, hi: number): Mapped {
  const same = (x: number): number => x
  if (Number.isFinite(lo) && Number.isFinite(hi)) return { g: f, x: same, inverse: same, lo, hi }
  // A node that rounding puts onto the infinite end itself carries no weight.
  const weigh = (x: number, slope: number): number => (Number.isFinite(x) ? f(x) * slope : 0)
  if (Number.isFinite(lo)) {
    const x = (t: number): number => lo + t / (1 - t)
    return { g: (t) => weigh(x(t), (1 - t) ** -2), x, inverse: (at) => (at - lo) / (1 + at - lo), lo: 0, hi: 1 }
  }
  if (Number.isFinite(hi)) {
    const x = (t: number): number => hi - (1 - t) / t
    return { g: (t) => weigh(x(t), t ** -2), x, inverse: (at) => 1 / (1 + hi - at), lo: 0, hi: 1 }
  }
  const x = (t: number): number => t / (1 - t * t)
  return {
    g: (t) => weigh(x(t), (1 + t * t) * (1 - t * t) ** -2),
    x,
    inverse: (at) => (at === 0 ? 0 : (2 * at) / (1 + Math.sqrt(1 + 4 * at * at))),
    lo: -1,
    hi: 1,
  }
}

function kronrod(mapped: Mapped, lo: number, hi: number): Panel {
  const centre = 0.5 * (lo + hi)
  const half = 0.5 * (hi - lo)
  const own = new Float64Array(15)
  for (let i = 0; i < 15; i++) {
    const t = i < 7 ? centre - half * NODES[i]! : i === 7 ? centre : centre + half * NODES[14 - i]!
    const y = mapped.g(t)
    if (!Number.isFinite(y)) {
      throw new NumericError('integrate', 'notFinite', 'the function is not finite inside the interval', { x: mapped.x(t), value: y })
    }
    own[i] = y
  }
  let fine = KRONROD[7]! * own[7]!
  let coarse = GAUSS[3]! * own[7]!
  let size = KRONROD[7]! * Math.abs(own[7]!)
  for (let i = 0; i < 7; i++) {
    const pair = own[i]! + own[14 - i]!
    fine += KRONROD[i]! * pair
    size += KRONROD[i]! * (Math.abs(own[i]!) + Math.abs(own[14 - i]!))
    if (i % 2 === 1) coarse += GAUSS[(i - 1) / 2]! * pair
  }
  const mean = 0.5 * fine
  let spread = KRONROD[7]! * Math.abs(own[7]! - mean)
  for (let i = 0; i < 7; i++) spread += KRONROD[i]! * (Math.abs(own[i]! - mean) + Math.abs(own[14 - i]! - mean))
  let error = Math.abs(fine - coarse)
  if (spread !== 0 && error !== 0) error = spread * Math.min(1, (200 * (error / spread)) ** 1.5)
  return { lo, hi, value: fine * half, error: Math.max(error, 2 ** -52 * size) * Math.abs(half) }
}
