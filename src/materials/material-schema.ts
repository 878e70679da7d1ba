import { EVIDENCE_LEVELS } from '../formula/index.js'
import { type Kind, unitNames } from '../units/index.js'
import { FAMILIES, PROCESSES } from './document.js'
import { PROPERTY_KINDS, type PropertyName } from './record.js'

const NAMES = Object.keys(PROPERTY_KINDS) as PropertyName[]

/** The JSON Schema (draft 2020-12) of a material document, for editors that complete and check while it is written. */
export function materialJsonSchema(): Record<string, unknown> {
  const escaped = (text: string) => text.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&')
  const quantityOf = (kind: Kind) => ({
    type: 'string',
    pattern: `^[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)? (${unitNames(kind).map(escaped).join('|')})$`,
  })
  const text = { type: 'string', minLength: 1 }
  const source = {
    type: 'object',
    properties: { level: { enum: EVIDENCE_LEVELS }, where: text },
    required: ['level', 'where'],
    additionalProperties: false,
  }
  const propertyOf = (kind: Kind) => ({
    type: 'object',
    properties: { typical: quantityOf(kind), low: quantityOf(kind), high: quantityOf(kind), source, conditions: { type: 'string' } },
    required: ['typical', 'low', 'high', 'source'],
    additionalProperties: false,
  })
  const point = { type: 'array', items: { type: 'number' }, minItems: 4, maxItems: 4 }
  const curve = {
    type: 'object',
    properties: { points: { type: 'array', items: point, minItems: 2 }, source, conditions: { type: 'string' } },
    required: ['points', 'source', 'conditions'],
    additionalProperties: false,
  }
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'material',
    type: 'object',
    properties: {
      $schema: { type: 'string' },
      name: text,
      title: text,
      aliases: { type: 'array', items: text },
      family: { enum: FAMILIES },
      process: { enum: PROCESSES },
      strengthCurve: curve,
      modulusCurve: curve,
      creepTestedHours: { type: 'number', exclusiveMinimum: 0 },
      doubts: { type: 'array', items: text },
      remarks: { type: 'array', items: text },
      properties: {
        type: 'object',
        properties: Object.fromEntries(NAMES.map((name) => [name, propertyOf(PROPERTY_KINDS[name])])),
        additionalProperties: false,
      },
    },
    required: ['name', 'title', 'family', 'process', 'properties'],
    additionalProperties: false,
  }
}
