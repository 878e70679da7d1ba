import { clevisSidePlay, pinCouple } from '../../../fasteners/index.js'
import { line, type Of, value } from '../../run/index.js'
import { length } from '../links/fields.js'
import { kneeOf } from '../motion/instances.js'
import { groundForce, isLoaded, pinLoad, stride } from '../motion/values.js'
import { springForce } from '../springs/values.js'
import { drumOnHip } from '../transmission/output-bearing/fields.js'
import { shaftForce } from '../transmission/questions.js'
import { rodCouple, withRod } from '../transmission/rod-ends/couple.js'
import { linkage } from '../transmission/through-hip/fields.js'
import { stageIn } from '../transmission/through-hip/stage.js'
import { boss, eyeClearance, hipHasShaft, pin } from './fields.js'

const together = line.sum('force of drive and foot', { shaftForce: 'force', footForce: 'force' }, 'force')

const withStage = line.sum('force of drive and second stage', { shaftForce: 'force', stageForce: 'force' }, 'force')

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
const withDrum = line(
  'force on a hip pin that carries link and drum of the knee',
  { link: 'force', drive: 'force', drum: 'force', ground: 'force' },
  'force',
  'max(link, drive + drum + ground)',
  (x) => Math.max(x.link, x.drive + x.drum + x.ground),
)
const withSpring = line.sum('force of drive, foot and spring', { force: 'force', spring: 'force' }, 'force')

/** Force of transmission and links on the pin of a joint. Where the knee's drum turns on the hip pin too, that of the link alone or of both: what drives the knee from there cancels between them. */
const byLinks = value('pin.byLinks', ['joint', 'event', 'air', 'age'], (use, at) => {
  const link = use.run(together, { shaftForce: use(driveOnPin), footForce: use(pinLoad) })
  if (use.nameOf('joint', at.joint) !== 'hip' || use(hipHasShaft) || !use(drumOnHip)) return link
  const drum = use.at(shaftForce, { joint: kneeOf(use, use.all('leg')[0] as Of<'leg'>) })
  return use.run(withDrum, { link, drive: use(shaftForce), drum, ground: use(groundForce) })
})

/** Force on the pin of a joint: transmission, links and spring together. */
export const pinForce = value('pin.force', ['joint', 'event', 'air', 'age'], (use) => {
  const force = use(byLinks)
  const spring = use(springForce)
  return spring === undefined ? force : use.run(withSpring, { force, spring })
})

/**
 * Couple that prises the pin of a joint, from a force that pushes the foot sideways and from a rod beside the plane of the links. A hip shaft turns in
 * bearings that take it off the hip pin.
 */
export const couple = value('pin.couple', ['joint', 'event'], (use, at) => {
  const isKnee = use.nameOf('joint', at.joint) === 'knee'
  if (!isKnee && use(hipHasShaft)) return 0
  const { kneeCouple, hipCouple } = use(stride)
  const foot = !use(isLoaded) ? 0 : isKnee ? kneeCouple : hipCouple
  return use(linkage) === undefined ? foot : use.run(withRod, { foot, rod: use(rodCouple) })
})
/** What the couple does to pin, eye and bosses. */
export const prised = value('pin.prised', ['joint', 'event'], (use) => {
  const { cheekForce, eyeEdgePressure, bendingStress } = use.run(pinCouple, {
    couple: use(couple),
    diameter: use(pin.diameter),
    cheekThickness: use(pin.cheekThickness),
    gap: use(pin.gap),
    lugThickness: use(pin.lugThickness),
  })
  return { cheekForce, eyeEdgePressure, bendingStress }
})
const harder = line(
  'force on the boss that bears more',
  { force: 'force', couple: 'force' },
  'force',
  'force / 2 + couple',
  (x) => x.force / 2 + x.couple,
)
/** Half of the force of the pin, which each boss bears, and what a couple adds to one of them. */
export const forceOnBoss = value('boss.force', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(harder, { force: use(pinForce), couple: use(prised).cheekForce }),
)
/** Play to either side of the far end of the lower link on the pin of a knee. */
export const sidePlay = value(
  'pin.sidePlay',
  ['joint'],
  (use) =>
    use.run(clevisSidePlay, {
      gap: use(pin.gap),
      clearance: use(eyeClearance),
      lugThickness: use(pin.lugThickness),
      faceDiameter: use(boss.outerDiameter),
      distance: use.at(length, { link: use.all('link')[1] as Of<'link'> }),
    }).play,
)
