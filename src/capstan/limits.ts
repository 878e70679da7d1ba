import { formula } from '../formula/index.js'
import { PINION_FRICTION } from './friction-inputs.js'
import { DRUM_RADIUS, LOADED_DRUM, PINION_WRAP, PRETENSION, SPAN } from './inputs.js'

/** Torque at which the slack span would lose all tension: quick bounds by hand. `slackTorque` solves it at one pose, `travelLimits` over the travel. */
export const slackTorqueEstimate = /* @__PURE__ */ formula('capstan.slackTorqueEstimate', {
  inputs: {
    ...PRETENSION,
    ...DRUM_RADIUS,
  },
  output: {
    /** Lower bound whatever the arcs, so for the whole travel. */
    anyArcs: 'torque',
    /** Lower bound for equal drum arcs, so near mid travel only. */
    equalArcs: 'torque',
  },
  equation: ['anyArcs = drumRadius * pretension', 'equalArcs = 2 * drumRadius * pretension'],
  assumes: [
    'any arcs: the taut span keeps at least the pretension',
    'equal arcs: both spans change by the same force',
    'fixed centres, linear elastic cord',
  ],
  source: [{ level: 'computed', where: 'moment balance of the drum: the slack span at zero, the taut one at T0 or at 2 T0' }],
  si: ({ pretension, drumRadius }) => ({ anyArcs: drumRadius * pretension, equalArcs: 2 * drumRadius * pretension }),
})

/** Torque at which the cord slips on the pinion: quick bounds by hand. `slipTorque` solves it at one pose, `travelLimits` over the travel. */
export const slipTorqueEstimate = /* @__PURE__ */ formula('capstan.slipTorqueEstimate', {
  inputs: {
    ...PRETENSION,
    ...DRUM_RADIUS,
    ...PINION_FRICTION,
    ...PINION_WRAP,
  },
  output: {
    /** Lower bound whatever the arcs, so for the whole travel. */
    anyArcs: 'torque',
    /** Lower bound for equal drum arcs, so near mid travel only. */
    equalArcs: 'torque',
  },
  equation: [
    'anyArcs = drumRadius * pretension * (1 - exp(-friction * pinionWrap))',
    'equalArcs = 2 * drumRadius * pretension * tanh(friction * pinionWrap / 2)',
  ],
  assumes: [
    'any arcs: the taut span keeps at least the pretension',
    'equal arcs: both spans change by the same force',
    'cord not clamped to the pinion',
    'fixed centres, linear elastic cord',
  ],
  source: [
    {
      level: 'computed',
      where: 'belt-friction equation with the taut span at T0, and with T0 + F and T0 - F: F = T0 tanh(mu Theta / 2)',
    },
  ],
  si: ({ pretension, drumRadius, friction, pinionWrap }) => {
    const pull = drumRadius * pretension
    return { anyArcs: -pull * Math.expm1(-friction * pinionWrap), equalArcs: 2 * pull * Math.tanh((friction * pinionWrap) / 2) }
  },
})

/** Largest cord tension to size cord and anchors for, after the joint has travelled under load. */
export const travelPeakTension = /* @__PURE__ */ formula('capstan.travelPeakTension', {
  title: 'highest tension over the travel',
  inputs: {
    ...LOADED_DRUM,
  },
  output: 'force',
  equation: ['result = pretension + torque / drumRadius'],
  assumes: [
    'cord wound on slack displaces cord stored at pretension until the slack span is back at the pretension (short pinion wrap): a conservative size; with long wraps the peak stays nearer T0 + 0.5 to 0.6 of torque over radius',
    'joint strokes of at most 2.8 spans over the drum radius: longer ones, repeated on a short pinion wrap, pull more (`cycleTension`)',
    'not checked by experiment',
  ],
  source: [{ level: 'computed', where: 'conservation of unstretched cord length over a long stroke' }],
  si: ({ pretension, torque, drumRadius }) => pretension + torque / drumRadius,
})

/** Tension of the spans after a loaded stroke from rest, where the cord wound on is stored at the slack span's tension. */
export const strokeTension = /* @__PURE__ */ formula('capstan.strokeTension', {
  title: 'cord tension after a loaded stroke',
  inputs: {
    ...LOADED_DRUM,
    ...SPAN,
    /** Angle the drum turns under load. */
    stroke: { kind: 'angle', min: 0 },
  },
  output: {
    /** Tension of the taut span at the end of the stroke. */
    tautTension: 'force',
    /** Tension of the slack span at the end of the stroke. */
    slackTension: 'force',
  },
  equation: [
    'slackTension = pretension - torque / (2 * drumRadius) * exp(-drumRadius * stroke / (2 * span))',
    'tautTension = slackTension + torque / drumRadius',
  ],
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
 * Tensions that settle when a stroke under load and an unloaded return are repeated, where no cord stays on the pinion. The other limit, of a
 * long wrap, settles near the static tensions. For wraps between the two use the travel of a `cordDrive`.
 */
export const cycleTension = /* @__PURE__ */ formula('capstan.cycleTension', {
  title: 'cord tension in repeated strokes',
  inputs: {
    ...LOADED_DRUM,
    ...SPAN,
    /** Angle the drum turns each way. */
    stroke: { kind: 'angle', min: 0 },
    /** Whether the motor moves the load against its torque in the loaded stroke, or lets it down. */
    loadedStroke: { oneOf: ['raising', 'lowering'], default: 'raising' },
  },
  output: {
    /** Highest tension of the taut span. */
    peak: 'force',
    /** Lowest tension of the slack span under load: the tension that remains against slip and slack. */
    least: 'force',
    /** Tension of both spans without load where the loaded stroke starts. */
    restingAtStart: 'force',
    /** Tension of both spans without load where the loaded stroke ends. */
    restingAtEnd: 'force',
  },
  equation: [
    'halfPull = torque / (2 * drumRadius)',
    'turned = drumRadius * stroke / (2 * span)',
    'below = halfPull * turned^2 / (2 * (1 + turned))',
    'above = halfPull * turned * (2 + turned) / (2 * (1 + turned))',
    'peak = pretension + halfPull + (equalText(loadedStroke, "raising") ? above : below)',
    'least = pretension - halfPull - (equalText(loadedStroke, "raising") ? below : above)',
    'restingAtStart = pretension + (equalText(loadedStroke, "raising") ? -below : below)',
    'restingAtEnd = pretension + (equalText(loadedStroke, "raising") ? above : -above)',
  ],
  assumes: [
    'short pinion wrap: every cord element leaves the pinion',
    'spans only: slip arcs ignored (their unequal stretch adds up to a fifth of half the pull to both spans), no gross slip',
    'enough cycles to settle',
    'not checked by experiment',
  ],
  valid: { 'slack span under tension throughout': (_, { least }) => least > 0 },
  source: [
    {
      level: 'computed',
      where:
        'conservation of unstretched length: dT/dθ = -(r2/2L)(wound on - paid out) both ways; the next stroke pays out the cord that one stroke stores',
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
