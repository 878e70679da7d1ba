import { type In, type Kind, quantity, unitNames } from '../../units/index.js'
import type { Field } from './field.js'

/** A field of one quantity with its limits. */
export type Scalar = Extract<Field, { kind: Kind }>

/** A limit in SI units. */
export const bound = (kind: Kind, limit: unknown, unset: number): number =>
  limit === undefined ? unset : limit === 0 ? 0 : quantity(kind, limit as In<Kind>).si

/** Whether a value lies within the limits of its field. */
export const isWithin = ({ kind, min, max, above, below }: Scalar, x: number): boolean =>
  x >= bound(kind, min, Number.NEGATIVE_INFINITY) &&
  x <= bound(kind, max, Number.POSITIVE_INFINITY) &&
  x > bound(kind, above, Number.NEGATIVE_INFINITY) &&
  x < bound(kind, below, Number.POSITIVE_INFINITY)

const THOUSAND = 1000
/** A number this many times beyond its limits is a slip of its unit rather than of its digits. */
const FAR = 10

/** Units that are a thousand times another are mistaken for each other: names the one that brings a number far beyond its limits within them. */
export function unitSlip(field: Scalar, given: unknown): string {
  const [, number, unit] = typeof given === 'string' ? (/^\s*([-+]?[\d.]+(?:e[-+]?\d+)?)\s*(\S.*?)\s*$/i.exec(given) ?? []) : []
  if (number === undefined || unit === undefined) return ''
  const { kind, min, max, above, below } = field
  const x = quantity(kind, given as In<Kind>).si
  const highest = Math.min(bound(kind, max, Number.POSITIVE_INFINITY), bound(kind, below, Number.POSITIVE_INFINITY))
  const lowest = Math.max(bound(kind, min, 0), bound(kind, above, 0))
  if (!(x > FAR * highest || (x > 0 && x < lowest / FAR))) return ''
  const si = (x: string, name: string) => quantity(kind, `${x} ${name}` as In<Kind>).si
  const size = (name: string) => si('1', name) - si('0', name)
  const meantUnit = unitNames(kind).find((name) => {
    const times = size(name) / size(unit)
    const thousand = Math.abs(times / THOUSAND - 1) < 1e-9 || Math.abs(times * THOUSAND - 1) < 1e-9
    return thousand && isWithin(field, si(number, name))
  })
  return meantUnit === undefined ? '' : `; did you mean ${meantUnit}?`
}
