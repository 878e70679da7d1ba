// Errors that name what was given, whatever it was.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import { boxSection } from '../../src/structures/index.js'
import { relaxation } from '../../src/study/evolve.js'
import {
  bounds,
  normal,
  optimise,
  runSweep,
  solveFor,
  sweep,
  sweepJob,
  uncertainty,
  uniform,
  varianceShares,
} from '../../src/study/index.js'
import { dampedUpdate } from '../../src/study/local-descent.js'
import { dot, stepOf } from '../../src/study/quadratic-step.js'
import { spreadOf } from '../../src/study/search.js'
import { subsetRun } from '../../src/study/subset-simulation.js'
import { UnitBox } from '../../src/study/unit-box.js'
import { InputError } from '../../src/units/index.js'

const issuesOf = (act: () => unknown) => {
  try {
    act()
  } catch (error) {
    if (error instanceof InputError) return error.issues
    throw error
  }
  throw new Error('no error')
}

describe('sweeps', () => {
  test('lists of unlike length are counted', () => {
    const over = { friction: [0.1, 0.2], wrapAngle: ['1 turn', '2 turn', '3 turn'] } as const
    const [issue] = issuesOf(() => sweep(slackTension, { over, fixed: { load: '500 N' }, design: 'list' } as never))
    expect(issue).toMatchObject({ path: 'over', given: 'friction: 2, wrapAngle: 3' })
  })

  test('a grid that is too large names what varies, a sample its design', () => {
    const friction = { from: 0.05, to: 0.4, count: 20_000 }
    const wrapAngle = { from: '1 turn', to: '3 turn', count: 20_000 }
    const plan = { over: { friction, wrapAngle }, fixed: { load: '500 N' } }
    expect(issuesOf(() => sweep(slackTension, plan as never))[0]).toMatchObject({ path: 'over', given: '400000000 rows' })
  })

  test('a path into a number is no path', () => {
    const over = { 'load.more': { from: 1, to: 2, count: 3 } }
    expect(issuesOf(() => sweep(slackTension, { over, fixed: {} } as never))[0]).toMatchObject({ path: 'path', given: "'load.more'" })
  })
})

test('a target that names no output is an error of its own', () => {
  for (const target of [null, undefined, 3, '5 mm^2', {}, { area: '5 mm^2', secondMoment: '1 mm^4' }])
    expect(issuesOf(() => solveFor(boxSection, 'wall', { width: '10 mm', depth: '10 mm' }, target as never))[0]).toMatchObject({
      path: 'target',
    })
})

test('a formula without a number to aim at has no target', () => {
  const words = formula('test.words', {
    inputs: { a: 'ratio' },
    output: { state: { oneOf: ['held', 'loose'] } },
    source: [{ level: 'unverified', where: 'test' }],
    si: () => ({ state: 'held' as const }),
  })
  for (const target of [3, { state: 'held' }])
    expect(issuesOf(() => solveFor(words, 'a', {} as never, target as never))[0]).toMatchObject({ path: 'target' })
})

test('a constraint that does not change where the search starts counts from where it does', () => {
  // The goal falls towards b = 1, which the constraint forbids: it is flat below a half.
  const flat = formula('test.flat', {
    inputs: { a: 'ratio', b: 'ratio' },
    output: { goal: 'ratio', kept: 'ratio' },
    source: [{ level: 'unverified', where: 'test' }],
    si: ({ a, b }) => ({ goal: (a - 0.3) ** 2 + (b - 1) ** 2, kept: Math.max(0, b - 0.5) }),
  })
  const { best, state } = optimise(flat, {
    vary: { a: { from: 0, to: 1 }, b: { from: 0, to: 1 } },
    goals: { minimise: 'goal' },
    constraints: { kept: { max: 0.2 } },
  })
  expect(state).toBe('found')
  expect(best.inputs.a!.si).toBeCloseTo(0.3, 5)
  expect(best.inputs.b!.si).toBeCloseTo(0.7, 6)
})

test('goal and constraints are scaled by their steepest slope, a flat one is left as it is', () => {
  const problem = { low: Float64Array.of(0, 0), high: Float64Array.of(1, 1), choice: [false, false] }
  const box = new UnitBox(problem as never, { x: Float64Array.of(0.5, 0.5), excess: Float64Array.of(0.3) } as never, 100)
  const found = { values: Float64Array.of(8, 0.3), slopes: [Float64Array.of(-4, 2), Float64Array.of(0, 0)] }
  box.scaleBy(found)
  expect([...found.values]).toEqual([2, 0.3])
  expect(found.slopes.map((row) => [...row])).toEqual([
    [-1, 0.5],
    [0, 0],
  ])
})

describe('the step of a local search', () => {
  const local = (values: number[], ...slopes: number[][]) => ({
    values: Float64Array.from(values),
    slopes: slopes.map((row) => Float64Array.from(row)),
  })

  test('keeps a constraint that can be kept, and its multiplier balances the slopes', () => {
    // Least (p₁ + 1)²/2 + (p₂ + 1)²/2 with p₁ ≥ −0.2 in the middle of the box: Kuhn and Tucker by hand.
    const found = stepOf(local([0, -0.2], [1, 1], [-1, 0]), Float64Array.of(0.5, 0.5), Float64Array.of(1, 0, 0, 1), 10, 0)!
    expect(found.step[0]).toBeCloseTo(-0.2, 12)
    expect(found.step[1]).toBeCloseTo(-0.5, 12)
    expect(found.multipliers[0]).toBeCloseTo(0.8, 12)
    expect(found.pressed).toBe(false)
  })

  test('with constraints that lean on each other solves them together, none pulling and none above the penalty', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.9, max: 0.999, noNaN: true }), fc.double({ min: 0.05, max: 3, noNaN: true }), (lean, penalty) => {
        // Two nearly parallel constraints, both broken at the start.
        const rows = [[-1, 0], [-lean, Math.sqrt(1 - lean * lean)]] // biome-ignore format: rows
        const found = stepOf(
          local([0, 0.1, 0.12], [0.3, -0.2], ...rows),
          Float64Array.of(0.5, 0.5),
          Float64Array.of(1, 0, 0, 1),
          penalty,
          0,
        )!
        const [first, second] = found.multipliers
        for (const each of [first!, second!]) {
          expect(each).toBeGreaterThanOrEqual(0)
          expect(each).toBeLessThanOrEqual(penalty)
        }
        // The step is the slope's own and what the multipliers take off it, unless an end of the box stops it.
        const free = [0, 1].map((i) => -[0.3, -0.2][i]! - first! * rows[0]![i]! - second! * rows[1]![i]!)
        for (const i of [0, 1]) expect(found.step[i]!).toBeCloseTo(Math.min(Math.max(free[i]!, -0.5), 0.5), 9)
        for (const [j, each] of [first!, second!].entries()) {
          const excess = [0.1, 0.12][j]! + rows[j]![0]! * found.step[0]! + rows[j]![1]! * found.step[1]!
          if (each === 0) expect(excess).toBeLessThan(1e-9)
          else if (each < penalty) expect(Math.abs(excess)).toBeLessThan(1e-9)
        }
      }),
    )
  })
})

test('the quasi-Newton matrix takes the slope along the step, or a fifth of its own curvature where that is less', () => {
  // Powell's rule, J. Nocedal, S. J. Wright, 2006, procedure 18.2: s·r is s·y or 0.2 s·B·s, and the new matrix maps s onto r.
  const three = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 3, maxLength: 3 })
  fc.assert(
    fc.property(three, three, (step, change) => {
      const [s, y] = [Float64Array.from(step), Float64Array.from(change)]
      fc.pre(dot(s, s) > 1e-3)
      const b = Float64Array.of(2, 0.5, 0, 0.5, 1, 0.2, 0, 0.2, 3)
      const own = (v: Float64Array) =>
        dot(
          v,
          Float64Array.from(v, (_, i) => dot(b.subarray(3 * i, 3 * i + 3), v)),
        )
      const before = own(s)
      dampedUpdate(b, s, y)
      expect(own(s)).toBeCloseTo(Math.max(dot(s, y), 0.2 * before), 9)
      // Still positive definite, so that the next step descends.
      for (const v of [Float64Array.of(1, 0, 0), Float64Array.of(0, 1, -1), Float64Array.of(1, 1, 1)]) expect(own(v)).toBeGreaterThan(0)
    }),
  )
})

test('constraints are relaxed to what half of the first points keep, and no more after three tenths of the evaluations', () => {
  const first = [7, Number.POSITIVE_INFINITY, 1, 30, 2, 3, Number.POSITIVE_INFINITY].map((violation) => ({ violation }) as never)
  const slack = relaxation(first, 1000)
  expect(slack(0)).toBe(3)
  expect(slack(150)).toBeCloseTo(3 * 0.5 ** 5, 12)
  expect([slack(300), slack(900)]).toEqual([0, 0])
})

test('one bad coefficient of correlation is one issue', () => {
  const inputs = { load: '500 N', friction: normal(0.2, 0.01), wrapAngle: normal('3 turn', '0.1 turn') } as const
  const correlations = [{ between: ['friction', 'wrapAngle'], coefficient: 2 }]
  const issues = issuesOf(() => uncertainty(slackTension, inputs as never, { correlations } as never))
  expect(issues.map(({ path }) => path)).toEqual(['correlations[0].coefficient'])
})

test('a goal varies by the range between its quartiles, or where those are one by its whole range', () => {
  const spread = (...goals: number[]) => spreadOf(goals.map((goal) => ({ goals: Float64Array.of(goal) }) as never))
  expect(spread(4, 0, 3, 1, 2)).toBe(2)
  expect(spread(0, 10, 20, 30, 40, 50, 60, 70, 1000)).toBe(40)
  expect(spread(5, 5, 5, 5, 9)).toBe(4)
  expect(spread(5, Number.POSITIVE_INFINITY, 5, 7, 5, Number.NaN)).toBe(2)
  expect([spread(), spread(3)]).toEqual([0, 0])
})

test('the nearest failure of a run is the nearest of all that it met', () => {
  // Failure beyond a distance of 2.5 along the first of ten scores: the nearest failure is seldom the one closest to the limit.
  const state = { n: 10, at: (u: ArrayLike<number>) => 2.5 - u[0]!, count: { evaluations: 0, gaps: 0 } }
  const { nearest, failed, reached } = subsetRun(state as never, 500, 1, 0)
  expect(reached).toBe(true)
  expect(Math.hypot(...nearest!)).toBe(Math.min(...failed.map((u) => Math.hypot(...u))))
  expect(Math.hypot(...nearest!)).toBeGreaterThanOrEqual(2.5)
})

describe('a grid in which a value stands for many rows', () => {
  const plain = formula('test.gridded', {
    inputs: { a: 'ratio', b: 'ratio', c: 'ratio' },
    output: 'ratio',
    source: [{ level: 'unverified', where: 'test' }],
    si: ({ a, b, c }) => 100 * a + 10 * b + c,
  })
  const over = (c: number) => ({ a: [1, 2, 3], b: [4, 5], c: { from: 0, to: 1, count: c } })
  test.each([2, 23, 24, 25, 60])('%d rows for each pair', async (count) => {
    const table = sweep(plain, { over: over(count) })
    const expected = [1, 2, 3].flatMap((a) =>
      [4, 5].flatMap((b) => Array.from({ length: count }, (_, i) => [a, b, i / (count - 1)] as const)),
    )
    for (const [k, name] of ['a', 'b', 'c'].entries())
      expect([...table.in(name, '1')]).toEqual(expected.map((row) => expect.closeTo(row[k]!, 14)))
    // In blocks that begin and end anywhere in a run.
    for (const blockRows of [7, 30])
      expect((await runSweep(sweepJob(plain, { over: over(count) }), { blockRows })).toCSV()).toBe(table.toCSV())
  })
})

test('shares of a result that stays the same are nothing, with and without correlation', () => {
  const same = formula('test.same', { inputs: { a: 'ratio', b: 'ratio' }, output: 'ratio', source: [{ level: 'unverified', where: 'test' }], si: () => 3 }) // biome-ignore format: one record
  for (const correlations of [[], [{ between: ['a', 'b'], coefficient: 0.5 }]] as const)
    for (const { first, total } of varianceShares(
      same,
      { a: uniform(0, 1), b: uniform(0, 1) },
      { samples: 16, replicates: 4, correlations: correlations as never },
    ).inputs)
      expect([first.value, total.value]).toEqual([0, 0])
})

test('a range of zeros with a kink at one end is a range, whichever end that is', () => {
  const foot = formula('test.foot', {
    inputs: { x: 'ratio', mirror: { flag: true } },
    output: 'ratio',
    source: [{ level: 'unverified', where: 'test' }],
    // Zero from 0 to 1: left of it a line, right of it a step, which alone would look like rounding.
    si: ({ x, mirror }) => {
      const at = mirror ? 1 - x : x
      return at < 0 ? -at : at < 1 ? 0 : 1e-3
    },
  })
  for (const mirror of [false, true]) {
    const { state, intervals, roots } = solveFor(foot, 'x', { mirror }, 0, { between: [-2, 3] })
    expect([state, roots]).toEqual(['interval', []])
    expect(intervals).toHaveLength(1)
    expect(mirror ? intervals[0]![1].si : intervals[0]![0].si).toBeCloseTo(mirror ? 1 : 0, 12)
  }
})

test('the extremes inside ranges are found where most of them have no answer', () => {
  const island = formula('test.island', {
    inputs: { a: 'ratio', b: 'ratio' },
    output: 'ratio',
    source: [{ level: 'unverified', where: 'test' }],
    // Answers on a disk about (0.3, 0.6) alone: lowest in its middle, highest on its edge.
    si: ({ a, b }) => ((a - 0.3) ** 2 + (b - 0.6) ** 2 < 0.04 ? 5 * (a - 0.3) ** 2 + (b - 0.6) ** 2 : Number.NaN),
  })
  const { low, high } = bounds(island, { a: uniform(0, 1), b: uniform(0, 1) })
  expect(low.value.si).toBeCloseTo(0, 9)
  expect(high.value.si).toBeGreaterThan(0.19)
  expect(high.value.si).toBeLessThanOrEqual(0.2)
})

test('places without an answer do not hide extremes elsewhere', () => {
  for (const edge of [-1, 1]) {
    const wave = (a: number, b: number) =>
      a < edge ? Number.NaN : Math.cos(2 * a) * Math.cos(2 * b) + 0.05 * ((a - 2.1) ** 2 + (b - 1.3) ** 2)
    const of = formula('test.wave', {
      inputs: { a: 'ratio', b: 'ratio' },
      output: 'ratio',
      source: [{ level: 'unverified', where: 'test' }],
      si: ({ a, b }) => wave(a, b),
    })
    const { low, high } = bounds(of, { a: uniform(-4, 4), b: uniform(-4, 4) })
    const all = Array.from({ length: 161 }, (_, i) => i / 20 - 4)
    const values = all.flatMap((a) => all.map((b) => wave(a, b))).filter((y) => !Number.isNaN(y))
    expect(low.value.si).toBeLessThanOrEqual(Math.min(...values))
    expect(high.value.si).toBeGreaterThanOrEqual(Math.max(...values))
  }
})

test('an equality beside a limit: the best of many valleys, as a scan along the equality finds it', () => {
  // Four wavy terms, two of them free to be nothing; the other two share a² b = 2, with b at most 1.5.
  const wavy = (x: number) => x * x + 3 * (1 - Math.cos(3 * x))
  const of = formula('test.valleys', {
    inputs: { a: 'ratio', b: 'ratio', c: 'ratio', d: 'ratio' },
    output: { sum: 'ratio', product: 'ratio', b: 'ratio' },
    source: [{ level: 'unverified', where: 'test' }],
    si: ({ a, b, c, d }) => ({ sum: wavy(a - 1.1) + wavy(b + 0.7) + wavy(c - 0.3) + wavy(d - 2), product: a * a * b, b }),
  })
  const range = { from: -5, to: 5 }
  const { best } = optimise(of, {
    vary: { a: range, b: range, c: range, d: range },
    goals: { minimise: 'sum' },
    constraints: { product: { equals: 2 }, b: { max: 1.5 } },
    seed: 1,
  })
  let least = Number.POSITIVE_INFINITY
  for (let a = -5; a <= 5; a += 1e-4) if (2 / a ** 2 <= 1.5) least = Math.min(least, wavy(a - 1.1) + wavy(2 / a ** 2 + 0.7))
  expect(best.violated).toEqual([])
  expect(best.results.sum!.si).toBeCloseTo(least, 4)
})
