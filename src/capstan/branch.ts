import { arcWindup } from './arc.js'
import { type ArcResponse, elasticArc } from './contact.js'

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
  /** Coefficient of friction, cord on drum; the pinion's where not given. */
  readonly drumFriction?: number | undefined
  /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
  readonly hold: 'frictionOnly' | 'clampedMidPinion'
  /** Tangential stiffness of the contact per length of cord, Pa; rigid where not given. */
  readonly contactStiffness?: number | undefined
}

const arcOf = (d: CordDriveState, T: number, mu: number, R: number, wrap: number): ArcResponse =>
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
export function branch(d: CordDriveState, T: number, drumWrap: number): { length: number; compliance: number } {
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
