import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { expect, test } from 'vitest'

const root = fileURLToPath(new URL('../../', import.meta.url))
const textOf = (path: string) => readFileSync(`${root}${path}`, 'utf8')

const KEEPERS = ['Map', 'Set', 'WeakMap', 'WeakSet']

/** Names at the top of a file that could keep something from one calculation to the next. */
function kept(text: string): string[] {
  const tree = ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true)
  return tree.statements.filter(ts.isVariableStatement).flatMap(({ declarationList: { flags, declarations } }) =>
    declarations.flatMap(({ name, initializer: made }) => {
      const keeps = made !== undefined && ts.isNewExpression(made) && KEEPERS.includes(made.expression.getText())
      return keeps || (flags & ts.NodeFlags.Const) === 0 ? [name.getText()] : []
    }),
  )
}

test('the parts of a leg keep nothing from one calculation to the next', () => {
  const files = readdirSync(`${root}src/leg/parts`, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'))
  expect(files.length).toBeGreaterThan(80)
  expect(files.flatMap((file) => kept(textOf(`src/leg/parts/${file}`)).map((name) => `${file} ${name}`))).toEqual([])
})

test('what could keep something is found', () => {
  const text =
    'let a = 1\nconst b = new Map()\nconst c: object = new WeakMap<object, 1>(), d = 2\nexport const f = () => new Set()\nvar e = 3'
  expect(kept(text)).toEqual(['a', 'b', 'c', 'e'])
})

test('contributors read how a field, a check, a load case, a transmission, a part and a drawing are added, each by files that exist', () => {
  const page = textOf('DEVELOPERS.md')
  for (const what of ['a field', 'a check', 'a load case', 'a transmission', 'a part', 'a drawing']) {
    const [, section = ''] = page.split(`### Adding ${what}\n`)
    expect(section.length, what).toBeGreaterThan(100)
  }
  const files = [...page.matchAll(/^--- (.+)$/gm)].map(([, file]) => file as string)
  expect(files.length).toBeGreaterThan(10)
  expect(files.filter((file) => !existsSync(`${root}${file}`))).toEqual([])
})
