import { formula } from '../formula/index.js'

/** Share of the weight that the lower pair of feet carries on a slope: all of it at the slope that tips the robot. */
export const slopeLoadShare = /* @__PURE__ */ formula('structures.slopeLoadShare', {
  title: 'load share of the lower feet on a slope',
  inputs: {
    /** Slope of the ground, along the line from pair to pair. */
    slope: { kind: 'angle', min: 0, below: '90 deg' },
    /** Slope at which the robot tips over its lower feet (`kinematics.tipOverSlope`). */
    tipOverSlope: { kind: 'angle', above: 0, max: '90 deg' },
    /** Share of the lower pair on the level: a half where the centre of mass is midway between the pairs. */
    levelShare: { kind: 'ratio', min: 0, below: 1, default: 0.5 },
  },
  /** Share of the force normal to the ground. */
  output: 'ratio',
  equation: ['result = min(1, levelShare + (1 - levelShare) * tan(slope) / tan(tipOverSlope))'],
  assumes: ['rigid stance, no motion'],
  source: [{ level: 'published', where: 'any statics text: moments about the upper feet' }],
  valid: { 'a slope that does not tip the robot': ({ slope, tipOverSlope }) => slope <= tipOverSlope },
  si: ({ slope, tipOverSlope, levelShare }) => Math.min(1, levelShare + ((1 - levelShare) * Math.tan(slope)) / Math.tan(tipOverSlope)),
})
