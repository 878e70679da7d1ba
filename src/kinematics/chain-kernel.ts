import { solveDefiniteInPlace } from '../numeric/index.js'
import type { ChainJointSi, FrameSi } from './chain-geometry-kernel.js'
import { ChainNewtonEuler } from './chain-newton-euler.js'
import { dampedRatesInto, weighRotation } from './damped-rates.js'

/**
 * The arithmetic of a serial chain on plain SI numbers: nothing is checked and, after construction, nothing is allocated; fit for a 1 kHz
 * control loop. Buffers inside are reused from call to call.
 *
 * Joint values are radians or metres, forces newton or newton metre. Twists are angular part first.
 */
export class ChainKernel extends ChainNewtonEuler {
  private readonly lift: Float64Array
  private readonly zero: Float64Array
  private readonly unit: Float64Array
  private readonly column: Float64Array
  private readonly matrix: Float64Array
  private readonly jacobian: Float64Array
  private readonly task = new Float64Array(36)
  private readonly right = new Float64Array(6)
  /** Motions of the base: at rest without and with weight. */
  private readonly still = new Float64Array(9)
  private readonly weighs = new Float64Array(9)

  constructor(
    joints: readonly ChainJointSi[],
    tool: FrameSi,
    /** Acceleration of free fall in the base frame. */
    gravity: ArrayLike<number>,
    /** Rotor inertia as the joints feel it, symmetric, row-major n². */
    rotorInertia: ArrayLike<number>,
  ) {
    super(joints, tool, rotorInertia)
    const n = joints.length
    this.lift = Float64Array.from([-gravity[0]!, -gravity[1]!, -gravity[2]!])
    this.weighs.set(this.lift, 6)
    this.zero = new Float64Array(n)
    this.unit = new Float64Array(n)
    this.column = new Float64Array(Math.max(3, n))
    this.matrix = new Float64Array(n * n)
    this.jacobian = new Float64Array(6 * n)
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
    this.inwardInto(out, offset, q, w, a, this.weighs, toolPush)
  }

  /**
   * Joint torques of a motion of a chain whose base moves (n numbers), then the moment and force with which the chain loads its base, at the base's
   * origin (6 numbers). `base` is the base's angular rate, angular acceleration, and acceleration of its origin less that of free fall (9 numbers), in
   * the base's own axes. The gravity given to the constructor does not count here.
   */
  movingBaseInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    w: ArrayLike<number>,
    a: ArrayLike<number>,
    base: Float64Array,
    toolPush?: ArrayLike<number>,
  ): void {
    this.inwardInto(out, offset, q, w, a, base, toolPush)
    this.baseLoadInto(out, offset + this.joints)
  }

  /** Torques that hold the bodies' weight (n numbers). */
  gravityInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    this.inwardInto(out, offset, q, this.zero, this.zero, this.weighs, undefined)
  }

  /** Torques of the rates alone, centrifugal and Coriolis (n numbers). */
  coriolisInto(out: Float64Array, offset: number, q: ArrayLike<number>, w: ArrayLike<number>): void {
    this.inwardInto(out, offset, q, w, this.zero, this.still, undefined)
  }

  /** Mass matrix with rotors, row-major n², made exactly symmetric. */
  massMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    const n = this.joints
    const { unit, column } = this
    for (let j = 0; j < n; j++) {
      unit.fill(0)
      unit[j] = 1
      this.inwardInto(column, 0, q, this.zero, unit, this.still, undefined)
      for (let i = j; i < n; i++) {
        out[offset + i * n + j] = column[i]!
        out[offset + j * n + i] = column[i]!
      }
    }
  }

  /**
   * Joint accelerations under joint torques (n numbers): forward dynamics, with `toolPush` as in `torqueInto`. Returns false, and writes nothing, where
   * a joint moves no mass or a number is not a number.
   */
  accelerationsInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    w: ArrayLike<number>,
    torque: ArrayLike<number>,
    toolPush?: ArrayLike<number>,
  ): boolean {
    const { matrix, unit, zero } = this
    this.massMatrixInto(matrix, 0, q)
    this.inwardInto(unit, 0, q, w, zero, this.weighs, toolPush)
    let sum = 0
    for (let i = 0; i < this.joints; i++) {
      unit[i] = torque[i]! - unit[i]!
      sum += unit[i]!
    }
    if (!solveDefiniteInPlace(matrix, this.joints, unit)) return false
    for (let i = 0; i < this.joints; i++) sum += unit[i]!
    if (!Number.isFinite(sum)) return false
    for (let i = 0; i < this.joints; i++) out[offset + i] = unit[i]!
    return true
  }

  /**
   * Joint rates for a motion of the tool (n numbers) by damped least squares: q̇ = Jᵀ (J Jᵀ + λ² 1)⁻¹ (v − J q̇₀) + q̇₀. `twist` is angular rate and
   * velocity of the tool's origin in base axes (6 numbers), or the velocity alone (3 numbers). `damping` is λ, m; a radian counts as `lengthPerRadian`,
   * m. `wish` is q̇₀: rates to keep near to where they do not move the tool. Default: none. Near a singular pose the rates stay below |v| / 2λ. Returns
   * false, and writes nothing, where the equations have no solution (no damping at a singular pose) or a number is not a number.
   */
  ratesInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    twist: ArrayLike<number>,
    damping: number,
    lengthPerRadian: number,
    wish?: ArrayLike<number>,
  ): boolean {
    const { joints, task, right, jacobian } = this
    this.jacobianInto(jacobian, 0, q)
    weighRotation(jacobian, joints, twist.length, lengthPerRadian)
    return dampedRatesInto(out, offset, { jacobian, joints, task, right }, twist, damping, lengthPerRadian, wish)
  }

  /** Kinetic energy of bodies and rotors, J. */
  kineticEnergy(q: ArrayLike<number>, w: ArrayLike<number>): number {
    const { column } = this
    // With no gravity and no rates, the torque of an acceleration equal to the rates is M w.
    this.inwardInto(column, 0, q, this.zero, w, this.still, undefined)
    let sum = 0
    for (let i = 0; i < this.joints; i++) sum += column[i]! * w[i]!
    return 0.5 * sum
  }
}
