import { formula } from '../formula/index.js'
import { normalQuantile } from '../numeric/index.js'
import { TENSILE_STRENGTH } from './inputs.js'

/** Surface factor a·Sᵇ with the tensile strength S in MPa. */
const FINISH = {
  ground: [1.58, -0.085],
  machined: [4.51, -0.265],
  hotRolled: [57.7, -0.718],
  forged: [272, -0.995],
} as const

const LOADING = { bending: 1, axial: 0.85, torsion: 0.59 } as const

/** Size factor of a rotating round bar, diameter in millimetres; below 7.62 mm the published line passes 1, which is not counted. */
const sizeOf = (d: number) => Math.min(1, d <= 51 ? 1.24 * d ** -0.107 : 1.51 * d ** -0.157)

/** Strength at temperature over strength at room temperature of steel, a fitted polynomial in degrees Fahrenheit. */
const warmShare = (kelvin: number) => {
  const f = (kelvin - 273.15) * 1.8 + 32
  return f < 70 ? 1 : 0.975 + f * (0.432e-3 + f * (-0.115e-5 + f * (0.104e-8 - 0.595e-12 * f)))
}

/**
 * Endurance limit of a steel part: that of a polished specimen times the Marin factors for surface, size, loading, temperature and reliability.
 * Below it a part of steel withstands any number of reversals. Stress concentration is not in it: multiply the stress by it.
 */
export const partEnduranceLimit = /* @__PURE__ */ formula('materials.partEnduranceLimit', {
  inputs: {
    ...TENSILE_STRENGTH,
    /** Surface of the stressed zone. */
    finish: { oneOf: ['ground', 'machined', 'hotRolled', 'forged'] },
    /** Diameter of the round bar. */
    diameter: { kind: 'length', above: 0 },
    /** Kind of stress that reverses. */
    loading: { oneOf: ['bending', 'axial', 'torsion'], default: 'bending' },
    /** Whether the bar turns against its load, so that all of its surface sees the highest stress. */
    rotating: { flag: true, default: true },
    /** Temperature of the part. */
    temperature: { kind: 'temperature', above: 0, default: '20 degC' },
    /** Share of parts that are to survive. */
    reliability: { kind: 'ratio', min: 0.5, below: 1, default: 0.99 },
    /** Endurance limit of a polished rotating specimen where it is known; half of the strength, at most 700 MPa, where it is not. */
    specimenLimit: { kind: 'stress', above: 0, optional: true },
  },
  output: {
    /** Endurance limit of the part, as the amplitude of a fully reversed stress. */
    limit: 'stress',
    /** Endurance limit of the polished rotating specimen. */
    specimen: 'stress',
    /** Surface factor. */
    surface: 'ratio',
    /** Diameter of the rotating bar with as much highly stressed material. */
    equivalentDiameter: 'length',
    /** Size factor. */
    size: 'ratio',
    /** Loading factor. */
    load: 'ratio',
    /** Temperature factor. */
    warmth: 'ratio',
    /** Reliability factor. */
    reliable: 'ratio',
  },
  assumes: ['steel', 'no corrosion, no fretting, no residual tension', 'scatter of the endurance limit 8 %'],
  source: [
    {
      level: 'published',
      where: "Shigley's Mechanical Engineering Design, 9th ed., eqs 6-8, 6-18 to 6-29, tables 6-2, 6-3, 6-5 (pp. 282-293, 345)",
    },
  ],
  valid: {
    'bars of at most 254 mm': (_, { equivalentDiameter }) => equivalentDiameter <= 0.254,
    'at most 540 °C': ({ temperature }) => temperature <= 813.15,
    'a surface factor of at most 1': (_, { surface }) => surface <= 1,
  },
  si: ({ tensileStrength, finish, diameter, loading, rotating, temperature, reliability, specimenLimit }) => {
    const specimen = specimenLimit ?? Math.min(0.5 * tensileStrength, 700e6)
    const [a, b] = FINISH[finish]
    const surface = a * (tensileStrength / 1e6) ** b
    const equivalentDiameter = rotating || loading !== 'bending' ? diameter : 0.37 * diameter
    const size = loading === 'axial' ? 1 : sizeOf(equivalentDiameter * 1000)
    const load = LOADING[loading]
    const warmth = warmShare(temperature)
    const reliable = 1 - 0.08 * normalQuantile(reliability)
    return {
      limit: specimen * surface * size * load * warmth * reliable,
      specimen,
      surface,
      equivalentDiameter,
      size,
      load,
      warmth,
      reliable,
    }
  },
})
