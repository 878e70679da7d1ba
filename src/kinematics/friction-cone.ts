import { solveDefiniteInPlace } from '../numeric/index.js'

/** The concave function wᵀ y − ½ |P(Gᵀ y)|² whose slope is w − G f; writes f, and the derivative of P as three rows a foot. */
export function dual(
  columns: readonly (readonly number[])[],
  w: Float64Array,
  y: Float64Array,
  friction: number,
  f: Float64Array,
  slope: Float64Array,
): number {
  let value = 0
  for (let k = 0; k < 6; k++) value += w[k]! * y[k]!
  for (let i = 0; i < f.length; i += 3) {
    for (let k = 0; k < 3; k++) f[i + k] = columns[i + k]!.reduce((sum, x, r) => sum + x * y[r]!, 0)
    projectOnCone(f, i, friction, slope)
    value -= 0.5 * (f[i]! ** 2 + f[i + 1]! ** 2 + f[i + 2]! ** 2)
  }
  return value
}

/** Projects two tangential and a normal force at `at` on the friction cone, and writes the derivative (9 numbers at 3 × `at`). */
function projectOnCone(f: Float64Array, at: number, friction: number, slope: Float64Array): void {
  const [tx, ty, n] = [f[at]!, f[at + 1]!, f[at + 2]!]
  const t = Math.hypot(tx, ty)
  const D = slope.subarray(3 * at, 3 * at + 9)
  D.fill(0)
  if (t <= friction * n) {
    D[0] = D[4] = D[8] = 1
    return
  }
  if (friction * t <= -n) {
    f.fill(0, at, at + 3)
    return
  }
  const [ux, uy] = [tx / t, ty / t]
  const c = 1 / (1 + friction * friction)
  const normal = c * (n + friction * t)
  f[at] = friction * normal * ux
  f[at + 1] = friction * normal * uy
  f[at + 2] = normal
  const along = friction * friction * c
  const across = (friction * normal) / t
  D[0] = along * ux * ux + across * uy * uy
  D[1] = D[3] = (along - across) * ux * uy
  D[4] = along * uy * uy + across * ux * ux
  D[2] = D[6] = friction * c * ux
  D[5] = D[7] = friction * c * uy
  D[8] = c
}

/** Solves G P′ Gᵀ Δy = rest, with a little damping for directions that no foot answers. */
export function newtonStep(columns: readonly (readonly number[])[], slope: Float64Array, rest: Float64Array): Float64Array | undefined {
  const H = new Float64Array(36)
  for (let i = 0; i < columns.length; i += 3)
    for (let a = 0; a < 3; a++)
      for (let b = 0; b < 3; b++) {
        const weight = slope[3 * i + 3 * a + b]!
        if (weight === 0) continue
        for (let r = 0; r < 6; r++) for (let s = 0; s < 6; s++) H[6 * r + s]! += weight * columns[i + a]![r]! * columns[i + b]![s]!
      }
  const largest = Math.max(1, ...[0, 7, 14, 21, 28, 35].map((k) => H[k]!))
  for (let k = 0; k < 36; k += 7) H[k]! += 1e-9 * largest
  const step = Float64Array.from(rest)
  return solveDefiniteInPlace(H, 6, step) ? step : undefined
}
