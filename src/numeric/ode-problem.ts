import { NumericError } from './error.js'

/**
 * The right-hand side of y′ = f(t, y): writes the derivatives into `out`, keeps no reference to either array.
 *
 * It may jump at the problem's `stops`, and must there give the value that holds *after* the jump.
 */
export type Derivative = (t: number, y: Float64Array, out: Float64Array) => void

/** A condition watched during the integration. */
export interface OdeEvent {
  /** The event happens where this passes through zero. */
  readonly value: (t: number, y: Float64Array) => number
  /** Which crossing counts: `'rising'` from negative to positive, `'falling'`, or either. Default `'either'`. */
  readonly direction?: 'rising' | 'falling' | 'either' | undefined
  /** True ends the integration there. Default false. */
  readonly terminal?: boolean | undefined
}

/** An initial-value problem, and how closely it is to be solved. */
export interface OdeProblem {
  /** Right-hand side. */
  readonly derivative: Derivative
  /** Start of the interval. */
  readonly start: number
  /** End of the interval, after the start. */
  readonly end: number
  /** State at the start. */
  readonly initial: ArrayLike<number>
  /** Accepted error per step relative to the state. Default 1e-6. */
  readonly relativeTolerance?: number | undefined
  /** Accepted absolute error per step, one for all or one for each state. Default 1e-9: set it to what is negligible in your units. */
  readonly absoluteTolerance?: number | ArrayLike<number> | undefined
  /** Times at which the right-hand side jumps or kinks (a load switched on): a step ends at each. */
  readonly stops?: readonly number[] | undefined
  /** Conditions to be located in time. */
  readonly events?: readonly OdeEvent[] | undefined
  /** First step. Default: chosen from the derivatives at the start. */
  readonly firstStep?: number | undefined
  /** Largest step. Default: the interval. */
  readonly maxStep?: number | undefined
  /** Largest number of steps, rejected ones included. Default 100 000. */
  readonly maxSteps?: number | undefined
  /** Keep what `at(t)` needs, for the whole interval. Default true; false saves memory when only the end and the events matter. */
  readonly dense?: boolean | undefined
}

/** An initial-value problem for `solveStiff`. */
export interface StiffProblem extends OdeProblem {
  /** Writes ∂fᵢ/∂yⱼ row by row (i·n + j). Default: forward differences. */
  readonly jacobian?: ((t: number, y: Float64Array, out: Float64Array) => void) | undefined
}

/** The checked problem with its defaults filled in, as the steppers use it. @internal */
export interface OdeSettings {
  readonly n: number
  readonly derivative: Derivative
  readonly relativeTolerance: number
  readonly absoluteTolerance: Float64Array
}

const bad = (routine: string, explanation: string, details: Record<string, unknown>): never => {
  throw new NumericError(routine, 'badArgument', explanation, details)
}

/** The absolute tolerance of each state. */
function absoluteOf(routine: string, given: number | ArrayLike<number>, relativeTolerance: number, n: number): Float64Array {
  const absolute = typeof given === 'number' ? new Float64Array(n).fill(given) : Float64Array.from(given)
  if (absolute.length !== n)
    bad(routine, 'absoluteTolerance must be one number, or one for each state', { absoluteTolerance: absolute, states: n })
  if (!(relativeTolerance >= 0 && absolute.every((a) => a >= 0 && a + relativeTolerance > 0)))
    bad(routine, 'tolerances must be positive', { relativeTolerance, absoluteTolerance: absolute })
  return absolute
}

/** Checks a problem and fills in tolerances. @internal */
export function readProblem(routine: string, problem: OdeProblem): OdeSettings {
  const { start, end, initial, relativeTolerance = 1e-6, absoluteTolerance = 1e-9, firstStep, maxStep, stops = [] } = problem
  const n = initial.length
  if (!(Number.isFinite(start) && Number.isFinite(end) && start < end))
    bad(routine, 'the interval must be finite and ascending', { start, end })
  if (n === 0) bad(routine, 'there is no state', { initial })
  for (let i = 0; i < n; i++)
    if (!Number.isFinite(initial[i]!)) bad(routine, 'the initial state must be finite', { state: i, initial: initial[i] })
  const absolute = absoluteOf(routine, absoluteTolerance, relativeTolerance, n)
  if (firstStep !== undefined && !(firstStep > 0)) bad(routine, 'firstStep must be positive', { firstStep })
  if (maxStep !== undefined && !(maxStep > 0)) bad(routine, 'maxStep must be positive', { maxStep })
  for (const stop of stops) if (!Number.isFinite(stop)) bad(routine, 'a stop must be a finite time', { stop })
  return { n, derivative: problem.derivative, relativeTolerance, absoluteTolerance: absolute }
}
