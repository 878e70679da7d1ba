import type { Fields } from '../../schema/index.js'

/** One way of printing, by its name. Parts refer to it. */
export const print = {
  /** Width of one wall line. Default: 0.45 mm. */
  lineWidth: {
    kind: 'length',
    min: '0.08 mm',
    max: '3 mm',
    usual: ['0.2 mm', '1.2 mm'],
    default: '0.45 mm',
    because: 'the usual setting',
    level: 'commonPractice',
  },
  /** Number of wall lines. Default: 5. */
  walls: { integer: true, min: 1, max: 40, default: 5, because: 'strong parts', level: 'commonPractice' },
  /** Infill density next to fasteners and under clamp load. Default: 0.4. */
  infill: { kind: 'ratio', min: 0, max: 1, usual: [0.05, 1], default: 0.4, because: 'a usual setting', level: 'commonPractice' },
} as const satisfies Fields
