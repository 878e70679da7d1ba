import type { EventId } from '../../cases/events.js'
import { line, type Use, type Value, value } from '../../run/index.js'
import * as load from './fields.js'

type Read = Use<never>

const underLoad = line.product('time under load', { time: 'time', dutyFactor: 'ratio' }, 'time')
const stancePeriod = line.quotient('time of one stance', { stepLength: 'length', speed: 'velocity' }, 'time')
const seasonStrides = line.product('strides of a season', { perDay: 'count', days: 'count' }, 'count')
const seasonTime = line.product('time under load in a season', { strides: 'count', stance: 'time' }, 'time')

/** Time of one stance of the walk. */
export const walkStanceTime = value('load.walkStanceTime', [], (use) =>
  use.run(stancePeriod, { stepLength: use(load.walk.stepLength), speed: use(load.walk.speed) }),
)
/** Strides of a season. */
export const strides = value('load.strides', [], (use) => use.run(seasonStrides, { perDay: use(load.stridesPerDay), days: use(load.days) }))

const aWalk = (use: Read) => use.run(underLoad, { time: use(load.walkingTime), dutyFactor: use(load.walk.dutyFactor) })
const aMoment = (use: Read) => use(load.moment)
const DURATIONS: { readonly [E in EventId]: (use: Read) => number } = {
  stand: (use) => use(load.standingTime),
  walk: aWalk,
  stall: (use) => use(load.stallTime),
  trot: aMoment,
  hop: aMoment,
  drop: aMoment,
  firstSteps: aMoment,
  slope: aWalk,
  slopeDown: aWalk,
  slopeAcross: aWalk,
  walkBack: aWalk,
  stallBack: (use) => use(load.stallTime),
  hopEnd: aMoment,
  dropEnd: aMoment,
  season: (use) => use.run(seasonTime, { strides: use(strides), stance: use(walkStanceTime) }),
  seasonBack: (use) => use.run(seasonTime, { strides: use(strides), stance: use(walkStanceTime) }),
  firstStepsBack: aMoment,
  shelf: (use) => use(load.shelfTime),
}

/**
 * Time under load that creep counts, at the largest force of the event. Creep slows down with time, so that a load that comes and goes never creeps more than
 * the largest one that stays for all the time of the loads.
 */
export const duration = value('load.duration', ['event'], (use, at) => DURATIONS[use.nameOf('event', at.event) as EventId](use))
/** Load cycles that fatigue counts. */
export const cycles: Value<number, 'event'> = value('load.cycles', ['event'], (use, at) =>
  ['season', 'seasonBack'].includes(use.nameOf('event', at.event)) ? use(strides) : use(load.once),
)
/** How long a motor is held in a stall; absent where it is held until temperatures are steady. */
export const heldFor = value('load.heldFor', ['event'], (use, at) =>
  ['stall', 'stallBack'].includes(use.nameOf('event', at.event)) ? use(load.stallTime) : undefined,
)
