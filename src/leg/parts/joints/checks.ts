import type { Check } from '../../cases/check.js'
import { NoValueError } from '../../no-value.js'
import { line, value } from '../../run/index.js'
import { groundFriction } from '../foot/fields.js'
import * as links from '../links/fields.js'
import { jointMotion, stride } from '../motion/values.js'
import * as joint from './fields.js'

const reachOf = line.sum('length of both links', { upper: 'length', lower: 'length' }, 'length')
const nearerLimit = line(
  'angle to the nearer limit',
  { lowest: 'angle', highest: 'angle', from: 'angle', to: 'angle' },
  'angle',
  'min(to − highest, lowest − from)',
  (x) => Math.min(x.to - x.highest, x.lowest - x.from),
)
const slopeOfForce = line.quotient('force along the ground over force across it', { forward: 'force', vertical: 'force' }, 'ratio')

const reach = value('leg.reach', ['leg'], (use, at) => {
  const [upper, lower] = use.all('link', { leg: at.leg }).map((link) => use.at(links.length, { link }))
  return use.run(reachOf, { upper: upper as number, lower: lower as number })
})
/** The loads are those of the points that the leg reaches. A path that comes too near to the hip must fail here: no point of it is too far. */
const farthest = value('leg.farthest', ['leg', 'event'], (use) => {
  const { farthest: distance, reached } = use(stride)
  if (reached === 'no' && distance <= use(reach))
    throw new NoValueError('the foot path comes nearer to the hip than the foot of the folded leg')
  return distance
})
const margin = value('joint.margin', ['joint', 'event'], (use) => {
  const { lowest, highest } = use(jointMotion)
  return use.run(nearerLimit, { lowest, highest, from: use(joint.from), to: use(joint.to) })
})
const sideways = value('sidewaysHip.torque', ['leg', 'event'], (use) => use(stride).sidewaysTorque)
const push = value('ground.push', ['leg', 'event'], (use) => {
  const { forward, vertical } = use(stride)
  return use.run(slopeOfForce, { forward, vertical })
})

/** Checks of reach, joint ranges, sideways hip and ground. */
export const jointChecks: readonly Check[] = [
  {
    id: 'leg.reach',
    part: 'leg',
    mode: 'cannot reach its foot path',
    consequence: 'fails to work',
    kind: 'length',
    scope: 'leg',
    when: ['bearsLoad'],
    demand: farthest,
    capacity: reach,
    demandIs: 'the farthest distance of the foot from the hip axis',
    capacityIs: 'the length of both links, stretched out',
    remedy: 'a lower stance, a shorter step, or longer links',
    requiredReserve: 1.02,
  },
  {
    id: 'leg.range',
    part: 'joint range',
    mode: 'ends before the foot path does',
    consequence: 'fails to work',
    kind: 'angle',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: joint.leastMargin,
    capacity: margin,
    unless: value('joint.unlessOutOfReach', ['joint', 'event'], (use) => {
      const { lowest, highest } = use(jointMotion)
      return lowest > highest ? 'the leg reaches no point of its foot path' : undefined
    }),
    demandIs: 'the angle to keep from a joint limit',
    capacityIs: 'the angle from the foot path to the nearer joint limit',
    remedy: 'wider joint limits, a shorter step, or another stance height',
    requiredReserve: 1,
  },
  {
    id: 'sidewaysHip.hold',
    of: ({ joints: { sidewaysHip } }) =>
      sidewaysHip === undefined
        ? 'the leg has no sideways hip'
        : sidewaysHip.drive.kind === 'held'
          ? {}
          : 'a motor of its own drives the sideways hip',
    part: 'sideways hip',
    mode: 'yields',
    consequence: 'fails to work',
    kind: 'torque',
    scope: 'leg',
    when: ['bearsLoad'],
    demand: sideways,
    capacity: joint.holdingTorque,
    demandIs: 'the torque of the foot force about the sideways-hip axis',
    capacityIs: 'the torque that its drive can hold',
    remedy: 'a smaller sideways offset, a stronger sideways drive, or feet nearer to the middle',
  },
  {
    id: 'ground.slip',
    part: 'foot on the ground',
    mode: 'slips',
    consequence: 'fails to work',
    kind: 'ratio',
    scope: 'leg',
    when: ['pushes'],
    demand: push,
    capacity: groundFriction,
    unless: value('ground.unlessUnloaded', ['leg', 'event'], (use) => (use(stride).vertical === 0 ? 'the foot bears no load' : undefined)),
    demandIs: 'the force along the ground over the force across it',
    capacityIs: 'the friction of foot on ground',
    remedy: 'studs or a softer, rougher sole, or a gentler slope',
  },
]
