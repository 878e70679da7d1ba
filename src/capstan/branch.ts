import { arcWindup } from './arc.js'
import { type ArcResponse, elasticArc } from './contact.js'
import { fibreArc, fibreGrip } from './fibre-arc.js'

/** A drive at one pose on SI numbers, as the kernels here take it. */
export interface CordDriveState {
  /** Axial rigidity of the cord, N. */
  readonly axialRigidity: number
  /** Tension of both spans and all wraps at rest, N. */
  readonly pretension: number
  /** Radius of the pinion to the cord's centre line, m. */
  readonly pinionRadius: number
  /** Radius of the drum to the cord's centre line, m. */
  readonly drumRadius: number
  /** Free span of one branch, m. */
  readonly span: number
  /** Angle of contact on the pinion, all turns counted, rad. */
  readonly pinionWrap: number
  /** Wrap from tangent point to anchor on the drum, taut branch, rad. */
  readonly drumWrapTaut: number
  /** Wrap from tangent point to anchor on the drum, slack branch, rad. */
  readonly drumWrapSlack: number
  /** Coefficient of friction, cord on pinion. */
  readonly friction: number
  /** Coefficient of friction, cord on drum. Default: that of the pinion. */
  readonly drumFriction?: number | undefined
  /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
  readonly hold: 'frictionOnly' | 'clampedMidPinion'
  /** Tangential stiffness of the contact per length of cord, Pa. Default: rigid. */
  readonly contactStiffness?: number | undefined
  /**
   * Exponent n of friction that falls with pressure: the coefficient is the one given at the pretension, times (T/T0)^(n − 1) at a tension T.
   * Default 1: Coulomb friction.
   */
  readonly frictionExponent?: number | undefined
  /** Compliance of frame, bearings and tensioner. Default: rigid. */
  readonly compliance?: LoopCompliance | undefined
}

/** Compliance of a drive besides that of its cord, m/N. */
export interface LoopCompliance {
  /** Cord length that each branch gains per newton by which the sum of the two tensions rises: the centres come closer. */
  readonly sum: number
  /** Cord length that the taut branch gains, and the slack one loses, per newton of the difference of the two tensions. */
  readonly difference: number
  /** Cord length that the taut branch gains per newton of its own tension, besides the stretch of its cord: a tensioner in that span. */
  readonly tautSpan: number
  /** The same of the slack branch. */
  readonly slackSpan: number
}

/** A frame without compliance. */
export const RIGID: LoopCompliance = { sum: 0, difference: 0, tautSpan: 0, slackSpan: 0 }

/** The same pose for torque in the other direction: the taut branch becomes the slack one. */
export const mirrored = (d: CordDriveState): CordDriveState => ({
  ...d,
  drumWrapTaut: d.drumWrapSlack,
  drumWrapSlack: d.drumWrapTaut,
  compliance: d.compliance && { ...d.compliance, tautSpan: d.compliance.slackSpan, slackSpan: d.compliance.tautSpan },
})

/** Friction of the drum: the one given, or that of the pinion at the lower pressure of the larger radius. */
const drumFrictionOf = (d: CordDriveState): number =>
  d.drumFriction ??
  (d.frictionExponent === undefined ? d.friction : d.friction * (d.drumRadius / d.pinionRadius) ** (1 - d.frictionExponent))

/** Slack tension that the pinion holds on the verge of slip. */
export const gripped = (d: CordDriveState, taut: number): number =>
  d.frictionExponent === undefined || d.frictionExponent === 1
    ? taut * Math.exp(-d.friction * d.pinionWrap)
    : fibreGrip(taut, d.pretension, d.friction, d.pinionWrap, d.frictionExponent)

function arcOf(d: CordDriveState, T: number, mu: number, R: number, wrap: number): ArcResponse {
  if (d.contactStiffness !== undefined) return elasticArc(T, d.pretension, mu, R, wrap, d.axialRigidity, d.contactStiffness)
  if (d.frictionExponent !== undefined && d.frictionExponent < 1 && mu > 0)
    return fibreArc(T, d.pretension, mu, R, wrap, d.axialRigidity, d.frictionExponent)
  return arcWindup.si({
    tension: T,
    storedTension: d.pretension,
    friction: mu,
    centreLineRadius: R,
    wrapAngle: wrap,
    axialRigidity: d.axialRigidity,
  })
}

/** Cord given out by one branch at span tension T: span with its tensioner and both arcs. Length and compliance. */
export function branch(d: CordDriveState, T: number, drumWrap: number, tensioner: number): { length: number; compliance: number } {
  // Slip may pass the middle of a pinion that holds by friction alone: the slip limit, not the half wrap, ends it.
  const pinionArc = d.hold === 'clampedMidPinion' || d.friction === 0 || d.contactStiffness !== undefined ? d.pinionWrap / 2 : d.pinionWrap
  const pinion = arcOf(d, T, d.friction, d.pinionRadius, pinionArc)
  const drum = arcOf(d, T, drumFrictionOf(d), d.drumRadius, drumWrap)
  const span = d.span / d.axialRigidity + tensioner
  return { length: (T - d.pretension) * span + pinion.feed + drum.feed, compliance: span + pinion.compliance + drum.compliance }
}

/** Cord given out by both branches and the closing frame at two span tensions: zero where they belong together. `slope` is per taut tension. */
export function loop(d: CordDriveState, taut: number, slack: number, slackByTaut: number): { value: number; slope: number } {
  const { sum, tautSpan, slackSpan } = d.compliance ?? RIGID
  const t = branch(d, taut, d.drumWrapTaut, tautSpan)
  const s = branch(d, slack, d.drumWrapSlack, slackSpan)
  return {
    value: t.length + s.length + 2 * sum * (taut + slack - 2 * d.pretension),
    slope: t.compliance + (slackByTaut === 0 ? 0 : slackByTaut * s.compliance) + 2 * sum * (1 + slackByTaut),
  }
}

/**
 * Cord that the drum winds per newton of the difference of the two tensions, from the compliances of the branches: the stiffer branch
 * carries more of it. A slack branch without tension has an infinite compliance and carries no load.
 */
export function lengthPerPull(taut: number, slack: number, { sum, difference }: LoopCompliance): number {
  if (slack === Number.POSITIVE_INFINITY) return taut + sum + difference
  return (taut * (slack + 2 * sum) + sum * (slack - taut)) / (taut + slack + 4 * sum) + difference
}

const MAX_STEPS = 100

/** Root of an increasing function given with its slope, in a bracket: Newton, halving where it would leave. A last step of `tolerance` leaves its square. */
export function increasingRoot(
  f: (x: number) => { value: number; slope: number },
  start: number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let lo = low
  let hi = high
  let x = start
  for (let i = 0; i < MAX_STEPS; i++) {
    const { value, slope } = f(x)
    if (value > 0) hi = x
    else lo = x
    const newton = x - value / slope
    // At no tension the slope may be infinite: a step of zero is then no sign of a root.
    if (slope < Number.POSITIVE_INFINITY && Math.abs(newton - x) <= tolerance) return newton
    const next = newton > lo && newton < hi ? newton : 0.5 * (lo + hi)
    if (Math.abs(next - x) <= tolerance) return next
    x = next
  }
  return x
}
