/**
 * A symmetric positive definite matrix with a band, for the cells of a plate: only the lower band is kept, row by row.
 *
 * Ours because ml-matrix has no banded matrices.
 */
export class BandedMatrix {
  private readonly rows: Float64Array
  private readonly stride: number

  constructor(
    readonly size: number,
    /** How far from the diagonal entries may stand. */
    readonly band: number,
    rows?: Float64Array,
  ) {
    this.stride = band + 1
    this.rows = rows ?? new Float64Array(size * this.stride)
  }

  copy(): BandedMatrix {
    return new BandedMatrix(this.size, this.band, this.rows.slice())
  }

  addDiagonal(i: number, value: number): void {
    const at = i * this.stride + this.band
    this.rows[at] = this.rows[at]! + value
  }

  /** Adds a conductance between two cells. */
  join(i: number, j: number, conductance: number): void {
    this.addDiagonal(i, conductance)
    this.addDiagonal(j, conductance)
    const [low, high] = i < j ? [i, j] : [j, i]
    const at = high * this.stride + this.band - (high - low)
    this.rows[at] = this.rows[at]! - conductance
  }

  times(x: Float64Array): Float64Array {
    const { size, band, stride, rows } = this
    const y = new Float64Array(size)
    for (let i = 0; i < size; i++) {
      for (let j = Math.max(0, i - band); j <= i; j++) {
        const entry = rows[i * stride + band - (i - j)]!
        y[i] = y[i]! + entry * x[j]!
        if (j < i) y[j] = y[j]! + entry * x[i]!
      }
    }
    return y
  }

  /** Cholesky's factor in place. Source: any numerical linear algebra text, "band Cholesky". */
  factor(): void {
    const { size, band, stride, rows } = this
    for (let i = 0; i < size; i++) {
      for (let j = Math.max(0, i - band); j <= i; j++) {
        let sum = rows[i * stride + band - (i - j)]!
        for (let k = Math.max(0, i - band, j - band); k < j; k++)
          sum -= rows[i * stride + band - (i - k)]! * rows[j * stride + band - (j - k)]!
        rows[i * stride + band - (i - j)] = j === i ? Math.sqrt(sum) : sum / rows[j * stride + band]!
      }
    }
  }

  /** Solves with the factor. */
  solve(right: Float64Array): Float64Array {
    const { size, band, stride, rows } = this
    const x = Float64Array.from(right)
    for (let i = 0; i < size; i++) {
      let sum = x[i]!
      for (let k = Math.max(0, i - band); k < i; k++) sum -= rows[i * stride + band - (i - k)]! * x[k]!
      x[i] = sum / rows[i * stride + band]!
    }
    for (let i = size - 1; i >= 0; i--) {
      const value = x[i]! / rows[i * stride + band]!
      x[i] = value
      for (let k = Math.max(0, i - band); k < i; k++) x[k] = x[k]! - rows[i * stride + band - (i - k)]! * value
    }
    return x
  }
}
