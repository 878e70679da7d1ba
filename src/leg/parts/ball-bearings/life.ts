import { bearingLife, bearingOscillation } from '../../../fasteners/index.js'
import { fourBarKneePose } from '../../../kinematics/index.js'
import { NoValueError } from '../../no-value.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { allTurns, halfSwing, meanSpeed, period } from '../hip-shaft/bearings.js'
import { balls } from '../hip-shaft/fields.js'
import * as links from '../links/fields.js'
import { cycles, walkStanceTime } from '../load/durations.js'
import { walk } from '../load/fields.js'
import { kneeOf, upperOf } from '../motion/instances.js'
import { driveMotion, jointMotion } from '../motion/values.js'
import { linkage } from '../transmission/through-hip/fields.js'
import * as seated from './fields.js'
import { dynamicLoad, jointOfPin, legOf } from './loads.js'
import type { Pivot } from './pivots.js'

const between = line.difference('angle from arm to rod', { arm: 'angle', rod: 'angle' }, 'angle')
const lower = line.smallest('lower angle', { one: 'angle', other: 'angle' }, 'angle')
const upper = line.largest('higher angle', { one: 'angle', other: 'angle' }, 'angle')

/** Angle between crank or rocker and the rod at an angle of the knee. */
function atKnee(use: Use<never>, pivot: 'crank' | 'rocker', kneeAngle: number): number {
  const bars = use(linkage)
  if (bars === undefined) throw new NoValueError('no rod drives the knee')
  const ground = use.at(links.length, { link: upperOf(use as Use<'leg'>, legOf(use)) })
  const { crankAngle, couplerAngle, rockerAngle } = use.run(fourBarKneePose, { ...bars, ground, kneeAngle })
  return use.run(between, { arm: pivot === 'crank' ? crankAngle : rockerAngle, rod: couplerAngle })
}

/**
 * Angles through which the bearing of a place turns. The drum counts its whole turn against the body. Between crank or rocker and rod the ends of the swing are
 * the extremes: the angle turns back where the other arm lies along the link, next to a dead point, from which the document keeps away.
 */
const turned = value('pivot.turned', ['pivot', 'event'], (use, at): { readonly lowest: number; readonly highest: number } => {
  const pivot = use.nameOf('pivot', at.pivot) as Pivot
  const knee: Of<'joint'> = kneeOf(use as Use<'leg'>, legOf(use))
  if (pivot === 'hip' || pivot === 'knee') return use.at(jointMotion, { joint: jointOfPin(use, at.pivot) })
  // It stands still in every stride.
  if (pivot === 'sidewaysHip') return { lowest: 0, highest: 0 }
  if (pivot === 'drum') return use.at(driveMotion, { joint: knee })
  const { lowest, highest } = use.at(jointMotion, { joint: knee })
  const [one, other] = [atKnee(use, pivot, lowest), atKnee(use, pivot, highest)]
  return { lowest: use.run(lower, { one, other }), highest: use.run(upper, { one, other }) }
})

const swing = value('pivot.swing', ['pivot', 'event'], (use) => {
  const { lowest, highest } = use(turned)
  const { turnsPerCycle, state } = use.run(bearingOscillation, {
    halfAmplitude: use.run(halfSwing, { lowest, highest }),
    balls: use(balls),
  })
  return { turnsPerCycle, state }
})
/** Turns that the strides of a season add up to. */
export const turns = value('pivot.turns', ['pivot', 'event'], (use) =>
  use.run(allTurns, { cycles: use(cycles), turns: use(swing).turnsPerCycle }),
)
/** Turns that 95 % of such bearings reach. */
export const life = value('pivot.life', ['pivot', 'event', 'air', 'age'], (use) => {
  const stride = use.run(period, { stance: use(walkStanceTime), dutyFactor: use(walk.dutyFactor) })
  return use.run(bearingLife, {
    dynamicRating: use(seated.bearing.dynamicRating),
    load: use(dynamicLoad),
    reliability: '95 %',
    speed: use.run(meanSpeed, { turns: use(swing).turnsPerCycle, period: stride }),
  }).turns
})
export const still = value('pivot.still', ['pivot', 'event'], (use) => {
  const { lowest, highest } = use(turned)
  return highest > lowest ? undefined : 'it does not turn'
})
export const swingRemark = value('pivot.swingRemark', ['pivot', 'event'], (use) =>
  use(swing).state === 'falseBrinelling'
    ? 'it swings less than from ball to ball, so balls may dig in place: turn the bearing by hand now and then, and grease it'
    : undefined,
)
