import type { Completion, CompletionContext, CompletionResult } from '@codemirror/autocomplete'

/** The parts of a JSON Schema that completion reads. */
interface Schema {
  readonly $ref?: string
  readonly $defs?: Readonly<Record<string, Schema>>
  readonly properties?: Readonly<Record<string, Schema>>
  readonly additionalProperties?: Schema | boolean
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly examples?: readonly unknown[]
  readonly description?: string
}

/** Names and words of the schema at the place of the cursor in a YAML text. */
export function completions(context: CompletionContext, whole: Schema): CompletionResult | null {
  const { state, pos } = context
  const before = state.doc.sliceString(0, pos)
  const word = before.match(/[\w$-]*$/)?.[0] ?? ''
  if (word === '' && !context.explicit) return null
  const { path, value } = placeIn(before.slice(0, before.length - word.length))
  const schemas = schemasAt(whole, path)
  const options = value === undefined ? names(whole, schemas) : words(whole, schemasAt(whole, [...path, value]))
  return options.length === 0 ? null : { from: pos - word.length, options, validFor: /^[\w$-]*$/ }
}

/** The names of the sections above the cursor, and the field whose value is being written, if it is one. */
export function placeIn(before: string): { path: string[]; value: string | undefined } {
  const lines = before.split('\n')
  const line = lines.at(-1) as string
  const stack: string[] = []
  let indent = line.match(/^ */)?.[0].length ?? 0
  for (let i = lines.length - 2; i >= 0 && indent > 0; i--) {
    const found = (lines[i] as string).match(/^( *)([\w $-]*\w):\s*(#.*)?$/)
    if (found !== null && (found[1] as string).length < indent) {
      stack.unshift(found[2] as string)
      indent = (found[1] as string).length
    }
  }
  // Sections on one line: `pinion: { wraps: 3, |`.
  let key: string | undefined
  for (const [part] of line.replace(/#.*$/, '').matchAll(/[\w $-]*\w:|[{},]|[^{},:]+/g)) {
    const text = part.trim()
    if (text.endsWith(':')) key = text.slice(0, -1).trim()
    else if (text === '{') {
      if (key !== undefined) stack.push(key)
      key = undefined
    } else if (text === '}') {
      stack.pop()
      key = undefined
    } else if (text === ',') key = undefined
  }
  return { path: stack, value: key }
}

/** Every schema that may hold at a path. */
function schemasAt(whole: Schema, path: readonly string[]): Schema[] {
  return path.reduce<Schema[]>(
    (at, step) =>
      at.flatMap((schema) =>
        variants(whole, schema).flatMap(({ properties, additionalProperties }) => {
          const named = properties?.[step]
          if (named !== undefined) return [named]
          return typeof additionalProperties === 'object' ? [additionalProperties] : []
        }),
      ),
    [whole],
  )
}

/** A schema with what it refers to, and each of its alternatives. */
function variants(whole: Schema, schema: Schema, depth = 0): Schema[] {
  if (depth > 6) return []
  const name = schema.$ref?.match(/^#\/\$defs\/(.+)$/)?.[1]
  const target = name === undefined ? undefined : whole.$defs?.[decodeURIComponent(name)]
  return [schema, ...(target === undefined ? [] : [target]), ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].flatMap((each) =>
    each === schema ? [each] : variants(whole, each, depth + 1),
  )
}

function names(whole: Schema, schemas: readonly Schema[]): Completion[] {
  const found = new Map<string, Completion>()
  for (const schema of schemas.flatMap((each) => variants(whole, each)))
    for (const [label, property] of Object.entries(schema.properties ?? {})) {
      const info = variants(whole, property).find(({ description }) => description !== undefined)?.description
      found.set(label, { label, apply: `${label}: `, type: 'property', ...(info === undefined ? {} : { info }) })
    }
  return [...found.values()]
}

function words(whole: Schema, schemas: readonly Schema[]): Completion[] {
  const all = schemas.flatMap((each) => variants(whole, each))
  const given = all.flatMap((each) => [...(each.enum ?? []), ...(each.const === undefined ? [] : [each.const]), ...(each.examples ?? [])])
  return [...new Set(given.filter((each) => typeof each === 'string'))].map((label) => ({ label, type: 'enum' }))
}
