import { type In, type Kind, Quantity, quantity, unitNames } from '../../units/index.js'
import type { FieldEstimate } from './found.js'

/** Rounding moves a value by at most this share of its standard error, which widens its interval by a thousandth. */
const SHARE = 0.05
/** Half of an interval of 95 % over its standard error. */
const HALF = 1.96

/** Decimal places that an error leaves; negative for tens and hundreds. */
const placesFor = (error: number): number => -Math.floor(Math.log10(2 * SHARE * error))

const atPlaces = (x: number, places: number, round: (x: number) => number): number => {
  const scale = 10 ** Math.abs(places)
  return places >= 0 ? round(x * scale) / scale : round(x / scale) * scale
}

const errorOf = ([low, high]: readonly [number, number]): number => (high - low) / 2 / HALF

/** A quantity with the digits that its interval justifies, in the unit that it prints in. */
export function roundedQuantity<K extends Kind>(value: number, interval: readonly [number, number], kind: K): Quantity<K> {
  const exact = new Quantity(value, kind)
  const error = errorOf(interval)
  const unit = exact.toString().split(' ').slice(1).join(' ')
  if (!(error > 0) || !(unitNames(kind) as readonly string[]).includes(unit)) return exact
  const inUnit = (x: number) => (new Quantity(x, kind).in as (unit: string) => number).call(new Quantity(x, kind), unit)
  const places = placesFor(Math.abs(inUnit(value + error) - inUnit(value)))
  return quantity(kind, [atPlaces(inUnit(value), places, Math.round), unit] as unknown as In<K>) as Quantity<K>
}

/** Low, typical and high value with the digits that the interval justifies; the band is rounded outwards, so that it holds what it held. */
export function roundedBand({ value, interval, spread }: FieldEstimate): [number, number, number] {
  const [low, high] = [Math.min(spread[0], value), Math.max(spread[1], value)]
  const error = interval === undefined ? 0 : errorOf(interval)
  if (!(error > 0)) return [low, value, high]
  const places = placesFor(error)
  const least = atPlaces(low, places, Math.floor)
  return [least > 0 ? least : low, atPlaces(value, places, Math.round), atPlaces(high, places, Math.ceil)]
}

/** A scatter of two digits, rounded up. */
export const roundedScatter = (x: number): number => atPlaces(x, 1 - Math.floor(Math.log10(x)), Math.ceil)
