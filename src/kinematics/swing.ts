import { formula } from '../formula/index.js'

/** How the foot travels from lift-off to touch-down as swing time runs from 0 to 1. */
export const SWING_SHAPES = ['cycloid', 'cubic', 'quintic', 'matched'] as const
/** The shape of the swing along the stride; `matched` starts and ends with the speed of the stance, so that the foot meets the ground without a scuff. */
export type SwingShape = (typeof SWING_SHAPES)[number]

/** Peaks of speed [times distance over time] and acceleration [times distance over time squared] of the shapes that start and end at rest. */
const PEAKS = { cycloid: [2, 2 * Math.PI], cubic: [1.5, 6], quintic: [1.875, 10 / Math.sqrt(3)] } as const

/** How fast and how hard a foot must move to cover a distance in a time, starting and ending at rest, by the shape of the motion. */
export const restToRestPeaks = /* @__PURE__ */ formula('kinematics.restToRestPeaks', {
  inputs: {
    /** Distance covered. */
    distance: { kind: 'length', min: 0 },
    /** Time it takes. */
    time: { kind: 'time', above: 0 },
    /** Shape of the motion: cycloid s − sin 2πs/2π, cubic 3s² − 2s³, quintic 10s³ − 15s⁴ + 6s⁵. */
    shape: { oneOf: ['cycloid', 'cubic', 'quintic'] },
  },
  output: {
    /** Highest speed, at mid travel. */
    peakSpeed: 'velocity',
    /** Highest acceleration. */
    peakAcceleration: 'acceleration',
  },
  assumes: ['motion along one line, at rest at both ends'],
  source: [{ level: 'computed', where: 'derivatives of the polynomials and of the cycloid; any cam design text, "SVAJ functions, rise"' }],
  si: ({ distance, time, shape }) => ({
    peakSpeed: (PEAKS[shape][0] * distance) / time,
    peakAcceleration: (PEAKS[shape][1] * distance) / (time * time),
  }),
})

/** How fast and how hard a foot must move in a swing that takes over and hands back the speed of the stance (no scuff at touch-down). */
export const matchedSwingPeaks = /* @__PURE__ */ formula('kinematics.matchedSwingPeaks', {
  inputs: {
    /** Distance the foot travels forward in the swing, relative to the body: the stance sweep. */
    stride: { kind: 'length', min: 0 },
    /** Duration of the swing. */
    swingTime: { kind: 'time', above: 0 },
    /** Speed of the body over the ground, which is the foot's backward speed at lift-off and touch-down. */
    bodySpeed: { kind: 'velocity', min: 0 },
  },
  output: {
    /** Highest speed of the foot relative to the body: forward at mid swing, or backward at both ends where the stride is short. */
    peakSpeed: 'velocity',
    /** Highest acceleration. */
    peakAcceleration: 'acceleration',
  },
  equation: [
    'peakSpeed = max(bodySpeed, 1.875 * (stride + bodySpeed * swingTime) / swingTime - bodySpeed)',
    'peakAcceleration = 10 / sqrt(3) * (stride + bodySpeed * swingTime) / swingTime^2',
  ],
  assumes: ['quintic with the stance speed and no acceleration at both ends'],
  source: [{ level: 'computed', where: 'quintic x = x0 − v t + (stride + v T)(10s³ − 15s⁴ + 6s⁵), derivatives' }],
  si: ({ stride, swingTime, bodySpeed }) => ({
    peakSpeed: Math.max(bodySpeed, (1.875 * (stride + bodySpeed * swingTime)) / swingTime - bodySpeed),
    peakAcceleration: ((10 / Math.sqrt(3)) * (stride + bodySpeed * swingTime)) / (swingTime * swingTime),
  }),
})

/**
 * Travel s and its first two derivatives of a shape at 0 ≤ u ≤ 1, from rest to rest over a unit distance (3 numbers).
 * `matched` is the quintic; its linear part is added by the path.
 */
export function swingShapeInto(out: Float64Array, offset: number, shape: SwingShape, u: number): void {
  if (shape === 'cycloid') {
    const angle = 2 * Math.PI * u
    out[offset] = u - Math.sin(angle) / (2 * Math.PI)
    out[offset + 1] = 1 - Math.cos(angle)
    out[offset + 2] = 2 * Math.PI * Math.sin(angle)
  } else if (shape === 'cubic') {
    out[offset] = u * u * (3 - 2 * u)
    out[offset + 1] = 6 * u * (1 - u)
    out[offset + 2] = 6 - 12 * u
  } else {
    out[offset] = u * u * u * (10 + u * (6 * u - 15))
    out[offset + 1] = 30 * u * u * (1 - u) * (1 - u)
    out[offset + 2] = 60 * u * (1 - u) * (1 - 2 * u)
  }
}

/** How the foot rises and comes down: `cosine` ends with a step of acceleration, `smooth` (two half cycloids) without. */
export const LIFT_SHAPES = ['cosine', 'smooth'] as const
/** The shape of the lift over the swing. */
export type LiftShape = (typeof LIFT_SHAPES)[number]

/** Height and its first two derivatives at 0 ≤ u ≤ 1 for a unit lift (3 numbers). */
export function liftShapeInto(out: Float64Array, offset: number, shape: LiftShape, u: number): void {
  if (shape === 'cosine') {
    const angle = 2 * Math.PI * u
    out[offset] = 0.5 * (1 - Math.cos(angle))
    out[offset + 1] = Math.PI * Math.sin(angle)
    out[offset + 2] = 2 * Math.PI * Math.PI * Math.cos(angle)
  } else {
    const up = u <= 0.5
    const angle = 4 * Math.PI * (up ? u : 1 - u)
    out[offset] = 2 * ((up ? u : 1 - u) - Math.sin(angle) / (4 * Math.PI))
    out[offset + 1] = (up ? 2 : -2) * (1 - Math.cos(angle))
    out[offset + 2] = 8 * Math.PI * Math.sin(angle)
  }
}

/**
 * A point of a Bézier curve and its first two derivatives by repeated interpolation, for one coordinate (3 numbers).
 * `points` holds the control points' coordinate; `work` is a buffer at least as long.
 */
export function bezierInto(out: Float64Array, offset: number, points: ArrayLike<number>, u: number, work: Float64Array): void {
  const n = points.length - 1
  for (let i = 0; i <= n; i++) work[i] = points[i]!
  let first = 0
  let second = 0
  for (let level = 1; level <= n; level++) {
    if (level === n - 1 || n === 1) second = n < 2 ? 0 : n * (n - 1) * (work[2]! - 2 * work[1]! + work[0]!)
    if (level === n) first = n * (work[1]! - work[0]!)
    for (let i = 0; i <= n - level; i++) work[i] = work[i]! + u * (work[i + 1]! - work[i]!)
  }
  out[offset] = work[0]!
  out[offset + 1] = first
  out[offset + 2] = second
}
