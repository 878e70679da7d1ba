import { lugNetSection, lugTearOut } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { shareOfStress } from '../../lines.js'
import { line, type Use, value } from '../../run/index.js'
import { cycles } from '../load/durations.js'
import { airTemperature, moment } from '../load/fields.js'
import { layered, shearShare } from '../materials/fields.js'
import { allowableStress } from '../materials/values.js'
import { BY_INFILL, solidZone, ZONE } from '../prints/values.js'
import * as own from './fields.js'
import { splitStress } from './fit.js'
import { grip, isLoose, looseChance } from './grip.js'
import { forceOnBoss } from './loads.js'
import { bossHoopStrength, bossInterlayerShear, bossStrength } from './strengths.js'

const { boss, pin } = own

const section = (use: Use<'joint' | 'event' | 'air' | 'age'>, stressConcentration: number) =>
  use.run(lugNetSection, {
    force: use(forceOnBoss),
    width: use(boss.outerDiameter),
    diameter: use(pin.diameter),
    thickness: use(boss.engagement),
    stressConcentration,
  })
const tearOut = value(
  'boss.tearOutStress',
  ['joint', 'event', 'air', 'age'],
  (use) =>
    use.run(lugTearOut, {
      force: use(forceOnBoss),
      edgeDistance: use(boss.edgeDistance),
      diameter: use(pin.diameter),
      thickness: use(boss.engagement),
      planes: 'front',
    }).shearStress,
)
const shearStrength = value('boss.shearStrength', ['joint', 'event', 'air'], (use) =>
  use(boss.axis) === 'alongLayers'
    ? use(bossInterlayerShear)
    : use.run(shareOfStress, { share: use(shearShare), strength: use(bossStrength) }),
)
const netSection = value('boss.netSectionStress', ['joint', 'event', 'air', 'age'], (use) => section(use, 1).averageStress)
const peak = value('boss.peakStress', ['joint', 'event', 'air', 'age'], (use) => section(use, use(own.peakOverMean)).peakStress)
const enduring = value('boss.enduringStress', ['joint', 'event', 'air'], (use) =>
  allowableStress(use, use(boss.material), {
    direction: use(boss.axis) === 'alongLayers' ? 'acrossLayers' : 'alongLayers',
    temperature: use(airTemperature),
    duration: use(moment),
    cycles: use(cycles),
  }),
)
const splitStrength = value('boss.splitStrength', ['joint', 'air'], (use) =>
  allowableStress(use, use(boss.material), {
    direction: use(boss.axis) === 'alongLayers' ? 'acrossLayers' : 'alongLayers',
    temperature: use(airTemperature),
    duration: use(own.splitTime),
    held: true,
  }),
)
const twice = line('diameter that must be solid', { hole: 'length', outer: 'length' }, 'length', 'min(2 · hole, outer)', (x) =>
  Math.min(2 * x.hole, x.outer),
)
/** A boss that is thinner than twice its hole has no infill beyond its own outside. */
const zoneNeeded = value('boss.zoneNeeded', ['joint'], (use) => use.run(twice, { hole: use(boss.hole), outer: use(boss.outerDiameter) }))
const zone = value('boss.zone', ['joint'], (use) => solidZone(use, use(boss.print), use(boss.hole), use(zoneNeeded)))

/** Printed and moulded bosses: the rules of press fits in plastic are not for metal. */
export const unlessMetal = value('boss.unlessMetal', ['joint'], (use) =>
  use.at(layered, { material: use(boss.material) }) ? undefined : 'the boss is not printed',
)

/** Checks of the bosses that the pins are pressed into. */
export const bossChecks: readonly Check[] = [
  {
    id: 'boss.tearOut',
    part: 'boss',
    mode: 'lets the pin tear out to the edge',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: tearOut,
    capacity: shearStrength,
    demandIs: 'the shear stress on the two planes from pin to edge',
    capacityIs: 'the long-term shear strength of the material in that direction',
    remedy: 'more edge distance (twice the pin diameter is usual), or print the boss standing on its bore',
    ofMetal: { reason: unlessMetal, remedy: 'more edge distance (twice the pin diameter is usual)' },
  },
  {
    id: 'boss.netSection',
    part: 'boss',
    mode: 'tears across its hole',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: netSection,
    capacity: bossHoopStrength,
    demandIs: 'the mean stress in the section next to the hole',
    capacityIs: 'the long-term strength of the material in that direction',
    remedy: 'a larger boss',
  },
  {
    id: 'boss.fatigue',
    part: 'boss',
    mode: 'cracks next to its hole by repeated load',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['repeats'],
    demand: peak,
    capacity: enduring,
    demandIs: 'the peak stress next to the hole (two and a half times the mean, close pin)',
    capacityIs: 'the strength that is left after the strides of a season',
    remedy: 'a larger boss, or print it standing on its bore',
    ofMetal: { reason: unlessMetal, remedy: 'a larger boss' },
  },
  {
    id: 'boss.split',
    part: 'boss',
    mode: 'splits from the pressed-in pin',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['coldFit'],
    demand: splitStress,
    capacity: splitStrength,
    demandIs: 'the hoop stress at the bore with the largest pin in the smallest hole, on a cold morning',
    capacityIs: 'the strength of the material for an hour in the direction of the hoop',
    remedy: 'ream to a larger hole, make the boss thicker, or print it standing on its bore',
    ofMetal: { reason: unlessMetal, remedy: 'ream to a larger hole, or make the boss thicker' },
  },
  {
    id: 'boss.grip',
    part: 'pin in its bosses',
    mode: 'turns and walks out of its warm, relaxed bosses',
    consequence: 'fails to work',
    kind: 'force',
    scope: 'joint',
    when: ['moves'],
    demand: value('boss.gripDemand', ['joint', 'event', 'air', 'age'], (use) => use(grip).demand),
    capacity: value('boss.gripCapacity', ['joint', 'event', 'air', 'age'], (use) => use(grip).capacity),
    remark: value('boss.looseRemark', ['joint', 'event', 'air'], (use) =>
      use(isLoose) ? 'the pin is loose in its boss at this temperature' : undefined,
    ),
    demandIs: 'the force at the pin surface from the eye that drags it and a twentieth of the load along it (assumption)',
    capacityIs: 'the grip of both bosses with the pressure that relaxation since assembly and then the temperature leave',
    remedy: 'positive retention (a cap or a ring), a tighter hole, a longer engagement, or a bush in the eye',
  },
  {
    id: 'boss.fitScatter',
    part: 'boss',
    mode: 'comes out loose by chance',
    consequence: 'fails to work',
    kind: 'ratio',
    scope: 'joint',
    when: ['coldFit'],
    demand: looseChance,
    capacity: own.looseAccepted,
    unless: unlessMetal,
    demandIs: 'the share of bosses with less interference than 0.2 % of the diameter',
    capacityIs: 'one in fifty (choice)',
    remedy: 'a smaller hole, or ream to less scatter; print and measure a coupon of ten holes',
  },
  {
    id: 'boss.zone',
    part: 'print round the pin',
    scope: 'joint',
    demand: zoneNeeded,
    capacity: value('boss.zoneSolid', ['joint'], (use) => use(zone).solid),
    unless: unlessMetal,
    remark: value('boss.zoneRemark', ['joint'], (use) => (use(zone).byInfill ? BY_INFILL : undefined)),
    ...ZONE,
  },
]
