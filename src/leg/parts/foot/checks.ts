import { cantileverToe } from '../../../kinematics/index.js'
import type { Check } from '../../cases/check.js'
import { line, type Use, value } from '../../run/index.js'
import { duration } from '../load/durations.js'
import { airTemperature, moves, repeats, slope, slopeAcross, slopeDown } from '../load/fields.js'
import { family, strainLimit } from '../materials/fields.js'
import { modulus, relaxedModulus } from '../materials/values.js'
import { footForce } from '../motion/values.js'
import { tipOver } from '../robot/values.js'
import * as foot from './fields.js'

const onToe = line(
  'force across one toe',
  { force: 'force', toes: 'count', lift: 'angle' },
  'force',
  'force / toes · cos(lift)',
  (x) => (x.force / x.toes) * Math.cos(x.lift),
)
const flatAt = line(
  'deflection at which a toe lies flat',
  { length: 'length', lift: 'angle' },
  'length',
  'length · sin(lift)',
  (x) => x.length * Math.sin(x.lift),
)
const toFlat = line.product('force that lays a toe flat', { stiffness: 'linearStiffness', flat: 'length' }, 'force')
/** Strain that the material of a toe bears, in every stride of a season where they are counted. */
const allowableStrain = value('foot.allowableStrain', ['event'], (use) => {
  const material = use(foot.material)
  const limit = use.at(strainLimit, { material })
  if (limit !== undefined) return limit
  if (use.at(family, { material }) !== 'elastomer') return use(foot.polymerStrain)
  return use(use(repeats) ? foot.elastomerStrainRepeated : foot.elastomerStrain)
})
/** A load longer than the test of a modulus, s: the toe creeps under it. */
const LONG_LOAD = 60
/** Modulus of a toe that holds its load for the time of an event. A stride is shorter than the test of the modulus, and the toe recovers between strides. */
const toeModulus = value('foot.toeModulus', ['event', 'air'], (use) => {
  const [material, time] = [use(foot.material), use(duration)]
  return use(moves) || time <= LONG_LOAD ? use.at(modulus, { material }) : relaxedModulus(use, material, use(airTemperature), time)
})
const toeAt = (use: Use<'event' | 'air'>, tipForce: number) =>
  use.run(cantileverToe, {
    modulus: use(toeModulus),
    length: use(foot.toeLength),
    width: use(foot.toeWidth),
    thickness: use(foot.toeThickness),
    allowableStrain: use(allowableStrain),
    tipForce,
  })
const flat = value('foot.flat', [], (use) => use.run(flatAt, { length: use(foot.toeLength), lift: use(foot.lift) }))
/** A toe under its share of the force, as if nothing were under it. */
const free = value('foot.freeToe', ['leg', 'event', 'air'], (use) =>
  toeAt(use, use.run(onToe, { force: use(footForce), toes: use(foot.toes), lift: use(foot.lift) })),
)
const liesFlat = value('foot.liesFlat', ['leg', 'event', 'air'], (use) => use(free).deflection > use(flat))
/** Strain at the root of a toe. A toe that lies flat on the ground bends no further. */
const rootStrain = value('foot.rootStrain', ['leg', 'event', 'air'], (use) => {
  const { rootStrain: strain, stiffness } = use(free)
  return use(liesFlat) ? toeAt(use, use.run(toFlat, { stiffness, flat: use(flat) })).rootStrain : strain
})

const SLOPES = { slope, slopeDown, slopeAcross }
const steepest = value('event.slope', ['event'], (use, at) => use(SLOPES[use.nameOf('event', at.event) as keyof typeof SLOPES]))

/** Checks of the toes and of the stand of the whole robot. */
export const footChecks: readonly Check[] = [
  {
    id: 'toe.strain',
    part: 'toe',
    mode: 'tears at its root',
    consequence: 'breaks',
    kind: 'strain',
    scope: 'leg',
    when: ['bearsLoad'],
    demand: rootStrain,
    capacity: allowableStrain,
    remark: value('foot.flatRemark', ['leg', 'event', 'air'], (use) => (use(liesFlat) ? 'the toes lie flat on the ground' : undefined)),
    demandIs: 'the strain at the root of a toe, bent no further than flat',
    capacityIs: 'the strain its polymer bears (in every stride of a season)',
    remedy: 'longer or thinner toes, or toes that stand flatter',
  },
  {
    id: 'robot.tipOver',
    part: 'robot',
    mode: 'tips over',
    consequence: 'safety',
    kind: 'angle',
    scope: 'leg',
    when: ['slopes'],
    demand: steepest,
    capacity: tipOver,
    demandIs: 'the steepest slope',
    capacityIs: 'the slope at which the weight passes through the edge of the feet, all of them on the ground',
    remedy: 'a lower load, feet farther apart, or a gentler slope',
  },
]
