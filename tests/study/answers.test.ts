// Points at which a formula has no answer: what every tool makes of them, and what it says.
import { describe, expect, test } from 'vitest'
import { formula, NoResultError, property } from '../../src/formula/index.js'
import {
  bounds,
  failureChances,
  failureProbability,
  fit as fitted,
  normal,
  optimise,
  robustOptimum,
  sensitivity,
  solveFor,
  surrogate,
  sweep,
  triangular,
  truncated,
  uncertainty,
  uniform,
  varianceShares,
} from '../../src/study/index.js'
import { InputError, N } from '../../src/units/index.js'

const source = [{ level: 'unverified', where: 'test' }] as const
/** Has no answer where a is above its edge: by an error, by a number that is none, or because the inputs cannot stand together. */
const edge = (how: 'throws' | 'NaN' | 'infinite' | 'ruled out') =>
  formula(`test.edge${how.replace(' ', '')}`, {
    inputs: { a: 'ratio', b: { kind: 'ratio', default: 0 } },
    output: 'ratio',
    source,
    requires: { 'a must not exceed one': { holds: ({ a }: { a: number }) => how !== 'ruled out' || a <= 1, inputs: ['a'] } } as never,
    si: ({ a, b }) => {
      if (a <= 1) return a + b
      if (how === 'throws') throw new NoResultError('beyond the edge')
      return how === 'infinite' ? Number.POSITIVE_INFINITY : Number.NaN
    },
  })

describe.each(['throws', 'NaN', 'infinite', 'ruled out'] as const)('a formula that %s beyond an edge', (how) => {
  const over = edge(how)

  test('has gaps, which every tool counts and names', () => {
    const table = sweep(over, { over: { a: [0, 1, 2, 3] } })
    expect([table.gaps, table.rows]).toEqual([2, 4])
    const drawn = uncertainty(over, { a: uniform(0, 1.25) }, { samples: 1000 })
    expect(drawn.monteCarlo.gaps).toBeGreaterThan(150)
    expect(drawn.monteCarlo.gaps).toBeLessThan(250)
    expect(drawn.remarks).toContain(`${drawn.monteCarlo.gaps} of 1000 draws have no finite answer and are left out`)
    expect(drawn.toMarkdown()).toContain(`- ${drawn.monteCarlo.gaps} of 1000 draws`)
    expect(drawn.monteCarlo.high.value.si).toBeLessThanOrEqual(1)
    const shares = varianceShares(over, { a: uniform(0, 1.05), b: uniform(0, 1) }, { samples: 64, replicates: 4 })
    expect(shares.gaps).toBeGreaterThan(0)
    expect(shares.toMarkdown()).toContain(`- ${shares.gaps} base points had no finite answer somewhere and are left out`)
    expect(shares.inputs.reduce((sum, { first }) => sum + first.value, 0)).toBeCloseTo(1, 1)
    const found = bounds(over, { a: uniform(0, 2) })
    expect([found.low.value.si, found.state]).toEqual([0, 'searched'])
    expect(found.high.value.si).toBeGreaterThan(0.99)
    expect(found.message).toContain(`; ${found.gaps} points have no finite answer`)
  })

  test('counts as failed where chances of failure are worked out', () => {
    // Below the edge nothing fails: the chance is that of a beyond 1.
    const { probability, remarks, evaluations } = failureProbability(over, { a: uniform(0, 1.25) }, { below: -1, samples: 500, runs: 4 })
    expect(probability).toBeCloseTo(0.2, 1)
    expect(
      remarks.some((one) => new RegExp(`^\\d+ of ${evaluations} runs of the formula had no answer and count as failed$`).test(one)),
    ).toBe(true)
    const chances = failureChances(over, { a: uniform(0, 1.25) }, { limits: { result: { below: -1 } }, evaluations: 1000 })
    // Without end is above every lower limit.
    expect(chances.any.probability).toBeCloseTo(how === 'infinite' ? 0 : 0.2, 1)
    if (how === 'infinite') return
    expect(chances.remarks.at(-1)).toMatch(/^\d+ of \d+ runs of the formula had no answer and count as failed$/)
  })

  test('is searched and learnt where it has answers, or not at all', () => {
    const { best } = optimise(over, { vary: { a: { from: 0, to: 3 } }, goals: { maximise: 'result' }, evaluations: 2000 })
    expect(best.inputs.a?.si).toBeCloseTo(1, 5)
    expect(() => surrogate(over, { vary: { a: { from: 0, to: 3 } }, fixed: {} })).toThrow(/answer everywhere/)
    expect(solveFor(over, 'a', {}, 0.5, { between: [0, 3] }).value.si).toBeCloseTo(0.5, 12)
    const slopes = sensitivity(over, { a: 0.95, b: 1 }, { swing: 0.2 })
    const [a, b] = ['a', 'b'].map((path) => slopes.inputs.find((each) => each.path === path)!)
    expect([a!.atFrom?.si, a!.atTo]).toEqual([expect.closeTo(0.76 + 1, 12), undefined])
    expect(b!.atTo?.si).toBeCloseTo(0.95 + 1.2, 12)
    expect(slopes.toMarkdown()).toContain(`${a!.atFrom} … no answer`)
    // A bar that has no end is not drawn.
    expect(JSON.stringify(slopes.chart)).not.toContain('"name":"a"')
  })

  test('has no answer at all where every point lies beyond it', () => {
    for (const [call, message] of [
      [() => bounds(over, { a: uniform(2, 3) }), 'no finite answer exists in these ranges'],
      [() => uncertainty(over, { a: uniform(2, 3) }), 'no finite answer exists at the typical values'],
      [() => sensitivity(over, { a: 2, b: 1 }), 'no finite answer exists at the values given'],
      [() => varianceShares(over, { a: uniform(0.9, 1.3) }), 'no finite answer exists for most points'],
      [() => varianceShares(over, { a: uniform(0.9, 1.3), b: uniform(0, 1) }, { correlations: [{ between: ['a', 'b'], coefficient: 0.5 }] }), 'no finite answer exists for most points'],
      [() => optimise(over, { vary: { a: { from: 2, to: 3 } }, goals: { minimise: 'result' }, evaluations: 100 }), 'no finite answer exists at any of'],
      [() => fitted(over, { parameters: { b: 1 }, data: { a: [2, 3] }, measured: [1, 2] }), 'no finite answer exists at the first guess for some reading'],
    ] as const) // biome-ignore format: rows
      expect(call, message).toThrowError(
        expect.objectContaining({ name: 'NoResultError', message: expect.stringContaining(message) }) as never,
      )
  })

  test('half of the draws are enough, fewer are not', () => {
    expect(() => uncertainty(over, { a: triangular(0, 1.4, 1.4) }, { samples: 2000 })).not.toThrow()
    expect(() => uncertainty(over, { a: triangular(0, 1.45, 1.45) }, { samples: 2000 })).toThrow(
      'draws; the distributions reach where the formula does not hold',
    )
    expect(() => varianceShares(over, { a: uniform(0, 1.1) }, { samples: 32, replicates: 4 })).not.toThrow()
  })
})

describe('what a study says beside its numbers', () => {
  const sum = formula('test.sum', { inputs: { a: 'ratio', b: 'ratio' }, output: 'ratio', source, si: ({ a, b }) => a + b })
  const two = formula('test.two', {
    inputs: { a: 'ratio', b: 'ratio' },
    output: { first: 'ratio', second: 'ratio', state: { oneOf: ['on', 'off'] } },
    source,
    si: ({ a, b }) => ({ first: a + b, second: a - b, state: 'on' as const }),
  })

  test('an output is named where there are several, and only there', () => {
    expect(() => bounds(two, { a: uniform(0, 1), b: 1 } as never, {} as never)).toThrow('output is missing; must be one of first, second')
    expect(() => bounds(two, { a: uniform(0, 1), b: 1 }, { output: 'frist' as never })).toThrow('did you mean first?')
    expect(() => bounds(sum, { a: uniform(0, 1), b: 1 }, { output: 'result' } as never)).toThrow(
      'must be left out: the formula has one result',
    )
    expect(bounds(two, { a: uniform(0, 1), b: 1 }, { output: 'second' }).high.value.si).toBe(0)
  })

  test('what a distribution has outside the limits of an input is cut off with a remark, or refused', () => {
    const positive = formula('test.positive', { inputs: { a: { kind: 'ratio', min: 0 }, b: { kind: 'ratio', max: 10 } }, output: 'ratio', source, si: ({ a, b }) => a + b }) // biome-ignore format: one record
    const remarks = (mean: number) => uncertainty(positive, { a: normal(mean, 1), b: 1 }, { samples: 200 }).remarks
    expect(remarks(3)).toContain('a: the 1e-3 of the distribution that is not at least 0 is cut off')
    // Beyond seven deviations nothing worth a word is left.
    expect(remarks(8).filter((one) => one.startsWith('a:'))).toEqual([])
    expect(() => remarks(2)).toThrow(
      'a is normal, 2 ± 1; must be at least 0, where 2.3 % of this distribution is not; cut it with truncated(…)',
    )
    expect(() => uncertainty(positive, { a: uniform(-2, -1), b: 1 })).toThrow('where 100 % of this distribution is not')
    expect(() => uncertainty(positive, { a: 1, b: uniform(11, 12) })).toThrow('b is uniform, 11 to 12; must be at most 10')
    const cut = uncertainty(positive, { a: truncated(normal(2, 1), 0, 5), b: 1 }, { samples: 200 })
    expect([...cut.monteCarlo.sorted].every((y) => y >= 1)).toBe(true)
  })

  test('a property scatters over its range, given or by default, and stands at its typical value otherwise', () => {
    const factor = property('ratio', { typical: 2, low: 1, high: 4, source: { level: 'assumption', where: 'test' } })
    const byDefault = formula('test.byDefault', {
      inputs: { a: 'ratio', inner: { fields: { factor: { kind: 'ratio', default: factor } } }, known: { kind: 'ratio', default: 1 } },
      output: 'ratio',
      source,
      si: ({ a, inner, known }) => a * inner.factor * known,
    })
    const given = { a: 3, inner: {} } as const
    const range = bounds(byDefault, given as never)
    expect([range.low.value.si, range.high.value.si]).toEqual([3, 12])
    expect(range.inputs.map(({ path }) => path)).toEqual(['inner.factor'])
    const drawn = uncertainty(byDefault, given as never, { samples: 500 })
    expect(drawn.linear.value.si).toBe(6)
    expect(drawn.linear.contributions.map(({ path, share, scatters }) => [path, share, scatters])).toEqual([
      ['inner.factor', 1, 'triangular, 1 to 4, likeliest 2'],
    ])
    const slopes = sensitivity(byDefault, given as never)
    expect(slopes.value.si).toBe(6)
    const own = slopes.inputs.find(({ path }) => path === 'inner.factor')!
    expect([own.range, own.from.si, own.to.si, own.slope]).toEqual(['property', 1, 4, expect.closeTo(3, 9)])
    // A number in its place does not scatter.
    expect(() => uncertainty(byDefault, { a: 3, inner: { factor: 2 } })).toThrow('must hold something uncertain')
    expect(() => sensitivity(byDefault, given as never, { inputs: ['known'] as never })).toThrow("inputs is 'known'; must be given a value")
  })

  test('chances of failure: which are resolved, which seldom, and which carry too much', () => {
    const near = failureChances(
      two,
      { a: normal(0, 1), b: normal(0, 1) },
      { limits: { first: { below: -4 }, second: { above: 9 } }, evaluations: 2000 },
    )
    expect(near.each.map(({ output, failure }) => `${output} ${failure}`)).toEqual(['first below -4', 'second above 9'])
    const [first, second] = near.each
    // Each a plane at 4/√2 and 9/√2 deviations.
    expect(first!.probability / 0.002339).toBeCloseTo(1, 0)
    expect(first!.index).toBeCloseTo(4 / Math.SQRT2, 4)
    expect(near.any.probability).toBeGreaterThanOrEqual(first!.probability)
    expect(near.toMarkdown()).toContain('| first below -4 |')
    expect(near.toMarkdown().includes('| second above 9 |')).toBe(second!.failures >= 10)
    expect(near.any.reduce.map(({ share }) => share).reduce((a, b) => a + b)).toBeCloseTo(1, 9)
    // A limit that nothing comes near: no draw fails, and it is no likelier than any.
    const far = failureChances(
      two,
      { a: uniform(0, 1), b: uniform(0, 1) },
      { limits: { first: { below: 0.05 }, second: { above: 7 } }, evaluations: 2000 },
    )
    const never = far.each.find(({ output }) => output === 'second')!
    expect([never.failures, never.probability, never.interval[0]]).toEqual([0, 0, 0])
    expect(never.interval[1]).toBeLessThanOrEqual(far.any.interval[1])
    expect(far.toMarkdown()).not.toContain('second above 7')
    const refusals: [unknown, string][] = [
      [{}, 'limits is an empty object; must hold at least one output'],
      [{ first: { below: 1, above: 2 } }, 'must be { below } or { above } with a number in SI units'],
      [{ first: { under: 1 } }, 'must be { below } or { above }'],
      [{ first: { below: '1' } }, 'must be { below } or { above }'],
      [{ first: null }, 'must be { below } or { above }'],
      [{ thrid: { below: 1 } }, 'limits.thrid'],
      [{ state: { below: 1 } }, 'limits.state'],
    ]
    for (const [limits, message] of refusals)
      expect(() => failureChances(two, { a: normal(0, 1), b: 0 }, { limits } as never), JSON.stringify(limits)).toThrow(message)
    expect(() => failureChances(two, { a: normal(0, 1), b: 0 }, { evaluations: 200, limits: { first: { above: 1 } } })).not.toThrow()
  })

  test('without limits every output below one is a failure', () => {
    const margins = formula('test.margins', { inputs: { a: 'ratio' }, output: { here: 'ratio', there: 'ratio' }, source, si: ({ a }) => ({ here: a, there: a + 1 }) }) // biome-ignore format: one record
    const found = failureChances(margins, { a: normal(2, 0.5) }, { evaluations: 1000 })
    expect(found.each.map(({ output, failure }) => [output, failure])).toEqual([['here', 'below 1'], ['there', 'below 1']]) // biome-ignore format: rows
    expect(found.each[0]!.probability).toBeCloseTo(0.02275, 2)
    const single = failureChances(edge('NaN'), { a: uniform(0, 1) }, { evaluations: 400, limits: { result: { below: 0.5 } } })
    expect(single.each[0]).toMatchObject({ output: 'result', failure: 'below 0.5' })
    const one = failureChances(sum, { a: normal(2, 0.5), b: 0 }, { evaluations: 400 })
    expect(one.each.map(({ output, failure }) => [output, failure])).toEqual([['result', 'below 1']])
  })

  test('a probability below a value is the share of the draws below it, for a value of the same kind', () => {
    const drawn = uncertainty(sum, { a: uniform(0, 1), b: 0 }, { samples: 400 })
    const { sorted } = drawn.monteCarlo
    for (const at of [-1, 0.25, 0.5, 2, sorted[0]!, sorted[200]!, sorted[399]!]) {
      const value = { kind: 'ratio', si: at } as never
      expect(drawn.probabilityBelow(value)).toBe(sorted.filter((y) => y < at).length / 400)
    }
    expect(() => drawn.probabilityBelow(N(1) as never)).toThrow('must be a ratio')
  })

  test('an optimum prints its choices, the points of its front and the ends that it met', () => {
    const cords = formula('test.cords', {
      inputs: { a: 'ratio', cord: { fields: { size: 'ratio', cost: 'ratio' } } },
      output: { weight: 'ratio', price: 'ratio' },
      source,
      si: ({ a, cord }) => ({ weight: a * cord.size, price: cord.cost / a }),
    })
    const choices = { cord: { thin: { cord: { size: 1, cost: 4 } }, thick: { cord: { size: 2, cost: 1 } } } }
    const front = optimise(cords, { vary: { a: { from: 1, to: 2 } }, choices, goals: [{ minimise: 'weight' }, { minimise: 'price' }], evaluations: 1000, population: 40 }) // biome-ignore format: one call
    expect(front.front.length).toBeGreaterThan(12)
    const rows = (text: string) => text.split('\n').filter((line) => line.startsWith('| '))
    expect(rows(front.toMarkdown())).toHaveLength(2 + 12)
    expect(rows(front.toMarkdown(3))).toHaveLength(2 + 3)
    const printed = rows(front.toMarkdown(3))
    for (const [line, point] of [[2, front.front[0]], [4, front.front.at(-1)]] as const) // biome-ignore format: rows
      expect(printed[line]).toBe(`| ${[point!.choices.cord, point!.inputs.a, point!.results.weight, point!.results.price].join(' | ')} |`)
    expect(JSON.stringify(front.chart)).toContain('"x":')
    // With choices alone every combination is run once.
    const only = optimise(cords, { choices, fixed: { a: 1 }, goals: { minimise: 'price' }, evaluations: 200, population: 8 })
    expect([only.best.choices.cord, only.best.results.price?.si]).toEqual(['thick', 1])
    // An option adds to what is fixed in the same record.
    const nested = optimise(cords, {
      choices: { size: { small: { cord: { size: 1 } }, big: { cord: { size: 3 } } } },
      fixed: { a: 1, cord: { cost: 7 } },
      goals: { maximise: 'weight' },
      evaluations: 200,
      population: 8,
    })
    expect([nested.best.choices.size, nested.best.results.price?.si, nested.best.results.weight?.si]).toEqual(['big', 7, 3])
    const ended = optimise(cords, { vary: { a: { from: 1, to: 2 } }, fixed: { cord: { size: 1, cost: 1 } }, goals: { minimise: 'weight' } })
    expect(ended.atLimits).toHaveLength(1)
    expect(ended.toMarkdown()).toContain(`- ${ended.atLimits[0]}: a wider range may give more`)
    expect(() => optimise(cords, { choices: { cord: {} }, fixed: {}, goals: { minimise: 'price' } })).toThrow(
      'choices.cord is an empty object; must hold at least one option',
    )
    expect(() => optimise(cords, { vary: { a: { from: 1, to: 1 } }, goals: { minimise: 'price' } })).toThrow(
      'must be a lower and a higher value',
    )
    expect(() => optimise(cords, { vary: { a: { from: 1, to: 2, step: 1 } } as never, goals: { minimise: 'price' } })).toThrow(
      'vary.a.step',
    )
    for (const goals of [{}, null, { minimise: 'price', maximise: 'weight' }, 'price'])
      expect(() => optimise(cords, { vary: { a: { from: 1, to: 2 } }, goals: goals as never })).toThrow(
        'must be { minimise: output } or { maximise: output }',
      )
    expect(() => optimise(cords, { vary: { a: { from: 1, to: 2 } }, goals: [] })).toThrow('must hold at least one goal')
  })

  test('a robust optimum prints the choices and the price of each', () => {
    const bar = formula('test.bar', {
      inputs: { size: 'ratio', load: 'ratio', grade: { fields: { strength: 'ratio', cost: 'ratio' } } },
      output: { cost: 'ratio', reserve: 'ratio' },
      source,
      si: ({ size, load, grade }) => ({ cost: size * grade.cost, reserve: (size * grade.strength) / load }),
    })
    const found = robustOptimum(bar, {
      vary: { size: { from: 0.1, to: 5 } },
      choices: { grade: { soft: { grade: { strength: 1, cost: 1 } }, hard: { grade: { strength: 2, cost: 3 } } } },
      goals: { minimise: 'cost' },
      constraints: { reserve: { min: 1 } },
      scatter: { load: uniform(0.8, 1.2) },
      evaluations: 400,
      draws: 100,
      chance: 0.9,
    })
    expect(found.state).toBe('held')
    expect(found.toMarkdown()).toContain('| grade | soft | soft |')
    // The soft bar that carries 1.16 to 1.2 instead of the mean load of 1.
    expect(found.price.cost).toBeGreaterThan(0.15)
    expect(found.price.cost).toBeLessThan(0.22)
    expect(found.toMarkdown()).toMatch(/\(\+1[5-9](\.\d)? %\)|\(\+2[01](\.\d)? %\)/)
    expect(() =>
      robustOptimum(bar, {
        vary: { size: { from: 1, to: 2 } },
        goals: { minimise: 'cost' },
        constraints: { reserve: { min: 1 } },
        scatter: { grade: { strenght: 1 } } as never,
      }),
    ).toThrow(InputError)
    expect(() =>
      robustOptimum(bar, {
        vary: { size: { from: 1, to: 2 } },
        goals: { minimise: 'cost' },
        constraints: { reserve: { min: 1 } },
        scatter: { size: uniform(1, 2) } as never,
        fixed: { load: 1 },
      }),
    ).toThrow('scatter.size is scatters; must not be varied as well')
    expect(() =>
      robustOptimum(bar, {
        vary: { size: { from: 1, to: 2 } },
        goals: { minimise: 'cost' },
        constraints: { reserve: { equals: 1 } },
        scatter: { load: uniform(1, 2) },
      }),
    ).toThrow('and no equality')
  })
})
