import { formula } from '../formula/index.js'

/** Angle of one count of an encoder, and how far the true angle may be from the reading, seen at the drum behind a reduction. */
export const encoderStep = /* @__PURE__ */ formula('kinematics.encoderStep', {
  inputs: {
    /** Counts per turn of the encoder, after any multiplication of edges. */
    countsPerTurn: { kind: 'count', above: 0 },
    /** Turns of the encoder per turn of the joint: the reduction for an encoder on the motor, 1 for one on the joint. */
    turnsPerJointTurn: { kind: 'ratio', above: 0, default: 1 },
  },
  output: {
    /** Joint angle of one count. */
    step: 'angle',
    /** Largest error of rounding to a count, half a step. */
    worstError: 'angle',
    /** Root mean square of that error over many readings. */
    rmsError: 'angle',
  },
  equation: ['step = 2 * pi / (countsPerTurn * turnsPerJointTurn)', 'worstError = step / 2', 'rmsError = step / sqrt(12)'],
  assumes: ['ideal encoder: only rounding, no noise, no eccentricity'],
  source: [{ level: 'commonPractice', where: 'uniform rounding error: half a step at most, step over √12 rms' }],
  si: ({ countsPerTurn, turnsPerJointTurn }) => {
    const step = (2 * Math.PI) / (countsPerTurn * turnsPerJointTurn)
    return { step, worstError: step / 2, rmsError: step / Math.sqrt(12) }
  },
})

/** Angle error of an encoder disc, magnet or drum that runs off centre: once per turn; averaged over two heads opposite each other, twice per turn and far less. */
export const eccentricityError = /* @__PURE__ */ formula('kinematics.eccentricityError', {
  inputs: {
    /** Distance of the track’s centre from the axis of rotation. */
    eccentricity: { kind: 'length', min: 0 },
    /** Radius at which the track is read (for a cord, of its centre line on the drum). */
    trackRadius: { kind: 'length', above: 0 },
    /** Angle turned since the eccentricity pointed at the head. */
    angle: { kind: 'angle', default: '90 deg' },
  },
  output: {
    /** Error of the reading at this angle. */
    error: 'angle',
    /** Largest error over a turn, either way. */
    worstError: 'angle',
    /** Part of the error that turns once per turn. */
    firstHarmonic: 'angle',
    /** Part that turns twice per turn: what is left when two opposite heads are averaged. */
    secondHarmonic: 'angle',
  },
  equation: ['k = eccentricity / trackRadius', 'worstError = asin(min(1, k))', 'firstHarmonic = k', 'secondHarmonic = k^2 / 2'],
  valid: { 'eccentricity below a tenth of the track radius': ({ eccentricity, trackRadius }) => eccentricity < 0.1 * trackRadius },
  assumes: ['the head reads the track along its own radius', 'one read head'],
  source: [
    {
      level: 'computed',
      where: 'geometry of an eccentric circle: error = atan(k sin θ / (1 − k cos θ)), k = e/r, with the series Σ kⁿ sin nθ / n',
    },
  ],
  si: ({ eccentricity, trackRadius, angle }) => {
    const k = eccentricity / trackRadius
    return {
      error: Math.atan2(k * Math.sin(angle), 1 - k * Math.cos(angle)),
      worstError: Math.asin(Math.min(1, k)),
      firstHarmonic: k,
      secondHarmonic: (k * k) / 2,
    }
  },
})
