import { formula } from '../formula/index.js'
import { TIME_HELD, TIME_UNDER_LOAD } from './creep-inputs.js'

/** Relaxation modulus of a Prony series: E(t) = E∞ + Σ Eᵢ exp(−t/τᵢ). */
export const pronyRelaxationModulus = /* @__PURE__ */ formula('materials.pronyRelaxationModulus', {
  inputs: {
    /** Modulus after endless time; zero for a fluid. */
    longTermModulus: { kind: 'modulus', min: 0 },
    /** Terms of the series. */
    terms: {
      list: {
        fields: {
          /** Modulus Eᵢ of the term. */
          modulus: { kind: 'modulus', min: 0 },
          /** Relaxation time τᵢ of the term. */
          time: { kind: 'time', above: 0 },
        },
      },
    },
    ...TIME_HELD,
  },
  /** Relaxation modulus. */
  output: 'modulus',
  assumes: ['linear viscoelasticity'],
  source: [{ level: 'unverified', where: 'Ferry, Viscoelastic Properties of Polymers, 3rd ed.; generalised Maxwell model' }],
  si: ({ longTermModulus, terms, time }) => {
    let modulus = longTermModulus
    for (const term of terms) modulus += term.modulus * Math.exp(-time / term.time)
    return modulus
  },
})

/** Creep compliance of a Prony series: J(t) = J₀ + Σ Jₖ (1 − exp(−t/λₖ)) + t/η. */
export const pronyCreepCompliance = /* @__PURE__ */ formula('materials.pronyCreepCompliance', {
  inputs: {
    /** Compliance at once. */
    instantCompliance: { kind: 'creepCompliance', min: 0 },
    /** Terms of the series. */
    terms: {
      list: {
        fields: {
          /** Compliance Jₖ of the term. */
          compliance: { kind: 'creepCompliance', min: 0 },
          /** Retardation time λₖ of the term. */
          time: { kind: 'time', above: 0 },
        },
      },
      least: 0,
    },
    /** Viscosity η of continuous flow. Default: a solid, no flow. */
    viscosity: { kind: 'dynamicViscosity', above: 0, optional: true },
    ...TIME_UNDER_LOAD,
  },
  /** Creep compliance: strain per stress. */
  output: 'creepCompliance',
  assumes: ['linear viscoelasticity'],
  source: [{ level: 'unverified', where: 'Ferry, Viscoelastic Properties of Polymers, 3rd ed.; generalised Kelvin model' }],
  si: ({ instantCompliance, terms, viscosity, time }) => {
    let compliance = instantCompliance + (viscosity === undefined ? 0 : time / viscosity)
    for (const term of terms) compliance -= term.compliance * Math.expm1(-time / term.time)
    return compliance
  },
})

/** Retardation time of the standard linear solid: longer than its relaxation time by the ratio of the moduli at once and at last. */
export const standardSolidRetardationTime = /* @__PURE__ */ formula('materials.standardSolidRetardationTime', {
  inputs: {
    /** Relaxation time. */
    relaxationTime: { kind: 'time', above: 0 },
    /** Modulus at once. */
    instantModulus: { kind: 'modulus', above: 0 },
    /** Modulus after endless time. */
    longTermModulus: { kind: 'modulus', above: 0 },
  },
  /** Retardation time. */
  output: 'time',
  equation: ['result = relaxationTime * instantModulus / longTermModulus'],
  assumes: ['one relaxation term'],
  source: [{ level: 'unverified', where: 'Flügge, Viscoelasticity, 2nd ed.; standard linear solid' }],
  valid: { 'modulus at once at least that at last': ({ instantModulus, longTermModulus }) => instantModulus >= longTermModulus },
  si: ({ relaxationTime, instantModulus, longTermModulus }) => (relaxationTime * instantModulus) / longTermModulus,
})
