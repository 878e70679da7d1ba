import { type Given, type Inputs, readInputs, type Si } from '../formula/index.js'
import { InputError } from '../units/index.js'
import type { ChainJointSi } from './chain-geometry-kernel.js'
import { ChainKernel } from './chain-kernel.js'
import { alignZ, compose, IDENTITY, inverse, linkIn, shift, turnX, turnZ } from './frames.js'
import { LINK, linkSi } from './link.js'
import { determinant3, dot3 } from './matrix3.js'
import { noDirection, xyz } from './vectors.js'

const ROTATION = { list: { list: 'ratio', least: 3 }, least: 3, optional: true } as const
const FRAME = {
  /** Origin of the frame. */
  position: { fields: /* @__PURE__ */ xyz('length') },
  /** Rotation matrix, three rows of three numbers. Default: no rotation. */
  rotation: ROTATION,
} as const satisfies Inputs
const COMMON = {
  /** Acceleration of free fall as a vector in the base frame. Default 9.80665 m/s² along −z. */
  gravity: { fields: /* @__PURE__ */ xyz('acceleration'), optional: true },
  /** Inertia of each motor as its output feels it: ratio squared times the rotor's. Default: none. */
  rotorInertia: { list: { kind: 'momentOfInertia', min: 0 }, least: 0, optional: true },
  /** Rows of the matrix from joint rates to output rates. Default: one motor for each joint. */
  actuators: { list: { list: 'ratio' }, optional: true },
} as const satisfies Inputs
const LINKS = { list: { fields: LINK }, least: 0, optional: true } as const
const TYPE = { oneOf: ['turning', 'sliding'], default: 'turning' } as const

const SCREWS = {
  /** Joints in order from the base, with all joints at zero. */
  screws: {
    list: {
      fields: {
        /** Whether the joint turns about its axis or slides along it. Default turning. */
        type: TYPE,
        /** Direction of the axis in the base frame, of any length. */
        axis: { fields: /* @__PURE__ */ xyz('ratio') },
        /** A point on the axis, in the base frame. Default: the origin. */
        point: { fields: /* @__PURE__ */ xyz('length'), optional: true },
        /** Travel along the axis for each radian of a turning joint that screws. Default 0. */
        pitch: { kind: 'length', default: '0 m' },
      },
    },
    least: 0,
  },
  /** Frame of the tool in the base frame, with all joints at zero. */
  tool: { fields: FRAME },
  /** Masses of the links, one for each joint, in the base's axes at zero. Default: weightless. */
  links: LINKS,
  ...COMMON,
} as const satisfies Inputs

/**
 * A chain by screws (product of exponentials): each joint's axis and a point on it **in the base frame with all joints at zero**, and the tool's frame
 * there. `rotorInertia` is that of each motor as its output feels it (ratio squared times the rotor's), one a joint; with `actuators`, the rows of the
 * matrix from joint rates to output rates, it acts through the coupling (Aᵀ diag A). `pitch` is the travel along the axis per radian of a turning joint that screws. Links (mass, centre of mass, inertia about it) are given in the base's axes at zero too.
 */
export interface ScrewChain extends Given<typeof SCREWS> {}

const ROW = {
  /** Whether the joint turns or slides. Default turning. */
  type: TYPE,
  /** Angle θ about z; a turning joint adds its own value. Default 0. */
  theta: { kind: 'angle', default: '0 rad' },
  /** Offset d along z; a sliding joint adds its own value. Default 0. */
  d: { kind: 'length', default: '0 m' },
  /** Length a along x. Default 0. */
  a: { kind: 'length', default: '0 m' },
  /** Twist α about x. Default 0. */
  alpha: { kind: 'angle', default: '0 rad' },
} as const satisfies Inputs
const TABLE = {
  /** Which link a row's `a` and `alpha` belong to: the one after the joint (`standard`) or before it (`modified`). */
  convention: { oneOf: ['standard', 'modified'] },
  /** The rows of the table, from the base on. */
  rows: { list: { fields: ROW }, least: 0 },
  /** Frame of the first row in the base. Default: the base itself. */
  base: { fields: FRAME, optional: true },
  /** Frame of the tool in the last row's frame. Default: that frame. */
  tool: { fields: FRAME, optional: true },
  /** Masses of the links, one for each row, in the frame that the row ends with. Default: weightless. */
  links: LINKS,
  ...COMMON,
} as const satisfies Inputs

/**
 * A chain by Denavit–Hartenberg parameters. The same four numbers mean different chains in the two conventions, so the convention must be named:
 *
 * - `standard`: Rz(θ) Tz(d) Tx(a) Rx(α), each row's a and α belong to the link after the joint;
 * - `modified`: Rx(α) Tx(a) Rz(θ) Tz(d), each row's a and α belong to the link before the joint.
 *
 * The joint's own value adds to θ (turning) or to d (sliding). Links are given in the frame that their row ends with.
 */
export interface DenavitHartenbergChain extends Given<typeof TABLE> {}

const STANDARD_GRAVITY = [0, 0, -9.80665] as const
const NO_LINK = /* @__PURE__ */ new Float64Array(10)

/** Nine numbers of a rotation given as rows, or an `InputError`. @internal */
export function rotationSi(where: string, path: string, rows: readonly (readonly number[])[]): number[] {
  const R = rows.flat()
  const proper =
    rows.length === 3 &&
    rows.every((row, i) => row.length === 3 && rows.every((other, j) => Math.abs(dot3(row, other) - +(i === j)) < 1e-9)) &&
    determinant3(R) > 0
  if (!proper) throw new InputError(where, [{ path, given: 'another matrix', accepts: 'must be the three rows of a rotation' }])
  return R
}

const frameSi = (where: string, path: string, { position, rotation }: Si<typeof FRAME>): number[] => [
  ...(rotation === undefined ? [1, 0, 0, 0, 1, 0, 0, 0, 1] : rotationSi(where, `${path}.rotation`, rotation)),
  position.x,
  position.y,
  position.z,
]

function finish(
  where: string,
  name: string,
  joints: readonly ChainJointSi[],
  tool: ArrayLike<number>,
  given: {
    readonly gravity?: { x: number; y: number; z: number } | undefined
    readonly rotorInertia?: readonly number[] | undefined
    readonly actuators?: readonly (readonly number[])[] | undefined
  },
  links: number | undefined,
): ChainKernel {
  const n = joints.length
  if (n === 0) throw new InputError(where, [{ path: name, given: 'an empty list', accepts: 'a chain needs at least one joint' }])
  if (links !== undefined && links !== n)
    throw new InputError(where, [{ path: 'links', given: `${links} links`, accepts: `must be one for each of the ${n} joints` }])
  const { gravity: g, rotorInertia, actuators } = given
  if (rotorInertia !== undefined && rotorInertia.length !== n)
    throw new InputError(where, [
      { path: 'rotorInertia', given: `${rotorInertia.length} values`, accepts: `must be one for each of the ${n} joints` },
    ])
  if (actuators !== undefined && (actuators.length !== n || actuators.some((row) => row.length !== n)))
    throw new InputError(where, [{ path: 'actuators', given: 'another shape', accepts: `must be ${n} rows of ${n} ratios` }])
  const rotor = new Float64Array(n * n)
  for (let k = 0; k < n; k++)
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        const [a, b] = actuators === undefined ? [+(i === k), +(j === k)] : [actuators[k]![i]!, actuators[k]![j]!]
        rotor[i * n + j]! += a * (rotorInertia?.[k] ?? 0) * b
      }
  return new ChainKernel(joints, tool, g === undefined ? STANDARD_GRAVITY : [g.x, g.y, g.z], rotor)
}

/** The kernel of a chain given by screws. @internal */
export function kernelFromScrews(given: ScrewChain): ChainKernel {
  const where = 'kinematics.chainFromScrews'
  const spec = readInputs(where, SCREWS, given)
  // Every joint's frame at zero, in the base: on the axis, with z along it.
  const frames = spec.screws.map(({ type, axis, point }, i) => {
    const size = Math.hypot(axis.x, axis.y, axis.z)
    if (size === 0) throw noDirection(where, `screws[${i}].axis`)
    if (type === 'turning' && point === undefined)
      throw new InputError(where, [{ path: `screws[${i}].point`, given: 'missing', accepts: 'a turning joint needs a point on its axis' }])
    return compose(shift(point?.x ?? 0, point?.y ?? 0, point?.z ?? 0), alignZ(axis.x / size, axis.y / size, axis.z / size))
  })
  const joints = frames.map((frame, i): ChainJointSi => {
    const link = spec.links?.[i]
    return {
      sliding: spec.screws[i]!.type === 'sliding',
      pitch: spec.screws[i]!.pitch,
      frame: compose(inverse(i === 0 ? IDENTITY : frames[i - 1]!), frame),
      link: link === undefined ? NO_LINK : linkIn(inverse(frame), linkSi(where, `links[${i}]`, link)),
    }
  })
  const tool = frameSi(where, 'tool', spec.tool)
  return finish(where, 'screws', joints, frames.length === 0 ? tool : compose(inverse(frames.at(-1)!), tool), spec, spec.links?.length)
}

/** The kernel of a chain given by Denavit–Hartenberg rows. @internal */
export function kernelFromTable(given: DenavitHartenbergChain): ChainKernel {
  const where = 'kinematics.chainFromDenavitHartenberg'
  const spec = readInputs(where, TABLE, given)
  const standard = spec.convention === 'standard'
  let before: ArrayLike<number> = spec.base === undefined ? IDENTITY : frameSi(where, 'base', spec.base)
  const joints: ChainJointSi[] = []
  spec.rows.forEach(({ type, theta, d, a, alpha }, i) => {
    const link = spec.links?.[i]
    const own = compose(turnZ(theta), shift(0, 0, d))
    const across = standard ? compose(shift(a, 0, 0), turnX(alpha)) : compose(turnX(alpha), shift(a, 0, 0))
    joints.push({
      sliding: type === 'sliding',
      frame: standard ? compose(before, own) : compose(before, compose(across, own)),
      link: link === undefined ? NO_LINK : linkIn(standard ? across : IDENTITY, linkSi(where, `links[${i}]`, link)),
    })
    before = standard ? across : IDENTITY
  })
  const tool = spec.tool === undefined ? IDENTITY : frameSi(where, 'tool', spec.tool)
  return finish(where, 'rows', joints, compose(before, tool), spec, spec.links?.length)
}
