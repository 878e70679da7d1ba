import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { linearTable, monotoneTable } from '../../src/numeric/index.js'
import oracle from '../oracles/numeric-pchip.json' with { type: 'json' }

const reason = (why: string) => expect.objectContaining({ name: 'NumericError', reason: why })

/** A random table: ascending abscissae with steps of 0.1 to 5, any ordinates. */
const tables = fc
  .array(fc.tuple(fc.double({ min: 0.1, max: 5, noNaN: true }), fc.double({ min: -100, max: 100, noNaN: true })), {
    minLength: 2,
    maxLength: 12,
  })
  .map((rows) => {
    let x = -3
    return {
      xs: rows.map(([step]) => {
        x += step
        return x
      }),
      ys: rows.map(([, y]) => y),
    }
  })
const part = fc.double({ min: 0, max: 1, noNaN: true })

describe('monotoneTable', () => {
  test("agrees with scipy's PchipInterpolator, values and slopes", () => {
    for (const { x, y, at, value, slope } of oracle.tables) {
      const table = monotoneTable(x, y)
      for (const [i, t] of at.entries()) {
        expect(table(t)).toBeCloseTo(value[i]!, 10)
        expect(table.slope(t)).toBeCloseTo(slope[i]!, 9)
      }
    }
  })

  test('stays between its neighbours: no overshoot', () => {
    fc.assert(
      fc.property(tables, part, fc.nat(), ({ xs, ys }, t, k) => {
        const i = k % (xs.length - 1)
        const y = monotoneTable(xs, ys)(Math.min(xs[i]! + t * (xs[i + 1]! - xs[i]!), xs[i + 1]!))
        const rounding = 1e-13 * Math.max(Math.abs(ys[i]!), Math.abs(ys[i + 1]!))
        expect(y).toBeGreaterThanOrEqual(Math.min(ys[i]!, ys[i + 1]!) - rounding)
        expect(y).toBeLessThanOrEqual(Math.max(ys[i]!, ys[i + 1]!) + rounding)
      }),
    )
  })
})

describe('every table', () => {
  for (const [name, make] of [
    ['linearTable', linearTable],
    ['monotoneTable', monotoneTable],
  ] as const) {
    test(`${name} goes through its points exactly, in any order of asking`, () => {
      fc.assert(
        fc.property(tables, fc.array(fc.nat(), { maxLength: 20 }), ({ xs, ys }, order) => {
          const table = make(xs, ys)
          for (const k of [...xs.keys(), ...order.map((n) => n % xs.length)]) expect(table(xs[k]!) + 0).toBe(ys[k]! + 0)
          expect([table.low, table.high]).toEqual([xs[0], xs.at(-1)])
        }),
      )
    })

    test(`${name}: the slope is the derivative`, () => {
      const table = make([0, 1, 3, 4], [0, 2, 3, 7])
      for (const x of [0.3, 1.7, 2.9, 3.5]) expect(table.slope(x)).toBeCloseTo((table(x + 1e-5) - table(x - 1e-5)) / 2e-5, 5)
    })

    test(`${name} throws outside, it never clamps`, () => {
      const table = make([20, 80], [1, 2])
      for (const x of [19.999999, 80.000001, Number.NaN, Infinity]) {
        expect(() => table(x)).toThrowError(reason('outOfRange'))
        expect(() => table.slope(x)).toThrowError(reason('outOfRange'))
      }
      expect(() => table(90)).toThrow(`${name}: the value lies outside the table (x = 90, low = 20, high = 80)`)
    })

    test(`${name} refuses malformed tables`, () => {
      for (const [x, y] of [
        [[1], [1]],
        [
          [1, 1],
          [1, 2],
        ],
        [
          [2, 1],
          [1, 2],
        ],
        [[1, 2], [1]],
        [
          [1, 2],
          [1, Number.NaN],
        ],
        [
          [1, Infinity],
          [1, 2],
        ],
      ] as const) {
        expect(() => make(x, y)).toThrowError(reason('badArgument'))
      }
    })

    test(`${name} is not changed by later changes of the arrays it was made from`, () => {
      const y = [1, 2]
      const table = make([0, 1], y)
      y[1] = 50
      expect(table(1)).toBe(2)
    })
  }

  test('linearTable between its points', () => {
    const table = linearTable([0, 2, 3], [10, 20, 0])
    expect([0.5, 1, 2.25].map((x) => table(x))).toEqual([12.5, 15, 15])
    expect([table.slope(1), table.slope(2), table.slope(3)]).toEqual([5, -20, -20])
  })
})
