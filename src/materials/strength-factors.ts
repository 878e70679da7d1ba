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
    /** Distance below the glass transition at which the strength is assumed to be zero. */
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
  equation: [
    'limit = glassTransition - margin',
    'factor = temperature >= limit ? 0 : temperature <= 296.15 K ? 1 : (limit - temperature) / (limit - 296.15 K)',
  ],
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

/** Share of short-term strength left after a time at 23 °C: 1 up to a minute, then straight in log time through both shares, then a power law. */
const keptAtRoom = (duration: number, kept1000Hours: number, kept1Year: number): number =>
  duration <= MINUTE
    ? 1
    : duration <= THOUSAND_HOURS
      ? 1 - (1 - kept1000Hours) * (Math.log(duration / MINUTE) / Math.log(THOUSAND_HOURS / MINUTE))
      : duration <= YEAR
        ? kept1000Hours - (kept1000Hours - kept1Year) * (Math.log(duration / THOUSAND_HOURS) / Math.log(YEAR / THOUSAND_HOURS))
        : kept1Year * (duration / YEAR) ** (Math.log(kept1Year) / Math.log(YEAR / MINUTE))

/**
 * Share of the short-term strength at its own temperature that a part carries for a given time.
 * At 23 °C it is 1 up to a minute, then straight in the logarithm of time through the shares at 1000 hours and one year; beyond a year a power law of the
 * average steepness. When warm, time runs faster by the shift of creep: the share is that after t/a over that after a minute/a, because the short-term strength at
 * the temperature already contains the loss within the first minute.
 */
export const durationFactor = /* @__PURE__ */ formula('materials.durationFactor', {
  inputs: {
    /** Time under load. */
    duration: { kind: 'time', min: 0 },
    /** Share kept after 1000 hours. */
    kept1000Hours: { kind: 'ratio', above: 0, max: 1 },
    /** Share kept after a year. */
    kept1Year: { kind: 'ratio', above: 0, max: 1 },
    /** Shift factor of time with temperature, at most 1. Default: 1, a part at 23 °C. */
    shift: { kind: 'ratio', above: 0, max: 1, default: 1 },
  },
  /** Share of the short-term strength. */
  output: 'ratio',
  equation: [
    'year = 31557600 s',
    'longTime = duration / shift',
    'keptLong = longTime <= 60 s ? 1 : longTime <= 3.6e6 s ? 1 - (1 - kept1000Hours) * log(longTime / (60 s)) / log(60000) : longTime <= year ? kept1000Hours - (kept1000Hours - kept1Year) * log(longTime / (3.6e6 s)) / log(year / (3.6e6 s)) : kept1Year * (longTime / year)^(log(kept1Year) / log(year / (60 s)))',
    'shortTime = 60 s / shift',
    'keptShort = shortTime <= 60 s ? 1 : shortTime <= 3.6e6 s ? 1 - (1 - kept1000Hours) * log(shortTime / (60 s)) / log(60000) : shortTime <= year ? kept1000Hours - (kept1000Hours - kept1Year) * log(shortTime / (3.6e6 s)) / log(year / (3.6e6 s)) : kept1Year * (shortTime / year)^(log(kept1Year) / log(year / (60 s)))',
    'result = duration <= 60 s ? 1 : shift == 1 ? keptLong : keptLong / keptShort',
  ],
  assumes: [
    'steady load',
    'strength falls uniformly with the logarithm of time between the known points',
    'rupture and creep share one shift of time with temperature',
  ],
  source: [{ level: 'unverified', where: 'BS 4618 and plastics design practice: stress for rupture falls uniformly with log time' }],
  valid: {
    'a duration of at most ten years at 23 °C, or its equivalent when warm': ({ duration, shift }) => duration / shift <= 10 * YEAR,
  },
  requires: {
    kept1Year: {
      accepts: 'must be at most the share after 1000 hours',
      holds: ({ kept1000Hours, kept1Year }) => kept1Year <= kept1000Hours,
    },
  },
  si: ({ duration, kept1000Hours, kept1Year, shift }) =>
    duration <= MINUTE
      ? 1
      : shift === 1
        ? keptAtRoom(duration, kept1000Hours, kept1Year)
        : keptAtRoom(duration / shift, kept1000Hours, kept1Year) / keptAtRoom(MINUTE / shift, kept1000Hours, kept1Year),
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
  equation: ['result = cycles^(log10(ratioAtMillion) / 6)'],
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
  equation: [
    'result = moisture <= conditioned ? 1 - (1 - conditionedShare) * moisture / conditioned : moisture < saturated ? conditionedShare - (conditionedShare - saturatedShare) * (moisture - conditioned) / (saturated - conditioned) : saturatedShare',
  ],
  assumes: ['uniform water content through the wall', 'the effect is that of the content alone'],
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

/** Stress allowed against rupture: strength times every factor that lessens it, over the safety factor. */
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
    /** Share kept at the temperature. */
    temperature: { kind: 'ratio', min: 0, max: 1 },
    /** Share kept at the moisture content. */
    moisture: { kind: 'ratio', min: 0, max: 1 },
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
    /** Time under load. */
    duration: { kind: 'time', min: 0 },
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
