// Inputs that formulas of the whole robot share.

export const ROBOT_MASS = {
  /** Mass of the robot. */
  mass: { kind: 'mass', above: 0 },
} as const

export const GRAVITY = {
  /** Acceleration of free fall. */
  gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
} as const

export const HEIGHT = {
  /** Height of the centre of mass over the feet. */
  height: { kind: 'length', above: 0 },
} as const

export const DUTY_FACTOR = {
  /** Part of the stride that each foot stands: stance time over stride period. */
  dutyFactor: { kind: 'ratio', above: 0, max: 1 },
} as const
