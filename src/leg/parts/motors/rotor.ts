import { reflectedInertia } from '../../../capstan/index.js'
import { kneeDriveInertia } from '../../../kinematics/index.js'
import { value } from '../../run/index.js'
import { ratio, signedRatio } from '../transmission/questions.js'
import { linkage } from '../transmission/through-hip/fields.js'
import { rotorInertia } from './fields.js'

/** Inertia of a joint's rotor as the joint feels it. */
export const rotorAtJoint = value('motor.rotorAtJoint', ['joint'], (use) =>
  use.run(reflectedInertia, { rotorInertia: use(rotorInertia), ratio: use(ratio) }),
)

/** Inertia of the knee's rotor at hip and knee, and what couples them. Of a motor on the body, which a rod ties to the knee, that at its drum alone. */
export const kneeRotor = value('motor.kneeRotor', ['joint'], (use) => {
  if (use(linkage) !== undefined) return { hip: 0, coupling: 0, knee: use(rotorAtJoint) }
  const { hip, coupling, knee } = use.run(kneeDriveInertia, {
    motorOn: 'thigh',
    kneeRatio: 1,
    motorRatio: use(signedRatio),
    rotorInertia: use(rotorInertia),
    drumInertia: 0,
  })
  return { hip, coupling, knee }
})
