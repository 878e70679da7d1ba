import { NumericError } from './error.js'
import { minimiseScalar } from './minimise-scalar.js'
import { bracketRoot, type ScalarFunction } from './root.js'

/** How an interval is scanned for roots. */
export interface FindRootsOptions {
  /** Number of parts into which the interval is cut. Two crossings in one part are missed. Default 200. */
  readonly samples?: number | undefined
  /** `'log'` cuts into parts of equal ratio (both ends positive). Default `'linear'`. */
  readonly spacing?: 'linear' | 'log' | undefined
  /** Size of `f` that counts as zero: the rounding error of its values. Default 0. */
  readonly noise?: number | undefined
}

/** What a scan found. */
export interface Crossings {
  /** Points where the function passes through zero or touches it, ascending. */
  readonly roots: readonly number[]
  /** Ranges on which the function is zero, ascending. */
  readonly intervals: readonly (readonly [number, number])[]
  /** Points where the function changes sign through infinity or by a jump, ascending: not roots. */
  readonly poles: readonly number[]
}

/** The values of a function on a grid. */
interface Samples {
  readonly f: ScalarFunction
  readonly x: Float64Array
  readonly y: Float64Array
  readonly noise: number
}

/** Whether the function changes sign across a place by a jump or a pole, or is zero there. */
interface Crossing {
  readonly x: number
  readonly isRoot: boolean
}

/**
 * Every root of a function in an interval, as far as a scan tells, apart from its poles and jumps.
 *
 * The interval is cut into `samples` parts. A part whose ends differ in sign is narrowed down: where the values shrink with the bracket it holds
 * a root, of whatever order, otherwise a pole or a jump. Where |f| has a minimum without a change of sign, the minimum is searched, so that
 * roots that only touch zero and close pairs are found. A part with one end at which `f` is not finite is searched up to the edge of
 * the domain. Neighbouring samples that are zero make an interval.
 * A touching root is accurate to about the square root of the machine precision.
 *
 * Ours: libraries of root finding take a bracket; none that is kept scans a range and tells roots from poles.
 *
 * @throws NumericError `badArgument` for a malformed interval or number of samples.
 */
export function findRoots(f: ScalarFunction, lo: number, hi: number, options: FindRootsOptions = {}): Crossings {
  const samples = sampled(f, lo, hi, options)
  const { x, y, noise } = samples
  const roots: number[] = []
  const intervals: (readonly [number, number])[] = []
  const poles: number[] = []
  const add = (found: readonly Crossing[]) => {
    for (const { x: at, isRoot } of found) (isRoot ? roots : poles).push(at)
  }
  const n = x.length
  for (let i = 0; i < n; i++) {
    if (isZero(y[i]!, noise)) {
      let last = i
      while (last + 1 < n && isZero(y[last + 1]!, noise)) last++
      const zero = zeroRun(samples, i, last)
      if (typeof zero === 'number') roots.push(zero)
      else intervals.push(zero)
      i = last
    } else add(dip(samples, i))
    if (i + 1 < n) add(part(samples, i))
  }
  return { roots: ascending(roots), intervals, poles: ascending(poles) }
}

const isZero = (y: number, noise: number): boolean => Math.abs(y) <= noise

const ascending = (all: number[]): number[] => all.sort((a, b) => a - b)

function sampled(f: ScalarFunction, lo: number, hi: number, { samples = 200, spacing = 'linear', noise = 0 }: FindRootsOptions): Samples {
  if (!(Number.isFinite(lo) && Number.isFinite(hi) && lo < hi)) {
    throw new NumericError('findRoots', 'badArgument', 'the interval must be finite and ascending', { lo, hi })
  }
  if (!(Number.isInteger(samples) && samples >= 1)) {
    throw new NumericError('findRoots', 'badArgument', 'samples must be a whole number of at least 1', { samples })
  }
  if (spacing === 'log' && lo <= 0) {
    throw new NumericError('findRoots', 'badArgument', 'logarithmic spacing needs a positive interval', { lo, hi })
  }
  const at = (i: number): number => {
    if (i === 0) return lo
    if (i === samples) return hi
    return spacing === 'log' ? lo * (hi / lo) ** (i / samples) : lo + (hi - lo) * (i / samples)
  }
  const x = Float64Array.from({ length: samples + 1 }, (_, i) => at(i))
  return { f, x, y: x.map(f), noise }
}

/** The place or the range of some neighbouring zero samples: a range where it reaches over a good part of a cell. */
function zeroRun({ f, x, y, noise }: Samples, first: number, last: number): number | readonly [number, number] {
  const zeroAt = (at: number) => isZero(f(at), noise)
  const from = first === 0 ? x[0]! : edgeOf(zeroAt, x[first]!, x[first - 1]!)
  const to = last === x.length - 1 ? x[last]! : edgeOf(zeroAt, x[last]!, x[last + 1]!)
  const neighbour = first === 0 ? first : first - 1
  if (to - from > PLATEAU * (x[neighbour + 1]! - x[neighbour]!)) return [from, to]
  // The sample in the middle of a flat root; of rounding noise around one, the least.
  let best = first
  for (let i = first; i <= last; i++) if (Math.abs(y[i]!) < Math.abs(y[best]!)) best = i
  return x[best]!
}

/** Share of a cell over which zero values make a range; a root of high order is flat over less. */
const PLATEAU = 0.25

/** The last place where a condition holds on the way from one place, where it does, to another, where it does not. */
function edgeOf(holds: (x: number) => boolean, from: number, to: number): number {
  let a = from
  let b = to
  for (let m = 0.5 * (a + b); m !== a && m !== b; m = 0.5 * (a + b)) {
    if (holds(m)) a = m
    else b = m
  }
  return a
}

/** What one cell of the grid holds, apart from zeros at its ends. */
function part(samples: Samples, i: number): Crossing[] {
  const { f, x, y, noise } = samples
  const [a, b, fa, fb] = [x[i]!, x[i + 1]!, y[i]!, y[i + 1]!]
  if (isZero(fa, noise) || isZero(fb, noise)) return []
  if (Number.isFinite(fa) && Number.isFinite(fb)) return fa > 0 === fb > 0 ? [] : [locateCrossing(f, a, fa, b, fb)]
  if (Number.isFinite(fa)) return atEdge(samples, a, fa, b)
  return Number.isFinite(fb) ? atEdge(samples, b, fb, a) : []
}

/** A root beside the edge of the function's domain, or at it. */
function atEdge({ f, noise }: Samples, inside: number, fInside: number, outside: number): Crossing[] {
  const edge = edgeOf((x) => Number.isFinite(f(x)), inside, outside)
  if (edge === inside) return []
  const fEdge = f(edge)
  if (isZero(fEdge, noise)) return [{ x: edge, isRoot: true }]
  if (fEdge > 0 !== fInside > 0)
    return [edge < inside ? locateCrossing(f, edge, fEdge, inside, fInside) : locateCrossing(f, inside, fInside, edge, fEdge)]
  // A root at the very edge: the values fall towards it, by whatever power of the distance.
  const near = f(edge + (inside - edge) * 2 ** -20)
  return Math.abs(fEdge) <= 0.01 * Math.abs(near) ? [{ x: edge, isRoot: true }] : touches(f, edge, inside, fInside, noise)
}

/** Roots near a sample at which |f| is least among its neighbours, all of one sign. */
function dip({ f, x, y, noise }: Samples, i: number): Crossing[] {
  const own = y[i]!
  if (!Number.isFinite(own)) return []
  const left = i === 0 ? own : y[i - 1]!
  const right = i === x.length - 1 ? own : y[i + 1]!
  if (!(Number.isFinite(left) && Number.isFinite(right) && left > 0 === own > 0 && right > 0 === own > 0)) return []
  const [size, l, r] = [Math.abs(own), Math.abs(left), Math.abs(right)]
  if (!(size <= l && size <= r)) return []
  // Where the values around are hardly larger, |f| is flat: no minimum between them comes near zero.
  const around = Math.max(l, r, Math.abs(y[i - 2] ?? 0), Math.abs(y[i + 2] ?? 0))
  if (size >= FLAT * around) return []
  const [a, b] = [x[Math.max(i - 1, 0)]!, x[Math.min(i + 1, x.length - 1)]!]
  return touches(f, a, b, Math.sign(own) * Math.max(l, r), noise)
}

const FLAT = 0.7
/** A minimum this much smaller than the values around it is a root as far as anybody can tell. */
const TOUCHING = 1e-9

/** Whether a function of one sign at both ends touches zero between them, or crosses it twice. */
function touches(f: ScalarFunction, a: number, b: number, scale: number, noise: number): Crossing[] {
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
function locateCrossing(f: ScalarFunction, x0: number, f0: number, x1: number, f1: number): Crossing {
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
