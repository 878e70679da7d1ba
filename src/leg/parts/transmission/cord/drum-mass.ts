import { line, value } from '../../../run/index.js'
import { densityOf } from '../../links/values.js'
import { drum } from './fields.js'
import { drumRadius } from './radii.js'

/** Mass of a ring such as a drum. */
export const ringMass = line(
  'mass of a drum, printed solid',
  { density: 'density', length: 'length', radius: 'length', bore: 'length' },
  'mass',
  'π · density · length · (radius² − bore² / 4)',
  (x) => Math.PI * x.density * x.length * (x.radius ** 2 - x.bore ** 2 / 4),
)
/** Mass of the drum of a cord drive. It counts where the drum does not sit on the axis of a joint of the body. */
export const drumMass = value('drum.mass', ['joint'], (use) =>
  use.run(ringMass, {
    density: densityOf(use, use(drum.material)),
    length: use(drum.length),
    radius: use(drumRadius),
    bore: use(drum.bore),
  }),
)
