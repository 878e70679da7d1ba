/** Writes the coefficients (of the step's part, its square and its cube) of the cubic that meets both ends of a step of `h` with their slopes. */
export function cubicInto(
  out: Float64Array,
  offset: number,
  n: number,
  h: number,
  y: Float64Array,
  yNew: Float64Array,
  first: Float64Array,
  last: Float64Array,
): void {
  for (let i = 0; i < n; i++) {
    const rise = yNew[i]! - y[i]!
    const from = h * first[i]!
    const to = h * last[i]!
    out[offset + i] = from
    out[offset + n + i] = 3 * rise - 2 * from - to
    out[offset + 2 * n + i] = from + to - 2 * rise
  }
}
