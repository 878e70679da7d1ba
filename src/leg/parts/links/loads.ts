import { line, type Of, type Use, value } from '../../run/index.js'
import { hipOf, kneeOf } from '../motion/instances.js'
import { driveLoad, jointLoad, stride } from '../motion/values.js'
import { isSprung, mostTorque, springForce } from '../springs/values.js'
import { alongAxes } from '../transmission/questions.js'
import { linkage } from '../transmission/through-hip/fields.js'
import { isThroughHip, stageIn } from '../transmission/through-hip/stage.js'

const larger = line('larger joint torque', { hip: 'torque', knee: 'torque' }, 'torque', 'max(knee, hip)', (x) => Math.max(x.knee, x.hip))
const sizeOf = line('size of the torque that is held', { torque: 'torque' }, 'torque', '|torque|', (x) => Math.abs(x.torque))
const along = line('force on the foot', { vertical: 'force', forward: 'force' }, 'force', 'hypot(vertical, forward)', (x) =>
  Math.hypot(x.vertical, x.forward),
)
const squeezed = line.sum('force along the upper link', { foot: 'force', squeeze: 'force' }, 'force')

/** The leg that a link belongs to is its only one so far. */
const legOf = (use: Use<'link' | 'event'>): Of<'leg'> => use.all('leg')[0] as Of<'leg'>

/**
 * Torques at knee and hip. Between a joint and the pin of its spring a link carries what the drive holds, or belt, cord or rod from the hip axis; beyond it
 * what the whole joint does.
 */
function atKnee(use: Use<'link' | 'event'>, leg: Of<'leg'>): number {
  const joint = kneeOf(use, leg)
  const knee = use.at(jointLoad, { joint })
  if (!use.at(isSprung, { leg })) return knee
  const held = isThroughHip(use) ? use.run(sizeOf, { torque: use.at(stride, { leg }).kneeHeldTorque }) : use.at(driveLoad, { joint })
  return use.run(larger, { hip: held, knee })
}
function atHip(use: Use<'link' | 'event'>, leg: Of<'leg'>): number {
  const joint = hipOf(use, leg)
  const hip = use.at(driveLoad, { joint })
  return use.at(isSprung, { leg }) ? use.run(larger, { hip, knee: use.at(jointLoad, { joint }) }) : hip
}
const withSprings = line(
  'force of foot and springs',
  { foot: 'force', springs: { list: 'force' } },
  'force',
  'foot + sum(springs)',
  (x) => x.foot + x.springs.reduce((sum, force) => sum + force, 0),
)

/** Moment that a link carries in the plane: the upper link the hip torque at its root and the knee torque at its end, the lower link the knee torque. */
export const bendingMoment = value('link.moment', ['link', 'event'], (use, at) => {
  const leg = legOf(use)
  const knee = atKnee(use, leg)
  if (use.nameOf('link', at.link) === 'lower') return knee
  const hip = atHip(use, leg)
  if (!isThroughHip(use)) return use.run(larger, { hip, knee })
  // Rod, belt or cord carries the knee's torque past the upper link. The link then bears the torque of the hip's drum, and at its end that of a knee spring.
  const spring = use.at(mostTorque, { joint: kneeOf(use, leg) })
  return spring === undefined ? hip : use.run(larger, { hip, knee: spring })
})
/** Force in the plane that a link passes on, in whatever direction: that of the foot, with a rod that of the knee pin, and that of the springs at its joints. */
export const force = value('link.force', ['link', 'event'], (use, at) => {
  const { vertical, forward, kneePin } = use(stride)
  const foot = use(linkage) === undefined ? use.run(along, { vertical, forward }) : kneePin
  const leg = legOf(use)
  const joints = use.nameOf('link', at.link) === 'lower' ? [kneeOf(use, leg)] : [hipOf(use, leg), kneeOf(use, leg)]
  const springs = joints.flatMap((joint) => use.at(springForce, { joint }) ?? [])
  return springs.length === 0 ? foot : use.run(withSprings, { foot, springs })
})
/** Force along a link: the same, and with belt or cord along the upper link what these press it together with. */
export const axialForce = value('link.axialForce', ['link', 'event', 'air', 'age'], (use, at) => {
  const stage = stageIn(use)
  const squeeze = stage && use.nameOf('link', at.link) === 'upper' ? use.at(alongAxes, { joint: stage }) : undefined
  return squeeze === undefined ? use(force) : use.run(squeezed, { foot: use(force), squeeze })
})
