import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lapShear, lapStrength, pottedFerrule, socketShear } from '../../src/fasteners/index.js'
import { integrate } from '../../src/numeric/index.js'
import rows from '../oracles/fasteners-ferrule.json' with { type: 'json' }

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test.each(rows)('potted end against a boundary-value solver: socket $es N, adhesive $shear Pa, held at $held, $grown grown', (row) => {
  const socket = {
    force: row.force,
    cordDiameter: row.cord,
    boreDiameter: row.bore,
    length: row.length,
    cordRigidity: row.ea,
    socketRigidity: row.es,
    shearModulus: row.shear,
    held: row.held as 'mouth',
  }
  const found = socketShear.si({
    ...socket,
    cordExpansion: row.grown / 40,
    socketExpansion: 0,
    temperatureChange: 40,
    at: 0.3 * row.length,
  })
  const peak = Math.max(Math.abs(row.mouth), Math.abs(row.end))
  expect(Math.abs(found.mouthStress - row.mouth)).toBeLessThan(1e-7 * peak)
  expect(Math.abs(found.endStress - row.end)).toBeLessThan(1e-7 * peak)
  expect(Math.abs(found.stress - row.third)).toBeLessThan(1e-6 * peak)
  if (row.grown !== 0) return
  const { mouthStress, endStress, elasticLimit } = pottedFerrule.si({ ...socket, shearStrength: 10e6 })
  expect(Math.abs(mouthStress - row.mouth)).toBeLessThan(1e-7 * peak)
  expect(Math.abs(endStress - row.end)).toBeLessThan(1e-7 * peak)
  expect(Math.abs((elasticLimit * peak) / row.force / 10e6 - 1)).toBeLessThan(1e-7)
})

test('shear along a socket adds up to the pull, whatever the temperature, and is even in a very soft bond', () => {
  fc.assert(
    fc.property(range(1e3, 1e6), range(-80, 80), fc.constantFrom('mouth' as const, 'farEnd' as const), (socketRigidity, warmer, held) => {
      const x = {
        force: 120,
        cordDiameter: 0.001,
        boreDiameter: 0.0015,
        length: 0.02,
        cordRigidity: 2e4,
        socketRigidity,
        shearModulus: 0.4e9,
        held,
        cordExpansion: -6e-6,
        socketExpansion: 20e-6,
        temperatureChange: warmer,
      }
      const shear = (at: number) => socketShear.si({ ...x, at }).stress
      expect(Math.abs(Math.PI * 0.001 * integrate(shear, 0, 0.02) - 120)).toBeLessThan(1e-6)
      const { mouthStress, endStress } = socketShear.si({ ...x, at: 0 })
      expect(Math.abs(shear(0) - mouthStress)).toBeLessThan(1)
      expect(Math.abs(shear(0.02) - endStress)).toBeLessThan(1)
      const soft = socketShear.si({ ...x, shearModulus: 1, temperatureChange: 0, at: 0.013 })
      expect(Math.abs(soft.stress / soft.averageStress - 1)).toBeLessThan(1e-6)
    }),
    { numRuns: 30 },
  )
})

test('a place beyond the bond is told', () => {
  const x = {
    force: '100 N',
    cordDiameter: '1 mm',
    boreDiameter: '1.6 mm',
    length: '15 mm',
    cordRigidity: '20 kN',
    socketRigidity: '100 kN',
    shearModulus: '1 GPa',
    held: 'mouth',
  } as const
  expect(() => socketShear({ ...x, at: '16 mm' })).toThrow("at is '16 mm'; must lie within the bond")
})

const lap = {
  width: 0.02,
  lap: 'double' as const,
  inner: { thickness: 0.003, modulus: 2e9, thermalExpansion: 90e-6 },
  outer: { thickness: 0.0015, modulus: 70e9, thermalExpansion: 23e-6 },
  bondThickness: 0.0002,
  shearModulus: 0.5e9,
}

test('at its elastic limit a lap is at its strength at one end and below it everywhere else', () => {
  fc.assert(
    fc.property(range(0.001, 0.08), range(-20, 20), range(1, 3), (overlap, temperatureChange, longer) => {
      const at = (length: number) => lapStrength.si({ ...lap, overlap: length, shearStrength: 20e6, temperatureChange })
      const { elasticLimit, plasticLimit, longLapLimit } = at(overlap)
      const ends = lapShear.si({ ...lap, overlap, temperatureChange, force: elasticLimit, at: 0 })
      expect(Math.abs(Math.max(ends.innerEndStress, ends.outerEndStress) / 20e6 - 1)).toBeLessThan(1e-9)
      expect(elasticLimit).toBeLessThanOrEqual(plasticLimit * (1 + 1e-9))
      expect(Math.abs(plasticLimit / (2 * 0.02 * overlap * 20e6) - 1)).toBeLessThan(1e-12)
      if (temperatureChange === 0) expect(at(overlap * longer).elasticLimit).toBeGreaterThanOrEqual(elasticLimit * (1 - 1e-9))
      expect(Math.abs(at(1).elasticLimit / longLapLimit - 1)).toBeLessThan(1e-9)
    }),
  )
  expect(lapStrength.si({ ...lap, overlap: 0.03, shearStrength: 1e6, temperatureChange: 60 })).toMatchObject({
    elasticLimit: 0,
    state: 'brokenByTemperature',
  })
})
