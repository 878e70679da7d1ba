import { type Crossing, locateCrossing, touches } from './crossing.js'
import { NumericError } from './error.js'
import type { ScalarFunction } from './root.js'

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

/** The place or the range of some neighbouring zero samples: a range where it reaches over a good part of a cell, as that of two samples does. */
function zeroRun({ f, x, noise }: Samples, first: number, last: number): number | readonly [number, number] {
  const zeroAt = (at: number) => isZero(f(at), noise)
  const from = first === 0 ? x[0]! : edgeOf(zeroAt, x[first]!, x[first - 1]!)
  const to = last === x.length - 1 ? x[last]! : edgeOf(zeroAt, x[last]!, x[last + 1]!)
  const neighbour = first === 0 ? first : first - 1
  if (to - from > PLATEAU * (x[neighbour + 1]! - x[neighbour]!)) return [from, to]
  return x[first]!
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

/** A root next to the edge of the function's domain, or at it. */
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
