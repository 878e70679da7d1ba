import { chebyshev } from './chebyshev.js'
import { ERF, ERFCX_FAR, ERFCX_NEAR } from './coefficients.js'

/** exp(−x²/2) without the loss of digits that squaring a large x brings. */
export const expMinusHalfSquare = (x: number): number => {
  if (!(Math.abs(x) < 40)) return Math.exp(-0.5 * x * x)
  // The head has few enough bits for its square to be exact.
  const head = Math.round(x * 65536) / 65536
  return Math.exp(-0.5 * head * head) * Math.exp(-0.5 * (x - head) * (head + x))
}

/** exp(−x²), likewise. */
export const expMinusSquare = (x: number): number => {
  const size = Math.min(Math.abs(x), 40)
  const head = Math.round(size * 65536) / 65536
  return Math.exp(-head * head) * Math.exp(-(size - head) * (head + size))
}

/**
 * Error function erf(x) = 2/√π ∫₀ˣ exp(−t²) dt, relative error about 1e-16 to 1e-15 everywhere. NaN for NaN.
 *
 * Source: Chebyshev expansions computed for this library; definition in Abramowitz & Stegun, 7.1.1.
 */
export function erf(x: number): number {
  const size = Math.abs(x)
  if (size <= 1) return x * chebyshev(ERF, 2 * x * x - 1)
  return Math.sign(x) * (1 - erfc(size))
}

/**
 * Complementary error function 1 − erf(x), accurate in the far tail too (relative error about 1e-15 until it underflows near x = 26.6).
 */
export function erfc(x: number): number {
  if (x < 1) return 1 - erf(x)
  return expMinusSquare(x) * erfcScaled(x)
}

/**
 * Scaled complementary error function exp(x²) erfc(x): neither under- nor overflows for positive x; infinite below about −26.6.
 */
export function erfcScaled(x: number): number {
  if (x < 1) return (1 - erf(x)) / expMinusSquare(x)
  if (x <= 3) return chebyshev(ERFCX_NEAR, x - 2)
  return chebyshev(ERFCX_FAR, 18 / (x * x) - 1) / x
}
