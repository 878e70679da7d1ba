import { KNEE_BACKWARD, LegKernel } from '../kinematics/index.js'
import { placeOf } from './calculation.js'
import type { LegModel } from './leg-model.js'
import { body } from './parts/links/values.js'
import { linkDynamics } from './parts/motion/link-dynamics.js'
import { calculationFor } from './what-if.js'

/** The knee's side, from its limits. */
export const branchOf = ({ x: { joints } }: LegModel): number =>
  joints.knee.range.lowest + joints.knee.range.highest < 0 ? KNEE_BACKWARD : 0

/** Joint angles of the standing leg. */
export function poseOf(leg: LegModel): readonly [number, number, number] {
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

/** A link with what is mounted on it: mass, centre of mass from its upper joint, inertia about it. */
export function bodyOf(leg: LegModel, link: 'upper' | 'lower'): typeof body.holds {
  const calculation = calculationFor(leg)
  return calculation.get(body, placeOf(calculation, { link }) as never)
}

/** Inverse dynamics of the links of a leg with what is mounted on them. */
export const legInverse = (leg: LegModel, gravity: number) => {
  const { links } = leg.x
  const [upper, lower] = [bodyOf(leg, 'upper'), bodyOf(leg, 'lower')]
  return linkDynamics(
    {
      hipOffset: links.hipOffset,
      upperLink: links.upper.length,
      lowerLink: links.lower.length,
      upperMass: upper.mass,
      lowerMass: lower.mass,
      upperCentre: upper.centre,
      lowerCentre: lower.centre,
      upperInertia: upper.inertia,
      lowerInertia: lower.inertia,
    },
    gravity,
  )
}
