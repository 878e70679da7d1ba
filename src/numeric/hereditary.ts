import { NumericError } from './error.js'

/**
 * A response to a unit step: its value after the time `elapsed` since the step, which was applied at the time `applied`.
 *
 * Most kernels ignore `applied`. One that ages, or whose clock runs with temperature, uses it: with reduced time ξ,
 * `(elapsed, applied) => R(ξ(applied + elapsed) − ξ(applied))`.
 */
type StepResponse = (elapsed: number, applied: number) => number

// Gauss-Legendre on 0 to 1.
const NODES_4 = [0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970263]
const WEIGHTS_4 = [0.17392742256872692, 0.32607257743127305, 0.32607257743127305, 0.17392742256872692]
const NODES_10 = [
  0.013046735741414128, 0.06746831665550773, 0.16029521585048778, 0.2833023029353764, 0.4255628305091844, 0.5744371694908156,
  0.7166976970646236, 0.8397047841495122, 0.9325316833444923, 0.9869532642585859,
]
const WEIGHTS_10 = [
  0.03333567215434407, 0.0747256745752903, 0.10954318125799102, 0.13463335965499817, 0.14776211235737644, 0.14776211235737644,
  0.13463335965499817, 0.10954318125799102, 0.0747256745752903, 0.03333567215434407,
]

/** Where a graded grid puts its points. */
export interface GradedTimesOptions {
  /** The first time after zero: the grid is then geometric from there to the end. */
  readonly first?: number | undefined
  /** Without `first`: times are end·(i/count)^exponent. Default 2. */
  readonly exponent?: number | undefined
}

/**
 * Times from 0 to `end` that crowd towards the start, where hereditary responses change fastest: `count` intervals.
 *
 * @throws NumericError `badArgument`.
 */
export function gradedTimes(end: number, count: number, options: GradedTimesOptions = {}): Float64Array {
  const { first, exponent = 2 } = options
  if (!(end > 0 && end < Infinity && Number.isInteger(count) && count >= 1)) {
    throw new NumericError('gradedTimes', 'badArgument', 'needs a positive end and at least one interval', { end, count })
  }
  if (first !== undefined && !(first > 0 && first <= end && (count > 1 || first === end))) {
    throw new NumericError('gradedTimes', 'badArgument', 'the first time must lie between 0 and the end', { first, end, count })
  }
  if (!(exponent >= 1 && exponent < Infinity))
    throw new NumericError('gradedTimes', 'badArgument', 'the exponent must be at least 1', { exponent })
  const t = new Float64Array(count + 1)
  for (let i = 1; i <= count; i++)
    t[i] = first === undefined ? end * (i / count) ** exponent : first * (end / first) ** ((i - 1) / Math.max(count - 1, 1))
  t[count] = end
  return t
}

/**
 * The history behind a given response: solves y(t) = R(t) x(0) + ∫₀ᵗ R(t − s) dx(s) for x at the times, forwards in one pass.
 *
 * Gives stress relaxation from creep and the other way round, or the load that is left in a joint whose members creep. Well posed
 * when R(0) is not zero (differentiated once, it is a Volterra equation of the second kind). The history is a jump at the first time and straight
 * between the times; each line's integral of R is done by Gauss quadrature, the last one with points crowding towards s = t, so that power
 * laws and short relaxation times are caught. Second order in the intervals.
 *
 * @throws NumericError `badArgument`, `notFinite` when the step response is not finite, `singular` when the response over an interval is zero.
 *
 * Ours: no library that is kept solves hereditary equations.
 *
 * Source: R. M. Christensen, *Theory of Viscoelasticity*, 2nd ed. 1982, ch. 1; P. Linz, *Analytical and Numerical Methods for
 * Volterra Equations*, 1985, ch. 8 (product integration)
 */
export function invertHereditary(times: ArrayLike<number>, response: StepResponse, result: ArrayLike<number>): Float64Array {
  const t = readTimes(times)
  const y = readSeries(result, t.length)
  const x = new Float64Array(t.length)
  const first = nonzero(evaluate(response, 0, t[0]!), t[0]!)
  x[0] = y[0]! / first
  for (let n = 1; n < t.length; n++) {
    let sum = evaluate(response, t[n]! - t[0]!, t[0]!) * x[0]
    for (let j = 0; j < n - 1; j++) {
      const rise = x[j + 1]! - x[j]!
      if (rise !== 0) sum += meanResponse(response, t, n, j) * rise
    }
    const own = nonzero(meanResponse(response, t, n, n - 1), t[n]!)
    x[n] = x[n - 1]! + (y[n]! - sum) / own
  }
  return x
}

/** Mean of the step response at time n over the interval j: (1/h) ∫ R(tₙ − s, s) ds. */
function meanResponse(response: StepResponse, t: Float64Array, n: number, j: number): number {
  const from = t[j]!
  const h = t[j + 1]! - from
  const now = t[n]!
  let sum = 0
  if (j === n - 1) {
    // elapsed = h v⁴ crowds the points where the response is youngest.
    for (let k = 0; k < 10; k++) {
      const v = NODES_10[k]!
      const elapsed = h * v ** 4
      sum += WEIGHTS_10[k]! * 4 * v ** 3 * evaluate(response, elapsed, now - elapsed)
    }
    return sum
  }
  for (let k = 0; k < 4; k++) {
    const s = from + h * NODES_4[k]!
    sum += WEIGHTS_4[k]! * evaluate(response, now - s, s)
  }
  return sum
}

function evaluate(response: StepResponse, elapsed: number, applied: number): number {
  return check(response(elapsed, applied), { elapsed, applied })
}

function check(value: number, details: Record<string, unknown>): number {
  if (Number.isFinite(value)) return value
  throw new NumericError('invertHereditary', 'notFinite', 'a function of the problem is not finite', { ...details, value })
}

function nonzero(value: number, t: number): number {
  if (value !== 0) return value
  throw new NumericError('invertHereditary', 'singular', 'the step response is zero over the newest interval', { t })
}

function readTimes(times: ArrayLike<number>): Float64Array {
  const t = Float64Array.from(times)
  if (t.length === 0) throw new NumericError('invertHereditary', 'badArgument', 'needs at least one time', {})
  for (let i = 0; i < t.length; i++) {
    if (!(Number.isFinite(t[i]!) && (i === 0 || t[i]! > t[i - 1]!))) {
      throw new NumericError('invertHereditary', 'badArgument', 'times must be finite and strictly ascending', { index: i, time: t[i] })
    }
  }
  return t
}

function readSeries(values: ArrayLike<number>, count: number): Float64Array {
  if (values.length !== count)
    throw new NumericError('invertHereditary', 'badArgument', 'the result needs one value for each time', {
      values: values.length,
      times: count,
    })
  const out = Float64Array.from(values)
  for (let i = 0; i < count; i++) check(out[i]!, { index: i })
  return out
}
