import { formula } from '../formula/index.js'

/**
 * Torque at a drum when a foot touches down while the rotor behind it still rests: the drive winds up until the rotor has its speed.
 *
 * It adds to the torque that holds the robot at that moment, near touch-down, not at the bottom of the landing. A straighter leg has the higher drum speed.
 * With a soft foot the torque levels off, while the force at the foot still grows. Where both together exceed the torque at which a branch goes slack,
 * the branch hangs and snaps back.
 */
export const rotorBlow = /* @__PURE__ */ formula('kinematics.rotorBlow', {
  title: 'torque of a resting rotor at touch-down',
  inputs: {
    /** Speed of the drum that the pose demands of the touching foot; with a knee motor on the thigh that of the drum against the rotor's rest. */
    drumSpeed: { kind: 'angularVelocity', min: 0 },
    /** Stiffness of the drive at the drum, motor held. */
    driveStiffness: { kind: 'torsionalStiffness', above: 0 },
    /** Inertia of the rotor at the drum: ratio squared times that of the rotor. */
    inertia: { kind: 'momentOfInertia', min: 0 },
    /** Speed of the foot against the ground. */
    footSpeed: { kind: 'velocity', min: 0 },
    /** Stiffness of foot and ground. Left out for a stiff foot. */
    footStiffness: { kind: 'linearStiffness', above: 0, optional: true },
    /** How far the foot gives until it lies flat, and is stiff from there. Left out for a foot that never lies flat. */
    footTravel: { kind: 'length', min: 0, optional: true },
  },
  output: {
    /** Torque at the drum. */
    torque: 'torque',
    /** Force at the foot, along its speed. */
    footForce: 'force',
    /** How far the foot gives. */
    footGives: 'length',
    /** Whether the foot still gives at the peak, or lies flat. */
    state: { oneOf: ['gives', 'flat', 'stiff'] },
  },
  assumes: [
    'a heavy body that keeps its speed meanwhile, one drive by itself',
    'no damping, no motor torque besides the one that holds, no branch that goes slack',
  ],
  source: [
    { level: 'computed', where: 'undamped oscillator started with a speed, drive and foot in series, by its energy; any vibration text' },
  ],
  requires: {
    footSpeed: { accepts: 'must be above 0 where the drum turns', holds: ({ drumSpeed, footSpeed }) => drumSpeed === 0 || footSpeed > 0 },
  },
  si: ({ drumSpeed, driveStiffness, inertia, footSpeed, footStiffness, footTravel = Number.POSITIVE_INFINITY }) => {
    if (drumSpeed === 0) return { torque: 0, footForce: 0, footGives: 0, state: footStiffness === undefined ? 'stiff' : 'gives' }
    // The foot moves by this much for a turn of the drum.
    const arm = footSpeed / drumSpeed
    const stiff = drumSpeed * Math.sqrt(driveStiffness * inertia)
    if (footStiffness === undefined) return { torque: stiff, footForce: stiff / arm, footGives: 0, state: 'stiff' }
    const soft = drumSpeed * Math.sqrt(inertia / (1 / driveStiffness + 1 / (footStiffness * arm * arm)))
    const gives = soft / arm / footStiffness
    if (gives <= footTravel) return { torque: soft, footForce: soft / arm, footGives: gives, state: 'gives' }
    // What the rotor still has when the foot lies flat goes into the drive alone, which is wound up already.
    const atFlat = footStiffness * footTravel * arm
    const left = inertia * drumSpeed * drumSpeed - (atFlat * atFlat) / driveStiffness - footStiffness * footTravel * footTravel
    const torque = Math.sqrt(atFlat * atFlat + driveStiffness * left)
    return { torque, footForce: torque / arm, footGives: footTravel, state: 'flat' }
  },
})
