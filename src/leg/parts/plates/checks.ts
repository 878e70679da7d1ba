import type { Check } from '../../cases/check.js'
import { riseAbove } from '../../lines.js'
import { line, value } from '../../run/index.js'
import { airTemperature } from '../load/fields.js'
import { transitionMargin } from '../materials/fields.js'
import { atTransition, softening } from '../materials/values.js'
import { unsettledRemark } from '../motors/checks.js'
import { heat } from '../motors/heat.js'
import * as plate from './fields.js'

const belowLimit = line.difference(
  'temperature that the plate bears',
  { limit: 'temperature', margin: 'temperatureDifference' },
  'temperature',
)

const mountRise = value('plate.mountRise', ['joint', 'event', 'air'], (use) =>
  use.run(riseAbove, { temperature: use(heat).mount, air: use(airTemperature) }),
)
/** Temperature up to which a plate carries its motor. */
export const allowableTemperature = value('plate.allowableTemperature', ['plate'], (use) => {
  const material = use(plate.material)
  const limit = use.at(softening, { material })
  return use.at(atTransition, { material }) ? use.run(belowLimit, { limit, margin: use(transitionMargin) }) : limit
})
/** Whether the plate of a joint is too warm to carry its motor: its own check fails then. */
export const plateSoftens = value('plate.softens', ['joint', 'event', 'air'], (use) => use(heat).mount > use(allowableTemperature))

/** Checks of the plate of each motor. */
export const plateChecks: readonly Check[] = [
  {
    id: 'motor.plate',
    part: 'motor plate at the motor',
    mode: 'gets too hot for its material',
    consequence: 'breaks',
    kind: 'temperatureDifference',
    scope: 'joint',
    when: ['warms'],
    demand: mountRise,
    capacity: value('plate.allowableRise', ['joint', 'air'], (use) =>
      use.run(riseAbove, { temperature: use(allowableTemperature), air: use(airTemperature) }),
    ),
    remark: unsettledRemark,
    demandIs: 'the rise of the mounting face above the air',
    capacityIs: 'the rise that leaves 15 K below the glass transition (or reaches the service limit)',
    remedy: 'a metal sink under the motor, a material that bears more heat, less torque, or a motor with less resistance',
  },
]
