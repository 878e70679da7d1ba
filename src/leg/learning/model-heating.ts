import { copperLoss, hotResistance } from '../../thermal/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, motorOf } from '../numbers.js'
import { HeatingRun } from './heating-run.js'
import { type Accuracy, errorOf, freeZero } from './instrument-errors.js'
import { fieldParameter, type LogModel, type Parameter } from './model.js'

/** Copper loss of a current with the winding at a temperature. @internal */
export function lossOf(motor: ReturnType<typeof motorOf>, peakPhaseCurrent: number, temperature: number): number {
  const terminalResistance = hotResistance.si({
    resistance: motor.terminalResistance,
    measuredAt: 293.15,
    temperature,
    conductor: 'copper',
  })
  return copperLoss.si({ peakPhaseCurrent, terminalResistance })
}

/** Formulas of natural convection and radiation scatter by about this much about experiments, and air outdoors is another. */
const FILMS = {
  share: 0.15,
  why: 'formulas of films scatter by 15 to 20 %, and one run in one room is no measurement of other air',
} as const

/** A motor on its plate under a held current: winding to mounting face, and mounting face to air with the heat taken up on the way. @internal */
export function heatingModel(leg: LegModel, log: string, joint: DrivenJoint, accuracy: Accuracy): LogModel {
  const { environment } = leg.x
  const motor = motorOf(leg.x, joint)
  const name = leg.x.joints[joint]?.motor
  const run = new HeatingRun(leg.x, joint)
  const field = (id: string, what: string, start: number, deviation: number) => fieldParameter(id, what, start, deviation, 'log heating')
  const toMount = field(`motors.${name}.windingToMount`, 'the way from winding to mounting face', motor.windingToMount, 0.15)
  const factor = field('environment.coolingFactor', 'the cooling factor', environment.coolingFactor.typical, 0.1)
  const heat = field(`motors.${name}.specificHeat`, 'the specific heat of the motor', motor.specificHeat, 0.1)
  const [current, resistance] = (['current gain', 'resistance gain'] as const).map((name) => errorOf(log, 'heating', name, accuracy)) as [
    Parameter,
    Parameter,
  ]
  const zero = errorOf(log, 'heating', 'temperature zero', accuracy)
  const zeroOf = (which: string): Parameter => ({
    ...zero,
    id: `${zero.id}, ${which}`,
    what: `the zero of the ${which} thermometer (${log})`,
  })
  const [winding, mount, air] = [zeroOf('winding'), zeroOf('mount'), zeroOf('air')]
  const first = freeZero(log, 'first temperature', 50)
  return {
    log,
    parameters: [toMount, factor, heat, current, resistance, winding, mount, air, first],
    learns: [toMount.id, factor.id, heat.id],
    channels: 2,
    predict: (at, rows) => {
      const gain = (1 - 2 * at(current.id)) * (1 + at(resistance.id))
      const [tw, tm, ta] = [at(winding.id), at(mount.id), at(air.id)]
      const losses = rows.map(([, ampere, warm]) => gain * lossOf(motor, ampere!, warm! - tw))
      const temperatures = run.temperatures(
        at(factor.id),
        at(heat.id),
        rows.map(([time, , , , surrounding], i) => ({ time: time!, air: surrounding! - ta, loss: losses[i]! })),
        rows[0]![3]! - tm + at(first.id),
      )
      return temperatures.flatMap((temperature, i) => [at(toMount.id) * losses[i]! + tw - tm, temperature + tm])
    },
    measured: ([, , warm, cooler]) => [warm! - cooler!, cooler!],
    atLeast: { [factor.id]: FILMS },
  }
}
