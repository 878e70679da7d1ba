import { formula } from '../formula/index.js'
import { KNEE_MOTOR } from './knee-drive-inputs.js'

/** Effect of an angle error of the rotor's encoder on the motor: current out of phase, less torque. */
export const commutationError = /* @__PURE__ */ formula('kinematics.commutationError', {
  inputs: {
    /** Error of the rotor’s angle. */
    angleError: 'angle',
    /** Pole pairs of the motor. */
    polePairs: { kind: 'count', min: 1, whole: true },
  },
  output: {
    /** Error of the electrical angle. */
    electricalError: 'angle',
    /** Torque left of what the current would make in phase; negative beyond a quarter of an electrical turn: the motor runs away. */
    torqueLeft: 'ratio',
    /** Whether the motor still pulls in the sense that is commanded. */
    state: { oneOf: ['pulls', 'reversed'] },
  },
  equation: ['electricalError = polePairs * angleError', 'torqueLeft = cos(polePairs * angleError)'],
  assumes: ['torque proportional to the current in phase with the back-EMF'],
  source: [{ level: 'computed', where: 'part of the current in phase' }],
  valid: {
    'at most half an electrical turn (an error that swings further passes full reversal)': ({ angleError, polePairs }) =>
      Math.abs(polePairs * angleError) <= Math.PI,
  },
  si: ({ angleError, polePairs }) => {
    const torqueLeft = Math.cos(polePairs * angleError)
    return { electricalError: polePairs * angleError, torqueLeft, state: torqueLeft > 0 ? 'pulls' : 'reversed' }
  },
})

/**
 * Speed ripple that the error of a motor's encoder feigns, at the motor and at its drum.
 *
 * The ripple relative to the speed is the same before and after the reduction. A damping gain turns it into a real torque of the motor.
 */
export const encoderSpeedRipple = /* @__PURE__ */ formula('kinematics.encoderSpeedRipple', {
  inputs: {
    /** Speed of the shaft that carries the encoder. */
    speed: 'angularVelocity',
    /** Part of the error that repeats once per turn. */
    firstHarmonic: { kind: 'angle', min: 0 },
    /** Part of the error that repeats twice per turn. */
    secondHarmonic: { kind: 'angle', min: 0 },
  },
  /** Largest difference of the speed read from the true one. */
  output: 'angularVelocity',
  equation: ['result = abs(speed) * (firstHarmonic + 2 * secondHarmonic)'],
  assumes: ['steady speed', 'no filter'],
  source: [{ level: 'computed', where: 'derivative of the two harmonics, both at their worst' }],
  si: ({ speed, firstHarmonic, secondHarmonic }) => Math.abs(speed) * (firstHarmonic + 2 * secondHarmonic),
})

/**
 * Largest error of the knee angle from errors of the encoders of hip and knee, on the motors' side of their reductions.
 *
 * With the knee's motor on the body the hip's error enters the knee. For the foot use `footError` with the coupling of the drives.
 */
export const kneeEncoderError = /* @__PURE__ */ formula('kinematics.kneeEncoderError', {
  inputs: {
    ...KNEE_MOTOR,
    /** Largest error of the encoder on the hip’s motor. */
    hipError: { kind: 'angle', min: 0 },
    /** Largest error of the encoder on the knee’s motor. */
    kneeError: { kind: 'angle', min: 0 },
    /** Hip motor turns per turn of its drum, either sign; 1 for an encoder on the drum. */
    hipMotorRatio: { kind: 'ratio', default: 1 },
    /** Knee motor turns per turn of its drum, either sign; 1 for an encoder on the drum. */
    kneeMotorRatio: { kind: 'ratio', default: 1 },
  },
  /** Largest error of the knee angle. */
  output: 'angle',
  equation: [
    'carried = equalText(motorOn, "body") ? 1 : 0',
    'result = (kneeError / abs(kneeMotorRatio) + carried * hipError / abs(hipMotorRatio)) / abs(kneeRatio)',
  ],
  assumes: ['both errors at their worst at once', 'no stretch and no backlash between drum and knee'],
  requires: {
    kneeRatio: { accepts: 'must not be zero', holds: ({ kneeRatio }) => kneeRatio !== 0 },
    hipMotorRatio: { accepts: 'must not be zero', holds: ({ hipMotorRatio }) => hipMotorRatio !== 0 },
    kneeMotorRatio: { accepts: 'must not be zero', holds: ({ kneeMotorRatio }) => kneeMotorRatio !== 0 },
  },
  source: [{ level: 'computed', where: 'knee angle = (drum angle less the hip angle it turns with) over the ratio' }],
  si: ({ motorOn, kneeRatio, hipError, kneeError, hipMotorRatio, kneeMotorRatio }) => {
    const hip = motorOn === 'body' ? hipError / Math.abs(hipMotorRatio) : 0
    return (kneeError / Math.abs(kneeMotorRatio) + hip) / Math.abs(kneeRatio)
  },
})
