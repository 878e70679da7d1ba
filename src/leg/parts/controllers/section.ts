import type { Fields } from '../../schema/index.js'

/** One kind of motor controller. */
export const controller = {
  /** On-resistance of one switch when hot. Default: 4 mohm. */
  onResistance: { kind: 'electricalResistance', above: 0, default: '4 mohm', because: 'a small three-phase bridge' },
  /** Loss in addition to conduction: switching, gate drive, logic. Default: 0.6 W. */
  switchingLoss: { kind: 'power', min: 0, default: '0.6 W', because: 'a small three-phase bridge' },
  /** Highest peak phase current it is set to deliver. */
  currentLimit: { kind: 'peakPhaseCurrent', above: 0 },
  /** Highest board temperature. Default: 100 degC. */
  temperatureLimit: { kind: 'temperature', default: '100 degC', because: 'usual threshold of thermal throttling', level: 'commonPractice' },
  /** Thermal resistance from board to air, or to the plate it is mounted on. Default: 14 K/W. */
  toAir: { kind: 'thermalResistance', above: 0, default: '14 K/W', because: 'a bare board of 40 mm square in still air' },
  /** Rate of the loop that holds and damps the joint. Default: 1 kHz. */
  loopRate: { kind: 'frequency', above: 0, default: '1 kHz', because: 'a usual rate of a position loop', level: 'commonPractice' },
  /** Time that a command or a reading waits on the bus, where the loop is not in the motor controller. Default: 0 s. */
  busDelay: { kind: 'time', min: 0, max: '1 s', default: '0 s', because: 'a loop within the motor controller' },
  /** Mass of the board. Default: 0 kg. */
  mass: { kind: 'mass', min: 0, max: '10 kg', default: '0 kg', because: 'not specified: negligible compared with the motor' },
} as const satisfies Fields
