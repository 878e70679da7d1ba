import { dimensionsText, hasSquareRoot } from './dimensions.js'
import { InputError, type Issue, show } from './errors.js'
import { KINDS, type Kind, type KindRow, siUnit, TABLE, type UnitOf } from './kinds.js'
import { nearName } from './near.js'

/** A remark that travels with a result into whatever is computed from it, such as a correlation used outside its range. */
export interface Note {
  /** The formula or function that made the remark. */
  readonly formula: string
  readonly text: string
}

/** A foreign unit object, such as a mathjs unit: anything that gives its number in a named unit. */
export interface Foreign {
  /** The number in a unit named as mathjs names it; throws when its dimensions are not the unit's. */
  toNumber(unit: string): number
  /** Keeps a `Quantity` of another kind from passing as foreign. */
  readonly kind?: never
}

/** Kinds that are plain numbers and may be given as such. */
export type Plain = 'ratio' | 'count' | 'strain'

/**
 * What a function takes for a quantity of kind `K`: a `Quantity`, text such as `'5 mm'` that the compiler checks, a pair such as
 * `[5, 'mm']`, a foreign unit object, or (ratios, counts and strains only) a plain number.
 */
export type In<K extends Kind> =
  | Quantity<K>
  | `${number} ${UnitOf<K>}`
  | readonly [number, UnitOf<K>]
  | Foreign
  | (K extends Plain ? number : never)

/** Plain data that `quantityFromJSON` turns back into a quantity. */
export interface QuantityJSON<K extends string = string> {
  readonly kind: K
  readonly value: number
  /** The SI unit of the kind. */
  readonly unit: string
}

type Difference<K> = K extends 'temperature' ? 'temperatureDifference' : K
type Addend<K extends Kind | 'derived'> = K extends 'temperature' ? Quantity<'temperatureDifference'> : Quantity<K>

/** A number in SI units with a kind. Made by unit functions (`mm(5)`), by `quantity('length', '5 mm')` and by every formula. */
export class Quantity<K extends Kind | 'derived' = Kind | 'derived'> {
  constructor(
    /** The value in the SI unit of its kind. */
    readonly si: number,
    /** The kind, or `derived` for a product that has not been named with `as`. */
    readonly kind: K,
    /** Packed dimensions. */
    readonly dim: number = (TABLE[kind] as KindRow).dim,
    /** Remarks inherited from what this was computed from. */
    readonly notes?: readonly Note[],
  ) {}

  /** The number in a unit of its kind. Throws an `InputError` for a unit of another kind. */
  in(unit: K extends Kind ? UnitOf<K> : never): number {
    const row = TABLE[this.kind]
    const factor = row === undefined ? undefined : factorOf(row, unit)
    if (typeof factor === 'number') return this.si / factor
    if (factor === undefined)
      throw new InputError('Quantity.in', [{ path: 'unit', given: show(unit), accepts: unitsAccepted(this.kind as Kind, unit) }])
    return (this.si - factor[1]) / factor[0]
  }

  /** The sum with a quantity of the same kind; a difference is added to a temperature. */
  plus(other: Addend<K>): Quantity<K> {
    const meets = (other.kind === this.kind && !isAbsolute(this.kind)) || (isAbsolute(this.kind) && other.kind === 'temperatureDifference')
    if (!meets || other.dim !== this.dim) throw this.unlike('plus', other, isAbsolute(this.kind) ? 'temperatureDifference' : this.kind)
    return new Quantity(this.si + other.si, this.kind, this.dim, joinNotes(this, other))
  }

  /** The difference of two quantities of one kind; two temperatures give a temperature difference, and a difference may be taken off a temperature. */
  minus(other: Quantity<'temperatureDifference'> & Addend<K>): Quantity<K>
  minus(other: Quantity<K>): Quantity<K extends Kind ? Difference<K> : K>
  minus(other: Quantity<Kind | 'derived'>): Quantity<Kind | 'derived'> {
    const shift = isAbsolute(this.kind) && other.kind === 'temperatureDifference'
    if ((other.kind !== this.kind && !shift) || other.dim !== this.dim) throw this.unlike('minus', other, this.kind)
    const kind = isAbsolute(this.kind) && !shift ? 'temperatureDifference' : this.kind
    return new Quantity(this.si - other.si, kind, this.dim, joinNotes(this, other))
  }

  /** The product with a number (same kind) or with a quantity (derived: name it with `as`). */
  times(other: number): Quantity<K>
  times(other: Quantity): Quantity<'derived'>
  times(other: number | Quantity): Quantity {
    if (typeof other === 'number') return new Quantity(this.si * this.scalable('times', other), this.kind, this.dim, this.notes)
    return new Quantity(this.si * other.si, 'derived', this.dim + other.dim, joinNotes(this, other))
  }

  /** The quotient by a number (same kind) or by a quantity (derived: name it with `as`). */
  over(other: number): Quantity<K>
  over(other: Quantity): Quantity<'derived'>
  over(other: number | Quantity): Quantity {
    if (typeof other === 'number') return new Quantity(this.si / this.scalable('over', other), this.kind, this.dim, this.notes)
    return new Quantity(this.si / other.si, 'derived', this.dim - other.dim, joinNotes(this, other))
  }

  /** The square root, a derived quantity. */
  sqrt(): Quantity<'derived'> {
    if (!hasSquareRoot(this.dim))
      throw new InputError('Quantity.sqrt', [
        { path: 'this', given: `in ${dimensionsText(this.dim)}`, accepts: 'its dimensions must have a square root' },
      ])
    return new Quantity(Math.sqrt(this.si), 'derived', this.dim / 2, this.notes)
  }

  /** The same value under another kind of equal dimensions. Throws an `InputError` when the dimensions differ. */
  as<J extends Kind>(kind: J): Quantity<J> {
    const row = Object.hasOwn(TABLE, kind) ? TABLE[kind] : undefined
    if (row === undefined) throw new InputError('Quantity.as', [{ path: 'kind', given: show(kind), accepts: kindAccepted(kind) }])
    if (row.dim !== this.dim) {
      throw new InputError('Quantity.as', [
        {
          path: 'this',
          given: `in ${dimensionsText(this.dim)}`,
          accepts: `only a quantity in ${dimensionsText(row.dim)} can be a ${kind}`,
        },
      ])
    }
    return new Quantity(this.si, kind, row.dim, this.notes)
  }

  /** Text in a sensible engineering unit with up to four significant digits, such as `12.5 N m`. */
  toString(): string {
    return printed(this.si, this.kind, this.dim)
  }

  /** Plain data in the SI unit; `quantityFromJSON` reads it back exactly. */
  toJSON(): QuantityJSON {
    return { kind: this.kind, value: this.si, unit: this.kind === 'derived' ? dimensionsText(this.dim) : siUnit(this.kind as Kind) }
  }

  /** Node's `util.inspect` and `console.log`. */
  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.toString()
  }

  /** What notebooks show. */
  [Symbol.for('Jupyter.display')](): { 'text/plain': string } {
    return { 'text/plain': this.toString() }
  }

  private unlike(operation: string, other: { kind: string }, wanted: string) {
    return new InputError(`Quantity.${operation}`, [{ path: 'other', given: show(other), accepts: `must be a ${wanted}` }])
  }

  private scalable(operation: string, factor: number): number {
    if (isAbsolute(this.kind)) {
      throw new InputError(`Quantity.${operation}`, [
        { path: 'this', given: show(this), accepts: 'an absolute temperature has no multiples; take a temperature difference' },
      ])
    }
    return factor
  }
}

/** The factor of a unit; names that every object inherits (`constructor`) are no units. */
const factorOf = (row: KindRow, unit: string) => {
  let factors = FACTORS.get(row)
  if (factors === undefined) {
    factors = new Map(Object.entries(row.units))
    FACTORS.set(row, factors)
  }
  return factors.get(unit)
}

/** Units by name, made for a kind when it is first read. */
const FACTORS = /* @__PURE__ */ new Map<KindRow, ReadonlyMap<string, number | readonly [number, number]>>()

const isAbsolute = (kind: string) => TABLE[kind]?.units.degC !== undefined

/** The notes of two operands, each once. */
export function joinNotes(
  a: { notes?: readonly Note[] | undefined },
  b: { notes?: readonly Note[] | undefined },
): readonly Note[] | undefined {
  if (a.notes === undefined) return b.notes
  if (b.notes === undefined || b.notes === a.notes) return a.notes
  const first = a.notes
  return [...first, ...b.notes.filter((note) => !first.includes(note))]
}

/** A number as results print it: up to `digits` significant digits, no trailing zeros, a power of ten only where it helps. */
export function significant(x: number, digits = 4): string {
  if (!Number.isFinite(x)) return String(x)
  const size = Math.abs(x)
  if (size !== 0 && (size < 1e-4 || size >= 1e7))
    return x
      .toExponential(digits - 1)
      .replace(/\.?0+e/, 'e')
      .replace('e+', 'e')
  return String(Number(x.toPrecision(digits)))
}

function printed(si: number, kind: string, dim: number): string {
  const row = TABLE[kind]
  if (row === undefined) return dim === 0 ? significant(si) : `${significant(si)} ${dimensionsText(dim)}`
  let unit = row.show[0] as string
  for (const larger of row.show) if (Math.abs(si) >= (row.units[larger] as number) * 0.9999) unit = larger
  if (si === 0) unit = row.show[row.show.length >> 1] as string
  const factor = row.units[unit] as number | readonly [number, number]
  const x = typeof factor === 'number' ? si / factor : (si - factor[1]) / factor[0]
  return unit === '1' ? significant(x) : `${significant(x)} ${unit}`
}

/** Numbers as text: digits with an optional sign, point and power of ten; nothing else (no blanks, no `Infinity`, no hexadecimal). */
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/
const LONGEST_TEXT = 80

/** A value that could not be read as a quantity; `read` throws it and callers turn it into an issue with a path. */
export class UnreadableQuantity extends Error {
  override name = 'UnreadableQuantity'
}

/** Powers of ten that a double holds exactly. */
const TENS = /* @__PURE__ */ Array.from({ length: 23 }, (_, n) => Number(`1e${n}`))
const LARGEST_EXACT = 2 ** 53 / 10 - 1

/**
 * The number that text begins with, up to `end`; NaN unless it is one by the grammar of `NUMBER`.
 *
 * Plain decimals are read digit by digit, since this is the hot path of every call with text: an exact whole number divided by an exact power of ten is
 * rounded once and so is the number that `Number` gives (Clinger 1990). Long ones and powers of ten go to `Number`.
 */
function numberOf(text: string, end: number): number {
  const first = text.charCodeAt(0)
  const start = first === 45 || first === 43 ? 1 : 0
  let whole = 0
  let point = -1
  let i = start
  for (; i < end && whole < LARGEST_EXACT; i++) {
    const c = text.charCodeAt(i)
    if (c >= 48 && c <= 57) whole = whole * 10 + (c - 48)
    else if (c === 46 && point < 0) point = i
    else break
  }
  const decimals = point < 0 ? 0 : end - point - 1
  const digits = end - start - (point < 0 ? 0 : 1)
  if (i === end && digits > 0 && decimals < TENS.length) {
    const size = decimals === 0 ? whole : whole / TENS[decimals]!
    return first === 45 ? -size : size
  }
  const number = text.slice(0, end)
  return NUMBER.test(number) ? Number(number) : Number.NaN
}

/**
 * Reads a quantity of the given kind and returns its SI number.
 * Throws `UnreadableQuantity`, whose message says what is accepted.
 */
export function read(kind: Kind, given: unknown): number {
  const row = TABLE[kind] as KindRow
  if (typeof given === 'string') {
    const blank = given.indexOf(' ')
    const factor = blank < 0 ? undefined : factorOf(row, given.slice(blank + 1))
    if (factor !== undefined && given.length <= LONGEST_TEXT) {
      const x = numberOf(given, blank)
      if (Number.isFinite(x)) return typeof factor === 'number' ? x * factor : x * factor[0] + factor[1]
    }
    throw unreadable(kind, given)
  }
  if (typeof given === 'number') {
    if (isPlain(kind)) return given
    throw unreadable(kind, given)
  }
  if (typeof given !== 'object' || given === null) throw unreadable(kind, given)
  if ((given as Quantity).kind !== undefined) {
    if ((given as Quantity).kind !== kind || typeof (given as Quantity).si !== 'number') throw unreadable(kind, given)
    return (given as Quantity).si
  }
  if (Array.isArray(given)) {
    const [x, unit] = given as unknown[]
    const factor = typeof unit === 'string' ? factorOf(row, unit) : undefined
    if (given.length !== 2 || typeof x !== 'number' || factor === undefined) throw unreadable(kind, given)
    return typeof factor === 'number' ? x * factor : x * factor[0] + factor[1]
  }
  if (typeof (given as Foreign).toNumber === 'function') return readForeign(kind, given as Foreign)
  throw unreadable(kind, given)
}

const isPlain = (kind: Kind): kind is Plain => kind === 'ratio' || kind === 'count' || kind === 'strain'

/** The SI unit as unit libraries read it: many take a leading `1/` for a value. */
export const foreignUnit = (kind: Kind): string => siUnit(kind).replace(/^1\/(\w+)$/, '$1^-1')

function readForeign(kind: Kind, given: Foreign): number {
  // A foreign '30 degC' would silently read as 303.15 K of difference.
  if (kind === 'temperatureDifference') {
    throw new UnreadableQuantity(
      "must be a temperature difference such as '30 K'; foreign unit objects cannot tell a difference from a temperature",
    )
  }
  let x: unknown
  try {
    x = isPlain(kind) || siUnit(kind) === '1' ? Number(given) : given.toNumber(foreignUnit(kind))
  } catch {
    throw unreadable(kind, given)
  }
  if (typeof x !== 'number') throw unreadable(kind, given)
  return x
}

const article = (word: string) => (/^[aeiou]/.test(word) ? 'an' : 'a')

/** A kind's name as words, such as `torsional stiffness`. */
export const kindWords = (kind: string) => kind.replaceAll(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase()

const example = (kind: Kind) => {
  const unit = (KINDS[kind] as KindRow).show.at(-1) as string
  return isPlain(kind) ? '0.2' : `'5 ${unit}'`
}

const unitsAccepted = (kind: Kind, unit?: string): string => {
  const names = Object.keys((KINDS[kind] as KindRow).units)
  const near = unit === undefined ? undefined : nearName(unit, names)
  return `units of ${kindWords(kind)} are ${names.join(', ')}${near === undefined ? '' : `; did you mean ${near}?`}`
}

const kindAccepted = (kind: string): string => {
  const near = nearName(kind, Object.keys(KINDS))
  return `must be a kind of quantity${near === undefined ? '' : `; did you mean ${near}?`}`
}

function unreadable(kind: Kind, given: unknown): UnreadableQuantity {
  const wanted = `must be ${article(kindWords(kind))} ${kindWords(kind)} such as ${example(kind)}`
  if (typeof given === 'string') return new UnreadableQuantity(`${wanted}${textHint(kind, given)}`)
  if (typeof given === 'number') return new UnreadableQuantity(`${wanted}: a bare number has no unit`)
  return new UnreadableQuantity(`${wanted} (${unitsAccepted(kind)})`)
}

function textHint(kind: Kind, given: string): string {
  if (given.length > LONGEST_TEXT) return `: text of ${given.length} characters is too long`
  if (given.trim() === '') return ': the text is empty'
  const parts = /^\s*([^\sa-zA-Z°µ%]*(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/.exec(given)
  const number = parts?.[1] ?? ''
  const unit = parts?.[2] ?? ''
  if (Object.hasOwn((KINDS[kind] as KindRow).units, unit)) {
    if (NUMBER.test(number)) return Number.isFinite(+number) ? `: write '${number} ${unit}' with one blank` : ': the number is too large'
    return `: '${number}' is not a finite number`
  }
  if (unit === '') return ` (${unitsAccepted(kind)})`
  const others = (Object.keys(KINDS) as Kind[]).filter((other) => Object.hasOwn(KINDS[other].units, unit))
  const isOther = others.length > 0 ? `: ${unit} is a unit of ${kindWords(others[0] as string)}` : `: '${unit}' is not a unit here`
  return `${isOther}; ${unitsAccepted(kind, unit)}`
}

/**
 * Makes a quantity from anything `In<K>` accepts.
 * Throws an `InputError` naming the given value and the units accepted; a non-finite number is refused.
 */
export function quantity<K extends Kind>(kind: K, given: In<NoInfer<K>>): Quantity<K> {
  const issues: Issue[] = []
  let x = Number.NaN
  if (!Object.hasOwn(TABLE, kind)) issues.push({ path: 'kind', given: show(kind), accepts: kindAccepted(kind) })
  else {
    try {
      x = read(kind, given)
      if (!Number.isFinite(x)) issues.push({ path: 'given', given: show(given), accepts: 'must be finite' })
    } catch (error) {
      if (!(error instanceof UnreadableQuantity)) throw error
      issues.push({ path: 'given', given: show(given), accepts: error.message })
    }
  }
  if (issues.length > 0) throw new InputError('quantity', issues)
  return new Quantity(x, kind, undefined, (given as { notes?: readonly Note[] })?.notes)
}

/** Reads what `toJSON` wrote. Throws an `InputError` when the data is not a quantity of the table. */
export function quantityFromJSON(data: unknown): Quantity<Kind> {
  const { kind, value, unit } = (data ?? {}) as Partial<QuantityJSON>
  const known = typeof kind === 'string' && Object.hasOwn(KINDS, kind)
  if (!known || typeof value !== 'number' || !Number.isFinite(value) || unit !== siUnit(kind as Kind)) {
    throw new InputError('quantityFromJSON', [
      {
        path: 'data',
        given: show(data),
        accepts: "must be { kind, value, unit } with a finite value in the kind's SI unit, as toJSON writes it",
      },
    ])
  }
  return new Quantity(value, kind as Kind)
}
