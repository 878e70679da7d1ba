import { formula } from '../formula/index.js'
import { GRAVITY_OR_NONE, GROUND_UPWARD, LINK_MASS } from './link-inputs.js'

const REST = { kind: 'angularVelocity', default: '0 rad/s' } as const

/**
 * Torque of a driven sideways hip: weight of everything outboard, the ground's force, and the inertia of the swing.
 *
 * Places are in the plane of the leg, which is level and upright at a sideways hip angle of zero: `offset` square to it, positive to the left; `height`
 * from the axis, negative below. A body that accelerates up and down loads this drive through its offset even while the sideways hip is at rest.
 */
export const sidewaysHipTorque = /* @__PURE__ */ formula('kinematics.sidewaysHipTorque', {
  inputs: {
    /** Angle of the sideways hip, about +x. */
    angle: 'angle',
    /** Rate of the sideways hip. */
    rate: REST,
    /** Acceleration of the sideways hip. */
    acceleration: { kind: 'angularAcceleration', default: '0 rad/s^2' },
    /** Everything that swings sideways: motors, plates, links. */
    bodies: {
      list: {
        fields: {
          ...LINK_MASS,
          /** Offset of its centre of mass. */
          offset: 'length',
          /** Height of its centre of mass. */
          height: 'length',
          /** Rate of that height, by hip and knee. */
          heightRate: { kind: 'velocity', default: '0 m/s' },
          /** Acceleration of that height, by hip and knee. */
          heightAcceleration: { kind: 'acceleration', default: '0 m/s^2' },
          /** Moment of inertia about its own centre of mass: of a rod across its length, of a block about the forward axis. */
          inertia: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
          /** Angle of a rod from upright, in the plane of the leg; zero for a block. */
          lean: { kind: 'angle', default: '0 rad' },
          /** Rate of that angle. */
          leanRate: REST,
        },
      },
    },
    /** The foot, and the force of the ground on it; without it the leg swings freely. */
    foot: {
      fields: {
        /** Offset of the foot. */
        offset: 'length',
        /** Height of the foot, negative below the axis. */
        height: 'length',
        /** Force of the ground to the left. */
        groundLeft: 'force',
        ...GROUND_UPWARD,
      },
      optional: true,
    },
    ...GRAVITY_OR_NONE,
  },
  output: {
    /** Torque of the drive. */
    torque: 'torque',
    /** Part that holds the weight. */
    weight: 'torque',
    /** Part that holds the ground’s force. */
    ground: 'torque',
    /** Part that accelerates the swing. */
    swing: 'torque',
    /** Part of a moment of inertia that changes while the leg swings. */
    changing: 'torque',
    /** Part of masses that hip and knee accelerate along the leg next to the axis. */
    beside: 'torque',
    /** Moment of inertia about the axis. */
    inertia: 'momentOfInertia',
  },
  assumes: ['body level and at rest', 'rigid bodies', 'rods whose centre line is in the plane of the leg or parallel to it'],
  source: [{ level: 'computed', where: 'change of the moment of momentum about the sideways axis' }],
  si: ({ angle, rate, acceleration, bodies, foot, gravity }) => {
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)]
    let [weight, inertia, inertiaRate, beside] = [0, 0, 0, 0]
    for (const { mass, offset, height, heightRate, heightAcceleration, inertia: own, lean, leanRate } of bodies) {
      weight += mass * gravity * (offset * cosine - height * sine)
      inertia += mass * (offset * offset + height * height) + own * Math.cos(lean) ** 2
      inertiaRate += 2 * mass * height * heightRate - own * Math.sin(2 * lean) * leanRate
      beside += mass * offset * heightAcceleration
    }
    const left = foot === undefined ? 0 : foot.offset * cosine - foot.height * sine
    const up = foot === undefined ? 0 : foot.offset * sine + foot.height * cosine
    const ground = foot === undefined ? 0 : up * foot.groundLeft - left * foot.groundUpward
    const [swing, changing] = [inertia * acceleration, inertiaRate * rate]
    return { torque: weight + ground + swing + changing + beside, weight, ground, swing, changing, beside, inertia }
  },
})

/** Gyroscopic torques of a rotor that spins about the leg's left axis: on the sideways drive while the body turns, on its own bearings while the hip swings. */
export const rotorGyroscopicTorque = /* @__PURE__ */ formula('kinematics.rotorGyroscopicTorque', {
  inputs: {
    /** Moment of inertia of the rotor. */
    rotorInertia: { kind: 'momentOfInertia', min: 0 },
    /** Spin of the rotor about the left axis of the leg. */
    spin: 'angularVelocity',
    /** Angle of the sideways hip. */
    sidewaysAngle: { kind: 'angle', default: '0 deg' },
    /** Rate of the sideways hip. */
    sidewaysRate: REST,
    /** Rate of pitch of the body, about the left axis. */
    pitchRate: REST,
    /** Rate of yaw of the body, about the upward axis. */
    yawRate: REST,
  },
  output: {
    /** Torque of the sideways drive. */
    sidewaysDrive: 'torque',
    /** Moment on the bearings of the motor, about the leg’s upward axis; it does not load the sideways drive. */
    bearings: 'torque',
  },
  equation: [
    'sidewaysDrive = rotorInertia * spin * (pitchRate * sin(sidewaysAngle) - yawRate * cos(sidewaysAngle))',
    'bearings = rotorInertia * spin * sidewaysRate',
  ],
  assumes: ['spin much faster than the turning of body and hip'],
  source: [{ level: 'computed', where: 'turning of the rotor’s moment of momentum with its axis' }],
  si: ({ rotorInertia, spin, sidewaysAngle, sidewaysRate, pitchRate, yawRate }) => {
    const momentum = rotorInertia * spin
    return {
      sidewaysDrive: momentum * (pitchRate * Math.sin(sidewaysAngle) - yawRate * Math.cos(sidewaysAngle)),
      bearings: momentum * sidewaysRate,
    }
  },
})
