import type { Fields } from '../../schema/index.js'

/** Battery or mains supply. */
export const supply = {
  /** Open-circuit voltage at the state of charge that must suffice. */
  voltage: { kind: 'voltage', above: 0 },
  /** Resistance of battery, fuse and leads. Default: 60 mohm. */
  internalResistance: { kind: 'electricalResistance', min: 0, default: '60 mohm', because: 'a small pack with its leads' },
  /** Highest current of fuse, leads or pack. */
  currentLimit: { kind: 'current', above: 0 },
  /** Whether it accepts the power that braking legs return. Default: true. */
  takesBack: { flag: true, default: true, because: 'a battery does' },
  /** Energy of a full charge. */
  energy: { kind: 'energy', above: 0, optional: true },
  /** Share of the energy that may be used. Default: 0.8. */
  usableShare: { kind: 'ratio', above: 0, max: 1, default: 0.8, because: 'a fifth is left to spare the cells', level: 'commonPractice' },
  /** Power of electronics and sensors at all times. Default: 5 W. */
  electronics: { kind: 'power', min: 0, default: '5 W', because: 'a small computer and its sensors' },
} as const satisfies Fields
