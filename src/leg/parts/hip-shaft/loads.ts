import { line, value } from '../../run/index.js'
import { sidewaysFrom, sidewaysTo } from '../joints/fields.js'
import { stance } from '../load/stance.js'
import { hipOf, kneeOf } from '../motion/instances.js'
import { footForce, isLoaded, pinLoad, stride } from '../motion/values.js'
import { springForce } from '../springs/values.js'
import { shaftForce } from '../transmission/questions.js'
import { isThroughHip, stageIn } from '../transmission/through-hip/stage.js'
import * as shaft from './fields.js'

const leaning = line(
  'thrust of the leaning leg',
  { force: 'force', from: 'angle', to: 'angle', lateral: 'ratio' },
  'force',
  'force · (sin(min(π / 2, max(|from|, |to|))) + lateral)',
  (x) => x.force * (Math.sin(Math.min(Math.PI / 2, Math.max(Math.abs(x.from), Math.abs(x.to)))) + x.lateral),
)
const together = line.sum('load of the hip shaft', { shaftForce: 'force', footForce: 'force' }, 'force')
const levered = line(
  'load of the nearer bearing',
  { load: 'force', overhang: 'length', spacing: 'length', couple: 'torque' },
  'force',
  'load · (1 + overhang / spacing) + couple / spacing',
  (x) => x.load * (1 + x.overhang / x.spacing) + x.couple / x.spacing,
)

/** Thrust of the leg along the hip shaft: the foot force leaning by the farthest sideways turn, and what holds the foot across a slope. */
export const thrust = value('shaft.thrust', ['leg', 'event'], (use) =>
  use.run(leaning, { force: use(footForce), from: use(sidewaysFrom), to: use(sidewaysTo), lateral: use(stance).lateral }),
)
const ofBoth = line.sum('force of both drives', { hip: 'force', knee: 'force' }, 'force')
const withStage = line.sum('force of both drives and of the second stage', { both: 'force', stage: 'force' }, 'force')
/** Force of the drives on the hip shaft: of the hip's, of the knee's where its drum sits on the hip axis too, and of belt or cord from there to the knee. */
const cordsOnShaft = value('shaft.cords', ['leg', 'event', 'air', 'age'], (use, at) => {
  const hip = use.at(shaftForce, { joint: hipOf(use, at.leg) })
  if (!isThroughHip(use)) return hip
  const both = use.run(ofBoth, { hip, knee: use.at(shaftForce, { joint: kneeOf(use, at.leg) }) })
  const joint = stageIn(use)
  return joint === undefined ? both : use.run(withStage, { both, stage: use.at(shaftForce, { joint }) })
})
const withSpring = line.sum('load of the hip shaft with its spring', { load: 'force', spring: 'force' }, 'force')
/** Force of cords, links and the hip's spring on the hip shaft. Crank, or pulley on the hip axis, and upper link press on it against each other, each in its own plane: both are counted. */
export const shaftLoad = value('shaft.load', ['leg', 'event', 'air', 'age'], (use, at) => {
  const load = use.run(together, { shaftForce: use(cordsOnShaft), footForce: use(pinLoad) })
  const spring = use.at(springForce, { joint: hipOf(use, at.leg) })
  return spring === undefined ? load : use.run(withSpring, { load, spring })
})
/** Couple of a force that pushes the foot sideways: it tilts the leg on its shaft, in the direction in which an upright load does. */
export const shaftCouple = value('shaft.couple', ['leg', 'event'], (use) => (use(isLoaded) ? use(stride).hipCouple : 0))
/** Load of the nearer bearing. Of an overhung leg it is more than the whole load. */
export const nearerLoad = value('shaft.nearerLoad', ['leg', 'event', 'air', 'age'], (use) =>
  use.run(levered, { load: use(shaftLoad), overhang: use(shaft.overhang), spacing: use(shaft.spacing), couple: use(shaftCouple) }),
)
