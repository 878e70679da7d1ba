import type { Check } from '../../../cases/check.js'
import { riseAbove } from '../../../lines.js'
import { value } from '../../../run/index.js'
import { airTemperature } from '../../load/fields.js'
import { driveLoad } from '../../motion/values.js'
import { heat } from '../../motors/heat.js'
import { motorSpeed } from '../../motors/values.js'
import * as belt from './fields.js'
import * as of from './lines.js'
import {
  jumpTorque,
  loadedTeeth,
  otherRadius,
  pull,
  pulleyBending,
  pulleyEnduring,
  pulleyShear,
  pulleyShearStrength,
  pulleyStrength,
  shift,
  spans,
} from './values.js'

const tautTension = value('belt.tautTension', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(of.withSpeed, {
    taut: use(spans).taut,
    perLength: use(belt.massPerLength),
    radius: use(otherRadius),
    speed: use(motorSpeed),
  }),
)

const BELT = { part: 'tooth belt', scope: 'joint' } as const
const PULLEY = { part: 'tooth of the large pulley', consequence: 'breaks', kind: 'stress', scope: 'joint' } as const
const WIDER = 'a wider belt, a larger pitch, or larger pulleys'

/** Checks of a tooth belt and its large pulley. */
export const beltChecks: readonly Check[] = [
  {
    id: 'belt.jump',
    ...BELT,
    mode: 'climbs out of the small pulley and jumps a tooth',
    consequence: 'fails to work',
    kind: 'torque',
    when: ['bearsLoad'],
    demand: driveLoad,
    capacity: jumpTorque,
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the slack end of the wrap lifts, with the pretension of this temperature and age',
    remedy: 'more pretension, a larger pulley on the joint, or a belt and frame that change length alike when heated',
  },
  {
    id: 'belt.teeth',
    ...BELT,
    mode: 'loses its teeth',
    consequence: 'breaks',
    kind: 'force',
    when: ['oneMoment'],
    demand: pull,
    capacity: value('belt.teethBear', ['joint'], (use) => use.run(of.ofTeeth, { each: use(belt.toothForce), teeth: use(loadedTeeth) })),
    demandIs: 'the pull of the belt: the joint torque over the pitch radius of the large pulley',
    capacityIs: 'what its teeth in mesh on the small pulley bear, as far as they count',
    remedy: 'a wider belt, a larger pitch, larger pulleys, or more teeth in mesh',
    rule: {
      level: 'published',
      where: 'a maker’s sheet of polyurethane tooth belts, read: load of a tooth times width times teeth in mesh, at most 6 or 12',
    },
  },
  {
    id: 'belt.working',
    ...BELT,
    mode: 'wears out under its daily tension',
    consequence: 'breaks',
    kind: 'force',
    when: ['daily'],
    demand: tautTension,
    capacity: belt.allowableTension,
    demandIs: 'the tension of the taut span, with what its speed adds',
    capacityIs: 'the allowable tension, from its sheet',
    remedy: `less pretension, or ${WIDER}`,
  },
  {
    id: 'belt.peak',
    ...BELT,
    mode: 'breaks in a rare hard load',
    consequence: 'breaks',
    kind: 'force',
    when: ['rare'],
    demand: tautTension,
    capacity: value('belt.bearsOnce', ['joint'], (use) =>
      use.run(of.once, { strength: use(belt.breakingStrength), factor: use(belt.onceFactor) }),
    ),
    demandIs: 'the tension of the taut span',
    capacityIs: 'half of its breaking strength',
    remedy: WIDER,
  },
  {
    id: 'belt.bend',
    part: 'tooth belt on the small pulley',
    scope: 'joint',
    mode: 'cracks by sharp bending',
    consequence: 'breaks',
    kind: 'count',
    when: ['walks'],
    demand: belt.leastTeeth,
    capacity: belt.smallTeeth,
    demandIs: 'the least teeth of a pulley for this belt, from its sheet',
    capacityIs: 'the teeth of the small pulley',
    remedy: 'a larger small pulley, or a belt of a smaller pitch',
    requiredReserve: 1,
  },
  {
    id: 'belt.heat',
    part: 'tooth belt on the warm small pulley',
    scope: 'joint',
    mode: 'softens',
    consequence: 'fails to work',
    kind: 'temperatureDifference',
    when: ['warms'],
    demand: value('belt.rise', ['joint', 'event', 'air'], (use) =>
      use.run(riseAbove, { temperature: use(heat).mount, air: use(airTemperature) }),
    ),
    capacity: value('belt.allowableRise', ['joint', 'air'], (use) =>
      use.run(riseAbove, { temperature: use(belt.highestTemperature), air: use(airTemperature) }),
    ),
    demandIs: 'the rise of the small pulley above the air, assumed to be that of the motor mount',
    capacityIs: 'the rise that reaches the highest temperature of the belt',
    remedy: 'a cooler motor, a pulley that insulates, or a belt that bears heat',
  },
  {
    id: 'belt.adjustment',
    part: 'adjustment of the axes',
    scope: 'joint',
    mode: 'ends before the belt has its tension',
    consequence: 'fails to work',
    kind: 'length',
    when: ['asBuilt'],
    demand: shift,
    capacity: belt.adjustment,
    demandIs: 'the shift of the axes from their stated distance until a belt of its teeth has its tension',
    capacityIs: 'how far the axes can be set either way',
    remedy: 'another distance of the axes, a belt with more or fewer teeth, or more adjustment',
    requiredReserve: 1,
  },
  {
    id: 'pulley.shear',
    ...PULLEY,
    mode: 'is sheared off',
    when: ['oneMoment'],
    demand: pulleyShear,
    capacity: pulleyShearStrength,
    demandIs: 'the pull of the belt over the roots of the teeth that share it',
    capacityIs: 'the shear strength of its material for the time under load, 0.577 of its strength',
    remedy: 'a stronger material, a wider belt, or a larger pitch',
  },
  {
    id: 'pulley.bending',
    ...PULLEY,
    mode: 'breaks off at its root',
    when: ['oneMoment'],
    demand: pulleyBending,
    capacity: pulleyStrength,
    demandIs: 'the bending stress at its root, the force in the middle of its height',
    capacityIs: 'the strength of its material for the time under load',
    remedy: 'a stronger material, a wider belt, or a larger pitch',
  },
  {
    id: 'pulley.fatigue',
    ...PULLEY,
    mode: 'cracks by the strides of a season',
    when: ['repeats'],
    demand: pulleyBending,
    capacity: pulleyEnduring,
    demandIs: 'the bending stress at its root in every stride',
    capacityIs: 'the strength that the strides of a season leave',
    remedy: 'a stronger material, a wider belt, or a larger pitch',
  },
]
