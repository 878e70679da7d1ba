// Writes src/leg/document/meanings.json: what each field of the leg's document means, taken from the doc comments of the fields,
// the names that an editor completes, and the summaries of functions that the command line lists.
// `npm run meanings` writes it; with `--check` it only fails where the file is stale.
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { editorNames } from './editor/names.js'
import { summaries } from './summaries.js'

const root = fileURLToPath(new URL('../', import.meta.url))
const FIELDS = `${root}src/leg/document/fields.ts`
const OUT = `${root}src/leg/document/meanings.json`

/** Meanings by path. Throws where a field has no doc comment. */
function meaningsOf(): Record<string, string> {
  const { config } = ts.readConfigFile(`${root}tsconfig.json`, (path) => readFileSync(path, 'utf8'))
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files: [FIELDS] }, ts.sys, root)
  const program = ts.createProgram([FIELDS], options)
  const checker = program.getTypeChecker()
  const source = program.getSourceFile(FIELDS) as ts.SourceFile
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(source) as ts.Symbol)
  const fields = exported.find(({ name }) => name === 'documentFields') as ts.Symbol
  const meanings: Record<string, string> = {}
  const missing: string[] = []
  const typeOf = (owner: ts.Type, name: string): ts.Type | undefined => {
    const symbol = checker.getPropertyOfType(owner, name)
    return symbol === undefined ? undefined : checker.getTypeOfSymbol(symbol)
  }

  const fieldsOf = (type: ts.Type, path: string): void => {
    for (const symbol of checker.getPropertiesOfType(type)) {
      const here = path === '' ? symbol.name : `${path}.${symbol.name}`
      const text = ts.displayPartsToString(symbol.getDocumentationComment(checker)).replaceAll(/\s+/g, ' ').trim()
      const field = checker.getTypeOfSymbol(symbol)
      if (text !== '') meanings[here] = text
      else if (!path.endsWith('.size') && !path.endsWith('.box')) missing.push(here)
      within(field, here)
    }
  }
  const within = (field: ts.Type, path: string): void => {
    const section = typeOf(field, 'section') ?? typeOf(field, 'tuple')
    if (section !== undefined) {
      fieldsOf(section, path)
      return
    }
    const inner = typeOf(field, 'dictionary') ?? typeOf(field, 'list')
    if (inner !== undefined) {
      within(inner, `${path}.*`)
      return
    }
    const variants = typeOf(field, 'of')
    if (variants === undefined) return
    for (const kind of checker.getPropertiesOfType(variants)) fieldsOf(checker.getTypeOfSymbol(kind), `${path}<${kind.name}>`)
  }
  fieldsOf(checker.getTypeOfSymbol(fields), '')
  if (missing.length > 0) throw new Error(`fields without a doc comment: ${missing.join(', ')}`)
  return meanings
}

const check = process.argv.includes('--check')
const meanings = meaningsOf()
const text = `${JSON.stringify(meanings, undefined, 2)}\n`
const stale = readFileSync(OUT, 'utf8') === text ? [] : ['src/leg/document/meanings.json']
if (!check) writeFileSync(OUT, text)
const others = [...editorNames(meanings, check), ...summaries(check)]
if (check && stale.length + others.length > 0) {
  console.error(`${[...stale, ...others].join(', ')} stale: npm run meanings`)
  process.exit(1)
}
