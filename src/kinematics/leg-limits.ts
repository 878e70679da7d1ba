/** Joint limits on SI numbers: lowest and highest of sideways hip, hip, knee in turn; ±∞ where there is none. */
export type LimitsSi = Float64Array
export const TURN = 2 * Math.PI
const ON_LIMIT = 1e-12

/** The angle, give or take whole turns, that lies within limits and is smallest in size; NaN if there is none, or for an angle that is not a number. SI numbers. */
export function withinTurns(angle: number, lowest: number, highest: number): number {
  const wrapped = angle - TURN * Math.round(angle / TURN)
  // The turn that comes nearest to the limits' own place nearest zero, and its neighbours; the positive of two alike. A limit reached to rounding is reached.
  const min = Math.max(lowest, Math.min(0, highest))
  const turns = TURN * Math.round((min - wrapped) / TURN)
  let best = Number.NaN
  for (let k = 1; k >= -1; k--) {
    const shifted = wrapped + turns + k * TURN
    if (shifted < lowest - ON_LIMIT || shifted > highest + ON_LIMIT) continue
    if (!(Math.abs(shifted) >= Math.abs(best) - ON_LIMIT)) best = Math.min(highest, Math.max(lowest, shifted))
  }
  return best
}

/** Joint angles at a limit: −1 at the lowest, +1 at the highest, 0 free. */
export const atLimit = (limits: LimitsSi, q: ArrayLike<number>): [number, number, number] => {
  const end = (i: number) => (Math.abs(q[i]! - limits[2 * i]!) <= ON_LIMIT ? -1 : Math.abs(q[i]! - limits[2 * i + 1]!) <= ON_LIMIT ? 1 : 0)
  return [end(0), end(1), end(2)]
}
