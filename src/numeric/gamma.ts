import { chebyshev } from './chebyshev.js'
import { GAMMA, LN_GAMMA } from './coefficients.js'
import { NumericError } from './error.js'

const HALF_LN_2_PI = 0.9189385332046727

/**
 * What Stirling's formula leaves out: ln Γ(x+1) − [(x+½) ln x − x + ½ ln 2π], for x > 0.
 *
 * Source: C. Loader, *Fast and Accurate Computation of Binomial Probabilities*, 2000; series in Abramowitz & Stegun, 6.1.42.
 */
export function stirlingError(x: number): number {
  if (x < 10) return lnGamma(x + 1) - (x + 0.5) * Math.log(x) + x - HALF_LN_2_PI
  const w = 1 / (x * x)
  return (
    (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w * (1 / 1188 - w * (691 / 360360 - w * (1 / 156 - (w * 3617) / 122400))))))) /
    x
  )
}

/**
 * Gamma function Γ(x): relative error about 1e-15 for |x| below 20, 1e-14 beyond. Infinite above 171.62.
 *
 * @throws NumericError `outOfRange` at zero and the negative whole numbers, where it has poles. `reciprocalGamma` is defined there.
 */
export function gamma(x: number): number {
  if (x <= 0 && Math.floor(x) === x) throw new NumericError('gamma', 'outOfRange', 'the gamma function has a pole here', { x })
  if (x < 0.5) return Math.PI / (sinPi(x) * gamma(1 - x))
  if (x > 171.7) return Infinity
  if (x > 20) {
    // Half the power twice, as the whole would overflow before the product does.
    const y = x - 1
    const power = y ** (0.5 * (y + 0.5))
    return 2.5066282746310007 * power * Math.exp(-y) * power * Math.exp(stirlingError(y))
  }
  let product = 1
  let y = x
  while (y > 2) {
    y -= 1
    product *= y
  }
  if (y < 1) {
    product /= y
    y += 1
  }
  return product * chebyshev(GAMMA, 2 * y - 3)
}

/** 1/Γ(x), which is zero at the poles of Γ: an entire function, never throws for finite x. */
export function reciprocalGamma(x: number): number {
  if (x <= 0 && Math.floor(x) === x) return 0
  if (x < -170) {
    // Half the power twice: Γ(1 − x) overflows before the result does.
    const root = Math.exp(0.5 * lnGamma(1 - x))
    return ((sinPi(x) * root) / Math.PI) * root
  }
  return 1 / gamma(x)
}

/**
 * Logarithm of the gamma function for x > 0, with small relative error also near its zeros at 1 and 2.
 *
 * @throws NumericError `outOfRange` for x ≤ 0.
 */
export function lnGamma(x: number): number {
  if (!(x > 0)) throw new NumericError('lnGamma', 'outOfRange', 'the argument must be positive', { x })
  if (x > 11) {
    const y = x - 1
    return (y + 0.5) * Math.log(y) - y + HALF_LN_2_PI + stirlingError(y)
  }
  let product = 1
  let y = x
  while (y > 2.5) {
    y -= 1
    product *= y
  }
  if (y < 0.5) {
    return lnGamma(y + 1) - Math.log(y)
  }
  if (y < 1.5) {
    const d = y - 1
    return d * y * chebyshev(LN_GAMMA, 2 * (y + 1) - 4) - Math.log1p(d) + Math.log(product)
  }
  return (y - 1) * (y - 2) * chebyshev(LN_GAMMA, 2 * y - 4) + Math.log(product)
}

/** sin(πx) with the argument reduced exactly. */
export const sinPi = (x: number): number => {
  const r = x - 2 * Math.round(0.5 * x)
  if (Math.abs(r) <= 0.25) return Math.sin(Math.PI * r)
  if (Math.abs(r) <= 0.75) return Math.sign(r) * Math.cos(Math.PI * (Math.abs(r) - 0.5))
  return Math.sign(r) * Math.sin(Math.PI * (1 - Math.abs(r)))
}

/**
 * x ln(x/m) + m − x for positive x, without cancellation near x = m (the deviance of a Poisson count).
 *
 * Source: Loader 2000, as above.
 */
export function deviance(x: number, m: number): number {
  if (Math.abs(x - m) < 0.1 * (x + m)) {
    const v = (x - m) / (x + m)
    let sum = (x - m) * v
    let term = 2 * x * v
    const w = v * v
    for (let j = 1; j < 1000; j++) {
      term *= w
      const next = sum + term / (2 * j + 1)
      if (next === sum) break
      sum = next
    }
    return sum
  }
  return x * Math.log(x / m) + m - x
}

/** x^a e^−x / Γ(a+1) without loss of digits for large a. */
function poissonTerm(a: number, x: number): number {
  if (a < 1) return (x ** a * Math.exp(-x)) / gamma(a + 1)
  return Math.exp(-stirlingError(a) - deviance(a, x)) / Math.sqrt(2 * Math.PI * a)
}

/**
 * Regularised lower incomplete gamma function P(a, x) = γ(a, x)/Γ(a), for a > 0 and x ≥ 0.
 *
 * Relative error about 1e-13 (a up to about 1e6). For P near 1 the complement `regularisedGammaQ` keeps the digits.
 *
 * @throws NumericError `outOfRange`.
 *
 * Source: Abramowitz & Stegun, 6.5.29 (series) and 6.5.31 (continued fraction).
 */
export function regularisedGammaP(a: number, x: number): number {
  checkGamma('regularisedGammaP', a, x)
  if (x === Infinity) return 1
  return x < a + 1 ? gammaSeries(a, x) : 1 - gammaFraction(a, x)
}

/** Regularised upper incomplete gamma function Q(a, x) = 1 − P(a, x), accurate in the tail. */
export function regularisedGammaQ(a: number, x: number): number {
  checkGamma('regularisedGammaQ', a, x)
  if (x === Infinity) return 0
  return x < a + 1 ? 1 - gammaSeries(a, x) : gammaFraction(a, x)
}

function checkGamma(routine: string, a: number, x: number): void {
  if (!(a > 0 && a < Infinity && x >= 0)) throw new NumericError(routine, 'outOfRange', 'needs a > 0 and x ≥ 0', { a, x })
}

function gammaSeries(a: number, x: number): number {
  let term = 1
  let sum = 1
  for (let n = 1; n < 1e6; n++) {
    term *= x / (a + n)
    sum += term
    if (term < sum * 1e-17) break
  }
  return sum * poissonTerm(a, x)
}

function gammaFraction(a: number, x: number): number {
  // Lentz's method; the prefix x^a e^−x / Γ(a) is a times the Poisson term.
  let b = x + 1 - a
  let c = 1e300
  let d = 1 / b
  let h = d
  for (let n = 1; n < 1e6; n++) {
    const an = -n * (n - a)
    b += 2
    d = an * d + b
    if (d === 0) d = 1e-300
    c = b + an / c
    if (c === 0) c = 1e-300
    d = 1 / d
    const change = d * c
    h *= change
    if (Math.abs(change - 1) < 1e-16) break
  }
  return h * a * poissonTerm(a, x)
}
