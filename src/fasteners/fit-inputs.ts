// Inputs that formulas of fits share.

export const POISSON_RATIO = {
  /** Poisson's ratio. */
  poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
} as const

export const CHANGE_SINCE_ASSEMBLY = {
  /** Temperature minus temperature of assembly. */
  temperatureChange: 'temperatureDifference',
} as const

export const INTERFACE_DIAMETER = {
  /** Diameter of the interface. */
  diameter: { kind: 'length', above: 0 },
} as const

export const BOSS_DIAMETER = {
  /** Outer diameter of the boss. */
  bossDiameter: { kind: 'length', above: 0 },
} as const
