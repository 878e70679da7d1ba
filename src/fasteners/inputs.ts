// Inputs that several formulas of this folder share.

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

/** An isotropic elastic material. */
export const ELASTIC = {
  fields: {
    /** Modulus of elasticity at the temperature and for the duration of the load. */
    modulus: { kind: 'modulus', above: 0 },
    /** Poisson's ratio. */
    poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
  },
} as const

/** A pin in a boss. */
export const PRESSED_PIN = {
  /** Diameter of the interface. */
  diameter: DIAMETER,
  /** Outer diameter of the boss. */
  bossDiameter: DIAMETER,
  /** Bore of a hollow pin; zero if solid. */
  pinBore: { kind: 'length', min: 0, default: '0 mm' },
  /** Material of the boss. */
  boss: ELASTIC,
  /** Material of the pin. */
  pin: ELASTIC,
} as const

/** A boss needs a wall. */
export const BOSS_HAS_WALL = {
  accepts: 'must be larger than the bore',
  holds: ({ bossDiameter, diameter }: { readonly bossDiameter: number; readonly diameter: number }) => bossDiameter > diameter,
}

/** A hollow pin needs a wall. */
export const PIN_HAS_WALL = {
  accepts: 'must be smaller than the pin',
  holds: ({ pinBore, diameter }: { readonly pinBore: number; readonly diameter: number }) => pinBore < diameter,
}

/** Friction surface of a press fit. */
export const GRIPPING_FIT = {
  /** Pressure of the fit, at its temperature and time. */
  pressure: { kind: 'stress', min: 0 },
  /** Diameter of the interface. */
  diameter: DIAMETER,
  /** Engaged length. */
  length: DIAMETER,
  /** Coefficient of friction. */
  friction: { kind: 'ratio', min: 0 },
} as const

/** Strength of a bond and what reduces it. */
export const BOND = {
  /** Shear strength of the adhesive on its test material at 23 °C (`bondPrior` where no test was made). */
  shearStrength: { kind: 'stress', above: 0 },
  /** Share kept on these materials. */
  materialFactor: { kind: 'ratio', above: 0, max: 1, default: 1 },
  /** Share kept with this gap. */
  gapFactor: { kind: 'ratio', above: 0, max: 1, default: 1 },
  /** Share kept under alternating load. */
  fatigueFactor: { kind: 'ratio', above: 0, max: 1, default: 1 },
  /** Share kept after ageing. */
  ageingFactor: { kind: 'ratio', above: 0, max: 1, default: 1 },
  /** Temperature of the joint. */
  temperature: 'temperature',
  /** Glass transition of the cured adhesive. */
  glassTransitionTemperature: 'glassTransitionTemperature',
  /** Glass transition of a part that loses its strength there, such as an amorphous print. Default: none, as for metals. */
  partGlassTransitionTemperature: { kind: 'glassTransitionTemperature', optional: true },
} as const

/** One part of a glued lap. */
export const ADHEREND = {
  fields: {
    /** Thickness. */
    thickness: DIAMETER,
    /** Modulus along the joint. */
    modulus: { kind: 'modulus', above: 0 },
    /** Thermal expansion. */
    thermalExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
  },
} as const

/** Geometry, parts and adhesive of a glued lap. */
export const LAP = {
  /** Width. */
  width: DIAMETER,
  /** Length of the lap. */
  overlap: DIAMETER,
  /** Single or double lap. */
  lap: { oneOf: ['single', 'double'] },
  /** Inner part (either one of a single lap). */
  inner: ADHEREND,
  /** Outer part, each. */
  outer: ADHEREND,
  /** Thickness of the adhesive. */
  bondThickness: DIAMETER,
  /** Shear modulus of the adhesive. */
  shearModulus: { kind: 'modulus', above: 0 },
} as const

/** A cord end glued into a round socket. */
export const POTTED_END = {
  /** Tension of the cord. */
  force: { kind: 'force', min: 0 },
  /** Diameter of the cord. */
  cordDiameter: DIAMETER,
  /** Bore of the socket. */
  boreDiameter: DIAMETER,
  /** Bonded length. */
  length: DIAMETER,
  /** Force per strain of the cord. */
  cordRigidity: { kind: 'axialRigidity', above: 0 },
  /** Force per strain of the socket's wall; a very large one for a rigid socket. */
  socketRigidity: { kind: 'axialRigidity', above: 0 },
  /** Shear modulus of the adhesive. */
  shearModulus: { kind: 'modulus', above: 0 },
  /** Where the socket is held. */
  held: { oneOf: ['mouth', 'farEnd'] },
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

/** A force across a pin that sticks out of a bore. */
export const EMBEDDED_PIN = {
  /** Force across the pin. */
  force: { kind: 'force', min: 0 },
  /** Distance of the force from the mouth of the bore, on the outside. */
  arm: { kind: 'length', min: 0 },
  /** Embedded length. */
  depth: DIAMETER,
  /** Diameter of the pin. */
  diameter: DIAMETER,
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
