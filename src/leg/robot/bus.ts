import { bridgeConductionLoss, busPower, currentsForTorque, supplySag } from '../../thermal/index.js'
import { placeOf } from '../calculation.js'
import { type CaseId, LOAD_CASES } from '../cases/events.js'
import type { LegModel } from '../leg-model.js'
import { controllerOf, type DrivenJoint, drivenJoints } from '../numbers.js'
import { resistanceCoefficient } from '../parts/controllers/fields.js'
import { heat, temperatures } from '../parts/motors/heat.js'
import { dragTorque } from '../parts/motors/values.js'
import { calculationFor } from '../what-if.js'

/** A motor as the bus sees it: warm as it is in a load case. */
export interface BusMotor {
  readonly backEmfConstant: number
  readonly terminalResistance: number
  readonly drag: number
  readonly onResistance: number
  readonly switchingLoss: number
  readonly boardTemperature: number
  readonly boardCoefficient: number
  /** Why it has no steady temperature; absent where it has one. */
  readonly unsettled: string | undefined
}

/** The motors of a leg by joint, with winding and magnets as warm as they get in a load case. */
export function busMotors(leg: LegModel, id: CaseId): ReadonlyMap<DrivenJoint, BusMotor> {
  const calculation = calculationFor(leg)
  const { event, air, age } = LOAD_CASES[id]
  const motor = (joint: DrivenJoint): BusMotor => {
    const here = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint, event, air, age })) as never
    const { resistance, unsettled } = calculation.get(heat, here)
    const { onResistance, switchingLoss, temperatureLimit } = controllerOf(leg.x, joint)
    return {
      backEmfConstant: calculation.get(temperatures, here).backEmf,
      terminalResistance: resistance,
      drag: calculation.get(dragTorque, calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint })) as never),
      onResistance,
      switchingLoss,
      boardTemperature: temperatureLimit,
      boardCoefficient: calculation.get(resistanceCoefficient, {} as never),
      unsettled,
    }
  }
  return new Map(drivenJoints(leg.x).map((joint) => [joint, motor(joint)]))
}

/** Torque and speed at the shaft of one motor at an instant. */
export interface ShaftPoint {
  readonly joint: DrivenJoint
  readonly torque: number
  readonly speed: number
}

/** State of the bus at an instant. */
export interface BusPoint {
  readonly power: number
  readonly current: number
  readonly voltage: number
  /** Power that flows back, and the parts of it that the supply takes and that nothing takes. */
  readonly back: number
  readonly returned: number
  readonly notTaken: number
  readonly motorHeat: number
  readonly controllerHeat: number
  readonly holds: boolean
}

/** All motors of the robot at one instant: their power summed, then what is drawn, returned, or not taken. */
export function busAt(
  { x }: LegModel,
  motors: ReturnType<typeof busMotors>,
  points: readonly ShaftPoint[],
  brakeResistor: number,
): BusPoint {
  const { electronics, takesBack, voltage: open, internalResistance } = x.supply
  let controllerHeat = 0
  for (const { joint, torque, speed } of points) {
    const { drag, backEmfConstant, onResistance, switchingLoss, boardTemperature, boardCoefficient } = motors.get(joint)!
    const { peakPhase } = currentsForTorque.si({ torque: torque + drag * Math.sign(speed), backEmfConstant })
    controllerHeat +=
      switchingLoss +
      bridgeConductionLoss.si({
        peakPhaseCurrent: peakPhase,
        switchResistance: onResistance,
        junctionTemperature: boardTemperature,
        resistanceCoefficient: boardCoefficient,
      })
  }
  const { power, motorHeat, intoBattery, intoResistor } = busPower.si({
    motors: points.map(({ joint, torque, speed }) => {
      const { backEmfConstant, terminalResistance, drag } = motors.get(joint)!
      return { count: 1, torque, speed, backEmfConstant, terminalResistance, drag }
    }),
    electronics: electronics + controllerHeat,
    accepted: takesBack ? Number.MAX_VALUE : 0,
    brakeResistor,
  })
  const { neededCurrent, voltage, state } = supplySag.si({
    openCircuitVoltage: open,
    resistance: internalResistance,
    power: power < 0 ? -intoBattery : power,
  })
  const back = Math.max(0, -power)
  return {
    power: Math.max(0, power),
    current: neededCurrent,
    voltage,
    back,
    returned: intoBattery,
    notTaken: back - intoBattery - intoResistor,
    motorHeat,
    controllerHeat,
    holds: state === 'holds',
  }
}
