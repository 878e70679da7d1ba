// Distributions and correlated draws: what each says of itself agrees with what it draws.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import { correlationFactor } from '../../src/study/correlation.js'
import { scatterOf } from '../../src/study/distribution.js'
import { lognormal, normal, scenarios, sensitivity, triangular, truncated, uncertainty, uniform } from '../../src/study/index.js'
import type { Scatter } from '../../src/study/scatter.js'
import { InputError, type Issue, Quantity } from '../../src/units/index.js'

const scatter = (given: unknown, kind: 'ratio' | 'temperature' = 'ratio'): Scatter => {
  const issues: Issue[] = []
  const found = scatterOf(given as never, kind, 'a', issues)
  if (found === undefined) throw new InputError('test', issues)
  return found
}
const shapes: [string, unknown][] = [
  ['normal', normal(3, 2)],
  ['lognormal', lognormal(2, 1.7)],
  ['uniform', uniform(-1, 4)],
  ['triangular', triangular(1, 2, 7)],
  ['triangular with its peak at the low end', triangular(1, 1, 7)],
  ['triangular with its peak at the high end', triangular(1, 7, 7)],
  ['normal cut on both sides', truncated(normal(3, 2), 2, 4)],
  ['normal cut above', truncated(normal(3, 2), -1e9, 2.5)],
  ['lognormal cut', truncated(lognormal(2, 1.7), 1, 5)],
  ['triangular cut across its peak', truncated(triangular(1, 2, 7), 1.5, 5)],
  ['uniform cut beyond its own end', truncated(uniform(0, 1), 0.5, 3)],
]

describe.each(shapes)('a distribution that is %s', (_, given) => {
  const shape = scatter(given)

  test('has the share p below its quantile of p, and half below its median', () => {
    for (const p of [1e-6, 1e-3, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999, 1 - 1e-6]) {
      expect(shape.below(shape.quantile(p))).toBeCloseTo(p, 12)
      expect(shape.quantile(p)).toBeGreaterThanOrEqual(shape.low)
      expect(shape.quantile(p)).toBeLessThanOrEqual(shape.high)
    }
    expect(shape.below(shape.median)).toBeCloseTo(0.5, 12)
    expect(shape.quantile(0.2)).toBeLessThan(shape.quantile(0.8))
    expect([shape.below(Number.NEGATIVE_INFINITY), shape.below(Number.POSITIVE_INFINITY)]).toEqual([0, 1])
    const [below, above] = [Number.isFinite(shape.low) ? shape.low - 1 : -1e9, Number.isFinite(shape.high) ? shape.high + 1 : 1e9]
    expect([shape.below(below), shape.below(above)]).toEqual([0, 1])
  })

  test('has the mean and the deviation of its quantiles', () => {
    // Means of equal parts, worked by the midpoint rule in the probability.
    const n = 20_000
    let [sum, square] = [0, 0]
    for (let i = 0; i < n; i++) {
      const x = shape.quantile((i + 0.5) / n)
      sum += x / n
      square += x ** 2 / n
    }
    expect(shape.mean).toBeCloseTo(sum, 3)
    expect(shape.deviation).toBeCloseTo(Math.sqrt(square - sum ** 2), 2)
  })

  test('goes along with its normal score where it has one', () => {
    for (const score of [-3, -1, 0, 2])
      if (shape.atScore !== undefined)
        expect(shape.below(shape.atScore(score))).toBeCloseTo(
          [0.0013498980316301, 0.158655253931457, 0.5, 0.977249868051821][[-3, -1, 0, 2].indexOf(score)]!,
          12,
        )
  })
})

test('a distribution says its shape, its values and where it is cut', () => {
  expect(scatter(normal('20 degC', '3 K'), 'temperature').words).toMatch(/^normal, 20 (°C|degC) ± 3 K$/)
  expect(scatter(lognormal(2, 1.5)).words).toBe('lognormal, 2 within a factor 1.5')
  expect(scatter(uniform(1, 2)).words).toBe('uniform, 1 to 2')
  expect(scatter(triangular(1, 1.5, 4)).words).toBe('triangular, 1 to 4, likeliest 1.5')
  expect(scatter(truncated(normal(2, 1), 0, 3)).words).toBe('normal, 2 ± 1, cut at 0 and 3')
})

test.each([
  [normal(1, 0), 'must have a standard deviation above zero'],
  [normal(1, -1), 'must have a standard deviation above zero'],
  [normal(1, undefined), 'a.normal[1] is missing'],
  [lognormal(0, 2), 'must have a median above zero'],
  [lognormal(-1, 2), 'must have a median above zero'],
  [lognormal(1, 1), 'must have a factor above 1'],
  [lognormal(1, Number.POSITIVE_INFINITY), 'must have a factor above 1'],
  [lognormal(1, '2' as never), 'must have a factor above 1'],
  [uniform(1, 1), 'must be a lower and a higher end'],
  [uniform(2, 1), 'must be a lower and a higher end'],
  [triangular(2, 1, 3), 'must be a low end, the likeliest value between, and a high end'],
  [triangular(1, 4, 3), 'must be a low end, the likeliest value between, and a high end'],
  [triangular(1, 1, 1), 'must be a low end, the likeliest value between, and a high end'],
  [truncated(normal(1, 1), 2, 2), 'must be a lower and a higher end'],
  [truncated(normal(1, 1), 20, 30), 'must be ends between which the distribution has something left'],
  [truncated(undefined as never, 1, 2), 'must be a distribution to cut'],
  [truncated(normal(1, -1), 1, 2), 'must have a standard deviation above zero'],
  [{ distribution: 'uniform', at: [1] }, 'must be made by uniform(…), with its values'],
  [{ distribution: 'uniform', at: [1, 2, 3] }, 'must be made by uniform(…), with its values'],
  [{ distribution: 'normal', at: [], spread: 1 }, 'must be made by normal(…), with its values'],
  [{ distribution: 'uniform', at: [undefined, 2] }, 'a.uniform[0] is missing'],
])('%j is refused: %s', (given, message) => {
  expect(() => scatter(given)).toThrow(message)
})

describe('correlations', () => {
  const factor = (correlations: unknown) => correlationFactor(['a', 'b', 'c'], correlations as never, 'test')

  test.each([
    ['a', "correlations is 'a'; must be a list of { between, coefficient }"],
    [{ between: ['a', 'b'], coefficient: 1 }, 'must be a list of { between, coefficient }'],
    [[{ between: ['a', 'd'], coefficient: 1 }], 'correlations[0].between'],
    [[{ between: ['a', 'a'], coefficient: 1 }], 'must be two of the uncertain inputs a, b, c'],
    [[{ between: ['a'], coefficient: 1 }], 'must be two of the uncertain inputs a, b, c'],
    [[{ between: 'ab', coefficient: 1 }], 'must be two of the uncertain inputs a, b, c'],
    [[{ between: ['a', 'b'], coefficient: 1.01 }], 'must be a number from -1 to 1'],
    [[{ between: ['a', 'b'], coefficient: -1.01 }], 'must be a number from -1 to 1'],
    [[{ between: ['a', 'b'], coefficient: Number.NaN }], 'must be a number from -1 to 1'],
    [[{ between: ['a', 'b'], coefficent: 1 }], 'correlations[0].coefficent'],
    [
      [
        { between: ['a', 'b'], coefficient: 1 },
        { between: ['b', 'c'], coefficient: 1 },
      ],
      'must be coefficients that can hold together',
    ],
  ])('%j is refused', (given, message) => {
    expect(() => factor(given)).toThrow(message)
  })

  test('the factor times itself turned is the matrix, from −1 to 1', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -0.4, max: 0.4, noNaN: true }), (ab, bc) => {
        fc.pre(1 - ab ** 2 - bc ** 2 > 0)
        const { matrix, lower } = factor([{ between: ['a', 'b'], coefficient: ab }, { between: ['c', 'b'], coefficient: bc }]) // biome-ignore format: one call
        expect([...matrix]).toEqual([1, ab, 0, ab, 1, bc, 0, bc, 1])
        for (let i = 0; i < 3; i++)
          for (let j = 0; j < 3; j++) {
            let sum = 0
            for (let k = 0; k < 3; k++) sum += lower![3 * i + k]! * lower![3 * j + k]!
            expect(sum).toBeCloseTo(matrix[3 * i + j]!, 12)
          }
      }),
      { seed: 2, numRuns: 50 },
    )
    for (const end of [1, -1]) expect(factor([{ between: ['a', 'b'], coefficient: end }]).lower![4]).toBeCloseTo(0, 12)
    expect(factor([]).lower).toBeUndefined()
  })
})

describe('scenarios', () => {
  const three = formula('test.three', {
    inputs: { a: 'ratio', inner: { fields: { b: 'ratio' } }, c: 'ratio' },
    output: 'ratio',
    source: [{ level: 'unverified', where: 'test' }],
    si: ({ a, inner, c }) => a + inner.b + c,
  })
  const given = { a: normal(1, 0.1), inner: { b: uniform(2, 4) }, c: 7 } as const

  test('hold what scatters, by its path, and nothing that is certain', () => {
    const drawn = scenarios(three, given)
    expect(drawn.paths).toEqual(['a', 'inner.b'])
    expect(Object.keys(drawn.draw(3))).toEqual(['a', 'inner'])
    expect(Object.keys(drawn.draw(3).inner as object)).toEqual(['b'])
  })

  test('depend on seed and number alone', () => {
    const [one, again, other] = [scenarios(three, given), scenarios(three, given, { seed: 1 }), scenarios(three, given, { seed: 2 })]
    expect(one.draw(5)).toEqual(again.draw(5))
    expect(one.draw(5)).not.toEqual(one.draw(6))
    expect(one.draw(5)).not.toEqual(other.draw(5))
  })

  test('follow their distributions and their correlation', () => {
    const correlations = [{ between: ['a', 'inner.b'], coefficient: -1 }] as const
    const drawn = scenarios(three, given, { correlations })
    const values = Array.from({ length: 400 }, (_, i) => drawn.draw(i) as { a: number; inner: { b: number } })
    const mean = values.reduce((sum, { a }) => sum + a / 400, 0)
    expect(mean).toBeCloseTo(1, 1)
    for (const { a, inner } of values) {
      expect(inner.b).toBeGreaterThanOrEqual(2)
      expect(inner.b).toBeLessThanOrEqual(4)
      // The same score, turned round: the share below one is that above the other.
      expect(scatter(normal(1, 0.1)).below(a) + (inner.b - 2) / 2).toBeCloseTo(1, 9)
    }
  })

  test('bad input is named', () => {
    expect(() => scenarios(three, { a: 1, inner: { b: 2 }, c: 3 })).toThrow('must hold something uncertain')
    expect(() => scenarios(three, given, { seeds: 1 } as never)).toThrow('did you mean seed?')
    expect(() => scenarios(three, given, { correlations: [{ between: ['a', 'c'], coefficient: 1 }] })).toThrow('correlations[0].between')
  })
})

test('temperatures scatter by differences, in every tool that prints a spread', () => {
  const warm = formula('test.warmer', {
    inputs: { room: 'temperature', rise: 'temperatureDifference' },
    output: 'temperature',
    source: [{ level: 'unverified', where: 'test' }],
    si: ({ room, rise }) => room + rise,
  })
  const drawn = uncertainty(warm, { room: normal('20 degC', '3 K'), rise: normal('10 K', '4 K') }, { samples: 4000 })
  expect(drawn.linear.deviation.kind).toBe('temperatureDifference')
  expect(drawn.linear.deviation.si).toBeCloseTo(5, 9)
  expect(drawn.monteCarlo.deviation.value.si).toBeCloseTo(5, 0)
  expect(drawn.linear.contributions.map(({ path, deviation, share }) => [path, deviation.kind, share])).toEqual([
    ['rise', 'temperatureDifference', expect.closeTo(0.64, 9)],
    ['room', 'temperatureDifference', expect.closeTo(0.36, 9)],
  ])
  expect(drawn.probabilityBelow(new Quantity(303.15, 'temperature'))).toBeCloseTo(0.5, 1)
  // Its zero is arbitrary, so that a percentage of it says nothing.
  const slopes = sensitivity(warm, { room: normal('20 degC', '3 K'), rise: '10 K' })
  expect(slopes.inputs.map(({ elasticity }) => elasticity)).toEqual([undefined, undefined])
  const room = slopes.inputs.find(({ path }) => path === 'room')!
  expect([room.range, room.to.si - room.from.si]).toEqual(['distribution', expect.closeTo(2 * 1.6448536269514722 * 3, 9)])
  expect(slopes.toMarkdown()).toContain('| – |')
})
