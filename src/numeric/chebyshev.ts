/**
 * The sum of a Chebyshev expansion at `x` from −1 to 1 (Clenshaw's recurrence).
 *
 * Source: C. W. Clenshaw, *MTAC* 9 (1955) 118.
 */
export function chebyshev(coefficients: readonly number[], x: number): number {
  const twice = 2 * x
  let b0 = 0
  let b1 = 0
  for (let k = coefficients.length - 1; k > 0; k--) {
    const b2 = b1
    b1 = b0
    b0 = twice * b1 - b2 + coefficients[k]!
  }
  return x * b0 - b1 + coefficients[0]!
}
