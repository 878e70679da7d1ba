import { STANDARD_GRAVITY } from '../../gravity.js'
import { field, optional } from '../../leaves.js'
import { constant } from '../../run/index.js'

export const gravity = constant('robot.gravity', {
  title: 'acceleration of free fall',
  kind: 'acceleration',
  typical: STANDARD_GRAVITY,
  source: { level: 'standard', where: 'standard acceleration of free fall, ISO 80000-3' },
})
export const mass = field('robot.mass', [], 'mass', (x) => x.robot.mass)
export const legs = field('robot.legs', [], 'count', (x) => x.robot.legs)
export const standHeight = field('robot.standHeight', [], 'length', (x) => x.robot.standHeight)
export const hipSpacing = field('robot.hipSpacing', [], 'length', (x) => x.robot.hipSpacing)
export const hipTrack = field('robot.hipTrack', [], 'length', (x) => x.robot.hipTrack)
export const centreOfMassHeight = optional('robot.centreOfMassHeight', [], 'length', (x) => x.robot.centreOfMassHeight)
export const centreOfMassForward = field('robot.centreOfMassForward', [], 'length', (x) => x.robot.centreOfMassForward)
export const centreOfMassLeft = field('robot.centreOfMassLeft', [], 'length', (x) => x.robot.centreOfMassLeft)
