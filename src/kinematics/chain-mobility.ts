import { luFactor, luSolve, singularValues } from '../numeric/index.js'
import type { ChainKernel } from './chain-kernel.js'

/** Mobility of the tool's origin, J M⁻¹ Jᵀ, row-major 3 × 3; `undefined` where a joint moves no mass. */
export function mobilityOf(chain: ChainKernel, q: Float64Array): Float64Array | undefined {
  const n = chain.joints
  const M = new Float64Array(n * n)
  const J = new Float64Array(6 * n)
  const pivots = new Int32Array(n)
  const column = new Float64Array(n)
  const mobility = new Float64Array(9)
  chain.massMatrixInto(M, 0, q)
  chain.jacobianInto(J, 0, q)
  if (luFactor(M, n, pivots) === 0) return undefined
  for (let k = 0; k < 3; k++) {
    for (let i = 0; i < n; i++) column[i] = J[(3 + k) * n + i]!
    luSolve(M, n, pivots, column)
    for (let row = 0; row < 3; row++) {
      let sum = 0
      for (let i = 0; i < n; i++) sum += J[(3 + row) * n + i]! * column[i]!
      mobility[3 * row + k] = sum
    }
  }
  return mobility
}

/** Singular values of three rows of a Jacobian of n columns, from row `first`; the largest first. */
export function spreadOf(J: Float64Array, n: number, first: number): number[] {
  // Three rows and n columns, filled up with zeros to a square.
  const size = Math.max(3, n)
  const square = new Float64Array(size * size)
  for (let i = 0; i < 3; i++) for (let j = 0; j < n; j++) square[j * size + i] = J[(first + i) * n + j]!
  return Array.from(singularValues(square, size).values)
    .sort((a, b) => b - a)
    .slice(0, Math.min(3, n))
}
