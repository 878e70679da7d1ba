/** One thing wrong with an input. */
export interface Issue {
  /** Where it stands, such as `outer.modulus` or `loads[2]`. */
  readonly path: string
  /** What was given, as text cut to a readable length. */
  readonly given: string
  /** What is accepted there. */
  readonly accepts: string
  /** Line and column of the text it was read from, counted from 1; absent for objects. */
  readonly line?: number
  readonly column?: number
}

/** Issues that a message lists; the error carries all of them. */
const MOST_LISTED = 20

/** Bad input: lists every issue at once, each with its path, what was given and what is accepted. */
export class InputError extends Error {
  override get name() {
    return 'InputError'
  }

  constructor(
    /** The formula, function or document that was called. */
    readonly where: string,
    readonly issues: readonly Issue[],
  ) {
    super(
      issues.length === 1
        ? `${where}: ${sentence(issues[0] as Issue)}`
        : `${where}: ${issues.length} things to change\n${listed(issues).join('\n')}`,
    )
  }
}

const sentence = ({ path, given, accepts, line, column }: Issue) =>
  `${line === undefined ? '' : `line ${line}${column === undefined ? '' : `, column ${column}`}: `}${path} is ${given}; ${accepts}`

function listed(issues: readonly Issue[]): string[] {
  const lines = issues.slice(0, MOST_LISTED).map((issue) => `  - ${sentence(issue)}`)
  return issues.length > MOST_LISTED ? [...lines, `  … and ${issues.length - MOST_LISTED} more`] : lines
}

/** One issue: where it is, what was given (shown cut to a readable length) and what is accepted there. */
export const issue = (path: string, given: unknown, accepts: string): Issue => ({ path, given: show(given), accepts })

/** Throws an `InputError` with one issue. `where` names the function or document, `path` the field, `accepts` what is allowed there. */
export function refuse(where: string, path: string, given: unknown, accepts: string): never {
  throw new InputError(where, [issue(path, given, accepts)])
}

const LONGEST_SHOWN = 60

/** A value as error messages show it: short, on one line, text in quotes. */
export function show(given: unknown): string {
  if (given === undefined) return 'missing'
  if (given === null) return 'null'
  if (typeof given === 'string') return `'${cut(given)}'`
  if (typeof given === 'function') return 'a function'
  if (typeof given !== 'object') return String(given)
  if (isQuantityLike(given)) return `${cut(String(given))} (kind ${given.kind})`
  if (Array.isArray(given))
    return given.length === 0 ? 'an empty list' : cut(`[${given.slice(0, 4).map(show).join(', ')}${given.length > 4 ? ', …' : ''}]`)
  const names = Object.keys(given)
  return names.length === 0 ? 'an empty object' : cut(`an object with ${names.slice(0, 6).join(', ')}`)
}

const isQuantityLike = (given: object): given is { kind: string } =>
  typeof (given as { kind?: unknown }).kind === 'string' && typeof (given as { si?: unknown }).si === 'number'

const cut = (text: string) => {
  const line = text.slice(0, 4 * LONGEST_SHOWN).replaceAll(/\s+/g, ' ')
  return line.length > LONGEST_SHOWN ? `${line.slice(0, LONGEST_SHOWN)}…` : line
}
