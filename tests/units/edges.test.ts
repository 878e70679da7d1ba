// Values of other libraries, broken values and long texts: what is read, and what the message says.
import { describe, expect, test } from 'vitest'
import { InputError, type Kind, kindNames, Quantity, quantity, read, show, siUnit } from '../../src/units/index.js'
import { kindRow } from '../../src/units/kinds.js'
import { nearName } from '../../src/units/near.js'
import { bandText, inShown, significant } from '../../src/units/printed.js'
import { accepted, exampleOf, kindAccepted, oneOfNames, readAt, unitsAccepted } from '../../src/units/reading.js'

/** A unit object of another library. */
const foreign = (numbers: Record<string, unknown>, plain: unknown = Number.NaN) => ({
  toNumber: (unit: string) => {
    if (!(unit in numbers)) throw new Error(`no ${unit}`)
    return numbers[unit]
  },
  valueOf: () => plain,
})

describe('a unit object of another library', () => {
  test('is read in the SI unit of the kind, a plain number by its value', () => {
    expect(read('length', foreign({ m: 2 }) as never)).toBe(2)
    expect(read('ratio', foreign({}, 0.3) as never)).toBe(0.3)
    expect(read('angularVelocity', foreign({ 'rad/s': 5 }) as never)).toBe(5)
  })

  test('is refused where it has no number there', () => {
    const issues = (kind: Kind, given: unknown) => {
      const found: { path: string }[] = []
      expect(readAt('x', kind, given, found as never)).toBeNaN()
      return found.map(({ path }) => path)
    }
    for (const given of [
      foreign({ kg: 2 }),
      foreign({ m: '2' }),
      foreign({ m: undefined }),
      foreign({ m: Number.NaN }),
      foreign({ m: Number.POSITIVE_INFINITY }),
    ])
      expect(issues('length', given)).toEqual(['x'])
    // A difference of temperatures would be read as a temperature.
    expect(issues('temperatureDifference', foreign({ K: 30 }))).toEqual(['x'])
    expect(read('temperature', foreign({ K: 300 }) as never)).toBe(300)
    expect(issues('temperature', foreign({ K: -1 }))).toEqual(['x'])
  })
})

test.each([
  ['length', [5, 'mm'], 0.005],
  ['temperature', [20, 'degC'], 293.15],
  ['length', { kind: 'length', value: 5, unit: 'mm' }, 0.005],
  ['temperature', { kind: 'temperature', value: 20, unit: 'degC' }, 293.15],
  ['ratio', 0.2, 0.2],
  ['ratio', '20 %', 0.2],
  ['strain', 1e-3, 1e-3],
  ['length', '-5. mm', -0.005],
  ['length', '.5e1 mm', 0.005],
] as const)('%s reads %j as %d', (kind, given, si) => {
  expect(read(kind as 'length', given as never)).toBeCloseTo(si, 12)
})

test.each([
  ['length', [5, 'mm', 1], 'must be a length'],
  ['length', ['5', 'mm'], 'must be a length'],
  ['length', [5, 'N'], 'must be a length'],
  ['length', [Number.NaN, 'mm'], 'must be finite'],
  ['length', { kind: 'length', si: Number.NaN }, 'must be finite'],
  ['length', { kind: 'length', value: Number.POSITIVE_INFINITY, unit: 'mm' }, 'must be finite'],
  ['length', { kind: 'length', value: 1, unit: 'N' }, 'must be a length such as'],
  ['length', { kind: 'length', value: '1', unit: 'mm' }, 'must be a length such as'],
  ['length', { kind: 'force', si: 1 }, 'units of length are'],
  ['length', 5, 'a bare number has no unit'],
  ['ratio', Number.NaN, 'must be finite'],
  ['length', null, 'must be a length such as'],
  ['length', true, 'must be a length such as'],
  ['area', 5, 'must be an area such as'],
  ['length', '−5 mm', "the minus is '-'"],
  ['length', '5,5 mm', 'no comma, a decimal point'],
  ['length', `${'5'.repeat(78)} mm`, 'text of 81 characters is too long'],
  ['length', '5 N', 'N is a unit of force; units of length are'],
  ['temperature', '-274 degC', 'must not be below absolute zero'],
  ['temperature', [-1, 'K'], 'must not be below absolute zero'],
  ['temperature', { kind: 'temperature', si: -5 }, 'must not be below absolute zero'],
] as const)('%s refuses %j: %s', (kind, given, message) => {
  expect(() => quantity(kind, given as never)).toThrow(message)
})

test('a number without a unit is told the units, with an example before them', () => {
  expect(() => quantity('length', '5' as never)).toThrow(/; must be a length such as '5 \S+': '5' has no unit; units of length are µm, mm/)
  expect(() => quantity('length', '5 x' as never)).toThrow(
    /; must be a length such as '5 \S+': 'x' is not a unit here; units of length are µm, mm/,
  )
})

test('the longest text that is read has eighty characters', () => {
  expect(read('length', `${'5'.padStart(77, '0')} mm` as never)).toBe(0.005)
  expect(() => quantity('length', `${'5'.padStart(78, '0')} mm` as never)).toThrow('too long')
})

describe('an error', () => {
  const one = (issue: object) => new InputError('here', [{ path: 'a', given: '1', accepts: 'must be 2', ...issue }]).message

  test('says line and column where it is known from a text', () => {
    expect(one({})).toBe('here: a is 1; must be 2')
    expect(one({ line: 3 })).toBe('here: line 3: a is 1; must be 2')
    expect(one({ line: 3, column: 7 })).toBe('here: line 3, column 7: a is 1; must be 2')
    expect(one({ path: '' })).toBe("here: '' is 1; must be 2")
  })

  test('keeps a path of two hundred characters, and of a longer one both ends', () => {
    expect(one({ path: 'p'.repeat(200) })).toContain('p'.repeat(200))
    const cut = one({ path: `${'a'.repeat(150)}${'b'.repeat(51)}` })
    expect(cut).toContain(`${'a'.repeat(60)}…${'a'.repeat(9)}${'b'.repeat(51)} is`)
  })

  test('is plain data for a log', () => {
    const error = new InputError('here', [{ path: 'a', given: '1', accepts: 'must be 2' }])
    expect(JSON.parse(JSON.stringify(error))).toEqual({
      name: 'InputError',
      where: 'here',
      issues: [{ path: 'a', given: '1', accepts: 'must be 2' }],
    })
    expect(Object.keys(error)).toEqual([])
  })
})

test('whatever is given is shown in a line of sixty characters', () => {
  const revoked = Proxy.revocable({}, {})
  revoked.revoke()
  for (const [given, text] of [
    [[1, 2, 3, 4], '[1, 2, 3, 4]'],
    [[1, 2, 3, 4, 5], '[1, 2, 3, 4, …]'],
    [[], 'an empty list'],
    [new Array(2), '[missing, missing]'],
    [revoked.proxy, 'an object that cannot be read'],
    [{ get a() { throw new Error('no') } }, 'an object with a'],
    [Symbol('s'), 'Symbol(s)'],
    [12n, '12'],
    [() => 1, 'a function'],
    [undefined, 'missing'],
    [null, 'null'],
    ['a\n b', "'a b'"],
    ['x'.repeat(60), `'${'x'.repeat(60)}'`],
    ['x'.repeat(61), `'${'x'.repeat(60)}…'`],
    [Object.create(null), 'an empty object'],
    [new Map(), 'a Map'],
    [new Error('no'), 'an Error'],
  ] as const) // biome-ignore format: rows
    expect(show(given)).toBe(text)
  expect(show({ kind: 'length', get si() { throw new Error('no') } })).toBe('an object that cannot be read') // biome-ignore format: one value
})

describe('names', () => {
  test('of sixty letters are compared, longer ones are not', () => {
    const name = 'a'.repeat(59)
    expect(nearName(`${name}b`, [`${name}c`])).toBe(`${name}c`)
    expect(nearName(`${name}bb`, [`${name}bc`])).toBeUndefined()
  })

  test('what is no text has no near name', () => {
    expect(oneOfNames(['load'], 5)).toBe('must be one of load')
    expect(oneOfNames(['load'], 'laod')).toBe('must be one of load; did you mean load?')
    expect(kindAccepted(5)).toBe('must be a kind of quantity')
    expect(kindAccepted('lenght')).toBe('must be a kind of quantity; did you mean length?')
  })
})

test('the example of every kind can be read', () => {
  for (const kind of kindNames() as Kind[]) {
    const example = exampleOf(kind)
    const text = example.startsWith("'") ? example.slice(1, -1) : Number(example)
    expect(() => quantity(kind, text as never), kind).not.toThrow()
    expect(accepted(kind, {})).toContain(`such as ${example}`)
    expect(unitsAccepted(kind)).toContain(siUnit(kind))
  }
})

describe('a derived quantity', () => {
  const area = new Quantity(2, 'length').times(new Quantity(3, 'length'))
  const number = new Quantity(6, 'length').over(new Quantity(3, 'length'))

  test('has no unit to be asked for, and prints its dimensions', () => {
    expect(() => (area.in as (unit: string) => number)('m^2')).toThrow('a derived quantity has no units; name its kind with `as`')
    expect(String(area)).toMatch(/^6 m\^?2$|^6 m²$/)
    expect(String(number)).toBe('2')
    expect(area.toJSON()).toMatchObject({ kind: 'derived', value: 6 })
    expect(String(area)).toBe(`6 ${area.toJSON().unit}`)
  })
})

describe('printed numbers', () => {
  test('a value that is not finite prints as it is', () => {
    expect([significant(Number.POSITIVE_INFINITY), significant(Number.NaN), significant(0)]).toEqual(['Infinity', 'NaN', '0'])
    expect(String(new Quantity(Number.POSITIVE_INFINITY, 'time'))).toMatch(/^Infinity /)
  })

  test('the unit is the largest that keeps the number above one, zero in the middle one', () => {
    const row = kindRow('length')
    const units = row.show
    for (const [i, name] of units.entries()) {
      const size = new Quantity(1, 'length').si / (new Quantity(1, 'length').in as (unit: string) => number)(name)
      expect(inShown(size, size, row)).toEqual({ number: '1', name })
      if (i > 0) expect(inShown(0.99 * size, 0.99 * size, row).name).toBe(units[i - 1])
      expect(inShown(-size, -size, row).name).toBe(name)
    }
    expect(inShown(0, 0, row).name).toBe(units[units.length >> 1])
  })

  test('a value and its range stand in the unit of the value', () => {
    expect(bandText('ratio', 0.38, 0.25, 0.55)).toBe('0.38 (0.25 to 0.55)')
    expect(bandText('stress', 65e6, 0.5e6, 8e9)).toBe('65 (0.5 to 8000) MPa')
  })
})
