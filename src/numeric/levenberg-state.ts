import { NumericError } from './error.js'
import type { LeastSquaresProblem } from './levenberg.js'
import { limits, solveUpper } from './levenberg-limits.js'
import { householder } from './orthogonal.js'

/** A fit in progress: the present point, its linear model, and steps from it. @internal */
export class FitState {
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
  settled(tolerance = 1e-12): boolean {
    const size = Math.sqrt(this.sumOfSquares)
    if (size === 0 || this.free.every((j) => Math.abs(this.gradient[j]!) <= 1e-3 * tolerance * this.columnSize[j]! * size)) return true
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
