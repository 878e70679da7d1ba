import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, driveKindOf, drivenJoints, driveOf } from '../numbers.js'
import { angle } from './bench.js'
import { phrase } from './sheet-units.js'
import { throughGeometry } from './through-geometry.js'

/** Findings of a homing run on the drive, at every start after the first. */
function findings(x: LegNumbers, joint: DrivenJoint): string {
  const same = 'At every start the number must come out the same within the tolerance.'
  const moved = 'The same number, but the stops at other counts than stored (encoder absolute over the turn):'
  const kind = driveKindOf(x, joint)
  if (kind === 'cord') {
    const where = driveOf(x, joint, 'cord').hold === 'clampedMidPinion' ? 'at its anchors or its clamp' : 'on the pinion or at its anchors'
    return `${same} More counts between the stops: the cord has become soft or loose. ${moved} the cord has slipped ${where}, by the difference.`
  }
  if (kind === 'belt') {
    const tooth = angle((2 * Math.PI) / driveOf(x, joint, 'belt').largeTeeth)
    return phrase`${same} More counts between the stops: the belt has become loose, or teeth and grooves are worn. ${moved} the belt has jumped, and each tooth turns the joint by ${tooth}.`
  }
  if (kind === 'gear')
    return `${same} More counts between the stops: the backlash has grown, because teeth wear or the axes have moved apart. ${moved} pinion or wheel has slipped on its seat, or a tooth is gone. Look before the leg bears load.`
  if (kind === 'gearbox')
    return `${same} More counts between the stops: the play of the gearbox has grown. ${moved} its shaft or its output has slipped in its clamp.`
  return `${same} Nothing slips or wears between rotor and joint: an encoder that is absolute over its turn reads the joint itself. Other counts at the stops mean that its magnet or the link has slipped on the shaft.`
}

/** The homing run of a joint, step by step; `hold` is the hip angle of a knee that a rod drives, `stiff` a drive whose stops need pads. @internal */
export function homingSteps(leg: LegModel, joint: DrivenJoint, { hold, stiff }: { hold: number; stiff: boolean }): string[] {
  const { x } = leg
  const last = drivenJoints(x).includes('sidewaysHip') ? ' Home the sideways hip last, the other two held.' : ''
  return [
    throughGeometry(x) === undefined
      ? `Hang the leg up, hands clear. Home the knee first, to its upper stop, so that the folded leg leaves the hip room. Then home the hip.${last}`
      : phrase`Hang the leg up, hands clear. Home the hip first, the motor of the knee without current: its drum sits on the hip axis and is free to follow. Hold the hip at ${angle(hold)}, then home the knee: the angles to write for it hold at that hip angle alone.${last}`,
    ...(stiff ? ['Give the stops pads that yield by a degree at the torque listed: the speed listed counts on them.'] : []),
    'Limit current and speed to those listed. Drive to the lower stop, write its motor angle there with the current still on, and note the counts. Drive to the upper stop: its motor angle must read as listed, within the tolerance.',
    'Write the soft limits after that, and let no command pass them. The hard stops are for accidents.',
    'Do it once when the leg is new and keep the number of counts: it holds the true place of the stops.',
    findings(x, joint),
    'A joint that stops short of its number is blocked: switch off, wait, and look before you reach in.',
  ]
}
