import { cut, type Issue, issue } from './errors.js'
import { type Kind, type KindRow, kindNames, kindRow, siUnit, unitNames, unitOf } from './kinds.js'
import { nearName } from './near.js'
import type { Unit } from './unit-size.js'

/** A foreign unit object, such as a mathjs unit: anything that gives its number in a named unit. */
export interface Foreign {
  /** The number in a unit named as mathjs names it; throws when its dimensions are not the unit's. */
  toNumber(unit: string): number
  /** Keeps a `Quantity` of another kind from passing as foreign. */
  readonly kind?: never
}

/** Kinds that are plain numbers and may be given as such. */
export type Plain = 'ratio' | 'count' | 'strain'

/** Numbers as text: digits with an optional sign, point and power of ten; nothing else (no blanks, no `Infinity`, no hexadecimal). */
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/
const MAX_TEXT_LENGTH = 80

/** The SI number of text: a number by the grammar of `NUMBER`, one blank and a unit of the row. NaN for any other text. */
export function readText(row: KindRow, text: string): number {
  if (text.length > MAX_TEXT_LENGTH) return Number.NaN
  const blank = text.indexOf(' ')
  const number = text.slice(0, blank)
  if (blank < 0 || !NUMBER.test(number)) return Number.NaN
  const unit = unitOf(row, text.slice(blank + 1))
  return unit === undefined ? Number.NaN : inSi(Number(number), unit)
}

const inSi = (x: number, { size, zero }: Unit) => (zero === 0 ? x * size : x * size + zero)

/** The SI number of anything that `In` accepts; NaN where it is not accepted, as a temperature below absolute zero is not. */
export function readAny(row: KindRow, given: unknown): number {
  const x = typeof given === 'string' ? readText(row, given) : readValue(row, given)
  return x >= row.lowest ? x : Number.NaN
}

function readValue(row: KindRow, given: unknown): number {
  if (typeof given === 'number') return isPlain(row.kind) ? given : Number.NaN
  if (typeof given !== 'object' || given === null) return Number.NaN
  const { kind, si } = given as { kind?: unknown; si?: unknown }
  if (kind !== undefined) {
    if (kind !== row.kind) return Number.NaN
    return typeof si === 'number' ? si : readJSON(row, given)
  }
  if (Array.isArray(given)) {
    const unit = unitOf(row, given[1])
    return given.length === 2 && typeof given[0] === 'number' && unit !== undefined ? inSi(given[0], unit) : Number.NaN
  }
  return isForeign(given) ? readForeign(row.kind, given) : Number.NaN
}

/** A quantity as `toJSON` writes it; any unit of the kind is read. */
function readJSON(row: KindRow, given: object): number {
  const { value, unit } = given as { value?: unknown; unit?: unknown }
  const found = unitOf(row, unit)
  return typeof value === 'number' && found !== undefined ? inSi(value, found) : Number.NaN
}

const isForeign = (given: object): given is Foreign => typeof (given as Partial<Foreign>).toNumber === 'function'

const isPlain = (kind: Kind): kind is Plain => kind === 'ratio' || kind === 'count' || kind === 'strain'

/** The SI unit as unit libraries read it: many take a leading `1/` for a value. */
export const foreignUnit = (kind: Kind): string => siUnit(kind).replace(/^1\/(\w+)$/, '$1^-1')

function readForeign(kind: Kind, given: Foreign): number {
  // A foreign '30 degC' would silently read as 303.15 K of difference.
  if (kind === 'temperatureDifference') return Number.NaN
  try {
    const x: unknown = siUnit(kind) === '1' ? Number(given) : given.toNumber(foreignUnit(kind))
    return typeof x === 'number' ? x : Number.NaN
  } catch {
    return Number.NaN
  }
}

/**
 * Reads a quantity of the given kind and returns its SI number; where it cannot be read or is not finite, adds an issue that lists what
 * is accepted and returns NaN.
 */
export function readAt(path: string, kind: Kind, given: unknown, issues: Issue[]): number {
  const row = kindRow(kind)
  const x = readAny(row, given)
  if (Number.isFinite(x)) return x
  issues.push(issue(path, given, accepted(kind, given)))
  return Number.NaN
}

/** A kind's name as words, such as `torsional stiffness`. */
export const kindWords = (kind: string) => kind.replaceAll(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase()

/** Units as they are often written, with the names that they have here. */
const WRITTEN: Readonly<Record<string, string>> = {
  C: 'degC',
  F: 'degF',
  Ω: 'ohm',
  mΩ: 'mohm',
  kΩ: 'kohm',
  '°': 'deg',
  '"': 'in',
  inch: 'in',
  inches: 'in',
  feet: 'ft',
  yr: 'year',
}

/** The units of a kind in words; where another one was given, what that is, or which one was probably meant. */
export function unitsAccepted(kind: Kind, given = ''): string {
  const names = unitNames(kind)
  const units = `units of ${kindWords(kind)} are ${names.join(', ')}`
  if (given === '') return units
  const meant = WRITTEN[given] ?? given.replace(/^[\u00b5\u03bc]/, 'u')
  if (meant !== given && names.includes(meant)) return `${units}; did you mean ${meant}?`
  const other = kindNames().find((name) => unitNames(name).includes(given))
  return other === undefined
    ? `'${cut(given)}' is not a unit here; ${units}${didYouMean(given, names)}`
    : `${given} is a unit of ${kindWords(other)}; ${units}`
}

/** A question that ends a message, where a name near the given one exists. */
export function didYouMean(given: string, names: Iterable<string>, before = '; '): string {
  const near = nearName(given, names)
  return near === undefined ? '' : `${before}did you mean ${near}?`
}

/** Longer lists are cut: nobody reads them. */
const MAX_NAMES = 40
const NAMES_SHOWN = 12

/** What is accepted where one of some names is: the list, or its beginning, and the near name. */
export function oneOfNames(names: readonly string[], given: unknown): string {
  const list = names.length <= MAX_NAMES ? names.join(', ') : `${names.slice(0, NAMES_SHOWN).join(', ')}, … (${names.length} in all)`
  return `must be one of ${list}${typeof given === 'string' ? didYouMean(given, names) : ''}`
}

/** What is accepted where a kind of quantity is. */
export const kindAccepted = (kind: unknown): string =>
  `must be a kind of quantity${typeof kind === 'string' ? didYouMean(kind, kindNames()) : ''}`

const PLAIN_EXAMPLE: { readonly [K in Plain]: string } = { ratio: '0.2', count: '3', strain: '0.002' }

/** An example of a quantity as it is written, in a unit of middle size. */
export function exampleOf(kind: Kind): string {
  const { show } = kindRow(kind)
  return isPlain(kind) ? PLAIN_EXAMPLE[kind] : `'5 ${show[Math.floor(show.length / 2)]}'`
}

/** What is accepted in the place of a value that could not be read. */
export function accepted(kind: Kind, given: unknown): string {
  const words = kindWords(kind)
  const kindNeeded = `must be ${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words} such as ${exampleOf(kind)}`
  if (kindRow(kind).lowest === 0 && isBelowZero(kind, given)) return 'must not be below absolute zero'
  if (typeof given === 'string') return kindNeeded + textHint(kind, given)
  if (typeof given === 'number') return isPlain(kind) ? 'must be finite' : `${kindNeeded}: a bare number has no unit`
  if (typeof given === 'object' && given !== null) {
    if (hasNumber(kind, given)) return 'must be finite'
    if (kind === 'temperatureDifference' && isForeign(given))
      return `${kindNeeded}; foreign unit objects cannot tell a difference from a temperature`
  }
  return isPlain(kind) ? kindNeeded : `${kindNeeded} (${unitsAccepted(kind)})`
}

/** Whether a quantity of this kind, its JSON form or a pair of number and unit holds a number. */
function hasNumber(kind: Kind, given: object): boolean {
  if (Array.isArray(given)) return given.length === 2 && typeof given[0] === 'number' && unitNames(kind).includes(given[1])
  const { kind: own, si, value, unit } = given as { kind?: unknown; si?: unknown; value?: unknown; unit?: unknown }
  return own === kind && (typeof si === 'number' || (typeof value === 'number' && unitNames(kind).includes(unit as string)))
}

const isBelowZero = (kind: Kind, given: unknown): boolean => {
  const x = readAny({ ...kindRow(kind), lowest: Number.NEGATIVE_INFINITY }, given)
  return x < 0 && x !== Number.NEGATIVE_INFINITY
}

/** What a number from a text processor may hold, and what to write. */
const WRONG_SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[\u2012-\u2015\u2212]/, ": the minus is '-'"],
  [/,/, ': no comma, a decimal point'],
]

function textHint(kind: Kind, given: string): string {
  if (given.length > MAX_TEXT_LENGTH) return `: text of ${given.length} characters is too long`
  if (given.trim() === '') return ': the text is empty'
  const [, number = '', unit = ''] = /^\s*([^\sa-zA-Z°µ%]*(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/.exec(given) ?? []
  if (unitNames(kind).includes(unit)) {
    if (NUMBER.test(number)) return Number.isFinite(+number) ? `: write '${number} ${unit}' with one blank` : ': the number is too large'
    return `: '${number}' is not a finite number${WRONG_SIGNS.find(([sign]) => sign.test(number))?.[1] ?? ''}`
  }
  if (unit === '') return isPlain(kind) ? '' : `: '${given.trim()}' has no unit; ${unitsAccepted(kind)}`
  return `: ${unitsAccepted(kind, unit)}`
}
