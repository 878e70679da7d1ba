import { InputError, type Issue, type Kind, nearName, Quantity, read, show, UnreadableQuantity } from '../units/index.js'
import type { Given, Input, Inputs, Scalar, Si } from './definition.js'

/** Reads one value: returns its SI form, or adds issues and returns something that will not be used. */
type Reader = (given: unknown, path: string, issues: Issue[]) => unknown

const refuse = (issues: Issue[], path: string, given: unknown, accepts: string): number => {
  issues.push({ path, given: show(given), accepts })
  return Number.NaN
}

/** The reader of one input of a record. */
export function reader(input: Input): Reader {
  const spec: Exclude<Input, Kind> = typeof input === 'string' ? ({ kind: input } as Scalar) : input
  const inner = innerReader(spec)
  if ('default' in spec && spec.default !== undefined) {
    const issues: Issue[] = []
    const value = inner(spec.default, 'default', issues)
    if (issues.length > 0) throw new InputError('formula record', issues)
    return (given, path, all) => (given === undefined ? value : inner(given, path, all))
  }
  return spec.optional ? (given, path, all) => (given === undefined ? undefined : inner(given, path, all)) : inner
}

function innerReader(spec: Exclude<Input, Kind>): Reader {
  if ('kind' in spec) return scalarReader(spec)
  if ('oneOf' in spec) return choiceReader(spec.oneOf)
  if ('list' in spec) return listReader(reader(spec.list), spec.least ?? 1)
  if ('fields' in spec) return recordReader(spec.fields, false)
  if ('flag' in spec)
    return (given, path, issues) => (typeof given === 'boolean' ? given : refuse(issues, path, given, 'must be true or false'))
  return curveReader(spec.curve)
}

/** A limit in words: the text it was written as, or the SI number in the kind's own printing. */
const limitWords = (kind: Kind, limit: unknown) =>
  typeof limit === 'number' ? (limit === 0 ? '0' : String(new Quantity(limit, kind))) : String(limit)

function scalarReader({ kind, min, max, above, below, whole }: Scalar): Reader {
  const si = (limit: unknown) => (limit === undefined ? Number.NaN : typeof limit === 'number' ? limit : read(kind, limit))
  const [lowest, highest, over, under] = [si(min), si(max), si(above), si(below)]
  const words = [
    min !== undefined && `at least ${limitWords(kind, min)}`,
    above !== undefined && `above ${limitWords(kind, above)}`,
    max !== undefined && `at most ${limitWords(kind, max)}`,
    below !== undefined && `below ${limitWords(kind, below)}`,
    whole && 'a whole number',
  ]
    .filter(Boolean)
    .join(' and ')
  return (given, path, issues) => {
    let x: number
    if (typeof given === 'object' && given !== null && (given as Quantity).kind === kind) x = (given as Quantity).si
    else {
      try {
        x = read(kind, given)
      } catch (error) {
        if (!(error instanceof UnreadableQuantity)) throw error
        return refuse(issues, path, given, error.message)
      }
    }
    if (!Number.isFinite(x)) return refuse(issues, path, given, 'must be finite')
    // NaN stands for a limit that is not set: every comparison with it is false.
    return x < lowest || x > highest || x <= over || x >= under || (whole && !Number.isInteger(x))
      ? refuse(issues, path, given, `must be ${words}`)
      : x
  }
}

function choiceReader(words: readonly string[]): Reader {
  return (given, path, issues) => {
    if (typeof given === 'string' && words.includes(given)) return given
    const near = typeof given === 'string' ? nearName(given, words) : undefined
    return refuse(issues, path, given, `must be one of ${words.join(', ')}${near === undefined ? '' : `; did you mean ${near}?`}`)
  }
}

const listReader =
  (item: Reader, least: number): Reader =>
  (given, path, issues) =>
    Array.isArray(given) && given.length >= least
      ? given.map((x, i) => item(x, `${path}[${i}]`, issues))
      : refuse(issues, path, given, `must be a list of at least ${least}`)

const curveReader =
  ([from, to]: readonly [Kind, Kind]): Reader =>
  (given, path, issues) => {
    if (typeof given !== 'function') return refuse(issues, path, given, `must be a function of ${from} that gives ${to}`)
    const si = (given as { si?: unknown }).si
    return typeof si === 'function' ? si : (x: number) => read(to, given(new Quantity(x, from)))
  }

/**
 * The reader of a record. A nested record may carry more than is asked (a material has many properties);
 * the argument of a formula may not, so that a misspelt optional input is not lost.
 */
export function recordReader(inputs: Inputs, refuseSurplus: boolean): Reader {
  const names = Object.keys(inputs)
  const readers = names.map((name) => reader(inputs[name] as Input))
  const blank: Record<string, unknown> = {}
  for (const name of names) {
    const input = inputs[name] as Input
    blank[name] = typeof input === 'string' || 'kind' in input ? Number.NaN : undefined
  }
  return (given, path, issues) => {
    if (given === null || typeof given !== 'object' || Array.isArray(given)) {
      return refuse(issues, path || 'the argument', given, `must be an object with ${names.join(', ')}`)
    }
    const record = given as Record<string, unknown>
    const x = { ...blank }
    let known = 0
    for (let i = 0; i < names.length; i++) {
      const name = names[i] as string
      const value = record[name]
      if (value !== undefined) known++
      x[name] = (readers[i] as Reader)(value, path ? `${path}.${name}` : name, issues)
    }
    if (refuseSurplus) {
      // As many fields as are known: then there is no surplus, and no name needs a look.
      let fields = 0
      for (const name in record) if (record[name] !== undefined || !Object.hasOwn(blank, name)) fields++
      if (fields !== known) refuseUnknown(record, names, blank, path, issues)
    }
    return x
  }
}

/** Adds an issue for every field that is not an input, with the input that was probably meant. */
function refuseUnknown(record: Record<string, unknown>, names: readonly string[], blank: object, path: string, issues: Issue[]): void {
  for (const name in record) {
    if (Object.hasOwn(blank, name)) continue
    const missing = names.filter((other) => record[other] === undefined)
    const near = nearName(name, missing)
    const meant = near === undefined ? '' : `, did you mean ${near}?`
    refuse(issues, path ? `${path}.${name}` : name, record[name], `is not an input${meant}; inputs are ${names.join(', ')}`)
  }
}

/**
 * Reads a specification that is not a formula's argument (a drive, a network, a chain) by the same rules and with the same messages.
 * Throws one `InputError` that lists every issue.
 */
export function readInputs<const I extends Inputs>(where: string, inputs: I, given: Given<I>): Si<I> {
  const issues: Issue[] = []
  const x = recordReader(inputs, true)(given, '', issues)
  if (issues.length > 0) throw new InputError(where, issues)
  return x as Si<I>
}
