import { chebyshev } from './chebyshev.js'
import * as table from './coefficients.js'
import { NumericError } from './error.js'

const SQRT_2_OVER_PI = 0.7978845608028654

/**
 * Bessel function J0(x). Absolute error about 2e-16; the phase, and with it the digits, is lost as x grows beyond 1e8.
 *
 * Source: definitions and asymptotic form in Abramowitz & Stegun, 9.1 and 9.2; expansions computed for this library.
 */
export function besselJ0(x: number): number {
  const size = Math.abs(x)
  if (size <= 8) return chebyshev(table.J0_NEAR, (x * x) / 32 - 1)
  const v = 128 / (x * x) - 1
  const p = chebyshev(table.J0_P, v)
  const q = chebyshev(table.J0_Q, v) / size
  const s = Math.sin(size)
  const c = Math.cos(size)
  // cos(x − π/4) and sin(x − π/4) from sin x and cos x: no digits lost in subtracting π/4.
  return (SQRT_2_OVER_PI / Math.sqrt(size)) * Math.SQRT1_2 * (p * (c + s) - q * (s - c))
}

/** Bessel function J1(x), odd in x. Accuracy as for `besselJ0`. */
export function besselJ1(x: number): number {
  const size = Math.abs(x)
  if (size <= 8) return x * chebyshev(table.J1_NEAR, (x * x) / 32 - 1)
  const v = 128 / (x * x) - 1
  const p = chebyshev(table.J1_P, v)
  const q = chebyshev(table.J1_Q, v) / size
  const s = Math.sin(size)
  const c = Math.cos(size)
  return Math.sign(x) * (SQRT_2_OVER_PI / Math.sqrt(size)) * Math.SQRT1_2 * (p * (s - c) + q * (s + c))
}

/**
 * The n-th positive zero of J1 (n = 1 is 3.8317…), relative error about 1e-15, for any n.
 *
 * @throws NumericError `badArgument` unless n is a whole number of at least 1.
 *
 * Source: McMahon's expansion, Abramowitz & Stegun, 9.5.12, polished by Newton's method.
 */
export function besselJ1Zero(n: number): number {
  if (!(Number.isInteger(n) && n >= 1)) throw new NumericError('besselJ1Zero', 'badArgument', 'zeros are counted from 1', { n })
  const beta = (n + 0.25) * Math.PI
  const e = 1 / (8 * beta)
  // With μ = 4: (μ−1) = 3; 4(μ−1)(7μ−31)/3 = −12; 32(μ−1)(83μ²−982μ+3779)/15 = 32·3·1179/15.
  let x = beta - 3 * e + 12 * e ** 3 - 7545.6 * e ** 5
  if (n > 60) return x
  for (let i = 0; i < 3; i++) {
    const j1 = besselJ1(x)
    x -= j1 / (besselJ0(x) - j1 / x)
  }
  return x
}

/** exp(−|x|) I0(x): never overflows. Relative error about 1e-15. */
export function besselI0Scaled(x: number): number {
  const size = Math.abs(x)
  if (size <= 8) return chebyshev(table.I0_NEAR, size / 4 - 1)
  return chebyshev(table.I0_FAR, 16 / size - 1) / Math.sqrt(size)
}

/** exp(−|x|) I1(x): never overflows. Relative error about 1e-15. */
export function besselI1Scaled(x: number): number {
  const size = Math.abs(x)
  if (size <= 8) return x * chebyshev(table.I1_NEAR, size / 4 - 1)
  return (Math.sign(x) * chebyshev(table.I1_FAR, 16 / size - 1)) / Math.sqrt(size)
}

/** exp(x) K0(x), x > 0: never underflows. Relative error about 1e-15. */
export function besselK0Scaled(x: number): number {
  positive('besselK0', x)
  if (x > 2) return chebyshev(table.K0_FAR, 4 / x - 1) / Math.sqrt(x)
  return Math.exp(x) * (chebyshev(table.K0_NEAR, (x * x) / 2 - 1) - Math.log(0.5 * x) * besselI0Scaled(x) * Math.exp(x))
}

/** exp(x) K1(x), x > 0: never underflows. Relative error about 1e-15. */
export function besselK1Scaled(x: number): number {
  positive('besselK1', x)
  if (x > 2) return chebyshev(table.K1_FAR, 4 / x - 1) / Math.sqrt(x)
  return Math.exp(x) * (chebyshev(table.K1_NEAR, (x * x) / 2 - 1) / x + Math.log(0.5 * x) * besselI1Scaled(x) * Math.exp(x))
}

const positive = (routine: string, x: number): void => {
  if (!(x > 0)) throw new NumericError(routine, 'outOfRange', 'the argument must be positive', { x })
}
