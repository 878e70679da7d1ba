import { type AirId, EVENTS, type Event } from '../../cases/events.js'
import { band, field, optional, reference, references, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { NoValueError } from '../../no-value.js'
import { airNamed, gaitNamed, partOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

type EventKind = LegNumbers['loadCases']['events'][string]['kind']
/** An event of the document by name. Throws where it is of another kind. */
function eventOf<K extends EventKind>({ loadCases }: LegNumbers, name: string, kind: K) {
  const event = partOf(loadCases.events, name, `event called ${name}`)
  if (event.kind === kind) return event as Extract<typeof event, { readonly kind: K }>
  throw new NoValueError(`the event ${name} is no ${kind}`)
}
const ageOf = ({ loadCases }: LegNumbers, name: string) => partOf(loadCases.ages, name, `age called ${name}`)

const temperature = 'temperature'
export const assemblyTemperature = field('environment.assemblyTemperature', [], temperature, (x) => x.environment.assemblyTemperature)
export const humidity = field('environment.humidity', [], 'ratio', (x) => x.environment.humidity)
export const altitude = field('environment.altitude', [], 'length', (x) => x.environment.altitude)
export const coolingFactor = band(
  'environment.coolingFactor',
  'cooling by air over that of the formulas',
  [],
  'hold a known current for half an hour and log mount and can temperature',
  (x) => x.environment.coolingFactor,
)

/** An air of the graph as the document has it: the normal one stands for its still form too. */
const airOf = (x: LegNumbers, air: AirId) => airNamed(x, air === 'normalStill' ? 'normal' : air)
/** Temperature of the air. */
export const airTemperature = field('air.temperature', ['air'], temperature, (x, { air }) => airOf(x, air).temperature)
/** The air of the hottest days. */
export const hottest = reference('air.hottest', [], 'air', () => 'hot')
/** Air speed over the motors. */
export const wind = field('air.wind', ['air'], 'velocity', (x, { air }) => (air === 'normalStill' ? 0 : airOf(x, air).wind), {
  title: 'wind in –',
  table: {
    source: [{ level: 'assumption', where: 'no wind cools a leg that stands or lands, so that nothing is counted on that may be absent' }],
  },
})
/** Radiant temperature of the surroundings: that of the air where none is given. */
export const surroundings = field(
  'radiant.temperature',
  ['air'],
  temperature,
  (x, { air }) => x.environment.surroundings ?? airOf(x, air).temperature,
)

const gait = (name: 'walk' | 'trot') => {
  const of = (x: LegNumbers) => gaitNamed(x, name)
  return {
    speed: field(`gaits.${name}.speed`, [], 'velocity', (x) => of(x).speed),
    dutyFactor: field(`gaits.${name}.dutyFactor`, [], 'ratio', (x) => of(x).dutyFactor),
    stepLength: field(`gaits.${name}.stepLength`, [], 'length', (x) => of(x).stepLength),
    clearance: field(`gaits.${name}.clearance`, [], 'length', (x) => of(x).clearance),
    /** The most pushing and the most braking (negative) force along the ground over the force across it. */
    pushing: field(`gaits.${name}.pushing`, [], 'ratio', (x) => of(x).traction.highest),
    braking: field(`gaits.${name}.braking`, [], 'ratio', (x) => of(x).traction.lowest),
    /** Force to the side over the force across the ground, of either side. */
    lateral: field(`gaits.${name}.lateral`, [], 'ratio', (x) => of(x).lateral),
  }
}
export const walk = gait('walk')
export const trot = gait('trot')

const landing = (name: 'hop' | 'drop') => {
  const of = (x: LegNumbers) => eventOf(x, name, name)
  return {
    height: field(`events.${name}.height`, [], 'length', (x) => of(x).height),
    travel: field(`events.${name}.travel`, [], 'length', (x) => of(x).travel),
    /** Height of the hip when the feet touch down; absent for the standing height. */
    touchDownHeight: optional(`events.${name}.touchDownHeight`, [], 'length', (x) => of(x).touchDownHeight),
    /** Push along the ground over the load across it, of both signs. */
    traction: field(`events.${name}.traction`, [], 'ratio', (x) => of(x).traction),
    /** Push to the side over the load across the ground, of either side. */
    lateral: field(`events.${name}.lateral`, [], 'ratio', (x) => of(x).lateral),
    /** Feet that land together. */
    feet: field(`events.${name}.feet`, [], 'count', (x) => of(x).feet ?? x.robot.legs),
  }
}
export const hop = landing('hop')
export const drop = landing('drop')
/** Slope that is climbed, and that is descended, both positive. */
export const slope = field('events.slopeUp.angle', [], 'angle', (x) => eventOf(x, 'slopeUp', 'slope').angle)
export const slopeDown = field('events.slopeDown.angle', [], 'angle', (x) => -eventOf(x, 'slopeDown', 'slope').angle, {
  title: 'steepness of the slope down',
})
/** Slope that is walked across. */
export const slopeAcross = field('events.slopeAcross.angle', [], 'angle', (x) => Math.abs(eventOf(x, 'slopeAcross', 'slope').angle))
export const standingTime = field('usage.standingTime', [], 'time', (x) => x.usage.standingTime)
export const stallTime = field('events.stall.time', [], 'time', (x) => eventOf(x, 'stall', 'stall').time)
export const walkingTime = field('usage.walkingTime', [], 'time', (x) => x.usage.walkingTime)
export const stridesPerDay = field('usage.stridesPerDay', [], 'count', (x) => x.usage.stridesPerDay)
export const days = field('ages.season.daysWalked', [], 'count', (x) => ageOf(x, 'season').daysWalked)
/** Time of a season. */
export const season = field('ages.season.time', [], 'time', (x) => ageOf(x, 'season').time)
export const shelfTime = field('ages.aged.time', [], 'time', (x) => ageOf(x, 'aged').time)

/** Whether an event is the strides of a season. */
export const repeats = word('event.repeats', ['event'], (_, { event }) => (EVENTS[event].tags as readonly string[]).includes('repeats'))
/** Whether the foot is lifted in an event, stride by stride. */
export const moves = word('event.moves', ['event'], (_, { event }) => (EVENTS[event].tags as readonly string[]).includes('moves'))
/** Whether an event is a hard load that comes seldom. */
export const isRare = word('event.rare', ['event'], (_, { event }) => (EVENTS[event] as Event).tags.includes('rare'))
/** How the motors warm up in an event. */
export const heating = word('event.heating', ['event'], (_, { event }) => EVENTS[event].heating)
/** The walk either way. */
export const walks = references('event.walks', [], 'event', () => ['walk', 'walkBack'])
/** Walks that an event comes in the middle of; none where the motors are cold before, or warm up by the event itself. */
export const after = references('event.after', ['event'], 'event', (_, { event }) => (EVENTS[event] as Event).after ?? [])

const CHOICE = { level: 'assumption', where: 'a load case without such a force, counted once' } as const
export const moment = constant('event.moment', {
  title: 'duration of a short load',
  kind: 'time',
  typical: 1,
  source: { level: 'assumption', where: 'the time that short-term strength refers to' },
})
export const once = constant('event.once', { title: 'number of loads of a single event', kind: 'count', typical: 1, source: CHOICE })
export const day = constant('event.day', {
  title: 'length of a day',
  kind: 'time',
  typical: 86_400,
  source: { level: 'standard', where: 'ISO 80000-3: 24 h' },
})
export const hour = constant('creep.referenceTime', {
  title: 'reference time of the creep data',
  kind: 'time',
  typical: 3600,
  source: { level: 'standard', where: 'ISO 80000-3: 60 min' },
})
export const noLateral = constant('event.noLateral', {
  title: 'force to the side over force up where none is specified',
  kind: 'ratio',
  typical: 0,
  source: CHOICE,
})
export const noTraction = constant('event.noTraction', {
  title: 'force along the ground over force up where none is specified',
  kind: 'ratio',
  typical: 0,
  source: CHOICE,
})
