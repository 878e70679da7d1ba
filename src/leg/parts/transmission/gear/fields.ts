import { field, optional, reference } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { driveOf, type Joint } from '../../../numbers.js'
import { constant } from '../../../run/index.js'

const gear = (x: LegNumbers, joint: Joint) => driveOf(x, joint, 'gear')

export const pinionTeeth = field('gear.pinionTeeth', ['joint'], 'count', (x, { joint }) => gear(x, joint).pinionTeeth)
export const wheelTeeth = field('gear.wheelTeeth', ['joint'], 'count', (x, { joint }) => gear(x, joint).wheelTeeth)
export const module = field('gear.module', ['joint'], 'length', (x, { joint }) => gear(x, joint).module)
export const faceWidth = field('gear.faceWidth', ['joint'], 'length', (x, { joint }) => gear(x, joint).faceWidth)
export const pinionMaterial = reference('gear.pinionMaterial', ['joint'], 'material', (x, { joint }) => gear(x, joint).pinionMaterial)
export const wheelMaterial = reference('gear.wheelMaterial', ['joint'], 'material', (x, { joint }) => gear(x, joint).wheelMaterial)
export const contactStrength = optional('gear.contactStrength', ['joint'], 'stress', (x, { joint }) => gear(x, joint).contactStrength)
export const backlash = field('gear.backlash', ['joint'], 'length', (x, { joint }) => gear(x, joint).backlash)
export const efficiency = field('gear.efficiency', ['joint'], 'ratio', (x, { joint }) => gear(x, joint).efficiency)

export const pressureAngle = constant('gear.pressureAngle', {
  title: 'pressure angle of the teeth',
  kind: 'angle',
  typical: (20 * Math.PI) / 180,
  source: { level: 'commonPractice', where: 'standard teeth of 20° of pressure angle (basic rack of ISO 53)' },
})
/** A pair with fewer teeth in contact than this hammers as it runs, and jumps where it wears. */
export const leastContactRatio = constant('gear.leastContactRatio', {
  title: 'least contact ratio',
  kind: 'ratio',
  typical: 1.1,
  source: { level: 'published', where: 'T. Eritenel, notebook series on gears (2019), geometry, chapter 2: contact ratio above 1.1' },
})
/** A pinion with fewer teeth is cut into at its roots by its own rack, which weakens them. */
export const leastTeeth = constant('gear.leastTeeth', {
  title: 'least number of teeth of a pinion',
  kind: 'count',
  typical: 14,
  source: { level: 'commonPractice', where: '17 teeth of 20° without undercut, 14 in practice' },
})
