import { lugNetSection } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { shareOfStress } from '../../lines.js'
import { line, value } from '../../run/index.js'
import { stride } from '../motion/values.js'
import { unlessMetal } from './bosses.js'
import { boss, edgeSupport, hipHasShaft, onBearing, pin } from './fields.js'
import { gripPressure } from './fit.js'
import { couple, prised } from './loads.js'
import { eyePressure, eyeStrength, mouthPressure } from './pressures.js'
import { bossHoopStrength } from './strengths.js'

const atEdge = line.sum('pressure at the edge of the eye', { mean: 'stress', couple: 'stress' }, 'stress')
const edgePressure = value('pin.eyeEdgePressure', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(atEdge, { mean: use(eyePressure), couple: use(prised).eyeEdgePressure }),
)
/** Strength of the edge of an eye that turns on its pin. */
export const edgeStrength = value('pin.eyeEdgeStrength', ['joint', 'event', 'air'], (use) =>
  use.run(shareOfStress, { share: use(edgeSupport), strength: use(eyeStrength) }),
)

const splitting = line(
  'force that splits a slice at the mouth',
  { pressed: 'stress', grip: 'stress', diameter: 'length', slice: 'length' },
  'force',
  '(pressed + grip) · diameter · slice',
  (x) => (x.pressed + x.grip) * x.diameter * x.slice,
)
/** Tension beside the hole in a slice at the mouth, where the pin presses most, with the tension of the press fit. */
const mouthTension = value('boss.mouthTension', ['joint', 'event', 'air', 'age'], (use) => {
  const [diameter, slice] = [use(pin.diameter), use(boss.engagement)]
  const force = use.run(splitting, { pressed: use(mouthPressure), grip: use(gripPressure), diameter, slice })
  return use.run(lugNetSection, { force, width: use(boss.outerDiameter), diameter, thickness: slice, stressConcentration: 1 }).averageStress
})

const unlessPrised = value('pin.notPrised', ['joint', 'event'], (use, at) => {
  if (use(couple) > 0) return undefined
  const isHip = use.nameOf('joint', at.joint) === 'hip'
  return use(stride).lateralForce > 0 && isHip && use(hipHasShaft) ? 'the hip shaft takes the couple' : 'nothing tilts the joint on its pin'
})

const common = { kind: 'stress', scope: 'joint', when: ['bearsLoad'], unless: unlessPrised } as const

/** Checks of a pin that a force across the leg prises in its eye. */
export const prisedEyeCheck: Check = {
  id: 'pin.eyeEdge',
  part: 'edge of the link eye',
  mode: 'is crushed where the joint tilts on its pin',
  consequence: 'fails to work',
  ...common,
  unless: value('pin.eyeNotPrised', ['joint', 'event'], (use) => use(unlessPrised) ?? use(onBearing)),
  demand: edgePressure,
  capacity: edgeStrength,
  demandIs: 'the mean pressure of the pin, and what the tilting eye adds at its edge',
  capacityIs: 'twice what the eye bears while it turns, since the wall around holds the edge in (assumption)',
  remedy: 'a wider eye, a thicker pin, a bush, or a second bearing beside it',
}

/** What the same couple loads as well. */
const notCalculated = value(
  'boss.notCalculated',
  [],
  () => 'the arms of the fork, which this couple bends across the leg, and the side faces of the eye are not calculated',
)

/** Checks of bosses whose pin a force across the leg prises. */
export const prisedBossCheck: Check = {
  id: 'boss.prised',
  part: 'mouth of the boss',
  mode: 'splits round the pin that a tilting joint prises',
  consequence: 'breaks',
  ...common,
  demand: mouthTension,
  capacity: bossHoopStrength,
  demandIs: 'the mean tension beside the hole at the mouth, from the pin that presses there and from the press fit',
  capacityIs: 'the long-term strength of the material in that direction',
  remark: notCalculated,
  remedy: 'a larger boss, a wider clevis, a longer engagement, or print the boss standing on its bore',
  ofMetal: { reason: unlessMetal, remedy: 'a larger boss, a wider clevis, or a longer engagement' },
}
