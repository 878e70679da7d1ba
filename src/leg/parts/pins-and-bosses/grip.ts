import { fitProbability, isoTolerance, pressFitHold } from '../../../fasteners/index.js'
import { line, type Use, value } from '../../run/index.js'
import { frictionOnSteel } from '../materials/values.js'
import * as own from './fields.js'
import { holdingPressure, meanPin, relaxedInterference } from './fit.js'
import { pinForce } from './loads.js'

const { boss, pin } = own
const share = line.product('share of a length', { share: 'ratio', length: 'length' }, 'length')
const scatter = line(
  'scatter of the pin',
  { upper: 'length', lower: 'length', sigmas: 'ratio' },
  'length',
  '(upper − lower) / sigmas',
  (x) => (x.upper - x.lower) / x.sigmas,
)
const atLeast = line.largest('smallest chance that is resolved', { chance: 'ratio', least: 'ratio' }, 'ratio')
const drag = line(
  'torque of the eye that drags the pin',
  { friction: 'ratio', force: 'force', diameter: 'length' },
  'torque',
  'friction · force · (diameter / 2)',
  (x) => x.friction * x.force * (x.diameter / 2),
)
const along = line.product('force along the pin', { share: 'ratio', force: 'force' }, 'force')
const both = line('length of pin in both bosses', { engagement: 'length' }, 'length', '2 · engagement', (x) => 2 * x.engagement)

const hold = (use: Use<'joint' | 'event' | 'air' | 'age'>) => {
  const [force, diameter] = [use(pinForce), use(pin.diameter)]
  return use.run(pressFitHold, {
    pressure: use(holdingPressure),
    diameter,
    length: use.run(both, { engagement: use(boss.engagement) }),
    friction: use.at(frictionOnSteel, { material: use(boss.material) }),
    axialForce: use.run(along, { share: use(own.axialShare), force }),
    torque: use.run(drag, { friction: use.at(frictionOnSteel, { material: use(own.eyeMaterial) }), force, diameter }),
    requiredReserve: use(own.gripReserve),
  })
}
/** Whether the pin is loose in its relaxed bosses at a temperature. */
export const isLoose = value('boss.isLoose', ['joint', 'event', 'air'], (use) => use(relaxedInterference) <= 0)
/** Force that drags the pin, and what holds it. */
export const grip = value('boss.grip', ['joint', 'event', 'air', 'age'], (use) =>
  use(isLoose) ? { demand: use(pinForce), capacity: 0 } : hold(use),
)
/** Chance that a boss comes out loose. */
export const looseChance = value('boss.looseChance', ['joint'], (use) => {
  const diameter = use(pin.diameter)
  const { upper, lower } = use.run(isoTolerance, { diameter, zone: use(pin.zone) })
  const { looseProbability: chance } = use.run(fitProbability, {
    pinDiameter: use(meanPin),
    pinScatter: use.run(scatter, { upper, lower, sigmas: use(own.toleranceSigmas) }),
    holeDiameter: use(boss.hole),
    holeScatter: use(boss.holeScatter),
    neededInterference: use.run(share, { share: use(own.neededShare), length: diameter }),
    allowableInterference: use.run(share, { share: use(own.allowableShare), length: diameter }),
  })
  return use.run(atLeast, { chance, least: use(own.leastChance) })
})
