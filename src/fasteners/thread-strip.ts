import { formula } from '../formula/index.js'

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
  inputs: {
    /** Sizes of the thread, from `metricThread`. */
    thread: {
      fields: {
        /** Nominal diameter. */
        diameter: { kind: 'length', above: 0 },
        /** Pitch. */
        pitch: { kind: 'length', above: 0 },
        /** Basic pitch diameter. */
        pitchDiameter: { kind: 'length', above: 0 },
        /** Basic minor diameter. */
        minorDiameter: { kind: 'length', above: 0 },
        /** Stress area. */
        stressArea: { kind: 'area', above: 0 },
        /** Allowance of the screw. */
        allowance: { kind: 'length', min: 0 },
        /** Tolerance of the screw's major diameter. */
        screwMajorTolerance: { kind: 'length', min: 0 },
        /** Tolerance of the screw's pitch diameter. */
        screwPitchTolerance: { kind: 'length', min: 0 },
        /** Tolerance of the nut's pitch diameter. */
        nutPitchTolerance: { kind: 'length', min: 0 },
        /** Tolerance of the nut's minor diameter. */
        nutMinorTolerance: { kind: 'length', min: 0 },
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
    const least = Math.min(partStripForce, screwStripForce, screwBreakForce)
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
        least === partStripForce
          ? ('partThread' as const)
          : least === screwStripForce
            ? ('screwThread' as const)
            : ('screwTension' as const),
    }
  },
})

/**
 * Upper bound for a heat-set or pressed-in insert: a share of the shear strength around its knurl. Only your own pull test determines that share.
 *
 * There is no sound closed form. Without a test assume 0.3 to 0.5; the result is then marked as uncalibrated. See also `measuredPullOut`.
 */
export const insertPullOut = /* @__PURE__ */ formula('fasteners.insertPullOut', {
  inputs: {
    /** Diameter over the knurl. */
    knurlDiameter: { kind: 'length', above: 0 },
    /** Length of the knurl in the print. */
    length: { kind: 'length', above: 0 },
    /** Shear strength of the print around it. */
    shearStrength: { kind: 'stress', above: 0 },
    /** Share of that which a pull test of this insert in this print showed; 0.3 to 0.5 without one. */
    share: { kind: 'ratio', above: 0, max: 1 },
    /** Whether the share comes from your own test. */
    calibrated: { flag: true },
    /** Outer diameter of the boss. */
    bossDiameter: { kind: 'length', above: 0 },
    /** Tensile strength of the boss along the insert's axis (across the layers of an upright boss). */
    bossStrength: { kind: 'stress', above: 0 },
    /** Preload of the screw. */
    preload: { kind: 'force', min: 0 },
    /** Whether the clamped part's hole is wider than the insert, so that the screw pulls the insert out (jack-out). */
    jacksOut: { flag: true },
  },
  output: {
    /** Pull-out force. */
    pullOut: 'force',
    /** Torque that turns it. */
    turnOut: 'torque',
    /** Tension that tears the boss below the insert. */
    bossTension: 'force',
    /** Share of the lesser of both that the preload uses when it jacks the insert out; zero when the clamped part rests on it. */
    preloadUse: 'ratio',
    /** Evidence for the numbers. */
    evidence: { oneOf: ['calibrated', 'uncalibrated'] },
    /** Whether assembly alone pulls it out. */
    state: { oneOf: ['holds', 'jacksOutAtAssembly'] },
  },
  equation: [
    'pullOut = share * pi * knurlDiameter * length * shearStrength',
    'turnOut = pullOut * knurlDiameter / 2',
    'bossTension = pi / 4 * (bossDiameter^2 - knurlDiameter^2) * bossStrength',
  ],
  assumes: [
    "uniform shear on the knurl's envelope, scaled by the share",
    'wall around the hole of 2.4 mm and infill of 70 % or more there (Kastner et al. 2023)',
  ],
  source: [
    { level: 'assumption', where: 'share of envelope shear as an upper bound, to be calibrated' },
    {
      level: 'published',
      where: 'evidence: Kastner et al., J. Manuf. Mater. Process. 7 (2023) 42; Sliwka & Wojcik, Polymers 18 (2025) 112 (abstracts)',
    },
  ],
  requires: {
    bossDiameter: { accepts: 'must be larger than the knurl', holds: ({ bossDiameter, knurlDiameter }) => bossDiameter > knurlDiameter },
  },
  valid: { 'the share comes from a pull test': ({ calibrated }) => calibrated },
  si: ({ knurlDiameter, length, shearStrength, share, calibrated, bossDiameter, bossStrength, preload, jacksOut }) => {
    const pullOut = share * Math.PI * knurlDiameter * length * shearStrength
    const bossTension = (Math.PI / 4) * (bossDiameter * bossDiameter - knurlDiameter * knurlDiameter) * bossStrength
    const preloadUse = jacksOut ? preload / Math.min(pullOut, bossTension) : 0
    return {
      pullOut,
      turnOut: (pullOut * knurlDiameter) / 2,
      bossTension,
      preloadUse,
      evidence: calibrated ? ('calibrated' as const) : ('uncalibrated' as const),
      state: preloadUse >= 1 ? ('jacksOutAtAssembly' as const) : ('holds' as const),
    }
  },
})
