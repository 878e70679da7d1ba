/** Loading of the foot: which stride or pose, and how hard. */
export const STANCE_IDS = [
  'stand',
  'walk',
  'walkBack',
  'blocked',
  'blockedBack',
  'trot',
  'hop',
  'hopEnd',
  'drop',
  'dropEnd',
  'slope',
  'slopeDown',
  'slopeAcross',
  'unloaded',
] as const
/** The name of a stance. */
export type StanceId = (typeof STANCE_IDS)[number]

/** Air round the leg. */
export const AIR_IDS = ['normal', 'normalStill', 'hot', 'cold', 'shelf'] as const
/** The name of an air. */
export type AirId = (typeof AIR_IDS)[number]

/** Age of what relaxes: pretension of cords and belts. */
export const AGE_IDS = ['new', 'year'] as const
/** The name of an age. */
export type AgeId = (typeof AGE_IDS)[number]

/** Properties of an event. Checks apply to events by these tags, never by name. */
export type Tag =
  /** The foot carries the robot. */
  | 'bearsLoad'
  /** The motors warm up, and do so until temperatures are steady. */
  | 'warms'
  | 'lasting'
  /** The joints turn. */
  | 'moves'
  /** A load of one moment that strength must bear once; a hard one of a landing, push or stall; a shock. */
  | 'oneMoment'
  | 'rare'
  | 'shock'
  /** Loads of every day. */
  | 'daily'
  /** The strides of a season. */
  | 'repeats'
  /** The pretension acts for a long time. */
  | 'keepsTension'
  /** The leg lies on the shelf. */
  | 'stored'
  /** The leg as built, standing: geometry, tightening, zones of prints. */
  | 'asBuilt'
  /** An ordinary walk. */
  | 'walks'
  /** The coldest state, when fits are tightest. */
  | 'coldFit'
  /** The foot pushes along the ground. */
  | 'pushes'
  /** Nobody would expect a touch to be dangerous. */
  | 'inReach'
  /** The robot stands on a slope. */
  | 'slopes'

/** An event: how the foot is loaded, how motors warm up, what applies. */
export interface Event {
  readonly stance: StanceId
  /** Held still with one phase worst, turning, or none of its own. */
  readonly heating: 'none' | 'held' | 'moving'
  /** Walks that it comes in the middle of: motors are as warm as these leave them. Without any they are as cold as the air. */
  readonly after?: readonly string[]
  readonly tags: readonly Tag[]
}

/** A landing or a stall comes in the middle of a walk, one way or the other. */
const WALKS = ['walk', 'walkBack'] as const

/** The events. */
export const EVENTS = {
  stand: { stance: 'stand', heating: 'held', tags: ['bearsLoad', 'warms', 'lasting', 'daily', 'asBuilt', 'inReach'] },
  walk: {
    stance: 'walk',
    heating: 'moving',
    tags: ['bearsLoad', 'warms', 'lasting', 'moves', 'oneMoment', 'daily', 'walks', 'pushes', 'inReach'],
  },
  stall: { stance: 'blocked', heating: 'held', after: WALKS, tags: ['bearsLoad', 'warms', 'oneMoment', 'rare', 'pushes', 'inReach'] },
  trot: { stance: 'trot', heating: 'moving', tags: ['bearsLoad', 'warms', 'lasting', 'moves', 'oneMoment', 'daily', 'pushes'] },
  hop: { stance: 'hop', heating: 'none', after: WALKS, tags: ['bearsLoad', 'oneMoment', 'rare', 'shock'] },
  drop: { stance: 'drop', heating: 'none', after: WALKS, tags: ['bearsLoad', 'oneMoment', 'rare', 'shock'] },
  walkBack: {
    stance: 'walkBack',
    heating: 'moving',
    tags: ['bearsLoad', 'warms', 'lasting', 'moves', 'oneMoment', 'daily', 'walks', 'pushes', 'inReach'],
  },
  stallBack: {
    stance: 'blockedBack',
    heating: 'held',
    after: WALKS,
    tags: ['bearsLoad', 'warms', 'oneMoment', 'rare', 'pushes', 'inReach'],
  },
  hopEnd: { stance: 'hopEnd', heating: 'none', after: WALKS, tags: ['bearsLoad', 'oneMoment', 'rare', 'shock'] },
  dropEnd: { stance: 'dropEnd', heating: 'none', after: WALKS, tags: ['bearsLoad', 'oneMoment', 'rare', 'shock'] },
  firstSteps: { stance: 'walk', heating: 'none', tags: ['bearsLoad', 'oneMoment', 'coldFit', 'pushes'] },
  slope: { stance: 'slope', heating: 'moving', tags: ['bearsLoad', 'warms', 'lasting', 'moves', 'oneMoment', 'daily', 'slopes', 'pushes'] },
  slopeDown: {
    stance: 'slopeDown',
    heating: 'moving',
    tags: ['bearsLoad', 'warms', 'lasting', 'moves', 'oneMoment', 'daily', 'slopes', 'pushes'],
  },
  slopeAcross: {
    stance: 'slopeAcross',
    heating: 'moving',
    tags: ['bearsLoad', 'warms', 'lasting', 'moves', 'oneMoment', 'daily', 'slopes', 'pushes'],
  },
  season: { stance: 'walk', heating: 'none', after: ['walk'], tags: ['bearsLoad', 'moves', 'repeats', 'keepsTension', 'pushes'] },
  seasonBack: {
    stance: 'walkBack',
    heating: 'none',
    after: ['walkBack'],
    tags: ['bearsLoad', 'moves', 'repeats', 'keepsTension', 'pushes'],
  },
  firstStepsBack: { stance: 'walkBack', heating: 'none', tags: ['bearsLoad', 'oneMoment', 'coldFit', 'pushes'] },
  shelf: { stance: 'unloaded', heating: 'none', tags: ['keepsTension', 'stored'] },
} as const satisfies Record<string, Event>
/** The name of an event. */
export type EventId = keyof typeof EVENTS
/** The events by name. */
export const EVENT_IDS = Object.keys(EVENTS) as EventId[]

/** A load case: an event in an air, as assembled or a year later. */
export interface LoadCase {
  readonly title: string
  /** The event in one sentence. */
  readonly story: string
  readonly event: EventId
  readonly air: AirId
  readonly age: AgeId
}

/** The load cases, in the order of the report. */
export const LOAD_CASES = {
  stand: {
    title: 'Stand',
    story: 'The robot stands on all its feet for hours.',
    event: 'stand',
    air: 'normalStill',
    age: 'new',
  },
  walk: {
    title: 'Walk',
    story: 'A slow walk with the load, on an ordinary day, until temperatures settle.',
    event: 'walk',
    air: 'normal',
    age: 'new',
  },
  stall: {
    title: 'Stall in hot still air',
    story:
      'The leg, as warm as its walk has made it, is blocked in the hardest pose of the walk in hot still air, until it is switched off after the stall time.',
    event: 'stall',
    air: 'hot',
    age: 'new',
  },
  trot: {
    title: 'Trot',
    story: 'A trot on diagonal pairs, the force on each foot rising and falling as half a sine.',
    event: 'trot',
    air: 'normal',
    age: 'new',
  },
  hop: {
    title: 'Hop',
    story: 'A hop on all feet, at touch-down: they push off and land over the landing travel.',
    event: 'hop',
    air: 'normalStill',
    age: 'new',
  },
  drop: {
    title: 'Drop',
    story:
      'The robot is dropped on two feet, and the legs fold under control over the landing travel. The most bent pose at its end decides.',
    event: 'drop',
    air: 'normalStill',
    age: 'new',
  },
  hotAfternoon: {
    title: 'Walk on a hot still afternoon',
    story: 'The walk, in hot still air, until temperatures settle.',
    event: 'walk',
    air: 'hot',
    age: 'new',
  },
  coldMorning: {
    title: 'Cold morning',
    story: 'The first steps on a cold morning: all parts have changed length, the motors are cold.',
    event: 'firstSteps',
    air: 'cold',
    age: 'new',
  },
  slope: {
    title: 'Carry up a slope',
    story: 'The walk, straight up the steepest slope, the rear legs carrying more than the front ones.',
    event: 'slope',
    air: 'normal',
    age: 'new',
  },
  slopeDown: {
    title: 'Carry down a slope',
    story: 'The walk, straight down the steepest slope, the front legs carrying more than the rear ones and braking.',
    event: 'slopeDown',
    air: 'normal',
    age: 'new',
  },
  slopeAcross: {
    title: 'Walk across a slope',
    story:
      'The walk across the steepest slope, forward and backward, the lower legs carrying more than the upper ones and all held sideways.',
    event: 'slopeAcross',
    air: 'normal',
    age: 'new',
  },
  walkBack: {
    title: 'Walk backward',
    story: 'The walk with the force along the ground the other way round: braking, or walking backward.',
    event: 'walkBack',
    air: 'normal',
    age: 'new',
  },
  stallBack: {
    title: 'Stall backward in hot still air',
    story:
      'The leg, as warm as its walk has made it, is blocked while it pushes backward in hot still air, until it is switched off after the stall time.',
    event: 'stallBack',
    air: 'hot',
    age: 'new',
  },
  landing: {
    title: 'End of a landing',
    story: 'The drop, with the leg most folded at the end of the landing travel.',
    event: 'dropEnd',
    air: 'normalStill',
    age: 'new',
  },
  hotStand: {
    title: 'Stand on a hot still afternoon',
    story: 'The robot stands on all its feet for hours, in hot still air.',
    event: 'stand',
    air: 'hot',
    age: 'new',
  },
  hotWalkBack: {
    title: 'Walk backward on a hot still afternoon',
    story: 'The walk backward, in hot still air, until temperatures settle.',
    event: 'walkBack',
    air: 'hot',
    age: 'new',
  },
  hotSlope: {
    title: 'Carry up a slope in hot still air',
    story: 'The walk up the steepest slope in hot still air, until temperatures settle.',
    event: 'slope',
    air: 'hot',
    age: 'new',
  },
  hotSlopeDown: {
    title: 'Carry down a slope in hot still air',
    story: 'The walk down the steepest slope in hot still air, until temperatures settle.',
    event: 'slopeDown',
    air: 'hot',
    age: 'new',
  },
  hotSlopeAcross: {
    title: 'Walk across a slope in hot still air',
    story: 'The walk across the steepest slope in hot still air, until temperatures settle.',
    event: 'slopeAcross',
    air: 'hot',
    age: 'new',
  },
  hotTrot: {
    title: 'Trot in hot still air',
    story: 'The trot, in hot still air, until temperatures settle.',
    event: 'trot',
    air: 'hot',
    age: 'new',
  },
  hotDrop: {
    title: 'End of a landing in hot air, as assembled',
    story: 'The drop in hot air, before anything has relaxed, with the leg most folded.',
    event: 'dropEnd',
    air: 'hot',
    age: 'new',
  },
  coldSteps: {
    title: 'Cold morning, after a year',
    story: 'The first steps on a cold morning, a year after assembly.',
    event: 'firstSteps',
    air: 'cold',
    age: 'year',
  },
  coldStepsBack: {
    title: 'Cold morning, walking backward, after a year',
    story: 'The first steps on a cold morning, backward, a year after assembly.',
    event: 'firstStepsBack',
    air: 'cold',
    age: 'year',
  },
  seasonBack: {
    title: 'A season of walking backward',
    story: 'Every stride of a season with the force along the ground the other way round.',
    event: 'seasonBack',
    air: 'normal',
    age: 'new',
  },
  coldTrot: {
    title: 'Trot in the cold, after a year',
    story: 'The trot on a cold morning, a year after assembly.',
    event: 'trot',
    air: 'cold',
    age: 'year',
  },
  coldSlope: {
    title: 'Carry up a slope in the cold, after a year',
    story: 'The walk up the steepest slope on a cold morning, a year after assembly.',
    event: 'slope',
    air: 'cold',
    age: 'year',
  },
  coldSlopeDown: {
    title: 'Carry down a slope in the cold, after a year',
    story: 'The walk down the steepest slope on a cold morning, a year after assembly.',
    event: 'slopeDown',
    air: 'cold',
    age: 'year',
  },
  coldSlopeAcross: {
    title: 'Walk across a slope in the cold, after a year',
    story: 'The walk across the steepest slope on a cold morning, a year after assembly.',
    event: 'slopeAcross',
    air: 'cold',
    age: 'year',
  },
  coldHop: {
    title: 'End of a hop in the cold, after a year',
    story: 'The hop on a cold morning, a year after assembly, with the leg most folded.',
    event: 'hopEnd',
    air: 'cold',
    age: 'year',
  },
  coldDrop: {
    title: 'End of a landing in the cold, after a year',
    story: 'The drop on a cold morning, a year after assembly, with the leg most folded.',
    event: 'dropEnd',
    air: 'cold',
    age: 'year',
  },
  season: {
    title: 'A season of walking',
    story: 'Every stride of a season: fatigue, creep and relaxation, damp prints. What has relaxed is tightened again.',
    event: 'season',
    air: 'normal',
    age: 'new',
  },
  shelf: {
    title: 'A year on the shelf',
    story: 'The leg lies unloaded, and what is pressed, clamped or tensioned relaxes.',
    event: 'shelf',
    air: 'shelf',
    age: 'new',
  },
} as const satisfies Record<string, LoadCase>
/** The name of a load case. */
export type CaseId = keyof typeof LOAD_CASES
/** All load cases by name, in the order of the report: those of an assessment that names none. */
export const ALL_CASE_IDS = Object.keys(LOAD_CASES) as CaseId[]
/**
 * One load case of each sort, for a first look in half the time. A leg that passes these alone may fail where cold, heat and age come together, where
 * the ground pulls the other way, or at the end of a landing.
 */
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
] as const satisfies readonly CaseId[]
