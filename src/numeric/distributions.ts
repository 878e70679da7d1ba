import { regularisedBeta } from './beta.js'
import { erfc, erfcScaled, expMinusHalfSquare } from './erf.js'
import { NumericError } from './error.js'
import { regularisedGammaP } from './gamma.js'

/** Density of the standard normal distribution. */
export const normalPdf = (x: number): number => 0.3989422804014327 * expMinusHalfSquare(x)

/** Probability that a standard normal variable is at most x; accurate in the lower tail (use `normalCdf(-x)` for the upper). */
export function normalCdf(x: number): number {
  if (x > -1) return 0.5 * erfc(-x * Math.SQRT1_2)
  return 0.5 * erfcScaled(-x * Math.SQRT1_2) * expMinusHalfSquare(x)
}

/**
 * The standard normal value below which a fraction p lies, 0 < p < 1. Relative error about 1e-15.
 *
 * @throws NumericError `outOfRange` for p outside the open interval.
 *
 * Source: M. J. Wichura, algorithm AS 241, *Applied Statistics* 37 (1988) 477.
 */
export function normalQuantile(p: number): number {
  probability('normalQuantile', p)
  const q = p - 0.5
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q
    return (q * horner(CENTRAL_TOP, r)) / horner(CENTRAL_BOTTOM, r)
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p))
  const value = r <= 5 ? horner(MIDDLE_TOP, r - 1.6) / horner(MIDDLE_BOTTOM, r - 1.6) : horner(TAIL_TOP, r - 5) / horner(TAIL_BOTTOM, r - 5)
  return q < 0 ? -value : value
}

const horner = (c: readonly number[], x: number): number => {
  let sum = 0
  for (let i = c.length - 1; i >= 0; i--) sum = sum * x + c[i]!
  return sum
}

const CENTRAL_TOP = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087, 33430.57558358813,
  2509.0809287301227,
]
const CENTRAL_BOTTOM = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854,
]
const MIDDLE_TOP = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506,
  0.022723844989269184, 0.0007745450142783414,
]
const MIDDLE_BOTTOM = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457, 0.0005475938084995345,
  1.0507500716444169e-9,
]
const TAIL_TOP = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124, 0.0012426609473880784,
  2.7115555687434876e-5, 2.0103343992922881e-7,
]
const TAIL_BOTTOM = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5, 1.421511758316446e-7,
  2.0442631033899397e-15,
]

/** Probability that Student's t with `dof` degrees of freedom is at most t. `dof` may be fractional. */
export function studentTCdf(t: number, dof: number): number {
  freedom('studentTCdf', dof)
  const square = t * t
  const tail = 0.5 * regularisedBeta(dof / (dof + square), 0.5 * dof, 0.5, square / (dof + square))
  return t < 0 ? tail : 1 - tail
}

/** Probability that chi-square with `dof` degrees of freedom is at most x. */
export function chiSquareCdf(x: number, dof: number): number {
  freedom('chiSquareCdf', dof)
  return x <= 0 ? 0 : regularisedGammaP(0.5 * dof, 0.5 * x)
}

/**
 * Quantile of the lognormal distribution given by the mean and standard deviation of its *logarithm*.
 */
export const lognormalQuantile = (p: number, logMean: number, logSd: number): number => Math.exp(logMean + logSd * normalQuantile(p))

/** Quantile of the triangular distribution from `low` over its peak at `mode` to `high`. */
export function triangularQuantile(p: number, low: number, mode: number, high: number): number {
  if (!(low <= mode && mode <= high && low < high)) {
    throw new NumericError('triangularQuantile', 'badArgument', 'needs low ≤ mode ≤ high and low < high', { low, mode, high })
  }
  const split = (mode - low) / (high - low)
  return p < split ? low + Math.sqrt(p * (high - low) * (mode - low)) : high - Math.sqrt((1 - p) * (high - low) * (high - mode))
}

/** Quantile of a normal distribution cut off outside `low` to `high` and rescaled. Either limit may be infinite. */
export function truncatedNormalQuantile(p: number, mean: number, sd: number, low: number, high: number): number {
  if (!(sd > 0 && low < high))
    throw new NumericError('truncatedNormalQuantile', 'badArgument', 'needs sd > 0 and low < high', { mean, sd, low, high })
  const a = (low - mean) / sd
  const b = (high - mean) / sd
  // Work in whichever tail the interval lies, where the distribution function keeps its digits.
  if (a > 0) return mean - sd * cutNormal(1 - p, -b, -a)
  return mean + sd * cutNormal(p, a, b)
}

function cutNormal(p: number, a: number, b: number): number {
  const below = normalCdf(a)
  const u = below + p * (normalCdf(b) - below)
  if (!(u > 0 && u < 1)) {
    throw new NumericError(
      'truncatedNormalQuantile',
      'outOfRange',
      'the interval lies so far in the tail that its probability is not representable',
      {
        from: a,
        to: b,
      },
    )
  }
  return Math.min(Math.max(normalQuantile(u), a), b)
}

/** Throws for a probability outside the open interval from 0 to 1. @internal */
export function probability(routine: string, p: number): void {
  if (!(p > 0 && p < 1)) throw new NumericError(routine, 'outOfRange', 'a probability must lie between 0 and 1', { p })
}

/** Throws for degrees of freedom that are not positive. @internal */
export function freedom(routine: string, dof: number): void {
  if (!(dof > 0 && dof < Infinity)) throw new NumericError(routine, 'outOfRange', 'degrees of freedom must be positive', { dof })
}
