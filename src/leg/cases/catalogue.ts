import type { Evaluator } from '../../formula/index.js'
import { jumpPush, tipOverSlope } from '../../kinematics/index.js'
import { slopeLoadShare } from '../../structures/index.js'
import type { Prepared } from '../numbers.js'
import type { Stance } from './motion.js'

/** The load cases, in the order the report lists them. */
export const CASE_IDS = [
  'stand',
  'walk',
  'stall',
  'trot',
  'hop',
  'drop',
  'hotAfternoon',
  'coldMorning',
  'slope',
  'season',
  'shelf',
] as const
/** The name of a load case. */
export type CaseId = (typeof CASE_IDS)[number]

/** What happens in a load case, apart from forces. */
export interface LoadCase {
  readonly id: CaseId
  readonly title: string
  /** What happens, in one sentence. */
  readonly story: string
  /** How the foot is loaded, by the formulas it follows from; nothing where the leg is unloaded. */
  readonly stance: (leg: Prepared, of: Evaluator) => Stance | undefined
  /** Temperature of the air, K. */
  readonly air: (leg: Prepared) => number
  /** Air speed over the motors, m/s. */
  readonly wind: (leg: Prepared) => number
  /** Whether motors warm up in it, and how: held still with one phase worst, or turning. */
  readonly heating: 'none' | 'held' | 'moving'
  /** How long the motors are held from cold, s; until temperatures settle where silent. */
  readonly heldFor?: (leg: Prepared) => number
  /** Time under load that creep counts, s. */
  readonly duration: (leg: Prepared) => number
  /** Load cycles that fatigue counts. */
  readonly cycles: (leg: Prepared) => number
  /** How old the pretension is. */
  readonly age: 'new' | 'year'
}

const GRAVITY = 9.80665
/** Loads of a moment: the time materials' short-term strength stands for. */
const MOMENT = 1

/** Force of some of the legs that stop or push off the whole robot over a travel: constant over the travel, half a sine over time. */
const leaping = ({ x }: Prepared, of: Evaluator, height: number, feet: number): Stance => {
  const { totalForce } = of(jumpPush, {
    mass: x.robot.mass,
    jumpHeight: height,
    pushTravel: x.usage.landingTravel,
    gravity: GRAVITY,
  })
  return {
    ...walking({ x } as Prepared, 0),
    legShare: totalForce / (x.robot.mass * GRAVITY * feet),
    dutyFactor: 1,
    shape: 'halfSine',
    speed: 0,
    stepLength: 0,
    clearance: 0,
  }
}

const walking = ({ x }: Prepared, traction = x.usage.traction): Stance => ({
  gravity: GRAVITY,
  mass: x.robot.mass,
  legShare: 1 / x.robot.legs,
  dutyFactor: x.usage.walk.dutyFactor,
  shape: 'rectangular',
  traction,
  speed: x.usage.walk.speed,
  stepLength: x.usage.walk.stepLength,
  clearance: x.usage.walk.clearance,
  height: x.robot.standHeight,
})

/** Strides in a season. */
const strides = ({ x }: Prepared) => x.usage.stridesPerDay * x.usage.days
/** Time a foot stands in one walking stride. */
const stanceTime = ({ x }: Prepared) => x.usage.walk.stepLength / x.usage.walk.speed

const normal = ({ x }: Prepared) => x.environment.normalAir
const hot = ({ x }: Prepared) => x.environment.hotAir
const still = () => 0
const wind = ({ x }: Prepared) => x.environment.wind
const once = () => 1

/** Every load case. */
export const CASES: { readonly [I in CaseId]: LoadCase } = {
  stand: {
    id: 'stand',
    title: 'Stand',
    story: 'The robot stands on all its feet for hours.',
    stance: ({ x }) => ({
      gravity: GRAVITY,
      mass: x.robot.mass,
      legShare: 1 / x.robot.legs,
      dutyFactor: 1,
      shape: 'rectangular',
      traction: 0,
      speed: 0,
      stepLength: 0,
      clearance: 0,
      height: x.robot.standHeight,
    }),
    air: normal,
    wind: still,
    heating: 'held',
    duration: ({ x }) => x.usage.standingTime,
    cycles: once,
    age: 'new',
  },
  walk: {
    id: 'walk',
    title: 'Walk',
    story: 'A slow walk with the load, on an ordinary day, until temperatures settle.',
    stance: (leg) => walking(leg),
    air: normal,
    wind,
    heating: 'moving',
    duration: (leg) => leg.x.usage.walkingTime * leg.x.usage.walk.dutyFactor,
    cycles: once,
    age: 'new',
  },
  stall: {
    id: 'stall',
    title: 'Stall in hot still air',
    story:
      'The leg, cold until then, is blocked in the hardest pose of its walk in hot still air, until it is switched off after the stall time.',
    stance: (leg) => ({ ...walking(leg), blocked: true }),
    air: hot,
    wind: still,
    heating: 'held',
    heldFor: ({ x }) => x.usage.stallTime,
    duration: ({ x }) => x.usage.stallTime,
    cycles: once,
    age: 'new',
  },
  trot: {
    id: 'trot',
    title: 'Trot',
    story: 'A trot on diagonal pairs, the force on each foot rising and falling as half a sine.',
    stance: ({ x }) => ({
      ...walking({ x } as Prepared),
      dutyFactor: x.usage.trot.dutyFactor,
      shape: 'halfSine',
      speed: x.usage.trot.speed,
      stepLength: x.usage.trot.stepLength,
      clearance: x.usage.trot.clearance,
    }),
    air: normal,
    wind,
    heating: 'moving',
    duration: () => MOMENT,
    cycles: once,
    age: 'new',
  },
  hop: {
    id: 'hop',
    title: 'Hop',
    story: 'A hop on all feet: they push off and land over the landing travel, the force of each at its peak when the leg is most bent.',
    stance: (leg, of) => leaping(leg, of, leg.x.usage.hopHeight, leg.x.robot.legs),
    air: normal,
    wind: still,
    heating: 'none',
    duration: () => MOMENT,
    cycles: once,
    age: 'new',
  },
  drop: {
    id: 'drop',
    title: 'Drop',
    story: 'The robot is dropped on two feet and the legs give way under control.',
    // A landing is a push-off run backwards.
    stance: (leg, of) => leaping(leg, of, leg.x.usage.dropHeight, 2),
    air: normal,
    wind: still,
    heating: 'none',
    duration: () => MOMENT,
    cycles: once,
    age: 'new',
  },
  hotAfternoon: {
    id: 'hotAfternoon',
    title: 'Walk on a hot still afternoon',
    story: 'The walk, in hot still air, until temperatures settle.',
    stance: (leg) => walking(leg),
    air: hot,
    wind: still,
    heating: 'moving',
    duration: (leg) => leg.x.usage.walkingTime * leg.x.usage.walk.dutyFactor,
    cycles: once,
    age: 'new',
  },
  coldMorning: {
    id: 'coldMorning',
    title: 'Cold morning',
    story: 'The first steps on a cold morning: cord and prints have changed length, the motors are cold.',
    stance: (leg) => walking(leg),
    air: ({ x }) => x.environment.coldAir,
    wind: still,
    heating: 'none',
    duration: () => MOMENT,
    cycles: once,
    age: 'new',
  },
  slope: {
    id: 'slope',
    title: 'Carry up a slope',
    story: 'The walk, straight up the steepest slope, the rear legs carrying more than the front ones.',
    stance: (leg, of) => {
      const { robot, usage } = leg.x
      const tipOver = of(tipOverSlope, { marginToEdge: robot.hipSpacing / 2, height: robot.centreOfMassHeight ?? robot.standHeight })
      const rear = of(slopeLoadShare, { slope: usage.slope, tipOverSlope: tipOver, levelShare: 0.5 })
      return {
        ...walking(leg, Math.tan(usage.slope)),
        gravity: GRAVITY * Math.cos(usage.slope),
        legShare: (2 * rear) / robot.legs,
      }
    },
    air: normal,
    wind,
    heating: 'moving',
    duration: (leg) => leg.x.usage.walkingTime * leg.x.usage.walk.dutyFactor,
    cycles: once,
    age: 'new',
  },
  season: {
    id: 'season',
    title: 'A season of walking',
    story: 'Every stride of a season: fatigue, creep and relaxation, damp prints, an aged pretension.',
    stance: (leg) => walking(leg),
    air: normal,
    wind,
    heating: 'none',
    duration: (leg) => strides(leg) * stanceTime(leg),
    cycles: strides,
    age: 'year',
  },
  shelf: {
    id: 'shelf',
    title: 'A year on the shelf',
    story: 'The leg lies unloaded under its pretension.',
    stance: () => undefined,
    air: ({ x }) => x.usage.shelfTemperature,
    wind: still,
    heating: 'none',
    duration: ({ x }) => x.usage.shelfTime,
    cycles: once,
    age: 'new',
  },
}
