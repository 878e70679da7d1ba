// Writes the public surface, one file for each subpath: every exported name with its declaration, comments left out. `api/` holds the committed
// copy; a change of it is a change that users feel.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import folders from '../folders.json' with { type: 'json' }

const folder = process.argv[2] ?? 'api'
const subpaths = [...folders.core, ...folders.modules, ...folders.tools]

const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile)
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, '.')
const entries = ['src/index.ts', ...subpaths.map((name) => `src/${name}/index.ts`)]
const program = ts.createProgram(entries, { ...options, noEmit: true, stripInternal: true })
const checker = program.getTypeChecker()
const printer = ts.createPrinter({ removeComments: true })
const FULL = ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.UseAliasDefinedOutsideCurrentScope

const isInternal = (node: ts.Node) => ts.getJSDocTags(node).some((tag) => tag.tagName.text === 'internal')
const oneLine = (text: string) => text.replaceAll(/\s+/g, ' ').trim()

/** Members of a class or interface that users see, each on a line of its own. */
function members(node: ts.ClassDeclaration | ts.InterfaceDeclaration): string[] {
  return node.members.flatMap((member): string[] => {
    if (isInternal(member)) return []
    const hidden = ts.ModifierFlags.Private | ts.ModifierFlags.Protected
    if (ts.getCombinedModifierFlags(member as ts.Declaration) & hidden) return []
    if (ts.isConstructorDeclaration(member)) return [`  new (${member.parameters.map(parameter).join(', ')})`]
    const symbol = member.name === undefined ? undefined : checker.getSymbolAtLocation(member.name)
    if (ts.isInterfaceDeclaration(node) || symbol === undefined)
      return [`  ${oneLine(printer.printNode(ts.EmitHint.Unspecified, member, member.getSourceFile()))}`]
    // The compiler numbers well-known symbols anew with every change of the source; the number is no part of the API.
    return [
      `  ${symbol.name.replace(/@\d+$/, '')}: ${oneLine(checker.typeToString(checker.getTypeOfSymbolAtLocation(symbol, member), member, FULL))}`,
    ]
  })
}

const parameter = (node: ts.ParameterDeclaration) => oneLine(printer.printNode(ts.EmitHint.Unspecified, node, node.getSourceFile()))

/** One exported name as a declaration. */
function declaration(name: string, symbol: ts.Symbol): string {
  const node = symbol.declarations?.[0]
  if (node === undefined) return name
  if (ts.isInterfaceDeclaration(node) || ts.isClassDeclaration(node)) {
    const word = ts.isClassDeclaration(node) ? 'class' : 'interface'
    const heritage = node.heritageClauses?.map((clause) => ` ${oneLine(clause.getText())}`).join('') ?? ''
    const parameters = node.typeParameters === undefined ? '' : `<${node.typeParameters.map((one) => oneLine(one.getText())).join(', ')}>`
    return [`${word} ${name}${parameters}${heritage}`, ...members(node)].join('\n')
  }
  if (ts.isTypeAliasDeclaration(node))
    return oneLine(printer.printNode(ts.EmitHint.Unspecified, node, node.getSourceFile())).replace(/^export /, '')
  if (ts.isSourceFile(node) || ts.isNamespaceExport(node)) return `namespace ${name}`
  return `${name}: ${oneLine(checker.typeToString(checker.getTypeOfSymbolAtLocation(symbol, node), node, FULL))}`
}

rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })
for (const entry of entries) {
  const source = program.getSourceFile(entry) as ts.SourceFile
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(source) as ts.Symbol)
  const lines = exported
    .map((symbol) => [symbol.name, symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol] as const)
    .filter(([, symbol]) => !symbol.declarations?.some(isInternal))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, symbol]) => declaration(name, symbol))
  const file = entry === 'src/index.ts' ? 'index' : entry.split('/')[1]
  writeFileSync(join(folder, `${file}.txt`), `${lines.join('\n')}\n`)
}
