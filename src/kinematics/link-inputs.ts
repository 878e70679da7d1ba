// Inputs that formulas of links share.

export const KNEE_ANGLE = {
  /** Knee angle. */
  kneeAngle: 'angle',
} as const

export const KNEE_LIMITS = {
  /** Lowest knee angle. */
  kneeLowest: 'angle',
  /** Highest knee angle. */
  kneeHighest: 'angle',
} as const

export const LINK_MASS = {
  /** Mass. */
  mass: { kind: 'mass', min: 0 },
} as const

export const LINK_INERTIA = {
  /** Moment of inertia about its centre of mass. */
  inertia: { kind: 'momentOfInertia', min: 0 },
} as const

/** Gravity, which may be zero for a leg on its side. */
export const GRAVITY_OR_NONE = {
  /** Acceleration of free fall. */
  gravity: { kind: 'acceleration', min: 0, default: '9.80665 m/s^2' },
} as const

/** Lengths of the two links. */
export const LINK_LENGTHS = {
  /** Length of the upper link, hip to knee. */
  upperLink: { kind: 'length', above: 0 },
  /** Length of the lower link, knee to foot. */
  lowerLink: { kind: 'length', above: 0 },
} as const

export const GROUND_UPWARD = {
  /** Force of the ground on the foot, upward. */
  groundUpward: 'force',
} as const
