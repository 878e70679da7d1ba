import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bare, type Evaluator, formula, NoResultError, property, readInputs, recorder, ValidityError } from '../../src/formula/index.js'
import { deg, InputError, mm, N, Quantity, quantity } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const

const stressOf = formula('test.stressOf', {
  inputs: {
    load: { kind: 'force', min: '0 N' },
    width: { kind: 'length', above: 0, max: '1 m' },
    height: { kind: 'length', above: 0, default: '2 mm' },
  },
  output: 'stress',
  source: memory,
  valid: { 'width at most 10 heights': ({ width, height }) => width <= 10 * height },
  si: ({ load, width, height }) => load / (width * height),
})

const everything = formula('test.everything', {
  inputs: {
    shape: { oneOf: ['round', 'square'] },
    loads: { list: { kind: 'force', min: 0 }, least: 2 },
    outer: { fields: { modulus: 'modulus', poisson: { kind: 'ratio', default: 0.3 } } },
    creep: { curve: ['time', 'ratio'] },
    wet: { flag: true, default: false },
    turns: { kind: 'count', whole: true, min: 1 },
    extra: { kind: 'length', optional: true },
    finish: { oneOf: ['fine', 'coarse'], default: 'fine' },
  },
  output: { total: 'force', each: { list: 'force' }, state: { oneOf: ['held', 'loose'] }, until: { kind: 'time', infinite: true } },
  source: memory,
  si: ({ shape, loads, outer, creep, wet, turns, extra, finish }) => ({
    total: loads.reduce((a, b) => a + b, 0) * creep(60) * outer.poisson * (extra ?? 1) * (finish === 'fine' ? 1 : 2),
    each: loads.map((load) => load * turns),
    state: shape === 'round' && !wet ? 'held' : 'loose',
    until: wet ? 5 : Number.POSITIVE_INFINITY,
  }),
})

const full = { shape: 'round', loads: ['1 N', N(2)], outer: { modulus: '2 GPa' }, creep: () => 0.5, turns: 2 } as const

describe('a checked call', () => {
  test('takes text, pairs and quantities alike and agrees with the kernel', () => {
    const wanted = stressOf.si({ load: 100, width: 0.01, height: 0.002 })
    expect(stressOf({ load: '100 N', width: '10 mm' }).si).toBe(wanted)
    expect(stressOf({ load: [100, 'N'], width: mm(10), height: '2 mm' }).si).toBe(wanted)
    expect(stressOf({ load: '100 N', width: '10 mm' }).kind).toBe('stress')
  })

  test('lists, choices, records, curves, flags, optional and default inputs', () => {
    const y = everything(full)
    expect(y.total.si).toBeCloseTo(3 * 0.5 * 0.3, 15)
    expect(y.each.map((f) => f.in('N'))).toEqual([2, 4])
    expect(y.state).toBe('held')
    expect(y.until.si).toBe(Number.POSITIVE_INFINITY)
    expect(everything({ ...full, wet: true, extra: '2 m', finish: 'coarse' }).total.si).toBeCloseTo(4 * 0.45, 12)
  })

  test('a curve may be a function of quantities or carry its SI form', () => {
    const onQuantities = everything({ ...full, creep: (t: Quantity<'time'>) => t.in('min') / 2 })
    const withSi = everything({ ...full, creep: Object.assign(() => 0, { si: () => 0.5 }) })
    expect(onQuantities.total.si).toBe(withSi.total.si)
  })

  test('a nested record may carry more quantities, the argument may not', () => {
    expect(everything({ ...full, outer: { modulus: '2 GPa', density: quantity('density', '1 g/cm^3') } as never }).state).toBe('held')
    expect(() => everything({ ...full, outer: { modulus: '2 GPa', density: 5 } as never })).toThrow('outer.density is 5; is not an input')
    expect(() => everything({ ...full, exta: '2 m' } as never)).toThrow("exta is '2 m'; is not an input, did you mean extra?")
  })
})

describe('bad input', () => {
  const issues = (call: () => unknown) => {
    try {
      call()
    } catch (error) {
      if (error instanceof InputError) return error.issues
      throw error
    }
    throw new Error('nothing was refused')
  }

  test('all of it is listed at once, each with its path', () => {
    const found = issues(() =>
      everything({ shape: 'rund', loads: ['1 N', '2 m'], outer: { poisson: 'x' }, creep: 5, turns: 1.5, wet: 'yes' } as never),
    )
    expect(found.map(({ path }) => path)).toEqual(['shape', 'loads[1]', 'outer.modulus', 'outer.poisson', 'creep', 'wet', 'turns'])
    expect(found[0]?.accepts).toContain('did you mean round?')
    expect(found[2]).toEqual({ path: 'outer.modulus', given: 'missing', accepts: expect.stringContaining('must be a modulus such as') })
  })

  test.each([
    [{ load: '-1 N', width: '1 mm' }, "load is '-1 N'; must be at least 0 N"],
    [{ load: '1 N', width: '0 mm' }, "width is '0 mm'; must be above 0"],
    [{ load: '1 N', width: '2 m' }, 'at most 1 m'],
    [{ load: N(Number.NaN), width: '1 mm' }, 'must be finite'],
    [{ load: [Number.POSITIVE_INFINITY, 'N'], width: '1 mm' }, 'must be finite'],
    [{ load: mm(5), width: '1 mm' }, 'load is 5 mm (kind length)'],
    [{ load: '1 N', width: '1 mm', surplus: undefined }, 'surplus is undefined; is not an input'],
    [{ laod: '1 N', width: '1 mm' }, "laod is '1 N'; is not an input, did you mean load?"],
    [null, 'must be an object with load, width, height'],
    [['1 N'], 'must be an object'],
    ['5 N', 'must be an object'],
    [JSON.parse('{"load": "1 N", "width": "1 mm", "__proto__": {"x": 1}}'), '__proto__'],
    [{ load: '1 N', width: '1 mm', constructor: 5 }, 'constructor is 5; is not an input'],
    [{ load: { load: '1 N' }, width: '1 mm' }, 'load is an object with load'],
  ])('%j', (given, message) => {
    expect(() => stressOf(given as never)).toThrow(InputError)
    expect(() => stressOf(given as never)).toThrow(message)
  })

  test('lists that are too short, and not a list', () => {
    expect(() => everything({ ...full, loads: ['1 N'] })).toThrow('must be a list of at least 2')
    expect(() => everything({ ...full, loads: '1 N' as never })).toThrow('must be a list')
  })

  test('a default that its own record refuses fails early', () => {
    const wrong = formula('test.wrong', {
      inputs: { x: { kind: 'length', above: 0, default: '0 m' } },
      output: 'length',
      source: memory,
      si: ({ x }) => x,
    })
    expect(() => wrong({})).toThrow(InputError)
  })

  test('a record with a kind that does not exist says so', () => {
    const wrong = formula('test.unknown', { inputs: { x: 'lenght' as 'length' }, output: 'length', source: memory, si: ({ x }) => x })
    expect(() => wrong({ x: '1 m' })).toThrow("kind is 'lenght'; must be a kind of quantity; did you mean length?")
  })

  test('a curve that gives something else is told by name', () => {
    expect(() => everything({ ...full, creep: (() => '5 mm') as never })).toThrow(
      /curve creep: it is '5 mm'; must be a ratio.*mm is a unit of length/,
    )
  })

  test('a text that was read before is read again after another, and a refused one is never remembered', () => {
    const width = (text: string) => stressOf({ load: '1 N', width: text as '1 mm' })
    expect(width('1 mm').si).toBe(width('1 mm').si)
    expect(width('2 mm').si).toBe(width('1 mm').si / 2)
    expect(() => width('2 m')).toThrow('at most 1 m')
    expect(() => width('2 m')).toThrow('at most 1 m')
  })

  test('a value at an open limit is refused, beside it taken', () => {
    const open = formula('test.open', {
      inputs: { x: { kind: 'ratio', above: 0, below: 1 } },
      output: 'ratio',
      source: memory,
      si: ({ x }) => x,
    })
    expect(open({ x: 0.999 }).si).toBe(0.999)
    expect(() => open({ x: 1 })).toThrow('must be above 0 and below 1')
    expect(() => open({ x: 0 })).toThrow('must be above 0 and below 1')
  })

  test('an output that may be infinite is still never NaN nor minus infinity', () => {
    const until = formula('test.until', {
      inputs: { x: 'ratio' },
      output: { kind: 'time', infinite: true },
      source: memory,
      si: ({ x }) => Math.log(x) / 0,
    })
    expect(until({ x: 2 }).si).toBe(Number.POSITIVE_INFINITY)
    expect(() => until({ x: 0.5 })).toThrow(NoResultError)
    expect(() => until({ x: 1 })).toThrow(NoResultError)
  })

  test('no finite answer is an error of its own, never NaN', () => {
    const root = formula('test.root', { inputs: { x: 'ratio' }, output: 'ratio', source: memory, si: ({ x }) => Math.sqrt(x) })
    expect(root({ x: 4 }).si).toBe(2)
    expect(() => root({ x: -1 })).toThrow(NoResultError)
    expect(() => root({ x: -1 })).toThrow('test.root: the result is NaN')
  })
})

describe('notes', () => {
  test('a broken validity statement becomes a note and travels on', () => {
    const wide = stressOf({ load: '1 N', width: '50 mm' })
    expect(wide.notes).toEqual([{ formula: 'test.stressOf', text: 'outside validity: width at most 10 heights' }])
    const twice = formula('test.twice', { inputs: { stress: 'stress' }, output: 'stress', source: memory, si: ({ stress }) => 2 * stress })
    expect(twice({ stress: wide }).notes).toEqual(wide.notes)
  })

  test('notes of nested inputs and of lists are inherited once each', () => {
    const note = { formula: 'x', text: 'y' }
    const noted = <K extends 'force' | 'modulus'>(kind: K) => new Quantity(1, kind, undefined, [note])
    const y = everything({ ...full, loads: [noted('force'), noted('force')], outer: { modulus: noted('modulus') } })
    expect(y.total.notes).toEqual([note])
    expect(everything({ ...full, outer: { modulus: '2 GPa', notes: [note] } as never }).total.notes).toEqual([note])
  })

  test('strict throws instead', () => {
    expect(() => stressOf({ load: '1 N', width: '50 mm' }, { strict: true })).toThrow(ValidityError)
    expect(stressOf({ load: '1 N', width: '5 mm' }, { strict: true }).notes).toBeUndefined()
  })
})

describe('evaluators', () => {
  const chain = (of: Evaluator, load: number) => {
    const stress = of(stressOf, { load, width: 0.05, height: 0.002 })
    return of(stressOf, { load: stress * 1e-6, width: 0.01, height: 0.002 })
  }

  test('a recorded chain gives the bare result and keeps every step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), (load) => {
        const sheet = recorder()
        expect(chain(sheet.of, load)).toBe(chain(bare, load))
        expect(sheet.steps()).toHaveLength(2)
      }),
    )
    const sheet = recorder()
    chain(sheet.of, 100)
    expect(sheet.steps()[0]).toEqual({
      formula: 'test.stressOf',
      title: 'stress of',
      inputs: { load: '100 N', width: '50 mm', height: '2 mm' },
      results: { result: '1 MPa' },
      assumes: [],
      notes: ['width at most 10 heights'],
      source: memory,
    })
  })

  test('records, lists, choices and curves have texts', () => {
    const sheet = recorder()
    sheet.of(everything, {
      shape: 'round',
      loads: [1, 2],
      outer: { modulus: 2e9, poisson: 0.3 },
      creep: () => 1,
      wet: false,
      turns: 1,
      extra: undefined,
      finish: 'fine',
    })
    const step = sheet.steps()[0]
    expect(step?.inputs).toEqual({
      shape: 'round',
      loads: '1 N, 2 N',
      outer: 'modulus 2 GPa, poisson 0.3',
      creep: 'curve of ratio over time',
      wet: 'false',
      turns: '1',
      finish: 'fine',
    })
    expect(step?.results.state).toBe('held')
  })
})

describe('provenance', () => {
  const record = { typical: '2 GPa', low: '1.8 GPa', high: '2.2 GPa', source: { level: 'unverified', where: 'a handbook' } } as const

  test('a property is a quantity with a range and a source, and formulas take it', () => {
    const modulus = property('modulus', record)
    expect(modulus.in('GPa')).toBe(2)
    expect(modulus.lowest.in('GPa')).toBe(1.8)
    expect(modulus.highest.in('GPa')).toBe(2.2)
    expect(everything({ ...full, outer: { modulus } }).state).toBe('held')
  })

  test('a typical value outside its own range is refused', () => {
    expect(() => property('modulus', { ...record, typical: '3 GPa' })).toThrow('must lie within its range')
    expect(() => property('modulus', { ...record, low: '3 GPa', high: '1 GPa' })).toThrow(InputError)
    expect(() => property('modulus', { ...record, low: 'x' } as never)).toThrow('low')
    expect(() => property('modulus', { ...record, source: undefined } as never)).toThrow('where the value comes from')
  })
})

test('specifications of solvers are read by the same rules', () => {
  expect(readInputs('test.solver', { angle: { kind: 'angle', max: '90 deg' } }, { angle: deg(30) }).angle).toBeCloseTo(Math.PI / 6, 15)
  expect(() => readInputs('test.solver', { angle: { kind: 'angle', max: '90 deg' } }, { angle: '100 deg' })).toThrow(
    "test.solver: angle is '100 deg'; must be at most 90 deg",
  )
  expect(quantity('angle', '90 deg').si).toBe(deg(90).si)
})
