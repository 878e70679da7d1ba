import type { LegModel } from './leg-model.js'
import { type DrivenJoint, type OfDrivenJoints, ofDrivenJoints } from './numbers.js'
import { jointState } from './what-if.js'

/** A joint in the walk, in the direction in which its drive bears more: it winds up farther and is softer there. */
export function harderWalk(leg: LegModel, joint: DrivenJoint): ReturnType<typeof jointState> {
  const [forward, back] = [jointState(leg, 'walk', joint), jointState(leg, 'walkBack', joint)]
  return Math.abs(back.drum.torque) > Math.abs(forward.drum.torque) ? back : forward
}

/** Every driven joint likewise. */
export const harderWalks = (leg: LegModel): { readonly joints: OfDrivenJoints<ReturnType<typeof jointState>> } => ({
  joints: ofDrivenJoints(leg.x, (joint) => harderWalk(leg, joint)),
})
