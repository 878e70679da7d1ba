import type { Check } from '../../../cases/check.js'
import { line, type Of, value } from '../../../run/index.js'
import { thrust } from '../../hip-shaft/loads.js'
import * as links from '../../links/fields.js'
import { pinLoad } from '../../motion/values.js'
import * as direct from './fields.js'

const reachOf = line('length of both links', { upper: 'length', lower: 'length' }, 'length', 'upper + lower', (x) => x.upper + x.lower)
const tilting = line(
  'moment that tilts the rotor',
  { force: 'force', overhang: 'length', thrust: 'force', reach: 'length' },
  'torque',
  'force · overhang + thrust · reach',
  (x) => x.force * x.overhang + x.thrust * x.reach,
)

/** Longest distance of the foot from the joint. */
const reach = value('direct.reach', ['joint'], (use, at) => {
  const [upper, lower] = use.all('link').map((link: Of<'link'>) => use.at(links.length, { link })) as [number, number]
  return use.nameOf('joint', at.joint) === 'knee' ? lower : use.run(reachOf, { upper, lower })
})
/** The load of the leg beside the bearings, and what leans sideways at the foot. */
const tilt = value('direct.tilt', ['joint', 'event'], (use) =>
  use.run(tilting, { force: use(pinLoad), overhang: use(direct.overhang), thrust: use(thrust), reach: use(reach) }),
)
const force = value('direct.force', ['joint', 'event'], (use) => use(pinLoad))

const unlessCarried = value('direct.unlessCarried', ['joint'], (use) => {
  const carrier = use(direct.carrier)
  return carrier === undefined ? undefined : `a ${carrier} carries the joint`
})

const BEARINGS = {
  part: 'bearings of the motor',
  consequence: 'breaks',
  scope: 'joint',
  when: ['bearsLoad'],
  unless: unlessCarried,
} as const

/** Checks of a motor that carries the leg. */
export const directChecks: readonly Check[] = [
  {
    id: 'direct.radial',
    ...BEARINGS,
    mode: 'are overloaded by the leg on the rotor',
    kind: 'force',
    demand: force,
    capacity: direct.radialLoad,
    demandIs: 'the force of the foot, which passes through the rotor',
    capacityIs: 'the force across the axis that the bearings of the motor carry, from its sheet',
    remedy: 'a pin or a shaft with bearings of its own, or a motor with larger bearings',
  },
  {
    id: 'direct.tilt',
    ...BEARINGS,
    mode: 'are tilted by the leg beside them',
    kind: 'torque',
    demand: tilt,
    capacity: direct.tiltingMoment,
    demandIs: 'the force of the foot times its distance from the bearings, and the sideways force of the leaning leg times its longest arm',
    capacityIs: 'the tilting moment that the bearings of the motor carry, from its sheet',
    remedy: 'a second bearing on the other side of the leg, less overhang, or a narrower sideways range',
  },
]
