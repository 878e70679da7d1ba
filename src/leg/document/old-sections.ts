import { type In, type Kind, quantity } from '../../units/index.js'

/** A part of a document as it was written. */
export type Document = Record<string, unknown>

/** A section of a document, or nothing where it is none. */
export const sectionOf = (value: unknown): Document | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Document) : undefined

/** Some fields moved under other names; what is absent stays absent. */
export function renamed(section: Document, names: Readonly<Record<string, string>>): Document {
  return Object.fromEntries(Object.entries(section).map(([name, value]) => [names[name] ?? name, value]))
}

/** A record without what is undefined. */
export const present = (record: Document): Document => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined))

/** A section without some fields, and these fields. */
export function split(section: Document | undefined, names: readonly string[]): [picked: Document, rest: Document] {
  const entries = Object.entries(section ?? {})
  return [
    Object.fromEntries(entries.filter(([name]) => names.includes(name))),
    Object.fromEntries(entries.filter(([name]) => !names.includes(name))),
  ]
}

/** A quantity of an old document, where it can be read. */
export const si = (kind: Kind, given: unknown): number | undefined => {
  try {
    return quantity(kind, given as In<Kind>).si
  } catch {
    return undefined
  }
}
