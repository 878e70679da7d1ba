import { combinedStress } from '../../../materials/index.js'
import { boxCombinedStress } from '../../../structures/index.js'
import type { Check } from '../../cases/check.js'
import { type Use, value } from '../../run/index.js'
import { stride } from '../motion/values.js'
import { rodCouple, withRod } from '../transmission/rod-ends/couple.js'
import { linkage } from '../transmission/through-hip/fields.js'
import * as link from './fields.js'
import { axialForce, bendingMoment, force } from './loads.js'
import { enduring, enduringShear, notBrittle, shearStrength, shockStrength, strength } from './strength.js'

const isUpper = (use: Use<'link'>, of: Parameters<typeof use.nameOf<'link'>>[1]): boolean => use.nameOf('link', of) === 'upper'
/** Bending moment of the upper link out of the plane of the leg: of the foot, and of a rod beside the links. */
const upperSideways = value('link.upperSidewaysMoment', ['leg', 'event'], (use) => {
  const foot = use(stride).upperSidewaysMoment
  return use(linkage) === undefined ? foot : use.run(withRod, { foot, rod: use(rodCouple) })
})
/** Bending moment of a link out of the plane of the leg, and the torque that twists it. */
const sidewaysMoment = value('link.sidewaysMoment', ['link', 'event'], (use, at) =>
  isUpper(use, at.link) ? use(upperSideways) : use(stride).kneeCouple,
)
const twist = value('link.twist', ['link', 'event'], (use, at) => (isUpper(use, at.link) ? use(stride).upperTwist : 0))

/** Stresses of a link that is bent both ways, twisted, pressed and sheared. */
const stresses = value('link.sidewaysStresses', ['link', 'event', 'air', 'age'], (use) => {
  const { normalStress, shearStress } = use.run(boxCombinedStress, {
    moment: use(bendingMoment),
    sidewaysMoment: use(sidewaysMoment),
    torque: use(twist),
    axialForce: use(axialForce),
    shearForce: use(force),
    sidewaysShearForce: use(stride).lateralForce,
    width: use(link.width),
    depth: use(link.depth),
    wall: use(link.wall),
  })
  return { normalStress, shearStress }
})
const together = (id: string, along: typeof strength, between: typeof strength) =>
  value(id, ['link', 'event', 'air', 'age'], (use) =>
    use.run(combinedStress, { ...use(stresses), strength: use(along), shearStrength: use(between) }),
  )
const once = together('link.sidewaysStress', strength, shearStrength)
const everyStride = together('link.sidewaysStressOfStrides', enduring, enduringShear)

const upright = value('link.notPushedSideways', ['link', 'event'], (use, at) => {
  if (use(stride).lateralForce > 0 || (isUpper(use, at.link) && use(upperSideways) > 0)) return undefined
  return 'no force pushes the foot sideways in these load cases'
})
const notShocked = value('link.notShockedSideways', ['link', 'event', 'air'], (use) => use(upright) ?? use(notBrittle))

const common = {
  consequence: 'breaks',
  kind: 'stress',
  scope: 'leg',
  unless: upright,
  demandIs:
    'the stress of bending in the plane and sideways, of twist, pressure and shear together, shear weighed by how much weaker the material is in it',
  remedy: 'a wider section, thicker walls, or feet nearer to the middle',
} as const

/** Checks of one link that a push on the foot bends sideways; the upper one a rod beside it as well. */
const ofLink = (name: 'upper' | 'lower'): readonly Check[] => [
  {
    id: `${name}Link.sideways`,
    part: `${name} link`,
    mode: 'breaks where it is bent sideways',
    ...common,
    of: () => ({ link: name }),
    when: ['oneMoment'],
    demand: once,
    capacity: strength,
    capacityIs: 'the strength of the wall for a moment, along the link',
  },
  {
    id: `${name}Link.sidewaysBrittle`,
    part: `${name} link`,
    mode: 'breaks without yielding in a sideways shock in the cold',
    ...common,
    of: () => ({ link: name }),
    when: ['shock'],
    demand: once,
    capacity: shockStrength,
    unless: notShocked,
    capacityIs: 'the strength of the printed wall for a moment, less what a shock in the cold takes from a notched print',
    remedy: 'a polymer that stays tough in the cold, rounded corners, or a wider section',
  },
  {
    id: `${name}Link.sidewaysFatigue`,
    part: `${name} link`,
    mode: 'cracks by the strides of a season that bend it sideways',
    ...common,
    of: () => ({ link: name }),
    when: ['repeats'],
    demand: everyStride,
    capacity: enduring,
    capacityIs: 'the strength that the strides of a season leave, along the link',
  },
]

/** Checks of both links bent out of the plane of the leg. */
export const sidewaysChecks: readonly Check[] = [...ofLink('upper'), ...ofLink('lower')]
