import { constant } from '../../../run/index.js'

/** Turns of the rotor for one of the joint that it is fixed to, and the share of its torque that arrives there. */
export const one = constant('direct.one', {
  title: 'ratio and efficiency of a direct drive',
  kind: 'ratio',
  typical: 1,
  source: { level: 'computed', where: 'the rotor is fixed to the joint' },
})
