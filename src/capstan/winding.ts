import { formula } from '../formula/index.js'
import { TAUT_CORD_DIAMETER } from './cord-inputs.js'
import { DRUM_RADIUS, PINION_RADIUS, PINION_WRAP, SPAN } from './inputs.js'

const PINION_TURNS = {
  /** Turns of the pinion per turn of the drum. */
  ratio: { kind: 'ratio', above: 0 },
} as const

const JOINT_TRAVEL = {
  /** Travel of the joint from end to end. */
  travel: { kind: 'angle', min: 0 },
} as const

const DRUM_LEAD = {
  /** Lead of the drum's groove, axial distance per drum turn. */
  drumLead: { kind: 'length', min: 0 },
} as const

/** Groove to cut for a cord: pitch, radius of the seat and depth. */
export const groove = /* @__PURE__ */ formula('capstan.groove', {
  title: 'sizes of a cord groove',
  inputs: {
    ...TAUT_CORD_DIAMETER,
    /** Gap between neighbouring cords over the cord diameter; a braid flattens, so wind a test piece. */
    pitchClearance: { kind: 'ratio', min: 0, default: 0.2 },
    /** Seat radius over cord diameter. */
    seatFactor: { kind: 'ratio', min: 0.5, default: 0.54 },
    /** Groove depth over cord diameter: a third on drums, 1.5 to 2 on deflection sheaves. */
    depthFactor: { kind: 'ratio', above: 0, default: 0.33 },
  },
  output: {
    /** Axial distance from groove to groove. */
    pitch: 'length',
    /** Radius of the seat. */
    seatRadius: 'length',
    /** Depth of the groove. */
    depth: 'length',
    /** Land left between two grooves at the outer diameter; below zero the grooves cut into each other. */
    land: 'length',
  },
  equation: ['pitch = cordDiameter * (1 + pitchClearance)', 'seatRadius = seatFactor * cordDiameter', 'depth = depthFactor * cordDiameter'],
  valid: {
    'clearance of 0.1 to 0.3 cord diameters': ({ pitchClearance }) => pitchClearance >= 0.1 && pitchClearance <= 0.3,
    'grooves leave a land between them': (_, { land }) => land > 0,
  },
  source: [{ level: 'unverified', where: 'seat radius of 0.53 to 0.55 and depth of at least 0.33 rope diameters: ISO 16625, ISO 4308-1' }],
  si: ({ cordDiameter: d, pitchClearance, seatFactor, depthFactor }) => {
    const seat = seatFactor * d
    const depth = depthFactor * d
    const pitch = d * (1 + pitchClearance)
    const halfWidth = depth >= seat ? seat : Math.sqrt(depth * (2 * seat - depth))
    return { pitch, seatRadius: seat, depth, land: pitch - 2 * halfWidth }
  },
})

/** Grooved length of a pinion on which the wraps walk as it turns. */
export const pinionLength = /* @__PURE__ */ formula('capstan.pinionLength', {
  inputs: {
    /** Axial distance from groove to groove. */
    groovePitch: { kind: 'length', above: 0 },
    /** Turns of cord in contact. */
    wraps: { kind: 'count', min: 0 },
    ...PINION_TURNS,
    ...JOINT_TRAVEL,
    /** Spare turns for both ends together. */
    spare: { kind: 'count', min: 0, default: 1 },
  },
  output: {
    /** Length that needs grooves. */
    length: 'length',
    /** Axial walk of the wraps over the travel. */
    walk: 'length',
  },
  equation: ['turns = ratio * travel / (2 * pi)', 'length = groovePitch * (wraps + turns + spare)', 'walk = groovePitch * turns'],
  assumes: ['no registry drift: a pinion held by friction alone may need more'],
  source: [{ level: 'computed', where: 'one pitch of axial walk per pinion turn' }],
  si: ({ groovePitch, wraps, ratio, travel, spare }) => {
    const turns = (ratio * travel) / (2 * Math.PI)
    return { length: groovePitch * (wraps + turns + spare), walk: groovePitch * turns }
  },
})

/** Grooved length of a drum with one or two tracks. */
export const drumLength = /* @__PURE__ */ formula('capstan.drumLength', {
  inputs: {
    ...DRUM_LEAD,
    /** Wrap from tangent point to anchor on the fuller track at the end of travel. */
    largestWrap: { kind: 'angle', min: 0 },
    /** Axial width of one cord with its clearance. */
    groovePitch: { kind: 'length', above: 0 },
    /** Tracks side by side: 1 where both cord ends share one, else 2. */
    tracks: { kind: 'count', min: 1, max: 2, whole: true, default: 2 },
  },
  /** Length that needs grooves, without flanges. */
  output: 'length',
  equation: ['result = tracks * (drumLead * largestWrap / (2 * pi) + groovePitch)'],
  source: [{ level: 'computed', where: 'axial advance of a helix plus the width of one cord, per track' }],
  si: ({ drumLead, largestWrap, groovePitch, tracks }) => tracks * ((drumLead * largestWrap) / (2 * Math.PI) + groovePitch),
})

/** Lead of the drum's groove that keeps the spans square to both axes while the wraps walk along the pinion. */
export const matchedDrumLead = /* @__PURE__ */ formula('capstan.matchedDrumLead', {
  inputs: {
    /** Axial distance from groove to groove on the pinion. */
    pinionPitch: { kind: 'length', above: 0 },
    ...PINION_TURNS,
  },
  /** Axial distance per drum turn. */
  output: 'length',
  equation: ['result = pinionPitch * ratio'],
  source: [{ level: 'computed', where: 'both ends of a span must walk alike: lead per pinion turn times turns per drum turn' }],
  si: ({ pinionPitch, ratio }) => pinionPitch * ratio,
})

/** Angle at which a span leaves its groove because the two ends do not walk alike. */
export const fleetAngle = /* @__PURE__ */ formula('capstan.fleetAngle', {
  inputs: {
    /** Axial offset of the span's ends from square, at the worst end of travel. */
    axialOffset: { kind: 'length', min: 0 },
    ...SPAN,
  },
  /** Angle between the span and the plane of the pulley. */
  output: 'angle',
  equation: ['result = atan(axialOffset / span)'],
  valid: { 'fleet angle of at most 2 degrees (1.5 on plain drums)': (_, angle) => angle <= 0.034907 },
  source: [{ level: 'unverified', where: 'fleet angle limits of 1 to 2 degrees: MIL-F-18372; wire-rope drum practice' }],
  si: ({ axialOffset, span }) => Math.atan2(axialOffset, span),
})

/** Axial offset of a span at the end of travel when the leads of drum and pinion do not match. */
export const leadMismatch = /* @__PURE__ */ formula('capstan.leadMismatch', {
  title: 'axial offset by unequal leads',
  inputs: {
    /** Axial distance from groove to groove on the pinion. */
    pinionPitch: { kind: 'length', min: 0 },
    ...DRUM_LEAD,
    ...PINION_TURNS,
    ...JOINT_TRAVEL,
  },
  /** Offset at either end of travel when the span is square at mid travel. */
  output: 'length',
  equation: ['result = abs(pinionPitch * ratio - drumLead) * travel / (4 * pi)'],
  source: [{ level: 'computed', where: 'difference of the two walks over half the travel' }],
  si: ({ pinionPitch, drumLead, ratio, travel }) => (Math.abs(pinionPitch * ratio - drumLead) * travel) / (4 * Math.PI),
})

/** Cord to cut for one drive, unstretched, with tails. */
export const cordToCut = /* @__PURE__ */ formula('capstan.cordToCut', {
  title: 'length of cord to cut',
  inputs: {
    ...SPAN,
    ...DRUM_RADIUS,
    /** Wraps on the drum from tangent points to anchors, both tracks together (constant over the travel). */
    drumWrapTotal: { kind: 'angle', min: 0 },
    ...PINION_RADIUS,
    ...PINION_WRAP,
    /** Axial distance from groove to groove on the pinion. */
    groovePitch: { kind: 'length', min: 0 },
    /** Cord inside each end fitting or knot. */
    endLength: { kind: 'length', min: 0 },
    /** Tail left free at each end for pulling and re-tensioning. */
    tailLength: { kind: 'length', min: 0 },
    /** Strain of the cord at pretension, elastic and bedded-in. */
    strain: { kind: 'strain', min: 0, default: 0 },
  },
  output: {
    /** Length to cut from the spool. */
    cutLength: 'length',
    /** Length between the anchors under tension. */
    workingLength: 'length',
  },
  equation: [
    'workingLength = 2 * span + drumRadius * drumWrapTotal + pinionWrap * sqrt(pinionRadius^2 + (groovePitch / (2 * pi))^2)',
    'cutLength = workingLength / (1 + strain) + 2 * (endLength + tailLength)',
  ],
  source: [{ level: 'computed', where: 'sum of spans, arcs and helix length' }],
  si: ({ span, drumRadius, drumWrapTotal, pinionRadius, pinionWrap, groovePitch, endLength, tailLength, strain }) => {
    const c = groovePitch / (2 * Math.PI)
    const workingLength = 2 * span + drumRadius * drumWrapTotal + pinionWrap * Math.sqrt(pinionRadius * pinionRadius + c * c)
    return { cutLength: workingLength / (1 + strain) + 2 * (endLength + tailLength), workingLength }
  },
})
