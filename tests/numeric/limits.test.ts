// Edges of what is accepted, and answers that other tests only use.
import { describe, expect, test } from 'vitest'
import { findRoots, minimise, reciprocalGamma, solveNonStiff, triangularQuantile } from '../../src/numeric/index.js'
import { integrateWithError } from '../../src/numeric/integrate.js'

describe('edges', () => {
  test('a triangle may have its peak at either end', () => {
    // Half of the area of a right-angled triangle lies beyond the root of a half.
    expect(triangularQuantile(0.5, 0, 1, 1)).toBeCloseTo(Math.SQRT1_2, 15)
    expect(triangularQuantile(0.5, 0, 0, 1)).toBeCloseTo(1 - Math.SQRT1_2, 15)
  })

  test('one over gamma keeps its digits where gamma itself has none left', () => {
    // 30 digits of an arbitrary-precision library.
    expect(reciprocalGamma(-170.3) / -8.734173689594704e306).toBeCloseTo(1, 11)
  })

  test('a first step of zero is an error', () => {
    const derivative = (_t: number, _y: ArrayLike<number>, out: Float64Array) => void out.fill(1)
    const run = (firstStep: number) => solveNonStiff({ derivative, initial: [1], start: 0, end: 1, firstStep })
    expect(run(0.1).tEnd).toBe(1)
    expect(() => run(0)).toThrow('firstStep must be positive')
  })
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
