import { reflectedInertia } from '../../../capstan/index.js'
import { kneeDriveInertia } from '../../../kinematics/index.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { ownInertia, ratio, signedRatio } from '../transmission/questions.js'
import { isThroughHip, stageIn } from '../transmission/through-hip/stage.js'
import { rotorInertia } from './fields.js'

const together = line.sum('inertia that turns with the rotor', { rotor: 'momentOfInertia', own: 'momentOfInertia' }, 'momentOfInertia')
const withWheel = line.sum(
  'inertia of a drive as the joint feels it',
  { reflected: 'momentOfInertia', wheel: 'momentOfInertia' },
  'momentOfInertia',
)
/** Inertia of a rotor with what turns with it: pinion, pulley, or input of a gearbox. */
export const turningWithRotor = value('motor.turningWithRotor', ['joint'], (use) => {
  const [rotor, own] = [use(rotorInertia), use(ownInertia)]
  return own === undefined ? rotor : use.run(together, { rotor, own: own.atMotor })
})

/** Inertia of a pulley on the hip axis, which turns with the drum of the knee; absent where it counts as nothing. */
const hipPulley = (use: Use<'joint'>, joint: Of<'joint'>) => {
  const stage = stageIn(use)
  return stage === undefined || use.nameOf('joint', joint) !== 'knee' ? undefined : use.at(ownInertia, { joint: stage })?.atMotor
}
/** Inertia of a joint's rotor, and of what turns with the joint, as the joint feels it. */
export const rotorAtJoint = value('motor.rotorAtJoint', ['joint'], (use, at) => {
  const reflected = use.run(reflectedInertia, { rotorInertia: use(turningWithRotor), ratio: use(ratio) })
  const wheels = [use(ownInertia)?.atJoint, hipPulley(use, at.joint)]
  return wheels.reduce<number>((sum, wheel) => (wheel === undefined ? sum : use.run(withWheel, { reflected: sum, wheel })), reflected)
})

/** Inertia of the knee's rotor at hip and knee, and what couples them. Of a motor on the body, which something ties to the knee, that at its drum alone. */
export const kneeRotor = value('motor.kneeRotor', ['joint'], (use) => {
  if (isThroughHip(use)) return { hip: 0, coupling: 0, knee: use(rotorAtJoint) }
  const { hip, coupling, knee } = use.run(kneeDriveInertia, {
    motorOn: 'thigh',
    kneeRatio: 1,
    motorRatio: use(signedRatio),
    rotorInertia: use(turningWithRotor),
    drumInertia: use(ownInertia)?.atJoint ?? 0,
  })
  return { hip, coupling, knee }
})
