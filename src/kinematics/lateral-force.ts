import { formula } from '../formula/index.js'
import { LINK_LENGTHS } from './link-inputs.js'

/**
 * What a force on the foot across the plane of the leg does to its links: it bends both, twists the upper one through the bent knee, and tilts knee and hip.
 *
 * The leg stands upright sideways; the force is square to the plane in which hip and knee turn. Neither joint turns under it.
 */
export const lateralFootForce = /* @__PURE__ */ formula('kinematics.lateralFootForce', {
  inputs: {
    /** Force on the foot, square to the plane of the leg. */
    force: { kind: 'force', min: 0 },
    ...LINK_LENGTHS,
    /** Angle of the knee; 0 for a straight leg. */
    kneeAngle: 'angle',
  },
  output: {
    /** Bending moment of the upper link at the hip, out of the plane. */
    upperAtHip: 'torque',
    /** Bending moment of the upper link at the knee, out of the plane. */
    upperAtKnee: 'torque',
    /** Torque that twists the upper link, the same along its length. */
    upperTwist: 'torque',
    /** Moment that tilts the knee on its pin, which bends the lower link there. */
    kneeCouple: 'torque',
    /** Moment that tilts the hip on its shaft or pin. */
    hipCouple: 'torque',
  },
  equation: [
    'upperAtHip = force * abs(upperLink + lowerLink * cos(kneeAngle))',
    'upperAtKnee = force * lowerLink * abs(cos(kneeAngle))',
    'upperTwist = force * lowerLink * abs(sin(kneeAngle))',
    'kneeCouple = force * lowerLink',
    'hipCouple = force * sqrt(upperLink^2 + lowerLink^2 + 2 * upperLink * lowerLink * cos(kneeAngle))',
  ],
  assumes: [
    'straight links whose axes lie in one plane',
    'weight and inertia of the links left out: on a slope their weight relieves the links, because it pulls against the force of the ground',
  ],
  source: [
    { level: 'published', where: 'moment of a force about a point, any statics text' },
    { level: 'computed', where: 'cross products of force and arm in space, link by link' },
  ],
  si: ({ force, upperLink, lowerLink, kneeAngle }) => {
    const along = lowerLink * Math.cos(kneeAngle)
    const across = lowerLink * Math.sin(kneeAngle)
    return {
      upperAtHip: force * Math.abs(upperLink + along),
      upperAtKnee: force * Math.abs(along),
      upperTwist: force * Math.abs(across),
      kneeCouple: force * lowerLink,
      hipCouple: force * Math.hypot(upperLink + along, across),
    }
  },
})
