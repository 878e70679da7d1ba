import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

/** What the source says of one formula record. */
export interface WrittenRecord {
  readonly id: string
  readonly file: string
  readonly line: number
  readonly exportName: string
  /** Whether the export has a doc comment. */
  readonly documented: boolean
  /** Dotted names of inputs and output fields without a doc comment. */
  readonly undocumented: readonly string[]
  /** Whether the call carries the mark that lets bundlers drop it. */
  readonly pure: boolean
}

const root = fileURLToPath(new URL('../../src/', import.meta.url))
const parsed = new Map<string, ts.SourceFile>()

function sourceOf(file: string): ts.SourceFile {
  let source = parsed.get(file)
  if (source === undefined) {
    source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true)
    parsed.set(file, source)
  }
  return source
}

/** Every formula record written in a module's folder, given as a path below `src` or as a folder of its own. */
export function writtenRecords(folder: string): WrittenRecord[] {
  const top = resolve(root, folder)
  return readdirSync(top, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort()
    .flatMap((file) => recordsIn(join(top, file)))
}

function recordsIn(path: string): WrittenRecord[] {
  const source = sourceOf(path)
  if (!source.text.includes('formula(')) return []
  const file = relative(root, path)
  const records: WrittenRecord[] = []
  source.forEachChild((statement) => {
    if (!ts.isVariableStatement(statement)) return
    for (const declaration of statement.declarationList.declarations) {
      const call = declaration.initializer
      if (call === undefined || !ts.isCallExpression(call) || call.expression.getText() !== 'formula') continue
      const [id, def] = call.arguments
      if (id === undefined || !ts.isStringLiteral(id) || def === undefined || !ts.isObjectLiteralExpression(def)) {
        throw new Error(`${file}: a formula record must be a literal id and a literal object`)
      }
      records.push({
        id: id.text,
        file: `src/${file}`,
        line: source.getLineAndCharacterOfPosition(statement.getStart()).line + 1,
        exportName: declaration.name.getText(),
        documented: hasDoc(statement),
        undocumented: [...undocumentedFields(def, 'inputs'), ...undocumentedFields(def, 'output')],
        pure: /\/\*\s*@__PURE__\s*\*\//.test(source.text.slice(call.getFullStart(), call.getStart())),
      })
    }
  })
  return records
}

const hasDoc = (node: ts.Node) => {
  const { text } = node.getSourceFile()
  return (ts.getLeadingCommentRanges(text, node.getFullStart()) ?? []).some((range) => text.startsWith('/**', range.pos))
}

/** An expression without the assertions around it, such as `as const`. */
function bare(node: ts.Expression): ts.Expression {
  return ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node) ? bare(node.expression) : node
}

/** Where a constant is declared, in the same file or in the one that it is imported from. */
function declarationOf(name: string, source: ts.SourceFile): ts.VariableDeclaration {
  for (const statement of source.statements) {
    if (ts.isVariableStatement(statement)) {
      const found = statement.declarationList.declarations.find((declaration) => declaration.name.getText() === name)
      if (found !== undefined) return found
    }
    const exported = ts.isExportDeclaration(statement) && statement.exportClause
    const imported = ts.isImportDeclaration(statement) && statement.importClause?.namedBindings
    const names =
      exported && ts.isNamedExports(exported) ? exported.elements : imported && ts.isNamedImports(imported) ? imported.elements : []
    const found = [...names].find((element) => element.name.text === name)
    const from = (statement as ts.ImportDeclaration | ts.ExportDeclaration).moduleSpecifier
    if (found === undefined || from === undefined || !ts.isStringLiteral(from)) continue
    const file = resolve(dirname(source.fileName), from.text.replace(/\.js$/, '.ts'))
    return declarationOf(found.propertyName?.text ?? name, sourceOf(file))
  }
  throw new Error(`${relative(root, source.fileName)}: ${name} is not a constant that can be followed`)
}

/** The value an expression stands for: itself, or what the named constant holds. */
function heldBy(node: ts.Expression): ts.Expression {
  const inner = bare(node)
  if (!ts.isIdentifier(inner)) return inner
  const { initializer } = declarationOf(inner.text, inner.getSourceFile())
  if (initializer === undefined) throw new Error(`${inner.text} has no value`)
  return heldBy(initializer)
}

interface Member {
  readonly name: string
  readonly value: ts.Expression
  readonly documented: boolean
}

/**
 * The members of a record, spreads and named constants followed. A member that takes a named constant (`thread: THREAD`) is documented by
 * its own comment or by the comment of the constant.
 */
function membersOf(block: ts.Expression): Member[] {
  const record = heldBy(block)
  if (!ts.isObjectLiteralExpression(record)) throw new Error(`${record.getText().slice(0, 60)} is not a literal record`)
  return record.properties.flatMap((property): Member[] => {
    if (ts.isSpreadAssignment(property)) return membersOf(property.expression)
    const name = property.name.getText().replaceAll(/['"]/g, '')
    if (ts.isShorthandPropertyAssignment(property)) return [memberFrom(name, property.name, hasDoc(property))]
    return ts.isPropertyAssignment(property) ? [memberFrom(name, property.initializer, hasDoc(property))] : []
  })
}

function memberFrom(name: string, value: ts.Expression, ownDoc: boolean): Member {
  const inner = bare(value)
  const atConstant = ts.isIdentifier(inner) && hasDoc(declarationOf(inner.text, inner.getSourceFile()).parent.parent)
  return { name, value: heldBy(value), documented: ownDoc || atConstant }
}

function undocumentedFields(def: ts.ObjectLiteralExpression, name: 'inputs' | 'output'): string[] {
  const block = membersOf(def).find((member) => member.name === name)?.value
  if (block === undefined || !ts.isObjectLiteralExpression(block)) return []
  const members = membersOf(block)
  const isOne = name === 'output' && ['kind', 'infinite'].every((key) => members.some((member) => member.name === key))
  return isOne ? [] : fieldsWithout(members, name)
}

function fieldsWithout(members: readonly Member[], path: string): string[] {
  return members.flatMap(({ name, value, documented }) => {
    const here = `${path}.${name}`
    const missing = documented ? [] : [here]
    const nested = nestedFields(value)
    return nested === undefined ? missing : [...missing, ...fieldsWithout(membersOf(nested), here)]
  })
}

/** The fields of a nested record, or of the records in a list. */
function nestedFields(value: ts.Expression): ts.Expression | undefined {
  if (!ts.isObjectLiteralExpression(value)) return undefined
  const members = membersOf(value)
  const list = members.find(({ name }) => name === 'list')
  return list === undefined ? members.find(({ name }) => name === 'fields')?.value : nestedFields(list.value)
}
