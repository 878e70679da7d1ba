/** Where an event happened. */

export interface OdeEventRecord {
  /** Which of the problem's events, by index. */
  readonly event: number
  /** When. */
  readonly t: number
  /** The state then. */
  readonly y: Float64Array
}

/** The solution of an initial-value problem. */
export interface OdeSolution {
  /** The times the integrator stepped on, the first is the start (with `dense: false` only the first and the last). */
  readonly t: Float64Array
  /** The states at those times, one row of `size` numbers after another. */
  readonly y: Float64Array
  /** Number of states. */
  readonly size: number
  /** Where the integration ended: the problem's end, or a terminal event. */
  readonly tEnd: number
  /** The state there. */
  readonly yEnd: Float64Array
  /** Events in the order they happened. */
  readonly events: readonly OdeEventRecord[]
  /** Why it ended. */
  readonly ended: 'end' | 'event'
  /** Steps accepted. */
  readonly steps: number
  /** Steps rejected. */
  readonly rejected: number
  /** Evaluations of the right-hand side. */
  readonly evaluations: number
  /** The state at any time of the interval, by the method's interpolant; written into `out` if given. Throws outside the interval and with `dense: false`. */
  at(t: number, out?: Float64Array): Float64Array
}
