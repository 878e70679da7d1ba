import { LegTorqueKernel, type LinkSi } from './leg-torque-kernel.js'

const NO_GRAVITY = /* @__PURE__ */ new Float64Array(3)
const ZERO = /* @__PURE__ */ new Float64Array(3)

/** The same leg without weight, and buffers. */
interface Scratch {
  readonly weightless: LegTorqueKernel
  readonly unit: Float64Array
  readonly column: Float64Array
  readonly matrix: Float64Array
}

/**
 * Dynamics of the three-joint leg on plain SI numbers: joint torques of a motion, motion under joint torques, mass matrix, weight, energy. Nothing is
 * checked and nothing is allocated: fit for a 1 kHz control loop. Buffers inside are reused from call to call.
 */
export class LegDynamicsKernel extends LegTorqueKernel {
  private made: Scratch | undefined

  constructor(
    hipOffset: number,
    upperLink: number,
    lowerLink: number,
    links: readonly [hip: LinkSi, upper: LinkSi, lower: LinkSi],
    /** Acceleration of free fall in the leg's frame: (0, 0, −9.80665) on level ground. */
    gravity: ArrayLike<number>,
    /** Rotor inertia seen by the joints as a symmetric matrix of sideways hip, hip and knee, row-major; the sideways hip is uncoupled. */
    rotorInertia?: ArrayLike<number>,
  ) {
    super(hipOffset, upperLink, lowerLink, links, gravity, rotorInertia)
  }

  /** Buffers for everything but the torques; allocated at first use. */
  private get scratch(): Scratch {
    if (this.made === undefined) {
      const [r11, r22, r23, r33] = this.rotor
      const rotors = [r11!, 0, 0, 0, r22!, r23!, 0, r23!, r33!]
      const weightless = new LegTorqueKernel(this.d, this.l1, this.l2, [this.hip, this.upper, this.lower], NO_GRAVITY, rotors)
      this.made = { weightless, unit: new Float64Array(3), column: new Float64Array(3), matrix: new Float64Array(9) }
    }
    return this.made
  }

  /** Joint torques that hold the leg's own weight (3 numbers). */
  gravityInto(out: Float64Array, offset: number, q: Float64Array): void {
    this.torqueInto(out, offset, q, ZERO, ZERO, 0, 0, 0)
  }

  /** Joint torques of the rates alone, centrifugal and Coriolis (3 numbers). */
  coriolisInto(out: Float64Array, offset: number, q: Float64Array, w: Float64Array): void {
    this.scratch.weightless.torqueInto(out, offset, q, w, ZERO, 0, 0, 0)
  }

  /** Mass matrix with the rotors given to the constructor, row-major (9 numbers), exactly symmetric. */
  massMatrixInto(out: Float64Array, offset: number, q: Float64Array): void {
    const { weightless, unit, column } = this.scratch
    for (let j = 0; j < 3; j++) {
      unit.fill(0)
      unit[j] = 1
      weightless.torqueInto(column, 0, q, ZERO, unit, 0, 0, 0)
      for (let i = j; i < 3; i++) {
        out[offset + 3 * i + j] = column[i]!
        out[offset + 3 * j + i] = column[i]!
      }
    }
  }

  /**
   * Joint accelerations under joint torques (3 numbers), with a force of the **ground on the foot** rx, ry, rz (zero in the air): forward dynamics.
   * Returns false, and writes nothing, where a joint moves no mass or a number is not a number.
   */
  accelerationsInto(
    out: Float64Array,
    offset: number,
    q: Float64Array,
    w: Float64Array,
    torque: ArrayLike<number>,
    rx: number,
    ry: number,
    rz: number,
  ): boolean {
    const { matrix: M, column: bias } = this.scratch
    this.massMatrixInto(M, 0, q)
    this.torqueInto(bias, 0, q, w, ZERO, rx, ry, rz)
    // M = L D Lᵀ; each pivot must be positive beyond rounding.
    const d1 = M[0]!
    const l21 = M[3]! / d1
    const l31 = M[6]! / d1
    const d2 = M[4]! - l21 * M[3]!
    const u32 = M[7]! - l31 * M[3]!
    const l32 = u32 / d2
    const d3 = M[8]! - l31 * M[6]! - l32 * u32
    if (!(d1 > 0 && d2 > 1e-13 * M[4]! && d3 > 1e-13 * M[8]!)) return false
    const y1 = torque[0]! - bias[0]!
    const y2 = torque[1]! - bias[1]! - l21 * y1
    const a3 = (torque[2]! - bias[2]! - l31 * y1 - l32 * y2) / d3
    const a2 = y2 / d2 - l32 * a3
    const a1 = y1 / d1 - l21 * a2 - l31 * a3
    if (!Number.isFinite(a1 + a2 + a3)) return false
    out[offset] = a1
    out[offset + 1] = a2
    out[offset + 2] = a3
    return true
  }

  /** Centre of mass of the whole leg, SI (3 numbers); returns the mass. A leg without mass has its centre at the sideways hip's axis. */
  centreOfMassInto(out: Float64Array, offset: number, q: ArrayLike<number>): number {
    const { d, l1 } = this
    let mass = 0
    let x = 0
    let across = 0
    let up = 0
    for (let i = 0; i < 3; i++) {
      const link = i === 0 ? this.hip : i === 1 ? this.upper : this.lower
      const m = link[0]!
      const pitch = i === 0 ? 0 : i === 1 ? q[1]! : q[1]! + q[2]!
      const s = Math.sin(pitch)
      const c = Math.cos(pitch)
      mass += m
      x += m * (c * link[1]! + s * link[3]! - (i === 2 ? l1 * Math.sin(q[1]!) : 0))
      across += m * (link[2]! + (i === 0 ? 0 : d))
      up += m * (c * link[3]! - s * link[1]! - (i === 2 ? l1 * Math.cos(q[1]!) : 0))
    }
    const s1 = Math.sin(q[0]!)
    const c1 = Math.cos(q[0]!)
    const share = mass === 0 ? 0 : 1 / mass
    out[offset] = x * share
    out[offset + 1] = (across * c1 - up * s1) * share
    out[offset + 2] = (across * s1 + up * c1) * share
    return mass
  }

  /** Potential energy of the leg's own weight, J, with the sideways hip's axis as the zero. */
  potentialEnergy(q: ArrayLike<number>): number {
    const { lift } = this
    const { column: c } = this.scratch
    const mass = this.centreOfMassInto(c, 0, q)
    return mass * (lift[0]! * c[0]! + lift[1]! * c[1]! + lift[2]! * c[2]!)
  }

  /** Kinetic energy of the links and the rotors given to the constructor, J. */
  kineticEnergy(q: Float64Array, w: Float64Array): number {
    const { weightless, column } = this.scratch
    // Without weight and rates, the torque of an acceleration equal to the rates is M w.
    weightless.torqueInto(column, 0, q, ZERO, w, 0, 0, 0)
    return 0.5 * (column[0]! * w[0]! + column[1]! * w[1]! + column[2]! * w[2]!)
  }
}
