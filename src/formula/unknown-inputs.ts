import { didYouMean, type Issue, issue, nearName, Quantity } from '../units/index.js'
import { isProperty } from './provenance.js'

type UnknownInputCheck = (record: Record<string, unknown>, names: readonly string[], path: string, issues: Issue[]) => void

/** Adds an issue for every field that is not an input, with the input that was probably meant. */
export const rejectUnknown: UnknownInputCheck = (record, names, path, issues) => {
  for (const name in record) {
    if (names.includes(name)) continue
    const missing = names.filter((other) => record[other] === undefined)
    const accepts = `is not an input${didYouMean(name, missing, ', ')}; inputs are ${names.join(', ')}`
    // `show` calls an absent value missing; a surplus name is there, whatever its value.
    const surplus = issue(path ? `${path}.${name}` : name, record[name], accepts)
    issues.push(record[name] === undefined ? { ...surplus, given: 'undefined' } : surplus)
  }
}

/** Slips in a name that is still taken for a misspelt one; a material's other properties are further away. */
const MAX_SLIPS = 3

/** What results and table entries hold: quantities, also in their JSON form, and the notes of a result. */
function isCarried(name: string, value: unknown): boolean {
  if (value instanceof Quantity) return true
  if (typeof value !== 'object' || value === null) return false
  if (name === 'notes') return Array.isArray(value)
  const { kind, value: number, unit } = value as { kind?: unknown; value?: unknown; unit?: unknown }
  return typeof kind === 'string' && typeof number === 'number' && typeof unit === 'string'
}

/**
 * Adds an issue for every field that is not an input, except what tables and materials carry besides: values that know their kind. Those
 * may be misspelt as well, so that a name near an absent optional input is an issue all the same.
 */
export function rejectStray(names: readonly string[], optional: readonly string[]): UnknownInputCheck {
  const known = new Set(names)
  return (record, _, path, issues) => {
    let absent: string[] | undefined
    let isMaterial: boolean | undefined
    for (const name in record) {
      if (known.has(name)) continue
      absent ??= optional.filter((other) => record[other] === undefined)
      const meant = absent.length === 0 ? undefined : nearName(name, absent, MAX_SLIPS)
      if (meant === undefined) {
        if (isCarried(name, record[name])) continue
        isMaterial ??= Object.values(record).some(isProperty)
        if (isMaterial) continue
      }
      const words = meant === undefined ? `; inputs are ${names.join(', ')}` : `, did you mean ${meant}?`
      const surplus = issue(path ? `${path}.${name}` : name, record[name], `is not an input${words}`)
      issues.push(record[name] === undefined ? { ...surplus, given: 'undefined' } : surplus)
    }
  }
}
