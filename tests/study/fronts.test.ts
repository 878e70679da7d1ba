import { describe, expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import { optimise } from '../../src/study/index.js'

type Pair = readonly [number, number]

/** Area between a front and a point beyond it, both goals small. */
function hypervolume(front: readonly Pair[], [right, top]: Pair): number {
  let area = 0
  let low = top
  for (const [x, y] of front.filter(([a, b]) => a < right && b < top).sort((a, b) => a[0] - b[0])) {
    if (y >= low) continue
    area += (right - x) * (low - y)
    low = y
  }
  return area
}

interface Problem {
  readonly name: string
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly goals: (x: readonly number[]) => Pair
  /** Kept where above zero. */
  readonly kept?: (x: readonly number[]) => readonly number[]
  /** Points of the exact front. */
  readonly exact: (t: number) => Pair
  readonly reference: Pair
}

/** E. Zitzler, K. Deb, L. Thiele, Evol. Comput. 8 (2000) 173. */
const zdt = (
  name: string,
  n: number,
  span: Pair,
  g: (rest: readonly number[]) => number,
  h: (f: number, g: number) => number,
): Problem => ({
  name,
  low: [0, ...Array.from({ length: n - 1 }, () => span[0])],
  high: [1, ...Array.from({ length: n - 1 }, () => span[1])],
  goals: ([f = 0, ...rest]) => [f, g(rest) * h(f, g(rest))],
  exact: (t) => [t, h(t, 1)],
  reference: [1.1, 1.1],
})
const sum = (x: readonly number[], of: (x: number) => number) => x.reduce((all, each) => all + of(each), 0)
const mean9 = (x: readonly number[]) => 1 + (9 * sum(x, (each) => each)) / x.length

const PROBLEMS: readonly Problem[] = [
  zdt('ZDT1', 30, [0, 1], mean9, (f, g) => 1 - Math.sqrt(f / g)),
  zdt('ZDT2', 30, [0, 1], mean9, (f, g) => 1 - (f / g) ** 2),
  zdt('ZDT3', 30, [0, 1], mean9, (f, g) => 1 - Math.sqrt(f / g) - (f / g) * Math.sin(10 * Math.PI * f)),
  zdt(
    'ZDT4, 21^9 local fronts',
    10,
    [-5, 5],
    (x) => 1 + 10 * x.length + sum(x, (each) => each * each - 10 * Math.cos(4 * Math.PI * each)),
    (f, g) => 1 - Math.sqrt(f / g),
  ),
  {
    // C. M. Fonseca, P. J. Fleming, Evol. Comput. 3 (1995) 1.
    name: 'Fonseca and Fleming',
    low: [-4, -4, -4],
    high: [4, 4, 4],
    goals: (x) => [1, -1].map((side) => 1 - Math.exp(-sum(x, (each) => (each - side / Math.sqrt(3)) ** 2))) as never,
    exact: (t) => [1 - Math.exp(-((2 * t) ** 2)), 1 - Math.exp(-((2 - 2 * t) ** 2))],
    reference: [1.1, 1.1],
  },
  {
    // T. T. Binh, U. Korn, Proc. Mendel 97 (1997) 176.
    name: 'Binh and Korn, two constraints',
    low: [0, 0],
    high: [5, 3],
    goals: ([x = 0, y = 0]) => [4 * x * x + 4 * y * y, (x - 5) ** 2 + (y - 5) ** 2],
    kept: ([x = 0, y = 0]) => [25 - (x - 5) ** 2 - y * y, (x - 8) ** 2 + (y + 3) ** 2 - 7.7],
    exact: (t) => {
      const [x, y] = t < 0.6 ? [5 * t, 5 * t] : [5 * t, 3]
      return [4 * x * x + 4 * y * y, (x - 5) ** 2 + (y - 5) ** 2]
    },
    reference: [140, 50],
  },
]

describe('fronts of published problems are within 1 % of their hypervolume at the default evaluations', () => {
  test.each(PROBLEMS.map((problem) => [problem.name, problem] as const))('%s', (name, { low, high, goals, kept, exact, reference }) => {
    const connected = name !== 'ZDT3'
    const names = low.map((_, i) => `x${i}`)
    const searched = formula('test.front', {
      inputs: Object.fromEntries(names.map((name) => [name, 'ratio'])),
      output: { f1: 'ratio', f2: 'ratio', k1: 'ratio', k2: 'ratio' },
      source: [{ level: 'arithmetic', where: 'test' }],
      si: (given: Record<string, number>) => {
        const x = names.map((name) => given[name]!)
        const [f1, f2] = goals(x)
        const [k1 = 1, k2 = 1] = kept?.(x) ?? []
        return { f1, f2, k1, k2 }
      },
    } as never)
    const vary = Object.fromEntries(names.map((name, i) => [name, { from: low[i], to: high[i] }]))
    const constraints = kept === undefined ? {} : { k1: { min: 0 }, k2: { min: 0 } }
    const { front, chart } = optimise(searched, { vary, constraints, goals: [{ minimise: 'f1' }, { minimise: 'f2' }] } as never)
    const found = hypervolume(
      front.map(({ results }) => [results.f1!.si, results.f2!.si] as const),
      reference,
    )
    const full = hypervolume(
      Array.from({ length: 20_001 }, (_, i) => exact(i / 2e4)),
      reference,
    )
    expect(found / full).toBeGreaterThan(0.99)
    expect(found / full).toBeLessThan(1.0001)
    // None is better than another in everything, and the front has its ends.
    const points = front.map(({ results }) => [results.f1!.si, results.f2!.si] as const)
    expect(points.length).toBeGreaterThan(80)
    for (let i = 1; i < points.length; i++) expect(points[i]![1]).toBeLessThan(points[i - 1]![1])
    expect(JSON.parse(JSON.stringify(chart)).title).toContain('Trade-off')
    if (!connected) return
    expect(points[0]![0]).toBeLessThan(0.01 * reference[0])
    // Evenly covered.
    const steps = points.slice(1).map(([a, b], i) => Math.hypot((a - points[i]![0]) / reference[0], (b - points[i]![1]) / reference[1]))
    expect(Math.max(...steps)).toBeLessThan(0.06)
  })
})
