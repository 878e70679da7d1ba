import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula, property } from '../../src/formula/index.js'
import { normal, sensitivity, uniform, varianceShares } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const x = 'ratio'

/** T. Ishigami, T. Homma, ISUMA '90 (1990) 398: sin x + a sin² y + b z⁴ sin x on (−π, π)³. */
const ishigami = formula('test.ishigami', {
  inputs: { x, y: x, z: x },
  output: 'ratio',
  source: memory,
  si: ({ x, y, z }) => Math.sin(x) + 7 * Math.sin(y) ** 2 + 0.1 * z ** 4 * Math.sin(x),
})
/** I. M. Sobol', g function: product of (|4x − 2| + a)/(1 + a) on the unit cube. */
const A = [0, 1, 4.5, 9, 99, 99] as const
const g = formula('test.g', {
  inputs: { a: x, b: x, c: x, d: x, e: x, f: x },
  output: 'ratio',
  source: memory,
  si: ({ a, b, c, d, e, f }) => [a, b, c, d, e, f].reduce((product, xi, i) => (product * (Math.abs(4 * xi - 2) + A[i]!)) / (1 + A[i]!), 1),
})
const power = formula('test.power', {
  inputs: { a: { kind: 'ratio', min: 0 }, inner: { fields: { b: 'ratio', warm: 'temperature' } } },
  output: { value: 'ratio', other: 'ratio' },
  source: memory,
  si: ({ a, inner }) => ({ value: 5 * a ** 3 * inner.b ** -2 * (inner.warm / 300), other: Math.sqrt(a) }),
})

describe('shares of the variance against closed forms', () => {
  const all = uniform(-Math.PI, Math.PI)
  test('Ishigami', () => {
    const shares = varianceShares(ishigami, { x: all, y: all, z: all }, { samples: 1024 })
    // Closed form: Vx = (1 + bπ⁴/5)²/2, Vy = a²/8, Vxz = b²π⁸(1/18 − 1/50).
    const vx = 0.5 * (1 + (0.1 * Math.PI ** 4) / 5) ** 2
    const vy = 49 / 8
    const vxz = 0.01 * Math.PI ** 8 * (1 / 18 - 1 / 50)
    const v = vx + vy + vxz
    const exact = { x: [vx / v, (vx + vxz) / v], y: [vy / v, vy / v], z: [0, vxz / v] } as const
    // The values usually printed: 0.3139, 0.4424, 0 and 0.5576, 0.4424, 0.2437.
    expect(exact.x[0]).toBeCloseTo(0.3139, 4)
    expect(exact.z[1]).toBeCloseTo(0.2437, 4)
    for (const { path, first, total } of shares.inputs) {
      const [s, t] = exact[path as 'x']
      expect(Math.abs(first.value - s)).toBeLessThan(0.01)
      expect(Math.abs(total.value - t)).toBeLessThan(0.01)
      // 95 % intervals, widened to about 99.99 % so that the test is not a lottery
      expect(Math.abs(first.value - s)).toBeLessThan(2.5 * (first.high - first.value))
      expect(Math.abs(total.value - t)).toBeLessThan(2.5 * (total.high - total.value))
    }
    expect(shares.inputs[0]?.path).toBe('x')
    expect(shares.interaction).toBeCloseTo(exact.z[1], 1)
    expect(shares.deviation.si).toBeCloseTo(Math.sqrt(v), 1)
    expect(shares.mean.si).toBeCloseTo(3.5, 1)
    expect(shares.evaluations).toBe(1024 * 16 * 5)
    expect(shares.toMarkdown()).toContain('share with others')
    expect(JSON.parse(JSON.stringify(shares.chart)).description).toContain('First-order and total')
  })

  test('g function of six inputs', () => {
    const each = uniform(0, 1)
    const shares = varianceShares(g, { a: each, b: each, c: each, d: each, e: each, f: each }, { samples: 1024 })
    const part = A.map((a) => 1 / (3 * (1 + a) ** 2))
    const v = part.reduce((product, p) => product * (1 + p), 1) - 1
    for (const { path, first, total } of shares.inputs) {
      const i = 'abcdef'.indexOf(path)
      const others = part.reduce((product, p, j) => (j === i ? product : product * (1 + p)), 1)
      expect(Math.abs(first.value - part[i]! / v)).toBeLessThan(0.01)
      expect(Math.abs(total.value - (part[i]! * others) / v)).toBeLessThan(0.01)
    }
    expect(shares.inputs.slice(0, 4).map(({ path }) => path)).toEqual(['a', 'b', 'c', 'd'])
  })

  test('intervals cover the truth about as often as they say', () => {
    const covered = { narrow: 0, wide: 0 }
    const exact = 49 / 8 / (0.5 * (1 + (0.1 * Math.PI ** 4) / 5) ** 2 + 49 / 8 + 0.01 * Math.PI ** 8 * (1 / 18 - 1 / 50))
    for (let seed = 1; seed <= 60; seed++) {
      for (const [which, confidence] of [
        ['narrow', 0.5],
        ['wide', 0.95],
      ] as const) {
        const options = { samples: 64, replicates: 8, seed, confidence }
        const { total } = varianceShares(ishigami, { x: all, y: all, z: all }, options).inputs.find(({ path }) => path === 'y')!
        if (total.low <= exact && exact <= total.high) covered[which]++
      }
    }
    // 60 trials: at 95 % fewer than 48 has a chance below 1e-6, at 50 % outside 15 to 45 one of about 1e-4.
    expect(covered.wide).toBeGreaterThanOrEqual(48)
    expect(covered.narrow).toBeGreaterThanOrEqual(15)
    expect(covered.narrow).toBeLessThanOrEqual(45)
  })

  test('a sum of independent inputs: shares are those of the variances, alone and with others alike; seeds repeat', () => {
    const sum = formula('test.sum', { inputs: { a: x, b: x }, output: 'ratio', source: memory, si: ({ a, b }) => a + 2 * b })
    const run = () => varianceShares(sum, { a: normal(0, 1), b: normal(5, 1) })
    for (const { path, first, total } of run().inputs) {
      expect(first.value).toBeCloseTo(path === 'a' ? 0.2 : 0.8, 2)
      expect(total.value).toBeCloseTo(path === 'a' ? 0.2 : 0.8, 2)
    }
    expect(run().toMarkdown()).toBe(run().toMarkdown())
  })
})

describe('local sensitivities', () => {
  test('elasticities of a power law are its exponents; one of a temperature is not given', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), fc.double({ min: -50, max: -1e-2, noNaN: true }), (a, b) => {
        const { inputs } = sensitivity(power, { a, inner: { b, warm: '300 K' } }, { output: 'value' })
        const of = (path: string) => inputs.find((input) => input.path === path)!
        expect(of('a').elasticity).toBeCloseTo(3, 7)
        expect(of('inner.b').elasticity).toBeCloseTo(-2, 7)
        expect(of('inner.warm').elasticity).toBeUndefined()
      }),
      { numRuns: 50 },
    )
  })

  test('a slope states how far it is off: a little where it is smooth, as much as itself at a kink', () => {
    const of = (si: (x: number) => number) => {
      const one = formula('test.slope', { inputs: { x: 'ratio' }, output: 'ratio', source: memory, si: ({ x }) => si(x) })
      return sensitivity(one, { x: 2 }).inputs[0]!
    }
    for (const [found, exact] of [
      [of(Math.exp), Math.exp(2)],
      [of((x) => x ** 3), 12],
      [of((x) => Math.sin(5 * x)), 5 * Math.cos(10)],
    ] as const) {
      expect(Math.abs(found.slope - exact)).toBeLessThanOrEqual(found.slopeError)
      expect(found.slopeError).toBeLessThan(1e-4 * Math.abs(exact))
    }
    const kink = of((x) => Math.max(0, x - 2.001))
    expect(kink.slopeError).toBeGreaterThan(0.1)
  })

  test('slope at a limit is one-sided and right', () => {
    const { inputs } = sensitivity(power, { a: 0, inner: { b: 1, warm: '300 K' } }, { output: 'value', inputs: ['a'] })
    expect(inputs).toHaveLength(1)
    expect(inputs[0]?.slope).toBeCloseTo(0, 5)
    expect(inputs[0]?.from.si).toBe(0)
  })

  test('slack tension: elasticity of friction is −friction × wrap; ranges come from the property, the widest first', () => {
    const friction = property('ratio', { typical: 0.2, low: 0.1, high: 0.3, source: { level: 'assumption', where: 'test' } })
    const result = sensitivity(slackTension, { load: '500 N', friction, wrapAngle: '3 turn' })
    const [first] = result.inputs
    expect(first).toMatchObject({ path: 'friction', range: 'property' })
    expect(first?.elasticity).toBeCloseTo(-0.2 * 6 * Math.PI, 7)
    expect(first?.atFrom?.in('N')).toBeCloseTo(500 * Math.exp(-0.1 * 6 * Math.PI), 9)
    expect(first?.atTo?.in('N')).toBeCloseTo(500 * Math.exp(-0.3 * 6 * Math.PI), 9)
    const load = result.inputs.find(({ path }) => path === 'load')
    expect(load?.elasticity).toBeCloseTo(1, 9)
    expect([load?.from.in('N'), load?.to.in('N')]).toEqual([450, 550])
    expect(result.toMarkdown()).toContain('| friction | 0.2 | -3.77 |')
    const spec = JSON.parse(JSON.stringify(result.chart))
    expect(spec.layer[0].data.values[0].name).toBe('friction')
    expect(spec.description).toContain('friction')
  })
})

test.each([
  [() => sensitivity(power, { a: 1, inner: { b: 1, warm: '300 K' } }, {} as never), 'must be one of value, other'],
  [() => sensitivity(slackTension, { load: '500 N', friction: 0.2, wrapAngle: '3 m' as never }), 'm is a unit of length'],
  [
    () => sensitivity(slackTension, { load: '500 N', friction: 0.2, wrapAngle: '3 turn' }, { inputs: ['lod' as never] }),
    'did you mean load?',
  ],
  [() => sensitivity(slackTension, { load: '500 N', friction: 0.2, wrapAngle: '3 turn' }, { swing: 2 }), 'swing'],
  [() => varianceShares(slackTension, { load: '500 N', friction: 0.2, wrapAngle: '3 turn' }), 'something uncertain'],
  [
    () => varianceShares(slackTension, { load: '500 N', friction: uniform(0.1, 0.2), wrapAngle: '3 turn' }, { samples: 1, replicates: 1 }),
    '2 things to change',
  ],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})

describe('shares of the variance with inputs that scatter together', () => {
  // Closed form of a linear model of normal inputs (S. Kucherenko, S. Tarantola, P. Annoni 2012): the first share is the squared correlation
  // of input and result, the total one the part of the variance that is left when the others are known.
  const plane = formula('test.plane', {
    inputs: { x, y: x, z: x },
    output: 'ratio',
    source: memory,
    si: ({ x, y, z }) => 2 * x - y + 0.5 * z,
  })
  const given = { x: normal(1, 1), y: normal(0, 2), z: normal(-1, 3) }
  test.each([0.8, -0.5, 0])('a linear model, correlation %f of two of three inputs', (rho) => {
    const slopes = [2, -1, 0.5]
    const sd = [1, 2, 3]
    const cov = (i: number, j: number) => sd[i]! * sd[j]! * (i === j ? 1 : (i === 0 && j === 1) || (i === 1 && j === 0) ? rho : 0)
    const toResult = (i: number) => slopes.reduce((sum, slope, j) => sum + slope * cov(i, j), 0)
    const variance = slopes.reduce((sum, slope, i) => sum + slope * toResult(i), 0)
    const exact = [0, 1, 2].map((i) => ({
      first: toResult(i) ** 2 / (cov(i, i) * variance),
      total: (slopes[i]! ** 2 * cov(i, i) * (i < 2 ? 1 - rho * rho : 1)) / variance,
    }))
    // A coefficient of 1e-9 takes the way of correlated inputs to the answer of independent ones.
    const shares = varianceShares(plane, given, { samples: 1024, correlations: [{ between: ['x', 'y'], coefficient: rho || 1e-9 }] })
    expect(shares.deviation.si).toBeCloseTo(Math.sqrt(variance), 1)
    for (const [i, path] of ['x', 'y', 'z'].entries()) {
      const found = shares.inputs.find((input) => input.path === path)!
      expect(found.first.value).toBeCloseTo(exact[i]!.first, 2)
      expect(found.total.value).toBeCloseTo(exact[i]!.total, 2)
    }
    expect(shares.interaction).toBeUndefined()
    expect(shares.evaluations).toBe(1024 * 16 * 7)
    expect(shares.toMarkdown()).toContain('need not add up to one')
  })
  test('inputs that are one and the same: both tell all, neither is left when the other is known', () => {
    const twins = varianceShares(
      plane,
      { x: normal(0, 1), y: normal(0, 1), z: normal(0, 1e-3) },
      { correlations: [{ between: ['x', 'y'], coefficient: 1 }] },
    )
    for (const path of ['x', 'y']) {
      const found = twins.inputs.find((input) => input.path === path)!
      expect(found.first.value).toBeCloseTo(1, 2)
      expect(found.total.value).toBeCloseTo(0, 6)
    }
  })
  test('other distributions, uncorrelated, give the shares of the independent estimator', () => {
    const all = uniform(-Math.PI, Math.PI)
    const shares = varianceShares(
      ishigami,
      { x: all, y: all, z: all },
      { samples: 1024, correlations: [{ between: ['x', 'y'], coefficient: 0 }] },
    )
    const find = (path: string) => shares.inputs.find((input) => input.path === path)!
    expect(find('x').first.value).toBeCloseTo(0.3139, 1)
    expect(find('z').total.value).toBeCloseTo(0.2437, 1)
  })
})
