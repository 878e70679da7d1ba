import { expect, test } from 'vitest'
import { pottedFerrule } from '../../src/fasteners/index.js'
import rows from '../oracles/fasteners-ferrule.json' with { type: 'json' }

test.each(rows)('potted end against a boundary-value solver: socket $es N, adhesive $shear Pa, held at $held', (row) => {
  const { mouthStress, endStress } = pottedFerrule.si({
    force: row.force,
    cordDiameter: row.cord,
    boreDiameter: row.bore,
    length: row.length,
    cordRigidity: row.ea,
    socketRigidity: row.es,
    shearModulus: row.shear,
    shearStrength: 10e6,
    held: row.held as 'mouth',
  })
  const peak = Math.max(row.mouth, row.end)
  expect(Math.abs(mouthStress - row.mouth)).toBeLessThan(1e-7 * peak)
  expect(Math.abs(endStress - row.end)).toBeLessThan(1e-7 * peak)
})
