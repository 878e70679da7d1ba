import { torqueConstants } from '../../thermal/index.js'
import { calculationOf, placeOf } from '../calculation.js'
import type { Leg } from '../document/describe.js'
import { hasCord, legNumbers } from '../numbers.js'
import { currentLimit } from '../parts/controllers/fields.js'
import { coldEmf, dragTorque } from '../parts/motors/values.js'
import { efficiency, signedRatio } from '../parts/transmission/questions.js'
import type { ControlSheet } from '../plans/control.js'

/** A joint that a motor may drive. */
export type Driven = 'sidewaysHip' | 'hip' | 'knee'

/** What other tools ask of the drive of a joint, SI, at the joint or at the drum on the hip axis that moves it through a rod. */
export interface DriveNumbers {
  /** Turns of the motor for one of the joint, negative where they turn against each other. */
  readonly signedRatio: number
  /** Torque that holds the joint against the drag of its motor, N m. */
  readonly friction: number
  /** Torque at the current limit of the controller, magnets cold, losses of the drive taken off, N m. */
  readonly atCurrentLimit: number
}

/** Ratio, friction and torque of a driven joint, whatever drives it. */
export function driveNumbers(leg: Leg, joint: Driven): DriveNumbers {
  const calculation = calculationOf(legNumbers(leg))
  const at = calculation.instances.implied(placeOf(calculation, { joint })) as never
  const turns = calculation.get(signedRatio, at)
  const perAmpere = torqueConstants.si({ backEmfConstant: calculation.get(coldEmf, at) }).peakPhase
  return {
    signedRatio: turns,
    friction: Math.abs(turns) * calculation.get(dragTorque, at),
    atCurrentLimit: perAmpere * calculation.get(currentLimit, at) * Math.abs(turns) * calculation.get(efficiency, at),
  }
}

/** The largest torque of a joint: of a hip or knee driven by cord that of the control sheet, which its checks limit; otherwise that of the current limit. */
export const largestTorque = (leg: Leg, joint: Driven, sheet: ControlSheet | undefined): number =>
  sheet === undefined || joint === 'sidewaysHip'
    ? driveNumbers(leg, joint).atCurrentLimit
    : Math.max(...sheet.joints[joint].currentLimits.map(({ jointTorque }) => jointTorque.si))

/** Whether both joints are driven by cord, so that the control sheet gives their torque here. */
export const hasSheet = (leg: Leg): boolean => {
  const x = legNumbers(leg)
  return hasCord(x, 'hip') && hasCord(x, 'knee')
}
