import { parseDocument } from 'yaml'
import { InputError, type Issue, show } from '../../units/index.js'

/** A leg's specification is some kilobytes; a text much longer is something else. */
const LONGEST_TEXT = 1_000_000
const DEEPEST = 12
const MOST_VALUES = 20_000
const MOST_ALIASES = 50

/**
 * The data of a specification: an object as it is, JSON or YAML text parsed (JSON is YAML, and read by the same rules, so that a key
 * that stands twice is refused there too). Throws one `InputError` for a text that is too long, cannot be parsed, repeats a key,
 * multiplies itself by aliases, or carries keys that would reach into an object's prototype.
 */
export function readDocument(where: string, given: unknown): Record<string, unknown> {
  const data = typeof given === 'string' ? parsed(where, given) : given
  const issues: Issue[] = []
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    issues.push({
      path: 'specification',
      given: show(data),
      accepts: 'must be an object, or JSON or YAML text of one, with sections such as robot, links and drives',
    })
  } else inspect(data, '', 0, { count: 0 }, new Set(), issues)
  if (issues.length > 0) throw new InputError(where, issues)
  return data as Record<string, unknown>
}

function parsed(where: string, text: string): unknown {
  const fail = (given: string, accepts: string): never => {
    throw new InputError(where, [{ path: 'text', given, accepts }])
  }
  if (text.trim() === '') fail('an empty text', 'must be the specification of a leg as JSON or YAML')
  if (text.length > LONGEST_TEXT)
    fail(`${text.length} characters`, `must be at most ${LONGEST_TEXT} characters; a specification has a few thousand`)
  const document = parseDocument(text, { uniqueKeys: true, prettyErrors: true, logLevel: 'silent' })
  if (document.errors.length > 0) {
    throw new InputError(
      where,
      document.errors.slice(0, 10).map((error) => {
        const line = error.linePos?.[0]
        return {
          path: line === undefined ? 'text' : `line ${line.line}, column ${line.col}`,
          given: 'not readable',
          accepts: firstLine(error.message),
        }
      }),
    )
  }
  try {
    return document.toJS({ maxAliasCount: MOST_ALIASES })
  } catch (error) {
    return fail('a text with aliases', `may not use more than ${MOST_ALIASES} aliases (${firstLine((error as Error).message)})`)
  }
}

const firstLine = (text: string) => (text.split('\n')[0] as string).replace(/ at line \d+, column \d+:?$/, '')

/** Keys that would reach into an object's prototype instead of naming a field. */
const REACHING = new Set(['__proto__', 'constructor', 'prototype'])

function inspect(value: object, path: string, depth: number, size: { count: number }, above: Set<object>, issues: Issue[]): void {
  if (isQuantity(value)) return
  const here = path === '' ? 'specification' : path
  if (above.has(value)) {
    issues.push({ path: here, given: 'an object that contains itself', accepts: 'must be a tree of plain data' })
    return
  }
  if (depth > DEEPEST) {
    issues.push({ path: here, given: `nested more than ${DEEPEST} deep`, accepts: 'a specification is at most that deep' })
    return
  }
  above.add(value)
  // Own names only, the hidden ones included: `__proto__` may have been defined on purpose.
  for (const name of Object.getOwnPropertyNames(value)) {
    if (Array.isArray(value) && name === 'length') continue
    if (++size.count > MOST_VALUES) {
      if (size.count === MOST_VALUES + 1)
        issues.push({ path: here, given: `more than ${MOST_VALUES} values`, accepts: 'a specification has a few hundred' })
      break
    }
    const at = Array.isArray(value) ? `${path}[${name}]` : path === '' ? name : `${path}.${name}`
    if (REACHING.has(name)) {
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
