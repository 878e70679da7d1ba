import { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { Joint } from '../numbers.js'
import { length } from './bench.js'
import type { DriveWork } from './drive-work-plan.js'
import { phrase, shown } from './sheet-units.js'

/** The link that a joint turns. */
const LINK_OF = { hip: 'upper', knee: 'lower' } as const satisfies Record<Joint, 'upper' | 'lower'>

/** A counterweight: what to make, how to put it on, and what to look at; nothing for a link without one. @internal */
export function counterweightWork({ x }: LegModel, joint: Joint): DriveWork[] {
  const link = LINK_OF[joint]
  const { counterweight } = x.links[link]
  if (counterweight === undefined) return []
  const mass = new Quantity(counterweight.mass, 'mass')
  const beyond = length(counterweight.beyond)
  return [
    {
      joint,
      kind: 'counterweight',
      sizes: [
        { what: 'mass, with what holds it', value: shown(mass) },
        { what: `centre of mass from the ${joint} axis, away from the ${link} link`, value: shown(beyond) },
      ],
      parts: [{ item: 'counterweight', size: shown(mass), quantity: '1', remark: phrase`${link} link, ${beyond} beyond the ${joint}` }],
      before: [phrase`Weigh the counterweight of the ${link} link with its screws: ${mass}.`],
      steps: [
        `Fix the counterweight of the ${link} link with screws through its arm, in line with the link: glue and friction alone let go in a landing. Turn the ${joint} through its whole travel by hand: the weight must clear everything, fingers included.`,
        `Check the balance with the motor of the ${joint} off and its drive loose: hang the leg up and read the force that lifts the link with a luggage scale, with the weight and without it.`,
      ],
      followUps: [
        {
          when: 'after a week',
          what: `counterweight of the ${link} link`,
          expect: 'no screw turns at its torque, and no crack in the arm',
        },
      ],
      troubles: [
        {
          reading: `${joint}: needs more current in the swing than without the counterweight`,
          means: 'its inertia costs more than its balance saves: it has to be accelerated at every step',
          cure: 'a heavier weight closer to the axis balances as well, with less inertia',
        },
      ],
      problems: [],
    },
  ]
}
