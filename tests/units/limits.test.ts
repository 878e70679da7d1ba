// Ties, edges and messages that other tests only use.
import { describe, expect, test } from 'vitest'
import { ascending, InputError, type Kind, kindNames, largest, Quantity, quantity, show, smallest } from '../../src/units/index.js'
import { nearName, nearNames } from '../../src/units/near.js'
import { significant } from '../../src/units/printed.js'
import { accepted, foreignUnit, oneOfNames } from '../../src/units/reading.js'
import { unitNamed } from '../../src/units/unit-size.js'

const metres = (si: number, notes?: { formula: string; text: string }[]) => new Quantity(si, 'length', undefined as never, notes)

describe('arithmetic and order', () => {
  test('a product and a quotient by a number', () => {
    expect(quantity('length', '6 mm').times(3).in('mm')).toBeCloseTo(18, 12)
    expect(quantity('length', '6 mm').over(3).in('mm')).toBeCloseTo(2, 12)
  })

  test('equal quantities are neither greater nor less, and the first of them is kept', () => {
    const [one, other] = [quantity('length', '6 mm'), quantity('length', '6 mm')]
    expect([one.isGreaterThan(other), one.isLessThan(other), ascending(one, other)]).toEqual([false, false, 0])
    expect(smallest(one, other)).toBe(one)
    expect(largest(one, other)).toBe(one)
  })

  test('a note that both operands carry comes once', () => {
    const [first, second] = ['one', 'two'].map((text) => ({ formula: 'f', text })) as [
      { formula: string; text: string },
      { formula: string; text: string },
    ]
    const product = metres(2, [first]).times(metres(3, [first, second]))
    expect(product.notes).toEqual([first, second])
  })

  test('sizes of units are exact to the last bit', () => {
    const exact = {
      mm: 1e-3,
      µm: 1e-6,
      nm: 1e-9,
      km: 1e3,
      in: 0.0254,

      h: 3600,
      day: 86400,
      'mm^2': 1e-6,
      'g/cm^3': 1000,
      'km/h': 1 / 3.6,
      MPa: 1e6,
      GPa: 1e9,
    }
    for (const [name, size] of Object.entries(exact)) expect(unitNamed(name).size, name).toBe(size)
  })
})

describe('messages', () => {
  test('two letters that changed places are one slip', () => {
    expect(nearName('laod', ['width', 'load'])).toBe('load')
    expect(nearName('Load', ['width', 'load'])).toBe('load')
    expect(nearName('lxxd', ['width', 'load'])).toBeUndefined()
  })

  test('what is no temperature is not called too cold, and what is no quantity is not called foreign', () => {
    expect(accepted('temperature', 'warm')).not.toContain('absolute zero')
    expect(accepted('temperature', '-300 degC')).toBe('must not be below absolute zero')
    expect(accepted('temperature', Number.NEGATIVE_INFINITY)).not.toContain('absolute zero')
    for (const given of [{}, { kind: 'length', si: 1 }, ['1', 'K']])
      expect(accepted('temperatureDifference', given)).not.toContain('foreign')
    expect(accepted('temperatureDifference', { toNumber: () => 1 })).toContain('foreign')
  })

  test('two issues stand in two lines, and the end of a long list is counted', () => {
    const issues = (count: number) => Array.from({ length: count }, (_, i) => ({ path: `x${i}`, given: '1', accepts: 'must be 2' }))
    expect(new InputError('here', issues(2)).message).toBe('here: 2 things to change\n  - x0 is 1; must be 2\n  - x1 is 1; must be 2')
    expect(new InputError('here', issues(20)).message).not.toContain('more')
    const long = new InputError('here', issues(22)).message
    expect(long).toContain('x19 is 1')
    expect(long).not.toContain('x20 is 1')
    expect(long).toContain('\n  … and 2 more')
  })

  test('whatever is given is shown by what it is', () => {
    expect(show(new Date(0))).toBe('a Date')
    expect(show(new Int8Array(2))).toBe('an Int8Array')
    expect(show({})).toBe('an empty object')
    expect(show({ a: 1, b: 2 })).toBe('an object with a, b')
    expect(show([[[1]], 2])).toBe('[[a list], 2]')
    expect(show(quantity('length', '5 m'))).toBe('5 m (kind length)')
    expect(show({ kind: 'length', si: 3 })).toBe('3 (kind length)')
    expect(show({ kind: 'length', si: '3' })).toBe('an object with kind, si')
    expect(show({ kind: 3, si: 3 })).toBe('an object with kind, si')
  })

  test('forty names are listed, of more than that the first twelve', () => {
    const names = (count: number) => Array.from({ length: count }, (_, i) => `name${i}`)
    expect(oneOfNames(names(40), undefined)).toBe(`must be one of ${names(40).join(', ')}`)
    expect(oneOfNames(names(41), undefined)).toBe(`must be one of ${names(12).join(', ')}, … (41 in all)`)
  })

  test('numbers print their digits, with a power of ten where it helps', () => {
    const printed: [number, string][] = [
      [9_999_000, '9999000'],
      [1e7, '1e7'],
      [1e8, '1e8'],
      [1.2e8, '1.2e8'],
      [1e-4, '0.0001'],
      [9e-5, '9e-5'],
    ]
    for (const [x, text] of printed) expect(significant(x)).toBe(text)
  })

  test('a near size comes before a near spelling, and a far one not at all', () => {
    expect(nearNames('M4', ['M6', 'M8', 'A4'])).toEqual(['M6'])
    expect(nearNames('M3.5', ['M3', 'A3.4'])).toEqual(['M3'])
    expect(nearNames('petg', ['pxxg'])).toEqual(['pxxg'])
    expect(nearNames('a'.repeat(60), ['a'])).toEqual(['a'])
    expect(nearNames('a'.repeat(61), ['a'])).toEqual([])
  })

  test('a unit written otherwise is named, and a number without its blank is written out', () => {
    expect(() => quantity('electricalResistance', '5 kΩ' as never)).toThrow('did you mean kohm?')
    expect(() => quantity('length', '1.5e+3mm' as never)).toThrow("write '1.5e+3 mm' with one blank")
    expect(() => quantity('length', '15e3mm' as never)).toThrow("write '15e3 mm' with one blank")
  })
})

test('a quantity as plain data needs a number', () => {
  expect(quantity('length', { kind: 'length', value: 5, unit: 'mm' } as never).si).toBe(0.005)
  expect(() => quantity('length', { kind: 'length', value: '5', unit: 'mm' } as never)).toThrow(InputError)
})

test('other unit libraries read 1/… as a power', () => {
  const inverse = (kindNames() as Kind[]).map((kind) => foreignUnit(kind)).filter((unit) => unit.includes('^-1'))
  for (const unit of inverse) expect(unit).toMatch(/^\w+\^-1$/)
  for (const kind of kindNames() as Kind[]) expect(foreignUnit(kind)).not.toMatch(/^1\/\w+$/)
})
