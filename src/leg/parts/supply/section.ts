import type { Fields } from '../../schema/index.js'

/** Battery or mains supply. */
export const supply = {
  /** Open-circuit voltage at the state of charge that must suffice. */
  voltage: { kind: 'voltage', min: '1 V', max: '450 V', usual: ['5 V', '60 V'] },
  /** Resistance of battery, fuse and leads. Default: 60 mohm. */
  internalResistance: {
    kind: 'electricalResistance',
    min: 0,
    max: '10 ohm',
    usual: ['2 mohm', '1 ohm'],
    default: '60 mohm',
    because: 'a small pack with its leads',
  },
  /** Highest current of fuse, leads or pack. */
  currentLimit: { kind: 'current', min: '0.1 A', max: '1000 A', usual: ['1 A', '300 A'] },
  /** Whether it accepts the power that braking legs return. Default: true. */
  takesBack: { flag: true, default: true, because: 'a battery does' },
  /** Energy of a full charge. */
  energy: { kind: 'energy', min: '10 J', max: '100000 W h', usual: ['2 W h', '5000 W h'], optional: true },
  /** Share of the energy that may be used. Default: 0.8. */
  usableShare: {
    kind: 'ratio',
    above: 0,
    max: 1,
    usual: [0.3, 1],
    default: 0.8,
    because: 'a fifth is left to spare the cells',
    level: 'commonPractice',
  },
  /** Power of electronics and sensors at all times. Default: 5 W. */
  electronics: {
    kind: 'power',
    min: 0,
    max: '5 kW',
    usual: ['0.1 W', '200 W'],
    default: '5 W',
    because: 'a small computer and its sensors',
  },
} as const satisfies Fields
