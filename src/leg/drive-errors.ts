import { type AngleErrorSource, eccentricityError } from '../kinematics/index.js'
import type { LegModel } from './leg-model.js'
import { driveOf, hasCord, JOINTS, type Joint } from './numbers.js'
import { beltOrCordOf, SECOND_STAGE } from './second-stage.js'
import { throughRatio } from './through-ratio.js'
import type { CaseState } from './what-if.js'
import { windups } from './windup.js'

type Both = (name: string, of: (joint: Joint) => number) => AngleErrorSource

/** A cord of a joint's drive: its stage, and the turns of the drive's drum for one of the drum that the cord turns. */
interface Cord {
  readonly stage: Joint
  readonly turns: number
}

/** The cords between the motor of a joint and the joint: that of its drive, and one along the upper link behind it. */
function cordsOf({ x }: LegModel, joint: Joint): readonly Cord[] {
  const own = hasCord(x, joint) ? [{ stage: joint, turns: 1 }] : []
  if (joint !== 'knee' || beltOrCordOf(x)?.kind !== 'cord') return own
  return [...own, { stage: SECOND_STAGE as Joint, turns: Math.abs(throughRatio(x) as number) }]
}
const overCords = (leg: LegModel, of: (cord: Cord, joint: Joint) => number) => (joint: Joint) =>
  cordsOf(leg, joint).reduce((sum, cord) => sum + cord.turns * of(cord, joint), 0)

/** Windup of the drives, what friction keeps of it in cords, and free play where there is any. */
export function windupSources(leg: LegModel, { joints }: Pick<CaseState, 'joints'>, both: Both): AngleErrorSource[] {
  const all = JOINTS.every((joint) => hasCord(leg.x, joint)) && beltOrCordOf(leg.x)?.kind !== 'belt'
  const name = all ? 'cord windup' : 'windup of the drives'
  const plays = JOINTS.some((joint) => joints[joint].transmission.freePlay > 0)
  // A cord behind another bears the torque of the drive's drum times the turns of that drum.
  const kept = overCords(leg, ({ stage, turns }, joint) => keptWindup(leg, stage, joints[joint].drum.torque * turns))
  return [
    both(`${name} at walking torque`, (joint) => joints[joint].transmission.windup),
    ...(JOINTS.some((joint) => cordsOf(leg, joint).length > 0) ? [both('windup that friction keeps when the torque is gone', kept)] : []),
    ...(plays ? [both('free play of the drives', (joint) => joints[joint].transmission.freePlay)] : []),
  ]
}

/** Drums of cords that do not run true. */
export function drumSources(leg: LegModel, both: Both): AngleErrorSource[] {
  if (JOINTS.every((joint) => cordsOf(leg, joint).length === 0)) return []
  const outOfTrue = overCords(leg, ({ stage }) => {
    const { runout } = driveOf(leg.x, stage, 'cord').drum
    return eccentricityError.si({ eccentricity: runout / 2, trackRadius: leg.drives[stage].drumRadius, angle: 0 }).worstError
  })
  return [both('drum out of true', outOfTrue)]
}

/** Joint angle that is left when the torque has gone to nothing: friction in the wraps holds some of the stretch. */
function keptWindup(leg: LegModel, joint: Joint, torque: number): number {
  const { axialRigidity } = leg.drives[joint].cord
  return Math.abs(windups(leg, joint, axialRigidity, [Math.abs(torque), 0])[1]!)
}
