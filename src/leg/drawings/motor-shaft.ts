import { plain } from '../../drawing/index.js'
import { type DrivenJoint, driveOf } from '../numbers.js'
import { pinion } from '../parts/transmission/cord/fields.js'
import { pinionRadius } from '../parts/transmission/cord/radii.js'
import { beltSetting } from '../plans/belt-setting.js'
import { gearSetting } from '../plans/gear-setting.js'
import type { Facts } from './facts.js'
import { hasCordDrive, isDriven } from './present.js'

/** Part on the shaft in front of a motor, mm. */
export interface OnShaft {
  readonly diameter: number
  readonly length: number
  readonly label: string
  /** Where its diameter is measured. */
  readonly size: string
  /** Where it is drawn, and what of it is assumed. */
  readonly remark: string
}

/** Part on the shaft of a joint's motor; absent where the motor, or a gearbox on it, turns the joint itself. */
export function onShaft(facts: Facts, joint: DrivenJoint): OnShaft | undefined {
  if (hasCordDrive(facts, joint)) {
    const diameter = 2 * facts.mm(pinionRadius, { joint })
    return {
      diameter,
      length: facts.mm(pinion.length, { joint }),
      label: `pinion Ø${plain(diameter)} at the cord`,
      size: 'diameter of the pinion at the cord',
      remark: 'The pinion is drawn at the front.',
    }
  }
  if (isDriven(facts, joint, 'belt')) {
    const { small, belt } = beltSetting(facts.leg, joint)
    return {
      diameter: 1000 * small,
      length: 1000 * belt.width,
      label: `small pulley, pitch Ø${plain(1000 * small)}`,
      size: 'pitch diameter of the small pulley',
      remark: 'The small pulley is drawn at the front, as wide as the belt.',
    }
  }
  if (!isDriven(facts, joint, 'gear')) return undefined
  const { tip } = gearSetting(facts.leg, joint).pinion
  return {
    diameter: 1000 * tip,
    length: 1000 * driveOf(facts.leg.x, joint, 'gear').faceWidth,
    label: `pinion, tip Ø${plain(1000 * tip)}`,
    size: 'tip diameter of the pinion',
    remark: 'The pinion is drawn at the front.',
  }
}
