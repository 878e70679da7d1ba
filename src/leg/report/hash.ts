import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'

/**
 * SHA-256 of a specification as hexadecimal text: of its JSON with sorted names, every quantity as its SI number and unit, values that were filled in
 * included. Two legs with the same fields have the same hash, however they were written.
 */
export function specificationHash(leg: Leg): string {
  const { defaults: _, ...data } = leg
  return bytesToHex(sha256(utf8ToBytes(canonical(data))))
}

function canonical(value: unknown): string {
  if (value instanceof Quantity) return canonical({ ...value.toJSON() })
  if (Array.isArray(value)) return `[${value.map(canonical).join()}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  const entries = Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${entries.map(([name, inner]) => `${JSON.stringify(name)}:${canonical(inner)}`).join()}}`
}

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'

/** SHA-256 of a text in base 64, as a page's content policy names the scripts and styles that it allows. */
export function policyHash(text: string): string {
  const bytes = sha256(utf8ToBytes(text))
  let result = ''
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b, c] = [bytes[i] as number, bytes[i + 1], bytes[i + 2]]
    const bits = (a << 16) | ((b ?? 0) << 8) | (c ?? 0)
    const digits = [18, 12, 6, 0].map((shift) => DIGITS[(bits >> shift) & 63])
    result += digits[0]! + digits[1]! + (b === undefined ? '=' : digits[2]) + (c === undefined ? '=' : digits[3])
  }
  return `sha256-${result}`
}
