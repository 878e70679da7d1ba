import { looseNutPressure, nutInPocket } from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import rows from '../oracles/fasteners-nut.json' with { type: 'json' }
import { type Check, published } from './harness.js'

const outline: Source = {
  level: 'referenceLibrary',
  where:
    'outline of the turned nut against the wall, virtual work with numerical derivatives, numpy and scipy (tests/oracles/fasteners-nut.py)',
}
const nut = { acrossFlats: '7 mm', height: '3 mm', flats: 6, compressiveStrength: '60 MPa' } as const

export const checks: Check[] = [
  ...rows.flatMap(({ clearance, rounding, torque, bed, peak, turn }) => [
    ...published(nutInPocket, {
      what: `${clearance} mm of clearance on a 7 mm nut`,
      given: { ...nut, torque: [torque, 'N m'], clearance: [clearance, 'mm'] },
      gives: { roundingTorque: `${rounding} N m` as never },
      // The brute force has 200 001 points along a wall.
      within: '0.02 %',
      source: outline,
    }),
    ...published(looseNutPressure, {
      what: `${clearance} mm of clearance, ${torque} N m, bed of ${bed} N/mm³`,
      given: { ...nut, torque: [torque, 'N m'], clearance: [clearance, 'mm'], wallModulus: [bed * 4, 'MPa'], wallDepth: '4 mm' },
      gives: { cornerPressure: `${peak} MPa` as never, turn: `${turn} deg` as never },
      within: '0.02 %',
      source: outline,
    }),
  ]),
  ...published(nutInPocket, {
    what: 'as wide as its corners: 7 mm × (2/√3 − 1) = 1.0829 mm',
    given: { ...nut, torque: '0.1 N m', clearance: '1.083 mm' },
    gives: { state: 'spinsFree' },
    source: { level: 'computed', where: 'width across corners of a hexagon' },
  }),
]
