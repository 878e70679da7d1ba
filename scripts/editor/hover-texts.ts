import ts from 'typescript'

/** Levels below an argument that are followed: deeper ones repeat what other arguments hold. */
const DEEPEST = 4
/** Types whose members are no inputs of the caller's. */
const CLOSED = new Set(['Quantity', 'Band', 'Function', 'Array', 'Date', 'Map', 'Set', 'Float64Array'])

/** Input fields of public functions: how many there are, and those without a doc comment, by place, with one argument that reaches each. */
export interface HoverTexts {
  readonly fields: number
  readonly missing: ReadonlyMap<string, string>
}

/**
 * Looks at every field of every argument of what the entry files export, functions, formulas and constructors alike. `owns` says which
 * files are the library's own.
 */
export function hoverTexts(program: ts.Program, entries: readonly string[], owns: (file: string) => boolean): HoverTexts {
  const checker = program.getTypeChecker()
  const missing = new Map<string, string>()
  let fields = 0

  const look = (symbol: ts.Symbol, path: string) => {
    const declaration = symbol.declarations?.[0]
    if (declaration === undefined || !owns(declaration.getSourceFile().fileName) || isHidden(symbol)) return false
    fields++
    if (symbol.getDocumentationComment(checker).length === 0) missing.set(placeOf(declaration), path)
    return true
  }
  const visit = (given: ts.Type, path: string, depth: number, at: ts.Node, seen: Set<ts.Type>): void => {
    const type = checker.getNonNullableType(given)
    if (depth > DEEPEST || seen.has(type)) return
    seen.add(type)
    if (type.isUnion()) {
      for (const one of type.types) visit(one, path, depth, at, seen)
      return
    }
    const element = checker.isArrayType(type) ? checker.getTypeArguments(type as ts.TypeReference)[0] : undefined
    if (element !== undefined) {
      visit(element, `${path}[]`, depth, at, seen)
      return
    }
    const holdsFields = (type.flags & ts.TypeFlags.Object) !== 0 || type.isIntersection()
    if (!holdsFields || type.getCallSignatures().length > 0 || CLOSED.has(type.symbol?.name)) return
    for (const symbol of type.getProperties()) {
      const inner = `${path}.${symbol.name}`
      if (look(symbol, inner)) visit(checker.getTypeOfSymbolAtLocation(symbol, at), inner, depth + 1, at, seen)
    }
  }
  for (const { symbol, declaration } of exportsOf(program, entries)) {
    const type = checker.getTypeOfSymbolAtLocation(symbol, declaration)
    for (const signature of [...type.getCallSignatures(), ...type.getConstructSignatures()])
      for (const argument of signature.getParameters())
        visit(checker.getTypeOfSymbolAtLocation(argument, declaration), `${symbol.name}(${argument.name})`, 0, declaration, new Set())
  }
  return { fields, missing }
}

function exportsOf(program: ts.Program, entries: readonly string[]): { symbol: ts.Symbol; declaration: ts.Declaration }[] {
  const checker = program.getTypeChecker()
  return entries.flatMap((entry) => {
    const source = program.getSourceFile(entry)
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source)
    if (module === undefined) throw new Error(`${entry} is no module of the program`)
    return checker.getExportsOfModule(module).flatMap((exported) => {
      const symbol = (exported.flags & ts.SymbolFlags.Alias) === 0 ? exported : checker.getAliasedSymbol(exported)
      const declaration = symbol.declarations?.[0]
      return declaration === undefined || (symbol.flags & ts.SymbolFlags.Value) === 0 || isHidden(symbol) ? [] : [{ symbol, declaration }]
    })
  })
}

/** Whether a member is for the library alone: private, protected or internal. */
const isHidden = ({ declarations = [] }: ts.Symbol): boolean =>
  declarations.some(
    (one) =>
      (ts.getCombinedModifierFlags(one) & (ts.ModifierFlags.Private | ts.ModifierFlags.Protected)) !== 0 ||
      ts.getJSDocTags(one).some(({ tagName }) => tagName.text === 'internal'),
  )

function placeOf(declaration: ts.Declaration): string {
  const source = declaration.getSourceFile()
  const { line, character } = source.getLineAndCharacterOfPosition(declaration.getStart())
  return `${source.fileName.replace(/.*\/src\//, 'src/')}:${line + 1}:${character + 1}`
}
