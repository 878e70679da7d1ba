import { calculationOf, placeOf } from '../calculation.js'
import type { Leg } from '../document/describe.js'
import { legNumbers } from '../numbers.js'
import { dragTorque } from '../parts/motors/values.js'
import { signedRatio } from '../parts/transmission/questions.js'
import type { JointControl } from '../plans/control-joint.js'
import type { ControlSheet } from '../plans/control-sheet.js'

/** A joint that a motor may drive. */
export type Driven = 'sidewaysHip' | 'hip' | 'knee'

/** Data of a joint's drive for other tools, SI, at the joint or at the drum on the hip axis that moves it through a rod. */
export interface DriveNumbers {
  /** Turns of the motor for one of the joint, negative where they turn against each other. */
  readonly signedRatio: number
  /** Torque that holds the joint against the drag of its motor, N m. */
  readonly friction: number
}

/** Ratio and friction of a driven joint, whatever drives it. */
export function driveNumbers(leg: Leg, joint: Driven): DriveNumbers {
  const calculation = calculationOf(legNumbers(leg))
  const at = calculation.instances.implied(placeOf(calculation, { joint })) as never
  const turns = calculation.get(signedRatio, at)
  return {
    signedRatio: turns,
    friction: Math.abs(turns) * calculation.get(dragTorque, at),
  }
}

/** The largest torque of a joint that its control sheet allows for any time, whatever drives it. */
export const largestTorque = (sheet: ControlSheet, joint: Driven): number =>
  Math.max(...(sheet.joints[joint] as JointControl).currentLimits.map(({ jointTorque }) => jointTorque.si))
