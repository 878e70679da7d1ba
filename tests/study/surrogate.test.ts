import { describe, expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { surrogate } from '../../src/study/index.js'
import { kriging } from '../../src/study/kriging.js'
import { InputError } from '../../src/units/index.js'

const source = [{ level: 'arithmetic', where: 'test' }] as const

/** T. Ishigami, T. Homma, Proc. ISUMA 90 (1990) 398, in three lengths of a metre each. */
const ishigami = formula('test.ishigami', {
  inputs: { x: 'length', y: 'length', z: 'length' },
  output: { height: 'length', other: 'ratio' },
  source,
  si: ({ x, y, z }) => ({ height: Math.sin(x) + 7 * Math.sin(y) ** 2 + 0.1 * z ** 4 * Math.sin(x), other: x }),
})

/** The lesser of three planes, as the margin of many checks is: smooth but for its kinks. */
const kinked = formula('test.kinked', {
  inputs: { a: 'ratio', b: 'ratio', c: { kind: 'ratio', min: 0 } },
  output: 'ratio',
  source,
  si: ({ a, b, c }) => Math.min(1 + a - b, 2 - a + 0.3 * c, 0.5 + b + Math.sqrt(c)),
})
const unit = { from: 0, to: 1 } as const
const box = { a: unit, b: unit, c: unit }

/** Share of random points of the unit box that the stated error keeps. */
function kept(seed: number) {
  const found = surrogate(kinked, { vary: box, runs: 80, seed })
  const random = randomStream(100 + seed)
  let inside = 0
  for (let i = 0; i < 200; i++) {
    const [a, b, c] = [random.uniform(), random.uniform(), random.uniform()]
    const [value, error] = found.si([a, b, c])
    if (Math.abs(value - kinked.si({ a, b, c })) <= error) inside++
  }
  return inside / 200
}

describe('a stand-in for a formula', () => {
  test('of a smooth function is right to a thousandth, and says so', () => {
    const smooth = formula('test.smooth', {
      inputs: { a: 'length', b: 'ratio' },
      output: 'force',
      source,
      si: ({ a, b }) => 100 * Math.exp(a * 5) * (1 + b * b),
    })
    const found = surrogate(smooth, { vary: { a: { from: '0 mm', to: '200 mm' }, b: { from: 0.1, to: 0.4 } }, runs: 80 })
    const { value, error } = found.at({ a: '50 mm', b: 0.3 })
    const exact = 100 * Math.exp(0.25) * 1.09
    expect(Math.abs(value.si / exact - 1)).toBeLessThan(1e-3)
    expect(Math.abs(value.si - exact)).toBeLessThanOrEqual(error.si)
    expect(error.si).toBeLessThan(1e-2 * exact)
    expect(String(value)).toMatch(/ N$/)
    expect(found.toMarkdown()).toMatch(/20 were held out.*formula itself what you build from/s)
  })

  test('keeps its error in the stated share of the box, kinks or not', () => {
    // The mean over many stand-ins is at least 95 % (split conformal bound); eight of them, 200 points each, scatter by about 0.02.
    const shares = Array.from({ length: 8 }, (_, k) => kept(k + 1))
    expect(shares.reduce((a, b) => a + b, 0) / shares.length).toBeGreaterThan(0.92)
    expect(Math.min(...shares)).toBeGreaterThan(0.75)
  })

  test('of a function that it cannot learn states a large error instead of a wrong answer', () => {
    const pi = { from: `${-Math.PI} m`, to: `${Math.PI} m` } as const
    const found = surrogate(ishigami, { vary: { x: pi, y: pi, z: pi }, output: 'height', runs: 80, seed: 2 })
    // The function has a standard deviation of 3.72 over this box (variance 13.84, as printed).
    expect(found.rootMeanSquare.si).toBeGreaterThan(0.3)
    expect(found.at({ x: '1 m', y: '1 m', z: '1 m' }).error.si).toBeGreaterThan(0.5)
  })

  test('of what stays the same is exact', () => {
    const same = formula('test.same', { inputs: { a: 'ratio' }, output: 'ratio', source, si: () => 3 })
    const found = surrogate(same, { vary: { a: unit }, runs: 80 })
    expect(found.at({ a: 0.4 }).value.si).toBeCloseTo(3, 12)
    expect(found.at({ a: 0.4 }).error.si).toBeLessThan(1e-9)
  })

  test('is the same for the same seed', () => {
    const at = (seed: number) => surrogate(kinked, { vary: box, runs: 80, seed }).si([0.2, 0.7, 0.4])
    expect(at(3)).toEqual(at(3))
    expect(at(3)).not.toEqual(at(4))
  })

  test('gives no answer outside its box, nor for an input that it does not know', () => {
    const found = surrogate(kinked, { vary: { a: unit, b: unit }, fixed: { c: 1 }, runs: 80 })
    expect(() => found.at({ a: 1.01, b: 0.5 })).toThrow(/a is 1.01; must be within the box that was learnt, 0 to 1/)
    expect(() => found.at({ a: 0.5, bb: 0.5 })).toThrow(/did you mean b/)
    expect(found.si([0.5, -0.001])).toEqual([Number.NaN, Number.NaN])
  })
})

test('a function goes through its points, and is unsure between them', () => {
  const points = [0, 0.3, 0.55, 1].map((x) => Float64Array.of(x))
  const model = kriging(points, [1, 3, 2, 5])
  points.forEach((u, i) => {
    const [value, deviation] = model.at(u)
    expect(value).toBeCloseTo([1, 3, 2, 5][i]!, 5)
    expect(deviation).toBeLessThan(1e-3)
  })
  expect(model.at([0.8])[1]).toBeGreaterThan(0.05)
})

const gap = formula('test.gap', { inputs: { a: 'ratio' }, output: 'ratio', source, si: ({ a }) => (a > 0.5 ? Number.NaN : a) })
test.each([
  [() => surrogate(kinked, { vary: box, runs: 5 }), 'runs'],
  [() => surrogate(kinked, { vary: box, runs: 40 }), 'held out can show'],
  [() => surrogate(kinked, { vary: box, confidence: 1 }), 'confidence'],
  [() => surrogate(kinked, { vary: box, seed: 0.5 }), 'seed'],
  [() => surrogate(kinked, { vary: {} }), 'vary'],
  [() => surrogate(kinked, { vary: { ...box, a: { from: 1, to: 0 } } }), 'lower to a higher'],
  [() => surrogate(kinked, { vary: { ...box, c: { from: -1, to: 1 } } }), 'vary.c'],
  [() => surrogate(kinked, { vary: { ...box, a: [0, 1] as never } }), 'vary.a'],
  [() => surrogate(ishigami, { vary: { x: { from: '0 m', to: '1 m' } } } as never), 'output'],
  [() => surrogate(kinked, { vary: { a: unit } }), 'b'],
  [() => surrogate(gap, { vary: { a: unit } }), 'runs without an answer'],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})

test('a function that is zero at all points has a deviation to scale its error with', () => {
  const [value, deviation] = kriging(
    [0, 0.3, 0.7, 1].map((x) => Float64Array.of(x)),
    [0, 0, 0, 0],
  ).at([0.5])
  expect(value).toBe(0)
  expect(deviation).toBeGreaterThan(0)
})
