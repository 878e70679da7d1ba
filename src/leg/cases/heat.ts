import type { Evaluator } from '../../formula/index.js'
import { magnetDerating, motorBalance, motorStall } from '../../thermal/index.js'
import type { Prepared } from '../numbers.js'
import { type Basis, basisOf, currentFor, type HeatAsk, heatedMotor, hotTerminals, MAGNET_COEFFICIENT } from './balance.js'
import { heatStores } from './cooling.js'

/** Motor and mount in one load case, SI. */
export interface Heat {
  /** Motor torque at the largest joint torque, and its root mean square (or the held torque). */
  readonly motorTorque: number
  readonly heatingTorque: number
  readonly motorSpeed: number
  readonly loadedMotorSpeed: number
  /** Peak line-to-line back-EMF per rad/s at the temperature of the magnets. */
  readonly backEmfConstant: number
  /** Terminal resistance at the temperature of the winding. */
  readonly resistance: number
  /** Peak phase current at the largest torque, and at the torque that heats. */
  readonly current: number
  readonly heatingCurrent: number
  /** Copper loss that heats, iron and bearing loss. */
  readonly loss: number
  readonly ironLoss: number
  /** Winding (the hottest phase), its mean, mounting face, can. */
  readonly winding: number
  readonly windingMean: number
  readonly mount: number
  readonly can: number
  /** Loss with the winding at 20 °C, and thermal resistance from winding to air: what decides about runaway. */
  readonly lossAt20: number
  readonly resistanceToAir: number
  /** Rounds of the balance, or states of a stall. */
  readonly rounds: number
  /** Why there is no steady temperature; then every temperature here is `CEILING`. */
  readonly unsettled: { readonly loop: string; readonly why: string } | undefined
}

/** The temperature that stands for none: every correlation ends below it, K. */
const CEILING = 700

/** Temperatures of one motor: torque to current to loss to heat to resistance (and magnet strength) and back, until they settle. */
export function heatOf(leg: Prepared, of: Evaluator, ask: HeatAsk): Heat {
  const basis = basisOf(leg, of, ask)
  if (ask.heating === 'none') return cold(leg, of, basis)
  const motor = heatedMotor(of, leg, basis)
  if (ask.heldFor !== undefined) {
    const end = of(motorStall, { ...motor, ...heatStores(of, leg, ask.heldFor) })
    const at = { ...end, rounds: end.states }
    return end.state === 'runaway' || end.mount > CEILING
      ? withoutSteadyState(leg, of, basis, at, beyondWithin(ask.heldFor))
      : heatFrom(leg, of, basis, at)
  }
  const at = of(motorBalance, motor)
  return at.state === 'runaway' || at.mount > CEILING ? withoutSteadyState(leg, of, basis, at, RUNAWAY) : heatFrom(leg, of, basis, at)
}

const RUNAWAY = {
  loop: 'copper loss and winding temperature',
  why: 'The loss grows faster with temperature than the heat that leaves, so there is no steady temperature.',
}

const beyondWithin = (time: number) => ({
  loop: RUNAWAY.loop,
  why: `Within ${Math.round(time)} s of stall the mount passes ${CEILING - 273} degC or the winding runs away from it.`,
})

/** What a balance or a stall says of a motor. */
interface MotorTemperatures {
  readonly winding: number
  readonly mount: number
  readonly can: number
  readonly loss: number
  readonly lossAt20: number
  readonly backEmf: number
  readonly resistanceToAir: number
  readonly rounds: number
}

function heatFrom(leg: Prepared, of: Evaluator, basis: Basis, at: MotorTemperatures): Heat {
  return {
    motorTorque: basis.motorTorque,
    heatingTorque: basis.heatingTorque,
    motorSpeed: basis.motorSpeed,
    loadedMotorSpeed: basis.loadedMotorSpeed,
    backEmfConstant: at.backEmf,
    resistance: hotTerminals(leg, of, at.winding),
    current: currentFor(of, basis.motorTorque, at.backEmf),
    heatingCurrent: currentFor(of, basis.heatingTorque, at.backEmf),
    loss: at.loss,
    ironLoss: basis.ironLoss,
    // The mean of the winding, but the hottest phase where the motor holds still.
    winding: at.mount + basis.share * at.loss * leg.x.motor.windingToMount,
    windingMean: at.winding,
    mount: at.mount,
    can: at.can,
    lossAt20: at.lossAt20,
    resistanceToAir: at.resistanceToAir,
    rounds: at.rounds,
    unsettled: undefined,
  }
}

/** A motor that dissipates nothing is as warm as the air. */
const cold = (leg: Prepared, of: Evaluator, basis: Basis): Heat =>
  heatFrom(leg, of, basis, {
    winding: basis.air,
    mount: basis.air,
    can: basis.air,
    loss: 0,
    lossAt20: 0,
    backEmf: of(magnetDerating, { backEmfConstant: basis.coldEmf, magnetTemperature: basis.air, coefficient: MAGNET_COEFFICIENT })
      .backEmfConstant,
    resistanceToAir: leg.x.motor.windingToMount,
    rounds: 0,
  })

/**
 * Without a steady temperature: the ceiling for every part, so that runaway never scores better than a motor that just stays stable. Magnets count as
 * weak where current is worked out, and as cold where speed is.
 */
function withoutSteadyState(leg: Prepared, of: Evaluator, basis: Basis, at: MotorTemperatures, unsettled: Heat['unsettled']): Heat {
  const ceiling = { ...at, winding: CEILING, mount: CEILING, can: CEILING, loss: at.lossAt20 }
  return { ...heatFrom(leg, of, basis, ceiling), backEmfConstant: basis.coldEmf, winding: CEILING, unsettled }
}
