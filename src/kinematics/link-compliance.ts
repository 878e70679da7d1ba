import type { Inputs, Si } from '../formula/index.js'
import type { ThreeJointLeg } from './leg.js'

export const BEAM = {
  /** Bending rigidity E I for bending in the leg's plane. */
  inPlane: { kind: 'bendingRigidity', above: 0 },
  /** Bending rigidity E I for bending across the leg's plane. */
  acrossPlane: { kind: 'bendingRigidity', above: 0 },
  /** Torsional rigidity G J. */
  torsion: { kind: 'bendingRigidity', above: 0 },
} as const satisfies Inputs

type Beam = Si<typeof BEAM>
const ROOT = /* @__PURE__ */ Math.sqrt(0.6) / 2
const GAUSS = [
  [0.5 - ROOT, 5 / 18],
  [0.5, 8 / 18],
  [0.5 + ROOT, 5 / 18],
] as const

/** Movement of the foot by bending and torsion of the links, row-major, m/N: the integral of unit moments over each link (three Gauss points are exact). */
export function linkCompliance(
  leg: ThreeJointLeg,
  q: readonly [number, number, number],
  upper: Beam | undefined,
  lower: Beam | undefined,
): Float64Array {
  const out = new Float64Array(9)
  const points = new Float64Array(9)
  leg.si.jointsInto(points, 0, ...q)
  const foot = points.subarray(6, 9)
  const normal = [0, Math.cos(q[0]), Math.sin(q[0])]
  for (const [from, to, beam] of [
    [points.subarray(0, 3), points.subarray(3, 6), upper],
    [points.subarray(3, 6), foot, lower],
  ] as const) {
    if (beam === undefined) continue
    const along = [0, 1, 2].map((i) => to[i]! - from[i]!)
    const length = Math.hypot(...along)
    const axis = along.map((x) => x / length)
    const third = [
      normal[1]! * axis[2]! - normal[2]! * axis[1]!,
      normal[2]! * axis[0]! - normal[0]! * axis[2]!,
      normal[0]! * axis[1]! - normal[1]! * axis[0]!,
    ]
    const flexibilities = [
      [normal, 1 / beam.inPlane],
      [third, 1 / beam.acrossPlane],
      [axis, 1 / beam.torsion],
    ] as const
    for (const [position, weight] of GAUSS) {
      const arm = [0, 1, 2].map((i) => foot[i]! - from[i]! - position * along[i]!)
      for (const [u, flexibility] of flexibilities) {
        // Moment about u of a unit force along each axis: u · (arm × e).
        const moment = [u[1]! * arm[2]! - u[2]! * arm[1]!, u[2]! * arm[0]! - u[0]! * arm[2]!, u[0]! * arm[1]! - u[1]! * arm[0]!]
        for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) out[3 * i + j]! += weight * length * flexibility * moment[i]! * moment[j]!
      }
    }
  }
  return out
}
