import { line, value } from '../../../run/index.js'
import * as cord from './fields.js'

const centreLine = line(
  'centre line of the cord',
  { groove: 'length', cord: 'length' },
  'length',
  '(groove + cord) / 2',
  (x) => (x.groove + x.cord) / 2,
)
const quotient = line.quotient('ratio on the centre lines', { drum: 'length', pinion: 'length' }, 'ratio')

/** Radius of the pinion to the centre line of the cord. */
export const pinionRadius = value(
  'cord.pinionRadius',
  ['joint'],
  (use) =>
    use(cord.pinion.centreLineRadius) ??
    use.run(centreLine, { groove: use(cord.pinion.grooveDiameter) as number, cord: use(cord.diameter) }),
)
/** Radius of the drum to the centre line of the cord. */
export const drumRadius = value(
  'cord.drumRadius',
  ['joint'],
  (use) =>
    use(cord.drum.centreLineRadius) ?? use.run(centreLine, { groove: use(cord.drum.grooveDiameter) as number, cord: use(cord.diameter) }),
)
/** The smaller of both, which bends the cord most. */
export const smallerRadius = value('cord.smallerRadius', ['joint'], (use) => Math.min(use(drumRadius), use(pinionRadius)))
/** Turns of the motor, or of the drum on the hip axis, for one of the joint. */
export const ratio = value('cord.ratio', ['joint'], (use) => use.run(quotient, { drum: use(drumRadius), pinion: use(pinionRadius) }))
