import { formula } from '../formula/index.js'
import { TENSILE_STRENGTH } from './inputs.js'

const MEAN = {
  /** Mean stress, tension positive. */
  mean: 'stress',
} as const

const ENDURANCE_LIMIT = {
  /** Endurance limit of the part. */
  enduranceLimit: { kind: 'stress', above: 0 },
} as const

/**
 * Reserve of a metal part against endless cycles, by the modified Goodman line, and against yield in the first cycle.
 * A steady tension eats into the range that may alternate; a steady compression is not counted as help.
 */
export const goodmanSafetyFactor = /* @__PURE__ */ formula('materials.goodmanSafetyFactor', {
  inputs: {
    /** Amplitude of the stress, concentration included. */
    alternating: { kind: 'stress', min: 0 },
    ...MEAN,
    ...ENDURANCE_LIMIT,
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
    /** Failure that comes first. */
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
    ...MEAN,
    ...TENSILE_STRENGTH,
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
 * Number of fully reversed cycles a steel part withstands, on the line between a thousand and a million cycles.
 * At or below the endurance limit the number is infinite and `state` is `endless`.
 */
export const steelLife = /* @__PURE__ */ formula('materials.steelLife', {
  title: 'load cycles of a steel part',
  inputs: {
    /** Amplitude of the fully reversed stress. */
    reversed: { kind: 'stress', above: 0 },
    ...TENSILE_STRENGTH,
    ...ENDURANCE_LIMIT,
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
