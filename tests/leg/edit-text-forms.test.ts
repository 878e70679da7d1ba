import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { editLegText } from '../../src/leg/index.js'
import { quantity } from '../../src/units/index.js'

/** A document in the forms that people write: sections of both forms, lists of both forms, texts of several lines, comments, empty sections. */
const TEXT = `# my leg
name: "Left: front" # of four
remark: |
  first line
  second line
legs: 4
plain: hot air
12: a name that is a number
robot:
  mass: 10 kg # with battery
  nothing:
  place: { x: 1, y: 2, z: 3 }
  # a comment of its own

supply: { voltage: 22 V, sink: { size: [1, 2] }, flat: {} }
stack:
  - material: PC # the plate
    thickness: 7 mm
  - { material: ASA, thickness: 8 mm }
rows: [8 mm, 48 mm]
last: 1`

type Section = Record<string, unknown>

/** What the document must say after a change of one field, by the plainest means: nothing is left of a section without fields. */
function expected(steps: readonly string[], value: unknown): unknown {
  const data = parse(TEXT) as Section
  const within = steps.slice(0, -1)
  const into = (section: Section, step: string) => {
    section[step] ??= {}
    return section[step] as Section
  }
  const at = (path: readonly string[]) => path.reduce<Section>(into, data)
  if (value !== undefined) at(within)[steps.at(-1) as string] = value
  else
    for (let depth = steps.length; depth > 0; depth--) {
      const section = at(steps.slice(0, depth - 1))
      delete section[steps[depth - 1] as string]
      if (Object.keys(section).length > 0) break
    }
  return data
}

const FIELDS = [
  ...['name', 'remark', 'legs', 'plain', '12', 'last', 'robot.mass', 'robot.nothing', 'robot.place', 'robot.place.x', 'robot.place.y'],
  ...['robot.place.z', 'supply', 'supply.voltage', 'supply.sink', 'supply.sink.size', 'supply.flat', 'rows'],
  ...['stack[0].material', 'stack[0].thickness', 'stack[1].material', 'stack[1].thickness'],
]
const ITEMS = ['rows[0]', 'rows[1]', 'supply.sink.size[1]', 'stack[1]']
const NEW = [
  'new',
  'no: way',
  'robot.new',
  'robot.place.new',
  'robot.nothing.new',
  'supply.flat.new',
  'stack[0].new',
  'a.b.c',
  'supply.sink.deep.new',
]
const stepsOf = (path: string) => path.replaceAll(/\[(\d)\]/g, '.$1').split('.')
/** As YAML, and as JSON. */
const forms = [TEXT, JSON.stringify(parse(TEXT))] as const

describe('a document with one field changed says what it said, and the new value', () => {
  test.each([...FIELDS, ...ITEMS, ...NEW])('%s is set', (path) => {
    for (const value of ['1 mm', [1, '2 mm'], { a: '3 mm', b: { c: 'no' } }, 0.5])
      for (const text of forms) expect(parse(editLegText(text, { [path]: value }))).toEqual(expected(stepsOf(path), value))
  })

  test.each(FIELDS)('%s is removed', (path) => {
    for (const text of forms) expect(parse(editLegText(text, { [path]: undefined }))).toEqual(expected(stepsOf(path), undefined))
  })

  test.each([...NEW, 'robot.place.x2', 'supply.sink.none'])('%s is not there, and its removal changes nothing', (path) => {
    expect(editLegText(TEXT, { [path]: undefined })).toBe(TEXT)
    expect(parse(editLegText(forms[1], { [path]: undefined }))).toEqual(parse(TEXT))
  })

  test('every line but that of the field stays as it is', () => {
    const lines = TEXT.split('\n')
    for (const path of [...FIELDS, ...ITEMS].filter((one) => !['remark', 'last'].includes(one))) {
      const edited = editLegText(TEXT, { [path]: '1 mm' }).split('\n')
      expect(
        edited.filter((line, i) => line !== lines[i]),
        path,
      ).toHaveLength(1)
      expect(edited).toHaveLength(lines.length)
    }
    expect(editLegText(TEXT, { remark: 'one line' })).toBe(TEXT.replace('|\n  first line\n  second line', 'one line'))
    expect(editLegText(TEXT, { legs: undefined })).toBe(TEXT.replace('legs: 4\n', ''))
    expect(editLegText(TEXT, { 'stack[0].material': undefined })).toBe(TEXT.replace('material: PC # the plate\n    ', ''))
    expect(editLegText(TEXT, { last: undefined })).toBe(TEXT.replace('last: 1', ''))
  })

  test('any text reads back as it was given, plain, in quotes, in a list and as a name', () => {
    const texts = fc.oneof(fc.string(), fc.constantFrom('null', '~', '1e3', ' x', 'x ', 'a, b', 'a: b', '#', '- a', '{', "'", '\n', 'µ 1'))
    fc.assert(
      fc.property(texts, (given) => {
        for (const path of ['name', 'plain', 'supply.voltage', 'rows[0]', 'stack[1].new'])
          expect(parse(editLegText(TEXT, { [path]: given }))).toEqual(expected(stepsOf(path), given))
        expect(parse(editLegText(TEXT, { new: { [`k${given}`]: given } }))).toMatchObject({ new: { [`k${given}`]: given } })
      }),
      { seed: 11, numRuns: 40 },
    )
  })
})

test('values of a described leg are written as a document writes them', () => {
  const mass = quantity('mass', '10.5 kg')
  const { si, kind } = mass
  const written = (value: unknown) => parse(editLegText('x: 1', { x: value as never })).x
  expect(written(mass)).toBe('10.5 kg')
  expect(written(quantity('ratio', 0.3))).toBe(0.3)
  expect(written(quantity('length', [1 / 3, 'm']))).toBe('333.333333333 mm')
  expect(written(null)).toBe(null)
  // One that another copy of the library made.
  expect(written({ mass: { si, kind, toJSON: () => mass.toJSON() }, none: null })).toEqual({ mass: '10.5 kg', none: null })
  expect(written({ low: 0.1, typical: 0.2, high: 0.3 })).toEqual([0.1, 0.2, 0.3])
  expect(written({ lowest: quantity('angle', '-20 deg'), highest: quantity('angle', '30 deg') })).toEqual(['-20 deg', '30 deg'])
  expect(written({ size: [mass, { width: mass }] })).toEqual({ size: ['10.5 kg', { width: '10.5 kg' }] })
  // A material of one's own keeps the source of its value.
  const own = { typical: '2 GPa', low: '1.8 GPa', high: '2.2 GPa', source: 'bent bars' }
  expect(written(own)).toEqual(own)
  for (const part of [
    { typical: 1, high: 2 },
    { low: 1, high: 2 },
    { low: 1, typical: 2 },
    { lowest: 1, highest: 2, source: 'x' },
  ])
    expect(written(part)).toEqual(part)
})

test('a document of version 3 is changed under its own names, and one of today under its own', () => {
  const changed = (name: string, path: string, value: string) => {
    const text = readFileSync(new URL(name, import.meta.url), 'utf8')
    const lines = text.split('\n')
    return editLegText(text, { [path]: value } as never)
      .split('\n')
      .filter((line, i) => line !== lines[i])
  }
  const earlier = './version-3/walker-revised.yaml'
  expect(changed(earlier, 'links.upper.section.wall', '9 mm')).toEqual([
    expect.stringMatching(/^ {2}upper: \{.* width: 26 mm, depth: 34 mm, wall: 9 mm }$/),
  ])
  expect(changed('../../examples/mudflat-leg-revised.yaml', 'links.upper.section.wall', '9 mm')).toEqual([
    '    section: { box: [26 mm, 34 mm], wall: 9 mm }',
  ])
})

test('a text without a field takes its first one after its comments', () => {
  expect(editLegText('', { name: 'x' })).toBe('name: x\n')
  expect(editLegText('# mine', { name: 'x' })).toBe('# mine\nname: x\n')
  expect(editLegText('# mine\n', { 'robot.legs': 4 })).toBe('# mine\nrobot: { legs: 4 }\n')
  expect(editLegText('{}', { name: 'x' })).toBe('{\n  "name": "x"\n}\n')
  expect(editLegText('{"name":"x"}', { name: undefined })).toBe('{}\n')
})

test.each([
  ['rows[2]', '1 mm', /rows\[2\] is '1 mm'; must be the path of a field of the document/],
  ['rows.length', 1, /rows\.length is 1; must be the path/],
  ['rows[0]', undefined, /rows\[0\] is missing; must be the path/],
  ['stack[1]', undefined, /stack\[1\] is missing; must be the path/],
  ['legs.count', 4, /legs\.count is 4; must be the path/],
  ['legs.count', undefined, /legs\.count is missing; must be the path/],
  ['legs.count.most', undefined, /legs\.count\.most is missing; must be the path/],
  ['rows.first.most', undefined, /rows\.first\.most is missing; must be the path/],
])('%s set to %s is refused in both forms', (path, value, message) => {
  for (const text of forms) expect(() => editLegText(text, { [path]: value })).toThrow(message)
})

test('a section on lines of its own is not written over, and a text that is no document is refused', () => {
  expect(() => editLegText(TEXT, { robot: { mass: '1 kg' } })).toThrow(
    /robot is .*must be changed field by field: in the text it stands on lines of its own/,
  )
  expect(() => editLegText(TEXT, { stack: [] })).toThrow(/stack is .*must be changed field by field/)
  expect(() => editLegText('just words', { name: 'x' })).toThrow(/name is 'x'; must be the path/)
  expect(() => editLegText('- a\n', { name: 'x' })).toThrow(/name is 'x'; must be the path/)
})
