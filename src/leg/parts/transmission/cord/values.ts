import {
  cycleTension,
  driveWindup,
  pulleyGeometry,
  shaftForce as shaftForceOf,
  thermalTension as thermalTensionOf,
  travelLimits,
  travelPeakTension,
} from '../../../../capstan/index.js'
import { temperatureRise } from '../../../lines.js'
import { line, type Use, value } from '../../../run/index.js'
import { airTemperature, assemblyTemperature, isRare } from '../../load/fields.js'
import { thermalExpansion } from '../../materials/values.js'
import { driveLoad, stroke } from '../../motion/values.js'
import { drumTravel } from '../through-hip/travel.js'
import * as cord from './fields.js'
import { drumRadius, pinionRadius } from './radii.js'

const halfAngle = line('arc of one branch on the drum', { arc: 'angle' }, 'angle', 'arc / 2', ({ arc }) => arc / 2)
const onDrum = line(
  'travel with both anchors on the drum',
  { from: 'angle', to: 'angle', arc: 'angle' },
  'angle',
  'min(to − from, 2 · arc)',
  (x) => Math.min(x.to - x.from, 2 * x.arc),
)
const asSet = line.product('pretension as it is set', { pretension: 'force', scatter: 'ratio' }, 'force')
const agedTension = line.product('pretension after relaxation', { set: 'force', left: 'ratio' }, 'force')
const kept = line(
  'pretension at this temperature and age',
  { aged: 'force', change: 'force', least: 'force' },
  'force',
  'max(least, aged + change)',
  (x) => Math.max(x.least, x.aged + x.change),
)
const slackBeside = line(
  'tension of the slack span beside it',
  { hardest: 'force', taut: 'force', slack: 'force' },
  'force',
  'hardest - (taut - slack)',
  (x) => x.hardest - (x.taut - x.slack),
)
const largest = line.largest('largest tension in and after travel', { loaded: 'force', travelled: 'force', cycled: 'force' }, 'force')
/** Arcs and spans of a drive. */
export const geometry = value('cord.geometry', ['joint'], (use) =>
  use.run(pulleyGeometry, {
    arrangement: use(cord.arrangement),
    pinionRadius: use(pinionRadius),
    drumRadius: use(drumRadius),
    centreDistance: use(cord.centreDistance),
    pinionTurns: use(cord.pinion.turns),
  }),
)
/** Arc of one branch on the drum: anchors opposite each other at mid travel, so each branch has half of the drum's arc. */
export const branchArc = value('cord.branchArc', ['joint'], (use) => use.run(halfAngle, { arc: use(geometry).drumWrapAngle }))

/** Change of the pretension since assembly by temperature alone. */
export const thermalTension = value('cord.thermalTension', ['joint', 'air'], (use) =>
  use.run(thermalTensionOf, {
    axialRigidity: use(cord.axialRigidity),
    temperatureRise: use.run(temperatureRise, { air: use(airTemperature), assembly: use(assemblyTemperature) }),
    frameExpansion: use.at(thermalExpansion, { material: use(cord.frameMaterial) }),
    cordExpansion: use(cord.thermalExpansion),
  }),
)
/** Pretension of a drive as it was set: the one aimed at, within what the setting scatters. */
export const pretensionAsSet = value('cord.pretensionAsSet', ['joint'], (use) =>
  use.run(asSet, { pretension: use(cord.pretensionSet), scatter: use(cord.settingScatter) }),
)
/** Pretension of an age at the temperature of assembly. */
export const agedPretension = value('cord.agedPretension', ['joint', 'age'], (use, at) => {
  const set = use(pretensionAsSet)
  return use.nameOf('age', at.age) === 'new' ? set : use.run(agedTension, { set, left: use(cord.pretensionLeft) })
})
/** Pretension of both spans at a temperature and age. */
export const pretension = value('cord.pretension', ['joint', 'air', 'age'], (use) =>
  use.run(kept, { aged: use(agedPretension), change: use(thermalTension), least: use(cord.looseTension) }),
)
/** Whether nothing of the pretension is left. */
export const loose = value('cord.loose', ['joint', 'air', 'age'], (use) => use(pretension) <= use(cord.looseTension))

/** The drive as the formulas of winding up and slipping take it. */
const driveAt = (use: Use<'joint' | 'air' | 'age'>) => {
  const { span, pinionWrap } = use(geometry)
  const arc = use(branchArc)
  return {
    axialRigidity: use(cord.axialRigidity),
    pretension: use(pretension),
    pinionRadius: use(pinionRadius),
    drumRadius: use(drumRadius),
    span,
    pinionWrap,
    drumWrapTaut: arc,
    drumWrapSlack: arc,
    friction: use(cord.friction),
    drumFriction: undefined,
  }
}

/** Tensions, windup and stiffness under the largest joint torque, motor held. */
export const windup = value('cord.windup', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(driveWindup, { torque: use(driveLoad), ...driveAt(use), hold: use(cord.hold), contactStiffness: undefined }),
)
/** Stiffness of a drive without load, when no cord slips in its arcs: the highest it has. */
export const stiffnessAtRest = value(
  'cord.stiffnessAtRest',
  ['joint', 'air', 'age'],
  (use) => use.run(driveWindup, { torque: 0, ...driveAt(use), hold: use(cord.hold), contactStiffness: undefined }).tangentStiffness,
)
/** Travel of the joint. Where it unwinds an anchor, the cord holds on no drum arc at all, and the check of the wrap fails. */
export const travel = value('cord.travel', ['joint'], (use) => {
  const { lowest, highest } = use(drumTravel)
  return use.run(onDrum, { from: lowest, to: highest, arc: use(branchArc) })
})
const limits = (use: Use<'joint' | 'air' | 'age'>, hold: 'frictionOnly' | 'clampedMidPinion') => {
  const { axialRigidity, pretension: at, pinionRadius: pinion, drumRadius: drum, span, pinionWrap, drumWrapTaut, friction } = driveAt(use)
  return use.run(travelLimits, {
    axialRigidity,
    pretension: at,
    pinionRadius: pinion,
    drumRadius: drum,
    span,
    pinionWrap,
    friction,
    drumFriction: undefined,
    drumWrap: drumWrapTaut,
    travel: use(travel),
    hold,
  })
}
/** Torque at which a span of a cord that does not slip goes slack, the least over the travel: slipping is a limit of its own. */
export const slackTorque = value('cord.slackTorque', ['joint', 'air', 'age'], (use) => limits(use, 'clampedMidPinion').slackTorque)
/** Torque at which the cord slips on the pinion, the least over the travel; infinite where it is clamped. */
export const slipTorque = value('cord.slipTorque', ['joint', 'air', 'age'], (use) =>
  use(cord.hold) === 'frictionOnly' ? limits(use, 'frictionOnly').slipTorque : Number.POSITIVE_INFINITY,
)
/** Largest tension of the taut span, after the joint has travelled under load. */
export const peakTension = value('cord.peakTension', ['joint', 'event', 'air', 'age'], (use) => {
  const [at, torque, radius] = [use(pretension), use(driveLoad), use(drumRadius)]
  return use.run(largest, {
    loaded: use(windup).tautTension,
    travelled: use.run(travelPeakTension, { pretension: at, torque, drumRadius: radius }),
    cycled: use.run(cycleTension, {
      pretension: at,
      torque,
      drumRadius: radius,
      span: use(geometry).span,
      stroke: use(stroke),
      loadedStroke: 'raising',
    }).peak,
  })
})
/** Tension of the taut span that strength is judged by: in a rare load after the joint has travelled under it. */
export const hardestTension = value('cord.hardestTension', ['joint', 'event', 'air', 'age'], (use) =>
  use(isRare) ? use(peakTension) : use(windup).tautTension,
)
const axes = (use: Use<'joint'>, tautTension: number, slackTension: number) =>
  use.run(shaftForceOf, {
    arrangement: use(cord.arrangement),
    tautTension,
    slackTension,
    pinionRadius: use(pinionRadius),
    drumRadius: use(drumRadius),
    centreDistance: use(cord.centreDistance),
  })
/** Force of the cord on the shafts of pinion and drum, and its part along the line of both. */
const axisForces = value('cord.axisForces', ['joint', 'event', 'air', 'age'], (use) => {
  const { tautTension, slackTension } = use(windup)
  if (!use(isRare)) return axes(use, tautTension, slackTension)
  const hardest = use(hardestTension)
  return axes(use, hardest, use.run(slackBeside, { hardest, taut: tautTension, slack: slackTension }))
})
export const shaftForce = value('cord.shaftForce', ['joint', 'event', 'air', 'age'], (use) => use(axisForces).force)
export const alongAxes = value('cord.alongAxes', ['joint', 'event', 'air', 'age'], (use) => use(axisForces).alongCentres)
/** The same part at rest. */
export const alongAtRest = value('cord.alongAtRest', ['joint', 'air', 'age'], (use) => {
  const rest = use(pretension)
  return axes(use, rest, rest).alongCentres
})
