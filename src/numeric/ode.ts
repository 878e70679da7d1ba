import { NumericError } from './error.js'
import type { OdeProblem, OdeSettings } from './ode-problem.js'
import { StepRecord, watch } from './ode-record.js'
import type { OdeEventRecord, OdeSolution } from './ode-solution.js'

/**
 * One integration method, as the driver uses it.
 * @internal
 */
export interface Stepper {
  /** Degree of the interpolant: coefficients per state in `interpolant`. */
  readonly degree: number
  /** Evaluations of the right-hand side so far. */
  evaluations: number
  /** Prepares for steps from (t, y), after the start or a jump. */
  restart(t: number, y: Float64Array): void
  /** First step to try from here, towards `tEnd`. */
  guessStep(t: number, y: Float64Array, tEnd: number): number
  /** Tries a step. Writes the new state and returns the weighted error (≤ 1 is good), or NaN if the step could not be computed. */
  attempt(t: number, y: Float64Array, h: number, tEnd: number, yNew: Float64Array): number
  /** The factor for the next step, from the error of the last one. */
  nextFactor(error: number, accepted: boolean): number
  /** Writes the interpolant of the step just tried: y(t + θh) = y + Σ c_k θ^k, k from 1 to `degree`, `degree` rows of n. */
  interpolant(y: Float64Array, h: number, yNew: Float64Array, out: Float64Array, offset: number): void
  /** Accepts the step just tried. */
  accept(): void
}

/** Drives a stepper from start to end: step control, jumps, events, dense output. @internal */
export function integrateSteps(routine: string, problem: OdeProblem, stepper: Stepper): OdeSolution {
  const { start, end, events = [], maxStep = Infinity, maxSteps = 100_000, dense = true } = problem
  const n = problem.initial.length
  const { degree } = stepper
  const record = new StepRecord(n, degree)
  const happened: OdeEventRecord[] = []
  let y = Float64Array.from(problem.initial)
  let yNew = new Float64Array(n)
  const coefficients = new Float64Array(n * degree)
  const signs = events.map((e) => Math.sign(e.value(start, y)))
  record.first(start, y)
  let t = start
  let accepted = 0
  let rejected = 0
  let ended: 'end' | 'event' = 'end'
  segments: for (const target of segmentEnds(problem)) {
    stepper.restart(t, y)
    let h = t === start && problem.firstStep !== undefined ? problem.firstStep : stepper.guessStep(t, y, target)
    while (t < target) {
      const smallest = 16 * 2 ** -52 * Math.max(Math.abs(t), Math.abs(target))
      h = Math.min(h, maxStep)
      const left = target - t
      // A last step only just too short would leave a sliver behind; split the rest into two equal steps instead.
      const last = h >= left * (1 - 1e-10)
      const trial = last ? left : Math.min(h, 0.5 * left)
      if (accepted + rejected >= maxSteps) {
        throw new NumericError(routine, 'noConvergence', 'the allowed number of steps was used up', { t, end, maxSteps, step: trial })
      }
      const error = stepper.attempt(t, y, trial, target, yNew)
      if (!(error <= 1)) {
        rejected++
        h = trial * stepper.nextFactor(error, false)
        if (h < smallest) throw stepTooSmall(routine, error, t, h, y)
        continue
      }
      const factor = stepper.nextFactor(error, true)
      const tNew = last ? target : t + trial
      accepted++
      if (dense || events.length > 0) stepper.interpolant(y, trial, yNew, coefficients, 0)
      stepper.accept()
      const stop = events.length > 0 ? watch(events, signs, happened, coefficients, degree, t, tNew, y, yNew) : undefined
      if (stop !== undefined) {
        yNew.set(stop.y)
        record.step(stop.t, yNew, t, trial, coefficients, dense)
        t = stop.t
        ;[y, yNew] = [yNew, y]
        ended = 'event'
        break segments
      }
      record.step(tNew, yNew, t, trial, coefficients, dense)
      t = tNew
      ;[y, yNew] = [yNew, y]
      h = (last ? Math.max(h, trial) : trial) * factor
    }
  }
  return record.finish(routine, happened, ended, accepted, rejected, stepper.evaluations, dense, start, t)
}

/** Times at which the integration is restarted, with the end as the last. */
function segmentEnds({ start, end, stops = [] }: OdeProblem): number[] {
  return [...[...new Set(stops.filter((s) => s > start && s < end))].sort((a, b) => a - b), end]
}

function stepTooSmall(routine: string, error: number, t: number, step: number, state: Float64Array): NumericError {
  const reason = Number.isFinite(error) ? 'noConvergence' : 'notFinite'
  return new NumericError(routine, reason, 'the step became too small: the solution may grow without limit or jump here', {
    t,
    step,
    state,
  })
}

/**
 * A first step from the sizes of the state and of its derivatives. @internal
 *
 * Source: E. Hairer, S. P. Nørsett, G. Wanner, *Solving Ordinary Differential Equations I*, 2nd ed. 1993, sec. II.4.
 */
export function startingStep(settings: OdeSettings, t: number, y: Float64Array, f0: Float64Array, tEnd: number, order: number): number {
  const { n, derivative, relativeTolerance, absoluteTolerance } = settings
  let d0 = 0
  let d1 = 0
  const scale = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    scale[i] = absoluteTolerance[i]! + relativeTolerance * Math.abs(y[i]!)
    d0 += (y[i]! / scale[i]!) ** 2
    d1 += (f0[i]! / scale[i]!) ** 2
  }
  d0 = Math.sqrt(d0 / n)
  d1 = Math.sqrt(d1 / n)
  const span = tEnd - t
  let h0 = d0 < 1e-5 || d1 < 1e-5 ? 1e-6 * span : (0.01 * d0) / d1
  h0 = Math.min(h0, span)
  const y1 = new Float64Array(n)
  const f1 = new Float64Array(n)
  for (let i = 0; i < n; i++) y1[i] = y[i]! + h0 * f0[i]!
  derivative(insideSegment(t + h0, tEnd), y1, f1)
  let d2 = 0
  for (let i = 0; i < n; i++) d2 += ((f1[i]! - f0[i]!) / scale[i]!) ** 2
  d2 = Math.sqrt(d2 / n) / h0
  const largest = Math.max(d1, d2)
  const h1 = largest <= 1e-15 ? Math.max(1e-6 * span, h0 * 1e-3) : (0.01 / largest) ** (1 / (order + 1))
  const h = Math.min(100 * h0, h1, span)
  return Number.isFinite(h) && h > 0 ? h : 1e-6 * span
}

/** Keeps a stage time short of a jump at the segment's end, where the right-hand side already has its new value. @internal */
export const insideSegment = (t: number, tEnd: number): number => {
  if (t < tEnd) return t
  return tEnd - 2 ** -52 * Math.max(Math.abs(tEnd), Number.MIN_VALUE)
}
