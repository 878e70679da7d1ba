import { regularisedBeta } from './beta.js'
import { chiSquareCdf, freedom, normalQuantile, probability, studentTCdf } from './distributions.js'
import { lnGamma, regularisedGammaP, regularisedGammaQ } from './gamma.js'
import { bracketRoot } from './root.js'

/** A step this short leaves an error of its cube: one more would change nothing. */
const SHORT = 1e-5
const STEPS = 12

/**
 * Halley's iteration for the logarithm u of a positive quantile. `at(u)` gives the logarithm of the probability over the target, and its first two
 * derivatives; nothing where the iteration fails, which a start far off in a heavy tail may do.
 */
function halley(start: number, at: (u: number) => readonly [number, number, number]): number | undefined {
  let u = start
  if (!Number.isFinite(u)) return undefined
  for (let i = 0; i < STEPS; i++) {
    const [g, first, second] = at(u)
    const change = (-2 * g * first) / (2 * first * first - g * second)
    if (!(Math.abs(change) < 5)) return undefined
    u += change
    if (Math.abs(change) < SHORT) return Math.exp(u)
  }
  return undefined
}

/**
 * The value of Student's t below which a fraction p lies. Relative error about 1e-14; more only next to p = 0.5, where p itself is that exact.
 *
 * A two-sided 95 % confidence interval uses p = 0.975. Halley's iteration from Hill's approximation.
 *
 * Ours: the kept libraries bring dozens of packages for it.
 *
 * Source: G. W. Hill, algorithm 396, *Commun. ACM* 13 (1970) 619 (start).
 */
export function studentTQuantile(p: number, dof: number): number {
  probability('studentTQuantile', p)
  freedom('studentTQuantile', dof)
  if (p === 0.5) return 0
  return p > 0.5 ? upperT(1 - p, dof) : -upperT(p, dof)
}

/** Upper quantile: the positive value above which a fraction p < 0.5 lies. */
function upperT(p: number, dof: number): number {
  if (dof === 1) return p < 0.25 ? 1 / Math.tan(Math.PI * p) : Math.tan(Math.PI * (0.5 - p))
  if (dof === 2) return (1 - 2 * p) / Math.sqrt(2 * p * (1 - p))
  const constant = lnGamma(0.5 * (dof + 1)) - lnGamma(0.5 * dof) - 0.5 * Math.log(dof * Math.PI)
  const inner = p > 0.25
  const found = halley(Math.log(inner && dof < 1 ? (0.5 - p) / Math.exp(constant) : hill(p, dof)), (u) => {
    const x = Math.exp(u)
    const square = x * x
    // Near the middle the part between zero and the value carries the digits, further out the tail.
    const part = inner ? 0.5 * regularisedBeta(square / (dof + square), 0.5, 0.5 * dof, dof / (dof + square)) : studentTCdf(-x, dof)
    const first = ((inner ? 1 : -1) * Math.exp(constant + u - 0.5 * (dof + 1) * Math.log1p(square / dof))) / part
    return [Math.log(part / (inner ? 0.5 - p : p)), first, first * (1 - ((dof + 1) * square) / (dof + square) - first)]
  })
  return found ?? bracketedT(p, dof)
}

/** Hill's approximation, good to three digits or more from one degree of freedom on; nothing below. */
function hill(p: number, n: number): number {
  if (n < 1) return Number.NaN
  const a = 1 / (n - 0.5)
  const b = 48 / (a * a)
  let c = ((20700 * (a / b) - 98) * a - 16) * a + 96.36
  const d = ((94.5 / (b + c) - 3) / b + 1) * Math.sqrt(0.5 * a * Math.PI) * n
  let y = (2 * d * p) ** (2 / n)
  if (y > 0.05 + a) {
    const x = normalQuantile(p)
    y = x * x
    if (n < 5) c += 0.3 * (n - 4.5) * (x + 0.6)
    c += (((0.05 * d * x - 5) * x - 7) * x - 2) * x + b
    y = (((((0.4 * y + 6.3) * y + 36) * y + 94.5) / c - y - 3) / b + 1) * x
    y = Math.expm1(a * y * y)
  } else y = ((1 / (((n + 6) / (n * y) - 0.089 * d - 0.822) * (n + 2) * 3) + 0.5 / (n + 4)) * y - 1) * ((n + 1) / (n + 2)) + 1 / y
  return Math.sqrt(n * y)
}

/** The same by a bracket in the logarithm, so that the heaviest tails are reached. */
function bracketedT(p: number, dof: number): number {
  const z = -normalQuantile(p)
  const f = (u: number): number => Math.log(studentTCdf(-Math.exp(u), dof) / p)
  let lo = Math.log(Math.max(0.5 * z, 1e-300))
  let hi = Math.log(Math.max(2 * z, 1e-290))
  while (f(lo) < 0) lo -= 1
  while (f(hi) > 0) hi += 1
  return Math.exp(bracketRoot(f, lo, hi))
}

/**
 * The value of chi-square below which a fraction p lies. Relative error about 2e-15. Halley's iteration from Wilson and Hilferty's approximation.
 *
 * Ours for the same reason as Student's t.
 *
 * Source: E. B. Wilson, M. M. Hilferty, *Proc. Natl. Acad. Sci.* 17 (1931) 684 (start).
 */
export function chiSquareQuantile(p: number, dof: number): number {
  probability('chiSquareQuantile', p)
  freedom('chiSquareQuantile', dof)
  const a = 0.5 * dof
  const constant = lnGamma(a)
  // The smaller of the two tails carries the digits.
  const lower = p < 0.5
  const found = halley(chiSquareStart(p, dof, constant), (u) => {
    const y = Math.exp(u)
    const tail = lower ? regularisedGammaP(a, y) : regularisedGammaQ(a, y)
    const first = ((lower ? 1 : -1) * Math.exp(a * u - y - constant)) / tail
    return [Math.log(tail / (lower ? p : 1 - p)), first, first * (a - y - first)]
  })
  return found === undefined ? bracketedChiSquare(p, dof) : 2 * found
}

/** Logarithm of half the quantile, roughly. */
function chiSquareStart(p: number, dof: number, lnGammaHalf: number): number {
  const a = 0.5 * dof
  // The lower tail of the density is a power.
  const small = (Math.log(p) + Math.log(a) + lnGammaHalf) / a
  if (small < Math.log(0.2 * (a + 1))) return small
  const c = 2 / (9 * dof)
  const cube = 1 - c + normalQuantile(p) * Math.sqrt(c)
  return Math.log(0.5 * dof * Math.max(cube, 0.05) ** 3)
}

function bracketedChiSquare(p: number, dof: number): number {
  const f = (u: number): number => chiSquareCdf(Math.exp(u), dof) - p
  let lo = Math.log(dof) - 1
  let hi = Math.log(dof) + 1
  for (let stride = 1; f(lo) > 0; stride *= 2) lo -= stride
  for (let stride = 1; f(hi) < 0; stride *= 2) hi += stride
  return Math.exp(bracketRoot(f, lo, hi))
}
