import { formula } from '../formula/index.js'
import { minimiseScalar } from '../numeric/index.js'
import { RISES } from './cooling-laws.js'
import { copperLossForTorque } from './copper.js'
import { continuousLoss } from './hot-winding.js'
import { motorConstant } from './motor-constants.js'
import { MIN_RISE, MOTOR_ON_MOUNT, type MotorOnMount, type MountState, motorState, mountStateAt } from './motor-heat.js'

/** Accuracy of the rise at the largest torque, as a part of it: the torque is level there. */
const PLACE = 1e-5

/**
 * Square of the torque that holds the mounting face at a temperature. Where other losses and surroundings alone heat it more, a negative number:
 * the heat that leaves less theirs.
 */
function torqueSquared(m: MotorOnMount, mount: number, out: MountState): number {
  mountStateAt(m, mount, out)
  const loss = out.leaving - m.otherLoss
  if (loss <= 0) return loss
  const { windingToMount: thermalResistance, terminalResistance } = m
  const { lossAt20 } = continuousLoss.si({ limit: mount + thermalResistance * loss, ambient: mount, thermalResistance })
  // The loss goes with the square of the torque.
  return (
    lossAt20 / copperLossForTorque.si({ torque: 1, motorConstant: motorConstant.si({ backEmfConstant: out.backEmf, terminalResistance }) })
  )
}

/** The rise of the mounting face at which a motor in balance has its largest torque, and the square of that torque; negative where no torque has a balance. */
export function largestBalance(m: MotorOnMount): { rise: number; square: number } {
  const state = motorState()
  const { x, value } = minimiseScalar(
    (logarithm) => -torqueSquared(m, m.air + Math.exp(logarithm), state),
    Math.log(MIN_RISE),
    Math.log(RISES.high),
    { xTolerance: PLACE },
  )
  return { rise: Math.exp(x), square: -value }
}

/**
 * The largest torque at which a motor on its mount still has steady temperatures. Beyond it the loss grows faster with temperature than the heat that leaves.
 *
 * A temperature of the mounting face fixes the heat that leaves. Copper and magnets of that temperature say which torque makes so much heat. The largest such torque, over
 * all rises up to 450 K, is the result.
 */
export const runawayTorque = /* @__PURE__ */ formula('thermal.runawayTorque', {
  title: 'torque at thermal runaway',
  inputs: MOTOR_ON_MOUNT,
  output: {
    /** The largest torque with a steady state; 0 where other losses alone leave none. */
    torque: 'torque',
    /** Mounting face at that torque. */
    mount: 'temperature',
  },
  assumes: ['laws made for this air and these surroundings', 'magnets as warm as the can; all phases alike, as while turning'],
  source: [{ level: 'computed', where: 'largest torque of a heat balance with copper resistance and magnets that depend on temperature' }],
  si: (m) => {
    const { square, rise } = largestBalance(m)
    return { torque: Math.sqrt(Math.max(0, square)), mount: m.air + rise }
  },
})
