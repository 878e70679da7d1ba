import { formula } from '../formula/index.js'

/** Part of the weight that the lower (rear) pair of legs carries on a slope: half on the level, all of it at the slope that tips the robot. */
export const uphillShare = /* @__PURE__ */ formula('leg.uphillShare', {
  inputs: {
    /** Slope of the ground, climbed straight up. */
    slope: { kind: 'angle', min: 0, below: '90 deg' },
    /** Slope at which the robot tips over its lower feet (`kinematics.tipOverSlope`). */
    tipOverSlope: { kind: 'angle', above: 0, max: '90 deg' },
  },
  /** Share of the force square to the ground. */
  output: 'ratio',
  assumes: ['centre of mass midway between front and rear feet on the level', 'rigid stance, no motion'],
  source: [{ level: 'computed', where: 'moments about the upper feet; any statics text' }],
  valid: { 'a slope that does not tip the robot': ({ slope, tipOverSlope }) => slope <= tipOverSlope },
  si: ({ slope, tipOverSlope }) => Math.min(1, 0.5 * (1 + Math.tan(slope) / Math.tan(tipOverSlope))),
})
