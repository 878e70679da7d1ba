import { boxBendingStress } from '../../../structures/index.js'
import type { Check } from '../../cases/check.js'
import { value } from '../../run/index.js'
import * as link from './fields.js'
import { axialForce, bendingMoment } from './loads.js'
import { sidewaysChecks } from './sideways.js'
import { enduring, notBrittle, shockStrength, strength } from './strength.js'

/** Stress at the outer fibre, bent in the plane of the leg. */
export const stress = value(
  'link.stress',
  ['link', 'event', 'air', 'age'],
  (use) =>
    use.run(boxBendingStress, {
      moment: use(bendingMoment),
      width: use(link.width),
      depth: use(link.depth),
      wall: use(link.wall),
      axialForce: use(axialForce),
    }).stress,
)

const LINKS = ['upper', 'lower'] as const
const common = { consequence: 'breaks', kind: 'stress', scope: 'leg', demand: stress, remedy: 'a deeper section or thicker walls' } as const

/** Checks of the two links. */
export const linkChecks: readonly Check[] = [
  ...LINKS.map(
    (name): Check => ({
      id: `${name}Link.bending`,
      part: `${name} link`,
      mode: 'breaks in bending',
      ...common,
      of: () => ({ link: name }),
      when: ['oneMoment'],
      capacity: strength,
      demandIs: 'the stress at the outer fibre from the larger joint torque it carries and the foot force along it',
      capacityIs: 'the strength of the wall for a moment, along the link',
    }),
  ),
  ...LINKS.map(
    (name): Check => ({
      id: `${name}Link.brittle`,
      part: `${name} link`,
      mode: 'breaks without yielding in a shock in the cold',
      ...common,
      of: () => ({ link: name }),
      when: ['shock'],
      capacity: shockStrength,
      unless: notBrittle,
      demandIs: 'the stress at the outer fibre from the larger joint torque it carries and the foot force along it',
      capacityIs: 'the strength of the printed wall for a moment, less what a shock in the cold takes from a notched print',
      remedy: 'a polymer that stays tough in the cold, rounded corners, or a deeper section',
    }),
  ),
  ...LINKS.map(
    (name): Check => ({
      id: `${name}Link.fatigue`,
      part: `${name} link`,
      mode: 'cracks by the strides of a season',
      ...common,
      of: () => ({ link: name }),
      when: ['repeats'],
      capacity: enduring,
      demandIs: 'the stress at the outer fibre in every stride',
      capacityIs: 'the strength that the strides of a season leave',
    }),
  ),
  ...sidewaysChecks,
]
