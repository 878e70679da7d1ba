// Counts products, quotients and powers of two values in the files that print: physics belongs to formulas and lines.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

const source = fileURLToPath(new URL('../../src/leg/', import.meta.url))

const OPERATORS = new Set([
  ts.SyntaxKind.AsteriskToken,
  ts.SyntaxKind.SlashToken,
  ts.SyntaxKind.AsteriskAsteriskToken,
  ts.SyntaxKind.AsteriskEqualsToken,
  ts.SyntaxKind.SlashEqualsToken,
])
/** Constants of a file, as they are written. */
const CONSTANT = /^[A-Z][A-Z0-9_]*$/

/** Whether an operand is a written number or a constant: a unit, a share, a digit to round to. */
function isWritten(node: ts.Expression): boolean {
  if (ts.isParenthesizedExpression(node)) return isWritten(node.expression)
  if (ts.isPrefixUnaryExpression(node)) return isWritten(node.operand)
  if (ts.isBinaryExpression(node)) return isWritten(node.left) && isWritten(node.right)
  if (ts.isPropertyAccessExpression(node)) return ['Math', 'Number'].includes(node.expression.getText())
  return ts.isNumericLiteral(node) || (ts.isIdentifier(node) && CONSTANT.test(node.text))
}

/** Products, quotients and powers of two values in a text. */
export function productsIn(code: string): number {
  let count = 0
  const visit = (node: ts.Node): void => {
    if (ts.isBinaryExpression(node) && OPERATORS.has(node.operatorToken.kind) && !isWritten(node.left) && !isWritten(node.right)) count++
    ts.forEachChild(node, visit)
  }
  visit(ts.createSourceFile('a.ts', code, ts.ScriptTarget.Latest, true))
  return count
}

/** Those of every file of reports, charts and plans that has some. */
export function products(): Record<string, number> {
  const files = ['report', 'plans'].flatMap((folder) =>
    readdirSync(source + folder)
      .filter((name) => name.endsWith('.ts'))
      .map((name) => `${folder}/${name}`),
  )
  const counts = files.sort().map((file) => [file, productsIn(readFileSync(source + file, 'utf8'))] as const)
  return Object.fromEntries(counts.filter(([, count]) => count > 0))
}
