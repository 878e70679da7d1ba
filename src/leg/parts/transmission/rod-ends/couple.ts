import { line, value } from '../../../run/index.js'
import { force } from '../through-hip/checks.js'
import * as rod from '../through-hip/fields.js'

/** Couple of a rod's force beside a plane. */
export const coupleOf = line(
  'couple of a rod beside the plane of the links',
  { force: 'force', distance: 'length' },
  'torque',
  'force · |distance|',
  (x) => x.force * Math.abs(x.distance),
)

/** Couple of the rod on hip and knee, where it runs beside the plane of the links. */
export const rodCouple = value('rod.couple', ['leg', 'event'], (use): number =>
  use(rod.linkage) === undefined ? 0 : use.run(coupleOf, { force: use(force), distance: use(rod.planeOffset) }),
)
/** Why no couple of a rod acts; absent where one does. */
export const inPlane = value('rod.isInPlane', [], (use) =>
  use(rod.planeOffset) === 0 ? 'the rod is in the plane of the links' : undefined,
)
/** The couple of a foot that is pushed to the side, and of a rod beside the links. */
export const withRod = line.sum('couples of foot and rod', { foot: 'torque', rod: 'torque' }, 'torque')
