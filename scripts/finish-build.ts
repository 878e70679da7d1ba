// What the bundler leaves undone in dist: declarations, the files for require, the JSON Schema, and the licences of what is bundled.
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { decode, encode, type SourceMapSegment } from '@jridgewell/sourcemap-codec'
import { minify } from 'terser'
import folders from '../folders.json' with { type: 'json' }
import { writeCommonJsDeclarations } from './commonjs-declarations.js'
import { licenceTexts, packagesOf } from './licences.js'

const published = [...folders.core, ...folders.modules, ...folders.tools]

// Each file of the source keeps its own declarations, since rolling them up breaks `export * as`. Those that no entry reaches stay out.
const TYPES = 'dist/types'
rmSync(TYPES, { recursive: true, force: true })
const compiler = 'node_modules/typescript-7/bin/tsc'
execFileSync(process.execPath, [compiler, '-p', 'tsconfig.declarations.json', '--removeComments', 'false', '--outDir', TYPES], {
  stdio: 'inherit',
})
const reached = new Set<string>()
const follow = (file: string): void => {
  if (reached.has(file) || !existsSync(file)) return
  reached.add(file)
  for (const [, path] of readFileSync(file, 'utf8').matchAll(/['"](\.[^'"]*)\.js['"]/g)) follow(resolve(dirname(file), `${path}.d.ts`))
}
for (const entry of ['index', ...published.map((name) => `${name}/index`)]) follow(resolve(TYPES, `${entry}.d.ts`))
for (const name of readdirSync(TYPES, { recursive: true, encoding: 'utf8' })) {
  const file = resolve(TYPES, name)
  if (name.endsWith('.d.ts') && !reached.has(file)) rmSync(file)
}

// For require: Node loads the ES module, so that both ways of importing share one copy.
for (const name of ['index', ...published]) writeFileSync(`dist/${name}.cjs`, `module.exports = require('./${name}.js')\n`)
writeCommonJsDeclarations(published)

const { legJsonSchema } = (await import(pathToFileURL(join(process.cwd(), 'dist/leg.js')).href)) as typeof import('../src/leg/index.js')
writeFileSync('dist/leg.schema.json', JSON.stringify(legJsonSchema()))

// Terser keeps the marks by which bundlers drop unused formulas; the bundler's own minifier drops them. Source maps lead to the line: one segment
// for each line of the source, without its text, are a tenth of the size; names of functions are left to them too.
const lineMap = (mappings: string): string => {
  let at = ''
  const lines = decode(mappings).map((segments) =>
    segments.flatMap((segment): SourceMapSegment[] => {
      const [column, source, line] = segment
      const here = `${source}:${line}`
      if (here === at || source === undefined || line === undefined) return []
      at = here
      return [[column, source, line, 0]]
    }),
  )
  return encode(lines)
}
const LONGEST_LINE = 250
for (const name of readdirSync('dist').filter((each) => each.endsWith('.js'))) {
  const code = readFileSync(`dist/${name}`, 'utf8').replace(/(?:\n\/\/# sourceMappingURL=.*\s*)+$/, '')
  const { code: small, map } = await minify(
    { [name]: code },
    {
      module: true,
      keep_classnames: true,
      // Engines read plain ASCII faster. Bundlers read these comments. Node prints the line that throws above the message of an error that nobody
      // catches: in one line of a megabyte the message would be lost.
      format: { ascii_only: true, preserve_annotations: true, comments: /webpackIgnore|@vite-ignore/, max_line_len: LONGEST_LINE },
      sourceMap: { content: readFileSync(`dist/${name}.map`, 'utf8'), asObject: true },
    },
  )
  if (small === undefined || map === undefined || typeof map === 'string') throw new Error(`${name} was not minified`)
  const { sourcesContent: _, ...rest } = map
  writeFileSync(`dist/${name}`, `${small}\n//# sourceMappingURL=${name}.map\n`)
  writeFileSync(`dist/${name}.map`, JSON.stringify({ ...rest, names: [], mappings: lineMap(map.mappings) }))
}

const bundled = readdirSync('dist')
  .filter((name) => name.endsWith('.js.map'))
  .flatMap((name) => (JSON.parse(readFileSync(`dist/${name}`, 'utf8')) as { readonly sources: readonly string[] }).sources)
writeFileSync('dist/bundled-licences.txt', licenceTexts(packagesOf(bundled)))
