import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { catalogue, formulaOf } from '../../src/catalogue/index.js'
import { recordReader } from '../../src/formula/index.js'
import type { Check } from '../published/harness.js'
import { writtenRecords } from './records.js'

const folders = ['capstan', 'kinematics', 'materials', 'fasteners', 'thermal']
const published = new URL('../published/', import.meta.url)
const files = readdirSync(published).filter((file) => file.endsWith('.checks.ts'))
const checks = (
  await Promise.all(files.map(async (file) => (await import(`../published/${file.slice(0, -3)}.ts`)) as { checks: Check[] }))
).flatMap((module) => module.checks)
const checked = new Set(checks.map((check) => check.id))
const written = new Map(folders.flatMap((folder) => writtenRecords(folder).map((record) => [record.id, record] as const)))

test('every record in the source is in the catalogue, and the other way round', () => {
  expect([...catalogue.keys()].sort()).toEqual([...written.keys()].sort())
})

describe.each([...catalogue])('%s', (id, formula) => {
  const record = written.get(id)

  test('is what its export is called', () => {
    expect(formula.id).toBe(id)
    expect(record?.exportName).toBe(id.slice(id.indexOf('.') + 1))
  })

  test('is documented, input by input and output by output', () => {
    expect(record?.documented, `${record?.file}:${record?.line} has no doc comment`).toBe(true)
    expect(record?.undocumented, `${record?.file}:${record?.line}`).toEqual([])
  })

  test('names its sources and can be dropped by a bundler', () => {
    expect(formula.def.source.length).toBeGreaterThan(0)
    for (const { where } of formula.def.source) expect(where.length).toBeGreaterThan(3)
    expect(record?.pure, `${record?.file}:${record?.line} lacks the PURE mark`).toBe(true)
  })

  test('has a check from outside', () => {
    expect(checked.has(id), `no check for ${id} in tests/published`).toBe(true)
  })

  test('limits and defaults can be read', () => {
    expect(() => recordReader(formula.def.inputs, true)({}, '', [])).not.toThrow()
  })
})

test('an unknown id names its neighbours', () => {
  expect(formulaOf('capstan.slackTension').id).toBe('capstan.slackTension')
  expect(() => formulaOf('capstan.slackTenson')).toThrow('capstan.slackTension')
  expect(() => formulaOf('constructor')).toThrow(RangeError)
})
