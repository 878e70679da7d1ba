/**
 * Small dense systems solved in the caller's own buffers: nothing is allocated, for loops that solve thousands of them.
 *
 * Matrices are row-major in a `Float64Array` of n². Meant for n up to about 20; for large or rare problems, decompositions and
 * least squares use `ml-matrix`. Source: any numerical linear algebra text, "LU decomposition with partial pivoting".
 */

/**
 * Replaces a matrix by its LU factors with partial pivoting.
 *
 * @param a n×n matrix, row-major; overwritten by its factors (unit lower triangle below the diagonal).
 * @param n order.
 * @param pivots receives the row exchanges (length n), needed by `luSolve`.
 * @returns the sign of the permutation, or 0 when a pivot is zero or not finite: the matrix is singular and the factors are of no use.
 */
export function luFactor(a: Float64Array, n: number, pivots: Int32Array): -1 | 0 | 1 {
  let sign: -1 | 1 = 1
  for (let k = 0; k < n; k++) {
    const rowK = k * n
    let row = k
    let largest = Math.abs(a[rowK + k]!)
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(a[i * n + k]!)
      if (size > largest) {
        largest = size
        row = i
      }
    }
    if (!(largest > 0 && largest < Infinity)) return 0
    pivots[k] = row
    if (row !== k) {
      sign = sign === 1 ? -1 : 1
      const other = row * n
      for (let j = 0; j < n; j++) {
        const held = a[rowK + j]!
        a[rowK + j] = a[other + j]!
        a[other + j] = held
      }
    }
    const pivot = a[rowK + k]!
    for (let i = k + 1; i < n; i++) {
      const rowI = i * n
      const factor = a[rowI + k]! / pivot
      a[rowI + k] = factor
      if (factor !== 0) for (let j = k + 1; j < n; j++) a[rowI + j] = a[rowI + j]! - factor * a[rowK + j]!
    }
  }
  return sign
}

/**
 * Solves A x = b from the factors of `luFactor`.
 *
 * @param b right-hand side; overwritten by the solution.
 * @param offset where the right-hand side begins in `b`.
 */
export function luSolve(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array, offset = 0): void {
  for (let k = 0; k < n; k++) {
    const row = pivots[k]!
    if (row !== k) {
      const held = b[offset + k]!
      b[offset + k] = b[offset + row]!
      b[offset + row] = held
    }
  }
  for (let i = 1; i < n; i++) {
    let sum = b[offset + i]!
    const rowI = i * n
    for (let j = 0; j < i; j++) sum -= a[rowI + j]! * b[offset + j]!
    b[offset + i] = sum
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[offset + i]!
    const rowI = i * n
    for (let j = i + 1; j < n; j++) sum -= a[rowI + j]! * b[offset + j]!
    b[offset + i] = sum / a[rowI + i]!
  }
}

/**
 * Solves A x = b once, destroying both: `a` becomes its factors, `b` the solution.
 *
 * @returns false when the matrix is singular (then `b` is untouched).
 */
export function solveInPlace(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array): boolean {
  if (luFactor(a, n, pivots) === 0) return false
  luSolve(a, n, pivots, b)
  return true
}

/**
 * Solves A x = b once for a symmetric positive definite matrix, in half the work of `solveInPlace` and destroying both. Source: any numerical
 * linear algebra text, "LDL factors".
 *
 * @param a n×n matrix, row-major, of which the upper triangle is read; overwritten.
 * @param b right-hand side; overwritten by the solution.
 * @returns false when the matrix is not positive definite (then `b` is untouched).
 */
export function solveDefiniteInPlace(a: Float64Array, n: number, b: Float64Array): boolean {
  for (let k = 0; k < n; k++) {
    const pivot = a[k * n + k]!
    if (!(pivot > 0 && pivot < Infinity)) return false
    const rowK = k * n
    for (let i = k + 1; i < n; i++) {
      const rowI = i * n
      const factor = a[rowK + i]! / pivot
      for (let j = i; j < n; j++) a[rowI + j] = a[rowI + j]! - factor * a[rowK + j]!
    }
  }
  // Row k beyond the diagonal still holds the factors times their pivot.
  for (let k = 0; k < n; k++) {
    const part = b[k]! / a[k * n + k]!
    for (let i = k + 1; i < n; i++) b[i] = b[i]! - a[k * n + i]! * part
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = b[k]!
    for (let i = k + 1; i < n; i++) sum -= a[k * n + i]! * b[i]!
    b[k] = sum / a[k * n + k]!
  }
  return true
}
