import { roundBendingStress } from '../../../../structures/index.js'
import type { Check } from '../../../cases/check.js'
import { line, value } from '../../../run/index.js'
import { criticalForce, enduring, force, push, section, strength } from '../through-hip/checks.js'
import * as rod from '../through-hip/fields.js'

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

const steppedStress = value('rod.steppedStress', ['leg', 'event', 'air'], (use) => {
  const moment = use.run(bentBy, { force: use(force), push: use(push), critical: use(criticalForce), step: use(rod.step) })
  const bending = use.run(roundBendingStress, { moment, diameter: use(rod.diameter), holeDiameter: 0 })
  return use.run(together, { force: use(force), area: use(section).area, bending })
})
const straight = value('rod.isStraight', [], (use) => (use(rod.step) === 0 ? 'the rod is straight' : undefined))

const ROD = { part: 'rod of the knee', consequence: 'breaks', kind: 'stress', scope: 'leg' } as const

/** Checks of a rod with a step. */
export const steppedRodChecks: readonly Check[] = [
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
]
