import type { Evaluator } from '../../formula/index.js'
import {
  backEmfConstant,
  copperLoss,
  currentsForTorque,
  dragLoss,
  forcedConvection,
  hotResistance,
  magnetDerating,
  motorTorqueBand,
  naturalConvection,
  noLoadLoss,
  pressureAtAltitude,
  radiationCoefficient,
} from '../../thermal/index.js'
import type { Joint, Prepared } from '../numbers.js'
import { oncePerLeg } from '../once.js'
import type { JointMotion } from './motion.js'
import { mountConductance } from './mount.js'

/** What a motor is asked in one load case. */
export interface HeatAsk {
  readonly joint: Joint
  readonly motion: JointMotion
  readonly air: number
  readonly wind: number
  readonly heating: 'none' | 'held' | 'moving'
  /** How long it is held from cold, s; until temperatures settle where silent. */
  readonly heldFor?: number | undefined
  /** Steps that time is taken in; as many as it needs to a quarter of a kelvin or so where silent. */
  readonly steps?: number
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
const MAGNET_COEFFICIENT = -0.0011
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

/** Magnets at a temperature, and what the torque that heats costs there with the winding at 20 °C. */
export interface Excitation {
  readonly emf: number
  readonly heatingCurrent: number
  readonly lossAt20: number
}

/** Current and copper loss for the torque that heats. */
export function excitationAt({ x: { motor } }: Prepared, of: Evaluator, basis: Basis, magnets: number): Excitation {
  const { backEmfConstant: emf } = of(magnetDerating, {
    backEmfConstant: basis.coldEmf,
    magnetTemperature: magnets,
    coefficient: MAGNET_COEFFICIENT,
  })
  const heatingCurrent = of(currentsForTorque, { torque: basis.heatingTorque, backEmfConstant: emf }).peakPhase
  const lossAt20 = of(copperLoss, { peakPhaseCurrent: heatingCurrent, terminalResistance: motor.terminalResistance })
  return { emf, heatingCurrent, lossAt20 }
}

/** Peak phase current for the largest torque. */
export const largestCurrent = (of: Evaluator, { motorTorque }: Basis, emf: number): number =>
  of(currentsForTorque, { torque: motorTorque, backEmfConstant: emf }).peakPhase

/** How heat leaves the mounting face. */
export interface Paths {
  /** Conductance to the air, through can and mount. */
  readonly total: number
  /** Rise of the can over that of the mounting face. */
  readonly canShare: number
}

/** The way through the can. */
export interface CanPath {
  readonly conductance: number
  /** Rise of the can over that of the mounting face. */
  readonly share: number
}

/** The way through a can at some temperature. */
export function canPathAt(leg: Prepared, of: Evaluator, basis: Basis, can: number): CanPath {
  const outside = canConductance(leg, of, can, basis)
  const conductance = 1 / (leg.x.motor.mountToCan + 1 / outside)
  return { conductance, share: conductance / outside }
}

/** All ways from a mounting face at some temperature. */
export const pathsFrom = (leg: Prepared, of: Evaluator, basis: Basis, mount: number, can: CanPath): Paths => ({
  total: can.conductance + mountConductance(leg, of, mount, basis),
  canShare: can.share,
})

/** Conductance of the can's outside to air and surroundings: cylinder and one end face, convection (the stronger of still and moving air) and radiation. */
function canConductance(
  { x: { motor }, coolingFactor }: Prepared,
  of: Evaluator,
  can: number,
  { air, wind, surroundings, pressure }: Basis,
): number {
  const area = Math.PI * motor.canDiameter * (motor.canLength + motor.canDiameter / 4)
  const still = of(naturalConvection, {
    surface: 'horizontalCylinder',
    length: motor.canDiameter,
    surfaceTemperature: can,
    airTemperature: air,
    pressure,
    tilt: 0,
  }).coefficient
  const moving =
    wind > 0
      ? of(forcedConvection, {
          surface: 'cylinder',
          length: motor.canDiameter,
          speed: wind,
          surfaceTemperature: can,
          airTemperature: air,
          pressure,
        }).coefficient
      : 0
  const radiated = of(radiationCoefficient, { emissivity: motor.canEmissivity, surface: can, surroundings, viewFactor: 1 })
  return coolingFactor * area * (Math.max(still, moving) + radiated)
}
