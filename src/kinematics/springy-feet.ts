import { hullInto } from './support-margin.js'

/** Most feet that are looked at together. */
export const MAX_FEET = 64

const numbers = () => /* @__PURE__ */ new Float64Array(MAX_FEET)
/** Feet that still push, and corners of the polygon of the feet: of the moment that is worked on alone. */
const pushes = /* @__PURE__ */ new Uint8Array(MAX_FEET)
const corners = /* @__PURE__ */ new Int32Array(2 * MAX_FEET)
const order = /* @__PURE__ */ new Int32Array(MAX_FEET)

/** The feet that stand at one moment, and the part of the weight on each. It is filled again for every moment of a stride. */
export class StandingFeet {
  count = 0
  readonly x: Float64Array = numbers()
  readonly y: Float64Array = numbers()
  /** Parts of the weight on the feet, after `carry`. */
  readonly shares: Float64Array = numbers()

  clear(): void {
    this.count = 0
  }

  add(x: number, y: number): void {
    this.x[this.count] = x
    this.y[this.count++] = y
  }

  /** Works out the parts of a weight that passes through the ground at a point. */
  carry(atX: number, atY: number): void {
    if (this.count < 2) this.shares.fill(1, 0, this.count)
    else if (this.count === 2 || !this.#holds(atX, atY) || !this.#onSprings(atX, atY)) this.#onNearestEdge(atX, atY)
  }

  /** Whether the polygon of the feet holds a point. */
  #holds(atX: number, atY: number): boolean {
    const { x, y } = this
    const many = hullInto(corners, order, x, y, this.count)
    if (many < 3) return false
    let from = corners[many - 1]!
    for (let k = 0; k < many; k++) {
      const to = corners[k]!
      if (!((x[to]! - x[from]!) * (atY - y[from]!) - (y[to]! - y[from]!) * (atX - x[from]!) >= 0)) return false
      from = to
    }
    return true
  }

  /** A rigid body on equal springs that only push: a foot that would pull is off the ground. False where too few are left. */
  #onSprings(atX: number, atY: number): boolean {
    const { shares, count } = this
    pushes.fill(1, 0, count)
    for (let left = count; left > 2; ) {
      if (!this.#onPlane(left, atX, atY)) return false
      let min = Number.POSITIVE_INFINITY
      for (let i = 0; i < count; i++) if (pushes[i] === 1 && !(shares[i]! >= min)) min = shares[i]!
      if (min >= -1e-12) {
        for (let i = 0; i < count; i++) shares[i] = pushes[i] === 1 ? Math.max(0, shares[i]!) : 0
        return true
      }
      for (let i = 0; i < count; i++) {
        if (pushes[i] === 0 || shares[i] !== min) continue
        pushes[i] = 0
        left--
      }
    }
    return false
  }

  /** Shares that lie on a plane over the feet that push, a + b x + c y, and balance weight and moments; false where these feet are in one line. */
  #onPlane(n: number, atX: number, atY: number): boolean {
    const { x, y, shares, count } = this
    let mx = 0
    let my = 0
    for (let i = 0; i < count; i++) {
      if (pushes[i] === 0) continue
      mx += x[i]! / n
      my += y[i]! / n
    }
    let xx = 0
    let xy = 0
    let yy = 0
    for (let i = 0; i < count; i++) {
      if (pushes[i] === 0) continue
      xx += (x[i]! - mx) ** 2
      xy += (x[i]! - mx) * (y[i]! - my)
      yy += (y[i]! - my) ** 2
    }
    const determinant = xx * yy - xy * xy
    if (!(determinant > 1e-12 * (xx + yy) ** 2)) return false
    const dx = atX - mx
    const dy = atY - my
    const b = (yy * dx - xy * dy) / determinant
    const c = (xx * dy - xy * dx) / determinant
    for (let i = 0; i < count; i++) if (pushes[i] === 1) shares[i] = 1 / n + b * (x[i]! - mx) + c * (y[i]! - my)
    return true
  }

  /** The two feet whose line is nearest to the weight, by the lever rule along it. */
  #onNearestEdge(atX: number, atY: number): void {
    const { x, y, shares, count } = this
    let nearest = Number.POSITIVE_INFINITY
    let one = 0
    let other = 1
    let share = 0
    for (let i = 0; i < count; i++)
      for (let j = i + 1; j < count; j++) {
        const ux = x[j]! - x[i]!
        const uy = y[j]! - y[i]!
        const along = Math.min(1, Math.max(0, ((atX - x[i]!) * ux + (atY - y[i]!) * uy) / Math.max(ux * ux + uy * uy, 1e-30)))
        const off = Math.hypot(atX - x[i]! - along * ux, atY - y[i]! - along * uy)
        if (!(off < nearest)) continue
        nearest = off
        one = i
        other = j
        share = along
      }
    shares.fill(0, 0, count)
    shares[one] = 1 - share
    shares[other] = share
  }
}
