import { formula } from '../formula/index.js'
import { branch, type CordDriveState, gripped, increasingRoot, lengthPerPull, loop, RIGID } from './branch.js'
import { CORD_RIGIDITY } from './cord-inputs.js'
import { FIBRE_LAW, FRICTIONS, LIKELY_EXPONENT } from './friction-inputs.js'
import { SLACK_SHARE, slipPoint } from './holding.js'
import { CORD_LOOP, DRUM_ARCS, DRUM_RADIUS, HOLD, JOINT_TORQUE, LOOP_COMPLIANCE, PINION_RADIUS, SPAN } from './inputs.js'

/** Stiffness of a cord drive at the joint with rigid wrapped arcs and a rigid frame: the value at zero torque, and an upper bound at any other. */
export const spanStiffness = /* @__PURE__ */ formula('capstan.spanStiffness', {
  inputs: {
    ...CORD_RIGIDITY,
    ...DRUM_RADIUS,
    ...SPAN,
    /** Decay length of an elastic contact, where there is one; it adds to each end of the span. */
    microSlipLength: { kind: 'length', min: 0, default: '0 m' },
  },
  /** Torque per angle of the joint, motor locked. */
  output: 'torsionalStiffness',
  equation: ['result = 2 * axialRigidity * drumRadius^2 / (span + 2 * microSlipLength)'],
  assumes: ['both spans tight', 'arcs rigid'],
  source: [{ level: 'computed', where: "Hooke's law for two spans on one drum, K = 2 EA r²/L" }],
  si: ({ axialRigidity, drumRadius, span, microSlipLength }) =>
    (2 * axialRigidity * drumRadius * drumRadius) / (span + 2 * microSlipLength),
})

/** Stiffness of a cord drive at the joint without friction, all wrapped cord free to stretch: a lower bound of the secant stiffness. */
export const frictionlessWrapStiffness = /* @__PURE__ */ formula('capstan.frictionlessWrapStiffness', {
  inputs: {
    ...CORD_RIGIDITY,
    ...PINION_RADIUS,
    ...DRUM_RADIUS,
    ...SPAN,
    /** Angle of contact on the pinion; half of it goes with each branch. */
    pinionWrap: { kind: 'angle', min: 0 },
    ...DRUM_ARCS,
    ...LOOP_COMPLIANCE,
  },
  /** Torque per angle of the joint, motor locked. Not a bound of the tangent stiffness near slip. */
  output: 'torsionalStiffness',
  equation: [
    'shared = span + pinionRadius * pinionWrap / 2',
    'result = axialRigidity * drumRadius^2 * (1 / (shared + drumRadius * drumWrapTaut) + 1 / (shared + drumRadius * drumWrapSlack))',
  ],
  assumes: ['both spans tight', 'no friction, cord held in the middle of the pinion', 'equation: that of a rigid frame'],
  source: [{ level: 'computed', where: "Hooke's law with the arcs as free length" }],
  si: ({ axialRigidity, pinionRadius, drumRadius, span, pinionWrap, drumWrapTaut, drumWrapSlack, compliance }) => {
    const frame = compliance ?? RIGID
    const shared = span + (pinionRadius * pinionWrap) / 2
    const taut = (shared + drumRadius * drumWrapTaut) / axialRigidity + frame.tautSpan
    const slack = (shared + drumRadius * drumWrapSlack) / axialRigidity + frame.slackSpan
    return (drumRadius * drumRadius) / lengthPerPull(taut, slack, frame)
  },
})

/** Tensions of both spans under a difference of them; those on the verge of slip where the pinion holds no more. */
function tensions(d: CordDriveState, pull: number): { readonly taut: number; readonly slack: number; readonly slips: boolean } {
  const f = (taut: number) => loop(d, taut, taut - pull, 1)
  const low = Math.max(d.pretension, pull)
  const hangs = pull > d.pretension && f(pull).value >= 0
  const taut = hangs
    ? pull
    : increasingRoot(f, Math.max(low, d.pretension + pull / 2), low, d.pretension + pull, 1e-9 * (d.pretension + pull))
  const held = d.hold === 'frictionOnly' ? gripped(d, taut) : 0
  return held > 0 && held >= taut - pull ? { ...slipPoint(d), slips: true } : { taut, slack: taut - pull, slips: false }
}

/**
 * Windup of a cord drive under torque with the motor locked, both branches and the slipping arcs on both pulleys: angle, tangent and secant
 * stiffness, and the span tensions. Stiffest at zero torque, softer with every newton metre.
 */
export const driveWindup = /* @__PURE__ */ formula('capstan.driveWindup', {
  inputs: {
    ...JOINT_TORQUE,
    ...CORD_LOOP,
    ...FRICTIONS,
    ...DRUM_ARCS,
    ...HOLD,
    ...LOOP_COMPLIANCE,
    ...FIBRE_LAW,
    /** Tangential stiffness of the contact per length of cord; Default: rigid, which is optimistic. */
    contactStiffness: { kind: 'foundationModulus', above: 0, optional: true },
  },
  requires: {
    contactStiffness: {
      accepts: 'must be omitted with a friction exponent below 1',
      holds: ({ contactStiffness, frictionExponent }) => contactStiffness === undefined || (frictionExponent ?? 1) === 1,
    },
  },
  output: {
    /** Angle of the joint against its unloaded place. In the state `slips` the angle at which slip begins. */
    windup: 'angle',
    /** Slope of torque over angle here; zero once the pinion slips. */
    tangentStiffness: 'torsionalStiffness',
    /** Torque over angle; at zero torque the tangent, zero once the pinion slips. */
    secantStiffness: 'torsionalStiffness',
    /** Tension of the taut span. */
    tautTension: 'force',
    /** Tension of the slack span. */
    slackTension: 'force',
    /** Torque the drive carries: the torque given, or the slip torque if that is less. */
    torqueCarried: 'torque',
    /** Both spans tight; one span slack, with less than 1 % of the pretension; or the pinion slips at less than this torque. */
    state: { oneOf: ['tight', 'slackSpan', 'slips'] },
  },
  equation: ['tautTension - slackTension == torqueCarried / drumRadius'],
  assumes: [
    'loaded from a uniform pretension, joint at one pose',
    'centres fixed but for the compliance given, round pulleys',
    'linear elastic cord without bending stiffness or creep',
    'Coulomb friction, static and kinetic alike',
  ],
  valid: {
    'both spans tight and no slip': (_, { state }) => state === 'tight',
    'cord strain of at most 2 %': ({ axialRigidity }, { tautTension }) => tautTension <= 0.02 * axialRigidity,
    ...LIKELY_EXPONENT,
  },
  source: [
    { level: 'computed', where: 'slip arcs after Euler-Eytelwein on both pulleys; equal lengths given and taken by the two branches' },
  ],
  si: (d) => {
    const { torque } = d
    const frame = d.compliance ?? RIGID
    const { taut, slack, slips } =
      torque > 0 ? tensions(d, torque / d.drumRadius) : { taut: d.pretension, slack: d.pretension, slips: false }
    const carried = slips ? d.drumRadius * (taut - slack) : torque
    const t = branch(d, taut, d.drumWrapTaut, frame.tautSpan)
    const s = branch(d, slack, d.drumWrapSlack, frame.slackSpan)
    const closing = frame.sum * (taut + slack - 2 * d.pretension)
    const windup = (t.length + closing + frame.difference * (taut - slack)) / d.drumRadius
    const hanging = slack === 0 ? Number.POSITIVE_INFINITY : s.compliance
    const tangent = slips ? 0 : (d.drumRadius * d.drumRadius) / lengthPerPull(t.compliance, hanging, frame)
    return {
      windup: torque > 0 ? windup : 0,
      tangentStiffness: tangent,
      secantStiffness: windup > 0 && torque > 0 && !slips ? carried / windup : tangent,
      tautTension: taut,
      slackTension: slack,
      torqueCarried: carried,
      state: slips ? 'slips' : slack < SLACK_SHARE * d.pretension ? 'slackSpan' : 'tight',
    }
  },
})
