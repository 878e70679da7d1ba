import {
  accepted,
  InputError,
  type Issue,
  issue,
  type Kind,
  kindAccepted,
  kindRow,
  kindWords,
  type Note,
  oneOfNames,
  Quantity,
  readAny,
  refuse,
  show,
} from '../units/index.js'
import type { Input, Inputs, Scalar } from './definition.js'
import { rejectStray, rejectUnknown } from './unknown-inputs.js'
import type { Given, Si } from './values.js'

/**
 * Reads one value: returns its SI form, or adds issues and returns something that will not be used. Notes that quantities carry are added,
 * each once, to `notes` where it is given.
 */
type Reader = (given: unknown, path: string, issues: Issue[], notes?: Note[]) => unknown

/** Adds an issue; the NaN it returns is never used. */
const reject = (issues: Issue[], path: string, given: unknown, accepts: string): number => {
  issues.push(issue(path, given, accepts))
  return Number.NaN
}

/** The reader of one input of a record. */
export function reader(input: Input): Reader {
  const spec: Exclude<Input, Kind> = typeof input === 'string' ? ({ kind: input } as Scalar) : input
  const inner = innerReader(spec)
  const fallback = 'default' in spec && spec.default !== undefined ? readAlone('a default', inner, spec.default) : undefined
  return fallback !== undefined || spec.optional
    ? (given, path, issues, notes) => (given === undefined ? fallback : inner(given, path, issues, notes))
    : inner
}

/** Reads a single value. Throws an `InputError` where it cannot be. */
function readAlone(where: string, inner: Reader, given: unknown): unknown {
  const issues: Issue[] = []
  const value = inner(given, 'it', issues)
  if (issues.length > 0) throw new InputError(where, issues)
  return value
}

function innerReader(spec: Exclude<Input, Kind>): Reader {
  if ('kind' in spec) return scalarReader(spec)
  if ('oneOf' in spec) return choiceReader(spec.oneOf)
  if ('list' in spec) return listReader(reader(spec.list), spec.least ?? 1)
  if ('fields' in spec) return recordReader(spec.fields, false)
  if ('flag' in spec)
    return (given, path, issues) => (typeof given === 'boolean' ? given : reject(issues, path, given, 'must be true or false'))
  return curveReader(spec.curve)
}

/** A limit in words: the text it was written as, or the SI number in the kind's own printing. */
const limitWords = (kind: Kind, limit: unknown) =>
  typeof limit === 'number' ? (limit === 0 ? '0' : String(new Quantity(limit, kind))) : String(limit)

function scalarReader({ kind, min, max, above, below, whole }: Scalar): Reader {
  const row = kindRow(kind as string)
  if (row === undefined) refuse('formula record', 'kind', kind, kindAccepted(kind))
  const si = (limit: unknown, unset: number) => (limit === undefined ? unset : typeof limit === 'number' ? limit : readAny(row, limit))
  // Without a limit still nothing infinite passes, nor what could not be read.
  const lowest = si(min, -Number.MAX_VALUE)
  const highest = si(max, Number.MAX_VALUE)
  const over = si(above, Number.NEGATIVE_INFINITY)
  const under = si(below, Number.POSITIVE_INFINITY)
  // In a loop most texts are the same each time.
  let text: string | undefined
  let number = Number.NaN
  return (given, path, issues, notes) => {
    if (typeof given === 'string') {
      if (given === text) return number
    } else if (typeof given === 'object') takeNotes(given, notes)
    const x = readAny(row, given)
    if (x >= lowest && x <= highest && x > over && x < under && (!whole || Number.isInteger(x))) {
      if (typeof given === 'string') {
        text = given
        number = x
      }
      return x
    }
    if (!Number.isFinite(x)) return reject(issues, path, given, accepted(kind, given))
    const limits = Object.entries({ 'at least': min, above, 'at most': max, below }).filter(([, limit]) => limit !== undefined)
    const words = limits.map(([word, limit]) => `${word} ${limitWords(kind, limit)}`)
    return reject(issues, path, given, `must be ${[...words, ...(whole ? ['a whole number'] : [])].join(' and ')}`)
  }
}

/** Adds the notes that a quantity or a record carries. */
function takeNotes(given: object | null, notes: Note[] | undefined): void {
  const carried = (given as { notes?: unknown } | null)?.notes
  if (notes !== undefined && Array.isArray(carried)) for (const note of carried) if (!notes.includes(note)) notes.push(note)
}

const choiceReader =
  (words: readonly string[]): Reader =>
  (given, path, issues) =>
    words.includes(given as string) ? given : reject(issues, path, given, oneOfNames(words, given))

const listReader =
  (item: Reader, min: number): Reader =>
  (given, path, issues, notes) => {
    if (!Array.isArray(given) || given.length < min) return reject(issues, path, given, `must be a list of at least ${min}`)
    // Not `map`, which would step over the holes of a list.
    const read: unknown[] = []
    for (let i = 0; i < given.length; i++) read.push(item(given[i], `${path}[${i}]`, issues, notes))
    return read
  }

function curveReader([from, to]: readonly [Kind, Kind]): Reader {
  const value = reader(to)
  return (given, path, issues) => {
    if (typeof given !== 'function')
      return reject(issues, path, given, `must be a function of ${kindWords(from)} that gives ${kindWords(to)}`)
    const { si } = given as { si?: unknown }
    if (typeof si === 'function') return si
    return (x: number) => {
      const y: unknown = given(new Quantity(x, from))
      // A curve may end: the formula decides what that means.
      return typeof y === 'number' && !Number.isFinite(y) ? y : readAlone(`a value of the curve ${path}`, value, y)
    }
  }
}

/**
 * The reader of a record. The argument of a formula may carry nothing but inputs. A nested record may be an entry of a table or a material,
 * which carries more quantities; where every input is optional it may not.
 */
export function recordReader(inputs: Inputs, isArgument: boolean): Reader {
  const names = Object.keys(inputs)
  const readers = names.map((name) => reader(inputs[name] as Input))
  const optional = names.filter((name) => isOptional(inputs[name] as Input))
  const isClosed = isArgument || optional.length === names.length
  const surplus = isClosed ? rejectUnknown : rejectStray(names, optional)
  const blank: Record<string, unknown> = {}
  for (const name of names) {
    const input = inputs[name] as Input
    blank[name] = typeof input === 'string' || 'kind' in input ? Number.NaN : undefined
  }
  return (given, path, issues, notes) => {
    let at: string | undefined
    try {
      if (!isRecord(given)) return reject(issues, path || 'the argument', given, `must be an object with ${names.join(', ')}`)
      takeNotes(given, notes)
      const x = { ...blank }
      let known = 0
      for (let i = 0; i < names.length; i++) {
        at = names[i]!
        const value = given[at]
        if (value !== undefined) known++
        x[at] = readers[i]!(value, path ? `${path}.${at}` : at, issues, notes)
      }
      at = undefined
      // As many fields as are known: then there is no surplus, and no name needs a look.
      let fields = 0
      for (const _ in given) fields++
      if (fields !== known) surplus(given, names, path, issues)
      return x
    } catch (error) {
      if (error instanceof InputError) throw error
      // A getter or a proxy that throws.
      const place = [path, at].filter(Boolean).join('.') || 'the argument'
      issues.push({ path: place, given: 'unreadable', accepts: `must be plain data; reading it threw ${show(String(error))}` })
      return blank
    }
  }
}

const isOptional = (input: Input) =>
  typeof input !== 'string' && (input.optional === true || ('default' in input && input.default !== undefined))

/** An object with named fields: no list, no function, and none of the language's own objects, such as a date, a map or a buffer. */
function isRecord(given: unknown): given is Record<string, unknown> {
  if (given === null || typeof given !== 'object') return false
  return Object.getPrototypeOf(given) === Object.prototype || Object.prototype.toString.call(given) === '[object Object]'
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
