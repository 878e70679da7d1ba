import { band, field, reference } from '../../leaves.js'
import { constant } from '../../run/index.js'

export const toes = field('foot.toes', [], 'count', (x) => x.foot.toes)
export const toeLength = field('foot.toeLength', [], 'length', (x) => x.foot.toeLength)
export const toeThickness = field('foot.toeThickness', [], 'length', (x) => x.foot.toeThickness)
export const toeWidth = field('foot.toeWidth', [], 'length', (x) => x.foot.toeWidth)
export const lift = field('foot.lift', [], 'angle', (x) => x.foot.lift)
export const material = reference('foot.material', [], 'material', (x) => x.foot.material)
export const groundFriction = band(
  'foot.groundFriction',
  [],
  'pull a weighted foot over your ground with a spring balance, wet and dry',
  (x) => x.foot.groundFriction,
  { level: 'assumption', where: 'soft polymer on wet or silted ground' },
)

const STRAIN = { level: 'assumption', where: 'a tenth for elastomers in repeated bending, three tenths once' } as const
const BEND = 'bend a printed toe to its flat position ten thousand times'
export const elastomerStrain = constant('foot.elastomerStrain', {
  kind: 'strain',
  typical: 0.3,
  low: 0.2,
  high: 0.5,
  source: STRAIN,
  measuredBy: 'bend a printed toe until it whitens or tears',
})
export const elastomerStrainRepeated = constant('foot.elastomerStrainRepeated', {
  kind: 'strain',
  typical: 0.1,
  low: 0.05,
  high: 0.2,
  source: STRAIN,
  measuredBy: BEND,
})
export const polymerStrain = constant('foot.polymerStrain', {
  kind: 'strain',
  typical: 0.01,
  low: 0.005,
  high: 0.02,
  source: { level: 'assumption', where: 'rigid polymers whose table has no limit' },
  measuredBy: BEND,
})
