import { formula } from '../formula/index.js'
import { kneeDrumMotion } from './knee-drive.js'
import { KNEE_ROTOR, RATIO_SLOPE } from './knee-drive-inputs.js'
import { KNEE_ANGLE, LINK_INERTIA, LINK_MASS } from './link-inputs.js'

/**
 * Inertia of the knee's drum and rotor as hip and knee feel it, with the term that couples them.
 *
 * The coupling term is what the hip's acceleration demands of the knee drive, and the reverse. For a motor on the thigh it is the rotor's inertia
 * times its ratio, which is the knee's own term divided by the motor ratio. It is negative where the rotor turns against its drum.
 */
export const kneeDriveInertia = /* @__PURE__ */ formula('kinematics.kneeDriveInertia', {
  inputs: { ...KNEE_ROTOR },
  output: {
    /** Added to the moment of inertia at the hip. */
    hip: 'momentOfInertia',
    /** Added to the coupling of hip and knee; either sign. */
    coupling: 'inertiaCoupling',
    /** Added to the moment of inertia at the knee. */
    knee: 'momentOfInertia',
  },
  equation: [
    'rotorByHip = equalText(motorOn, "body") ? motorRatio : 1',
    'rotorByKnee = motorRatio * kneeRatio',
    'hip = drumInertia + rotorInertia * rotorByHip^2',
    'coupling = drumInertia * kneeRatio + rotorInertia * rotorByHip * rotorByKnee',
    'knee = drumInertia * kneeRatio^2 + rotorInertia * rotorByKnee^2',
  ],
  assumes: ['axes of the driven wheel and of the rotor parallel to the hip axis', 'no slack and no stretch'],
  source: [
    { level: 'computed', where: 'kinetic energy of the spins of the driven wheel and of the rotor, as absolute angular velocities' },
  ],
  si: ({ motorOn, kneeRatio, motorRatio, rotorInertia, drumInertia }) => {
    const rotorByHip = motorOn === 'body' ? motorRatio : 1
    const rotorByKnee = motorRatio * kneeRatio
    return {
      hip: drumInertia + rotorInertia * rotorByHip * rotorByHip,
      coupling: drumInertia * kneeRatio + rotorInertia * rotorByHip * rotorByKnee,
      knee: drumInertia * kneeRatio * kneeRatio + rotorInertia * rotorByKnee * rotorByKnee,
    }
  },
})

/** Torques of hip and knee that accelerate the knee's drum and rotor; the term of a changing ratio is included. */
export const kneeDriveAccelerationTorque = /* @__PURE__ */ formula('kinematics.kneeDriveAccelerationTorque', {
  inputs: {
    ...KNEE_ROTOR,
    ...RATIO_SLOPE,
    /** Rate of the knee; matters with a changing ratio only. */
    kneeRate: { kind: 'angularVelocity', default: '0 rad/s' },
    /** Acceleration of the hip. */
    hipAcceleration: 'angularAcceleration',
    /** Acceleration of the knee. */
    kneeAcceleration: 'angularAcceleration',
  },
  output: {
    /** Torque at the hip joint. */
    hip: 'torque',
    /** Torque at the knee joint. */
    knee: 'torque',
  },
  equation: [
    'drum = kneeRatio * kneeAcceleration + ratioSlope * kneeRate^2',
    'byHip = equalText(motorOn, "body") ? motorRatio : 1',
    'drumTorque = drumInertia * (hipAcceleration + drum)',
    'rotorTorque = rotorInertia * (byHip * hipAcceleration + motorRatio * drum)',
    'hip = drumTorque + byHip * rotorTorque',
    'knee = kneeRatio * (drumTorque + motorRatio * rotorTorque)',
  ],
  assumes: ['axes of the driven wheel and of the rotor parallel to the hip axis', 'no slack and no stretch'],
  source: [{ level: 'computed', where: 'Lagrange’s equations of the spins of the driven wheel and of the rotor' }],
  si: ({ motorOn, kneeRatio, ratioSlope, motorRatio, rotorInertia, drumInertia, kneeRate, hipAcceleration, kneeAcceleration }) => {
    const relative = { motorOn: 'thigh', kneeRatio, ratioSlope, hipRate: 0, kneeRate, hipAcceleration, kneeAcceleration } as const
    const drum = kneeDrumMotion.si(relative).acceleration
    const byHip = motorOn === 'body' ? motorRatio : 1
    const drumTorque = drumInertia * (hipAcceleration + drum)
    const rotorTorque = rotorInertia * (byHip * hipAcceleration + motorRatio * drum)
    return { hip: drumTorque + byHip * rotorTorque, knee: kneeRatio * (drumTorque + motorRatio * rotorTorque) }
  },
})

/**
 * Moments of inertia at hip and knee of a leg whose knee is driven through a parallelogram: links, rod, crank and drives of the body, all of them.
 *
 * Only the cosine of the knee angle couples the joints; the shank and the crank turn alike.
 */
export const parallelogramLegInertia = /* @__PURE__ */ formula('kinematics.parallelogramLegInertia', {
  inputs: {
    /** Length of the upper link. */
    upperLength: { kind: 'length', above: 0 },
    /** Upper link. */
    upperLink: {
      fields: {
        ...LINK_MASS,
        /** Distance of its centre of mass from the hip. */
        centre: 'length',
        ...LINK_INERTIA,
      },
    },
    /** Shank. */
    shank: {
      fields: {
        ...LINK_MASS,
        /** Distance of its centre of mass from the knee, along the line to the foot. */
        centre: 'length',
        ...LINK_INERTIA,
      },
    },
    /** Rod. */
    rod: {
      fields: {
        ...LINK_MASS,
        /** Distance of its centre of mass from the crank pin, along the rod. */
        centre: 'length',
        ...LINK_INERTIA,
      },
    },
    /** Length of the crank, which equals that of the rocker. */
    crank: { kind: 'length', above: 0 },
    /** Angle of the crank from the line hip to knee, with the knee straight. */
    crankAngleAtStraightKnee: 'angle',
    ...KNEE_ANGLE,
    /** Moment of inertia of the hip’s drum, and of the rotor times its ratio squared. */
    hipDrive: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
    /** Moment of inertia of the knee’s drum and crank, and of the rotor times its ratio squared. */
    kneeDrive: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
  },
  output: {
    /** Moment of inertia at the hip with the knee held. */
    hip: 'momentOfInertia',
    /** Coupling of hip and knee; either sign. */
    coupling: 'inertiaCoupling',
    /** Moment of inertia at the knee with the hip held. */
    knee: 'momentOfInertia',
  },
  equation: [
    'upper = upperLink.inertia + upperLink.mass * upperLink.centre^2 + shank.mass * upperLength^2 + rod.inertia + rod.mass * rod.centre^2 + hipDrive',
    'shankAndCrank = shank.inertia + shank.mass * shank.centre^2 + rod.mass * crank^2 + kneeDrive',
    'between = shank.mass * upperLength * shank.centre * cos(kneeAngle) + rod.mass * crank * rod.centre * cos(crankAngleAtStraightKnee + kneeAngle)',
    'hip = upper + 2 * between + shankAndCrank',
    'coupling = between + shankAndCrank',
    'knee = shankAndCrank',
  ],
  assumes: ['centres of mass on the lines of the links', 'both motors on the body of the leg', 'rigid links'],
  source: [{ level: 'computed', where: 'kinetic energy in the absolute angles of thigh and shank' }],
  si: ({ upperLength, upperLink, shank, rod, crank, crankAngleAtStraightKnee, kneeAngle, hipDrive, kneeDrive }) => {
    const upper =
      upperLink.inertia +
      upperLink.mass * upperLink.centre * upperLink.centre +
      shank.mass * upperLength * upperLength +
      rod.inertia +
      rod.mass * rod.centre * rod.centre +
      hipDrive
    const knee = shank.inertia + shank.mass * shank.centre * shank.centre + rod.mass * crank * crank + kneeDrive
    const between =
      shank.mass * upperLength * shank.centre * Math.cos(kneeAngle) +
      rod.mass * crank * rod.centre * Math.cos(crankAngleAtStraightKnee + kneeAngle)
    return { hip: upper + 2 * between + knee, coupling: between + knee, knee }
  },
})
