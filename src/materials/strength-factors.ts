import { formula } from '../formula/index.js'

/** The temperature of data sheets, 23 °C. */
export const ROOM = 296.15
const MINUTE = 60
const THOUSAND_HOURS = 3.6e6
const YEAR = 31557600

/**
 * Share of its room-temperature strength that an amorphous polymer keeps when warm.
 * A straight line from 1 at 23 °C to 0 at a margin below the glass transition; above that no continuous load may be carried.
 * The ranking of polymers by this rule is supported by tests, its slope is not.
 */
export const amorphousStrengthFactor = /* @__PURE__ */ formula('materials.amorphousStrengthFactor', {
  inputs: {
    /** Temperature of the part. */
    temperature: { kind: 'temperature', min: 0 },
    /** Glass transition by DSC half step. */
    glassTransition: { kind: 'glassTransitionTemperature', above: 0 },
    /** How far below the glass transition strength is taken as gone. */
    margin: { kind: 'temperatureDifference', min: 0, default: '15 K' },
  },
  output: {
    /** Share of the strength at 23 °C. */
    factor: 'ratio',
    /** Temperature above which nothing may be carried for long. */
    limit: 'temperature',
    /** Whether the temperature is below that limit. */
    state: { oneOf: ['usable', 'aboveLimit'] },
  },
  assumes: ['strength falls linearly with temperature', 'cold below 23 °C adds nothing that is counted'],
  source: [
    {
      level: 'assumption',
      where: 'linear engineering rule; that the order follows the glass transition: Sehhat et al. 2022, IJAMT 120:4791, abstract',
    },
  ],
  valid: {
    'glass transition above 40 °C, below which the line is too steep to mean anything': ({ glassTransition }) => glassTransition >= 313.15,
  },
  si: ({ temperature, glassTransition, margin }) => {
    const limit = glassTransition - margin
    const factor = temperature >= limit ? 0 : temperature <= ROOM ? 1 : (limit - temperature) / (limit - ROOM)
    return { factor, limit, state: temperature >= limit ? 'aboveLimit' : 'usable' }
  },
})

/**
 * Share of its room-temperature strength that a material keeps when warm, from measured points.
 * Straight lines between the points; 1 below the first and nothing above the last, since a table must not be extrapolated.
 */
export const tabulatedStrengthFactor = /* @__PURE__ */ formula('materials.tabulatedStrengthFactor', {
  inputs: {
    /** Temperature of the part. */
    temperature: { kind: 'temperature', min: 0 },
    /** Temperatures of the points, rising. */
    temperatures: { list: { kind: 'temperature', min: 0 }, least: 2 },
    /** Share of the strength at 23 °C at each point, falling. */
    shares: { list: { kind: 'ratio', min: 0, max: 1 }, least: 2 },
  },
  output: {
    /** Share of the strength at 23 °C. */
    factor: 'ratio',
    /** Whether the temperature lies within the table. */
    state: { oneOf: ['usable', 'aboveTable'] },
  },
  assumes: ['straight lines between measured temperatures', 'cold below the first point adds nothing that is counted'],
  source: [{ level: 'published', where: 'Crawford, Plastics Engineering, 3rd ed., p. 116 (interpolation between measured temperatures)' }],
  requires: {
    temperatures: {
      accepts: 'must rise from point to point',
      holds: ({ temperatures }) => temperatures.every((t, i) => i === 0 || t > (temperatures[i - 1] as number)),
    },
    shares: {
      accepts: 'must be as many as temperatures, and never rise',
      holds: ({ temperatures, shares }) =>
        temperatures.length === shares.length && shares.every((share, i) => i === 0 || share <= (shares[i - 1] as number)),
    },
  },
  si: ({ temperature, temperatures, shares }) => {
    const last = temperatures.length - 1
    let i = 0
    while (i < last && temperature > (temperatures[i + 1] as number)) i++
    const from = temperatures[i] as number
    const to = temperatures[i + 1] as number
    const above = temperature > (temperatures[last] as number)
    const between = (shares[i] as number) + (((shares[i + 1] as number) - (shares[i] as number)) * (temperature - from)) / (to - from)
    return {
      factor: above ? 0 : temperature <= (temperatures[0] as number) ? (shares[0] as number) : between,
      state: above ? 'aboveTable' : 'usable',
    }
  },
})

/**
 * Share of short-term strength that may be carried for a given time.
 * 1 up to a minute, then straight in the logarithm of time through the shares at 1000 hours and one year; beyond a year a power law of the
 * average steepness.
 */
export const durationFactor = /* @__PURE__ */ formula('materials.durationFactor', {
  inputs: {
    /** Time under load. */
    duration: { kind: 'time', min: 0 },
    /** Share kept after 1000 hours. */
    kept1000Hours: { kind: 'ratio', above: 0, max: 1 },
    /** Share kept after a year. */
    kept1Year: { kind: 'ratio', above: 0, max: 1 },
  },
  /** Share of the short-term strength. */
  output: 'ratio',
  assumes: ['steady load at 23 °C', 'strength falls evenly with the logarithm of time between the known points'],
  source: [{ level: 'unverified', where: 'BS 4618 and plastics design practice: stress for rupture falls evenly with log time' }],
  valid: { 'a duration of at most ten years': ({ duration }) => duration <= 10 * YEAR },
  requires: {
    kept1Year: {
      accepts: 'must be at most the share after 1000 hours',
      holds: ({ kept1000Hours, kept1Year }) => kept1Year <= kept1000Hours,
    },
  },
  si: ({ duration, kept1000Hours, kept1Year }) =>
    duration <= MINUTE
      ? 1
      : duration <= THOUSAND_HOURS
        ? 1 - (1 - kept1000Hours) * (Math.log(duration / MINUTE) / Math.log(THOUSAND_HOURS / MINUTE))
        : duration <= YEAR
          ? kept1000Hours - (kept1000Hours - kept1Year) * (Math.log(duration / THOUSAND_HOURS) / Math.log(YEAR / THOUSAND_HOURS))
          : kept1Year * (duration / YEAR) ** (Math.log(kept1Year) / Math.log(YEAR / MINUTE)),
})

/**
 * Share of tensile strength that a polymer survives for a number of load cycles (normalised S-N line).
 * Strength falls as a power of the number of cycles, through 1 at one cycle and the known share at a million.
 */
export const fatigueFactor = /* @__PURE__ */ formula('materials.fatigueFactor', {
  inputs: {
    /** Number of load cycles. */
    cycles: { kind: 'count', min: 1 },
    /** Share at a million cycles: largest stress over tensile strength. */
    ratioAtMillion: { kind: 'ratio', above: 0, max: 1 },
  },
  /** Largest stress of the cycle over tensile strength. */
  output: 'ratio',
  assumes: ['stress ratio about 0.1', 'slow enough not to heat the polymer', 'the line of a print follows its own static strength'],
  source: [
    { level: 'unverified', where: 'Basquin 1910 (power law)' },
    {
      level: 'published',
      where: 'Materials 2024, 17:5394, abstract (printed PLA of all print angles fall on one line when divided by static strength)',
    },
  ],
  valid: { 'at most ten million cycles': ({ cycles }) => cycles <= 1e7 },
  si: ({ cycles, ratioAtMillion }) => cycles ** (Math.log10(ratioAtMillion) / 6),
})

/**
 * Share of its dry strength or stiffness that a polymer keeps with a given water content.
 * Straight lines from dry to the content at 50 % humidity and on to saturation.
 */
export const moistureFactor = /* @__PURE__ */ formula('materials.moistureFactor', {
  inputs: {
    /** Water content by mass. */
    moisture: { kind: 'ratio', min: 0 },
    /** Water content in equilibrium with 50 % humidity. */
    conditioned: { kind: 'ratio', above: 0 },
    /** Water content when soaked. */
    saturated: { kind: 'ratio', above: 0 },
    /** Share kept at 50 % humidity. */
    conditionedShare: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept when soaked. */
    saturatedShare: { kind: 'ratio', min: 0, max: 1 },
  },
  /** Share of the dry value. */
  output: 'ratio',
  assumes: ['water is spread evenly through the wall', 'the effect is that of the content alone'],
  source: [{ level: 'commonPractice', where: 'interpolation between dry, conditioned and saturated data-sheet values' }],
  valid: { 'a content at most that of saturation': ({ moisture, saturated }) => moisture <= saturated * (1 + 1e-12) },
  requires: {
    saturated: { accepts: 'must be above the conditioned content', holds: ({ conditioned, saturated }) => saturated > conditioned },
    saturatedShare: {
      accepts: 'must be at most the share at 50 % humidity',
      holds: ({ conditionedShare, saturatedShare }) => saturatedShare <= conditionedShare,
    },
  },
  si: ({ moisture, conditioned, saturated, conditionedShare, saturatedShare }) =>
    moisture <= conditioned
      ? 1 - (1 - conditionedShare) * (moisture / conditioned)
      : moisture < saturated
        ? conditionedShare - ((conditionedShare - saturatedShare) * (moisture - conditioned)) / (saturated - conditioned)
        : saturatedShare,
})

/** Allowable stress: strength times every factor that lessens it, over the safety factor. */
export const deratedStrength = /* @__PURE__ */ formula('materials.deratedStrength', {
  inputs: {
    /** Strength at 23 °C, dry, short-term, along the layers. */
    strength: { kind: 'stress', min: 0 },
    /** Share kept in the direction of the load. */
    direction: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept at the temperature. */
    temperature: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept for the duration. */
    duration: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept at the moisture content. */
    moisture: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept for the number of cycles. */
    fatigue: { kind: 'ratio', min: 0, max: 1 },
    /** Safety factor on stress. */
    safetyFactor: { kind: 'ratio', min: 1 },
  },
  /** Allowable stress. */
  output: 'stress',
  assumes: ['the factors act independently, so that their product is on the safe side'],
  source: [{ level: 'commonPractice', where: 'partial factors multiplied, as in plastics design codes' }],
  si: ({ strength, direction, temperature, duration, moisture, fatigue, safetyFactor }) =>
    (strength * direction * temperature * duration * moisture * fatigue) / safetyFactor,
})
