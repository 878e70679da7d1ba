import { NumericError } from './error.js'
import { limits } from './levenberg-limits.js'
import type { LeastSquaresProblem } from './levenberg-problem.js'
import { householder } from './orthogonal.js'

/** The present point of a fit, with its residuals and its linear model. @internal */
export class FitPoint {
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
  evaluations = 0
  protected trial: Float64Array
  protected trialResiduals: Float64Array
  protected readonly gradient: Float64Array
  protected readonly scale: Float64Array
  protected readonly columnSize: Float64Array
  /** Triangular factor of the free columns, and the rotated residuals. */
  protected r: Float64Array = new Float64Array(0)
  protected qtr: Float64Array = new Float64Array(0)

  constructor(protected readonly problem: LeastSquaresProblem) {
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

  protected evaluate(p: Float64Array, out: Float64Array): number {
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
   * True when what the free parameters could still remove from the residuals vanishes compared with the residuals: the cosine of each column with them
   * is nil, or (Bates & Watts' relative offset) the tangent plane's share of the residuals is.
   */
  settled(tolerance = 1e-12): boolean {
    const size = Math.sqrt(this.sumOfSquares)
    if (size === 0 || this.free.every((j) => Math.abs(this.gradient[j]!) <= 1e-3 * tolerance * this.columnSize[j]! * size)) return true
    let share = 0
    for (let i = 0; i < this.free.length; i++) share += this.qtr[i]! ** 2
    return Math.sqrt(share) <= tolerance * size
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
