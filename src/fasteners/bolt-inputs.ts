// Inputs that formulas of bolted joints share.

/** A place on the joint's face. */
export const PLACE = {
  /** Place along x. */
  x: 'length',
  /** Place along y. */
  y: 'length',
} as const

export const BOLT_COMPLIANCE = {
  /** Compliance of the bolt (`boltCompliance`). */
  boltCompliance: { kind: 'linearCompliance', above: 0 },
} as const

export const MEMBER_COMPLIANCE = {
  /** Compliance of the clamped parts. */
  memberCompliance: { kind: 'linearCompliance', min: 0 },
} as const

export const CLAMP_LOAD_AT_TIGHTENING = {
  /** Clamp load at tightening. */
  clampLoad: { kind: 'force', above: 0 },
} as const

export const ELASTIC_COMPLIANCE = {
  /** Elastic compliance: bolt, washers and metal layers. */
  elasticCompliance: { kind: 'linearCompliance', min: 0 },
} as const

export const CREEPING_COMPLIANCE = {
  /** Compliance at loading of the layers that creep. */
  creepingCompliance: { kind: 'linearCompliance', above: 0 },
} as const

export const CLAMP_LOAD = {
  /** Clamp load. */
  clampLoad: { kind: 'force', min: 0 },
} as const

/** A joint that is pressed. */
export const PRESSED = {
  /** Clamp load left at that time and temperature. */
  clampLoad: { kind: 'force', above: 0 },
} as const
/** A joint that is bent. */
export const BENT = {
  /** Bending moment. */
  moment: { kind: 'torque', min: 0 },
} as const
export const CLAMP_LOAD_LEFT = {
  /** Clamp load left at that time and temperature. */
  clampLoad: { kind: 'force', min: 0 },
} as const

export const GRIP = {
  /** Length of grip. */
  grip: { kind: 'length', above: 0 },
} as const

export const FACE_FRICTION = {
  /** Coefficient of friction of the faces: the lowest. */
  friction: { kind: 'ratio', min: 0 },
} as const

/** The ring on which two parts touch. */
export const TOUCHING_RING = {
  /** Outer diameter of the touching ring. */
  outerDiameter: { kind: 'length', above: 0 },
  /** Inner diameter of the touching ring. */
  innerDiameter: { kind: 'length', min: 0 },
} as const

/** Places and areas of the bolts of a group. */
const BOLT_PATTERN = {
  list: {
    fields: {
      ...PLACE,
      /** Area; equal numbers for equal bolts. */
      area: { kind: 'area', above: 0 },
    },
  },
} as const

export const BOLTS = {
  /** Bolts. */
  bolts: BOLT_PATTERN,
} as const

/** Load and stiffness of a joint whose parts creep. */
export const CREEPING_JOINT = {
  /** Clamp load at the start. */
  clampLoad: { kind: 'force', min: 0 },
  ...ELASTIC_COMPLIANCE,
  ...CREEPING_COMPLIANCE,
} as const
