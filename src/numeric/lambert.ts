import { NumericError } from './error.js'

const E = Math.E
// e to twice the precision, for 1 + e·x near the branch point.
const E_LOW = 1.4456468917292502e-16

/** Series at the branch point in p = ±√(2(1 + e x)). */
const branchSeries = (p: number): number =>
  -1 +
  p *
    (1 +
      p *
        (-1 / 3 + p * (11 / 72 + p * (-43 / 540 + p * (769 / 17280 + p * (-221 / 8505 + p * (680863 / 43545600 + (p * -1963) / 204120)))))))

/** Halley's iteration on w eʷ = x in a form that neither over- nor underflows for large |w|. */
function polish(x: number, start: number): number {
  let w = start
  for (let i = 0; i < 20; i++) {
    const r = w - x * Math.exp(-w)
    const slope = 1 + w
    const change = r / (slope - ((w + 2) * r) / (2 * slope))
    w -= change
    if (Math.abs(change) <= 4e-16 * Math.abs(w)) break
  }
  return w
}

/**
 * Lambert W, principal branch: the w ≥ −1 with w eʷ = x, for x ≥ −1/e. Relative error about 1e-15
 * (near the branch point −1/e as exact as x itself allows).
 *
 * @throws NumericError `outOfRange` for x < −1/e or NaN.
 *
 * Source: R. M. Corless et al., *Adv. Comput. Math.* 5 (1996) 329.
 */
export function lambertW0(x: number): number {
  const above = distanceFromBranch('lambertW0', x)
  if (x === 0 || x === Infinity) return x
  if (above < 1e-3) return branchSeries(Math.sqrt(2 * above))
  if (Math.abs(x) < 1e-6) return x * (1 - x * (1 - 1.5 * x))
  let start: number
  if (x < -0.25) start = branchSeries(Math.sqrt(2 * above))
  else if (x < 3) start = Math.log1p(x) * (1 - Math.log1p(Math.log1p(x)) / (2 + Math.log1p(x)))
  else {
    const l1 = Math.log(x)
    const l2 = Math.log(l1)
    start = l1 - l2 + l2 / l1
  }
  return x > 1e300 ? polishLog(Math.log(x), start) : polish(x, start)
}

/**
 * Lambert W, lower branch: the w ≤ −1 with w eʷ = x, for −1/e ≤ x < 0. Relative error about 1e-15.
 *
 * @throws NumericError `outOfRange` outside that interval.
 */
export function lambertWm1(x: number): number {
  if (!(x < 0)) throw new NumericError('lambertWm1', 'outOfRange', 'the lower branch exists for −1/e ≤ x < 0', { x })
  const above = distanceFromBranch('lambertWm1', x)
  if (above < 1e-3) return branchSeries(-Math.sqrt(2 * above))
  if (x < -0.2) return polish(x, branchSeries(-Math.sqrt(2 * above)))
  const l1 = Math.log(-x)
  const l2 = Math.log(-l1)
  return polishLog(l1, l1 - l2 + l2 / l1)
}

/** Newton's iteration on w + ln|w| = ln|x|, for arguments at which eʷ is extreme. */
function polishLog(lnX: number, start: number): number {
  let w = start
  for (let i = 0; i < 20; i++) {
    const change = (w + Math.log(Math.abs(w)) - lnX) / (1 + 1 / w)
    w -= change
    if (Math.abs(change) <= 4e-16 * Math.abs(w)) break
  }
  return w
}

/** 1 + e x, which is zero at the branch point. */
function distanceFromBranch(routine: string, x: number): number {
  const head = E * x
  // The rounding error of E·x, from Veltkamp-Dekker splitting, matters only close to the branch point.
  const above = x < -0.3 ? 1 + head + (productError(E, x, head) + E_LOW * x) : 1 + head
  if (above >= 0) return above
  // The nearest double to −1/e may lie a rounding error below it.
  if (above > -2e-16) return 0
  throw new NumericError(routine, 'outOfRange', 'the argument lies below −1/e', { x })
}

function productError(a: number, b: number, product: number): number {
  const split = 134217729
  const ta = split * a
  const ah = ta - (ta - a)
  const al = a - ah
  const tb = split * b
  const bh = tb - (tb - b)
  const bl = b - bh
  return al * bl - (product - ah * bh - al * bh - ah * bl)
}
