import {
  activatedCreepFactor,
  bendEfficiency,
  bendRatio as bendRatioOf,
  creepDrift,
  pretensionForTorque,
  slipArc,
  workingTension,
} from '../../../../capstan/index.js'
import type { Check } from '../../../cases/check.js'
import { references } from '../../../leaves.js'
import { riseAbove } from '../../../lines.js'
import { constant, line, type Use, type Value, value } from '../../../run/index.js'
import { airTemperature, shelfTime, stridesPerDay } from '../../load/fields.js'
import { driveLoad, stroke } from '../../motion/values.js'
import { heat } from '../../motors/heat.js'
import { pretensionAfter, year } from '../pretension-left.js'
import { drumTravel } from '../through-hip/travel.js'
import * as cord from './fields.js'
import { drumRadius, pinionRadius, ratio, smallerRadius } from './radii.js'
import { branchArc, geometry, loose, peakTension, pretension, pretensionAsSet, slackTorque, slipTorque, travel, windup } from './values.js'

const share = line(
  'long tension of the fibre',
  { share: 'ratio', strength: 'force' },
  'force',
  'share · strength',
  (x) => x.share * x.strength,
)
const fibreStress = line(
  'stress in the fibre',
  { tension: 'force', breaking: 'force', strength: 'stress' },
  'stress',
  'tension / breaking · strength',
  (x) => (x.tension / x.breaking) * x.strength,
)
const yearsOf = line(
  'years at room temperature',
  { hotter: 'ratio', time: 'time', year: 'time', most: 'ratio' },
  'ratio',
  'min(hotter · (time / year), most)',
  (x) => Math.min(x.hotter * (x.time / x.year), x.most),
)
const difference = line('difference of the tensions', { taut: 'force', slack: 'force' }, 'force', 'taut − slack', (x) => x.taut - x.slack)
const ofADay = line('drift of a day', { drift: 'angle', strides: 'count' }, 'angle', 'drift · strides', (x) => x.drift * x.strides)
const leastSlack = line(
  'least slack tension',
  { slack: 'force', share: 'ratio', pretension: 'force' },
  'force',
  'max(slack, share · pretension)',
  (x) => Math.max(x.slack, x.share * x.pretension),
)
const arcNeeded = line(
  'arc of the pinion that is used',
  { ratio: 'ratio', stroke: 'angle', taut: 'angle', slack: 'angle' },
  'angle',
  'ratio · stroke + taut + slack',
  (x) => x.ratio * x.stroke + x.taut + x.slack,
)

/** Ratio of the smaller pulley to the cord diameter: that of the pinion, but for a cord along a link. */
export const bendRatio = value('cord.bendRatio', ['joint'], (use) =>
  use.run(bendRatioOf, { centreLineRadius: use(smallerRadius), cordDiameter: use(cord.diameter) }),
)
const allowed = (id: string, factor: Value<number, 'cord'> | Value<number, never>) =>
  value(id, ['joint'], (use) =>
    use.run(workingTension, {
      breakingStrength: use(cord.breakingStrength),
      endEfficiency: use(cord.endRetention),
      bendEfficiency: use.run(bendEfficiency, {
        bendRatio: use(bendRatio),
        leastBendRatio: use(cord.leastBendRatio),
        exponent: use(bendExponent),
      }),
      designFactor: use(factor as Value<number, 'cord'>),
    }),
  )
const bendExponent = constant('cord.bendExponent', {
  title: 'exponent of the loss of cord strength over a bend',
  kind: 'ratio',
  typical: 1,
  source: { level: 'assumption', where: 'strength over a bend falls as the ratio of the diameters' },
})
const dailyTension = allowed('cord.dailyTension', cord.designFactor)
const rareTension = allowed('cord.rareTension', cord.onceFactor)

const tautTension = value('cord.tautTension', ['joint', 'event', 'air', 'age'], (use) => use(windup).tautTension)

const longTension = value('cord.longTensionAllowed', ['joint'], (use) =>
  use.run(share, { share: use(cord.longTension[use(cord.creepOfFibre)]), strength: use(cord.breakingStrength) }),
)

const most = line('largest torque of walking', { torques: { list: 'torque' } }, 'torque', 'max(torques)', (x) => Math.max(...x.torques))
/** What a leg taken from the shelf must do: walk in every direction, on the level and on the slope. */
const afterShelf = references('event.afterShelf', [], 'event', () => ['walk', 'walkBack', 'slope', 'slopeDown', 'slopeAcross'])
const walkingTorque = value('cord.walkingTorque', ['joint'], (use) =>
  use.run(most, { torques: use(afterShelf).map((event) => use.at(driveLoad, { event })) }),
)
/** Pretension without which a span hangs slack in a walk of any direction, on the level and on the slope. */
export const pretensionNeeded = value('cord.pretensionNeeded', ['joint'], (use) => {
  const { span, pinionWrap } = use(geometry)
  return use.run(pretensionForTorque, {
    torque: use(walkingTorque),
    pinionRadius: use(pinionRadius),
    drumRadius: use(drumRadius),
    span,
    pinionWrap,
    drumWrap: use(branchArc),
    travel: use(travel),
    friction: use(cord.friction),
    hold: use(cord.hold),
    requiredReserve: 1,
  }).pretension
})
const creepFactor = (use: Use<'joint' | 'air'>): number => {
  if (use(cord.creepOfFibre) !== 'activated') return 1
  const stress = use.run(fibreStress, {
    tension: use(pretensionAsSet),
    breaking: use(cord.breakingStrength),
    strength: use(cord.strengthOfFibre),
  })
  return use.run(activatedCreepFactor, {
    fromTemperature: use(cord.relaxationReference),
    toTemperature: use(airTemperature),
    fromStress: stress,
    toStress: stress,
    activationEnergy: use(cord.activationEnergy),
    activationVolume: use(cord.activationVolume),
  })
}
const pretensionAfterShelf = value('cord.pretensionAfterShelf', ['joint', 'air'], (use) => {
  const years = use.run(yearsOf, { hotter: creepFactor(use), time: use(shelfTime), year: use(year), most: use(cord.mostYears) })
  return pretensionAfter(use, use(pretensionAsSet), use(cord.pretensionLeft), years)
})

const pinionRise = value('cord.pinionRise', ['joint', 'event', 'air'], (use) =>
  use.run(riseAbove, { temperature: use(heat).mount, air: use(airTemperature) }),
)
const fibreRise = value('cord.fibreRise', ['joint', 'air'], (use) =>
  use.run(riseAbove, { temperature: use(cord.serviceTemperature), air: use(airTemperature) }),
)

const leastShare = constant('cord.leastSlackShare', {
  title: 'least slack tension over pretension',
  kind: 'ratio',
  typical: 0.01,
  source: { level: 'assumption', where: 'a slack span keeps a hundredth of the pretension by its own weight' },
})
/** Arc of the pinion over which the cord creeps or moves. Cord in the middle of longer wraps never leaves the pinion, and nothing drifts. */
const usedArc = value('cord.usedArc', ['joint', 'event', 'air', 'age'], (use) => {
  const [before, friction] = [use(pretension), use(cord.friction)]
  const { tautTension: taut, slackTension: slack } = use(windup)
  const kept = use.run(leastSlack, { slack, share: use(leastShare), pretension: before })
  return use.run(arcNeeded, {
    ratio: use(ratio),
    stroke: use(stroke),
    taut: use.run(slipArc, { tautTension: taut, slackTension: before, friction }),
    slack: use.run(slipArc, { tautTension: before, slackTension: kept, friction }),
  })
})
const dailyDrift = value('cord.dailyDrift', ['joint', 'event', 'air', 'age'], (use) => {
  const { tautTension: taut, slackTension: slack } = use(windup)
  const drift = use.run(creepDrift, {
    ratio: use(ratio),
    stroke: use(stroke),
    tensionDifference: use.run(difference, { taut, slack }),
    axialRigidity: use(cord.axialRigidity),
  })
  return use.run(ofADay, { drift, strides: use(stridesPerDay) })
})
const oneTurn = constant('cord.spareGroove', {
  title: 'spare angle of groove',
  kind: 'angle',
  typical: 2 * Math.PI,
  source: { level: 'assumption', where: 'one turn of groove to spare' },
})
const CLAMPED = 'the cord is clamped in the middle of the pinion'
const unlessClamped = value('cord.unlessClamped', ['joint'], (use) => (use(cord.hold) === 'clampedMidPinion' ? CLAMPED : undefined))

const neededWrap = line(
  'wrap from mid travel to an end of it, and what is to be left there',
  { lowest: 'angle', highest: 'angle', least: 'angle' },
  'angle',
  '(highest − lowest) / 2 + least',
  (x) => (x.highest - x.lowest) / 2 + x.least,
)
const usedWrap = value('cord.usedWrap', ['joint'], (use) => {
  const { lowest, highest } = use(drumTravel)
  return use.run(neededWrap, { lowest, highest, least: use(cord.leastWrap) })
})

const unwound = line(
  'wrap that the pinion unwinds from mid travel, and what is to be left',
  { ratio: 'ratio', lowest: 'angle', highest: 'angle', least: 'angle' },
  'angle',
  'ratio · (highest − lowest) / 2 + least',
  (x) => (x.ratio * (x.highest - x.lowest)) / 2 + x.least,
)
const unwoundWrap = value('cord.unwoundWrap', ['joint'], (use) => {
  const { lowest, highest } = use(drumTravel)
  return use.run(unwound, { ratio: use(ratio), lowest, highest, least: use(cord.leastPinionWrap) })
})
const halfWrap = line('wrap to each side of the clamp', { wrap: 'angle' }, 'angle', 'wrap / 2', ({ wrap }) => wrap / 2)

/** Checks of the cord of each drive. */
export const cordChecks: readonly Check[] = [
  {
    id: 'cord.slack',
    part: 'cord drive',
    mode: 'loses the tension of its slack span',
    consequence: 'fails to work',
    kind: 'torque',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: driveLoad,
    capacity: slackTorque,
    remark: value('cord.looseRemark', ['joint', 'air', 'age'], (use) =>
      use(loose) ? 'temperature and age leave no pretension at all: the cord is loose' : undefined,
    ),
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the slack span has no tension, with the pretension of this temperature and age',
    remedy: 'more pretension, a larger drum, or a cord and frame that change length alike when heated',
  },
  {
    id: 'cord.slip',
    part: 'cord on the pinion',
    mode: 'slips',
    consequence: 'fails to work',
    kind: 'torque',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: driveLoad,
    capacity: slipTorque,
    unless: unlessClamped,
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the cord slips around its whole arc on the pinion',
    remedy: 'clamp the cord in the middle of the pinion, one more wrap, or more pretension',
  },
  {
    id: 'cord.working',
    part: 'cord',
    mode: 'wears out or breaks at its end under daily tension',
    consequence: 'breaks',
    kind: 'force',
    scope: 'joint',
    when: ['daily'],
    demand: tautTension,
    capacity: dailyTension,
    demandIs: 'the tension of the taut span',
    capacityIs: 'the working tension: breaking strength with its ends and bends, over the design factor',
    remedy: 'a better end than a knot, a thicker cord, a larger pinion, or a larger drum',
  },
  {
    id: 'cord.peak',
    part: 'cord',
    mode: 'breaks at its end in a rare hard load',
    consequence: 'breaks',
    kind: 'force',
    scope: 'joint',
    when: ['rare'],
    demand: peakTension,
    capacity: rareTension,
    demandIs: 'the tension of the taut span after the joint has travelled under load',
    capacityIs: 'half the breaking strength with its ends and bends',
    remedy: 'a better end than a knot, a thicker cord, a larger drum, or a softer landing',
  },
  {
    id: 'cord.bend',
    part: 'cord on the pinion',
    mode: 'wears by sharp bending',
    consequence: 'breaks',
    kind: 'ratio',
    scope: 'joint',
    when: ['walks'],
    demand: value('cord.leastBend', ['joint'], (use) => use(cord.leastBendRatio)),
    capacity: bendRatio,
    demandIs: 'the least ratio of pulley to cord diameter for a long life',
    capacityIs: 'the ratio of the pinion',
    remedy: 'a larger pinion or a thinner cord',
    requiredReserve: 1,
  },
  {
    id: 'cord.sustained',
    part: 'cord',
    mode: 'creeps away under its long tension',
    consequence: 'fails to work',
    kind: 'force',
    scope: 'joint',
    when: ['keepsTension'],
    demand: pretension,
    capacity: longTension,
    demandIs: 'the pretension',
    capacityIs: 'the long tension that this fibre bears (15 % of breaking strength for UHMWPE, 30 % for others)',
    remedy: 'less pretension, a thicker cord, or a fibre that creeps less',
    requiredReserve: 1,
    rule: { level: 'commonPractice', where: 'long tension of UHMWPE at most 10 to 15 % of breaking strength; other fibres a third' },
  },
  {
    id: 'cord.shelf',
    part: 'cord drive',
    mode: 'has lost the pretension for walking after a year on the shelf',
    consequence: 'fails to work',
    kind: 'force',
    scope: 'joint',
    when: ['stored'],
    demand: pretensionNeeded,
    capacity: pretensionAfterShelf,
    unless: value('cord.unlessUnloaded', ['joint'], (use) =>
      use(walkingTorque) === 0 ? 'walking needs no torque at this joint' : undefined,
    ),
    demandIs: 'the pretension for the torque of walking, forward or backward, up or down the slope, whichever needs most',
    capacityIs: 'the pretension left after the time on the shelf at its temperature',
    remedy: 'release the tension for storage, tension again before use, or more pretension',
  },
  {
    id: 'cord.wrap',
    part: 'cord on the drum',
    mode: 'unwinds to its anchor at an end of travel',
    consequence: 'fails to work',
    kind: 'angle',
    scope: 'joint',
    when: ['walks'],
    demand: usedWrap,
    capacity: branchArc,
    demandIs: 'the turn of the drum from mid travel to an end of it, and ten degrees that must be left there (assumption)',
    capacityIs: 'the wrap of a branch on the drum at mid travel, anchors opposite the pinion',
    requiredReserve: 1,
    remedy: 'less travel, or crossed spans, which lie further round the drum',
  },
  {
    id: 'cord.clamp',
    part: 'cord on the pinion',
    mode: 'unwinds to its clamp at an end of travel',
    consequence: 'fails to work',
    kind: 'angle',
    scope: 'joint',
    when: ['walks'],
    demand: unwoundWrap,
    capacity: value('cord.wrapBesideClamp', ['joint'], (use) => use.run(halfWrap, { wrap: use(geometry).pinionWrap })),
    unless: value('cord.unlessUnclamped', ['joint'], (use) =>
      use(cord.hold) === 'clampedMidPinion' ? undefined : 'friction alone holds the cord on the pinion',
    ),
    demandIs: 'the turn of the pinion from mid travel to an end of it, and half a turn that must be left there (assumption)',
    capacityIs: 'the wrap to each side of the clamp, pinion at mid travel',
    requiredReserve: 1,
    remedy: 'more turns on a longer pinion, a lower ratio, or less travel',
  },
  {
    id: 'cord.heat',
    part: 'cord on the warm pinion',
    mode: 'softens and creeps',
    consequence: 'fails to work',
    kind: 'temperatureDifference',
    scope: 'joint',
    when: ['warms'],
    demand: pinionRise,
    capacity: fibreRise,
    demandIs: 'the rise of the pinion above the air, assumed to be that of the motor mount',
    capacityIs: 'the rise that reaches the temperature up to which the fibre may be kept under tension',
    remedy: 'a cooler motor, a pinion that insulates, or a fibre that bears heat',
  },
  {
    id: 'cord.registry',
    part: 'cord on the pinion',
    mode: 'creeps along the pinion, so that motor and joint lose step',
    consequence: 'fails to work',
    kind: 'angle',
    scope: 'joint',
    when: ['walks'],
    demand: dailyDrift,
    capacity: oneTurn,
    unless: value('cord.unlessLongWraps', ['joint', 'event', 'air', 'age'], (use) => {
      const clamped = use(unlessClamped)
      if (clamped !== undefined) return clamped
      return use(usedArc) < use(geometry).pinionWrap ? 'the middle of the wraps never leaves the pinion' : undefined
    }),
    remark: value('cord.driftRemark', [], () => 'the drift is a limit for short wraps that no experiment confirms'),
    demandIs: 'the turn of the pinion against the joint that a day of strides adds up to',
    capacityIs: 'one turn of spare groove',
    remedy: 'clamp the cord in the middle of the pinion, or more wraps than the travel uses; an encoder on the joint in any case',
  },
]
