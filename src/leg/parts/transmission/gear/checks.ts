import type { Check } from '../../../cases/check.js'
import { value } from '../../../run/index.js'
import * as gear from './fields.js'
import {
  contactPressure,
  contactRatio,
  pinionEnduring,
  pinionRootStress,
  pinionStrength,
  wheelEnduring,
  wheelRootStress,
  wheelStrength,
} from './values.js'

const TEETH = {
  consequence: 'breaks',
  kind: 'stress',
  scope: 'joint',
  remedy: 'a larger module, a wider face, or a stronger material',
} as const
const ROOT = 'the bending stress at the roots by Lewis, one tooth carrying all, with the dynamic factor of the speed'
const GEOMETRY = { part: 'pair of gears', scope: 'joint', consequence: 'fails to work', when: ['asBuilt'], requiredReserve: 1 } as const

/** Checks of a pair of spur gears. */
export const gearChecks: readonly Check[] = [
  {
    id: 'gear.pinionBending',
    part: 'tooth of the pinion',
    mode: 'breaks off at its root',
    ...TEETH,
    when: ['oneMoment'],
    demand: pinionRootStress,
    capacity: pinionStrength,
    demandIs: ROOT,
    capacityIs: 'the strength of its material for the time under load, as warm as the mount of the motor, now or after a walk',
  },
  {
    id: 'gear.wheelBending',
    part: 'tooth of the wheel',
    mode: 'breaks off at its root',
    ...TEETH,
    when: ['oneMoment'],
    demand: wheelRootStress,
    capacity: wheelStrength,
    demandIs: ROOT,
    capacityIs: 'the strength of its material for the time under load, as warm as the air',
  },
  {
    id: 'gear.pinionFatigue',
    part: 'tooth of the pinion',
    mode: 'cracks by the strides of a season',
    ...TEETH,
    when: ['repeats'],
    demand: pinionRootStress,
    capacity: pinionEnduring,
    demandIs: ROOT,
    capacityIs: 'the strength that is left after the passes of a tooth in the strides of a season',
  },
  {
    id: 'gear.wheelFatigue',
    part: 'tooth of the wheel',
    mode: 'cracks by the strides of a season',
    ...TEETH,
    when: ['repeats'],
    demand: wheelRootStress,
    capacity: wheelEnduring,
    demandIs: ROOT,
    capacityIs: 'the strength that is left after the strides of a season',
  },
  {
    id: 'gear.contact',
    part: 'flank of the gears',
    mode: 'is pitted by the strides of a season',
    ...TEETH,
    when: ['repeats'],
    demand: contactPressure,
    capacity: value('gear.contactStrengthGiven', ['joint'], (use) => use(gear.contactStrength) ?? Number.NaN),
    unless: value('gear.unlessContactUnknown', ['joint'], (use) =>
      use(gear.contactStrength) === undefined ? 'the pressure that the flanks bear (contactStrength of the drive) is not given' : undefined,
    ),
    demandIs: 'the pressure between two flanks at the pitch point (Hertz)',
    capacityIs: 'the pressure that the weaker flank bears for a season, as the specification gives it',
  },
  {
    id: 'gear.contactRatio',
    ...GEOMETRY,
    mode: 'hands over from tooth to tooth with a blow',
    kind: 'ratio',
    demand: value('gear.contactRatioNeeded', [], (use) => use(gear.leastContactRatio)),
    capacity: contactRatio,
    demandIs: 'the least number of pairs of teeth in contact',
    capacityIs: 'the pairs in contact on the average',
    remedy: 'more teeth of a smaller module',
  },
  {
    id: 'gear.undercut',
    ...GEOMETRY,
    part: 'pinion',
    mode: 'has roots that its own rack cuts away',
    kind: 'count',
    demand: value('gear.teethNeeded', [], (use) => use(gear.leastTeeth)),
    capacity: gear.pinionTeeth,
    demandIs: 'the least number of teeth of a standard pinion in practice',
    capacityIs: 'its teeth',
    remedy: 'more teeth of a smaller module',
  },
]
