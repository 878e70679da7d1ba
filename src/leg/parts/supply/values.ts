import { bridgeConductionLoss, copperLoss, electricalPower, supplySag } from '../../../thermal/index.js'
import { line, value } from '../../run/index.js'
import { onResistance, resistanceCoefficient, switchingLoss, temperatureLimit } from '../controllers/fields.js'
import { heat } from '../motors/heat.js'
import { legs } from '../robot/fields.js'
import * as supply from './fields.js'

const losses = line.sum('losses other than copper', { iron: 'power', switching: 'power', conduction: 'power' }, 'power')
const ofAll = line(
  'power of all legs and of the electronics',
  { legs: 'count', drives: { list: 'power' }, electronics: 'power' },
  'power',
  'legs · sum(drives) + electronics',
  (x) => x.legs * x.drives.reduce((sum, power) => sum + power, 0) + x.electronics,
)

/** Loss in the switches of a controller at the peak current, as hot as they may be. */
const conductionLoss = value('supply.conductionLoss', ['joint', 'event', 'air'], (use) =>
  use.run(bridgeConductionLoss, {
    peakPhaseCurrent: use(heat).current,
    switchResistance: use(onResistance),
    junctionTemperature: use(temperatureLimit),
    resistanceCoefficient: use(resistanceCoefficient),
  }),
)

/** Electrical power of a motor and its controller at its peak torque and the highest speed under load. */
export const motorPower = value('motor.power', ['joint', 'event', 'air'], (use) => {
  const { motorTorque, loadedMotorSpeed, current, resistance, ironLoss } = use(heat)
  return use.run(electricalPower, {
    torque: motorTorque,
    speed: loadedMotorSpeed,
    copperLoss: use.run(copperLoss, { peakPhaseCurrent: current, terminalResistance: resistance }),
    otherLoss: use.run(losses, { iron: ironLoss, switching: use(switchingLoss), conduction: use(conductionLoss) }),
  }).electrical
})

/** The supply with the power of all legs and of the electronics: a leg that swings may draw as much as one that stands. */
export const sag = value('supply.sag', ['leg', 'event', 'air'], (use, at) => {
  const drives = use.all('joint', { leg: at.leg }).map((joint) => use.at(motorPower, { joint }))
  return use.run(supplySag, {
    openCircuitVoltage: use(supply.voltage),
    resistance: use(supply.internalResistance),
    power: use.run(ofAll, {
      legs: use(legs),
      drives,
      electronics: use(supply.electronics),
    }),
  })
})
