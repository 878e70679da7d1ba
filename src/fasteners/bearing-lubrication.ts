import { formula } from '../formula/index.js'

/** Contamination factor by how clean the bearing runs: typical value for bearings below 100 mm mean diameter. */
const CLEANLINESS = { extreme: 1, high: 0.7, normal: 0.55, slight: 0.4, typical: 0.2, severe: 0.05, verySevere: 0 } as const

/** Upper end of each range of the viscosity ratio, and the constants of its curve: 2.5671 − a/κ^b. */
const CURVES = [
  { upTo: 0.4, a: 2.2649, b: 0.054381 },
  { upTo: 1, a: 1.9987, b: 0.19087 },
  { upTo: Number.POSITIVE_INFINITY, a: 1.9987, b: 0.071739 },
] as const

/**
 * What lubrication and dirt make of a ball bearing's rating life: multiply the life of `bearingLife` by the factor.
 *
 * An open bearing full of mud reaches a tenth of its rating life however lightly it is loaded. Grease counts with the viscosity of its base oil at the
 * temperature of the bearing.
 */
export const bearingLifeFactor = /* @__PURE__ */ formula('fasteners.bearingLifeFactor', {
  inputs: {
    /** Kinematic viscosity of the oil at the temperature of the bearing. */
    viscosity: { kind: 'kinematicViscosity', above: 0 },
    /** Mean of bore and outside diameter. */
    meanDiameter: { kind: 'length', above: 0 },
    /** Speed; of an oscillating joint its mean speed. */
    speed: { kind: 'angularVelocity', above: 0 },
    /** How clean it runs: extreme and high for sealed bearings of clean rooms, normal for sealed and greased, slight for shielded, typical and severe without seals. */
    cleanliness: { oneOf: ['extreme', 'high', 'normal', 'slight', 'typical', 'severe', 'verySevere'] },
    /** Fatigue load limit; for ball bearings about a 22nd of the static rating. */
    fatigueLoadLimit: { kind: 'force', above: 0 },
    /** Equivalent dynamic load. */
    load: { kind: 'force', above: 0 },
  },
  output: {
    /** Viscosity at which the surfaces just part. */
    referenceViscosity: 'kinematicViscosity',
    /** Viscosity over reference viscosity; at most 4 counts. */
    viscosityRatio: 'ratio',
    /** Contamination factor. */
    contaminationFactor: 'ratio',
    /** Factor on the rating life, 0.1 to 50. */
    lifeFactor: 'ratio',
    /** How the surfaces run. */
    state: { oneOf: ['separated', 'mixed', 'boundary'] },
  },
  equation: ['viscosityRatio == viscosity / referenceViscosity'],
  assumes: ['radial ball bearing', 'mean diameter below 100 mm', 'fatigue of the raceways: abrasive wear by mud is not counted'],
  source: [
    {
      level: 'standard',
      where:
        'ISO 281:2007, 9.3.3, equations 31 to 33 (constants read in two reproductions), contamination factors of its table 13 unverified',
    },
    {
      level: 'arithmetic',
      where: 'exponent 0.19087 and not 0.019087, as one reproduction has it: only the former joins the curves at κ = 0.4',
    },
  ],
  valid: {
    'viscosity ratio of at least 0.1': (_, { viscosityRatio }) => viscosityRatio >= 0.1,
    'life factor below its ceiling of 50': (_, { lifeFactor }) => lifeFactor < 50,
  },
  si: ({ viscosity, meanDiameter, speed, cleanliness, fatigueLoadLimit, load }) => {
    const rpm = (speed * 30) / Math.PI
    const mm = meanDiameter * 1000
    const referenceViscosity = 1e-6 * (rpm < 1000 ? 45_000 * rpm ** -0.83 : 4500 / Math.sqrt(rpm)) * mm ** -0.5
    const viscosityRatio = viscosity / referenceViscosity
    const kappa = Math.min(4, Math.max(0.1, viscosityRatio))
    const { a, b } = CURVES.find(({ upTo }) => kappa < upTo)!
    const contaminationFactor = CLEANLINESS[cleanliness]
    const rest = 1 - (2.5671 - a / kappa ** b) ** 0.83 * Math.cbrt((contaminationFactor * fatigueLoadLimit) / load)
    return {
      referenceViscosity,
      viscosityRatio,
      contaminationFactor,
      lifeFactor: rest <= 0 ? 50 : Math.min(50, 0.1 * rest ** -9.3),
      state: viscosityRatio >= 4 ? ('separated' as const) : viscosityRatio >= 1 ? ('mixed' as const) : ('boundary' as const),
    }
  },
})
