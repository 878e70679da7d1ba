import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { describeLeg, type LegSpecification, legJsonSchema } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { materialState } from '../../src/leg/material-state.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { InputError, mm, N, Quantity } from '../../src/units/index.js'
import { cordDrive } from './cord-drive.js'

const text = readFileSync(new URL('./version-3/walker-first.yaml', import.meta.url), 'utf8')
const data = () => JSON.parse(JSON.stringify(describeLeg(text))) as Record<string, never>

const messages = (specification: unknown): { path: string; given: string; accepts: string }[] => {
  try {
    describeLeg(specification as LegSpecification)
  } catch (error) {
    if (error instanceof InputError) return [...error.issues]
    throw error
  }
  return []
}

/** The example with one text replaced; the test fails if the text is not in it. */
const edited = (...edits: readonly (readonly [from: string, to: string])[]) =>
  edits.reduce((current, [from, to]) => {
    expect(current, `the example must contain ${from}`).toContain(from)
    return current.replace(from, to)
  }, text)

describe('a readable specification', () => {
  test('quantities carry their kind and SI value', () => {
    const leg = describeLeg(text)
    expect(leg.links.upper.length).toBeInstanceOf(Quantity)
    expect(leg.links.upper.length.kind).toBe('length')
    expect(leg.links.upper.length.si).toBeCloseTo(0.165, 15)
    expect(cordDrive(leg, 'knee').pretension.si).toBe(90)
  })

  test('what the document leaves open is listed with value and reason', () => {
    const leg = describeLeg(text)
    const efficiency = leg.defaults.find(({ path }) => path === 'joints.hip.drive.efficiency')
    expect(efficiency).toEqual({
      path: 'joints.hip.drive.efficiency',
      value: '0.95',
      why: { level: 'commonPractice', where: expect.any(String) },
    })
    expect(cordDrive(leg, 'hip').efficiency.si).toBe(0.95)
    expect(leg.defaults.every(({ why }) => why.where.length > 3)).toBe(true)
    expect(leg.defaults.some(({ path }) => path === 'robot.mass')).toBe(false)
  })

  test('text, JSON text, plain data and a described leg read alike', () => {
    const leg = describeLeg(text)
    const again = describeLeg(JSON.parse(JSON.stringify(leg)))
    expect(JSON.stringify(again)).toBe(JSON.stringify(leg))
    expect(JSON.stringify(describeLeg(JSON.stringify(leg)))).toBe(JSON.stringify(leg))
    expect(JSON.stringify(describeLeg(leg))).toBe(JSON.stringify(leg))
  })

  test('quantities may be text, pairs or Quantity', () => {
    const leg = describeLeg(text)
    const changed = describeLeg({ ...leg, links: { ...leg.links, hipOffset: mm(60) }, robot: { ...leg.robot, mass: [12, 'kg'] } } as never)
    expect(changed.links.hipOffset.si).toBeCloseTo(0.06, 15)
    expect(changed.robot.mass.si).toBe(12)
  })

  test('the order of sections does not matter', () => {
    const given = data()
    const reversed = Object.fromEntries(Object.entries(given).reverse())
    expect(describeLeg(reversed as never)).toEqual(describeLeg(given as never))
  })

  test('an older document is brought up to date', () => {
    const given = parse(text) as Record<string, unknown>
    const older = { ...given, schemaVersion: 1, air: '12 degC' }
    expect(describeLeg(older as never).loadCases.airs.normal?.temperature.in('degC')).toBeCloseTo(12, 10)
    expect(describeLeg(older as never).schemaVersion).toBe(4)
    const second = {
      ...given,
      schemaVersion: 2,
      print: { ...(given.print as object), layerHeight: '0.2 mm' },
      usage: { ...(given.usage as object), hopDutyFactor: 0.4 },
    }
    expect(describeLeg(second as never)).toEqual(describeLeg(given as never))
    expect(() => describeLeg({ ...second, schemaVersion: 3 } as never)).toThrow(/print\.layerHeight/)
    // Version 3 is known by its sections where a document does not say.
    const { schemaVersion: _, ...unnamed } = given
    expect(describeLeg(unnamed as never)).toEqual(describeLeg(given as never))
  })
})

describe('mistakes', () => {
  test('ten ordinary mistakes give ten messages, each with path, given value and what to change', () => {
    const issues = messages(
      edited(
        ['mass: 10.5 kg', 'mass: 10.5 mm'],
        ['pretension: 90 N', 'pretenson: 90 N'],
        ['arrangement: crossed', 'arrangement: crosed'],
        ['thread: M4', 'thread: M45'],
        ['propertyClass: 8.8', 'propertyClass: 8.9'],
        ['{ from: 20 deg, to: 135 deg }', '{ from: 135 deg, to: 20 deg }'],
        ['outerDiameter: 11 mm', 'outerDiameter: 3.5 mm'],
        ['centreDistance: 64 mm', 'centreDistance: 40 mm'],
        ['material: PC', 'material: PPC'],
        ['voltage: 22 V', 'voltage: 22'],
      ),
    )
    expect(issues.map(({ path }) => path).sort()).toEqual(
      [
        'robot.mass',
        'drives.hip.pretenson',
        'drives.hip.arrangement',
        'bolts.stack.thread',
        'bolts.stack.propertyClass',
        'joints.knee',
        'bosses.hip.outerDiameter',
        'drives.hip.centreDistance',
        'drives.hip.drum.material',
        'supply.voltage',
      ].sort(),
    )
    const accepts = Object.fromEntries(issues.map((issue) => [issue.path, issue.accepts]))
    expect(accepts['robot.mass']).toMatch(/mm is a unit of length/)
    expect(accepts['drives.hip.pretenson']).toMatch(/did you mean pretension/)
    expect(accepts['drives.hip.arrangement']).toMatch(/did you mean crossed/)
    expect(accepts['bolts.stack.thread']).toMatch(/did you mean M4/)
    expect(accepts['bosses.hip.outerDiameter']).toMatch(/smaller than its pin/)
    expect(accepts['drives.hip.centreDistance']).toMatch(/pulleys overlap/)
    expect(accepts['drives.hip.drum.material']).toMatch(/PC/)
    expect(accepts['supply.voltage']).toMatch(/a bare number has no unit/)
  })

  test.each([
    ['a missing section', (d: Record<string, unknown>) => ({ ...d, supply: undefined }), 'supply', 'missing'],
    ['a section that is a number', (d: Record<string, unknown>) => ({ ...d, plates: 7 }), 'plates', '7'],
    ['a section that is a list', (d: Record<string, unknown>) => ({ ...d, foot: [] }), 'foot', 'an empty list'],
    ['a list that is a section', (d: Record<string, unknown>) => ({ ...d, cords: [] }), 'cords', 'an empty list'],
    ['an unknown section', (d: Record<string, unknown>) => ({ ...d, wheels: 4 }), 'wheels', '4'],
    ['a newer version', (d: Record<string, unknown>) => ({ ...d, schemaVersion: 99 }), 'schemaVersion', '99'],
    ['a version that is text', (d: Record<string, unknown>) => ({ ...d, schemaVersion: '2' }), 'schemaVersion', "'2'"],
  ])('%s', (_, change, path, given) => {
    expect(messages(change(data()))).toContainEqual({ path, given, accepts: expect.any(String) })
  })

  test.each(['NaN kg', 'Infinity kg', '-10.5 kg', '0 kg', '', ' ', '10.5kg', '10,5 kg', '1e999 kg', 'kg'])('mass %j is refused', (mass) => {
    const issues = messages({ ...data(), robot: { ...(data().robot as unknown as object), mass } })
    expect(issues.map(({ path }) => path)).toEqual(['robot.mass'])
  })

  test('a foot that cannot reach the ground', () => {
    expect(messages(edited(['standHeight: 295 mm', 'standHeight: 350 mm']))).toContainEqual({
      path: 'robot.standHeight',
      given: expect.stringContaining('350 mm'),
      accepts: expect.stringContaining('cannot reach'),
      line: expect.any(Number),
      column: expect.any(Number),
    })
  })

  test.each([
    ['landingTravel: 90 mm', 'landingTravel: 250 mm', 'usage.landingTravel', 'most folded leg'],
    ['landingTravel: 90 mm', 'landingTravel: 90 mm, touchDownHeight: 400 mm', 'usage.touchDownHeight', 'straightest leg'],
    ['landingTravel: 90 mm', 'landingTravel: 90 mm, touchDownHeight: 100 mm', 'usage.touchDownHeight', 'most folded'],
  ])('a landing beyond what the leg can fold: %s becomes %s', (from, to, path, accepts) => {
    expect(messages(edited([from, to.replace(', ', '\n  ')]))).toMatchObject([{ path, accepts: expect.stringContaining(accepts) }])
  })

  test('wraps that do not fit their pinion', () => {
    const [issue] = messages(edited(['wraps: 3, length: 14 mm', 'wraps: 9, length: 14 mm']))
    expect(issue?.path).toBe('drives.hip.pinion.length')
  })

  test('neither or both ways to give a radius', () => {
    expect(messages(edited(['{ grooveDiameter: 12 mm, wraps', '{ wraps']))[0]?.path).toBe('drives.hip.pinion')
    expect(
      messages(edited(['{ grooveDiameter: 12 mm, wraps', '{ grooveDiameter: 11.2 mm, centreLineRadius: 6.8 mm, wraps']))[0]?.path,
    ).toBe('drives.hip.pinion')
  })

  test('a cord that is not in the document, with the near name', () => {
    expect(messages(edited(['cord: braid', 'cord: brade']))[0]).toMatchObject({
      path: 'drives.hip.cord',
      accepts: expect.stringContaining('did you mean braid'),
    })
  })
})

describe('materials of your own', () => {
  const own = `materials:
  my ASA:
    basedOn: ASA
    tensileStrength: { typical: 33 MPa, low: 31 MPa, high: 35 MPa, source: five bars on my printer }
    modulus: 1.9 GPa
`
  const withOwn = edited(['plate: { material: ASA', 'plate: { material: my ASA'])

  test('are used where they are named, with the rest from the table', () => {
    const leg = describeLeg(own + withOwn)
    expect(leg.plates.bodyPlate?.material).toBe('my ASA')
    const plate = materialState(legModel(legNumbers(leg)), 'my ASA')
    expect(plate.strength('alongLayers').typical).toBe(33e6)
    expect(plate.elastic().modulus).toBeCloseTo(1.9e9 * 0.94, 0)
    expect(plate.softening()).toBeCloseTo(273.15 + 103, 9)
    expect(plate.strength('alongLayers').low).toBe(31e6)
    expect(JSON.stringify(describeLeg(JSON.stringify(leg)))).toBe(JSON.stringify(leg))
  })

  test('mistakes in them are named', () => {
    const paths = (text: string) => messages(text).map(({ path, accepts }) => `${path}: ${accepts}`)
    expect(paths(withOwn)).toEqual([expect.stringMatching(/^plate.material: must be the name of a material/)])
    expect(paths(own.replace('basedOn: ASA', 'basedOn: ASSA') + withOwn)[0]).toMatch(/materials.my ASA: .*ASA/)
    expect(paths(own.replace('tensileStrength', 'tensilStrength') + withOwn)[0]).toMatch(/did you mean tensileStrength/)
    expect(paths(own.replace('33 MPa', '43 MPa') + withOwn)[0]).toMatch(/within its range/)
    expect(paths(own.replace('33 MPa', '33 mm') + withOwn)[0]).toMatch(/unit of length/)
    // A bare value far outside the table is a slip until its range and source are given.
    expect(paths(own.replace('1.9 GPa', '19 GPa') + withOwn)[0]).toMatch(/modulus is 19 GPa, far from .*give typical, low, high and source/)
  })
})

describe('hostile documents', () => {
  test('reserved keys are refused in objects and in text', () => {
    expect(messages(`${text}\n__proto__: { polluted: true }\n`).map(({ path }) => path)).toContain('__proto__')
    expect(messages(JSON.parse('{"robot": {"constructor": {"prototype": {"x": 1}}}}')).map(({ path }) => path)).toContain(
      'robot.constructor',
    )
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined()
  })

  test('an alias bomb is refused quickly', () => {
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]']
    for (let i = 0; i < 12; i++) {
      const [from, to] = [String.fromCharCode(97 + i), String.fromCharCode(98 + i)]
      bomb.push(`${to}: &${to} [${Array(9).fill(`*${from}`).join(', ')}]`)
    }
    expect(messages(bomb.join('\n'))[0]?.path).toBe('text')
  })

  test('a text of ten megabytes is refused by its length', () => {
    expect(messages(`# ${'x'.repeat(10_000_000)}`)).toEqual([
      { path: 'text', given: '10000002 characters', accepts: expect.stringContaining('at most') },
    ])
  })

  test('mistakes carry line and column, and a message lists at most twenty', () => {
    const wrong = edited(['pretension:', 'pretention:'])
    const found = messages(wrong) as { path: string; line?: number; column?: number }[]
    const at = wrong.slice(0, wrong.indexOf('pretention')).split('\n').length
    expect(found[0]).toMatchObject({ line: at, column: expect.any(Number) })
    expect(() => describeLeg(wrong)).toThrow(`line ${at}, column`)
    const many = `${text}\n${Array.from({ length: 5000 }, (_, i) => `unknown${i}: 1`).join('\n')}`
    expect(messages(many).length).toBe(20)
    let message = ''
    try {
      describeLeg(many)
    } catch (error) {
      message = (error as Error).message
    }
    expect(message.split('\n').length).toBeLessThan(30)
    expect(message).toContain('4981 more unknown fields')
  })

  test('a document of many keys is read or refused at once', () => {
    const many = Array.from({ length: 9000 }, (_, i) => `k${i}: 1`).join('\n')
    expect(messages(many).length).toBeGreaterThan(19)
    const long = Array.from({ length: 100_000 }, (_, i) => `k${i}: 1`).join('\n')
    expect(messages(long)).toEqual([{ path: 'text', given: `${long.length} characters`, accepts: expect.stringContaining('at most') }])
  })

  test('bytes of a file, and a second document in the text', () => {
    expect(messages(Buffer.from(text))).toEqual([
      { path: 'specification', given: 'bytes of a file', accepts: expect.stringContaining("'utf8'") },
    ])
    expect(messages(`${text}\n---\nname: another\n`)[0]?.accepts).toBe('a second document begins here; a text must hold one')
    // A file of the other encoding, read as this one.
    for (const encoding of ['utf8', 'latin1'] as const)
      expect(messages(Buffer.from(`\ufeff${text}`, 'utf16le').toString(encoding))[0]).toMatchObject({
        path: 'text',
        accepts: 'save the file as UTF-8, not as UTF-16',
      })
  })

  test.each([
    ['an earlier layout', './version-3/walker-first.yaml'],
    ['the layout of today', '../../examples/desk-leg-revised.yaml'],
  ])('a list with a hole in it, at any place of %s', (_, file) => {
    const plain = parse(readFileSync(new URL(file, import.meta.url), 'utf8')) as Record<string, unknown>
    const lists: (readonly PropertyKey[])[] = []
    const visit = (value: unknown, path: readonly PropertyKey[]) => {
      if (Array.isArray(value)) lists.push(path)
      if (typeof value === 'object' && value !== null) for (const [name, inner] of Object.entries(value)) visit(inner, [...path, name])
    }
    visit(plain, [])
    expect(lists.length).toBeGreaterThan(3)
    for (const path of lists) {
      const copy = structuredClone(plain)
      const list = path.reduce<unknown>((at, name) => (at as Record<PropertyKey, unknown>)[name], copy) as unknown[]
      delete list[0]
      expect(messages(copy).length, path.join('.')).toBeGreaterThan(0)
    }
  })

  test('a key that stands twice, a text that is no document, an object that contains itself', () => {
    expect(messages('name: a\nname: b\n')[0]?.path).toMatch(/^line 2/)
    expect(messages('{"name": "a", "name": "b"}')[0]?.path).toMatch(/^line 1/)
    expect(messages('robot: { mass: 10 kg')[0]?.path).toMatch(/^line/)
    expect(messages('just words')[0]?.path).toBe('specification')
    expect(messages('')[0]?.given).toBe('an empty text')
    const loop: Record<string, unknown> = {}
    loop.robot = loop
    expect(messages(loop)[0]?.given).toBe('an object that contains itself')
    expect(messages(null)[0]?.path).toBe('specification')
    expect(messages([])[0]?.path).toBe('specification')
  })
})

describe('JSON Schema', () => {
  const schema = legJsonSchema() as {
    properties: Record<string, { properties: Record<string, unknown>; required: string[] }>
    required: string[]
    $defs: Record<string, unknown>
  }

  test('quantities are patterns that the reader agrees with', () => {
    const field = schema.properties.robot?.properties.mass as { $ref: string; description: string }
    const mass = schema.$defs[field.$ref.replace('#/$defs/', '')] as { anyOf: { pattern?: string }[] }
    const pattern = new RegExp(mass.anyOf[0]?.pattern as string)
    for (const good of ['10.5 kg', '1e1 kg', '+10 kg', '25.5 lb']) {
      expect(pattern.test(good)).toBe(true)
      expect(messages({ ...data(), robot: { ...(data().robot as unknown as object), mass: good } })).toEqual([])
    }
    for (const bad of ['10.5', '10.5 mm', '10.5kg', 'ten kg', '10 kg ']) {
      expect(pattern.test(bad)).toBe(false)
      expect(messages({ ...data(), robot: { ...(data().robot as unknown as object), mass: bad } })).toHaveLength(1)
    }
    expect(field.description).toMatch(/Mass of the whole robot/)
  })

  test('fields that may be left out are not required, and show what is taken', () => {
    expect(schema.properties.robot?.required).toContain('mass')
    expect(schema.properties.robot?.required).not.toContain('legs')
    expect(schema.properties.robot?.properties.legs).toMatchObject({ default: 4 })
    expect(schema.required).toContain('joints')
    expect(schema.required).not.toContain('motors')
    expect(schema.required).not.toContain('usage')
  })
})

test('a force made by a unit function is a pretension', () => {
  const leg = describeLeg(text)
  const { hip } = leg.joints
  const changed = describeLeg({
    ...leg,
    joints: { ...leg.joints, hip: { ...hip, drive: { ...cordDrive(leg, 'hip'), pretension: N(90) } } },
  })
  expect(cordDrive(changed, 'hip').pretension.si).toBe(90)
})
