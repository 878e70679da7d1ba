import type { Inputs, Si } from '../formula/index.js'
import { InputError, type Note } from '../units/index.js'
import { determinant3 } from './matrix3.js'
import { xyz } from './vectors.js'

const INERTIA = { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' } as const
const PRODUCT = { kind: 'momentOfInertia', default: '0 kg m^2' } as const
/** A rigid link as `readInputs` takes it: mass, centre of mass and inertia about the centre of mass (off-diagonal terms −∫ r_i r_j dm). @internal */
export const LINK = {
  /** Mass of the link. */
  mass: { kind: 'mass', min: 0 },
  /** Place of the centre of mass in the link's frame. */
  centreOfMass: { fields: /* @__PURE__ */ xyz('length') },
  /** Inertia about the centre of mass. Default: a point mass. */
  inertia: {
    fields: {
      /** Moment of inertia about the axis along x through the centre of mass. Default 0. */
      xx: INERTIA,
      /** Moment of inertia about the axis along y through the centre of mass. Default 0. */
      yy: INERTIA,
      /** Moment of inertia about the axis along z through the centre of mass. Default 0. */
      zz: INERTIA,
      /** Off-diagonal term −∫ x y dm. Default 0. */
      xy: PRODUCT,
      /** Off-diagonal term −∫ x z dm. Default 0. */
      xz: PRODUCT,
      /** Off-diagonal term −∫ y z dm. Default 0. */
      yz: PRODUCT,
    },
    optional: true,
  },
} as const satisfies Inputs
/** A rigid link on plain SI numbers, in the kernel's order: mass, centre of mass, inertia about it. @internal */
export type LinkSi = readonly [
  mass: number,
  x: number,
  y: number,
  z: number,
  xx: number,
  yy: number,
  zz: number,
  xy: number,
  xz: number,
  yz: number,
]
/** One link's ten numbers in the kernel's order. Throws an `InputError` for an inertia that no body has. @internal */
export const linkSi = (where: string, path: string, link: Si<typeof LINK>, notes?: Note[]): LinkSi => {
  const { mass, centreOfMass: c, inertia } = link
  const { xx, yy, zz, xy, xz, yz } = inertia ?? { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 }
  const slack = 1e-12 * (xx + yy + zz)
  if (!positiveSemidefinite([xx, xy, xz, xy, yy, yz, xz, yz, zz], slack))
    throw new InputError(where, [
      {
        path: `${path}.inertia`,
        given: 'products beyond its moments',
        accepts: 'must be the tensor of a body: no axis with a moment below zero',
      },
    ])
  const half = 0.5 * (xx + yy + zz)
  if (!positiveSemidefinite([half - xx, -xy, -xz, -xy, half - yy, -yz, -xz, -yz, half - zz], slack))
    notes?.push(note(where, `${path}.inertia: one moment is larger than the other two joinedLinks, which no body has; check its unit`))
  if (mass === 0 && half > 0) notes?.push(note(where, `${path}: moments of inertia without mass, which no body has; check their units`))
  return [mass, c.x, c.y, c.z, xx, yy, zz, xy, xz, yz]
}

const note = (formula: string, text: string): Note => ({ formula, text })

/** Whether no axis has a moment below zero, to rounding. */
const positiveSemidefinite = (a: readonly number[], slack: number): boolean => {
  const minor = (i: number, j: number) => a[4 * i]! * a[4 * j]! - a[3 * i + j]! ** 2
  return (
    [0, 4, 8].every((k) => a[k]! >= -slack) &&
    Math.min(minor(0, 1), minor(0, 2), minor(1, 2)) >= -slack * slack &&
    determinant3(a) >= -(slack ** 3)
  )
}

/** Two bodies fixed together as one: ten numbers each, in one frame. @internal */
export function joinedLinks(a: readonly number[], b: readonly number[]): number[] {
  const [ma, mb] = [a[0]!, b[0]!]
  const mass = ma + mb
  const centre = [1, 2, 3].map((i) => (mass === 0 ? 0 : (ma * a[i]! + mb * b[i]!) / mass))
  const out = [mass, ...centre, 0, 0, 0, 0, 0, 0]
  for (const body of [a, b]) {
    const [x, y, z] = [1, 2, 3].map((i) => body[i]! - centre[i - 1]!) as [number, number, number]
    const m = body[0]!
    const steiner = [m * (y * y + z * z), m * (x * x + z * z), m * (x * x + y * y), -m * x * y, -m * x * z, -m * y * z]
    for (let k = 0; k < 6; k++) out[4 + k]! += body[4 + k]! + steiner[k]!
  }
  return out
}
