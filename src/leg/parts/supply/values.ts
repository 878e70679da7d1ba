import { copperLoss, electricalPower, supplySag } from '../../../thermal/index.js'
import { line, value } from '../../run/index.js'
import { switchingLoss } from '../controllers/fields.js'
import { stance } from '../load/values.js'
import { heat } from '../motors/heat.js'
import { legs } from '../robot/fields.js'
import * as supply from './fields.js'

const losses = line(
  'losses other than copper',
  { iron: 'power', switching: 'power' },
  'power',
  'iron + switching',
  (x) => x.iron + x.switching,
)
const standingLegs = line('legs that stand together', { legs: 'count', duty: 'ratio' }, 'count', 'max(1, round(legs · duty))', (x) =>
  Math.max(1, Math.round(x.legs * x.duty)),
)
const ofAll = line(
  'power of all standing legs and of the electronics',
  { legs: 'count', drives: { list: 'power' }, electronics: 'power' },
  'power',
  'legs · sum(drives) + electronics',
  (x) => x.legs * x.drives.reduce((sum, one) => sum + one, 0) + x.electronics,
)

/** Electrical power of a motor at its peak torque and the highest speed under load. */
export const motorPower = value('motor.power', ['joint', 'event', 'air'], (use) => {
  const { motorTorque, loadedMotorSpeed, current, resistance, ironLoss } = use(heat)
  return use.run(electricalPower, {
    torque: motorTorque,
    speed: loadedMotorSpeed,
    copperLoss: use.run(copperLoss, { peakPhaseCurrent: current, terminalResistance: resistance }),
    otherLoss: use.run(losses, { iron: ironLoss, switching: use(switchingLoss) }),
  }).electrical
})

/** The supply with the power of all standing legs and of the electronics. */
export const sag = value('supply.sag', ['leg', 'event', 'air'], (use, at) => {
  const drives = use.all('joint', { leg: at.leg }).map((joint) => use.at(motorPower, { joint }))
  return use.run(supplySag, {
    openCircuitVoltage: use(supply.voltage),
    resistance: use(supply.internalResistance),
    power: use.run(ofAll, {
      legs: use.run(standingLegs, { legs: use(legs), duty: use(stance).dutyFactor }),
      drives,
      electronics: use(supply.electronics),
    }),
  })
})
