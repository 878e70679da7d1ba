import { line } from '../../../run/index.js'
import type { Transmission } from '../questions.js'
import { efficiency } from './fields.js'
import { freePlay, inertia, mass, mesh, ratio } from './values.js'

const against = line('turns of the motor against its wheel', { ratio: 'ratio' }, 'ratio', '−ratio', (x) => -x.ratio)

/** A pair of spur gears. Its teeth are stiff compared with their backlash, so no windup of theirs is calculated. */
export const gearTransmission: Transmission = {
  ratio: (use) => use(ratio),
  signedRatio: (use) => use.run(against, { ratio: use(ratio) }),
  efficiency: (use) => use(efficiency),
  mass: (use) => use(mass),
  massByPlace: () => undefined,
  ownInertia: (use) => use(inertia),
  shaftForce: (use) => use(mesh).normal,
  alongAxes: () => undefined,
  alongAtRest: () => undefined,
  motorForce: (use) => use(mesh).normal,
  stiffnessAtRest: () => undefined,
  stiffness: () => undefined,
  blowTorque: () => undefined,
  windup: () => 0,
  freePlay: (use) => use(freePlay),
  tensions: () => undefined,
}
