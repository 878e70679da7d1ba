import { EVENTS } from '../../cases/events.js'
import { band, field, optional, word } from '../../leaves.js'
import { constant } from '../../run/index.js'

const temperature = 'temperature'
export const assemblyTemperature = field('environment.assemblyTemperature', [], temperature, (x) => x.environment.assemblyTemperature)
export const humidity = field('environment.humidity', [], 'ratio', (x) => x.environment.humidity)
export const altitude = field('environment.altitude', [], 'length', (x) => x.environment.altitude)
export const coolingFactor = band(
  'environment.coolingFactor',
  [],
  'hold a known current for half an hour and log mount and can temperature',
  (x) => x.environment.coolingFactor,
)

/** Temperature of the air. */
export const airTemperature = field('air.temperature', ['air'], temperature, ({ environment, usage }, { air }) => {
  if (air === 'hot') return environment.hotAir
  if (air === 'cold') return environment.coldAir
  return air === 'shelf' ? usage.shelfTemperature : environment.normalAir
})
/** Air speed over the motors. */
export const wind = field('air.wind', ['air'], 'velocity', ({ environment }, { air }) => (air === 'normal' ? environment.wind : 0))
/** Radiant temperature of the surroundings: that of the air where none is given. */
export const surroundings = field(
  'radiant.temperature',
  ['air'],
  temperature,
  ({ environment, usage }, { air }) =>
    environment.surroundings ??
    { hot: environment.hotAir, cold: environment.coldAir, shelf: usage.shelfTemperature, normal: environment.normalAir }[
      air === 'normalStill' ? 'normal' : air
    ],
)

const gait = (name: 'walk' | 'trot') => ({
  speed: field(`usage.${name}.speed`, [], 'velocity', (x) => x.usage[name].speed),
  dutyFactor: field(`usage.${name}.dutyFactor`, [], 'ratio', (x) => x.usage[name].dutyFactor),
  stepLength: field(`usage.${name}.stepLength`, [], 'length', (x) => x.usage[name].stepLength),
  clearance: field(`usage.${name}.clearance`, [], 'length', (x) => x.usage[name].clearance),
})
export const walk = gait('walk')
export const trot = gait('trot')
export const traction = field('usage.traction', [], 'ratio', (x) => x.usage.traction)
export const hopHeight = field('usage.hopHeight', [], 'length', (x) => x.usage.hopHeight)
export const dropHeight = field('usage.dropHeight', [], 'length', (x) => x.usage.dropHeight)
export const landingTravel = field('usage.landingTravel', [], 'length', (x) => x.usage.landingTravel)
/** Height of the hip when the feet touch down; absent for the standing height. */
export const touchDownHeight = optional('usage.touchDownHeight', [], 'length', (x) => x.usage.touchDownHeight)
export const slope = field('usage.slope', [], 'angle', (x) => x.usage.slope)
export const standingTime = field('usage.standingTime', [], 'time', (x) => x.usage.standingTime)
export const stallTime = field('usage.stallTime', [], 'time', (x) => x.usage.stallTime)
export const walkingTime = field('usage.walkingTime', [], 'time', (x) => x.usage.walkingTime)
export const stridesPerDay = field('usage.stridesPerDay', [], 'count', (x) => x.usage.stridesPerDay)
export const days = field('usage.days', [], 'count', (x) => x.usage.days)
export const shelfTime = field('usage.shelfTime', [], 'time', (x) => x.usage.shelfTime)

/** Whether an event is the strides of a season. */
export const repeats = word('event.repeats', ['event'], (_, { event }) => (EVENTS[event].tags as readonly string[]).includes('repeats'))
/** How the motors warm up in an event. */
export const heating = word('event.heating', ['event'], (_, { event }) => EVENTS[event].heating)

const CHOICE = { level: 'assumption', where: 'choice of this library' } as const
export const feetOfDrop = constant('event.feetOfDrop', { kind: 'count', typical: 2, source: CHOICE })
export const moment = constant('event.moment', {
  kind: 'time',
  typical: 1,
  source: { level: 'assumption', where: 'the time that short-term strength refers to' },
})
export const once = constant('event.once', { kind: 'count', typical: 1, source: CHOICE })
export const day = constant('event.day', { kind: 'time', typical: 86_400, source: { level: 'standard', where: 'ISO 80000-3: 24 h' } })
export const hour = constant('creep.referenceTime', {
  kind: 'time',
  typical: 3600,
  source: { level: 'standard', where: 'ISO 80000-3: 60 min' },
})
/** Share of the weight that the lower pair of legs carries on the level. */
export const levelShare = constant('event.levelShare', {
  kind: 'ratio',
  typical: 0.5,
  source: { level: 'assumption', where: 'centre of mass midway between front and rear feet on the level' },
})
export const noTraction = constant('event.noTraction', { kind: 'ratio', typical: 0, source: CHOICE })
