import { line, type Of, type Use, value } from '../../../run/index.js'
import { thrust } from '../../hip-shaft/loads.js'
import * as links from '../../links/fields.js'
import { pinForce } from '../../pins-and-bosses/loads.js'
import { shaftForce } from '../questions.js'
import { rodCouple } from '../rod-ends/couple.js'
import { force as rodForce } from '../through-hip/checks.js'
import { linkage } from '../through-hip/fields.js'
import { isThroughHip, stageIn } from '../through-hip/stage.js'
import * as output from './fields.js'

const reachOf = line.sum('length of both links', { upper: 'length', lower: 'length' }, 'length')
const tilting = line(
  'moment that tilts the output of a drive',
  { force: 'force', overhang: 'length', thrust: 'force', reach: 'length' },
  'torque',
  'force · overhang + thrust · reach',
  (x) => x.force * x.overhang + x.thrust * x.reach,
)
const byDrum = line.product(
  'moment of the drum on the hip axis about the bearings of its drive',
  { force: 'force', overhang: 'length' },
  'torque',
)
const besideLinks = line.sum(
  'moment that tilts the output of the drive of the hip, with that of a rod beside the links',
  { leg: 'torque', rod: 'torque' },
  'torque',
)

/** Whether the output turns the drum or crank on the hip axis of a knee that is driven from there, instead of its joint. */
const turnsDrum = (use: Use<'joint'>, joint: Of<'joint'>): boolean => use.nameOf('joint', joint) === 'knee' && isThroughHip(use)

/** Longest distance of the foot from the joint. */
const reach = value('outputBearing.reach', ['joint'], (use, at) => {
  const [upper, lower] = use.all('link').map((link: Of<'link'>) => use.at(links.length, { link })) as [number, number]
  return use.nameOf('joint', at.joint) === 'knee' ? lower : use.run(reachOf, { upper, lower })
})
/** Force across the axis of the output: that of the pin of its joint; of belt, cord or rod on the drum on the hip axis that it turns. */
export const force = value('outputBearing.force', ['joint', 'event', 'air', 'age'], (use, at) => {
  if (!turnsDrum(use, at.joint)) return use(pinForce)
  const stage = stageIn(use)
  if (stage !== undefined) return use.at(shaftForce, { joint: stage })
  return use(rodForce)
})
/** The same where the bearings of the output carry it alone; otherwise 0. */
export const carriedForce = value('outputBearing.carriedForce', ['joint', 'event', 'air', 'age'], (use) =>
  use(output.carrier) === undefined ? use(force) : 0,
)
/**
 * The load beside the bearings, and what leans sideways at the foot, which a drum on the hip axis does not feel. A rod beside the links twists the upper link
 * out of its plane: crank and hip have drives of their own, so that the couple reaches the bearings of the hip's.
 */
export const tilt = value('outputBearing.tilt', ['joint', 'event', 'air', 'age'], (use, at) => {
  const load = { force: use(force), overhang: use(output.overhang) }
  if (turnsDrum(use, at.joint)) return use.run(byDrum, load)
  const leg = use.run(tilting, { ...load, thrust: use(thrust), reach: use(reach) })
  return use(linkage) === undefined || use.nameOf('joint', at.joint) !== 'hip' ? leg : use.run(besideLinks, { leg, rod: use(rodCouple) })
})
