import { NumericError } from './error.js'
import { gamma, lnGamma, reciprocalGamma } from './gamma.js'

/**
 * Two-parameter Mittag-Leffler function E_{α,β}(z) = Σ zᵏ/Γ(αk + β), for 0 < α ≤ 1, 0 ≤ β ≤ 5 and real z.
 *
 * E_{1,1} is the exponential; with α below 1 it is the relaxation and creep of a fractional (spring-pot) model, E_α(−(t/τ)^α).
 * Relative error about 1e-14 for z above −1. Below it about 1e-13, plus an absolute 5e-14/(1 + |z|), which shows only where the
 * function is small compared with 1/|z|: near its zeros (β < α), or for α close to 1 and very negative z.
 *
 * @throws NumericError `outOfRange` for α, β outside their ranges, a z that is not finite, or a value too large for a number.
 *
 * Source: I. Podlubny, *Fractional Differential Equations*, 1999, sec. 1.2 (series, asymptotics, Laplace transform); J. A. C. Weideman,
 * L. N. Trefethen, *Math. Comp.* 76 (2007) 1341 (parabolic contour).
 */
export function mittagLeffler(alpha: number, beta: number, z: number): number {
  if (!(alpha > 0 && alpha <= 1 && beta >= 0 && beta <= 5 && Number.isFinite(z))) {
    throw new NumericError('mittagLeffler', 'outOfRange', 'needs 0 < α ≤ 1, 0 ≤ β ≤ 5 and a finite z', { alpha, beta, z })
  }
  if (z === 0) return reciprocalGamma(beta)
  if (alpha === 1 && beta === 1) return finite(Math.exp(z), alpha, beta, z)
  if (alpha === 1 && beta === 2) return finite(Math.expm1(z) / z, alpha, beta, z)
  // Where the Laplace transform has its pole, or would have it on the next sheet.
  const pole = Math.abs(z) ** (1 / alpha)
  if (z > 0) return finite(pole > 40 ? exponential(alpha, beta, z, pole) : series(alpha, beta, z), alpha, beta, z)
  return z > -1 ? series(alpha, beta, z) : decaying(alpha, beta, z, pole)
}

/** The function where z is at most −1. */
function decaying(alpha: number, beta: number, z: number, pole: number): number {
  if (pole > 60 && alpha < 0.98) return algebraic(alpha, beta, z)
  // With β near α the contour would leave the result as a small difference of large parts; one step of the recurrence takes them out.
  if (Math.abs(beta - alpha) < 1e-3 * alpha) return -reciprocalGamma(beta - alpha) / z + contour(alpha, beta - alpha, z) / z
  return contour(alpha, beta, z)
}

const finite = (value: number, alpha: number, beta: number, z: number): number => {
  if (Number.isFinite(value)) return value
  throw new NumericError('mittagLeffler', 'outOfRange', 'the value is too large for a number', { alpha, beta, z })
}

/** Values of the gamma function at αk + β, k = 0, 1, 2 and so on; infinite at its pole, which β = 0 begins with. */
class Gammas {
  readonly #values: number[] = []

  constructor(
    readonly alpha: number,
    readonly beta: number,
  ) {}

  at(k: number): number {
    const values = this.#values
    while (values.length <= k) {
      const argument = this.alpha * values.length + this.beta
      values.push(argument === 0 ? Number.POSITIVE_INFINITY : gamma(argument))
    }
    return values[k]!
  }
}

/** Those that were used last, the newest first: the materials of a machine keep their exponents while times and temperatures change. */
const kept: Gammas[] = []
const MAX_KEPT = 8

function gammasOf(alpha: number, beta: number): Gammas {
  const known = kept.find((entry) => entry.alpha === alpha && entry.beta === beta)
  if (known !== undefined) return known
  const gammas = new Gammas(alpha, beta)
  if (kept.unshift(gammas) > MAX_KEPT) kept.pop()
  return gammas
}

/** The defining series; safe where its terms do not cancel. */
function series(alpha: number, beta: number, z: number): number {
  let sum = 0
  let largest = 0
  const lnZ = Math.log(Math.abs(z))
  const gammas = gammasOf(alpha, beta)
  let power = 1
  for (let k = 0; k < 100_000; k++) {
    const argument = alpha * k + beta
    const size = argument < 20 && Math.abs(k * lnZ) < 600 ? power / gammas.at(k) : Math.exp(k * lnZ - lnGamma(argument))
    power *= Math.abs(z)
    const term = z < 0 && k % 2 === 1 ? -size : size
    sum += term
    largest = Math.max(largest, size)
    // Terms may rise before they fall; the maximum of Γ's reciprocal is below an argument of 2.
    if (argument > 3 && size < 1e-18 * Math.abs(sum) && size < largest) break
  }
  return sum
}

/** Exponential part plus the first terms of the algebraic one, for large positive z. */
function exponential(alpha: number, beta: number, z: number, pole: number): number {
  let sum = (pole ** (1 - beta) * Math.exp(pole)) / alpha
  for (let k = 1; k <= 5; k++) sum -= z ** -k * reciprocalGamma(beta - alpha * k)
  return sum
}

/** Asymptotic series for very negative z; its smallest term lies far below rounding when the pole is far out. */
function algebraic(alpha: number, beta: number, z: number): number {
  let sum = 0
  let power = 1
  for (let k = 1; k < 1000; k++) {
    power /= z
    const term = power * reciprocalGamma(beta - alpha * k)
    sum -= term
    // Single terms may vanish by themselves, so the size is judged without 1/Γ's zeros: Γ(1 − β + αk) bounds it.
    const argument = 1 - beta + alpha * k
    if (argument > 1 && Math.abs(power) * Math.exp(lnGamma(argument)) < 1e-17 * Math.abs(sum)) break
  }
  return sum
}

/**
 * Inverse Laplace transform of s^(α−β)/(s^α − z) at time 1 by the midpoint rule on the parabola s = μ(1 + iu)², for z < 0.
 *
 * A larger β sharpens the singularity at the origin: the parabola then keeps farther from it and takes more points.
 */
function contour(alpha: number, beta: number, z: number): number {
  const points = beta <= 1.2 ? 16 : 24
  const mu = (Math.PI * points) / 12
  const spacing = 3 / points
  let sum = 0
  for (let k = 0; k < points; k++) {
    const u = (k + 0.5) * spacing
    const lnSize = Math.log(mu * (1 + u * u))
    const angle = 2 * Math.atan(u)
    const re = mu * (1 - u * u)
    const im = 2 * mu * u
    const sAlpha = Math.exp(alpha * lnSize)
    const dRe = sAlpha * Math.cos(alpha * angle) - z
    const dIm = sAlpha * Math.sin(alpha * angle)
    // e^s s^(α−β) (1 + iu), without the common factor 2μ of ds/du.
    const size = Math.exp(re + (alpha - beta) * lnSize + 0.5 * Math.log1p(u * u))
    const phase = im + (alpha - beta) * angle + 0.5 * angle
    sum += (size * (Math.cos(phase) * dRe + Math.sin(phase) * dIm)) / (dRe * dRe + dIm * dIm)
  }
  return (2 * mu * spacing * sum) / Math.PI
}
