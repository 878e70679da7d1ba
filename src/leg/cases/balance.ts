import type { Evaluator } from '../../formula/index.js'
import {
  backEmfConstant,
  currentsForTorque,
  dragLoss,
  hotResistance,
  motorTorqueBand,
  noLoadLoss,
  pressureAtAltitude,
} from '../../thermal/index.js'
import type { Joint, Prepared } from '../numbers.js'
import { oncePerLeg } from '../once.js'
import { coolingLaws } from './cooling.js'
import type { JointMotion } from './motion.js'

/** What a motor is asked in one load case. */
export interface HeatAsk {
  readonly joint: Joint
  readonly motion: JointMotion
  readonly air: number
  readonly wind: number
  readonly heating: 'none' | 'held' | 'moving'
  /** How long it is held from cold, s; until temperatures settle where silent. */
  readonly heldFor?: number | undefined
}

/** What stays the same while temperatures settle. */
export interface Basis {
  readonly air: number
  readonly wind: number
  readonly surroundings: number
  readonly pressure: number
  readonly coldEmf: number
  readonly motorTorque: number
  readonly heatingTorque: number
  readonly ironLoss: number
  readonly motorSpeed: number
  readonly loadedMotorSpeed: number
  readonly share: number
}

const ROOM = 293.15
/** A phase that carries its peak while the rotor stands still heats twice as much as its share when turning. */
const WORST_PHASE = 2
/** Magnets lose this share of their strength per kelvin: the middle of neodymium grade tables, −0.10 to −0.12 %/K, as `magnetDerating` has it. */
export const MAGNET_COEFFICIENT = -0.0011
/** The mean speed of a stride over its peak: two thirds, as of a half sine. */
const MEAN_OF_PEAK_SPEED = 2 / Math.PI

/** Torques and speeds at the motor, and what else does not change with temperature. */
export function basisOf(leg: Prepared, of: Evaluator, { joint, motion, air, wind, heating }: HeatAsk): Basis {
  const { environment } = leg.x
  const { ratio } = leg.drives[joint]
  const { efficiency } = leg.x.drives[joint]
  const torqueAt = (torque: number) =>
    of(motorTorqueBand, { jointTorque: Math.abs(torque), ratio, efficiency, backEfficiency: undefined }).raising
  const motorSpeed = motion.speed * ratio
  // A leg that is held neither speeds its rotor up nor drags it.
  const turns = heating !== 'held' && motorSpeed > 0
  const drag = turns ? dragTorqueOf(of, leg) : 0
  const motorTorque = torqueAt(heating === 'held' ? motion.torque : motion.shaftTorque) + drag
  const coldEmf = coldEmfOf(of, leg)
  return {
    air,
    wind,
    surroundings: environment.surroundings ?? air,
    pressure: pressureOf(of, leg),
    coldEmf,
    motorTorque,
    heatingTorque: heating === 'none' ? 0 : heating === 'held' ? motorTorque : torqueAt(motion.shaftRms) + drag,
    ironLoss: heating === 'moving' ? of(dragLoss, { constantDrag: drag, viscousDrag: 0, speed: MEAN_OF_PEAK_SPEED * motorSpeed }) : 0,
    motorSpeed,
    loadedMotorSpeed: motion.loadedSpeed * ratio,
    share: heating === 'held' ? WORST_PHASE : 1,
  }
}

const coldEmfOf = /* @__PURE__ */ oncePerLeg((of, { x: { motor }, end }): number => {
  const emf = of(backEmfConstant, { speedConstant: motor.speedConstant, basis: motor.speedConstantBasis })
  return end === 'pessimistic' ? emf.low : end === 'optimistic' ? emf.high : emf.typical
})

const pressureOf = /* @__PURE__ */ oncePerLeg((of, { x }): number => of(pressureAtAltitude, { altitude: x.environment.altitude }))

/** Torque that iron and bearings take at any speed. */
const dragTorqueOf = /* @__PURE__ */ oncePerLeg((of, { x: { motor } }): number =>
  motor.noLoadCurrent === 0
    ? 0
    : of(noLoadLoss, {
        voltage: motor.noLoadVoltage,
        current: motor.noLoadCurrent,
        terminalResistance: motor.terminalResistance,
        speed: motor.noLoadVoltage * motor.speedConstant,
      }).dragTorque,
)

/** Terminal resistance with the winding at a temperature. */
export const hotTerminals = ({ x: { motor } }: Prepared, of: Evaluator, temperature: number): number =>
  of(hotResistance, { resistance: motor.terminalResistance, measuredAt: ROOM, temperature, conductor: 'copper' })

/** Peak phase current for a torque. */
export const currentFor = (of: Evaluator, torque: number, backEmf: number): number =>
  of(currentsForTorque, { torque, backEmfConstant: backEmf }).peakPhase

/** What the motor loses and how it is cooled, as the thermal module takes it. */
export const heatedMotor = (of: Evaluator, leg: Prepared, basis: Basis) => ({
  torque: basis.heatingTorque,
  backEmfConstant: basis.coldEmf,
  magnetCoefficient: MAGNET_COEFFICIENT,
  terminalResistance: leg.x.motor.terminalResistance,
  otherLoss: basis.ironLoss,
  windingToMount: leg.x.motor.windingToMount,
  ...coolingLaws(of, leg, basis),
})
