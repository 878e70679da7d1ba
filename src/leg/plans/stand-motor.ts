import { backEmfConstant, torqueConstants } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { heatAt } from '../heat-under-motion.js'
import { type LegModel, legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { airNamed, controllerOf, driveKindOf, type Joint, motorOf } from '../numbers.js'
import { sure } from '../ranges.js'
import { caseState } from '../what-if.js'
import { torque } from './bench.js'
import { withNumber } from './information.js'
import { phrase } from './sheet-units.js'
import { measurement, type StandMeasurement } from './stand-measurement.js'

/** Ranges of fields that the specification gives as one number. */
const THERMAL_RANGE = [0.7, 1.3] as const
const CATALOGUE = [0.95, 1.05] as const
const IDLE = [0.6, 1.5] as const
/** Share of the controller's limit at which the torque is predicted. */
const TEST_SHARE = 0.25

/** Heating curve of a motor. */
export function heating(leg: Leg, x: LegNumbers): StandMeasurement {
  const { coolingFactor } = x.environment
  const joint = hardest(legModel(x))
  const [name, motor] = [x.joints[joint].motor as string, motorOf(x, joint)]
  const { temperature: air } = airNamed(x, 'normal')
  const { drum: motion } = caseState(legModel(x), 'stand').joints[joint]
  const held = (prepared: LegModel) => heatAt(prepared, { joint, motion, air, wind: 0, heating: 'held' })
  const current = new Quantity(held(legModel(x)).heatingCurrent, 'peakPhaseCurrent')
  return measurement(
    leg,
    x,
    {
      id: 'heating',
      joint: undefined,
      what: 'heating curve of a motor on its plate',
      how: phrase`Turn the current vector slowly with ${current} peak per phase (the current of standing) so that all phases heat alike; log winding temperature (by resistance at the terminals), mounting face and air every minute for an hour, out of the wind. Leave out the first minutes, while the winding itself warms up. Then, from cold, hold the vector still for a minute with one phase at its peak, and again 30 electrical degrees on, and note the resistance between each two terminals.`,
      caution: 'Hot: the can burns, and plastics near it soften. Stop at the limits of the control sheet; never leave it alone.',
      predictedIs: 'mounting face above the air, settled',
      corrects: `environment.coolingFactor, motors.${name}.specificHeat, motors.${name}.windingToMount`,
    },
    // Hot with both: little cooling, much resistance on the way out of the winding.
    (n, which) => ({
      ...n,
      environment: { ...n.environment, coolingFactor: sure(coolingFactor[which]) },
      motors: { ...n.motors, [name]: { ...motor, windingToMount: motor.windingToMount * THERMAL_RANGE[which === 'low' ? 1 : 0] } },
    }),
    (prepared) => {
      return new Quantity(held(prepared).mount - air, 'temperatureDifference')
    },
  )
}

/** The joint whose drive holds more in standing. */
function hardest(leg: LegModel): Joint {
  const { hip, knee } = caseState(leg, 'stand').joints
  return Math.abs(hip.drum.torque) > Math.abs(knee.drum.torque) ? 'hip' : 'knee'
}

/** Torque of the held motor: its constant is one of catalogue until it is measured. */
export function torqueConstant(leg: Leg, x: LegNumbers): StandMeasurement {
  const joint = hardest(legModel(x))
  const [name, motor] = [x.joints[joint].motor as string, motorOf(x, joint)]
  const ampere = TEST_SHARE * controllerOf(x, joint).currentLimit
  const torqueOf = (n: LegNumbers) => {
    const { speedConstant, speedConstantBasis: basis } = motorOf(n, joint)
    const emf = backEmfConstant.si({ speedConstant, basis }).typical
    return torqueConstants.si({ backEmfConstant: emf }).peakPhase * ampere
  }
  return measurement(
    leg,
    x,
    {
      id: 'torqueConstant',
      joint: undefined,
      what: 'torque of the motor over its current',
      how: phrase`${driveKindOf(x, joint) === 'direct' ? `The joint is the rotor: hang weights on a level arm of the ${joint}, and note the current that just holds each, or b` : 'B'}lock the can, rest a lever of the rotor on a scale. Raise the peak phase current in eight steps to ${new Quantity(2 * ampere, 'peakPhaseCurrent')} and lower it in the same steps, read the scale at each, and note current and torque of the motor: only the way back shows that a reading drifts. Let the winding cool between the steps.`,
      caution: 'A lever that slips off flies round: keep clear of its plane, start low, one finger on the switch.',
      predictedIs: phrase`motor torque at ${new Quantity(ampere, 'peakPhaseCurrent')}`,
      corrects: `motors.${name}.speedConstant`,
    },
    (n, which) => withNumber(n, `motors.${name}.speedConstant`, motor.speedConstant * CATALOGUE[which === 'low' ? 0 : 1]),
    ({ x: n }) => torque(torqueOf(n)),
  )
}

/** Parts to take off a motor before it idles. */
const OFF = { cord: 'cord', belt: 'belt', gear: 'wheel', gearbox: 'gearbox', direct: 'link', held: 'link' } as const

/** Current of the idle motor. */
export function noLoad(leg: Leg, x: LegNumbers): StandMeasurement {
  const joint = hardest(legModel(x))
  const [name, motor] = [x.joints[joint].motor as string, motorOf(x, joint)]
  return measurement(
    leg,
    x,
    {
      id: 'noLoad',
      joint: undefined,
      what: 'current of the idle motor',
      how: phrase`Run the motor without its ${OFF[driveKindOf(x, joint)]} from a direct voltage in five steps on either side of ${new Quantity(motor.noLoadVoltage, 'voltage')}. Read voltage and current of the supply once they have settled.`,
      caution: 'A bare rotor spins fast: clamp the motor, nothing loose on it, eye protection.',
      predictedIs: phrase`current at ${new Quantity(motor.noLoadVoltage, 'voltage')}`,
      corrects: `motors.${name}.noLoadCurrent`,
    },
    (n, which) => withNumber(n, `motors.${name}.noLoadCurrent`, motor.noLoadCurrent * IDLE[which === 'low' ? 0 : 1]),
    ({ x: n }) => new Quantity(motorOf(n, joint).noLoadCurrent, 'current'),
  )
}
