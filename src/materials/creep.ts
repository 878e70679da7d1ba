import { formula } from '../formula/index.js'
import { CREEP_COEFFICIENT, CREEP_EXPONENT, MODULUS, POWER_LAW, REFERENCE_TIME, TIME_UNDER_LOAD } from './creep-inputs.js'

const STRESS = {
  /** Constant stress, applied at time zero. */
  stress: 'stress',
} as const

const CREEP_EXPONENT_OF_ALL_STRESSES = {
  /** Exponent of time; does not depend on stress. */
  creepExponent: { kind: 'ratio', above: 0, below: 1 },
} as const

const WATCHED_STRENGTH = {
  /** Short-term strength; given, the linear range is watched. */
  strength: { kind: 'stress', above: 0, optional: true },
} as const

/**
 * Creep strain under a constant stress by the Findley power law, in its linear range.
 * ε(t) = σ/E₀ · (1 + c (t/t₁)ⁿ): elastic strain, plus a creep strain that is c times the elastic one at the reference time.
 */
export const findleyStrain = /* @__PURE__ */ formula('materials.findleyStrain', {
  title: 'Findley strain',
  inputs: {
    ...STRESS,
    ...MODULUS,
    ...CREEP_COEFFICIENT,
    ...CREEP_EXPONENT_OF_ALL_STRESSES,
    ...TIME_UNDER_LOAD,
    ...REFERENCE_TIME,
    ...WATCHED_STRENGTH,
  },
  /** Total strain. */
  output: 'strain',
  equation: ['result = stress / modulus * (1 + creepCoefficient * (time / referenceTime)^creepExponent)'],
  assumes: ['constant stress and temperature', 'strain proportional to stress', 'no physical ageing within the time'],
  source: [{ level: 'unverified', where: 'Findley, Lai & Onaran, Creep and Relaxation of Nonlinear Viscoelastic Materials, 1976' }],
  valid: {
    'stress at most half of the strength (linear range of prints: Polymers 2025, 17:2075)': ({ stress, strength }) =>
      strength === undefined || Math.abs(stress) <= 0.5 * strength,
    'a strain of at most 1 %': (_, strain) => Math.abs(strain) <= 0.01,
  },
  si: ({ stress, modulus, creepCoefficient, creepExponent, time, referenceTime }) =>
    (stress / modulus) * (1 + creepCoefficient * (time / referenceTime) ** creepExponent),
})

/**
 * Creep strain under a constant stress by Findley's law with its stress dependence.
 * ε(t) = ε₀ sinh(σ/σₑ) + m (t/t₁)ⁿ sinh(σ/σₘ); for small stress it is the linear law.
 */
export const findleySinhStrain = /* @__PURE__ */ formula('materials.findleySinhStrain', {
  title: 'Findley strain with hyperbolic sines',
  inputs: {
    ...STRESS,
    /** Elastic strain factor ε₀. */
    elasticStrain: { kind: 'strain', min: 0 },
    /** Stress scale of the elastic strain, σₑ. */
    elasticStress: { kind: 'stress', above: 0 },
    /** Creep strain factor m at the reference time. */
    creepStrain: { kind: 'strain', min: 0 },
    /** Stress scale of the creep strain, σₘ. */
    creepStress: { kind: 'stress', above: 0 },
    ...CREEP_EXPONENT_OF_ALL_STRESSES,
    ...TIME_UNDER_LOAD,
    /** Time the creep strain factor is for. */
    referenceTime: { kind: 'time', above: 0, default: '1 h' },
  },
  /** Total strain. */
  output: 'strain',
  equation: [
    'result = elasticStrain * sinh(stress / elasticStress) + creepStrain * (time / referenceTime)^creepExponent * sinh(stress / creepStress)',
  ],
  assumes: ['constant stress and temperature', 'no physical ageing within the time'],
  source: [{ level: 'unverified', where: 'Findley, Lai & Onaran, Creep and Relaxation of Nonlinear Viscoelastic Materials, 1976' }],
  si: ({ stress, elasticStrain, elasticStress, creepStrain, creepStress, creepExponent, time, referenceTime }) =>
    elasticStrain * Math.sinh(stress / elasticStress) +
    creepStrain * (time / referenceTime) ** creepExponent * Math.sinh(stress / creepStress),
})

/** Creep (apparent) modulus: stress over total strain, the number that takes the place of the modulus in elastic formulas. */
export const creepModulus = /* @__PURE__ */ formula('materials.creepModulus', {
  inputs: {
    /** Constant (initial) stress. */
    stress: { kind: 'stress', above: 0 },
    /** Total strain at the time. */
    strain: { kind: 'strain', above: 0 },
  },
  /** Creep modulus. */
  output: 'modulus',
  equation: ['result = stress / strain'],
  assumes: ['stress on the initial area, strain measured by an extensometer'],
  source: [{ level: 'standard', where: 'ISO 899-1 (definition; extensometer required for design data, scope read)' }],
  si: ({ stress, strain }) => stress / strain,
})

/** Creep strain, elastic part apart, by the Norton-Bailey law ε = ε₁ (σ/σ₁)ᵖ (t/t₁)^q. */
export const nortonBaileyStrain = /* @__PURE__ */ formula('materials.nortonBaileyStrain', {
  title: 'Norton-Bailey strain',
  inputs: {
    /** Constant stress. */
    stress: { kind: 'stress', min: 0 },
    ...TIME_UNDER_LOAD,
    ...POWER_LAW,
  },
  /** Creep strain. */
  output: 'strain',
  equation: ['result = referenceStrain * (stress / referenceStress)^stressExponent * (time / referenceTime)^timeExponent'],
  assumes: ['constant stress and temperature', 'primary creep only'],
  source: [{ level: 'unverified', where: 'Norton 1929; Bailey 1935; Kraus, Creep Analysis, 1980' }],
  si: ({ stress, time, referenceStrain, referenceStress, referenceTime, stressExponent, timeExponent }) =>
    referenceStrain * (stress / referenceStress) ** stressExponent * (time / referenceTime) ** timeExponent,
})

/** Time until the total strain under a constant stress reaches a limit, by the linear Findley law. */
export const findleyTimeToStrain = /* @__PURE__ */ formula('materials.findleyTimeToStrain', {
  title: 'time to a strain by the Findley law',
  inputs: {
    /** Strain allowed. */
    strain: { kind: 'strain', above: 0 },
    /** Constant stress. */
    stress: { kind: 'stress', above: 0 },
    ...MODULUS,
    /** Creep strain at the reference time over the elastic strain. */
    creepCoefficient: { kind: 'ratio', above: 0 },
    ...CREEP_EXPONENT,
    ...REFERENCE_TIME,
    ...WATCHED_STRENGTH,
  },
  output: {
    /** Time until the strain is reached; zero when the load alone reaches it. */
    time: { kind: 'time', infinite: true },
    /** Whether the strain is reached by creep or already on loading. */
    state: { oneOf: ['byCreep', 'onLoading'] },
  },
  assumes: ['constant stress and temperature', 'linear range'],
  source: [{ level: 'computed', where: 'the Findley law solved for time' }],
  valid: {
    'at most ten years': (_, { time }) => time <= 10 * 31557600,
    'stress at most half of the strength (linear range of prints: Polymers 2025, 17:2075)': ({ stress, strength }) =>
      strength === undefined || stress <= 0.5 * strength,
  },
  si: ({ strain, stress, modulus, creepCoefficient, creepExponent, referenceTime }) => {
    const creep = (strain * modulus) / stress - 1
    return {
      time: creep <= 0 ? 0 : referenceTime * (creep / creepCoefficient) ** (1 / creepExponent),
      state: creep <= 0 ? 'onLoading' : 'byCreep',
    }
  },
})
