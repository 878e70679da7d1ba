// Inputs that several formulas of this folder share.

import { BEDDED_RIGIDITY, CORD_RIGIDITY } from './cord-inputs.js'

const LENGTH = { kind: 'length', above: 0 } as const
const COEFFICIENT = { kind: 'ratio', min: 0 } as const

export const PULLEY_RADIUS = {
  /** Radius of the pulley to the cord's centre line. */
  centreLineRadius: { kind: 'length', above: 0 },
} as const

export const WRAP_TO_ANCHOR = {
  /** Angle from the tangent point to the anchor or clamp. */
  wrapAngle: { kind: 'angle', min: 0 },
} as const

export const CENTRE_DISTANCE = {
  /** Distance between the axes. */
  centreDistance: { kind: 'length', above: 0 },
} as const

export const ARRANGEMENT = {
  /** Whether the two spans cross between the pulleys. */
  arrangement: { oneOf: ['crossed', 'open'] },
} as const

export const PINION_RADIUS = {
  /** Radius of the pinion to the cord's centre line. */
  pinionRadius: LENGTH,
} as const

export const DRUM_RADIUS = {
  /** Radius of the drum to the cord's centre line. */
  drumRadius: LENGTH,
} as const

export const PINION_WRAP = {
  /** Angle of contact on the pinion, all turns counted. */
  pinionWrap: { kind: 'angle', min: 0 },
} as const

export const WRAP_ANGLE = {
  /** Total angle of contact. */
  wrapAngle: { kind: 'angle', min: 0 },
} as const

export const CENTRE_LINE_RADIUS = {
  /** Radius of the drum to the cord's centre line. */
  centreLineRadius: { kind: 'length', above: 0 },
} as const

export const SPAN = {
  /** Free length of each span. */
  span: LENGTH,
} as const

export const JOINT_TORQUE = {
  /** Torque at the joint. */
  torque: { kind: 'torque', min: 0 },
} as const

export const DRUM_WRAP = {
  /** Wrap from tangent point to anchor on the drum at mid travel, each branch. */
  drumWrap: { kind: 'angle', above: 0 },
} as const

export const TRAVEL = {
  /** Travel of the joint from end to end, half to either side. */
  travel: { kind: 'angle', min: 0 },
} as const

export const PRETENSION = {
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', min: 0 },
} as const

/** A cord on its two pulleys, without its drum arcs and its friction. */
export const CORD_LOOP = {
  ...BEDDED_RIGIDITY,
  /** Tension of both spans and all wraps at rest. */
  pretension: { kind: 'force', above: 0 },
  ...PINION_RADIUS,
  ...DRUM_RADIUS,
  ...SPAN,
  /** Angle of contact on the pinion, all turns counted; a clamp is in its middle. */
  pinionWrap: { kind: 'angle', above: 0 },
} as const

/** Drum arcs at one pose. */
export const DRUM_ARCS = {
  /** Wrap from tangent point to anchor on the drum, taut branch. */
  drumWrapTaut: { kind: 'angle', min: 0 },
  /** Wrap from tangent point to anchor on the drum, slack branch. */
  drumWrapSlack: { kind: 'angle', min: 0 },
} as const

/** Drum arcs over the travel of the joint. */
export const DRUM_TRAVEL = {
  ...DRUM_WRAP,
  ...TRAVEL,
} as const

/** How the pinion holds its cord. */
export const HOLD = {
  /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
  hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'frictionOnly' },
} as const

const COMPLIANCE = { kind: 'linearCompliance', min: 0, default: '0 m/N' } as const

/** Compliance of the loop besides that of the cord. */
export const LOOP_COMPLIANCE = {
  /** Compliance of frame, bearings and tensioner, from `frameCompliance` and `tensionerCompliance`. Default: rigid. */
  compliance: {
    fields: {
      /** Cord that each branch gains per newton by which the sum of the two tensions rises. */
      sum: COMPLIANCE,
      /** Cord that the taut branch gains, and the slack one loses, per newton of the difference of the two tensions. */
      difference: COMPLIANCE,
      /** Cord that the taut branch gains per newton of its tension from a tensioner in it. */
      tautSpan: COMPLIANCE,
      /** The same of the slack branch. */
      slackSpan: COMPLIANCE,
    },
    optional: true,
  },
} as const

/** A cord wrapped on a drum. */
export const WRAP = {
  /** Coefficient of friction, cord on drum; the low end of its range decides holding. */
  friction: COEFFICIENT,
  ...WRAP_ANGLE,
} as const

/** A cord on an arc of one pulley. */
export const ARC = {
  ...PULLEY_RADIUS,
  ...CORD_RIGIDITY,
} as const

/** Two pulleys and how the cord runs between them. */
export const PULLEYS = {
  ...ARRANGEMENT,
  ...PINION_RADIUS,
  ...DRUM_RADIUS,
  ...CENTRE_DISTANCE,
} as const

/** A loaded drum, for limits and tensions after travel. */
export const LOADED_DRUM = {
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', above: 0 },
  /** Torque at the drum. */
  torque: { kind: 'torque', min: 0 },
  ...DRUM_RADIUS,
} as const

/** Bearings of the pinion and rubbing of fibres, for losses. */
export const RUNNING = {
  ...CORD_RIGIDITY,
  ...PINION_RADIUS,
  /** Force on the bearings of the pinion. */
  shaftForce: { kind: 'force', min: 0 },
  /** Friction of the bearings. */
  bearingFriction: COEFFICIENT,
  /** Radius at which bearing friction acts. */
  bearingRadius: { kind: 'length', min: 0 },
  /** Share of the cord's pull lost over one pulley, on and off it, by rubbing of its own fibres; about 0.01 to 0.02 for wire rope. */
  bendingLoss: COEFFICIENT,
} as const

/** Expansion of frame and cord from the temperature at tensioning. */
export const WARMING = {
  /** Working temperature less temperature at tensioning. */
  temperatureRise: 'temperatureDifference',
  /** Expansion of the frame that sets the centre distance. */
  frameExpansion: 'thermalExpansion',
  /** Expansion of the cord along its length; negative for drawn polymer fibres. */
  cordExpansion: 'thermalExpansion',
} as const

/** A thermally activated process of creep. */
export const ACTIVATION = {
  /** Activation energy of the process. */
  activationEnergy: { kind: 'energy', above: 0, default: '1.5 eV' },
  /** Activation volume of the process. */
  activationVolume: { kind: 'volume', above: 0, default: '0.045 nm^3' },
} as const
