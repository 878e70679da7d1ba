// Measures files and functions of the source: lines of a file, lines and cyclomatic complexity of a function.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

const source = fileURLToPath(new URL('../../src/', import.meta.url))

/** Most lines of a file, most lines of a function, and its largest complexity. */
const FILE_LINES = 200
const FUNCTION_LINES = 60
const COMPLEXITY = 15

/** Tables of data may be as long as their data. */
const DATA = /^(materials\/(data\/|sources\.ts)|leg\/cases\/events\.ts)/

const DECISIONS = new Set([
  ts.SyntaxKind.IfStatement,
  ts.SyntaxKind.ConditionalExpression,
  ts.SyntaxKind.ForStatement,
  ts.SyntaxKind.ForOfStatement,
  ts.SyntaxKind.ForInStatement,
  ts.SyntaxKind.WhileStatement,
  ts.SyntaxKind.DoStatement,
  ts.SyntaxKind.CaseClause,
  ts.SyntaxKind.CatchClause,
])
const CHOICES = new Set([ts.SyntaxKind.AmpersandAmpersandToken, ts.SyntaxKind.BarBarToken, ts.SyntaxKind.QuestionQuestionToken])

/** One more than the decisions of a function, those of functions inside it left to them. */
function complexity(of: ts.Node): number {
  let count = 1
  const walk = (node: ts.Node): void => {
    if (node !== of && ts.isFunctionLike(node)) return
    if (DECISIONS.has(node.kind) || (ts.isBinaryExpression(node) && CHOICES.has(node.operatorToken.kind))) count++
    ts.forEachChild(node, walk)
  }
  walk(of)
  return count
}

/** Long files as `file`, long or complex functions as `file name`, from the text of one file. */
export function oversized(file: string, text: string): string[] {
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const found: string[] = []
  if (!DATA.test(file) && text.split('\n').length - 1 > FILE_LINES) found.push(file)
  const line = (at: number) => tree.getLineAndCharacterOfPosition(at).line
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined) {
      const owner = node.name ?? (node.parent as { name?: ts.Node }).name
      const lines = line(node.end) - line(node.getStart()) + 1
      if (lines > FUNCTION_LINES || complexity(node) > COMPLEXITY) found.push(`${file} ${owner?.getText() ?? 'anonymous'}`)
    }
    ts.forEachChild(node, visit)
  }
  visit(tree)
  return found
}

/** What is too large in the source, sorted. */
export const oversizedSource = (): string[] =>
  readdirSync(source, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => oversized(file, readFileSync(source + file, 'utf8')))
    .sort()
