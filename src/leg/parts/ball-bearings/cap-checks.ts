import type { Check } from '../../cases/check.js'
import { value } from '../../run/index.js'
import { capClamp, capPreload, capPreloadAllowed, capProof, screwForce } from './cap.js'
import { retainedBy } from './fields.js'

type Place = Pick<Check, 'id' | 'part' | 'scope' | 'of'>
/** Data that the checks of one place share. */
export type At = (mode: string) => Place

const noCap = value('pivot.noCap', ['pivot'], (use) => (use(retainedBy) === 'cap' ? undefined : 'no cap holds its bearing'))

/** Checks of the cap that holds a bearing along its axis. */
export const capChecks = (at: At): readonly Check[] => [
  {
    ...at('capTightening'),
    mode: 'loses the screw of its cap, which yields when it is tightened',
    consequence: 'breaks',
    kind: 'force',
    when: ['asBuilt'],
    demand: capPreload,
    capacity: capPreloadAllowed,
    unless: noCap,
    demandIs: 'the preload from the tightening torque',
    capacityIs: 'the preload at nine tenths of yield, torsion included',
    remedy: 'less tightening torque, a thicker screw, or a higher property class',
  },
  {
    ...at('capLift'),
    mode: 'lifts its cap',
    consequence: 'fails to work',
    kind: 'force',
    when: ['bearsLoad'],
    demand: screwForce,
    capacity: capClamp,
    unless: noCap,
    demandIs: 'the force on the screw of the cap, which the tilting ring levers about its far edge',
    capacityIs: 'the clamp load that is left of its preload: a share that neither age nor cold changes, metal on metal',
    remedy: 'two bearings side by side, a cap of larger edge, a thicker screw, or more tightening torque',
  },
  {
    ...at('capScrew'),
    mode: 'pulls the screw of its cap beyond its proof load',
    consequence: 'breaks',
    kind: 'force',
    when: ['oneMoment'],
    demand: screwForce,
    capacity: capProof,
    unless: noCap,
    demandIs: 'the force on the screw of the cap, which the tilting ring levers about its far edge',
    capacityIs: 'the proof load of the screw',
    remedy: 'a thicker screw of the cap, or two bearings side by side',
  },
]
