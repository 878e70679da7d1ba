import { boxBendingStress } from '../../../structures/index.js'
import type { Check } from '../../cases/check.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { cycles } from '../load/durations.js'
import { airTemperature, moment } from '../load/fields.js'
import { layered } from '../materials/fields.js'
import { strengthInAir } from '../materials/in-air.js'
import { allowableStress } from '../materials/values.js'
import { hipOf, kneeOf } from '../motion/instances.js'
import { driveLoad, jointLoad, stride } from '../motion/values.js'
import { linkage } from '../transmission/through-hip/fields.js'
import * as link from './fields.js'

const larger = line('larger joint torque', { hip: 'torque', knee: 'torque' }, 'torque', 'max(knee, hip)', (x) => Math.max(x.knee, x.hip))
const along = line('force on the foot', { vertical: 'force', forward: 'force' }, 'force', 'hypot(vertical, forward)', (x) =>
  Math.hypot(x.vertical, x.forward),
)

/** The leg that a link belongs to is its only one so far. */
const legOf = (use: Use<'link' | 'event'>): Of<'leg'> => use.all('leg')[0] as Of<'leg'>

/** Moment that a link carries: the upper link the hip torque at its root and the knee torque at its end, the lower link the knee torque. */
const bendingMoment = value('link.moment', ['link', 'event'], (use, at) => {
  const leg = legOf(use)
  const knee = use.at(jointLoad, { joint: kneeOf(use, leg) })
  if (use.nameOf('link', at.link) === 'lower') return knee
  const hip = use.at(driveLoad, { joint: hipOf(use, leg) })
  // A rod carries the knee's torque past the upper link, which then bears that of the hip's drum.
  return use(linkage) === undefined ? use.run(larger, { hip, knee }) : hip
})
const stress = value('link.stress', ['link', 'event'], (use) => {
  const { vertical, forward } = use(stride)
  return use.run(boxBendingStress, {
    moment: use(bendingMoment),
    width: use(link.width),
    depth: use(link.depth),
    wall: use(link.wall),
    axialForce: use(linkage) === undefined ? use.run(along, { vertical, forward }) : use(stride).kneePin,
  }).stress
})
const strength = value('link.strength', ['link', 'event', 'air'], (use) =>
  use.at(strengthInAir.alongLayers, { material: use(link.material) }),
)
const inShock = line(
  'share of the strength that a shock finds',
  { air: 'temperature', warm: 'temperature', cold: 'temperature', share: 'ratio' },
  'ratio',
  'max(0, min(1, 1 − (1 − share) · (warm − air) / (warm − cold)))',
  (x) => Math.max(0, Math.min(1, 1 - ((1 - x.share) * (x.warm - x.air)) / (x.warm - x.cold))),
)
const brittle = line(
  'strength in a shock',
  { strength: 'stress', share: 'ratio' },
  'stress',
  'strength · share',
  (x) => x.strength * x.share,
)
const shockStrength = value('link.shockStrength', ['link', 'event', 'air'], (use) =>
  use.run(brittle, {
    strength: use(strength),
    share: use.run(inShock, {
      air: use(airTemperature),
      warm: use(link.shockWarm),
      cold: use(link.shockCold),
      share: use(link.shockShare),
    }),
  }),
)
const notBrittle = value('link.notBrittle', ['link', 'air'], (use) => {
  if (!use.at(layered, { material: use(link.material) })) return 'the link is not printed, and metal does not turn brittle here'
  return use(airTemperature) >= use(link.shockWarm) ? 'a shock in warm air finds the whole strength' : undefined
})
const enduring = value('link.enduringStress', ['link', 'event', 'air'], (use) =>
  allowableStress(use, use(link.material), {
    direction: 'alongLayers',
    temperature: use(airTemperature),
    duration: use(moment),
    cycles: use(cycles),
  }),
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
      capacityIs: 'the strength of the printed wall for a moment, along its layers',
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
]
