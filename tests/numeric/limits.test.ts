// Edges of what is accepted, and answers that other tests only use.
import { describe, expect, test } from 'vitest'
import { freedom } from '../../src/numeric/distributions.js'
import { findRoots, fitLeastSquares, minimise, reciprocalGamma, solveNonStiff, triangularQuantile } from '../../src/numeric/index.js'
import { integrateWithError } from '../../src/numeric/integrate.js'

describe('edges', () => {
  test('a triangle may have its peak at either end', () => {
    // Half of the area of a right-angled triangle lies beyond the root of a half.
    expect(triangularQuantile(0.5, 0, 1, 1)).toBeCloseTo(Math.SQRT1_2, 15)
    expect(triangularQuantile(0.5, 0, 0, 1)).toBeCloseTo(1 - Math.SQRT1_2, 15)
  })

  test('one over gamma keeps its digits where gamma itself has none left', () => {
    // 30 digits of an arbitrary-precision library.
    const known = [
      [-170.3, -8.734173689594704e306],
      [-170.7, -6.829996422928787e307],
      [-170.9, -7.29788115606793e307],
      [-170.99, -1.178593776545473e307],
    ]
    for (const [x, value] of known) expect(reciprocalGamma(x!) / value!).toBeCloseTo(1, 11)
  })

  test('a first step of zero is an error', () => {
    const derivative = (_t: number, _y: ArrayLike<number>, out: Float64Array) => void out.fill(1)
    const run = (firstStep: number) => solveNonStiff({ derivative, initial: [1], start: 0, end: 1, firstStep })
    expect(run(0.1).tEnd).toBe(1)
    expect(() => run(0)).toThrow('firstStep must be positive')
  })
})

test('degrees of freedom are positive', () => {
  for (const dof of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => freedom('test', dof)).toThrow('must be positive')
  expect(() => freedom('test', 0.5)).not.toThrow()
})

test('a root at the edge of a domain is found on either side of it', () => {
  for (const [f, root] of [
    [(x: number) => Math.sqrt(2 - x), 2],
    [(x: number) => Math.sqrt(x - 2), 2],
    [(x: number) => (2 - x) ** 1.5, 2],
    [(x: number) => Math.sqrt(-2 - x), -2],
  ] as const) {
    const { roots } = findRoots(f, -5, 5)
    expect(roots).toHaveLength(1)
    expect(roots[0]).toBeCloseTo(root, 9)
  }
})

test('a course stops where it is told to, in whatever order the times are given', () => {
  const derivative = (t: number, _y: ArrayLike<number>, out: Float64Array) => void out.fill(t < 0.2 ? 1 : t < 0.8 ? 2 : 3)
  const { t, yEnd } = solveNonStiff({ derivative, initial: [0], start: 0, end: 1, stops: [0.8, 0.2] })
  expect([...t]).toEqual([...t].sort((a, b) => a - b))
  expect([...t]).toEqual(expect.arrayContaining([0.2, 0.8]))
  // Jumps at the stops cost no digits: 0.2 + 2 · 0.6 + 3 · 0.2.
  expect(yEnd[0]).toBeCloseTo(2, 13)
})

describe('answers', () => {
  test('an integral counts its evaluations, and its error is never below rounding', () => {
    let calls = 0
    const counted = (x: number) => {
      calls++
      return x
    }
    const { value, error, evaluations } = integrateWithError(counted, -1, 1)
    expect(value).toBeCloseTo(0, 15)
    expect(evaluations).toBe(calls)
    // Parts of size 1 that cancel: an ulp of their size is left.
    expect(error).toBeGreaterThan(1e-16)
    expect(error).toBeLessThan(1e-14)
  })

  test('a function that is zero along a stretch has one interval and no single root there', () => {
    const { roots, intervals, poles } = findRoots((x) => Math.sign(x) * Math.max(0, Math.abs(x) - 1), -3, 3)
    expect([roots, poles]).toEqual([[], []])
    expect(intervals).toHaveLength(1)
    expect(intervals[0]![0]).toBeCloseTo(-1, 9)
    expect(intervals[0]![1]).toBeCloseTo(1, 9)
  })

  test('a search that starts on its upper limit finds the least inside', () => {
    const from = (start: number) =>
      minimise((x) => (x[0]! - 0.3) ** 2 + (x[1]! + 0.2) ** 2, [start, start], { lower: [-1, -1], upper: [1, 1] })
    for (const start of [-1, 1]) {
      const { x } = from(start)
      expect(x[0]).toBeCloseTo(0.3, 6)
      expect(x[1]).toBeCloseTo(-0.2, 6)
    }
  })
})

describe('a fit', () => {
  const t = [1, 2, 3, 4]
  const fitted = (of: (p: Float64Array, x: number, i: number) => number, start: number[]) =>
    fitLeastSquares({
      residuals: (p, out) => {
        for (const [i, x] of t.entries()) out[i] = of(p, x, i)
      },
      start,
      count: t.length,
    })

  test('that starts at its minimum takes no step', () => {
    const fit = fitted(([a, b], x) => a! + b! * x - (1 + 2 * x), [1, 2])
    expect([...fit.parameters]).toEqual([1, 2])
    expect([fit.ended, fit.iterations, fit.evaluations]).toEqual(['converged', 1, 5])
  })

  test('of a parameter without effect takes no step either', () => {
    const fit = fitted(([a]) => 1 + 0 * a!, [1])
    expect([fit.ended, fit.iterations, fit.rank]).toEqual(['converged', 1, 0])
  })

  test('tells how well a line is determined', () => {
    // The columns 1 and x have the cosine c = 10/(2 √30); singular values of two unit vectors are √(1 ± c).
    const c = 10 / (2 * Math.sqrt(30))
    expect(fitted(([a, b], x) => a! + b! * x - x * x, [0, 0]).condition).toBeCloseTo(Math.sqrt((1 + c) / (1 - c)), 6)
  })

  test('is the same in other units', () => {
    const measured = [18, 430, 8000, 163000]
    const growth = (unit: number) => fitted(([k], x, i) => Math.exp((k! / unit) * x) - measured[i]!, [2.5 * unit]).parameters[0]! / unit
    for (const unit of [1e-9, 1e9]) expect(growth(unit) / growth(1)).toBeCloseTo(1, 11)
  })

  test('names those that only their sum determines', () => {
    const { rank, undetermined } = fitted(([a, b, c], x) => (a! + b!) * x + c! - x * x, [1, 1, 1])
    expect(rank).toBe(2)
    expect(undetermined.map(({ parameters }) => parameters)).toEqual([[0, 1]])
    const [a, b, c] = undetermined[0]!.direction
    expect(a! + b!).toBeCloseTo(0, 9)
    expect(Math.abs(a!)).toBeCloseTo(Math.SQRT1_2, 9)
    expect(c).toBeCloseTo(0, 9)
  })
})

test('a search steps by a tenth of the start where nothing else is given, by a tenth at zero, and inwards from a limit', () => {
  const firstSteps = (start: number[], options: Parameters<typeof minimise>[2] = {}) => {
    const seen: number[][] = []
    const far = (x: Float64Array) => {
      seen.push([...x])
      return x.reduce((sum, each) => sum + (each - 9) ** 2, 0)
    }
    minimise(far, start, { ...options, maxEvaluations: 10, restarts: 0 })
    return seen.slice(1, 1 + start.length)
  }
  expect(firstSteps([0, 4])).toEqual([[0.1, 4], [0, 4.4]]) // biome-ignore format: rows
  const box = { lower: [-1], upper: [1] }
  expect(firstSteps([1], { ...box, step: [0.25] })).toEqual([[0.75]])
  expect(firstSteps([-1], { ...box, step: [0.25] })).toEqual([[-0.75]])
  expect(firstSteps([1], { ...box, step: [5] })).toEqual([[-1]])
})
