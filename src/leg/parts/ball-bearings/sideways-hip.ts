import { bearingPairLoads } from '../../../fasteners/index.js'
import { NoValueError } from '../../no-value.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { hipOffset } from '../links/fields.js'
import { stance } from '../load/stance.js'
import { footForce, isLoaded, stride } from '../motion/values.js'
import { shaftForce } from '../transmission/questions.js'
import * as seated from './fields.js'

const across = line.product('force across the walk', { force: 'force', lateral: 'ratio' }, 'force')
const along = line(
  'force along the walk',
  { force: 'force', pushing: 'ratio', braking: 'ratio' },
  'force',
  'force · max(|pushing|, |braking|)',
  (x) => x.force * Math.max(Math.abs(x.pushing), Math.abs(x.braking)),
)
const ahead = line(
  'foot before or behind its hip',
  { farthest: 'length', height: 'length' },
  'length',
  'sqrt(max(0, farthest² − height²))',
  (x) => Math.sqrt(Math.max(0, x.farthest ** 2 - x.height ** 2)),
)
const beyond = line.sum('foot beyond the nearer bearing', { overhang: 'length', ahead: 'length' }, 'length')
const below = line('foot below the axis', { height: 'length' }, 'length', '−height', ({ height }) => -height)
const aside = line('foot on the near side of the axis', { offset: 'length' }, 'length', '−offset', ({ offset }) => -offset)
const together = line.sum('load of the nearer bearing', { foot: 'force', drive: 'force' }, 'force')

/**
 * Loads of the pair that the sideways hip turns in, by the foot in the hardest pose of the stance: farthest before or behind the hip, with the force along the
 * ground in the direction that adds. The weight of the leg, which would relieve them, is left out.
 */
const byFoot = value('sidewaysPair.byFoot', ['pivot', 'event'], (use) => {
  if (!use(isLoaded)) return { nearer: 0, axial: 0 }
  const [force, { height, lateral, tractionLowest, tractionHighest }] = [use(footForce), use(stance)]
  const { nearer, axial } = use.run(bearingPairLoads, {
    uprightForce: force,
    sidewaysForce: use.run(across, { force, lateral }),
    axialForce: use.run(along, { force, pushing: tractionHighest, braking: tractionLowest }),
    overhang: use.run(beyond, { overhang: use(seated.overhang), ahead: use.run(ahead, { farthest: use(stride).farthest, height }) }),
    uprightArm: use.run(below, { height }),
    sidewaysArm: use.run(aside, { offset: use(hipOffset) }),
    pairSpacing: spacingOf(use),
  })
  return { nearer, axial }
})

function spacingOf(use: Use<'pivot'>): number {
  const spacing = use(seated.pairSpacing)
  if (spacing === undefined) throw new NoValueError('the sideways hip has no pair of bearings')
  return spacing
}

/** Load across the axis of the nearer bearing: of the foot, and of belt, cord or gear on their wheel, which is taken to sit beside the pair as far as the leg. */
export const nearerOfPair = value('sidewaysPair.nearer', ['pivot', 'event', 'air', 'age'], (use): number => {
  const foot = use(byFoot).nearer
  const joint = (use.all('joint') as readonly Of<'joint'>[]).find((one) => use.nameOf('joint', one) === 'sidewaysHip')
  if (joint === undefined) return foot
  const drive = use.run(bearingPairLoads, {
    uprightForce: use.at(shaftForce, { joint }),
    sidewaysForce: 0,
    axialForce: 0,
    overhang: use(seated.overhang),
    uprightArm: 0,
    sidewaysArm: 0,
    pairSpacing: spacingOf(use),
  }).nearer
  return use.run(together, { foot, drive })
})
/** Load along the axis. */
export const alongPair = value('sidewaysPair.along', ['pivot', 'event'], (use): number => use(byFoot).axial)
