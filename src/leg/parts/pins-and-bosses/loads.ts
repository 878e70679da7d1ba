import { line, value } from '../../run/index.js'
import { pinLoad } from '../motion/values.js'
import { shaftForce } from '../transmission/questions.js'
import { linkage } from '../transmission/through-hip/fields.js'

const together = line(
  'force of drive and foot',
  { shaftForce: 'force', footForce: 'force' },
  'force',
  'shaftForce + footForce',
  (x) => x.shaftForce + x.footForce,
)

/** Force of the transmission on the pin of a joint. The drum of a knee that is driven through the hip sits on the hip axis: its cord does not reach the knee. */
export const driveOnPin = value('pin.driveForce', ['joint', 'event', 'air', 'age'], (use, at) =>
  use(linkage) !== undefined && use.nameOf('joint', at.joint) === 'knee' ? 0 : use(shaftForce),
)
/** Force on the pin of a joint: transmission and links together. */
export const pinForce = value('pin.force', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(together, { shaftForce: use(driveOnPin), footForce: use(pinLoad) }),
)
