import { boxSection, columnBuckling } from '../../../structures/index.js'
import type { Check } from '../../cases/check.js'
import { NoValueError } from '../../no-value.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { modulusInAir } from '../materials/in-air.js'
import { groundForce } from '../motion/values.js'
import { alongAtRest, alongAxes } from '../transmission/questions.js'
import { stageIn } from '../transmission/through-hip/stage.js'
import * as links from './fields.js'
import { strength } from './strength.js'

const stressOf = line.quotient('stress in the upper link', { force: 'force', area: 'area' }, 'stress')
const together = line.sum('force that presses the upper link together', { squeeze: 'force', foot: 'force' }, 'force')

const stageOf = (use: Use<never>): Of<'joint'> => {
  const joint = stageIn(use)
  if (joint === undefined) throw new NoValueError('neither belt nor cord runs along the upper link')
  return joint
}
const section = value('link.section', ['link'], (use) =>
  use.run(boxSection, { width: use(links.width), depth: use(links.depth), wall: use(links.wall) }),
)
/** Force by which belt or cord presses the upper link together, all the time. */
const atRest = value('link.squeezeAtRest', ['air', 'age'], (use) => use.at(alongAtRest, { joint: stageOf(use) }) as number)
const stress = value('link.squeezeStress', ['link', 'air', 'age'], (use) =>
  use.run(stressOf, { force: use(atRest), area: use(section).area }),
)
const pressed = value('link.pressed', ['link', 'event', 'air', 'age'], (use) =>
  use.run(together, { squeeze: use.at(alongAxes, { joint: stageOf(use) }) as number, foot: use(groundForce) }),
)
/** Force at which it buckles across its weak axis, as soft as the temperature and the time under load make it. */
const criticalForce = value('link.criticalForce', ['link', 'event', 'air', 'age'], (use) => {
  const { area, secondMoment, sidewaysSecondMoment } = use(section)
  return use.run(columnBuckling, {
    force: use(pressed),
    length: use(links.length),
    ends: 'bothPinned',
    area,
    secondMoment: Math.min(sidewaysSecondMoment, secondMoment),
    modulus: use.at(modulusInAir, { material: use(links.material) }),
    yieldStrength: use(strength),
  }).criticalForce
})

const UPPER = { part: 'upper link', consequence: 'breaks', scope: 'leg', of: () => ({ link: 'upper' }) } as const
/** Checks of the upper link under the tension that belt or cord along it keeps. */
export const squeezeChecks: readonly Check[] = [
  {
    id: 'upperLink.squeeze',
    ...UPPER,
    mode: 'creeps together under belt or cord along it',
    kind: 'stress',
    when: ['keepsTension'],
    demand: stress,
    capacity: strength,
    demandIs: 'both tensions at rest along the link, over its section, on the shelf too',
    capacityIs: 'the strength of its material along the link for the time under load',
    remedy: 'less pretension, thicker walls, or a stiffer material',
  },
  {
    id: 'upperLink.buckling',
    ...UPPER,
    mode: 'buckles under belt or cord along it and the foot',
    kind: 'force',
    when: ['bearsLoad', 'stored'],
    demand: pressed,
    capacity: criticalForce,
    demandIs: 'both tensions along the link and the force on the foot',
    capacityIs:
      'the force at which it buckles between its axes (Euler, or Johnson for a short one), at its temperature and time under load',
    remedy: 'less pretension, a wider section, or a stiffer material',
  },
]
/** Names of these checks. */
export const squeezeIds = ['upperLink.squeeze', 'upperLink.buckling'] as const
