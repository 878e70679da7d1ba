import { activatedCreepFactor, pretensionForTorque } from '../../../../capstan/index.js'
import type { Check } from '../../../cases/check.js'
import { references } from '../../../leaves.js'
import { line, type Use, value } from '../../../run/index.js'
import { airTemperature, shelfTime } from '../../load/fields.js'
import { driveLoad } from '../../motion/values.js'
import { pretensionAfter, year } from '../pretension-left.js'
import * as cord from './fields.js'
import { drumRadius, pinionRadius } from './radii.js'
import { branchArc, geometry, loose, pretensionAsSet, slackTorque, slipTorque, travel } from './values.js'

const fibreStress = line(
  'stress in the fibre',
  { tension: 'force', breaking: 'force', strength: 'stress' },
  'stress',
  'tension / breaking · strength',
  (x) => (x.tension / x.breaking) * x.strength,
)

const yearsOf = line(
  'years at room temperature',
  { hotter: 'ratio', time: 'time', year: 'time', most: 'ratio' },
  'ratio',
  'min(hotter · (time / year), most)',
  (x) => Math.min(x.hotter * (x.time / x.year), x.most),
)

const most = line('largest torque of walking', { torques: { list: 'torque' } }, 'torque', 'max(torques)', (x) => Math.max(...x.torques))

/** What a leg taken from the shelf must do: walk in every direction, on the level and on the slope. */
const afterShelf = references('event.afterShelf', [], 'event', () => ['walk', 'walkBack', 'slope', 'slopeDown', 'slopeAcross'])

const walkingTorque = value('cord.walkingTorque', ['joint'], (use) =>
  use.run(most, { torques: use(afterShelf).map((event) => use.at(driveLoad, { event })) }),
)

/** Pretension without which a span hangs slack in a walk of any direction, on the level and on the slope. */
export const pretensionNeeded = value('cord.pretensionNeeded', ['joint'], (use) => {
  const { span, pinionWrap } = use(geometry)
  return use.run(pretensionForTorque, {
    torque: use(walkingTorque),
    pinionRadius: use(pinionRadius),
    drumRadius: use(drumRadius),
    span,
    pinionWrap,
    drumWrap: use(branchArc),
    travel: use(travel),
    friction: use(cord.friction),
    hold: use(cord.hold),
    requiredReserve: 1,
  }).pretension
})

const creepFactor = (use: Use<'joint' | 'air'>): number => {
  if (use(cord.creepOfFibre) !== 'activated') return 1
  const stress = use.run(fibreStress, {
    tension: use(pretensionAsSet),
    breaking: use(cord.breakingStrength),
    strength: use(cord.strengthOfFibre),
  })
  return use.run(activatedCreepFactor, {
    fromTemperature: use(cord.relaxationReference),
    toTemperature: use(airTemperature),
    fromStress: stress,
    toStress: stress,
    activationEnergy: use(cord.activationEnergy),
    activationVolume: use(cord.activationVolume),
  })
}

const pretensionAfterShelf = value('cord.pretensionAfterShelf', ['joint', 'air'], (use) => {
  const years = use.run(yearsOf, { hotter: creepFactor(use), time: use(shelfTime), year: use(year), most: use(cord.mostYears) })
  return pretensionAfter(use, use(pretensionAsSet), use(cord.pretensionLeft), years)
})

const CLAMPED = 'the cord is clamped in the middle of the pinion'

/** Why a clamped cord cannot slip. */
export const unlessClamped = value('cord.unlessClamped', ['joint'], (use) => (use(cord.hold) === 'clampedMidPinion' ? CLAMPED : undefined))

/** Checks that the cord of each drive holds the torque: slack, slip, and what a year on the shelf leaves. */
export const holdingChecks: readonly Check[] = [
  {
    id: 'cord.slack',
    part: 'cord drive',
    mode: 'loses the tension of its slack span',
    consequence: 'fails to work',
    kind: 'torque',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: driveLoad,
    capacity: slackTorque,
    remark: value('cord.looseRemark', ['joint', 'air', 'age'], (use) =>
      use(loose) ? 'temperature and age leave no pretension at all: the cord is loose' : undefined,
    ),
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the slack span has no tension, with the pretension of this temperature and age',
    remedy: 'more pretension, a larger drum, or a cord and frame that change length alike when heated',
  },
  {
    id: 'cord.slip',
    part: 'cord on the pinion',
    mode: 'slips',
    consequence: 'fails to work',
    kind: 'torque',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: driveLoad,
    capacity: slipTorque,
    unless: unlessClamped,
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the cord slips around its whole arc on the pinion',
    remedy: 'clamp the cord in the middle of the pinion, one more wrap, or more pretension',
  },
  {
    id: 'cord.shelf',
    part: 'cord drive',
    mode: 'has lost the pretension for walking after a year on the shelf',
    consequence: 'fails to work',
    kind: 'force',
    scope: 'joint',
    when: ['stored'],
    demand: pretensionNeeded,
    capacity: pretensionAfterShelf,
    unless: value('cord.unlessUnloaded', ['joint'], (use) =>
      use(walkingTorque) === 0 ? 'walking needs no torque at this joint' : undefined,
    ),
    demandIs: 'the pretension for the torque of walking, forward or backward, up or down the slope, whichever needs most',
    capacityIs: 'the pretension left after the time on the shelf at its temperature',
    remedy: 'release the tension for storage, tension again before use, or more pretension',
  },
]
