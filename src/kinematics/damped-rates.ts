import { solveDefiniteInPlace } from '../numeric/index.js'

/** The chain's Jacobian (6 rows of `joints`) and buffers of 36 and 6 numbers that are overwritten. */
interface Buffers {
  readonly jacobian: Float64Array
  readonly joints: number
  readonly task: Float64Array
  readonly right: Float64Array
}

/** Turns the rows of angular rate into lengths, where they count (a twist of 6 numbers). */
export function weighRotation(J: Float64Array, joints: number, rows: number, lengthPerRadian: number): void {
  if (rows === 3) return
  for (let i = 0; i < 3 * joints; i++) J[i] = lengthPerRadian * J[i]!
}

/**
 * Damped least squares, q̇ = Jᵀ (J Jᵀ + λ² 1)⁻¹ (v − J q̇₀) + q̇₀, from the weighed Jacobian. Returns false, and writes nothing, where the equations have
 * no solution or a number is not a number. SI numbers.
 */
export function dampedRatesInto(
  out: Float64Array,
  offset: number,
  { jacobian: J, joints: n, task, right }: Buffers,
  twist: ArrayLike<number>,
  damping: number,
  lengthPerRadian: number,
  wish: ArrayLike<number> | undefined,
): boolean {
  const rows = twist.length === 3 ? 3 : 6
  const first = 6 - rows
  for (let i = 0; i < rows; i++) {
    const at = (first + i) * n
    let rest = twist[i]! * (first + i < 3 ? lengthPerRadian : 1)
    if (wish !== undefined) for (let k = 0; k < n; k++) rest -= J[at + k]! * wish[k]!
    right[i] = rest
    for (let j = i; j < rows; j++) {
      let sum = i === j ? damping * damping : 0
      for (let k = 0; k < n; k++) sum += J[at + k]! * J[(first + j) * n + k]!
      task[i * rows + j] = sum
    }
  }
  if (!solveDefiniteInPlace(task, rows, right)) return false
  let check = 0
  for (let i = 0; i < rows; i++) check += right[i]!
  if (!Number.isFinite(check)) return false
  for (let k = 0; k < n; k++) {
    let sum = wish === undefined ? 0 : wish[k]!
    for (let i = 0; i < rows; i++) sum += J[(first + i) * n + k]! * right[i]!
    out[offset + k] = sum
  }
  return true
}
