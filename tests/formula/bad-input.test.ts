import { inspect } from 'node:util'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../src/catalogue/index.js'
import { boltGroupLoads, toleranceStack } from '../../src/fasteners/index.js'
import { formula, type Input, type Inputs, NoResultError, property, readInputs } from '../../src/formula/index.js'
import { PROPERTY_KINDS } from '../../src/materials/index.js'
import { NumericError } from '../../src/numeric/index.js'
import { InputError, N, nearName, Quantity, quantity } from '../../src/units/index.js'

const source = [{ level: 'assumption', where: 'test' }] as const

const plate = formula('test.plate', {
  inputs: {
    load: 'force',
    widths: { list: 'length' },
    ring: { fields: { modulus: 'modulus', thermalExpansion: { kind: 'thermalExpansion', optional: true } } },
    moment: { fields: { x: { kind: 'torque', optional: true }, y: { kind: 'torque', default: '0 N m' } }, optional: true },
  },
  output: 'force',
  source,
  si: ({ load, widths, ring, moment }) => load + widths.length + (ring.thermalExpansion ?? 0) + (moment?.x ?? 0),
})
const given = { load: '5 N', widths: ['1 mm'], ring: { modulus: '2 GPa' } } as const
const call = (change: object) => () => plate({ ...given, ...change } as never)

describe('misspelt fields of nested records', () => {
  test('a wrong letter case in a moment is refused, not read as no moment', () => {
    const bolts = [
      [20, 20],
      [-20, 20],
      [-20, -20],
      [20, -20],
    ].map(([x, y]) => ({ x: [x, 'mm'], y: [y, 'mm'], area: '5 mm^2' }))
    const loads = { bolts, force: { z: '100 N' }, at: { x: '0 mm', y: '0 mm', z: '0 mm' } }
    const run = (moment: object) => () => boltGroupLoads({ ...loads, force: { x: '0 N', y: '0 N', z: '100 N' }, moment } as never)
    expect(run({ X: '5 N m' })).toThrow(/moment\.X is '5 N m'; is not an input, did you mean x\?/)
  })

  test('a misspelt bias of a tolerance stack', () => {
    const part = { nominal: '10 mm', tolerance: '0.1 mm' }
    expect(() => toleranceStack({ parts: [{ ...part, bais: '0.05 mm' }] } as never)).toThrow(/parts\[0\]\.bais.*did you mean bias\?/)
    expect(toleranceStack({ parts: [{ ...part, bias: '0.05 mm' }] } as never).mean.in('mm')).toBeCloseTo(10.05, 12)
  })

  test('a field that is not an input is refused; quantities that tables and materials carry are not', () => {
    expect(call({ ring: { modulus: '2 GPa', thermalExpanson: '50 ppm/K' } })).toThrow('ring.thermalExpanson')
    expect(call({ ring: { modulus: '2 GPa', name: 'ring' } })).toThrow("ring.name is 'ring'; is not an input; inputs are modulus")
    expect(call({ ring: { modulus: '2 GPa', density: undefined } })).toThrow('ring.density is undefined')
    const density = quantity('density', '1 g/cm^3')
    expect(call({ ring: { modulus: '2 GPa', density, more: density.toJSON(), notes: [] } })).not.toThrow()
    // Misspelt, although it knows its kind.
    expect(call({ ring: { modulus: '2 GPa', thermalExpanson: quantity('thermalExpansion', '50 ppm/K') } })).toThrow('did you mean')
    // A material has words as well.
    const steel = property('modulus', {
      typical: '200 GPa',
      low: '190 GPa',
      high: '210 GPa',
      source: { level: 'assumption', where: 'test' },
    })
    expect(call({ ring: { modulus: steel, name: 'steel' } })).not.toThrow()
  })

  test('where every field is optional, every unknown name is refused', () => {
    expect(call({ moment: { about: '5 N m' } })).toThrow('moment.about')
    expect(call({ moment: {} })).not.toThrow()
  })

  test.each([
    new Date(0),
    new Map(),
    new Set(),
    Promise.resolve(),
    Buffer.from('a'),
    /a/,
    new Float64Array(2),
    new Error('x'),
    new WeakMap(),
  ])('no record: %s', (thing) => {
    expect(call({ moment: thing })).toThrow(/moment is .*; must be an object with x, y/)
    expect(() => plate(thing as never)).toThrow(/the argument is .*; must be an object with load/)
  })

  test('a quantity is no record, a plain object without a prototype is', () => {
    expect(call({ moment: N(5) })).toThrow(/moment\.si is 5; is not an input/)
    expect(call({ ring: Object.assign(Object.create(null), { modulus: '2 GPa' }) })).not.toThrow()
  })

  test('no property of a material is near an optional field that a formula reads from one', () => {
    const clashes: string[] = []
    const visit = (inputs: Inputs, path: string) => {
      for (const [name, input] of Object.entries(inputs)) {
        const inner: Input = typeof input === 'object' && 'list' in input ? input.list : input
        if (typeof inner !== 'object' || !('fields' in inner)) continue
        const optional = Object.entries(inner.fields).flatMap(([field, spec]) =>
          typeof spec === 'object' && ('default' in spec || spec.optional === true) ? [field] : [],
        )
        for (const property of Object.keys(PROPERTY_KINDS)) {
          const near = optional.includes(property) ? undefined : nearName(property, optional, 3)
          if (near !== undefined) clashes.push(`${path}.${name}: ${property} is near ${near}`)
        }
        visit(inner.fields, `${path}.${name}`)
      }
    }
    for (const [id, { def }] of catalogue) visit(def.inputs, id)
    expect(clashes).toEqual([])
  })
})

describe('values that cannot be read', () => {
  const cyclic: unknown[] = []
  cyclic.push(cyclic)
  const deep = Array.from({ length: 10_000 }).reduce((inner) => [inner], 0 as unknown)
  const throwing = Object.defineProperty({}, 'load', {
    enumerable: true,
    get: () => {
      throw new Error('no')
    },
  })
  const revoked = Proxy.revocable({}, {})
  revoked.revoke()

  test.each([
    ['a list that holds itself', cyclic],
    ['a deep list', deep],
    ['an object without a prototype', Object.create(null)],
    ['a quantity without a prototype', Object.assign(Object.create(null), { kind: 'length', si: 5 })],
    ['a throwing toString', { kind: 'length', si: 5, toString: () => cyclic.at(7) }],
    ['a throwing getter', throwing],
    ['a revoked proxy', revoked.proxy],
    ['a symbol', Symbol('x')],
    ['a list with holes', new Array(3)],
    ['a million characters', 'x'.repeat(1e6)],
  ])('%s', (_, thing) => {
    for (const attempt of [call({ load: thing }), call({ widths: thing }), call({ ring: thing }), () => plate(thing as never)]) {
      expect(attempt).toThrow(InputError)
      try {
        attempt()
      } catch (error) {
        expect((error as Error).message.length).toBeLessThan(1000)
        expect((error as InputError).issues[0]?.path).not.toBe('')
      }
    }
  })

  test('a getter that throws is named by its path', () => {
    expect(() =>
      plate({
        ...given,
        ring: Object.defineProperty({ ...given.ring }, 'thermalExpansion', Object.getOwnPropertyDescriptor(throwing, 'load')!),
      } as never),
    ).toThrow("ring.thermalExpansion is unreadable; must be plain data; reading it threw 'Error: no'")
    expect(() => readInputs('test.drive', { load: 'force' }, throwing as never)).toThrow('load is unreadable')
  })

  test('every hole of a list is an item that is missing', () => {
    expect(call({ widths: new Array(2) })).toThrow(/widths\[0\] is missing[\s\S]*widths\[1\] is missing/)
  })

  test('a name of a million characters, an empty name, and five thousand names', () => {
    const many = Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`field${i}`, i]))
    for (const change of [{ ['y'.repeat(1e6)]: 1 }, many]) {
      try {
        plate({ ...given, ...change } as never)
        expect.unreachable()
      } catch (error) {
        expect(error).toBeInstanceOf(InputError)
        expect((error as Error).message.length).toBeLessThan(5000)
      }
    }
    expect(call({ '': 1 })).toThrow("'' is 1; is not an input")
    expect(() => (N(5).in as (u: string) => number).call(N(5), 'z'.repeat(1e6))).toThrow(/^.{0,400}$/)
  })
})

describe('kernels', () => {
  const failing = (error: Error) =>
    formula('test.failing', {
      inputs: { x: 'ratio' },
      output: 'ratio',
      source,
      si: (): number => {
        throw error
      },
    })

  test('a routine that fails inside a kernel is no result, not an error without a name', () => {
    for (const [error, reason] of [
      [new NumericError('bracketRoot', 'noBracket', 'the same sign at both ends'), ' \\(bracketRoot: the same sign'],
      [new RangeError('Invalid array length'), '$'],
    ] as const) {
      expect(() => failing(error)({ x: 1 })).toThrow(NoResultError)
      expect(() => failing(error)({ x: 1 })).toThrow(new RegExp(`^test\\.failing: no answer exists for these inputs together${reason}`))
      try {
        failing(error)({ x: 1 })
      } catch (thrown) {
        expect((thrown as Error).cause).toBe(error)
      }
    }
    expect(() => failing(new TypeError('a slip of ours'))({ x: 1 })).toThrow(TypeError)
  })

  test('what has no sign is never negative', () => {
    const left = formula('test.left', {
      inputs: { outer: 'area', inner: 'area' },
      output: { ring: 'area', play: 'length' },
      source,
      si: ({ outer, inner }) => ({ ring: outer - inner, play: outer - inner }),
    })
    expect(left({ outer: '3 mm^2', inner: '1 mm^2' }).ring.in('mm^2')).toBeCloseTo(2, 12)
    expect(() => left({ outer: '1 mm^2', inner: '3 mm^2' })).toThrow(NoResultError)
    expect(() => left({ outer: '1 mm^2', inner: '3 mm^2' })).toThrow('ring is -2 mm^2 for these inputs; there is no such area')
  })
})

test('nothing is below absolute zero', () => {
  for (const bad of ['-300 degC', '-500 degF', '-1 K', [-1, 'K'], new Quantity(-1, 'temperature')] as const) {
    expect(() => quantity('temperature', bad as never)).toThrow('must not be below absolute zero')
  }
  expect(quantity('temperature', '-40 degC').in('K')).toBeCloseTo(233.15, 12)
  expect(quantity('temperatureDifference', '-40 K').si).toBe(-40)
})

test('a quantity in its JSON form is an input', () => {
  const asJson = (q: Quantity) => JSON.parse(JSON.stringify(q))
  expect(plate({ ...given, load: asJson(N(5)) }).si).toBe(plate(given).si)
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (x) => {
      expect(quantity('torque', asJson(new Quantity(x, 'torque'))).si).toBe(x === 0 ? 0 : x)
    }),
  )
  expect(quantity('length', { kind: 'length', value: 5, unit: 'mm' }).si).toBe(0.005)
  expect(call({ load: { kind: 'length', value: 5, unit: 'm' } })).toThrow(/load is .*; must be a force/)
  expect(call({ load: { kind: 'force', value: 5, unit: 'mm' } })).toThrow('units of force are mN, N, kN')
  expect(call({ load: { kind: 'force', value: Number.NaN, unit: 'N' } })).toThrow('must be finite')
})

test('an error prints once', () => {
  try {
    plate({} as never)
    expect.unreachable()
  } catch (error) {
    const text = inspect(error)
    expect(text.match(/load is missing/g)).toHaveLength(1)
    expect(JSON.parse(JSON.stringify(error))).toMatchObject({ name: 'InputError', where: 'test.plate', issues: [{ path: 'load' }, {}, {}] })
  }
})
