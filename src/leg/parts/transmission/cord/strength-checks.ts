import { bendEfficiency, bendRatio as bendRatioOf, workingTension } from '../../../../capstan/index.js'
import type { Check } from '../../../cases/check.js'
import { riseAbove } from '../../../lines.js'
import { constant, line, type Value, value } from '../../../run/index.js'
import { airTemperature } from '../../load/fields.js'
import { heat } from '../../motors/heat.js'
import * as cord from './fields.js'
import { smallerRadius } from './radii.js'
import { peakTension, pretension, windup } from './values.js'

const share = line.product('sustained tension of the fibre', { share: 'ratio', strength: 'force' }, 'force')

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

const pinionRise = value('cord.pinionRise', ['joint', 'event', 'air'], (use) =>
  use.run(riseAbove, { temperature: use(heat).mount, air: use(airTemperature) }),
)
const fibreRise = value('cord.fibreRise', ['joint', 'air'], (use) =>
  use.run(riseAbove, { temperature: use(cord.serviceTemperature), air: use(airTemperature) }),
)

/** Checks of the cord itself: tension, bending, creep and heat. */
export const strengthChecks: readonly Check[] = [
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
    rule: { level: 'commonPractice', where: 'long tension of UHMWPE at most 10 to 15 % of breaking strength; other fibres three tenths' },
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
]
