import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { run } from './in-memory.js'

// The guide shows commands after a dollar sign, and below each what it prints.
const guide = readFileSync(new URL('../../docs/guide/command-line.md', import.meta.url), 'utf8')
const shown = [...guide.matchAll(/^ {4}\$ npx limbwright (.+)\n((?: {4}[^$\n].*\n)+)/gm)].map(
  ([, command, printed]) => [command!, printed!.replaceAll(/^ {4}/gm, '').trimEnd()] as const,
)

test('the guide shows what a command prints', () => expect(shown.length).toBeGreaterThan(0))

test.each(shown)('limbwright %s prints what the guide shows', async (command, printed) => {
  const leg = readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8')
  expect((await run(command.split(' '), { 'leg.yaml': leg })).out).toBe(printed)
})
