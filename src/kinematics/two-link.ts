import { formula } from '../formula/index.js'
import { GRAVITY_OR_NONE, LINK_INERTIA, LINK_MASS } from './link-inputs.js'

const CENTRE_OF_MASS = {
  /** Joint to centre of mass. */
  centreOfMass: 'length',
} as const

/** Torques of a two-link arm that moves in a vertical plane, in closed form: the classic example every inverse-dynamics routine is held against. */
export const twoLinkArmTorque = /* @__PURE__ */ formula('kinematics.twoLinkArmTorque', {
  inputs: {
    /** First link. */
    first: {
      fields: {
        /** Joint to joint. */
        length: { kind: 'length', above: 0 },
        ...CENTRE_OF_MASS,
        ...LINK_MASS,
        ...LINK_INERTIA,
      },
    },
    /** Second link. */
    second: {
      fields: {
        ...CENTRE_OF_MASS,
        ...LINK_MASS,
        ...LINK_INERTIA,
      },
    },
    /** First joint's angle, from the horizontal. */
    angle1: 'angle',
    /** Second joint's angle, from the first link. */
    angle2: 'angle',
    /** Rate of the first joint. */
    rate1: 'angularVelocity',
    /** Rate of the second joint. */
    rate2: 'angularVelocity',
    /** Acceleration of the first joint. */
    acceleration1: 'angularAcceleration',
    /** Acceleration of the second joint. */
    acceleration2: 'angularAcceleration',
    ...GRAVITY_OR_NONE,
  },
  output: {
    /** Torque at the first joint. */
    torque1: 'torque',
    /** Torque at the second joint. */
    torque2: 'torque',
  },
  assumes: ['rigid links in one vertical plane', 'no friction, no rotors'],
  source: [
    { level: 'unverified', where: 'M. W. Spong, S. Hutchinson, M. Vidyasagar, Robot Modeling and Control, "planar elbow manipulator"' },
    { level: 'unverified', where: 'J. J. Craig, Introduction to Robotics, 3rd ed., section 6.7 (masses at the links’ ends)' },
  ],
  si: ({ first, second, angle1, angle2, rate1, rate2, acceleration1, acceleration2, gravity }) => {
    const l1 = first.length
    const c1 = first.centreOfMass
    const c2 = second.centreOfMass
    const m2 = second.mass
    const cross = m2 * l1 * c2
    const own = m2 * c2 * c2 + second.inertia
    const m12 = own + cross * Math.cos(angle2)
    const m11 = first.mass * c1 * c1 + first.inertia + own + m2 * l1 * l1 + 2 * cross * Math.cos(angle2)
    const h = cross * Math.sin(angle2)
    const weight2 = m2 * c2 * gravity * Math.cos(angle1 + angle2)
    return {
      torque1:
        m11 * acceleration1 +
        m12 * acceleration2 -
        h * (2 * rate1 * rate2 + rate2 * rate2) +
        (first.mass * c1 + m2 * l1) * gravity * Math.cos(angle1) +
        weight2,
      torque2: m12 * acceleration1 + own * acceleration2 + h * rate1 * rate1 + weight2,
    }
  },
})
