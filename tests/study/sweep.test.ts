import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { type AnyFormula, formula, NoResultError } from '../../src/formula/index.js'
import { planOf } from '../../src/study/design.js'
import { bounds, type Design, optimise, runSweep, solveFor, sweep, sweepJob, uniform } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const nested = formula('test.nested', {
  inputs: { x: 'ratio', outer: { fields: { shift: 'ratio' } } },
  output: { height: 'ratio', side: { oneOf: ['left', 'right'] }, all: { list: 'ratio' } },
  source: memory,
  si: ({ x, outer }) => ({ height: 1 / (x - outer.shift), side: x < 0 ? 'left' : 'right', all: [x] }),
})

test('a grid runs every combination, the last input fastest, and each row is what a checked call gives', () => {
  const table = sweep(slackTension, {
    over: { load: { from: '100 N', to: '300 N', count: 3 }, friction: [0.1, 0.2] },
    fixed: { wrapAngle: '2 turn' },
  })
  expect(table.rows).toBe(6)
  expect([...table.in('load', 'N')]).toEqual([100, 100, 200, 200, 300, 300])
  expect([...table.in('friction', '%')].map(Math.round)).toEqual([10, 20, 10, 20, 10, 20])
  for (let i = 0; i < table.rows; i++) {
    const { load, friction, result } = table.row(i)
    expect((result as { si: number }).si).toBe(slackTension({ load: load as never, friction: friction as never, wrapAngle: '2 turn' }).si)
  }
  expect(table.gaps).toBe(0)
})

test('lists run row by row, nested fields and words included', () => {
  const table = sweep(nested, { over: { x: [-1, 2], 'outer.shift': [1, 1] }, fixed: { outer: {} }, design: 'list' })
  expect([...table.in('height', '1')]).toEqual([-0.5, 1])
  expect(table.column('side')).toMatchObject({ words: ['left', 'right'] })
  expect(table.columns.map((column) => column.name)).toEqual(['x', 'outer.shift', 'height', 'side'])
})

test('rows without a finite answer are counted, not hidden', () => {
  const table = sweep(nested, { over: { x: [1, 2] }, fixed: { outer: { shift: 1 } } })
  expect(table.gaps).toBe(1)
  expect(table.toMarkdown()).toContain('1 row without a finite answer')
})

test('sampled designs stay within their ranges, fill them, and repeat with their seed', () => {
  const over = { load: { from: '1 N', to: '10000 N', spacing: 'log' }, friction: { from: 0.1, to: 0.3 } } as const
  for (const design of [
    { latinHypercube: 64, seed: 5 },
    { sobol: 64, seed: 5 },
  ] as const) {
    const table = sweep(slackTension, { over, fixed: { wrapAngle: '1 turn' }, design })
    const loads = [...table.in('load', 'N')]
    expect(loads.every((x) => x >= 1 && x <= 10000)).toBe(true)
    // each quarter of the logarithmic range holds a quarter of the points
    for (let q = 0; q < 4; q++) expect(loads.filter((x) => Math.floor(Math.log10(x)) === q)).toHaveLength(16)
    expect(sweep(slackTension, { over, fixed: { wrapAngle: '1 turn' }, design }).toCSV()).toBe(table.toCSV())
  }
})

test('CSV carries units in its header and every digit', () => {
  const csv = sweep(slackTension, { over: { load: ['1 N'] }, fixed: { friction: 0.1, wrapAngle: '1 rad' } }).toCSV()
  expect(csv).toBe(`load [N],result [N]\n1,${Math.exp(-0.1)}\n`)
})

test.each([
  [() => sweep(slackTension, { over: {}, fixed: {} }), 'at least one input'],
  [() => sweep(slackTension, { over: { lod: ['1 N'] } as never }), 'did you mean load?'],
  [() => sweep(slackTension, { over: { load: ['1 mm'] } as never, fixed: { friction: 0.1, wrapAngle: '1 rad' } }), 'over.load[0]'],
  [
    () => sweep(slackTension, { over: { load: ['1 N', '-1 N'] }, fixed: { friction: 0.1, wrapAngle: '1 rad' } }),
    "over.load[1] is '-1 N'; must be at least 0",
  ],
  [() => sweep(slackTension, { over: { load: [] }, fixed: { friction: 0.1, wrapAngle: '1 rad' } }), 'must be a list of values or a range'],
  [
    () => sweep(slackTension, { over: { load: { from: '1 N', to: '2 N' } }, fixed: { friction: 0.1, wrapAngle: '1 rad' } }),
    'over.load.count',
  ],
  [
    () =>
      sweep(slackTension, {
        over: { load: { from: '0 N', to: '2 N', count: 3, spacing: 'log' } },
        fixed: { friction: 0.1, wrapAngle: '1 rad' },
      }),
    'above zero',
  ],
  [() => sweep(slackTension, {} as never), 'over is missing; must name at least one input to vary'],
  [() => sweep(slackTension, { over: { load: ['1 N'] }, fixed: { friction: 0.1 } }), 'wrapAngle is missing'],
  [
    () => sweep(slackTension, { over: { load: ['1 N'] }, fixed: { friction: 0.1, wrapAngel: '1 rad' } as never }),
    'did you mean wrapAngle?',
  ],
  [
    () => sweep(slackTension, { over: { load: ['1 N', '2 N'], friction: [0.1] }, fixed: { wrapAngle: '1 rad' }, design: 'list' }),
    'equal length',
  ],
  [
    () => sweep(slackTension, { over: { load: ['1 N'] }, fixed: { friction: 0.1, wrapAngle: '1 rad' }, design: { sobol: 8 } }),
    'sampled designs take no lists',
  ],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})

test('an unknown column is named with the ones there are', () => {
  const table = sweep(slackTension, { over: { load: ['1 N'] }, fixed: { friction: 0.1, wrapAngle: '1 rad' } })
  expect(() => table.column('lod')).toThrow('columns are load, result')
  expect(() => table.in('load', 'mm')).toThrow(InputError)
})

test('a kernel that finds no answer makes a gap, in every tool; any other error ends it', () => {
  const lost = formula('test.lost', {
    inputs: { a: 'ratio', wrong: { flag: true, default: false } },
    output: { y: 'ratio', word: { oneOf: ['low', 'high'] } },
    source: memory,
    si: ({ a, wrong }) => {
      if (wrong) throw new TypeError('a slip')
      if (a > 1) throw new NoResultError('too far')
      return { y: a * a, word: a < 0 ? 'low' : 'high' }
    },
  })
  const plain = formula('test.lostPlain', {
    inputs: { a: 'ratio' },
    output: 'ratio',
    source: memory,
    si: ({ a }) => lost.si({ a, wrong: false }).y,
  })
  const table = sweep(lost, { over: { a: [-1, 0, 2] } })
  expect(table.gaps).toBe(1)
  expect(table.column('word')).toMatchObject({ words: ['low', 'high', 'no answer'] })
  expect([...sweep(plain, { over: { a: [2, 0.5, 3] } }).in('result', '1')]).toEqual([Number.NaN, 0.25, Number.NaN])
  expect(() => sweep(lost, { over: { a: [1] }, fixed: { wrong: true } })).toThrow('a slip')
  expect(solveFor(plain, 'a', {}, 0.25).roots.map(({ si }) => si)).toEqual([expect.closeTo(-0.5, 9), expect.closeTo(0.5, 9)])
  expect(bounds(plain, { a: uniform(0, 2) }).gaps).toBeGreaterThan(0)
  expect(optimise(plain, { vary: { a: { from: 0.5, to: 3 } }, goals: { maximise: 'result' } }).best.inputs.a?.si).toBeCloseTo(1, 6)
})

test('where code may not be made at run time the plain loop gives the same bits', () => {
  const plan = {
    over: { load: { from: '1 N', to: '900 N', count: 13 }, friction: { from: 0.1, to: 0.3, count: 7 } },
    fixed: { wrapAngle: '3 turn' },
  } as const
  const made = sweep(slackTension, plan).toCSV()
  // A kernel of its own, since loops are kept by kernel.
  const again = formula('test.again', { ...slackTension.def, si: (x) => slackTension.si(x) })
  vi.stubGlobal('Function', () => {
    throw new EvalError('no code at run time here')
  })
  try {
    expect(sweep(again, plan).toCSV()).toBe(made)
  } finally {
    vi.unstubAllGlobals()
  }
})

test('a formula of several outputs, optional inputs and nested records runs the same in one loop as call by call', () => {
  const wide = formula('test.wide', {
    inputs: {
      a: 'ratio',
      'odd name': 'ratio',
      left: { kind: 'ratio', optional: true },
      usual: { kind: 'ratio', default: 2 },
      inner: { fields: { b: 'ratio' } },
      way: { oneOf: ['up', 'down'] },
    },
    output: { sum: 'ratio', product: 'ratio', none: 'ratio', four: 'ratio' },
    source: memory,
    si: ({ a, 'odd name': odd, left, usual, inner, way }) => ({
      sum: a + odd + (left ?? 10) + usual,
      product: a * odd * inner.b,
      none: way === 'up' ? a : -a,
      four: 4,
    }),
  })
  const table = sweep(wide, { over: { 'odd name': [1, 2, 3], a: [5, 7] }, fixed: { inner: { b: 0.5 }, way: 'down' } })
  expect(table.rows).toBe(6)
  for (let i = 0; i < table.rows; i++) {
    const row = table.row(i) as unknown as Record<string, { si: number }>
    const called = wide({ a: row.a!.si, 'odd name': row['odd name']!.si, inner: { b: 0.5 }, way: 'down' })
    for (const name of ['sum', 'product', 'none', 'four'] as const) expect(row[name]!.si).toBe(called[name].si)
  }
})

const record = {
  inputs: { low: 'ratio', high: 'ratio' },
  requires: { high: { accepts: 'must be above low', holds: ({ low, high }: { low: number; high: number }) => high > low } },
  source: memory,
} as const
const window = formula('test.window', { ...record, output: 'ratio', si: ({ low, high }) => 1 / (high - low) })

test('a row that the checked call would reject has no answer, in the compiled and in the plain loop', () => {
  const over = { over: { low: [0, 1, 2] }, fixed: { high: 1 } }
  const numbers = sweep(window, over)
  expect([...numbers.in('result', '1')]).toEqual([1, Number.NaN, Number.NaN])
  expect(numbers.gaps).toBe(2)
  const words = formula('test.windowWords', {
    ...record,
    output: { width: 'ratio', word: { oneOf: ['wide'] } },
    si: ({ low, high }) => ({ width: high - low, word: 'wide' as const }),
  })
  expect(sweep(words, over).column('word')).toMatchObject({ words: ['wide', 'no answer', 'no answer'] })
})

test('blocks of any size, begun at any row of a grid, hold the rows of the whole in their order', () => {
  const three = formula('test.three', {
    inputs: { a: 'ratio', b: 'ratio', c: 'ratio' },
    requires: { c: { accepts: 'must differ from a', holds: ({ a, c }) => a !== c } },
    output: { sum: 'ratio', power: 'ratio' },
    source: memory,
    si: ({ a, b, c }) => ({ sum: 100 * a + 10 * b + c, power: Math.exp(a) * b ** c }),
  })
  const values = fc.integer({ min: 1, max: 9 }).map((n) => Array.from({ length: n }, (_, k) => k + 1))
  fc.assert(
    fc.property(values, values, values, fc.integer({ min: 1, max: 50 }), (a, b, c, blockRows) => {
      const expected = a.flatMap((a) =>
        b.flatMap((b) => c.map((c) => [a, b, c, ...(a === c ? [Number.NaN, Number.NaN] : Object.values(three.si({ a, b, c })))])),
      )
      const job = sweepJob(three, { over: { a, b, c } })
      const rows = Array.from({ length: Math.ceil(job.rows / blockRows) }, (_, k) => job.block(k, blockRows)).flatMap((block) =>
        Array.from({ length: block.rows }, (_, i) => block.columns.map((column) => column[i])),
      )
      expect(rows).toEqual(expected)
    }),
    { numRuns: 50 },
  )
})

test('a long grid repeats its values as each row alone has them', () => {
  const over = {
    load: { from: '1 N', to: '2 N', count: 3 },
    friction: { from: 0.1, to: 0.2, count: 2 },
    wrapAngle: { from: '1 rad', to: '2 rad', count: 1500 },
  }
  const plan = planOf(slackTension as unknown as AnyFormula, over, 'grid')
  const columns = plan.paths.map(() => new Float64Array(7000))
  plan.fillColumns(1234, 8234, columns)
  const row = new Float64Array(3)
  const alone = columns.map(() => new Float64Array(7000))
  for (let i = 0; i < 7000; i++) {
    plan.fill(1234 + i, row)
    alone.forEach((column, p) => {
      column[i] = row[p] as number
    })
  }
  expect(columns).toEqual(alone)
})

/** As many values of each of three inputs. */
const cube = (count: number) => ({
  over: {
    load: { from: '1 N', to: '2 N', count },
    friction: { from: 0.1, to: 0.2, count },
    wrapAngle: { from: '1 turn', to: '2 turn', count },
  } as const,
})

test('a sweep of 1e12 rows is rejected before its blocks are listed, and a part of it runs', async () => {
  const job = sweepJob(slackTension, cube(1e4))
  await expect(runSweep(job)).rejects.toThrow('at most 100000000 rows')
  const part = await runSweep(job, { shard: [1, 1e9], blockRows: 500 })
  // 2e9 blocks: the first one and the one after 1e9 others.
  expect(part.rows).toBe(1000)
  expect(part.row(0).load!.toString()).toBe('1 N')
  // The last part of three parts of seven rows has the short block.
  const seven = sweepJob(slackTension, {
    over: { load: { from: '1 N', to: '7 N', count: 7 } },
    fixed: { friction: 0.2, wrapAngle: '1 turn' },
  })
  const rows = await Promise.all([1, 2, 3].map(async (k) => (await runSweep(seven, { shard: [k, 3], blockRows: 2 })).rows))
  expect(rows).toEqual([3, 2, 2])
})

test.each([
  ['a grid of 1e9 values', () => sweep(slackTension, sized({ from: '1 N', to: '2 N', count: 1e9 })), 'over.load.count'],
  ['a grid of 1e12 values', () => sweep(slackTension, sized({ from: '1 N', to: '2 N', count: 1e12 })), 'over.load.count'],
  [
    'a grid of 1e9 rows',
    () => {
      const axis = { from: 0.1, to: 0.2, count: 1000 } as const
      return sweep(slackTension, {
        over: {
          load: { from: '1 N', to: '2 N', count: 1000 },
          friction: axis,
          wrapAngle: { from: '1 turn', to: '2 turn', count: 1000 },
        },
      })
    },
    'at most 100000000 rows',
  ],
  ['a grid of 1e18 rows', () => sweep(slackTension, cube(1e6)), 'at most 9e15'],
  ['1e9 points of a hypercube', () => sweep(slackTension, designed({ latinHypercube: 1e9, seed: 1 })), 'design.latinHypercube'],
  ['1e9 points of a sequence', () => sweep(slackTension, designed({ sobol: 1e9 })), 'at most 100000000 rows'],
  ['a hypercube without a seed', () => sweep(slackTension, designed({ latinHypercube: 9 } as never)), 'design.seed'],
  ['a sequence with half a seed', () => sweep(slackTension, designed({ sobol: 9, seed: 0.5 })), 'design.seed'],
])('%s is rejected by name before memory runs out', (_, call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})
const sized = (load: { from: '1 N'; to: '2 N'; count: number }) => ({ over: { load }, fixed: { friction: 0.1, wrapAngle: '1 turn' } })
const designed = (design: Design) => ({
  over: { load: { from: '1 N', to: '2 N' } } as const,
  fixed: { friction: 0.1, wrapAngle: '1 turn' },
  design,
})
