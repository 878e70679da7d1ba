import * as z from 'zod'
import type { Source } from '../../formula/index.js'
import {
  type In,
  InputError,
  type Kind,
  kindRow,
  kindWords,
  nearNames,
  Quantity,
  quantity,
  quantityFromJSON,
  unitNames,
} from '../../units/index.js'

/** What the reader of the document knows about one field beside its type. */
export interface FieldMeta {
  /** What the field means, for editors and messages. */
  readonly meaning: string
  /** Accepted values, as messages list them. */
  readonly accepts: string
  /** The JSON Schema of what may be written. */
  readonly json: Record<string, unknown>
  /** What kind of thing the field names, where that can be in the document itself. */
  readonly refersTo?: 'material' | 'cord'
  /** The words it may be, where they are a list. */
  readonly names?: () => readonly string[]
  /** The assumed value of a field that is not given, and the reason. */
  readonly fallback?: Fallback
}

/** The assumed value of a field that the document does not give. */
export interface Fallback {
  readonly value: unknown
  readonly why: Source
}

const META = new WeakMap<object, FieldMeta>()

/** What is known about a field, or nothing when the schema is a section. */
export const metaOf = (schema: object): FieldMeta | undefined => META.get(schema)

/** A field whose text could not be read; the message says what is accepted. */
export class Refusal extends Error {}

/** A field of the document: how it is read, and what editors and messages say about it. */
export function field<Out, Given>(meta: FieldMeta, readValue: (given: unknown) => Out): z.ZodType<Out, Given> {
  const schema = z.unknown().transform((given, context) => {
    try {
      return readValue(given)
    } catch (error) {
      const message = accepted(error)
      if (message === undefined) throw error
      context.issues.push({ code: 'custom', message, input: given })
      return z.NEVER
    }
  })
  META.set(schema, meta)
  return schema as unknown as z.ZodType<Out, Given>
}

function accepted(error: unknown): string | undefined {
  if (error instanceof Refusal) return error.message
  if (error instanceof InputError)
    return error.issues.map(({ path, accepts }) => (path === 'given' ? accepts : `${path}: ${accepts}`)).join('; ')
  return undefined
}

/** The same field, with an assumed value where the document does not give one; the described leg lists it with its reason. */
export function silent<Out, Given>(
  schema: z.ZodType<Out, Given>,
  value: NoInfer<Given>,
  why: string,
  level: Source['level'] = 'assumption',
) {
  const filled = schema.prefault(value as never)
  const meta = META.get(schema)
  if (meta !== undefined) META.set(filled, { ...meta, fallback: { value, why: { level, where: why } } })
  return filled as unknown as z.ZodPrefault<z.ZodType<Out, Given>>
}

/** The same field, allowed to be absent. */
export function maybe<Out, Given>(schema: z.ZodType<Out, Given>) {
  const open = schema.optional()
  const meta = META.get(schema)
  if (meta !== undefined) META.set(open, meta)
  return open as unknown as z.ZodOptional<z.ZodType<Out, Given>>
}

/** Limits of a quantity, as text of its kind. */
export interface FieldLimits<K extends Kind> {
  readonly min?: In<K> | 0
  readonly max?: In<K>
  readonly above?: In<K> | 0
  readonly below?: In<K>
}

const bound = <K extends Kind>(kind: K, limit: In<K> | 0 | undefined) =>
  limit === undefined ? Number.NaN : limit === 0 ? 0 : quantity(kind, limit as In<K>).si

/** A quantity: text with a unit, a pair of number and unit, a `Quantity`, or what `toJSON` wrote. */
export function q<K extends Kind>(kind: K, limits: FieldLimits<K>, meaning: string): z.ZodType<Quantity<K>, In<K>> {
  const [lowest, highest, over, under] = [limits.min, limits.max, limits.above, limits.below].map((limit) => bound(kind, limit)) as [
    number,
    number,
    number,
    number,
  ]
  const words = [
    limits.min !== undefined && `at least ${limits.min}`,
    limits.above !== undefined && `above ${limits.above}`,
    limits.max !== undefined && `at most ${limits.max}`,
    limits.below !== undefined && `below ${limits.below}`,
  ].filter(Boolean)
  const example = examples(kind)
  const accepts = `must be a quantity of ${kindWords(kind)} such as ${example}${words.length > 0 ? `, ${words.join(' and ')}` : ''}`
  return field<Quantity<K>, In<K>>({ meaning, accepts, json: schemaOf(kind) }, (given) => {
    const made = quantity(kind, (isWritten(given) ? quantityFromJSON(given) : given) as In<K>)
    const x = made.si
    // NaN stands for a limit that is not set: every comparison with it is false.
    if (x < lowest || x > highest || x <= over || x >= under) throw new Refusal(`must be ${words.join(' and ')}`)
    return made
  })
}

const isWritten = (given: unknown): boolean =>
  typeof given === 'object' && given !== null && !(given instanceof Quantity) && 'value' in given && 'unit' in given && 'kind' in given

function examples(kind: Kind): string {
  const unit = kindRow(kind).show.at(-1) as string
  return unit === '1' ? '0.2' : `'5 ${unit}'`
}

const escaped = (text: string) => text.replaceAll(/[\\^$.*+?()[\]{}|/]/g, '\\$&')

/** Numbers as quantity texts write them. */
const NUMBER_PATTERN = '[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?'

const schemas = new Map<Kind, Record<string, unknown>>()

/** The schema of a kind, made once: most kinds stand in many fields. */
function schemaOf(kind: Kind): Record<string, unknown> {
  let schema = schemas.get(kind)
  if (schema === undefined) {
    schema = quantitySchema(kind)
    schemas.set(kind, schema)
  }
  return schema
}

function quantitySchema(kind: Kind): Record<string, unknown> {
  const units = unitNames(kind)
  const text = { type: 'string', pattern: `^${NUMBER_PATTERN} (${units.map(escaped).join('|')})$` }
  const pair = { type: 'array', prefixItems: [{ type: 'number' }, { enum: units }], minItems: 2, maxItems: 2 }
  const plain = kind === 'ratio' || kind === 'count' || kind === 'strain'
  return { anyOf: [text, pair, ...(plain ? [{ type: 'number' }] : [])] }
}

/** One of a few words. */
export function word<const T extends string>(words: readonly T[], meaning: string): z.ZodType<T, T> {
  const accepts = `must be one of ${words.join(', ')}`
  return field({ meaning, accepts, json: { enum: words }, names: () => words }, (given) => {
    if (typeof given === 'string' && (words as readonly string[]).includes(given)) return given as T
    throw new Refusal(`${accepts}${meant(given, words)}`)
  })
}

/** Free text on one line. */
export function text(meaning: string): z.ZodType<string, string> {
  const accepts = 'must be a text of 1 to 200 characters'
  return field({ meaning, accepts, json: { type: 'string', minLength: 1, maxLength: 200 } }, (given) => {
    if (typeof given === 'string' && given.trim() !== '' && given.length <= 200) return given
    throw new Refusal(accepts)
  })
}

/** The same field, known to name a thing of the document itself. */
export function named<S extends object>(schema: S, refersTo: 'material' | 'cord'): S {
  const meta = META.get(schema)
  if (meta !== undefined) META.set(schema, { ...meta, refersTo })
  return schema
}

/** A whole number within limits. */
export function whole(min: number, max: number, meaning: string): z.ZodType<number, number> {
  const accepts = `must be a whole number from ${min} to ${max}`
  return field({ meaning, accepts, json: { type: 'integer', minimum: min, maximum: max } }, (given) => {
    if (typeof given === 'number' && Number.isInteger(given) && given >= min && given <= max) return given
    throw new Refusal(accepts)
  })
}

/** Yes or no. */
export function flag(meaning: string): z.ZodType<boolean, boolean> {
  const accepts = 'must be true or false'
  return field({ meaning, accepts, json: { type: 'boolean' } }, (given) => {
    if (typeof given === 'boolean') return given
    throw new Refusal(accepts)
  })
}

/** A designation from a table, such as a thread or a bearing. */
export function designation<T extends string>(what: string, names: () => readonly T[], meaning: string): z.ZodType<T, T> {
  const accepts = `must be the designation of ${what}`
  return field({ meaning, accepts, json: { type: 'string', examples: names().slice(0, 8) }, names }, (given) => {
    const known = names()
    if (typeof given === 'string' && (known as readonly string[]).includes(given)) return given as T
    const list = known.length <= 14 ? known.join(', ') : `${known.slice(0, 10).join(', ')}, … (${known.length})`
    throw new Refusal(`${accepts}: ${list}${meant(given, known)}`)
  })
}

/** The hint that ends a message about a misspelt name. */
export function meant(given: unknown, names: Iterable<string>): string {
  if (typeof given !== 'string') return ''
  const near = nearNames(given, names, 1)[0]
  return near === undefined ? '' : `; did you mean ${near}?`
}

/** An interval given by its low, typical and high value: a friction coefficient is never one number. */
export interface Band {
  readonly low: number
  readonly typical: number
  readonly high: number
}

/** A band of a plain ratio, written as `{ low, typical, high }` or as a list of three. */
export function band(max: number, meaning: string): z.ZodType<Band, Band | readonly [number, number, number]> {
  const accepts = `must be { low, typical, high } or [low, typical, high], rising, above 0 and at most ${max}`
  const number = { type: 'number', exclusiveMinimum: 0, maximum: max }
  const json = {
    anyOf: [
      { type: 'array', items: number, minItems: 3, maxItems: 3 },
      {
        type: 'object',
        properties: { low: number, typical: number, high: number },
        required: ['low', 'typical', 'high'],
        additionalProperties: false,
      },
    ],
  }
  return field({ meaning, accepts, json }, (given) => {
    const three = Array.isArray(given) ? given : isBand(given) ? [given.low, given.typical, given.high] : []
    const [low, typical, high] = three as number[]
    const rising =
      low !== undefined && typical !== undefined && high !== undefined && 0 < low && low <= typical && typical <= high && high <= max
    if (three.length !== 3 || !rising || three.some((x) => typeof x !== 'number')) throw new Refusal(accepts)
    return { low: low as number, typical: typical as number, high: high as number }
  })
}

const isBand = (given: unknown): given is Band =>
  typeof given === 'object' && given !== null && Object.keys(given).sort().join() === 'high,low,typical'
