import { fibreNames } from '../../capstan/index.js'
import { metricThread, parallelPin, propertyClass, smallBallBearing } from '../../fasteners/index.js'
import { exampleOf, type In, InputError, type Kind, kindWords, nearNames, Quantity, quantity, quantityFromJSON } from '../../units/index.js'
import type { Band, Field, Table } from './field.js'
import { materialFrom } from './own-material.js'
import { Rejection } from './rejection.js'
import { bound, isWithin, type Scalar, unitSlip } from './unit-slip.js'

/** A field that holds one value, not further fields. */
export type Leaf = Exclude<
  Field,
  { tuple: unknown } | { list: unknown } | { section: unknown } | { dictionary: unknown } | { variants: unknown }
>

/** Whether a field holds one value. */
export const isLeaf = (field: Field): field is Leaf =>
  !('tuple' in field || 'list' in field || 'section' in field || 'dictionary' in field || 'variants' in field)

/** Names of the rows of each table. */
export const TABLES: { readonly [T in Table]: { readonly what: string; readonly names: () => readonly string[] } } = {
  thread: { what: 'a metric thread', names: () => metricThread.designations },
  propertyClass: { what: 'a property class', names: () => propertyClass.designations },
  pin: {
    what: 'a parallel pin',
    names: () => parallelPin.designations.flatMap((d) => [`ISO 8734 ${d} mm m6`, `ISO 2338 ${d} mm m6`, `ISO 2338 ${d} mm h8`]),
  },
  bearing: { what: 'a small ball bearing', names: () => smallBallBearing.designations },
  fibre: { what: 'a cord fibre', names: fibreNames },
}

/** Names of the rows of a table. */
export const designations = (table: Table): readonly string[] => TABLES[table].names()

/** The value of a leaf as it is kept. Throws a `Rejection`. */
export function readLeaf(field: Leaf, given: unknown): unknown {
  if ('integer' in field) return readInteger(field, given)
  if ('kind' in field) return readQuantity(field, given)
  if ('interval' in field) return readInterval(field, given)
  if ('band' in field) return readBand(field.max, given)
  if ('oneOf' in field) return readWord(field.oneOf, given, acceptedBy(field))
  if ('designation' in field) return readDesignation(field.designation, given)
  if ('flag' in field) {
    if (typeof given === 'boolean') return given
    throw new Rejection(acceptedBy(field))
  }
  if ('own' in field) {
    materialFrom(given as never)
    return given
  }
  if (typeof given === 'string' && given.trim() !== '' && given.length <= 200) return given
  throw new Rejection(acceptedBy(field))
}

/** What a leaf accepts, in the words of messages. */
export function acceptedBy(field: Leaf): string {
  if ('integer' in field) return `must be a whole number from ${field.min} to ${field.max}`
  if ('kind' in field) {
    const limits = limitWords(field)
    return `must be a quantity of ${kindWords(field.kind)} such as ${exampleOf(field.kind)}${limits === '' ? '' : `, ${limits}`}`
  }
  if ('interval' in field) return `must be the lowest and the highest ${field.interval}, such as ${rangeOf(field.interval)}, rising`
  if ('band' in field) return `must be [low, typical, high], rising, above 0 and at most ${field.max}`
  if ('oneOf' in field) return `must be one of ${field.oneOf.join(', ')}`
  if ('designation' in field) return `must be the designation of ${TABLES[field.designation].what}`
  if ('refersTo' in field)
    return field.refersTo === 'materials'
      ? 'must be the name of a material, of the table or of the section materials'
      : `must be one of the names under ${field.refersTo}`
  if ('flag' in field) return 'must be true or false'
  if ('own' in field) return 'must be a section with basedOn and the properties you measured, such as tensileStrength'
  return 'must be a text of 1 to 200 characters'
}

/** An example of a range as it is written. */
const rangeOf = (kind: Kind) => `[${exampleOf(kind).replace('5', '2').replace('0.2', '0.1')}, ${exampleOf(kind)}]`

function limitWords({ min, above, max, below }: Scalar): string {
  return Object.entries({ 'at least': min, above, 'at most': max, below })
    .filter(([, limit]) => limit !== undefined)
    .map(([word, limit]) => `${word} ${limit}`)
    .join(' and ')
}

function readQuantity(field: Scalar, given: unknown): Quantity {
  const made = asQuantity(field.kind, given)
  if (!isWithin(field, made.si)) throw new Rejection(`must be ${limitWords(field)}${unitSlip(field, given)}`)
  return made
}

function readInteger(field: Extract<Leaf, { integer: true }>, given: unknown): number {
  if (typeof given === 'number' && Number.isInteger(given) && given >= field.min && given <= field.max) return given
  throw new Rejection(acceptedBy(field))
}

function readInterval({ interval: kind, min, max }: Extract<Leaf, { interval: Kind }>, given: unknown) {
  const named = given as { lowest?: unknown; highest?: unknown } | null
  // Spread, so that a hole is a missing end.
  const ends = Array.isArray(given) ? [...given] : typeof given === 'object' && named !== null ? [named.lowest, named.highest] : []
  if (ends.length !== 2) throw new Rejection(`must be the lowest and the highest, such as ${rangeOf(kind)}`)
  const [lowest, highest] = ends.map((end) => asQuantity(kind, end)) as [Quantity, Quantity]
  if (!(lowest.si < highest.si)) throw new Rejection(`must rise from ${lowest} to a higher value; the limits are upside down`)
  if (!(lowest.si >= bound(kind, min, Number.NEGATIVE_INFINITY) && highest.si <= bound(kind, max, Number.POSITIVE_INFINITY)))
    throw new Rejection(`must lie between ${min} and ${max}`)
  return { lowest, highest }
}

/** Slips of builders that the reader of quantities cannot know: each with what to write instead. */
const SLIPS: readonly (readonly [pattern: RegExp, hint: (text: string) => string])[] = [
  [/^[+-]?\d+,\d+/, (text) => `; write '${text.replace(',', '.')}' with a point`],
  [/°(?!C|F)/, (text) => `; write '${text.replace(/\s*°/, ' deg')}'`],
  [/\bKV\b/i, (text) => `; write '${text.replace(/\s*KV/i, ' rpm/V')}'`],
  [/\b(hours?|hrs?)\b/i, (text) => `; write '${text.replace(/hours?|hrs?/i, 'h')}'`],
]

function asQuantity(kind: Kind, given: unknown): Quantity {
  try {
    return quantity(kind, (isWritten(given) ? quantityFromJSON(given as never) : given) as In<Kind>)
  } catch (error) {
    const message = messageOf(error)
    const slip = typeof given === 'string' ? SLIPS.find(([pattern]) => pattern.test(given)) : undefined
    throw slip === undefined ? new Rejection(message) : new Rejection(`must be a quantity of ${kindWords(kind)}${slip[1](given as string)}`)
  }
}

const isWritten = (given: unknown): boolean =>
  typeof given === 'object' && given !== null && !(given instanceof Quantity) && 'value' in given && 'unit' in given && 'kind' in given

/** What is accepted, by an error of the library's readers. Other errors are thrown on. */
export function messageOf(error: unknown): string {
  if (error instanceof Rejection) return error.message
  if (error instanceof InputError)
    return error.issues.map(({ path, accepts }) => (path === 'given' ? accepts : `${path}: ${accepts}`)).join('; ')
  throw error
}

/** The value of a field; nothing where the field does not accept what was given. */
export function readable(field: Leaf, given: unknown): unknown {
  try {
    return readLeaf(field, given)
  } catch (error) {
    messageOf(error)
    return undefined
  }
}

function readBand(max: number, given: unknown): Band {
  const accepts = `must be [low, typical, high], rising, above 0 and at most ${max}`
  if (typeof given === 'number' && given > 0 && given <= max) {
    const round = (x: number) => Number(Math.min(x, max).toPrecision(2))
    throw new Rejection(
      `${accepts}: one number hides the scatter; write for example [${round(0.7 * given)}, ${given}, ${round(1.3 * given)}]`,
    )
  }
  const named = typeof given === 'object' && given !== null && Object.keys(given).length === 3 ? (given as Partial<Band>) : {}
  const [low, typical, high] = Array.isArray(given) ? given : [named.low, named.typical, named.high]
  const three = [low, typical, high].every((x) => typeof x === 'number') && !(Array.isArray(given) && given.length !== 3)
  if (!three || !(0 < low && low <= typical && typical <= high && high <= max)) throw new Rejection(accepts)
  return { low, typical, high }
}

function readWord(words: readonly string[], given: unknown, accepts: string): string {
  if (typeof given === 'string' && words.includes(given)) return given
  throw new Rejection(`${accepts}${meant(given, words)}`)
}

function readDesignation(table: Table, given: unknown): string {
  const known = TABLES[table].names()
  // YAML reads 8.8 as a number.
  const name = table === 'propertyClass' && typeof given === 'number' ? given.toFixed(1) : given
  if (typeof name === 'string' && known.includes(name)) return name
  const list = known.length <= 14 ? known.join(', ') : `${known.slice(0, 10).join(', ')}, … (${known.length})`
  throw new Rejection(`must be the designation of ${TABLES[table].what}: ${list}${meant(name, known)}`)
}

/** The hint that ends a message about a misspelt name. */
export function meant(given: unknown, names: Iterable<string>): string {
  if (typeof given !== 'string') return ''
  const near = nearNames(given, names, 1)[0]
  return near === undefined ? '' : `; did you mean ${near}?`
}
