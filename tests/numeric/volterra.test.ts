import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gradedTimes, hereditary, invertHereditary, lambertW0, mittagLeffler, solveVolterra } from '../../src/numeric/index.js'
import oracle from '../oracles/numeric-volterra.json' with { type: 'json' }

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

describe('hereditary', () => {
  test('a step gives the step response itself', () => {
    const t = gradedTimes(50, 20)
    const y = hereditary(t, (age) => Math.exp(-age / 3), new Float64Array(21).fill(2))
    for (let i = 0; i < 21; i++) expect(y[i]).toBeCloseTo(2 * Math.exp(-t[i]! / 3), 14)
  })

  test('a ramp gives the integral of the response, for exponentials and power laws', () => {
    for (const [response, integral] of [
      [(a: number) => Math.exp(-a / 0.7), (t: number) => 0.7 * (1 - Math.exp(-t / 0.7))],
      [(a: number) => 1 + a ** 0.2, (t: number) => t + t ** 1.2 / 1.2],
    ] as const) {
      const t = gradedTimes(10, 60)
      const y = hereditary(t, response, t)
      for (let i = 1; i <= 60; i++) expect(Math.abs(y[i]! / integral(t[i]!) - 1)).toBeLessThan(3e-6)
    }
  })

  test('superposition: linear in the history', () => {
    const t = gradedTimes(3, 6)
    const history = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 7, maxLength: 7 })
    fc.assert(
      fc.property(history, history, (a, b) => {
        const response = (age: number) => 2 / (1 + age)
        const sum = hereditary(
          t,
          response,
          a.map((x, i) => x + 3 * b[i]!),
        )
        const ya = hereditary(t, response, a)
        const yb = hereditary(t, response, b)
        for (let i = 0; i < 7; i++) expect(sum[i]).toBeCloseTo(ya[i]! + 3 * yb[i]!, 10)
      }),
    )
  })

  test('a clock that runs with temperature: twice the rate after t = 1', () => {
    const clock = (t: number) => (t < 1 ? t : 2 * t - 1)
    const t = Float64Array.from({ length: 41 }, (_, i) => i / 10)
    const y = hereditary(t, (age, applied) => Math.exp(-(clock(applied + age) - clock(applied))), new Float64Array(41).fill(1))
    expect(y[40]).toBeCloseTo(Math.exp(-7), 14)
  })
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

  test('undoes hereditary for any history', () => {
    const t = gradedTimes(100, 8, { first: 0.01 })
    fc.assert(
      fc.property(fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 9, maxLength: 9 }), (x) => {
        const response = (age: number) => 1 + 0.4 * age ** 0.3
        const back = invertHereditary(t, response, hereditary(t, response, x))
        for (let i = 0; i < 9; i++) expect(back[i]).toBeCloseTo(x[i]!, 10)
      }),
    )
  })
})

describe('solveVolterra', () => {
  test('u = 1 + ∫u is the exponential, to second order', () => {
    const errors = [50, 100].map((count) => {
      const t = gradedTimes(2, count, { exponent: 1 })
      return Math.abs(solveVolterra({ times: t, forcing: () => 1, kernel: () => 1 })[count]! / Math.exp(2) - 1)
    })
    expect(errors[0]).toBeLessThan(4e-4)
    expect(errors[0]! / errors[1]!).toBeCloseTo(4, 1)
  })

  test("a weakly singular kernel: Abel's equation of the second kind", () => {
    for (const [at, u] of oracle.abel) {
      const t = gradedTimes(at!, 200, { exponent: 4 })
      const solution = solveVolterra({ times: t, forcing: () => 1, kernel: (now, s) => -1 / Math.sqrt(now - s) })
      expect(Math.abs(solution[200]! / u! - 1)).toBeLessThan(5e-4)
    }
  })

  test('a non-linear term: u = 1 − ∫ u² has the solution 1/(1 + t), u = ∫ exp(−u) has ln(1 + t)', () => {
    const t = gradedTimes(5, 400, { exponent: 1.5 })
    const square = solveVolterra({ times: t, forcing: () => 1, kernel: () => -1, term: (_s, u) => u * u })
    const exponential = solveVolterra({ times: t, forcing: () => 0, kernel: () => 1, term: (_s, u) => Math.exp(-u) })
    for (let i = 0; i <= 400; i++) {
      expect(Math.abs(square[i]! * (1 + t[i]!) - 1)).toBeLessThan(1e-4)
      expect(Math.abs(exponential[i]! - Math.log1p(t[i]!))).toBeLessThan(1e-4)
    }
  })

  test('one step of the product rule is what a hand calculation gives', () => {
    // u0 = 1, u1 = 1 + h/2 (−u0² − u1²), h = 1: u1 = −1 + √2. And linear in exp: u1 = 1/2 (1 + e^−u1): u1 = 1/2 + W(e^−1/2/2).
    const square = solveVolterra({ times: [0, 1], forcing: () => 1, kernel: () => -1, term: (_s, u) => u * u })
    expect(square[1]).toBeCloseTo(-1 + Math.SQRT2, 12)
    const exponential = solveVolterra({ times: [0, 1], forcing: () => 0, kernel: () => 1, term: (_s, u) => Math.exp(-u) })
    expect(exponential[1]).toBeCloseTo(0.5 + lambertW0(0.5 * Math.exp(-0.5)), 12)
  })

  test('refuses', () => {
    const good = { times: [0, 1], forcing: () => 1, kernel: () => 1 }
    expect(() => solveVolterra({ ...good, times: [1, 1] })).toThrowError(reason('badArgument'))
    expect(() => solveVolterra({ ...good, times: [] })).toThrowError(reason('badArgument'))
    expect(() => solveVolterra({ ...good, kernel: () => Number.NaN })).toThrowError(reason('notFinite'))
    expect(() => solveVolterra({ ...good, kernel: () => 2 })).toThrowError(reason('singular'))
    expect(() => hereditary([0, 1], () => 1, [1])).toThrowError(reason('badArgument'))
    expect(() => hereditary([0, 1], () => Infinity, [1, 1])).toThrowError(reason('notFinite'))
    expect(() => invertHereditary([0, 1], () => 0, [1, 1])).toThrowError(reason('singular'))
  })
})
