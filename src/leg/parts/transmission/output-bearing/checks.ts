import type { Check } from '../../../cases/check.js'
import { line, type Of, value } from '../../../run/index.js'
import { thrust } from '../../hip-shaft/loads.js'
import * as links from '../../links/fields.js'
import { pinLoad } from '../../motion/values.js'
import * as output from './fields.js'

const reachOf = line('length of both links', { upper: 'length', lower: 'length' }, 'length', 'upper + lower', (x) => x.upper + x.lower)
const tilting = line(
  'moment that tilts the output of a drive',
  { force: 'force', overhang: 'length', thrust: 'force', reach: 'length' },
  'torque',
  'force · overhang + thrust · reach',
  (x) => x.force * x.overhang + x.thrust * x.reach,
)

/** Longest distance of the foot from the joint. */
const reach = value('outputBearing.reach', ['joint'], (use, at) => {
  const [upper, lower] = use.all('link').map((link: Of<'link'>) => use.at(links.length, { link })) as [number, number]
  return use.nameOf('joint', at.joint) === 'knee' ? lower : use.run(reachOf, { upper, lower })
})
/** The load of the leg beside the bearings, and what leans sideways at the foot. */
const tilt = value('outputBearing.tilt', ['joint', 'event'], (use) =>
  use.run(tilting, { force: use(pinLoad), overhang: use(output.overhang), thrust: use(thrust), reach: use(reach) }),
)
const force = value('outputBearing.force', ['joint', 'event'], (use) => use(pinLoad))

const unlessCarried = value('outputBearing.unlessCarried', ['joint'], (use) => {
  const carrier = use(output.carrier)
  return carrier === undefined ? undefined : `a ${carrier} carries the joint`
})

const BEARINGS = {
  part: 'output bearing of the drive',
  consequence: 'breaks',
  scope: 'joint',
  when: ['bearsLoad'],
  unless: unlessCarried,
} as const

/** Checks of a motor or gearbox that carries the leg. */
export const outputBearingChecks: readonly Check[] = [
  {
    id: 'outputBearing.radial',
    ...BEARINGS,
    mode: 'is overloaded by the leg that it carries',
    kind: 'force',
    demand: force,
    capacity: output.radialLoad,
    demandIs: 'the force of the foot, which passes through them',
    capacityIs: 'the force across the axis that the bearings carry, from their sheet',
    remedy: 'a pin or a shaft with bearings of its own, or a drive with larger bearings',
  },
  {
    id: 'outputBearing.tilt',
    ...BEARINGS,
    mode: 'is tilted by the leg beside it',
    kind: 'torque',
    demand: tilt,
    capacity: output.tiltingMoment,
    demandIs: 'the force of the foot times its distance from the bearings, and the sideways force of the leaning leg times its longest arm',
    capacityIs: 'the tilting moment that the bearings carry, from their sheet',
    remedy: 'a second bearing on the other side of the leg, less overhang, or a narrower sideways range',
  },
]
