import { formula } from '../formula/index.js'
import { bracketRoot, normalCdf, normalQuantile } from '../numeric/index.js'
import { CORD_LOOP, DRUM_TRAVEL, JOINT_TORQUE, LOOP_COMPLIANCE } from './inputs.js'
import { leastOverTravel } from './travel-limits.js'

const MAX_FRICTION = 3

/** Friction that a pinion without a clamp needs so that a torque holds anywhere in the travel and in either direction. */
export const frictionToHold = /* @__PURE__ */ formula('capstan.frictionToHold', {
  inputs: {
    ...JOINT_TORQUE,
    ...CORD_LOOP,
    ...DRUM_TRAVEL,
    ...LOOP_COMPLIANCE,
  },
  requires: {
    travel: {
      accepts: 'must not exceed twice the drum wrap, or an anchor leaves the drum',
      holds: ({ drumWrap, travel }) => travel <= 2 * drumWrap,
    },
  },
  /** Least coefficient of friction, pinion and drum alike; infinite where a coefficient of 3 does not hold the torque. */
  output: { kind: 'ratio', infinite: true },
  assumes: ['one coefficient on pinion and drum', 'loaded from a uniform pretension', 'linear elastic cord', 'Coulomb friction'],
  source: [{ level: 'computed', where: 'least slip and slack torque over the travel, solved for the friction' }],
  si: ({ torque, ...x }) => {
    if (torque === 0) return 0
    const short = (friction: number) => {
      const { slip, slack } = leastOverTravel({ ...x, friction, hold: 'frictionOnly' }, x.axialRigidity, x.pretension)
      return Math.min(slip, slack) / torque - 1
    }
    return short(MAX_FRICTION) < 0 ? Number.POSITIVE_INFINITY : bracketRoot(short, 0, MAX_FRICTION)
  },
})

/** Chance that the friction of a drive is at least the friction needed, from the interval of its friction: lognormal, in closed form. */
export const holdingChance = /* @__PURE__ */ formula('capstan.holdingChance', {
  inputs: {
    /** Friction needed, from `frictionToHold`. */
    frictionNeeded: { kind: 'ratio', min: 0 },
    /** Low end of the interval of friction. */
    frictionLow: { kind: 'ratio', above: 0 },
    /** High end of the interval of friction. */
    frictionHigh: { kind: 'ratio', above: 0 },
    /** Share of all cases that lie within the interval, with equal shares below and above it. */
    coverage: { kind: 'ratio', above: 0, below: 1, default: 0.9 },
  },
  requires: {
    frictionHigh: { accepts: 'must be above the low end', holds: ({ frictionLow, frictionHigh }) => frictionHigh > frictionLow },
  },
  output: {
    /** Chance that the drive holds. */
    holds: 'ratio',
    /** Chance that it slips. */
    slips: 'ratio',
    /** Distance of the friction needed below the median, in standard deviations of its logarithm. */
    index: 'ratio',
  },
  assumes: ['lognormal friction, its median the geometric mean of the ends', 'all else is certain'],
  valid: { 'chance of slip of at least 1e-4 (the tail of a friction is not known further)': (_, { slips }) => slips >= 1e-4 },
  source: [{ level: 'computed', where: 'cumulative lognormal distribution at the friction needed' }],
  si: ({ frictionNeeded, frictionLow, frictionHigh, coverage }) => {
    const median = 0.5 * Math.log(frictionLow * frictionHigh)
    const deviation = Math.log(frictionHigh / frictionLow) / (2 * normalQuantile(0.5 + coverage / 2))
    const index = frictionNeeded === 0 ? Number.MAX_VALUE : (median - Math.log(frictionNeeded)) / deviation
    return { holds: normalCdf(index), slips: normalCdf(-index), index }
  },
})
