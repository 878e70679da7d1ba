import { type Kind, kindRow, kindWords, type Note, Quantity } from '../units/index.js'
import type { Output, OutputField, OutputRecord } from './definition.js'

/** A strict call outside a formula's validity range. */
export class ValidityError extends Error {
  override get name() {
    return 'ValidityError'
  }
}

/** The inputs are each acceptable but the formula has no finite answer for them together. */
export class NoResultError extends Error {
  override get name() {
    return 'NoResultError'
  }
}

const isSingle = (output: Output): output is Kind | { kind: Kind; infinite: true } =>
  typeof output === 'string' ||
  (typeof (output as { kind?: unknown }).kind === 'string' && (output as { infinite?: unknown }).infinite === true)

/** Makes SI results into quantities with their notes. */
export type ToQuantities = (y: unknown, notes: readonly Note[] | undefined) => unknown

/** What makes the results of a formula into quantities. */
export function toQuantities(id: string, output: Output): ToQuantities {
  if (isSingle(output)) return toQuantity(id, 'the result', output)
  const fields = Object.entries(output as OutputRecord).map(([name, field]) => [name, toQuantity(id, name, field)] as const)
  return (y, notes) => {
    const result: Record<string, unknown> = {}
    for (const [name, toField] of fields) result[name] = toField((y as Record<string, unknown>)[name], notes)
    return result
  }
}

function toQuantity(id: string, name: string, field: OutputField): ToQuantities {
  if (typeof field !== 'string' && 'oneOf' in field) return (y) => y
  if (typeof field !== 'string' && 'list' in field) {
    const item = toQuantity(id, name, field.list)
    return (y, notes) => Array.from(y as ArrayLike<number>, (x) => item(x, notes))
  }
  const kind = typeof field === 'string' ? field : field.kind
  const { dim } = kindRow(kind)
  const mayBeInfinite = typeof field !== 'string'
  const lowest = NEVER_NEGATIVE.includes(kind) ? 0 : kindRow(kind).lowest
  return (y, notes) => {
    if (!Number.isFinite(y) && !(mayBeInfinite && y === Number.POSITIVE_INFINITY))
      throw new NoResultError(`${id}: ${name} is ${y}: no answer exists for these inputs together`)
    const quantity = new Quantity(y as number, kind, dim, notes)
    if ((y as number) < lowest)
      throw new NoResultError(`${id}: ${name} is ${quantity} for these inputs; there is no such ${kindWords(kind)}`)
    return quantity
  }
}

/** Kinds without a sign: a negative one means that the inputs describe no real part. */
const NEVER_NEGATIVE: readonly Kind[] = [
  'area',
  'volume',
  'secondMomentOfArea',
  'sectionModulus',
  'mass',
  'massPerLength',
  'density',
  'momentOfInertia',
  'modulus',
  'axialRigidity',
  'bendingRigidity',
  'thermalConductivity',
  'specificHeat',
  'heatCapacity',
]
