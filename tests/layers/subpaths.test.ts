import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import limits from '../../.size-limit.json' with { type: 'json' }
import folders from '../../folders.json' with { type: 'json' }
import manifest from '../../package.json' with { type: 'json' }

const published = [...folders.core, ...folders.modules, ...folders.tools]

const entry = (name: string) => ({
  import: { types: `./dist/types/${name}.d.ts`, default: `./dist/${name.replace('/index', '')}.js` },
  require: { types: `./dist/${name.replace('/index', '')}.d.cts`, default: `./dist/${name.replace('/index', '')}.cjs` },
})

test('the package exports the folders of the list, and nothing else', () => {
  const { './package.json': own, './leg.schema.json': schema, '.': root, ...subpaths } = manifest.exports
  expect(schema).toBe('./dist/leg.schema.json')
  expect(own).toBe('./package.json')
  expect(root).toEqual(entry('index'))
  const listed = Object.fromEntries(published.map((name) => [`./${name}`, entry(`${name}/index`)]))
  expect(subpaths).toEqual(listed)
})

test('every folder of the source is on the list, and every published one has a limit of size', () => {
  const source = readdirSync(fileURLToPath(new URL('../../src', import.meta.url)), { withFileTypes: true })
  const named = source.filter((each) => each.isDirectory()).map(({ name }) => name)
  expect(Object.values(folders).flat().sort()).toEqual(named.sort())
  expect(limits.map(({ path }) => path.slice('dist/'.length, -'.js'.length)).sort()).toEqual(published.sort())
})
