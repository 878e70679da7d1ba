// Declarations for `require`: each names what the declarations for `import` hold, so that the package carries one copy of them. A compiler that
// reads CommonJS may import types from an ES module, and a value is declared by the type of the value there.
import { writeFileSync } from 'node:fs'
import ts from 'typescript'

const MODE = "with { 'resolution-mode': 'import' }"

/** Writes `dist/<name>.d.cts` for the entry `dist/types/<folder>/index.d.ts`. */
export function writeCommonJsDeclarations(names: readonly string[]): void {
  const entryOf = (name: string) => `dist/types/${name}/index.d.ts`
  const program = ts.createProgram(names.map(entryOf), {
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
    types: [],
  })
  const checker = program.getTypeChecker()
  const exportsOf = (name: string): readonly ts.Symbol[] => {
    const source = program.getSourceFile(entryOf(name))
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source)
    if (module === undefined) throw new Error(`${entryOf(name)} is no module`)
    return checker.getExportsOfModule(module)
  }
  const homes = new Map(names.flatMap((name) => exportsOf(name).map((symbol) => [symbol.name, name] as const)).reverse())
  for (const name of names) writeFileSync(`dist/${name}.d.cts`, declarations(checker, exportsOf(name), name, homes))
  writeFileSync('dist/index.d.cts', rootDeclarations(names))
}

const typesOf = (name: string) => `'./types/${name}/index.js' ${MODE}`

/** `homes` holds the entry that exports a name, for the bounds of type parameters that name what another entry exports. */
function declarations(checker: ts.TypeChecker, exported: readonly ts.Symbol[], own: string, homes: ReadonlyMap<string, string>): string {
  const values: string[] = []
  const types: string[] = []
  const needed = new Set<string>()
  for (const alias of exported) {
    const symbol = alias.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(alias) : alias
    const { name } = alias
    if ((symbol.flags & ts.SymbolFlags.Value) === 0) {
      types.push(name)
      continue
    }
    values.push(`${comment(checker, symbol)}export declare const ${name}: typeof esm.${name};`)
    const declaration = symbol.declarations?.find((each) => ts.isClassDeclaration(each))
    if (declaration === undefined) continue
    const parameters = declaration.typeParameters ?? []
    for (const identifier of parameters.flatMap(identifiersIn)) if (homes.has(identifier)) needed.add(identifier)
    const list = (texts: readonly string[]) => (texts.length === 0 ? '' : `<${texts.join(', ')}>`)
    values.push(
      `export type ${name}${list(parameters.map((each) => each.getText()))} = esm.${name}${list(parameters.map((each) => each.name.text))};`,
    )
  }
  return [
    `import type * as esm from ${typesOf(own)};`,
    ...[...needed].sort().map((name) => `import type { ${name} } from ${typesOf(homes.get(name) as string)};`),
    ...(types.length > 0 ? [`export type { ${types.join(', ')} } from ${typesOf(own)};`] : []),
    ...values,
    '',
  ].join('\n')
}

/** The names in the bounds and defaults of a type parameter. */
function identifiersIn(parameter: ts.TypeParameterDeclaration): string[] {
  const found: string[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) found.push(node.text)
    ts.forEachChild(node, visit)
  }
  ts.forEachChild(parameter, visit)
  return found
}

/** The first paragraph of a description, for hovers. */
function comment(checker: ts.TypeChecker, symbol: ts.Symbol): string {
  const text = ts.displayPartsToString(symbol.getDocumentationComment(checker)).split(/\n\s*\n/)[0] as string
  return text.trim() === '' ? '' : `/** ${text.replaceAll(/\s+/g, ' ').trim()} */\n`
}

const rootDeclarations = (names: readonly string[]) =>
  `${names
    .filter((name) => rootNames().includes(name))
    .map((name) => `export * as ${name} from './${name}.cjs';`)
    .join('\n')}\n`

/** The folders that the root exports as namespaces. */
const rootNames = (): string[] =>
  [...(ts.sys.readFile('dist/types/index.d.ts') ?? '').matchAll(/export \* as (\w+) from/g)].map(([, name]) => name as string)
