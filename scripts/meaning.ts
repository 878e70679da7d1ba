import ts from 'typescript'

/** The doc comment of a field of a formula record: its own, or that of the constant it takes (`thread: THREAD`). Empty where there is none. */
export function meaningOf(checker: ts.TypeChecker, owner: ts.Type | undefined, field: string): string {
  const symbol = owner === undefined ? undefined : checker.getPropertyOfType(owner, field)
  const own = ts.displayPartsToString(symbol?.getDocumentationComment(checker))
  if (own !== '') return own
  const constant = symbol?.declarations?.map((declaration) => constantOf(checker, declaration)).find((found) => found !== undefined)
  return ts.displayPartsToString(constant?.getDocumentationComment(checker))
}

/** The constant that a member of a record takes its value from. */
function constantOf(checker: ts.TypeChecker, member: ts.Declaration): ts.Symbol | undefined {
  if (ts.isShorthandPropertyAssignment(member)) return followed(checker, checker.getShorthandAssignmentValueSymbol(member))
  if (!ts.isPropertyAssignment(member)) return undefined
  let value = member.initializer
  while (ts.isAsExpression(value) || ts.isSatisfiesExpression(value) || ts.isParenthesizedExpression(value)) value = value.expression
  return ts.isIdentifier(value) ? followed(checker, checker.getSymbolAtLocation(value)) : undefined
}

const followed = (checker: ts.TypeChecker, symbol: ts.Symbol | undefined) =>
  symbol !== undefined && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
