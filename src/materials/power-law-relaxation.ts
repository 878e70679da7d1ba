import { formula } from '../formula/index.js'
import { gamma, mittagLeffler } from '../numeric/index.js'
import { CREEP_COEFFICIENT, CREEP_EXPONENT, MODULUS, REFERENCE_TIME, TIME_HELD } from './creep-inputs.js'

/**
 * Relaxation modulus of a material that creeps as a pure power of time: E(t) = sin(nπ)/(nπ) / J(t).
 * The factor below one is what is wrong with taking the reciprocal of the creep compliance.
 */
export const powerLawRelaxationModulus = /* @__PURE__ */ formula('materials.powerLawRelaxationModulus', {
  inputs: {
    /** Creep compliance at the time. */
    compliance: { kind: 'creepCompliance', above: 0 },
    /** Exponent of time in J = J₁ tⁿ. */
    creepExponent: { kind: 'ratio', above: 0, below: 1 },
  },
  /** Relaxation modulus at the same time. */
  output: 'modulus',
  equation: ['result = sin(creepExponent * pi) / (creepExponent * pi * compliance)'],
  assumes: ['linear viscoelasticity', 'compliance a pure power of time, without an elastic part'],
  source: [{ level: 'unverified', where: 'Ferry, Viscoelastic Properties of Polymers, 3rd ed.; Park & Schapery 1999' }],
  si: ({ compliance, creepExponent }) => Math.sin(creepExponent * Math.PI) / (creepExponent * Math.PI) / compliance,
})

/**
 * Relaxation modulus of a material that creeps by the Findley law, exactly: E(t) = E₀ Eₙ(−c Γ(1+n) (t/t₁)ⁿ) with the Mittag-Leffler
 * function Eₙ.
 */
export const findleyRelaxationModulus = /* @__PURE__ */ formula('materials.findleyRelaxationModulus', {
  title: 'Findley relaxation modulus',
  inputs: {
    ...MODULUS,
    ...CREEP_COEFFICIENT,
    ...CREEP_EXPONENT,
    ...TIME_HELD,
    ...REFERENCE_TIME,
  },
  /** Relaxation modulus. */
  output: 'modulus',
  assumes: ['linear viscoelasticity', 'strain imposed at once and held'],
  source: [
    {
      level: 'computed',
      where:
        'Laplace transform of the Findley compliance inverted; Mittag-Leffler function as in Podlubny, Fractional Differential Equations, 1999',
    },
  ],
  si: ({ modulus, creepCoefficient, creepExponent, time, referenceTime }) =>
    modulus * mittagLeffler(creepExponent, 1, -creepCoefficient * gamma(1 + creepExponent) * (time / referenceTime) ** creepExponent),
})
