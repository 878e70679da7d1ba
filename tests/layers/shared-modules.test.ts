import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))
const replaces = /\bvi\s*\.\s*mock\s*\(/

// Test files share the modules that one worker has loaded: a module that is replaced for one file stays as it was where another file came first. `doMock` in a test
// replaces what is loaded after it, and is undone.
test('no test replaces a module: what a function calls is an argument of it where a test gives its own', () => {
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  expect(files.length).toBeGreaterThan(300)
  expect(files.filter((name) => replaces.test(readFileSync(`${root}${name}`, 'utf8')))).toEqual([])
  expect(replaces.test(`vi.${'mock'}('./search.js')`)).toBe(true)
})
