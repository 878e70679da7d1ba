import { describe, expect, test } from 'vitest'
import { type Formula, formula } from '../../src/formula/index.js'
import { normalCdf } from '../../src/numeric/index.js'
import { Tally } from '../../src/study/failure-tally.js'
import { type FailureChances, failureChances, normal } from '../../src/study/index.js'
import { Mixture } from '../../src/study/mixture.js'

/*
 * Series systems whose chance of failure is known: problems of the Black-box Reliability Challenge (Á. Rózsás, A. Slobbe, "Repository and Black-box Reliability
 * Challenge 2019", TNO), with its numbers and its printed answers, and the system of equally correlated components of C. W. Dunnett and M. Sobel, Biometrika 42 (1955) 258.
 */
const source = [{ level: 'arithmetic', where: 'test problem' }] as const
const standard = normal(0, 1)
const zero = { below: 0 } as const

const inPlane = (id: string, g: (x: number, y: number) => Record<string, number>) => {
  const names = Object.keys(g(0, 0))
  const made = formula(`test.${id}`, {
    inputs: { x: 'ratio', y: 'ratio' },
    output: Object.fromEntries(names.map((name) => [name, 'ratio'])) as never,
    source,
    si: (({ x, y }: { x: number; y: number }) => g(x, y)) as never,
  }) as unknown as Formula<{ x: 'ratio'; y: 'ratio' }, Record<string, 'ratio'>>
  const limits = Object.fromEntries(names.map((name) => [name, zero]))
  return (seed: number, evaluations = 5000) => failureChances(made, { x: standard, y: standard }, { limits, evaluations, seed })
}

/** Chance as printed, and to more digits by integrating over the plane (Simpson's rule and the error function, or a midpoint grid of 1600 by 1600 for RP57). */
const problems = {
  RP57: {
    printed: 2.84e-2,
    exact: 2.8264e-2,
    of: inPlane('rp57', (x, y) => ({ pair: Math.max(-(x ** 2) + y ** 3 + 3, 2 - x - 8 * y), ring: (x + 3) ** 2 + (y + 3) ** 2 - 4 })),
  },
  RP89: { printed: 5.43e-3, exact: 5.4713e-3, of: inPlane('rp89', (x, y) => ({ bent: -(x ** 2) - y + 8, straight: -x / 5 - y + 6 })) },
  // P.-H. Waarts, thesis, Delft 2000; B. Echard, N. Gayton, M. Lemaire, Struct. Saf. 33 (2011) 145, table 1.
  'four branches, seven': { printed: 2.233e-3, exact: 2.22285e-3, of: inPlane('seven', (x, y) => branches(x, y, 7)) },
  'four branches, six': { printed: 4.416e-3, exact: 4.45763e-3, of: inPlane('six', (x, y) => branches(x, y, 6)) },
  // Slopes at the middle lead astray: the likelier failure seems 8.5 deviations away, and is 4.
  RP110: {
    printed: 3.19e-5,
    exact: 3.19579e-5,
    of: inPlane('rp110', (x, y) => ({
      late: x <= 3.5 ? 0.85 - 0.1 * x : 4 - x,
      early: y <= 2 ? 2.3 - y : 0.5 - 0.1 * y,
    })),
  },
  // No slope at the middle, and four likeliest points. The printed value is from draws.
  RP111: { printed: 7.65e-7, exact: 8.03509e-7, of: inPlane('rp111', (x, y) => ({ product: 12.5 - Math.abs(x * y) })) },
}

function branches(x: number, y: number, k: number) {
  const bend = 0.1 * (x - y) ** 2
  const sum = (x + y) / Math.SQRT2
  return { one: 3 + bend - sum, two: 3 + bend + sum, three: x - y + k / Math.SQRT2, four: y - x + k / Math.SQRT2 }
}

/** Components with the same margin and correlation: each is a root of what they share and a rest of its own. */
const COMPONENTS = 20
const names = Array.from({ length: COMPONENTS }, (_, i) => `c${i}`)
function alikeSystem(margin: number, correlation: number) {
  const made = formula('test.alike', {
    inputs: { common: 'ratio', ...Object.fromEntries(names.map((name) => [name, 'ratio'])) } as never,
    output: Object.fromEntries(names.map((name) => [name, 'ratio'])) as never,
    source,
    si: ((x: Record<string, number>) =>
      Object.fromEntries(
        names.map((name) => [name, margin - Math.sqrt(correlation) * x.common! - Math.sqrt(1 - correlation) * x[name]!]),
      )) as never,
  })
  const given = Object.fromEntries(['common', ...names].map((name) => [name, standard]))
  const limits = Object.fromEntries(names.map((name) => [name, zero]))
  // The chance given what they share is a power; Simpson's rule over what they share.
  const steps = 4000
  let sum = 0
  for (let i = 0; i <= steps; i++) {
    const t = -9 + (18 * i) / steps
    const holds = normalCdf((margin - Math.sqrt(correlation) * t) / Math.sqrt(1 - correlation))
    const simpson = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2
    sum += simpson * Math.exp((-t * t) / 2) * -Math.expm1(COMPONENTS * Math.log(holds))
  }
  const known = ((18 / steps / 3) * sum) / Math.sqrt(2 * Math.PI)
  return {
    known,
    of: (seed: number) => failureChances(made, given as never, { limits, evaluations: 5000, seed } as never) as FailureChances,
  }
}

const SEEDS = 10

describe('series systems with known answers, within 5000 runs', () => {
  test.each(Object.entries(problems))('%s', (_, { printed, exact, of }) => {
    expect(Math.abs(printed / exact - 1)).toBeLessThan(0.05)
    const found = Array.from({ length: SEEDS }, (_, k) => of(k + 1))
    for (const { evaluations } of found) expect(evaluations).toBeLessThanOrEqual(5000)
    const mean = found.reduce((sum, { any }) => sum + any.probability / SEEDS, 0)
    expect(Math.abs(mean / exact - 1)).toBeLessThan(0.05)
    // The interval of 95 % held the exact chance in 568 of 600 runs, of the worst system in 94 of 100: fewer than seven of ten is less than one chance in a hundred.
    const inside = found.filter(({ any }) => any.interval[0] < exact && any.interval[1] > exact)
    expect(inside.length).toBeGreaterThanOrEqual(7)
  })

  test.each([
    [4, 0.5],
    [4.5, 0.2],
    [4, 0.9],
  ])('twenty components %s deviations from failure, correlated by %s', (margin, correlation) => {
    const { known, of } = alikeSystem(margin, correlation)
    const found = [1, 2].map(of)
    for (const { any, each, evaluations } of found) {
      expect(evaluations).toBeLessThanOrEqual(5000)
      expect(any.error / any.probability).toBeLessThan(0.06)
      expect(Math.abs(any.probability - known)).toBeLessThan(3 * any.error)
      // Each component alone: Φ of its margin.
      const alone = normalCdf(-margin)
      for (const { probability, error } of each) expect(Math.abs(probability - alone)).toBeLessThan(5 * error)
    }
    // What all share is to be reduced first, the more so the more they share: the mean square of what they share in failed draws, less one.
    if (correlation === 0.9) expect(found[0]!.any.reduce[0]).toMatchObject({ path: 'common' })
  })
})

describe('rare failures beside common ones', () => {
  // Margins from 0.4 to 4.3 deviations, each with the chance Φ of its margin: one in three to one in a hundred thousand. What all share is a third of the scatter.
  const margins = names.map((_, i) => 0.4 + (3.9 * i) / (COMPONENTS - 1))
  const ladder = formula('test.ladder', {
    inputs: { common: 'ratio', ...Object.fromEntries(names.map((name) => [name, 'ratio'])) } as never,
    output: Object.fromEntries(names.map((name) => [name, 'ratio'])) as never,
    source,
    si: ((x: Record<string, number>) =>
      Object.fromEntries(names.map((name, i) => [name, margins[i]! - Math.sqrt(0.3) * x.common! - Math.sqrt(0.7) * x[name]!]))) as never,
  })
  const given = Object.fromEntries(['common', ...names].map((name) => [name, standard]))
  const limits = Object.fromEntries(names.map((name) => [name, zero]))
  const found = [1, 2, 3, 4, 5].map((seed) => failureChances(ladder, given as never, { limits, seed } as never) as FailureChances)

  test('each has its own chance within 5000 runs, whatever the likelier ones are', () => {
    for (const { each, evaluations, remarks } of found) {
      expect(evaluations).toBeLessThanOrEqual(5000)
      expect(remarks).toEqual([])
      for (const { output, failures, probability, error, interval } of each) {
        const exact = normalCdf(-margins[names.indexOf(output)]!)
        // Over a hundred seeds the rarest three spread by 20 to 24 %. Their intervals were seventy times as high as low, and wider, when draws followed the chances.
        expect(failures).toBeGreaterThan(25)
        expect(Math.abs(probability / exact - 1)).toBeLessThan(1)
        expect(Math.abs(probability - exact)).toBeLessThan(5 * error)
        expect(interval[1] / interval[0]).toBeLessThan(4)
      }
    }
  })

  test('the intervals hold the exact chances', () => {
    const inside = found.flatMap(({ each }) =>
      each.filter(({ output, interval: [low, high] }) => {
        const exact = normalCdf(-margins[names.indexOf(output)]!)
        return low <= exact && exact <= high
      }),
    )
    // 95 of 100 are to be inside. Over a hundred seeds each was 94 to 99 times; those of one run go together.
    expect(inside.length).toBeGreaterThanOrEqual(88)
  })

  test('a rare failure without a slope at the middle is found beside a common one', () => {
    const pair = formula('test.pair', {
      inputs: { x: 'ratio', y: 'ratio', z: 'ratio' },
      output: { often: 'ratio', seldom: 'ratio' },
      source,
      si: ({ x, y, z }) => ({ often: 0.5 - z, seldom: 9 - x * x - y * y }),
    })
    // Two squares together are above 9 with the chance exp(−9/2), by the distribution of Rayleigh.
    const exact = Math.exp(-4.5)
    const all = [1, 2, 3, 4, 5].map((seed) =>
      failureChances(pair, { x: standard, y: standard, z: standard }, { limits: { often: zero, seldom: zero }, seed }).each.find(
        ({ output }) => output === 'seldom',
      ),
    )
    for (const one of all) expect(Math.abs(one!.probability - exact)).toBeLessThan(4 * one!.error)
    expect(all.filter((one) => one!.interval[0] < exact && exact < one!.interval[1]).length).toBeGreaterThanOrEqual(4)
  })
})

describe('what a chance says of itself', () => {
  const ten = formula('test.ten', {
    inputs: { x: 'ratio', y: 'ratio' },
    output: { near: 'ratio', far: 'ratio' },
    source,
    si: ({ x, y }) => ({ near: 3 - x, far: 7 - y }),
  })
  const found = failureChances(ten, { x: standard, y: standard }, { limits: { near: zero, far: zero } })

  test('the fall of the chance with less scatter is the derivative of its logarithm', () => {
    const [first, second] = found.any.reduce
    expect(first!.path).toBe('x')
    // With a deviation s the chance is Φ(−3/s): 3 φ(3) / Φ(−3) at s = 1.
    const exact = (3 * Math.exp(-4.5)) / Math.sqrt(2 * Math.PI) / normalCdf(-3)
    expect(Math.abs(first!.fall - exact)).toBeLessThan(0.5)
    expect(second!.share).toBe(0)
  })

  test('a failure that few draws met is named, and not listed with a chance', () => {
    expect(found.each.find(({ output }) => output === 'far')!.failures).toBeLessThan(10)
    expect(String(found)).not.toMatch(/\| far below/)
  })

  test('no failure among the draws bounds the chance, instead of calling it zero', () => {
    const safe = formula('test.safe', {
      inputs: { x: 'ratio' },
      output: { rest: 'ratio' },
      source,
      si: ({ x }) => ({ rest: 30 - x / 1e3 }),
    })
    const of = (confidence?: number) =>
      failureChances(safe, { x: standard }, { limits: { rest: zero }, evaluations: 2000, ...(confidence && { confidence }) })
    const { any, each, evaluations } = of()
    expect(any).toMatchObject({ probability: 0, failures: 0 })
    // The rule of three: at least a quarter of the runs are drawn, and none misses.
    expect(any.interval[1] * evaluations).toBeGreaterThan(2.99)
    expect(any.interval[1] * evaluations).toBeLessThan(12)
    expect(of(0.99).any.interval[1] / any.interval[1]).toBeCloseTo(Math.log(0.01) / Math.log(0.05), 2)
    expect(each[0]!.interval).toEqual(any.interval)
  })

  test('the bound is the chance at which so many draws meet no failure once in twenty', () => {
    const bound = (most: number) => new Tally().chance(1000, 0.95, most).interval[1]
    expect((1 - bound(1)) ** 1000).toBeCloseTo(0.05, 12)
    // Where a tenth of the draws lies round the middle, a failure near no point is met a tenth as often.
    expect((1 - bound(10) / 10) ** 1000).toBeCloseTo(0.05, 12)
    expect(new Mixture(1, []).mostWeight).toBe(1)
    const point = { state: 0, u: Float64Array.of(3), index: 3, followed: true }
    const mixture = new Mixture(1, [point])
    expect(mixture.mostWeight).toBeCloseTo(10, 12)
    for (const x of [-9, 0, 3, 9]) expect(mixture.weight(Float64Array.of(x))).toBeLessThanOrEqual(mixture.mostWeight * (1 + 1e-12))
  })

  test('failures on both sides of the middle do not hide the scatter that makes them', () => {
    const both = formula('test.both', {
      inputs: { x: 'ratio', y: 'ratio' },
      output: { low: 'ratio', high: 'ratio' },
      source,
      si: ({ x, y }) => ({ low: 3.5 + x + 0.1 * y, high: 3.5 - x }),
    })
    const { reduce } = failureChances(both, { x: standard, y: standard }, { limits: { low: zero, high: zero } }).any
    expect(reduce[0]).toMatchObject({ path: 'x' })
    expect(reduce[0]!.share).toBeGreaterThan(0.9)
  })

  test('fewer runs than the slopes take are rejected', () => {
    const many = Object.fromEntries(Array.from({ length: 80 }, (_, i) => [`x${i}`, standard]))
    const wide = formula('test.wide', {
      inputs: Object.fromEntries(Object.keys(many).map((name) => [name, 'ratio'])) as never,
      output: { rest: 'ratio' },
      source,
      si: ((x: Record<string, number>) => ({ rest: 30 - Object.values(x).reduce((a, b) => a + b, 0) })) as never,
    })
    const run = (evaluations: number) => failureChances(wide, many as never, { limits: { rest: zero }, evaluations } as never)
    expect(() => run(300)).toThrow(/evaluations.*at least 324, as 80 inputs scatter/)
    expect(run(400).evaluations).toBeLessThanOrEqual(400)
  })
})
