// Inputs that formulas of the four-bar share.

export const CRANK = {
  /** Length of the crank. */
  crank: { kind: 'length', above: 0 },
} as const

export const COUPLER = {
  /** Length of the coupler. */
  coupler: { kind: 'length', above: 0 },
} as const

export const ROCKER = {
  /** Length of the rocker. */
  rocker: { kind: 'length', above: 0 },
} as const

/** Directions of the moving bars. */
export const FOUR_BAR_POSE = {
  /** Direction of the crank from its fixed pivot. */
  crankAngle: 'angle',
  /** Direction of the coupler from crank pin to rocker pin. */
  couplerAngle: 'angle',
  /** Direction of the rocker from its fixed pivot. */
  rockerAngle: 'angle',
} as const
