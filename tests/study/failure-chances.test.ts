import { describe, expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import { failureChances, normal } from '../../src/study/index.js'

const source = [{ level: 'arithmetic', where: 'test problem' }] as const

/** Four standard normal inputs; fails where their sum is far from the middle. */
const plane = formula('test.plane', {
  inputs: { a: 'ratio', b: 'ratio', c: 'ratio', d: 'ratio' },
  output: { left: 'ratio' },
  source,
  si: ({ a, b, c, d }) => ({ left: 4.753424 - (a + b + c + d) / 2 }),
})

/** Series system of four branches. */
const branches = formula('test.branches', {
  inputs: { x: 'ratio', y: 'ratio' },
  output: { one: 'ratio', two: 'ratio', three: 'ratio', four: 'ratio' },
  source,
  si: ({ x, y }) => {
    const bend = 0.1 * (x - y) ** 2
    const [sum, gap] = [(x + y) / Math.SQRT2, 7 / Math.SQRT2]
    return { one: 3 + bend - sum, two: 3 + bend + sum, three: x - y + gap, four: y - x + gap }
  },
})

const standard = normal(0, 1)
const zero = { below: 0 } as const

describe('chances of rare failures', () => {
  test('one in a million behind a plane, within 5000 runs', () => {
    const found = failureChances(plane, { a: standard, b: standard, c: standard, d: standard }, { limits: { left: zero } })
    // Φ(−4.753424) = 1e-6, any table of the normal distribution.
    expect(found.evaluations).toBeLessThanOrEqual(5000)
    expect(found.any.interval[0]).toBeLessThan(1e-6)
    expect(found.any.interval[1]).toBeGreaterThan(1e-6)
    expect(found.any.error / found.any.probability).toBeLessThan(0.05)
    expect(found.each[0]!.index).toBeCloseTo(4.753424, 3)
    for (const { share } of found.any.reduce) expect(share).toBeCloseTo(0.25, 1)
  })

  test('inputs of one draw count as one: four that are the same are twice as far out, and cost one slope', () => {
    const tied = ['b', 'c', 'd'].map((name) => ({ between: ['a', name], coefficient: 1 }) as const)
    const all = ['b', 'c'].flatMap((name, i) => ['c', 'd'].slice(i).map((other) => ({ between: [name, other], coefficient: 1 }) as const))
    const found = failureChances(
      plane,
      { a: standard, b: standard, c: standard, d: standard },
      { limits: { left: zero }, evaluations: 2000, correlations: [...tied, ...all] },
    )
    // The sum of four equal ones over two has a deviation of 2: Φ(−4.753424/2) = 8.73e-3.
    expect(found.each[0]!.index).toBeCloseTo(4.753424 / 2, 3)
    expect(found.any.interval[0]).toBeLessThan(8.734e-3)
    expect(found.any.interval[1]).toBeGreaterThan(8.734e-3)
    expect(found.any.reduce).toMatchObject([{ path: 'a', also: ['b', 'c', 'd'], share: 1 }])
    expect(found.any.reduce).toHaveLength(1)
  })

  test('the published series system of four branches', () => {
    const found = failureChances(branches, { x: standard, y: standard }, { limits: { one: zero, two: zero, three: zero, four: zero } })
    // Waarts 2000; Echard, Gayton and Lemaire, Struct. Saf. 33 (2011) 145, table 1: 2.233e-3 by a million draws and more.
    expect(found.any.probability).toBeGreaterThan(2.233e-3 * 0.94)
    expect(found.any.probability).toBeLessThan(2.233e-3 * 1.06)
    expect(found.any.interval[0]).toBeLessThan(2.233e-3)
    expect(found.any.interval[1]).toBeGreaterThan(2.233e-3)
    // The straight branches alone: Φ(−7/2) each.
    const three = found.each.find(({ output }) => output === 'three')!
    expect(three.interval[0]).toBeLessThan(2.326e-4)
    expect(three.interval[1]).toBeGreaterThan(2.326e-4)
    expect(found.evaluations).toBeLessThanOrEqual(5000)
  })

  test('the intervals hold the exact chance as often as they say', () => {
    let inside = 0
    for (let seed = 1; seed <= 40; seed++) {
      const { any } = failureChances(
        plane,
        { a: standard, b: standard, c: standard, d: standard },
        { limits: { left: zero }, evaluations: 1000, seed },
      )
      if (any.interval[0] < 1e-6 && any.interval[1] > 1e-6) inside++
    }
    // 95 % of 40 is 38; fewer than 33 is one chance in a thousand.
    expect(inside).toBeGreaterThanOrEqual(33)
  })

  test('bad input is listed at once, and the result prints itself', () => {
    expect(() => failureChances(plane, { a: standard, b: 0, c: 0, d: 0 }, { limits: { lift: zero }, evaluations: 10 })).toThrow(
      /evaluations[\s\S]*limits\.lift/,
    )
    const of = (limits: object) => () => failureChances(plane, { a: standard, b: 0, c: 0, d: 0 }, { limits: limits as never })
    expect(of({})).toThrow(/limits.*at least one output/)
    // A second side would be dropped in silence.
    expect(of({ left: { below: 0, above: 1 } })).toThrow(/limits\.left.*\{ below \} or \{ above \}/)
    expect(of({ left: 3 })).toThrow(/limits\.left/)
    expect(of({ left: { under: 3 } })).toThrow(/limits\.left/)
    expect(String(failureChances(plane, { a: standard, b: 0, c: 0, d: 0 }, { limits: { left: zero }, evaluations: 400 }))).toContain(
      'Scatter to reduce first',
    )
  })
})
