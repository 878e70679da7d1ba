import { describe, expect, test } from 'vitest'
import { lnBeta } from '../../src/numeric/beta.js'
import { regularisedGammaQ } from '../../src/numeric/gamma.js'
import * as numeric from '../../src/numeric/index.js'
import oracle from '../oracles/numeric-special.json' with { type: 'json' }

// Allowed relative error of each function against mpmath at 50 digits. Ten units in the last place where the function is well conditioned;
// more where digits are lost in the nature of the thing: tails of 1e-100 are exponentials of -230, whose last place is 230 times the rounding.
const RELATIVE = {
  erf: 5e-16,
  erfc: 6e-16,
  erfcScaled: 5e-16,
  gamma: 5e-16,
  lnGamma: 1e-15,
  regularisedGammaP: 6e-14,
  regularisedGammaQ: 6e-14,
  lnBeta: 1e-15,
  regularisedBeta: 2e-13,
  besselI0Scaled: 1e-15,
  besselI1Scaled: 1e-15,
  besselK0Scaled: 1e-15,
  besselK1Scaled: 1e-15,
  besselJ1Zero: 4e-16,
  normalCdf: 1e-15,
  normalQuantile: 1e-15,
  studentTCdf: 1e-13,
  chiSquareCdf: 3e-15,
  chiSquareQuantile: 2e-14,
} as const

type Rows = readonly (readonly number[])[]

const split = (row: readonly number[]) => ({ given: row.slice(0, -1), expected: row[row.length - 1]! })

function worst(name: string, allowed: (given: readonly number[], expected: number) => number): string[] {
  const f = ({ ...numeric, lnBeta, regularisedGammaQ } as unknown as Record<string, (...x: number[]) => number>)[name]!
  const wrong: string[] = []
  for (const row of (oracle as unknown as Record<string, Rows>)[name]!) {
    const { given, expected } = split(row)
    const got = f(...given)
    const error = Math.abs(got - expected)
    if (!(error <= allowed(given, expected))) wrong.push(`${name}(${given.join(', ')}) = ${got}, expected ${expected}, error ${error}`)
  }
  return wrong
}

describe('special functions against mpmath', () => {
  for (const [name, tolerance] of Object.entries(RELATIVE)) {
    test(`${name} within ${tolerance}`, () => {
      // Below the smallest normal number only the absolute size can be held.
      expect(worst(name, (_, expected) => tolerance * Math.abs(expected) + 1e-320)).toEqual([])
    })
  }

  test('Bessel functions that cross zero keep their absolute error', () => {
    const allowed = (given: readonly number[]) => 3e-16 + 2e-16 * Math.abs(given[0]!) ** 0.5
    expect(worst('besselJ0', allowed)).toEqual([])
    expect(worst('besselJ1', allowed)).toEqual([])
  })

  test('Student’s t quantile: full digits, fewer with thousands of degrees of freedom, where the incomplete beta function has fewer', () => {
    expect(worst('studentTQuantile', ([, dof], e) => (dof! > 1000 ? 2e-13 : 1e-14) * Math.abs(e))).toEqual([])
  })

  test('Mittag-Leffler function within the error its page states', () => {
    expect(worst('mittagLeffler', ([, , z], e) => 2e-13 * Math.abs(e) + (z! < -1 ? 5e-14 / (1 - z!) : 0))).toEqual([])
    expect(worst('mittagLeffler', ([, , z], e) => (z! > -1 ? 2e-14 * Math.abs(e) : Infinity))).toEqual([])
  })

  test('every function of the oracle is tested', () => {
    const tested = new Set<string>([...Object.keys(RELATIVE), 'besselJ0', 'besselJ1', 'studentTQuantile', 'mittagLeffler', 'mpmath'])
    expect(Object.keys(oracle).filter((name) => !tested.has(name))).toEqual([])
  })
})

describe('special functions against handbook values', () => {
  // Level 'unverified': values believed to stand in M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), quoted without
  // the book open; tolerance half a unit of the last digit. The digits that count are mpmath's, above.
  const printed: readonly [string, number, number, number][] = [
    ['erf(0.5), table 7.1', numeric.erf(0.5), 0.5204998778, 10],
    ['erf(1), table 7.1', numeric.erf(1), 0.8427007929, 10],
    ['erf(2), table 7.1', numeric.erf(2), 0.995322265, 10],
    ['J0(1), table 9.1', numeric.besselJ0(1), 0.765197686558, 12],
    ['J0(5), table 9.1', numeric.besselJ0(5), -0.177596771314, 12],
    ['J1(1), table 9.1', numeric.besselJ1(1), 0.4400505857, 10],
    ['first zero of J1, table 9.5', numeric.besselJ1Zero(1), 3.83171, 5],
    ['second zero of J1, table 9.5', numeric.besselJ1Zero(2), 7.01559, 5],
    ['gamma(1.5), table 6.1', numeric.gamma(1.5), 0.8862269255, 10],
    ['normal distribution at 1, table 26.1', numeric.normalCdf(1), 0.841344746068543, 15],
    ['t, 97.5 %, 10 degrees, table 26.10', numeric.studentTQuantile(0.975, 10), 2.228, 3],
    ['t, 99.5 %, 4 degrees, table 26.10', numeric.studentTQuantile(0.995, 4), 4.604, 3],
    ['chi-square, 95 %, 10 degrees, table 26.8', numeric.chiSquareQuantile(0.95, 10), 18.307, 3],
  ]
  for (const [what, got, expected, digits] of printed) {
    test(what, () => expect(Math.abs(got - expected)).toBeLessThanOrEqual(0.5000001 * 10 ** -digits))
  }
})

describe('identities', () => {
  test('Mittag-Leffler functions that have other names', () => {
    for (const x of [0.1, 0.9, 1.5, 4, 25]) {
      expect(numeric.mittagLeffler(0.5, 1, -x) / numeric.erfcScaled(x)).toBeCloseTo(1, 12)
      expect(numeric.mittagLeffler(1, 1, -x)).toBe(Math.exp(-x))
      expect(numeric.mittagLeffler(1, 2, -x)).toBeCloseTo((1 - Math.exp(-x)) / x, 14)
    }
  })

  test('Mittag-Leffler is smooth across the borders between its methods', () => {
    // Second differences of a smooth function over a step of 1e-4 are tiny; a jump between methods would show undiminished.
    for (const alpha of [0.2, 0.45, 0.7, 0.9]) {
      for (const border of [-1, -(60 ** alpha), 40 ** alpha]) {
        const h = 1e-4 * Math.abs(border)
        const [a, b, c] = [-1, 0, 1].map((k) => numeric.mittagLeffler(alpha, 1, border + (k + 0.5) * h)) as [number, number, number]
        const second = Math.abs(a - 2 * b + c) / Math.abs(b)
        expect(second).toBeLessThan(border > 0 ? 1e-3 : 2e-7)
      }
    }
  })

  test('Wronskian I0 K1 + I1 K0 = 1/x (Abramowitz & Stegun 9.6.15)', () => {
    for (const x of [1e-6, 0.5, 1.999, 2.001, 7.9, 8.1, 300, 1e5]) {
      const w = numeric.besselI0Scaled(x) * numeric.besselK1Scaled(x) + numeric.besselI1Scaled(x) * numeric.besselK0Scaled(x)
      expect(w * x).toBeCloseTo(1, 14)
    }
  })

  test('quantiles invert their distributions', () => {
    for (const p of [1e-9, 0.01, 0.3, 0.5, 0.8, 0.999]) {
      expect(numeric.normalCdf(numeric.normalQuantile(p)) / p).toBeCloseTo(1, 13)
      expect(numeric.studentTCdf(numeric.studentTQuantile(p, 3), 3) / p).toBeCloseTo(1, 11)
      expect(numeric.chiSquareCdf(numeric.chiSquareQuantile(p, 7), 7) / p).toBeCloseTo(1, 11)
    }
  })

  test('triangular and cut-off normal quantiles', () => {
    // Half of the area of the triangle 0, 1, 4 lies below 4 - sqrt(6).
    expect(numeric.triangularQuantile(0.5, 0, 1, 4)).toBeCloseTo(4 - Math.sqrt(6), 14)
    expect(numeric.triangularQuantile(0.25, 0, 1, 4)).toBeCloseTo(1, 14)
    expect(numeric.truncatedNormalQuantile(0.5, 3, 2, 1, 5)).toBeCloseTo(3, 14)
    // Far in the upper tail the cut normal is nearly exponential with rate 30: the median lies about ln 2/30 beyond the cut.
    const median = numeric.truncatedNormalQuantile(0.5, 0, 1, 30, Infinity)
    expect(numeric.normalCdf(-median) / numeric.normalCdf(-30)).toBeCloseTo(0.5, 11)
    expect(numeric.lognormalQuantile(0.5, Math.log(7), 0.3)).toBeCloseTo(7, 14)
  })
})

describe('arguments outside the domain', () => {
  const outside: readonly [string, () => number][] = [
    ['gamma at a pole', () => numeric.gamma(-2)],
    ['lnGamma of zero', () => numeric.lnGamma(0)],
    ['lnGamma of NaN', () => numeric.lnGamma(Number.NaN)],
    ['K0 of zero', () => numeric.besselK0Scaled(0)],
    ['K1 of a negative number', () => numeric.besselK1Scaled(-1)],
    ['normal quantile of 1', () => numeric.normalQuantile(1)],
    ['t quantile of 0', () => numeric.studentTQuantile(0, 5)],
    ['t with no degrees of freedom', () => numeric.studentTCdf(1, 0)],
    ['chi-square quantile with NaN', () => numeric.chiSquareQuantile(0.5, Number.NaN)],
    ['incomplete beta beyond 1', () => numeric.regularisedBeta(1.1, 2, 3)],
    ['incomplete gamma of a negative number', () => numeric.regularisedGammaP(2, -1)],
    ['Mittag-Leffler with alpha above 1', () => numeric.mittagLeffler(1.1, 1, 1)],
    ['Mittag-Leffler too large for a number', () => numeric.mittagLeffler(0.5, 1, 30)],
    ['cut-off normal with an interval beyond all probability', () => numeric.truncatedNormalQuantile(0.5, 0, 1, 50, 60)],
  ]
  for (const [what, call] of outside) {
    test(what, () => expect(call).toThrowError(expect.objectContaining({ name: 'NumericError', reason: 'outOfRange' })))
  }

  test('the message says what was asked', () => {
    expect(() => numeric.normalQuantile(1.5)).toThrow('normalQuantile: a probability must lie between 0 and 1 (p = 1.5)')
  })

  test('1/gamma is zero at the poles and overflow is not a number made up', () => {
    expect(numeric.reciprocalGamma(-3)).toBe(0)
    expect(numeric.reciprocalGamma(200)).toBe(0)
    expect(numeric.gamma(172)).toBe(Infinity)
  })
})
