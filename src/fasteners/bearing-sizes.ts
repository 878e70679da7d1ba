import { sizeTable } from './size-table.js'

/** Small deep-groove ball bearings such as `'10x22x6'`: bore, outside, width, dynamic and static rating, and the factor f0 of their axial load. */
export const smallBallBearing = /* @__PURE__ */ sizeTable('fasteners.smallBallBearing', {
  what: 'a small deep-groove ball bearing',
  columns: {
    bore: ['length', 'mm'],
    outside: ['length', 'mm'],
    width: ['length', 'mm'],
    dynamicRating: ['force', 'N'],
    staticRating: ['force', 'N'],
    axialFactor: ['ratio', '1'],
  },
  source: [
    { level: 'published', where: "rows of two bearing makers' catalogues, sizes of ISO 15; take your own bearing's sheet" },
    { level: 'unverified', where: 'ratings of 6x13x5' },
    {
      level: 'assumption',
      where: 'axial factor 12 of the rows below 10 mm and of the wide ones: the least of small bearings, on the safe side',
    },
  ],
  rows: {
    '3x10x4': [3, 10, 4, 645, 229, 12],
    '4x13x5': [4, 13, 5, 1168, 412, 12],
    '5x13x4': [5, 13, 4, 1079, 432, 12],
    '5x16x5': [5, 16, 5, 1875, 677, 12],
    '6x13x5': [6, 13, 5, 1080, 440, 12],
    '6x15x5': [6, 15, 5, 1470, 599, 12],
    '6x19x6': [6, 19, 6, 2838, 1078, 12],
    '7x19x6': [7, 19, 6, 2838, 1078, 12],
    '7x22x7': [7, 22, 7, 3282, 1356, 12],
    '8x22x7': [8, 22, 7, 3282, 1356, 12],
    '9x24x7': [9, 24, 7, 3668, 1640, 12],
    '9x26x8': [9, 26, 8, 4557, 1955, 12],
    '10x19x5': [10, 19, 5, 1830, 925, 14.8],
    '10x22x6': [10, 22, 6, 2700, 1270, 14],
    '10x26x8': [10, 26, 8, 4550, 1960, 12.4],
    '12x21x5': [12, 21, 5, 1920, 1040, 15.3],
    '12x28x8': [12, 28, 8, 5960, 2240, 12],
    '12x32x10': [12, 32, 10, 7940, 3100, 12],
  },
})
