// Inputs that several formulas of this folder share.

const LENGTH = { kind: 'length', above: 0 } as const
const RIGIDITY = { kind: 'axialRigidity', above: 0 } as const
const COEFFICIENT = { kind: 'ratio', min: 0 } as const

/** A cord on its two pulleys, without its drum arcs and its friction. */
export const CORD_LOOP = {
  /** Axial rigidity of the bedded-in cord. */
  axialRigidity: RIGIDITY,
  /** Tension of both spans and all wraps at rest. */
  pretension: { kind: 'force', above: 0 },
  /** Radius of the pinion to the cord's centre line. */
  pinionRadius: LENGTH,
  /** Radius of the drum to the cord's centre line. */
  drumRadius: LENGTH,
  /** Free span of one branch. */
  span: LENGTH,
  /** Angle of contact on the pinion, all turns counted; a clamp is in its middle. */
  pinionWrap: { kind: 'angle', above: 0 },
} as const

/** Friction of a cord on its two pulleys. */
export const FRICTIONS = {
  /** Coefficient of friction, cord on pinion; the low end of its range decides holding. */
  friction: COEFFICIENT,
  /** Coefficient of friction, cord on drum. Default: that of the pinion. */
  drumFriction: { kind: 'ratio', min: 0, optional: true },
} as const

/** A validity statement of every wrap: a friction far above all known ones is a per cent sign that is missing. */
export const LIKELY_FRICTION = {
  'coefficient of friction of at most 2 (20 % is 0.2)': ({ friction }: { readonly friction: number }) => friction <= 2,
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
  /** Wrap from tangent point to anchor on the drum at mid travel, each branch. */
  drumWrap: { kind: 'angle', above: 0 },
  /** Travel of the joint from end to end, half to either side. */
  travel: { kind: 'angle', min: 0 },
} as const

/** How the pinion holds its cord. */
export const HOLD = {
  /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
  hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'frictionOnly' },
} as const

const COMPLIANCE = { kind: 'linearCompliance', min: 0, default: '0 m/N' } as const

/** Compliance of the loop beside that of the cord. */
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

/** Friction that falls with pressure. */
export const FIBRE_LAW = {
  /**
   * Exponent n of friction that falls with pressure: the coefficients are those at the pretension, times (T/T0)^(n − 1) at a tension T. Fibres have
   * 0.67 to 1. Without a friction of its own the drum has that of the pinion at its lower pressure. Default: 1, Coulomb friction.
   */
  frictionExponent: { kind: 'ratio', above: 0, max: 1, optional: true },
} as const

/**
 * Least exponent of friction that is known: elastic contact of round bodies, whose area grows with the load to the power 2/3 (Hertz). A lower one lets the
 * friction of the slack branch grow beyond all measurements, and with it the slip torque.
 */
export const LEAST_EXPONENT = 0.66

/** A validity statement of every loop with friction that falls with pressure. */
export const LIKELY_EXPONENT = {
  'friction exponent of at least 0.66 (fibres have 0.67 to 1)': ({
    frictionExponent,
  }: {
    readonly frictionExponent?: number | undefined
  }) => (frictionExponent ?? 1) >= LEAST_EXPONENT,
} as const

/** A cord wrapped on a drum. */
export const WRAP = {
  /** Coefficient of friction, cord on drum; the low end of its range decides holding. */
  friction: COEFFICIENT,
  /** Total angle of contact. */
  wrapAngle: { kind: 'angle', min: 0 },
} as const

/** A cord on an arc of one pulley. */
export const ARC = {
  /** Radius of the pulley to the cord's centre line. */
  centreLineRadius: LENGTH,
  /** Axial rigidity of the cord. */
  axialRigidity: RIGIDITY,
} as const

/** Two pulleys and how the cord runs between them. */
export const PULLEYS = {
  /** Whether the two spans cross between the pulleys. */
  arrangement: { oneOf: ['crossed', 'open'] },
  /** Radius of the pinion to the cord's centre line. */
  pinionRadius: LENGTH,
  /** Radius of the drum to the cord's centre line. */
  drumRadius: LENGTH,
  /** Distance between the two axes. */
  centreDistance: LENGTH,
} as const

/** A loaded drum, for limits and tensions after travel. */
export const LOADED_DRUM = {
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', above: 0 },
  /** Torque at the drum. */
  torque: { kind: 'torque', min: 0 },
  /** Radius of the drum to the cord's centre line. */
  drumRadius: LENGTH,
} as const

/** Bearings of the pinion and rubbing of fibres, for losses. */
export const RUNNING = {
  /** Axial rigidity of the cord. */
  axialRigidity: RIGIDITY,
  /** Radius of the pinion to the cord's centre line. */
  pinionRadius: LENGTH,
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
