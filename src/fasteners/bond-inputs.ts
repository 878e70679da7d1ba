// Inputs that formulas of bonds share.

const DIAMETER = { kind: 'length', above: 0 } as const

/** A cured adhesive and its temperature. */
export const JOINT_TEMPERATURE = {
  /** Temperature of the joint. */
  temperature: 'temperature',
  /** Glass transition of the cured adhesive. */
  glassTransitionTemperature: 'glassTransitionTemperature',
} as const

export const BONDED_LENGTH = {
  /** Bonded length. */
  length: { kind: 'length', above: 0 },
} as const

export const CORD_TENSION = {
  /** Tension of the cord. */
  force: { kind: 'force', min: 0 },
} as const

export const ADHESIVE_SHEAR_MODULUS = {
  /** Shear modulus of the adhesive. */
  shearModulus: { kind: 'modulus', above: 0 },
} as const

export const CHANGE_SINCE_CURE = {
  /** Temperature minus temperature of cure. */
  temperatureChange: { kind: 'temperatureDifference', default: '0 K' },
} as const

export const OVERLAP = {
  /** Length of the lap. */
  overlap: { kind: 'length', above: 0 },
} as const

export const BOND_THICKNESS = {
  /** Thickness of the adhesive. */
  bondThickness: { kind: 'length', above: 0 },
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
  ...JOINT_TEMPERATURE,
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
  ...OVERLAP,
  /** Single or double lap. */
  lap: { oneOf: ['single', 'double'] },
  /** Inner part (either one of a single lap). */
  inner: ADHEREND,
  /** Outer part, each. */
  outer: ADHEREND,
  ...BOND_THICKNESS,
  ...ADHESIVE_SHEAR_MODULUS,
} as const

/** A cord end glued into a round socket. */
export const POTTED_END = {
  ...CORD_TENSION,
  /** Diameter of the cord. */
  cordDiameter: DIAMETER,
  /** Bore of the socket. */
  boreDiameter: DIAMETER,
  ...BONDED_LENGTH,
  /** Force per strain of the cord. */
  cordRigidity: { kind: 'axialRigidity', above: 0 },
  /** Force per strain of the socket's wall; a very large one for a rigid socket. */
  socketRigidity: { kind: 'axialRigidity', above: 0 },
  ...ADHESIVE_SHEAR_MODULUS,
  /** Where the socket is held. */
  held: { oneOf: ['mouth', 'farEnd'] },
} as const
