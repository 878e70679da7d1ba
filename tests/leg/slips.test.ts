import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { describeLeg, withFields } from '../../src/leg/index.js'
import { InputError } from '../../src/units/index.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')
const earlier = readFileSync(new URL('./version-3/walker-revised.yaml', import.meta.url), 'utf8')
const heath = read('heath-leg-revised')
const orchard = read('orchard-leg-revised')
const json = JSON.stringify(describeLeg(heath), null, 1)

/** The issues of a text that is refused. */
function issuesOf(text: string | object) {
  try {
    describeLeg(text as string)
  } catch (error) {
    if (error instanceof InputError) return error.issues
    throw error
  }
  return []
}

/** A text with one place changed. */
function edited(text: string, from: string | RegExp, to: string): string {
  const after = text.replace(from, to)
  if (after === text) throw new Error(`${from} is not in the text`)
  return after
}

describe('a slip of a builder gets one message that says what to write', () => {
  test.each([
    [
      'the surface of a metal plate left open',
      edited(orchard, '    emissivity: 0.9 # painted\n', ''),
      /plates\.hipPlate\.emissivity/,
      '0.8 anodised',
    ],
    [
      'the surface of a sink left open',
      edited(heath, ', emissivity: 0.85 }', ' }'),
      /plates\.hipPlate\.sink\.emissivity/,
      'bare aluminium',
    ],
    ['a decimal comma', edited(earlier, 'mass: 10.5 kg', 'mass: 10,5 kg'), /robot\.mass/, "write '10.5 kg' with a point"],
    ['a decimal comma within braces', edited(heath, 'wall: 2.4 mm', 'wall: 2,4 mm'), /line 68, column 96/, 'write 2.4 mm with a point'],
    ['a decimal comma within brackets', edited(earlier, '[8 mm, 8 mm,', '[8,5 mm, 8 mm,'), /line 87/, 'write 8.5 mm with a point'],
    ['degrees as a sign', edited(earlier, 'slope: 14 deg', 'slope: 14 °'), /usage\.slope/, "write '14 deg'"],
    ['degrees Celsius as a letter', edited(earlier, 'hotAir: 40 degC', 'hotAir: 40 C'), /hotAir/, 'did you mean degC?'],
    ['hours as a word', edited(earlier, '15 min', '2 hours'), /stallTime/, "write '2 h'"],
    ['a motor by its KV', edited(heath, 'speedConstant: 110 rpm/V', 'speedConstant: 110 KV'), /speedConstant/, "write '110 rpm/V'"],
    ['the name KV', edited(heath, 'speedConstant: 110 rpm/V', 'KV: 110 rpm/V'), /KV/, 'did you mean speedConstant?'],
    ['ohms as a sign', edited(heath, '0.075 ohm', '0.075 Ω'), /terminalResistance/, 'did you mean ohm?'],
    ['microhenries as a sign', edited(heath, '40 uH', '40 µH'), /phaseInductance/, 'did you mean uH?'],
    ['newton metres without a blank', edited(heath, '1.2 N m', '1.2 Nm'), /tighteningTorque/, 'did you mean N m?'],
    ['metres for millimetres', edited(heath, 'length: 165 mm', 'length: 165 m'), /links\.upper\.length/, 'did you mean mm?'],
    ['millimetres for metres', edited(heath, 'length: 165 mm', 'length: 0.165 mm'), /links\.upper\.length/, 'did you mean m?'],
    ['a capstan as the kind of drive', edited(heath, 'kind: cord', 'kind: capstan'), /drive\.kind/, 'did you mean cord?'],
    ['a misspelt kind of drive', edited(heath, 'kind: cord', 'kind: chord'), /drive\.kind/, 'did you mean cord?'],
    ['kilograms of force', edited(heath, 'pretension: 230 N', 'pretension: 23 kg'), /pretension/, 'kg is a unit of mass'],
    ['one friction number', edited(heath, '[0.08, 0.14, 0.20]', '0.14'), /friction/, 'write for example [0.098, 0.14, 0.18]'],
    ['a comment in JSON', edited(json, '"name"', '// the left one\n "name"'), /line 3/, 'JSON has no comments'],
    ['a comment before JSON', `/* a leg */\n${json}`, /line 1/, 'JSON has no comments'],
    ['a comment of another language', edited(heath, 'robot:', '// all of it\nrobot:'), /line 7/, 'write comments after #'],
    ['a fence', `\`\`\`yaml\n${heath}\`\`\`\n`, /line 1/, 'remove the fence'],
    ['a name that stands twice', edited(heath, 'supply:', 'foot: {}\nsupply:'), /line/, 'each name may occur once'],
    ['a missing colon', edited(earlier, '  mass: 10.5 kg', '  mass 10.5 kg'), /line 10/, 'the line before has no colon'],
    [
      'Young’s modulus by its letter',
      `${heath}materials: { mine: { basedOn: ASA, E: 2 GPa } }\n`,
      /materials\.mine/,
      'did you mean modulus?',
    ],
    ['strength of no kind', `${heath}materials: { mine: { basedOn: ASA, strength: 40 MPa } }\n`, /materials\.mine/, 'tensileStrength or'],
    ['limits upside down', edited(heath, '[-75 deg, 45 deg]', '[45 deg, -75 deg]'), /joints\.hip\.range/, 'upside down'],
    ['a landing longer than the leg', edited(heath, 'feet: 2, travel: 80 mm', 'feet: 2, travel: 1 m'), /travel/, 'to the most folded leg'],
  ])('%s', (_, text, path, says) => {
    const issues = issuesOf(text)
    expect(issues, JSON.stringify(issues)).toHaveLength(1)
    const [{ path: at, accepts, line }] = issues as [(typeof issues)[number]]
    expect(at).toMatch(path)
    expect(accepts).toContain(says)
    expect(/line \d/.test(at) || (line as number) > 0).toBe(true)
  })

  test.each([
    ['tight lists', edited(earlier, '[8 mm, 8 mm, 48 mm, 48 mm]', '[8 mm,8 mm,48 mm,48 mm]')],
    ['addresses and slashes in names', edited(earlier, /name: .*/, 'name: see https://example.org // x')],
    ['addresses in JSON', edited(json, '"schemaVersion"', '"$schema": "https://example.org//a", "schemaVersion"')],
  ])('%s are no slip', (_, text) => {
    expect(issuesOf(text)).toEqual([])
  })
})

test('a negative length is not taken for metres', () => {
  const [wrong] = issuesOf(edited(heath, 'length: 165 mm', 'length: -165 mm'))
  expect(wrong?.accepts).toBe('must be at least 10 mm and at most 2 m')
})

type Place = readonly (string | number)[]
const leavesOf = (x: unknown, at: Place = []): Place[] =>
  typeof x !== 'object' || x === null
    ? [at]
    : Object.entries(x).flatMap(([name, value]) => leavesOf(value, [...at, Array.isArray(x) ? Number(name) : name]))
const putting = (x: object, at: Place, spoilt: unknown): object => {
  const copy = structuredClone(x)
  const section = at.slice(0, -1).reduce((of, name) => (of as Record<string | number, unknown>)[name], copy as unknown)
  ;(section as Record<string | number, unknown>)[at.at(-1) as string] = spoilt
  return copy
}

describe('a value that cannot be read is never replaced by a default', () => {
  test('anywhere in a document', () => {
    const data = parse(heath) as object
    const kept = leavesOf(data).filter((at) => issuesOf(putting(data, at, 'zzz 7')).length === 0)
    expect(kept.map((at) => at.join('.'))).toEqual(['name', 'remark'])
  })

  test.each(['zzz 7', '1,5 %', null, true, -1e9])('%s in the usage of an earlier layout', (spoilt) => {
    const data = parse(`${earlier}  traction: 0.1\n`) as object
    const usage = leavesOf(data).filter(([section]) => section === 'usage' || section === 'environment')
    expect(usage.length).toBeGreaterThan(18)
    expect(usage.filter((at) => issuesOf(putting(data, at, spoilt)).length === 0)).toEqual([])
  })
})

test('a plate whose material is changed to metal must say how it is finished', () => {
  const desk = describeLeg(read('mudflat-leg-first'))
  expect(() => withFields(desk, { 'plates.bodyPlate.material': 'aluminium 6061-T6' })).toThrow(/plates\.bodyPlate\.emissivity/)
  const painted = withFields(desk, { 'plates.bodyPlate.material': 'aluminium 6061-T6', 'plates.bodyPlate.emissivity': 0.9 })
  expect(painted.plates.bodyPlate?.emissivity.si).toBe(0.9)
})
