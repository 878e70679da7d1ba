import type { Cell } from './cell.js'
import type { Names } from './value.js'

/** A field of the document that was read. */
export interface FieldRead {
  readonly path: string
  readonly value: unknown
}

/** A document that notes each number, word or flag that is read from it. */
export function following<T>(at: T, path: string, fields: FieldRead[]): T {
  if (typeof at !== 'object' || at === null) return at
  return new Proxy(at as object, {
    get(target, name) {
      const value = Reflect.get(target, name) as unknown
      if (typeof name !== 'string' || typeof value === 'function' || (Array.isArray(target) && name === 'length')) return value
      const inner = Array.isArray(target) ? `${path}[${name}]` : path === '' ? name : `${path}.${name}`
      if (typeof value === 'object' && value !== null) return following(value, inner, fields)
      fields.push({ path: inner, value })
      return value
    },
  }) as T
}

/** Reads all that stands in what a leaf hands on: a list of the document is handed on unread. */
export function readAll(value: unknown): void {
  if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) readAll(inner)
}

/** Paths that a leaf reads from a document. */
export const readLeaf = ({ of, names }: Cell, document: unknown): unknown =>
  (of.leaf as unknown as { read: (document: unknown, names: Names) => unknown }).read(document, names)
