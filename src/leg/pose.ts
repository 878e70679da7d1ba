import { KNEE_BACKWARD, LegKernel } from '../kinematics/index.js'
import { placeOf } from './calculation.js'
import type { Prepared } from './numbers.js'
import { mass } from './parts/links/values.js'
import { rodDynamics } from './parts/motion/stride.js'
import { calculationFor } from './what-if.js'

/** The knee's side, from its limits. */
export const branchOf = ({ x: { joints } }: Prepared): number =>
  joints.knee.range.lowest + joints.knee.range.highest < 0 ? KNEE_BACKWARD : 0

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

/** Mass of a link with what is mounted on it. */
export function massOf(leg: Prepared, link: 'upper' | 'lower'): number {
  const calculation = calculationFor(leg)
  return calculation.get(mass, placeOf(calculation, { link }) as never)
}

/** Inverse dynamics of the links of a leg as even rods. */
export const rodLeg = (leg: Prepared, gravity: number) => {
  const { links } = leg.x
  return rodDynamics(
    {
      hipOffset: links.hipOffset,
      upperLink: links.upper.length,
      lowerLink: links.lower.length,
      upperMass: massOf(leg, 'upper'),
      lowerMass: massOf(leg, 'lower'),
    },
    gravity,
  )
}
