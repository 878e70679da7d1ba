import { field } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { NoValueError } from '../../no-value.js'
import { constant } from '../../run/index.js'

export const from = field('joint.from', ['joint'], 'angle', (x, { joint }) => x.joints[joint].range.lowest)
export const to = field('joint.to', ['joint'], 'angle', (x, { joint }) => x.joints[joint].range.highest)
/** Angle that a joint keeps from its end stops. */
export const leastMargin = constant('joint.leastMargin', {
  title: 'least angle between the foot path and an end stop',
  kind: 'angle',
  typical: Math.PI / 180,
  source: { level: 'assumption', where: 'an end stop, its dent and the play of the joint take some tenths of a degree' },
})
const UPRIGHT_SOURCE = { source: [{ level: 'assumption', where: 'a leg without a sideways hip does not lean' }] } as const
/** A leg without a sideways hip does not lean. */
export const sidewaysFrom = field('joints.sidewaysHip.from', ['leg'], 'angle', (x) => x.joints.sidewaysHip?.range.lowest ?? 0, {
  title: 'lowest angle of the sideways hip',
  table: UPRIGHT_SOURCE,
})
export const sidewaysTo = field('joints.sidewaysHip.to', ['leg'], 'angle', (x) => x.joints.sidewaysHip?.range.highest ?? 0, {
  title: 'highest angle of the sideways hip',
  table: UPRIGHT_SOURCE,
})
const heldBy = (x: LegNumbers) => {
  const drive = x.joints.sidewaysHip?.drive
  if (drive?.kind === 'held') return drive
  throw new NoValueError('the sideways hip is not held')
}
export const holdingTorque = field('joints.sidewaysHip.holdingTorque', ['leg'], 'torque', (x) => heldBy(x).torque)
