import { cubicInto } from './cubic.js'
import { NumericError } from './error.js'
import { A, C, E, GAMMA } from './esdirk-tableau.js'
import { forwardDifferences } from './forward-differences.js'
import { luFactor, luSolve } from './linear.js'
import { insideSegment, integrateSteps, type Stepper, startingStep } from './ode.js'
import { type OdeSettings, readProblem, type StiffProblem } from './ode-problem.js'
import type { OdeSolution } from './ode-solution.js'

const NEWTON_ITERATIONS = 7
const NEWTON_TOLERANCE = 0.01

class Esdirk implements Stepper {
  readonly degree = 3
  evaluations = 0
  private readonly k: Float64Array[]
  private readonly base: Float64Array
  readonly stage: Float64Array
  readonly rate: Float64Array
  readonly delta: Float64Array
  readonly jacobian: Float64Array
  private readonly matrix: Float64Array
  private readonly pivots: Int32Array
  /** The step the factored matrix belongs to; 0 when there is none. */
  private factoredFor = 0
  /** True while the Jacobian was evaluated at the present point. */
  private fresh = false
  /** Newton's rate as last measured in this step, as θ/(1 − θ); 1 before that. */
  private contraction = 1
  /** The worst θ measured in this step: a Jacobian that serves badly is renewed. */
  private slowest = 0
  private justRejected = false

  constructor(
    private readonly s: OdeSettings,
    private readonly given: StiffProblem['jacobian'],
  ) {
    const { n } = s
    this.k = Array.from({ length: 6 }, () => new Float64Array(n))
    this.base = new Float64Array(n)
    this.stage = new Float64Array(n)
    this.rate = new Float64Array(n)
    this.delta = new Float64Array(n)
    this.jacobian = new Float64Array(n * n)
    this.matrix = new Float64Array(n * n)
    this.pivots = new Int32Array(n)
  }

  restart(t: number, y: Float64Array): void {
    this.s.derivative(t, y, this.k[0]!)
    this.evaluations++
    this.evaluateJacobian(t, y)
    this.justRejected = false
  }

  guessStep(t: number, y: Float64Array, tEnd: number): number {
    this.evaluations++
    return startingStep(this.s, t, y, this.k[0]!, tEnd, 4)
  }

  private evaluateJacobian(t: number, y: Float64Array): void {
    this.fresh = true
    this.factoredFor = 0
    this.slowest = 0
    if (this.given !== undefined) this.given(t, y, this.jacobian)
    else this.evaluations += forwardDifferences(this.s, t, y, this)
  }

  private factor(h: number): boolean {
    const { n } = this.s
    const { matrix, jacobian } = this
    const hg = h * GAMMA
    for (let i = 0; i < n * n; i++) matrix[i] = -hg * jacobian[i]!
    for (let i = 0; i < n; i++) matrix[i * n + i] = matrix[i * n + i]! + 1
    this.factoredFor = h
    return luFactor(matrix, n, this.pivots) !== 0
  }

  attempt(t: number, y: Float64Array, h: number, tEnd: number, yNew: Float64Array): number {
    if (this.slowest > 0.1 && !this.fresh) this.evaluateJacobian(t, y)
    for (;;) {
      this.slowest = 0
      if (this.factoredFor !== h && !this.factor(h)) return Number.NaN
      const error = this.stages(t, y, h, tEnd, yNew)
      if (!Number.isNaN(error) || this.fresh) return error
      this.evaluateJacobian(t, y)
    }
  }

  /** All stages of one step; NaN when Newton's iteration does not settle. */
  private stages(t: number, y: Float64Array, h: number, tEnd: number, yNew: Float64Array): number {
    const { n, relativeTolerance, absoluteTolerance } = this.s
    const { k, base, stage } = this
    const hg = h * GAMMA
    // A rate from another step says nothing about this one: an old Jacobian would go on being believed.
    this.contraction = 1
    for (let s = 1; s < 6; s++) {
      const row = A[s]!
      const guess = k[s - 1]!
      for (let i = 0; i < n; i++) {
        let sum = 0
        for (let j = 0; j < s; j++) sum += row[j]! * k[j]![i]!
        base[i] = y[i]! + h * sum
        stage[i] = base[i]! + hg * guess[i]!
      }
      if (!this.newton(insideSegment(t + C[s]! * h, tEnd), y, hg)) return Number.NaN
      const ks = k[s]!
      for (let i = 0; i < n; i++) ks[i] = (stage[i]! - base[i]!) / hg
    }
    yNew.set(stage)
    // Not damped by the factored matrix, as is often done: this pair's embedded solution stays bounded for infinitely fast modes
    // (its stability function tends to 0.15), and damping would hide a stage that settled on the wrong branch of a non-linear problem.
    let total = 0
    for (let i = 0; i < n; i++) {
      let sum = 0
      for (let j = 0; j < 6; j++) sum += E[j]! * k[j]![i]!
      const scale = absoluteTolerance[i]! + relativeTolerance * Math.max(Math.abs(y[i]!), Math.abs(yNew[i]!))
      const ratio = sum === 0 ? 0 : (h * sum) / scale
      total += ratio * ratio
    }
    return Math.sqrt(total / n)
  }

  /** Solves stage = base + hγ f(t, stage) with the factored matrix. */
  private newton(t: number, y: Float64Array, hg: number): boolean {
    const { n, derivative, relativeTolerance, absoluteTolerance } = this.s
    const { base, stage, rate, delta } = this
    let previous = 0
    // The rate measured in an earlier stage of this step is trusted only so far: a large first correction always gets a second one.
    let contraction = Math.max(this.contraction, 0.02)
    for (let iteration = 0; iteration < NEWTON_ITERATIONS; iteration++) {
      derivative(t, stage, rate)
      this.evaluations++
      for (let i = 0; i < n; i++) delta[i] = base[i]! + hg * rate[i]! - stage[i]!
      luSolve(this.matrix, n, this.pivots, delta)
      let total = 0
      for (let i = 0; i < n; i++) {
        stage[i] = stage[i]! + delta[i]!
        const ratio = delta[i] === 0 ? 0 : delta[i]! / (absoluteTolerance[i]! + relativeTolerance * Math.abs(y[i]!))
        total += ratio * ratio
      }
      const size = Math.sqrt(total / n)
      if (!Number.isFinite(size)) return false
      if (iteration > 0) {
        const theta = size / previous
        if (theta >= 0.99 && size > NEWTON_TOLERANCE) return false
        contraction = theta < 1 ? theta / (1 - theta) : 1
        this.contraction = contraction
        this.slowest = Math.max(this.slowest, theta)
      }
      if (size === 0 || contraction * size <= NEWTON_TOLERANCE) return true
      previous = size
    }
    return false
  }

  nextFactor(error: number, accepted: boolean): number {
    if (!accepted) {
      this.justRejected = true
      return Number.isNaN(error) ? 0.25 : Math.max(0.2, 0.9 * error ** -0.25)
    }
    const max = this.justRejected ? 1 : 6
    this.justRejected = false
    const factor = Math.min(max, Math.max(0.2, 0.9 * Math.max(error, 1e-8) ** -0.25))
    // Keeping the step keeps the factored matrix.
    return factor > 0.95 && factor < 1.2 ? 1 : factor
  }

  interpolant(y: Float64Array, h: number, yNew: Float64Array, out: Float64Array, offset: number): void {
    cubicInto(out, offset, this.s.n, h, y, yNew, this.k[0]!, this.k[5]!)
  }

  accept(): void {
    const last = this.k[5]!
    this.k[5] = this.k[0]!
    this.k[0] = last
    this.fresh = false
  }
}

/**
 * Solves a stiff initial-value problem: thermal networks, relaxing joints, anything with very different time constants.
 *
 * Singly diagonally implicit Runge-Kutta of order 4 with an embedded order 3, L-stable: fast modes die out instead of
 * ringing, whatever the step. Newton's iteration with a dense Jacobian kept as long as it serves, so meant for up to some twenty
 * states. Interpolant of order 3; located events; exact stops at jumps.
 *
 * @throws NumericError as `solveNonStiff`.
 *
 * Source: C. A. Kennedy, M. H. Carpenter, *Applied Numerical Mathematics* 44 (2003) 139; E. Hairer, G. Wanner, *Solving Ordinary
 * Differential Equations II*, 2nd ed. 1996, sec. IV.8 (Newton's stopping rule).
 */
export function solveStiff(problem: StiffProblem): OdeSolution {
  const settings = readProblem('solveStiff', problem)
  if (settings.n > 200)
    throw new NumericError('solveStiff', 'badArgument', 'the dense solver is meant for up to 200 states', { states: settings.n })
  return integrateSteps('solveStiff', problem, new Esdirk(settings, problem.jacobian))
}
