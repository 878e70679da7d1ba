import type { Transmission } from '../questions.js'
import { efficiency } from './fields.js'
import {
  alongAtRest,
  alongAxes,
  freePlay,
  inertia,
  jumpTorque,
  mass,
  massByPlace,
  pretension,
  ratio,
  shaftForce,
  spans,
  stiffness,
  stiffnessAtRest,
  windup,
} from './values.js'

/** A tooth belt between a small pulley on the motor and a large one on the joint. */
export const beltTransmission: Transmission = {
  ratio: (use) => use(ratio),
  signedRatio: (use) => use(ratio),
  efficiency: (use) => use(efficiency),
  mass: (use) => use(mass),
  massByPlace: (use) => use(massByPlace),
  ownInertia: (use) => use(inertia),
  shaftForce: (use) => use(shaftForce),
  alongAxes: (use) => use(alongAxes),
  alongAtRest: (use) => use(alongAtRest),
  motorForce: (use) => use(shaftForce),
  stiffnessAtRest: (use) => use(stiffnessAtRest),
  stiffness: (use) => use(stiffness),
  blowTorque: (use) => use(jumpTorque),
  windup: (use) => use(windup),
  freePlay: (use) => use(freePlay),
  tensions: (use) => {
    const { taut, slack } = use(spans)
    return { pretension: use(pretension), taut, slack, peak: taut }
  },
}
