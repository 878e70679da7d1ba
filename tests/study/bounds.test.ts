import fc from 'fast-check'
import { expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula, property } from '../../src/formula/index.js'
import { bounds, normal, triangular, truncated, uniform } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const x = 'ratio'
const one = (si: (a: number, b: number) => number) =>
  formula('test.one', { inputs: { a: x, b: x }, output: 'ratio', source: memory, si: ({ a, b }) => si(a, b) })

test('a monotone formula has its extremes at corners, exactly, and says so', () => {
  const friction = property('ratio', { typical: 0.14, low: 0.1, high: 0.18, source: { level: 'assumption', where: 'test' } })
  const result = bounds(slackTension, { load: uniform('400 N', '500 N'), friction, wrapAngle: '3 turn' })
  expect(result.state).toBe('monotone')
  expect(result.low.value.si).toBe(slackTension.si({ load: 400, friction: 0.18, wrapAngle: 6 * Math.PI }))
  expect(result.high.value.si).toBe(slackTension.si({ load: 500, friction: 0.1, wrapAngle: 6 * Math.PI }))
  expect(result.high.at.friction?.si).toBe(0.1)
  expect(result.inputs.map(({ trend }) => trend)).toEqual(['rising', 'falling'])
  expect(result.message).toContain('monotone in every input')
  expect(result.message).not.toContain('search')
  expect(JSON.parse(JSON.stringify(result.chart)).layer[0].data.values[0].label).toContain(' to ')
})

// Known extremes inside the ranges. Rosenbrock (Computer Journal 3 (1960) 175): 0 at (1, 1); at the corner (−2, −1) of these ranges 100·5² + 3² = 2509.
test('a curved valley: the lowest lies inside, the highest at a corner', () => {
  const rosenbrock = one((a, b) => 100 * (b - a * a) ** 2 + (1 - a) ** 2)
  const result = bounds(rosenbrock, { a: uniform(-2, 2), b: uniform(-1, 3) })
  expect(result.state).toBe('searched')
  expect(result.low.value.si).toBeLessThan(1e-9)
  expect(result.low.at.a?.si).toBeCloseTo(1, 4)
  expect(result.low.corner).toBe(false)
  expect(result.high.value.si).toBeCloseTo(2509, 9)
  expect(result.high.corner).toBe(true)
  expect(result.toMarkdown()).toContain('not monotone in a, b: both ends were found by a search, which may miss a narrow trough or peak')
})

// Branin: three minima of 0.397887 (L. C. W. Dixon, G. P. Szegö, Towards Global Optimisation 2, 1978).
test('Branin: the global minimum among three', () => {
  const branin = one(
    (a, b) => (b - (5.1 / (4 * Math.PI ** 2)) * a * a + (5 / Math.PI) * a - 6) ** 2 + 10 * (1 - 1 / (8 * Math.PI)) * Math.cos(a) + 10,
  )
  const result = bounds(branin, { a: uniform(-5, 10), b: uniform(0, 15) })
  expect(result.low.value.si).toBeCloseTo(0.397887, 6)
  // At the corner (−5, 0): 308.129.
  expect(result.high.value.si).toBeCloseTo(308.1291, 3)
})

test('whatever is drawn from the ranges lies within the bounds, and wider ranges never give narrower bounds', () => {
  const end = fc.double({ min: -3, max: 3, noNaN: true })
  fc.assert(
    fc.property(
      end,
      end,
      fc.double({ min: 0.01, max: 3, noNaN: true }),
      fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
        minLength: 20,
        maxLength: 20,
      }),
      (a, b, width, draws) => {
        const wavy = one((p, q) => Math.sin(2 * p) + q * q - p * q)
        const of = (w: number) => bounds(wavy, { a: uniform(a - w, a + w), b: uniform(b - w, b + w) })
        const [inner, outer] = [of(width), of(1.3 * width)]
        for (const [u, v] of draws) {
          const y = wavy.si({ a: a + width * (2 * u - 1), b: b + width * (2 * v - 1) })
          expect(y).toBeGreaterThanOrEqual(inner.low.value.si - 1e-9)
          expect(y).toBeLessThanOrEqual(inner.high.value.si + 1e-9)
        }
        expect(outer.low.value.si).toBeLessThanOrEqual(inner.low.value.si + 1e-9)
        expect(outer.high.value.si).toBeGreaterThanOrEqual(inner.high.value.si - 1e-9)
      },
    ),
    { numRuns: 40 },
  )
})

test('more inputs than corners can be tried for: directions lead to the right corner', () => {
  const names = Array.from({ length: 15 }, (_, i) => `x${i}`)
  const many = formula('test.many', {
    inputs: Object.fromEntries(names.map((name) => [name, 'ratio' as const])),
    output: 'ratio',
    source: memory,
    si: (all) => names.reduce((sum, name, i) => sum + (i % 2 === 0 ? 1 : -1) * (all[name] as number) ** 3, 0),
  })
  const result = bounds(many, Object.fromEntries(names.map((name) => [name, uniform(1, 2)])) as never)
  expect(result.state).toBe('monotone')
  expect(result.low.value.si).toBe(8 * 1 - 7 * 8)
  expect(result.high.value.si).toBe(8 * 8 - 7 * 1)
})

test('points without an answer are counted and the rest is searched', () => {
  const result = bounds(
    one((a, b) => Math.sqrt(a) + b),
    { a: uniform(-1, 4), b: uniform(0, 1) },
  )
  expect(result.gaps).toBeGreaterThan(0)
  expect(result.state).toBe('searched')
  expect(result.high.value.si).toBe(3)
  expect(result.low.value.si).toBeCloseTo(0, 3)
  expect(result.message).toContain('no finite answer')
})

test.each([
  [() => bounds(slackTension, { load: '500 N', friction: normal(0.2, 0.01), wrapAngle: '3 turn' }), 'must have two ends'],
  [() => bounds(slackTension, { load: '500 N', friction: 0.2, wrapAngle: '3 turn' }), 'something uncertain'],
  [
    () => bounds(slackTension, { load: '500 N', friction: triangular(0.1, 0.2, 0.3), wrapAngle: '3 turn' }, { points: 0, seed: 0.5 }),
    '2 things to change',
  ],
  [() => bounds(slackTension, { load: '500 N', friction: uniform(-0.1, 0.3), wrapAngle: '3 turn' }), 'must be at least 0'],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})

test('a normal distribution cut at two ends is bounded', () => {
  const result = bounds(slackTension, { load: '500 N', friction: truncated(normal(0.2, 0.01), 0.17, 0.23), wrapAngle: '1 turn' })
  expect(result.high.at.friction?.si).toBe(0.17)
})
