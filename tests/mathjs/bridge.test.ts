import { unit } from 'mathjs'
import { expect, test } from 'vitest'
import { fromMathjs, toMathjs } from '../../src/mathjs/index.js'
import { InputError, mm, quantity } from '../../src/units/index.js'

test('free-form text is read by dimensions', () => {
  // 0.2 lbf in/deg by hand: 0.2 * 4.4482216152605 N * 0.0254 m * 180/pi
  expect(fromMathjs('torsionalStiffness', '0.2 lbf in / deg').si).toBeCloseTo(0.2 * 4.4482216152605 * 0.0254 * (180 / Math.PI), 8)
  expect(fromMathjs('angularVelocity', '120 rpm').si).toBeCloseTo(4 * Math.PI, 12)
  expect(fromMathjs('thermalExpansion', '7e-5 K^-1').si).toBe(7e-5)
})

test('a mathjs unit passes where a quantity is taken, without importing mathjs here', () => {
  expect(quantity('length', unit(5, 'mm') as never).si).toBeCloseTo(0.005, 15)
  expect(() => quantity('length', unit(5, 'N') as never)).toThrow(InputError)
})

test('there and back', () => {
  expect(fromMathjs('length', toMathjs(mm(12.5))).si).toBeCloseTo(0.0125, 15)
})

test.each([
  ['2+3', 'force'],
  ['cos(3) N', 'force'],
  ['N', 'force'],
  ['', 'force'],
  ['5 mm', 'force'],
  ['import("x")', 'force'],
  ['1 N '.repeat(200), 'force'],
] as const)('text %j is not a %s', (text, kind) => {
  expect(() => fromMathjs(kind, text)).toThrow(InputError)
})

test('degrees are never a temperature difference', () => {
  expect(() => fromMathjs('temperatureDifference', '30 degC')).toThrow(/kelvin/)
  expect(() => fromMathjs('temperatureDifference', '30 degF')).toThrow(/kelvin/)
  expect(fromMathjs('temperatureDifference', '30 K').si).toBe(30)
  expect(fromMathjs('temperature', '30 degC').si).toBeCloseTo(303.15, 10)
  expect(() => quantity('temperatureDifference', unit(30, 'K') as never)).toThrow(/difference/)
})
