import { clevisPinBending, goodmanReserve, pinEnduranceLimit, pinShear } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { shareOfStress } from '../../lines.js'
import { line, type Use, value } from '../../run/index.js'
import { shearShare } from '../materials/fields.js'
import { mostReserve, onBearing, pin, yieldShare } from './fields.js'
import { driveOnPin, forceOnBoss, pinForce, prised } from './loads.js'
import { bossPressure, eyePressure, eyeStrength, mouthPressure, mouthStrength } from './pressures.js'
import { bossStrength } from './strengths.js'

const larger = line.largest('larger stress', { one: 'stress', other: 'stress' }, 'stress')
const smaller = line.smallest('smaller stress', { one: 'stress', other: 'stress' }, 'stress')
const borne = line(
  'stress borne',
  { stress: 'stress', reserve: 'ratio', most: 'ratio' },
  'stress',
  'stress · min(reserve, most)',
  (x) => x.stress * Math.min(x.reserve, x.most),
)
type Loaded = Use<'joint' | 'event' | 'air' | 'age'>

const ofTensile = (id: string, share: typeof yieldShare) =>
  value(id, ['joint'], (use) => use.run(shareOfStress, { share: use(share), strength: use(pin.strength) }))
const shear = value(
  'pin.shearStress',
  ['joint', 'event', 'air', 'age'],
  (use) => use.run(pinShear, { force: use(forceOnBoss), diameter: use(pin.diameter), planes: 1 }).peakStress,
)
const bending = (use: Loaded, force: number): number =>
  use.run(clevisPinBending, {
    force,
    diameter: use(pin.diameter),
    cheekThickness: use(pin.cheekThickness),
    gap: use(pin.gap),
    lugThickness: use(pin.lugThickness),
  }).bendingStress
const withCouple = line.sum('bending stress with that of a couple', { stress: 'stress', couple: 'stress' }, 'stress')
const againstCouple = line.difference('bending stress against a couple', { stress: 'stress', couple: 'stress' }, 'stress')
/** Bending stress of a pin: at mid span, and where a couple bends it most, as if both were in one place. */
const bendingStress = value('pin.bendingStress', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(withCouple, { stress: bending(use, use(pinForce)), couple: use(prised).bendingStress }),
)

const enduring = value('pin.enduringStress', ['joint', 'event', 'air', 'age'], (use) => {
  const tensileStrength = use(pin.strength)
  const one = use(bendingStress)
  // A push from the other side bends it the other way.
  const other = use.run(againstCouple, { stress: bending(use, use(driveOnPin)), couple: use(prised).bendingStress })
  const { enduranceLimit } = use.run(pinEnduranceLimit, {
    tensileStrength,
    diameter: use(pin.diameter),
    bending: 'fixedDirection',
    surface: 'ground',
    reliability: '99 %',
  })
  const { reserve } = use.run(goodmanReserve, {
    largestStress: use.run(larger, { one, other }),
    smallestStress: use.run(smaller, { one, other }),
    enduranceLimit,
    tensileStrength,
  })
  return use.run(borne, { stress: one, reserve, most: use(mostReserve) })
})

/** Checks of the steel pins of the driven joints, and of the eyes on them. */
export const pinChecks: readonly Check[] = [
  {
    id: 'pin.shear',
    part: 'joint pin',
    mode: 'is sheared off',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['oneMoment'],
    demand: shear,
    capacity: ofTensile('pin.shearStrength', shearShare),
    demandIs: 'the peak shear stress in the plane that bears more',
    capacityIs: 'its shear strength, 0.577 of its tensile strength',
    remedy: 'a thicker pin, or less force on the foot',
  },
  {
    id: 'pin.bending',
    part: 'joint pin',
    mode: 'bends in its clevis',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['oneMoment'],
    demand: bendingStress,
    capacity: ofTensile('pin.yieldStrength', yieldShare),
    demandIs: 'the bending stress at mid span, and of a couple that prises it',
    capacityIs: 'its yield strength, assumed to be 0.85 of its tensile strength',
    remedy: 'a thicker pin, a narrower lug, or smaller side gaps',
  },
  {
    id: 'pin.fatigue',
    part: 'joint pin',
    mode: 'cracks by repeated bending',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['repeats'],
    demand: bendingStress,
    capacity: enduring,
    demandIs: 'the bending stress of every stride',
    capacityIs: 'the bending stress that it bears for any number of strides at the same ratio of least to largest (Goodman, 99 % of pins)',
    remedy: 'a thicker pin or a narrower lug',
  },
  {
    id: 'pin.bearingTongue',
    part: 'link eye on the pin',
    mode: 'wears oval under the pin',
    consequence: 'fails to work',
    kind: 'stress',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: eyePressure,
    capacity: eyeStrength,
    unless: onBearing,
    demandIs: 'the pressure of the pin on the projected area of the eye',
    capacityIs: 'half the long-term strength of the polymer, since the eye turns on the pin (assumption)',
    remedy: 'a wider eye, a bush, or a thicker pin',
  },
]

/** Checks of what holds a pin, where its boss is given. */
export const heldPinChecks: readonly Check[] = [
  {
    id: 'boss.bearing',
    part: 'boss on the pin',
    mode: 'yields under the pin',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: bossPressure,
    capacity: bossStrength,
    demandIs: 'the pressure of half the pin force, and of a couple that prises the pin, on the projected area of one boss',
    capacityIs: 'the long-term strength of the polymer at this temperature',
    remedy: 'a longer engagement or a thicker pin',
  },
  {
    id: 'boss.mouth',
    part: 'mouth of the boss',
    mode: 'is crushed by the pin that tilts in it',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: mouthPressure,
    capacity: mouthStrength,
    demandIs:
      'the pressure at the mouth, each half of the pin assumed to be a cantilever from its boss (without the other boss, the harder case)',
    capacityIs: 'twice the long-term strength, since the wall around holds the crushed edge in (assumption)',
    remedy: 'a longer engagement, smaller side gaps, or a narrower lug',
  },
]
