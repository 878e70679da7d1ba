import { field, word } from '../../../leaves.js'
import { driveOf, type Joint, type LegNumbers } from '../../../numbers.js'
import { constant } from '../../../run/index.js'

const drive = (x: LegNumbers, joint: Joint) => driveOf(x, joint, 'direct')

export const overhang = field('direct.overhang', ['joint'], 'length', (x, { joint }) => drive(x, joint).overhang)
export const radialLoad = field('direct.radialLoad', ['joint'], 'force', (x, { joint }) => drive(x, joint).radialLoad ?? Number.NaN)
export const tiltingMoment = field(
  'direct.tiltingMoment',
  ['joint'],
  'torque',
  (x, { joint }) => drive(x, joint).tiltingMoment ?? Number.NaN,
)
/** What carries the joint besides the bearings of its motor; absent where they carry it alone. */
export const carrier = word('direct.carrier', ['joint'], (x, { joint }) => {
  const { pin, shaft } = { shaft: undefined, ...x.joints[joint] }
  return pin !== undefined ? 'pin' : shaft !== undefined ? 'shaft' : undefined
})

/** Turns of the rotor for one of the joint that it is fixed to, and the share of its torque that arrives there. */
export const one = constant('direct.one', {
  kind: 'ratio',
  typical: 1,
  source: { level: 'computed', where: 'the rotor is fixed to the joint' },
})
