import { type Kind, Quantity } from '../../units/index.js'

/**
 * A value of a described leg as a document writes it: a quantity as text with its unit, twelve digits kept, a band as the list of its three
 * values, sections and lists item by item.
 */
export function documentValue(value: unknown): unknown {
  if (value instanceof Quantity || isQuantityData(value)) return quantityText(value as Quantity)
  if (Array.isArray(value)) return value.map(documentValue)
  if (typeof value !== 'object' || value === null) return value
  const { low, typical, high } = value as { low?: unknown; typical?: unknown; high?: unknown }
  if (low !== undefined && typical !== undefined && high !== undefined && !('source' in value))
    return [low, typical, high].map(documentValue)
  // An interval, which a document writes as a list.
  if (Object.keys(value).join() === 'lowest,highest') return Object.values(value).map(documentValue)
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, documentValue(item)]))
}

/** A quantity that came from another copy of the library. */
const isQuantityData = (value: unknown): boolean =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as Quantity).si === 'number' &&
  typeof (value as Quantity).toJSON === 'function'

/** In the unit that the quantity prints in. Twelve digits drop the noise of conversion. */
function quantityText({ si, kind }: Quantity): number | string {
  const plain = new Quantity(si, kind as Kind)
  const printed = plain.toString().split(' ').slice(1).join(' ')
  if (printed === '') return si
  const inUnit = (plain.in as (unit: string) => number).call(plain, printed)
  return `${Number(inUnit.toPrecision(12))} ${printed}`
}
