import { describe, expect, test } from 'vitest'
import { examplesIn } from './extract.js'
import { agrees, runExample } from './run.js'

const run = (code: string) => runExample({ file: 'page.md', line: 10, code, runs: true })

describe('an example', () => {
  test('passes when its claims hold', async () => {
    await run(
      [
        "import { posix } from 'node:path'",
        "const path = posix.join('a', 'b') // => 'a/b'",
        'console.log(path.length) // => 3',
        'posix.join(5 as never) // throws TypeError…must be of type string',
      ].join('\n'),
    )
  })
  test('fails on a wrong value, with its line', () =>
    expect(run('const a = 2\na + 2 // => 5')).rejects.toThrow('page.md:11: says 5, gives 4'))
  test('fails when it does not throw as claimed', () => expect(run('Math.sqrt(4) // throws RangeError')).rejects.toThrow('does not throw'))
  test('fails when it throws something else', () => expect(run('null!.x // throws RangeError')).rejects.toThrow('throws TypeError'))
  test('fails when it throws unasked', () => expect(run('null!.x // => 1')).rejects.toThrow(TypeError))
  test('keeps its claims after a template literal', () =>
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the example holds a template literal of its own
    expect(run('const a = 2\nconst b = `${a}`\na + 2 // => 5')).rejects.toThrow('page.md:12: says 5, gives 4'))
  test('is refused when it asserts nothing', () => expect(run('const a = 1 // one')).rejects.toThrow('asserts nothing'))
  test('is refused when its only claim stands in a text', () => expect(run("const a = '// => 1'")).rejects.toThrow('asserts nothing'))
  test('is refused when a claim is inside a statement', () => expect(run('if (true) {\n  1 + 1 // => 2\n}')).rejects.toThrow('page.md:11'))
  test('is refused when it imports what a user cannot', () =>
    expect(run("import { root } from '../src/numeric/root.js'\nroot // => 1")).rejects.toThrow("imports '../src/numeric/root.js'"))
})

test('printed digits are the tolerance', () => {
  expect(agrees(2.344, '2.34')).toBe(true)
  expect(agrees(2.346, '2.34')).toBe(false)
  expect(agrees(2.304, '2.30')).toBe(true)
  expect(agrees(2.32, '2.30')).toBe(false)
  expect(agrees(3.01, '3')).toBe(false)
  expect(agrees(1.26e-7, '1.3e-7')).toBe(true)
  expect(agrees(1.2e-7, '1.3e-7')).toBe(false)
  expect(agrees({ a: 1, b: 2.344, c: ['x'] }, "{ b: 2.34, c: ['x'] }")).toBe(true)
  expect(agrees({ a: 1 }, '{ b: 2 }')).toBe(false)
  expect(agrees([1, 2], '[1]')).toBe(false)
  expect(agrees(undefined, 'undefined')).toBe(true)
  expect(agrees(Number.NaN, 'NaN')).toBe(true)
})

test('fences are found in Markdown and in doc comments, and a continued one starts from the one before', () => {
  const page = [
    '# A',
    '```ts',
    'const a = 1',
    '```',
    'text',
    '```js',
    'no',
    '```',
    '```ts continues',
    'a // => 1',
    '```',
    '```ts no-run',
    'b',
    '```',
  ].join('\n')
  expect(examplesIn(page, 'page.md')).toEqual([
    { file: 'page.md', line: 3, code: 'const a = 1', runs: true },
    { file: 'page.md', line: 3, code: `const a = 1${'\n'.repeat(7)}a // => 1`, runs: true },
    { file: 'page.md', line: 13, code: 'b', runs: false },
  ])
  const source = [
    '/**',
    ' * Says:',
    ' * ```ts',
    ' * if (a) {',
    ' *   b // => 2',
    ' * }',
    ' * ```',
    ' */',
    'const fence = `',
    '```ts',
    'c',
    '```',
    '`',
  ].join('\n')
  expect(examplesIn(source, 'a.ts')).toEqual([{ file: 'a.ts', line: 4, code: 'if (a) {\n  b // => 2\n}', runs: true }])
})
