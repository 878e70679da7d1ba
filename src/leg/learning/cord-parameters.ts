import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { driveOf, type Joint, jointWords } from '../numbers.js'
import { drivePath } from '../second-stage.js'
import type { Parameter } from './model.js'

/** The friction of a drive; known from its band where no log determines it. @internal */
export function frictionOf({ x }: LegModel, joint: Joint): Parameter {
  const { low, typical, high } = driveOf(x, joint, 'cord').friction
  return {
    id: `${drivePath(joint)}.friction`,
    what: `the friction of the ${jointWords(joint)}`,
    field: true,
    start: typical,
    low: 1e-7,
    high: 3,
    most: 1,
    scale: 'log',
    deviation: Math.max(Math.log(high / low) / (2 * SIGMAS_90), 1e-3),
    cure: `log cordFriction ${joint}`,
  }
}

/** The axial rigidity of the cord of a joint. @internal */
export function rigidityOf({ x, drives }: LegModel, joint: Joint): Parameter {
  const { axialRigidity } = drives[joint].cord
  const name = driveOf(x, joint, 'cord').cord
  return {
    id: `cords.${name}.axialRigidity`,
    what: `the axial rigidity of the cord ${name}`,
    field: true,
    start: axialRigidity,
    low: axialRigidity / 1000,
    high: 1000 * axialRigidity,
    scale: 'log',
    deviation: 0.15,
    cure: `log windup ${joint}`,
  }
}

/** Half of a band in standard deviations: its ends are values met in one case of twenty each. */
const SIGMAS_90 = 1.645
/** How far a pretension is off that nobody measured: a plucked or scaled setting, 95 % within 10 %. */
const SETTING_SCATTER = 0.1 / 1.96

/** The pretension of a joint. @internal */
export function pretensionOf({ x }: LegModel, joint: Joint): Parameter {
  const { pretension } = driveOf(x, joint, 'cord')
  return {
    id: `${drivePath(joint)}.pretension`,
    what: `the pretension of the ${jointWords(joint)}`,
    field: true,
    start: pretension,
    low: pretension / 1000,
    high: 1000 * pretension,
    scale: 'log',
    deviation: SETTING_SCATTER,
    cure: `log pretension ${joint}`,
  }
}

/** The share of the pretension of a cord that a year leaves. @internal */
export function shareOf({ x, drives }: LegModel, joint: Joint): Parameter {
  const { low, typical, high } = (x.cords[driveOf(x, joint, 'cord').cord] as LegNumbers['cords'][string]).pretensionLeft
  return {
    id: `cords.${driveOf(x, joint, 'cord').cord}.pretensionLeft`,
    what: `the pretension that a year leaves in the cord ${driveOf(x, joint, 'cord').cord}`,
    field: true,
    start: drives[joint].pretensionLeft ?? typical,
    low: 0.02,
    high: 1,
    scale: 'plain',
    deviation: Math.max((high - low) / (2 * 1.96), 1e-3),
    cure: `log pretension ${joint}`,
  }
}
