import { type Document, isMap, isNode, isScalar, isSeq, LineCounter, parseDocument, visit } from 'yaml'
import { InputError, type Issue, issue, show } from '../../units/index.js'
import { decimalCommas, placeText, slipOfText } from './slips-of-text.js'

/** A leg's specification is some kilobytes; a text much longer is something else. */
const MAX_TEXT_LENGTH = 100_000
const MAX_DEPTH = 12
const MAX_VALUES = 20_000
const MAX_ALIASES = 50

/** Line and column of a field, where the specification was text. */
type Place = Pick<Issue, 'line' | 'column'>

/** A document as it was read. */
export interface Read {
  readonly data: Record<string, unknown>
  /** Where a field is in the text; nothing for an object. */
  readonly placeOf: (path: string) => Place
}

const NOWHERE = (): Place => ({})

/**
 * The data of a specification: an object unchanged, JSON or YAML text parsed. JSON is read as YAML, so that a repeated key
 * is an error there too. Throws one `InputError` for a text that is too long, cannot be parsed, repeats a key,
 * multiplies itself by aliases, or carries keys that would reach into an object's prototype.
 */
export function readDocument(where: string, given: unknown): Read {
  if (given instanceof Uint8Array)
    throw new InputError(where, [
      {
        path: 'specification',
        given: 'bytes of a file',
        accepts: "must be text: read the file with 'utf8', as in readFileSync(file, 'utf8')",
      },
    ])
  const { data, placeOf } = typeof given === 'string' ? parsed(where, given) : { data: given, placeOf: NOWHERE }
  const issues: Issue[] = []
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    issues.push(
      issue('specification', data, 'must be an object, or JSON or YAML text of one, with sections such as robot, links and drives'),
    )
  } else inspect(data, '', 0, { count: 0 }, new Set(), issues)
  if (issues.length > 0) throw new InputError(where, issues)
  return { data: withoutSchemaName(data as Record<string, unknown>), placeOf }
}

/** A document may name its own schema, from which editors complete it. */
function withoutSchemaName(data: Record<string, unknown>): Record<string, unknown> {
  const { $schema, ...rest } = data
  return typeof $schema === 'string' ? rest : data
}

function parsed(where: string, text: string): { data: unknown; placeOf: Read['placeOf'] } {
  const fail = (given: string, accepts: string): never => {
    throw new InputError(where, [{ path: 'text', given, accepts }])
  }
  if (text.trim() === '') fail('an empty text', 'must be the specification of a leg as JSON or YAML')
  if (text.length > MAX_TEXT_LENGTH)
    fail(`${text.length} characters`, `must be at most ${MAX_TEXT_LENGTH} characters; a specification has a few thousand`)
  const slip = slipOfText(text)
  if (slip !== undefined) throw new InputError(where, [slip])
  const lines = new LineCounter()
  // The parser's own search for repeated keys takes a time that grows with the square of their number.
  const document = parseDocument(text, { uniqueKeys: false, prettyErrors: true, logLevel: 'error', lineCounter: lines })
  const unreadable = distinct(document.errors).map(({ linePos, message }) => ({
    path: linePos === undefined ? 'text' : placeText(linePos[0]),
    given: 'not readable',
    accepts: plainly(firstLine(message)),
  }))
  const issues = unreadable.length > 0 ? unreadable : [...repeatedKeys(document, lines), ...decimalCommas(document, lines, text)]
  if (issues.length > 0) throw new InputError(where, issues.slice(0, MAX_MISTAKES))
  try {
    return { data: document.toJS({ maxAliasCount: MAX_ALIASES }), placeOf: (path) => placeIn(document, lines, path) }
  } catch (error) {
    return fail('a text with aliases', `may not use more than ${MAX_ALIASES} aliases (${firstLine((error as Error).message)})`)
  }
}

/** Where a field is: the line of its name, or of the nearest section that is there. */
function placeIn(document: Document, lines: LineCounter, path: string): Place {
  let at: unknown = document.contents
  let range: number | undefined
  for (const name of path.split(/[.[\]]+/).filter((part) => part !== '')) {
    const pair = isMap(at) ? at.items.find(({ key }) => isScalar(key) && String(key.value) === name) : undefined
    const item = isSeq(at) ? at.items[Number(name)] : pair?.value
    const start = isScalar(pair?.key) ? pair.key.range?.[0] : isNode(item) ? item.range?.[0] : undefined
    if (start === undefined) break
    range = start
    at = item
  }
  if (range === undefined) return {}
  const { line, col } = lines.linePos(range)
  return { line, column: col }
}

/** Mistakes of a text that are listed at once. */
const MAX_MISTAKES = 10

function repeatedKeys(document: Document, lines: LineCounter): Issue[] {
  const issues: Issue[] = []
  visit(document, {
    Map: (_, map) => {
      const seen = new Set<unknown>()
      for (const { key } of map.items) {
        if (!isScalar(key)) continue
        if (seen.has(key.value))
          issues.push({
            path: placeText(lines.linePos(key.range?.[0] ?? 0)),
            given: `a second ${show(key.value)}`,
            accepts: 'each name may occur once in a section',
          })
        seen.add(key.value)
      }
    },
  })
  return issues
}

/** Errors of different sorts: one slip moves all that follows, and the parser reports the same for each line. */
const distinct = <E extends { readonly message: string }>(errors: readonly E[]): E[] => {
  const seen = new Set<string>()
  return errors.filter(({ message }) => {
    const sort = firstLine(message)
    const isNew = !seen.has(sort)
    seen.add(sort)
    return isNew
  })
}

/** What the parser's message means to a builder. */
const plainly = (message: string) =>
  message.startsWith('All mapping items must start')
    ? 'the line before has no colon, or this line is indented otherwise than its neighbours'
    : message.startsWith('Source contains multiple documents')
      ? 'a second document begins here; a text must hold one'
      : message

const firstLine = (text: string) => (text.split('\n')[0] as string).replace(/ at line \d+, column \d+:?$/, '')

/** Keys that would reach into an object's prototype instead of naming a field. */
const PROTOTYPE_KEYS = new Set(['__proto__', 'constructor', 'prototype'])

function inspect(value: object, path: string, depth: number, size: { count: number }, above: Set<object>, issues: Issue[]): void {
  if (isQuantity(value)) return
  const here = path === '' ? 'specification' : path
  if (above.has(value)) {
    issues.push({ path: here, given: 'an object that contains itself', accepts: 'must be a tree of plain data' })
    return
  }
  if (depth > MAX_DEPTH) {
    issues.push({ path: here, given: `nested more than ${MAX_DEPTH} deep`, accepts: 'a specification is at most that deep' })
    return
  }
  above.add(value)
  // Own names only, the hidden ones included: `__proto__` may have been defined on purpose.
  for (const name of Object.getOwnPropertyNames(value)) {
    if (Array.isArray(value) && name === 'length') continue
    if (++size.count > MAX_VALUES) {
      if (size.count === MAX_VALUES + 1)
        issues.push({ path: here, given: `more than ${MAX_VALUES} values`, accepts: 'a specification has a few hundred' })
      break
    }
    const at = Array.isArray(value) ? `${path}[${name}]` : path === '' ? name : `${path}.${name}`
    if (PROTOTYPE_KEYS.has(name)) {
      issues.push({ path: at, given: 'a reserved name', accepts: `remove it; ${name} cannot be the name of a field` })
      continue
    }
    const item = (value as Record<string, unknown>)[name]
    if (typeof item === 'object' && item !== null) inspect(item, at, depth + 1, size, above, issues)
  }
  above.delete(value)
}

/** Quantities and foreign unit objects are read by their own rules. */
const isQuantity = (value: object) => 'si' in value || typeof (value as { toNumber?: unknown }).toNumber === 'function'
