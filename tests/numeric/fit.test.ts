import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fitLeastSquares, type LeastSquaresProblem, randomStream } from '../../src/numeric/index.js'
import { type Regression, regressions } from './nist.data.js'

const problem = ({ x, y, model }: Pick<Regression, 'x' | 'y' | 'model'>, start: readonly number[]): LeastSquaresProblem => ({
  count: x.length,
  start,
  residuals: (b, out) => {
    for (let i = 0; i < x.length; i++) out[i] = model(b, x[i]!) - y[i]!
  },
})

/** Largest relative difference. */
const apart = (got: ArrayLike<number>, wanted: readonly number[]) => Math.max(...wanted.map((w, i) => Math.abs(got[i]! / w - 1)))

describe('certified non-linear regressions (NIST StRD), from both published starts', () => {
  for (const r of regressions) {
    for (const [k, start] of r.starts.entries()) {
      test(`${r.name}, start ${k + 1}`, () => {
        const fit = fitLeastSquares(problem(r, start))
        expect(fit.ended).toBe('converged')
        // The archive asks for six digits of a good program; a flat sum of squares hides the rest.
        expect(apart(fit.parameters, r.certified)).toBeLessThan(2e-7)
        expect(apart(fit.standardErrors, r.standardErrors)).toBeLessThan(5e-7)
        expect(apart([fit.sumOfSquares], [r.sumOfSquares])).toBeLessThan(1e-10)
        expect(fit.degreesOfFreedom).toBe(r.x.length - start.length)
        expect(fit.undetermined).toEqual([])
        expect(fit.atLimit).toEqual([])
      })
    }
  }
})

const times = Array.from({ length: 30 }, (_, i) => 0.2 * i)

describe('fitLeastSquares', () => {
  test('a straight line has the textbook covariance', () => {
    const x = [0, 1, 2, 3, 4, 5]
    const y = [1.1, 2.9, 5.2, 6.8, 9.1, 10.9]
    const fit = fitLeastSquares(problem({ x, y, model: (b, at) => b[0]! + b[1]! * at }, [0, 0]))
    const mean = 2.5
    const sxx = 17.5
    const slope = x.reduce((sum, v, i) => sum + (v - mean) * y[i]!, 0) / sxx
    const intercept = 6 - slope * mean
    const s2 = x.reduce((sum, v, i) => sum + (y[i]! - intercept - slope * v) ** 2, 0) / 4
    expect(fit.parameters[1]).toBeCloseTo(slope, 10)
    expect(fit.parameters[0]).toBeCloseTo(intercept, 10)
    expect(fit.covariance[3]).toBeCloseTo(s2 / sxx, 12)
    expect(fit.covariance[0]).toBeCloseTo(s2 * (1 / 6 + mean ** 2 / sxx), 12)
    expect(fit.covariance[1]).toBeCloseTo((-s2 * mean) / sxx, 12)
    expect(fit.covariance[2]).toBe(fit.covariance[1])
    expect(fit.iterations).toBeLessThan(15)
  })

  test('a known deviation of the residuals is used instead of the estimate', () => {
    const line = problem({ x: [0, 1, 2], y: [0, 1.1, 1.9], model: (b, at) => b[0]! * at }, [0])
    expect(fitLeastSquares({ ...line, sigma: 0.1 }).standardErrors[0]).toBeCloseTo(0.1 / Math.sqrt(5), 12)
  })

  test('exact data give back the parameters, whatever their scale', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.integer({ min: -9, max: 9 }),
        (a, k, decade) => {
          const size = a * 10 ** decade
          const y = times.map((t) => size * Math.exp(-k * t))
          const fit = fitLeastSquares(problem({ x: times, y, model: (b, t) => b[0]! * Math.exp(-b[1]! * t) }, [1.7 * size, 0.7 * k]))
          expect(apart(fit.parameters, [size, k])).toBeLessThan(1e-8)
        },
      ),
      { numRuns: 40 },
    )
  })

  test('the standard errors are those that repeated trials show', () => {
    const model = (b: Float64Array, t: number) => b[0]! * (1 - Math.exp(-t / b[1]!))
    const random = randomStream(11)
    const trials = Array.from({ length: 300 }, () => {
      const y = times.map((t) => 10 * (1 - Math.exp(-t / 1.5)) + random.normal(0, 0.1))
      return fitLeastSquares(problem({ x: times, y, model }, [8, 1]))
    })
    for (const j of [0, 1]) {
      const values = trials.map((f) => f.parameters[j]!)
      const mean = values.reduce((a, b) => a + b) / 300
      const scatter = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / 299)
      const told = trials.reduce((sum, f) => sum + f.standardErrors[j]!, 0) / 300
      // The scatter of 300 trials is itself known to about 4 %.
      expect(Math.abs(told / scatter - 1)).toBeLessThan(0.15)
    }
  })

  test('limits hold the parameters that press against them, and the rest still fit', () => {
    const y = times.map((t) => 3 * Math.exp(-t) + 0.5)
    const free = problem({ x: times, y, model: (b, t) => b[0]! * Math.exp(-b[1]! * t) + b[2]! }, [1, 0.5, 0])
    const fit = fitLeastSquares({ ...free, lower: [0, 0, 0], upper: [10, 10, 0.2] })
    expect(fit.atLimit).toEqual([2])
    expect(fit.parameters[2]).toBe(0.2)
    expect(fit.standardErrors[2]).toBe(0)
    // The same as fitting two parameters with the third fixed.
    const two = fitLeastSquares(problem({ x: times, y, model: (b, t) => b[0]! * Math.exp(-b[1]! * t) + 0.2 }, [1, 0.5]))
    expect(fit.parameters[0]).toBeCloseTo(two.parameters[0]!, 7)
    expect(fit.standardErrors[1]! / two.standardErrors[1]!).toBeCloseTo(28 / 28, 5)
    // A limit that does not press changes nothing.
    const wide = fitLeastSquares({ ...free, lower: [-9, -9, -9], upper: [9, 9, 9] })
    expect(wide.atLimit).toEqual([])
    expect(apart(wide.parameters, [3, 1, 0.5])).toBeLessThan(1e-8)
  })

  test('a parameter fixed by equal limits stays', () => {
    const y = times.map((t) => 2 * t + 1)
    const fit = fitLeastSquares({ ...problem({ x: times, y, model: (b, t) => b[0]! * t + b[1]! }, [1, 1]), lower: [-9, 1], upper: [9, 1] })
    expect(fit.parameters[0]).toBeCloseTo(2, 10)
    expect(fit.atLimit).toEqual([1])
  })

  test('tells which parameters cannot be told apart', () => {
    const y = times.map((t, i) => 6 * Math.exp(-t) + (i % 2 === 0 ? 0.01 : -0.01))
    // Only the product of the first two matters; the fourth has no effect at all.
    const fit = fitLeastSquares(problem({ x: times, y, model: (b, t) => b[0]! * b[1]! * Math.exp(-b[2]! * t) + 0 * b[3]! }, [2, 2, 0.5, 7]))
    expect(fit.ended).toBe('converged')
    expect(fit.rank).toBe(2)
    expect(fit.undetermined.map((u) => [...u.parameters]).sort()).toEqual([[0, 1], [3]])
    expect(fit.standardErrors[0]).toBe(Infinity)
    expect(fit.standardErrors[1]).toBe(Infinity)
    expect(fit.standardErrors[3]).toBe(Infinity)
    expect(fit.standardErrors[2]).toBeLessThan(0.01)
    expect(fit.parameters[0]! * fit.parameters[1]!).toBeCloseTo(6, 1)
    expect(fit.degreesOfFreedom).toBe(28)
  })

  test('a supplied Jacobian gives the same fit with fewer evaluations', () => {
    const r = regressions[0]!
    const plain = problem(r, r.starts[1]!)
    const given = fitLeastSquares({
      ...plain,
      jacobian: (b, out) => {
        for (let i = 0; i < r.x.length; i++) {
          const e = Math.exp(-b[1]! * r.x[i]!)
          out[2 * i] = 1 - e
          out[2 * i + 1] = b[0]! * r.x[i]! * e
        }
      },
    })
    expect(apart(given.parameters, r.certified)).toBeLessThan(2e-7)
    expect(given.evaluations).toBeLessThan(0.6 * fitLeastSquares(plain).evaluations)
  })

  test('says so when the iterations run out', () => {
    expect(fitLeastSquares({ ...problem(regressions[3]!, [25, 39, 41.5, 39]), maxIterations: 3 }).ended).toBe('limit')
  })

  test('refuses malformed problems', () => {
    const good = problem({ x: [0, 1], y: [0, 1], model: (b, t) => b[0]! * t }, [1])
    const refused: [Partial<LeastSquaresProblem>, string][] = [
      [{ start: [] }, 'badArgument'],
      [{ start: [1, 2, 3] }, 'badArgument'],
      [{ lower: [2] }, 'badArgument'],
      [{ upper: [1, 2] }, 'badArgument'],
      [{ start: [Number.NaN] }, 'badArgument'],
      [{ residuals: (_b, out) => out.fill(Number.NaN) }, 'notFinite'],
    ]
    for (const [change, reason] of refused)
      expect(() => fitLeastSquares({ ...good, ...change })).toThrowError(expect.objectContaining({ reason }))
  })
})
