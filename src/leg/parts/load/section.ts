import type { Field, Fields } from '../../schema/index.js'

/** Air, weather and surroundings that all load cases share. */
export const environment = {
  /** Temperature at which parts were measured, pressed and tensioned. Default: 20 degC. */
  assemblyTemperature: {
    kind: 'temperature',
    min: '-40 degC',
    max: '60 degC',
    usual: ['5 degC', '35 degC'],
    default: '20 degC',
    because: 'reference temperature of ISO 1',
    level: 'unverified',
  },
  /** Radiant temperature of the surroundings. Default: the temperature of the air. */
  surroundings: { kind: 'temperature', min: '-80 degC', max: '150 degC', usual: ['-40 degC', '70 degC'], optional: true },
  /** Heat that air and radiation carry off motors and mounts, over the heat that the film formulas give. Default: 0.8 to 1.2. */
  coolingFactor: {
    band: 'ratio',
    max: 10,
    usual: [0.3, 4],
    default: [0.8, 1, 1.2],
    because: 'scatter of film formulas between bodies that stand close together; one heating curve measures yours',
  },
  /** Altitude. Default: 0 m. */
  altitude: { kind: 'length', min: '-500 m', max: '6000 m', default: '0 m', because: 'sea level' },
  /** Relative humidity that the prints live in. Default: 0.5. */
  humidity: {
    kind: 'ratio',
    min: 0,
    max: 1,
    usual: [0.08, 1],
    default: 0.5,
    because: 'the standard atmosphere 23/50 of ISO 291',
    level: 'unverified',
  },
} as const satisfies Fields

/** A gait. */
export const gait = {
  /** Speed of the body. */
  speed: { kind: 'velocity', above: 0, max: '20 m/s', usual: ['0.01 m/s', '4 m/s'] },
  /** Share of a stride that a foot is on the ground. */
  dutyFactor: { kind: 'ratio', above: 0, below: 1, usual: [0.2, 0.97] },
  /** Way the body moves over one foot on the ground. */
  stepLength: { kind: 'length', above: 0, max: '5 m', usual: ['5 mm', '1 m'] },
  /** Height that the foot is lifted. */
  clearance: { kind: 'length', above: 0, max: '2 m', usual: ['2 mm', '300 mm'] },
  /** Push along the ground as a share of the load on the foot: braking (negative) to pushing. Default: -0.15 to 0.15. */
  traction: { interval: 'ratio', min: -2, max: 2, default: [-0.15, 0.15], because: 'soft ground, walked in both directions' },
  /** Push to the side as a share of the load on the foot, of either side: feet set wide, turning, being pushed. Default: 0. */
  lateral: { kind: 'ratio', min: 0, max: 2, usual: [0.01, 0.8], default: 0, because: 'feet straight under the hips' },
} as const satisfies Fields

/** Gaits that every leg has unless the document gives them. */
export const GAITS = {
  walk: { speed: '0.3 m/s', dutyFactor: 0.75, stepLength: '120 mm', clearance: '40 mm' },
  trot: { speed: '0.8 m/s', dutyFactor: 0.5, stepLength: '120 mm', clearance: '40 mm' },
} as const

/** How much and how long the robot works. */
export const usage = {
  /** Longest time that the robot stands in one pose. Default: 8 h. */
  standingTime: {
    kind: 'time',
    min: '1 s',
    max: '10 year',
    usual: ['20 s', '24 h'],
    default: '8 h',
    because: 'a working day at one place',
  },
  /** Longest walk without a pause. Default: 1 h. */
  walkingTime: { kind: 'time', min: '1 s', max: '1 year', usual: ['20 s', '24 h'], default: '1 h', because: 'an outing' },
  /** Strides on a working day. Default: 10000. */
  stridesPerDay: { kind: 'count', min: 1, max: 1_000_000, usual: [20, 100_000], default: 10_000, because: 'some hours of walking' },
  /** Reserve that every check should have. Default: 1.25. */
  requiredReserve: { kind: 'ratio', min: 1, max: 20, usual: [1, 4], default: 1.25, because: 'a quarter over, for estimates of this kind' },
} as const satisfies Fields

/** An air that load cases are met in. */
export const air = {
  /** Temperature of the air. */
  temperature: { kind: 'temperature', min: '-80 degC', max: '120 degC', usual: ['-40 degC', '60 degC'] },
  /** Air speed over the motors. Default: 0 m/s. */
  wind: {
    kind: 'velocity',
    min: 0,
    max: '100 m/s',
    usual: ['0.1 m/s', '25 m/s'],
    default: '0 m/s',
    because: 'still air, the cautious case',
  },
} as const satisfies Fields

/** An age of prints and pretension. Load cases with an aged cord count a year; the check of the shelf counts the time of `aged`. */
export const age = {
  /**
   * Time since assembly: of `season` that of its walks, of `aged` that on the shelf. A press fit in print relaxes for the longer of both. A cord or a bolt that is
   * called aged has a year behind it whatever is given here.
   */
  time: { kind: 'time', min: 0, max: '100 year', usual: ['12 h', '20 year'] },
  /** Days of walking in that time. Default: 0. */
  daysWalked: { kind: 'count', min: 0, max: 36_525, usual: [1, 4000], default: 0, because: 'kept on the shelf' },
} as const satisfies Fields

const landing = {
  /** Height of the fall. */
  height: { kind: 'length', min: 0, max: '5 m', usual: ['1 mm', '1 m'] },
  /** Feet that land together. Default: all. */
  feet: { integer: true, min: 1, max: 12, optional: true },
  /** How far the legs fold while they stop the fall. */
  travel: { kind: 'length', above: 0, max: '2 m', usual: ['3 mm', '400 mm'] },
  /** Height of the hip when the feet touch down. Default: the standing height. */
  touchDownHeight: { kind: 'length', above: 0, max: '3 m', optional: true },
  /** Push along the ground as a share of the load, of both signs. Default: 0. */
  traction: { kind: 'ratio', min: 0, max: 2, usual: [0.01, 0.8], default: 0, because: 'an upright landing' },
  /** Push to the side as a share of the load, of either side. Default: 0. */
  lateral: { kind: 'ratio', min: 0, max: 2, usual: [0.01, 0.8], default: 0, because: 'an upright landing' },
} as const

/** Airs that every leg has unless the document gives them. */
export const AIRS = {
  cold: { temperature: '0 degC' },
  normal: { temperature: '20 degC' },
  hot: { temperature: '40 degC' },
  shelf: { temperature: '25 degC' },
} as const

/** Ages that every leg has unless the document gives them. */
export const AGES = {
  new: { time: '0 day' },
  season: { time: '60 day', daysWalked: 60 },
  aged: { time: '1 year' },
} as const

/** Events that every leg has unless the document gives them. */
export const EVENTS = {
  stand: { kind: 'stand' },
  walk: { kind: 'walk', gait: 'walk' },
  slopeUp: { kind: 'slope', gait: 'walk', angle: '15 deg' },
  slopeDown: { kind: 'slope', gait: 'walk', angle: '-15 deg' },
  slopeAcross: { kind: 'slope', gait: 'walk', angle: '15 deg', direction: 'across' },
  trot: { kind: 'walk', gait: 'trot' },
  hop: { kind: 'hop', height: '30 mm', travel: '60 mm' },
  drop: { kind: 'drop', height: '80 mm', feet: 2, travel: '60 mm' },
  stall: { kind: 'stall', gait: 'walk', time: '10 min' },
  season: { kind: 'season', gait: 'walk' },
  shelf: { kind: 'shelf' },
} as const

/** An event that loads the leg. */
export const event = {
  variants: 'kind',
  of: {
    stand: {},
    walk: {
      /** The gait, from the section gaits. */
      gait: { refersTo: 'gaits' },
    },
    slope: {
      /** The gait, from the section gaits. */
      gait: { refersTo: 'gaits' },
      /** Angle of the slope: positive uphill, negative downhill. */
      angle: { kind: 'angle', min: '-60 deg', max: '60 deg' },
      /** Whether the robot walks along the fall line or across it. Default: along. */
      direction: { oneOf: ['along', 'across'], default: 'along', because: 'straight up or down' },
    },
    hop: landing,
    drop: landing,
    stall: {
      /** The gait in whose stance the leg is blocked, from the section gaits. */
      gait: { refersTo: 'gaits' },
      /** How long a blocked leg pushes, warm from its walk, before it is switched off. */
      time: { kind: 'time', above: 0, max: '30 day', usual: ['2 s', '2 h'] },
    },
    season: {
      /** The gait, from the section gaits. */
      gait: { refersTo: 'gaits' },
    },
    shelf: {},
  },
} as const satisfies Field

/** Which events, airs and ages are combined: every one listed with every other. */
export const combination = {
  /** Names of events. */
  events: { list: { text: true } },
  /** Names of airs. */
  airs: { list: { text: true } },
  /** Names of ages. */
  ages: { list: { text: true } },
} as const satisfies Fields
