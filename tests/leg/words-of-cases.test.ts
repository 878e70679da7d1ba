import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { assess, describeLeg, markdownReport } from '../../src/leg/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))

test.each(['desk', 'orchard', 'heath'])('load cases of the %s leg speak of nothing that it may not have', (name) => {
  const verdict = assess(read(name))
  const words = [...verdict.cases.flatMap(({ title, story }) => [title, story]), ...verdict.checks.map(({ caseTitle }) => caseTitle)]
  expect(words.length).toBeGreaterThan(60)
  expect(words.filter((text) => /\b(cord|belt|pretension)/i.test(text))).toEqual([])
  // The places of the steps in the report name an age too.
  expect(markdownReport(verdict)).not.toMatch(/new cord|aged cord/)
})

test('the acceleration of free fall is written once in the leg', () => {
  const folder = fileURLToPath(new URL('../../src/leg', import.meta.url))
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  const written = files.filter((name) => readFileSync(join(folder, name), 'utf8').includes('9.80665'))
  expect(written).toEqual(['gravity.ts'])
})
