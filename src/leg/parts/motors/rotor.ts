import { reflectedInertia } from '../../../capstan/index.js'
import { value } from '../../run/index.js'
import { ratio } from '../transmission/cord/radii.js'
import { rotorInertia } from './fields.js'

/** Inertia of a joint's rotor as the joint feels it. */
export const rotorAtJoint = value('motor.rotorAtJoint', ['joint'], (use) =>
  use.run(reflectedInertia, { rotorInertia: use(rotorInertia), ratio: use(ratio) }),
)
