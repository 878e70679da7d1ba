// The functional form: the methods of the other one, and its own messages, which nothing here shows, are half of what loading zod takes.
import * as z from 'zod/mini'
import type { Field, Fields } from './field.js'
import { isLeaf, type Leaf, messageOf, readLeaf } from './leaf.js'

/** The zod schema of some fields: names that are not fields are rejected, defaults are filled in. @internal */
export const zodOf = (fields: Fields): z.ZodMiniType => z.strictObject(shapeOf(fields))

const shapeOf = (fields: Fields): Record<string, z.ZodMiniType> =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, openOf(field)]))

function openOf(field: Field): z.ZodMiniType {
  const schema = schemaOf(field)
  if (field.optional) return z.optional(schema)
  return 'default' in field && field.default !== undefined ? z.prefault(schema, field.default as never) : schema
}

/** Names of the builder's own things. */
const namesOfOwn = () => z.string().check(z.regex(/^[A-Za-z][\w .-]{0,40}$/))

function schemaOf(field: Field): z.ZodMiniType {
  if (isLeaf(field)) return leafSchema(field)
  if ('section' in field) return zodOf(field.section)
  if ('tuple' in field) return before((given) => byName(field.tuple, given), zodOf(field.tuple))
  if ('list' in field) {
    const { list, least = 1, most = 32 } = field
    return z.array(schemaOf(list)).check(z.minLength(least), z.maxLength(most))
  }
  if ('dictionary' in field) {
    const record = z.record(namesOfOwn(), schemaOf(field.dictionary))
    return field.library === undefined ? record : before((given) => withLibrary(field.library, given), record)
  }
  const kinds = Object.entries(field.of).map(([kind, fields]) => z.strictObject({ [field.variants]: z.literal(kind), ...shapeOf(fields) }))
  return z.discriminatedUnion(field.variants, kinds as never)
}

/** A schema that reads what a function makes of the given value. */
const before = (change: (given: unknown) => unknown, schema: z.ZodMiniType): z.ZodMiniType => z.pipe(z.transform(change), schema)

/** A tuple written as a list, by the names of its places. */
export function byName(tuple: Fields, given: unknown): unknown {
  const names = Object.keys(tuple)
  return Array.isArray(given) && given.length === names.length ? Object.fromEntries(names.map((name, i) => [name, given[i]])) : given
}

/** A dictionary with the entries of its library that the document does not give. */
export const withLibrary = (library: Readonly<Record<string, unknown>> | undefined, given: unknown): unknown =>
  library === undefined || (given !== undefined && (typeof given !== 'object' || given === null || Array.isArray(given)))
    ? given
    : { ...library, ...(given as object) }

const leafSchema = (field: Leaf): z.ZodMiniType =>
  z.pipe(
    z.unknown(),
    z.transform((given, context) => {
      try {
        return readLeaf(field, given)
      } catch (error) {
        context.issues.push({ code: 'custom', message: messageOf(error), input: given })
        return z.NEVER
      }
    }),
  )
