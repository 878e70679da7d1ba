import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { annularFin, continuousTorque, mountPlate, ringOnPlate } from '../../src/thermal/index.js'
import type { PlateNumbers } from '../../src/thermal/plate-grid.js'
import { plateModel } from '../../src/thermal/plate-model.js'
import { demoLimits, demoMount, demoSpecification } from './demo.js'

interface Row {
  b: number
  t: number
  k: number
  a1: number
  a2: number
  ht: number
  hb: number
  insert: { radius: number; thickness: number; conductivity: number; contact: number } | null
  resistance: number
}
const oracle: {
  plates: Row[]
  moments: Omit<Row, 'insert' | 'resistance'> & { density: number; specificHeat: number; capacity: number; storeConductance: number }
} = JSON.parse(readFileSync(new URL('../oracles/thermal-mount-plate.json', import.meta.url), 'utf8'))

const plate = (row: Omit<Row, 'insert' | 'resistance'>, more: Partial<PlateNumbers> = {}): PlateNumbers => ({
  innerRadius: row.a1,
  outerRadius: row.a2,
  plateRadius: row.b,
  thickness: row.t,
  conductivity: row.k,
  density: 1070,
  specificHeat: 1300,
  entry: 'isothermal',
  underMotor: 'covered',
  ...more,
})
const answer = () => ({ conductance: 0, motorFace: 0, freeFace: 0 })

test.each(oracle.plates)('independent finite volumes: $resistance K/W (k $k, t $t, films $ht and $hb, insert $insert)', (row) => {
  const insert = row.insert === null ? undefined : { ...row.insert, density: 2700, specificHeat: 896 }
  const got = 1 / plateModel(plate(row, { insert })).at(row.ht, row.hb, answer()).conductance
  // Half a percent of mesh error in still air, one where a strong draught makes the rise steep.
  expect(Math.abs(got / row.resistance - 1)).toBeLessThan(row.ht > 40 ? 0.012 : 0.006)
})

test('capacity and store answer a slow change as the independent field does', () => {
  const model = plateModel(plate(oracle.moments))
  expect(Math.abs(model.capacity / oracle.moments.capacity - 1)).toBeLessThan(0.005)
  expect(Math.abs(model.storeConductance / oracle.moments.storeConductance - 1)).toBeLessThan(0.01)
})

test('even entry without a rim to speak of is the series of the covered plate', () => {
  for (const [motorFaceCoefficient, freeFaceCoefficient] of [
    [12.5, 12.5],
    [7, 9],
    [20, 5],
  ] as const) {
    const numbers = plate({ b: 0.045, t: 0.006, k: 0.2, a1: 0.006, a2: 0.0175, ht: 0, hb: 0 }, { entry: 'even' })
    const got = 1 / plateModel(numbers).at(motorFaceCoefficient, freeFaceCoefficient, answer()).conductance
    const series = ringOnPlate.si({ ...numbers, motorFaceCoefficient, freeFaceCoefficient, underMotor: 'covered' }).ring
    expect(Math.abs(got / series - 1)).toBeLessThan(0.005)
  }
})

test('fin and disc are a third too optimistic for a printed plate, and right for metal', () => {
  const sum = (k: number, t: number) => {
    const fin = annularFin.si({ innerRadius: 0.0175, outerRadius: 0.045, thickness: t, conductivity: k, coefficient: 12.5 }).conductance
    return 1 / (fin + (Math.PI * 0.0175 ** 2) / (t / k + 1 / 12.5))
  }
  const whole = (k: number, t: number) =>
    1 / plateModel(plate({ b: 0.045, t, k, a1: 0.006, a2: 0.0175, ht: 0, hb: 0 })).at(12.5, 12.5, answer()).conductance
  expect(sum(0.2, 0.006) / whole(0.2, 0.006)).toBeLessThan(0.7)
  // The rest of the difference for metal is the rim, which the sum leaves out.
  expect(Math.abs(sum(167, 0.003) / whole(167, 0.003) - 1)).toBeLessThan(0.08)
})

interface Rectangle {
  width: number
  height: number
  t: number
  k: number
  kz: number
  hm: number
  hf: number
  sources: { x: number; y: number; a1: number; a2: number }[]
  means: number[]
}
const rectangles: Rectangle[] = JSON.parse(readFileSync(new URL('../oracles/thermal-rectangle.json', import.meta.url), 'utf8'))

test.each(rectangles.filter(({ sources: [ring, other], k }) => other === undefined && ring!.x === 0 && k < 1))(
  'a rectangle of $width by $height m, $k W/(m K) along and $kz across, film $hm: three-dimensional finite volumes',
  ({ width, height, t, k, kz, hm, hf, sources: [ring], means: [mean] }) => {
    const model = plateModel(
      plate(
        { b: Math.sqrt((width * height) / Math.PI), t, k, a1: ring!.a1, a2: ring!.a2, ht: hm, hb: hf },
        { entry: 'even', conductivityAcross: kz, rectangle: { width, height } },
      ),
    )
    // The reference has adiabatic edges, close to the ring of a narrow plate.
    expect(Math.abs(1 / model.at(hm, hf, answer()).conductance / mean! - 1)).toBeLessThan(0.01)
  },
)

test('a plate as narrow as the ring carries less, and one that conducts less across its layers is hotter', () => {
  const at = (change: Partial<(typeof demoSpecification)['plate']> & { conductivityAcross?: string }) =>
    continuousTorque(demoMount({ ...demoSpecification, plate: { ...demoSpecification.plate, ...change } as never }), demoLimits).torque.si
  const square = at({ width: '84 mm', height: '96 mm' } as never)
  expect(at({ width: '41 mm', height: '196 mm' } as never) / square).toBeLessThan(0.99)
  expect(at({ width: '196 mm', height: '41 mm' } as never) / square).toBeLessThan(0.99)
  expect(at({ width: '84 mm', height: '96 mm', conductivityAcross: '0.1 W/(m K)' } as never) / square).toBeLessThan(0.98)
  expect(() => at({ width: '34 mm', height: '160 mm' } as never)).toThrow('larger than the ring')
  expect(() => at({ width: '40 mm', height: '240 mm' } as never)).toThrow('5 times')
})

describe('properties', () => {
  const film = fc.double({ min: 1, max: 200, noNaN: true })
  test('the reduced basis agrees with a plate solved at those films, and heat grows with either film', () => {
    fc.assert(
      fc.property(film, film, fc.double({ min: 0.1, max: 200, noNaN: true }), (motor, free, k) => {
        const model = plateModel(plate({ b: 0.045, t: 0.006, k, a1: 0.006, a2: 0.0175, ht: 0, hb: 0 }))
        const a = { ...model.at(motor, free, answer()) }
        expect(model.at(motor * 1.1, free, answer()).conductance).toBeGreaterThan(a.conductance)
        expect(model.at(motor, free * 1.1, answer()).conductance).toBeGreaterThan(a.conductance)
        // Heat in at the ring is heat out through the faces.
        expect(a.motorFace).toBeGreaterThan(0)
        expect(a.motorFace).toBeLessThan(1)
        expect(a.freeFace).toBeLessThan(1)
      }),
      { numRuns: 25 },
    )
  })

  test('a wider insert never makes the mount worse', () => {
    const at = (radius: number) =>
      mountPlate({
        innerRadius: '6 mm',
        outerRadius: '17.5 mm',
        plateRadius: '45 mm',
        thickness: '7 mm',
        conductivity: '0.2 W/(m K)',
        motorFaceCoefficient: '10 W/(m^2 K)',
        freeFaceCoefficient: '10 W/(m^2 K)',
        insert: { radius: [radius, 'mm'], thickness: '2 mm' },
      }).resistance.si
    expect(at(25)).toBeLessThan(at(20))
    expect(at(35)).toBeLessThan(at(25))
    expect(at(44)).toBeLessThan(at(35))
  })
})

test('an insert that does not fit is refused by name', () => {
  const good = {
    innerRadius: '6 mm',
    outerRadius: '17.5 mm',
    plateRadius: '45 mm',
    thickness: '7 mm',
    conductivity: '0.2 W/(m K)',
    motorFaceCoefficient: '10 W/(m^2 K)',
    freeFaceCoefficient: '10 W/(m^2 K)',
  } as const
  expect(() => mountPlate({ ...good, insert: { radius: '10 mm', thickness: '2 mm' } })).toThrow('insert.radius')
  expect(() => mountPlate({ ...good, insert: { radius: '30 mm', thickness: '7 mm' } })).toThrow('insert.thickness')
  expect(() => mountPlate({ ...good, thickness: '0 mm' })).toThrow('thickness')
})
