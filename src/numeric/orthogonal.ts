/** Orthogonal factorisations of small matrices, row-major: what a least-squares fit needs, without forming AᵀA. */

/**
 * Reduces an m×n matrix (m ≥ n) to upper triangular form by reflections, in place; the part below the diagonal is set to zero.
 *
 * @param b a column the same reflections are applied to (Qᵀb).
 *
 * Source: A. S. Householder, *J. ACM* 5 (1958) 339; any numerical linear algebra text.
 */
export function householder(a: Float64Array, m: number, n: number, b?: Float64Array): void {
  for (let k = 0; k < n && k < m - 1; k++) {
    let largest = 0
    for (let i = k; i < m; i++) largest = Math.max(largest, Math.abs(a[i * n + k]!))
    if (largest === 0) continue
    // In units of the largest entry, squares neither over- nor underflow.
    let total = 0
    for (let i = k; i < m; i++) {
      const entry = a[i * n + k]! / largest
      a[i * n + k] = entry
      total += entry * entry
    }
    const pivot = a[k * n + k]!
    const norm = (pivot > 0 ? -1 : 1) * Math.sqrt(total)
    // The reflection's vector is the column with its head changed; beta is half its squared length.
    const head = pivot - norm
    const beta = -norm * head
    a[k * n + k] = head
    for (let j = k + 1; j < n; j++) {
      let sum = 0
      for (let i = k; i < m; i++) sum += a[i * n + k]! * a[i * n + j]!
      const factor = sum / beta
      for (let i = k; i < m; i++) a[i * n + j] = a[i * n + j]! - factor * a[i * n + k]!
    }
    if (b !== undefined) {
      let sum = 0
      for (let i = k; i < m; i++) sum += a[i * n + k]! * b[i]!
      const factor = sum / beta
      for (let i = k; i < m; i++) b[i] = b[i]! - factor * a[i * n + k]!
    }
    a[k * n + k] = norm * largest
    for (let i = k + 1; i < m; i++) a[i * n + k] = 0
  }
}

/** Singular values, and the right singular vectors in the columns of `vectors`. */
export interface SingularValues {
  /** In no particular order, column by column of `vectors`. */
  readonly values: Float64Array
  /** Right singular vectors, n×n row-major, one a column. */
  readonly vectors: Float64Array
}

/**
 * Singular values and right vectors of a square matrix by one-sided Jacobi rotations: small singular values come out with high relative accuracy.
 *
 * @param upper true when only the upper triangle of `a` is to be read.
 *
 * Source: M. R. Hestenes, *J. SIAM* 6 (1958) 51; J. Demmel, K. Veselić, *SIAM J. Matrix Anal. Appl.* 13 (1992) 1204.
 */
export function singularValues(a: Float64Array, n: number, upper = false): SingularValues {
  const u = Float64Array.from(a)
  if (upper) for (let i = 1; i < n; i++) u.fill(0, i * n, i * n + i)
  const vectors = new Float64Array(n * n)
  for (let i = 0; i < n; i++) vectors[i * n + i] = 1
  for (let sweep = 0; sweep < 60; sweep++) {
    let rotated = false
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) {
        let alpha = 0
        let beta = 0
        let gamma = 0
        for (let i = 0; i < n; i++) {
          const x = u[i * n + p]!
          const y = u[i * n + q]!
          alpha += x * x
          beta += y * y
          gamma += x * y
        }
        if (Math.abs(gamma) <= 1e-16 * Math.sqrt(alpha * beta) || gamma === 0) continue
        rotated = true
        const zeta = (beta - alpha) / (2 * gamma)
        const t = (zeta >= 0 ? 1 : -1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta))
        const c = 1 / Math.sqrt(1 + t * t)
        const s = c * t
        rotate(u, n, p, q, c, s)
        rotate(vectors, n, p, q, c, s)
      }
    }
    if (!rotated) break
  }
  const values = new Float64Array(n)
  for (let j = 0; j < n; j++) {
    let total = 0
    for (let i = 0; i < n; i++) total += u[i * n + j]! ** 2
    values[j] = Math.sqrt(total)
  }
  return { values, vectors }
}

function rotate(a: Float64Array, n: number, p: number, q: number, c: number, s: number): void {
  for (let i = 0; i < n; i++) {
    const x = a[i * n + p]!
    const y = a[i * n + q]!
    a[i * n + p] = c * x - s * y
    a[i * n + q] = s * x + c * y
  }
}
