import type { LeastSquaresProblem } from './levenberg-problem.js'
import { FitState } from './levenberg-state.js'
import { householder, singularValues } from './orthogonal.js'

/** A combination of parameters that the residuals do not determine. */
export interface Undetermined {
  /** The parameters involved, by index: one that has no effect, or several that can only be determined together. */
  readonly parameters: readonly number[]
  /** How they may change together, each in units of its own size of effect. */
  readonly direction: Float64Array
}

/** What the fit found, and how well it is determined. */
export interface LeastSquaresFit {
  /** Best parameters. */
  readonly parameters: Float64Array
  /** Residuals there. */
  readonly residuals: Float64Array
  /** Sum of squared residuals. */
  readonly sumOfSquares: number
  /** Number of residuals minus number of parameters that were free and determined. */
  readonly degreesOfFreedom: number
  /** Standard deviation of the residuals: given, or √(sumOfSquares/degreesOfFreedom); 0 when no degree of freedom is left. */
  readonly sigma: number
  /** Covariance of the parameters, row by row; rows of parameters at a limit are zero, of undetermined ones infinite on the diagonal. */
  readonly covariance: Float64Array
  /** Standard error of each parameter: 0 for one held at a limit, infinite for one that is not determined. */
  readonly standardErrors: Float64Array
  /** Parameters that ended at a limit which holds them there, by index: they have no standard error. */
  readonly atLimit: readonly number[]
  /** Number of directions in the free parameters that the residuals determine. */
  readonly rank: number
  /** Ratio of largest to smallest singular value of the Jacobian with columns scaled to unit length. */
  readonly condition: number
  /** What the residuals do not determine; empty when the fit is sound. */
  readonly undetermined: readonly Undetermined[]
  /** Iterations used. */
  readonly iterations: number
  /** Evaluations of the residuals used, those for differences included. */
  readonly evaluations: number
  /** Why it ended: `'limit'` means that `maxIterations` was used up or no step descends any more short of a minimum: the best so far. */
  readonly ended: 'converged' | 'limit'
}

/** Singular values below this part of the largest count as zero: what central differences can tell. */
const RANK_TOLERANCE = 1e-9

/**
 * Fits parameters to data: bounded non-linear least squares by Levenberg and Marquardt's method.
 *
 * Steps come from an orthogonal factorisation, with Moré's scaling, Nielsen's damping and a second-order bend (geodesic acceleration)
 * that also rejects steps too long for the model; parameters pressed against a limit are held there while the rest move. Afterwards the
 * scaled Jacobian's singular values tell which parameters are determined. Finds a local minimum: start near, or several times.
 *
 * @throws NumericError `badArgument` for lengths that differ, fewer residuals than parameters, or a start outside the limits;
 * `notFinite` when residuals or Jacobian are not finite at the start.
 *
 * Source: J. J. Moré, *Lecture Notes in Mathematics* 630 (1978) 105; H. B. Nielsen, report IMM-REP-1999-05 (damping); M. K. Transtrum,
 * J. P. Sethna, arXiv 1201.5885 (2012) (acceleration); D. M. Bates, D. G. Watts, *Nonlinear Regression Analysis*, 1988 (stopping, covariance).
 */
export function fitLeastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const { fTolerance = 1e-14, xTolerance = 1e-12, maxIterations = 500 } = problem
  const state = new FitState(problem)
  const { n } = state
  let damping = 1e-2
  let growth = 2
  let iterations = 0
  let ended: 'converged' | 'limit' = 'limit'
  state.linearise()
  while (iterations < maxIterations) {
    iterations++
    if (state.settled()) {
      ended = 'converged'
      break
    }
    const { sumOfSquares } = state
    const { predicted, relativeStep, curved } = state.tryStep(damping)
    const actual = curved ? Number.NaN : sumOfSquares - state.trialSum
    // A step that is short only because it is strongly damped says nothing about the distance to the minimum.
    const short =
      damping <= 1 &&
      (relativeStep <= xTolerance || (Math.abs(actual) <= fTolerance * sumOfSquares && predicted <= fTolerance * sumOfSquares))
    if (actual > 0) {
      const gain = actual / Math.max(predicted, Number.MIN_VALUE)
      state.acceptStep()
      state.linearise()
      damping = Math.max(damping * Math.max(1 / 3, 1 - (2 * gain - 1) ** 3), 1e-16)
      growth = 2
    } else {
      damping *= growth
      growth *= 2
    }
    if (short && !curved) {
      ended = 'converged'
      break
    }
    // No step of any length descends.
    if (!(damping < 1e16)) {
      if (state.settled(1e-6)) ended = 'converged'
      break
    }
  }
  return summarise(problem, state, n, iterations, ended)
}

function summarise(
  problem: LeastSquaresProblem,
  state: FitState,
  n: number,
  iterations: number,
  ended: 'converged' | 'limit',
): LeastSquaresFit {
  const { free, m } = state
  const k = free.length
  const { a, sizes } = state.scaledColumns()
  householder(a, m, k)
  const { values, vectors } = singularValues(a.subarray(0, k * k), k, true)
  const largest = Math.max(0, ...values)
  const determined = Array.from(values, (v) => v > RANK_TOLERANCE * largest && v > 0)
  const rank = determined.filter(Boolean).length
  const degreesOfFreedom = m - rank
  const sigma = problem.sigma ?? (degreesOfFreedom > 0 ? Math.sqrt(state.sumOfSquares / degreesOfFreedom) : 0)
  const { covariance, undetermined } = covarianceOf(free, n, sigma, { values, vectors, sizes, determined })
  const standardErrors = new Float64Array(n)
  for (let i = 0; i < n; i++) standardErrors[i] = Math.sqrt(covariance[i * n + i]!)
  const smallest = Math.min(Infinity, ...values)
  return {
    parameters: state.p,
    residuals: state.residuals,
    sumOfSquares: state.sumOfSquares,
    degreesOfFreedom,
    sigma,
    covariance,
    standardErrors,
    atLimit: Array.from({ length: n }, (_, i) => i).filter((i) => !free.includes(i)),
    rank,
    condition: k === 0 ? 1 : smallest > 0 ? largest / smallest : Infinity,
    undetermined,
    iterations,
    evaluations: state.evaluations,
    ended,
  }
}

/** Covariance of all parameters, infinite for those along a direction that the residuals do not determine, and those directions. */
function covarianceOf(
  free: ArrayLike<number>,
  n: number,
  sigma: number,
  {
    values,
    vectors,
    sizes,
    determined,
  }: { readonly [name in 'values' | 'vectors' | 'sizes']: ArrayLike<number> } & { readonly determined: readonly boolean[] },
) {
  const k = free.length
  const covariance = new Float64Array(n * n)
  const undetermined: Undetermined[] = []
  const lost = new Set<number>()
  for (let v = 0; v < k; v++) {
    if (determined[v]) {
      for (let i = 0; i < k; i++) {
        for (let j = 0; j < k; j++) {
          const at = free[i]! * n + free[j]!
          covariance[at] =
            covariance[at]! + (sigma * sigma * vectors[i * k + v]! * vectors[j * k + v]!) / (values[v]! ** 2 * sizes[i]! * sizes[j]!)
        }
      }
      continue
    }
    const direction = new Float64Array(n)
    const parameters: number[] = []
    for (let i = 0; i < k; i++) {
      direction[free[i]!] = vectors[i * k + v]!
      if (Math.abs(vectors[i * k + v]!) > 0.05) parameters.push(free[i]!)
    }
    for (const i of parameters) lost.add(i)
    undetermined.push({ parameters, direction })
  }
  for (const i of lost) {
    for (let j = 0; j < n; j++) {
      covariance[i * n + j] = 0
      covariance[j * n + i] = 0
    }
  }
  for (const i of lost) covariance[i * n + i] = Infinity
  return { covariance, undetermined }
}
