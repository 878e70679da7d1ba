/** A shaft that passes torque on to its hub. */
export const SHAFT_IN_HUB = {
  /** Torque to pass on. */
  torque: { kind: 'torque', min: 0 },
  /** Shaft diameter. */
  shaftDiameter: { kind: 'length', above: 0 },
  /** Allowable pressure on the shaft. */
  shaftBearingStrength: { kind: 'stress', above: 0 },
} as const
