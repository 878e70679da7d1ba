import { clevisPinBending, pinBearing, pinShear } from '../../../../fasteners/index.js'
import { fourBarClearance } from '../../../../kinematics/index.js'
import { columnBuckling, roundSection } from '../../../../structures/index.js'
import type { Check } from '../../../cases/check.js'
import { shareOfStress } from '../../../lines.js'
import { NoValueError } from '../../../no-value.js'
import { line, type Use, value } from '../../../run/index.js'
import { from, to } from '../../joints/fields.js'
import * as links from '../../links/fields.js'
import { cycles } from '../../load/durations.js'
import { airTemperature, moment } from '../../load/fields.js'
import { shearShare } from '../../materials/fields.js'
import { modulusInAir, strengthInAir } from '../../materials/in-air.js'
import { allowableStress } from '../../materials/values.js'
import { kneeOf, upperOf } from '../../motion/instances.js'
import { stride } from '../../motion/values.js'
import { movingShare, yieldShare } from '../../pins-and-bosses/fields.js'
import * as rod from './fields.js'

const larger = line.largest('larger force of the rod', { pull: 'force', push: 'force' }, 'force')
const stressOf = line.quotient('stress in the rod', { force: 'force', area: 'area' }, 'stress')

/** Force of the rod in an event, without its sign. */
export const force = value('rod.force', ['leg', 'event'], (use) => {
  const { rodPull: pull, rodPush: push } = use(stride)
  return use.run(larger, { pull, push })
})
/** Largest push in the rod in an event. */
export const push = value('rod.push', ['leg', 'event'], (use) => use(stride).rodPush)

const clearance = value('rod.clearance', ['leg'], (use, at) => {
  const linkage = use(rod.linkage)
  if (linkage === undefined) throw new NoValueError('no rod drives the knee')
  const joint = kneeOf(use, at.leg)
  return use.run(fourBarClearance, {
    ...linkage,
    ground: use.at(links.length, { link: upperOf(use, at.leg) }),
    kneeLowest: use.at(from, { joint }),
    kneeHighest: use.at(to, { joint }),
    lengthError: use(rod.lengthError),
  }).clearance
})

/** Area and second moment of the rod's section. */
export const section = value('rod.section', [], (use) => {
  const { area, secondMoment } = use.run(roundSection, { diameter: use(rod.diameter), holeDiameter: 0 })
  return { area, secondMoment }
})
/** Strength of the rod for the time under load. */
export const strength = value('rod.strength', ['event', 'air'], (use) => use.at(strengthInAir.alongLayers, { material: use(rod.material) }))
/** Strength of the rod that the strides of a season leave. */
export const enduring = value('rod.enduringStress', ['event', 'air'], (use) =>
  allowableStress(use, use(rod.material), {
    direction: 'alongLayers',
    temperature: use(airTemperature),
    duration: use(moment),
    cycles: use(cycles),
  }),
)
const stress = value('rod.stress', ['leg', 'event'], (use) => use.run(stressOf, { force: use(force), area: use(section).area }))
/** Force at which the rod buckles between its pins, as soft as the temperature and the time under load make it. */
export const criticalForce = value('rod.criticalForce', ['leg', 'event', 'air'], (use) => {
  const { area, secondMoment } = use(section)
  return use.run(columnBuckling, {
    force: use(push),
    length: use(rod.length),
    ends: 'bothPinned',
    area,
    secondMoment,
    modulus: use.at(modulusInAir, { material: use(rod.material) }),
    yieldStrength: use(strength),
  }).criticalForce
})

type OnPin = Use<'leg' | 'event'>
const pinLoad = (use: OnPin) => ({ force: use(force), diameter: use(rod.pin.diameter) })
const shear = value('rodPin.shearStress', ['leg', 'event'], (use) => use.run(pinShear, { ...pinLoad(use), planes: 2 }).peakStress)
const bending = value(
  'rodPin.bendingStress',
  ['leg', 'event'],
  (use) =>
    use.run(clevisPinBending, {
      ...pinLoad(use),
      cheekThickness: use(rod.pin.cheekThickness),
      gap: use(rod.pin.gap),
      lugThickness: use(rod.pin.lugThickness),
    }).bendingStress,
)
const eyePressure = value(
  'rodPin.eyePressure',
  ['leg', 'event'],
  (use) => use.run(pinBearing, { ...pinLoad(use), thickness: use(rod.pin.lugThickness) }).projectedPressure,
)
const eyeStrength = value('rodPin.eyeStrength', ['event', 'air'], (use) =>
  use.run(shareOfStress, { share: use(movingShare), strength: use(strength) }),
)
const ofTensile = (id: string, share: typeof yieldShare) =>
  value(id, [], (use) => use.run(shareOfStress, { share: use(share), strength: use(rod.pin.strength) }))

const ROD = { part: 'rod of the knee', scope: 'leg' } as const
const PIN = { part: 'rod pin', consequence: 'breaks', kind: 'stress', scope: 'leg' } as const

/** Checks of the rod that drives the knee from a drum on the hip axis. */
export const rodChecks: readonly Check[] = [
  {
    id: 'rod.deadPoint',
    ...ROD,
    mode: 'comes near a dead point, where the drum does not move the knee or the rod is loaded without bound',
    consequence: 'fails to work',
    kind: 'angle',
    when: ['asBuilt'],
    demand: rod.leastMargin,
    capacity: clearance,
    demandIs: 'ten degrees (choice)',
    capacityIs:
      'the turn of the knee beyond its limits and the angle there between rod and crank or rocker, the least sum of both, with all lengths off by their error',
    remedy: 'another angle of the rocker, narrower limits of the knee, or longer crank and rocker',
    requiredReserve: 1,
  },
  {
    id: 'rod.buckling',
    ...ROD,
    mode: 'buckles when it is pushed',
    consequence: 'breaks',
    kind: 'force',
    when: ['bearsLoad'],
    demand: push,
    capacity: criticalForce,
    unless: value('rod.unlessPulled', ['leg', 'event'], (use) => (use(push) === 0 ? 'the rod is never pushed' : undefined)),
    demandIs: 'the largest push in the rod',
    capacityIs:
      'the force at which it buckles between its pins (Euler, or Johnson for a short one), at its temperature and time under load',
    remedy: 'a thicker rod, or the rod on the other side of the link, where it is pulled',
  },
  {
    id: 'rod.strength',
    ...ROD,
    mode: 'breaks',
    consequence: 'breaks',
    kind: 'stress',
    when: ['oneMoment'],
    demand: stress,
    capacity: strength,
    demandIs: 'the larger of pull and push over its section',
    capacityIs: 'the strength of its material for the time under load',
    remedy: 'a thicker rod, or longer crank and rocker',
  },
  {
    id: 'rod.fatigue',
    ...ROD,
    mode: 'cracks by the strides of a season',
    consequence: 'breaks',
    kind: 'stress',
    when: ['repeats'],
    demand: stress,
    capacity: enduring,
    demandIs: 'the larger of pull and push over its section, in every stride',
    capacityIs: 'the strength that the strides of a season leave',
    remedy: 'a thicker rod, or longer crank and rocker',
  },
  {
    id: 'rodPin.shear',
    ...PIN,
    mode: 'is sheared off',
    when: ['oneMoment'],
    demand: shear,
    capacity: ofTensile('rodPin.shearStrength', shearShare),
    demandIs: 'the peak shear stress in the two planes of a pin',
    capacityIs: 'its shear strength, 0.577 of its tensile strength',
    remedy: 'thicker pins',
  },
  {
    id: 'rodPin.bending',
    ...PIN,
    mode: 'bends in its clevis',
    when: ['oneMoment'],
    demand: bending,
    capacity: ofTensile('rodPin.yieldStrength', yieldShare),
    demandIs: 'the bending stress of a pin at mid span',
    capacityIs: 'its yield strength, assumed to be 0.85 of its tensile strength',
    remedy: 'thicker pins, a narrower eye, or smaller side gaps',
  },
  {
    id: 'rodPin.bearing',
    ...PIN,
    part: 'eye of the rod',
    mode: 'wears oval on its pin',
    consequence: 'fails to work',
    when: ['bearsLoad'],
    demand: eyePressure,
    capacity: eyeStrength,
    unless: rod.onBearings,
    demandIs: 'the pressure of a pin on the projected area of the eye',
    capacityIs: 'half the strength of the rod for the time under load, since the eye turns on its pin (assumption)',
    remedy: 'a wider eye, a bush, or thicker pins',
  },
]
