import type { Check } from '../../cases/check.js'
import { allowedOf, cycledOf, enduredOf, type Spot, stressOf } from './strength.js'

const WORDS = {
  torsion: { id: 'coil', part: 'wire of the torsion spring', stress: 'the bending stress at the inside of the coil' },
  body: { id: 'body', part: 'wire of the extension spring', stress: 'the shear stress at the inside of the coil' },
  hookBending: { id: 'hook', part: 'hook of the spring', stress: 'the bending stress at the top of the hook' },
  hookShear: { id: 'hookBend', part: 'bend of the hook', stress: 'the shear stress where the wire turns into the hook' },
} as const satisfies { readonly [S in Spot]: unknown }
const REMEDY = 'a thicker wire, a wider coil with more coils, or less travel'

/** Checks of the wire at a spot: over the travel at rest, and over the strides of a season. */
export const wireChecks = (spot: Spot): readonly Check[] => {
  const { id, part, stress } = WORDS[spot]
  return [
    {
      id: `spring.${id}`,
      part,
      mode: 'takes a set or breaks at the end of the travel',
      consequence: 'breaks',
      kind: 'stress',
      scope: 'joint',
      when: ['asBuilt'],
      demand: stressOf(spot),
      capacity: allowedOf(spot),
      demandIs: `${stress} where the joint loads it most`,
      capacityIs: 'the share of its tensile strength that the wire bears at rest',
      remedy: REMEDY,
      requiredReserve: 1.1,
    },
    {
      id: `spring.${id}Fatigue`,
      part,
      mode: 'breaks by the strides of a season',
      consequence: 'breaks',
      kind: 'stress',
      scope: 'joint',
      when: ['repeats'],
      demand: cycledOf(spot),
      capacity: enduredOf(spot),
      demandIs: `${stress}, its range and mean over a stride as an amplitude about no mean stress`,
      capacityIs: 'the amplitude that ten million strides leave of the wire, not shot-peened',
      remedy: `${REMEDY}; a larger radius of the bend helps a hook`,
    },
  ]
}
