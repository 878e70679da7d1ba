import { solveUpper } from './levenberg-limits.js'
import { FitPoint } from './levenberg-point.js'
import { householder } from './orthogonal.js'

/** A fit in progress: steps from the present point by its linear model. @internal */
export class FitState extends FitPoint {
  trialSum = 0

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

  /** First-order change of each residual along a step of the free parameters. */
  private along(v: Float64Array): Float64Array {
    const { n, m, free, jacobian } = this
    return Float64Array.from({ length: m }, (_, i) => free.reduce((sum, j, c) => sum + jacobian[i * n + j]! * v[c]!, 0))
  }

  /** Adds half the geodesic acceleration to the step `v`; true when it is too large compared with the step. */
  private bend(factor: Float64Array, v: Float64Array): boolean {
    const { n, m, free, p, trial, jacobian, residuals, scale } = this
    const k = free.length
    const h = 0.1
    // A small change of the residuals needs no bend, and its second difference would be rounding.
    const along = this.along(v)
    if (along.reduce((sum, x) => sum + x * x, 0) < 1e-4 * this.sumOfSquares) return false
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
      const second = (2 / h) * ((this.trialResiduals[i]! - residuals[i]!) / h - along[i]!)
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
}
