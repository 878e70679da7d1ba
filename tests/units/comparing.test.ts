import { inspect } from 'node:util'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { property } from '../../src/formula/index.js'
import {
  ascending,
  count,
  degC,
  InputError,
  kelvins,
  largest,
  mm,
  N,
  Nm,
  type Quantity,
  ratio,
  smallest,
  strain,
} from '../../src/units/index.js'

const any = (q: Quantity) => q as unknown as number

describe('comparing quantities', () => {
  test('nine newtons are less than ten, whatever their texts', () => {
    expect(N(9).isLessThan(N(10))).toBe(true)
    expect(N(9).isGreaterThan(N(10))).toBe(false)
    expect(mm(2000).isGreaterThan(mm(900))).toBe(true)
    expect(degC(-5).isLessThan(degC(-1))).toBe(true)
    expect([N(10), N(9), N(1000)].sort(ascending).map(String)).toEqual(['9 N', '10 N', '1 kN'])
    expect(largest(N(9), N(10), N(2)).in('N')).toBe(10)
    expect(smallest(N(9), N(10), N(2)).in('N')).toBe(2)
  })

  test('orders as the numbers do', () => {
    const numbers = fc.double({ noNaN: true })
    fc.assert(
      fc.property(numbers, numbers, (a, b) => {
        expect(N(a).isGreaterThan(N(b))).toBe(a > b)
        expect(N(a).isLessThan(N(b))).toBe(a < b)
        expect(ascending(N(a), N(b))).toBe(a < b ? -1 : a > b ? 1 : 0)
      }),
    )
  })

  test('unlike kinds and what is not a number are errors', () => {
    const torque = Nm(5) as never
    for (const compare of [
      () => N(5).isGreaterThan(torque),
      () => N(5).isLessThan(torque),
      () => [N(5), torque].sort(ascending),
      () => largest(N(5), torque),
      () => smallest(N(5), torque),
      () => degC(5).isLessThan(kelvins(5) as never),
      () =>
        N(5)
          .times(N(1))
          .isLessThan(mm(1).times(mm(1))),
      () => N(5).isLessThan(undefined as never),
      () => N(5).isLessThan(N(Number.NaN)),
      () => largest(N(Number.NaN), N(1)),
    ])
      expect(compare).toThrow(InputError)
  })

  test('operators never compare texts: where there is a unit to lose they throw', () => {
    for (const operate of [
      () => any(N(9)) > any(N(10)),
      () => any(N(9)) > any(mm(10)),
      () => any(N(9)) <= 5,
      () => Math.max(any(N(9)), any(N(10))),
      () => any(N(9)) - any(N(2)),
      () => any(N(9)) * 2,
      () => +any(N(9)),
      () => Number.isNaN(Number(N(9))),
    ]) {
      expect(operate).toThrow(InputError)
      expect(operate).toThrow('compare with isGreaterThan, isLessThan, ascending, largest or smallest')
    }
  })

  test('numbers without a unit compare and calculate as numbers', () => {
    expect(any(ratio(0.9)) > any(ratio(0.1))).toBe(true)
    expect(any(ratio(0.9)) > any(ratio(0.10001))).toBe(true)
    expect(Math.max(any(count(9)), any(count(10)))).toBe(10)
    expect(any(ratio(0.2)) + 1).toBe(1.2)
    expect(any(strain(0.02)) > 0.01).toBe(true)
    expect(any(N(6).over(N(2))) > 2).toBe(true)
  })

  test('templates and joined text print the quantity', () => {
    expect(`${N(5)}`).toBe('5 N')
    // biome-ignore lint/style/useTemplate: joining is the subject
    expect('load ' + N(5)).toBe('load 5 N')
    expect([N(5), mm(2)].join(', ')).toBe('5 N, 2 mm')
    expect(`${ratio(0.25)}`).toBe('0.25')
  })
})

test('a property prints its band', () => {
  const source = { level: 'assumption', where: 'test' } as const
  const strength = property('stress', { typical: '65 MPa', low: '50 MPa', high: '80 MPa', source })
  expect(String(strength)).toBe('65 (50 to 80) MPa')
  expect(inspect(strength)).toBe('65 (50 to 80) MPa')
  expect(String(property('ratio', { typical: 0.38, low: 0.25, high: 0.55, source }))).toBe('0.38 (0.25 to 0.55)')
  expect(String(property('temperature', { typical: '60 degC', low: '55 degC', high: '1e3 degC', source }))).toBe('60 (55 to 1000) degC')
  expect(String(strength.lowest)).toBe('50 MPa')
})
