import { readdirSync, readFileSync } from 'node:fs'
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

const root = new URL('../../src/', import.meta.url).pathname

const filesOf = (folder: string) =>
  readdirSync(`${root}${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => `${folder}/${file}`)

/** Every formula record written in a module's folder. */
export function writtenRecords(folder: string): WrittenRecord[] {
  return filesOf(folder).flatMap((file) => {
    const text = readFileSync(`${root}${file}`, 'utf8')
    if (!text.includes('formula(')) return []
    const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
    const hasDoc = (node: ts.Node) =>
      (ts.getLeadingCommentRanges(text, node.getFullStart()) ?? []).some((range) => text.startsWith('/**', range.pos))
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
          file,
          line: source.getLineAndCharacterOfPosition(statement.getStart()).line + 1,
          exportName: declaration.name.getText(),
          documented: hasDoc(statement),
          undocumented: [...undocumentedFields(def, 'inputs', hasDoc), ...undocumentedFields(def, 'output', hasDoc)],
          pure: /\/\*\s*@__PURE__\s*\*\//.test(text.slice(declaration.initializer?.getFullStart(), call.getStart())),
        })
      }
    })
    return records
  })
}

const member = (object: ts.ObjectLiteralExpression, name: string) =>
  object.properties.find((p): p is ts.PropertyAssignment => ts.isPropertyAssignment(p) && p.name.getText().replaceAll(/['"]/g, '') === name)

function undocumentedFields(def: ts.ObjectLiteralExpression, name: 'inputs' | 'output', hasDoc: (node: ts.Node) => boolean): string[] {
  const block = member(def, name)?.initializer
  if (block === undefined || !ts.isObjectLiteralExpression(block)) return []
  if (name === 'output' && member(block, 'kind') !== undefined && member(block, 'infinite') !== undefined) return []
  return fieldsWithout(block, name, hasDoc)
}

function fieldsWithout(block: ts.ObjectLiteralExpression, path: string, hasDoc: (node: ts.Node) => boolean): string[] {
  return block.properties.flatMap((p) => {
    const here = `${path}.${p.name?.getText() ?? p.getText()}`
    const missing = hasDoc(p) ? [] : [here]
    if (!ts.isPropertyAssignment(p) || !ts.isObjectLiteralExpression(p.initializer)) return missing
    const nested = member(p.initializer, 'fields')?.initializer
    return nested !== undefined && ts.isObjectLiteralExpression(nested) ? [...missing, ...fieldsWithout(nested, here, hasDoc)] : missing
  })
}
