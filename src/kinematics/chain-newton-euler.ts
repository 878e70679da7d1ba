import { ChainGeometryKernel, type ChainJointSi, type FrameSi } from './chain-geometry-kernel.js'

/**
 * Inverse dynamics of a serial chain on plain SI numbers; the part of `ChainKernel` that everything else there rests on: outward rates and
 * accelerations, inward forces and moments (Newton–Euler), each body in its own frame.
 */
export class ChainNewtonEuler extends ChainGeometryKernel {
  protected readonly links: Float64Array
  private readonly rotor: Float64Array
  private readonly rotorDiagonal: boolean
  /** Rate, angular acceleration and acceleration of the origin of the base and of each body, in its own axes. */
  private readonly motion: Float64Array
  private readonly loads: Float64Array
  private readonly onBase = new Float64Array(6)
  private readonly push = new Float64Array(6)

  constructor(joints: readonly ChainJointSi[], tool: FrameSi, rotorInertia: ArrayLike<number>) {
    super(joints, tool)
    const n = joints.length
    this.links = Float64Array.from(joints.flatMap(({ link }) => Array.from(link)))
    this.rotor = Float64Array.from(rotorInertia)
    this.rotorDiagonal = this.rotor.every((x, i) => x === 0 || i % (n + 1) === 0)
    this.motion = new Float64Array(9 * (n + 1))
    this.loads = new Float64Array(6 * n)
  }

  /** Torques of a motion, rotors included; `base` is rate, angular acceleration and acceleration of the base's origin (9 numbers). */
  protected inwardInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    w: ArrayLike<number>,
    a: ArrayLike<number>,
    base: Float64Array,
    toolPush: ArrayLike<number> | undefined,
  ): void {
    this.turnTo(q)
    const n = this.joints
    const { turn, place, loads, sliding, travel, motion } = this
    for (let k = 0; k < 9; k++) motion[k] = base[k]!
    this.outward(w, a)
    if (toolPush !== undefined) {
      const { tool, push } = this
      for (let k = 0; k < 6; k++) push[k] = toolPush[k]!
      this.addLoad(loads, 6 * n - 6, tool, 0, tool, 9, push, 0)
    }
    for (let i = n - 1; i >= 0; i--) {
      out[offset + i] = (sliding[i] === 1 ? 0 : loads[6 * i + 2]!) + travel[i]! * loads[6 * i + 5]!
      if (i > 0) this.addLoad(loads, 6 * i - 6, turn, 9 * i, place, 3 * i, loads, 6 * i)
    }
    const { rotor } = this
    if (this.rotorDiagonal) for (let i = 0; i < n; i++) out[offset + i] = out[offset + i]! + rotor[i * (n + 1)]! * a[i]!
    else
      for (let i = 0; i < n; i++) {
        let sum = 0
        for (let j = 0; j < n; j++) sum += rotor[i * n + j]! * a[j]!
        out[offset + i] = out[offset + i]! + sum
      }
  }

  /** Load of the whole chain on its base in the motion last worked out (6 numbers). */
  protected baseLoadInto(out: Float64Array, offset: number): void {
    const { onBase } = this
    onBase.fill(0)
    this.addLoad(onBase, 0, this.turn, 0, this.place, 0, this.loads, 0)
    for (let k = 0; k < 6; k++) out[offset + k] = onBase[k]!
  }

  // One long loop: handing a body's nine numbers from function to function costs a tenth of the time.
  /** Rates and accelerations of each body from the one before it, and the load of its own motion at its origin. */
  private outward(w: ArrayLike<number>, a: ArrayLike<number>): void {
    const { turn, place, motion, links, loads, sliding, travel } = this
    const n = this.joints
    for (let i = 0; i < n; i++) {
      const from = 9 * i
      const t = 9 * i
      const wx0 = motion[from]!
      const wy0 = motion[from + 1]!
      const wz0 = motion[from + 2]!
      const bx0 = motion[from + 3]!
      const by0 = motion[from + 4]!
      const bz0 = motion[from + 5]!
      const px = place[3 * i]!
      const py = place[3 * i + 1]!
      const pz = place[3 * i + 2]!
      const along = wx0 * px + wy0 * py + wz0 * pz
      const square = wx0 * wx0 + wy0 * wy0 + wz0 * wz0
      const ax0 = motion[from + 6]! + by0 * pz - bz0 * py + wx0 * along - square * px
      const ay0 = motion[from + 7]! + bz0 * px - bx0 * pz + wy0 * along - square * py
      const az0 = motion[from + 8]! + bx0 * py - by0 * px + wz0 * along - square * pz
      const r0 = turn[t]!
      const r1 = turn[t + 1]!
      const r2 = turn[t + 2]!
      const r3 = turn[t + 3]!
      const r4 = turn[t + 4]!
      const r5 = turn[t + 5]!
      const r6 = turn[t + 6]!
      const r7 = turn[t + 7]!
      const r8 = turn[t + 8]!
      const wx = r0 * wx0 + r3 * wy0 + r6 * wz0
      const wy = r1 * wx0 + r4 * wy0 + r7 * wz0
      let wz = r2 * wx0 + r5 * wy0 + r8 * wz0
      let bx = r0 * bx0 + r3 * by0 + r6 * bz0
      let by = r1 * bx0 + r4 * by0 + r7 * bz0
      let bz = r2 * bx0 + r5 * by0 + r8 * bz0
      let ax = r0 * ax0 + r3 * ay0 + r6 * az0
      let ay = r1 * ax0 + r4 * ay0 + r7 * az0
      let az = r2 * ax0 + r5 * ay0 + r8 * az0
      const rate = w[i]!
      const h = travel[i]!
      ax += 2 * h * wy * rate
      ay -= 2 * h * wx * rate
      az += h * a[i]!
      if (sliding[i] === 0) {
        bx += wy * rate
        by -= wx * rate
        bz += a[i]!
        wz += rate
      }
      const to = from + 9
      motion[to] = wx
      motion[to + 1] = wy
      motion[to + 2] = wz
      motion[to + 3] = bx
      motion[to + 4] = by
      motion[to + 5] = bz
      motion[to + 6] = ax
      motion[to + 7] = ay
      motion[to + 8] = az
      // Load of the body's own motion at its origin.
      const l = 10 * i
      const m = links[l]!
      const cx = links[l + 1]!
      const cy = links[l + 2]!
      const cz = links[l + 3]!
      const wc = wx * cx + wy * cy + wz * cz
      const ww = wx * wx + wy * wy + wz * wz
      const fx = m * (ax + by * cz - bz * cy + wx * wc - ww * cx)
      const fy = m * (ay + bz * cx - bx * cz + wy * wc - ww * cy)
      const fz = m * (az + bx * cy - by * cx + wz * wc - ww * cz)
      const xx = links[l + 4]!
      const yy = links[l + 5]!
      const zz = links[l + 6]!
      const xy = links[l + 7]!
      const xz = links[l + 8]!
      const yz = links[l + 9]!
      const hx = xx * wx + xy * wy + xz * wz
      const hy = xy * wx + yy * wy + yz * wz
      const hz = xz * wx + yz * wy + zz * wz
      const at = 6 * i
      loads[at] = xx * bx + xy * by + xz * bz + wy * hz - wz * hy + cy * fz - cz * fy
      loads[at + 1] = xy * bx + yy * by + yz * bz + wz * hx - wx * hz + cz * fx - cx * fz
      loads[at + 2] = xz * bx + yz * by + zz * bz + wx * hy - wy * hx + cx * fy - cy * fx
      loads[at + 3] = fx
      loads[at + 4] = fy
      loads[at + 5] = fz
    }
  }

  /**
   * Adds a moment and force (6 numbers at `f` of `from`), given in a frame turned by R (at `r`) and placed at P (at `p`), to a load (at `at` of `to`).
   * Buffers and places in them: numbers passed one by one would each be put on the heap.
   */
  private addLoad(
    to: Float64Array,
    at: number,
    R: Float64Array,
    r: number,
    P: Float64Array,
    p: number,
    from: Float64Array,
    f: number,
  ): void {
    const mx = from[f]!
    const my = from[f + 1]!
    const mz = from[f + 2]!
    const fx = from[f + 3]!
    const fy = from[f + 4]!
    const fz = from[f + 5]!
    const px = P[p]!
    const py = P[p + 1]!
    const pz = P[p + 2]!
    const gx = R[r]! * fx + R[r + 1]! * fy + R[r + 2]! * fz
    const gy = R[r + 3]! * fx + R[r + 4]! * fy + R[r + 5]! * fz
    const gz = R[r + 6]! * fx + R[r + 7]! * fy + R[r + 8]! * fz
    to[at] = to[at]! + R[r]! * mx + R[r + 1]! * my + R[r + 2]! * mz + py * gz - pz * gy
    to[at + 1] = to[at + 1]! + R[r + 3]! * mx + R[r + 4]! * my + R[r + 5]! * mz + pz * gx - px * gz
    to[at + 2] = to[at + 2]! + R[r + 6]! * mx + R[r + 7]! * my + R[r + 8]! * mz + px * gy - py * gx
    to[at + 3] = to[at + 3]! + gx
    to[at + 4] = to[at + 4]! + gy
    to[at + 5] = to[at + 5]! + gz
  }
}
