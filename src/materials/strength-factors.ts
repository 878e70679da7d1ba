import { formula } from '../formula/index.js'
import { DURATION } from './inputs.js'

/** The time of a short-term test, s. */
export const MINUTE = 60
/** The time for which the share kept is tabulated, s. */
export const THOUSAND_HOURS = 3.6e6
const YEAR = 31557600

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
  title: 'strength factor for the duration of a load',
  inputs: {
    ...DURATION,
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
