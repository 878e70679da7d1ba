import { NoResultError } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import type { FourBarKnee } from './four-bar-knee.js'

/**
 * The tie between joint space and actuator space on plain SI numbers: drum angles φ1 = q1, φ2 = q2, φ3 = e q2 + f(q3), with e = 1 for a knee motor on
 * the body. Nothing is checked and nothing is allocated. Where a four-bar does not assemble a method throws a `NoResultError`: check `assemblesAt` first.
 * `out` may be the vector that is transformed.
 */
export class CouplingKernel {
  constructor(
    private readonly drive: number | FourBarKnee,
    /** Part of the hip's angle that the knee's drum turns with: 1 for a knee motor on the body, 0 for one on the thigh. */
    readonly carried: 0 | 1,
  ) {}

  /** Whether the knee's drive assembles at a knee angle; only a four-bar may not. */
  assemblesAt(knee: number): boolean {
    return Number.isFinite(typeof this.drive === 'number' ? knee : this.drive.ratio(knee))
  }

  /** Ratio of the knee's drive at a knee angle: actuator travel over knee travel (SI numbers). */
  kneeRatio(knee: number): number {
    return this.ratioAt([0, 0, knee])
  }

  /** The matrix A of φ̇ = A q̇ at a pose, row-major (9 numbers). */
  matrixInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    out.fill(0, offset, offset + 9)
    out[offset] = 1
    out[offset + 4] = 1
    out[offset + 7] = this.carried
    out[offset + 8] = this.ratioAt(q)
  }

  /** Actuator angles from joint angles, SI (3 numbers). */
  actuatorAnglesInto(out: Float64Array, offset: number, q: ArrayLike<number>): void {
    const q2 = q[1]!
    out[offset] = q[0]!
    out[offset + 2] = this.carried * q2 + this.travelAt(q)
    out[offset + 1] = q2
  }

  /** Joint angles from actuator angles, SI (3 numbers). Of two knee angles of one crank angle, the one on the straight knee's side of the dead point. */
  jointAnglesInto(out: Float64Array, offset: number, actuators: ArrayLike<number>): void {
    const phi2 = actuators[1]!
    out[offset] = actuators[0]!
    const travel = actuators[2]! - this.carried * phi2
    out[offset + 2] = typeof this.drive === 'number' ? travel / this.drive : this.finite(this.drive.inverse(travel), actuators)
    out[offset + 1] = phi2
  }

  /** Actuator speeds from joint rates, SI (3 numbers): φ̇ = A q̇. */
  actuatorRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void {
    const w2 = rates[1]!
    out[offset] = rates[0]!
    out[offset + 2] = this.carried * w2 + this.ratioAt(q) * rates[2]!
    out[offset + 1] = w2
  }

  /** Joint rates from actuator speeds, SI (3 numbers). */
  jointRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void {
    const w2 = actuators[1]!
    out[offset] = actuators[0]!
    out[offset + 2] = (actuators[2]! - this.carried * w2) / this.ratioAt(q)
    out[offset + 1] = w2
  }

  /** Actuator accelerations from joint rates and accelerations, SI (3 numbers); a four-bar's ratio changes on the way. */
  actuatorAccelerationsInto(
    out: Float64Array,
    offset: number,
    q: ArrayLike<number>,
    rates: ArrayLike<number>,
    accelerations: ArrayLike<number>,
  ): void {
    const a2 = accelerations[1]!
    const w3 = rates[2]!
    out[offset] = accelerations[0]!
    const ratioRate = typeof this.drive === 'number' ? 0 : this.drive.ratioRate(q[2]!)
    out[offset + 2] = this.carried * a2 + this.ratioAt(q) * accelerations[2]! + ratioRate * w3 * w3
    out[offset + 1] = a2
  }

  /** Actuator torques from joint torques, SI (3 numbers): τφ = A⁻ᵀ τq. */
  actuatorTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, joints: ArrayLike<number>): void {
    const knee = joints[2]! / this.ratioAt(q)
    out[offset] = joints[0]!
    out[offset + 1] = joints[1]! - this.carried * knee
    out[offset + 2] = knee
  }

  /** Joint torques from actuator torques, SI (3 numbers): τq = Aᵀ τφ. */
  jointTorquesInto(out: Float64Array, offset: number, q: ArrayLike<number>, actuators: ArrayLike<number>): void {
    const knee = actuators[2]!
    out[offset] = actuators[0]!
    out[offset + 1] = actuators[1]! + this.carried * knee
    out[offset + 2] = this.ratioAt(q) * knee
  }

  /**
   * A diagonal of the actuators (inertia N²J of the rotors, stiffness of the drives) as the joints feel it, a symmetric matrix, row-major (9 numbers):
   * Aᵀ diag A.
   */
  jointMatrixInto(out: Float64Array, offset: number, q: ArrayLike<number>, diagonal: ArrayLike<number>): void {
    const e = this.carried
    const n = this.ratioAt(q)
    const knee = diagonal[2]!
    out.fill(0, offset, offset + 9)
    out[offset] = diagonal[0]!
    out[offset + 4] = diagonal[1]! + e * e * knee
    out[offset + 5] = e * n * knee
    out[offset + 7] = e * n * knee
    out[offset + 8] = n * n * knee
  }

  // Poses are passed whole: a number passed by itself may be put on the heap.
  private ratioAt(q: ArrayLike<number>): number {
    return typeof this.drive === 'number' ? this.drive : this.finite(this.drive.ratio(q[2]!), q)
  }

  private travelAt(q: ArrayLike<number>): number {
    return typeof this.drive === 'number' ? this.drive * q[2]! : this.finite(this.drive.travel(q[2]!), q)
  }

  private finite(x: number, at: ArrayLike<number>): number {
    if (Number.isFinite(x)) return x
    throw new NoResultError(
      `kinematics.driveCoupling: the four-bar does not assemble at a knee (or knee drum) angle of ${new Quantity(at[2]!, 'angle')}`,
    )
  }
}
