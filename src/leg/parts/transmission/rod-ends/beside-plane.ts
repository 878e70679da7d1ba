import { pinBearing, tiltedSeat } from '../../../../fasteners/index.js'
import { boxBendingStress, roundBendingStress } from '../../../../structures/index.js'
import type { Check } from '../../../cases/check.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { line, type Use, value } from '../../../run/index.js'
import { stress as linkStress } from '../../links/checks.js'
import * as links from '../../links/fields.js'
import { upperSideways, withFoot } from '../../links/sideways.js'
import { strength as linkStrength } from '../../links/strength.js'
import { stride } from '../../motion/values.js'
import { boss, onBearing, pin } from '../../pins-and-bosses/fields.js'
import { pinForce } from '../../pins-and-bosses/loads.js'
import { edgeStrength } from '../../pins-and-bosses/sideways.js'
import { bossStrength } from '../../pins-and-bosses/strengths.js'
import { criticalForce, enduring, force, push, section, strength } from '../through-hip/checks.js'
import * as rod from '../through-hip/fields.js'
import { rodCouple } from './couple.js'
import { apartOf, harderOf } from './pins.js'

const bentBy = line(
  'bending moment of a stepped rod',
  { force: 'force', push: 'force', critical: 'force', step: 'length' },
  'torque',
  'step · max(force, push / max(1 − push / critical, 0))',
  (x) => x.step * Math.max(x.force, x.push / Math.max(1 - x.push / x.critical, 0)),
)
const together = line(
  'stress of force and bending',
  { force: 'force', area: 'area', bending: 'stress' },
  'stress',
  'force / area + bending',
  (x) => x.force / x.area + x.bending,
)
const bothWays = line(
  'stress of bending both ways',
  { along: 'stress', sideways: 'stress' },
  'stress',
  'along + sideways',
  (x) => x.along + x.sideways,
)

const steppedStress = value('rod.steppedStress', ['leg', 'event', 'air'], (use) => {
  const moment = use.run(bentBy, { force: use(force), push: use(push), critical: use(criticalForce), step: use(rod.step) })
  const bending = use.run(roundBendingStress, { moment, diameter: use(rod.diameter), holeDiameter: 0 })
  return use.run(together, { force: use(force), area: use(section).area, bending })
})
const straight = value('rod.isStraight', [], (use) => (use(rod.step) === 0 ? 'the rod is straight' : undefined))
/** Why the checks of a rod beside the links do not apply; absent where one is. */
export const inPlane = value('rod.isInPlane', [], (use) =>
  use(rod.planeOffset) === 0 ? 'the rod is in the plane of the links' : undefined,
)

/** Couple that tilts the knee on its pin: of the rod beside the links, and of a foot that is pushed sideways. */
const kneeTilt = value('rod.kneeTilt', ['leg', 'event'], (use) => use.run(withFoot, { rod: use(rodCouple), foot: use(stride).kneeCouple }))
type AtKnee = Use<'leg' | 'joint' | 'event' | 'air' | 'age'>
const eyePressure = value(
  'rod.kneeEyePressure',
  ['joint', 'event', 'air', 'age'],
  (use: AtKnee) =>
    use.run(tiltedSeat, {
      force: use(pinForce),
      moment: use(kneeTilt),
      diameter: use(pin.diameter),
      length: use(pin.lugThickness),
    }).peakPressure,
)
const cheekPressure = value('rod.kneeBossPressure', ['joint', 'event', 'air', 'age'], (use: AtKnee) => {
  const distance = use.run(apartOf, { cheek: use(pin.cheekThickness), gap: use(pin.gap), lug: use(pin.lugThickness) })
  const harder = use.run(harderOf, { force: use(pinForce), moment: use(kneeTilt), distance })
  return use.run(pinBearing, { force: harder, diameter: use(pin.diameter), thickness: use(boss.engagement) }).projectedPressure
})

const sidewaysStress = value('rod.linkStress', ['link', 'event', 'air', 'age'], (use) => {
  // Bent sideways, the width of the section is its depth.
  const { stress: sideways } = use.run(boxBendingStress, {
    moment: use(upperSideways),
    width: use(links.depth),
    depth: use(links.width),
    wall: use(links.wall),
    axialForce: 0,
  })
  return use.run(bothWays, { along: use(linkStress), sideways })
})

const ROD = { part: 'rod of the knee', consequence: 'breaks', kind: 'stress', scope: 'leg' } as const
const kneePin = (x: LegNumbers) => (x.joints.knee.pin === undefined ? 'the knee has no pin' : { joint: 'knee' })
const COUPLE = { scope: 'leg', kind: 'stress', unless: inPlane } as const
const NEARER = 'the rod nearer to the plane of the links'

/** Checks of a rod with a step, and of what a rod beside the plane of the links tilts. */
export const besidePlaneChecks: readonly Check[] = [
  {
    id: 'rod.stepped',
    ...ROD,
    mode: 'breaks by the bending of its step',
    when: ['oneMoment'],
    demand: steppedStress,
    capacity: strength,
    unless: straight,
    demandIs: 'the stress of its force and of the bending by its step, which a push makes larger',
    capacityIs: 'the strength of its material for the time under load',
    remedy: 'a straight rod, or a thicker one',
  },
  {
    id: 'rod.steppedFatigue',
    ...ROD,
    mode: 'cracks at its step by the strides of a season',
    when: ['repeats'],
    demand: steppedStress,
    capacity: enduring,
    unless: straight,
    demandIs: 'the stress of its force and of the bending by its step, in every stride',
    capacityIs: 'the strength that the strides of a season leave',
    remedy: 'a straight rod, or a thicker one',
  },
  {
    id: 'rodCouple.eye',
    ...COUPLE,
    unless: value('rod.eyeNotTilted', ['joint'], (use) => use(inPlane) ?? use(onBearing)),
    part: 'eye of the knee',
    mode: 'wears oval where the rod beside the links tilts it on its pin',
    consequence: 'fails to work',
    of: kneePin,
    when: ['bearsLoad'],
    demand: eyePressure,
    capacity: edgeStrength,
    demandIs: 'the pressure of the pin at the harder end of the eye, from the pin’s force and the couples of rod and foot',
    capacityIs: 'twice what the eye bears while it turns, since the wall around holds the edge in (assumption)',
    remedy: `${NEARER}, a wider eye, or two ball bearings in it`,
  },
  {
    id: 'rodCouple.boss',
    ...COUPLE,
    part: 'boss of the knee',
    mode: 'yields under the pin that the rod beside the links tilts',
    consequence: 'breaks',
    of: (x) => (x.joints.knee.boss === undefined ? 'the knee has no boss' : kneePin(x)),
    when: ['bearsLoad'],
    demand: cheekPressure,
    capacity: bossStrength,
    demandIs: 'the pressure of the pin on the harder boss, from half the pin’s force and the couples of rod and foot',
    capacityIs: 'the long-term strength of the polymer at this temperature',
    remedy: `${NEARER}, bosses farther apart, or a thicker pin`,
  },
  {
    id: 'rodCouple.link',
    ...COUPLE,
    part: 'upper link',
    mode: 'breaks where the rod beside it bends it sideways',
    consequence: 'breaks',
    of: () => ({ link: 'upper' }),
    when: ['oneMoment'],
    demand: sidewaysStress,
    capacity: linkStrength,
    demandIs: 'the stress at a corner of its section, from bending in its plane, and across it by rod and foot',
    capacityIs: 'the strength of the printed wall for a moment, along the link',
    remedy: `${NEARER}, or a wider link`,
  },
]
