import { shaftFlat } from '../../src/fasteners/index.js'
import rows from '../oracles/fasteners-flat.json' with { type: 'json' }
import { type Check, published } from './harness.js'

/** Of a printed hub under a steel shaft. */
const strengths = { hubBearingStrength: '30 MPa', shaftBearingStrength: '600 MPa' } as const

export const checks: Check[] = published(
  shaftFlat,
  ...rows.map((row) => ({
    what: `D-shaped shaft of ${1000 * row.diameter} mm under ${row.torque} N m`,
    given: {
      torque: [row.torque, 'N m'],
      shaftDiameter: [row.diameter, 'm'],
      depth: [row.depth, 'm'],
      length: [row.length, 'm'],
      ...strengths,
    } as never,
    gives: {
      width: [row.width, 'm'],
      pressesFrom: [row.pressesFrom, 'm'],
      force: [row.force, 'N'],
      edgePressure: [row.edgePressure, 'Pa'],
      borePressure: [row.borePressure, 'Pa'],
    } as never,
    source: {
      level: 'computed',
      where: 'a stiff shaft in 80002 springs that only press, all round its outline, by Newton’s method (tests/oracles/fasteners-flat.py)',
    } as const,
    // Where the pressure begins is known to one spring.
    within: '0.02 %',
  })),
)
