import { formula } from '../formula/index.js'
import { branch, type CordDriveState, gripped, increasingRoot, loop, RIGID } from './branch.js'
import { FIBRE_LAW, FRICTIONS, LIKELY_EXPONENT } from './friction-inputs.js'
import { CORD_LOOP, DRUM_ARCS, LOOP_COMPLIANCE } from './inputs.js'

/** Span tensions at which the pinion is on the verge of slipping. */
export function slipPoint(d: CordDriveState): { taut: number; slack: number } {
  const n = d.frictionExponent ?? 1
  if (n < 1) return fibreSlipPoint(d, n)
  const shrink = Math.exp(-d.friction * d.pinionWrap)
  if (shrink === 1) return { taut: d.pretension, slack: d.pretension }
  const f = (taut: number) => loop(d, taut, taut * shrink, shrink)
  const high = d.pretension / shrink
  const taut = increasingRoot(
    f,
    d.pretension * Math.min(2, 0.5 * (1 + 1 / shrink)),
    d.pretension * 0.999,
    Math.min(high, d.pretension * 1e6),
    1e-9 * d.pretension,
  )
  return { taut, slack: taut * shrink }
}

/**
 * Torque at which the cord slips round a pinion that holds it by friction alone, at one pose: with the unequal stretch of the two branches.
 * It is least where the taut branch is long on its drum and the slack one short, at an end of travel: see `travelLimits`.
 */
export const slipTorque = /* @__PURE__ */ formula('capstan.slipTorque', {
  inputs: {
    ...CORD_LOOP,
    ...FRICTIONS,
    ...DRUM_ARCS,
    ...LOOP_COMPLIANCE,
    ...FIBRE_LAW,
  },
  output: {
    /** Torque at the joint. */
    torque: 'torque',
    /** Taut tension there. */
    tautTension: 'force',
    /** Slack tension there. */
    slackTension: 'force',
  },
  equation: ['torque == drumRadius * (tautTension - slackTension)', 'tautTension == slackTension * exp(friction * pinionWrap)'],
  assumes: [
    'loaded from a uniform pretension',
    'centres fixed but for the compliance given',
    'linear elastic cord',
    'Coulomb friction, static and kinetic alike; with a friction exponent below 1 it falls with pressure, and the second equation does not hold',
  ],
  source: [
    { level: 'computed', where: 'Euler-Eytelwein ratio over the whole pinion wrap with equal lengths given and taken by the two branches' },
  ],
  valid: {
    'cord strain of at most 2 %': ({ axialRigidity }, { tautTension }) => tautTension <= 0.02 * axialRigidity,
    ...LIKELY_EXPONENT,
  },
  si: (x) => {
    const { taut, slack } = slipPoint({ ...x, hold: 'frictionOnly' })
    return { torque: x.drumRadius * (taut - slack), tautTension: taut, slackTension: slack }
  },
})

/** The same for friction that falls with pressure; without slack tension where the pinion holds that too. */
function fibreSlipPoint(d: CordDriveState, n: number): { taut: number; slack: number } {
  const T0 = d.pretension
  if (d.friction === 0) return { taut: T0, slack: T0 }
  const f = (taut: number) => {
    const slack = gripped(d, taut)
    return loop(d, taut, slack, (slack / taut) ** n)
  }
  const high = T0 * (1 + (1 - n) * d.friction * d.pinionWrap) ** (1 / (1 - n))
  const taut = increasingRoot(f, Math.min(2 * T0, 0.5 * (T0 + high)), T0, high, 1e-9 * T0)
  return { taut, slack: gripped(d, taut) }
}

/** Share of the pretension at which a span counts as slack: a cord with less leaves its groove. */
export const SLACK_SHARE = 0.01

/** Taut tension at which the slack span keeps a share of the pretension, and the joint's angle there, if the pinion does not slip as a whole. */
export function slackPoint(d: CordDriveState, share: number): { taut: number; windup: number } {
  const { sum, difference, tautSpan, slackSpan } = d.compliance ?? RIGID
  const slack = share * d.pretension
  const taken = branch(d, slack, d.drumWrapSlack, slackSpan).length
  const f = (taut: number) => {
    const { length, compliance } = branch(d, taut, d.drumWrapTaut, tautSpan)
    return { value: length + taken + 2 * sum * (taut + slack - 2 * d.pretension), slope: compliance + 2 * sum }
  }
  // The span alone would need this much: the arcs add to the length that the branch gives out, and the frame brings the sum back to twice the pretension.
  const max = Math.max(2 * d.pretension - slack, d.pretension - (taken * d.axialRigidity) / d.span)
  const taut = increasingRoot(f, Math.min(2 * d.pretension, max), d.pretension, max, 1e-9 * d.pretension)
  return { taut, windup: (-taken - sum * (taut + slack - 2 * d.pretension) + difference * (taut - slack)) / d.drumRadius }
}

/**
 * Torque at which a span of a cord drive loses its tension, with the unequal stretch of the two branches. Beyond it one branch of a clamped
 * cord carries alone, at half the stiffness or less. Most cords held by friction alone slip before; the state names the one that comes first.
 */
export const slackTorque = /* @__PURE__ */ formula('capstan.slackTorque', {
  inputs: {
    ...CORD_LOOP,
    ...FRICTIONS,
    ...DRUM_ARCS,
    ...LOOP_COMPLIANCE,
    ...FIBRE_LAW,
    /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
    hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'clampedMidPinion' },
    /** Share of the pretension below which the span counts as slack; 0 is a cord without tension. */
    slackShare: { kind: 'ratio', min: 0, below: 1, default: 0.01 },
  },
  output: {
    /** Torque at the joint. */
    torque: 'torque',
    /** Tension of the taut span there. */
    tautTension: 'force',
    /** Angle of the joint there against its unloaded place. */
    windup: 'angle',
    /** Whether the span goes slack at this torque, or the pinion slips before it is reached. */
    state: { oneOf: ['slackSpan', 'slipsBefore'] },
  },
  equation: ['torque == drumRadius * (tautTension - slackShare * pretension)'],
  assumes: [
    'loaded from a uniform pretension',
    'centres fixed but for the compliance given',
    'linear elastic cord',
    'Coulomb friction, static and kinetic alike',
  ],
  valid: {
    'the pinion does not slip before': (_, { state }) => state === 'slackSpan',
    'cord strain of at most 2 %': ({ axialRigidity }, { tautTension }) => tautTension <= 0.02 * axialRigidity,
    ...LIKELY_EXPONENT,
  },
  source: [{ level: 'computed', where: 'the taut branch gives the length that the slack branch takes in as it loses its tension' }],
  si: (x) => {
    const { taut, windup } = slackPoint(x, x.slackShare)
    const slack = x.slackShare * x.pretension
    const slips = x.hold === 'frictionOnly' && gripped(x, taut) >= slack
    return { torque: x.drumRadius * (taut - slack), tautTension: taut, windup, state: slips ? 'slipsBefore' : 'slackSpan' }
  },
})
