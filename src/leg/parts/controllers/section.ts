import type { Fields } from '../../schema/index.js'

/** One kind of motor controller. */
export const controller = {
  /** On-resistance of one switch when hot. Default: 4 mohm. */
  onResistance: {
    kind: 'electricalResistance',
    min: '0.05 mohm',
    max: '2 ohm',
    usual: ['0.2 mohm', '60 mohm'],
    default: '4 mohm',
    because: 'a small three-phase bridge',
  },
  /** Loss in addition to conduction: switching, gate drive, logic. Default: 0.6 W. */
  switchingLoss: {
    kind: 'power',
    min: 0,
    max: '200 W',
    usual: ['0.05 W', '20 W'],
    default: '0.6 W',
    because: 'a small three-phase bridge',
  },
  /** Highest peak phase current it is set to deliver. */
  currentLimit: { kind: 'peakPhaseCurrent', min: '0.1 A', max: '1000 A', usual: ['1 A', '200 A'] },
  /** Highest board temperature. Default: 100 degC. */
  temperatureLimit: {
    kind: 'temperature',
    min: '30 degC',
    max: '250 degC',
    usual: ['60 degC', '150 degC'],
    default: '100 degC',
    because: 'usual threshold of thermal throttling',
    level: 'commonPractice',
  },
  /** Thermal resistance from board to air, or to the plate it is mounted on. Default: 14 K/W. */
  toAir: {
    kind: 'thermalResistance',
    min: '0.05 K/W',
    max: '200 K/W',
    usual: ['0.5 K/W', '40 K/W'],
    default: '14 K/W',
    because: 'a bare board of 40 mm square in still air',
  },
  /** Rate of the loop that holds and damps the joint. Default: 1 kHz. */
  loopRate: {
    kind: 'frequency',
    min: '1 Hz',
    max: '1 MHz',
    usual: ['100 Hz', '50 kHz'],
    default: '1 kHz',
    because: 'a usual rate of a position loop',
    level: 'commonPractice',
  },
  /** Time that a command or a reading waits on the bus, where the loop is not in the motor controller. Default: 0 s. */
  busDelay: { kind: 'time', min: 0, max: '1 s', usual: ['1 us', '50 ms'], default: '0 s', because: 'a loop within the motor controller' },
  /** Mass of the board. Default: 0 kg. */
  mass: {
    kind: 'mass',
    min: 0,
    max: '10 kg',
    usual: ['1 g', '1 kg'],
    default: '0 kg',
    because: 'not specified: negligible compared with the motor',
  },
} as const satisfies Fields
