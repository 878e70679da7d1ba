import type { Note } from '../units/index.js'
import { copperLossForTorque, magnetDerating } from './copper.js'
import { hotResistance } from './hot-winding.js'
import { currentsForTorque, motorConstant } from './motor-constants.js'
import { dragLoss } from './no-load.js'

/** A motor in SI numbers at 20 °C. */
export interface MotorNumbers {
  /** Peak back-EMF between two terminals, V s/rad, magnets at 20 °C. */
  readonly backEmfConstant: number
  /** Relative half-width of the band of the back-EMF constant. */
  readonly backEmfScatter: number
  /** Resistance between two terminals at 20 °C, Ω. */
  readonly terminalResistance: number
  /** Relative change of the back-EMF constant for each kelvin, 1/K; negative. */
  readonly magnetCoefficient: number
  /** Drag torque that does not depend on speed, N m. */
  readonly constantDrag: number
  /** Drag torque for each rad/s, N m s. */
  readonly viscousDrag: number
  /** Number of pole pairs. */
  readonly polePairs: number
  /** Inductance of one phase, H. */
  readonly phaseInductance: number
  /** Moment of inertia of the rotor, kg m²; undefined where none was given. */
  readonly inertia: number | undefined
  /** Notes that the description carried. */
  readonly notes: readonly Note[]
}

/** Back-EMF constant with the magnets at a temperature. */
export const backEmfAt = (m: MotorNumbers, magnets: number): number =>
  magnetDerating.si({ backEmfConstant: m.backEmfConstant, magnetTemperature: magnets, coefficient: m.magnetCoefficient }).backEmfConstant

/** Terminal resistance with the winding at a temperature. */
export const resistanceAt = (m: MotorNumbers, winding: number): number =>
  hotResistance.si({ resistance: m.terminalResistance, measuredAt: 293.15, temperature: winding, conductor: 'copper' })

/** Copper loss of a torque, W, with the winding at one temperature and the magnets at another, kelvin. */
export const copperLossAt = (m: MotorNumbers, torque: number, winding: number, magnets: number): number =>
  copperLossForTorque.si({
    torque,
    motorConstant: motorConstant.si({ backEmfConstant: backEmfAt(m, magnets), terminalResistance: resistanceAt(m, winding) }),
  })

/** Peak phase current of a torque with the magnets at a temperature, A. */
export const peakCurrentAt = (m: MotorNumbers, torque: number, magnets: number): number =>
  Math.abs(currentsForTorque.si({ torque, backEmfConstant: backEmfAt(m, magnets) }).peakPhase)

/** Torque that the currents must make for a torque at the shaft: more by the drag while the motor drives, less while the load drives it. At rest the drag is nothing. */
export function airGapTorque(m: MotorNumbers, torque: number, speed: number): number {
  if (speed === 0) return Math.abs(torque)
  const drag = m.constantDrag + m.viscousDrag * Math.abs(speed)
  return Math.abs(Math.abs(torque) + (torque * speed < 0 ? -drag : drag))
}

/** Iron and bearing loss at a speed, W. */
export const dragLossAt = (m: MotorNumbers, speed: number): number =>
  dragLoss.si({ constantDrag: m.constantDrag, viscousDrag: m.viscousDrag, speed })
