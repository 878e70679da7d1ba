export const RATIO_SLOPE = {
  /** Change of the knee's ratio with the knee angle; zero for a cord, a belt and a parallelogram. */
  ratioSlope: { kind: 'ratio', default: 0 },
} as const

export const KNEE_TORQUE = {
  /** Torque of the knee joint. */
  kneeTorque: 'torque',
} as const
/** The drive of a knee, as inputs of several formulas. */
export const KNEE_MOTOR = {
  /** Part that the knee's motor is bolted to: the body of the leg, which swings sideways but not with hip and knee, or the thigh. */
  motorOn: { oneOf: ['body', 'thigh'] },
  /** Turns of the knee's drum per turn of the knee: 1 for a parallelogram, negative for a crossed cord, that of the pose for a four-bar. */
  kneeRatio: { kind: 'ratio', default: 1 },
} as const

/** Drum and rotor of a knee's drive, as inputs of several formulas. */
export const KNEE_ROTOR = {
  ...KNEE_MOTOR,
  /** Motor turns per turn of the drum, negative where the rotor turns against the drum: crossed cord, external pair of gears. */
  motorRatio: 'ratio',
  /** Moment of inertia of the rotor and all that turns with it. */
  rotorInertia: { kind: 'momentOfInertia', min: 0 },
  /** Moment of inertia of the drum. A drum that is fixed to the shank belongs to the shank instead. */
  drumInertia: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
} as const
