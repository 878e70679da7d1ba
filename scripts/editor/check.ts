// What an editor shows of the library, tried with TypeScript's language service: a sentence on every input field of every public function, what a
// formula computes at its call, errors of one line, and names that complete. Run by `npm run check:editor`.
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import folders from '../../folders.json' with { type: 'json' }
import { hoverTexts } from './hover-texts.js'

const root = fileURLToPath(new URL('../../', import.meta.url))
const USER = `${root}user-of-the-library.ts`
const CODE = `
import { slackTension } from './src/capstan/index.js'
import { materialByName } from './src/materials/index.js'
import { compareLegs, describeLeg, type Leg, legFormula, withFields } from './src/leg/index.js'
import { solveFor } from './src/study/index.js'
declare const leg: Leg
slackTension({ load: '500 N', friction: 0.2, wrapAngle: '3 turn' })
materialByName('(material)')
describeLeg({ links: { upper: { material: '(own)' } } })
legFormula(leg, { check: '(check)' })
legFormula(leg, { cases: ['(case)'] })
compareLegs(leg, { '(compared)': 1 })
withFields(leg, { '(changed)': 1 })
solveFor(slackTension, '(solved)')
describeLeg({ robot: { mass: '10 N' } })
slackTension({ load: '500 mm', friction: 0.2, wrapAngle: '3 turn' })
`

/** Completions that each place must offer, among others. */
const COMPLETED = {
  '(material)': 'ASA',
  '(own)': 'ASA',
  '(check)': 'pin.bending knee',
  '(case)': 'stand',
  '(compared)': 'joints.knee.drive.pretension',
  '(changed)': 'robot.mass',
  '(solved)': 'wrapAngle',
} as const

const { config } = ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile)
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root)
const entries = [...folders.core, ...folders.modules, ...folders.tools].map((name) => `${root}src/${name}/index.ts`)
const read = (file: string) => (file === USER ? CODE : ts.sys.readFile(file))
const service = ts.createLanguageService({
  getScriptFileNames: () => [USER, ...entries],
  getScriptVersion: () => '1',
  getScriptSnapshot: (file) => {
    const text = read(file)
    return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text)
  },
  getCurrentDirectory: () => root,
  getCompilationSettings: () => ({ ...options, noEmit: true }),
  getDefaultLibFileName: ts.getDefaultLibFilePath,
  readFile: read,
  fileExists: (file) => file === USER || ts.sys.fileExists(file),
  readDirectory: ts.sys.readDirectory,
  directoryExists: ts.sys.directoryExists,
  getDirectories: ts.sys.getDirectories,
})

const failures: string[] = []
const expect = (holds: boolean, failure: string) => {
  if (!holds) failures.push(failure)
}

const text = (parts: readonly ts.SymbolDisplayPart[] | undefined) => ts.displayPartsToString(parts === undefined ? [] : [...parts])
const hoverAt = (words: string) => text(service.getQuickInfoAtPosition(USER, CODE.indexOf(words))?.documentation)

const call = hoverAt("slackTension({ load: '500 N'")
expect(call.startsWith('Tension left at the slack end'), `the hover at a call shows "${call}"`)
const field = hoverAt("load: '500 N'")
expect(field.includes('taut end'), `the hover at an input shows "${field}"`)

for (const [place, name] of Object.entries(COMPLETED)) {
  const names = service.getCompletionsAtPosition(USER, CODE.indexOf(place), {})?.entries.map((entry) => entry.name) ?? []
  expect(names.includes(name), `at '${place}' ${names.length} names complete, without ${name}`)
}

const diagnostics = service.getSemanticDiagnostics(USER)
for (const [words, kind] of [
  ["mass: '10 N'", 'In<"mass">'],
  ["load: '500 mm'", 'In<"force">'],
] as const) {
  const start = CODE.indexOf(words)
  const found = diagnostics.find((one) => one.start === start)
  const message = found === undefined ? 'nothing' : ts.flattenDiagnosticMessageText(found.messageText, '\n')
  expect(message.includes(kind) && !message.includes('\n'), `the error at ${words} is: ${message}`)
}

const { fields, missing } = hoverTexts(service.getProgram() as ts.Program, entries, (file) => file.startsWith(`${root}src/`))
expect(fields > 10_000, `only ${fields} input fields were found`)
for (const [place, path] of missing) failures.push(`no doc comment: ${place} ${path}`)

console.log(failures.length === 0 ? `${fields} input fields have their sentence; hovers, errors and completion hold` : failures.join('\n'))
process.exit(failures.length === 0 ? 0 : 1)
