import { NumericError } from './error.js'

/** A function given by a table. Calling it gives the value; outside the table it throws, it never extrapolates. */
export interface Table {
  (x: number): number
  /** The slope of the interpolant (at a kink: the slope to the right, at the last point to the left). */
  slope(x: number): number
  /** First abscissa. */
  readonly low: number
  /** Last abscissa. */
  readonly high: number
}

/**
 * Straight lines between the points of a table.
 *
 * @param xs abscissae, strictly ascending; at least two.
 * @param ys ordinates.
 * @throws NumericError `badArgument` for a malformed table; the function returned throws `outOfRange` outside it.
 */
export function linearTable(xs: ArrayLike<number>, ys: ArrayLike<number>): Table {
  const { x, y } = readTable('linearTable', xs, ys)
  const segment = finder('linearTable', x)
  const slopeOf = (i: number): number => (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!)
  return table(
    x,
    (at) => {
      const i = segment(at)
      const t = (at - x[i]!) / (x[i + 1]! - x[i]!)
      // Both products, so that both ends come out exactly.
      return (1 - t) * y[i]! + t * y[i + 1]!
    },
    (at) => slopeOf(segment(at)),
  )
}

/**
 * A smooth curve through the points of a table that rises and falls only where the points do: no overshoot, continuous slope.
 *
 * Piecewise cubic with the Fritsch-Butland slopes (weighted harmonic mean); a local extreme stays at its point.
 *
 * @throws NumericError as `linearTable`.
 *
 * Source: F. N. Fritsch, J. Butland, *SIAM J. Sci. Stat. Comput.* 5 (1984) 300; end slopes after C. Moler, *Numerical Computing with MATLAB*, 2004, sec. 3.4.
 */
export function monotoneTable(xs: ArrayLike<number>, ys: ArrayLike<number>): Table {
  const { x, y } = readTable('monotoneTable', xs, ys)
  const d = monotoneSlopes(x, y)
  const segment = finder('monotoneTable', x)
  return table(
    x,
    (at) => {
      const i = segment(at)
      const h = x[i + 1]! - x[i]!
      const t = (at - x[i]!) / h
      const r = 1 - t
      return r * r * ((1 + 2 * t) * y[i]! + t * h * d[i]!) + t * t * ((1 + 2 * r) * y[i + 1]! - r * h * d[i + 1]!)
    },
    (at) => {
      const i = segment(at)
      const h = x[i + 1]! - x[i]!
      const t = (at - x[i]!) / h
      const r = 1 - t
      return (6 * t * r * (y[i + 1]! - y[i]!)) / h + r * (1 - 3 * t) * d[i]! + t * (3 * t - 2) * d[i + 1]!
    },
  )
}

function table(x: Float64Array, value: (x: number) => number, slope: (x: number) => number): Table {
  return Object.assign(value, { slope, low: x[0]!, high: x[x.length - 1]! })
}

function readTable(routine: string, xs: ArrayLike<number>, ys: ArrayLike<number>) {
  const x = ascending(routine, 'xs', xs)
  if (ys.length !== x.length)
    throw new NumericError(routine, 'badArgument', 'needs one ordinate for each abscissa', { xs: x.length, ys: ys.length })
  const y = Float64Array.from(ys)
  for (let i = 0; i < y.length; i++) finiteEntry(routine, 'ys', i, y[i]!)
  return { x, y }
}

function finiteEntry(routine: string, name: string, index: number, value: number): number {
  if (Number.isFinite(value)) return value
  throw new NumericError(routine, 'badArgument', 'the table must hold finite numbers', { in: name, index, value })
}

function ascending(routine: string, name: string, given: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(given)
  if (x.length < 2) throw new NumericError(routine, 'badArgument', 'a table needs at least two points', { [name]: x })
  for (let i = 0; i < x.length; i++) {
    finiteEntry(routine, name, i, x[i]!)
    if (i > 0 && !(x[i]! > x[i - 1]!)) {
      throw new NumericError(routine, 'badArgument', 'abscissae must be strictly ascending', {
        in: name,
        index: i,
        before: x[i - 1],
        value: x[i],
      })
    }
  }
  return x
}

/** Index of the segment that holds a value; remembers the last one, as callers tend to move along. */
function finder(routine: string, x: Float64Array): (at: number) => number {
  const last = x.length - 2
  let held = 0
  return (at) => {
    if (at >= x[held]! && at < x[held + 1]!) return held
    if (!(at >= x[0]! && at <= x[last + 1]!)) {
      throw new NumericError(routine, 'outOfRange', 'the value lies outside the table', { x: at, low: x[0], high: x[last + 1] })
    }
    let lo = 0
    let hi = last + 1
    while (hi - lo > 1) {
      const middle = (lo + hi) >> 1
      if (x[middle]! <= at) lo = middle
      else hi = middle
    }
    held = lo
    return lo
  }
}

function monotoneSlopes(x: Float64Array, y: Float64Array): Float64Array {
  const n = x.length
  const d = new Float64Array(n)
  const h = (i: number): number => x[i + 1]! - x[i]!
  const s = (i: number): number => (y[i + 1]! - y[i]!) / h(i)
  if (n === 2) return d.fill(s(0))
  for (let i = 1; i < n - 1; i++) {
    const before = s(i - 1)
    const after = s(i)
    if (before * after > 0) {
      const w1 = 2 * h(i) + h(i - 1)
      const w2 = h(i) + 2 * h(i - 1)
      d[i] = (w1 + w2) / (w1 / before + w2 / after)
    }
  }
  d[0] = endSlope(h(0), h(1), s(0), s(1))
  d[n - 1] = endSlope(h(n - 2), h(n - 3), s(n - 2), s(n - 3))
  return d
}

/** One-sided three-point slope, kept from overshooting. */
function endSlope(h0: number, h1: number, s0: number, s1: number): number {
  const d = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1)
  if (d * s0 <= 0) return 0
  if (s0 * s1 < 0 && Math.abs(d) > 3 * Math.abs(s0)) return 3 * s0
  return d
}
