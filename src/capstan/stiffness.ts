import { formula } from '../formula/index.js'
import { arcWindup } from './arc.js'
import { type ArcResponse, elasticArc } from './contact.js'

/** Stiffness of a cord drive at the joint if the wrapped arcs gave nothing: the value at zero torque, and an upper bound at any other. */
export const spanStiffness = /* @__PURE__ */ formula('capstan.spanStiffness', {
  inputs: {
    /** Axial rigidity of the cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Radius of the drum to the cord's centre line. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free span of one branch. */
    span: { kind: 'length', above: 0 },
    /** Decay length of an elastic contact, where there is one; it adds to each end of the span. */
    microSlipLength: { kind: 'length', min: 0, default: '0 m' },
  },
  /** Torque per angle of the joint, motor locked. */
  output: 'torsionalStiffness',
  assumes: ['both spans tight', 'arcs rigid'],
  source: [{ level: 'computed', where: "Hooke's law for two spans on one drum, K = 2 EA r²/L" }],
  si: ({ axialRigidity, drumRadius, span, microSlipLength }) =>
    (2 * axialRigidity * drumRadius * drumRadius) / (span + 2 * microSlipLength),
})

/** Stiffness of a cord drive at the joint if friction were nil and all wrapped cord stretched freely: a lower bound of the secant stiffness. */
export const freeArcStiffness = /* @__PURE__ */ formula('capstan.freeArcStiffness', {
  inputs: {
    /** Axial rigidity of the cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Radius of the pinion to the cord's centre line. */
    pinionRadius: { kind: 'length', above: 0 },
    /** Radius of the drum to the cord's centre line. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free span of one branch. */
    span: { kind: 'length', above: 0 },
    /** Angle of contact on the pinion; half of it goes with each branch. */
    pinionWrap: { kind: 'angle', min: 0 },
    /** Wrap from tangent point to anchor on the drum, taut branch. */
    drumWrapTaut: { kind: 'angle', min: 0 },
    /** Wrap from tangent point to anchor on the drum, slack branch. */
    drumWrapSlack: { kind: 'angle', min: 0 },
  },
  /** Torque per angle of the joint, motor locked. Not a bound of the tangent stiffness near slip. */
  output: 'torsionalStiffness',
  assumes: ['both spans tight', 'no friction, cord held in the middle of the pinion'],
  source: [{ level: 'computed', where: "Hooke's law with the arcs as free length" }],
  si: ({ axialRigidity, pinionRadius, drumRadius, span, pinionWrap, drumWrapTaut, drumWrapSlack }) => {
    const shared = span + (pinionRadius * pinionWrap) / 2
    return axialRigidity * drumRadius * drumRadius * (1 / (shared + drumRadius * drumWrapTaut) + 1 / (shared + drumRadius * drumWrapSlack))
  },
})

/** A drive at one pose on SI numbers, as the kernels here take it. */
export interface DriveState {
  readonly axialRigidity: number
  readonly pretension: number
  readonly pinionRadius: number
  readonly drumRadius: number
  readonly span: number
  readonly pinionWrap: number
  readonly drumWrapTaut: number
  readonly drumWrapSlack: number
  readonly friction: number
  readonly drumFriction?: number | undefined
  readonly hold: 'frictionOnly' | 'clampedMidPinion'
  readonly contactStiffness?: number | undefined
}

const arcOf = (d: DriveState, T: number, mu: number, R: number, wrap: number): ArcResponse =>
  d.contactStiffness === undefined
    ? arcWindup.si({
        tension: T,
        storedTension: d.pretension,
        friction: mu,
        centreLineRadius: R,
        wrapAngle: wrap,
        axialRigidity: d.axialRigidity,
      })
    : elasticArc(T, d.pretension, mu, R, wrap, d.axialRigidity, d.contactStiffness)

/** Cord given out by one branch, span and both arcs, at span tension T: length and compliance. */
function branch(d: DriveState, T: number, drumWrap: number): { length: number; compliance: number } {
  // Slip may pass the middle of a pinion that holds by friction alone: the slip limit, not the half wrap, ends it.
  const pinionArc = d.hold === 'clampedMidPinion' || d.friction === 0 || d.contactStiffness !== undefined ? d.pinionWrap / 2 : d.pinionWrap
  const pinion = arcOf(d, T, d.friction, d.pinionRadius, pinionArc)
  const drum = arcOf(d, T, d.drumFriction ?? d.friction, d.drumRadius, drumWrap)
  return {
    length: ((T - d.pretension) * d.span) / d.axialRigidity + pinion.feed + drum.feed,
    compliance: d.span / d.axialRigidity + pinion.compliance + drum.compliance,
  }
}

const MOST_STEPS = 100

/** Root of an increasing function given with its slope, in a bracket: Newton, halving where it would leave. A last step of `tolerance` leaves its square. */
function increasingRoot(
  f: (x: number) => { value: number; slope: number },
  start: number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let lo = low
  let hi = high
  let x = start
  for (let i = 0; i < MOST_STEPS; i++) {
    const { value, slope } = f(x)
    if (value > 0) hi = x
    else lo = x
    const newton = x - value / slope
    if (Math.abs(newton - x) <= tolerance) return newton
    const next = newton > lo && newton < hi ? newton : 0.5 * (lo + hi)
    if (Math.abs(next - x) <= tolerance) return next
    x = next
  }
  return x
}

/** Span tensions at which the pinion is on the verge of slipping. */
function slipPoint(d: DriveState): { taut: number; slack: number } {
  const shrink = Math.exp(-d.friction * d.pinionWrap)
  if (shrink === 1) return { taut: d.pretension, slack: d.pretension }
  const f = (taut: number) => {
    const t = branch(d, taut, d.drumWrapTaut)
    const s = branch(d, taut * shrink, d.drumWrapSlack)
    return { value: t.length + s.length, slope: t.compliance + shrink * s.compliance }
  }
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

/** Torque at which the cord slips round a pinion that holds it by friction alone, with the unequal stretch of the two branches; the equal-force estimate is lower. */
export const slipTorque = /* @__PURE__ */ formula('capstan.slipTorque', {
  inputs: {
    /** Axial rigidity of the cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Tension of both spans and all wraps at rest. */
    pretension: { kind: 'force', above: 0 },
    /** Radius of the pinion to the cord's centre line. */
    pinionRadius: { kind: 'length', above: 0 },
    /** Radius of the drum to the cord's centre line. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free span of one branch. */
    span: { kind: 'length', above: 0 },
    /** Angle of contact on the pinion, all turns counted. */
    pinionWrap: { kind: 'angle', above: 0 },
    /** Wrap from tangent point to anchor on the drum, taut branch. */
    drumWrapTaut: { kind: 'angle', min: 0 },
    /** Wrap from tangent point to anchor on the drum, slack branch. */
    drumWrapSlack: { kind: 'angle', min: 0 },
    /** Coefficient of friction, cord on pinion. */
    friction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction, cord on drum; the pinion's where not given. */
    drumFriction: { kind: 'ratio', min: 0, optional: true },
  },
  output: {
    /** Torque at the joint. */
    torque: 'torque',
    /** Taut tension there. */
    tautTension: 'force',
    /** Slack tension there. */
    slackTension: 'force',
  },
  assumes: ['loaded from a uniform pretension', 'fixed centres', 'linear elastic cord', 'Coulomb friction, static and kinetic alike'],
  source: [
    { level: 'computed', where: 'Euler-Eytelwein ratio over the whole pinion wrap with equal lengths given and taken by the two branches' },
  ],
  si: (x) => {
    const { taut, slack } = slipPoint({ ...x, hold: 'frictionOnly' })
    return { torque: x.drumRadius * (taut - slack), tautTension: taut, slackTension: slack }
  },
})

/**
 * Windup of a cord drive under torque with the motor locked, both branches and the slipping arcs on both pulleys: angle, tangent and secant
 * stiffness, and the span tensions. Stiffest at zero torque, softer with every newton metre.
 */
export const driveWindup = /* @__PURE__ */ formula('capstan.driveWindup', {
  inputs: {
    /** Torque at the joint. */
    torque: { kind: 'torque', min: 0 },
    /** Axial rigidity of the cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Tension of both spans and all wraps at rest. */
    pretension: { kind: 'force', above: 0 },
    /** Radius of the pinion to the cord's centre line. */
    pinionRadius: { kind: 'length', above: 0 },
    /** Radius of the drum to the cord's centre line. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free span of one branch. */
    span: { kind: 'length', above: 0 },
    /** Angle of contact on the pinion, all turns counted. */
    pinionWrap: { kind: 'angle', above: 0 },
    /** Wrap from tangent point to anchor on the drum, taut branch. */
    drumWrapTaut: { kind: 'angle', min: 0 },
    /** Wrap from tangent point to anchor on the drum, slack branch. */
    drumWrapSlack: { kind: 'angle', min: 0 },
    /** Coefficient of friction, cord on pinion. */
    friction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction, cord on drum; the pinion's where not given. */
    drumFriction: { kind: 'ratio', min: 0, optional: true },
    /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
    hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'frictionOnly' },
    /** Tangential stiffness of the contact per length of cord; rigid where not given, which is optimistic. */
    contactStiffness: { kind: 'foundationModulus', above: 0, optional: true },
  },
  output: {
    /** Angle of the joint against its unloaded place. In the state `slips` the angle at which slip begins. */
    windup: 'angle',
    /** Slope of torque over angle here; zero once the pinion slips. */
    tangentStiffness: 'torsionalStiffness',
    /** Torque over angle; at zero torque the tangent. */
    secantStiffness: 'torsionalStiffness',
    /** Tension of the taut span. */
    tautTension: 'force',
    /** Tension of the slack span. */
    slackTension: 'force',
    /** Torque the drive carries: the torque given, or the slip torque if that is less. */
    torqueCarried: 'torque',
    /** Both spans tight; one span loose; or the pinion slips at less than this torque. */
    state: { oneOf: ['tight', 'slackSpan', 'slips'] },
  },
  assumes: [
    'loaded from a uniform pretension, joint at one pose',
    'fixed rigid centres, round pulleys',
    'linear elastic cord without bending stiffness or creep',
    'Coulomb friction, static and kinetic alike',
  ],
  valid: { 'both spans tight and no slip': (_, { state }) => state === 'tight' },
  source: [
    { level: 'computed', where: 'slip arcs after Euler-Eytelwein on both pulleys; equal lengths given and taken by the two branches' },
  ],
  si: (d) => {
    const { torque } = d
    const pull = torque / d.drumRadius
    const f = (taut: number) => {
      const t = branch(d, taut, d.drumWrapTaut)
      const s = branch(d, taut - pull, d.drumWrapSlack)
      return { value: t.length + s.length, slope: t.compliance + s.compliance }
    }
    let taut = d.pretension + pull
    let slack = d.pretension
    let carried = torque
    let state: 'tight' | 'slackSpan' | 'slips' = 'tight'
    if (torque > 0) {
      const low = Math.max(d.pretension, pull)
      const sidesLoose = pull > d.pretension && f(pull).value >= 0
      if (sidesLoose) state = 'slackSpan'
      taut = sidesLoose
        ? pull
        : increasingRoot(f, Math.max(low, d.pretension + pull / 2), low, d.pretension + pull, 1e-9 * (d.pretension + pull))
      slack = taut - pull
      if (d.hold === 'frictionOnly' && taut * Math.exp(-d.friction * d.pinionWrap) >= slack) {
        state = 'slips'
        ;({ taut, slack } = slipPoint(d))
        carried = d.drumRadius * (taut - slack)
      }
    }
    const t = branch(d, taut, d.drumWrapTaut)
    const s = branch(d, slack, d.drumWrapSlack)
    const windup = t.length / d.drumRadius
    const square = d.drumRadius * d.drumRadius
    const tangent = state === 'slips' ? 0 : square / t.compliance + (state === 'slackSpan' ? 0 : square / s.compliance)
    return {
      windup: torque > 0 ? windup : 0,
      tangentStiffness: tangent,
      secantStiffness: windup > 0 && torque > 0 ? carried / windup : tangent,
      tautTension: torque > 0 ? taut : d.pretension,
      slackTension: slack,
      torqueCarried: carried,
      state,
    }
  },
})
