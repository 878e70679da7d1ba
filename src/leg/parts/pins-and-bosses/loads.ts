import { line, value } from '../../run/index.js'
import { pinLoad } from '../motion/values.js'
import { shaftForce } from '../transmission/questions.js'
import { linkage } from '../transmission/through-hip/fields.js'
import { stageIn } from '../transmission/through-hip/stage.js'

const together = line(
  'force of drive and foot',
  { shaftForce: 'force', footForce: 'force' },
  'force',
  'shaftForce + footForce',
  (x) => x.shaftForce + x.footForce,
)

const withStage = line(
  'force of drive and second stage',
  { shaftForce: 'force', stageForce: 'force' },
  'force',
  'shaftForce + stageForce',
  (x) => x.shaftForce + x.stageForce,
)

/**
 * Force of the transmission on the pin of a joint. The drum of a knee that is driven through the hip sits on the hip axis: its cord does not reach the
 * knee. Belt or cord from there to the knee pulls both pins towards each other.
 */
export const driveOnPin = value('pin.driveForce', ['joint', 'event', 'air', 'age'], (use, at) => {
  const stage = stageIn(use)
  const isKnee = use.nameOf('joint', at.joint) === 'knee'
  if (stage === undefined) return use(linkage) !== undefined && isKnee ? 0 : use(shaftForce)
  const stageForce = use.at(shaftForce, { joint: stage })
  return isKnee ? stageForce : use.run(withStage, { shaftForce: use(shaftForce), stageForce })
})
/** Force on the pin of a joint: transmission and links together. */
export const pinForce = value('pin.force', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(together, { shaftForce: use(driveOnPin), footForce: use(pinLoad) }),
)
