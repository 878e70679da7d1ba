import { formula } from '../formula/index.js'
import { SLACK_END } from './cord-inputs.js'
import { LIKELY_FRICTION } from './friction-inputs.js'
import { WRAP } from './inputs.js'

/** Tension left at the slack end of a cord wrapped on a drum, on the verge of slipping (belt friction). */
export const slackTension = /* @__PURE__ */ formula('capstan.slackTension', {
  inputs: {
    /** Tension at the taut end. */
    load: { kind: 'force', min: 0 },
    ...WRAP,
  },
  /** Tension at the slack end. */
  output: 'force',
  equation: ['result = load * exp(-friction * wrapAngle)'],
  assumes: ['cord perfectly flexible and massless', 'Coulomb friction, constant along the arc', 'slip impends along the whole arc'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808; any statics text, "belt friction"' }],
  si: ({ load, friction, wrapAngle }) => load * Math.exp(-friction * wrapAngle),
})

/** Largest tension a cord wrapped on a drum can hold at its taut end for a given tension at the slack end. */
export const tautTension = /* @__PURE__ */ formula('capstan.tautTension', {
  inputs: {
    /** Tension kept at the slack end. */
    slackTension: { kind: 'force', min: 0 },
    ...WRAP,
  },
  /** Tension at the taut end when the cord is about to slip. */
  output: 'force',
  equation: ['result = slackTension * exp(friction * wrapAngle)'],
  assumes: ['cord perfectly flexible and massless', 'Coulomb friction, constant along the arc', 'slip impends along the whole arc'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808; any statics text, "belt friction"' }],
  si: ({ slackTension, friction, wrapAngle }) => slackTension * Math.exp(friction * wrapAngle),
})

/** Ratio of taut to slack tension that a wrap can hold before it slips. */
export const tensionRatio = /* @__PURE__ */ formula('capstan.tensionRatio', {
  inputs: {
    ...WRAP,
  },
  /** Largest ratio of taut to slack tension; the radius of the drum does not enter. */
  output: 'ratio',
  equation: ['result = exp(friction * wrapAngle)'],
  assumes: ['cord perfectly flexible and massless', 'Coulomb friction, constant along the arc'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808; any statics text, "belt friction"' }],
  si: ({ friction, wrapAngle }) => Math.exp(friction * wrapAngle),
})

/** Friction coefficient that a slipping wrap shows: the way to measure one with two spring scales or a hanging weight. */
export const frictionFromTensions = /* @__PURE__ */ formula('capstan.frictionFromTensions', {
  inputs: {
    /** Tension at the taut end while the cord slips. */
    tautTension: { kind: 'force', above: 0 },
    ...SLACK_END,
    /** Total angle of contact. */
    wrapAngle: { kind: 'angle', above: 0 },
  },
  requires: {
    slackTension: { accepts: 'must not exceed the taut tension', holds: ({ tautTension, slackTension }) => slackTension <= tautTension },
  },
  /** Coefficient of friction at this ratio of drum to cord diameter. */
  output: 'ratio',
  equation: ['result = log(tautTension / slackTension) / wrapAngle'],
  assumes: ['the whole arc slips at constant speed', 'the value holds for the ratio of drum to cord diameter it was measured at'],
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808, solved for the coefficient' }],
  si: ({ tautTension, slackTension, wrapAngle }) => Math.log(tautTension / slackTension) / wrapAngle,
})

/** Angle of contact over which friction is used up: beyond it the cord lies at rest on the drum. Holding needs at least this angle. */
export const slipArc = /* @__PURE__ */ formula('capstan.slipArc', {
  inputs: {
    /** Tension at the taut end. */
    tautTension: { kind: 'force', above: 0 },
    /** Tension at the slack end, or the tension stored in the resting part of the wrap. */
    slackTension: { kind: 'force', above: 0 },
    /** Coefficient of friction, cord on drum. */
    friction: { kind: 'ratio', above: 0 },
  },
  requires: {
    slackTension: { accepts: 'must not exceed the taut tension', holds: ({ tautTension, slackTension }) => slackTension <= tautTension },
  },
  /** Arc along which the cord slips; its share of the whole wrap is the utilisation of the wrap. */
  output: 'angle',
  equation: ['result = log(tautTension / slackTension) / friction'],
  assumes: ['cord perfectly flexible and massless', 'Coulomb friction, constant along the arc'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808, solved for the angle' }],
  si: ({ tautTension, slackTension, friction }) => Math.log(tautTension / slackTension) / friction,
})

/** Turns of cord needed on a pinion so that it does not slip, with a reserve on the tension ratio. */
export const wrapsNeeded = /* @__PURE__ */ formula('capstan.wrapsNeeded', {
  inputs: {
    /** Ratio of taut to slack tension that must be held. */
    tensionRatio: { kind: 'ratio', min: 1 },
    /** Coefficient of friction; take the low end of its range. */
    friction: { kind: 'ratio', above: 0 },
    /** Required reserve: the ratio held over the ratio needed. */
    requiredReserve: { kind: 'ratio', min: 1, default: 1 },
  },
  /** Turns of contact, of which the part turn between the spans counts. */
  output: 'count',
  equation: ['result = log(requiredReserve * tensionRatio) / (2 * pi * friction)'],
  assumes: ['cord perfectly flexible and massless', 'Coulomb friction, constant along the arc'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808, solved for the number of turns' }],
  si: ({ tensionRatio, friction, requiredReserve }) => Math.log(requiredReserve * tensionRatio) / (2 * Math.PI * friction),
})

/** Largest taut tension of a running cord or belt, with the tension that its own speed takes up. */
export const runningTautTension = /* @__PURE__ */ formula('capstan.runningTautTension', {
  inputs: {
    /** Tension at the slack end while running. */
    slackTension: { kind: 'force', min: 0 },
    ...WRAP,
    /** Mass of the cord per length. */
    massPerLength: { kind: 'massPerLength', min: 0 },
    /** Speed of the cord along itself. */
    speed: { kind: 'velocity', min: 0 },
  },
  requires: {
    slackTension: {
      accepts: 'must be at least the centrifugal tension, or the cord lifts off',
      holds: ({ slackTension, massPerLength, speed }) => slackTension >= massPerLength * speed * speed,
    },
  },
  output: {
    /** Tension at the taut end when the cord is about to slip. */
    tautTension: 'force',
    /** Part of both tensions that bends the moving cord round the drum and does not press on the drum. */
    centrifugalTension: 'force',
  },
  equation: [
    'centrifugalTension = massPerLength * speed^2',
    'tautTension = centrifugalTension + (slackTension - centrifugalTension) * exp(friction * wrapAngle)',
  ],
  assumes: ['cord perfectly flexible', 'steady speed', 'Coulomb friction, constant along the arc'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'unverified', where: "Shigley's Mechanical Engineering Design, sec. 17-2 (flat belts)" }],
  si: ({ slackTension, friction, wrapAngle, massPerLength, speed }) => ({
    tautTension: massPerLength * speed * speed + (slackTension - massPerLength * speed * speed) * Math.exp(friction * wrapAngle),
    centrifugalTension: massPerLength * speed * speed,
  }),
})
