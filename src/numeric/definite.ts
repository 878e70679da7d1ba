/** Factors of symmetric matrices that are positive definite, or semidefinite such as correlations of inputs that depend on each other. */

/** What a pivot of zero may leave below it, by rounding. */
const LEFT_BELOW = 1e-7

/**
 * Lower factor L of L·Lᵀ, row-major, or nothing where the matrix is not positive definite.
 *
 * @param a n×n matrix, of which the lower triangle is read.
 * @param semidefinite a pivot no further than this from zero counts as zero, with a column of zeros. Default: none may be zero.
 *
 * Source: any numerical linear algebra text, "Cholesky decomposition".
 */
export function choleskyFactor(a: ArrayLike<number>, n: number, semidefinite?: number): Float64Array | undefined {
  const lower = new Float64Array(n * n)
  for (let j = 0; j < n; j++) {
    let rest = a[j * n + j]!
    for (let k = 0; k < j; k++) rest -= lower[j * n + k]! ** 2
    const definite = rest > (semidefinite ?? 0)
    if (!definite && !(semidefinite !== undefined && rest >= -semidefinite)) return undefined
    const pivot = definite ? Math.sqrt(rest) : 0
    lower[j * n + j] = pivot
    for (let i = j + 1; i < n; i++) {
      let sum = a[i * n + j]!
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!
      if (!definite && Math.abs(sum) > LEFT_BELOW) return undefined
      lower[i * n + j] = definite ? sum / pivot : 0
    }
  }
  return lower
}

/** Solves L z = b for a lower factor; 0 where its diagonal is zero and the entry follows from those before. */
export function solveLower(lower: Float64Array, n: number, b: ArrayLike<number>): Float64Array {
  const z = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    let sum = b[i]!
    for (let k = 0; k < i; k++) sum -= lower[i * n + k]! * z[k]!
    const pivot = lower[i * n + i]!
    z[i] = pivot > 0 ? sum / pivot : 0
  }
  return z
}

/** Solves Lᵀ x = z for the lower factor of a positive definite matrix. */
export function solveLowerTransposed(lower: Float64Array, n: number, z: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(z)
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i] = x[i]! - lower[k * n + i]! * x[k]!
    x[i] = x[i]! / lower[i * n + i]!
  }
  return x
}
