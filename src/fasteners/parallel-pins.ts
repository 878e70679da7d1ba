import { sizeTable } from './size-table.js'

/**
 * Parallel (dowel) pins by nominal diameter such as `'4'`, in millimetres: length of the chamfer or rounded end that finds the hole and carries nothing.
 *
 * Hardened pins (ISO 8734) are made to m6 only; unhardened ones (ISO 2338) to m6 or h8. Take the limits from `isoTolerance`.
 */
export const parallelPin = /* @__PURE__ */ sizeTable('fasteners.parallelPin', {
  what: 'a pin diameter in mm',
  columns: { diameter: ['length', 'mm'], endLength: ['length', 'mm'], shortest: ['length', 'mm'], longest: ['length', 'mm'] },
  source: [{ level: 'unverified', where: 'ISO 8734:1997 table 1 (parallel pins of hardened steel)' }],
  rows: {
    '1': [1, 0.2, 3, 10],
    '1.5': [1.5, 0.3, 4, 16],
    '2': [2, 0.35, 5, 20],
    '2.5': [2.5, 0.4, 6, 24],
    '3': [3, 0.5, 8, 30],
    '4': [4, 0.63, 10, 40],
    '5': [5, 0.8, 12, 50],
    '6': [6, 1.2, 14, 60],
    '8': [8, 1.6, 18, 80],
    '10': [10, 2, 22, 100],
    '12': [12, 2.5, 26, 100],
    '16': [16, 3, 40, 100],
    '20': [20, 3.5, 50, 100],
  },
})
