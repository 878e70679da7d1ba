import { backEmfConstant, dragLoss, motorTorqueBand, noLoadLoss } from '../../../thermal/index.js'
import { line, type Use, value } from '../../run/index.js'
import { heating } from '../load/fields.js'
import { driveAlone, driveMotion } from '../motion/values.js'
import { efficiency, ratio } from '../transmission/questions.js'
import * as motor from './fields.js'

const scattered = line.product('back-EMF of this motor', { emf: 'backEmfConstant', scatter: 'ratio' }, 'backEmfConstant')
const noLoadSpeed = line.product('speed without load', { voltage: 'voltage', speedConstant: 'speedConstant' }, 'angularVelocity')
const size = line('magnitude of a torque', { torque: 'torque' }, 'torque', '|torque|', ({ torque }) => Math.abs(torque))
const withDrag = line.sum('torque with drag', { raising: 'torque', drag: 'torque' }, 'torque')
const atMotor = line.product('speed at the motor', { speed: 'angularVelocity', ratio: 'ratio' }, 'angularVelocity')
const meanSpeed = line.product('mean speed of the motor', { share: 'ratio', speed: 'angularVelocity' }, 'angularVelocity')

/** Back-EMF constant with the magnets at 20 degC. */
export const coldEmf = value('motor.coldEmf', ['motor'], (use) => {
  const basis = use(motor.speedConstantBasis)
  const { typical: emf } = use.run(backEmfConstant, { speedConstant: use(motor.speedConstant), basis })
  return basis === 'catalogue' ? use.run(scattered, { emf, scatter: use(motor.catalogueScatter) }) : emf
})
/** Torque that iron and bearings take at any speed. */
export const dragTorque = value('motor.dragTorque', ['motor'], (use) => {
  const current = use(motor.noLoadCurrent)
  if (current === 0) return 0
  const voltage = use(motor.noLoadVoltage)
  return use.run(noLoadLoss, {
    voltage,
    current,
    terminalResistance: use(motor.terminalResistance),
    speed: use.run(noLoadSpeed, { voltage, speedConstant: use(motor.speedConstant) }),
  }).dragTorque
})
/** Highest speed of a motor, and the highest under load. */
export const motorSpeed = value('motor.speed', ['joint', 'stance'], (use) =>
  use.run(atMotor, { speed: use(driveMotion).speed, ratio: use(ratio) }),
)
export const loadedMotorSpeed = value('motor.loadedSpeed', ['joint', 'stance'], (use) =>
  use.run(atMotor, { speed: use(driveMotion).loadedSpeed, ratio: use(ratio) }),
)
/** Drag that counts in an event: a leg that is held does not turn its rotor. */
const drag = value('motor.drag', ['joint', 'event'], (use) => (use(heating) === 'held' || use(motorSpeed) === 0 ? 0 : use(dragTorque)))

/** Motor torque for a joint torque, with the drag. */
function torqueAt(use: Use<'joint' | 'event'>, torque: number): number {
  const { raising } = use.run(motorTorqueBand, {
    jointTorque: use.run(size, { torque }),
    ratio: use(ratio),
    efficiency: use(efficiency),
    backEfficiency: undefined,
  })
  return use.run(withDrag, { raising, drag: use(drag) })
}
/** Motor torque at the largest joint torque. A held leg does not accelerate its rotor. */
export const motorTorque = value('motor.torque', ['joint', 'event'], (use) => {
  const { torque, shaftTorque } = use(driveMotion)
  return torqueAt(use, use(heating) === 'held' ? torque : shaftTorque)
})
/** The same with the springs of the leg broken. */
export const motorTorqueAlone = value('motor.torqueAlone', ['joint', 'event'], (use) => {
  const { torque, shaftTorque } = use(driveAlone)
  return torqueAt(use, use(heating) === 'held' ? torque : shaftTorque)
})
/** Motor torque that heats: the root mean square of a motion, or the torque held; 0 where motors stay cold. */
export const heatingTorque = value('motor.heatingTorque', ['joint', 'event'], (use) => {
  const how = use(heating)
  if (how === 'none') return 0
  return how === 'held' ? use(motorTorque) : torqueAt(use, use(driveMotion).shaftRms)
})
/** Loss in iron and bearings while the joint moves. */
export const ironLoss = value('motor.ironLoss', ['joint', 'event'], (use) =>
  use(heating) === 'moving'
    ? use.run(dragLoss, {
        constantDrag: use(drag),
        viscousDrag: 0,
        speed: use.run(meanSpeed, { share: use(motor.meanOfPeakSpeed), speed: use(motorSpeed) }),
      })
    : 0,
)
