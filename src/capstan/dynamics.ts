import { formula } from '../formula/index.js'
import { CORD_RIGIDITY } from './cord-inputs.js'

const REDUCTION = {
  /** Reduction of the drive. */
  ratio: { kind: 'ratio', above: 0 },
} as const

/** Inertia of the motor's rotor as felt at the joint. */
export const reflectedInertia = /* @__PURE__ */ formula('capstan.reflectedInertia', {
  inputs: {
    /** Inertia of rotor and pinion. */
    rotorInertia: { kind: 'momentOfInertia', min: 0 },
    ...REDUCTION,
  },
  output: 'momentOfInertia',
  equation: ['result = rotorInertia * ratio^2'],
  source: [{ level: 'commonPractice', where: 'equal kinetic energy at the joint: N² J' }],
  si: ({ rotorInertia, ratio }) => rotorInertia * ratio * ratio,
})

/** Stiffness of the drive as the motor feels it, joint locked. */
export const stiffnessAtMotor = /* @__PURE__ */ formula('capstan.stiffnessAtMotor', {
  inputs: {
    /** Stiffness at the joint, motor locked. */
    stiffness: { kind: 'torsionalStiffness', min: 0 },
    ...REDUCTION,
  },
  /** Torque per angle of the motor. */
  output: 'torsionalStiffness',
  equation: ['result = stiffness / ratio^2'],
  source: [{ level: 'commonPractice', where: 'equal energy: K/N²' }],
  si: ({ stiffness, ratio }) => stiffness / (ratio * ratio),
})

/** Natural frequencies of load and rotor on the drive's stiffness. */
export const driveResonance = /* @__PURE__ */ formula('capstan.driveResonance', {
  inputs: {
    /** Stiffness at the joint; the tangent stiffness at the working torque. */
    stiffness: { kind: 'torsionalStiffness', above: 0 },
    /** Inertia at the joint. */
    loadInertia: { kind: 'momentOfInertia', above: 0 },
    /** Rotor inertia as felt at the joint. */
    reflectedInertia: { kind: 'momentOfInertia', above: 0 },
  },
  output: {
    /** Motor held: the anti-resonance that the motor sees. */
    motorLocked: 'frequency',
    /** Motor free. */
    motorFree: 'frequency',
    /** Bandwidth a controller on the motor side can usually reach: a third of the locked frequency (rule of thumb). */
    usableBandwidth: 'frequency',
  },
  equation: [
    'motorLocked = sqrt(stiffness / loadInertia) / (2 * pi)',
    'motorFree = sqrt(stiffness * (1 / loadInertia + 1 / reflectedInertia)) / (2 * pi)',
    'usableBandwidth = motorLocked / 3',
  ],
  assumes: [
    'two inertias on one spring, no damping',
    'bandwidth: rule of thumb of a third to a fifth of the locked frequency; the third is given',
  ],
  source: [{ level: 'commonPractice', where: 'two-inertia drive train' }],
  si: ({ stiffness, loadInertia, reflectedInertia: rotor }) => {
    const motorLocked = Math.sqrt(stiffness / loadInertia) / (2 * Math.PI)
    return {
      motorLocked,
      motorFree: Math.sqrt(stiffness * (1 / loadInertia + 1 / rotor)) / (2 * Math.PI),
      usableBandwidth: motorLocked / 3,
    }
  },
})

/** Drift of the pinion against the joint in one loaded-out, unloaded-back cycle, where cord held by friction alone passes over the pinion. */
export const creepDrift = /* @__PURE__ */ formula('capstan.creepDrift', {
  title: 'drift by creep of the cord on the pinion',
  inputs: {
    ...REDUCTION,
    /** Angle the joint travels each way. */
    stroke: { kind: 'angle', min: 0 },
    /** Difference of span tensions in the loaded stroke. */
    tensionDifference: { kind: 'force', min: 0 },
    ...CORD_RIGIDITY,
  },
  output: 'angle',
  equation: ['result = ratio * stroke * tensionDifference / (2 * axialRigidity)'],
  assumes: [
    'short pinion wrap: every cord element leaves the pinion (no element leaves and there is no drift where pinion travel and slip arcs fit in the wrap)',
    'not checked by experiment',
  ],
  source: [{ level: 'computed', where: 'bookkeeping of unstretched length over repeated cycles' }],
  si: ({ ratio, stroke, tensionDifference, axialRigidity }) => (ratio * stroke * tensionDifference) / (2 * axialRigidity),
})
