/** One thing wrong with an input. */
export interface Issue {
  /** Where it is, such as `outer.modulus` or `loads[2]`. */
  readonly path: string
  /** The value that was given, as text cut to a readable length. */
  readonly given: string
  /** Values that are accepted there. */
  readonly accepts: string
  /** Line and column of the text it was read from, counted from 1; absent for objects. */
  readonly line?: number
  /** Column in that line, from 1; absent for objects. */
  readonly column?: number
}

/** Issues that a message lists; the error carries all of them. */
const MAX_LISTED = 20

/** Bad input: lists every issue at once, each with its path, what was given and what is accepted. */
export class InputError extends Error {
  /** The formula, function or document that was called. */
  declare readonly where: string
  /** Everything that is wrong, in the order of the inputs. */
  declare readonly issues: readonly Issue[]

  override get name() {
    return 'InputError'
  }

  constructor(where: string, issues: readonly Issue[], options?: ErrorOptions) {
    super(message(where, issues), options)
    // Not enumerable: Node would print them again below the message, which is the same.
    Object.defineProperties(this, { where: { value: where }, issues: { value: issues } })
  }

  /** Plain data, for logs and services. */
  toJSON(): { readonly name: string; readonly where: string; readonly issues: readonly Issue[] } {
    return { name: this.name, where: this.where, issues: this.issues }
  }
}

function message(where: string, issues: readonly Issue[]): string {
  if (issues.length === 1) return `${where}: ${sentence(issues[0] as Issue)}`
  const lines = issues.slice(0, MAX_LISTED).map((each) => `  - ${sentence(each)}`)
  if (issues.length > MAX_LISTED) lines.push(`  … and ${issues.length - MAX_LISTED} more`)
  return `${where}: ${issues.length} things to change\n${lines.join('\n')}`
}

function sentence({ path, given, accepts, line, column }: Issue): string {
  const place = line === undefined ? '' : `line ${line}${column === undefined ? '' : `, column ${column}`}: `
  return `${place}${path === '' ? "''" : cutPath(path)} is ${given}; ${accepts}`
}

const MAX_PATH_LENGTH = 200

/** A name that somebody made too long; the end of a path names the field. */
const cutPath = (path: string) =>
  path.length > MAX_PATH_LENGTH ? `${path.slice(0, MAX_SHOWN_LENGTH)}…${path.slice(-MAX_SHOWN_LENGTH)}` : path

/** One issue: where it is, what was given (shown cut to a readable length) and what is accepted there. */
export const issue = (path: string, given: unknown, accepts: string): Issue => ({ path, given: show(given), accepts })

/** Throws an `InputError` with one issue. `where` names the function or document, `path` the field, `accepts` what is allowed there. */
export function refuse(where: string, path: string, given: unknown, accepts: string): never {
  throw new InputError(where, [issue(path, given, accepts)])
}

const MAX_SHOWN_LENGTH = 60
/** Lists within lists are shown this deep. */
const MAX_SHOWN_DEPTH = 2

/** A value as error messages show it: short, on one line, text in quotes. Never throws, whatever is given. */
export function show(given: unknown): string {
  try {
    return shown(given, 0)
  } catch {
    // A getter that throws, a revoked proxy.
    return 'an object that cannot be read'
  }
}

function shown(given: unknown, depth: number): string {
  if (given === undefined) return 'missing'
  if (given === null) return 'null'
  if (typeof given === 'string') return `'${cut(given)}'`
  if (typeof given === 'function') return 'a function'
  if (typeof given !== 'object') return cut(String(given))
  if (Array.isArray(given)) return listShown(given, depth)
  if (isQuantityLike(given)) return `${cut(textOf(given))} (kind ${cut(given.kind)})`
  const names = Object.keys(given)
  const what = Object.prototype.toString.call(given).slice('[object '.length, -1)
  if (what !== 'Object') return /^[aeiou]/i.test(what) ? `an ${cut(what)}` : `a ${cut(what)}`
  return names.length === 0 ? 'an empty object' : cut(`an object with ${names.slice(0, 6).join(', ')}`)
}

function listShown(given: readonly unknown[], depth: number): string {
  if (given.length === 0) return 'an empty list'
  if (depth >= MAX_SHOWN_DEPTH) return 'a list'
  const items = Array.from(given.slice(0, 4), (item) => shown(item, depth + 1))
  return cut(`[${items.join(', ')}${given.length > 4 ? ', …' : ''}]`)
}

const isQuantityLike = (given: object): given is { kind: string; si: number } =>
  typeof (given as { kind?: unknown }).kind === 'string' && typeof (given as { si?: unknown }).si === 'number'

/** The text of a quantity; that of a mere record with its fields is its SI number. */
const textOf = (given: { si: number; toString?: unknown }) =>
  typeof given.toString === 'function' && given.toString !== Object.prototype.toString ? String(given) : String(given.si)

/** Text on one line, cut to the length that messages show. */
export const cut = (text: string) => {
  const line = text.slice(0, 4 * MAX_SHOWN_LENGTH).replaceAll(/\s+/g, ' ')
  return line.length > MAX_SHOWN_LENGTH ? `${line.slice(0, MAX_SHOWN_LENGTH)}…` : line
}
