// Inputs that formulas of heated plates share.

/** The heated ring of a plate. */
export const RING = {
  /** Inner radius of the ring; 0 for a disc. */
  innerRadius: { kind: 'length', min: 0 },
  /** Outer radius of the ring. */
  outerRadius: { kind: 'length', above: 0 },
} as const

export const PLATE_RADIUS = {
  /** Radius of the plate; for a square one its side over √π. */
  plateRadius: { kind: 'length', above: 0 },
} as const

export const PLATE_THICKNESS = {
  /** Thickness of the plate. */
  thickness: { kind: 'length', above: 0 },
} as const

/** Conductivity of a plate, along and through it. */
export const PLATE_CONDUCTIVITY = {
  /** Conductivity of the plate along its faces. */
  conductivity: { kind: 'thermalConductivity', above: 0 },
  /** Conductivity through the plate: for a print lying flat, across the layers. Default: the same as along its faces. */
  conductivityAcross: { kind: 'thermalConductivity', above: 0, optional: true },
} as const

export const FREE_FACE = {
  /** Heat transfer coefficient of the free face of the plate, film and radiation together. */
  freeFaceCoefficient: { kind: 'heatTransferCoefficient', above: 0 },
} as const

/** Sides of a rectangular plate. */
export const PLATE_SIZE = {
  /** Width of the plate. */
  width: { kind: 'length', above: 0 },
  /** Height of the plate. */
  height: { kind: 'length', above: 0 },
} as const

/** Where the ring is on the plate. */
export const RING_PLACE = {
  /** Place of the ring along the width, from the middle of the plate. */
  x: { kind: 'length', default: '0 mm' },
  /** Place of the ring along the height, from the middle of the plate. */
  y: { kind: 'length', default: '0 mm' },
} as const

export const MOTOR_FACE = {
  /** Heat transfer coefficient of the motor's face of the plate, film and radiation together; 0 for an insulated face. */
  motorFaceCoefficient: { kind: 'heatTransferCoefficient', min: 0 },
} as const

export const UNDER_MOTOR = {
  /** Whether the motor covers its face of the plate inside the ring's outer radius, so that no air cools it there, or stands clear of it. */
  underMotor: { oneOf: ['covered', 'open'], default: 'covered' },
} as const
