import { jumpPush } from '../../../kinematics/index.js'
import type { StanceId } from '../../cases/events.js'
import { NoValueError } from '../../no-value.js'
import { line, type Use, value } from '../../run/index.js'
import * as robot from '../robot/fields.js'
import { legShare, overMean } from '../robot/values.js'
import * as load from './fields.js'
import { acrossShares, downhillShares, levelShares, uphillShares } from './foot-shares.js'

/** How the foot is loaded while the body passes over it. */
export interface Stance {
  /** Height of the hip axis above the ground. */
  readonly height: number
  readonly gravity: number
  /** Part of the weight this leg carries, averaged over the stride. */
  readonly legShare: number
  readonly dutyFactor: number
  readonly shape: 'rectangular' | 'halfSine'
  /** Parts of the weight on a foot over its stance, as the weight passes from foot to foot (`walkingShares`); absent where the shape tells. */
  readonly shares: readonly number[] | undefined
  /** Force along the ground over force upright: the most braking (negative) and the most pushing. */
  readonly tractionLowest: number
  readonly tractionHighest: number
  /** Force across the walk along the ground over force upright, of either side: of a push, an oblique landing, a slope that is walked across. */
  readonly lateral: number
  readonly speed: number
  readonly stepLength: number
  readonly clearance: number
  /** Whether the leg is blocked somewhere in its stance: the poses of a step, but nothing moves. */
  readonly blocked: boolean
}

const opposite = line('braking', { traction: 'ratio' }, 'ratio', '−traction', ({ traction }) => -traction)
const landed = line.difference('height at the end of a landing', { touchDown: 'length', travel: 'length' }, 'length')
const uphillTraction = line('traction up a slope', { slope: 'angle' }, 'ratio', 'tan(slope)', ({ slope }) => Math.tan(slope))
const sidewaysOnSlope = line.sum('force to the side across a slope', { slope: 'ratio', push: 'ratio' }, 'ratio')
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
  shares: use(levelShares),
  tractionLowest: use(load.walk.pushing),
  tractionHighest: use(load.walk.pushing),
  lateral: use(load.walk.lateral),
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
  shares: undefined,
  tractionLowest: use(load.noTraction),
  tractionHighest: use(load.noTraction),
  lateral: use(load.noLateral),
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
  if (!(travel < touchDown)) throw new NoValueError('the landing travel must be less than the height of the hip at touch-down')
  const height = pose === 'touchDown' ? touchDown : use.run(landed, { touchDown, travel })
  const traction = use(leap.traction)
  return {
    ...held(use, 'halfSine', use.run(landingShare, { force, mass, gravity, feet, over: use(overMean) }), height),
    tractionLowest: use.run(opposite, { traction }),
    tractionHighest: traction,
    lateral: use(leap.lateral),
  }
}

function onSlope(use: Read, way: 'up' | 'down'): Stance {
  const slope = use(way === 'up' ? load.slope : load.slopeDown)
  const uphill = use.run(uphillTraction, { slope })
  const traction = way === 'up' ? uphill : use.run(opposite, { traction: uphill })
  return {
    ...walking(use),
    gravity: use.run(acrossSlope, { gravity: use(robot.gravity), slope }),
    shares: use(way === 'up' ? uphillShares : downhillShares),
    tractionLowest: traction,
    tractionHighest: traction,
  }
}

/** Across a slope the lower side carries more, and every foot is held sideways. */
function acrossSlopeStance(use: Read): Stance {
  const slope = use(load.slopeAcross)
  return {
    ...walking(use),
    gravity: use.run(acrossSlope, { gravity: use(robot.gravity), slope }),
    shares: use(acrossShares),
    tractionLowest: use(load.walk.braking),
    lateral: use.run(sidewaysOnSlope, { slope: use.run(uphillTraction, { slope }), push: use(load.walk.lateral) }),
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
    shares: undefined,
    tractionLowest: use(load.trot.braking),
    tractionHighest: use(load.trot.pushing),
    lateral: use(load.trot.lateral),
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
