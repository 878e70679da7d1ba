import { type In, type Note, Quantity } from '../units/index.js'
import { magnetDerating } from './copper.js'
import { airGapTorque, copperLossAt, dragLossAt, type MotorNumbers, peakCurrentAt } from './motor-currents.js'
import { boardLoss, boardNotes } from './mount-board.js'
import type { MountNumbers } from './mount-specification.js'
import { remarks } from './surface.js'

/** The load of the motor. */
export interface MotorLoad {
  /** Torque at the shaft. While it turns the currents make the drag of iron and bearings as well. */
  readonly torque: In<'torque'>
  /** Speed, of the torque's sign where the motor drives; 0 or missing is a hold. */
  readonly speed?: In<'angularVelocity'> | undefined
}

/** Fields of a load. @internal */
export const LOAD = ['torque', 'speed'] as const satisfies readonly (keyof MotorLoad)[]

/** Losses by node at a load. */
export function lossesOf(m: MotorNumbers, { controller }: MountNumbers, torque: number, speed: number) {
  const inside = airGapTorque(m, torque, speed)
  return {
    winding: {
      on: ['winding', 'can'],
      watts: (winding: number, can: number) => copperLossAt(m, inside, winding, can),
      notes: (_: number, can: number): Note[] =>
        remarks(magnetDerating, { backEmfConstant: m.backEmfConstant, magnetTemperature: can, coefficient: m.magnetCoefficient }),
    },
    stator: new Quantity(dragLossAt(m, speed), 'power'),
    ...(controller !== undefined && {
      board: {
        on: ['board', 'can'],
        watts: (board: number, can: number) => boardLoss(controller, peakCurrentAt(m, inside, can), speed, board),
        notes: (board: number, can: number) => boardNotes(controller, peakCurrentAt(m, inside, can), board),
      },
    }),
  }
}
