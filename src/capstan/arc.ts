import { formula } from '../formula/index.js'
import { CORD_RIGIDITY } from './cord-inputs.js'
import { ARC, PULLEY_RADIUS, WRAP_TO_ANCHOR } from './inputs.js'

const STORED_TENSION = {
  /** Tension stored along the arc before loading. */
  storedTension: { kind: 'force', above: 0 },
} as const

const PULLEY_FRICTION = {
  /** Coefficient of friction, cord on pulley. */
  friction: { kind: 'ratio', above: 0 },
} as const

/** x − ln(1 + x), exact also for small x where the two cancel. */
export const excess = (x: number): number =>
  x > -0.01 && x < 0.01 ? x * x * (1 / 2 - x * (1 / 3 - x * (1 / 4 - x * (1 / 5 - x * (1 / 6 - x * (1 / 7 - x / 8)))))) : x - Math.log1p(x)

/**
 * Cord length that a wrapped arc gives out when the span tension at its tangent point changes. Cord slips over the first part of the arc, and the
 * rest stays at rest. The arc is rigid for small changes and softens with load until slip reaches the anchor, whatever its length.
 */
export const arcWindup = /* @__PURE__ */ formula('capstan.arcWindup', {
  inputs: {
    /** Tension of the span at the tangent point. */
    tension: { kind: 'force', min: 0 },
    ...STORED_TENSION,
    /** Coefficient of friction, cord on pulley. */
    friction: { kind: 'ratio', min: 0 },
    ...PULLEY_RADIUS,
    ...WRAP_TO_ANCHOR,
    ...CORD_RIGIDITY,
  },
  output: {
    /** Cord length given out at the tangent point; negative where the arc takes cord in because the tension fell. */
    feed: 'length',
    /** Change of that length per change of span tension. */
    compliance: 'linearCompliance',
    /** Arc along which the cord slips. */
    slipArc: 'angle',
    /** Whether slip ends within the arc or has reached the anchor. */
    state: { oneOf: ['within', 'atAnchor'] },
  },
  assumes: [
    'linear elastic cord',
    'rigid pulley',
    'Coulomb friction, static and kinetic alike',
    'cord at rest sticks rigidly',
    'loaded from a uniform tension',
  ],
  source: [
    { level: 'computed', where: 'tangential balance dT/dθ = ∓μT up to the stored tension, elongation integrated over the slipping arc' },
  ],
  si: ({ tension, storedTension, friction, centreLineRadius, wrapAngle, axialRigidity }) => {
    const y = tension / storedTension - 1
    const log = Math.log1p(y)
    const slip = friction > 0 ? Math.abs(log) / friction : Number.POSITIVE_INFINITY
    const k = centreLineRadius / axialRigidity
    const within = y === 0 || slip < wrapAngle
    const sign = y > 0 ? 1 : -1
    // The integral of e^(∓μθ) over the whole arc.
    const reach = within ? 0 : friction > 0 ? Math.abs(Math.expm1(-sign * friction * wrapAngle)) / friction : wrapAngle
    const kept = y > -0.01 && y < 0.01 ? excess(y) : y - log
    return {
      feed: within ? (y === 0 ? 0 : (sign * k * storedTension * kept) / friction) : k * (tension * reach - storedTension * wrapAngle),
      compliance: within ? (y === 0 ? 0 : (k * Math.abs(y)) / ((1 + y) * friction)) : k * reach,
      slipArc: y === 0 ? 0 : within ? slip : wrapAngle,
      state: within ? 'within' : 'atAnchor',
    }
  },
})

/**
 * Recovery of a wrapped arc when the span tension falls from a peak. Friction reverses from the tangent point inwards, so less cord comes back than
 * went out. The length still out at the starting tension is the lost motion of the arc.
 */
export const arcRecovery = /* @__PURE__ */ formula('capstan.arcRecovery', {
  inputs: {
    /** Largest span tension before unloading. */
    peakTension: { kind: 'force', above: 0 },
    /** Span tension after unloading. */
    tension: { kind: 'force', above: 0 },
    ...STORED_TENSION,
    ...PULLEY_FRICTION,
    ...ARC,
  },
  requires: {
    peakTension: {
      accepts: 'must be at least the stored tension',
      holds: ({ peakTension, storedTension }) => peakTension >= storedTension,
    },
    tension: {
      accepts: 'must lie between the stored tension squared over the peak and the peak: below it the law ends',
      holds: ({ peakTension, tension, storedTension }) =>
        tension <= peakTension && tension * peakTension >= storedTension * storedTension * (1 - 1e-12),
    },
  },
  output: {
    /** Length given back since the peak. */
    recovered: 'length',
    /** Length still out compared with before loading. */
    remaining: 'length',
    /** Length still out when the tension is back at the stored tension. */
    lostMotion: 'length',
    /** Arc along which friction has reversed; it must fit within the wrap. */
    reversedArc: 'angle',
  },
  equation: [
    'reversedArc = log(peakTension / tension) / (2 * friction)',
    'recovered = centreLineRadius / (friction * axialRigidity) * (sqrt(peakTension) - sqrt(tension))^2',
  ],
  assumes: ['linear elastic cord', 'Coulomb friction', 'slip within the arc throughout', 'taut side; the slack side has the same form'],
  source: [{ level: 'computed', where: 'reverse slip from the tangent point, T = T₁e^(μθ), until it meets the loading profile' }],
  si: ({ peakTension, tension, storedTension, friction, centreLineRadius, axialRigidity }) => {
    const k = centreLineRadius / (friction * axialRigidity)
    const root = Math.sqrt(peakTension) - Math.sqrt(tension)
    const atPeak = k * storedTension * excess(peakTension / storedTension - 1)
    const rootBack = Math.sqrt(peakTension) - Math.sqrt(storedTension)
    return {
      recovered: k * root * root,
      remaining: atPeak - k * root * root,
      lostMotion: atPeak - k * rootBack * rootBack,
      reversedArc: Math.log(peakTension / tension) / (2 * friction),
    }
  },
})

/** Energy that micro-slip takes from one arc end per full load cycle of ±F about the pretension; grows with the cube of the load. */
export const arcCycleLoss = /* @__PURE__ */ formula('capstan.arcCycleLoss', {
  inputs: {
    /** Amplitude of the change of span tension. */
    amplitude: { kind: 'force', min: 0 },
    /** Tension stored along the arc. */
    pretension: { kind: 'force', above: 0 },
    ...PULLEY_FRICTION,
    ...ARC,
  },
  /** Energy lost per cycle. */
  output: 'energy',
  equation: ['result = 2 * centreLineRadius * amplitude^3 / (3 * friction * axialRigidity * pretension)'],
  valid: { 'amplitude of at most a quarter of the pretension': ({ amplitude, pretension }) => amplitude <= 0.25 * pretension },
  assumes: ['small amplitude (leading order)', 'slip within the arc', 'Coulomb friction'],
  source: [{ level: 'computed', where: 'leading order of the exact loading and unloading laws round a closed cycle' }],
  si: ({ amplitude, pretension, friction, centreLineRadius, axialRigidity }) =>
    (2 * centreLineRadius * amplitude ** 3) / (3 * friction * axialRigidity * pretension),
})

/** Length over which a cord that sticks elastically to its groove hands its tension over; it adds to the free span even at zero torque. */
export const microSlipLength = /* @__PURE__ */ formula('capstan.microSlipLength', {
  inputs: {
    ...CORD_RIGIDITY,
    /** Tangential stiffness of the contact per length of cord: shear of the braid on the groove. Must be measured. */
    contactStiffness: { kind: 'foundationModulus', above: 0 },
  },
  /** Decay length; it must be short against the arc, and can dwarf the span. */
  output: 'length',
  equation: ['result = sqrt(axialRigidity / contactStiffness)'],
  assumes: ['long arc', 'no slip'],
  source: [{ level: 'computed', where: 'bar on an elastic tangential bedding, EA u″ = k u: the shear-lag equation of lap joints' }],
  si: ({ axialRigidity, contactStiffness }) => Math.sqrt(axialRigidity / contactStiffness),
})
