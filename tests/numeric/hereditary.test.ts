import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gradedTimes, integrate, invertHereditary, mittagLeffler } from '../../src/numeric/index.js'
import oracle from '../oracles/numeric-hereditary.json' with { type: 'json' }

const reason = (why: string) => expect.objectContaining({ name: 'NumericError', reason: why })
const index = (times: Float64Array, t: number) => times.findIndex((x) => Math.abs(x / t - 1) < 1e-9)

/** Geometric grid through every decade from 1e-8 to 1e3, n points a decade. */
const decades = (n: number) => gradedTimes(1e3, 11 * n + 1, { first: 1e-8 })

describe('gradedTimes', () => {
  test('crowds towards the start and ends exactly at the end', () => {
    expect([...gradedTimes(8, 4)]).toEqual([0, 0.5, 2, 4.5, 8])
    const t = gradedTimes(1000, 7, { first: 1e-3 })
    expect(t[1]).toBeCloseTo(1e-3, 15)
    expect(t[4]).toBeCloseTo(1, 12)
    expect(t[7]).toBe(1000)
    expect([...gradedTimes(5, 1, { first: 5 })]).toEqual([0, 5])
    expect(() => gradedTimes(0, 4)).toThrowError(reason('badArgument'))
    expect(() => gradedTimes(1, 4, { first: 2 })).toThrowError(reason('badArgument'))
    expect(() => gradedTimes(1, 1, { first: 0.1 })).toThrowError(reason('badArgument'))
    expect(() => gradedTimes(1, 4, { exponent: 0.5 })).toThrowError(reason('badArgument'))
  })
})

/** The response to a history of straight lines by adaptive quadrature of each: the way back, by another method. */
const respond = (t: Float64Array, response: (age: number, applied: number) => number, x: ArrayLike<number>) =>
  t.map((now, n) => {
    let sum = response(now - t[0]!, t[0]!) * x[0]!
    for (let j = 0; j < n; j++) {
      const [from, to] = [t[j]!, t[j + 1]!]
      // Substituted so that the youngest part of the response, where power laws are steep, is smooth.
      const mean = integrate((v) => 4 * v ** 3 * response(now - to + (to - from) * v ** 4, to - (to - from) * v ** 4), 0, 1)
      sum += mean * (x[j + 1]! - x[j]!)
    }
    return sum
  })

describe('invertHereditary', () => {
  test('relaxation behind power-law creep, against the inverse Laplace transform', () => {
    const { a, n, relaxation } = oracle.powerCreep
    const errors = [10, 20].map((perDecade) => {
      const t = decades(perDecade)
      const stress = invertHereditary(t, (age) => 1 + a * age ** n, new Float64Array(t.length).fill(1))
      return Math.max(...relaxation.map(([at, r]) => Math.abs(stress[index(t, at!)]! / r! - 1)))
    })
    expect(errors[0]).toBeLessThan(1e-3)
    expect(errors[1]).toBeLessThan(0.35 * errors[0]!)
    // The same by the function that has this transform.
    for (const [at, r] of relaxation) expect(mittagLeffler(n, 1, -a * 0.906402477055477 * at! ** n)).toBeCloseTo(r!, 12)
  })

  test('relaxation of the standard solid behind its creep (closed form, e.g. Christensen 1982, ch. 1)', () => {
    // J(t) = 1 + 0.5 (1 − exp(−t)); R(t) = 2/3 + 1/3 exp(−1.5 t).
    const t = gradedTimes(6, 80)
    const stress = invertHereditary(t, (age) => 1 + 0.5 * (1 - Math.exp(-age)), new Float64Array(81).fill(1))
    for (let i = 0; i <= 80; i++) expect(Math.abs(stress[i]! - (2 / 3 + Math.exp(-1.5 * t[i]!) / 3))).toBeLessThan(3e-5)
  })

  test('undoes the response to any history, worked out by adaptive quadrature', () => {
    const t = gradedTimes(100, 8, { first: 0.01 })
    fc.assert(
      fc.property(fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 9, maxLength: 9 }), (x) => {
        const response = (age: number) => 1 + 0.4 * age ** 0.3
        const back = invertHereditary(t, response, respond(t, response, x))
        for (let i = 0; i < 9; i++) expect(back[i]).toBeCloseTo(x[i]!, 3)
      }),
      { seed: 7 },
    )
  })

  test('a clock that runs with temperature: twice the rate after t = 1', () => {
    const clock = (t: number) => (t < 1 ? t : 2 * t - 1)
    const t = Float64Array.from({ length: 41 }, (_, i) => i / 10)
    const decay = t.map((now) => Math.exp(-clock(now)))
    const back = invertHereditary(t, (age, applied) => Math.exp(-(clock(applied + age) - clock(applied))), decay)
    for (const x of back) expect(x).toBeCloseTo(1, 12)
  })

  test('refuses', () => {
    expect(() => invertHereditary([1, 1], () => 1, [1, 1])).toThrowError(reason('badArgument'))
    expect(() => invertHereditary([], () => 1, [])).toThrowError(reason('badArgument'))
    expect(() => invertHereditary([0, 1], () => 1, [1])).toThrowError(reason('badArgument'))
    expect(() => invertHereditary([0, 1], () => Infinity, [1, 1])).toThrowError(reason('notFinite'))
    expect(() => invertHereditary([0, 1], () => 0, [1, 1])).toThrowError(reason('singular'))
  })
})
