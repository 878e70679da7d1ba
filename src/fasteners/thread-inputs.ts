// Inputs that formulas of threads, bolts and nuts share.

const DIAMETER = { kind: 'length', above: 0 } as const
const AREA = { kind: 'area', above: 0 } as const

export const NOMINAL_DIAMETER = {
  /** Nominal diameter. */
  diameter: DIAMETER,
} as const

export const STRESS_AREA = {
  /** Stress area of the thread. */
  stressArea: AREA,
} as const

export const ROOT_AREA = {
  /** Area on the root diameter. */
  rootArea: AREA,
} as const

export const PITCH = {
  /** Pitch. */
  pitch: { kind: 'length', above: 0 },
} as const

/** Helix of a screw. */
export const SCREW_HELIX = {
  /** Mean (pitch) diameter of the thread. */
  meanDiameter: { kind: 'length', above: 0 },
  /** Lead: advance per turn. */
  lead: { kind: 'length', above: 0 },
} as const

export const THREAD_FRICTION = {
  /** Coefficient of friction in the thread. */
  threadFriction: { kind: 'ratio', min: 0 },
} as const

export const PITCH_DIAMETER = {
  /** Basic pitch diameter. */
  pitchDiameter: DIAMETER,
} as const

export const HEAD_FRICTION = {
  /** Coefficient of friction under the turned head or nut. */
  headFriction: { kind: 'ratio', min: 0 },
} as const

export const PREVAILING_TORQUE = {
  /** Prevailing torque of a lock nut. */
  prevailingTorque: { kind: 'torque', min: 0, default: '0 N m' },
} as const

export const MINOR_DIAMETER = {
  /** Basic minor diameter. */
  minorDiameter: DIAMETER,
} as const

/** What a pair of threads may deviate from the basic profile. */
export const THREAD_TOLERANCES = {
  /** Allowance of position g: how far below the basic profile the screw starts. */
  allowance: { kind: 'length', min: 0 },
  /** Tolerance of the screw's major diameter, grade 6. */
  screwMajorTolerance: { kind: 'length', min: 0 },
  /** Tolerance of the screw's pitch diameter, grade 6. */
  screwPitchTolerance: { kind: 'length', min: 0 },
  /** Tolerance of the nut's pitch diameter, grade 6. */
  nutPitchTolerance: { kind: 'length', min: 0 },
  /** Tolerance of the nut's minor diameter, grade 6. */
  nutMinorTolerance: { kind: 'length', min: 0 },
} as const

/** A thread's nominal diameter, pitch and pitch diameter. */
export const THREAD_HELIX = {
  fields: {
    ...NOMINAL_DIAMETER,
    /** Pitch: the lead of a single-start thread. */
    pitch: DIAMETER,
    ...PITCH_DIAMETER,
  },
} as const

/** The thread of a screw. */
export const THREAD = {
  /** Sizes of the thread, from `metricThread`. */
  thread: THREAD_HELIX,
} as const

/** A thread's nominal diameter and the areas that carry. */
const THREAD_AREAS = {
  fields: {
    ...NOMINAL_DIAMETER,
    ...STRESS_AREA,
    ...ROOT_AREA,
  },
} as const

/** A thread's basic diameters and its tolerances of grade 6. */
export const THREAD_PROFILE = {
  fields: {
    ...NOMINAL_DIAMETER,
    ...PITCH_DIAMETER,
    ...MINOR_DIAMETER,
    ...THREAD_TOLERANCES,
  },
} as const

/** A bolt's strengths. */
const BOLT_STRENGTHS = {
  fields: {
    /** Proof stress. */
    proofStress: { kind: 'stress', above: 0 },
    /** Yield strength. */
    yieldStrength: { kind: 'stress', above: 0 },
    /** Tensile strength. */
    tensileStrength: { kind: 'stress', above: 0 },
  },
} as const

/** A bolt by its thread and its property class. */
export const BOLT_CLASS = {
  /** Sizes of the thread, from `metricThread`. */
  thread: THREAD_AREAS,
  /** Strengths of the bolt, from `propertyClass`. */
  bolt: BOLT_STRENGTHS,
} as const

/** The bearing ring under a turned head or nut. */
export const BEARING_RING = {
  /** Outer diameter of the bearing ring under the turned head or nut. */
  bearingDiameter: DIAMETER,
  /** Diameter of the hole, the inner edge of that ring. */
  holeDiameter: DIAMETER,
} as const

/** Friction of a bolt that is turned, and its bearing ring. */
export const TURNED_BOLT = {
  ...THREAD_FRICTION,
  ...HEAD_FRICTION,
  ...BEARING_RING,
} as const
