import { driveResonance } from '../../../capstan/index.js'
import type { Check } from '../../cases/check.js'
import { constant, line, type Of, type Use, value } from '../../run/index.js'
import * as links from '../links/fields.js'
import { body } from '../links/values.js'
import { rotorAtJoint } from '../motors/rotor.js'
import { standHeight } from '../robot/fields.js'
import { ratio } from '../transmission/questions.js'
import { stageIn } from '../transmission/through-hip/stage.js'
import { stiffnessAtRest } from '../transmission/through-hip/whole.js'
import * as controller from './fields.js'

const aboutJoint = line(
  'inertia of a link about its upper joint',
  { inertia: 'momentOfInertia', mass: 'mass', centre: 'length' },
  'momentOfInertia',
  'inertia + mass · centre²',
  (x) => x.inertia + x.mass * x.centre ** 2,
)
const legInertia = line(
  'inertia of the standing leg about the hip',
  {
    upperLink: 'momentOfInertia',
    own: 'momentOfInertia',
    mass: 'mass',
    centre: 'length',
    upper: 'length',
    lower: 'length',
    height: 'length',
  },
  'momentOfInertia',
  'upperLink + own + mass · (upper² + centre² + centre / lower · (height² − upper² − lower²))',
  (x) =>
    x.upperLink + x.own + x.mass * (x.upper ** 2 + x.centre ** 2 + (x.centre / x.lower) * (x.height ** 2 - x.upper ** 2 - x.lower ** 2)),
)
const delayOf = line(
  'delay of the loop',
  { periods: 'ratio', rate: 'frequency', bus: 'time' },
  'time',
  'periods / rate + bus',
  (x) => x.periods / x.rate + x.bus,
)
const quarter = line(
  'frequency whose quarter period is the delay',
  { delay: 'time' },
  'frequency',
  '1 / (4 · delay)',
  (x) => 1 / (4 * x.delay),
)

/** A sample waits half a period on the average, and its answer is held for one. */
const periods = constant('controller.delayPeriods', {
  title: 'sampling periods of delay in the control loop',
  kind: 'ratio',
  typical: 1.5,
  low: 1,
  high: 2,
  source: { level: 'commonPractice', where: 'computing time of one period and a hold of half a period in sampled loops' },
  measuredBy: 'step the commanded torque and log current and encoder at the full rate',
})

type At = Use<'joint' | 'air' | 'age'>
/** Inertia of the leg in the air about a joint, the other one held. */
export const loadInertia = value('joint.legInertia', ['joint'], (use, at) => {
  const [upper, lower] = use.all('link') as [Of<'link'>, Of<'link'>]
  const [thigh, shank] = [use.at(body, { link: upper }), use.at(body, { link: lower })]
  const { mass, centre, inertia } = shank
  if (use.nameOf('joint', at.joint) === 'knee') return use.run(aboutJoint, { inertia, mass, centre })
  return use.run(legInertia, {
    upperLink: use.run(aboutJoint, { inertia: thigh.inertia, mass: thigh.mass, centre: thigh.centre }),
    own: inertia,
    mass,
    centre,
    upper: use.at(links.length, { link: upper }),
    lower: use.at(links.length, { link: lower }),
    height: use(standHeight),
  })
})
const atDrum = line(
  'inertia of the lower link at the drum on the hip axis',
  { inertia: 'momentOfInertia', ratio: 'ratio' },
  'momentOfInertia',
  'inertia / ratio²',
  (x) => x.inertia / x.ratio ** 2,
)
/** The same at the drum of the drive: that of a knee that belt or cord drives from the hip axis turns by their ratio. */
const inertiaAtDrum = value('drive.legInertia', ['joint'], (use, at) => {
  const stage = stageIn(use)
  if (stage === undefined || use.nameOf('joint', at.joint) !== 'knee') return use(loadInertia)
  return use.run(atDrum, { inertia: use(loadInertia), ratio: use.at(ratio, { joint: stage }) })
})
const resonance = (use: At): number =>
  use.run(driveResonance, {
    stiffness: use(stiffnessAtRest) as number,
    loadInertia: use(inertiaAtDrum),
    reflectedInertia: use(rotorAtJoint),
  }).motorFree

/** Whether the loop of a motor answers in time to damp the resonance of its drive. */
export const delayCheck: Check = {
  id: 'controller.delay',
  part: 'control loop',
  mode: 'answers too late, so that it drives the resonance of its transmission instead of damping it',
  consequence: 'fails to work',
  kind: 'frequency',
  scope: 'joint',
  when: ['walks'],
  demand: value('controller.resonance', ['joint', 'air', 'age'], resonance),
  capacity: value('controller.dampedUpTo', ['joint'], (use) =>
    use.run(quarter, { delay: use.run(delayOf, { periods: use(periods), rate: use(controller.loopRate), bus: use(controller.busDelay) }) }),
  ),
  unless: value('controller.unlessRigid', ['joint', 'air', 'age'], (use, at) => {
    if (use.nameOf('joint', at.joint) === 'sidewaysHip') return 'the inertia of the leg about its sideways axis is not calculated'
    return use(stiffnessAtRest) === undefined ? 'no elastic part between rotor and joint is calculated' : undefined
  }),
  demandIs: 'the resonance of leg and rotor on the transmission, the leg in the air and the motor free',
  capacityIs: 'the frequency up to which the delay of loop and bus is less than a quarter of a period',
  remedy: 'a faster loop in the motor controller itself, less delay on the bus, or a damping gain far below what the drive would allow',
  requiredReserve: 1,
  rule: { level: 'computed', where: 'a damping torque that lags a quarter of a period no longer damps, and beyond that it drives' },
}
