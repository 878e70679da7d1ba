/** A rigid frame on SI numbers: rotation row-major (9 numbers), then position (3 numbers). */
export type FrameSi = ArrayLike<number>

/** One joint of a chain in the kernel's form: it turns about, or slides along, the z axis of its own frame, or screws along it. */
export interface ChainJointSi {
  /** Whether the joint slides along its axis. */
  readonly sliding: boolean
  /** Travel along the axis per radian of a turning joint that screws, m. Default: 0. */
  readonly pitch?: number
  /** The joint's frame in the frame of the body before it, at joint value zero (12 numbers). */
  readonly frame: FrameSi
  /** Mass, centre of mass, inertia about it (m, cx, cy, cz, xx, yy, zz, xy, xz, yz) of the body after the joint, in the joint's frame. */
  readonly link: ArrayLike<number>
}

/**
 * Frames and Jacobians of a serial chain on plain SI numbers; the part of `ChainKernel` without masses. Buffers inside are reused from call to call.
 */
export class ChainGeometryKernel {
  /** Number of joints. */
  readonly joints: number
  /** 1 where a joint slides. */
  readonly sliding: Uint8Array
  /** Travel along the axis per unit of the joint's value: 1 for a sliding joint, the pitch of a turning one. */
  protected readonly travel: Float64Array
  private readonly fixed: Float64Array
  protected readonly tool: Float64Array
  /** Rotation of each body against the one before it, and its origin there. */
  protected readonly turn: Float64Array
  protected readonly place: Float64Array
  /** Frame of each body in the base, and of the tool after them. */
  protected readonly frames: Float64Array

  constructor(joints: readonly ChainJointSi[], tool: FrameSi) {
    const n = joints.length
    this.joints = n
    this.sliding = Uint8Array.from(joints, ({ sliding }) => (sliding ? 1 : 0))
    this.travel = Float64Array.from(joints, ({ sliding, pitch = 0 }) => (sliding ? 1 : pitch))
    this.fixed = Float64Array.from(joints.flatMap(({ frame }) => Array.from(frame)))
    this.tool = Float64Array.from(tool)
    this.turn = new Float64Array(9 * n)
    this.place = new Float64Array(3 * n)
    this.frames = new Float64Array(12 * (n + 1))
  }

  /** Frame of the tool in the base (12 numbers: rotation row-major, position). */
  poseInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    this.follow(q)
    const at = 12 * this.joints
    for (let i = 0; i < 12; i++) out[offset + i] = this.frames[at + i]!
  }

  /**
   * Jacobian of the tool's origin and rotation in base axes, row-major 6 × n: rows angular velocity x, y, z, then velocity of the tool's origin.
   * For most work this is the one to use.
   */
  jacobianInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    this.follow(q)
    this.columnsInto(out, offset, 12 * this.joints + 9)
  }

  /** Space Jacobian, row-major 6 × n: the velocity rows are those of the point of the tool's body that is passing the base's origin. */
  spaceJacobianInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    this.follow(q)
    this.columnsInto(out, offset, -1)
  }

  /** Body Jacobian, row-major 6 × n: the twist of the tool in the tool's own axes. */
  bodyJacobianInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    this.jacobianInto(out, offset, q)
    const n = this.joints
    const R = 12 * n
    const { frames } = this
    for (let j = 0; j < n; j++) {
      for (let row = 0; row <= 3; row += 3) {
        const x = out[offset + row * n + j]!
        const y = out[offset + (row + 1) * n + j]!
        const z = out[offset + (row + 2) * n + j]!
        for (let i = 0; i < 3; i++) out[offset + (row + i) * n + j] = frames[R + i]! * x + frames[R + 3 + i]! * y + frames[R + 6 + i]! * z
      }
    }
  }

  /** Each body's rotation and place against the one before it. */
  protected turnTo(q: ArrayLike<number>): void {
    const { fixed, turn, place, sliding, travel } = this
    for (let i = 0; i < this.joints; i++) {
      const f = 12 * i
      const t = 9 * i
      const p = 3 * i
      const value = q[i]!
      const slid = travel[i]! * value
      place[p] = fixed[f + 9]! + fixed[f + 2]! * slid
      place[p + 1] = fixed[f + 10]! + fixed[f + 5]! * slid
      place[p + 2] = fixed[f + 11]! + fixed[f + 8]! * slid
      if (sliding[i] === 1) {
        for (let k = 0; k < 9; k++) turn[t + k] = fixed[f + k]!
        continue
      }
      const s = Math.sin(value)
      const c = Math.cos(value)
      for (let row = 0; row < 9; row += 3) {
        const x = fixed[f + row]!
        const y = fixed[f + row + 1]!
        turn[t + row] = c * x + s * y
        turn[t + row + 1] = c * y - s * x
        turn[t + row + 2] = fixed[f + row + 2]!
      }
    }
  }

  /** Frames of all bodies and the tool in the base. */
  protected follow(q: ArrayLike<number>): void {
    this.turnTo(q)
    const { frames, turn, place, tool } = this
    const n = this.joints
    for (let k = 0; k < 9; k++) frames[k] = turn[k]!
    for (let k = 0; k < 3; k++) frames[9 + k] = place[k]!
    for (let i = 1; i <= n; i++) {
      const from = 12 * (i - 1)
      const to = 12 * i
      const R = i === n ? tool : turn
      const r = i === n ? 0 : 9 * i
      const P = i === n ? tool : place
      const p = i === n ? 9 : 3 * i
      for (let row = 0; row < 9; row += 3) {
        const x = frames[from + row]!
        const y = frames[from + row + 1]!
        const z = frames[from + row + 2]!
        for (let col = 0; col < 3; col++) frames[to + row + col] = x * R[r + col]! + y * R[r + 3 + col]! + z * R[r + 6 + col]!
        frames[to + 9 + row / 3] = x * P[p]! + y * P[p + 1]! + z * P[p + 2]! + frames[from + 9 + row / 3]!
      }
    }
  }

  /** Columns of the Jacobian for the point of the last body whose place is at `point` in the frames; −1 for the base's origin. */
  protected columnsInto(out: Float64Array, offset: number, point: number): void {
    const n = this.joints
    const { frames, sliding, travel } = this
    const x = point < 0 ? 0 : frames[point]!
    const y = point < 0 ? 0 : frames[point + 1]!
    const z = point < 0 ? 0 : frames[point + 2]!
    for (let j = 0; j < n; j++) {
      const f = 12 * j
      const h = travel[j]!
      const ax = frames[f + 2]!
      const ay = frames[f + 5]!
      const az = frames[f + 8]!
      const turns = sliding[j] === 0
      const dx = x - frames[f + 9]!
      const dy = y - frames[f + 10]!
      const dz = z - frames[f + 11]!
      out[offset + j] = turns ? ax : 0
      out[offset + n + j] = turns ? ay : 0
      out[offset + 2 * n + j] = turns ? az : 0
      out[offset + 3 * n + j] = (turns ? ay * dz - az * dy : 0) + h * ax
      out[offset + 4 * n + j] = (turns ? az * dx - ax * dz : 0) + h * ay
      out[offset + 5 * n + j] = (turns ? ax * dy - ay * dx : 0) + h * az
    }
  }
}
