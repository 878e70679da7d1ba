import { describe, expect, test } from 'vitest'
import type { Field, Fields } from '../../src/leg/schema/field.js'
import { defaultsOf, exactlyOneIssues, jsonSchemaOf, placeAt, readable, referencesOf, salvaged, zodOf } from '../../src/leg/schema/index.js'
import { messageOf, readLeaf } from '../../src/leg/schema/leaf.js'
import { materialFrom } from '../../src/leg/schema/own-material.js'
import { type Quantity, quantity } from '../../src/units/index.js'

/** One field of every sort. */
const FIELDS = {
  mass: { kind: 'mass', above: 0, max: '50 kg' },
  drop: { kind: 'length', min: '1 mm', below: '2 m', default: '5 mm', because: 'a low step' },
  legs: { integer: true, min: 2, max: 8, default: 4, because: 'most walkers', level: 'commonPractice' },
  share: { kind: 'ratio', optional: true },
  range: { interval: 'angle', min: '-90 deg', max: '90 deg' },
  friction: { band: 'ratio', max: 2, default: [0.1, 0.15, 0.2], because: 'dry' },
  way: { oneOf: ['lying', 'standing'], default: 'lying', because: 'flat' },
  remark: { text: true, optional: true },
  cooled: { flag: true, default: false, because: 'no fan' },
  motor: { refersTo: 'motors', also: ['none'] },
  class: { designation: 'propertyClass', optional: true },
  size: { tuple: { width: { kind: 'length', above: 0 }, height: { kind: 'length', above: 0 } } },
  rows: { list: { kind: 'length', above: 0 }, most: 3, optional: true },
  drum: {
    section: { radius: { kind: 'length', optional: true }, diameter: { kind: 'length', optional: true } },
    exactlyOne: [['radius', 'diameter']],
    optional: true,
  },
  motors: { dictionary: { section: { torque: { kind: 'torque', default: '1 N m', because: 'small' } } }, default: {} },
  airs: { dictionary: { kind: 'temperature' }, library: { normal: '20 degC' }, default: {}, because: 'a mild day' },
  drive: { variants: 'kind', of: { cord: { pretension: { kind: 'force' } }, held: {} } },
  own: { dictionary: { own: 'material' }, default: {} },
} as const satisfies Fields
const GIVEN = {
  mass: '10 kg',
  range: ['-20 deg', '30 deg'],
  motor: 'main',
  size: ['20 mm', '30 mm'],
  motors: { main: {} },
  drive: { kind: 'cord', pretension: '200 N' },
}
const read = (changes: object = {}) => zodOf(FIELDS).safeParse({ ...GIVEN, ...changes })
/** Path and message of what is wrong. */
const wrong = (changes: object) => read(changes).error?.issues.map(({ path, message }) => [path.join('.'), message])
const field = (one: Field) => one as never

test('a document is read with its defaults, and every value has its kind', () => {
  expect(JSON.parse(JSON.stringify(read().data))).toEqual({
    mass: { kind: 'mass', value: 10, unit: 'kg' },
    drop: { kind: 'length', value: 0.005, unit: 'm' },
    legs: 4,
    range: {
      lowest: { kind: 'angle', value: (-20 * Math.PI) / 180, unit: 'rad' },
      highest: { kind: 'angle', value: Math.PI / 6, unit: 'rad' },
    },
    friction: { low: 0.1, typical: 0.15, high: 0.2 },
    way: 'lying',
    cooled: false,
    motor: 'main',
    size: { width: { kind: 'length', value: 0.02, unit: 'm' }, height: { kind: 'length', value: 0.03, unit: 'm' } },
    motors: { main: { torque: { kind: 'torque', value: 1, unit: 'N m' } } },
    airs: { normal: { kind: 'temperature', value: 293.15, unit: 'K' } },
    drive: { kind: 'cord', pretension: { kind: 'force', value: 200, unit: 'N' } },
    own: {},
  })
  // What was read is read again as it is, also from JSON.
  const again = zodOf(FIELDS).safeParse(JSON.parse(JSON.stringify(read().data)))
  expect(JSON.stringify(again.data)).toBe(JSON.stringify(read().data))
  expect(read({ size: { width: '1 mm', height: '2 mm' }, airs: { cold: '0 degC' } }).success).toBe(true)
})

test('a quantity as JSON holds it has the unit of its kind: another unit there, which no program wrote, is refused', () => {
  const written = { kind: 'mass', value: 10, unit: 'kg' }
  expect(read({ mass: written }).success).toBe(true)
  expect(wrong({ mass: { ...written, unit: 'g' } })).toEqual([['mass', expect.stringContaining('SI unit')]])
  expect(wrong({ mass: { kind: 'length', value: 10, unit: 'm' } })).toEqual([['mass', expect.stringContaining('mass')]])
})

describe('what is not accepted has one message that says what is', () => {
  test.each([
    [{ mass: '10 N' }, 'mass', /^must be a mass such as '5 g': N is a unit of force; units of mass are mg, g, kg/],
    [{ mass: '0 kg' }, 'mass', /^must be above 0 and at most 50 kg$/],
    [{ mass: '51 kg' }, 'mass', /^must be above 0 and at most 50 kg$/],
    [{ mass: '1,5 kg' }, 'mass', /^must be a quantity of mass; write '1\.5 kg' with a point$/],
    [{ drop: '0.5 mm' }, 'drop', /^must be at least 1 mm and below 2 m$/],
    [{ drop: '2 m' }, 'drop', /^must be at least 1 mm and below 2 m$/],
    [{ legs: 3.5 }, 'legs', /^must be a whole number from 2 to 8$/],
    [{ legs: 1 }, 'legs', /^must be a whole number from 2 to 8$/],
    [{ legs: 9 }, 'legs', /^must be a whole number from 2 to 8$/],
    [{ legs: '4' }, 'legs', /^must be a whole number from 2 to 8$/],
    [{ range: ['30 deg', '-20 deg'] }, 'range', /^must rise from 30 deg to a higher value; the limits are upside down$/],
    [{ range: ['20 deg', '20 deg'] }, 'range', /upside down$/],
    [{ range: ['20 deg'] }, 'range', /^must be the lowest and the highest, such as \[/],
    [{ range: '20 deg' }, 'range', /^must be the lowest and the highest, such as \[/],
    [{ range: null }, 'range', /^must be the lowest and the highest, such as \[/],
    [{ range: ['-91 deg', '0 deg'] }, 'range', /^must lie between -90 deg and 90 deg$/],
    [{ range: ['0 deg', '91 deg'] }, 'range', /^must lie between -90 deg and 90 deg$/],
    [{ friction: 0.2 }, 'friction', /: one number hides the scatter; write for example \[0\.14, 0\.2, 0\.26\]$/],
    [{ friction: 1.8 }, 'friction', /write for example \[1\.3, 1\.8, 2\]$/],
    [{ friction: 3 }, 'friction', /^must be \[low, typical, high\], rising, above 0 and at most 2$/],
    [{ friction: [0.1, 0.2] }, 'friction', /at most 2$/],
    [{ friction: [0.1, 0.2, 0.3, 0.4] }, 'friction', /at most 2$/],
    [{ friction: [0, 0.2, 0.3] }, 'friction', /at most 2$/],
    [{ friction: [0.3, 0.2, 0.3] }, 'friction', /at most 2$/],
    [{ friction: [0.1, 0.4, 0.3] }, 'friction', /at most 2$/],
    [{ friction: [0.1, 0.4, 2.1] }, 'friction', /at most 2$/],
    [{ friction: ['0.1', '0.2', '0.3'] }, 'friction', /at most 2$/],
    [{ friction: { low: 0.1, typical: 0.2, high: 0.3, source: 'x' } }, 'friction', /at most 2$/],
    [{ way: 'standin' }, 'way', /^must be one of lying, standing; did you mean standing\?$/],
    [{ way: 3 }, 'way', /^must be one of lying, standing$/],
    [{ remark: ' ' }, 'remark', /^must be a text of 1 to 200 characters$/],
    [{ remark: 'x'.repeat(201) }, 'remark', /^must be a text of 1 to 200 characters$/],
    [{ cooled: 'yes' }, 'cooled', /^must be true or false$/],
    [{ class: 7 }, 'class', /^must be the designation of a property class: .*8\.8/],
  ])('%j', (changes, path, message) => {
    expect(wrong(changes)).toEqual([[path, expect.stringMatching(message)]])
  })

  test('a long table is shown by its first ten rows and their number', () => {
    expect(() => readLeaf(field({ designation: 'pin' }), 'ISO 8734 4 mm m7')).toThrow(
      /^must be the designation of a parallel pin: (ISO [^,]*, ){10}… \(\d+\); did you mean ISO 8734 4 mm m6\?$/,
    )
    expect(readLeaf(field({ designation: 'propertyClass' }), 8.8)).toBe('8.8')
  })

  test('a number a thousand times too large or too small asks for the unit that would fit', () => {
    expect(() => readLeaf(field({ kind: 'length', min: '10 mm', max: '2 m' }), '0.15 mm')).toThrow(
      /^must be at least 10 mm and at most 2 m; did you mean m\?$/,
    )
    expect(() => readLeaf(field({ kind: 'length', min: '10 mm', max: '2 m' }), '9 mm')).toThrow(/at most 2 m$/)
    expect(() => readLeaf(field({ kind: 'axialRigidity', min: '50 N', max: '10 MN' }), '1.5 N')).toThrow(/; did you mean kN\?$/)
    expect(() => readLeaf(field({ kind: 'mass', min: '2 g', max: '20 kg' }), '450 kg')).toThrow(/; did you mean g\?$/)
    expect(() => readLeaf(field({ kind: 'length', above: 0, max: '20 mm' }), '15 m')).toThrow(/at most 20 mm.*; did you mean mm\?$/)
    expect(() => readLeaf(field({ kind: 'length', above: 0, max: '20 mm' }), '21 m')).toThrow(/at most 20 mm[^;]*$/)
    expect(() => readLeaf(field({ kind: 'length', above: 0, max: '20 mm' }), '-15 m')).toThrow(/at most 20 mm[^;]*$/)
    expect(() => readLeaf(field({ kind: 'mass', above: 0, max: '20 kg' }), '21 kg')).toThrow(/at most 20 kg[^;]*$/)
    expect(() => readLeaf(field({ kind: 'length', below: '20 mm' }), '15 m')).toThrow(/^must be below 20 mm; did you mean mm\?$/)
  })

  test('a quantity that was kept as data is read back to the last bit, and only where its kind is meant', () => {
    const kept = JSON.parse(JSON.stringify(quantity('length', '20.1 mm')))
    expect(readLeaf(field({ kind: 'length' }), kept)).toEqual(quantity('length', '20.1 mm'))
    expect(readLeaf(field({ interval: 'length' }), [kept, '30 mm'])).toMatchObject({ lowest: quantity('length', '20.1 mm') })
    expect(() => readLeaf(field({ kind: 'mass' }), kept)).toThrow(/mass/)
    expect(() => readLeaf(field({ kind: 'length' }), { ...kept, unit: 'mm' })).toThrow(/SI unit/)
    expect(() => readLeaf(field({ kind: 'length' }), { value: 0.02, unit: 'm' })).toThrow(/length/)
  })

  test('the ends of what is accepted are accepted', () => {
    expect(
      read({ mass: '50 kg', drop: '1 mm', legs: 2, range: ['-90 deg', '90 deg'], friction: [2, 2, 2], remark: 'x'.repeat(200) }).success,
    ).toBe(true)
    expect(read({ legs: 8, friction: { low: 0.1, typical: 0.1, high: 0.1 }, cooled: true, way: 'standing' }).success).toBe(true)
    expect(read({ rows: ['1 mm', '2 mm', '3 mm'], range: { lowest: '0 deg', highest: '1 deg' } }).success).toBe(true)
    expect(read({ rows: ['1 mm', '2 mm', '3 mm', '4 mm'] }).success).toBe(false)
    expect(read({ rows: [] }).success).toBe(false)
    expect(read({ size: ['1 mm', '2 mm', '3 mm'] }).success).toBe(false)
    expect(read({ size: ['1 mm'] }).success).toBe(false)
    expect(read({ airs: 'warm' }).success).toBe(false)
    expect(read({ airs: ['20 degC'] }).success).toBe(false)
    expect(read({ airs: null }).success).toBe(false)
    expect(read({ motors: { '1 main': {} } }).success).toBe(false)
    expect(read({ none: 1 }).success).toBe(false)
    expect(read({ drive: { kind: 'cord', pretension: '200 N', none: 1 } }).success).toBe(false)
  })

  test('an error that is none of a value is thrown on, and a value that is not accepted is nothing', () => {
    expect(readable(field({ flag: true }), 'x')).toBeUndefined()
    expect(readable(field({ flag: true }), true)).toBe(true)
    expect(() => messageOf(new RangeError('broken'))).toThrow('broken')
    const trap = {
      [Symbol.iterator]: () => 0,
      get typical() {
        throw new TypeError('trap')
      },
    }
    expect(() => readable(field({ own: 'material' }), { basedOn: 'PETG', density: trap })).toThrow('trap')
  })
})

test('the values that are assumed are listed, each with its reason', () => {
  const why = (where: string, level = 'assumption') => ({ level, where })
  expect(defaultsOf(FIELDS, GIVEN)).toEqual([
    { path: 'drop', value: '5 mm', why: why('a low step') },
    { path: 'legs', value: '4', why: why('most walkers', 'commonPractice') },
    { path: 'friction', value: '0.15 (0.1 to 0.2)', why: why('dry') },
    { path: 'way', value: 'lying', why: why('flat') },
    { path: 'cooled', value: 'false', why: why('no fan') },
    { path: 'motors.main.torque', value: '1 N m', why: why('small') },
    { path: 'airs.normal', value: '20 degC', why: why('a mild day') },
  ])
  expect(defaultsOf(FIELDS, { ...GIVEN, airs: { normal: '10 degC' } }).map(({ path }) => path)).not.toContain('airs.normal')
})

test('names that refer to things, groups of which one is needed, and what stands at a path', () => {
  expect(referencesOf(FIELDS, GIVEN)).toEqual([{ path: 'motor', to: 'motors', name: 'main', also: ['none'] }])
  expect(referencesOf({ motor: { refersTo: 'motors' } }, { motor: 'x' })).toEqual([{ path: 'motor', to: 'motors', name: 'x', also: [] }])
  const group = (drum: unknown) => exactlyOneIssues(FIELDS, { ...GIVEN, drum })
  const accepts = 'must have exactly one of radius, diameter'
  expect(group({})).toEqual([{ path: 'drum', given: 'without any of them', accepts }])
  expect(group({ radius: 1, diameter: 2 })).toEqual([{ path: 'drum', given: 'given radius and diameter', accepts }])
  for (const drum of [{ radius: 1 }, undefined, null]) expect(group(drum)).toEqual([])
  const list = { list: { section: { a: { text: true }, b: { text: true } }, exactlyOne: [['a', 'b']] } } as const
  expect(exactlyOneIssues({ list }, { list: [{ a: 'x' }, {}] })).toMatchObject([{ path: 'list[1]' }])

  const names = (...path: string[]) => placeAt(FIELDS, GIVEN, path)
  expect(names('mass')).toEqual({ leaf: FIELDS.mass })
  expect(names('size')).toEqual({ names: ['width', 'height'] })
  expect(names('drum')).toEqual({ names: ['radius', 'diameter'] })
  expect(names('drive')).toEqual({ names: ['kind', 'pretension'] })
  expect(names('motors', 'main', 'torque')).toEqual({ leaf: FIELDS.motors.dictionary.section.torque })
  for (const path of [['motors'], ['none'], ['size', 'depth'], ['motors', 'other']]) expect(names(...path)).toEqual({})
})

test('of a document with mistakes, what can be read is read', () => {
  const found = salvaged(FIELDS, {
    ...GIVEN,
    mass: '10 N',
    rows: ['1 mm', 'x'],
    drum: 3,
    size: ['1 mm', 'x'],
    drive: { kind: 'cord', pretension: 'x' },
  })
  expect(found).toMatchObject({ mass: undefined, legs: 4, way: 'lying', drum: undefined, drive: { kind: 'cord', pretension: undefined } })
  expect((found.rows as Quantity[])[0]).toEqual(quantity('length', '1 mm'))
  expect((found.rows as Quantity[])[1]).toBeUndefined()
  expect(found.size).toEqual({ width: quantity('length', '1 mm'), height: undefined })
  expect(salvaged(FIELDS, { rows: 'x' }).rows).toBeUndefined()
})

describe("a material of one's own", () => {
  const own = (values: object) => () => materialFrom({ basedOn: 'PETG', ...values })
  test('a value given alone has no range; one with a range keeps it, its source and its conditions', () => {
    const { density, modulus } = own({
      density: '1.3 g/cm^3',
      modulus: { typical: '2 GPa', low: '1.8 GPa', high: '2.2 GPa', source: 'bent bars', conditions: 'dry' },
    })()
    expect(density).toMatchObject({ si: 1300, low: 1300, high: 1300, conditions: '' })
    expect(density?.source).toEqual({ level: 'measured', where: 'own measurement' })
    expect(modulus).toMatchObject({ si: 2e9, low: 1.8e9, high: 2.2e9, conditions: 'dry' })
    expect(modulus?.source).toEqual({ level: 'measured', where: 'own measurement: bent bars' })
    const record = { basedOn: 'PETG' }
    expect(materialFrom(record)).toBe(materialFrom(record))
  })
  test.each([
    [{ basedOn: undefined }, 'must say which material of the table it is basedOn'],
    [{ rho: '1 g/cm^3' }, 'rho is not a property of a material, did you mean density?'],
    [{ densty: '1 g/cm^3' }, 'densty is not a property of a material, did you mean density?'],
    [{ colour_of_the_spool: 'red' }, 'colour_of_the_spool is not a property of a material; its properties are '],
    [{ strength: '40 MPa' }, 'strength is not a property of a material, did you mean '],
    [{ density: '13 g/cm^3' }, '; if it is right, give typical, low, high and source'],
    [{ density: true }, 'must be a quantity or { typical, low, high, source }, not true'],
    [{ density: ['1 g/cm^3'] }, 'must be a quantity or { typical, low, high, source }, not '],
    [{ density: { typical: '1 kg', low: '1 kg', high: '1 kg' } }, 'density.'],
  ])('%j', (values, message) => {
    expect(own(values)).toThrow(message)
  })
  test('a value far outside the table is believed where its range and source are given', () => {
    expect(own({ density: { typical: '13 g/cm^3', low: '12 g/cm^3', high: '14 g/cm^3', source: 'weighed' } })).not.toThrow()
  })
})

describe('the JSON Schema', () => {
  const texts = { meaning: (path: string) => (path.startsWith('drive<') ? path : undefined), names: (section: string) => [`a ${section}`] }
  const schema = jsonSchemaOf(FIELDS, texts) as Record<string, never>
  const properties = schema.properties as unknown as Record<string, object>

  test('has the structure of every sort of field', () => {
    const length = { $ref: '#/$defs/length' }
    const object = (fields: object, required: readonly string[] = Object.keys(fields)) => ({
      type: 'object',
      properties: fields,
      required,
      additionalProperties: false,
    })
    const [number, angle] = [{ type: 'number', exclusiveMinimum: 0, maximum: 2 }, { $ref: '#/$defs/angle' }]
    expect(properties).toMatchObject({
      legs: { type: 'integer', minimum: 2, maximum: 8, default: 4 },
      range: { type: 'array', prefixItems: [angle, angle], minItems: 2, maxItems: 2 },
      friction: {
        anyOf: [{ type: 'array', items: number, minItems: 3, maxItems: 3 }, object({ low: number, typical: number, high: number })],
      },
      cooled: { type: 'boolean' },
      class: { anyOf: [{ enum: expect.arrayContaining(['8.8', '10.9']) }, { type: 'number' }] },
      size: {
        anyOf: [{ type: 'array', prefixItems: [length, length], minItems: 2, maxItems: 2 }, object({ width: length, height: length })],
      },
      rows: { type: 'array', items: length, minItems: 1, maxItems: 3 },
      drum: {
        ...object({ radius: length, diameter: length }, []),
        allOf: [{ oneOf: [{ required: ['radius'] }, { required: ['diameter'] }] }],
      },
      motors: { type: 'object', additionalProperties: object({ torque: { $ref: '#/$defs/torque', default: '1 N m' } }, []), default: {} },
      airs: { type: 'object', additionalProperties: { $ref: '#/$defs/temperature' } },
      own: {
        additionalProperties: {
          type: 'object',
          properties: { basedOn: { type: 'string', examples: ['a materials'] } },
          required: ['basedOn'],
        },
      },
    })
    expect(properties.class).not.toHaveProperty('enum')
    expect(schema.additionalProperties).toBe(false)
  })

  test('has what an editor shows: defaults, meanings, names, examples', () => {
    expect(schema.required).toEqual(['mass', 'range', 'motor', 'size', 'drive'])
    expect(properties.mass).toEqual({ $ref: '#/$defs/mass' })
    expect(properties.drop).toEqual({ $ref: '#/$defs/length', default: '5 mm' })
    expect(properties.way).toEqual({ enum: ['lying', 'standing'], default: 'lying' })
    expect(properties.motor).toEqual({ type: 'string', examples: ['none', 'a motors'] })
    expect(properties.remark).toEqual({ type: 'string', minLength: 1, maxLength: 200 })
    expect(Object.keys(properties.motors as object)).not.toContain('allOf')
    expect((properties.motors as { additionalProperties: object }).additionalProperties).not.toHaveProperty('allOf')
    expect(properties.drive).toEqual({
      oneOf: [
        {
          type: 'object',
          title: 'cord',
          properties: { kind: { const: 'cord' }, pretension: { $ref: '#/$defs/force', description: 'drive<cord>.pretension' } },
          required: ['kind', 'pretension'],
          additionalProperties: false,
        },
        { type: 'object', title: 'held', properties: { kind: { const: 'held' } }, required: ['kind'], additionalProperties: false },
      ],
    })
    expect(properties.own).toMatchObject({
      additionalProperties: { required: ['basedOn'], properties: { basedOn: { examples: ['a materials'] } } },
    })
  })

  test('takes a bare number where a quantity has no unit, and nowhere else', () => {
    const kinds = ['ratio', 'count', 'strain', 'mass', 'length', 'angle'] as const
    const { $defs } = jsonSchemaOf(Object.fromEntries(kinds.map((kind) => [kind, { kind }])), texts) as {
      $defs: Record<string, { anyOf: object[] }>
    }
    const bare = kinds.filter((kind) => $defs[kind]!.anyOf.some((one) => (one as { type: string }).type === 'number'))
    expect(bare).toEqual(['ratio', 'count', 'strain'])
  })
})
