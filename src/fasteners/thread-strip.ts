import { formula } from '../formula/index.js'
import { MINOR_DIAMETER, NOMINAL_DIAMETER, PITCH, PITCH_DIAMETER, STRESS_AREA, THREAD_TOLERANCES } from './thread-inputs.js'

const TAN_30 = 1 / Math.sqrt(3)
/** Beyond so many diameters the far turns of a thread in plastic carry next to nothing. */
const USEFUL_DIAMETERS = 2.5

/** Area of the nut's or the part's thread that shears when it strips, per length of engagement. */
const internalPerLength = (pitch: number, screwMajor: number, nutPitch: number) =>
  ((Math.PI * screwMajor) / pitch) * (pitch / 2 + TAN_30 * (screwMajor - nutPitch))
/** The same of the screw's thread. */
const externalPerLength = (pitch: number, nutMinor: number, screwPitch: number) =>
  ((Math.PI * nutMinor) / pitch) * (pitch / 2 + TAN_30 * (screwPitch - nutMinor))

/**
 * Stripping of a thread: sheared areas of screw and tapped part, the governing mode of failure, and the engagement at which the screw breaks first.
 *
 * `limits: 'worst'` takes the loosest pair of 6g and 6H; `'basic'` the basic profile. Engagement beyond 2.5 diameters does not count.
 */
export const threadStrip = /* @__PURE__ */ formula('fasteners.threadStrip', {
  title: 'stripping of a thread',
  inputs: {
    /** Sizes of the thread, from `metricThread`. */
    thread: {
      fields: {
        ...NOMINAL_DIAMETER,
        ...PITCH,
        ...PITCH_DIAMETER,
        ...MINOR_DIAMETER,
        ...STRESS_AREA,
        ...THREAD_TOLERANCES,
      },
    },
    /** Length over which threads engage. */
    engagement: { kind: 'length', above: 0 },
    /** Length of thread there is, screw or hole, whichever is shorter. */
    threadLength: { kind: 'length', above: 0 },
    /** Shear strength of the tapped part (across the layers where they cut the flanks). */
    partShearStrength: { kind: 'stress', above: 0 },
    /** Shear strength of the screw. */
    screwShearStrength: { kind: 'stress', above: 0 },
    /** Tensile strength of the screw. */
    screwTensileStrength: { kind: 'stress', above: 0 },
    /** Basic profile or the loosest pair. */
    limits: { oneOf: ['basic', 'worst'], default: 'worst' },
  },
  output: {
    /** Sheared area of the part's thread per length of engagement. */
    partAreaPerLength: 'length',
    /** Sheared area of the screw's thread per length of engagement. */
    screwAreaPerLength: 'length',
    /** Engagement that counts. */
    usefulEngagement: 'length',
    /** Force that strips the part. */
    partStripForce: 'force',
    /** Force that strips the screw. */
    screwStripForce: 'force',
    /** Force that breaks the screw. */
    screwBreakForce: 'force',
    /** Engagement at which the screw would break as its own thread strips, stripping at half its tensile strength. */
    equalStrengthEngagement: 'length',
    /** Engagement at which the screw would break as the part's thread strips; beyond the 2.5 diameters that count, the part always strips first. */
    partEqualStrengthEngagement: 'length',
    /** Governing mode of failure. */
    governedBy: { oneOf: ['partThread', 'screwThread', 'screwTension'] },
  },
  equation: [
    'usefulEngagement = min(engagement, 2.5 * thread.diameter)',
    'partStripForce == partAreaPerLength * usefulEngagement * partShearStrength',
    'screwStripForce == screwAreaPerLength * usefulEngagement * screwShearStrength',
    'screwBreakForce = thread.stressArea * screwTensileStrength',
  ],
  assumes: ['turns share the load equally over the engagement that counts', 'no widening of a thin boss'],
  source: [{ level: 'published', where: "FED-STD-H28/2B and Machinery's Handbook 24, shear areas of threads" }],
  requires: {
    engagement: {
      accepts: 'must not exceed the length of thread',
      holds: ({ engagement, threadLength }) => engagement <= threadLength * (1 + 1e-12),
    },
  },
  valid: {
    'engagement within 2.5 diameters': ({ engagement, thread }) => engagement <= USEFUL_DIAMETERS * thread.diameter * (1 + 1e-12),
    'engagement at least 0.6 diameters': ({ engagement, thread }) => engagement >= 0.6 * thread.diameter,
  },
  si: ({ thread, engagement, partShearStrength, screwShearStrength, screwTensileStrength, limits }) => {
    const worst = limits === 'worst' ? 1 : 0
    const screwMajor = thread.diameter - worst * (thread.allowance + thread.screwMajorTolerance)
    const screwPitch = thread.pitchDiameter - worst * (thread.allowance + thread.screwPitchTolerance)
    const nutPitch = thread.pitchDiameter + worst * thread.nutPitchTolerance
    const nutMinor = thread.minorDiameter + worst * thread.nutMinorTolerance
    const partAreaPerLength = internalPerLength(thread.pitch, screwMajor, nutPitch)
    const screwAreaPerLength = externalPerLength(thread.pitch, nutMinor, screwPitch)
    const usefulEngagement = Math.min(engagement, USEFUL_DIAMETERS * thread.diameter)
    const partStripForce = partAreaPerLength * usefulEngagement * partShearStrength
    const screwStripForce = screwAreaPerLength * usefulEngagement * screwShearStrength
    const screwBreakForce = thread.stressArea * screwTensileStrength
    const min = Math.min(partStripForce, screwStripForce, screwBreakForce)
    return {
      partAreaPerLength,
      screwAreaPerLength,
      usefulEngagement,
      partStripForce,
      screwStripForce,
      screwBreakForce,
      equalStrengthEngagement: (2 * thread.stressArea) / screwAreaPerLength,
      partEqualStrengthEngagement: screwBreakForce / (partAreaPerLength * partShearStrength),
      governedBy:
        min === partStripForce ? ('partThread' as const) : min === screwStripForce ? ('screwThread' as const) : ('screwTension' as const),
    }
  },
})
