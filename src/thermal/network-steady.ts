import { luFactor, luSolve } from '../numeric/index.js'
import { imbalance, type NetworkNumbers, slopes, temperaturesAt } from './network-numbers.js'

/** A steady state in numbers. */
export interface SteadyNumbers {
  readonly state: 'steady' | 'runaway'
  /** Free nodes, then fixed ones; where it was left in a runaway. */
  readonly T: Float64Array
  /** Largest imbalance left, watts. */
  readonly residual: number
}

const NEWTON_STEPS = 40
const PSEUDO_TRANSIENT_STEPS = 2000
/** A Newton step changes no temperature by more than this. */
const MAX_STEP = 60
/** A step of the slow path changes no temperature by more than this. */
const SMALL_STEP = 15

const balanced = (worst: number, released: number) => worst <= 1e-9 + 1e-9 * released

/**
 * The stable steady state that is reached from cold.
 *
 * Newton's method first. Its answer counts only if small disturbances die out there and at every state on the way; otherwise the path of slow heating is
 * followed by implicit steps that never pass the balance, so that an upper, unstable or false balance cannot be taken for the answer.
 */
export function steadyNumbers(n: NetworkNumbers, start?: Float64Array): SteadyNumbers {
  const size = n.names.length
  const coldest = Math.min(...n.fixed)
  const T = start === undefined ? temperaturesAt(n, Math.max(...n.fixed) + 10) : Float64Array.from(start)
  const residual = new Float64Array(size)
  const matrix = new Float64Array(size * size)
  const factors = new Float64Array(size * size)
  const pivots = new Int32Array(size)
  for (let k = 0; k < NEWTON_STEPS; k++) {
    const released = imbalance(n, T, residual)
    const worst = largest(residual)
    slopes(n, T, matrix)
    if (!isStable(matrix, factors, size)) break
    if (balanced(worst, released)) return { state: 'steady', T, residual: worst }
    for (let i = 0; i < size * size; i++) factors[i] = -matrix[i]!
    if (luFactor(factors, size, pivots) === 0) break
    luSolve(factors, size, pivots, residual)
    const scale = Math.min(1, MAX_STEP / largest(residual))
    let bad = false
    for (let i = 0; i < size; i++) {
      T[i] = T[i]! + scale * residual[i]!
      if (!(T[i]! < n.ceiling && T[i]! > coldest - 400)) bad = true
    }
    if (bad) break
  }
  return pseudoTransient(n, temperaturesAt(n, coldest), residual, matrix, factors, pivots)
}

const largest = (values: Float64Array): number => {
  let max = 0
  for (const value of values) max = Math.max(max, Math.abs(value))
  return max
}

/** Whether small disturbances die out: all pivots of the negative slopes are positive (they form an M-matrix then). */
export function isStable(slope: Float64Array, work: Float64Array, size: number): boolean {
  for (let i = 0; i < size * size; i++) work[i] = -slope[i]!
  for (let k = 0; k < size; k++) {
    const pivot = work[k * size + k]!
    if (!(pivot > 0)) return false
    for (let i = k + 1; i < size; i++) {
      const factor = work[i * size + k]! / pivot
      if (factor !== 0) for (let j = k; j < size; j++) work[i * size + j] = work[i * size + j]! - factor * work[k * size + j]!
    }
  }
  return true
}

/** From cold every net heat is positive until the balance, and every node warms: where one is not, the step went past it. */
function overshoots(net: Float64Array, change: Float64Array, size: number, slack: number): boolean {
  for (let i = 0; i < size; i++) if (net[i]! < -slack || !(change[i]! > -1e-9)) return true
  return false
}

/** Slow heating from the coldest fixed temperature by linearly implicit steps, each node with a capacity of 1 J/K. */
function pseudoTransient(
  n: NetworkNumbers,
  T: Float64Array,
  residual: Float64Array,
  matrix: Float64Array,
  factors: Float64Array,
  pivots: Int32Array,
): SteadyNumbers {
  const size = n.names.length
  const trial = Float64Array.from(T)
  const change = new Float64Array(size)
  const next = new Float64Array(size)
  let released = imbalance(n, T, residual)
  let dt = 1
  for (let k = 0; k < PSEUDO_TRANSIENT_STEPS; k++) {
    const worst = largest(residual)
    slopes(n, T, matrix)
    if (balanced(worst, released)) return { state: isStable(matrix, factors, size) ? 'steady' : 'runaway', T, residual: worst }
    for (let i = 0; i < size * size; i++) factors[i] = -matrix[i]!
    for (let i = 0; i < size; i++) factors[i * size + i] = factors[i * size + i]! + 1 / dt
    change.set(residual)
    const solved = luFactor(factors, size, pivots) !== 0
    if (solved) luSolve(factors, size, pivots, change)
    let good = solved && largest(change) <= SMALL_STEP
    if (good) {
      for (let i = 0; i < size; i++) trial[i] = T[i]! + change[i]!
      const after = imbalance(n, trial, next)
      good = !overshoots(next, change, size, 1e-9 + 1e-9 * after)
      if (good || dt < 1e-6) {
        T.set(trial)
        residual.set(next)
        released = after
        if (largest(T) > n.ceiling) return { state: 'runaway', T, residual: largest(residual) }
      }
    }
    dt = good ? Math.min(1e12, dt * 3) : dt * 0.25
    if (dt < 1e-9) dt = 1e-6
  }
  return { state: 'runaway', T, residual: largest(residual) }
}
