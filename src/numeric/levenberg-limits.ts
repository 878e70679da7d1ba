import { NumericError } from './error.js'

export function limits(given: ArrayLike<number> | undefined, n: number, otherwise: number, name: string): Float64Array {
  if (given === undefined) return new Float64Array(n).fill(otherwise)
  if (given.length !== n)
    throw new NumericError('fitLeastSquares', 'badArgument', `${name} must have one entry per parameter`, { [name]: given, parameters: n })
  return Float64Array.from(given)
}

/** Solves R x = b in place, R upper triangular in the first n rows of `a`. */
export function solveUpper(a: Float64Array, n: number, b: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!
    for (let c = i + 1; c < n; c++) sum -= a[i * n + c]! * b[c]!
    b[i] = sum / a[i * n + i]!
  }
}
