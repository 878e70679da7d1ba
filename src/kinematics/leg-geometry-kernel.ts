/** Status of the inverse: the foot is at the point. Every other status is the reason why not. */
export const REACHED = 0
/** The foot would have to be further from the hip than the straight leg. */
export const TOO_FAR = 1
/** The foot would have to be nearer to the hip than the folded leg. */
export const TOO_NEAR = 2
/** The foot would have to be nearer to the sideways hip's axis than the sideways offset. */
export const INSIDE_OFFSET = 3
/** The point, or a number of the pose, is not a number. */
export const NOT_A_NUMBER = 4

/** Bit of a branch number: the knee bends backward (negative knee angle). */
export const KNEE_BACKWARD = 1
/** Bit of a branch number: the foot is above the hip axis, the leg folded over the hip. */
export const FOOT_ABOVE = 2

const EPSILON = 2 ** -52
/** A squared distance this close to a limit, relative to the squared reach, is on it: rounding of the target is no reason to refuse. */
const LIMIT_SLACK = 8 * EPSILON

/**
 * Places and static forces of the three-joint leg on plain SI numbers; the part of `LegKernel` without rates.
 *
 * Joint angles are q1 (sideways hip, about +x), q2 (hip, about +y) and q3 (knee, about +y), right-handed, zero with the leg straight down.
 * Every method writes from `offset` on into a buffer of the caller.
 */
export class LegGeometryKernel {
  /** Squared distances within this of a limit are on it. */
  readonly slack: number
  private readonly offsetSquared: number
  private readonly farthest: number
  private readonly nearest: number
  private readonly squares: number
  private readonly upperTwice: number

  constructor(
    /** Sideways offset of the leg plane from the sideways hip's axis, positive to the left. */
    readonly hipOffset: number,
    /** Hip axis to knee axis. */
    readonly upperLink: number,
    /** Knee axis to foot point. */
    readonly lowerLink: number,
  ) {
    const l1 = upperLink
    const l2 = lowerLink
    this.offsetSquared = hipOffset * hipOffset
    this.farthest = (l1 + l2) * (l1 + l2)
    this.nearest = (l1 - l2) * (l1 - l2)
    this.squares = l1 * l1 + l2 * l2
    this.upperTwice = 2 * l1 * l1
    this.slack = LIMIT_SLACK * (this.farthest + this.offsetSquared)
  }

  /** Foot position x, y, z (3 numbers). */
  footInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const q23 = q2 + q3
    const Z = -l1 * Math.cos(q2) - l2 * Math.cos(q23)
    const s = Math.sin(q1)
    const c = Math.cos(q1)
    out[offset] = -l1 * Math.sin(q2) - l2 * Math.sin(q23)
    out[offset + 1] = d * c - Z * s
    out[offset + 2] = d * s + Z * c
  }

  /** Hip point, knee point and foot point, x, y, z each (9 numbers). The axis of the sideways hip passes through the origin. */
  jointsInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const s = Math.sin(q1)
    const c = Math.cos(q1)
    const kneeX = -l1 * Math.sin(q2)
    const kneeZ = -l1 * Math.cos(q2)
    const footX = kneeX - l2 * Math.sin(q2 + q3)
    const footZ = kneeZ - l2 * Math.cos(q2 + q3)
    out[offset] = 0
    out[offset + 1] = d * c
    out[offset + 2] = d * s
    out[offset + 3] = kneeX
    out[offset + 4] = d * c - kneeZ * s
    out[offset + 5] = d * s + kneeZ * c
    out[offset + 6] = footX
    out[offset + 7] = d * c - footZ * s
    out[offset + 8] = d * s + footZ * c
  }

  /**
   * Joint angles q1, q2, q3 (3 numbers, each in (−π, π]) that put the foot at x, y, z on one of four branches:
   * 0, or the sum of `KNEE_BACKWARD` and `FOOT_ABOVE`. Returns `REACHED`, or the reason why not, and then writes nothing.
   *
   * Where a joint is free (foot on the sideways hip's axis without offset, foot on the hip axis of equal links) its angle is 0.
   */
  jointAnglesInto(out: Float64Array, offset: number, x: number, y: number, z: number, branch: number): number {
    const d = this.hipOffset
    const slack = this.slack
    let height = y * y + z * z - this.offsetSquared
    // Each guard tests that the number is in range, so that one that is not a number fails it.
    if (!(height >= 0)) {
      if (!(height >= -slack)) return height < 0 ? INSIDE_OFFSET : NOT_A_NUMBER
      height = 0
    }
    const distance = x * x + height
    let far = this.farthest - distance
    let near = distance - this.nearest
    if (!(far >= 0)) {
      if (!(far >= -slack)) return far < 0 ? TOO_FAR : NOT_A_NUMBER
      far = 0
    }
    if (!(near >= 0)) {
      if (!(near >= -slack)) return TOO_NEAR
      near = 0
    }
    // Sine and cosine of the knee, both times 2 l1 l2; the hip and the sideways hip as one angle between two vectors each.
    const kneeSine = (branch & KNEE_BACKWARD) === 0 ? Math.sqrt(far * near) : -Math.sqrt(far * near)
    const kneeCosine = distance - this.squares
    const along = this.upperTwice + kneeCosine
    const Z = (branch & FOOT_ABOVE) === 0 ? -Math.sqrt(height) : Math.sqrt(height)
    // Adding zero turns −0 into 0, which would make π of a free angle.
    out[offset] = Math.atan2(z * d - y * Z + 0, y * d + z * Z + 0)
    out[offset + 1] = Math.atan2(Z * kneeSine - x * along + 0, -Z * along - x * kneeSine + 0)
    out[offset + 2] = Math.atan2(kneeSine + 0, kneeCosine)
    return REACHED
  }

  /** Jacobian of the foot point in the leg's frame, row-major: out[3 i + j] = ∂(x, y, z)i/∂qj (9 numbers). */
  jacobianInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const q23 = q2 + q3
    const shankX = -l2 * Math.sin(q23)
    const shankZ = -l2 * Math.cos(q23)
    const X = shankX - l1 * Math.sin(q2)
    const Z = shankZ - l1 * Math.cos(q2)
    const s = Math.sin(q1)
    const c = Math.cos(q1)
    out[offset] = 0
    out[offset + 1] = Z
    out[offset + 2] = shankZ
    out[offset + 3] = -d * s - Z * c
    out[offset + 4] = X * s
    out[offset + 5] = shankX * s
    out[offset + 6] = d * c - Z * s
    out[offset + 7] = -X * c
    out[offset + 8] = -shankX * c
  }

  /** Joint torques (3 numbers) that make the foot push its surroundings with the force fx, fy, fz: τ = Jᵀ F. */
  torqueFromFootPushInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number, fx: number, fy: number, fz: number): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const q23 = q2 + q3
    const shankX = -l2 * Math.sin(q23)
    const shankZ = -l2 * Math.cos(q23)
    const X = shankX - l1 * Math.sin(q2)
    const Z = shankZ - l1 * Math.cos(q2)
    const s = Math.sin(q1)
    const c = Math.cos(q1)
    // Force across the leg plane's vertical, in the leg plane.
    const inPlane = fy * s - fz * c
    out[offset] = -(d * s + Z * c) * fy + (d * c - Z * s) * fz
    out[offset + 1] = Z * fx + X * inPlane
    out[offset + 2] = shankZ * fx + shankX * inPlane
  }

  /**
   * Everything a force loop needs at one pose (15 numbers): foot position, Jacobian (row-major), and the joint torques that make
   * the foot push with fx, fy, fz.
   */
  stateInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number, fx: number, fy: number, fz: number): void {
    const { hipOffset: d, upperLink: l1, lowerLink: l2 } = this
    const q23 = q2 + q3
    const shankX = -l2 * Math.sin(q23)
    const shankZ = -l2 * Math.cos(q23)
    const X = shankX - l1 * Math.sin(q2)
    const Z = shankZ - l1 * Math.cos(q2)
    const s = Math.sin(q1)
    const c = Math.cos(q1)
    const y = d * c - Z * s
    const z = d * s + Z * c
    const inPlane = fy * s - fz * c
    out[offset] = X
    out[offset + 1] = y
    out[offset + 2] = z
    out[offset + 3] = 0
    out[offset + 4] = Z
    out[offset + 5] = shankZ
    out[offset + 6] = -z
    out[offset + 7] = X * s
    out[offset + 8] = shankX * s
    out[offset + 9] = y
    out[offset + 10] = -X * c
    out[offset + 11] = -shankX * c
    out[offset + 12] = y * fz - z * fy
    out[offset + 13] = Z * fx + X * inPlane
    out[offset + 14] = shankZ * fx + shankX * inPlane
  }
}
