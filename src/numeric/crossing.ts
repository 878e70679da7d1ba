import { NumericError } from './error.js'
import { minimiseScalar } from './minimise-scalar.js'
import { bracketRoot, type ScalarFunction } from './root.js'

/** Whether the function changes sign across a place by a jump or a pole, or is zero there. */
export interface Crossing {
  readonly x: number
  readonly isRoot: boolean
}

/** A minimum this much smaller than the values around it is a root as far as anybody can tell. */
const TOUCHING = 1e-9

/** Whether a function of one sign at both ends touches zero between them, or crosses it twice. */
export function touches(f: ScalarFunction, a: number, b: number, scale: number, noise: number): Crossing[] {
  const [lo, hi] = a < b ? [a, b] : [b, a]
  const sign = scale > 0 ? 1 : -1
  // From the middle, so that the accuracy of the place is relative to the cell: a kink is only as near zero as its place is exact.
  const middle = 0.5 * (lo + hi)
  const distance = (t: number) => {
    const y = sign * f(middle + t)
    return Number.isNaN(y) ? Number.POSITIVE_INFINITY : y
  }
  const found = minimiseScalar(distance, lo - middle, hi - middle, { xTolerance: Math.max(1e-12 * (hi - lo), Number.MIN_VALUE) })
  const [x, value] = [middle + found.x, found.value]
  if (Math.abs(value) <= Math.max(noise, TOUCHING * Math.abs(scale))) return [{ x, isRoot: true }]
  if (!(value < 0)) return []
  return [
    [lo, x],
    [x, hi],
  ].flatMap(([from, to]) => {
    const [fFrom, fTo] = [f(from!), f(to!)]
    if (!(Number.isFinite(fFrom) && Number.isFinite(fTo)) || fFrom > 0 === fTo > 0) return []
    return [locateCrossing(f, from!, fFrom, to!, fTo)]
  })
}

const EPSILON = 2 ** -52

/** Narrows a change of sign down and judges it by whether the values shrink with the bracket. */
export function locateCrossing(f: ScalarFunction, x0: number, f0: number, x1: number, f1: number): Crossing {
  let [a, fa, b, fb] = [x0, f0, x1, f1]
  // Roots at zero are frequent, and no step towards one ever gets there.
  if (a < 0 && b > 0 && f(0) === 0) return { x: 0, isRoot: true }
  // Relative to the cell, since a tolerance relative to the place alone is never met by a root of high order near zero.
  const fine = Math.max(2 * EPSILON * Math.max(Math.abs(x0), Math.abs(x1)), EPSILON * (x1 - x0), Number.MIN_VALUE)
  const bisect = (width: number): Crossing | undefined => {
    while (b - a > width) {
      const m = 0.5 * (a + b)
      if (m === a || m === b) return undefined
      const fm = f(m)
      if (fm === 0) return { x: m, isRoot: true }
      if (!Number.isFinite(fm)) return { x: m, isRoot: false }
      if (fm > 0 === fa > 0) [a, fa] = [m, fm]
      else [b, fb] = [m, fm]
    }
    return undefined
  }
  const early = bisect(Math.max((x1 - x0) * 2 ** -20, fine))
  if (early !== undefined) return early
  const before = Math.abs(fb - fa)
  try {
    const root = bracketRoot(f, a, b, { maxEvaluations: 100 })
    // Across a root the values have shrunk further; across a jump they are as far apart as before, across a pole further.
    const reach = Math.max(4 * EPSILON * Math.abs(root), Number.MIN_VALUE)
    const across = Math.abs(f(Math.min(root + reach, b)) - f(Math.max(root - reach, a)))
    return { x: root, isRoot: across <= 0.5 * before }
  } catch (error) {
    if (!(error instanceof NumericError)) throw error
    // A root of so high an order that interpolation creeps, or a pole.
    const late = bisect(fine)
    return late ?? { x: 0.5 * (a + b), isRoot: Math.abs(fb - fa) <= 0.5 * before }
  }
}
