import { LegGeometryKernel, NOT_A_NUMBER } from './leg-geometry-kernel.js'
import type { LimitsSi } from './leg-limits.js'
import { NearestSearch } from './leg-nearest.js'

/** Below this, relative to the leg's size, a pose counts as singular for the inverse of the Jacobian: eight digits are lost there. */
export const SINGULAR = 1e-8

/**
 * The arithmetic of the three-joint leg on plain SI numbers. Nothing is checked and nothing is allocated: fit for a 1 kHz control loop.
 *
 * Every method ending in `Into` writes from `offset` on into a buffer of the caller. Vectors of three are sideways hip, hip, knee or x, y, z. `out` may
 * be the vector that is transformed.
 */
export class LegKernel extends LegGeometryKernel {
  private search: NearestSearch | undefined

  /**
   * Which singularity a pose is at: 0 none, 1 knee straight, 2 knee folded, 3 foot level with the hip axis (sideways authority lost), 4 an angle is not
   * a number. `tolerance` compares |sin knee|, and the foot's distance below the hip axis over the leg's length. Default: 1e-8.
   */
  singularityAt(q: ArrayLike<number>, tolerance = SINGULAR): 0 | 1 | 2 | 3 | 4 {
    const { upperLink: l1, lowerLink: l2 } = this
    const q2 = q[1]!
    const q3 = q[2]!
    const sine = Math.abs(Math.sin(q3))
    if (!(sine >= tolerance)) return !(sine < tolerance) ? NOT_A_NUMBER : Math.cos(q3) > 0 ? 1 : 2
    const height = Math.abs(l1 * Math.cos(q2) + l2 * Math.cos(q2 + q3))
    if (!(height >= tolerance * (l1 + l2))) return height < tolerance * (l1 + l2) ? 3 : NOT_A_NUMBER
    return 0
  }

  /** Foot velocity from joint rates (3 numbers): v = J q̇. */
  footVelocityInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const w1 = rates[0]!
    const w2 = rates[1]!
    const w23 = w2 + rates[2]!
    const q2 = q[1]!
    const q23 = q2 + q[2]!
    const Z = -l1 * Math.cos(q2) - l2 * Math.cos(q23)
    const across = -Z * w1
    const up = d * w1 + l1 * Math.sin(q2) * w2 + l2 * Math.sin(q23) * w23
    const s = Math.sin(q[0]!)
    const c = Math.cos(q[0]!)
    out[offset] = -l1 * Math.cos(q2) * w2 - l2 * Math.cos(q23) * w23
    out[offset + 1] = across * c - up * s
    out[offset + 2] = across * s + up * c
  }

  /**
   * Joint rates that give the foot a velocity (3 numbers): q̇ = J⁻¹ v, in closed form.
   * Not finite at a singular pose: check `singularityAt` first.
   */
  jointRatesInto(out: Float64Array, offset: number, q: ArrayLike<number>, v: ArrayLike<number>): void {
    this.throughInverseInto(out, offset, q, v, 0)
  }

  /** The part of the foot's acceleration that comes from joint rates alone (3 numbers): J̇ q̇. */
  rateAccelerationInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const w1 = rates[0]!
    const w2 = rates[1]!
    const w23 = w2 + rates[2]!
    const q2 = q[1]!
    const q23 = q2 + q[2]!
    const s2 = l1 * Math.sin(q2)
    const c2 = l1 * Math.cos(q2)
    const s23 = l2 * Math.sin(q23)
    const c23 = l2 * Math.cos(q23)
    const Z = -c2 - c23
    const across = -2 * w1 * (s2 * w2 + s23 * w23) - w1 * w1 * d
    const up = c2 * w2 * w2 + c23 * w23 * w23 - w1 * w1 * Z
    const s = Math.sin(q[0]!)
    const c = Math.cos(q[0]!)
    out[offset] = s2 * w2 * w2 + s23 * w23 * w23
    out[offset + 1] = across * c - up * s
    out[offset + 2] = across * s + up * c
  }

  /** Joint accelerations that give the foot an acceleration at given joint rates (3 numbers): q̈ = J⁻¹ (a − J̇ q̇). Not finite at a singular pose. */
  jointAccelerationsInto(out: Float64Array, offset: number, q: ArrayLike<number>, rates: ArrayLike<number>, a: ArrayLike<number>): void {
    const ax = a[0]!
    const ay = a[1]!
    const az = a[2]!
    this.rateAccelerationInto(out, offset, q, rates)
    out[offset] = ax - out[offset]!
    out[offset + 1] = ay - out[offset + 1]!
    out[offset + 2] = az - out[offset + 2]!
    this.throughInverseInto(out, offset, q, out, offset)
  }

  /** Force the foot pushes with under given joint torques, at rest (3 numbers): F = J⁻ᵀ τ. Not finite at a singular pose. */
  footPushFromTorqueInto(out: Float64Array, offset: number, q: ArrayLike<number>, torque: ArrayLike<number>): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const q2 = q[1]!
    const q3 = q[2]!
    const q23 = q2 + q3
    const s2 = Math.sin(q2)
    const c2 = Math.cos(q2)
    const s23 = Math.sin(q23)
    const c23 = Math.cos(q23)
    const Z = -l1 * c2 - l2 * c23
    const sin3 = Math.sin(q3)
    // Torque about the knee of the shank, and about the hip of the thigh alone.
    const shank = torque[2]! / (l2 * sin3)
    const thigh = (torque[1]! - torque[2]!) / (l1 * sin3)
    const fx = s2 * shank - s23 * thigh
    const up = c2 * shank - c23 * thigh
    const across = (d * up - torque[0]!) / Z
    const s = Math.sin(q[0]!)
    const c = Math.cos(q[0]!)
    out[offset] = fx
    out[offset + 1] = across * c - up * s
    out[offset + 2] = across * s + up * c
  }

  /** ∂(Jᵀ R)/∂q of a fixed force R on the foot, symmetric, row-major (9 numbers), SI. */
  loadStiffnessInto(out: Float64Array, offset: number, q: ArrayLike<number>, force: ArrayLike<number>): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const s1 = Math.sin(q[0]!)
    const c1 = Math.cos(q[0]!)
    const shankX = -l2 * Math.sin(q[1]! + q[2]!)
    const shankZ = -l2 * Math.cos(q[1]! + q[2]!)
    const X = shankX - l1 * Math.sin(q[1]!)
    const Z = shankZ - l1 * Math.cos(q[1]!)
    const fx = force[0]!
    const fy = force[1]!
    const fz = force[2]!
    const across = fy * c1 + fz * s1
    const up = fz * c1 - fy * s1
    // Second derivatives of the foot in the leg plane: x″ = −X, z″ = −Z for the hip, the shank's for every pair with the knee; dX/dq2 = Z, dZ/dq2 = −X.
    out[offset] = -d * across - Z * up
    out[offset + 1] = X * across
    out[offset + 2] = shankX * across
    out[offset + 3] = out[offset + 1]!
    out[offset + 4] = -X * fx - Z * up
    out[offset + 5] = -shankX * fx - shankZ * up
    out[offset + 6] = out[offset + 2]!
    out[offset + 7] = out[offset + 5]!
    out[offset + 8] = out[offset + 5]!
  }

  /**
   * The reachable pose whose foot is nearest to a point, within joint limits: angles, then the foot (6 numbers). Returns the distance missed: zero to
   * rounding for a point within reach; infinite, with nothing written, for a point that is not finite. Makes no object, but boxes numbers of a few kilobytes: call it when a target is out of reach, not at every tick.
   */
  nearestInto(out: Float64Array, offset: number, limits: LimitsSi, x: number, y: number, z: number): number {
    this.search ??= new NearestSearch(this)
    const { search } = this
    const miss = search.run(limits, x, y, z)
    if (miss === Infinity) return miss
    for (let i = 0; i < 3; i++) {
      out[offset + i] = search.q[i]!
      out[offset + 3 + i] = search.foot[i]!
    }
    return miss
  }

  /** J⁻¹ v of the vector that starts at `at` of `v`, in closed form; `v` may be `out`. */
  private throughInverseInto(out: Float64Array, offset: number, q: ArrayLike<number>, v: ArrayLike<number>, at: number): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const q2 = q[1]!
    const q3 = q[2]!
    const q23 = q2 + q3
    const s = Math.sin(q[0]!)
    const c = Math.cos(q[0]!)
    const s2 = Math.sin(q2)
    const c2 = Math.cos(q2)
    const s23 = Math.sin(q23)
    const c23 = Math.cos(q23)
    const Z = -l1 * c2 - l2 * c23
    const vx = v[at]!
    const vy = v[at + 1]!
    const vz = v[at + 2]!
    const w1 = -(vy * c + vz * s) / Z
    const up = vz * c - vy * s - d * w1
    // In the leg plane each link's end moves square to it: project on the shank for the hip's rate, on the thigh for the foot's.
    const sin3 = Math.sin(q3)
    const w2 = (vx * s23 + up * c23) / (-l1 * sin3)
    const w23 = (vx * s2 + up * c2) / (l2 * sin3)
    out[offset] = w1
    out[offset + 1] = w2
    out[offset + 2] = w23 - w2
  }
}
