import { exampleOf, type Kind, unitNames } from '../../units/index.js'
import type { Field, Fields } from './field.js'
import { acceptedBy, isLeaf, type Leaf, TABLES } from './leaf.js'

type Schema = Record<string, unknown>

/** What a JSON Schema holds besides the fields themselves. */
export interface SchemaTexts {
  /** The meaning of a field by its path, such as `joints.hip.drive<cord>.pretension`; places of lists and names of one's own are `*`. */
  readonly meaning: (path: string) => string | undefined
  /** Names that complete a reference to a section. */
  readonly names: (section: string) => readonly string[]
}

/** The JSON Schema (draft 2020-12) of some fields. Quantities of one kind are defined once, under `$defs`. */
export function jsonSchemaOf(fields: Fields, texts: SchemaTexts): Schema {
  const definitions: Record<string, Schema> = {}
  const root = objectSchema(fields, '', texts, definitions)
  return { ...root, $defs: definitions }
}

function objectSchema(fields: Fields, path: string, texts: SchemaTexts, definitions: Record<string, Schema>): Schema {
  const entries = Object.entries(fields)
  return {
    type: 'object',
    properties: Object.fromEntries(
      entries.map(([name, field]) => [name, fieldSchema(field, path === '' ? name : `${path}.${name}`, texts, definitions)]),
    ),
    required: entries.filter(([, field]) => !field.optional && !('default' in field && field.default !== undefined)).map(([name]) => name),
    additionalProperties: false,
  }
}

function fieldSchema(field: Field, path: string, texts: SchemaTexts, definitions: Record<string, Schema>): Schema {
  const meaning = texts.meaning(path)
  const assumed = 'default' in field && field.default !== undefined ? { default: field.default } : {}
  return { ...bareSchema(field, path, texts, definitions), ...(meaning === undefined ? {} : { description: meaning }), ...assumed }
}

function bareSchema(field: Field, path: string, texts: SchemaTexts, definitions: Record<string, Schema>): Schema {
  if (isLeaf(field)) return leafSchema(field, texts, definitions)
  if ('section' in field) {
    const schema = objectSchema(field.section, path, texts, definitions)
    const groups = (field.exactlyOne ?? []).map((group) => ({ oneOf: group.map((name) => ({ required: [name] })) }))
    return groups.length === 0 ? schema : { ...schema, allOf: groups }
  }
  if ('tuple' in field) {
    const inner = Object.entries(field.tuple).map(([name, item]) => fieldSchema(item, `${path}.${name}`, texts, definitions))
    return {
      anyOf: [
        { type: 'array', prefixItems: inner, minItems: inner.length, maxItems: inner.length },
        objectSchema(field.tuple, path, texts, definitions),
      ],
    }
  }
  if ('list' in field)
    return {
      type: 'array',
      items: fieldSchema(field.list, `${path}.*`, texts, definitions),
      minItems: field.least ?? 1,
      maxItems: field.most ?? 32,
    }
  if ('dictionary' in field) return { type: 'object', additionalProperties: fieldSchema(field.dictionary, `${path}.*`, texts, definitions) }
  return {
    oneOf: Object.entries(field.of).map(([kind, fields]) => {
      const schema = objectSchema(fields, `${path}<${kind}>`, texts, definitions)
      return {
        ...schema,
        title: kind,
        properties: { [field.variants]: { const: kind }, ...(schema.properties as Schema) },
        required: [field.variants, ...(schema.required as string[])],
      }
    }),
  }
}

function leafSchema(field: Leaf, texts: SchemaTexts, definitions: Record<string, Schema>): Schema {
  if ('integer' in field) return { type: 'integer', minimum: field.min, maximum: field.max }
  if ('kind' in field) return quantityReference(field.kind, definitions)
  if ('interval' in field) {
    const end = quantityReference(field.interval, definitions)
    return { type: 'array', prefixItems: [end, end], minItems: 2, maxItems: 2 }
  }
  if ('band' in field) {
    const number = { type: 'number', exclusiveMinimum: 0, maximum: field.max }
    const properties = { low: number, typical: number, high: number }
    return {
      anyOf: [
        { type: 'array', items: number, minItems: 3, maxItems: 3 },
        { type: 'object', properties, required: Object.keys(properties), additionalProperties: false },
      ],
    }
  }
  if ('oneOf' in field) return { enum: field.oneOf }
  if ('flag' in field) return { type: 'boolean' }
  if ('designation' in field) {
    const names = TABLES[field.designation].names()
    return field.designation === 'propertyClass' ? { anyOf: [{ enum: names }, { type: 'number' }] } : { enum: names }
  }
  if ('refersTo' in field) return { type: 'string', examples: [...(field.also ?? []), ...texts.names(field.refersTo)] }
  if ('own' in field)
    return { type: 'object', properties: { basedOn: { type: 'string', examples: texts.names('materials') } }, required: ['basedOn'] }
  return { type: 'string', minLength: 1, maxLength: 200 }
}

const escaped = (text: string) => text.replaceAll(/[\\^$.*+?()[\]{}|/]/g, '\\$&')

/** Numbers as quantity texts write them. */
const NUMBER = '[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?'

function quantityReference(kind: Kind, definitions: Record<string, Schema>): Schema {
  if (definitions[kind] === undefined) {
    const units = unitNames(kind)
    const plain = kind === 'ratio' || kind === 'count' || kind === 'strain'
    const accepts = acceptedBy({ kind } as Leaf)
    definitions[kind] = {
      title: kind,
      anyOf: [
        {
          type: 'string',
          pattern: `^${NUMBER} (${units.map(escaped).join('|')})$`,
          patternErrorMessage: accepts,
          examples: [exampleOf(kind).replaceAll("'", '')],
        },
        { type: 'array', prefixItems: [{ type: 'number' }, { enum: units }], minItems: 2, maxItems: 2 },
        ...(plain ? [{ type: 'number' }] : []),
      ],
    }
  }
  return { $ref: `#/$defs/${kind}` }
}
