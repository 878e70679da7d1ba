import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { assess, checksTable, compareDesigns, describeLeg, editLegText, upgradeLegText } from '../../src/leg/index.js'
import { cordDrive } from './cord-drive.js'

const text = readFileSync(new URL('./version-3/walker-revised.yaml', import.meta.url), 'utf8')

test('a value is exchanged in place, and nothing else of the text moves', () => {
  const edited = editLegText(text, { 'robot.mass': '12 kg', 'robot.legs': 6, 'bolts.stack.rows[2]': '50 mm' })
  const lines = text.split('\n')
  const changed = edited.split('\n').flatMap((line, i) => (line === lines[i] ? [] : [line.trim()]))
  expect(changed).toEqual(['mass: 12 kg # with battery and probe', 'legs: 6', 'rows: [8 mm, 8 mm, 50 mm, 48 mm]'])
})

test('fields come and go, and comments stay', () => {
  const edited = editLegText(text, {
    'usage.stallTime': undefined,
    'environment.normalAir': '25 degC',
    'drives.hip.friction': [0.1, 0.15, 0.2],
  })
  const leg = describeLeg(edited)
  const untouched = new Set(text.split('\n'))
  expect(edited.split('\n').filter((line) => !untouched.has(line))).toEqual([
    '    friction: [0.1, 0.15, 0.2]',
    'environment: { normalAir: 25 degC, hotAir: 40 degC, coldAir: -2 degC, humidity: 0.85 }',
  ])
  expect(edited).toContain('# 6.2 : 1 on the centre line of the cord')
  expect(edited).not.toContain('stallTime')
  expect(leg.loadCases.airs.normal!.temperature.in('degC')).toBeCloseTo(25, 9)
  expect(cordDrive(leg, 'hip').friction.low).toBe(0.1)
})

test('a field is removed with its line, from sections of both forms', () => {
  const rest = editLegText(text, { 'supply.currentLimit': undefined, 'usage.slope': undefined, print: undefined, 'usage.walk': undefined })
  expect(rest).toContain('supply: { voltage: 22 V, internalResistance: 70 mohm }\n')
  expect(rest).not.toMatch(/slope|print:|walk:/)
  expect(text.split('\n').length - rest.split('\n').length).toBe(3)
  expect(editLegText('a:\n  b: 1\nc: 2\n', { 'a.b': undefined })).toBe('c: 2\n')
  expect(editLegText('a: { b: 1 }\n', { 'a.b': undefined, 'x.y.z': '1 m' })).toBe('x: { y: { z: 1 m } }\n')
  expect(editLegText('a: 1 # one', { b: '2 m' })).toBe('b: 2 m\na: 1 # one')
})

test('values of a described leg are written so that they read back alike', () => {
  const leg = describeLeg(text)
  const edited = editLegText(text, {
    'robot.mass': leg.robot.mass,
    'joints.knee.drive.friction': cordDrive(leg, 'knee').friction,
    'joints.knee.from': leg.joints.knee.range.lowest,
    'plate.width': describeLeg(editLegText(text, { 'plate.width': '0.08412345678 m' })).plates.bodyPlate!.size.width,
  })
  const again = describeLeg(edited)
  expect(cordDrive(again, 'knee').friction).toEqual(cordDrive(leg, 'knee').friction)
  expect(again.joints.knee.range.lowest.si).toBeCloseTo(leg.joints.knee.range.lowest.si, 12)
  expect(again.plates.bodyPlate!.size.width.si).toBeCloseTo(0.08412345678, 13)
})

test('JSON stays JSON; a path that leads nowhere is refused by name', () => {
  const json = JSON.stringify({ robot: { mass: '10 kg' }, cords: {} })
  expect(JSON.parse(editLegText(json, { 'robot.mass': '11 kg', 'cords.braid.fibre': 'LCP' }))).toEqual({
    robot: { mass: '11 kg' },
    cords: { braid: { fibre: 'LCP' } },
  })
  expect(() => editLegText(text, { 'robot.mass.typical': '1 kg' })).toThrow(/robot\.mass\.typical.*must be the path of a field/)
  expect(() => editLegText('robot: [', { 'robot.mass': '1 kg' })).toThrow(/text is not readable/)
  expect(editLegText(text, { name: 'yes' })).toContain('name: "yes"')
})

test('two documents are compared field by field', () => {
  const options = { cases: ['stand'] } as const
  const sides = compareDesigns(describeLeg(text), describeLeg(editLegText(text, { 'robot.mass': '12 kg' })), options)
  expect(sides.changed).toEqual([{ path: 'robot.mass', before: '10.5 kg', after: '12 kg' }])
  expect(sides.after.governing.reserve).toBeLessThanOrEqual(sides.before.governing.reserve)
})

test('the checks of a verdict are a table', () => {
  const verdict = assess(describeLeg(text), { cases: ['stand'] })
  const table = checksTable(verdict)
  expect(table.rows).toBe(verdict.checks.length)
  expect(table.row(0).reserve).toMatchObject({ si: verdict.governing.reserve })
  expect(table.toCSV().split('\n')[1]).toMatch(new RegExp(`^${verdict.governing.id.replace('.', '\\.')},`))
})

test('an older document is written in the layout of today, with the same verdict', () => {
  const upgraded = upgradeLegText(text)
  expect(upgraded).toMatch(/^# Left front leg[\s\S]*schemaVersion: 4/)
  const reserves = (document: string) =>
    assess(describeLeg(document), { cases: ['stand', 'walk'] }).checks.map(({ id, reserve }) => [id, reserve])
  const [before, after] = [reserves(text), reserves(upgraded)]
  expect(after.map(([id]) => id)).toEqual(before.map(([id]) => id))
  for (const [i, [, reserve]] of after.entries()) expect(Math.abs((reserve as number) / (before[i]?.[1] as number) - 1)).toBeLessThan(1e-9)
  expect(upgradeLegText(upgraded)).toBe(upgraded)
})
