import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { assess, describeLeg } from '../../src/leg/index.js'

const text = readFileSync('examples/mudflat-leg-first.yaml', 'utf8')
const shown = (leg: object) => (leg as Record<symbol, () => Record<string, string>>)[Symbol.for('Jupyter.display')]!()

test('a notebook shows a leg in brief, with every joint and link', () => {
  const leg = describeLeg(text)
  const { 'text/html': html = '', 'text/plain': plain } = shown(leg)
  for (const part of ['robot', 'joints, hip, drive, pinion', 'joints, knee, drive', 'links, upper', 'motors, main', 'supply'])
    expect(html).toContain(`>${part}</th>`)
  expect(html).toContain('range -85 deg to 45 deg')
  expect(html).not.toMatch(/undefined|NaN|\[object/)
  expect(html.match(/<li>/g)).toHaveLength(leg.defaults.length)
  expect(html.length).toBeLessThan(20_000)
  expect(plain).toBe(`${leg.name}: ${leg.defaults.length} values left open and filled in`)
})

test('what the builder wrote is shown as text, never as markup', () => {
  const { 'text/html': html } = shown(describeLeg(text.replace(/^name: .*$/m, 'name: "<script>alert(1)</script>"')))
  expect(html).toContain('&lt;script&gt;alert(1)')
  expect(html).not.toContain('<script')
})

test('a leg and its verdict remain plain data', () => {
  const leg = describeLeg(text)
  expect(Object.keys(leg)).not.toContain('Jupyter.display')
  expect(Object.getOwnPropertySymbols({ ...leg })).toEqual([])
  expect(Object.getOwnPropertySymbols({ ...assess(leg, { cases: ['stand'] }) })).toEqual([])
})
