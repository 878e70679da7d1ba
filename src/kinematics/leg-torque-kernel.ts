/** Mass, centre of mass and inertia of one rigid link on plain SI numbers: m, cx, cy, cz, then about the centre of mass xx, yy, zz, xy, xz, yz. */
export type LinkSi = ArrayLike<number>

const NO_ROTORS = /* @__PURE__ */ new Float64Array(9)

/** A copy of a link. Plain arrays are made many times faster than typed ones, and read as fast. */
const linkOf = (x: LinkSi): readonly number[] => [x[0]!, x[1]!, x[2]!, x[3]!, x[4]!, x[5]!, x[6]!, x[7]!, x[8]!, x[9]!]

/**
 * Inverse dynamics of the three-joint leg on plain SI numbers, written out; the part of `LegDynamicsKernel` that everything else there rests on.
 *
 * Each link has a frame of its own, parallel to the leg's frame when the leg hangs straight down: the hip link's on the sideways hip's axis, the
 * upper link's at the hip point, the lower link's at the knee. Outward velocities and accelerations, inward forces and moments
 * (Newton–Euler). The tensors are the usual ones: off-diagonal terms are −∫ r_i r_j dm.
 */
export class LegTorqueKernel {
  protected readonly d: number
  protected readonly l1: number
  protected readonly l2: number
  protected readonly hip: readonly number[]
  protected readonly upper: readonly number[]
  protected readonly lower: readonly number[]
  /** Constants of the motors' rotors as the joints feel them: 11, 22, 23, 33. */
  protected readonly rotor: readonly number[]
  /** Upward acceleration that stands for gravity, in the leg's frame. */
  protected readonly lift: readonly number[]

  constructor(
    hipOffset: number,
    upperLink: number,
    lowerLink: number,
    links: readonly [hip: LinkSi, upper: LinkSi, lower: LinkSi],
    /** Acceleration of free fall in the leg's frame: (0, 0, −9.81) on level ground. */
    gravity: ArrayLike<number>,
    /** Rotor inertia seen by the joints as a symmetric matrix of sideways hip, hip and knee, row-major; the sideways hip is uncoupled. */
    rotorInertia: ArrayLike<number> = NO_ROTORS,
  ) {
    this.d = hipOffset
    this.l1 = upperLink
    this.l2 = lowerLink
    this.hip = linkOf(links[0])
    this.upper = linkOf(links[1])
    this.lower = linkOf(links[2])
    this.rotor = [rotorInertia[0]!, rotorInertia[4]!, rotorInertia[5]!, rotorInertia[8]!]
    this.lift = [-gravity[0]!, -gravity[1]!, -gravity[2]!]
  }

  /**
   * Joint torques (3 numbers) for a motion, with a force of the **ground on the foot** rx, ry, rz (zero in the air).
   * `q`, `w` and `a` are angles, rates and accelerations of sideways hip, hip, knee.
   */
  torqueInto(
    out: Float64Array,
    offset: number,
    q: Float64Array,
    w: Float64Array,
    a: Float64Array,
    rx: number,
    ry: number,
    rz: number,
  ): void {
    const { d, l1, l2, hip, upper, lower, rotor, lift } = this
    const q2 = q[1]!
    const q3 = q[2]!
    const s1 = Math.sin(q[0]!)
    const c1 = Math.cos(q[0]!)
    const s2 = Math.sin(q2)
    const c2 = Math.cos(q2)
    const s3 = Math.sin(q3)
    const c3 = Math.cos(q3)
    const s23 = s2 * c3 + c2 * s3
    const c23 = c2 * c3 - s2 * s3
    const w1 = w[0]!
    const w2 = w[1]!
    const w23 = w2 + w[2]!
    const a1 = a[0]!
    const a2 = a[1]!
    const a23 = a2 + a[2]!

    // Hip link, turning about x: acceleration of its origin, then of its centre of mass.
    const A1x = lift[0]!
    const A1y = lift[1]! * c1 + lift[2]! * s1
    const A1z = lift[2]! * c1 - lift[1]! * s1
    const m1 = hip[0]!
    const b1y = hip[2]!
    const b1z = hip[3]!
    const f1y = m1 * (A1y - a1 * b1z - w1 * w1 * b1y)
    const f1z = m1 * (A1z + a1 * b1y - w1 * w1 * b1z)

    // Upper link.
    const hy = A1y - w1 * w1 * d
    const hz = A1z + a1 * d
    const A2x = c2 * A1x - s2 * hz
    const A2z = s2 * A1x + c2 * hz
    const wx2 = c2 * w1
    const wz2 = s2 * w1
    const ax2 = c2 * a1 - wz2 * w2
    const az2 = s2 * a1 + wx2 * w2
    const m2 = upper[0]!
    const u2x = upper[1]!
    const u2y = upper[2]!
    const u2z = upper[3]!
    const d2 = wx2 * u2x + w2 * u2y + wz2 * u2z
    const ww2 = wx2 * wx2 + w2 * w2 + wz2 * wz2
    const f2x = m2 * (A2x + a2 * u2z - az2 * u2y + wx2 * d2 - ww2 * u2x)
    const f2y = m2 * (hy + az2 * u2x - ax2 * u2z + w2 * d2 - ww2 * u2y)
    const f2z = m2 * (A2z + ax2 * u2y - a2 * u2x + wz2 * d2 - ww2 * u2z)
    const h2x = upper[4]! * wx2 + upper[7]! * w2 + upper[8]! * wz2
    const h2y = upper[7]! * wx2 + upper[5]! * w2 + upper[9]! * wz2
    const h2z = upper[8]! * wx2 + upper[9]! * w2 + upper[6]! * wz2
    const n2x = upper[4]! * ax2 + upper[7]! * a2 + upper[8]! * az2 + w2 * h2z - wz2 * h2y
    const n2y = upper[7]! * ax2 + upper[5]! * a2 + upper[9]! * az2 + wz2 * h2x - wx2 * h2z
    const n2z = upper[8]! * ax2 + upper[9]! * a2 + upper[6]! * az2 + wx2 * h2y - w2 * h2x

    // Lower link: its origin is at (0, 0, −l1) of the upper link.
    const kx = A2x - a2 * l1 - wx2 * wz2 * l1
    const ky = hy + ax2 * l1 - w2 * wz2 * l1
    const kz = A2z + (wx2 * wx2 + w2 * w2) * l1
    const A3x = c3 * kx - s3 * kz
    const A3z = s3 * kx + c3 * kz
    const wx3 = c23 * w1
    const wz3 = s23 * w1
    const ax3 = c23 * a1 - wz3 * w23
    const az3 = s23 * a1 + wx3 * w23
    const m3 = lower[0]!
    const u3x = lower[1]!
    const u3y = lower[2]!
    const u3z = lower[3]!
    const d3 = wx3 * u3x + w23 * u3y + wz3 * u3z
    const ww3 = wx3 * wx3 + w23 * w23 + wz3 * wz3
    const f3x = m3 * (A3x + a23 * u3z - az3 * u3y + wx3 * d3 - ww3 * u3x)
    const f3y = m3 * (ky + az3 * u3x - ax3 * u3z + w23 * d3 - ww3 * u3y)
    const f3z = m3 * (A3z + ax3 * u3y - a23 * u3x + wz3 * d3 - ww3 * u3z)
    const h3x = lower[4]! * wx3 + lower[7]! * w23 + lower[8]! * wz3
    const h3y = lower[7]! * wx3 + lower[5]! * w23 + lower[9]! * wz3
    const h3z = lower[8]! * wx3 + lower[9]! * w23 + lower[6]! * wz3
    const n3x = lower[4]! * ax3 + lower[7]! * a23 + lower[8]! * az3 + w23 * h3z - wz3 * h3y
    const n3y = lower[7]! * ax3 + lower[5]! * a23 + lower[9]! * az3 + wz3 * h3x - wx3 * h3z
    const n3z = lower[8]! * ax3 + lower[9]! * a23 + lower[6]! * az3 + wx3 * h3y - w23 * h3x

    // Inward: ground reaction in the lower link's frame, at (0, 0, −l2).
    const ry1 = ry * c1 + rz * s1
    const rz1 = rz * c1 - ry * s1
    const g3x = c23 * rx - s23 * rz1
    const g3z = s23 * rx + c23 * rz1
    const F3x = f3x - g3x
    const F3y = f3y - ry1
    const F3z = f3z - g3z
    const N3x = n3x + u3y * f3z - u3z * f3y - l2 * ry1
    const N3y = n3y + u3z * f3x - u3x * f3z + l2 * g3x
    const N3z = n3z + u3x * f3y - u3y * f3x

    // The lower link's load in the upper link's frame, then on the upper link.
    const P3x = c3 * F3x + s3 * F3z
    const P3z = c3 * F3z - s3 * F3x
    const F2x = f2x + P3x
    const F2z = f2z + P3z
    const N2x = n2x + u2y * f2z - u2z * f2y + c3 * N3x + s3 * N3z + l1 * F3y
    const N2y = n2y + u2z * f2x - u2x * f2z + N3y - l1 * P3x
    const N2z = n2z + u2x * f2y - u2y * f2x + c3 * N3z - s3 * N3x

    const a3 = a[2]!
    out[offset] = hip[4]! * a1 + b1y * f1z - b1z * f1y + c2 * N2x + s2 * N2z + d * (c2 * F2z - s2 * F2x) + rotor[0]! * a1
    out[offset + 1] = N2y + rotor[1]! * a2 + rotor[2]! * a3
    out[offset + 2] = N3y + rotor[2]! * a2 + rotor[3]! * a3
  }
}
