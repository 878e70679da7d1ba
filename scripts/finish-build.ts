// What the bundler leaves undone in dist: declarations, and the licences of what is bundled.
import { execFileSync } from 'node:child_process'
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'

// Declarations: one tree for `import` and one for `require`. Each file of the source keeps its own, since rolling them up breaks
// `export * as`.
const OF_MODULES = 'dist/types'
const OF_COMMONJS = 'dist/types-cjs'
for (const folder of [OF_MODULES, OF_COMMONJS]) rmSync(folder, { recursive: true, force: true })
const compiler = 'node_modules/typescript-7/bin/tsc'
execFileSync(process.execPath, [compiler, '-p', 'tsconfig.declarations.json', '--removeComments', 'false', '--outDir', OF_MODULES], {
  stdio: 'inherit',
})
cpSync(OF_MODULES, OF_COMMONJS, { recursive: true })
// What is below this file is CommonJS to a compiler, as the .cjs files are to Node.
writeFileSync(`${OF_COMMONJS}/package.json`, '{ "type": "commonjs" }\n')
// mathjs declares itself an ES module, whose types a CommonJS declaration must name as such.
const bridge = `${OF_COMMONJS}/mathjs/index.d.ts`
const named = /import (?:type )?\{ (.+?) \} from 'mathjs'/
const bridgeText = readFileSync(bridge, 'utf8')
if (!named.test(bridgeText)) throw new Error(`${bridge} imports nothing from mathjs`)
writeFileSync(
  bridge,
  bridgeText.replace(
    named,
    (_, names: string) => `import type { ${names.replaceAll('type ', '')} } from 'mathjs' with { 'resolution-mode': 'import' }`,
  ),
)

interface Manifest {
  readonly name: string
  readonly version: string
  readonly license?: string
  readonly dependencies?: Readonly<Record<string, string>>
}

function licencesFrom(name: string, seen: Map<string, string>): Map<string, string> {
  if (seen.has(name)) return seen
  const folder = `node_modules/${name}`
  const manifest = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8')) as Manifest
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each))
  if (file === undefined) throw new Error(`${name} is bundled but ships no licence text`)
  seen.set(name, `${name} ${manifest.version} (${manifest.license})\n\n${readFileSync(`${folder}/${file}`, 'utf8').trim()}\n`)
  for (const below of Object.keys(manifest.dependencies ?? {})) licencesFrom(below, seen)
  return seen
}

const licences = licencesFrom('ml-matrix', new Map())
writeFileSync('dist/bundled-licences.txt', [...licences.values()].join(`\n${'-'.repeat(80)}\n\n`))
