import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula, property } from '../../src/formula/index.js'
import { lognormal, normal, triangular, truncated, uncertainty, uniform } from '../../src/study/index.js'
import { InputError, N } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const sum = formula('test.sum', {
  inputs: { a: 'ratio', b: 'ratio', c: 'ratio', d: 'ratio' },
  output: 'ratio',
  source: memory,
  si: ({ a, b, c, d }) => a + b + c + d,
})
const product = formula('test.product', {
  inputs: { a: { kind: 'ratio', above: 0 }, inner: { fields: { b: { kind: 'ratio', above: 0 } } } },
  output: { product: 'ratio', inverse: 'ratio' },
  source: memory,
  si: ({ a, inner }) => ({ product: a * inner.b, inverse: 1 / (a * inner.b) }),
})

describe('published and exact cases', () => {
  // JCGM 101:2008, 9.2.2 and 9.2.3: four inputs of mean 0 and deviation 1, normal and rectangular; shortest 95 % interval ±3.92 and ±3.88.
  const half = Math.sqrt(3)
  test.each([
    ['normal', normal(0, 1), 3.92],
    ['rectangular', uniform(-half, half), 3.88],
  ] as const)('additive model with four %s inputs: deviation 2.00', (_, each, end) => {
    const { linear, monteCarlo: mc } = uncertainty(sum, { a: each, b: each, c: each, d: each }, { samples: 200_000 })
    expect(linear.deviation.si).toBeCloseTo(2, 9)
    for (const { value, error, exact } of [
      { ...mc.mean, exact: 0 },
      { ...mc.deviation, exact: 2 },
      { ...mc.median, exact: 0 },
    ])
      expect(Math.abs(value.si - exact)).toBeLessThan(4 * error.si)
    expect(Math.abs(mc.high.value.si - end)).toBeLessThan(0.005 + 4 * mc.high.error.si)
    expect(Math.abs(mc.shortest[1].si - mc.shortest[0].si - 2 * end)).toBeLessThan(0.05)
    expect(linear.contributions.map(({ share }) => share)).toEqual(Array(4).fill(expect.closeTo(0.25, 9)))
  })

  test('a product of lognormals is lognormal: its quantiles and moments are exact', () => {
    const [s, t] = [Math.log(1.2), Math.log(1.5)]
    const both = Math.hypot(s, t)
    const u = uncertainty(
      product,
      { a: lognormal(2, 1.2), inner: { b: lognormal(3, 1.5) } },
      { output: 'product', samples: 100_000, seed: 4 },
    )
    const { mean, deviation, median, low, high } = u.monteCarlo
    const exactMean = 6 * Math.exp(both ** 2 / 2)
    for (const [estimate, exact] of [
      [mean, exactMean],
      [deviation, exactMean * Math.sqrt(Math.expm1(both ** 2))],
      [median, 6],
      [low, 6 * Math.exp(-1.959963985 * both)],
      [high, 6 * Math.exp(1.959963985 * both)],
    ] as const) {
      expect(Math.abs(estimate.value.si - exact)).toBeLessThan(4 * estimate.error.si)
      expect(estimate.error.si / exact).toBeLessThan(0.01)
    }
  })

  test('slack tension under normal friction is lognormal; first order is the derivative', () => {
    const wrap = 6 * Math.PI
    const u = uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0.01), wrapAngle: '3 turn' }, { samples: 50_000 })
    const nominal = 500 * Math.exp(-0.2 * wrap)
    expect(u.linear.value.si).toBeCloseTo(nominal, 9)
    expect(u.linear.deviation.si / (nominal * wrap * 0.01)).toBeCloseTo(1, 9)
    const exact = nominal * Math.exp((0.01 * wrap) ** 2 / 2)
    expect(Math.abs(u.monteCarlo.mean.value.si - exact)).toBeLessThan(4 * u.monteCarlo.mean.error.si)
    // half of the results lie below the median, whatever the scale
    expect(u.probabilityBelow(N(nominal))).toBeCloseTo(0.5, 1)
  })

  test('correlation: deviations add when it is 1, cancel when it is −1, and draws agree', () => {
    const given = { a: normal(0, 3), b: normal(0, 4), c: 0, d: 0 } as const
    for (const [coefficient, exact] of [
      [1, 7],
      [0.5, Math.sqrt(9 + 16 + 12)],
      [0, 5],
      [-1, 1],
    ] as const) {
      const u = uncertainty(sum, given, { correlations: [{ between: ['a', 'b'], coefficient }], samples: 20_000 })
      expect(u.linear.deviation.si).toBeCloseTo(exact, 8)
      expect(Math.abs(u.monteCarlo.deviation.value.si - exact)).toBeLessThan(4 * u.monteCarlo.deviation.error.si)
    }
  })

  test('moments of every distribution agree with the textbook', () => {
    const one = (a: Parameters<typeof uncertainty<(typeof sum.def)['inputs'], 'ratio'>>[1]['a']) =>
      uncertainty(sum, { a, b: 0, c: 0, d: 0 })
    expect(one(uniform(2, 5)).linear.deviation.si).toBeCloseTo(3 / Math.sqrt(12), 9)
    // Triangular: variance (a²+b²+c²−ab−ac−bc)/18.
    expect(one(triangular(1, 2, 6)).linear.deviation.si).toBeCloseTo(Math.sqrt((1 + 4 + 36 - 2 - 6 - 12) / 18), 9)
    // Half-normal: mean √(2/π), variance 1 − 2/π.
    const cut = one(truncated(normal(0, 1), 0, 50))
    expect(cut.linear.value.si).toBeCloseTo(Math.sqrt(2 / Math.PI), 7)
    expect(cut.linear.deviation.si).toBeCloseTo(Math.sqrt(1 - 2 / Math.PI), 7)
    expect(Math.abs(cut.monteCarlo.mean.value.si - Math.sqrt(2 / Math.PI))).toBeLessThan(4 * cut.monteCarlo.mean.error.si)
  })
})

test('a property scatters over its range by default, in nested records too', () => {
  const friction = property('ratio', { typical: 0.14, low: 0.1, high: 0.18, source: { level: 'assumption', where: 'test' } })
  const u = uncertainty(slackTension, { load: '500 N', friction, wrapAngle: '1 turn' })
  expect(u.linear.contributions).toHaveLength(1)
  expect(u.linear.contributions[0]).toMatchObject({ path: 'friction', share: 1 })
  const { sorted } = u.monteCarlo
  expect(sorted[0]).toBeGreaterThan(500 * Math.exp(-0.18 * 2 * Math.PI))
  expect(sorted.at(-1)).toBeLessThan(500 * Math.exp(-0.1 * 2 * Math.PI))
  expect(u.toMarkdown()).toContain('triangular, 0.1 to 0.18, likeliest 0.14')
  expect(JSON.parse(JSON.stringify(u.chart))).toMatchObject({ title: 'Uncertainty of capstan.slackTension' })
  const nested = uncertainty(product, { a: 2, inner: { b: friction } }, { output: 'inverse' })
  expect(nested.linear.contributions[0]?.path).toBe('inner.b')
})

test('the same seed gives the same bytes; another seed does not', () => {
  const run = (seed: number) => uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0.02), wrapAngle: '1 turn' }, { seed })
  expect(run(7).toMarkdown()).toBe(run(7).toMarkdown())
  expect(run(7).monteCarlo.mean.value.si).not.toBe(run(8).monteCarlo.mean.value.si)
})

test('convergence is stated, with the draws it would take', () => {
  const given = { load: '500 N', friction: normal(0.2, 0.02), wrapAngle: '1 turn' } as const
  const few = uncertainty(slackTension, given, { samples: 500 })
  expect(few.monteCarlo.converged).toBe(false)
  expect(few.monteCarlo.samplesNeeded).toBeGreaterThan(500)
  expect(few.toMarkdown()).toContain('Not settled')
})

test('wide ranges over a bent formula: the draws are to be trusted, and it is said', () => {
  const u = uncertainty(slackTension, { load: '500 N', friction: uniform(0.05, 0.6), wrapAngle: '3 turn' })
  expect(u.remarks.join()).toContain('trust the draws')
})

test('a deviation scales with the spread of its only input, and widening never narrows', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 4, noNaN: true }), fc.double({ min: 1.01, max: 3, noNaN: true }), (spread, more) => {
      const of = (deviation: number) => uncertainty(sum, { a: normal(1, deviation), b: 0, c: 0, d: 0 }, { samples: 400 })
      expect(of(spread * more).linear.deviation.si / of(spread).linear.deviation.si).toBeCloseTo(more, 6)
      const [wide, narrow] = [of(spread * more).monteCarlo, of(spread).monteCarlo]
      expect(wide.deviation.value.si).toBeGreaterThan(narrow.deviation.value.si)
    }),
    { numRuns: 20 },
  )
})

test('a narrow distribution far from zero has its moments', () => {
  const far = uncertainty(slackTension, { load: truncated(normal('6818 MN', '1 N'), '0 N', '7000 MN'), friction: 0.2, wrapAngle: '0 deg' })
  // Doubles of this size are 1e-6 N apart, which the square of the width of 16 N turns into some 1e-4 of the variance.
  expect(far.linear.deviation.si).toBeCloseTo(1, 2)
})

test.each([
  [() => uncertainty(slackTension, { load: '500 N', friction: 0.2, wrapAngle: '3 turn' }), 'something uncertain'],
  [() => uncertainty(slackTension, { load: '500 N', friction: normal('5 N', 1) as never, wrapAngle: '3 turn' }), 'N is a unit of force'],
  [() => uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0.5), wrapAngle: '3 turn' }), 'cut it with truncated'],
  [() => uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0), wrapAngle: '3 turn' }), 'above zero'],
  [() => uncertainty(slackTension, { load: '500 N', friction: uniform(0.3, 0.2), wrapAngle: '3 turn' }), 'a lower and a higher end'],
  [
    () => uncertainty(slackTension, { load: '500 N', friction: { ...normal(0.2, 0.02), at: [] } as never, wrapAngle: '3 turn' }),
    'friction is an empty list; must be made by normal(…), with its values',
  ],
  [
    () => uncertainty(slackTension, { load: '500 N', friction: { ...uniform(0.1, 0.3), at: new Array(2) } as never, wrapAngle: '3 turn' }),
    'friction.uniform[0] is missing',
  ],
  [() => uncertainty(slackTension, { load: '500 N', friction: triangular(0.3, 0.2, 0.4), wrapAngle: '3 turn' }), 'likeliest value between'],
  [() => uncertainty(slackTension, { load: '500 N', friction: lognormal(0.2, 0.9), wrapAngle: '3 turn' }), 'above 1'],
  [() => uncertainty(slackTension, { load: '500 N', friction: truncated(normal(0.2, 0.01), 5, 6), wrapAngle: '3 turn' }), 'something left'],
  [() => uncertainty(product, { a: lognormal(2, 1.1), inner: { b: 1 } }, {} as never), 'must be one of product, inverse'],
  [() => uncertainty(product, { a: lognormal(2, 1.1), inner: { b: 1 } }, { output: 'produkt' as never }), 'did you mean product?'],
  [() => uncertainty(sum, { a: normal(0, 1), b: 0, c: 0, d: 0 }, { samples: 3, coverage: 2 }), '2 things to change'],
  [
    () => uncertainty(sum, { a: normal(0, 1), b: 0, c: 0, d: 0 }, { correlations: [{ between: ['a', 'b'], coefficient: 1 }] }),
    'two of the uncertain inputs a',
  ],
  [
    () =>
      uncertainty(
        sum,
        { a: normal(0, 1), b: normal(0, 1), c: normal(0, 1), d: 0 },
        {
          correlations: [
            { between: ['a', 'b'], coefficient: 0.9 },
            { between: ['b', 'c'], coefficient: 0.9 },
            { between: ['a', 'c'], coefficient: -0.9 },
          ],
        },
      ),
    'can hold together',
  ],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})

describe('draws until the figures settle', () => {
  const given = { a: normal(0, 1), b: normal(0, 1), c: normal(0, 1), d: normal(0, 1) }
  test('they go on until mean, deviation and ends are certain to the digits asked for, and are the draws of one run', () => {
    const once = uncertainty(sum, given, { samples: 2000 })
    expect(once.monteCarlo.converged).toBe(false)
    const settled = uncertainty(sum, given, { samples: 2000, digits: 1, untilSettled: true })
    const { converged, samples, digits, deviation, high, sorted } = settled.monteCarlo
    expect(converged).toBe(true)
    expect(digits).toBe(1)
    // One digit of a deviation of 2 is 1: twice every error is below 0.5.
    for (const { error } of [deviation, high]) expect(2 * error.si).toBeLessThanOrEqual(0.5)
    expect(samples).toBeLessThan(20_000)
    expect(sorted).toEqual(uncertainty(sum, given, { samples, digits: 1 }).monteCarlo.sorted)
  })
  test('two digits: the errors are below 0.05, and the ends those of JCGM 101, 9.2.2', () => {
    const { monteCarlo: mc } = uncertainty(sum, given, { untilSettled: true })
    expect(mc.converged).toBe(true)
    expect(mc.samples).toBeGreaterThan(10_000)
    for (const { error } of [mc.mean, mc.deviation, mc.low, mc.high]) expect(2 * error.si).toBeLessThanOrEqual(0.05)
    expect(Math.abs(mc.high.value.si - 3.92)).toBeLessThan(0.05)
    expect(Math.abs(mc.low.value.si + 3.92)).toBeLessThan(0.05)
  })
  test('a limit of draws ends them, and the answer says so', () => {
    const { monteCarlo: mc, ...rest } = uncertainty(sum, given, { samples: 200, digits: 3, untilSettled: 3000 })
    expect(mc.samples).toBe(3000)
    expect(mc.converged).toBe(false)
    expect(mc.samplesNeeded).toBeGreaterThan(3000)
    expect(Object.keys(rest)).toContain('linear')
  })
  test.each([
    [{ untilSettled: 0 as never }, 'untilSettled'],
    [{ untilSettled: 1e12 }, 'untilSettled'],
    [{ digits: 4 }, 'digits'],
    [{ samples: 1e12 }, 'samples'],
  ])('bad option %#', (options, path) => {
    expect(() => uncertainty(sum, given, options)).toThrow(InputError)
    expect(() => uncertainty(sum, given, options)).toThrow(path)
  })
})
