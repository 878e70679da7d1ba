import { field } from '../../leaves.js'
import type { LegNumbers } from '../../numbers.js'

export const from = field('joint.from', ['joint'], 'angle', (x, { joint }) => x.joints[joint].range.lowest)
export const to = field('joint.to', ['joint'], 'angle', (x, { joint }) => x.joints[joint].range.highest)
/** A leg without a sideways hip does not lean. */
export const sidewaysFrom = field('joints.sidewaysHip.from', ['leg'], 'angle', (x) => x.joints.sidewaysHip?.range.lowest ?? 0)
export const sidewaysTo = field('joints.sidewaysHip.to', ['leg'], 'angle', (x) => x.joints.sidewaysHip?.range.highest ?? 0)
const heldBy = (x: LegNumbers) => {
  const drive = x.joints.sidewaysHip?.drive
  if (drive?.kind === 'held') return drive
  throw new RangeError('the sideways hip is not held')
}
export const holdingTorque = field('joints.sidewaysHip.holdingTorque', ['leg'], 'torque', (x) => heldBy(x).torque)
