import { formula } from '../formula/index.js'
import { SCREW_HELIX, THREAD_FRICTION } from './thread-inputs.js'

/** Torque of a screw that pushes or pulls, such as a cord tensioner: raising, lowering, efficiency, and whether it stays where it is set. */
export const powerScrew = /* @__PURE__ */ formula('fasteners.powerScrew', {
  inputs: {
    /** Axial force. */
    force: { kind: 'force', min: 0 },
    ...SCREW_HELIX,
    /** Half the thread angle: 30° metric, 15° trapezoidal, 0° square. */
    halfThreadAngle: { kind: 'angle', min: 0, below: '45 deg', default: '30 deg' },
    ...THREAD_FRICTION,
    /** Coefficient of friction of the collar. */
    collarFriction: { kind: 'ratio', min: 0 },
    /** Mean diameter of the collar. */
    collarDiameter: { kind: 'length', min: 0 },
  },
  output: {
    /** Torque to move against the force. */
    raisingTorque: 'torque',
    /** Thread's part of it. */
    threadTorque: 'torque',
    /** Collar's part of it. */
    collarTorque: 'torque',
    /** Torque to move with the force; negative when it must be held. */
    loweringTorque: 'torque',
    /** Efficiency of raising. */
    efficiency: 'ratio',
    /** Whether it stays by itself. */
    state: { oneOf: ['selfLocking', 'overhauls'] },
  },
  equation: [
    'slope = lead / (pi * meanDiameter)',
    'mu = threadFriction / cos(halfThreadAngle)',
    'raisingTorque = force * (meanDiameter / 2 * (slope + mu) / (1 - slope * mu) + collarFriction * collarDiameter / 2)',
  ],
  assumes: ['Coulomb friction; vibration lowers it, so lock a tensioner all the same'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-5 and 8-6' }],
  requires: {
    threadFriction: {
      accepts: 'must let the screw turn: friction × lead must stay below π × mean diameter × cos(half thread angle)',
      holds: ({ threadFriction, lead, meanDiameter, halfThreadAngle }) =>
        threadFriction * lead < Math.PI * meanDiameter * Math.cos(halfThreadAngle),
    },
  },
  si: ({ force, meanDiameter, lead, halfThreadAngle, threadFriction, collarFriction, collarDiameter }) => {
    const tan = lead / (Math.PI * meanDiameter)
    const friction = threadFriction / Math.cos(halfThreadAngle)
    const arm = meanDiameter / 2
    const threadArm = (arm * (tan + friction)) / (1 - tan * friction)
    const collarArm = (collarFriction * collarDiameter) / 2
    const loweringArm = (arm * (friction - tan)) / (1 + tan * friction) + collarArm
    return {
      raisingTorque: force * (threadArm + collarArm),
      threadTorque: force * threadArm,
      collarTorque: force * collarArm,
      loweringTorque: force * loweringArm,
      efficiency: lead / (2 * Math.PI) / (threadArm + collarArm),
      state: loweringArm >= 0 ? ('selfLocking' as const) : ('overhauls' as const),
    }
  },
})
