// Writes src/cli/summaries.json: the first sentence of every public function, by subpath and name, from its doc comment. `npm run meanings` calls it.
import { readFileSync, writeFileSync } from 'node:fs'
import ts from 'typescript'
import folders from '../folders.json' with { type: 'json' }

const OUT = 'src/cli/summaries.json'

/** The first sentence of each function of one entry file; formulas are functions too. */
function sentencesOf(checker: ts.TypeChecker, source: ts.SourceFile): [name: string, sentence: string][] {
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(source) as ts.Symbol)
  return exported.flatMap((entry): [string, string][] => {
    const symbol = entry.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(entry) : entry
    const [node] = symbol.declarations ?? []
    if (node === undefined || !(symbol.flags & ts.SymbolFlags.Value)) return []
    if (ts.getJSDocTags(node).some((tag) => tag.tagName.text === 'internal')) return []
    if (checker.getTypeOfSymbolAtLocation(symbol, node).getCallSignatures().length === 0) return []
    const text = ts.displayPartsToString(symbol.getDocumentationComment(checker)).replaceAll(/\s+/g, ' ').trim()
    return [[entry.name, /^.*?\.(?=\s|$)/.exec(text)?.[0] ?? text]]
  })
}

/** Writes the file, or with `check` only says whether it is stale. Throws where a function has no doc comment. */
export function summaries(check: boolean): string[] {
  const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, '.')
  const subpaths = [...folders.core, ...folders.modules, ...folders.tools]
  const entries = subpaths.map((name) => [name, `src/${name}/index.ts`] as const)
  const program = ts.createProgram(
    entries.map(([, file]) => file),
    { ...options, noEmit: true },
  )
  const checker = program.getTypeChecker()
  const found = entries.flatMap(([subpath, file]) =>
    sentencesOf(checker, program.getSourceFile(file) as ts.SourceFile).map(([name, sentence]) => [`${subpath}.${name}`, sentence] as const),
  )
  const missing = found.filter(([, sentence]) => sentence === '')
  if (missing.length > 0) throw new Error(`functions without a doc comment: ${missing.map(([id]) => id).join(', ')}`)
  const text = `${JSON.stringify(Object.fromEntries(found), undefined, 2)}\n`
  let before = ''
  try {
    before = readFileSync(OUT, 'utf8')
  } catch {
    // The first run writes it.
  }
  if (!check) writeFileSync(OUT, text)
  return before === text ? [] : [OUT]
}
