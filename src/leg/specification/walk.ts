import type { Source } from '../../formula/index.js'
import { type FieldMeta, metaOf } from './fields.js'

/** The parts of a zod schema that this reader walks. */
interface Node {
  readonly _zod: {
    readonly def: {
      readonly type: string
      readonly innerType?: Node
      readonly valueType?: Node
      readonly element?: Node
      readonly shape?: Readonly<Record<string, Node>>
    }
  }
  safeParse(given: unknown): { success: true; data: unknown } | { success: false }
}

/** A value the document left to the library, with the reason for it. */
export interface LegDefault {
  readonly path: string
  /** The value as text. */
  readonly value: string
  readonly why: Source
}

const innermost = (schema: Node): Node => {
  const { innerType } = schema._zod.def
  return innerType === undefined || metaOf(schema) !== undefined ? schema : innermost(innerType)
}

const join = (path: string, name: string) => (path === '' ? name : `${path}.${name}`)
const at = (given: unknown, name: string | number) =>
  typeof given === 'object' && given !== null ? (given as Record<string | number, unknown>)[name] : undefined

/** Every value that the document left open and the schema fills. */
export function defaultsOf(schema: unknown, given: unknown, path = ''): LegDefault[] {
  const node = schema as Node
  const meta = metaOf(node)
  if (meta !== undefined) {
    if (given !== undefined || meta.fallback === undefined) return []
    return [{ path, value: valueText(meta.fallback.value), why: meta.fallback.why }]
  }
  const { type, shape, valueType, element } = innermost(node)._zod.def
  if (node._zod.def.type === 'optional' && given === undefined) return []
  if (type === 'object') return Object.entries(shape ?? {}).flatMap(([name, inner]) => defaultsOf(inner, at(given, name), join(path, name)))
  if (type === 'record') return Object.keys(given ?? {}).flatMap((name) => defaultsOf(valueType, at(given, name), join(path, name)))
  if (type === 'array') return ((given as unknown[]) ?? []).flatMap((item, i) => defaultsOf(element, item, `${path}[${i}]`))
  return []
}

function valueText(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value)
  const { low, typical, high } = value as { low?: number; typical?: number; high?: number }
  return low === undefined ? String(value) : `${typical} (${low} to ${high})`
}

/** What could be read of a document that has mistakes: every field alone, the unreadable ones left out. */
export function salvaged(schema: unknown, given: unknown): unknown {
  const node = schema as Node
  if (metaOf(node) !== undefined) {
    const result = node.safeParse(given)
    return result.success ? result.data : undefined
  }
  const { type, shape, valueType, element } = innermost(node)._zod.def
  if (type === 'object') {
    if (given === undefined && node._zod.def.type === 'optional') return undefined
    return Object.fromEntries(Object.entries(shape ?? {}).map(([name, inner]) => [name, salvaged(inner, at(given, name))]))
  }
  if (type === 'record') return Object.fromEntries(Object.keys(given ?? {}).map((name) => [name, salvaged(valueType, at(given, name))]))
  if (type === 'array') return Array.isArray(given) ? given.map((item) => salvaged(element, item)) : undefined
  return undefined
}

/** Every field of a document that names a thing of a kind: where it stands and the name. */
export function referencesOf(schema: unknown, data: unknown, kind: 'material', path = ''): { path: string; name: string }[] {
  const node = schema as Node
  const meta = metaOf(node)
  if (meta !== undefined) return meta.refersTo === kind && typeof data === 'string' ? [{ path, name: data }] : []
  if (data === undefined) return []
  const { type, shape, valueType, element } = innermost(node)._zod.def
  if (type === 'object')
    return Object.entries(shape ?? {}).flatMap(([name, inner]) => referencesOf(inner, at(data, name), kind, join(path, name)))
  if (type === 'record') return Object.keys(data ?? {}).flatMap((name) => referencesOf(valueType, at(data, name), kind, join(path, name)))
  if (type === 'array') return ((data as unknown[]) ?? []).flatMap((item, i) => referencesOf(element, item, kind, `${path}[${i}]`))
  return []
}

/** What is known about the place a path leads to: the field, or the names of the section's fields. */
export function placeOf(schema: unknown, path: readonly PropertyKey[]): { meta?: FieldMeta; names?: string[] } {
  let node: Node | undefined = schema as Node
  for (const step of path) {
    if (node === undefined) return {}
    const { shape, valueType, element }: Node['_zod']['def'] = innermost(node)._zod.def
    node = shape?.[step as string] ?? valueType ?? element
  }
  if (node === undefined) return {}
  const meta = metaOf(node)
  if (meta !== undefined) return { meta }
  const { shape } = innermost(node)._zod.def
  return shape === undefined ? {} : { names: Object.keys(shape) }
}
