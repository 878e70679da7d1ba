import { type ParseArgsConfig, parseArgs } from 'node:util'
import { InputError, nearName, refuse, show } from '../units/index.js'

/** Arguments that a verb accepts after its name. */
export type Options = NonNullable<ParseArgsConfig['options']>

/** Options that every verb accepts. */
const COMMON = { help: { type: 'boolean', short: 'h' }, json: { type: 'boolean' }, quiet: { type: 'boolean', short: 'q' } } as const

/** Words and options of one call. */
export interface Arguments {
  readonly words: readonly string[]
  readonly text: (name: string) => string | undefined
  readonly texts: (name: string) => readonly string[]
  readonly flag: (name: string) => boolean
}

/** The words after a verb. Throws an `InputError` for an unknown option or one without its value. */
export function argumentsOf(verb: string, args: readonly string[], own: Options): Arguments {
  const options: Options = { ...COMMON, ...own }
  for (const word of args) {
    if (word === '--') break
    const name = word.match(/^--([^=]+)/)?.[1]
    if (name !== undefined && options[name] === undefined) rejectOption(verb, name, options)
  }
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
    const valueNamed = (name: string) => values[name]
    return {
      words: positionals,
      text: (name) => valueNamed(name) as string | undefined,
      texts: (name) => (valueNamed(name) ?? []) as readonly string[],
      flag: (name) => valueNamed(name) === true,
    }
  } catch (error) {
    throw new InputError(verb, [{ path: '', given: '', accepts: `${verb}: ${(error as Error).message}` }])
  }
}

function rejectOption(verb: string, name: string, options: Options): never {
  const names = Object.keys(options)
  const near = nearName(name, names)
  const hint = near === undefined ? '' : ` Did you mean --${near}?`
  const accepts = `--${name} is not an option of ${verb}.${hint} Options: ${names.map((each) => `--${each}`).join(', ')}`
  throw new InputError(verb, [{ path: '', given: '', accepts }])
}

/** `name=value` words as a record: numbers, true, false and lists as JSON has them, everything else as text. */
export function assignments(verb: string, given: readonly string[]): Record<string, unknown> {
  const values: Record<string, unknown> = {}
  for (const word of given) {
    const at = word.indexOf('=')
    if (at < 1) {
      const accepts = "must be a field and its value, such as joints.knee.drive.pretension='200 N'"
      throw new InputError(verb, [{ path: word, given: 'without a value', accepts }])
    }
    const name = word.slice(0, at)
    if (Object.hasOwn(values, name)) refuse(verb, name, word.slice(at + 1), 'must be given once')
    Object.defineProperty(values, name, { value: readValue(word.slice(at + 1)), enumerable: true })
  }
  return values
}

function readValue(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}

/** Rejects the words after a verb. */
export function rejectWords(verb: string, words: readonly string[], accepts: string): never {
  const given = words.length === 0 ? 'missing' : show(words.join(' '))
  throw new InputError(verb, [{ path: `what follows ${verb}`, given, accepts }])
}
