import type { Check } from '../../../cases/check.js'
import { value } from '../../../run/index.js'
import * as output from './fields.js'
import { force, tilt } from './values.js'

const unlessCarried = value('outputBearing.unlessCarried', ['joint'], (use) => {
  const carrier = use(output.carrier)
  return carrier === undefined ? undefined : `a ${carrier}`
})

const BEARINGS = {
  part: 'output bearing of the drive',
  consequence: 'breaks',
  scope: 'joint',
  when: ['bearsLoad'],
  unless: unlessCarried,
} as const

/** Checks of a motor or gearbox that carries the leg, or the drum on the hip axis. */
export const outputBearingChecks: readonly Check[] = [
  {
    id: 'outputBearing.radial',
    ...BEARINGS,
    mode: 'is overloaded by what it carries',
    kind: 'force',
    demand: force,
    capacity: output.radialLoad,
    demandIs:
      'the force across the joint, of the foot and of a spring; of a knee driven through the hip that of belt, cord or rod on the hip axis',
    capacityIs: 'the force across the axis that the bearings carry, from their sheet',
    remedy: 'a pin or a shaft with bearings of its own, or a drive with larger bearings',
  },
  {
    id: 'outputBearing.tilt',
    ...BEARINGS,
    mode: 'is tilted by what it carries beside it',
    kind: 'torque',
    demand: tilt,
    capacity: output.tiltingMoment,
    demandIs:
      'that force times its distance from the bearings; of a joint also the couple of a rod beside the links, and the sideways force of the leg times its longest arm',
    capacityIs: 'the tilting moment that the bearings carry, from their sheet',
    remedy: 'a second bearing on the other side of the leg, less overhang, or a narrower sideways range',
  },
]
