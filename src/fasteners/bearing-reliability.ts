import { formula } from '../formula/index.js'
import { DYNAMIC_RATING } from './bearing-inputs.js'

/** Share of ball bearings that outlive a number of turns, and the rating needed for a required share (three-parameter Weibull spread of the life). */
export const bearingReliability = /* @__PURE__ */ formula('fasteners.bearingReliability', {
  inputs: {
    ...DYNAMIC_RATING,
    /** Equivalent dynamic load (`bearingEquivalentLoad`, `bearingDutyLoad`). */
    load: { kind: 'force', above: 0 },
    /** Turns to survive. */
    turns: { kind: 'count', above: 0 },
    /** Share required to survive them. */
    requiredReliability: { kind: 'ratio', above: 0, below: 1, default: 0.9 },
    /** Life that every bearing reaches, over the rating life. */
    leastLife: { kind: 'ratio', min: 0, below: 1, default: 0.02 },
    /** Characteristic life (63.2 % have failed), over the rating life. */
    characteristicLife: { kind: 'ratio', above: 1, default: 4.459 },
    /** Exponent of the Weibull spread. */
    exponent: { kind: 'ratio', above: 0, default: 1.483 },
  },
  output: {
    /** Share that survives. */
    reliability: 'ratio',
    /** Dynamic rating needed for the required share. */
    ratingNeeded: 'force',
  },
  equation: [
    'used = max(0, turns / 1000000 * (load / dynamicRating)^3 - leastLife)',
    'reliability = exp(-(used / (characteristicLife - leastLife))^exponent)',
  ],
  assumes: [
    'fatigue of the raceway: clean, lubricated, turning fully round',
    "spread of the maker's tests of single-row ball bearings; the standard's factors (`bearingLife`) are close up to 99 %",
  ],
  source: [{ level: 'published', where: 'Shigley 8th/9th ed., section 11-4 and 11-5, eq. 11-6 to 11-9, table 11-6 (0.02, 4.459, 1.483)' }],
  si: ({ dynamicRating, load, turns, requiredReliability, leastLife, characteristicLife, exponent }) => {
    const millions = turns / 1e6
    const wide = characteristicLife - leastLife
    const used = Math.max(0, millions * (load / dynamicRating) ** 3 - leastLife)
    const life = leastLife + wide * (-Math.log(requiredReliability)) ** (1 / exponent)
    return { reliability: Math.exp(-((used / wide) ** exponent)), ratingNeeded: load * Math.cbrt(millions / life) }
  },
})
