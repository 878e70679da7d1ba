/** The rotation that is missing, as axis times angle in base axes, into out[3..5]. */
export function rotationErrorInto(out: Float64Array, target: ArrayLike<number>, pose: Float64Array): void {
  // E = W Rᵀ.
  const E = (i: number, j: number) =>
    target[3 * i]! * pose[3 * j]! + target[3 * i + 1]! * pose[3 * j + 1]! + target[3 * i + 2]! * pose[3 * j + 2]!
  const x = E(2, 1) - E(1, 2)
  const y = E(0, 2) - E(2, 0)
  const z = E(1, 0) - E(0, 1)
  const trace = E(0, 0) + E(1, 1) + E(2, 2)
  const sine = Math.hypot(x, y, z)
  const angle = Math.atan2(sine, trace - 1)
  if (sine > 1e-9) {
    out[3] = (x / sine) * angle
    out[4] = (y / sine) * angle
    out[5] = (z / sine) * angle
  } else if (trace > 0) {
    out[3] = x / 2
    out[4] = y / 2
    out[5] = z / 2
  } else {
    // Half a turn: the axis is the largest column of E + 1.
    const i = [0, 1, 2].reduce((best, k) => (E(k, k) > E(best, best) ? k : best), 0)
    const column = [0, 1, 2].map((k) => E(k, i) + (k === i ? 1 : 0))
    const length = Math.hypot(...column)
    for (let k = 0; k < 3; k++) out[3 + k] = (column[k]! / length) * Math.PI
  }
}
