import { KNEE_BACKWARD, LegKernel } from '../kinematics/index.js'
import type { Prepared } from './numbers.js'
import { rodDynamics } from './parts/motion/stride.js'

/** The knee's side, from its limits. */
export const branchOf = ({ x }: Prepared): number => (x.joints.knee.from + x.joints.knee.to < 0 ? KNEE_BACKWARD : 0)

/** Joint angles of the standing leg. */
export function poseOf(leg: Prepared): readonly [number, number, number] {
  const { links, robot } = leg.x
  const out = new Float64Array(3)
  new LegKernel(links.hipOffset, links.upper.length, links.lower.length).jointAnglesInto(
    out,
    0,
    0,
    links.hipOffset,
    -robot.standHeight,
    branchOf(leg),
  )
  return [out[0]!, out[1]!, out[2]!]
}

/** Inverse dynamics of the links of a leg as even rods. */
export const rodLeg = ({ x: { links } }: Prepared, gravity: number) =>
  rodDynamics(
    {
      hipOffset: links.hipOffset,
      upperLink: links.upper.length,
      lowerLink: links.lower.length,
      upperMass: links.upper.mass,
      lowerMass: links.lower.mass,
    },
    gravity,
  )
