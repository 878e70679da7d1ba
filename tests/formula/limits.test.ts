// What carries notes, what is plain data, and inputs and results in words.
import { describe, expect, test } from 'vitest'
import {
  formula,
  inputsInWords,
  isRecord,
  NoResultError,
  notesOf,
  onlyKeys,
  outputsInWords,
  property,
  recorder,
  requireKeys,
} from '../../src/formula/index.js'
import { InputError, type Issue, Quantity } from '../../src/units/index.js'

const source = [{ level: 'unverified', where: 'test' }] as const

function issuesOf(call: () => unknown): readonly Issue[] {
  try {
    call()
  } catch (error) {
    if (error instanceof InputError) return error.issues
    throw error
  }
  throw new Error('nothing was refused')
}

describe('notes of what was given', () => {
  const note = { formula: 'test.a', text: 'outside validity' }
  const noted = new Quantity(1, 'length', undefined, [note])

  test('are found in the value itself, in records within records and in lists of them, each once', () => {
    for (const given of [noted, { a: noted }, { a: { b: noted } }, { a: [noted] }, { a: [{ b: [{ c: noted }] }], d: noted }])
      expect(notesOf(given)).toEqual([note])
  })

  test('a record or a list that holds itself is searched to its end', () => {
    const ring: Record<string, unknown> = { a: noted }
    ring.self = ring
    const list: unknown[] = [{ a: noted }]
    list.push(list, { list })
    expect([notesOf(ring), notesOf(list)]).toEqual([[note], [note]])
  })

  test('nothing is found where nothing is noted', () => {
    for (const given of [1, '1 mm', null, {}, { a: 1 }, { a: { b: new Quantity(1, 'length') } }, { a: [1, 2], b: null }])
      expect(notesOf(given)).toBeUndefined()
  })
})

describe('plain records', () => {
  test('nothing, a list and a text are none', () => {
    for (const given of [null, undefined, [1], 'text', 5]) expect(isRecord(given)).toBe(false)
    expect(isRecord({})).toBe(true)
    const issues: Issue[] = []
    expect(onlyKeys('foot', null, ['pad'], issues)).toBe(false)
    expect(issues).toEqual([{ path: 'foot', given: 'null', accepts: 'must be a record of pad' }])
  })

  test('a surplus field is told by its whole path, at the top by its name alone', () => {
    const path = (at: string) => issuesOf(() => requireKeys('test', at, { paad: 1 }, ['pad']))[0]?.path
    expect(path('')).toBe('paad')
    expect(path('leg.foot')).toBe('leg.foot.paad')
  })

  test('a field that throws when it is read is told by its whole path', () => {
    const outer = formula('test.outer', {
      inputs: { a: { fields: { b: 'length' } }, c: 'length' },
      output: 'length',
      source,
      si: ({ c }) => c,
    })
    const broken = (name: string, rest: object) =>
      Object.defineProperty({ ...rest }, name, {
        enumerable: true,
        get: () => {
          throw new Error('gone')
        },
      })
    expect(issuesOf(() => outer(broken('c', { a: { b: '1 m' } }) as never))[0]?.path).toBe('c')
    expect(issuesOf(() => outer({ a: broken('b', {}), c: '1 m' } as never))[0]?.path).toBe('a.b')
  })

  test('a nested record carries quantities also in their JSON form, whole ones only', () => {
    const outer = formula('test.carried', { inputs: { a: { fields: { b: 'length' } } }, output: 'length', source, si: ({ a }) => a.b })
    const call = (density: unknown) => outer({ a: { b: '1 m', density } } as never)
    expect(call({ kind: 'density', value: 970, unit: 'kg/m^3' }).si).toBe(1)
    for (const half of [
      { kind: 'density', unit: 'kg/m^3' },
      { value: 970, unit: 'kg/m^3' },
      { kind: 'density', value: 970 },
    ])
      expect(issuesOf(() => call(half))[0]?.path).toBe('a.density')
  })
})

describe('a property', () => {
  const whole = { typical: '2 GPa', low: '1 GPa', high: '3 GPa', source: { level: 'assumption', where: 'a test' } } as const

  test('says where it comes from', () => {
    for (const where of ['', undefined, 5])
      expect(issuesOf(() => property('modulus', { ...whole, source: { level: 'assumption', where } } as never))).toEqual([
        { path: 'source', given: expect.anything(), accepts: 'must say where the value comes from' },
      ])
  })

  test('a value that cannot be read is told once, and not held against its range', () => {
    expect(issuesOf(() => property('modulus', { ...whole, typical: 'soft' as never })).map(({ path }) => path)).toEqual(['typical'])
    expect(issuesOf(() => property('modulus', { ...whole, typical: '4 GPa' }))[0]?.accepts).toContain('must lie within its range')
  })
})

test('only an output that says so may be infinite', () => {
  const inverse = formula('test.inverse', { inputs: { x: 'ratio' }, output: 'ratio', source, si: ({ x }) => 1 / x })
  const both = formula('test.both', {
    inputs: { x: 'ratio' },
    output: { a: 'ratio', b: { kind: 'ratio', infinite: true } },
    source,
    si: ({ x }) => ({ a: x, b: 1 / x }),
  })
  expect(() => inverse({ x: 0 })).toThrow(NoResultError)
  expect(() => both({ x: Number.MIN_VALUE })).not.toThrow()
  expect(both({ x: 0 }).b.si).toBe(Number.POSITIVE_INFINITY)
})

const everything = formula('test.everything', {
  inputs: {
    load: { kind: 'force', min: '0 N', below: '1 kN' },
    teeth: { kind: 'count', whole: true, above: 3, max: 90 },
    angle: 'angle',
    finish: { oneOf: ['fine', 'coarse'], default: 'fine' },
    loads: { list: { kind: 'force', optional: true } },
    groups: { list: { fields: { bolt: 'length' } }, optional: true },
    creep: { curve: ['time', 'ratio'] },
    wet: { flag: true, default: false },
    outer: { fields: { inner: { fields: { poisson: { kind: 'ratio', default: 0.3 } } } } },
  },
  output: {
    total: 'force',
    each: { list: 'force' },
    state: { oneOf: ['held', 'loose'] },
    until: { kind: 'time', infinite: true },
  },
  source,
  si: ({ load }) => ({ total: load, each: [load], state: 'held', until: Number.POSITIVE_INFINITY }),
})

test('inputs and outputs are told in words, with limits and defaults', () => {
  expect(inputsInWords(everything.def.inputs)).toEqual({
    load: 'force, at least 0 N, below 1 kN',
    teeth: 'count, above 3, at most 90, whole',
    angle: 'angle',
    finish: 'one of fine, coarse, default fine',
    loads: 'list of force, optional',
    groups: 'list of record, optional',
    'groups[].bolt': 'length',
    creep: 'curve of ratio over time',
    wet: 'true or false, default false',
    outer: 'record',
    'outer.inner': 'record',
    'outer.inner.poisson': 'ratio, default 0.3',
  })
  expect(outputsInWords(everything.def.output)).toEqual({
    total: 'force',
    each: 'list of force',
    state: 'one of held, loose',
    until: 'time, may be infinite',
  })
  expect(outputsInWords('force')).toEqual({ result: 'force' })
  expect(outputsInWords({ kind: 'time', infinite: true })).toEqual({ result: 'time, may be infinite' })
})

test('a step prints each result in its own kind, infinite ones included', () => {
  const log = recorder()
  const x = { load: 12, teeth: 20, angle: 0, finish: 'fine', loads: [12], creep: () => 1, wet: false, outer: { inner: { poisson: 0.3 } } }
  log.of(everything, x as never)
  expect(log.steps()[0]?.results).toEqual({
    total: '12 N',
    each: '12 N',
    state: 'held',
    until: String(new Quantity(Number.POSITIVE_INFINITY, 'time')),
  })
})
