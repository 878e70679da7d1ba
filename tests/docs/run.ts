import ts from 'typescript'
import type { Example } from './extract.js'

/** What an example says about itself is wrong, or it says nothing. */
class ExampleError extends Error {
  override name = 'ExampleError'
}

interface Claim {
  readonly line: number
  readonly throws: boolean
  readonly text: string
}

/** Runs an example; throws an `ExampleError` where a `// => value` or `// throws message` does not hold, or when it has none. */
export async function runExample(example: Example): Promise<void> {
  const script = withClaims(example)
  const { outputText } = ts.transpileModule(script, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  })
  const modules = new Map<string, unknown>()
  for (const { fileName } of ts.preProcessFile(script).importedFiles) modules.set(fileName, await load(fileName, example))
  const AsyncFunction = (async () => {}).constructor as new (...words: string[]) => (...values: unknown[]) => Promise<void>
  const at = (line: number) => `${example.file}:${line}`
  await new AsyncFunction('require', 'exports', '__holds', '__throws', 'console', outputText)(
    (name: string) => modules.get(name),
    {},
    (value: unknown, text: string, line: number) => {
      if (!agrees(value, text)) throw new ExampleError(`${at(line)}: says ${text}, gives ${print(value)}`)
    },
    async (act: () => unknown, text: string, line: number) => {
      let message: string
      try {
        await act()
      } catch (error) {
        message = `${(error as Error).name}: ${(error as Error).message}`
        if (!matches(message, text, 'within')) throw new ExampleError(`${at(line)}: says it throws ${text}, throws ${message}`)
        return
      }
      throw new ExampleError(`${at(line)}: says it throws ${text}, does not throw`)
    },
    { log() {}, table() {} },
  )
}

async function load(name: string, { file, line }: Example): Promise<unknown> {
  if (/^limbwright(\/[a-z]+)?$/.test(name) || name === 'mathjs' || name.startsWith('node:')) return import(/* @vite-ignore */ name)
  throw new ExampleError(`${file}:${line}: imports '${name}'; an example imports limbwright's public subpaths, mathjs or node:`)
}

const CLAIM = /^\/\/ ?(=>|throws\b)(.*)$/

/** The example with each claim turned into a call. Throws an `ExampleError` where it claims nothing, or a claim follows no statement of its own. */
export function withClaims({ code, file, line: firstLine }: Example): string {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true)
  const lineOf = (position: number) => firstLine + source.getLineAndCharacterOfPosition(position).line
  const claims = new Map<ts.Statement, Claim>()
  // Comments are taken from the parsed statements: a bare scanner loses its way after a template literal with a substitution.
  source.statements.forEach((statement, i) => {
    const next = source.statements[i + 1]?.getFullStart() ?? source.endOfFileToken.getFullStart()
    const ranges = [...(ts.getTrailingCommentRanges(code, statement.end) ?? []), ...(ts.getLeadingCommentRanges(code, next) ?? [])]
    for (const { pos, end } of ranges) {
      const found = code.slice(pos, end).match(CLAIM)
      if (!found) continue
      const line = lineOf(pos)
      if (claims.has(statement)) throw new ExampleError(`${file}:${line}: this claim follows no statement of its own`)
      const text = found[2]!.trim()
      if (text === '') throw new ExampleError(`${file}:${line}: this claim is empty`)
      claims.set(statement, { line, throws: found[1] === 'throws', text })
    }
  })
  const taken = new Set([...claims.values()].map(({ line }) => line))
  code.split('\n').forEach((text, i) => {
    if (/(^|[^:'"`])\/\/ ?(=>|throws\b)/.test(text) && !taken.has(firstLine + i))
      throw new ExampleError(`${file}:${firstLine + i}: this claim follows no statement of its own`)
  })
  if (claims.size === 0)
    throw new ExampleError(`${file}:${firstLine}: asserts nothing; end a line with \`// => value\` or mark the fence \`no-run\``)
  let script = code
  for (const [statement, { line, throws, text }] of [...claims].reverse()) {
    const body = script.slice(statement.getStart(), statement.end)
    const claim = `${JSON.stringify(text)}, ${line}`
    const replaced = throws
      ? `;await __throws(async () => { ${body} }, ${claim});`
      : ts.isExpressionStatement(statement)
        ? `;__holds(${shownBy(statement.expression)}, ${claim});`
        : `${body};__holds(${declaredBy(statement, file, line)}, ${claim});`
    script = script.slice(0, statement.getStart()) + replaced + script.slice(statement.end)
  }
  return script
}

/** What a line shows: the argument of `console.log(x)`, or the expression itself. */
function shownBy(expression: ts.Expression): string {
  const printed = ts.isCallExpression(expression) && expression.expression.getText() === 'console.log' ? expression.arguments[0] : undefined
  return (printed ?? expression).getText()
}

function declaredBy(statement: ts.Statement, file: string, line: number): string {
  const declared = ts.isVariableStatement(statement) ? statement.declarationList.declarations : []
  const name = declared.length === 1 ? declared[0]!.name : undefined
  if (name !== undefined && ts.isIdentifier(name)) return name.text
  if (name !== undefined && ts.isObjectBindingPattern(name)) return `{ ${name.elements.map((each) => each.name.getText()).join(', ')} }`
  throw new ExampleError(`${file}:${line}: a claim follows an expression or the declaration of one name`)
}

/** Whether a value is what the text says: to the printed digits, and for an object in the fields the text names. */
export function agrees(value: unknown, text: string): boolean {
  if (isQuantity(value)) return matches(String(value), unquoted(text), 'whole')
  if (typeof value === 'number') return /^[-+]?[\d.]+(e[-+]?\d+)?$/i.test(text) ? sameNumber(value, text) : String(value) === text
  let expected: unknown
  try {
    expected = new Function(`return (${text})`)()
  } catch {
    return matches(String(value), text, 'whole')
  }
  return sameValue(value, expected)
}

function sameValue(value: unknown, expected: unknown): boolean {
  if (typeof expected === 'number' && typeof value === 'number')
    return Number.isNaN(expected) ? Number.isNaN(value) : sameNumber(value, String(expected))
  if (typeof expected === 'string') return (typeof value === 'string' || isQuantity(value)) && matches(String(value), expected, 'whole')
  if (Array.isArray(expected))
    return Array.isArray(value) && value.length === expected.length && expected.every((each, i) => sameValue(value[i], each))
  if (typeof expected === 'object' && expected !== null)
    return (
      typeof value === 'object' &&
      value !== null &&
      Object.entries(expected).every(([key, each]) => sameValue((value as Record<string, unknown>)[key], each))
    )
  return Object.is(value, expected)
}

/** A whole number is exact; a decimal one holds to half a unit of its last printed digit. */
function sameNumber(value: number, text: string): boolean {
  const expected = Number(text)
  if (!Number.isFinite(expected)) return Object.is(value, expected)
  const [mantissa = '', exponent = '0'] = text.toLowerCase().split('e')
  const decimals = mantissa.split('.')[1]?.length ?? 0
  if (decimals === 0 && exponent === '0') return value === expected
  return Math.abs(value - expected) <= 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9)
}

/** Text against a pattern in which `…` stands for anything. */
function matches(text: string, pattern: string, how: 'whole' | 'within'): boolean {
  const escaped = pattern
    .split('…')
    .map((part) => part.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('[\\s\\S]*')
  return new RegExp(how === 'whole' ? `^${escaped}$` : escaped).test(text)
}

const unquoted = (text: string) => text.replace(/^(['"`])(.*)\1$/, '$2')
const isQuantity = (value: unknown): boolean => typeof value === 'object' && value !== null && 'si' in value && 'kind' in value
const print = (value: unknown): string => {
  if (typeof value !== 'object' || value === null || isQuantity(value)) return typeof value === 'string' ? `'${value}'` : String(value)
  return Array.isArray(value)
    ? `[${value.map(print).join(', ')}]`
    : `{ ${Object.entries(value)
        .map(([key, each]) => `${key}: ${print(each)}`)
        .join(', ')} }`
}
