import { dimensionsText, hasSquareRoot } from './dimensions.js'
import { InputError, refuse, show } from './errors.js'
import { type Kind, type KindRow, kindRow, siUnit, type UnitOf, unitOf } from './kinds.js'
import { joinNotes, type Note } from './notes.js'
import { inShown, significant } from './printed.js'
import { type Foreign, kindAccepted, type Plain, unitsAccepted } from './reading.js'

/**
 * What a function takes for a quantity of kind `K`: a `Quantity` or its JSON form, text such as `'5 mm'` that the compiler checks, a pair
 * such as `[5, 'mm']`, a foreign unit object, or (ratios, counts and strains only) a plain number.
 */
export type In<K extends Kind> =
  | Quantity<K>
  | `${number} ${UnitOf<K>}`
  | readonly [number, UnitOf<K>]
  | QuantityJSON<K>
  | Foreign
  | (K extends Plain ? number : never)

/** Plain data that `quantityFromJSON` turns back into a quantity. */
export interface QuantityJSON<K extends string = string> {
  /** Kind of the quantity, such as `force`. */
  readonly kind: K
  /** Value in the SI unit. */
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
    readonly dim: number = kindRow(kind as Kind).dim,
    /** Remarks inherited from what this was computed from. */
    readonly notes?: readonly Note[],
  ) {}

  /** The number in a unit of its kind. Throws an `InputError` for a unit of another kind. */
  in(unit: K extends Kind ? UnitOf<K> : never): number {
    const row = kindRow(this.kind)
    const found = row && unitOf(row, unit)
    if (found !== undefined) return (this.si - found.zero) / found.size
    const accepts = row === undefined ? 'a derived quantity has no units; name its kind with `as`' : unitsAccepted(row.kind, String(unit))
    throw unitError('in', 'unit', show(unit), accepts)
  }

  /** The sum with a quantity of the same kind; a difference is added to a temperature. */
  plus(other: Addend<K>): Quantity<K> {
    const wanted = isAbsolute(this.kind) ? 'temperatureDifference' : this.kind
    if (other.kind !== wanted || other.dim !== this.dim) throw unlike('plus', other, wanted)
    return new Quantity(this.si + other.si, this.kind, this.dim, joinNotes(this, other))
  }

  /** The difference of two quantities of one kind; two temperatures give a temperature difference, and a difference may be taken off a temperature. */
  minus(other: Quantity<'temperatureDifference'> & Addend<K>): Quantity<K>
  minus(other: Quantity<K>): Quantity<K extends Kind ? Difference<K> : K>
  minus(other: Quantity<Kind | 'derived'>): Quantity<Kind | 'derived'> {
    const absolute = isAbsolute(this.kind)
    const shift = absolute && other.kind === 'temperatureDifference'
    if ((other.kind !== this.kind && !shift) || other.dim !== this.dim) throw unlike('minus', other, this.kind)
    return new Quantity(this.si - other.si, absolute && !shift ? 'temperatureDifference' : this.kind, this.dim, joinNotes(this, other))
  }

  /** The product with a number (same kind) or with a quantity (derived: name it with `as`). */
  times(other: number): Quantity<K>
  times(other: Quantity): Quantity<'derived'>
  times(other: number | Quantity): Quantity {
    if (typeof other === 'number') return scaled('times', this, this.si * other)
    return new Quantity(this.si * other.si, 'derived', this.dim + other.dim, joinNotes(this, other))
  }

  /** The quotient by a number (same kind) or by a quantity (derived: name it with `as`). */
  over(other: number): Quantity<K>
  over(other: Quantity): Quantity<'derived'>
  over(other: number | Quantity): Quantity {
    if (typeof other === 'number') return scaled('over', this, this.si / other)
    return new Quantity(this.si / other.si, 'derived', this.dim - other.dim, joinNotes(this, other))
  }

  /** The square root, a derived quantity. */
  sqrt(): Quantity<'derived'> {
    if (!hasSquareRoot(this.dim))
      throw unitError('sqrt', 'this', `in ${dimensionsText(this.dim)}`, 'its dimensions must have a square root')
    return new Quantity(Math.sqrt(this.si), 'derived', this.dim / 2, this.notes)
  }

  /** The same value under another kind of equal dimensions. Throws an `InputError` when the dimensions differ. */
  as<J extends Kind>(kind: J): Quantity<J> {
    const row = kindRow(kind)
    if (row === undefined) throw unitError('as', 'kind', show(kind), kindAccepted(kind))
    if (row.dim !== this.dim)
      throw unitError('as', 'this', `in ${dimensionsText(this.dim)}`, `only a quantity in ${dimensionsText(row.dim)} can be a ${kind}`)
    return new Quantity(this.si, kind, row.dim, this.notes)
  }

  /** Whether this is greater than another quantity of the same kind. Throws an `InputError` for another kind. */
  isGreaterThan(other: Quantity<NoInfer<K>>): boolean {
    return this.si > comparable('isGreaterThan', this, other)
  }

  /** Whether this is less than another quantity of the same kind. Throws an `InputError` for another kind. */
  isLessThan(other: Quantity<NoInfer<K>>): boolean {
    return this.si < comparable('isLessThan', this, other)
  }

  /**
   * What templates and operators take. Templates and joined text get `toString()`. A comparison (`a > b`, `Math.max`) or an arithmetic sign
   * gets the number where there is no unit to lose, and otherwise an `InputError`: JavaScript shows neither operand the kind of the other.
   */
  [Symbol.toPrimitive](hint: string): number | string {
    const isNumber = this.kind === 'ratio' || this.kind === 'count' || (this.kind === 'derived' && this.dim === 0)
    if (hint !== 'string' && isNumber) return this.si
    if (hint !== 'number') return this.toString()
    if (this.kind === 'strain') return this.si
    return refuse('Quantity', 'an operand', this, OPERATORS)
  }

  /** Text in a sensible engineering unit with up to four significant digits, such as `12.5 N m`. */
  toString(): string {
    return printed(this.si, kindRow(this.kind), this.dim)
  }

  /** Plain data in the SI unit; `quantityFromJSON` reads it back exactly. */
  toJSON(): QuantityJSON {
    return { kind: this.kind, value: this.si, unit: this.kind === 'derived' ? dimensionsText(this.dim) : siUnit(this.kind as Kind) }
  }

  /** Node's `util.inspect` and `console.log`. */
  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.toString()
  }

  /** The text that notebooks show. */
  [Symbol.for('Jupyter.display')](): { 'text/plain': string } {
    return { 'text/plain': this.toString() }
  }
}

const OPERATORS =
  'operators drop units; compare with isGreaterThan, isLessThan, ascending, largest or smallest, calculate with plus, minus, times or over'

/** The SI number of a quantity that may be compared with another: both of one kind and numbers. */
function comparable(method: string, one: Quantity, other: Quantity): number {
  if (other?.kind !== one.kind || other.dim !== one.dim) throw unlike(method, other, one.kind)
  for (const each of [one, other]) if (Number.isNaN(each.si)) throw unitError(method, 'a quantity', 'NaN', 'must be a number')
  return other.si
}

/** Order of two quantities of one kind, for `sort`: `list.sort(ascending)`. Throws an `InputError` for unlike kinds. */
export function ascending<K extends Kind | 'derived'>(one: Quantity<K>, other: Quantity<NoInfer<K>>): number {
  const si = comparable('ascending', one, other)
  return one.si < si ? -1 : one.si > si ? 1 : 0
}

/** The largest of some quantities of one kind. Throws an `InputError` for unlike kinds. */
export const largest = <K extends Kind | 'derived'>(first: Quantity<K>, ...others: readonly Quantity<NoInfer<K>>[]): Quantity<K> =>
  others.reduce((best: Quantity<K>, other) => (ascending(best, other) < 0 ? other : best), first)

/** The smallest of some quantities of one kind. Throws an `InputError` for unlike kinds. */
export const smallest = <K extends Kind | 'derived'>(first: Quantity<K>, ...others: readonly Quantity<NoInfer<K>>[]): Quantity<K> =>
  others.reduce((best: Quantity<K>, other) => (ascending(best, other) > 0 ? other : best), first)

const unitError = (method: string, path: string, given: string, accepts: string) =>
  new InputError(`Quantity.${method}`, [{ path, given, accepts }])

const unlike = (method: string, other: { kind: string }, wanted: string) => unitError(method, 'other', show(other), `must be a ${wanted}`)

function scaled<K extends Kind | 'derived'>(method: string, from: Quantity<K>, si: number): Quantity<K> {
  if (isAbsolute(from.kind))
    throw unitError(method, 'this', show(from), 'an absolute temperature has no multiples; take a temperature difference')
  return new Quantity(si, from.kind, from.dim, from.notes)
}

/** Whether a kind is an absolute temperature, not a difference. */
const isAbsolute = (kind: string): boolean => kindRow(kind)?.lowest === 0

function printed(si: number, row: KindRow | undefined, dim: number): string {
  if (row === undefined) return dim === 0 ? significant(si) : `${significant(si)} ${dimensionsText(dim)}`
  const { number, name } = inShown(si, si, row)
  return name === '1' ? number : `${number} ${name}`
}
