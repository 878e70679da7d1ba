import { formula } from '../formula/index.js'
import { DURATION } from './inputs.js'
import { MINUTE, THOUSAND_HOURS } from './strength-factors.js'

const TEMPERATURE_SHARE = {
  /** Share kept at the temperature. */
  temperature: { kind: 'ratio', min: 0, max: 1 },
} as const

const MOISTURE = {
  /** Share kept at the moisture content. */
  moisture: { kind: 'ratio', min: 0, max: 1 },
} as const

/** Stress allowed against rupture: strength times every factor that lessens it, over the safety factor. */
export const deratedStrength = /* @__PURE__ */ formula('materials.deratedStrength', {
  inputs: {
    /** Strength at 23 °C, dry, short-term, along the layers. */
    strength: { kind: 'stress', min: 0 },
    /** Share kept in the direction of the load. */
    direction: { kind: 'ratio', min: 0, max: 1 },
    ...TEMPERATURE_SHARE,
    /** Share kept for the duration. */
    duration: { kind: 'ratio', min: 0, max: 1 },
    ...MOISTURE,
    /** Share kept for the number of cycles. */
    fatigue: { kind: 'ratio', min: 0, max: 1 },
    /** Safety factor on stress. */
    safetyFactor: { kind: 'ratio', min: 1 },
  },
  /** Allowable stress. */
  output: 'stress',
  equation: ['result = strength * direction * temperature * duration * moisture * fatigue / safetyFactor'],
  assumes: ['the factors act independently, so that their product is on the safe side'],
  source: [{ level: 'commonPractice', where: 'partial factors multiplied, as in plastics design codes' }],
  si: ({ strength, direction, temperature, duration, moisture, fatigue, safetyFactor }) =>
    (strength * direction * temperature * duration * moisture * fatigue) / safetyFactor,
})

/** Modulus to put into elastic formulas: the short-term modulus times the shares left by temperature and water, over the growth of strain by creep. */
export const deratedModulus = /* @__PURE__ */ formula('materials.deratedModulus', {
  inputs: {
    /** Short-term modulus at 23 °C, dry. */
    modulus: { kind: 'modulus', min: 0 },
    ...TEMPERATURE_SHARE,
    ...MOISTURE,
    /** Total strain after the time under load over the strain at once. */
    creepRatio: { kind: 'ratio', min: 1 },
  },
  /** Stress over strain after the time. */
  output: 'modulus',
  equation: ['result = modulus * temperature * moisture / creepRatio'],
  assumes: ['temperature, water and time act independently', 'strain proportional to stress'],
  source: [{ level: 'commonPractice', where: 'creep (apparent) modulus in the place of the modulus, as in plastics design' }],
  si: ({ modulus, temperature, moisture, creepRatio }) => (modulus * temperature * moisture) / creepRatio,
})

/**
 * Stress at which a part that stays loaded reaches its design strain.
 * Up to a minute the short-term strength is the limit; from 1000 hours the design strain times the creep modulus; between them the stress goes straight in
 * the logarithm of time. A design strain carries its own margin against crazing and creep rupture: no safety factor divides it again.
 */
export const strainLimitedStress = /* @__PURE__ */ formula('materials.strainLimitedStress', {
  inputs: {
    /** Short-term strength at the temperature, in the direction and moisture state. */
    shortTermStrength: { kind: 'stress', min: 0 },
    /** Creep modulus at the temperature after the time. */
    modulus: { kind: 'modulus', min: 0 },
    /** Design strain under long load. */
    strainLimit: { kind: 'strain', above: 0 },
    ...DURATION,
  },
  /** Stress that the design strain allows. */
  output: 'stress',
  equation: [
    'share = min(1, max(0, log(duration / (60 s)) / log(60000)))',
    'result = shortTermStrength * (1 - share) + modulus * strainLimit * share',
  ],
  assumes: ['linear creep', 'the limit of strain tightens with the logarithm of time from a minute to 1000 hours'],
  source: [
    {
      level: 'published',
      where: 'Crawford, Plastics Engineering, 3rd ed., ch. 2 (design by a limiting strain and the creep modulus at the time)',
    },
    { level: 'assumption', where: 'the straight line in log time between a minute and 1000 hours' },
  ],
  si: ({ shortTermStrength, modulus, strainLimit, duration }) => {
    const long = Math.min(1, Math.max(0, Math.log(duration / MINUTE) / Math.log(THOUSAND_HOURS / MINUTE)))
    return shortTermStrength * (1 - long) + modulus * strainLimit * long
  },
})
