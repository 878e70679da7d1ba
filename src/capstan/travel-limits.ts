import { formula } from '../formula/index.js'
import { type CordDriveState, mirrored } from './branch.js'
import { DRUM_FRICTION, FIBRE_LAW, FRICTIONS, LIKELY_EXPONENT } from './friction-inputs.js'
import { SLACK_SHARE, slackPoint, slipPoint } from './holding.js'
import { CORD_LOOP, DRUM_RADIUS, DRUM_TRAVEL, DRUM_WRAP, HOLD, LOOP_COMPLIANCE, PINION_RADIUS, SPAN, TRAVEL } from './inputs.js'

/** Limits at one pose for torque in one direction. */
export interface HoldingLimits {
  /** Torque at which the pinion slips; infinite for a clamped cord. */
  readonly slip: number
  /** Torque at which the slack span keeps 1 % of the pretension; infinite where the pinion slips before. */
  readonly slack: number
  /** Taut tension at the lower of the two. */
  readonly taut: number
}

/** Slip and slack torque at one pose, for torque that tightens the taut branch. */
export function limitsAt(d: CordDriveState): HoldingLimits {
  const min = SLACK_SHARE * d.pretension
  let slip = Number.POSITIVE_INFINITY
  if (d.hold === 'frictionOnly') {
    const verge = slipPoint(d)
    slip = d.drumRadius * (verge.taut - verge.slack)
    // A span that is slack before the pinion slips: only very grippy, long wraps come to that.
    if (!(verge.slack < min)) return { slip, slack: Number.POSITIVE_INFINITY, taut: verge.taut }
  }
  const { taut } = slackPoint(d, SLACK_SHARE)
  return { slip, slack: d.drumRadius * (taut - min), taut }
}

const holding = ({ slip, slack }: HoldingLimits) => Math.min(slip, slack)

/** A drive at one pose, with the direction of torque in which it holds less there. */
export function lowerDirection(d: CordDriveState): HoldingLimits & { readonly direction: 'positive' | 'negative' } {
  const [positive, negative] = [limitsAt(d), limitsAt(mirrored(d))]
  return holding(negative) < holding(positive) ? { ...negative, direction: 'negative' } : { ...positive, direction: 'positive' }
}

/** A drive with its travel, but for the cord and its tension. */
interface OverTravel extends Omit<CordDriveState, 'axialRigidity' | 'pretension' | 'drumWrapTaut' | 'drumWrapSlack'> {
  readonly drumWrap: number
  readonly travel: number
}

/**
 * Limits at the end of travel where they are least. The longer the taut branch and the shorter the slack one, the sooner both limits come: a longer
 * branch takes less tension. Only a tensioner in one of the spans makes the two ends differ.
 */
export function leastOverTravel(x: OverTravel, axialRigidity: number, pretension: number): HoldingLimits {
  const d: CordDriveState = {
    axialRigidity,
    pretension,
    pinionRadius: x.pinionRadius,
    drumRadius: x.drumRadius,
    span: x.span,
    pinionWrap: x.pinionWrap,
    drumWrapTaut: x.drumWrap + x.travel / 2,
    drumWrapSlack: x.drumWrap - x.travel / 2,
    friction: x.friction,
    drumFriction: x.drumFriction,
    hold: x.hold,
    contactStiffness: x.contactStiffness,
    frictionExponent: x.frictionExponent,
    compliance: x.compliance,
  }
  const limits = limitsAt(d)
  if (d.compliance === undefined || d.compliance.tautSpan === d.compliance.slackSpan) return limits
  const { tautSpan, slackSpan } = d.compliance
  const other = limitsAt({ ...d, compliance: { ...d.compliance, tautSpan: slackSpan, slackSpan: tautSpan } })
  return holding(other) < holding(limits) ? other : limits
}

/**
 * Torques at which a cord drive stops holding, the least over the travel of the joint and of either direction of torque. The worst pose is an end
 * of travel with the torque that tightens the span on the longer drum arc; the other end with the other torque is its mirror image.
 */
export const travelLimits = /* @__PURE__ */ formula('capstan.travelLimits', {
  inputs: {
    ...CORD_LOOP,
    ...FRICTIONS,
    ...DRUM_TRAVEL,
    ...HOLD,
    ...LOOP_COMPLIANCE,
    ...FIBRE_LAW,
  },
  requires: {
    travel: {
      accepts: 'must not exceed twice the drum wrap, or an anchor leaves the drum',
      holds: ({ drumWrap, travel }) => travel <= 2 * drumWrap,
    },
  },
  output: {
    /** The lower of slip and slack torque. */
    holdingTorque: 'torque',
    /** Torque at which the pinion slips under the cord; infinite for a clamped cord. */
    slipTorque: { kind: 'torque', infinite: true },
    /** Torque at which the slack span keeps 1 % of the pretension; infinite where the pinion slips before. */
    slackTorque: { kind: 'torque', infinite: true },
    /** Tension of the taut span at the holding torque. */
    tautTension: 'force',
    /** Which limit comes first. */
    limit: { oneOf: ['slips', 'slackSpan'] },
  },
  equation: ['holdingTorque == min(slipTorque, slackTorque)'],
  assumes: [
    'loaded from a uniform pretension at the end of travel: travel under load changes the tensions first (`cycleTension`)',
    'equal drum arcs at mid travel',
    'centres fixed but for the compliance given',
    'linear elastic cord',
    'Coulomb friction, static and kinetic alike',
  ],
  valid: {
    'cord strain of at most 2 %': ({ axialRigidity }, { tautTension }) => tautTension <= 0.02 * axialRigidity,
    ...LIKELY_EXPONENT,
  },
  source: [{ level: 'computed', where: 'slip and slack torque at an end of travel, where the drum arcs differ most' }],
  si: (x) => {
    const { slip, slack, taut } = leastOverTravel(x, x.axialRigidity, x.pretension)
    const slips = slip <= slack
    return {
      holdingTorque: slips ? slip : slack,
      slipTorque: slip,
      slackTorque: slack,
      tautTension: taut,
      limit: slips ? 'slips' : 'slackSpan',
    }
  },
})

/** Pretension that a torque needs so that the cord neither slips on the pinion nor goes slack, anywhere in the travel and in either direction. */
export const pretensionForTorque = /* @__PURE__ */ formula('capstan.pretensionForTorque', {
  inputs: {
    /** Largest torque at the joint. */
    torque: { kind: 'torque', min: 0 },
    ...PINION_RADIUS,
    ...DRUM_RADIUS,
    ...SPAN,
    /** Angle of contact on the pinion, all turns counted. */
    pinionWrap: { kind: 'angle', above: 0 },
    ...DRUM_WRAP,
    ...TRAVEL,
    /** Coefficient of friction, cord on pinion; the low end of its range decides holding. */
    friction: { kind: 'ratio', above: 0 },
    ...DRUM_FRICTION,
    ...HOLD,
    /** Required reserve: the torque held over the torque needed. */
    requiredReserve: { kind: 'ratio', min: 1, default: 1.3 },
  },
  requires: {
    travel: {
      accepts: 'must not exceed twice the drum wrap, or an anchor leaves the drum',
      holds: ({ drumWrap, travel }) => travel <= 2 * drumWrap,
    },
  },
  output: {
    /** The larger of the two. */
    pretension: 'force',
    /** Pretension that keeps the pinion from slipping; 0 for a clamped cord. */
    againstSlip: 'force',
    /** Pretension that keeps 1 % of itself in the slack span; 0 where the pinion slips before. */
    againstSlack: 'force',
  },
  equation: ['pretension == max(againstSlip, againstSlack)'],
  assumes: [
    'the tension that is left when the torque comes: after creep, in the cold, on the return stroke',
    'equal drum arcs at mid travel',
    'centres fixed but for the compliance given',
    'linear elastic cord',
    'Coulomb friction, static and kinetic alike',
  ],
  source: [{ level: 'computed', where: 'the holding torque is proportional to the pretension: least over the travel, solved for it' }],
  si: (x) => {
    // The rigidity cancels: both branches stretch in proportion to it.
    const { slip, slack } = leastOverTravel(x, 1, 1)
    const needed = x.requiredReserve * x.torque
    return { pretension: needed / Math.min(slip, slack), againstSlip: needed / slip, againstSlack: needed / slack }
  },
})
