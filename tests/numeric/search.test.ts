import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { besselJ0, bracketRoot, findRoots, integrate, minimise, minimiseScalar } from '../../src/numeric/index.js'
import { integrateWithError } from '../../src/numeric/integrate.js'

const reason = (why: string) => expect.objectContaining({ name: 'NumericError', reason: why })

const counted = (f: (x: number) => number) => {
  let count = 0
  return {
    f: (x: number) => {
      count++
      return f(x)
    },
    calls: () => count,
  }
}

describe('bracketRoot', () => {
  // Test functions of G. E. Alefeld, F. A. Potra, Y. Shi, ACM TOMS 21 (1995) 327: flat, steep, high multiplicity, near-pole.
  const cases: [string, (x: number) => number, number, number, number, number][] = [
    ['sin x - x/2', (x) => Math.sin(x) - x / 2, Math.PI / 2, Math.PI, 1.895494267033981, 1e-15],
    ['x^20 - 0.2', (x) => x ** 20 - 0.2, 0, 5, 0.2 ** (1 / 20), 1e-15],
    ['(1 + (1-5)^2) x^2 - (1 - 5x)^2', (x) => 17 * x * x - (1 - 5 * x) ** 2, 0, 1, 1 / (5 + Math.sqrt(17)), 1e-15],
    ['a steep exponential against a flat power', (x) => Math.exp(-20 * x) * (x - 1) + x ** 20, 0, 1, 0.551785299, Number.NaN],
    ['x^9, a ninefold root', (x) => x ** 9, -1, 10, 0, 1e-13],
    ['a step', (x) => (x < 0.3 ? -1 : x - 0.3 + 1e-9), 0, 1, 0.3, 1e-15],
    ['tiny scale', (x) => x - 1e-200, 0, 1e-190, 1e-200, 1e-214],
    ['huge scale', (x) => x - 3e150, 0, 1e160, 3e150, 1e136],
  ]
  for (const [what, f, lo, hi, root, tolerance] of cases) {
    test(what, () => {
      const { f: g, calls } = counted(f)
      const x = bracketRoot(g, lo, hi, { maxEvaluations: 400 })
      if (Number.isNaN(tolerance)) expect(Math.abs(f(x))).toBeLessThan(1e-15)
      else expect(Math.abs(x - root)).toBeLessThanOrEqual(tolerance)
      // The ninefold root and the interval 1e360 times wider than its root take longest.
      expect(calls()).toBeLessThan(400)
    })
  }

  test('a smooth root takes few evaluations', () => {
    const { f, calls } = counted((x) => Math.cos(x) - x)
    bracketRoot(f, 0, 1)
    expect(calls()).toBeLessThan(12)
  })

  test('finds the root of any rising cubic to the last places', () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), fc.double({ min: 1e-3, max: 10, noNaN: true }), (root, slope) => {
        const x = bracketRoot((at) => (at - root) * (slope + (at - root) ** 2), root - 7, root + 11)
        expect(Math.abs(x - root)).toBeLessThanOrEqual(1e-15 * Math.abs(root) + 1e-15)
      }),
    )
  })

  test('ends that are roots are returned as they are, either order of ends works', () => {
    expect(bracketRoot((x) => x - 2, 2, 3)).toBe(2)
    expect(bracketRoot((x) => x - 3, 2, 3)).toBe(3)
    expect(bracketRoot((x) => x - 2.5, 3, 2)).toBe(2.5)
  })

  test('refuses what it cannot do, with the numbers', () => {
    expect(() => bracketRoot((x) => x * x + 1, -1, 2)).toThrowError(reason('noBracket'))
    expect(() => bracketRoot((x) => x * x + 1, -1, 2)).toThrow(
      'bracketRoot: the function has the same sign at both ends (lo = -1, hi = 2, fLo = 2, fHi = 5)',
    )
    expect(() => bracketRoot((x) => Math.log(x), -1, 2)).toThrowError(reason('notFinite'))
    expect(() => bracketRoot((x) => (x > 0.2 && x < 0.9 ? Number.NaN : x - 0.5), 0, 1)).toThrowError(reason('notFinite'))
    expect(() => bracketRoot((x) => x, -Infinity, 1)).toThrowError(reason('badArgument'))
    expect(() => bracketRoot((x) => Math.atan(x - 0.1), -1, 1e30, { maxEvaluations: 5 })).toThrowError(reason('noConvergence'))
  })

  test('tolerances end the search early', () => {
    const loose = counted((x) => Math.exp(x) - 2)
    expect(Math.abs(bracketRoot(loose.f, 0, 5, { xTolerance: 0.01 }) - Math.LN2)).toBeLessThan(0.01)
    const tight = counted((x) => Math.exp(x) - 2)
    bracketRoot(tight.f, 0, 5)
    expect(loose.calls()).toBeLessThan(tight.calls())
  })
})

describe('findRoots', () => {
  test('zeros of J0 (Abramowitz & Stegun, table 9.5)', () => {
    const { roots, poles } = findRoots(besselJ0, 0, 12)
    expect(roots.map((x) => x.toFixed(5))).toEqual(['2.40483', '5.52008', '8.65373', '11.79153'])
    expect(poles).toEqual([])
  })

  test('tells roots from poles and jumps', () => {
    const { roots, poles } = findRoots(Math.tan, 0.5, 10)
    expect(roots).toHaveLength(3)
    for (const [k, x] of roots.entries()) expect(x).toBeCloseTo((k + 1) * Math.PI, 14)
    for (const [k, x] of poles.entries()) expect(x).toBeCloseTo((k + 0.5) * Math.PI, 5)
    expect(poles).toHaveLength(3)
    expect(findRoots((x) => 1 / (x - 0.123), -1, 1).roots).toEqual([])
    expect(findRoots((x) => (x < 0.123 ? -1 : 1), -1, 1).poles).toHaveLength(1)
    // A steep root is a root, an odd triple root too, and so is one of infinite slope.
    expect(findRoots((x) => Math.tanh(1e5 * (x - 0.3)), -1, 1).roots).toEqual([expect.closeTo(0.3, 12)])
    expect(findRoots((x) => (x - 0.3) ** 3, -1, 1).roots).toEqual([expect.closeTo(0.3, 4)])
    expect(findRoots((x) => Math.cbrt(x - 0.3), -1, 1).roots).toEqual([expect.closeTo(0.3, 12)])
  })

  test('scans past parts where the function is undefined, and by ratio', () => {
    expect(findRoots((x) => Math.log(x), -1, 3).roots).toEqual([expect.closeTo(1, 14)])
    expect(findRoots((x) => Math.log10(x) + 4.5, 1e-9, 1, { spacing: 'log', samples: 20 }).roots).toEqual([expect.closeTo(10 ** -4.5, 14)])
  })

  test('a root beside the edge of the domain is found, and one at the edge', () => {
    expect(findRoots((x) => Math.sqrt(x - 0.05) - 0.1, -1, 1, { samples: 10 }).roots).toEqual([expect.closeTo(0.06, 14)])
    expect(findRoots((x) => Math.sqrt(0.05 - x) - 0.1, -1, 1, { samples: 10 }).roots).toEqual([expect.closeTo(0.04, 14)])
    for (const power of [0.25, 1 / 3, 0.5, 1, 1.5, 3])
      for (const sign of [1, -1]) {
        const { roots } = findRoots((x) => (sign * x < 0.05 ? Number.NaN : (sign * x - 0.05) ** power), -1, 1, { samples: 10 })
        expect(roots).toEqual([expect.closeTo(sign * 0.05, 12)])
      }
    // A domain that ends away from zero, or where the function has no limit, has no root there.
    expect(findRoots((x) => Math.sqrt(x - 0.05) + 1e-3, -1, 1, { samples: 10 }).roots).toEqual([])
    expect(findRoots((x) => Math.log(x - 0.05) - 9, -1, 1, { samples: 10 }).roots).toEqual([])
    // A touching root between the edge and the first sample inside.
    expect(findRoots((x) => (x < 0.05 ? Number.NaN : (x - 0.1) ** 2), -1, 1, { samples: 10 }).roots).toEqual([expect.closeTo(0.1, 7)])
  })

  test.each([
    ['x^3', (x: number) => x ** 3],
    ['x |x|', (x: number) => x * Math.abs(x)],
    ['atan^3', (x: number) => Math.atan(x) ** 3],
    ['x^9', (x: number) => x ** 9],
    ['cube root', Math.cbrt],
  ])('%s on a range that is not symmetric has its root at zero, to the last bit', (_, f) => {
    for (const [lo, hi] of [
      [-1, 2],
      [-1, 2.5],
      [-3, 1],
      [-1e-9, 7],
    ] as const)
      expect(findRoots(f, lo, hi, { samples: 100 })).toEqual({ roots: [0], intervals: [], poles: [] })
    const { roots } = findRoots((x) => f(x - 0.3), -1, 2, { samples: 100 })
    expect(roots).toHaveLength(1)
    expect(Math.abs(roots[0]! - 0.3)).toBeLessThan(1e-12)
  })

  test('roots that touch zero, and close pairs, wherever they lie between the samples', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 4.99, noNaN: true }), fc.integer({ min: 5, max: 60 }), (root, samples) => {
        const touch = (f: (x: number) => number) => findRoots(f, 0, 5, { samples }).roots
        expect(touch((x) => (x - root) ** 2)).toEqual([expect.closeTo(root, 6)])
        expect(touch((x) => -((x - root) ** 2))).toEqual([expect.closeTo(root, 6)])
        expect(touch((x) => Math.abs(x - root))).toEqual([expect.closeTo(root, 6)])
        expect(touch((x) => (x - root) ** 2 + 1e-6)).toEqual([])
        const pair = touch((x) => (x - root) ** 2 - 1e-6)
        expect(pair).toEqual([root - 1e-3, root + 1e-3].map((x) => expect.closeTo(x, 10)))
      }),
      { seed: 3, numRuns: 60 },
    )
  })

  test('a range of zeros is an interval, its ends to the last places', () => {
    const flat = findRoots((x) => Math.max(0, x - 1) + Math.min(0, x + 0.3), -2, 3, { samples: 50 })
    expect(flat.intervals).toHaveLength(1)
    expect(flat.intervals[0]).toEqual([expect.closeTo(-0.3, 14), expect.closeTo(1, 14)])
    expect(flat.roots).toEqual([])
    expect(findRoots((x) => Math.max(0, x - 1), -2, 3).intervals).toEqual([[-2, expect.closeTo(1, 14)]])
    expect(findRoots(() => 0, -2, 3).intervals).toEqual([[-2, 3]])
    // Values within their rounding error are zero.
    expect(findRoots((x) => Math.max(0, x - 1) + 1e-15 * Math.sin(1e9 * x), -2, 3, { noise: 2e-15 }).intervals).toHaveLength(1)
    // A root that is flat over a small part of a cell is a point.
    expect(findRoots((x) => x ** 4 * Math.sign(x), -1, 1, { noise: 1e-15 })).toEqual({ roots: [0], intervals: [], poles: [] })
  })

  test('a jump is none, however small it is against the slope beside it', () => {
    const { roots, poles } = findRoots((x) => x - 0.3 + (x < 0.3 ? -1e-4 : 1e-4), -1, 1)
    expect(roots).toEqual([])
    expect(poles).toEqual([expect.closeTo(0.3, 9)])
  })

  test('a root on a sample point is reported once', () => {
    expect(findRoots((x) => x - 0.5, 0, 1, { samples: 2 }).roots).toEqual([0.5])
    expect(findRoots((x) => x, 0, 1).roots).toEqual([0])
    expect(findRoots((x) => x - 1, 0, 1).roots).toEqual([1])
  })

  test('finds every root of a product of well separated factors', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: -20, max: 20 }), { minLength: 1, maxLength: 6 }), (whole) => {
        const wanted = whole.map((k) => k + 0.37).sort((a, b) => a - b)
        const { roots, poles } = findRoots((x) => wanted.reduce((product, r) => product * (x - r), 1), -21, 21, { samples: 100 })
        expect(poles).toEqual([])
        expect(roots.length).toBe(wanted.length)
        for (const [i, r] of roots.entries()) expect(Math.abs(r - wanted[i]!)).toBeLessThan(1e-12)
      }),
      { numRuns: 30 },
    )
  })

  test('refuses malformed scans', () => {
    expect(() => findRoots(Math.sin, 1, 1)).toThrowError(reason('badArgument'))
    expect(() => findRoots(Math.sin, 0, 1, { samples: 0 })).toThrowError(reason('badArgument'))
    expect(() => findRoots(Math.sin, 0, 1, { spacing: 'log' })).toThrowError(reason('badArgument'))
  })
})

describe('minimiseScalar', () => {
  test('inside, at the ends, and where the valley is not smooth', () => {
    expect(minimiseScalar((x) => x * Math.log(x), 1e-3, 2).x).toBeCloseTo(1 / Math.E, 7)
    expect(minimiseScalar((x) => x, 2, 3).x).toBe(2)
    expect(minimiseScalar((x) => -x, 2, 3).x).toBe(3)
    expect(minimiseScalar((x) => Math.abs(x - 0.7), 0, 1).x).toBeCloseTo(0.7, 7)
    expect(minimiseScalar((x) => (x < 0.4 ? Infinity : (x - 0.5) ** 2), 0, 1).x).toBeCloseTo(0.5, 7)
  })

  test('finds the bottom of any parabola', () => {
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), fc.double({ min: 0.1, max: 100, noNaN: true }), (at, curvature) => {
        const found = minimiseScalar((x) => curvature * (x - at) ** 2 + 3, -10, 10)
        // Values tell a place no better than the square root of rounding: 3e-16 · 3/curvature.
        expect(Math.abs(found.x - at)).toBeLessThan(2e-7 + Math.sqrt(4e-15 / curvature))
      }),
    )
  })

  test('refuses', () => {
    expect(() => minimiseScalar(Math.sin, 1, 0)).toThrowError(reason('badArgument'))
    expect(() => minimiseScalar(() => Number.NaN, 0, 1)).toThrowError(reason('notFinite'))
  })
})

describe('minimise', () => {
  const start = (n: number) => Float64Array.from({ length: n }, (_, i) => (i % 2 === 0 ? -1.2 : 1))
  const valley = (p: Float64Array) => {
    let sum = 0
    for (let i = 0; i + 1 < p.length; i++) sum += 100 * (p[i + 1]! - p[i]! ** 2) ** 2 + (1 - p[i]!) ** 2
    return sum
  }

  test("Rosenbrock's valley in 2, 3 and 5 variables (J. J. Moré et al., ACM TOMS 7 (1981) 17)", () => {
    for (const n of [2, 3, 5]) {
      const found = minimise(valley, n === 5 ? new Float64Array(5).fill(0.5) : start(n), { maxEvaluations: 20_000 })
      expect(found.converged).toBe(true)
      for (const x of found.x) expect(x).toBeCloseTo(1, 5)
    }
  })

  test("Powell's singular function, whose second derivatives vanish at the minimum", () => {
    const found = minimise(
      ([a, b, c, d]) => (a! + 10 * b!) ** 2 + 5 * (c! - d!) ** 2 + (b! - 2 * c!) ** 4 + 10 * (a! - d!) ** 4,
      [3, -1, 0, 1],
      { maxEvaluations: 20_000 },
    )
    expect(found.value).toBeLessThan(1e-12)
  })

  test('a minimum pressed against limits is found on them', () => {
    const found = minimise(([x, y]) => (x! - 3) ** 2 + (y! + 2) ** 2 + x! * y! * 0.1, [0, 0], { lower: [-1, -1], upper: [1, 5] })
    expect(found.x[0]).toBe(1)
    expect(found.x[1]).toBe(-1)
    const corner = minimise(([x, y]) => -x! - y!, [1, 1], { lower: [0, 0], upper: [1, 1] })
    expect([...corner.x]).toEqual([1, 1])
  })

  test('a forbidden region may be infinite', () => {
    const found = minimise(([x, y]) => (x! + y! < 1 ? Infinity : x! ** 2 + 2 * y! ** 2), [2, 2])
    expect(found.value).toBeCloseTo(2 / 3, 4)
  })

  test('says so when the evaluations run out', () => {
    expect(minimise(valley, [-1.2, 1], { maxEvaluations: 30 }).converged).toBe(false)
  })

  test('refuses', () => {
    expect(() => minimise(valley, [2, 2], { upper: [1, 1] })).toThrowError(reason('badArgument'))
    expect(() => minimise(valley, [2, 2], { upper: [1] })).toThrowError(reason('badArgument'))
    expect(() => minimise(valley, [])).toThrowError(reason('badArgument'))
    expect(() => minimise(() => Infinity, [1])).toThrowError(reason('notFinite'))
  })
})

describe('integrate', () => {
  // Closed forms, most from R. Piessens et al., QUADPACK (1983), ch. 4.
  const cases: [string, (x: number) => number, number, number, number][] = [
    ['exp on a finite interval', Math.exp, 0, 2, Math.expm1(2)],
    ['an end singularity of the logarithm', (x) => Math.sqrt(x) * Math.log(1 / x), 0, 1, 4 / 9],
    ['x^-0.5', (x) => x ** -0.5, 0, 1, 2],
    ['a sharp peak', (x) => 1e-3 / ((x - 0.3) ** 2 + 1e-6), 0, 1, Math.atan(700) + Math.atan(300)],
    ['an oscillation', (x) => Math.cos(100 * Math.sin(x)), 0, Math.PI, Math.PI * besselJ0(100)],
    ['Gauss over the whole line', (x) => Math.exp(-x * x), -Infinity, Infinity, Math.sqrt(Math.PI)],
    ['a far tail', (x) => Math.exp(-x), 5, Infinity, Math.exp(-5)],
    ['from minus infinity', (x) => Math.exp(3 * x), -Infinity, 1, Math.exp(3) / 3],
    ['an algebraic tail', (x) => 1 / (1 + x * x), -Infinity, Infinity, Math.PI],
    ['Planck', (x) => (x === 0 ? 0 : x ** 3 / Math.expm1(x)), 0, Infinity, Math.PI ** 4 / 15],
    ['a kink at a breakpoint away from the middle', (x) => Math.abs(x - 0.37), 0, 1, 0.37 ** 2 / 2 + 0.63 ** 2 / 2],
  ]
  for (const [what, f, lo, hi, exact] of cases) {
    test(what, () => {
      const { value, error } = integrateWithError(f, lo, hi, { relativeTolerance: 1e-11, breakpoints: [0.37], maxEvaluations: 60_000 })
      expect(Math.abs(value - exact)).toBeLessThan(1e-11 * Math.abs(exact) + 1e-15)
      expect(error).toBeLessThan(2e-11 * Math.abs(exact) + 1e-14)
    })
  }

  test('polynomials up to degree 22 are exact in one panel', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 22 }), (degree) => {
        const { f, calls } = counted((x) => x ** degree)
        // A wide tolerance keeps the error estimate, which knows only degree 13, from asking for more.
        expect(integrate(f, 0, 1, { relativeTolerance: 0.5 })).toBeCloseTo(1 / (degree + 1), 14)
        expect(calls()).toBe(15)
      }),
    )
  })

  test('reversed and empty intervals, nested integrals', () => {
    expect(integrate(Math.cos, 1, 0)).toBe(-integrate(Math.cos, 0, 1))
    expect(integrate(Math.cos, 1, 1)).toBe(0)
    expect(integrate((x) => integrate((y) => x * y, 0, x), 0, 1)).toBeCloseTo(1 / 8, 12)
  })

  test('refuses divergence and nonsense', () => {
    expect(() => integrate((x) => 1 / x, 0, 1)).toThrowError(reason('noConvergence'))
    expect(() => integrate((x) => 1 / x, 1, Infinity)).toThrowError(reason('noConvergence'))
    expect(() => integrate((x) => Math.log(x), -1, 1)).toThrowError(reason('notFinite'))
    expect(() => integrate(Math.sin, 0, Number.NaN)).toThrowError(reason('badArgument'))
  })
})
