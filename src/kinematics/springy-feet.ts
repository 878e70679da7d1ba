import { supportMargin } from './support-margin.js'

export interface Foot {
  readonly x: number
  readonly y: number
}

/** Parts of the weight on the feet that stand; none for no feet. */
export function carried(feet: readonly Foot[], at: Foot): number[] {
  if (feet.length < 2) return feet.map(() => 1)
  if (feet.length > 2 && supportMargin(feet, at) >= 0) {
    const shares = onSprings(feet, at)
    if (shares !== undefined) return shares
  }
  return onNearestEdge(feet, at)
}

/** A rigid body on equal springs that only push: a foot that would pull is off the ground. */
function onSprings(feet: readonly Foot[], at: Foot): number[] | undefined {
  const stands = feet.map(() => true)
  for (let left = feet.length; left > 2; left--) {
    const shares = onPlane(
      feet.filter((_, i) => stands[i]),
      at,
    )
    if (shares === undefined) return undefined
    const least = Math.min(...shares)
    let k = 0
    if (least >= -1e-12) return stands.map((on) => (on ? Math.max(0, shares[k++]!) : 0))
    stands.forEach((on, i) => {
      if (on && shares[k++] === least) stands[i] = false
    })
  }
  return undefined
}

/** Shares that lie on a plane over the feet, a + b x + c y, and balance weight and moments; absent where the feet stand in one line. */
function onPlane(feet: readonly Foot[], at: Foot): number[] | undefined {
  const n = feet.length
  let [mx, my] = [0, 0]
  for (const { x, y } of feet) {
    mx += x / n
    my += y / n
  }
  let [xx, xy, yy] = [0, 0, 0]
  for (const { x, y } of feet) {
    xx += (x - mx) ** 2
    xy += (x - mx) * (y - my)
    yy += (y - my) ** 2
  }
  const determinant = xx * yy - xy * xy
  if (!(determinant > 1e-12 * (xx + yy) ** 2)) return undefined
  const [dx, dy] = [at.x - mx, at.y - my]
  const [b, c] = [(yy * dx - xy * dy) / determinant, (xx * dy - xy * dx) / determinant]
  return feet.map(({ x, y }) => 1 / n + b * (x - mx) + c * (y - my))
}

/** The two feet whose line is nearest to the weight, by the lever rule along it. */
function onNearestEdge(feet: readonly Foot[], at: Foot): number[] {
  const shares = feet.map(() => 0)
  let [nearest, one, other, share] = [Number.POSITIVE_INFINITY, 0, 1, 0]
  for (const [i, a] of feet.entries())
    for (const [j, b] of feet.entries()) {
      if (j <= i) continue
      const [ux, uy] = [b.x - a.x, b.y - a.y]
      const along = Math.min(1, Math.max(0, ((at.x - a.x) * ux + (at.y - a.y) * uy) / Math.max(ux * ux + uy * uy, 1e-30)))
      const off = Math.hypot(at.x - a.x - along * ux, at.y - a.y - along * uy)
      if (off < nearest) [nearest, one, other, share] = [off, i, j, along]
    }
  shares[one] = 1 - share
  shares[other] = share
  return shares
}
