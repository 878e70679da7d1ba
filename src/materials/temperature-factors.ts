import { formula } from '../formula/index.js'

const TEMPERATURE = {
  /** Temperature of the part. */
  temperature: { kind: 'temperature', min: 0 },
} as const

/** The temperature of data sheets, 23 °C. */
export const ROOM = 296.15

/**
 * Share of its room-temperature strength that an amorphous polymer keeps when warm.
 * A straight line from 1 at 23 °C to 0 at a margin below the glass transition; above that no continuous load may be carried.
 * The ranking of polymers by this rule is supported by tests, its slope is not.
 */
export const amorphousStrengthFactor = /* @__PURE__ */ formula('materials.amorphousStrengthFactor', {
  title: 'strength factor of a warm amorphous polymer',
  inputs: {
    ...TEMPERATURE,
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
    ...TEMPERATURE,
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
