import { line } from '../../../run/index.js'
import type { Transmission } from '../questions.js'
import { drumMass } from './drum-mass.js'
import { arrangement, efficiency } from './fields.js'
import { ratio } from './radii.js'
import { alongAtRest, alongAxes, peakTension, pretension, shaftForce, slackTorque, stiffnessAtRest, windup } from './values.js'

const against = line('turns of the motor against its drum', { ratio: 'ratio' }, 'ratio', '−ratio', (x) => -x.ratio)

/** A cord between a pinion on the motor and a drum on the joint. */
export const cordTransmission: Transmission = {
  ratio: (use) => use(ratio),
  signedRatio: (use) => (use(arrangement) === 'crossed' ? use.run(against, { ratio: use(ratio) }) : use(ratio)),
  efficiency: (use) => use(efficiency),
  mass: () => undefined,
  massByPlace: (use) => ({ atJoint: use(drumMass), between: 0 }),
  ownInertia: () => undefined,
  shaftForce: (use) => use(shaftForce),
  alongAxes: (use) => use(alongAxes),
  alongAtRest: (use) => use(alongAtRest),
  motorForce: (use) => use(shaftForce),
  stiffnessAtRest: (use) => use(stiffnessAtRest),
  stiffness: (use) => use(windup).tangentStiffness,
  blowTorque: (use) => use(slackTorque),
  windup: (use) => use(windup).windup,
  freePlay: () => 0,
  tensions: (use) => {
    const { tautTension: taut, slackTension: slack } = use(windup)
    return { pretension: use(pretension), taut, slack, peak: use(peakTension) }
  },
}
