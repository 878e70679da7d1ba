import { creepDrift, slipArc } from '../../../../capstan/index.js'
import type { Check } from '../../../cases/check.js'
import { constant, line, value } from '../../../run/index.js'
import { stridesPerDay } from '../../load/fields.js'
import { stroke } from '../../motion/values.js'
import { drumTravel } from '../through-hip/travel.js'
import * as cord from './fields.js'
import { unlessClamped } from './holding-checks.js'
import { ratio } from './radii.js'
import { branchArc, geometry, pretension, windup } from './values.js'

const difference = line.difference('difference of the tensions', { taut: 'force', slack: 'force' }, 'force')

const ofADay = line.product('drift of a day', { drift: 'angle', strides: 'count' }, 'angle')

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

/** Checks of how the cord lies on drum and pinion over the travel. */
export const windingChecks: readonly Check[] = [
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
