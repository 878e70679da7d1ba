import { line, value } from '../../run/index.js'
import { sidewaysFrom, sidewaysTo } from '../joints/fields.js'
import { stance } from '../load/stance.js'
import { hipOf, kneeOf } from '../motion/instances.js'
import { footForce, groundForce, isLoaded, pinLoad, stride } from '../motion/values.js'
import { springForce } from '../springs/values.js'
import { drumOnHip } from '../transmission/output-bearing/fields.js'
import { shaftForce } from '../transmission/questions.js'
import { rodCouple } from '../transmission/rod-ends/couple.js'
import { drumOffset } from '../transmission/rod-ends/fields.js'
import { linkage, planeOffset } from '../transmission/through-hip/fields.js'
import { stageIn } from '../transmission/through-hip/stage.js'
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

const moment = line(
  'moment on the shaft',
  { force: 'force', arm: 'length', couple: 'torque' },
  'torque',
  'force · arm + couple',
  (x) => x.force * x.arm + x.couple,
)
const ofDrum = line(
  'couple of the cord on a drum beyond the plane of the leg',
  { force: 'force', rod: 'length', drum: 'length' },
  'torque',
  'force · max(0, rod + drum)',
  (x) => x.force * Math.max(0, x.rod + x.drum),
)
const withBeside = line.sum('couples of the foot and beside the plane of the leg', { foot: 'torque', beside: 'torque' }, 'torque')
const between = line(
  'moment on the shaft between crank and link',
  { load: 'force', distance: 'length', rod: 'torque', couple: 'torque' },
  'torque',
  'max(load · |distance|, rod) + couple',
  (x) => Math.max(x.load * Math.abs(x.distance), x.rod) + x.couple,
)
const ofPulley = line.sum('force of both belts or cords on the pulley on the hip axis', { stage: 'force', knee: 'force' }, 'force')
const larger = line.largest('larger moment on the shaft', { atBearing: 'torque', between: 'torque' }, 'torque')

/** Thrust of the leg along the hip shaft: the foot force leaning by the farthest sideways turn, and what holds the foot across a slope. */
export const thrust = value('shaft.thrust', ['leg', 'event'], (use) =>
  use.run(leaning, { force: use(footForce), from: use(sidewaysFrom), to: use(sidewaysTo), lateral: use(stance).lateral }),
)
const ofBoth = line.sum('force of both drives', { hip: 'force', knee: 'force' }, 'force')
const withStage = line.sum('force of the drive and of the second stage', { hip: 'force', stage: 'force' }, 'force')
/**
 * Force of the drives on the hip shaft: of the hip's, and of the knee's where its drum turns on the shaft too. The document does not say in which direction they
 * pull: their sizes add. What drives the knee from the drum along the upper link is a force between parts on the shaft: at its bearings it cancels, in whatever
 * plane it runs. A pulley on the output of its own motor or gearbox leaves the shaft what belt or cord does to the link.
 */
const cordsOnShaft = value('shaft.cords', ['leg', 'event', 'air', 'age'], (use, at) => {
  const hip = use.at(shaftForce, { joint: hipOf(use, at.leg) })
  const joint = stageIn(use)
  if (use(drumOnHip)) return use.run(ofBoth, { hip, knee: use.at(shaftForce, { joint: kneeOf(use, at.leg) }) })
  return joint === undefined ? hip : use.run(withStage, { hip, stage: use.at(shaftForce, { joint }) })
})
const withSpring = line.sum('load of the hip shaft with its spring', { load: 'force', spring: 'force' }, 'force')
/** Force of the leg on the hip shaft: of the ground, since the rod is a force between parts on the shaft; of the link alone where the crank is on an output of its own. The weight of the links, which relieves a leg that stands, is left out. */
const byLeg = value('shaft.byLeg', ['leg', 'event'], (use) => (use(drumOnHip) ? use(groundForce) : use(pinLoad)))
/** Force of cords, leg and the hip's spring across the hip shaft. */
export const shaftLoad = value('shaft.load', ['leg', 'event', 'air', 'age'], (use, at) => {
  const load = use.run(together, { shaftForce: use(cordsOnShaft), footForce: use(byLeg) })
  const spring = use.at(springForce, { joint: hipOf(use, at.leg) })
  return spring === undefined ? load : use.run(withSpring, { load, spring })
})
/** Couple of a force that pushes the foot sideways: it tilts the leg on its shaft, in the direction in which an upright load does. */
const footCouple = value('shaft.footCouple', ['leg', 'event'], (use) => (use(isLoaded) ? use(stride).hipCouple : 0))
/** Couple of the cord of a drum that is farther from the nearer bearing than the leg. */
const drumCouple = value('shaft.drumCouple', ['leg', 'event', 'air', 'age'], (use, at): number =>
  use.run(ofDrum, {
    force: use.at(shaftForce, { joint: kneeOf(use, at.leg) }),
    rod: use(planeOffset),
    drum: use(drumOffset),
  }),
)
/** Couples on the shaft at its nearer bearing: of a foot that is pushed sideways, and beside the plane of the leg that of the drum's cord, or of a rod whose crank is on an output of its own. */
export const shaftCouple = value('shaft.couple', ['leg', 'event', 'air', 'age'], (use) => {
  const foot = use(footCouple)
  if (use(linkage) === undefined) return foot
  return use.run(withBeside, { foot, beside: use(drumOnHip) ? use(drumCouple) : use(rodCouple) })
})
/** Load of the nearer bearing. Of an overhung leg it is more than the whole load. */
export const nearerLoad = value('shaft.nearerLoad', ['leg', 'event', 'air', 'age'], (use) =>
  use.run(levered, { load: use(shaftLoad), overhang: use(shaft.overhang), spacing: use(shaft.spacing), couple: use(shaftCouple) }),
)
/** Bending moment of the shaft at the nearer bearing. */
const momentAtBearing = value('shaft.momentAtBearing', ['leg', 'event', 'air', 'age'], (use) =>
  use.run(moment, { force: use(shaftLoad), arm: use(shaft.overhang), couple: use(shaftCouple) }),
)
/** Bending moment of the shaft between crank and link: the rod bends it there alone. With the crank on an output of its own that at the nearer bearing. */
export const momentByRod = value('shaft.momentByRod', ['leg', 'event', 'air', 'age'], (use) =>
  use(drumOnHip)
    ? use.run(between, { load: use(shaftLoad), distance: use(planeOffset), rod: use(rodCouple), couple: use(shaftCouple) })
    : use(momentAtBearing),
)
/** The same between link and pulley of a belt or cord along it, whose plane the document does not give: it counts as far beside the links as the nearer bearing is. */
const momentByStage = value('shaft.momentByStage', ['leg', 'event', 'air', 'age'], (use, at) => {
  const joint = stageIn(use)
  if (joint === undefined) return 0
  const force = use.run(ofPulley, { stage: use.at(shaftForce, { joint }), knee: use.at(shaftForce, { joint: kneeOf(use, at.leg) }) })
  return use.run(moment, { force, arm: use(shaft.overhang), couple: use(shaftCouple) })
})
/** Largest bending moment of the shaft at the nearer bearing, and between the link and a pulley beside it. */
export const shaftMoment = value('shaft.moment', ['leg', 'event', 'air', 'age'], (use) => {
  const atBearing = use(momentAtBearing)
  return stageIn(use) === undefined || !use(drumOnHip) ? atBearing : use.run(larger, { atBearing, between: use(momentByStage) })
})
