/** A rigid frame on SI numbers: rotation row-major (9 numbers), then position (3 numbers). */
export type FrameSi = ArrayLike<number>

/** One joint of a chain in the kernel's form: it turns about, or slides along, the z axis of its own frame, or screws along it. */
export interface ChainJointSi {
  readonly sliding: boolean
  /** Travel along the axis per radian of a turning joint that screws, m; left out, none. */
  readonly pitch?: number
  /** The joint's frame in the frame of the body before it, at joint value zero (12 numbers). */
  readonly frame: FrameSi
  /** Mass, centre of mass, inertia about it (m, cx, cy, cz, xx, yy, zz, xy, xz, yz) of the body after the joint, in the joint's frame. */
  readonly link: ArrayLike<number>
}

/**
 * The arithmetic of a serial chain on plain SI numbers: nothing is checked and, after construction, nothing is allocated; fit for a 1 kHz
 * control loop. Buffers inside are reused from call to call.
 *
 * Joint values are radians or metres, forces newton or newton metre. Twists are angular part first.
 */
export class ChainKernel {
  /** Number of joints. */
  readonly joints: number
  /** 1 where a joint slides. */
  readonly sliding: Uint8Array
  /** Travel along the axis per unit of the joint's value: 1 for a sliding joint, the pitch of a turning one. */
  private readonly travel: Float64Array
  private readonly fixed: Float64Array
  private readonly links: Float64Array
  private readonly tool: Float64Array
  private readonly lift: Float64Array
  private readonly rotor: Float64Array
  private readonly rotorDiagonal: boolean
  /** Rotation of each body against the one before it, and its origin there. */
  private readonly turn: Float64Array
  private readonly place: Float64Array
  /** Frame of each body in the base, and of the tool after them. */
  private readonly frames: Float64Array
  private readonly motion: Float64Array
  private readonly loads: Float64Array
  private readonly zero: Float64Array
  private readonly unit: Float64Array
  private readonly column: Float64Array
  private readonly push = new Float64Array(6)

  constructor(
    joints: readonly ChainJointSi[],
    tool: FrameSi,
    /** Acceleration of free fall in the base frame. */
    gravity: ArrayLike<number>,
    /** Rotor inertia as the joints feel it, symmetric, row-major n². */
    rotorInertia: ArrayLike<number>,
  ) {
    const n = joints.length
    this.joints = n
    this.sliding = Uint8Array.from(joints, ({ sliding }) => (sliding ? 1 : 0))
    this.travel = Float64Array.from(joints, ({ sliding, pitch = 0 }) => (sliding ? 1 : pitch))
    this.fixed = Float64Array.from(joints.flatMap(({ frame }) => Array.from(frame)))
    this.links = Float64Array.from(joints.flatMap(({ link }) => Array.from(link)))
    this.tool = Float64Array.from(tool)
    this.lift = Float64Array.from([-gravity[0]!, -gravity[1]!, -gravity[2]!])
    this.rotor = Float64Array.from(rotorInertia)
    this.rotorDiagonal = this.rotor.every((x, i) => x === 0 || i % (n + 1) === 0)
    this.turn = new Float64Array(9 * n)
    this.place = new Float64Array(3 * n)
    this.frames = new Float64Array(12 * (n + 1))
    this.motion = new Float64Array(9 * (n + 1))
    this.loads = new Float64Array(6 * (n + 1))
    this.zero = new Float64Array(n)
    this.unit = new Float64Array(n)
    this.column = new Float64Array(Math.max(3, n))
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

  /** Centre of mass of all bodies in the base (3 numbers); returns their mass. Without mass the base's origin is given. */
  centreOfMassInto(out: Float64Array, offset: number, q: ArrayLike<number>): number {
    this.follow(q)
    const { frames, links } = this
    let mass = 0
    let x = 0
    let y = 0
    let z = 0
    for (let i = 0; i < this.joints; i++) {
      const f = 12 * i
      const l = 10 * i
      const m = links[l]!
      const cx = links[l + 1]!
      const cy = links[l + 2]!
      const cz = links[l + 3]!
      mass += m
      x += m * (frames[f]! * cx + frames[f + 1]! * cy + frames[f + 2]! * cz + frames[f + 9]!)
      y += m * (frames[f + 3]! * cx + frames[f + 4]! * cy + frames[f + 5]! * cz + frames[f + 10]!)
      z += m * (frames[f + 6]! * cx + frames[f + 7]! * cy + frames[f + 8]! * cz + frames[f + 11]!)
    }
    out[offset] = mass === 0 ? 0 : x / mass
    out[offset + 1] = mass === 0 ? 0 : y / mass
    out[offset + 2] = mass === 0 ? 0 : z / mass
    return mass
  }

  /** Potential energy of the bodies' weight, J, zero at the base's origin. */
  potentialEnergy(q: ArrayLike<number>): number {
    const c = this.column
    const mass = this.centreOfMassInto(c, 0, q)
    return mass * (this.lift[0]! * c[0]! + this.lift[1]! * c[1]! + this.lift[2]! * c[2]!)
  }

  /**
   * Joint torques (forces for sliding joints) of a motion (n numbers), rotors included. `toolPush` is the moment and force (6 numbers, moment first,
   * in the tool's axes) with which the tool pushes its surroundings.
   */
  torqueInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    w: ArrayLike<number>,
    a: ArrayLike<number>,
    toolPush?: ArrayLike<number>,
  ): void {
    this.inwardInto(out, offset, q, w, a, true, toolPush)
  }

  /** Torques that hold the bodies' weight (n numbers). */
  gravityInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    this.inwardInto(out, offset, q, this.zero, this.zero, true, undefined)
  }

  /** Torques of the rates alone, centrifugal and Coriolis (n numbers). */
  coriolisInto(out: Float64Array, offset: number, q: ArrayLike<number>, w: ArrayLike<number>): void {
    this.inwardInto(out, offset, q, w, this.zero, false, undefined)
  }

  /** Mass matrix with rotors, row-major n², made exactly symmetric. */
  massMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    const n = this.joints
    const { unit, column } = this
    for (let j = 0; j < n; j++) {
      unit.fill(0)
      unit[j] = 1
      this.inwardInto(column, 0, q, this.zero, unit, false, undefined)
      for (let i = j; i < n; i++) {
        out[offset + i * n + j] = column[i]!
        out[offset + j * n + i] = column[i]!
      }
    }
  }

  /** Kinetic energy of bodies and rotors, J. */
  kineticEnergy(q: ArrayLike<number>, w: ArrayLike<number>): number {
    const { column } = this
    // With no gravity and no rates, the torque of an acceleration equal to the rates is M w.
    this.inwardInto(column, 0, q, this.zero, w, false, undefined)
    let sum = 0
    for (let i = 0; i < this.joints; i++) sum += column[i]! * w[i]!
    return 0.5 * sum
  }

  /** Each body's rotation and place against the one before it. */
  private turnTo(q: ArrayLike<number>): void {
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
  private follow(q: ArrayLike<number>): void {
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

  /** Columns of the Jacobian for the point of the last body whose place stands at `point` in the frames; −1 for the base's origin. */
  private columnsInto(out: Float64Array, offset: number, point: number): void {
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

  /** Outward motion, inward loads (Newton–Euler), each body in its own frame. */
  private inwardInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    w: ArrayLike<number>,
    a: ArrayLike<number>,
    weighs: boolean,
    toolPush: ArrayLike<number> | undefined,
  ): void {
    this.turnTo(q)
    const n = this.joints
    const { turn, place, links, motion, loads, sliding, travel } = this
    motion[0] = motion[1] = motion[2] = motion[3] = motion[4] = motion[5] = 0
    for (let k = 0; k < 3; k++) motion[6 + k] = weighs ? this.lift[k]! : 0
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
    if (toolPush !== undefined) {
      const { tool, push } = this
      for (let k = 0; k < 6; k++) push[k] = toolPush[k]!
      this.addLoad(n - 1, tool, 0, tool, 9, push, 0)
    }
    for (let i = n - 1; i >= 0; i--) {
      out[offset + i] = (sliding[i] === 1 ? 0 : loads[6 * i + 2]!) + travel[i]! * loads[6 * i + 5]!
      if (i > 0) this.addLoad(i - 1, turn, 9 * i, place, 3 * i, loads, 6 * i)
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

  /**
   * Adds a moment and force (6 numbers at `f` of `from`), given in a frame turned by R (at `r`) and placed at P (at `p`) of body i, to the load of body i.
   * Buffers and places in them: numbers passed one by one would each be put on the heap.
   */
  private addLoad(i: number, R: Float64Array, r: number, P: Float64Array, p: number, from: Float64Array, f: number): void {
    const { loads } = this
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
    const at = 6 * i
    loads[at] = loads[at]! + R[r]! * mx + R[r + 1]! * my + R[r + 2]! * mz + py * gz - pz * gy
    loads[at + 1] = loads[at + 1]! + R[r + 3]! * mx + R[r + 4]! * my + R[r + 5]! * mz + pz * gx - px * gz
    loads[at + 2] = loads[at + 2]! + R[r + 6]! * mx + R[r + 7]! * my + R[r + 8]! * mz + px * gy - py * gx
    loads[at + 3] = loads[at + 3]! + gx
    loads[at + 4] = loads[at + 4]! + gy
    loads[at + 5] = loads[at + 5]! + gz
  }
}
