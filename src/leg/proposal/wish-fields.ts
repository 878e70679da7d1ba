import type { DataFields, Fields, GivenFields } from '../schema/index.js'

const MOTOR = {
  /** Outer diameter of the can. */
  canDiameter: { kind: 'length', above: 0, max: '200 mm' },
  /** Length of the can. */
  canLength: { kind: 'length', above: 0, max: '200 mm' },
  /** Speed constant Kv of the catalogue. */
  speedConstant: { kind: 'speedConstant', above: 0 },
  /** Resistance between two terminals at 20 °C. */
  terminalResistance: { kind: 'electricalResistance', above: 0 },
  /** Rated current, peak of a phase. */
  ratedCurrent: { kind: 'peakPhaseCurrent', above: 0 },
  /** Price of one, in whatever money the builder counts. */
  price: { kind: 'count', min: 0 },
} as const satisfies Fields

const CORD = {
  /** Fibre of the table. */
  fibre: { designation: 'fibre' },
  /** Diameter under tension. */
  diameter: { kind: 'length', above: 0, max: '10 mm' },
  /** Breaking strength, straight and new, as printed on the spool. */
  breakingStrength: { kind: 'force', above: 0 },
  /** Price of a metre. */
  price: { kind: 'count', min: 0 },
} as const satisfies Fields

const TEN_THOUSAND = 'some hours of walking'

/** Every field of a wish. */
export const wishFields = {
  /** A name for the robot. */
  name: { text: true },
  /** The robot that the leg is for. */
  robot: {
    section: {
      /** Mass of the whole robot with its load. */
      mass: { kind: 'mass', above: 0, max: '200 kg' },
      /** Number of legs, 2 to 12. Default 4. */
      legs: { integer: true, min: 2, max: 12, default: 4, because: 'four legs, the usual case' },
      /** Share of the mass that all legs together may have. Default 0.7. */
      legShare: { kind: 'ratio', above: 0, max: 1, default: 0.7, because: 'body, battery, controllers and load need the rest' },
      /** Distance from front to rear hip and from left to right hip. */
      hipSpacing: { kind: 'length', above: 0, default: '400 mm', because: 'a body of ordinary proportions' },
      /** Distance from left to right hip. Default 200 mm. */
      hipTrack: { kind: 'length', above: 0, default: '200 mm', because: 'a body of ordinary proportions' },
    },
  },
  /** The walk, with three of four feet on the ground. */
  walk: {
    section: {
      /** Speed of the walk, at most 5 m/s. */
      speed: { kind: 'velocity', above: 0, max: '5 m/s' },
      /** Way of the body over one foot on the ground. */
      stepLength: { kind: 'length', above: 0, max: '600 mm' },
    },
  },
  /** A faster gait with two feet on the ground. Without it the trot is as fast as the walk. */
  trot: {
    section: {
      /** Speed of the trot, at most 10 m/s. */
      speed: { kind: 'velocity', above: 0, max: '10 m/s' },
      /** Way of the body over one foot on the ground. */
      stepLength: { kind: 'length', above: 0, max: '600 mm' },
    },
    optional: true,
  },
  /** What the robot meets on its way. */
  obstacles: {
    section: {
      /** Height that a foot must step over. */
      height: { kind: 'length', min: 0, max: '500 mm' },
      /** Height of a careless drop on two feet. */
      drop: { kind: 'length', min: 0, max: '1 m' },
      /** Slope that it walks on, 0 to below 60°. */
      slope: { kind: 'angle', min: '0 deg', below: '60 deg' },
    },
  },
  /** Motors at hand, by name: can diameter, can length, Kv, terminal resistance, rated current, price. */
  motors: { dictionary: { tuple: MOTOR } },
  /** Cords at hand, by name: fibre, diameter, breaking strength, price of a metre. */
  cords: { dictionary: { tuple: CORD } },
  /** Polymers at hand, by the name of the table, with the price of a kilogram. */
  plastics: { dictionary: { kind: 'count', min: 0 } },
  /** The printer at hand. */
  printer: {
    section: {
      /** Shorter side of the bed: the longest part that is printed lying. */
      bed: { kind: 'length', above: 0, max: '2 m' },
    },
  },
  /** The battery or power supply. */
  supply: {
    section: {
      /** Voltage of the supply. */
      voltage: { kind: 'voltage', above: 0 },
      /** Current that the supply can give. */
      currentLimit: { kind: 'current', above: 0 },
    },
  },
  /** Climate and daily use. */
  place: {
    section: {
      /** Still air on the hottest afternoon, and on the coldest morning. */
      hot: { kind: 'temperature', min: '-40 degC', max: '90 degC' },
      /** Still air on the coldest morning. */
      cold: { kind: 'temperature', min: '-60 degC', max: '60 degC' },
      /** Relative humidity, 0 to 1. Default 0.5. */
      humidity: { kind: 'ratio', min: 0, max: 1, default: 0.5, because: 'the standard atmosphere of ISO 291' },
      /** How long a blocked leg pushes before it is switched off. */
      stallTime: { kind: 'time', above: 0, default: '10 min', because: 'until somebody notices' },
      /** Strides in a day. Default 10 000. */
      stridesPerDay: { kind: 'count', above: 0, default: 10_000, because: TEN_THOUSAND },
      /** Days of use. Default 60. */
      days: { kind: 'count', above: 0, default: 60, because: 'a season of fieldwork' },
    },
  },
} as const satisfies Fields

/** A wish as it may be written: quantities as text, pairs or `Quantity`. */
export type LegWish = GivenFields<typeof wishFields>
/** A wish as it was read. */
export type LegWishData = DataFields<typeof wishFields>
