import { line, type Of, type Use, value } from '../../../run/index.js'
import * as first from '../questions.js'
import { stageIn } from './stage.js'

const inSeries = line(
  'stiffness of both stages at the drum on the hip axis',
  { first: 'torsionalStiffness', second: 'torsionalStiffness', ratio: 'ratio' },
  'torsionalStiffness',
  '1 / (1 / first + ratio² / second)',
  (x) => 1 / (1 / x.first + x.ratio ** 2 / x.second),
)
const secondAlone = line(
  'stiffness of the second stage at the drum on the hip axis',
  { second: 'torsionalStiffness', ratio: 'ratio' },
  'torsionalStiffness',
  'second / ratio²',
  (x) => x.second / x.ratio ** 2,
)
const sum = line(
  'angle of both stages at the drum on the hip axis',
  { first: 'angle', second: 'angle', ratio: 'ratio' },
  'angle',
  'first + ratio · second',
  (x) => x.first + x.ratio * x.second,
)
const atDrum = line.quotient('torque of the knee at the drum on the hip axis', { torque: 'torque', ratio: 'ratio' }, 'torque')
const less = line.smallest('lesser of both torques', { first: 'torque', second: 'torque' }, 'torque')
const both = line.product('efficiency of both stages', { first: 'ratio', second: 'ratio' }, 'ratio')

/** The second stage of a joint's drive; absent where it has one stage. */
const secondOf = (use: Use<'joint'>, joint: Of<'joint'>): Of<'joint'> | undefined =>
  use.nameOf('joint', joint) === 'knee' ? stageIn(use) : undefined

function seriesOf(use: Use<'joint'>, joint: Of<'joint'>, own: number | undefined, second: number | undefined): number | undefined {
  if (second === undefined) return own
  const ratio = use.at(first.ratio, { joint })
  return own === undefined ? use.run(secondAlone, { second, ratio }) : use.run(inSeries, { first: own, second, ratio })
}

/** Stiffness from motor to joint at the drum of the drive, motor held. A knee that belt or cord drives through the hip has two stages. Without load, and under that of an event. */
export const stiffnessAtRest = value('drive.stiffnessAtRest', ['joint', 'air', 'age'], (use, at) => {
  const joint = secondOf(use, at.joint)
  const own = use(first.stiffnessAtRest)
  return joint === undefined ? own : seriesOf(use, joint, own, use.at(first.stiffnessAtRest, { joint }))
})
export const stiffness = value('drive.stiffness', ['joint', 'event', 'air', 'age'], (use, at) => {
  const joint = secondOf(use, at.joint)
  const own = use(first.stiffness)
  return joint === undefined ? own : seriesOf(use, joint, own, use.at(first.stiffness, { joint }))
})
/** Turn of the drum with the motor held, under the largest torque of an event, until the joint has followed. */
export const windup = value('drive.windup', ['joint', 'event', 'air', 'age'], (use, at) => {
  const joint = secondOf(use, at.joint)
  const own = use(first.windup)
  if (joint === undefined) return own
  return use.run(sum, { first: own, second: use.at(first.windup, { joint }), ratio: use.at(first.ratio, { joint }) })
})
/** Turn of the drum within the play of all stages. */
export const freePlay = value('drive.freePlay', ['joint'], (use, at) => {
  const joint = secondOf(use, at.joint)
  const own = use(first.freePlay)
  if (joint === undefined) return own
  return use.run(sum, { first: own, second: use.at(first.freePlay, { joint }), ratio: use.at(first.ratio, { joint }) })
})
/** Torque at the drum beyond which a blow takes the tension from a span of either stage, or breaks a gearbox. */
export const blowTorque = value('drive.blowTorque', ['joint', 'air', 'age'], (use, at) => {
  const joint = secondOf(use, at.joint)
  const own = use(first.blowTorque)
  const atKnee = joint === undefined ? undefined : use.at(first.blowTorque, { joint })
  if (joint === undefined || atKnee === undefined) return own
  const second = use.run(atDrum, { torque: atKnee, ratio: use.at(first.ratio, { joint }) })
  return own === undefined ? second : use.run(less, { first: own, second })
})
/** Efficiency from motor to joint, of all stages. */
export const efficiency = value('drive.wholeEfficiency', ['joint'], (use, at) => {
  const joint = secondOf(use, at.joint)
  const own = use(first.efficiency)
  return joint === undefined ? own : use.run(both, { first: own, second: use.at(first.efficiency, { joint }) })
})
