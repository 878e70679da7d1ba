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
  /** How the foot is loaded; nothing where the leg is unloaded. */
  readonly stance: (leg: Prepared) => Stance | undefined
  /** Temperature of the air, K. */
  readonly air: (leg: Prepared) => number
  /** Air speed over the motors, m/s. */
  readonly wind: (leg: Prepared) => number
  /** Whether motors warm up in it, and how: held still with one phase worst, or turning. */
  readonly heating: 'none' | 'held' | 'moving'
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
    stance: walking,
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
    story: 'The leg holds the hardest pose of its walk without moving, in hot still air, until temperatures settle.',
    stance: walking,
    air: hot,
    wind: still,
    heating: 'held',
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
    story: 'Hops on all feet, the force of each foot at its peak when the leg is most bent.',
    stance: ({ x }) => ({
      ...walking({ x } as Prepared, 0),
      dutyFactor: x.usage.hopDutyFactor,
      shape: 'halfSine',
      speed: 0,
      stepLength: 0,
      clearance: 0,
    }),
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
    stance: ({ x }) => ({
      ...walking({ x } as Prepared, 0),
      // Two feet stop the fall over the landing travel: mean force m g (1 + h / s), half a sine over time and travel alike.
      legShare: 0.5 * (1 + x.usage.dropHeight / x.usage.landingTravel),
      dutyFactor: 1,
      shape: 'halfSine',
      speed: 0,
      stepLength: 0,
      clearance: 0,
    }),
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
    stance: walking,
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
    stance: walking,
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
    stance: (leg) => {
      const { slope } = leg.x.usage
      const height = leg.x.robot.centreOfMassHeight ?? leg.x.robot.standHeight
      const rear = 0.5 + (height / leg.x.robot.hipSpacing) * Math.tan(slope)
      return { ...walking(leg, Math.tan(slope)), gravity: GRAVITY * Math.cos(slope), legShare: (2 * Math.min(1, rear)) / leg.x.robot.legs }
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
    stance: walking,
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
