import { sizeTable } from './size-table.js'

/** Socket-head cap screws: head diameter, head height, key size, least key depth, least bearing diameter under the head. */
export const socketHead = /* @__PURE__ */ sizeTable('fasteners.socketHead', {
  what: 'a socket-head cap screw',
  columns: {
    headDiameter: ['length', 'mm'],
    headHeight: ['length', 'mm'],
    keySize: ['length', 'mm'],
    keyDepth: ['length', 'mm'],
    bearingDiameter: ['length', 'mm'],
  },
  source: [
    { level: 'standard', where: 'ISO 4762:2004 table 1, M3 to M12, head, key (read in reproductions)' },
    { level: 'unverified', where: 'ISO 4762:2004 table 1, sizes below M3 and bearing diameters' },
  ],
  rows: {
    'M1.6': [3, 1.6, 1.5, 0.7, 2.72],
    M2: [3.8, 2, 1.5, 1, 3.48],
    'M2.5': [4.5, 2.5, 2, 1.1, 4.18],
    M3: [5.5, 3, 2.5, 1.3, 5.07],
    M4: [7, 4, 3, 2, 6.53],
    M5: [8.5, 5, 4, 2.5, 8.03],
    M6: [10, 6, 5, 3, 9.38],
    M8: [13, 8, 6, 4, 12.33],
    M10: [16, 10, 8, 5, 15.33],
    M12: [18, 12, 10, 6, 17.23],
  },
})

/** Hexagon-head bolts and screws: width across flats, nominal head height, least bearing diameter under the head (product grade A). */
export const hexHead = /* @__PURE__ */ sizeTable('fasteners.hexHead', {
  what: 'a hexagon-head bolt',
  columns: { acrossFlats: ['length', 'mm'], headHeight: ['length', 'mm'], bearingDiameter: ['length', 'mm'] },
  source: [{ level: 'unverified', where: 'ISO 4014:2011 and ISO 4017:2014 table 1, product grade A' }],
  rows: {
    'M1.6': [3.2, 1.1, 2.27],
    M2: [4, 1.4, 3.07],
    'M2.5': [5, 1.7, 4.07],
    M3: [5.5, 2, 4.57],
    M4: [7, 2.8, 5.88],
    M5: [8, 3.5, 6.88],
    M6: [10, 4, 8.88],
    M8: [13, 5.3, 11.63],
    M10: [16, 6.4, 14.63],
    M12: [18, 7.5, 16.63],
  },
})

/** Hexagon nuts, regular (style 1): across flats, least across corners, largest and least height, least bearing diameter. */
export const hexNut = /* @__PURE__ */ sizeTable('fasteners.hexNut', {
  what: 'a hexagon nut',
  columns: {
    acrossFlats: ['length', 'mm'],
    acrossCorners: ['length', 'mm'],
    height: ['length', 'mm'],
    leastHeight: ['length', 'mm'],
    bearingDiameter: ['length', 'mm'],
  },
  source: [{ level: 'standard', where: 'ISO 4032:2012 table 1 (read in three reproductions that agree; M1.6 unverified)' }],
  rows: {
    'M1.6': [3.2, 3.41, 1.3, 1.05, 2.4],
    M2: [4, 4.32, 1.6, 1.35, 3.1],
    'M2.5': [5, 5.45, 2, 1.75, 4.1],
    M3: [5.5, 6.01, 2.4, 2.15, 4.6],
    M4: [7, 7.66, 3.2, 2.9, 5.9],
    M5: [8, 8.79, 4.7, 4.4, 6.9],
    M6: [10, 11.05, 5.2, 4.9, 8.9],
    M8: [13, 14.38, 6.8, 6.44, 11.6],
    M10: [16, 17.77, 8.4, 8.04, 14.6],
    M12: [18, 20.03, 10.8, 10.37, 16.6],
  },
})

/** Prevailing-torque (lock) nuts with a polymer ring: largest and least total height; across flats as the regular nut. */
export const lockNut = /* @__PURE__ */ sizeTable('fasteners.lockNut', {
  what: 'a prevailing-torque hexagon nut',
  columns: { height: ['length', 'mm'], leastHeight: ['length', 'mm'], acrossFlats: ['length', 'mm'] },
  source: [{ level: 'unverified', where: 'ISO 7040:2012 table 1 (largest heights agree with ASME B18.16.3M, read in a reproduction)' }],
  rows: {
    M3: [4.5, 4.02, 5.5],
    M4: [6, 5.52, 7],
    M5: [6.8, 6.22, 8],
    M6: [8, 7.42, 10],
    M8: [9.5, 8.92, 13],
    M10: [11.9, 11.2, 16],
    M12: [14.9, 14.2, 18],
  },
})

/** Prevailing torque of lock nuts of class 8: largest when first screwed on, least when first and when fifth screwed off. It contributes nothing to the preload. */
export const prevailingTorque = /* @__PURE__ */ sizeTable('fasteners.prevailingTorque', {
  what: 'a prevailing-torque nut of class 8',
  columns: { firstOnLargest: ['torque', 'N m'], firstOffLeast: ['torque', 'N m'], fifthOffLeast: ['torque', 'N m'] },
  source: [{ level: 'unverified', where: 'ISO 2320:2015 table of prevailing torques, class 8' }],
  rows: {
    M3: [0.43, 0.12, 0.08],
    M4: [0.9, 0.18, 0.12],
    M5: [1.6, 0.29, 0.2],
    M6: [3, 0.45, 0.3],
    M8: [6, 0.85, 0.6],
    M10: [10.5, 1.5, 1],
    M12: [15.5, 2.3, 1.6],
  },
})

/** Plain washers, normal series: hole, outer diameter, thickness. */
export const washer = /* @__PURE__ */ sizeTable('fasteners.washer', {
  what: 'a plain washer',
  columns: { holeDiameter: ['length', 'mm'], outerDiameter: ['length', 'mm'], thickness: ['length', 'mm'] },
  source: [
    { level: 'standard', where: 'ISO 7089 table 1, M3 to M12 (read in three reproductions)' },
    { level: 'unverified', where: 'ISO 7089:2000 table 1, sizes below M3' },
  ],
  rows: {
    'M1.6': [1.7, 4, 0.3],
    M2: [2.2, 5, 0.3],
    'M2.5': [2.7, 6, 0.5],
    M3: [3.2, 7, 0.5],
    M4: [4.3, 9, 0.8],
    M5: [5.3, 10, 1],
    M6: [6.4, 12, 1.6],
    M8: [8.4, 16, 1.6],
    M10: [10.5, 20, 2],
    M12: [13, 24, 2.5],
  },
})

/** Large plain washers, for soft parts: hole, outer diameter, thickness. */
export const largeWasher = /* @__PURE__ */ sizeTable('fasteners.largeWasher', {
  what: 'a large plain washer',
  columns: { holeDiameter: ['length', 'mm'], outerDiameter: ['length', 'mm'], thickness: ['length', 'mm'] },
  source: [{ level: 'unverified', where: 'ISO 7093-1:2000 table 1' }],
  rows: {
    M3: [3.2, 9, 0.8],
    M4: [4.3, 12, 1],
    M5: [5.3, 15, 1],
    M6: [6.4, 18, 1.6],
    M8: [8.4, 24, 2],
    M10: [10.5, 30, 2.5],
    M12: [13, 37, 3],
  },
})

/** Clearance holes for bolts: fine, medium and coarse series. */
export const clearanceHole = /* @__PURE__ */ sizeTable('fasteners.clearanceHole', {
  what: 'a coarse metric thread',
  columns: { fine: ['length', 'mm'], medium: ['length', 'mm'], coarse: ['length', 'mm'] },
  source: [{ level: 'standard', where: 'ISO 273 table 1 (read in two reproductions)' }],
  rows: {
    'M1.6': [1.7, 1.8, 2],
    M2: [2.2, 2.4, 2.6],
    'M2.5': [2.7, 2.9, 3.1],
    M3: [3.2, 3.4, 3.6],
    M4: [4.3, 4.5, 4.8],
    M5: [5.3, 5.5, 5.8],
    M6: [6.4, 6.6, 7],
    M8: [8.4, 9, 10],
    M10: [10.5, 11, 12],
    M12: [13, 13.5, 14.5],
  },
})
