import type { LegModel } from '../leg-model.js'
import { type DriveKind, type DrivenJoint, driveKindOf, drivenJoints, JOINTS } from '../numbers.js'
import { beltOrCordOf } from '../second-stage.js'
import { beltWork } from './belt-work.js'
import { directWork, gearboxWork } from './bought-work.js'
import { counterweightWork } from './counterweight-work.js'
import type { DriveWork } from './drive-work-plan.js'
import { gearWork } from './gear-work.js'
import { springWork } from './spring-work.js'
import { throughBeltWork } from './through-belt-work.js'
import { type CordWorkInputs, throughCordWork } from './through-cord-work.js'

const WORK_BY_KIND: { readonly [K in DriveKind]?: (leg: LegModel, joint: DrivenJoint) => DriveWork } = {
  belt: beltWork,
  gear: gearWork,
  gearbox: gearboxWork,
  direct: directWork,
}

/** The work on belt or cord along the upper link. `beddingStrain` and `tail` are SI. */
const throughWork = (leg: LegModel, ask: CordWorkInputs): DriveWork[] => {
  const through = beltOrCordOf(leg.x)
  if (through === undefined) return []
  return [through.kind === 'belt' ? throughBeltWork(leg, through) : throughCordWork(leg, through, ask)]
}

/** The work on every drive of a joint that is no cord, on belt or cord along the upper link, and on springs and counterweights. @internal */
export const driveWork = (leg: LegModel, ask: CordWorkInputs): DriveWork[] => [
  ...drivenJoints(leg.x).flatMap((joint) => WORK_BY_KIND[driveKindOf(leg.x, joint)]?.(leg, joint) ?? []),
  ...throughWork(leg, ask),
  ...JOINTS.flatMap((joint) => [...springWork(leg, joint), ...counterweightWork(leg, joint)]),
]
