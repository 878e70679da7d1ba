// Inputs that formulas of cords and ropes share.

export const CORD_RIGIDITY = {
  /** Axial rigidity EA of the cord. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
} as const

export const CORD_DIAMETER = {
  /** Diameter of the cord. */
  cordDiameter: { kind: 'length', above: 0 },
} as const

export const ROPE_GRADE = {
  /** Rope grade: nominal tensile strength of the wires. */
  grade: { kind: 'stress', above: 0 },
} as const

export const END_TIME = {
  /** Time at the end. */
  to: { kind: 'time', above: 0 },
} as const

export const BEDDED_RIGIDITY = {
  /** Axial rigidity of the bedded-in cord. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
} as const

export const TAUT_SPAN = {
  /** Tension of the taut span. */
  tautTension: { kind: 'force', min: 0 },
} as const

export const SLACK_SPAN = {
  /** Tension of the slack span. */
  slackTension: { kind: 'force', min: 0 },
} as const

export const CORD_TENSION = {
  /** Tension of the cord. */
  tension: { kind: 'force', min: 0 },
} as const

export const SLACK_END = {
  /** Tension at the slack end. */
  slackTension: { kind: 'force', above: 0 },
} as const

export const TAUT_CORD_DIAMETER = {
  /** Diameter of the cord under tension. */
  cordDiameter: { kind: 'length', above: 0 },
} as const
