import type { Given, Inputs, Si } from '../formula/index.js'
import { kernelFromScrews } from './chain-build.js'
import type { ChainKernel } from './chain-kernel.js'
import type { ThreeJointLeg } from './leg.js'
import { LINK } from './link.js'
import { xyz } from './vectors.js'

const LEG = {
  /** Origin of the leg's frame in the body's frame. */
  at: { fields: /* @__PURE__ */ xyz('length') },
  /** The link between the sideways hip and the hip, as in `legDynamics`. */
  hipLink: { fields: LINK },
  /** The link from hip to knee, as in `legDynamics`. */
  upperLink: { fields: LINK },
  /** The link from knee to foot, with the foot, as in `legDynamics`. */
  lowerLink: { fields: LINK },
} as const

export const SPECIFICATION = {
  /** Mass, centre of mass and inertia of the body, in its own frame. */
  body: { fields: LINK },
  /** The legs. */
  legs: { list: { fields: LEG } },
} as const satisfies Inputs

type Masses = Given<typeof SPECIFICATION>

/** A body and its legs: each leg's geometry, the place of its frame in the body's, and its links' masses as `legDynamics` takes them. */
export interface FloatingRobotSpecification {
  /** Mass, centre of mass and inertia of the body, in its own frame. */
  readonly body: Masses['body']
  /** The legs: where each is, its links and its geometry. */
  readonly legs: readonly (Masses['legs'][number] & {
    /** Geometry of the leg, as `threeJointLeg` makes it. */
    readonly leg: ThreeJointLeg
  })[]
}

const metres = (x: number, y: number, z: number) => ({ x: [x, 'm'], y: [y, 'm'], z: [z, 'm'] }) as const

/** A leg as a chain on the body. */
export function chainOf(leg: ThreeJointLeg, { at, hipLink, upperLink, lowerLink }: Si<typeof LEG>): ChainKernel {
  const { hipOffset: d, upperLink: l1, lowerLink: l2 } = leg.si
  const joints = [0, -l1].map((z) => [at.x, at.y + d, at.z + z] as const)
  const link = ({ mass, centreOfMass: c, inertia }: Si<typeof LINK>, [x, y, z]: readonly [number, number, number]) => ({
    mass: [mass, 'kg'] as const,
    centreOfMass: metres(x + c.x, y + c.y, z + c.z),
    ...(inertia === undefined
      ? {}
      : { inertia: Object.fromEntries(Object.entries(inertia).map(([name, value]) => [name, [value, 'kg m^2'] as const])) }),
  })
  const across = { x: 0, y: 1, z: 0 }
  return kernelFromScrews({
    screws: [
      { axis: { x: 1, y: 0, z: 0 }, point: metres(at.x, at.y, at.z) },
      { axis: across, point: metres(...joints[0]!) },
      { axis: across, point: metres(...joints[1]!) },
    ],
    tool: { position: metres(at.x, at.y + d, at.z - l1 - l2) },
    links: [link(hipLink, [at.x, at.y, at.z]), link(upperLink, joints[0]!), link(lowerLink, joints[1]!)],
  })
}
