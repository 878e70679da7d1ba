import { fourBarKneePose } from '../../../../kinematics/index.js'
import type { Joint } from '../../../numbers.js'
import { line, value } from '../../../run/index.js'
import { from, to } from '../../joints/fields.js'
import * as links from '../../links/fields.js'
import { hipOf, kneeOf, upperOf } from '../../motion/instances.js'
import { linkage } from './fields.js'

const lowestOf = line(
  'lowest angle of the drum',
  { hip: 'angle', one: 'angle', other: 'angle' },
  'angle',
  'hip + min(one, other)',
  (x) => x.hip + Math.min(x.one, x.other),
)
const highestOf = line(
  'highest angle of the drum',
  { hip: 'angle', one: 'angle', other: 'angle' },
  'angle',
  'hip + max(one, other)',
  (x) => x.hip + Math.max(x.one, x.other),
)

/** Angles of the crank at both limits of the knee. */
const crankLimits = value('rod.crankLimits', ['leg'], (use, at) => {
  const rod = use(linkage)
  if (rod === undefined) throw new RangeError('no rod drives the knee')
  const joint = kneeOf(use, at.leg)
  const ground = use.at(links.length, { link: upperOf(use, at.leg) })
  const crankAt = (kneeAngle: number) => use.run(fourBarKneePose, { ...rod, ground, kneeAngle }).crankAngle
  return { one: crankAt(use.at(from, { joint })), other: crankAt(use.at(to, { joint })) }
})

/** Angles through which the drum of a joint's drive turns over the limits of the joints: that of a knee driven through the hip turns with both. */
export const drumTravel = value('drive.travel', ['joint'], (use, at) => {
  const [own] = use.all('leg')
  if (use(linkage) === undefined || (use.nameOf('joint', at.joint) as Joint) === 'hip' || own === undefined)
    return { lowest: use(from), highest: use(to) }
  const hip = hipOf(use, own)
  const limits = use(crankLimits)
  return {
    lowest: use.run(lowestOf, { hip: use.at(from, { joint: hip }), ...limits }),
    highest: use.run(highestOf, { hip: use.at(to, { joint: hip }), ...limits }),
  }
})
