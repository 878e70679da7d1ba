import { carriedForce } from '../output-bearing/values.js'
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
  motorForce: (use) => use(carriedForce),
  stiffnessAtRest: () => undefined,
  stiffness: () => undefined,
  blowTorque: () => undefined,
  windup: () => 0,
  freePlay: () => 0,
  tensions: () => undefined,
}
