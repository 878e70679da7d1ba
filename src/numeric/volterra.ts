import { NumericError } from './error.js'

/**
 * A response to a unit step: its value after the time `elapsed` since the step, which was applied at the time `applied`.
 *
 * Most kernels ignore `applied`. One that ages, or whose clock runs with temperature, uses it: with reduced time ξ,
 * `(elapsed, applied) => R(ξ(applied + elapsed) − ξ(applied))`.
 */
export type StepResponse = (elapsed: number, applied: number) => number

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
 * The response of a linear hereditary body to a history: y(t) = R(t) x(0) + ∫₀ᵗ R(t − s) dx(s) (Boltzmann superposition).
 *
 * The history is taken as a jump to x(0) at the first time and straight lines between the times; each line's integral of R is done by Gauss quadrature, the last one with
 * points crowding towards s = t, so that power laws and short relaxation times are caught. Second order in the intervals.
 *
 * @param times strictly ascending, the first is the time of the jump.
 * @throws NumericError `badArgument`, `notFinite` when the step response is not finite.
 *
 * Source: R. M. Christensen, *Theory of Viscoelasticity*, 2nd ed. 1982, ch. 1; P. Linz, *Analytical and Numerical Methods for
 * Volterra Equations*, 1985, ch. 8 (product integration).
 */
export function hereditary(times: ArrayLike<number>, response: StepResponse, history: ArrayLike<number>): Float64Array {
  const t = readTimes('hereditary', times)
  const x = readSeries('hereditary', 'history', history, t.length)
  const y = new Float64Array(t.length)
  for (let n = 0; n < t.length; n++) {
    let sum = evaluate('hereditary', response, t[n]! - t[0]!, t[0]!) * x[0]!
    for (let j = 0; j < n; j++) {
      const rise = x[j + 1]! - x[j]!
      if (rise !== 0) sum += meanResponse('hereditary', response, t, n, j) * rise
    }
    y[n] = sum
  }
  return y
}

/**
 * The history behind a given response: solves y(t) = R(t) x(0) + ∫₀ᵗ R(t − s) dx(s) for x at the times, forwards in one pass.
 *
 * Gives stress relaxation from creep and the other way round, or the load that is left in a joint whose members creep. Well posed
 * when R(0) is not zero (differentiated once, it is a Volterra equation of the second kind).
 *
 * @throws NumericError as `hereditary`, and `singular` when the response over an interval is zero.
 */
export function invertHereditary(times: ArrayLike<number>, response: StepResponse, result: ArrayLike<number>): Float64Array {
  const t = readTimes('invertHereditary', times)
  const y = readSeries('invertHereditary', 'result', result, t.length)
  const x = new Float64Array(t.length)
  const first = nonzero(evaluate('invertHereditary', response, 0, t[0]!), t[0]!)
  x[0] = y[0]! / first
  for (let n = 1; n < t.length; n++) {
    let sum = evaluate('invertHereditary', response, t[n]! - t[0]!, t[0]!) * x[0]
    for (let j = 0; j < n - 1; j++) {
      const rise = x[j + 1]! - x[j]!
      if (rise !== 0) sum += meanResponse('invertHereditary', response, t, n, j) * rise
    }
    const own = nonzero(meanResponse('invertHereditary', response, t, n, n - 1), t[n]!)
    x[n] = x[n - 1]! + (y[n]! - sum) / own
  }
  return x
}

/** A Volterra equation of the second kind, perhaps with a non-linear term. */
export interface VolterraProblem {
  /** Times at which the solution is wanted, strictly ascending; the integral starts at the first. */
  readonly times: ArrayLike<number>
  /** The known term g(t). */
  readonly forcing: (t: number) => number
  /** The kernel K(t, s), for s ≤ t; may be infinite at s = t if integrable. */
  readonly kernel: (t: number, s: number) => number
  /** What the kernel acts on, φ(s, u). Default: u itself, the linear equation. */
  readonly term?: ((s: number, u: number) => number) | undefined
}

/**
 * Solves u(t) = g(t) + ∫ K(t, s) φ(s, u(s)) ds, the integral from the first time to t.
 *
 * Product trapezoidal rule: φ(s, u(s)) is taken as straight between the times, the kernel's moments are done by Gauss quadrature (crowded towards
 * s = t, so weakly singular kernels such as (t − s)^−½ are allowed). Second order for smooth solutions. A non-linear term is solved at each time by
 * secant iteration.
 *
 * @throws NumericError `badArgument`, `notFinite`, `singular`, `noConvergence`.
 *
 * Source: P. Linz, *Analytical and Numerical Methods for Volterra Equations*, 1985, ch. 7 and 8.
 */
export function solveVolterra(problem: VolterraProblem): Float64Array {
  const { forcing, kernel, term } = problem
  const t = readTimes('solveVolterra', problem.times)
  const u = new Float64Array(t.length)
  const phi = new Float64Array(t.length)
  const act = term ?? ((_s: number, value: number) => value)
  u[0] = check('solveVolterra', forcing(t[0]!), { t: t[0] })
  phi[0] = check('solveVolterra', act(t[0]!, u[0]), { t: t[0] })
  const moments: [number, number] = [0, 0]
  for (let n = 1; n < t.length; n++) {
    let known = check('solveVolterra', forcing(t[n]!), { t: t[n] })
    let own = 0
    for (let j = 0; j < n; j++) {
      kernelMoments(kernel, t, n, j, moments)
      known += moments[0] * phi[j]!
      if (j < n - 1) known += moments[1] * phi[j + 1]!
      else own = moments[1]
    }
    u[n] = term === undefined ? linearStep(known, own, t[n]!) : nonlinearStep(known, own, (value) => act(t[n]!, value), u[n - 1]!, t[n]!)
    phi[n] = check('solveVolterra', act(t[n]!, u[n]!), { t: t[n] })
  }
  return u
}

function linearStep(known: number, own: number, t: number): number {
  if (Math.abs(1 - own) < 1e-12)
    throw new NumericError('solveVolterra', 'singular', 'the interval is too long for the kernel: refine the times', { t })
  return known / (1 - own)
}

/** Solves u = known + own·φ(u) by the secant method from the previous value. */
function nonlinearStep(known: number, own: number, act: (u: number) => number, start: number, t: number): number {
  let a = start
  let ra = known + own * act(a) - a
  let b = a + ra
  for (let i = 0; i < 60; i++) {
    if (b === a || ra === 0) return b
    const rb = check('solveVolterra', known + own * act(b) - b, { t, u: b })
    const change = rb === ra ? 0 : (-rb * (b - a)) / (rb - ra)
    a = b
    ra = rb
    b += change
    if (Math.abs(change) <= 1e-14 * Math.max(Math.abs(b), Math.abs(known))) return b
  }
  throw new NumericError('solveVolterra', 'noConvergence', 'the non-linear term was not solved: refine the times', { t, u: b })
}

/** Mean of the step response at time n over the interval j: (1/h) ∫ R(tₙ − s, s) ds. */
function meanResponse(routine: string, response: StepResponse, t: Float64Array, n: number, j: number): number {
  const from = t[j]!
  const h = t[j + 1]! - from
  const now = t[n]!
  let sum = 0
  if (j === n - 1) {
    // elapsed = h v⁴ crowds the points where the response is youngest.
    for (let k = 0; k < 10; k++) {
      const v = NODES_10[k]!
      const elapsed = h * v ** 4
      sum += WEIGHTS_10[k]! * 4 * v ** 3 * evaluate(routine, response, elapsed, now - elapsed)
    }
    return sum
  }
  for (let k = 0; k < 4; k++) {
    const s = from + h * NODES_4[k]!
    sum += WEIGHTS_4[k]! * evaluate(routine, response, now - s, s)
  }
  return sum
}

/** Moments of the kernel over the interval j with the two straight shape functions. */
function kernelMoments(kernel: (t: number, s: number) => number, t: Float64Array, n: number, j: number, out: [number, number]): void {
  const from = t[j]!
  const h = t[j + 1]! - from
  const now = t[n]!
  let left = 0
  let right = 0
  const near = j === n - 1
  const points = near ? 10 : 4
  for (let k = 0; k < points; k++) {
    const v = near ? NODES_10[k]! : NODES_4[k]!
    const x = near ? 1 - v ** 4 : v
    const weight = near ? WEIGHTS_10[k]! * 4 * v ** 3 : WEIGHTS_4[k]!
    const value = weight * h * check('solveVolterra', kernel(now, near ? now - h * v ** 4 : from + h * x), { t: now, s: from + h * x })
    left += (1 - x) * value
    right += x * value
  }
  out[0] = left
  out[1] = right
}

function evaluate(routine: string, response: StepResponse, elapsed: number, applied: number): number {
  return check(routine, response(elapsed, applied), { elapsed, applied })
}

function check(routine: string, value: number, details: Record<string, unknown>): number {
  if (Number.isFinite(value)) return value
  throw new NumericError(routine, 'notFinite', 'a function of the problem is not finite', { ...details, value })
}

function nonzero(value: number, t: number): number {
  if (value !== 0) return value
  throw new NumericError('invertHereditary', 'singular', 'the step response is zero over the newest interval', { t })
}

function readTimes(routine: string, times: ArrayLike<number>): Float64Array {
  const t = Float64Array.from(times)
  if (t.length === 0) throw new NumericError(routine, 'badArgument', 'needs at least one time', {})
  for (let i = 0; i < t.length; i++) {
    if (!(Number.isFinite(t[i]!) && (i === 0 || t[i]! > t[i - 1]!))) {
      throw new NumericError(routine, 'badArgument', 'times must be finite and strictly ascending', { index: i, time: t[i] })
    }
  }
  return t
}

function readSeries(routine: string, name: string, values: ArrayLike<number>, count: number): Float64Array {
  if (values.length !== count)
    throw new NumericError(routine, 'badArgument', `${name} needs one value for each time`, { values: values.length, times: count })
  const out = Float64Array.from(values)
  for (let i = 0; i < count; i++) check(routine, out[i]!, { in: name, index: i })
  return out
}
