import { AGE_IDS, AIR_IDS, EVENT_IDS, EVENTS, STANCE_IDS } from '../cases/events.js'
import { JOINTS, type LegNumbers } from '../numbers.js'
import type { Structure } from '../run/index.js'

/**
 * The instances of a leg. Hip and knee share a kind of motor, controller and plate, which the document gives once; each has its own cord by
 * name.
 */
export function structureOf(x: LegNumbers): Structure {
  const cords = Object.keys(x.cords)
  const both = JOINTS.map(() => 0)
  return {
    names: {
      leg: ['leg'],
      joint: JOINTS,
      motor: ['main'],
      cord: cords,
      plate: ['main'],
      controller: ['main'],
      link: ['upper', 'lower'],
      boltGroup: ['stack', 'motor'],
      material: [],
      stance: STANCE_IDS,
      event: EVENT_IDS,
      air: AIR_IDS,
      age: AGE_IDS,
    },
    implied: {
      joint: { leg: both, motor: both, plate: both, controller: both, cord: JOINTS.map((joint) => cords.indexOf(x.drives[joint].cord)) },
      motor: { leg: [0] },
      plate: { leg: [0] },
      link: { leg: [0, 0] },
      boltGroup: { leg: [0, 0] },
      event: { stance: EVENT_IDS.map((event) => STANCE_IDS.indexOf(EVENTS[event].stance)) },
    },
  }
}

/** What a calculation is made for: another text needs another calculation. */
export const structureKey = (x: LegNumbers): string =>
  [Object.keys(x.cords).join(), ...JOINTS.map((joint) => x.drives[joint].cord), x.sink === undefined ? 'no sink' : 'sink'].join('/')
