import type { Source } from '../../formula/index.js'
import type { Issue } from '../../units/index.js'
import type { Field, Fields, Section } from './field.js'
import { isLeaf, type Leaf, readLeaf } from './leaf.js'
import { byName, withLibrary } from './zod.js'

/** A value that the document leaves to the library, with the reason. */
export interface LegDefault {
  /** Path of the field in the document. */
  readonly path: string
  /** The value as text. */
  readonly value: string
  /** Where the value comes from. */
  readonly why: Source
}

const join = (path: string, name: string) => (path === '' ? name : `${path}.${name}`)
const at = (given: unknown, name: string | number): unknown =>
  typeof given === 'object' && given !== null && Object.hasOwn(given, name) ? (given as Record<string | number, unknown>)[name] : undefined

const isRecord = (given: unknown): given is Record<string, unknown> => typeof given === 'object' && given !== null && !Array.isArray(given)

/** The fields below a field, by the name or place they have in what was given. */
function below(field: Field, given: unknown): readonly (readonly [name: string, field: Field, given: unknown, path: string])[] {
  if (isLeaf(field)) return []
  const of = (fields: Fields, from: unknown) => Object.entries(fields).map(([name, inner]) => [name, inner, at(from, name), name] as const)
  if ('section' in field) return of(field.section, given)
  if ('tuple' in field) return of(field.tuple, byName(field.tuple, given))
  // Not `map` of the list itself, which would keep its holes.
  if ('list' in field) return Array.isArray(given) ? Array.from(given, (item, i) => [String(i), field.list, item, `[${i}]`] as const) : []
  if ('dictionary' in field) {
    const named = withLibrary(field.library, given)
    return isRecord(named) ? Object.keys(named).map((name) => [name, field.dictionary, at(named, name), name] as const) : []
  }
  const kind = at(given, field.variants)
  const fields = typeof kind === 'string' && Object.hasOwn(field.of, kind) ? field.of[kind] : undefined
  return fields === undefined ? [] : of(fields, given)
}

/** A visit to every leaf that what was given reaches: its path, field and value. */
export function eachLeaf(fields: Fields, given: unknown, visit: (path: string, field: Leaf, given: unknown) => void, path = ''): void {
  for (const [name, field] of Object.entries(fields)) eachLeafOf(field, at(given, name), join(path, name), visit)
}

function eachLeafOf(field: Field, given: unknown, path: string, visit: (path: string, field: Leaf, given: unknown) => void): void {
  if (isLeaf(field)) {
    visit(path, field, given)
    return
  }
  if (given === undefined && field.optional) return
  for (const [, inner, value, place] of below(field, given))
    eachLeafOf(inner, value, place.startsWith('[') ? path + place : join(path, place), visit)
}

/** Every value that the document leaves open and a default fills. */
export function defaultsOf(fields: Fields, given: unknown): LegDefault[] {
  const defaults: LegDefault[] = []
  const why = ({ level = 'assumption', because = '' }: Field): Source => ({ level, where: because })
  eachField(fields, given, (path, field, value) => {
    if ('dictionary' in field) {
      for (const [name, assumed] of Object.entries(field.library ?? {}))
        if (at(value, name) === undefined) defaults.push({ path: join(path, name), value: textOf(assumed), why: why(field) })
      return
    }
    const assumed = isLeaf(field) && 'default' in field ? field.default : undefined
    if (value === undefined && assumed !== undefined) defaults.push({ path, value: textOf(assumed), why: why(field) })
  })
  return defaults
}

/** A visit to every field, of whatever sort, that the document itself reaches. Entries of a library are not entered. */
function eachField(fields: Fields, given: unknown, visit: (path: string, field: Field, given: unknown) => void, path = ''): void {
  const enter = (field: Field, value: unknown, here: string) => {
    visit(here, field, value)
    if (value === undefined && field.optional) return
    for (const [name, inner, item, place] of below(field, value)) {
      if ('dictionary' in field && at(value, name) === undefined) continue
      enter(inner, item, place.startsWith('[') ? here + place : join(here, place))
    }
  }
  for (const [name, field] of Object.entries(fields)) enter(field, at(given, name), join(path, name))
}

function textOf(value: unknown): string {
  if (isRecord(value))
    return Object.entries(value)
      .map(([name, entry]) => `${name} ${textOf(entry)}`)
      .join(', ')
  if (!Array.isArray(value)) return String(value)
  return value.length === 3 ? `${value[1]} (${value[0]} to ${value[2]})` : value.join(' to ')
}

/** Every field that names a thing of the document or of a table of materials. */
export function referencesOf(fields: Fields, data: unknown): { path: string; to: Section; name: string; also: readonly string[] }[] {
  const found: { path: string; to: Section; name: string; also: readonly string[] }[] = []
  eachLeaf(fields, data, (path, field, value) => {
    if ('refersTo' in field && typeof value === 'string') found.push({ path, to: field.refersTo, name: value, also: field.also ?? [] })
  })
  return found
}

/** What can be read of a document that has mistakes: each field alone, with `undefined` where it cannot be read. */
export function salvaged(fields: Fields, given: unknown): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, salvagedField(field, at(given, name))]))
}

function salvagedField(field: Field, given: unknown): unknown {
  const value = given === undefined && 'default' in field ? field.default : given
  if (value === undefined) return undefined
  if (isLeaf(field)) {
    try {
      return readLeaf(field, value)
    } catch {
      return undefined
    }
  }
  const parts = below(field, value).map(([name, inner, item]) => [name, salvagedField(inner, item)] as const)
  if ('list' in field) return Array.isArray(value) ? parts.map(([, item]) => item) : undefined
  if (typeof value !== 'object' || value === null) return undefined
  const kind = 'variants' in field ? { [field.variants]: at(value, field.variants) } : {}
  return { ...kind, ...Object.fromEntries(parts) }
}

/** Groups of fields of which exactly one must be given, where none or several are. */
export function exactlyOneIssues(fields: Fields, given: unknown, path = ''): Issue[] {
  return Object.entries(fields).flatMap(([name, field]) => groupIssues(field, at(given, name), join(path, name)))
}

function groupIssues(field: Field, given: unknown, path: string): Issue[] {
  if (isLeaf(field) || given === undefined || given === null) return []
  const groups = 'section' in field ? (field.exactlyOne ?? []) : []
  const own = groups.flatMap((group): Issue[] => {
    const set = group.filter((name) => at(given, name) !== undefined)
    if (set.length === 1) return []
    return [
      {
        path,
        given: set.length === 0 ? 'without any of them' : `given ${set.join(' and ')}`,
        accepts: `must have exactly one of ${group.join(', ')}`,
      },
    ]
  })
  return [
    ...own,
    ...below(field, given).flatMap(([, inner, value, place]) =>
      groupIssues(inner, value, place.startsWith('[') ? path + place : join(path, place)),
    ),
  ]
}

/** What is at a path: the leaf, or the names of the fields of the section there. */
export function placeAt(fields: Fields, given: unknown, path: readonly PropertyKey[]): { leaf?: Leaf; names?: readonly string[] } {
  let field: Field = { section: fields }
  let value = given
  for (const step of path) {
    const next: ReturnType<typeof below>[number] | undefined = below(field, value).find(([name]) => name === String(step))
    if (next === undefined) return {}
    field = next[1]
    value = next[2]
  }
  if (isLeaf(field)) return { leaf: field }
  if ('section' in field || 'tuple' in field) return { names: Object.keys('section' in field ? field.section : field.tuple) }
  if (!('variants' in field)) return {}
  return { names: [field.variants, ...below(field, value).map(([name]) => name)] }
}
