// Every option of every study tool at its limits, beyond them, and left out.
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import {
  bounds,
  failureChances,
  failureProbability,
  fit as fitted,
  normal,
  optimise,
  robustOptimum,
  runSweep,
  scenarios,
  sensitivity,
  solveFor,
  surrogate,
  sweep,
  sweepJob,
  uncertainty,
  uniform,
  varianceShares,
} from '../../src/study/index.js'
import { InputError, N } from '../../src/units/index.js'

const quick = formula('test.quick', {
  inputs: { a: 'ratio', b: 'ratio' },
  output: 'ratio',
  source: [{ level: 'unverified', where: 'test' }],
  si: ({ a, b }) => a + 2 * b,
})
const scatter = { a: uniform(0.9, 1.1), b: uniform(0.9, 1.1) } as const
type Options = Record<string, unknown>
const readings = { parameters: { a: 1 }, data: { b: [1, 2, 3, 4] }, measured: [4, 6.1, 7.9, 10] }
const plan = { vary: { a: { from: 0, to: 1 } }, fixed: { b: 1 }, goals: { minimise: 'result' } }
const tools = {
  bounds: (o: Options) => bounds(quick, scatter, o as never),
  failureChances: (o: Options) => failureChances(quick, scatter, { limits: { result: { below: 2.75 } }, evaluations: 200, ...o } as never),
  failureProbability: (o: Options) => failureProbability(quick, scatter, { below: 2.8, samples: 100, runs: 3, ...o } as never),
  fit: (o: Options) => fitted(quick, { ...readings, ...o } as never),
  optimise: (o: Options) => optimise(quick, { ...plan, evaluations: 80, ...o } as never),
  robustOptimum: (o: Options) =>
    robustOptimum(quick, {
      ...{ vary: { a: { from: 0, to: 1 } }, goals: { minimise: 'result' }, constraints: { result: { min: 2.2 } } },
      ...{ scatter: { b: uniform(0.9, 1.1) }, evaluations: 80, draws: 60, chance: 0.9, ...o },
    } as never),
  scenarios: (o: Options) => scenarios(quick, scatter, o as never),
  sensitivity: (o: Options) => sensitivity(quick, { a: 1, b: 1 }, o as never),
  solveFor: (o: Options) => solveFor(quick, 'a', { b: 1 }, 3, { between: [0, 2], ...o } as never),
  surrogate: (o: Options) => surrogate(quick, { vary: { a: { from: 0, to: 1 } }, fixed: { b: 1 }, runs: 100, ...o } as never),
  sobol: (o: Options) => sweep(quick, { over: { a: { from: 0, to: 1 } }, fixed: { b: 1 }, design: { sobol: 4, ...o } } as never),
  latinHypercube: (o: Options) =>
    sweep(quick, { over: { a: { from: 0, to: 1 } }, fixed: { b: 1 }, design: { latinHypercube: 4, seed: 1, ...o } } as never),
  range: (o: Options) => sweep(quick, { over: { a: { from: 0, to: 1, ...o } }, fixed: { b: 1 } } as never),
  uncertainty: (o: Options) => uncertainty(quick, scatter, { samples: 200, ...o } as never),
  varianceShares: (o: Options) => varianceShares(quick, scatter, { samples: 16, replicates: 4, ...o } as never),
} satisfies Record<string, (options: Options) => unknown>

const issueOf = (tool: keyof typeof tools, option: string, value: unknown) => {
  try {
    tools[tool]({ [option]: value })
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ path, accepts }) => `${path} ${accepts}`)
    throw error
  }
  return []
}
const INF = Number.POSITIVE_INFINITY

describe('a count', () => {
  const counts: [keyof typeof tools, string, number, number, string?][] = [
    ['bounds', 'points', 4, INF],
    ['failureChances', 'evaluations', 200, INF],
    ['failureProbability', 'samples', 100, 1e6],
    ['failureProbability', 'runs', 3, 1000],
    ['fit', 'starts', 1, 10_000],
    ['optimise', 'population', 8, 100_000],
    ['robustOptimum', 'rounds', 1, INF],
    ['robustOptimum', 'draws', 20, INF],
    ['solveFor', 'samples', 1, 10_000_000],
    ['surrogate', 'runs', 20, 1000],
    ['uncertainty', 'samples', 200, 5e7],
    ['uncertainty', 'untilSettled', 200, 5e7, 'true, false, or '],
    ['varianceShares', 'samples', 16, 1_000_000],
    ['varianceShares', 'replicates', 4, 10_000],
  ]
  test.each(counts)('%s: %s from %d on', (tool, option, least, most, otherwise = '') => {
    const limits = most === INF ? `of at least ${least}` : `from ${least} to ${most}`
    const refused = [`${option} must be ${otherwise}a whole number ${limits}`]
    for (const value of [least - 1, least + 0.5, Number.NaN, String(least), null, ...(most === INF ? [] : [most + 1])])
      expect(issueOf(tool, option, value), String(value)).toEqual(expect.arrayContaining(refused))
    // At the limit itself another option may be too small for it, and says so by its own name or in its own words.
    expect(issueOf(tool, option, least)).not.toEqual(expect.arrayContaining(refused))
  })

  test('of rows in a design names the design, and one of a range the range', () => {
    expect(issueOf('sobol', 'sobol', 0)).toEqual(['design.sobol must be a whole number of rows from 1 to 4294967296'])
    expect(issueOf('latinHypercube', 'latinHypercube', 1.5)[0]).toMatch(/^design.latinHypercube must be a whole number of rows from 1 to/)
    expect(issueOf('range', 'count', 1)[0]).toMatch(/^over.a.count must be a whole number from 2 to/)
    for (const [tool, option, value] of [['sobol', 'sobol', 1], ['latinHypercube', 'latinHypercube', 1], ['range', 'count', 2]] as const) // biome-ignore format: rows
      expect(issueOf(tool, option, value)).toEqual([])
  })

  test('of evaluations is at least two generations', () => {
    const cap = (evaluations: number) => () => tools.optimise({ population: 10, evaluations })
    expect(cap(19)).toThrow('evaluations is 19; must be a whole number of at least twice the population, 20')
    expect(cap(20)).not.toThrow()
    const zero = (evaluations: number) => () => tools.optimise({ population: 10, evaluations, constraints: { result: { min: 0 } } })
    expect(zero(51)).toThrow('twice the population and 32 points that show how large a result limited by zero is, 52')
    expect(zero(52)).not.toThrow()
  })
})

test.each([
  ['bounds', 'seed'],
  ['failureChances', 'seed'],
  ['failureProbability', 'seed'],
  ['optimise', 'seed'],
  ['scenarios', 'seed'],
  ['sobol', 'seed', 'design.seed'],
  ['latinHypercube', 'seed', 'design.seed'],
  ['surrogate', 'seed'],
  ['uncertainty', 'seed'],
  ['varianceShares', 'seed'],
] as const)('%s: a seed is an exact whole number, of either sign', (tool, option, path: string = option) => {
  for (const seed of [0.5, '1', Number.NaN, 2 ** 53, null]) expect(issueOf(tool, option, seed)).toEqual([`${path} must be a whole number`])
  for (const seed of [0, -7, 2 ** 52]) expect(issueOf(tool, option, seed)).toEqual([])
})

test('a Latin hypercube needs a seed, a plain Sobol sequence none', () => {
  expect(issueOf('latinHypercube', 'seed', undefined)).toEqual(['design.seed must be a whole number'])
  expect(issueOf('sobol', 'seed', undefined)).toEqual([])
})

test.each([
  ['failureChances', 'confidence', 0.99],
  ['failureProbability', 'confidence', 0.99],
  ['fit', 'confidence', 0.99],
  ['robustOptimum', 'confidence', 0.9],
  ['robustOptimum', 'chance', 0.8],
  ['sensitivity', 'swing', 0.5],
  ['surrogate', 'confidence', 0.8],
  ['uncertainty', 'coverage', 0.99],
  ['varianceShares', 'confidence', 0.99],
] as const)('%s: %s lies between 0 and 1, ends excluded', (tool, option, good) => {
  for (const share of [0, 1, -0.1, 1.1, Number.NaN, '0.5'])
    expect(issueOf(tool, option, share)).toEqual([`${option} must be a number between 0 and 1`])
  expect(issueOf(tool, option, good)).toEqual([])
})

test('options that are one of some words or numbers', () => {
  for (const digits of [1, 2, 3]) expect(issueOf('uncertainty', 'digits', digits)).toEqual([])
  for (const digits of [0, 4, 1.5, '2']) expect(issueOf('uncertainty', 'digits', digits)).toEqual(['digits must be 1, 2 or 3'])
  for (const spacing of ['linear', 'log', undefined]) expect(() => tools.range({ from: 1, to: 2, count: 2, spacing })).not.toThrow()
  expect(() => tools.range({ from: 1, to: 2, count: 2, spacing: 'lin' })).toThrow("over.a.spacing is 'lin'; must be one of linear, log")
  expect(issueOf('fit', 'loss', 'hubber')[0]).toMatch(/^loss .*did you mean huber/)
  expect(issueOf('fit', 'intervals', 'linea')[0]).toMatch(/^intervals .*did you mean linear/)
  expect(() => tools.fit({ loss: 'huber', intervals: 'profile' })).toThrow("must be 'linear' with the loss 'huber'")
  expect(() => tools.fit({ loss: 'huber', intervals: 'linear' })).not.toThrow()
  expect(() => tools.fit({ loss: 'squares', intervals: 'profile' })).not.toThrow()
})

describe('weights and the deviation of readings', () => {
  test('there is one weight above zero for each reading', () => {
    for (const [weights, issue] of [
      [[1, 1, 1], 'weights must have one value for each reading, 4 in all'],
      [[1, 1, 0, 1], 'weights[2] must be a number above zero'],
      [[1, 1, 1, -1], 'weights[3] must be a number above zero'],
      [[1, '1', 1, 1], 'weights[1] must be a number above zero'],
      [[INF, 1, 1, 1], 'weights[0] must be a number above zero'],
      [null, 'weights must have one value for each reading, 4 in all'],
      ['1111', 'weights must have one value for each reading, 4 in all'],
    ] as const)
      expect(issueOf('fit', 'weights', weights)).toEqual([issue])
    expect(issueOf('fit', 'weights', Float64Array.of(1, 2, 3, 4))).toEqual([])
  })

  test('a deviation is of the kind of the result and above zero', () => {
    const cord = (deviation: unknown) => () =>
      fitted(slackTension, {
        parameters: { friction: 0.3 },
        data: { wrapAngle: ['1 turn', '2 turn'] },
        measured: ['100 N', '19 N'],
        fixed: { load: '500 N' },
        deviation: deviation as never,
      })
    expect(cord(N(1))).not.toThrow()
    for (const bad of [N(0), N(-1), { kind: 'length', si: 1 }]) expect(cord(bad)).toThrow('must be a force above zero')
  })
})

describe('the parts of a run', () => {
  const job = sweepJob(quick, { over: { a: [1, 2, 3] }, fixed: { b: 1 } })
  test.each([
    [{ blockRows: 0 }, 'blockRows is 0; must be a whole number of at least 1'],
    [{ blockRows: 1.5 }, 'blockRows is 1.5'],
    [{ shard: [0, 2] }, 'shard is [0, 2]; must be [k, n]: part k from 1 to n'],
    [{ shard: [3, 2] }, 'shard is [3, 2]'],
    [{ shard: [1, 0] }, 'shard is [1, 0]'],
    [{ shard: '12' }, "shard is '12'"],
    [{ workers: { count: 0, module: 'x', name: 'y' } }, 'workers.count is 0; must be a whole number from 1 to 256'],
    [{ workers: { count: 257, module: 'x', name: 'y' } }, 'workers.count is 257'],
    [{ workers: { count: 1, module: 'x', nam: 'y' } }, 'workers.nam'],
  ])('%j', async (options, message) => {
    await expect(runSweep(job, options as never)).rejects.toThrow(message)
  })

  test('the second of two parts is the second half of the blocks', async () => {
    const part = await runSweep(job, { blockRows: 1, shard: [2, 2] })
    const whole = await runSweep(job, { blockRows: 1, shard: [1, 1] })
    expect([whole.rows, [...whole.in('result', '1')]]).toEqual([3, [3, 4, 5]])
    expect(part.rows).toBeLessThan(3)
    expect([1, 2]).toContain(part.rows)
  })
})

describe('an option left out is its documented default', () => {
  const same = (tool: keyof typeof tools, left: Options, given: Options) =>
    expect(JSON.stringify(tools[tool](left))).toBe(JSON.stringify(tools[tool](given)))

  test.each([
    ['bounds', {}, { points: 64, seed: 1 }],
    ['failureChances', { evaluations: undefined }, { evaluations: 5000, seed: 1, confidence: 0.95, correlations: [] }],
    ['fit', {}, { starts: 1, loss: 'squares', intervals: 'linear', confidence: 0.95, weights: [1, 1, 1, 1] }],
    ['sensitivity', {}, { swing: 0.1, inputs: ['a', 'b'] }],
    ['solveFor', {}, { samples: 400 }],
    ['surrogate', {}, { confidence: 0.95, seed: 1 }],
    ['uncertainty', {}, { untilSettled: false, digits: 2, seed: 1, coverage: 0.95, correlations: [] }],
    ['varianceShares', {}, { seed: 1, confidence: 0.95, correlations: [] }],
  ] as [keyof typeof tools, Options, Options][])('%s', same)

  test('failureProbability, optimise, robustOptimum', () => {
    same('failureProbability', {}, { seed: 1, confidence: 0.95, correlations: [] })
    same('optimise', { population: 40 }, { seed: 1 })
    same('optimise', { goals: [{ minimise: 'result' }] }, { population: 40 })
    same('robustOptimum', {}, { confidence: 0.95, rounds: 8, seed: 1, correlations: [] })
  })
})

test('what is known beforehand is said at once, with all that is wrong', () => {
  const wrong = { samples: 1, seed: 0.5, coverage: 2, digits: 7 }
  try {
    uncertainty(quick, { a: normal(1, -1), b: 'x' } as never, wrong as never)
    throw new Error('no error')
  } catch (error) {
    expect((error as InputError).issues.map(({ path }) => path)).toEqual(['samples', 'digits', 'seed', 'coverage', 'a', 'b'])
  }
})
