import { solveInPlace } from '../numeric/index.js'
import type { ChainKernel } from './chain-kernel.js'

/** What a damped inverse is asked for, SI. */
export interface InverseRequest {
  /** Wanted place of the tool's origin in the base. */
  readonly position: ArrayLike<number>
  /** Wanted rotation of the tool, row-major; left out, only the place matters. */
  readonly rotation?: ArrayLike<number> | undefined
  /** Metres that a radian of rotation error counts as. */
  readonly lengthPerRadian: number
  readonly seed: ArrayLike<number>
  /** Lowest and highest of each joint. */
  readonly lowest: ArrayLike<number>
  readonly highest: ArrayLike<number>
  /** A position error of this size (and a rotation error that counts as it) is reached. */
  readonly tolerance: number
  readonly maxIterations: number
}

/** Where a damped inverse ended. */
export interface InverseResult {
  /** `reached`; `settled` where no small motion comes nearer (out of reach, or a local stop against limits); or out of iterations. */
  readonly ended: 'reached' | 'settled' | 'iterationLimit'
  readonly values: Float64Array
  readonly positionError: number
  readonly rotationError: number
  readonly iterations: number
}

/**
 * Damped least squares with accepted and rejected steps (Levenberg–Marquardt), joints clipped at their limits.
 *
 * A fixed damping sent to a target out of reach runs into a cycle unless it is large enough to be slow everywhere; here a step is only
 * taken if it lessens the error, so the search settles on the nearest pose it can find.
 *
 * Source: K. Levenberg, *Quart. Appl. Math.* 2 (1944) 164; D. Marquardt, *SIAM J. Appl. Math.* 11 (1963) 431; S. R. Buss, "Introduction to inverse
 * kinematics with Jacobian transpose, pseudoinverse and damped least squares methods" (2004 survey).
 */
export function dampedInverse(chain: ChainKernel, request: InverseRequest): InverseResult {
  const n = chain.joints
  const { lowest, highest, rotation, tolerance } = request
  const rows = rotation === undefined ? 3 : 6
  const q = Float64Array.from({ length: n }, (_, i) => Math.min(highest[i]!, Math.max(lowest[i]!, request.seed[i]!)))
  const trial = new Float64Array(n)
  const pose = new Float64Array(12)
  const J = new Float64Array(6 * n)
  const error = new Float64Array(6)
  const trialError = new Float64Array(6)
  const normal = new Float64Array(n * n)
  const step = new Float64Array(n)
  const gradient = new Float64Array(n)
  const pivots = new Int32Array(n)

  /** Weighted error at joint values: place first, then rotation; returns its square. */
  const errorAt = (out: Float64Array, values: Float64Array): number => {
    chain.poseInto(pose, 0, values)
    let square = 0
    for (let i = 0; i < 3; i++) out[i] = request.position[i]! - pose[9 + i]!
    if (rotation !== undefined) {
      rotationErrorInto(out, rotation, pose)
      for (let i = 3; i < 6; i++) out[i] = out[i]! * request.lengthPerRadian
    }
    for (let i = 0; i < rows; i++) square += out[i]! * out[i]!
    return square
  }
  const size = (from: number) => Math.hypot(error[from]!, error[from + 1]!, error[from + 2]!)
  const result = (ended: InverseResult['ended'], iterations: number): InverseResult => ({
    ended,
    values: q,
    positionError: size(0),
    rotationError: rotation === undefined ? 0 : size(3) / request.lengthPerRadian,
    iterations,
  })

  let square = errorAt(error, q)
  let damping = 1e-3
  for (let iteration = 0; iteration < request.maxIterations; iteration++) {
    if (square <= tolerance * tolerance) return result('reached', iteration)
    chain.jacobianInto(J, 0, q)
    let scale = 0
    let slope = 0
    for (let i = 0; i < n; i++) {
      let g = 0
      for (let r = 0; r < rows; r++) g += weighted(J, n, r, i, request.lengthPerRadian) * error[r]!
      // A joint at a limit that the step would push further is left out of it.
      gradient[i] = (q[i]! <= lowest[i]! && g < 0) || (q[i]! >= highest[i]! && g > 0) ? 0 : g
      slope = Math.max(slope, Math.abs(gradient[i]!))
    }
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) {
        let sum = 0
        for (let r = 0; r < rows; r++) sum += weighted(J, n, r, i, request.lengthPerRadian) * weighted(J, n, r, j, request.lengthPerRadian)
        normal[i * n + j] = sum
        normal[j * n + i] = sum
      }
      scale = Math.max(scale, normal[i * (n + 1)]!)
    }
    if (slope <= 1e-12 * Math.sqrt(scale * square) || scale === 0) return result('settled', iteration)
    let accepted = false
    for (let attempt = 0; attempt < 40 && !accepted; attempt++) {
      const a = Float64Array.from(normal)
      for (let i = 0; i < n; i++) {
        a[i * (n + 1)]! += damping * scale
        step[i] = gradient[i]!
        if (gradient[i] === 0 && (q[i]! <= lowest[i]! || q[i]! >= highest[i]!)) {
          for (let j = 0; j < n; j++) {
            a[i * n + j] = 0
            a[j * n + i] = 0
          }
          a[i * (n + 1)] = 1
        }
      }
      if (solveInPlace(a, n, pivots, step)) {
        for (let i = 0; i < n; i++) trial[i] = Math.min(highest[i]!, Math.max(lowest[i]!, q[i]! + step[i]!))
        const trialSquare = errorAt(trialError, trial)
        if (trialSquare < square) {
          q.set(trial)
          error.set(trialError)
          square = trialSquare
          damping = Math.max(damping / 5, 1e-14)
          accepted = true
          continue
        }
      }
      damping = Math.min(damping * 4, 1e14)
    }
    if (!accepted) return result(square <= tolerance * tolerance ? 'reached' : 'settled', iteration)
  }
  return result(square <= tolerance * tolerance ? 'reached' : 'iterationLimit', request.maxIterations)
}

/** Rows of the error's Jacobian: velocity of the tool first, then its rotation times the length per radian. */
const weighted = (J: Float64Array, n: number, row: number, column: number, lengthPerRadian: number): number =>
  row < 3 ? J[(row + 3) * n + column]! : lengthPerRadian * J[(row - 3) * n + column]!

/** The rotation that is missing, as axis times angle in base axes, into out[3..5]. */
function rotationErrorInto(out: Float64Array, wanted: ArrayLike<number>, pose: Float64Array): void {
  // E = W Rᵀ.
  const E = (i: number, j: number) =>
    wanted[3 * i]! * pose[3 * j]! + wanted[3 * i + 1]! * pose[3 * j + 1]! + wanted[3 * i + 2]! * pose[3 * j + 2]!
  const x = E(2, 1) - E(1, 2)
  const y = E(0, 2) - E(2, 0)
  const z = E(1, 0) - E(0, 1)
  const trace = E(0, 0) + E(1, 1) + E(2, 2)
  const sine = Math.hypot(x, y, z)
  const angle = Math.atan2(sine, trace - 1)
  if (sine > 1e-9) {
    out[3] = (x / sine) * angle
    out[4] = (y / sine) * angle
    out[5] = (z / sine) * angle
  } else if (trace > 0) {
    out[3] = x / 2
    out[4] = y / 2
    out[5] = z / 2
  } else {
    // Half a turn: the axis is the largest column of E + 1.
    const i = [0, 1, 2].reduce((best, k) => (E(k, k) > E(best, best) ? k : best), 0)
    const column = [0, 1, 2].map((k) => E(k, i) + (k === i ? 1 : 0))
    const length = Math.hypot(...column)
    for (let k = 0; k < 3; k++) out[3 + k] = (column[k]! / length) * Math.PI
  }
}
