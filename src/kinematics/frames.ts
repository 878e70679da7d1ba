import type { FrameSi } from './chain-geometry-kernel.js'
import type { LinkSi } from './link.js'

/** Frames on plain SI numbers: rotation row-major (9), position (3). Used when chains are built; nothing here is hot. */

/** The frame that changes nothing. */
export const IDENTITY: FrameSi = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0]

/** One frame after another. */
export function compose(a: FrameSi, b: FrameSi): number[] {
  const out = new Array<number>(12).fill(0)
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) out[3 * i + j] = a[3 * i]! * b[j]! + a[3 * i + 1]! * b[3 + j]! + a[3 * i + 2]! * b[6 + j]!
    out[9 + i] = a[3 * i]! * b[9]! + a[3 * i + 1]! * b[10]! + a[3 * i + 2]! * b[11]! + a[9 + i]!
  }
  return out
}

/** The frame that undoes a frame. */
export function inverse(a: FrameSi): number[] {
  const out = new Array<number>(12).fill(0)
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) out[3 * i + j] = a[3 * j + i]!
    out[9 + i] = -(a[i]! * a[9]! + a[3 + i]! * a[10]! + a[6 + i]! * a[11]!)
  }
  return out
}

/** A shift. */
export const shift = (x: number, y: number, z: number): number[] => [1, 0, 0, 0, 1, 0, 0, 0, 1, x, y, z]

/** A turn about x. */
export const turnX = (angle: number): number[] => {
  const s = Math.sin(angle)
  const c = Math.cos(angle)
  return [1, 0, 0, 0, c, -s, 0, s, c, 0, 0, 0]
}

/** A turn about z. */
export const turnZ = (angle: number): number[] => {
  const s = Math.sin(angle)
  const c = Math.cos(angle)
  return [c, -s, 0, s, c, 0, 0, 0, 1, 0, 0, 0]
}

/** A rotation whose third column is the unit vector x, y, z. */
export function alignZ(x: number, y: number, z: number): number[] {
  // The base axis least along the direction gives the best-conditioned first column.
  const helper = Math.abs(x) <= Math.abs(y) && Math.abs(x) <= Math.abs(z) ? [1, 0, 0] : Math.abs(y) <= Math.abs(z) ? [0, 1, 0] : [0, 0, 1]
  const [hx, hy, hz] = helper as [number, number, number]
  const ux = hy * z - hz * y
  const uy = hz * x - hx * z
  const uz = hx * y - hy * x
  const size = Math.hypot(ux, uy, uz)
  const [ax, ay, az] = [ux / size, uy / size, uz / size]
  return [ax, y * az - z * ay, x, ay, z * ax - x * az, y, az, x * ay - y * ax, z, 0, 0, 0]
}

/** A link's ten numbers (mass, centre of mass, inertia about it) as seen from a frame in which the link's own frame is at `frame`. */
export function linkIn(frame: FrameSi, link: LinkSi): number[] {
  const [m, cx, cy, cz, xx, yy, zz, xy, xz, yz] = link
  const centre = [0, 1, 2].map((i) => frame[3 * i]! * cx + frame[3 * i + 1]! * cy + frame[3 * i + 2]! * cz + frame[9 + i]!)
  const I = [
    [xx, xy, xz],
    [xy, yy, yz],
    [xz, yz, zz],
  ]
  const turned = (i: number, j: number) => {
    let sum = 0
    for (let k = 0; k < 3; k++) for (let l = 0; l < 3; l++) sum += frame[3 * i + k]! * I[k]![l]! * frame[3 * j + l]!
    return sum
  }
  return [m, ...centre, turned(0, 0), turned(1, 1), turned(2, 2), turned(0, 1), turned(0, 2), turned(1, 2)]
}
