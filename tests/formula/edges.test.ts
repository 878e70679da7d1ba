// What a formula says of itself, and what it makes of values that no plain record holds.
import { describe, expect, test } from 'vitest'
import { formula, inputsInWords, isProperty, NoResultError, onlyKeys, property, recorder, ValidityError } from '../../src/formula/index.js'
import { atLeast, atMost, limitSentence, proposalsOf } from '../../src/formula/proposal.js'
import { InputError, type Issue, Quantity, quantity } from '../../src/units/index.js'

const source = [{ level: 'unverified', where: 'test' }] as const
const issuesOf = (call: () => unknown): readonly Issue[] => {
  try {
    call()
  } catch (error) {
    if (error instanceof InputError) return error.issues
    throw error
  }
  return []
}

test('errors have the names by which a caller tells them apart', () => {
  expect([new ValidityError('a').name, new NoResultError('a').name, new InputError('a', []).name]).toEqual([
    'ValidityError',
    'NoResultError',
    'InputError',
  ])
  for (const error of [new ValidityError('text'), new NoResultError('text')]) {
    expect(error).toBeInstanceOf(Error)
    expect([error.message, String(error)]).toEqual(['text', `${error.name}: text`])
  }
})

describe('a property', () => {
  const whole = { typical: 2, low: 1, high: 3, source: { level: 'assumption', where: 'a test' } } as const

  test('holds its own ends, also where all three are one', () => {
    for (const typical of [1, 2, 3]) expect(property('ratio', { ...whole, typical }).si).toBe(typical)
    expect(property('ratio', { ...whole, low: 2, high: 2 }).low).toBe(2)
    for (const typical of [0.999, 3.001])
      expect(issuesOf(() => property('ratio', { ...whole, typical })).map(({ path }) => path)).toEqual(['typical'])
  })

  test('is a record of known fields', () => {
    for (const nothing of [null, undefined, 5, [whole]])
      expect(issuesOf(() => property('ratio', nothing as never))).toEqual([
        expect.objectContaining({ accepts: 'must be a record of typical, low, high, source, conditions' }),
      ])
    expect(issuesOf(() => property('ratio', { ...whole, hihg: 3 } as never)).map(({ path }) => path)).toEqual(['hihg'])
    expect(
      issuesOf(() => property('ratio', { ...whole, source: { level: 'assumption', where: 'a', page: 3 } } as never)).map(
        ({ path }) => path,
      ),
    ).toEqual(['source.page'])
    expect(property('ratio', { ...whole, conditions: 'dry' }).conditions).toBe('dry')
    expect(property('ratio', whole).conditions).toBe('')
  })

  test('is known by its range and its source, as an object and as plain data', () => {
    const made = property('ratio', whole)
    expect(isProperty(made)).toBe(true)
    expect(isProperty({ kind: 'ratio', low: 1, high: 3, source: {} })).toBe(true)
    for (const none of [
      quantity('ratio', 2),
      2,
      null,
      undefined,
      {},
      { low: 1, kind: 'ratio' },
      { low: 1, source: {} },
      { kind: 'ratio', source: {} },
    ])
      expect(isProperty(none)).toBe(false)
  })
})

test('an input tells its limits and its default, whatever that is', () => {
  const factor = property('ratio', { typical: 2, low: 1, high: 3, source: { level: 'assumption', where: 'a test' } })
  const words = inputsInWords({
    plain: 'length',
    pair: { kind: 'length', default: [5, 'mm'] },
    known: { kind: 'ratio', default: factor },
    open: { kind: 'ratio', optional: true },
    given: { kind: 'length', default: '5 mm', min: '1 mm', below: '9 mm' },
    choice: { oneOf: ['a', 'b'], optional: true },
    held: { flag: true, default: true },
    curve: { curve: ['time', 'ratio'], optional: true },
    list: { list: 'length', optional: true },
    inner: { fields: { x: 'ratio' }, optional: true },
  } as never)
  expect(words).toMatchObject({
    plain: 'length',
    pair: 'length, default 5 mm',
    open: 'ratio, optional',
    given: 'length, at least 1 mm, below 9 mm, default 5 mm',
    choice: 'one of a, b, optional',
    held: 'true or false, default true',
    curve: 'curve of ratio over time, optional',
    list: 'list of length, optional',
    inner: 'record, optional',
    'inner.x': 'ratio',
  })
  expect(words.known).toMatch(/^ratio, default 2/)
})

test('a step shows six entries of a list, of more the first six and how many', () => {
  const sum = formula('test.sumOfAll', {
    inputs: { all: { list: 'length' } },
    output: 'length',
    source,

    si: ({ all }) => all.reduce((a, b) => a + b, 0),
  })
  const shown = (count: number) => {
    const log = recorder()
    log.of(sum, { all: Array.from({ length: count }, () => 1) } as never)
    const [step] = log.steps()
    expect(step).toMatchObject({ formula: 'test.sumOfAll', results: { result: `${count} m` } })
    return step!.inputs.all
  }
  expect(shown(6)).toBe(Array(6).fill('1 m').join(', '))
  expect(shown(7)).toBe(`${Array(6).fill('1 m').join(', ')}, … (7)`)
})

describe('a curve among the inputs', () => {
  const at = formula('test.at', { inputs: { curve: { curve: ['time', 'ratio'] }, time: 'time' }, output: { value: { kind: 'ratio', infinite: true } }, source, si: ({ curve, time }) => ({ value: curve(time) }) }) // biome-ignore format: one record

  test('is asked with a quantity, and what it gives is read as any value of its kind', () => {
    expect(at({ curve: (time) => time.in('min') / 2, time: '3 min' }).value.si).toBeCloseTo(1.5, 12)
    expect(at({ curve: () => '50 %', time: '3 min' }).value.si).toBe(0.5)
    expect(() => at({ curve: () => '5 mm' as never, time: '3 min' })).toThrow('a value of the curve curve')
    expect(issuesOf(() => at({ curve: 5 as never, time: '3 min' }))[0]).toMatchObject({
      path: 'curve',
      accepts: 'must be a function of time that gives ratio',
    })
  })

  test('may end: an infinite value reaches the formula, and what is no number is no answer', () => {
    expect(at({ curve: () => Number.POSITIVE_INFINITY, time: '3 min' }).value.si).toBe(Number.POSITIVE_INFINITY)
    expect(() => at({ curve: () => Number.NaN, time: '3 min' })).toThrow(NoResultError)
  })

  test('of an error of its own is passed on', () => {
    const wrong = () => {
      throw new InputError('mine', [{ path: 'a', given: '1', accepts: 'must be 2' }])
    }
    expect(() => at({ curve: wrong, time: '3 min' })).toThrow('mine')
  })
})

test('an input that nobody asked for is named by its whole path, with what there is', () => {
  const outer = formula('test.outermost', { inputs: { inner: { fields: { size: 'length', depth: { kind: 'length', optional: true } } } }, output: 'length', source, si: ({ inner }) => inner.size }) // biome-ignore format: one record
  const stray = (inner: object, more: object = {}) =>
    issuesOf(() => outer({ inner: { size: '1 m', ...inner }, ...more } as never)).map(({ path, accepts }) => `${path} ${accepts}`)
  expect(stray({})).toEqual([])
  expect(stray({ dephts: '1 m' })).toEqual(['inner.dephts is not an input, did you mean depth?'])
  expect(stray({ colour: 'red' })).toEqual(['inner.colour is not an input; inputs are size, depth'])
  expect(stray({}, { more: 1 })).toEqual(['more is not an input; inputs are inner'])
  expect(stray({ gone: undefined })).toEqual(['inner.gone is not an input; inputs are size, depth'])
  const issues: Issue[] = []
  expect(onlyKeys('a', { b: 1, c: 2 }, ['b', 'c'], issues)).toBe(true)
  expect(issues).toEqual([])
})

describe('limits that a design is held against', () => {
  const use = (part: number, whole: number) => atMost('load', 'force', part, whole).use

  test('a share of a limit is at most one where it is kept, whatever the signs', () => {
    for (const [
      part,
      whole,
      share,
    ] of [[5, 10, 0.5], [10, 10, 1], [20, 10, 2], [0, 10, 0], [-5, 10, 0], [0, 0, 0], [-1, 0, 0], [-10, -5, 0.5], [-5, -5, 1]] as const) // biome-ignore format: rows
      expect([part, whole, use(part, whole)]).toEqual([part, whole, share])
    for (const [part, whole] of [[1, 0], [-1, -5], [0, -5], [1, -5], [Number.NaN, 5], [5, Number.NaN], [Number.NaN, Number.NaN]] as const) // biome-ignore format: rows
      expect([part, whole, use(part, whole) > 1]).toEqual([part, whole, true])
    expect(atLeast('reserve', 'ratio', 2, 1).use).toBe(0.5)
    expect(atLeast('reserve', 'ratio', 0.5, 1).use).toBe(2)
    expect(limitSentence(atMost('load', 'force', 5, 10))).toBe('load of 5 N (at most 10 N)')
    expect(limitSentence(atLeast('load', 'force', 5, 10))).toBe('load of 5 N (at least 10 N)')
  })

  const designs = (load: number) =>
    [3, 1, 2].map((size) => ({
      design: { size },
      cost: size,
      limits: [atMost('load', 'force', load, size), atMost('size', 'length', size, 2.5)],
    }))
  const relaxable = [{ input: 'load', kind: 'force', easiest: 0.1 }] as const
  const wished = (load: number) => proposalsOf({ load }, (wish) => designs(wish.load), relaxable as never)

  test('what keeps all of them is ranked by cost, with the limit nearest to its end', () => {
    const found = wished(1)
    expect(found.state).toBe('met')
    expect(found.proposals.map(({ design, governing }) => [design.size, governing.what, governing.use])).toEqual([[1, 'load', 1], [2, 'size', 0.8]]) // biome-ignore format: rows
    expect(found.message).toBe('2 of 3 designs keep all limits. load of 1 N (at most 1 N) governs the first one.')
  })

  test('where none does, the nearest one, what it breaks and by how much, and the change that is enough', () => {
    const { state, refusal, message, proposals } = wished(2.2)
    expect([state, proposals]).toEqual(['refused', []])
    expect(refusal!.closest.design).toEqual({ size: 2 })
    expect(refusal!.broken.map(({ what }) => what)).toEqual(['load'])
    const [nearest] = refusal!.nearest
    expect(nearest!.met!.si).toBeLessThanOrEqual(2)
    expect(nearest!.met!.si).toBeGreaterThan(2 * (1 - 2e-3))
    expect(message).toContain('The nearest one breaks: load of 2.2 N (at most 2 N), 1.10 times the limit.')
    expect(message).toContain('One change alone is enough: load')
    // A limit of nothing is broken by no number of times.
    const never = proposalsOf({ load: 1 }, (wish) => [{ design: {}, cost: 1, limits: [atMost('load', 'force', wish.load, 0)] }], [
      { input: 'load', kind: 'force', easiest: 0.5 },
    ] as never)
    expect(never.message).toBe(
      'None of 1 designs keeps all limits. The nearest one breaks: load of 1 N (at most 0 N). No change of one input alone is enough.',
    )
    expect(never.refusal!.nearest[0]!.met).toBeUndefined()
  })

  test('a limit that a design is sized to governs only where it is broken', () => {
    const sized = { ...atLeast('reserve', 'ratio', 2, 2, true) }
    const of = (limits: readonly object[]) =>
      proposalsOf({}, () => [{ design: {}, cost: 1, limits: limits as never }], []).proposals[0]!.governing.what
    expect(of([sized, atMost('load', 'force', 1, 10)])).toBe('load')
    expect(of([sized])).toBe('reserve')
  })

  test('twelve designs are listed, the cheapest', () => {
    const many = proposalsOf(
      {},
      () => Array.from({ length: 20 }, (_, i) => ({ design: 19 - i, cost: 19 - i, limits: [atMost('a', 'ratio', 1, 2)] })),
      [],
    )
    expect(many.proposals.map(({ design }) => design)).toEqual(Array.from({ length: 12 }, (_, i) => i))
    expect(many.message).toContain('20 of 20 designs')
  })
})

test('a quantity of its own kind passes into a formula as it is, with its notes', () => {
  const twice = formula('test.twice', {
    inputs: { a: 'length' },
    output: 'length',
    source,
    valid: { 'a is short': ({ a }) => a < 1 },
    si: ({ a }) => 2 * a,
  })
  const first = twice({ a: '2 m' })
  expect(first.notes?.map(({ text }) => text)).toEqual(['outside validity: a is short'])
  // The inherited one, and that of this call.
  expect(twice({ a: first }).notes).toHaveLength(2)
  expect(twice({ a: '0.5 m' }).notes).toBeUndefined()
  expect(twice({ a: new Quantity(0.25, 'length') }).si).toBe(0.5)
})

test('a flag is true or false, and a list has as many entries as it must', () => {
  const held = formula('test.held', { inputs: { on: { flag: true }, all: { list: 'ratio' }, few: { list: 'ratio', least: 0 }, two: { list: 'ratio', least: 2 } }, output: 'ratio', source, si: ({ on, all }) => (on ? all.length : 0) }) // biome-ignore format: one record
  const good = { on: true, all: [1], few: [], two: [1, 2] }
  const refused = (change: object) => issuesOf(() => held({ ...good, ...change } as never)).map(({ path, accepts }) => `${path} ${accepts}`)
  expect([held(good).si, held({ ...good, on: false }).si]).toEqual([1, 0])
  for (const on of ['true', 1, 0, null]) expect(refused({ on })).toEqual(['on must be true or false'])
  expect(refused({ all: [] })).toEqual(['all must be a list of at least 1'])
  expect(refused({ two: [1] })).toEqual(['two must be a list of at least 2'])
})
