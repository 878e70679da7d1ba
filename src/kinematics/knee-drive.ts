import { formula } from '../formula/index.js'
import { KNEE_MOTOR, KNEE_TORQUE, RATIO_SLOPE } from './knee-drive-inputs.js'
import { GRAVITY_OR_NONE } from './link-inputs.js'

/**
 * Speed and acceleration of the knee's drum, against the body of the leg for a motor on the body and against the thigh for a motor on the thigh.
 *
 * A motor on the body turns with the hip as well as with the knee: its travel and its slip limit follow the drum, not the knee.
 */
export const kneeDrumMotion = /* @__PURE__ */ formula('kinematics.kneeDrumMotion', {
  inputs: {
    ...KNEE_MOTOR,
    ...RATIO_SLOPE,
    /** Rate of the hip. */
    hipRate: 'angularVelocity',
    /** Rate of the knee. */
    kneeRate: 'angularVelocity',
    /** Acceleration of the hip. */
    hipAcceleration: { kind: 'angularAcceleration', default: '0 rad/s^2' },
    /** Acceleration of the knee. */
    kneeAcceleration: { kind: 'angularAcceleration', default: '0 rad/s^2' },
  },
  output: {
    /** Speed of the drum. */
    rate: 'angularVelocity',
    /** Acceleration of the drum. */
    acceleration: 'angularAcceleration',
  },
  equation: [
    'carried = equalText(motorOn, "body") ? 1 : 0',
    'rate = carried * hipRate + kneeRatio * kneeRate',
    'acceleration = carried * hipAcceleration + kneeRatio * kneeAcceleration + ratioSlope * kneeRate^2',
  ],
  assumes: ['no slack and no stretch between drum and knee'],
  source: [{ level: 'computed', where: 'drum angle = hip angle (motor on the body) + travel over the knee angle, differentiated twice' }],
  si: ({ motorOn, kneeRatio, ratioSlope, hipRate, kneeRate, hipAcceleration, kneeAcceleration }) => {
    const carried = motorOn === 'body' ? 1 : 0
    return {
      rate: carried * hipRate + kneeRatio * kneeRate,
      acceleration: carried * hipAcceleration + kneeRatio * kneeAcceleration + ratioSlope * kneeRate * kneeRate,
    }
  },
})

/**
 * Torques that the drives of hip and knee hold for given torques of the joints, at their drums.
 *
 * With the foot under the hip and an upright ground force the hip joint needs no torque. With the knee motor on the body, the hip drive still holds as much
 * as the knee drive. Size that motor by this torque, not by the joint's.
 */
export const drumTorques = /* @__PURE__ */ formula('kinematics.drumTorques', {
  inputs: {
    ...KNEE_MOTOR,
    /** Torque of the hip joint. */
    hipTorque: 'torque',
    ...KNEE_TORQUE,
  },
  output: {
    /** Torque of the hip's drum. */
    hip: 'torque',
    /** Torque of the knee's drum. */
    knee: 'torque',
  },
  equation: [
    'carried = equalText(motorOn, "body") ? 1 : 0',
    'hip = hipTorque - carried * kneeTorque / kneeRatio',
    'knee = kneeTorque / kneeRatio',
  ],
  assumes: ['no friction between drum and knee'],
  requires: {
    kneeRatio: { accepts: 'must not be zero: at that dead point no torque of the drum balances the knee', holds: (x) => x.kneeRatio !== 0 },
  },
  source: [{ level: 'computed', where: 'equal power in joint space and in drum space' }],
  si: ({ motorOn, kneeRatio, hipTorque, kneeTorque }) => {
    const knee = kneeTorque / kneeRatio
    return { hip: motorOn === 'body' ? hipTorque - knee : hipTorque, knee }
  },
})

/** Moment of inertia and holding torque that a motor bolted to the upper link adds at the hip. */
export const carriedMotorLoad = /* @__PURE__ */ formula('kinematics.carriedMotorLoad', {
  inputs: {
    /** Mass of the motor. */
    mass: { kind: 'mass', min: 0 },
    /** Distance of its centre of mass from the hip axis, along the upper link. */
    distance: 'length',
    /** Hip angle: zero with the link straight down. */
    hipAngle: 'angle',
    ...GRAVITY_OR_NONE,
  },
  output: {
    /** Moment of inertia about the hip, without that of the motor about its own centre. */
    inertia: 'momentOfInertia',
    /** Torque at the hip that holds its weight. */
    holdingTorque: 'torque',
  },
  equation: ['inertia = mass * distance^2', 'holdingTorque = mass * gravity * distance * sin(hipAngle)'],
  assumes: ['centre of mass on the line from hip to knee', 'body level'],
  source: [{ level: 'computed', where: 'parallel axes; change of the height of the mass with the hip angle' }],
  si: ({ mass, distance, hipAngle, gravity }) => ({
    inertia: mass * distance * distance,
    holdingTorque: mass * gravity * distance * Math.sin(hipAngle),
  }),
})
