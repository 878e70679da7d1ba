import { formula } from '../formula/index.js'

/** Torque at the drum at which the slack span would lose all tension: a conservative estimate with equal changes of both spans. */
export const slackTorqueEstimate = /* @__PURE__ */ formula('capstan.slackTorqueEstimate', {
  inputs: {
    /** Tension of both spans at rest. */
    pretension: { kind: 'force', min: 0 },
    /** Centre-line radius of the drum. */
    drumRadius: { kind: 'length', above: 0 },
  },
  output: 'torque',
  assumes: ['both spans change by the same force (the solved limit is a few per cent higher)'],
  source: [{ level: 'computed', where: 'moment balance of the drum: T0 in both spans, the slack one unloaded to zero' }],
  si: ({ pretension, drumRadius }) => 2 * drumRadius * pretension,
})

/** Torque at the drum at which the cord slips on the pinion: a conservative estimate with equal changes of both spans. */
export const slipTorqueEstimate = /* @__PURE__ */ formula('capstan.slipTorqueEstimate', {
  inputs: {
    /** Tension of both spans at rest. */
    pretension: { kind: 'force', min: 0 },
    /** Centre-line radius of the drum. */
    drumRadius: { kind: 'length', above: 0 },
    /** Friction on the pinion; the low end of its range. */
    friction: { kind: 'ratio', min: 0 },
    /** Whole arc of contact on the pinion. */
    pinionWrap: { kind: 'angle', min: 0 },
  },
  output: 'torque',
  assumes: ['both spans change by the same force (the solved slip torque may be a tenth higher)', 'cord not clamped to the pinion'],
  source: [{ level: 'computed', where: 'belt-friction equation with T0 + F and T0 - F: F = T0 tanh(mu Theta / 2)' }],
  si: ({ pretension, drumRadius, friction, pinionWrap }) => 2 * drumRadius * pretension * Math.tanh((friction * pinionWrap) / 2),
})

/** Pretension that a torque needs so that the cord neither slips on the pinion nor goes slack. */
export const pretensionForTorque = /* @__PURE__ */ formula('capstan.pretensionForTorque', {
  inputs: {
    /** Largest torque at the drum. */
    torque: { kind: 'torque', min: 0 },
    /** Centre-line radius of the drum. */
    drumRadius: { kind: 'length', above: 0 },
    /** Friction on the pinion; the low end of its range. */
    friction: { kind: 'ratio', above: 0 },
    /** Whole arc of contact on the pinion. */
    pinionWrap: { kind: 'angle', above: 0 },
    /** Required reserve: the torque held over the torque needed. */
    requiredReserve: { kind: 'ratio', min: 1, default: 1.3 },
  },
  output: {
    /** The larger of the two. */
    pretension: 'force',
    /** What slipping asks for. */
    againstSlip: 'force',
    /** What staying taut asks for. */
    againstSlack: 'force',
  },
  assumes: ['both spans change by the same force (conservative)', 'cord not clamped to the pinion'],
  source: [{ level: 'computed', where: 'slack and slip limits solved for the pretension' }],
  si: ({ torque, drumRadius, friction, pinionWrap, requiredReserve }) => {
    const againstSlack = (requiredReserve * torque) / (2 * drumRadius)
    const againstSlip = againstSlack / Math.tanh((friction * pinionWrap) / 2)
    return { pretension: againstSlip, againstSlip, againstSlack }
  },
})

/** Largest cord tension to size cord and anchors for, after the joint has travelled under load. */
export const travelPeakTension = /* @__PURE__ */ formula('capstan.travelPeakTension', {
  inputs: {
    /** Tension of both spans at rest. */
    pretension: { kind: 'force', min: 0 },
    /** Largest torque at the drum. */
    torque: { kind: 'torque', min: 0 },
    /** Centre-line radius of the drum. */
    drumRadius: { kind: 'length', above: 0 },
  },
  output: 'force',
  assumes: [
    'cord wound on slack displaces cord stored at pretension until the slack span is back at the pretension (short pinion wrap): a conservative size; with long wraps the peak stays nearer T0 + 0.5 to 0.6 of torque over radius',
    'joint strokes of at most 2.8 spans over the drum radius: longer ones, repeated on a short pinion wrap, pull more (`cycleTension`)',
    'no experiment stands behind this',
  ],
  source: [{ level: 'computed', where: 'conservation of unstretched cord length over a long stroke' }],
  si: ({ pretension, torque, drumRadius }) => pretension + torque / drumRadius,
})

/** Tension of the spans after a loaded stroke from rest, where the cord wound on is stored at the slack span's tension. */
export const strokeTension = /* @__PURE__ */ formula('capstan.strokeTension', {
  inputs: {
    /** Tension of both spans at rest. */
    pretension: { kind: 'force', above: 0 },
    /** Torque at the drum during the stroke. */
    torque: { kind: 'torque', min: 0 },
    /** Centre-line radius of the drum. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free length of each span. */
    span: { kind: 'length', above: 0 },
    /** Angle the drum turns under load. */
    stroke: { kind: 'angle', min: 0 },
  },
  output: {
    /** Tension of the taut span at the end of the stroke. */
    tautTension: 'force',
    /** Tension of the slack span at the end of the stroke. */
    slackTension: 'force',
  },
  assumes: ['spans only: slip arcs ignored', 'short pinion wrap, so that stored cord leaves the pinion', 'no gross slip'],
  source: [{ level: 'computed', where: 'dT/dtheta = -(r2/2L)(Ts - T0), from conservation of unstretched length' }],
  valid: { 'slack span under tension at the start': ({ pretension, torque, drumRadius }) => torque / (2 * drumRadius) < pretension },
  si: ({ pretension, torque, drumRadius, span, stroke }) => {
    const force = torque / (2 * drumRadius)
    const slackTension = pretension - force * Math.exp((-drumRadius * stroke) / (2 * span))
    return { tautTension: slackTension + 2 * force, slackTension }
  },
})

/**
 * Tensions that settle when a stroke under load and an unloaded return are repeated, where no cord stays on the pinion: the other limit, of a
 * long wrap, is settled near the static tensions. What lies between, the travel of a `drive` tells.
 */
export const cycleTension = /* @__PURE__ */ formula('capstan.cycleTension', {
  inputs: {
    /** Tension of both spans and of all stored cord before the first cycle. */
    pretension: { kind: 'force', above: 0 },
    /** Torque at the drum during the loaded stroke; none on the return. */
    torque: { kind: 'torque', min: 0 },
    /** Centre-line radius of the drum. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free length of each span. */
    span: { kind: 'length', above: 0 },
    /** Angle the drum turns each way. */
    stroke: { kind: 'angle', min: 0 },
    /** Whether the motor moves the load against its torque in the loaded stroke, or lets it down. */
    loadedStroke: { oneOf: ['raising', 'lowering'], default: 'raising' },
  },
  output: {
    /** Highest tension of the taut span. */
    peak: 'force',
    /** Lowest tension of the slack span under load: what is left against slip and slack. */
    least: 'force',
    /** Tension of both spans without load where the loaded stroke starts. */
    restingAtStart: 'force',
    /** Tension of both spans without load where the loaded stroke ends. */
    restingAtEnd: 'force',
  },
  assumes: [
    'short pinion wrap: every cord element leaves the pinion',
    'spans only: slip arcs ignored (their unequal stretch adds up to a fifth of half the pull to both spans), no gross slip',
    'enough cycles to settle',
    'no experiment stands behind this',
  ],
  valid: { 'slack span under tension throughout': (_, { least }) => least > 0 },
  source: [
    {
      level: 'computed',
      where:
        'conservation of unstretched length: dT/dθ = -(r2/2L)(wound on - paid out) both ways, with what one stroke stores the next pays out',
    },
  ],
  si: ({ pretension, torque, drumRadius, span, stroke, loadedStroke }) => {
    const force = torque / (2 * drumRadius)
    const x = (drumRadius * stroke) / (2 * span)
    // The mean tension climbs by force × x along a raising stroke; stored cord decides how that lies about the pretension.
    const below = (force * x * x) / (2 * (1 + x))
    const above = (force * x * (2 + x)) / (2 * (1 + x))
    const raising = loadedStroke === 'raising'
    return {
      peak: pretension + force + (raising ? above : below),
      least: pretension - force - (raising ? below : above),
      restingAtStart: pretension + (raising ? -below : below),
      restingAtEnd: pretension + (raising ? above : -above),
    }
  },
})
