/** Algebra of 3×3 matrices, row-major, for the leg: written out where a general routine costs ten times as much. */

/** out = a b (9 numbers). `out` may not be an operand. */
export function multiply3(out: Float64Array, a: ArrayLike<number>, b: ArrayLike<number>): void {
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) out[3 * i + j] = a[3 * i]! * b[j]! + a[3 * i + 1]! * b[3 + j]! + a[3 * i + 2]! * b[6 + j]!
}

/** out = aᵀ (9 numbers). `out` may not be the operand. */
export function transpose3(out: Float64Array, a: ArrayLike<number>): void {
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) out[3 * i + j] = a[3 * j + i]!
}

/** Determinant. */
export const determinant3 = (a: ArrayLike<number>): number =>
  a[0]! * (a[4]! * a[8]! - a[5]! * a[7]!) - a[1]! * (a[3]! * a[8]! - a[5]! * a[6]!) + a[2]! * (a[3]! * a[7]! - a[4]! * a[6]!)

/** Inverse by the adjugate (9 numbers); returns false, writing nothing, when the determinant is zero to rounding. */
export function invert3(out: Float64Array, a: ArrayLike<number>): boolean {
  const determinant = determinant3(a)
  let size = 0
  for (let i = 0; i < 9; i++) size = Math.max(size, Math.abs(a[i]!))
  if (!(Math.abs(determinant) > 1e-14 * size ** 3)) return false
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const i1 = (j + 1) % 3
      const i2 = (j + 2) % 3
      const j1 = (i + 1) % 3
      const j2 = (i + 2) % 3
      out[3 * i + j] = (a[3 * i1 + j1]! * a[3 * i2 + j2]! - a[3 * i1 + j2]! * a[3 * i2 + j1]!) / determinant
    }
  }
  return true
}

/** Inverse of a positive definite matrix, scaled by its diagonal so that stiff and soft joints may stand side by side; returns false as `invert3` does. */
export function invertPositive3(out: Float64Array, a: ArrayLike<number>): boolean {
  const scaled = new Float64Array(9)
  const size = (i: number) => Math.sqrt(a[4 * i]!)
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) scaled[3 * i + j] = a[3 * i + j]! / (size(i) * size(j))
  if (!invert3(out, scaled)) return false
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) out[3 * i + j] = out[3 * i + j]! / (size(i) * size(j))
  return true
}

/** a × b. */
export const cross3 = (a: ArrayLike<number>, b: ArrayLike<number>): [number, number, number] => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
]

/** a · b. */
export const dot3 = (a: ArrayLike<number>, b: ArrayLike<number>): number => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!

/** uᵀ a u. */
export function quadratic3(a: ArrayLike<number>, u: ArrayLike<number>): number {
  let sum = 0
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) sum += u[i]! * a[3 * i + j]! * u[j]!
  return sum
}

/** a u (3 numbers). */
export function apply3(a: ArrayLike<number>, u: ArrayLike<number>): [number, number, number] {
  return [
    a[0]! * u[0]! + a[1]! * u[1]! + a[2]! * u[2]!,
    a[3]! * u[0]! + a[4]! * u[1]! + a[5]! * u[2]!,
    a[6]! * u[0]! + a[7]! * u[1]! + a[8]! * u[2]!,
  ]
}

/** The vector over its length; `undefined` for a vector of no length. */
export function unit3(u: ArrayLike<number>): [number, number, number] | undefined {
  const length = Math.hypot(u[0]!, u[1]!, u[2]!)
  return length > 0 ? [u[0]! / length, u[1]! / length, u[2]! / length] : undefined
}
