import { NumericError } from './error.js'
import { householder, singularValues } from './orthogonal.js'

/** A least-squares problem: find the parameters that make the sum of squared residuals smallest. */
export interface LeastSquaresProblem {
  /** Writes the residuals (prediction minus measurement, divided by its standard deviation if known) for parameters `p`. */
  readonly residuals: (p: Float64Array, out: Float64Array) => void
  /** Number of residuals; at least the number of parameters. */
  readonly count: number
  /** First guess. */
  readonly start: ArrayLike<number>
  /** Lower limits. Default −∞. */
  readonly lower?: ArrayLike<number> | undefined
  /** Upper limits. Default +∞. */
  readonly upper?: ArrayLike<number> | undefined
  /** Writes ∂rᵢ/∂pⱼ row by row (i·n + j). Default: central differences. */
  readonly jacobian?: ((p: Float64Array, out: Float64Array) => void) | undefined
  /** The search ends when a step changes the sum of squares by less than this part. Default 1e-14. */
  readonly fTolerance?: number | undefined
  /** … or the (scaled) parameters by less than this part. Default 1e-12. */
  readonly xTolerance?: number | undefined
  /** Largest number of iterations. Default 500. */
  readonly maxIterations?: number | undefined
  /** Known standard deviation of the (weighted) residuals: 1 when they were divided by theirs. Default: estimated from the residuals. */
  readonly sigma?: number | undefined
}

/** A combination of parameters that the residuals do not determine. */
export interface Undetermined {
  /** The parameters involved, by index: one that has no effect, or several that can only be told together. */
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
  /** Parameters that ended at a limit which holds them there, by index: no standard error can be told for them. */
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
  /** Why it ended: `'limit'` means that `maxIterations` was used up, and that the rest is only the best so far. */
  readonly ended: 'converged' | 'limit'
}

/** Singular values below this part of the largest count as zero: what central differences can tell. */
const RANK_TOLERANCE = 1e-9

/**
 * Fits parameters to data: bounded non-linear least squares by Levenberg and Marquardt's method.
 *
 * Steps come from an orthogonal factorisation, with Moré's scaling, Nielsen's damping and a second-order bend (geodesic acceleration) that also
 * refuses steps too long for the model; parameters pressed against a limit are held there while the rest move. Afterwards the scaled Jacobian's singular values tell which parameters are determined. Finds a local
 * minimum: start near, or several times.
 *
 * @throws NumericError `badArgument` for lengths that differ, fewer residuals than parameters, or a start outside the limits;
 * `notFinite` when residuals or Jacobian are not finite at the start.
 *
 * Source: J. J. Moré, *Lecture Notes in Mathematics* 630 (1978) 105; H. B. Nielsen, report IMM-REP-1999-05 (damping); M. K. Transtrum, J. P. Sethna, arXiv 1201.5885 (2012)
 * (acceleration); covariance as in any text
 * on non-linear regression, e.g. D. M. Bates, D. G. Watts, *Nonlinear Regression Analysis*, 1988.
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
      if (state.settled(1e-8)) ended = 'converged'
      break
    }
  }
  return summarise(problem, state, n, iterations, ended)
}

class FitState {
  readonly n: number
  readonly m: number
  readonly p: Float64Array
  readonly lower: Float64Array
  readonly upper: Float64Array
  residuals: Float64Array
  readonly jacobian: Float64Array
  /** Indices of the parameters that are free to move. */
  free: number[] = []
  sumOfSquares = 0
  trialSum = 0
  evaluations = 0
  private trial: Float64Array
  private trialResiduals: Float64Array
  private readonly gradient: Float64Array
  private readonly scale: Float64Array
  private readonly columnSize: Float64Array
  /** Triangular factor of the free columns, and the rotated residuals. */
  private r = new Float64Array(0)
  private qtr = new Float64Array(0)

  constructor(private readonly problem: LeastSquaresProblem) {
    const { start, count } = problem
    const n = start.length
    this.n = n
    this.m = count
    if (!(Number.isInteger(count) && n >= 1 && count >= n)) {
      throw new NumericError('fitLeastSquares', 'badArgument', 'needs at least one parameter and as many residuals', {
        parameters: n,
        residuals: count,
      })
    }
    this.lower = limits(problem.lower, n, -Infinity, 'lower')
    this.upper = limits(problem.upper, n, Infinity, 'upper')
    this.p = Float64Array.from(start)
    for (let i = 0; i < n; i++) {
      if (!(Number.isFinite(this.p[i]!) && this.p[i]! >= this.lower[i]! && this.p[i]! <= this.upper[i]!)) {
        throw new NumericError('fitLeastSquares', 'badArgument', 'the start lies outside the limits', {
          parameter: i,
          start: this.p[i],
          lower: this.lower[i],
          upper: this.upper[i],
        })
      }
    }
    this.trial = new Float64Array(n)
    this.residuals = new Float64Array(count)
    this.trialResiduals = new Float64Array(count)
    this.jacobian = new Float64Array(count * n)
    this.gradient = new Float64Array(n)
    this.scale = new Float64Array(n)
    this.columnSize = new Float64Array(n)
    this.sumOfSquares = this.evaluate(this.p, this.residuals)
    if (!Number.isFinite(this.sumOfSquares)) {
      throw new NumericError('fitLeastSquares', 'notFinite', 'the residuals are not finite at the start', { start: this.p })
    }
  }

  private evaluate(p: Float64Array, out: Float64Array): number {
    this.evaluations++
    this.problem.residuals(p, out)
    let sum = 0
    for (let i = 0; i < this.m; i++) sum += out[i]! * out[i]!
    return sum
  }

  /** Jacobian, gradient, free parameters and their triangular factor at the present point. */
  linearise(): void {
    const { n, m, jacobian, gradient, columnSize, scale } = this
    if (this.problem.jacobian !== undefined) this.problem.jacobian(this.p, jacobian)
    else this.differences()
    gradient.fill(0)
    columnSize.fill(0)
    for (let i = 0; i < m; i++) {
      for (let j = 0; j < n; j++) {
        const entry = jacobian[i * n + j]!
        gradient[j] = gradient[j]! + entry * this.residuals[i]!
        columnSize[j] = columnSize[j]! + entry * entry
      }
    }
    this.free = []
    for (let j = 0; j < n; j++) {
      const size = Math.sqrt(columnSize[j]!)
      if (!Number.isFinite(size))
        throw new NumericError('fitLeastSquares', 'notFinite', 'the Jacobian is not finite', { parameter: j, parameters: this.p })
      columnSize[j] = size
      scale[j] = Math.max(scale[j]!, size)
      const held = (this.p[j]! <= this.lower[j]! && gradient[j]! > 0) || (this.p[j]! >= this.upper[j]! && gradient[j]! < 0)
      if (!held && this.lower[j]! < this.upper[j]!) this.free.push(j)
    }
    const k = this.free.length
    const a = new Float64Array(m * k)
    for (let i = 0; i < m; i++) for (let c = 0; c < k; c++) a[i * k + c] = jacobian[i * n + this.free[c]!]!
    this.qtr = Float64Array.from(this.residuals)
    householder(a, m, k, this.qtr)
    this.r = a
  }

  /** Central differences, one-sided at a limit. */
  private differences(): void {
    const { n, m, p, jacobian, lower, upper } = this
    const up = new Float64Array(m)
    const down = new Float64Array(m)
    this.trial.set(p)
    for (let j = 0; j < n; j++) {
      const step = 6e-6 * (p[j] !== 0 ? Math.abs(p[j]!) : 1e-3)
      const high = Math.min(p[j]! + step, upper[j]!)
      const low = Math.max(p[j]! - step, lower[j]!)
      if (high === low) continue
      this.trial[j] = high
      this.evaluate(this.trial, up)
      this.trial[j] = low
      this.evaluate(this.trial, down)
      this.trial[j] = p[j]!
      for (let i = 0; i < m; i++) jacobian[i * n + j] = (up[i]! - down[i]!) / (high - low)
    }
  }

  /**
   * True when what the free parameters could still remove from the residuals vanishes beside the residuals: the cosine of each column with them
   * is nil, or (Bates & Watts' relative offset) the tangent plane's share of the residuals is.
   */
  settled(tolerance = 1e-10): boolean {
    const size = Math.sqrt(this.sumOfSquares)
    if (size === 0 || this.free.every((j) => Math.abs(this.gradient[j]!) <= 1e-5 * tolerance * this.columnSize[j]! * size)) return true
    let share = 0
    for (let i = 0; i < this.free.length; i++) share += this.qtr[i]! ** 2
    return Math.sqrt(share) <= tolerance * size
  }

  /**
   * Solves the damped problem, bends the step by its second derivative, clips it to the limits and evaluates it.
   *
   * `curved` is true when the bend is too large for the linear model to be believed at this damping.
   */
  tryStep(damping: number): { predicted: number; relativeStep: number; curved: boolean } {
    const { free, r, qtr, scale, p, trial } = this
    const k = free.length
    const rows = 2 * k
    const a = new Float64Array(rows * k)
    const b = new Float64Array(rows)
    for (let i = 0; i < k; i++) {
      for (let c = i; c < k; c++) a[i * k + c] = r[i * k + c]!
      b[i] = -qtr[i]!
      a[(k + i) * k + i] = Math.sqrt(damping) * (scale[free[i]!]! > 0 ? scale[free[i]!]! : 1)
    }
    householder(a, rows, k, b)
    solveUpper(a, k, b)
    const curved = this.bend(a, b)
    trial.set(p)
    let relativeStep = 0
    const step = new Float64Array(k)
    for (let c = 0; c < k; c++) {
      const j = free[c]!
      trial[j] = Math.min(Math.max(p[j]! + b[c]!, this.lower[j]!), this.upper[j]!)
      step[c] = trial[j]! - p[j]!
      if (step[c] !== 0) relativeStep = Math.max(relativeStep, Math.abs(step[c]!) / Math.max(Math.abs(p[j]!), Math.abs(trial[j]!)))
    }
    // What the linear model promises for the clipped step.
    let predicted = 0
    for (let i = 0; i < k; i++) {
      let change = 0
      for (let c = i; c < k; c++) change += r[i * k + c]! * step[c]!
      predicted -= change * (2 * qtr[i]! + change)
    }
    if (!curved) this.trialSum = this.evaluate(trial, this.trialResiduals)
    return { predicted, relativeStep, curved }
  }

  /** Adds half the geodesic acceleration to the step `v`; true when it is too large beside the step. */
  private bend(factor: Float64Array, v: Float64Array): boolean {
    const { n, m, free, p, trial, jacobian, residuals, scale } = this
    const k = free.length
    const h = 0.1
    // A small change of the residuals needs no bend, and its second difference would be rounding.
    let change = 0
    for (let i = 0; i < m; i++) {
      let along = 0
      for (let c = 0; c < k; c++) along += jacobian[i * n + free[c]!]! * v[c]!
      change += along * along
    }
    if (change < 1e-4 * this.sumOfSquares) return false
    trial.set(p)
    for (let c = 0; c < k; c++) {
      const j = free[c]!
      trial[j] = p[j]! + h * v[c]!
      // Beyond a limit the residuals may not exist.
      if (trial[j]! < this.lower[j]! || trial[j]! > this.upper[j]!) return false
    }
    if (!Number.isFinite(this.evaluate(trial, this.trialResiduals))) return true
    const bendBy = new Float64Array(k)
    for (let i = 0; i < m; i++) {
      let along = 0
      for (let c = 0; c < k; c++) along += jacobian[i * n + free[c]!]! * v[c]!
      const second = (2 / h) * ((this.trialResiduals[i]! - residuals[i]!) / h - along)
      for (let c = 0; c < k; c++) bendBy[c] = bendBy[c]! - jacobian[i * n + free[c]!]! * second
    }
    // The damped normal equations are RᵀR: two triangular solutions.
    for (let i = 0; i < k; i++) {
      for (let c = 0; c < i; c++) bendBy[i] = bendBy[i]! - factor[c * k + i]! * bendBy[c]!
      bendBy[i] = bendBy[i]! / factor[i * k + i]!
    }
    solveUpper(factor, k, bendBy)
    let length = 0
    let bent = 0
    for (let c = 0; c < k; c++) {
      length += (scale[free[c]!]! * v[c]!) ** 2
      bent += (scale[free[c]!]! * bendBy[c]!) ** 2
    }
    if (!(4 * bent <= 0.75 ** 2 * length)) return true
    for (let c = 0; c < k; c++) v[c] = v[c]! + 0.5 * bendBy[c]!
    return false
  }

  acceptStep(): void {
    this.p.set(this.trial)
    const held = this.residuals
    this.residuals = this.trialResiduals
    this.trialResiduals = held
    this.sumOfSquares = this.trialSum
  }

  /** The free columns scaled to unit length, with their sizes. */
  scaledColumns(): { a: Float64Array; sizes: Float64Array } {
    const { m, n, free, jacobian, columnSize } = this
    const k = free.length
    const a = new Float64Array(m * k)
    const sizes = Float64Array.from(free, (j) => columnSize[j]!)
    for (let i = 0; i < m; i++) for (let c = 0; c < k; c++) a[i * k + c] = sizes[c]! > 0 ? jacobian[i * n + free[c]!]! / sizes[c]! : 0
    return { a, sizes }
  }
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

/** Solves R x = b in place, R upper triangular in the first n rows of `a`. */
function solveUpper(a: Float64Array, n: number, b: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!
    for (let c = i + 1; c < n; c++) sum -= a[i * n + c]! * b[c]!
    b[i] = sum / a[i * n + i]!
  }
}

function limits(given: ArrayLike<number> | undefined, n: number, otherwise: number, name: string): Float64Array {
  if (given === undefined) return new Float64Array(n).fill(otherwise)
  if (given.length !== n)
    throw new NumericError('fitLeastSquares', 'badArgument', `${name} must have one entry per parameter`, { [name]: given, parameters: n })
  return Float64Array.from(given)
}
