import { pinLoad } from '../../motion/values.js'
import { carrier } from '../output-bearing/fields.js'
import type { Transmission } from '../questions.js'
import { one } from './fields.js'

/** A rotor that is fixed to the joint: nothing reduces, loses, gives or slips. */
export const directTransmission: Transmission = {
  ratio: (use) => use(one),
  signedRatio: (use) => use(one),
  efficiency: (use) => use(one),
  mass: () => undefined,
  massByPlace: () => undefined,
  ownInertia: () => undefined,
  shaftForce: () => 0,
  alongAxes: () => undefined,
  alongAtRest: () => undefined,
  motorForce: (use) => (use(carrier) === undefined ? use(pinLoad) : 0),
  stiffnessAtRest: () => undefined,
  stiffness: () => undefined,
  blowTorque: () => undefined,
  windup: () => 0,
  freePlay: () => 0,
  tensions: () => undefined,
}
