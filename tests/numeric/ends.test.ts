// Functions at the ends of their domains, requests that cannot be met, and roots that are no ordinary crossings.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { besselJ1Zero } from '../../src/numeric/bessel.js'
import { lnBeta } from '../../src/numeric/beta.js'
import { locateCrossing, touches } from '../../src/numeric/crossing.js'
import { normalCdf, normalPdf, truncatedNormalQuantile } from '../../src/numeric/distributions.js'
import { gamma as gammaOf, regularisedGammaQ } from '../../src/numeric/gamma.js'
import type { NumericError } from '../../src/numeric/index.js'
import * as numeric from '../../src/numeric/index.js'

const {
  chiSquareCdf,
  chiSquareQuantile,
  erf,
  erfc,
  findRoots,
  integrate,
  lnGamma,
  minimise,
  minimiseScalar,
  mittagLeffler,
  randomStream,
  reciprocalGamma,
  regularisedBeta,
  regularisedGammaP,
  solveNonStiff,
  solveStiff,
  studentTCdf,
  studentTQuantile,
  triangularQuantile,
} = numeric

const relativeTo = (a: number, b: number) => expect(Math.abs(a / b - 1)).toBeLessThan(2e-15)
const rate = (_t: number, _y: ArrayLike<number>, out: Float64Array) => void out.fill(1)
const ode = { derivative: rate, start: 0, end: 1, initial: [0] }

describe('a request that cannot be met names its routine and the numbers given', () => {
  const requests: [string, () => unknown, NumericError['reason'], Record<string, unknown>][] = [
    ['besselJ1Zero', () => besselJ1Zero(0), 'badArgument', { n: 0 }],
    ['besselJ1Zero', () => besselJ1Zero(1.5), 'badArgument', { n: 1.5 }],
    ['lnBeta', () => lnBeta(0, 1), 'outOfRange', { a: 0 }],
    ['lnBeta', () => lnBeta(1, -1), 'outOfRange', { b: -1 }],
    ['regularisedBeta', () => regularisedBeta(-0.1, 1, 1), 'outOfRange', { x: -0.1 }],
    ['regularisedBeta', () => regularisedBeta(1.1, 1, 1), 'outOfRange', { x: 1.1 }],
    ['regularisedBeta', () => regularisedBeta(0.5, 0, 1), 'outOfRange', { a: 0 }],
    ['regularisedBeta', () => regularisedBeta(0.5, 1, 0), 'outOfRange', { b: 0 }],
    ['regularisedGammaP', () => regularisedGammaP(0, 1), 'outOfRange', { a: 0 }],
    ['regularisedGammaP', () => regularisedGammaP(Number.POSITIVE_INFINITY, 1), 'outOfRange', { x: 1 }],
    ['regularisedGammaQ', () => regularisedGammaQ(1, -1), 'outOfRange', { x: -1 }],
    ['lnGamma', () => lnGamma(0), 'outOfRange', { x: 0 }],
    ['gamma', () => gammaOf(0), 'outOfRange', { x: 0 }],
    ['mittagLeffler', () => mittagLeffler(1.01, 1, 1), 'outOfRange', { alpha: 1.01 }],
    ['mittagLeffler', () => mittagLeffler(0, 1, 1), 'outOfRange', { alpha: 0 }],
    ['mittagLeffler', () => mittagLeffler(0.5, 5.1, 1), 'outOfRange', { beta: 5.1 }],
    ['mittagLeffler', () => mittagLeffler(0.5, -0.1, 1), 'outOfRange', { beta: -0.1 }],
    ['triangularQuantile', () => triangularQuantile(0.5, 1, 0, 2), 'badArgument', { mode: 0 }],
    ['triangularQuantile', () => triangularQuantile(0.5, 0, 3, 2), 'badArgument', { mode: 3 }],
    ['triangularQuantile', () => triangularQuantile(0.5, 1, 1, 1), 'badArgument', { high: 1 }],
    ['truncatedNormalQuantile', () => truncatedNormalQuantile(0.5, 0, 0, 0, 1), 'badArgument', { sd: 0 }],
    ['truncatedNormalQuantile', () => truncatedNormalQuantile(0.5, 0, 1, 1, 1), 'badArgument', { low: 1 }],
    ['truncatedNormalQuantile', () => truncatedNormalQuantile(0.5, 0, 1, 60, 61), 'outOfRange', { to: -60 }],
    ['integrate', () => integrate(Math.sin, 0, 1, { relativeTolerance: -1 }), 'badArgument', { relativeTolerance: -1 }],
    ['integrate', () => integrate(Math.sin, 0, 1, { absoluteTolerance: -1 }), 'badArgument', { absoluteTolerance: -1 }],
    ['minimise', () => minimise(([x]) => x!, [1, 2], { step: [0.1] }), 'badArgument', { variables: 2 }],
    ['minimise', () => minimise(([x]) => x!, [1], { step: [-0.1] }), 'badArgument', { variable: 0, step: -0.1 }],
    ['minimise', () => minimise(([x]) => x!, [1], { step: [Number.POSITIVE_INFINITY] }), 'badArgument', { variable: 0 }],
    ['minimise', () => minimise(([x]) => x!, [1], { lower: [0, 0] }), 'badArgument', { variables: 1 }],
    ['minimise', () => minimise(([x]) => Math.log(x!), [-1]), 'notFinite', { x: Float64Array.of(-1) }],
    ['minimiseScalar', () => minimiseScalar(Math.cos, 0, 6, { maxEvaluations: 4 }), 'noConvergence', { maxEvaluations: 4 }],
    ['solveNonStiff', () => solveNonStiff({ ...ode, stops: [0.5, Number.NaN] }), 'badArgument', { stop: Number.NaN }],
    ['solveNonStiff', () => solveNonStiff({ ...ode, absoluteTolerance: -1 }), 'badArgument', { relativeTolerance: 1e-6 }],
    ['solveNonStiff', () => solveNonStiff({ ...ode, relativeTolerance: -1 }), 'badArgument', { relativeTolerance: -1 }],
    ['solveNonStiff', () => solveNonStiff({ ...ode, start: 1 }), 'badArgument', { start: 1, end: 1 }],
    ['solveOde', () => solveNonStiff({ ...ode, events: [{ value: () => Number.NaN }] }), 'notFinite', { event: 0 }],
    ['solveStiff', () => solveStiff({ ...ode, initial: new Float64Array(201) }), 'badArgument', { states: 201 }],
    ['randomStream', () => randomStream(0.5), 'badArgument', { seed: 0.5 }],
    ['randomStream', () => randomStream(1, -1), 'badArgument', { index: -1 }],
    ['randomStream', () => randomStream(1).integer(0), 'badArgument', { count: 0 }],
    ['studentTQuantile', () => studentTQuantile(0, 5), 'outOfRange', { p: 0 }],
    ['chiSquareQuantile', () => chiSquareQuantile(1, 5), 'outOfRange', { p: 1 }],
  ]
  test.each(requests)('%s, case %#', (routine, call, reason, details) => {
    expect(call).toThrowError(
      expect.objectContaining({ name: 'NumericError', routine, reason, details: expect.objectContaining(details) }) as never,
    )
    const [name] = Object.keys(details)
    expect(call).toThrow(`${name} = `)
  })

  test('a long list is shown by its first six values and its length, one of six whole', () => {
    const failure = (list: number[]) => new numeric.NumericError('test', 'badArgument', 'no', { list }).message
    expect(failure([1, 2, 3, 4, 5, 6])).toBe('test: no (list = [1, 2, 3, 4, 5, 6])')
    expect(failure([1, 2, 3, 4, 5, 6, 7])).toBe('test: no (list = [1, 2, 3, 4, 5, 6, … 7 values])')
    expect(new numeric.NumericError('test', 'badArgument', 'no').message).toBe('test: no')
  })

  test('two hundred states are still solved', () => {
    expect(solveStiff({ ...ode, initial: new Float64Array(200), relativeTolerance: 1e-3 }).yEnd[199]).toBeCloseTo(1, 9)
  })
})

describe('special functions at the ends of their domains', () => {
  test('are the limits there', () => {
    expect([regularisedGammaP(2.5, 0), regularisedGammaP(2.5, Number.POSITIVE_INFINITY)]).toEqual([0, 1])
    expect([regularisedGammaQ(2.5, 0), regularisedGammaQ(2.5, Number.POSITIVE_INFINITY)]).toEqual([1, 0])
    expect([regularisedBeta(0, 2, 3), regularisedBeta(1, 2, 3)]).toEqual([0, 1])
    expect([erf(7), erf(-7), erf(0), erfc(30), erfc(-30)]).toEqual([1, -1, 0, 0, 2])
    expect(erf(6.0001)).toBeCloseTo(1, 15)
    expect([chiSquareCdf(0, 3), chiSquareCdf(-1, 3), chiSquareCdf(Number.POSITIVE_INFINITY, 3)]).toEqual([0, 0, 1])
    expect([normalPdf(0), normalPdf(50)]).toEqual([1 / Math.sqrt(2 * Math.PI), 0])
    expect(mittagLeffler(0.4, 2, 0)).toBe(1)
    expect(mittagLeffler(0.4, 0, 0)).toBe(0)
    expect([gammaOf(171.6), gammaOf(172)]).toEqual([expect.closeTo(1.5858e308 / 1, -306), Number.POSITIVE_INFINITY])
    expect(reciprocalGamma(-3)).toBe(0)
  })

  const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const relative = (a: number, b: number, tolerance: number) => expect(Math.abs(a / b - 1)).toBeLessThan(tolerance)

  test('the two tails of each add up to one, and reflection and recurrence hold', () => {
    fc.assert(
      fc.property(positive(0.05, 400), positive(0.05, 400), positive(0.001, 0.999), (a, b, x) => {
        expect(regularisedGammaP(a, b) + regularisedGammaQ(a, b)).toBeCloseTo(1, 12)
        expect(regularisedBeta(x, a, b) + regularisedBeta(1 - x, b, a)).toBeCloseTo(1, 11)
        // P(a + 1, x) = P(a, x) − xᵃ e⁻ˣ/Γ(a + 1), Abramowitz & Stegun 6.5.21.
        const term = Math.exp(a * Math.log(b) - b - lnGamma(a + 1))
        expect(regularisedGammaP(a, b) - regularisedGammaP(a + 1, b)).toBeCloseTo(term, 11)
        // B(a + 1, b) = B(a, b) a/(a + b), 6.2.2.
        relative(Math.exp(lnBeta(a + 1, b) - lnBeta(a, b)), a / (a + b), 1e-11)
        expect(lnBeta(a, b)).toBe(lnBeta(b, a))
        expect(Math.abs(lnGamma(a + 1) - lnGamma(a) - Math.log(a))).toBeLessThan(2e-15 * Math.max(1, Math.abs(lnGamma(a + 1))) + 2e-15)
        expect(normalCdf(x * 9) + normalCdf(-x * 9)).toBeCloseTo(1, 15)
        expect(erf(3 * x) + erfc(3 * x)).toBeCloseTo(1, 15)
      }),
      { seed: 11, numRuns: 200 },
    )
  })

  test('a Mittag-Leffler function whose first term vanishes is the next one times its argument', () => {
    // E_{α,β}(z) = 1/Γ(β) + z E_{α,α+β}(z), Podlubny 1999, eq. 1.56 with m = 1.
    for (const alpha of [0.2, 0.5, 0.9, 1])
      for (const beta of [0, 0.3, 1, 2.5])
        for (const z of [-30, -1.5, -1, -0.4, 0.4, 1, 1.6]) {
          const [left, right] = [mittagLeffler(alpha, beta, z), reciprocalGamma(beta) + z * mittagLeffler(alpha, alpha + beta, z)]
          expect(Math.abs(left - right)).toBeLessThan(1e-12 * Math.max(1, Math.abs(left)))
        }
  })

  test('a logarithm of the beta function is the same by the gamma function across the borders of its three ways', () => {
    for (const p of [0.5, 9.999, 10, 10.001, 19.999, 20, 20.001])
      for (const q of [0.5, 9.999, 10, 19.999, 20, 20.001, 300])
        expect(Math.abs(lnBeta(p, q) - (lnGamma(p) + lnGamma(q) - lnGamma(p + q)))).toBeLessThan(1e-14 * lnGamma(Math.max(p, q) + 30))
  })

  test('quantiles invert their distributions for any freedom, in either tail', () => {
    const freedom = fc.oneof(positive(0.2, 3), positive(3, 60), positive(60, 5000))
    const chance = fc.oneof(positive(1e-9, 1e-3), positive(1e-3, 0.999), positive(0.999, 1 - 1e-9))
    fc.assert(
      fc.property(freedom, chance, (dof, p) => {
        const t = studentTQuantile(p, dof)
        expect(Math.sign(t)).toBe(Math.sign(p - 0.5))
        relative(studentTCdf(t, dof), p, 2e-11)
        expect(studentTQuantile(1 - p, dof) / -t).toBeCloseTo(1, p < 1e-3 || p > 0.999 ? 5 : 9)
        const x = chiSquareQuantile(p, dof)
        relative(chiSquareCdf(x, dof), p, 2e-11)
        expect(x).toBeGreaterThan(0)
      }),
      { seed: 5, numRuns: 300 },
    )
  })
})

test('quantiles invert their distributions in the farthest tails too', () => {
  for (const p of [1e-290, 1e-250, 1e-200]) {
    for (const dof of [2, 2.1, 3]) expect(studentTCdf(studentTQuantile(p, dof), dof) / p).toBeCloseTo(1, 9)
    for (const dof of [2.1, 30, 2000]) expect(chiSquareCdf(chiSquareQuantile(p, dof), dof) / p).toBeCloseTo(1, 9)
  }
  expect(() => studentTQuantile(1e-290, 1.3)).toThrowError(expect.objectContaining({ name: 'NumericError' }))
  // Below the smallest number nothing is left to invert.
  expect(chiSquareQuantile(1e-290, 0.02)).toBeLessThan(1e-300)
})

test('the gamma function keeps its digits next to a pole', () => {
  // Γ(x + 1) = x Γ(x), from one above zero, where no reflection is needed.
  for (const away of [2 ** -20, -(2 ** -20), 2 ** -40, -(2 ** -40)])
    for (const pole of [-1, -2, -3, -4]) {
      let expected = gammaOf(1 + away)
      for (let k = 0; k >= pole; k--) expected /= k + away
      relativeTo(gammaOf(pole + away), expected)
    }
})

test('an integral of nothing is nothing, after one look', () => {
  let calls = 0
  const nothing = () => {
    calls++
    return 0
  }
  expect(integrate(nothing, 0, 1)).toBe(0)
  expect(calls).toBe(15)
})

test('a search in one variable ends at its minimum, with and without limits', () => {
  for (const at of [-3, 0, 0.2, 7]) {
    expect(minimise(([x]) => (x! - at) ** 2, [1]).x[0]).toBeCloseTo(at, 6)
    expect(minimise(([x]) => Math.abs(x! - at), [1], { lower: [-1], upper: [5] }).x[0]).toBeCloseTo(Math.min(Math.max(at, -1), 5), 6)
  }
})

describe('changes of sign that are no ordinary roots', () => {
  test('a pole in the very middle, where the function is infinite, is none', () => {
    expect(locateCrossing((x) => 1 / x, -1, -1, 1, 1)).toEqual({ x: 0, isRoot: false })
    expect(findRoots((x) => 1 / (x - 0.5), 0, 1, { samples: 3 })).toMatchObject({ roots: [], poles: [0.5] })
  })

  test('a root in the very middle of a halved bracket is exact', () => {
    expect(locateCrossing((x) => x - 0.25, 0, -0.25, 1, 0.75)).toEqual({ x: 0.25, isRoot: true })
  })

  test('a root of an order so high that interpolation creeps is found by halving', () => {
    for (const power of [51, 201]) {
      const { x, isRoot } = locateCrossing((at) => (at - 0.3) ** power, -1, (-1.3) ** power, 2, 1.7 ** power)
      expect(isRoot).toBe(true)
      expect(Math.abs(x - 0.3)).toBeLessThan(0.1)
    }
  })

  test('a jump of any height is none, however near a sample', () => {
    for (const height of [1e-12, 1, 1e12])
      expect(locateCrossing((x) => (x < 0.3 ? -height : height), 0, -height, 1, height)).toEqual({
        x: expect.closeTo(0.3, 9),
        isRoot: false,
      })
  })

  test('what touches zero is found from either end of a part and on either side of zero', () => {
    for (const [a, b] of [[0, 1], [1, 0]] as const) // biome-ignore format: pair
      for (const sign of [1, -1]) {
        expect(touches((x) => sign * (x - 0.3) ** 2, a, b, sign, 0)).toEqual([{ x: expect.closeTo(0.3, 7), isRoot: true }])
        const pair = touches((x) => sign * ((x - 0.3) ** 2 - 1e-4), a, b, sign, 0)
        expect(pair).toEqual([0.29, 0.31].map((x) => ({ x: expect.closeTo(x, 12), isRoot: true })))
        expect(touches((x) => sign * ((x - 0.3) ** 2 + 1e-4), a, b, sign, 0)).toEqual([])
        // Within the rounding of its values it is zero as well.
        expect(touches((x) => sign * ((x - 0.3) ** 2 + 1e-4), a, b, sign, 2e-4)).toHaveLength(1)
      }
  })

  test('a touching root beside a place without a value is found, and a pair of which one end has none is left out', () => {
    expect(touches((x) => (x < 0.1 ? Number.NaN : (x - 0.3) ** 2), 0, 1, 1, 0)).toEqual([{ x: expect.closeTo(0.3, 6), isRoot: true }])
    const half = touches((x) => (x === 0 ? Number.POSITIVE_INFINITY : (x - 0.3) ** 2 - 1e-4), 0, 1, 1, 0)
    expect(half).toEqual([{ x: expect.closeTo(0.31, 12), isRoot: true }])
  })

  test('what is zero within rounding over a quarter of a part is a range, over less a point', () => {
    // Parts of 1; zero within rounding over 2 ∛noise.
    const found = (width: number) => findRoots((x) => (x - 3) ** 3, 0, 10, { samples: 10, noise: (width / 2) ** 3 })
    expect(found(0.2)).toEqual({ roots: [3], intervals: [], poles: [] })
    expect(found(0.3)).toEqual({ roots: [], intervals: [[expect.closeTo(2.85, 12), expect.closeTo(3.15, 12)]], poles: [] })
    // At the first and the last sample only the inner half counts.
    expect(findRoots((x) => x ** 3, 0, 10, { samples: 10, noise: 0.1 ** 3 }).roots).toEqual([0])
    expect(findRoots((x) => (x - 10) ** 3, 0, 10, { samples: 10, noise: 0.1 ** 3 }).roots).toEqual([10])
  })

  test('an end of a domain at a sample itself is no root', () => {
    expect(findRoots((x) => (x < 0.5 ? Number.NaN : x), 0, 1, { samples: 2 })).toEqual({ roots: [], intervals: [], poles: [] })
    // The change of sign between the edge and the first sample inside is found on either side.
    expect(findRoots((x) => (x < 0.3 ? Number.NaN : x - 0.4), 0, 1, { samples: 2 }).roots).toEqual([expect.closeTo(0.4, 14)])
    expect(findRoots((x) => (x > 0.7 ? Number.NaN : x - 0.6), 0, 1, { samples: 2 }).roots).toEqual([expect.closeTo(0.6, 14)])
  })
})

describe('events of a course', () => {
  const moments = (solve: typeof solveNonStiff, value: (t: number) => number, more: object = {}) =>
    solve({
      ...ode,
      firstStep: 1,
      ...more,
      events: [{ value, ...('direction' in more ? { direction: more.direction as 'rising' } : {}) }],
    }).events.map(({ t }) => t)

  test.each([
    ['solveNonStiff', solveNonStiff],
    ['solveStiff', solveStiff],
  ] as const)('%s finds those that fall on a sample or on the end of a step, once each', (_, solve) => {
    // Steps end at 0.5 and are looked at in quarters.
    for (const at of [0.125, 0.25, 0.5, 0.7, 0.875]) {
      expect(moments(solve, (t) => t - at, { stops: [0.5] })).toEqual([expect.closeTo(at, 9)])
      expect(moments(solve, (t) => t - at, { stops: [0.5], direction: 'falling' })).toEqual([])
      expect(moments(solve, (t) => at - t, { stops: [0.5], direction: 'falling' })).toEqual([expect.closeTo(at, 9)])
    }
    // A condition that begins at zero has not been crossed; one that only touches zero neither.
    expect(moments(solve, (t) => t)).toEqual([])
    expect(moments(solve, (t) => (t - 0.5) ** 2, { stops: [0.5] })).toEqual([])
  })

  test('the state at an event is that of its moment, and a terminal one ends the course there', () => {
    const { events, tEnd, yEnd, ended } = solveNonStiff({
      ...ode,
      stops: [0.5],
      events: [{ value: (_t, y) => y[0]! - 0.5 }, { value: (t) => t - 0.75, terminal: true }],
    })
    expect(events.map(({ event, t, y }) => [event, t, y[0]])).toEqual([
      [0, expect.closeTo(0.5, 12), expect.closeTo(0.5, 12)],
      [1, expect.closeTo(0.75, 12), expect.closeTo(0.75, 12)],
    ])
    expect([ended, tEnd, yEnd[0]]).toEqual(['event', expect.closeTo(0.75, 12), expect.closeTo(0.75, 12)])
  })

  test('a course answers at its ends and inside, and not beyond', () => {
    const course = solveNonStiff({ ...ode, start: 0, end: 300, maxStep: 1 })
    expect(course.steps).toBeGreaterThanOrEqual(300)
    for (const t of [0, 0.5, 64, 128.25, 299.75, 300]) expect(course.at(t)[0]).toBeCloseTo(t, 9)
    for (const t of [-1e-9, 300.0001, Number.NaN]) expect(() => course.at(t)).toThrow('the time lies outside the solution')
  })
})

test('an integral with several breakpoints in any order, over the whole line too', () => {
  const steps = (x: number) => (x < -1 ? 0 : x < 0.5 ? 1 : x < 2 ? 3 : 0)
  for (const breakpoints of [[-1, 0.5, 2], [2, -1, 0.5], [-1, 0.5, 2, 9, -9]]) // biome-ignore format: rows
    expect(integrate(steps, -5, 5, { breakpoints })).toBeCloseTo(6, 13)
  expect(integrate((x) => Math.exp(-Math.abs(x)), Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, { breakpoints: [0] })).toBeCloseTo(
    2,
    9,
  )
})
