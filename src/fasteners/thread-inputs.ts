// Inputs that formulas of threads, bolts and nuts share.

const DIAMETER = { kind: 'length', above: 0 } as const
const AREA = { kind: 'area', above: 0 } as const

/** A thread's nominal diameter, pitch and pitch diameter. */
export const THREAD_HELIX = {
  fields: {
    /** Nominal diameter. */
    diameter: DIAMETER,
    /** Pitch: the lead of a single-start thread. */
    pitch: DIAMETER,
    /** Basic pitch diameter. */
    pitchDiameter: DIAMETER,
  },
} as const

/** A thread's nominal diameter and the areas that carry. */
export const THREAD_AREAS = {
  fields: {
    /** Nominal diameter. */
    diameter: DIAMETER,
    /** Stress area. */
    stressArea: AREA,
    /** Area on the root diameter. */
    rootArea: AREA,
  },
} as const

/** A thread's basic diameters and its tolerances of grade 6. */
export const THREAD_PROFILE = {
  fields: {
    /** Nominal diameter. */
    diameter: DIAMETER,
    /** Basic pitch diameter. */
    pitchDiameter: DIAMETER,
    /** Basic minor diameter. */
    minorDiameter: DIAMETER,
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
  },
} as const

/** A bolt's strengths. */
export const BOLT_STRENGTHS = {
  fields: {
    /** Proof stress. */
    proofStress: { kind: 'stress', above: 0 },
    /** Yield strength. */
    yieldStrength: { kind: 'stress', above: 0 },
    /** Tensile strength. */
    tensileStrength: { kind: 'stress', above: 0 },
  },
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
  /** Coefficient of friction in the thread. */
  threadFriction: { kind: 'ratio', min: 0 },
  /** Coefficient of friction under the turned head or nut. */
  headFriction: { kind: 'ratio', min: 0 },
  ...BEARING_RING,
} as const

/** Places and areas of the bolts of a group. */
export const BOLT_PATTERN = {
  list: {
    fields: {
      /** Place along x. */
      x: 'length',
      /** Place along y. */
      y: 'length',
      /** Area; equal numbers for equal bolts. */
      area: AREA,
    },
  },
} as const

/** Load and stiffness of a joint whose parts creep. */
export const CREEPING_JOINT = {
  /** Clamp load at the start. */
  clampLoad: { kind: 'force', min: 0 },
  /** Elastic compliance: bolt, washers and metal layers. */
  elasticCompliance: { kind: 'linearCompliance', min: 0 },
  /** Compliance at loading of the layers that creep. */
  creepingCompliance: { kind: 'linearCompliance', above: 0 },
} as const

/** A nut held from turning by walls. */
export const HELD_NUT = {
  /** Torque on the nut. */
  torque: { kind: 'torque', min: 0 },
  /** Width of the nut across flats. */
  acrossFlats: DIAMETER,
  /** Height of nut held by the walls. */
  height: DIAMETER,
  /** Flats that touch: 6 in a pocket, 2 in an open slot. */
  flats: { kind: 'count', min: 2, max: 6, whole: true },
  /** Pocket across flats minus nut across flats. */
  clearance: { kind: 'length', min: 0 },
  /** Compressive strength of the wall at its temperature. */
  compressiveStrength: { kind: 'stress', above: 0 },
} as const

/** Five flats do not centre a nut. */
export const FLATS_IN_PAIRS = {
  accepts: 'must be 2, 3, 4 or 6, since five do not centre a nut',
  holds: ({ flats }: { readonly flats: number }) => flats !== 5,
}
