// Inputs that formulas of motors share.

export const BACK_EMF_WARM = {
  /** Peak line-to-line back-EMF per rad/s, at the magnets' temperature. */
  backEmfConstant: { kind: 'backEmfConstant', above: 0 },
} as const

export const TERMINAL_RESISTANCE = {
  /** Resistance between two terminals, at the winding's temperature. */
  terminalResistance: { kind: 'electricalResistance', min: 0 },
} as const

export const DRIVEN_SPEED = {
  /** Speed, positive in the torque's direction when the motor drives. */
  speed: 'angularVelocity',
} as const

export const PEAK_PHASE_CURRENT = {
  /** Peak phase current. */
  peakPhaseCurrent: 'peakPhaseCurrent',
} as const

export const BACK_EMF_AT_20 = {
  /** Peak line-to-line back-EMF per rad/s, magnets at 20 °C. */
  backEmfConstant: { kind: 'backEmfConstant', above: 0 },
} as const

export const AMBIENT = {
  /** Ambient temperature. */
  ambient: 'temperature',
} as const

export const HEATING_TORQUE = {
  /** Torque that heats: root mean square of a motion, or the torque held, at the rotor. */
  torque: { kind: 'torque', min: 0 },
} as const

/** Magnets, winding and losses of a motor that warms. */
export const MOTOR_LOSSES = {
  /** Reversible change of remanence per kelvin. */
  magnetCoefficient: { kind: 'temperatureCoefficient', max: 0, above: '-0.2 %/K', default: '-0.11 %/K' },
  /** Resistance between two terminals at 20 °C. */
  terminalResistance: { kind: 'electricalResistance', above: 0 },
  /** Loss in iron and bearings, and any other that enters the mounting face. */
  otherLoss: { kind: 'power', min: 0, default: '0 W' },
  /** Resistance from the mean of the winding to the mounting face. */
  windingToMount: { kind: 'thermalResistance', above: 0 },
} as const

export const BACK_EMF = {
  /** Peak line-to-line back-EMF per rad/s. */
  backEmfConstant: { kind: 'backEmfConstant', above: 0 },
} as const
