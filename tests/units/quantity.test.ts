import { inspect } from 'node:util'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  count,
  deg,
  degC,
  GPa,
  InputError,
  type Kind,
  kelvin,
  kelvins,
  kindNames,
  kindRow,
  kN,
  lbf,
  MPa,
  m,
  mm,
  mm2,
  N,
  Nm,
  Quantity,
  quantity,
  quantityFromJSON,
  rad,
  ratio,
  read,
  rpm,
  s,
  unitNames,
  W,
} from '../../src/units/index.js'
import { GOOD_FORCES } from './texts.js'

const kinds = kindNames()
const unitsOf = (kind: Kind) => unitNames(kind)

describe('text', () => {
  test.each(GOOD_FORCES)('%s is a force', (text) => {
    expect(Number.isFinite(read('force', text))).toBe(true)
  })

  test.each([
    ['', 'the text is empty'],
    ['   ', 'the text is empty'],
    [' N', "'' is not a finite number"],
    ['NaN N', 'force'],
    ['Infinity N', 'force'],
    ['-Infinity N', 'force'],
    ['1e999 N', 'too large'],
    ['0x10 N', 'force'],
    ['5N', "write '5 N' with one blank"],
    ['5  N', "write '5 N' with one blank"],
    ['5 N ', "write '5 N' with one blank"],
    ['5,5 N', "'5,5' is not a finite number: no comma, a decimal point"],
    ['\u22125 N', "'\u22125' is not a finite number: the minus is '-'"],
    ['\u20135e3 N', "'\u20135e3' is not a finite number: the minus is '-'"],
    ['5 500 N', 'force'],
    ['5', 'units of force are'],
    ['5 mm', 'mm is a unit of length'],
    ['5 Nn', 'did you mean N?'],
    ['5 constructor', 'not a unit'],
    ['5 __proto__', 'not a unit'],
    ['5 toString', 'not a unit'],
  ])('%j is refused and the message says why', (text, why) => {
    expect(() => quantity('force', text as never)).toThrow(InputError)
    expect(() => quantity('force', text as never)).toThrow(why)
  })

  test('a text of ten million characters is refused by its length', () => {
    expect(() => quantity('force', `5 ${'N'.repeat(1e7)}` as never)).toThrow('too long')
  })

  test.each([
    ['length', '5 \u03bcm', 'did you mean um?'],
    ['angle', '5 \u00b5rad', 'did you mean urad?'],
    ['time', '5 \u03bcs', 'did you mean us?'],
  ] as const)('a %s of %j: the prefix in its other letters', (kind, text, why) => {
    expect(() => quantity(kind, text as never)).toThrow(why)
  })

  test('other refusals', () => {
    for (const given of [
      5,
      Number.NaN,
      null,
      undefined,
      true,
      {},
      [],
      [5],
      [5, 'mm'],
      ['5', 'N'],
      [5, 'N', 1],
      [5, 'constructor'],
      () => 5,
      Symbol.iterator,
      { kind: 'force' },
      { kind: 'force', si: '5' },
      mm(5),
    ]) {
      expect(() => quantity('force', given as never)).toThrow(InputError)
    }
    expect(() => quantity('force', [Number.NaN, 'N'])).toThrow('finite')
    expect(() => quantity('forse' as never, '5 N' as never)).toThrow('did you mean force?')
    expect(() => quantity('constructor' as never, '5 N' as never)).toThrow(InputError)
  })

  test('a suggestion is made where it helps and only there', () => {
    const told = (given: unknown, kind: Kind = 'force') => {
      try {
        quantity(kind, given as never)
      } catch (error) {
        return (error as Error).message
      }
    }
    expect(told('5 mm')).not.toContain('did you mean')
    expect(told('5')).not.toContain('did you mean')
    expect(told('5 degC', 'temperatureDifference')).toMatch(
      /degC is a unit of temperature; units of temperature difference are K, mK, degR$/,
    )
    expect(told('5 Nm', 'torque')).toMatch(/did you mean N m\?$/)
    expect(told(['5', 'N'])).toContain("['5', 'N']; must be a force such as")
    expect(told([5, 'N', 1])).toContain('must be a force such as')
    expect(told([Number.NaN, 'N'])).toContain('must be finite')
  })

  test('every unit of every kind reads back what it prints', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.nat(), (kind, any, pick) => {
        const x = kindRow(kind).lowest === 0 ? Math.abs(any) : any
        const unit = unitsOf(kind)[pick % unitsOf(kind).length] as string
        const q = quantity(kind, [x, unit] as never) as Quantity<Kind>
        expect(read(kind, `${x} ${unit}`) + 0).toBe(q.si + 0) // text has no negative zero
        const back = (q.in as (u: string) => number).call(q, unit)
        expect(Math.abs(back - x)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(x), 1000))
      }),
    )
  })

  test('printed text is read back to the digits printed', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (kind, x) => {
        const q = new Quantity(x, kind)
        const text = String(q)
        const si = /^[-\d.e]+$/.test(text) ? Number(text) : read(kind, text)
        const size = q.dim === degC(0).dim && String(q).includes('degC') ? 300 : x
        expect(Math.abs(si - x)).toBeLessThanOrEqual(6e-4 * Math.abs(size))
      }),
    )
  })
})

test('numbers are read to the last bit as the language reads them', () => {
  const digits = fc.stringMatching(/^[+-]?(\d{1,20}\.?\d{0,25}|\.\d{1,25})([eE][+-]?\d{1,2})?$/)
  fc.assert(
    fc.property(digits, (text) => {
      expect(Object.is(read('length', `${text} m`), Number(text))).toBe(true)
    }),
    { numRuns: 3000 },
  )
})

describe('angles and temperatures', () => {
  test('degrees, turns and radians are one angle', () => {
    expect(deg(180).si).toBeCloseTo(Math.PI, 15)
    expect(read('angle', '0.5 turn')).toBeCloseTo(read('angle', '180 deg'), 15)
    expect(rad(1).in('deg')).toBeCloseTo(57.29577951308232, 12)
  })

  test('a bare number is never an angle', () => {
    expect(() => quantity('angle', 180 as never)).toThrow('a bare number has no unit')
  })

  test('Celsius and kelvin', () => {
    expect(degC(25).si).toBe(298.15)
    expect(read('temperature', '25 degC')).toBe(298.15)
    expect(read('temperature', '77 degF')).toBeCloseTo(298.15, 10)
    expect(() => quantity('temperatureDifference', '25 degC' as never)).toThrow(/temperature difference/)
    expect(() => quantity('temperature', kelvins(5) as never)).toThrow(InputError)
  })

  test('a foreign unit object is never read as a difference of temperatures', () => {
    const foreign = { toNumber: () => 303.15 }
    expect(quantity('temperature', foreign).si).toBe(303.15)
    expect(() => quantity('temperatureDifference', foreign)).toThrow('cannot tell a difference from a temperature')
  })

  test('temperature arithmetic', () => {
    expect(degC(60).minus(degC(25)).kind).toBe('temperatureDifference')
    expect(degC(60).minus(degC(25)).si).toBeCloseTo(35, 10)
    expect(degC(25).plus(kelvins(35)).in('degC')).toBeCloseTo(60, 10)
    expect(degC(25).minus(kelvins(5)).kind).toBe('temperature')
    expect(() => degC(25).plus(degC(25) as never)).toThrow(InputError)
    expect(() => degC(25).times(2)).toThrow(/no multiples/)
    expect(() => kelvin(25).over(2)).toThrow(InputError)
  })
})

describe('arithmetic', () => {
  test('products are named by dimensions', () => {
    expect(N(10).times(m(2)).as('torque').in('N m')).toBe(20)
    expect(N(10).times(m(2)).as('energy').in('J')).toBe(20)
    expect(() => N(10).times(m(2)).as('force')).toThrow(InputError)
    expect(N(10).over(mm2(2)).as('stress').in('MPa')).toBeCloseTo(5, 12)
    expect(mm2(9).sqrt().as('length').in('mm')).toBeCloseTo(3, 12)
    expect(W(4).sqrt().times(W(4).sqrt()).as('power').si).toBeCloseTo(4, 14)
    expect(Nm(2).over(W(4).sqrt()).as('motorConstant').si).toBe(1)
  })

  test('unlike kinds do not add', () => {
    expect(() => N(1).plus(Nm(1) as never)).toThrow(/must be a force/)
    expect(() => Nm(1).minus(quantity('energy', '1 J') as never)).toThrow(InputError)
    expect(() => MPa(1).plus(GPa(1) as never)).toThrow(InputError)
    expect(() =>
      N(1)
        .times(m(1))
        .plus(N(1).over(m(1)) as never),
    ).toThrow(InputError)
    expect(() => N(1).as('constructor' as never)).toThrow(InputError)
    expect(() => N(1).sqrt().sqrt().sqrt()).toThrow(InputError)
  })

  test('dimensions add under products and cancel under quotients', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.constantFrom(...kinds), (a, b) => {
        const x = new Quantity(2, a)
        const y = new Quantity(3, b)
        expect((x.times(y).over(y) as Quantity).dim).toBe(x.dim)
        expect((x.over(y).times(y) as Quantity).as(a).kind).toBe(a)
        expect((x.times(y) as Quantity).dim).toBe((y.times(x) as Quantity).dim)
      }),
    )
  })

  test('notes travel', () => {
    const note = { formula: 'a.b', text: 'outside' }
    const noted = new Quantity(1, 'force', undefined, [note])
    expect(noted.plus(N(1)).notes).toEqual([note])
    expect(N(1).times(noted).notes).toEqual([note])
    expect(noted.times(noted).notes).toEqual([note])
    expect(noted.as('force').notes).toEqual([note])
  })
})

describe('printing', () => {
  test.each([
    [N(1234), '1.234 kN'],
    [kN(0.5), '500 N'],
    [N(0.25), '250 mN'],
    [mm(5), '5 mm'],
    [mm(0.02), '20 µm'],
    [Nm(12.3456), '12.35 N m'],
    [Nm(0.5), '500 N mm'],
    [MPa(67.123), '67.12 MPa'],
    [degC(62.3213), '62.32 degC'],
    [kelvins(35), '35 K'],
    [deg(45), '45 deg'],
    [ratio(0.15), '0.15'],
    [count(3), '3'],
    [s(3600 * 5), '5 h'],
    [rpm(60), '6.283 rad/s'],
    [N(0), '0 N'],
    [N(-1234), '-1.234 kN'],
    [N(2).times(m(3)), '6 m^2 kg s^-2'],
    [lbf(1), '4.448 N'],
  ])('%s', (q, text) => {
    expect(String(q)).toBe(text)
    expect(inspect(q)).toBe(text)
    expect((q as unknown as Record<symbol, () => Record<string, string>>)[Symbol.for('Jupyter.display')]?.()['text/plain']).toBe(text)
  })
})

test('JSON goes there and back exactly', () => {
  fc.assert(
    fc.property(fc.constantFrom(...kinds), fc.double({ noNaN: true, noDefaultInfinity: true }), (kind, x) => {
      const back = quantityFromJSON(JSON.parse(JSON.stringify(new Quantity(x, kind))))
      expect(back.kind).toBe(kind)
      expect(back.si === x || (back.si === 0 && x === 0)).toBe(true)
    }),
  )
  for (const bad of [
    null,
    5,
    {},
    { kind: 'length' },
    { kind: 'length', value: 5, unit: 'mm' },
    { kind: 'constructor', value: 5, unit: 'm' },
    { kind: 'length', value: null, unit: 'm' },
  ]) {
    expect(() => quantityFromJSON(bad)).toThrow(InputError)
  }
})

test('a copy of the class from another module graph still passes by its tag', () => {
  const copy = { si: 5, kind: 'force', dim: N(1).dim }
  expect(quantity('force', copy as never).si).toBe(5)
})

test('asking for a unit of another kind names the units there are', () => {
  expect(() => (N(5).in as (u: string) => number).call(N(5), 'mm')).toThrow(/units of force are mN, N, kN/)
  expect(() => (N(5).in as (u: string) => number).call(N(5), 'constructor')).toThrow(InputError)
})
