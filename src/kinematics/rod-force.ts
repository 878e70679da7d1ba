import { formula } from '../formula/index.js'
import { CRANK, ROCKER } from './four-bar-inputs.js'
import { IN_LINE } from './four-bar-rates.js'
import { KNEE_TORQUE } from './knee-drive-inputs.js'
import { GROUND_UPWARD } from './link-inputs.js'

/**
 * Force in the rod of a four-bar knee or a parallelogram, and torque of its crank, from the torque of the knee.
 *
 * The side of the crank decides whether the rod is pulled or pushed: a pulled rod loads the knee pin by much more than the ground pushes, a pushed one may
 * buckle. Choose the side on purpose.
 */
export const rodForce = /* @__PURE__ */ formula('kinematics.rodForce', {
  inputs: {
    ...KNEE_TORQUE,
    ...CRANK,
    ...ROCKER,
    /** Direction of the crank from the direction hip to knee, right-handed about +y. */
    crankAngle: 'angle',
    /** Direction of the rod from crank pin to rocker pin; zero for a parallelogram. */
    couplerAngle: { kind: 'angle', default: '0 deg' },
    /** Direction of the rocker; that of the crank for a parallelogram. */
    rockerAngle: 'angle',
  },
  output: {
    /** Force of the rod, positive where it is pulled; infinite at a dead point. */
    force: { kind: 'force', infinite: true },
    /** Torque of the crank, that of the knee’s drum; infinite at a dead point. */
    crankTorque: { kind: 'torque', infinite: true },
    /** Force on the bearing of the crank and on that of the rod at the crank pin; infinite at a dead point. */
    crankBearingForce: { kind: 'force', infinite: true },
    /** Whether the rod is pulled or pushed, or rod and rocker are in line: then no force of the rod balances the knee. */
    state: { oneOf: ['pulled', 'pushed', 'unloaded', 'deadPoint'] },
  },
  equation: [
    'force = kneeTorque / (rocker * sin(rockerAngle - couplerAngle))',
    'crankTorque = force * crank * sin(crankAngle - couplerAngle)',
    'crankBearingForce = abs(force)',
  ],
  assumes: ['links without mass and weight', 'no friction in the pins'],
  source: [{ level: 'computed', where: 'moments about the knee and about the hip axis' }],
  si: ({ kneeTorque, crank, rocker, crankAngle, couplerAngle, rockerAngle }) => {
    const across = Math.sin(rockerAngle - couplerAngle)
    if (Math.abs(across) < IN_LINE && kneeTorque !== 0) {
      const none = Number.POSITIVE_INFINITY
      return { force: none, crankTorque: none, crankBearingForce: none, state: 'deadPoint' as const }
    }
    const force = kneeTorque === 0 ? 0 : kneeTorque / (rocker * across)
    return {
      force,
      crankTorque: force * crank * Math.sin(crankAngle - couplerAngle),
      crankBearingForce: Math.abs(force),
      state: force > 0 ? ('pulled' as const) : force < 0 ? ('pushed' as const) : ('unloaded' as const),
    }
  },
})

/**
 * Force of the upper link on the shank at the knee pin, with compression and shear of the upper link, from the ground's force and that of the rod.
 *
 * The hip pin carries the same force, and the pull of the hip's cord as well where that drum is on the link. A rod in a plane beside the link also
 * bends the pins: the force of the rod times the distance of the planes.
 */
export const kneePinForce = /* @__PURE__ */ formula('kinematics.kneePinForce', {
  inputs: {
    /** Force of the ground on the foot, forward. */
    groundForward: 'force',
    ...GROUND_UPWARD,
    /** Force of the rod, positive where it is pulled (`rodForce`). */
    rodForce: 'force',
    /** Hip angle: zero with the upper link straight down, positive with the knee behind the hip. */
    hipAngle: 'angle',
    /** Direction of the rod from the direction hip to knee, right-handed about +y; zero for a parallelogram. */
    couplerAngle: { kind: 'angle', default: '0 deg' },
  },
  output: {
    /** Size of the force. */
    force: 'force',
    /** Component forward. */
    forward: 'force',
    /** Component upward. */
    upward: 'force',
    /** Compression of the upper link; negative is tension. */
    compression: 'force',
    /** Force across the upper link, positive towards the side that the knee turns to. */
    shear: 'force',
  },
  equation: [
    'forward = -groundForward - rodForce * sin(hipAngle + couplerAngle)',
    'upward = -groundUpward - rodForce * cos(hipAngle + couplerAngle)',
    'force = sqrt(forward^2 + upward^2)',
    'compression = -forward * sin(hipAngle) - upward * cos(hipAngle)',
    'shear = upward * sin(hipAngle) - forward * cos(hipAngle)',
  ],
  assumes: ['links without mass and weight', 'no friction in the pins'],
  source: [{ level: 'computed', where: 'equilibrium of the shank' }],
  si: ({ groundForward, groundUpward, rodForce: rod, hipAngle, couplerAngle }) => {
    const forward = -groundForward - rod * Math.sin(hipAngle + couplerAngle)
    const upward = -groundUpward - rod * Math.cos(hipAngle + couplerAngle)
    const [sine, cosine] = [Math.sin(hipAngle), Math.cos(hipAngle)]
    return {
      force: Math.hypot(forward, upward),
      forward,
      upward,
      compression: -forward * sine - upward * cosine,
      shear: upward * sine - forward * cosine,
    }
  },
})
