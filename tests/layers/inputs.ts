// Counts inputs of formulas that are declared more than once in one module, from the text of the source.
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

const source = fileURLToPath(new URL('../../src/', import.meta.url))

/** One input with a sentence of its own; an input that only refers to a named constant is none. */
export interface Declaration {
  readonly module: string
  /** File below src and line, as `capstan/inputs.ts:12`. */
  readonly at: string
  readonly name: string
  /** Kind and limits as text, references to constants resolved. */
  readonly limits: string
  readonly sentence: string
}

const plain = (text: string) => text.replace(/\s+/g, ' ').trim()

const sentenceOf = (of: ts.Node): string => {
  const docs = ts.getJSDocCommentsAndTags(of).filter(ts.isJSDoc)
  return plain(docs.map((doc) => ts.getTextOfJSDocComment(doc.comment) ?? '').join(' '))
}

const inner = (node: ts.Expression): ts.Expression =>
  ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node) ? inner(node.expression) : node

/** The declarations in the inputs of the formulas of one module, given its files by path below src. */
export function declarationsOf(module: string, texts: ReadonlyMap<string, string>): Declaration[] {
  const trees = new Map([...texts].map(([file, text]) => [file, ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)]))
  const found: Declaration[] = []
  const read = new Set<ts.Node>()

  const constant = (name: string, tree: ts.SourceFile): ts.Expression | undefined => {
    for (const statement of tree.statements) {
      if (ts.isVariableStatement(statement))
        for (const each of statement.declarationList.declarations)
          if (each.name.getText() === name && each.initializer !== undefined) return inner(each.initializer)
      if (!ts.isImportDeclaration(statement)) continue
      const names = statement.importClause?.namedBindings
      if (names === undefined || !ts.isNamedImports(names)) continue
      const from = names.elements.find((each) => each.name.text === name)
      if (from === undefined) continue
      const path = join(dirname(tree.fileName), (statement.moduleSpecifier as ts.StringLiteral).text.replace(/\.js$/, '.ts'))
      const other = trees.get(path)
      return other && constant((from.propertyName ?? from.name).text, other)
    }
    return undefined
  }

  const resolved = (node: ts.Expression): ts.Expression => {
    const bare = inner(node)
    const value = ts.isIdentifier(bare) ? constant(bare.text, bare.getSourceFile()) : undefined
    return value === undefined ? bare : resolved(value)
  }

  const list = (node: ts.Expression): void => {
    const value = resolved(node)
    if (!ts.isObjectLiteralExpression(value) || read.has(value)) return
    read.add(value)
    for (const each of value.properties) {
      if (ts.isSpreadAssignment(each)) list(each.expression)
      else if (ts.isPropertyAssignment(each)) entry(each)
    }
  }

  const entry = (of: ts.PropertyAssignment): void => {
    const limits = resolved(of.initializer)
    const sentence = sentenceOf(of)
    const tree = of.getSourceFile()
    if (sentence !== '' || limits === inner(of.initializer))
      found.push({
        module,
        at: `${tree.fileName}:${tree.getLineAndCharacterOfPosition(of.getStart()).line + 1}`,
        name: of.name.getText(),
        limits: plain(
          ts.isObjectLiteralExpression(limits) ? limits.properties.map((each) => plain(each.getText())).join(', ') : limits.getText(),
        ),
        sentence,
      })
    const nested = (spec: ts.Expression): void => {
      const value = resolved(spec)
      if (!ts.isObjectLiteralExpression(value)) return
      for (const each of value.properties)
        if (ts.isPropertyAssignment(each)) {
          if (each.name.getText() === 'fields') list(each.initializer)
          if (each.name.getText() === 'list') nested(each.initializer)
        }
    }
    nested(of.initializer)
  }

  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText() === 'formula') {
      const record = node.arguments[1]
      if (record !== undefined && ts.isObjectLiteralExpression(record))
        for (const each of record.properties) if (ts.isPropertyAssignment(each) && each.name.getText() === 'inputs') list(each.initializer)
    }
    ts.forEachChild(node, visit)
  }
  for (const tree of trees.values()) visit(tree)
  return found
}

/** Every input declared in a folder of src. */
export function declarationsIn(module: string): Declaration[] {
  const files = readdirSync(source + module, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'))
  return declarationsOf(module, new Map(files.map((file) => [`${module}/${file}`, readFileSync(`${source + module}/${file}`, 'utf8')])))
}

/** How many of the declarations an earlier one of the same module already makes, by what `key` compares. */
export const repeats = (of: readonly Declaration[], key: (one: Declaration) => string): number =>
  of.length - new Set(of.map((each) => `${each.module} ${key(each)}`)).size
