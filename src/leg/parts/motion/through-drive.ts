/** Rotors of both drives as their drums feel them. */
export interface Rotors {
  readonly hipRotorInertia: number
  readonly kneeRotorInertia: number
}

/** Torque that a drum bears, and the same with the inertia of its rotor. */
export interface DrumLoad {
  torque: number
  shaftTorque: number
}

/** What drives the knee from a drum on the hip axis, its motor on the body: what it bears, moment by moment. */
export interface ThroughDrive {
  readonly hip: DrumLoad
  readonly knee: DrumLoad
  /** Angle of the knee's drum, from an arbitrary zero, and its speed. */
  readonly angle: number
  readonly rate: number
  /** The largest pull and push of a rod so far, and of the force at the knee pin; 0 without a rod. */
  readonly pull: number
  readonly push: number
  readonly pin: number
  /** Torque at the knee that belt, cord or rod has held, of largest magnitude, with its sign. */
  readonly held: number
  /** Whether the drum has moved the knee at every moment so far. */
  readonly drives: boolean
  /** Takes one moment: angles, rates and accelerations of the joints, their torques without rotors, and the force of the ground on the foot. */
  load(
    angles: ArrayLike<number>,
    rates: ArrayLike<number>,
    accelerations: ArrayLike<number>,
    torques: ArrayLike<number>,
    groundForward: number,
    groundUpward: number,
  ): void
}
