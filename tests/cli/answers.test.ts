// What a command prints and writes is what it did: files, fields, sections of a page.
import { describe, expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { fieldAt } from '../../src/leg/plans/with-fields.js'
import { Quantity } from '../../src/units/index.js'
import { example, run } from './in-memory.js'

const current = example('mudflat-leg-revised.yaml')

test('start names the files that it wrote', async () => {
  const { out, files } = await run(['start', 'new/leg.yaml', '--json'], {})
  expect(JSON.parse(out)).toEqual({ written: Object.keys(files) })
  expect((await run(['start', 'leg.yaml'], {})).out).toMatch(/^Wrote leg\.yaml and leg\.schema\.json\. .* limbwright check leg\.yaml$/)
})

test('the page of a formula has a section for what the formula has, and none for what it has not', async () => {
  const list = JSON.parse((await run(['formulas', 'a', '--json'])).out) as unknown
  const ids = [
    ...new Set(
      JSON.stringify(list)
        .match(/"id":"[a-z]+\.\w+"/gi)!
        .map((one) => one.slice(6, -1)),
    ),
  ]
  expect(ids.length).toBeGreaterThan(40)
  const found = new Set<string>()
  for (const id of ids.filter((_, i) => i % 3 === 0)) {
    const { out } = await run(['formulas', id])
    const data = JSON.parse((await run(['formulas', id, '--json'])).out)
    // A function without a record has one line.
    if (!out.startsWith(`${id}\n`)) continue
    const lines = out.split('\n')
    const titles = lines.flatMap((line, i) => (lines[i - 1] === '' ? [[line, lines[i + 1]] as const] : []))
    for (const [title, first] of titles) {
      found.add(title)
      expect(first, `${id}: ${title}`).toMatch(/^ {2}\S/)
    }
    const record = (Array.isArray(data) ? data[0] : (data.formula ?? data)) as Record<string, unknown>
    for (const [title, key] of [
      ['Equation', 'equation'],
      ['Assumes', 'assumes'],
      ['Valid where', 'valid'],
    ] as const)
      if (Array.isArray(record[key]))
        expect(
          titles.some(([one]) => one === title),
          `${id}: ${title}`,
        ).toBe(record[key].length > 0)
  }
  expect([...found]).toEqual(expect.arrayContaining(['Inputs', 'Output', 'Equation', 'Assumes', 'Valid where', 'Sources']))
})

describe('learn', () => {
  const logs = ['pretension-knee.csv', 'cordFriction-knee.csv']
  test('writes every field that it corrected or confirmed, with the value that it names, and no other', async () => {
    const files: Record<string, string> = { 'leg.yaml': current }
    for (const name of logs) files[name] = example(`stand-logs/${name}`)
    const { out, files: after } = await run(
      ['learn', 'leg.yaml', ...logs, '--to', 'learnt.yaml', '--json', '-q', '--cases', 'stand'],
      files,
    )
    const moved = JSON.parse(out).moved as { path: string; state: string; after: unknown }[]
    const [before, learnt] = [describeLeg(current), describeLeg(after['learnt.yaml']!)]
    const at = (leg: unknown, path: string) => String(fieldAt(leg as never, path))
    const written = moved.filter(({ state }) => state === 'corrected' || state === 'confirmed')
    expect(written.length).toBeGreaterThan(1)
    for (const { path } of written) {
      expect(fieldAt(learnt as never, path), path).toBeDefined()
      if (path.endsWith('.speedConstant')) expect(at(learnt, `${path}Basis`)).not.toBe('undefined')
    }
    expect(written.filter(({ path }) => at(before, path) !== at(learnt, path)).length).toBeGreaterThan(0)
    for (const { path } of moved.filter((one) => !written.includes(one))) expect(at(learnt, path), path).toBe(at(before, path))
    expect(fieldAt(learnt as never, 'robot.mass')).toBeInstanceOf(Quantity)
  })
})
