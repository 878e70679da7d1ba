import { jumpPush } from '../../../kinematics/index.js'
import { slopeLoadShare } from '../../../structures/index.js'
import type { EventId, StanceId } from '../../cases/events.js'
import { line, type Use, type Value, value } from '../../run/index.js'
import * as robot from '../robot/fields.js'
import { endOverMean, legShare, levelShare, levelSideShare, overMean, sideOverMean, tipOverAcross, tipOverAlong } from '../robot/values.js'
import * as load from './fields.js'

/** How the foot is loaded while the body passes over it. */
export interface Stance {
  /** Height of the hip axis above the ground. */
  readonly height: number
  readonly gravity: number
  /** Part of the weight this leg carries, averaged over the stride. */
  readonly legShare: number
  readonly dutyFactor: number
  readonly shape: 'rectangular' | 'halfSine'
  /** Force along the ground over force upright: the most braking (negative) and the most pushing. */
  readonly tractionLowest: number
  readonly tractionHighest: number
  /** Force across the walk along the ground over force upright: on a slope that is walked across. */
  readonly lateral: number
  readonly speed: number
  readonly stepLength: number
  readonly clearance: number
  /** Whether the leg is blocked somewhere in its stance: the poses of a step, but nothing moves. */
  readonly blocked: boolean
}

const pairShare = line(
  'share of one leg of a pair',
  { pair: 'ratio', legs: 'count', side: 'ratio' },
  'ratio',
  '2 · pair / legs · side',
  (x) => ((2 * x.pair) / x.legs) * x.side,
)
const opposite = line('braking', { traction: 'ratio' }, 'ratio', '−traction', ({ traction }) => -traction)
const landed = line(
  'height at the end of a landing',
  { touchDown: 'length', travel: 'length' },
  'length',
  'touchDown − travel',
  (x) => x.touchDown - x.travel,
)
const uphillTraction = line('traction up a slope', { slope: 'angle' }, 'ratio', 'tan(slope)', ({ slope }) => Math.tan(slope))
const acrossSlope = line(
  'gravity across a slope',
  { gravity: 'acceleration', slope: 'angle' },
  'acceleration',
  'gravity · cos(slope)',
  (x) => x.gravity * Math.cos(x.slope),
)
const landingShare = line(
  'share of one foot of a landing force',
  { force: 'force', mass: 'mass', gravity: 'acceleration', feet: 'count', over: 'ratio' },
  'ratio',
  'over · force / (mass · gravity · feet)',
  (x) => (x.over * x.force) / (x.mass * x.gravity * x.feet),
)

type Read = Use<never>

const walking = (use: Read): Stance => ({
  height: use(robot.standHeight),
  gravity: use(robot.gravity),
  legShare: use(legShare),
  dutyFactor: use(load.walk.dutyFactor),
  shape: 'rectangular',
  tractionLowest: use(load.walk.pushing),
  tractionHighest: use(load.walk.pushing),
  lateral: 0,
  speed: use(load.walk.speed),
  stepLength: use(load.walk.stepLength),
  clearance: use(load.walk.clearance),
  blocked: false,
})

/** Braking, or walking backward: the force along the ground is the other way round. */
function backward(use: Read): Stance {
  const traction = use(load.walk.braking)
  return { ...walking(use), tractionLowest: traction, tractionHighest: traction }
}

const held = (use: Read, shape: Stance['shape'], legShare: number, height: number): Stance => ({
  height,
  gravity: use(robot.gravity),
  legShare,
  dutyFactor: 1,
  shape,
  tractionLowest: use(load.noTraction),
  tractionHighest: use(load.noTraction),
  lateral: 0,
  speed: 0,
  stepLength: 0,
  clearance: 0,
  blocked: false,
})

/** A landing or a push-off: constant force over the travel. The knee torque rises as the leg folds, so its end is the hardest pose. */
function leaping(use: Read, leap: typeof load.hop, pose: 'touchDown' | 'folded'): Stance {
  const [mass, gravity, travel, feet] = [use(robot.mass), use(robot.gravity), use(leap.travel), use(leap.feet)]
  const { totalForce: force } = use.run(jumpPush, { mass, jumpHeight: use(leap.height), pushTravel: travel, gravity })
  const touchDown = use(leap.touchDownHeight) ?? use(robot.standHeight)
  if (!(travel < touchDown)) throw new RangeError('the landing travel must be less than the height of the hip at touch-down')
  const height = pose === 'touchDown' ? touchDown : use.run(landed, { touchDown, travel })
  const traction = use(leap.traction)
  return {
    ...held(use, 'halfSine', use.run(landingShare, { force, mass, gravity, feet, over: use(overMean) }), height),
    tractionLowest: use.run(opposite, { traction }),
    tractionHighest: traction,
  }
}

function onSlope(use: Read, way: 'up' | 'down'): Stance {
  const [slope, legs] = [use(way === 'up' ? load.slope : load.slopeDown), use(robot.legs)]
  const pair = use.run(slopeLoadShare, { slope, tipOverSlope: use(tipOverAlong), levelShare: use(levelShare) })
  const uphill = use.run(uphillTraction, { slope })
  const traction = way === 'up' ? uphill : use.run(opposite, { traction: uphill })
  return {
    ...walking(use),
    gravity: use.run(acrossSlope, { gravity: use(robot.gravity), slope }),
    legShare: use.run(pairShare, { pair, legs, side: use(sideOverMean) }),
    tractionLowest: traction,
    tractionHighest: traction,
  }
}

/** Across a slope the lower side carries more, and every foot is held sideways. */
function acrossSlopeStance(use: Read): Stance {
  const slope = use(load.slopeAcross)
  const pair = use.run(slopeLoadShare, { slope, tipOverSlope: use(tipOverAcross), levelShare: use(levelSideShare) })
  return {
    ...walking(use),
    gravity: use.run(acrossSlope, { gravity: use(robot.gravity), slope }),
    legShare: use.run(pairShare, { pair, legs: use(robot.legs), side: use(endOverMean) }),
    tractionLowest: use(load.walk.braking),
    lateral: use.run(uphillTraction, { slope }),
  }
}

const STANCES: { readonly [S in StanceId]: (use: Read) => Stance } = {
  stand: (use) => held(use, 'rectangular', use(legShare), use(robot.standHeight)),
  walk: walking,
  walkBack: backward,
  blocked: (use) => ({ ...walking(use), blocked: true }),
  blockedBack: (use) => ({ ...backward(use), blocked: true }),
  // Braking and pushing in either half of the stance.
  trot: (use) => ({
    ...walking(use),
    dutyFactor: use(load.trot.dutyFactor),
    shape: 'halfSine',
    tractionLowest: use(load.trot.braking),
    tractionHighest: use(load.trot.pushing),
    speed: use(load.trot.speed),
    stepLength: use(load.trot.stepLength),
    clearance: use(load.trot.clearance),
  }),
  hop: (use) => leaping(use, load.hop, 'touchDown'),
  hopEnd: (use) => leaping(use, load.hop, 'folded'),
  drop: (use) => leaping(use, load.drop, 'touchDown'),
  dropEnd: (use) => leaping(use, load.drop, 'folded'),
  slope: (use) => onSlope(use, 'up'),
  slopeDown: (use) => onSlope(use, 'down'),
  slopeAcross: acrossSlopeStance,
  unloaded: (use) => held(use, 'rectangular', 0, use(robot.standHeight)),
}

/** The loading of the foot in a stance. */
export const stance = value('load.stance', ['stance'], (use, at) => STANCES[use.nameOf('stance', at.stance) as StanceId](use))

const underLoad = line('time under load', { time: 'time', dutyFactor: 'ratio' }, 'time', 'time · dutyFactor', (x) => x.time * x.dutyFactor)
const stancePeriod = line(
  'time of one stance',
  { stepLength: 'length', speed: 'velocity' },
  'time',
  'stepLength / speed',
  (x) => x.stepLength / x.speed,
)
const seasonStrides = line('strides of a season', { perDay: 'count', days: 'count' }, 'count', 'perDay · days', (x) => x.perDay * x.days)
const seasonTime = line(
  'time under load in a season',
  { strides: 'count', stance: 'time' },
  'time',
  'strides · stance',
  (x) => x.strides * x.stance,
)

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

/** Time under load that creep counts. */
export const duration = value('load.duration', ['event'], (use, at) => DURATIONS[use.nameOf('event', at.event) as EventId](use))
/** Load cycles that fatigue counts. */
export const cycles: Value<number, 'event'> = value('load.cycles', ['event'], (use, at) =>
  ['season', 'seasonBack'].includes(use.nameOf('event', at.event)) ? use(strides) : use(load.once),
)
/** How long a motor is held from cold; absent where it is held until temperatures are steady. */
export const heldFor = value('load.heldFor', ['event'], (use, at) =>
  ['stall', 'stallBack'].includes(use.nameOf('event', at.event)) ? use(load.stallTime) : undefined,
)
