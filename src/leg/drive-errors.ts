import { type AngleErrorSource, eccentricityError, encoderStep } from '../kinematics/index.js'
import type { LegModel } from './leg-model.js'
import { type DrivenJoint, drivenJoints, driveOf, entriesOfJoints, hasCord, type Joint, motorOf, type OfDrivenJoints } from './numbers.js'
import { beltOrCordOf, SECOND_STAGE } from './second-stage.js'
import { throughRatio } from './through-ratio.js'
import type { jointState } from './what-if.js'
import { windups } from './windup.js'

/** An error of every driven joint. */
type Both = (name: string, of: (joint: DrivenJoint) => number) => AngleErrorSource
type States = { readonly joints: OfDrivenJoints<ReturnType<typeof jointState>> }

/** A cord of a joint's drive: its stage, and the turns of the drive's drum for one of the drum that the cord turns. */
interface Cord {
  readonly stage: DrivenJoint
  readonly turns: number
}

/** The cords between the motor of a joint and the joint: that of its drive, and one along the upper link behind it. */
function cordsOf({ x }: LegModel, joint: DrivenJoint): readonly Cord[] {
  const own = hasCord(x, joint) ? [{ stage: joint, turns: 1 }] : []
  if (joint !== 'knee' || beltOrCordOf(x)?.kind !== 'cord') return own
  return [...own, { stage: SECOND_STAGE as Joint, turns: Math.abs(throughRatio(x) as number) }]
}
const overCords = (leg: LegModel, of: (cord: Cord, joint: DrivenJoint) => number) => (joint: DrivenJoint) =>
  cordsOf(leg, joint).reduce((sum, cord) => sum + cord.turns * of(cord, joint), 0)

/** Windup of the drives, what friction keeps of it in cords, and free play where there is any. */
export function windupSources(leg: LegModel, { joints }: States, both: Both): AngleErrorSource[] {
  const driven = drivenJoints(leg.x)
  const all = driven.every((joint) => hasCord(leg.x, joint)) && beltOrCordOf(leg.x)?.kind !== 'belt'
  const name = all ? 'cord windup' : 'windup of the drives'
  const plays = entriesOfJoints(joints).some(([, { transmission }]) => transmission.freePlay > 0)
  const of = (joint: DrivenJoint) => joints[joint] as States['joints'][Joint]
  // A cord behind another bears the torque of the drive's drum times the turns of that drum.
  const kept = overCords(leg, ({ stage, turns }, joint) => keptWindup(leg, stage, of(joint).drum.torque * turns))
  return [
    both(`${name} at walking torque`, (joint) => of(joint).transmission.windup),
    ...(driven.some((joint) => cordsOf(leg, joint).length > 0) ? [both('windup that friction keeps when the torque is gone', kept)] : []),
    ...(plays ? [both('free play of the drives', (joint) => of(joint).transmission.freePlay)] : []),
  ]
}

/** Rounding and accuracy of the encoders behind the motors. */
export function encoderSources({ x }: LegModel, { joints }: States, both: Both): AngleErrorSource[] {
  const ratioOf = (joint: DrivenJoint) => (joints[joint] as States['joints'][Joint]).transmission.ratio
  return [
    both(
      'encoder rounding',
      (joint) => encoderStep.si({ countsPerTurn: motorOf(x, joint).encoderCounts, turnsPerJointTurn: ratioOf(joint) }).worstError,
    ),
    both('encoder accuracy over a turn', (joint) => motorOf(x, joint).encoderAccuracy / ratioOf(joint)),
  ]
}

/** Drums of cords that do not run true. */
export function drumSources(leg: LegModel, both: Both): AngleErrorSource[] {
  if (drivenJoints(leg.x).every((joint) => cordsOf(leg, joint).length === 0)) return []
  const outOfTrue = overCords(leg, ({ stage }) => {
    const { runout } = driveOf(leg.x, stage, 'cord').drum
    return eccentricityError.si({ eccentricity: runout / 2, trackRadius: leg.drives[stage].drumRadius, angle: 0 }).worstError
  })
  return [both('drum out of true', outOfTrue)]
}

/** Joint angle that is left when the torque has gone to nothing: friction in the wraps holds some of the stretch. */
function keptWindup(leg: LegModel, joint: DrivenJoint, torque: number): number {
  const { axialRigidity } = leg.drives[joint].cord
  return Math.abs(windups(leg, joint, axialRigidity, [Math.abs(torque), 0])[1]!)
}
