import { line } from '../../../run/index.js'
import { driveLoad } from '../../motion/values.js'
import { carriedForce } from '../output-bearing/values.js'
import type { Transmission } from '../questions.js'
import * as box from './fields.js'

const against = line('turns of the motor against the joint', { ratio: 'ratio' }, 'ratio', '−ratio', (x) => -x.ratio)
const wound = line.quotient('windup of a gearbox', { torque: 'torque', stiffness: 'torsionalStiffness' }, 'angle')

/** A gearbox by the numbers of its sheet. */
export const gearboxTransmission: Transmission = {
  ratio: (use) => use(box.ratio),
  signedRatio: (use) => (use(box.turns) === 'against' ? use.run(against, { ratio: use(box.ratio) }) : use(box.ratio)),
  efficiency: (use) => use(box.efficiency),
  mass: (use) => use(box.mass),
  massByPlace: () => undefined,
  ownInertia: (use) => ({ atMotor: use(box.inertia), atJoint: 0 }),
  shaftForce: () => 0,
  alongAxes: () => undefined,
  alongAtRest: () => undefined,
  motorForce: (use) => use(carriedForce),
  stiffnessAtRest: (use) => use(box.stiffness),
  stiffness: (use) => use(box.stiffness),
  blowTorque: (use) => use(box.peakTorque),
  windup: (use) => {
    const stiffness = use(box.stiffness)
    return stiffness === undefined ? 0 : use.run(wound, { torque: use(driveLoad), stiffness })
  },
  freePlay: (use) => use(box.backlash),
  tensions: () => undefined,
}
