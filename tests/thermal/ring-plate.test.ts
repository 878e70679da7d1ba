import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ringOnPlate } from '../../src/thermal/index.js'
import { InputError } from '../../src/units/index.js'

interface Row {
  a1: number
  a2: number
  b: number
  t: number
  k: number
  kz: number
  h1: number
  h2: number
  covered: boolean
  coarse: number
  fine: number
  ring: number
}
const rows: Row[] = JSON.parse(readFileSync(new URL('../oracles/thermal-ring-plate.json', import.meta.url), 'utf8'))
const plate = (row: Row) => ({
  innerRadius: row.a1,
  outerRadius: row.a2,
  plateRadius: row.b,
  thickness: row.t,
  conductivity: row.k,
  conductivityAcross: row.kz,
  motorFaceCoefficient: row.h1,
  freeFaceCoefficient: row.h2,
  underMotor: row.covered ? ('covered' as const) : ('open' as const),
})

test.each(rows)('finite volumes: $ring K/W for k $k along, $kz across, t $t, covered $covered', (row) => {
  const { ring } = ringOnPlate.si(plate(row))
  // The mesh error of the reference, seen as its change between two meshes. In a draught of 80 W/(m² K) and more on a poor conductor the modes that
  // are not coupled leave up to 0.3 %.
  const modes = row.h1 >= 80 ? 3e-3 : 1e-6
  expect(Math.abs(ring - row.ring)).toBeLessThan(Math.max(modes * row.ring, Math.abs(row.fine - row.coarse)))
})

test('the answer does not depend on what was asked before: two plates that differ in one size, in turn', () => {
  const row = rows.find(({ covered, kz, k }) => covered && kz < k)!
  const first = ringOnPlate.si(plate(row)).ring
  for (const other of [{ plateRadius: 0.06 }, { outerRadius: 0.02 }, { innerRadius: 0.004 }]) {
    const alone = ringOnPlate.si({ ...plate(row), ...other }).ring
    expect(Math.abs(alone / first - 1)).toBeGreaterThan(1e-4)
    expect(ringOnPlate.si(plate(row)).ring).toBe(first)
    expect(ringOnPlate.si({ ...plate(row), ...other }).ring).toBe(alone)
  }
})

test('a print that conducts less across its layers is warmer, one of equal conductivities the same', () => {
  const x = { ...plate(rows[5]!), conductivity: 0.2, conductivityAcross: undefined }
  const isotropic = ringOnPlate.si(x).ring
  expect(ringOnPlate.si({ ...x, conductivityAcross: 0.2 }).ring).toBe(isotropic)
  expect(ringOnPlate.si({ ...x, conductivityAcross: 0.1 }).ring).toBeGreaterThan(1.05 * isotropic)
})

test('heat balance, monotone in conductivity, and a motor that covers its face is never cooler', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  fc.assert(
    fc.property(
      between(0.15, 200),
      between(1e-3, 0.01),
      between(1, 50),
      between(1, 50),
      (conductivity, thickness, motorFaceCoefficient, freeFaceCoefficient) => {
        const x = {
          innerRadius: 0.006,
          outerRadius: 0.0175,
          plateRadius: 0.05,
          thickness,
          conductivity,
          motorFaceCoefficient,
          freeFaceCoefficient,
        } as const
        const open = ringOnPlate.si({ ...x, underMotor: 'open' })
        const covered = ringOnPlate.si({ ...x, underMotor: 'covered' })
        expect(open.spreading).toBeGreaterThan(0)
        expect(covered.ring).toBeGreaterThan(open.ring)
        expect(ringOnPlate.si({ ...x, conductivity: conductivity * 1.1, underMotor: 'covered' }).ring).toBeLessThan(covered.ring)
      },
    ),
    { numRuns: 60 },
  )
})

test('a ring that fills the plate spreads nothing more: the plate is one wall', () => {
  const whole = ringOnPlate.si({
    innerRadius: 0,
    outerRadius: 0.05,
    plateRadius: 0.05,
    thickness: 0.005,
    conductivity: 0.2,
    motorFaceCoefficient: 0,
    freeFaceCoefficient: 10,
    underMotor: 'open',
  })
  expect(whole.ring).toBeCloseTo((0.005 / 0.2 + 1 / 10) / (Math.PI * 0.05 ** 2), 6)
})

test('a ring inside out or larger than its plate is refused by name', () => {
  const good = {
    innerRadius: '6 mm',
    outerRadius: '17.5 mm',
    plateRadius: '45 mm',
    thickness: '6 mm',
    conductivity: '0.2 W/(m K)',
    motorFaceCoefficient: '10 W/(m^2 K)',
    freeFaceCoefficient: '10 W/(m^2 K)',
  } as const
  expect(ringOnPlate(good).ring.si).toBeGreaterThan(30)
  expect(() => ringOnPlate({ ...good, innerRadius: '20 mm' })).toThrow('smaller than the outer radius')
  expect(() => ringOnPlate({ ...good, plateRadius: '10 mm' })).toThrow(InputError)
})
