import { formula } from '../formula/index.js'
import { normalQuantile } from '../numeric/index.js'

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
 * Below it a part of steel stands any number of reversals. Stress concentration is not in it: multiply the stress by it.
 */
export const partEnduranceLimit = /* @__PURE__ */ formula('materials.partEnduranceLimit', {
  inputs: {
    /** Ultimate tensile strength. */
    tensileStrength: { kind: 'stress', above: 0 },
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

/**
 * Reserve of a metal part against endless cycles, by the modified Goodman line, and against yield in the first cycle.
 * A steady tension eats into the range that may alternate; a steady compression is not counted as help.
 */
export const goodmanSafetyFactor = /* @__PURE__ */ formula('materials.goodmanSafetyFactor', {
  inputs: {
    /** Amplitude of the stress, concentration included. */
    alternating: { kind: 'stress', min: 0 },
    /** Mean stress, tension positive. */
    mean: 'stress',
    /** Endurance limit of the part. */
    enduranceLimit: { kind: 'stress', above: 0 },
    /** Ultimate strength (shear ultimate for shear stresses). */
    tensileStrength: { kind: 'stress', above: 0 },
    /** Yield strength; given, yield in the first cycle is watched. */
    yieldStrength: { kind: 'stress', above: 0, optional: true },
  },
  output: {
    /** Safety factor on both stresses together; infinite when nothing stresses the part. */
    factor: { kind: 'ratio', infinite: true },
    /** Safety factor against fatigue alone. */
    fatigue: { kind: 'ratio', infinite: true },
    /** Safety factor against yield in the first cycle; infinite when no yield strength was given. */
    firstCycle: { kind: 'ratio', infinite: true },
    /** What would come first. */
    governs: { oneOf: ['fatigue', 'yield'] },
  },
  equation: ['fatigue = 1 / (alternating / enduranceLimit + max(mean, 0 Pa) / tensileStrength)'],
  assumes: ['stresses grow together', 'a steady compression neither helps nor harms'],
  source: [{ level: 'published', where: 'Marks’ Calculations for Machine Design, ch. 7, Goodman theory (pp. 307-308)' }],
  si: ({ alternating, mean, enduranceLimit, tensileStrength, yieldStrength }) => {
    const fatigue = 1 / (alternating / enduranceLimit + Math.max(mean, 0) / tensileStrength)
    const firstCycle = yieldStrength === undefined ? Number.POSITIVE_INFINITY : yieldStrength / (alternating + Math.abs(mean))
    return { factor: Math.min(fatigue, firstCycle), fatigue, firstCycle, governs: firstCycle < fatigue ? 'yield' : 'fatigue' }
  },
})

/** Fully reversed stress that does the same damage as an alternating stress about a mean, by the Goodman line. */
export const reversedStress = /* @__PURE__ */ formula('materials.reversedStress', {
  inputs: {
    /** Amplitude of the stress. */
    alternating: { kind: 'stress', min: 0 },
    /** Mean stress, tension positive. */
    mean: 'stress',
    /** Ultimate tensile strength. */
    tensileStrength: { kind: 'stress', above: 0 },
  },
  /** Amplitude of the equivalent fully reversed stress. */
  output: 'stress',
  equation: ['result = alternating / (1 - max(mean, 0 Pa) / tensileStrength)'],
  assumes: ['modified Goodman line', 'a steady compression neither helps nor harms'],
  source: [
    { level: 'published', where: "Shigley's Mechanical Engineering Design, 11th ed., ch. 6 (equivalent completely reversed stress)" },
  ],
  requires: {
    mean: {
      accepts: 'must be below the tensile strength: the part breaks at the first pull',
      holds: ({ mean, tensileStrength }) => mean < tensileStrength,
    },
  },
  si: ({ alternating, mean, tensileStrength }) => alternating / (1 - Math.max(mean, 0) / tensileStrength),
})

/**
 * Number of fully reversed cycles a steel part stands, on the line between a thousand and a million cycles.
 * At or below the endurance limit the number is infinite and `state` is `endless`.
 */
export const steelLife = /* @__PURE__ */ formula('materials.steelLife', {
  inputs: {
    /** Amplitude of the fully reversed stress. */
    reversed: { kind: 'stress', above: 0 },
    /** Ultimate tensile strength. */
    tensileStrength: { kind: 'stress', above: 0 },
    /** Endurance limit of the part. */
    enduranceLimit: { kind: 'stress', above: 0 },
    /** Strength at a thousand cycles over the tensile strength. */
    thousandCycleShare: { kind: 'ratio', above: 0, max: 1, default: 0.9 },
  },
  output: {
    /** Cycles to failure. */
    cycles: { kind: 'count', infinite: true },
    /** Coefficient of the line: stress extrapolated to one cycle. */
    coefficient: 'stress',
    /** Exponent of the line. */
    exponent: 'ratio',
    /** Whether the part breaks, and whether the line holds there. */
    state: { oneOf: ['endless', 'finite', 'lowCycle'] },
  },
  assumes: ['steel', 'straight line in logarithms from a thousand to a million cycles'],
  source: [{ level: 'published', where: "Shigley's Mechanical Engineering Design, 9th ed., eqs 6-13 to 6-16" }],
  valid: { 'a thousand cycles or more; below, the strain governs': (_, { cycles }) => cycles >= 1000 * (1 - 1e-9) },
  requires: {
    enduranceLimit: {
      accepts: 'must be below the strength at a thousand cycles',
      holds: ({ enduranceLimit, tensileStrength, thousandCycleShare }) => enduranceLimit < thousandCycleShare * tensileStrength,
    },
  },
  si: ({ reversed, tensileStrength, enduranceLimit, thousandCycleShare }) => {
    const thousand = thousandCycleShare * tensileStrength
    const coefficient = thousand ** 2 / enduranceLimit
    const exponent = -Math.log10(thousand / enduranceLimit) / 3
    const endless = reversed <= enduranceLimit
    return {
      cycles: endless ? Number.POSITIVE_INFINITY : (reversed / coefficient) ** (1 / exponent),
      coefficient,
      exponent,
      state: endless ? 'endless' : reversed > thousand ? 'lowCycle' : 'finite',
    }
  },
})
