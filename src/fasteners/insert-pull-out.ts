import { formula } from '../formula/index.js'
import { BOSS_DIAMETER } from './fit-inputs.js'

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
    /** Share of the shear strength that a pull test of this insert in this print showed. Without a test: 0.3 to 0.5. */
    share: { kind: 'ratio', above: 0, max: 1 },
    /** Whether the share comes from your own test. */
    calibrated: { flag: true },
    ...BOSS_DIAMETER,
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
    /** Torque that turns the insert in its hole. */
    turnOut: 'torque',
    /** Tension that tears the boss below the insert. */
    bossTension: 'force',
    /** Share of the lesser of both that the preload uses when it jacks the insert out; zero when the clamped part rests on it. */
    preloadUse: 'ratio',
    /** Evidence for the numbers. */
    evidence: { oneOf: ['calibrated', 'uncalibrated'] },
    /** Whether assembly alone pulls the insert out. */
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
