import {
  copperLoss,
  currentsForTorque,
  hotResistance,
  magnetDerating,
  motorBalance,
  motorStall,
  runawayTorque,
} from '../../../thermal/index.js'
import { type Of, type Use, type Value, value } from '../../run/index.js'
import { heldFor } from '../load/durations.js'
import { after, airTemperature, heating } from '../load/fields.js'
import { coolingLaws, store } from '../plates/values.js'
import { ceiling, windingCeiling } from './ceilings.js'
import * as motor from './fields.js'
import { heatCapacity, hottestPhase, warmer, windingRoom } from './heat-lines.js'
import { coldEmf, heatingTorque, ironLoss, loadedMotorSpeed, motorSpeed, motorTorque } from './values.js'

interface Temperatures {
  readonly winding: number
  readonly mount: number
  readonly can: number
  readonly loss: number
  readonly backEmf: number
  /** Why there is no steady state; absent where there is one. */
  readonly unsettled: string | undefined
}

const RUNAWAY = 'the loss grows faster with temperature than the heat that leaves, so there is no steady temperature'
const NO_START = 'the walk before the stall has no steady temperature'
const TOO_LONG = 'within the stall time mount or winding passes every correlation, or the winding runs away'
const TOO_HOT = 'mount or winding would settle beyond every correlation'

/** A motor on its mount, whatever its torque. */
const motorOnMount = (use: Use<'joint' | 'event' | 'air'>) => ({
  backEmfConstant: use(coldEmf),
  magnetCoefficient: use(motor.magnetCoefficient),
  terminalResistance: use(motor.terminalResistance),
  otherLoss: use(ironLoss),
  windingToMount: use(motor.windingToMount),
  ...coolingLaws(use),
})
/** A motor as its balance takes it. */
const heatedMotor = (use: Use<'joint' | 'event' | 'air'>) => ({ torque: use(heatingTorque), ...motorOnMount(use) })
/** The largest torque at which it has a steady temperature. */
export const mostSteadyTorque = value(
  'motor.runawayTorque',
  ['joint', 'event', 'air'],
  (use) => use.run(runawayTorque, motorOnMount(use)).torque,
)

/** The motor with its torque as a value. */
export const heatedMotorOf = value('motor.heated', ['joint', 'event', 'air'], heatedMotor)
/** Back-EMF constant with the magnets at a temperature. */
const emfAt = (use: Use<'motor'>, magnetTemperature: number): number =>
  use.run(magnetDerating, { backEmfConstant: use(coldEmf), magnetTemperature, coefficient: use(motor.magnetCoefficient) }).backEmfConstant
/** Back-EMF constant with the magnets as warm as the air. */
export const emfInAir = value('motor.emfInAir', ['motor', 'air'], (use) => emfAt(use, use(airTemperature)))

const resistanceAt = (use: Use<'motor'>, temperature: number): number =>
  use.run(hotResistance, {
    resistance: use(motor.terminalResistance),
    measuredAt: use(motor.resistanceReference),
    temperature,
    conductor: 'copper',
  })

/** A motor that dissipates nothing is as warm as the air. */
function cold(use: Use<'joint' | 'event' | 'air'>): Temperatures {
  const air = use(airTemperature)
  return { winding: air, mount: air, can: air, loss: 0, backEmf: use(emfInAir), unsettled: undefined }
}

/** Whether a motor stands still in an event: the leg is held, or it is that of the sideways hip, which no gait turns. */
const still = value(
  'motor.still',
  ['joint', 'event'],
  (use, at) => use(heating) === 'held' || use.nameOf('joint', at.joint) === 'sidewaysHip',
)
/** What the hottest phase of a winding is reckoned from: the mean, but the worst phase where the motor stands still. */
const windingOn = (use: Use<'joint' | 'event'>, mount: number, loss: number) => ({
  mount,
  share: use(still) ? use(motor.worstPhase) : 1,
  loss,
  resistance: use(motor.windingToMount),
})

/** A motor without a steady temperature: winding, magnets and mount at the highest that a steady one may have, with the current and loss that these cost. */
function hottestOfAll(use: Use<'joint' | 'event'>, unsettled: string): Temperatures {
  const hottest = use(ceiling)
  const backEmf = emfAt(use, hottest)
  const loss = use.run(copperLoss, {
    peakPhaseCurrent: use.run(currentsForTorque, { torque: use(heatingTorque), backEmfConstant: backEmf }).peakPhase,
    terminalResistance: resistanceAt(use, hottest),
  })
  return { winding: hottest, mount: hottest, can: hottest, loss, backEmf, unsettled }
}

/**
 * In the middle of a walk a motor is as warm as the walk leaves it, and a load of a moment adds nothing: its magnets are weak and its winding is hot. Of walks
 * either way the warmer counts.
 */
function inAWalk(use: Use<'joint' | 'event' | 'air'>, walks: readonly Of<'event'>[]): Temperatures {
  const states = walks.map((event) => use.at(temperatures, { event }))
  const warmest = (of: 'winding' | 'mount' | 'can') =>
    states.map((state) => state[of]).reduce((one, other) => use.run(warmer, { one, other }))
  const can = warmest('can')
  return {
    winding: warmest('winding'),
    mount: warmest('mount'),
    can,
    loss: 0,
    backEmf: emfAt(use, can),
    unsettled: states.find(({ unsettled }) => unsettled !== undefined)?.unsettled,
  }
}

/**
 * Temperatures of the motor of a joint: steady, or after the time it is held from where a walk has left it. Without a steady state every part is at the ceiling, so that a
 * runaway never scores better than a motor that just stays stable.
 */
export const temperatures: Value<Temperatures, 'joint' | 'event' | 'air'> = value(
  'motor.temperatures',
  ['joint', 'event', 'air'],
  (use) => {
    if (use(heating) === 'none') {
      const walks = use(after)
      return walks.length === 0 ? cold(use) : inAWalk(use, walks)
    }
    const [time, most, walks] = [use(heldFor), use(ceiling), use(after)]
    const ask = heatedMotor(use)
    const start = walks.length === 0 ? undefined : inAWalk(use, walks)
    if (start?.unsettled !== undefined) return hottestOfAll(use, NO_START)
    const end =
      time === undefined
        ? use.run(motorBalance, ask)
        : use.run(motorStall, {
            ...ask,
            capacity: use.run(heatCapacity, { mass: use(motor.mass), specificHeat: use(motor.specificHeat) }),
            storeCapacity: use(store).capacity,
            storeConductance: use(store).conductance,
            initial: start?.mount,
            time,
          })
    const { winding, mount, can, loss, backEmf } = end
    const room = use.run(windingRoom, { ceiling: use(windingCeiling), ...windingOn(use, mount, loss) })
    if (end.state !== 'runaway' && Math.max(mount, winding) <= most && room >= 0)
      return { winding, mount, can, loss, backEmf, unsettled: undefined }
    return hottestOfAll(use, time !== undefined ? TOO_LONG : end.state === 'runaway' ? RUNAWAY : TOO_HOT)
  },
)

/** Hottest phase of the winding. */
const hottestWinding: Value<number, 'joint' | 'event' | 'air'> = value('motor.hottestWinding', ['joint', 'event', 'air'], (use) => {
  const unheated = use(heating) === 'none'
  const walks = use(after)
  if (unheated && walks.length > 0)
    return walks.map((event) => use.at(hottestWinding, { event })).reduce((one, other) => use.run(warmer, { one, other }))
  const { winding, mount, loss, unsettled } = use(temperatures)
  if (unsettled !== undefined) return use(windingCeiling)
  return unheated ? winding : use.run(hottestPhase, windingOn(use, mount, loss))
})

const currentFor = (use: Use<'joint' | 'event' | 'air'>, torque: number) =>
  use.run(currentsForTorque, { torque, backEmfConstant: use(temperatures).backEmf }).peakPhase

/** Motor, mount and currents of a joint in an event. */
export const heat = value('motor.heat', ['joint', 'event', 'air'], (use) => {
  const { winding, mount, can, loss, backEmf, unsettled } = use(temperatures)
  return {
    motorTorque: use(motorTorque),
    heatingTorque: use(heatingTorque),
    motorSpeed: use(motorSpeed),
    loadedMotorSpeed: use(loadedMotorSpeed),
    /** Of magnets at their temperature. Without a steady temperature, of magnets as warm as the air, whose speed is lowest; the currents below take the hottest ones. */
    backEmfConstant: unsettled === undefined ? backEmf : use(emfInAir),
    resistance: resistanceAt(use, winding),
    current: currentFor(use, use(motorTorque)),
    heatingCurrent: currentFor(use, use(heatingTorque)),
    loss,
    ironLoss: use(ironLoss),
    winding: use(hottestWinding),
    windingMean: winding,
    mount,
    can,
    unsettled,
  }
})
