import { solveInPlace } from '../numeric/index.js'
import type { InverseRequest, InverseResult } from './chain-inverse-request.js'
import type { ChainKernel } from './chain-kernel.js'
import { rotationErrorInto } from './rotation-error.js'

/** Attempts with growing damping before a search counts as stopped. */
const ATTEMPTS = 40
/** A slope of the error this small against its scale is rounding. */
const FLAT_SLOPE = 1e-12
/** A step that leaves more than this part of the squared error is slow: from then on the curvature counts. */
const SLOW_STEP = 0.9

/**
 * Damped least squares with accepted and rejected steps (Levenberg–Marquardt), joints clipped at their limits.
 *
 * A fixed damping sent to a target out of reach runs into a cycle unless it is large enough to be slow everywhere. Here a step is taken only if it
 * lessens the error, so that the search ends at a pose from which no small motion comes nearer. Once it is slow, the equations include the curvature
 * of the tool's path (Newton's method): without it a search for a target out of reach closes in slowly.
 *
 * Source: K. Levenberg, *Quart. Appl. Math.* 2 (1944) 164; D. Marquardt, *SIAM J. Appl. Math.* 11 (1963) 431; S. R. Buss, "Introduction to inverse
 * kinematics with Jacobian transpose, pseudoinverse and damped least squares methods" (2004 survey).
 */
export function dampedInverse(chain: ChainKernel, request: InverseRequest): InverseResult {
  return new DampedSearch(chain, request).run()
}

class DampedSearch {
  private readonly n: number
  private readonly rows: 3 | 6
  private readonly q: Float64Array
  private readonly trial: Float64Array
  private readonly pose = new Float64Array(12)
  private readonly jacobian: Float64Array
  private error = new Float64Array(6)
  private trialError = new Float64Array(6)
  private readonly normal: Float64Array
  private readonly damped: Float64Array
  private readonly step: Float64Array
  private readonly gradient: Float64Array
  private readonly pivots: Int32Array
  private square: number
  private damping = 1e-3
  private slow = false

  constructor(
    private readonly chain: ChainKernel,
    private readonly request: InverseRequest,
  ) {
    const n = chain.joints
    this.n = n
    this.rows = request.rotation === undefined ? 3 : 6
    this.q = Float64Array.from({ length: n }, (_, i) => Math.min(request.highest[i]!, Math.max(request.lowest[i]!, request.seed[i]!)))
    this.trial = new Float64Array(n)
    this.jacobian = new Float64Array(6 * n)
    this.normal = new Float64Array(n * n)
    this.damped = new Float64Array(n * n)
    this.step = new Float64Array(n)
    this.gradient = new Float64Array(n)
    this.pivots = new Int32Array(n)
    this.square = this.errorAt(this.error, this.q)
  }

  run(): InverseResult {
    const { maxIterations, tolerance } = this.request
    if (!Number.isFinite(this.square)) return this.result('notANumber', 0)
    for (let iteration = 0; iteration < maxIterations; iteration++) {
      if (this.square <= tolerance * tolerance) return this.result('reached', iteration)
      if (this.flat() || !this.stepped()) return this.result('localStop', iteration)
    }
    return this.result(this.square <= tolerance * tolerance ? 'reached' : 'iterationLimit', maxIterations)
  }

  /** Weighted error at joint values: place first, then rotation as a length; returns its square. */
  private errorAt(out: Float64Array, values: Float64Array): number {
    const { pose, request } = this
    this.chain.poseInto(pose, 0, values)
    let square = 0
    for (let i = 0; i < 3; i++) out[i] = request.position[i]! - pose[9 + i]!
    if (request.rotation !== undefined) {
      rotationErrorInto(out, request.rotation, pose)
      for (let i = 3; i < 6; i++) out[i] = out[i]! * request.lengthPerRadian
    }
    for (let i = 0; i < this.rows; i++) square += out[i]! * out[i]!
    return square
  }

  /** Row of the error's Jacobian: velocity of the tool first, then its rotation times the length per radian. */
  private row(row: number, column: number): number {
    return row < 3
      ? this.jacobian[(row + 3) * this.n + column]!
      : this.request.lengthPerRadian * this.jacobian[(row - 3) * this.n + column]!
  }

  /** Works out slope and curvature at the present pose; returns whether the error is flat there. */
  private flat(): boolean {
    const { n, q, gradient, normal, error, rows } = this
    const { lowest, highest } = this.request
    this.chain.jacobianInto(this.jacobian, 0, q)
    let slope = 0
    let scale = 0
    for (let i = 0; i < n; i++) {
      let g = 0
      for (let r = 0; r < rows; r++) g += this.row(r, i) * error[r]!
      // A joint at a limit that the step would push further takes no part in it.
      gradient[i] = (q[i]! <= lowest[i]! && g < 0) || (q[i]! >= highest[i]! && g > 0) ? 0 : g
      slope = Math.max(slope, Math.abs(gradient[i]!))
      for (let j = 0; j <= i; j++) {
        let sum = 0
        for (let r = 0; r < rows; r++) sum += this.row(r, i) * this.row(r, j)
        if (i === j) scale = Math.max(scale, sum)
        const bent = this.slow ? sum - this.curvature(j, i) : sum
        normal[i * n + j] = bent
        normal[j * n + i] = bent
      }
    }
    this.scale = scale
    return slope <= FLAT_SLOPE * Math.sqrt(scale * this.square) || scale === 0
  }

  /** The largest diagonal of JᵀJ: what damping is measured against. */
  private scale = 0

  /** Error times the second derivative of the tool's place by joints i ≤ j: the axis of i crossed with the velocity by j. */
  private curvature(i: number, j: number): number {
    const { n, jacobian: J, error } = this
    const [wx, wy, wz] = [J[i]!, J[n + i]!, J[2 * n + i]!]
    const [vx, vy, vz] = [J[3 * n + j]!, J[4 * n + j]!, J[5 * n + j]!]
    return error[0]! * (wy * vz - wz * vy) + error[1]! * (wz * vx - wx * vz) + error[2]! * (wx * vy - wy * vx)
  }

  /** Takes a step that lessens the error, with more and more damping; returns whether there was one. */
  private stepped(): boolean {
    const { q, trial, request } = this
    for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
      if (this.dampedStep()) {
        for (let i = 0; i < this.n; i++) trial[i] = Math.min(request.highest[i]!, Math.max(request.lowest[i]!, q[i]! + this.step[i]!))
        const square = this.errorAt(this.trialError, trial)
        if (square < this.square) {
          q.set(trial)
          ;[this.error, this.trialError] = [this.trialError, this.error]
          this.slow = square > SLOW_STEP * this.square
          this.square = square
          this.damping = Math.max(this.damping / 5, 1e-14)
          return true
        }
      }
      this.damping = Math.min(this.damping * 4, 1e14)
    }
    return false
  }

  /** Solves for the step at the present damping; returns whether it leads downhill. */
  private dampedStep(): boolean {
    const { n, q, damped, step, gradient } = this
    const { lowest, highest } = this.request
    damped.set(this.normal)
    for (let i = 0; i < n; i++) {
      damped[i * (n + 1)]! += this.damping * this.scale
      step[i] = gradient[i]!
      if (gradient[i] !== 0 || (q[i]! > lowest[i]! && q[i]! < highest[i]!)) continue
      for (let j = 0; j < n; j++) {
        damped[i * n + j] = 0
        damped[j * n + i] = 0
      }
      damped[i * (n + 1)] = 1
    }
    if (!solveInPlace(damped, n, this.pivots, step)) return false
    let downhill = 0
    for (let i = 0; i < n; i++) downhill += step[i]! * gradient[i]!
    return downhill > 0
  }

  private result(ended: InverseResult['ended'], iterations: number): InverseResult {
    const size = (from: number) => Math.hypot(this.error[from]!, this.error[from + 1]!, this.error[from + 2]!)
    return {
      ended,
      values: this.q,
      positionError: size(0),
      rotationError: this.rows === 3 ? 0 : size(3) / this.request.lengthPerRadian,
      error: Math.sqrt(this.square),
      iterations,
    }
  }
}
