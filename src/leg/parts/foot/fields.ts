import { band, field, reference } from '../../leaves.js'
import { toesOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

export const toes = field('foot.toes', [], 'count', (x) => toesOf(x).count)
export const toeLength = field('foot.toeLength', [], 'length', (x) => toesOf(x).length)
export const toeThickness = field('foot.toeThickness', [], 'length', (x) => toesOf(x).thickness)
export const toeWidth = field('foot.toeWidth', [], 'length', (x) => toesOf(x).width)
export const lift = field('foot.lift', [], 'angle', (x) => toesOf(x).lift)
export const material = reference('foot.material', [], 'material', (x) => x.foot.material)
export const groundFriction = band(
  'foot.groundFriction',
  'friction of the foot on the ground',
  [],
  'pull a weighted foot over your ground with a spring balance, wet and dry',
  (x) => x.foot.groundFriction,
  { level: 'assumption', where: 'soft polymer on wet or silted ground' },
)

const STRAIN_SOURCE = { level: 'assumption', where: 'a tenth for elastomers in repeated bending, three tenths once' } as const
const BEND_TEST = 'bend a printed toe to its flat position ten thousand times'
export const elastomerStrain = constant('foot.elastomerStrain', {
  title: 'strain limit of an elastomer toe in one load',
  kind: 'strain',
  typical: 0.3,
  low: 0.2,
  high: 0.5,
  source: STRAIN_SOURCE,
  measuredBy: 'bend a printed toe until it whitens or tears',
})
export const elastomerStrainRepeated = constant('foot.elastomerStrainRepeated', {
  title: 'strain limit of an elastomer toe in repeated loads',
  kind: 'strain',
  typical: 0.1,
  low: 0.05,
  high: 0.2,
  source: STRAIN_SOURCE,
  measuredBy: BEND_TEST,
})
export const polymerStrain = constant('foot.polymerStrain', {
  title: 'strain limit of a rigid polymer toe',
  kind: 'strain',
  typical: 0.01,
  low: 0.005,
  high: 0.02,
  source: { level: 'assumption', where: 'rigid polymers whose table has no limit' },
  measuredBy: BEND_TEST,
})
